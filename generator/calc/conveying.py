"""What conveying machines bring onto a shaft: belt conveyor pulleys, elevator heads, screws."""

from math import atan, cos, exp, pi, sqrt, tan
from math import radians as rad
from typing import Annotated, NamedTuple

from generator.calc.beam import GRAVITY
from generator.calc.drives import POWER
from generator.calc.shafts import STATICS
from generator.method import Is, Refused, method
from generator.say import say
from generator.value import Citation

FRICTION = Is("friction of belt on pulley", r"\mu", "", 0.02, 1.2)
WRAP = Is("angle the belt lies on the pulley", r"\theta", "deg", 10, 420)


class Strands(NamedTuple):
    effective: Annotated[float, Is("effective pull", "T_e", "N")]
    tight: Annotated[float, Is("pull of the tight strand", "T_1", "N")]
    slack: Annotated[float, Is("pull of the slack strand", "T_2", "N")]
    grip: Annotated[float, Is("share of the grip that is used", r"\frac{T_1}{T_2 e^{\mu\theta}}", "")]
    resultant: Annotated[float, Is("both strands together", "R", "N")]


@method(
    r"T_e = \frac{1000\,f\,P}{v}, \quad T_2 = \max\left(\frac{T_e}{e^{\mu\theta} - 1},\; T_{\min}\right), \quad T_1 = T_2 + T_e, \quad R = \sqrt{T_1^2 + T_2^2 - 2 T_1 T_2 \cos\theta}",
    Citation("ISO 5048", "1989", "drive pulleys", "from memory"),
)
def conveyor_pulley_resultant(
    power: Annotated[float, POWER],
    belt_speed: Annotated[float, Is("speed of the belt", "v", "m/s", 0.01, 100)],
    wrap: Annotated[float, Is("angle the belt lies on this one pulley", r"\theta", "deg", 10, 360)],
    friction: Annotated[float, FRICTION],
    least_slack: Annotated[float, Is("least pull of the slack strand", r"T_{\min}", "N", 0, 5_000_000)] = 0.0,
    service: Annotated[float, Is("service factor", "f", "", 0.1, 10)] = 1.0,
) -> Strands:
    """Strands of a driving conveyor pulley, and both together
    The slack strand is as tight as slipping asks, or as sag and take-up ask, whichever is more. The
    service factor is on the effective pull, so that the slack strand is tight enough for it; it is applied here and nowhere else."""
    effective = 1000 * service * power / belt_speed
    grip = exp(friction * rad(wrap))
    slack = max(effective / (grip - 1), least_slack)
    tight = slack + effective
    used = tight / (slack * grip) if slack > 0 else 0.0
    return Strands(effective, tight, slack, used, sqrt(max(0.0, tight**2 + slack**2 - 2 * tight * slack * cos(rad(wrap)))))


@method(r"C_w = \frac{1}{e^{\mu\theta} - 1}", Citation("ANSI/CEMA 550, belt conveyor wrap factors", "", "", "from memory"))
def wrap_factor(
    wrap: Annotated[float, WRAP], friction: Annotated[float, FRICTION]
) -> Annotated[float, Is("slack strand over effective pull", "C_w", "")]:
    """Slack strand that keeps a belt from slipping, over the effective pull"""
    return 1 / (exp(friction * rad(wrap)) - 1)


class Head(NamedTuple):
    carried: Annotated[float, Is("mass carried on a metre", "q", "kg/m")]
    slack: Annotated[float, Is("pull of the empty strand", "T_2", "N")]
    tight: Annotated[float, Is("pull of the full strand", "T_1", "N")]
    load: Annotated[float, Is("both strands on the head shaft", "T_1 + T_2", "N")]


@method(
    r"q = \frac{Q}{3.6\,v}, \quad T_2 = g H m' + T_b, \quad T_1 = T_2 + g q (H + H_0)",
    STATICS,
    beware={"the belt slips on the head pulley: the boot must be tighter or the pulley lagged": lambda **facts: _slips(**facts)},
)
def elevator_head_shaft(
    lift: Annotated[float, Is("height from boot to head", "H", "m", 0, 200)],
    carries: Annotated[float, Is("what it lifts", "Q", "t/h", 0, 10_000)],
    belt_speed: Annotated[float, Is("speed of the belt", "v", "m/s", 0.01, 20)],
    strand: Annotated[float, Is("mass of belt and buckets of one strand", "m'", "kg/m", 0, 1000)],
    boot: Annotated[float, Is("pull of each strand at the boot", "T_b", "N", 0, 1_000_000)],
    digging: Annotated[float, Is("lift that digging is worth", "H_0", "m", 0, 50)],
    friction: Annotated[float | None, FRICTION] = None,  # noqa: ARG001 judged in the remark
) -> Head:
    """Load on the head shaft of a bucket elevator, straight down
    A start with a full boot is more: judge the static safety with it. Whether the belt grips is judged only with a friction."""
    return _head(lift, carries, belt_speed, strand, boot, digging)


def _head(lift: float, carries: float, belt_speed: float, strand: float, boot: float, digging: float) -> Head:
    carried = carries / (3.6 * belt_speed)
    slack = GRAVITY * lift * strand + boot
    tight = slack + GRAVITY * carried * (lift + digging)
    return Head(carried, slack, tight, tight + slack)


def _slips(friction: float | None, **facts: float) -> bool:
    found = _head(**facts)
    return friction is not None and found.slack > 0 and found.tight > found.slack * exp(friction * pi)


class Screw(NamedTuple):
    thrust: Annotated[float, Is("push along the shaft", "F", "N")]
    most: Annotated[float, Is("the same without friction, its upper bound", r"F_{\max}", "N")]


@method(
    r"F = \frac{1000\,T}{r_e \tan(\lambda + \varphi)}, \quad \lambda = \arctan\frac{p}{2\pi r_e}, \quad \varphi = \arctan\mu, \quad F_{\max} = \frac{2000\,\pi\,T}{p}",
    Citation("statics of a screw", "", "", "derived"),
)
def screw_thrust(
    torque: Annotated[float, Is("torque at the screw", "T", "N.m", 0, 10_000_000)],
    radius: Annotated[float, Is("radius at which the material pushes back", "r_e", "mm", 1, 5000)],
    lead: Annotated[float, Is("lead of the flight", "p", "mm", 1, 5000)],
    friction: Annotated[float, Is("friction of the material on the flight", r"\mu", "", 0, 1.2)],
) -> Screw:
    """Push of a screw along its shaft, against the way the material goes
    It comes to the unit that holds the shaft endwise, best at the discharge, so that the shaft is drawn and not pushed."""
    slope = atan(lead / (2 * pi * radius)) + atan(friction)
    if slope >= pi / 2 - 1e-9:
        raise Refused(say("so steep a flight with so much friction moves nothing"))
    return Screw(1000 * torque / (radius * tan(slope)), 2000 * pi * torque / lead)


@method(r"r_e = 0.375\,D", None)
def screw_radius(
    diameter: Annotated[float, Is("outside diameter of the screw", "D", "mm", 10, 5000)],
) -> Annotated[float, Is("radius at which the material pushes back", "r_e", "mm")]:
    """Radius at which the material pushes back on a screw, between 0.35 and 0.40 of its diameter"""
    return 0.375 * diameter


@method(
    r"P = \frac{Q\,(\lambda L + H)}{367} + \frac{D\,L}{20}",
    Citation("ISO 7119", "1981", "power of screw conveyors", "from memory"),
    holds={"it lifts no more than it is long": lambda length, lift, **_: abs(lift) <= length},
)
def screw_power(
    carries: Annotated[float, Is("what it conveys", "Q", "t/h", 0, 10_000)],
    resistance: Annotated[float, Is("progress resistance of the material", r"\lambda", "", 0.5, 8)],
    length: Annotated[float, Is("length", "L", "m", 0, 200)],
    lift: Annotated[float, Is("height it lifts", "H", "m", -100, 100)],
    diameter: Annotated[float, Is("diameter of the screw", "D", "m", 0.05, 5)],
) -> Annotated[float, Is("power at the screw", "P", "kW")]:
    """Power of a screw conveyor, to hold a typed one against"""
    moving = carries * (resistance * length + lift) / 367
    if moving < 0:
        raise Refused(say("the screw falls so steeply that the material drives it"))
    return moving + diameter * length / 20
