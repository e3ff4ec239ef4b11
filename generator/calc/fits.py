"""Sizes: limits from deviations, fits, form of the seat, the crew's readings held against them."""

from collections import Counter
from math import ceil, floor
from typing import Annotated, Any, Literal, NamedTuple

from generator.method import Is, Refused, method
from generator.say import say
from generator.value import Citation

ISO_286_1 = Citation("ISO 286-1", "2010", "4.3", "seen")


class Limits(NamedTuple):
    lower: Annotated[float, Is("lower limit of size", r"d_{\min}", "mm")]
    upper: Annotated[float, Is("upper limit of size", r"d_{\max}", "mm")]


@method(r"d_{\min} = d + \mathrm{ei}, \quad d_{\max} = d + \mathrm{es}", ISO_286_1)
def size_limits(
    diameter: Annotated[float, Is("nominal size", "d", "mm", 3, 500)],
    lower_deviation: Annotated[float, Is("lower deviation", r"\mathrm{ei}", "um", -10_000, 10_000)],
    upper_deviation: Annotated[float, Is("upper deviation", r"\mathrm{es}", "um", -10_000, 10_000)],
) -> Limits:
    """Limits of size from the deviations
    The deviations come from the table of the tolerance class; a size is never limited by a deviation that was rounded first."""
    return Limits(diameter + lower_deviation / 1000, diameter + upper_deviation / 1000)


class Fit(NamedTuple):
    least: Annotated[float, Is("least interference (negative: clearance)", r"\delta_{\min}", "um")]
    most: Annotated[float, Is("greatest interference (negative: clearance)", r"\delta_{\max}", "um")]


@method(r"\delta_{\max} = \mathrm{es} - t_{\mathrm{low}}, \quad \delta_{\min} = \mathrm{ei} - t_{\mathrm{up}}", ISO_286_1)
def seat_fit(
    lower_deviation: Annotated[float, Is("lower deviation of the shaft", r"\mathrm{ei}", "um", -10_000, 10_000)],
    upper_deviation: Annotated[float, Is("upper deviation of the shaft", r"\mathrm{es}", "um", -10_000, 10_000)],
    bore_lower: Annotated[float, Is("lower deviation of the bore", r"t_{\mathrm{low}}", "um", -1000, 1000)],
    bore_upper: Annotated[float, Is("upper deviation of the bore", r"t_{\mathrm{up}}", "um", -1000, 1000)] = 0.0,
) -> Fit:
    """Fit of a cylindrical bore on its seat
    For cylindrical bores only; a tapered bore has no seat fit. Before any stress is computed, what the surfaces lose by smoothing is taken off."""
    return Fit(lower_deviation - bore_upper, upper_deviation - bore_lower)


class Form(NamedTuple):
    cylindricity: Annotated[float, Is("cylindricity (radial)", "t_1", "um")]
    out_of_round: Annotated[float, Is("greatest difference of diameters that is accepted", r"2\,t_1", "um")]
    run_out: Annotated[float, Is("total radial run-out", "t_3", "um")]
    roughness: Annotated[float, Is("roughness", r"R_a", "um")]


@method(r"t_1 = \frac{\mathrm{IT5}}{2} \;(\mathrm{h10, h11:}\; \frac{\mathrm{IT7}}{2}), \quad t_3 = \mathrm{IT5}", None)
def seat_form_and_finish(
    diameter: Annotated[float, Is("seat diameter", "d", "mm", 3, 500)],
    it5: Annotated[float, Is("standard tolerance IT5 at that size", r"\mathrm{IT5}", "um", 1, 100)],
    it7: Annotated[float, Is("standard tolerance IT7 at that size", r"\mathrm{IT7}", "um", 1, 200)],
    seat: Literal[
        "press seat, grade 6 or finer", "press seat, grade 7", "clearance seat h5 to h8", "sleeve seat h9", "sleeve seat h10 or wider"
    ],
) -> Form:
    """Form and finish of a seat
    Two-point readings are accepted up to twice the radial zone. They do not see three- or five-lobed form, nor a bend: where fretting was found, check with an indicator and V-block."""
    radial = it7 / 2 if seat == "sleeve seat h10 or wider" else it5 / 2
    press = 0.8 if diameter <= 80 and seat == "press seat, grade 6 or finer" else 1.6
    rough = press if seat.startswith("press") else 1.6 if seat.startswith("clearance") else 3.2
    return Form(radial, 2 * radial, it5, rough)


@method(r"d_{20} = d_t \left( 1 - \alpha\,(t - 20) \right)", Citation("ISO 1", "2016", "reference temperature 20 °C", "from memory"))
def reading_at_20_degrees(
    reading: Annotated[float, Is("diameter as read", "d_t", "mm", 1, 2000)],
    temperature: Annotated[float, Is("temperature of the shaft when read", "t", "degC", -40, 150)],
    expansion: Annotated[float, Is("thermal expansion of the shaft", r"\alpha", "1e-6/K", 5, 30)],
) -> Annotated[float, Is("diameter at 20 °C", "d_{20}", "mm")]:
    """A micrometer reading brought to 20 °C
    The micrometer is taken to be at 20 °C; one that lay on the warm shaft reads wrong in a way nobody can correct."""
    return reading * (1 - expansion * 1e-6 * (temperature - 20))


class Reading(NamedTuple):
    section: Annotated[float, Is("section along the seat", "", "", 1, 9)]
    diameter: Annotated[float, Is("diameter at 20 °C", "d_i", "mm", 1, 2000)]


class Seat(NamedTuple):
    smallest: Annotated[float, Is("smallest reading", r"d_{\min}", "mm")]
    largest: Annotated[float, Is("largest reading", r"d_{\max}", "mm")]
    out_of_round: Annotated[float, Is("greatest difference within a section", r"\Delta_{o}", "um")]
    spread: Annotated[float, Is("greatest difference over the whole seat", r"\Delta", "um")]
    verdict: Literal["inside", "below the limit", "above the limit", "size inside, form outside"]


def _too_few(readings: tuple[Reading, ...], **_: Any) -> bool:
    counts = Counter(one.section for one in readings)
    return len(counts) < 2 or min(counts.values()) < 3


@method(
    r"\Delta = \max d_i - \min d_i \leq 2\,t_1, \quad d_{\mathrm{low}} \leq d_i \leq d_{\mathrm{up}}",
    None,
    beware={"fewer readings than three directions at each of two sections: form is not known": _too_few},
)
def shaft_readings(
    readings: tuple[Reading, ...],
    lower: Annotated[float, Is("lower limit", r"d_{\mathrm{low}}", "mm", 1, 2000)],
    upper: Annotated[float, Is("upper limit", r"d_{\mathrm{up}}", "mm", 1, 2000)],
    allowed: Annotated[float, Is("greatest difference of diameters that is accepted", r"2\,t_1", "um", 0, 1000)],
) -> Seat:
    """The crew's readings held against band and form
    Every reading must lie inside the band, and all of them within twice the cylindricity of each other. Size is judged before form."""
    if not readings:
        raise Refused(say("no reading of the seat"))
    sizes = [one.diameter for one in readings]
    sections: dict[float, list[float]] = {}
    for one in readings:
        sections.setdefault(one.section, []).append(one.diameter)
    round_ = max(max(at) - min(at) for at in sections.values()) * 1000
    spread = (max(sizes) - min(sizes)) * 1000
    tiny = 1e-7
    verdict: Literal["inside", "below the limit", "above the limit", "size inside, form outside"] = "inside"
    if min(sizes) < lower - tiny:
        verdict = "below the limit"
    elif max(sizes) > upper + tiny:
        verdict = "above the limit"
    elif spread > allowed + 1e-4:
        verdict = "size inside, form outside"
    return Seat(min(sizes), max(sizes), round(round_, 6), round(spread, 6), verdict)


class Rounded(NamedTuple):
    lower: Annotated[float, Is("lower limit as it can be read", r"d_{\min}", "mm")]
    upper: Annotated[float, Is("upper limit as it can be read", r"d_{\max}", "mm")]


@method(r"d_{\min} = s \left\lceil \frac{d_1}{s} \right\rceil, \quad d_{\max} = s \left\lfloor \frac{d_2}{s} \right\rfloor", None)
def shaft_limit_rounding(
    lower: Annotated[float, Is("lower limit", "d_1", "mm", 0, 2000)],
    upper: Annotated[float, Is("upper limit", "d_2", "mm", 0, 2000)],
    step: Annotated[float, Is("finest figure that is read", "s", "mm", 0.00001, 1)],
) -> Rounded:
    """Limits rounded inward
    A printed limit never widens the band: the lower one goes up, the upper one down, to what a micrometer here can read."""
    low = ceil(round(lower / step, 6)) * step
    high = floor(round(upper / step, 6)) * step
    if low > high + 1e-12:
        raise Refused(say("no figure that can be read lies inside the band; a finer micrometer is needed"))
    return Rounded(round(low, 9), round(high, 9))


class Bar(NamedTuple):
    least: Annotated[float, Is("least the bar may measure", r"b_{\min}", "mm")]
    verdict: Literal["as bought, measure anyway", "measure and select", "machine"]


@method(r"b_{\min} = d - t", Citation("ASTM A108", "2003", "Table A1.1", "seen"))
def bar_against_band(
    nominal: Annotated[float, Is("nominal size of the bar", "d", "mm", 3, 230)],
    minus: Annotated[float, Is("size tolerance, minus only", "t", "mm", 0, 1)],
    lower: Annotated[float, Is("lower limit of the seat", r"d_{\min}", "mm", 1, 230)],
    upper: Annotated[float, Is("upper limit of the seat", r"d_{\max}", "mm", 1, 230)],
) -> Bar:
    """A bought bar against the band of the seat
    Cold-finished bar is drawn under size, never over. What may be bought inside its own tolerance may still be loose under a bearing."""
    least = nominal - minus
    if least >= lower - 1e-9 and nominal <= upper + 1e-9:
        return Bar(least, "as bought, measure anyway")
    if nominal < lower - 1e-9 or least > upper + 1e-9:
        return Bar(least, "machine")
    return Bar(least, "measure and select")


@method("", None)
def inch_fraction(size: Annotated[float, Is("a size", "d", "in", 0, 100)]) -> str:
    """A size in inches as the trade says it
    Exact 64ths are shown as a fraction, anything else with four decimals; 1.94 is no 1 15/16."""
    for bottom in (1, 2, 4, 8, 16, 32, 64):
        top = round(size * bottom)
        if abs(top / bottom - size) < 1e-9:
            whole, rest = divmod(top, bottom)
            return str(whole) if not rest else f"{whole} {rest}/{bottom}" if whole else f"{rest}/{bottom}"
    return f"{size:.4f}"
