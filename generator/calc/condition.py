"""What is listened for and felt at a running bearing: defect frequencies, vibration, warmth while running in."""

from itertools import combinations, pairwise
from math import asin, cos, pi, radians
from typing import Annotated, Any, Literal, NamedTuple

from generator.method import Is, Refused, method
from generator.say import say
from generator.value import Citation

KINEMATICS = Citation("ISO 13373-3; kinematics of a rolling bearing", "2015", "defect frequencies", "from memory")
ZONES = Citation("ISO 10816-3", "2009", "criterion I and annex A", "from memory")
CHANGE = Citation("ISO 10816-3", "2009", "criterion II and operational limits", "from memory")
SPEED = Is("speed", "n", "rpm", 0.1, 50_000)
ELEMENTS = Is("rolling elements in one row", "Z", "", 3, 300)
VELOCITY = Is("velocity of vibration, rms", "v", "mm/s", 0, 1000)
BC = Is("boundary of zones B and C", "v_{BC}", "mm/s", 0.01, 500)
CD = Is("boundary of zones C and D", "v_{CD}", "mm/s", 0.01, 500)
WHOLE = "the number of rolling elements is whole"


class Defects(NamedTuple):
    ftf: Annotated[float, Is("turns of the cage in one turn of the shaft", r"o_{\mathrm{FTF}}")]
    bpfo: Annotated[float, Is("passes over a defect of the outer ring in one turn", r"o_{\mathrm{BPFO}}")]
    bpfi: Annotated[float, Is("passes over a defect of the inner ring in one turn", r"o_{\mathrm{BPFI}}")]
    bsf: Annotated[float, Is("spins of a rolling element in one turn", r"o_{\mathrm{BSF}}")]
    twice_bsf: Annotated[float, Is("strikes of a defect of a rolling element in one turn", r"2\,o_{\mathrm{BSF}}")]
    ftf_hz: Annotated[float, Is("frequency of the cage", r"f_{\mathrm{FTF}}", "Hz")]
    bpfo_hz: Annotated[float, Is("frequency of a defect of the outer ring", r"f_{\mathrm{BPFO}}", "Hz")]
    bpfi_hz: Annotated[float, Is("frequency of a defect of the inner ring", r"f_{\mathrm{BPFI}}", "Hz")]
    bsf_hz: Annotated[float, Is("frequency of spin of a rolling element", r"f_{\mathrm{BSF}}", "Hz")]
    twice_bsf_hz: Annotated[float, Is("frequency of a defect of a rolling element", r"2\,f_{\mathrm{BSF}}", "Hz")]


@method(
    r"o_{\mathrm{FTF}} = \frac{1 - \gamma}{2}, \quad o_{\mathrm{BPFO}} = \frac{Z}{2}(1 - \gamma), \quad o_{\mathrm{BPFI}} = \frac{Z}{2}(1 + \gamma),"
    r" \quad o_{\mathrm{BSF}} = \frac{D_{pw}}{2\,D_w}\left(1 - \gamma^2\right), \quad \gamma = \frac{D_w \cos\alpha}{D_{pw}}, \quad f = o\,\frac{n}{60}",
    KINEMATICS,
    holds={
        WHOLE: lambda elements, **_: _whole(elements),
        "the rolling elements have room on their circle": lambda element, pitch, elements, **_: (
            element < pitch and elements * asin(element / pitch) <= pi + 1e-9
        ),
    },
    beware={"rolling elements slip: the lines stand 1 to 2 % beside these figures": lambda **_: True},
)
def defect_frequencies(
    element: Annotated[float, Is("diameter of the rolling element", "D_w", "mm", 0.1, 500)],
    pitch: Annotated[float, Is("pitch circle of the rolling elements", "D_{pw}", "mm", 1, 3000)],
    elements: Annotated[float, ELEMENTS],
    speed: Annotated[float, SPEED],
    angle: Annotated[float, Is("contact angle", r"\alpha", "deg", 0, 89)] = 0.0,
) -> Defects:
    """Frequencies at which a defect in a bearing is heard
    The outer ring stands, the inner ring turns. A defect of a rolling element strikes both rings: it shows at twice its spin."""
    part = element * cos(radians(angle)) / pitch
    cage, spin = (1 - part) / 2, pitch / (2 * element) * (1 - part**2)
    orders = (cage, elements * cage, elements / 2 * (1 + part), spin, 2 * spin)
    return Defects(*orders, *(order * speed / 60 for order in orders))


class RoughDefects(NamedTuple):
    ftf: Annotated[float, Is("turns of the cage in one turn of the shaft", r"o_{\mathrm{FTF}}")]
    bpfo: Annotated[float, Is("passes over a defect of the outer ring in one turn", r"o_{\mathrm{BPFO}}")]
    bpfi: Annotated[float, Is("passes over a defect of the inner ring in one turn", r"o_{\mathrm{BPFI}}")]
    ftf_hz: Annotated[float, Is("frequency of the cage", r"f_{\mathrm{FTF}}", "Hz")]
    bpfo_hz: Annotated[float, Is("frequency of a defect of the outer ring", r"f_{\mathrm{BPFO}}", "Hz")]
    bpfi_hz: Annotated[float, Is("frequency of a defect of the inner ring", r"f_{\mathrm{BPFI}}", "Hz")]


@method(
    r"o_{\mathrm{FTF}} \approx 0.4, \quad o_{\mathrm{BPFO}} \approx 0.4\,Z, \quad o_{\mathrm{BPFI}} \approx 0.6\,Z, \quad f = o\,\frac{n}{60}",
    None,
    holds={WHOLE: lambda elements, **_: _whole(elements)},
    beware={"rough figures, the inside of the bearing is not on file: to look near, not at": lambda **_: True},
)
def rough_defect_frequencies(elements: Annotated[float, ELEMENTS], speed: Annotated[float, SPEED]) -> RoughDefects:
    """Frequencies of a bearing whose inside is not known
    True where the rolling element is a fifth of its pitch circle; from the number of rolling elements alone."""
    orders = (0.4, 0.4 * elements, 0.6 * elements)
    return RoughDefects(*orders, *(order * speed / 60 for order in orders))


def _whole(number: float) -> bool:
    return abs(number - round(number)) < 1e-9


@method(
    r"\mathrm{A}: v \leq v_{AB}, \quad \mathrm{B}: v \leq v_{BC}, \quad \mathrm{C}: v \leq v_{CD}, \quad \mathrm{D}: v > v_{CD}",
    ZONES,
    holds={"the boundaries of the zones rise from A to D": lambda ab, bc, cd, **_: ab < bc < cd},
)
def vibration_zones(
    velocity: Annotated[float, VELOCITY],
    ab: Annotated[float, Is("boundary of zones A and B", "v_{AB}", "mm/s", 0.01, 500)],
    bc: Annotated[float, BC],
    cd: Annotated[float, CD],
) -> Literal["A", "B", "C", "D"]:
    """Zone of a reading of vibration
    The greatest of the directions at one bearing. A: as new. B: to run without limit. C: not for long. D: may do damage."""
    if velocity <= ab + 1e-9:
        return "A"
    if velocity <= bc + 1e-9:
        return "B"
    return "C" if velocity <= cd + 1e-9 else "D"


class Reading(NamedTuple):
    velocity: Annotated[float, VELOCITY]


class Alarms(NamedTuple):
    baseline: Annotated[float, Is("baseline", "v_0", "mm/s")]
    alarm: Annotated[float, Is("alarm", r"v_{\mathrm{alarm}}", "mm/s")]
    trip: Annotated[float, Is("never to be set higher: trip", r"v_{\mathrm{trip}}", "mm/s")]


@method(
    r"v_0 = \frac{1}{k} \sum v, \quad v_{\mathrm{alarm}} = \min\left(v_0 + 0.25\,v_{BC},\; 1.25\,v_{BC}\right), \quad v_{\mathrm{trip}} = 1.25\,v_{CD}",
    CHANGE,
    holds={"the boundaries of the zones rise from A to D": lambda bc, cd, **_: bc < cd},
    beware={
        "the baseline lies above zone B: find out why before it counts as usual; the alarm is held at 1.25 times the boundary of zones B and C": lambda readings, bc, **_: (
            bool(readings) and _mean(readings) > bc
        ),
    },
)
def vibration_alarms(readings: tuple[Reading, ...], bc: Annotated[float, BC], cd: Annotated[float, CD]) -> Alarms:
    """Baseline, alarm and trip of one measuring point
    From three readings or more after running in, of the same point and direction, at the same load and speed."""
    if len(readings) < 3:
        raise Refused(say("a baseline takes three readings or more"))
    baseline = _mean(readings)
    if baseline >= 1.25 * bc:
        raise Refused(say("the readings lie above every alarm that may be set: mend the machine first"))
    return Alarms(baseline, min(baseline + 0.25 * bc, 1.25 * bc), 1.25 * cd)


def _mean(readings: Any) -> float:
    return float(sum(one.velocity for one in readings) / len(readings))


class Change(NamedTuple):
    change: Annotated[float, Is("change of vibration", r"\Delta v", "mm/s")]
    verdict: Literal["significant", "not significant"]


@method(r"\Delta v = v - v_0, \quad \left|\Delta v\right| > 0.25\,v_{BC}", CHANGE)
def significant_change(
    before: Annotated[float, Is("velocity before, rms", "v_0", "mm/s", 0, 1000)],
    now: Annotated[float, Is("velocity now, rms", "v", "mm/s", 0, 1000)],
    bc: Annotated[float, BC],
) -> Change:
    """Whether vibration has changed enough to look for the cause
    Upward or downward, in whatever zone it lies: less vibration may be a part that came loose."""
    change = now - before
    return Change(change, "significant" if abs(change) > 0.25 * bc + 1e-9 else "not significant")


class RunIn(NamedTuple):
    usual_from: Annotated[float, Is("usual after running in, from", "T_1", "degC")]
    usual_to: Annotated[float, Is("usual after running in, to", "T_2", "degC")]
    alarm: Annotated[float, Is("alarm", r"T_{\mathrm{alarm}}", "degC")]
    stop: Annotated[float, Is("stop the machine", r"T_{\mathrm{stop}}", "degC")]


@method(
    r"T_1 = T_a + 10, \quad T_2 = T_a + 40, \quad T_{\mathrm{stop}} = \min\left(T_g - 20,\; T_a + 50\right),"
    r" \quad T_{\mathrm{alarm}} = \min\left(T_0 + 15,\; T_{\mathrm{stop}}\right), \quad T_0 + 15 = T_2 \; \mathrm{without}\; T_0",
    None,
    beware={
        "the alarm is held at the temperature of stopping": lambda ambient, limit, baseline, **_: (
            _alarm(ambient, baseline) > _stop(ambient, limit)
        ),
        "usual warmth would pass the temperature of stopping: the grease has little to spare here": lambda ambient, limit, **_: (
            ambient + 40 > _stop(ambient, limit)
        ),
        "no baseline yet: the alarm is the end of the usual": lambda baseline, **_: baseline is None,
    },
)
def run_in_temperature(
    ambient: Annotated[float, Is("temperature of the air", "T_a", "degC", -60, 200)],
    limit: Annotated[float, Is("continuous limit of the grease", "T_g", "degC", 0, 400)],
    baseline: Annotated[float | None, Is("settled temperature of this housing", "T_0", "degC", -60, 400)] = None,
) -> RunIn:
    """How warm a housing may become while it runs in
    Felt at the housing after 0, 15, 30, 60, 120 and 240 minutes: it rises, then falls a little and stays.
    For a bearing that is warmed by its own friction alone; where the process heats it, the plant's own figures stand."""
    stop = _stop(ambient, limit)
    if ambient >= stop:
        raise Refused(say("the air is too warm for this grease: nothing is left for the bearing's own warmth"))
    if baseline is not None and baseline >= stop:
        raise Refused(say("the baseline lies at or above the temperature of stopping"))
    return RunIn(ambient + 10, ambient + 40, min(_alarm(ambient, baseline), stop), stop)


@method(
    r"T_1 = T_0 - 10, \quad T_2 = T_0 + 10, \quad T_{\mathrm{alarm}} = T_0 + 15, \quad T_{\mathrm{stop}} = T_g - 20",
    None,
)
def run_in_warmed(
    settled: Annotated[float, Is("settled temperature of this housing, warmed by the process", "T_0", "degC", -60, 400)],
    limit: Annotated[float, Is("continuous limit of the grease", "T_g", "degC", 0, 400)],
) -> RunIn:
    """How warm a housing that the process warms may become while it runs in
    Held against its own usual with the process at its usual heat; the air says nothing of it."""
    if settled + 15 > limit - 20:
        raise Refused(say("it settles within 35 K of the limit of its grease: no room is left to warn and to stop"))
    return RunIn(settled - 10, settled + 10, settled + 15, limit - 20)


def _stop(ambient: float, limit: float) -> float:
    return min(limit - 20, ambient + 50)


def _alarm(ambient: float, baseline: float | None) -> float:
    return ambient + 40 if baseline is None else baseline + 15


class Felt(NamedTuple):
    minutes: Annotated[float, Is("time since the start", "t", "minute", 0, 100_000)]
    temperature: Annotated[float, Is("temperature of the housing", "T", "degC", -60, 400)]


class RunInVerdict(NamedTuple):
    verdict: Literal["settled", "still rising", "falling", "too early to say", "stop"]
    highest: Annotated[float, Is("highest temperature", r"T_{\max}", "degC")]
    rise: Annotated[float, Is("greatest rise over the air", r"T_{\max} - T_a", "K")]
    fastest: Annotated[float, Is("fastest rise, in kelvin a minute", r"\max\frac{\Delta T}{\Delta t}")]


@method(
    r"\mathrm{stop}: T \geq T_{\mathrm{stop}}, \; T - T_a > 50\,\mathrm{K} \; \mathrm{or} \; \frac{\Delta T}{\Delta t} > 1\,\mathrm{K/min};"
    r" \quad \mathrm{settled}: \left|\Delta T\right| \leq 2\,\mathrm{K/h}",
    None,
)
def run_in_verdict(
    readings: tuple[Felt, ...],
    ambient: Annotated[float, Is("temperature of the air", "T_a", "degC", -60, 200)],
    stop: Annotated[float, Is("stop the machine", r"T_{\mathrm{stop}}", "degC", -60, 400)],
) -> RunInVerdict:
    """What the temperatures while running in say
    Settled takes an hour or more in which no two readings lie further apart than 2 K, or 2 K for each hour between them.
    A stop once called for is not undone by later, cooler readings."""
    if len(readings) < 2:
        raise Refused(say("a verdict takes two readings or more"))
    if any(one.minutes >= after.minutes for one, after in pairwise(readings)):
        raise Refused(say("the readings are not in the order of their times"))
    highest = max(one.temperature for one in readings)
    fastest = max((after.temperature - one.temperature) / (after.minutes - one.minutes) for one, after in pairwise(readings))
    hot = highest >= stop - 1e-9 or highest - ambient > 50 + 1e-9 or fastest > 1 + 1e-9
    return RunInVerdict("stop" if hot else _course(readings), highest, highest - ambient, fastest)


def _course(readings: tuple[Felt, ...]) -> Literal["settled", "still rising", "falling", "too early to say"]:
    last, before = readings[-1], readings[-2]
    since = max((i for i, one in enumerate(readings) if last.minutes - one.minutes >= 60 - 1e-9), default=None)
    if since is None:
        return "too early to say"
    apart = combinations(readings[since:], 2)
    if all(abs(b.temperature - a.temperature) <= 2 * max(1.0, (b.minutes - a.minutes) / 60) + 1e-9 for a, b in apart):
        return "settled"
    move, minutes = last.temperature - before.temperature, last.minutes - before.minutes
    if abs(move) > 2 * max(1.0, minutes / 60):
        return "falling" if move < 0 else "still rising"
    # even at last: risen only if it stands no lower than anything of the last hour, else it is down from its peak
    peak = max(one.temperature for one in readings[since:])
    return "falling" if last.temperature < peak - 1e-9 else "still rising"
