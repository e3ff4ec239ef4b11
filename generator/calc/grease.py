"""Grease: how often, how much, how many strokes, and whether this grease may run here."""

from math import ceil, pi, sqrt
from typing import Annotated, Literal, NamedTuple

from generator.method import Is, Refused, method
from generator.say import say
from generator.value import Citation

TRADE = Citation("trade lubrication handbooks; origin not a standard", "", "grease interval chart", "from memory")


@method(
    r"t_0 = \frac{14 \cdot 10^6}{n \sqrt{d}} - 4\,d",
    TRADE,
    beware={"turns so slowly that the calendar decides": lambda speed, **_: speed < 10},
)
def grease_interval_base(
    speed: Annotated[float, Is("speed", "n", "rpm", 0.1, 50_000)],
    bore: Annotated[float, Is("bore of the ring", "d", "mm", 5, 1000)],
) -> Annotated[float, Is("interval before factors", "t_0", "hour")]:
    """Grease interval before its factors
    A start value, corrected by what is found. Where it becomes nothing, the bearing is too fast for grease given by hand."""
    base = 14e6 / (speed * sqrt(bore)) - 4 * bore
    if base <= 0:
        raise Refused(say("too fast for grease given by hand: automatic feed or oil"))
    return base


@method(
    r"t = t_0 \cdot f_{\mathrm{build}} \cdot f_{\mathrm{heat}} \cdot f_{\mathrm{dirt}} \cdot f_{\mathrm{wet}} \cdot f_{\mathrm{shaking}}"
    r" \cdot f_{\mathrm{attitude}} \cdot f_{\mathrm{load}}, \quad t_0 = \frac{14 \cdot 10^6}{n \sqrt{d}} - 4\,d",
    TRADE,
    beware={"turns so slowly that the calendar decides": lambda speed, **_: speed < 10},
)
def grease_interval(
    speed: Annotated[float, Is("speed", "n", "rpm", 0.1, 50_000)],
    bore: Annotated[float, Is("bore of the ring", "d", "mm", 5, 1000)],
    build: Annotated[float, Is("factor for the kind of bearing", r"f_{\mathrm{build}}", "", 0.1, 20)],
    heat: Annotated[float, Is("factor for heat", r"f_{\mathrm{heat}}", "", 0.001, 1)],
    dirt: Annotated[float, Is("factor for dirt", r"f_{\mathrm{dirt}}", "", 0.01, 1)],
    wet: Annotated[float, Is("factor for water", r"f_{\mathrm{wet}}", "", 0.01, 1)],
    shaking: Annotated[float, Is("factor for vibration", r"f_{\mathrm{shaking}}", "", 0.01, 1)],
    attitude: Annotated[float, Is("factor for the shaft's attitude", r"f_{\mathrm{attitude}}", "", 0.01, 1)],
    load: Annotated[float, Is("the plant's own factor for a heavy load", r"f_{\mathrm{load}}", "", 0.01, 1)] = 1.0,
) -> Annotated[float, Is("time between greasings", "t", "hour")]:
    """Time between greasings, running hours
    A start value of the trade, for loads up to about a tenth of the dynamic rating; corrected by the look of the grease at opening."""
    base = 14e6 / (speed * sqrt(bore)) - 4 * bore
    if base <= 0:
        raise Refused(say("too fast for grease given by hand: automatic feed or oil"))
    return base * build * heat * dirt * wet * shaking * attitude * load


@method(r"f = 0.5^{\frac{T - 70}{15}}", None)
def heat_halving(
    temperature: Annotated[float, Is("temperature of the housing", "T", "degC", -60, 200)],
) -> Annotated[float, Is("factor for heat by halving", "f")]:
    """Halving of grease life for each 15 K above 70 °C
    The other way to judge heat; shown beside the table, never multiplied with it."""
    return 1.0 if temperature <= 70 else 0.5 ** ((temperature - 70) / 15)


@method(r"w = \frac{t}{h\,d}, \quad w \leq w_{\max}", None)
def interval_in_weeks(
    interval: Annotated[float, Is("time between greasings, running", "t", "hour", 0, 10_000_000)],
    hours: Annotated[float, Is("hours run in a day", "h", "hour/day", 0, 24)],
    days: Annotated[float, Is("days run in a week", "d", "day/week", 0, 7)],
    cap: Annotated[float, Is("longest time that is allowed", r"w_{\max}", "week", 1, 520)],
) -> Annotated[float, Is("time between greasings, calendar", "w", "week")]:
    """Running hours as calendar weeks
    Cut at the calendar cap, since grease ages standing still too. Under one week, an automatic feeder belongs there."""
    weeks = cap if hours * days == 0 else min(cap, interval / (hours * days))
    if weeks < 1:
        raise Refused(say("more often than weekly: an automatic feeder, or another grease"))
    return weeks


@method(r"G = 0.005\,D\,B", Citation("trade rule, the same in inch form 0.114 D B oz", "", "", "from memory"))
def grease_quantity(
    outside: Annotated[float, Is("outside diameter of the bearing", "D", "mm", 5, 2000)],
    width: Annotated[float, Is("width of the bearing", "B", "mm", 2, 1000)],
) -> Annotated[float, Is("grease at each greasing", "G", "g")]:
    """Grease at each greasing"""
    return 0.005 * outside * width


@method(r"V = \frac{\pi}{4} \frac{B\,(D^2 - d^2)}{1000} - \frac{m}{0.0078}", Citation("geometry of a ring", "", "", "derived"))
def initial_fill(
    bore: Annotated[float, Is("bore", "d", "mm", 3, 1000)],
    outside: Annotated[float, Is("outside diameter", "D", "mm", 5, 2000)],
    width: Annotated[float, Is("width", "B", "mm", 2, 1000)],
    mass: Annotated[float, Is("mass of the bearing", "m", "kg", 0.01, 5000)],
) -> Annotated[float, Is("free volume in the bearing", "V", "cm3")]:
    """Free volume inside a bearing, for its first fill"""
    volume = pi / 4 * width * (outside**2 - bore**2) / 1000 - mass / 0.0078
    if volume <= 0:
        raise Refused(say("the mass fills the ring: is it right?"))
    return volume


class Strokes(NamedTuple):
    strokes: Annotated[float, Is("strokes", "z")]
    given: Annotated[float, Is("grease they give", "G_z", "g")]


@method(r"z = \left\lceil \frac{G}{g} \right\rceil, \quad G_z = z\,g", None)
def gun_strokes(
    grease: Annotated[float, Is("grease wanted", "G", "g", 0, 100_000)],
    stroke: Annotated[float, Is("grease one stroke gives, weighed", "g", "g", 0.05, 50)],
) -> Strokes:
    """Strokes of a gun whose stroke has been weighed"""
    strokes = max(1, ceil(round(grease / stroke, 6)))
    return Strokes(float(strokes), strokes * stroke)


class Shots(NamedTuple):
    shots: Annotated[float, Is("shots", "k")]
    grease: Annotated[float, Is("grease in each", "G_k", "g")]
    every: Annotated[float, Is("time between them", "t_k", "hour")]


@method(r"k = \left\lceil \frac{G}{G_{\max}} \right\rceil, \quad G_k = \frac{G}{k}, \quad t_k = \frac{t}{k}", None)
def shot_split(
    grease: Annotated[float, Is("grease wanted", "G", "g", 0, 100_000)],
    most: Annotated[float, Is("most that is given at once", r"G_{\max}", "g", 0.1, 100_000)],
    interval: Annotated[float, Is("time between greasings", "t", "hour", 0, 10_000_000)],
) -> Shots:
    """Small amounts often: the same grams an hour in more shots
    At high speed a full charge churns and runs hot."""
    shots = max(1, ceil(round(grease / most, 6)))
    return Shots(float(shots), grease / shots, interval / shots)


class Speed(NamedTuple):
    n_dm: Annotated[float, Is("speed times mean diameter", r"n\,d_m")]
    verdict: Literal["inside", "over"]


@method(r"n\,d_m = n\,\frac{d + D}{2}", Citation("trade definition of the speed factor", "", "", "from memory"))
def speed_limit(
    speed: Annotated[float, Is("speed", "n", "rpm", 0, 100_000)],
    bore: Annotated[float, Is("bore of the ring", "d", "mm", 1, 2000)],
    outside: Annotated[float, Is("outside diameter", "D", "mm", 2, 3000)],
    allowed: Annotated[float, Is("limit of the grease", r"(n\,d_m)_{\max}", "", 1, 5_000_000)],
) -> Speed:
    """Speed against the limit of the grease"""
    found = speed * (bore + outside) / 2
    return Speed(found, "inside" if found <= allowed + 1e-9 else "over")


@method(r"T_{\min} \leq T \leq T_{\max}", None)
def grease_temperature(
    coldest: Annotated[float, Is("coldest start", r"T_{\mathrm{cold}}", "degC", -90, 600)],
    hottest: Annotated[float, Is("hottest running", r"T_{\mathrm{hot}}", "degC", -90, 600)],
    lowest: Annotated[float, Is("lowest temperature of the grease", r"T_{\min}", "degC", -90, 600)],
    highest: Annotated[float, Is("highest temperature of the grease", r"T_{\max}", "degC", -90, 600)],
    continuous: Annotated[float, Is("continuous limit planned with for its thickener", r"T_c", "degC", -90, 600)] = 600.0,
) -> Literal["inside", "too hot", "too cold", "above the continuous limit of its thickener"]:
    """Temperatures against the range of the grease"""
    if hottest > highest:
        return "too hot"
    if coldest < lowest:
        return "too cold"
    return "above the continuous limit of its thickener" if hottest > continuous else "inside"


class Use(NamedTuple):
    year: Annotated[float, Is("grease in a year", "G_a", "g")]
    with_allowance: Annotated[float, Is("with 10 % for purging", "G_b", "g")]


@method(r"G_a = G\,\frac{52}{w}, \quad G_b = 1.1\,G_a", None)
def grease_consumption(
    grease: Annotated[float, Is("grease at each greasing", "G", "g", 0, 100_000)],
    weeks: Annotated[float, Is("weeks between greasings", "w", "week", 0.1, 520)],
) -> Use:
    """Grease a position takes in a year"""
    year = grease * 52 / weeks
    return Use(year, 1.1 * year)


@method(r"G_{\max} = 0.25\,V\,\rho", None)
def quarter_of_free_space(
    volume: Annotated[float, Is("free volume in the bearing", "V", "cm3", 0, 1_000_000)],
    density: Annotated[float, Is("density of the grease", r"\rho", "g/cm3", 0.5, 2.5)],
) -> Annotated[float, Is("most grease given at once", r"G_{\max}", "g")]:
    """Most grease a fast bearing is given at once: a quarter of its free space"""
    return 0.25 * volume * density


@method(r"G = \rho \left( V + c\,V_h \right)", None)
def first_fill(
    free: Annotated[float, Is("free volume in the bearing", "V", "cm3", 0, 100_000)],
    cavity: Annotated[float, Is("free volume in the housing beside it", "V_h", "cm3", 0, 100_000)],
    share: Annotated[float, Is("share of the housing that is filled", "c", "", 0, 1)],
    density: Annotated[float, Is("density of the grease", r"\rho", "g/cm3", 0.5, 2.5)],
) -> Annotated[float, Is("first fill", "G", "g")]:
    """First fill: the bearing full, the housing in part
    The housing a third to a half full; nearly full only where the shaft turns slowly. A bearing sealed for life gets none."""
    return density * (free + share * cavity)


@method(r"z = \left\lceil \frac{G_b}{g_c} \right\rceil", None)
def grease_cartridges(
    grease: Annotated[float, Is("grease of one kind in a year", "G_b", "g", 0, 10_000_000)],
    cartridge: Annotated[float, Is("grease in a cartridge", "g_c", "g", 1, 50_000)],
) -> Annotated[float, Is("cartridges", "z")]:
    """Cartridges of one grease in a year"""
    return float(ceil(round(grease / cartridge, 6)))


@method("", Citation("21 CFR 178.3570 and ISO 21469: incidental contact", "", "", "from memory"))
def food_grease(
    stands: Literal["over or beside open product", "away from open product"],
    registered: Literal["incidental contact", "no contact", "direct contact", "not registered"],
) -> Literal["may be used", "must not be used"]:
    """Whether a grease may be used near food
    Over or beside open product only a grease registered for incidental contact; one registered for no contact is for places away from it.
    A grease that is not registered has no place where food is made. Gun and cartridge are kept apart and marked.
    What was greased with another kind is cleaned out, not purged."""
    if stands == "away from open product":
        return "must not be used" if registered == "not registered" else "may be used"
    return "may be used" if registered == "incidental contact" else "must not be used"


@method(r"\hat{v} = \sqrt{2}\,v_{\mathrm{rms}}", Citation("a sine wave; ISO 20816-1 gives limits as rms", "2016", "", "from memory"))
def vibration_peak(
    rms: Annotated[float, Is("vibration velocity, rms", r"v_{\mathrm{rms}}", "mm/s", 0, 500)],
) -> Annotated[float, Is("vibration velocity, peak, at least", r"\hat{v}", "mm/s")]:
    """Peak velocity of a vibration that was read as rms
    The least it can be: blows have higher peaks. A measured peak is better."""
    return sqrt(2) * rms
