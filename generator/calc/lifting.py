"""What a jack or a sling must carry while a bearing is worked on, and what the shaft's steel bears."""

from math import cos, pi, sqrt
from math import radians as rad
from typing import Annotated, Literal, NamedTuple

from generator.calc.beam import GRAVITY
from generator.calc.shafts import STATICS, Acting, Carried
from generator.method import Is, Refused, method
from generator.say import say
from generator.value import Citation

SHIGLEY = "Shigley's Mechanical Engineering Design"


class Lifted(NamedTuple):
    jack: Annotated[float, Is("load on the jack", "R_j", "N")]
    other: Annotated[float, Is("load left on the other support", "R_o", "N")]
    verdict: Literal["stands", "tips: hold the other end down first"]


@method(r"R_j = \frac{\sum W_i\,(x_i - x_o)}{x_j - x_o}, \quad R_o = \sum W_i - R_j", STATICS)
def gravity_support_load(
    jack: Annotated[float, Is("place of the jack", "x_j", "mm", 0, 100_000)],
    other: Annotated[float, Is("place of the support that stays", "x_o", "mm", 0, 100_000)],
    weights: tuple[Acting, ...],
) -> Lifted:
    """What a jack must carry while the bearing beside it is off, the other support staying
    Weights alone, counted downward: every drive is isolated, belts, counterweights and backstops are secured."""
    if abs(jack - other) < 1e-6:
        raise Refused(say("the jack stands at the other support"))
    at_jack = sum(one.force * (one.at - other) + one.couple for one in weights) / (jack - other)
    left = sum(one.force for one in weights) - at_jack
    return Lifted(at_jack, left, "stands" if left >= -1e-9 and at_jack >= -1e-9 else "tips: hold the other end down first")


class Part(NamedTuple):
    mass: Annotated[float, Is("mass of a part", "m_i", "kg", 0, 100_000)]


@method(r"m = \sum m_i", None)
def unit_mass(parts: tuple[Part, ...]) -> Annotated[float, Is("mass of the unit", "m", "kg")]:
    """Mass of what is handled as one piece
    Bearing, sleeve and housing of a unit."""
    if not parts:
        raise Refused(say("no part is given"))
    return sum(one.mass for one in parts)


@method(r"F = \sum W_i", STATICS)
def whole_weight(weights: tuple[Acting, ...]) -> Annotated[float, Is("weight of the whole", "F", "N")]:
    """Weight of a shaft with all that sits on it
    Where every place that carries it pushes upward, none of them carries more than this."""
    if not weights:
        raise Refused(say("no weight is given"))
    return sum(one.force for one in weights)


class HeldDown(NamedTuple):
    pull: Annotated[float, Is("pull that holds the shaft down", "F_d", "N")]
    rating: Annotated[float, Is("least rating of what pulls", "F", "N")]


@method(r"F_d = -R_j, \quad F \ge s\,F_d", STATICS)
def hold_down(
    load: Annotated[float, Is("load on the jack, negative where the shaft rises", "R_j", "N", -5_000_000, 5_000_000)],
    margin: Annotated[float, Is("margin", "s", "", 1, 5)],
) -> HeldDown:
    """What holds down a shaft that would tip up where its bearing is taken off"""
    if load >= 0:
        raise Refused(say("the shaft rests here and does not rise"))
    return HeldDown(-load, -load * margin)


class Held(NamedTuple):
    jack: Annotated[float, Is("load on the jack", "R_j", "N")]
    verdict: Literal["stands", "tips: hold the other end down first"]


@method(r"R_j = -R_1, \quad \text{stands where no other support is pulled upward}", STATICS)
def stands_many(carried: tuple[Carried, ...]) -> Held:
    """What the jack carries on more than two supports, and whether the shaft stays on the others
    The first row is the jack. Forces count upward, so that a weight that rests is negative."""
    if not carried:
        raise Refused(say("no support is given"))
    lifted = any(one.force > 1e-6 for one in carried[1:])
    return Held(-carried[0].force, "tips: hold the other end down first" if lifted else "stands")


@method(r"F \ge s\,R_j", None)
def lifting_gear(
    load: Annotated[float, Is("load on the jack", "R_j", "N", 0, 5_000_000)],
    margin: Annotated[float, Is("margin", "s", "", 1, 5)],
) -> Annotated[float, Is("least rating of jack or sling", "F", "N")]:
    """Least rating of the jack or sling"""
    return margin * load


@method(
    r"F = \frac{R}{2 \cos\beta}",
    STATICS,
    holds={"the legs stand no more than 60° from upright": lambda angle, **_: angle <= 60},
)
def sling_leg(
    load: Annotated[float, Is("load on the sling", "R", "N", 0, 5_000_000)],
    angle: Annotated[float, Is("angle of a leg from upright", r"\beta", "deg", 0, 89)],
) -> Annotated[float, Is("pull in each of two legs", "F", "N")]:
    """Pull in each leg of a two-leg sling"""
    return load / (2 * cos(rad(angle)))


class Stress(NamedTuple):
    bending: Annotated[float, Is("bending stress, notch counted", r"\sigma", "MPa")]
    torsion: Annotated[float, Is("torsional stress, notch counted", r"\tau", "MPa")]
    combined: Annotated[float, Is("the two together", r"\sigma'", "MPa")]


@method(
    r"\sigma = \frac{32\,M K_f}{\pi d^3 \left(1 - (d_i/d)^4\right)}, \quad \tau = \frac{16\,T K_{fs}}{\pi d^3 \left(1 - (d_i/d)^4\right)}, \quad"
    r" \sigma' = \sqrt{\sigma^2 + 3 \tau^2}",
    Citation(SHIGLEY, "", "chapters 3 and 7", "from memory"),
)
def shaft_stress(
    moment: Annotated[float, Is("bending moment", "M", "N.mm", 0, 1e10)],
    torque: Annotated[float, Is("torque", "T", "N.mm", 0, 1e10)],
    diameter: Annotated[float, Is("diameter", "d", "mm", 1, 2000)],
    bending_notch: Annotated[float, Is("notch factor in bending", "K_f", "", 1, 6)],
    torsion_notch: Annotated[float, Is("notch factor in torsion", "K_{fs}", "", 1, 6)],
    hole: Annotated[float, Is("hole", "d_i", "mm", 0, 2000)] = 0.0,
) -> Stress:
    """Stress in a shaft by bending and torsion"""
    if hole >= diameter:
        raise Refused(say("the hole must be smaller than the shaft"))
    section = pi * diameter**3 * (1 - (hole / diameter) ** 4)
    bending, torsion = 32 * moment * bending_notch / section, 16 * torque * torsion_notch / section
    return Stress(bending, torsion, sqrt(bending**2 + 3 * torsion**2))


@method(
    r"S_e = k_a k_b k_e\,0.5\,R_m, \quad k_a = 4.51\,R_m^{-0.265}, \quad k_b = \begin{cases} 1.24\,d^{-0.107} & d \le 51 \\ 1.51\,d^{-0.157} & d > 51 \end{cases}",
    Citation(SHIGLEY, "", "chapter 6", "from memory"),
)
def endurance_limit(
    tensile: Annotated[float, Is("tensile strength", "R_m", "MPa", 200, 1400)],
    diameter: Annotated[float, Is("diameter", "d", "mm", 2.79, 254)],
    reliability: Annotated[float, Is("factor for reliability: 0.897 for 90 %, 0.814 for 99 %", "k_e", "", 0.5, 1)],
) -> Annotated[float, Is("endurance limit of the machined shaft", "S_e", "MPa")]:
    """Endurance limit of a machined steel shaft that turns under its load"""
    surface = 4.51 * tensile**-0.265
    size = 1.24 * diameter**-0.107 if diameter <= 51 else 1.51 * diameter**-0.157
    return float(surface * size * reliability * 0.5 * tensile)


@method(
    r"\frac{1}{n} = \frac{\sigma_a}{S_e} + \frac{\sqrt{3}\,\tau_m}{R_m}",
    Citation(SHIGLEY, "", "eq. 7-7, Goodman, bending that turns and steady torsion", "from memory"),
)
def fatigue_safety(
    bending: Annotated[float, Is("bending stress, notch counted", r"\sigma_a", "MPa", 0, 5000)],
    torsion: Annotated[float, Is("torsional stress, notch counted", r"\tau_m", "MPa", 0, 5000)],
    endurance: Annotated[float, Is("endurance limit", "S_e", "MPa", 1, 2000)],
    tensile: Annotated[float, Is("tensile strength", "R_m", "MPa", 100, 2500)],
) -> Annotated[float, Is("safety against fatigue", "n", "")]:
    """Safety of a turning shaft against fatigue, bending load that stands still and steady torque"""
    share = bending / endurance + sqrt(3) * torsion / tensile
    if share == 0:
        raise Refused(say("nothing bends or twists the shaft here"))
    return 1 / share


@method(r"n_y = \frac{R_e}{\sigma'}", Citation(SHIGLEY, "", "chapter 5, distortion energy", "from memory"))
def yield_safety(
    stress: Annotated[float, Is("bending and torsion together", r"\sigma'", "MPa", 1e-9, 5000)],
    strength: Annotated[float, Is("yield strength", "R_e", "MPa", 50, 2500)],
) -> Annotated[float, Is("safety against yielding", "n_y", "")]:
    """Safety of a shaft against yielding"""
    return strength / stress


class Twist(NamedTuple):
    torque: Annotated[float, Is("torque of one drive", "T_i", "N.m", 0, 10_000_000)]


@method(r"T = \max T_i", STATICS)
def greatest_torque(torques: tuple[Twist, ...]) -> Annotated[float, Is("torque in the shaft", "T", "N.m")]:
    """Greatest torque that any drive brings into a shaft
    Taken for the whole shaft. Nothing, where no drive is typed."""
    return max((one.torque for one in torques), default=0.0)


@method(r"m = \frac{F}{g}", Citation("CGPM", "1901", "standard gravity", "seen"))
def mass_of_weight(force: Annotated[float, Is("weight", "F", "N", 0, 2_000_000)]) -> Annotated[float, Is("mass", "m", "kg")]:
    """Mass that weighs as much, as lifting gear is rated"""
    return force / GRAVITY
