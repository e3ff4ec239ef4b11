"""A shaft on its supports: what each carries, how it bends, what a height error does."""

from math import atan2, cos, degrees, hypot, pi, sin
from math import radians as rad
from typing import Annotated, Literal, NamedTuple

from generator.calc.beam import GRAVITY, Bent, Piece, Rest, bend
from generator.calc.beam import Push as Acts
from generator.method import Is, Refused, method
from generator.say import say
from generator.value import Citation

STATICS = Citation("statics", "", "", "derived")
BEAM = Citation("Euler-Bernoulli beam", "", "finite elements between all steps, loads and supports", "derived")
MODULUS = Is("modulus of elasticity of the shaft", "E", "MPa", 10_000, 400_000)
DENSITY = Is("density of the shaft's material", r"\rho", "g/cm3", 0, 20)
SHARE = Is("part of its weight that acts in this plane, negative downward", "g", "", -1, 1)


class Acting(NamedTuple):
    at: Annotated[float, Is("place of the load", "x", "mm", 0, 100_000)]
    force: Annotated[float, Is("force", "F", "N")] = 0.0
    couple: Annotated[float, Is("couple, positive where it moves the second end the positive way", "M", "N.mm")] = 0.0


class Section(NamedTuple):
    to: Annotated[float, Is("where the diameter ends", "x", "mm", 0, 100_000)]
    diameter: Annotated[float, Is("diameter", "D", "mm", 1, 2000)]
    hole: Annotated[float, Is("hole", "D_i", "mm", 0, 2000)] = 0.0


class Support(NamedTuple):
    at: Annotated[float, Is("place of the support", "x", "mm", 0, 100_000)]
    settlement: Annotated[float, Is("how far it stands off its line", r"\delta", "mm", -100, 100)] = 0.0
    spring: Annotated[float, Is("its stiffness, 0 for rigid", "k", "N/mm", 0, 1e9)] = 0.0


class TwoCarry(NamedTuple):
    first: Annotated[float, Is("force on the first support", "R_A", "N")]
    second: Annotated[float, Is("force on the second support", "R_B", "N")]


@method(
    r"R_B = \frac{\sum F_i\,(x_i - x_A) + \sum M_i}{x_B - x_A}, \quad R_A = \sum F_i - R_B",
    STATICS,
)
def support_reactions_two(
    first: Annotated[float, Is("place of the first support", "x_A", "mm", 0, 100_000)],
    second: Annotated[float, Is("place of the second support", "x_B", "mm", 0, 100_000)],
    loads: tuple[Acting, ...],
) -> TwoCarry:
    """What two supports carry, in one plane
    Loads beyond a support are covered. What is given is the force on the support, counted the way the loads are."""
    if abs(second - first) < 1e-6:
        raise Refused(say("the two supports stand at one place"))
    at_second = sum(one.force * (one.at - first) + one.couple for one in loads) / (second - first)
    return TwoCarry(sum(one.force for one in loads) - at_second, at_second)


class Carried(NamedTuple):
    at: Annotated[float, Is("place of the support", "x", "mm")]
    force: Annotated[float, Is("force on the support", "R", "N")]
    slope: Annotated[float, Is("slope of the shaft in it", r"\theta", "rad")]


def _stubby(sections: tuple[Section, ...], supports: tuple[Support, ...], **_: object) -> bool:
    at = sorted(one.at for one in supports)
    thickest = max((one.diameter for one in sections), default=0.0)
    return any(b - a < 5 * thickest for a, b in zip(at[:-1], at[1:], strict=True))


CAVEATS = {"a span is shorter than five diameters: shear is not counted and the shaft bends more than this": _stubby}


@method(
    r"\begin{cases} K\,u = F + k_i\,\delta_i \\ k = \frac{E I}{L^3} \begin{pmatrix} 12 & 6L & -12 & 6L \\ 6L & 4L^2 & -6L & 2L^2 \\ -12 & -6L & 12 & -6L \\"
    r" 6L & 2L^2 & -6L & 4L^2 \end{pmatrix}, \quad I = \frac{\pi (D^4 - D_i^4)}{64} \\ R = F - K\,u \end{cases}",
    BEAM,
    beware=CAVEATS,
)
def support_reactions_many(
    sections: tuple[Section, ...],
    supports: tuple[Support, ...],
    loads: tuple[Acting, ...],
    modulus: Annotated[float, MODULUS],
    density: Annotated[float, DENSITY] = 0.0,
    weight_share: Annotated[float, SHARE] = -1.0,
) -> tuple[Carried, ...]:
    """What any number of supports carry, and the slope of the shaft in each, in one plane
    A stepped shaft, supports set off their line or yielding. Hubs and sleeves do not stiffen it, bearings do not hold it straight."""
    bent = _bent(sections, supports, loads, modulus, density, weight_share)
    return tuple(Carried(one.at, force, float(bent.slope[bent.index(one.at)])) for one, force in zip(supports, bent.carried, strict=True))


class OnLine(NamedTuple):
    at: Annotated[float, Is("place along the shaft", "x", "mm")]
    deflection: Annotated[float, Is("deflection", "w", "mm")]
    moment: Annotated[float, Is("bending moment", "M", "N.mm")]


@method(r"M = E I\,\left|w''\right|, \quad K\,u = F", BEAM, beware=CAVEATS)
def shaft_line(
    sections: tuple[Section, ...],
    supports: tuple[Support, ...],
    loads: tuple[Acting, ...],
    modulus: Annotated[float, MODULUS],
    density: Annotated[float, DENSITY] = 0.0,
    weight_share: Annotated[float, SHARE] = -1.0,
    pieces: Annotated[float, Is("places shown along the shaft", "n", "", 2, 400)] = 24.0,
) -> tuple[OnLine, ...]:
    """The bending line and the bending moment along a shaft, in one plane
    The moment is given as its size; in a step of the moment, the greater side."""
    length = max((one.to for one in sections), default=0.0)
    also = [length * i / int(pieces) for i in range(int(pieces) + 1)]
    bent = _bent(sections, supports, loads, modulus, density, weight_share, also)
    return tuple(OnLine(float(x), float(w), float(abs(m))) for x, w, m in zip(bent.at, bent.deflection, bent.moment, strict=True))


class Change(NamedTuple):
    raised: Annotated[float, Is("place of the support that stands high", "x", "mm")]
    at: Annotated[float, Is("place of the support that feels it", "x", "mm")]
    change: Annotated[float, Is("change of the force on it", r"\Delta R", "N")]


@method(r"\Delta R = -K\,u(\delta)", BEAM, beware=CAVEATS)
def reaction_sensitivity(
    sections: tuple[Section, ...],
    supports: tuple[Support, ...],
    modulus: Annotated[float, MODULUS],
    height: Annotated[float, Is("error of height", r"\delta", "mm", 0, 10)],
) -> tuple[Change, ...]:
    """What an error of height at one support does to the force on each
    Negative: pressed harder down. Two supports feel nothing of each other's height."""
    rows = []
    for raised in supports:
        placed = tuple(Support(s.at, height if s is raised else 0.0, s.spring) for s in supports)
        bent = _bent(sections, placed, (), modulus, 0.0, 0.0)
        rows += [Change(raised.at, felt.at, force) for felt, force in zip(supports, bent.carried, strict=True)]
    return tuple(rows)


class Resultant(NamedTuple):
    size: Annotated[float, Is("size of the two together", "F", "N")]
    direction: Annotated[float, Is("direction, clockwise from 12 seen from the first end", r"\varphi", "deg")]


@method(r"F = \sqrt{F_y^2 + F_z^2}, \quad \varphi = \mathrm{atan2}(F_y,\,F_z)", STATICS)
def resultant_of_planes(
    sideways: Annotated[float, Is("toward 3 o'clock", "F_y", "N")],
    upward: Annotated[float, Is("toward 12 o'clock", "F_z", "N")],
) -> Resultant:
    """Size and direction of a force from its two planes"""
    return Resultant(hypot(sideways, upward), round(degrees(atan2(sideways, upward)), 9) % 360)


class Parts(NamedTuple):
    sideways: Annotated[float, Is("toward 3 o'clock", "F_y", "N")]
    upward: Annotated[float, Is("toward 12 o'clock", "F_z", "N")]


@method(r"F_y = F \sin\varphi, \quad F_z = F \cos\varphi", STATICS)
def parts_of_force(
    force: Annotated[float, Is("force across the shaft", "F", "N")],
    direction: Annotated[float, Is("its direction, clockwise from 12 seen from the first end", r"\varphi", "deg", -720, 720)],
) -> Parts:
    """A force across the shaft in its two planes"""
    return Parts(force * sin(rad(direction)), force * cos(rad(direction)))


@method(r"F = f\,m\,g", Citation("CGPM", "1901", "standard gravity", "seen"))
def weight_of_mass(
    mass: Annotated[float, Is("mass", "m", "kg", 0, 200_000)],
    share: Annotated[float, Is("part of it that acts this way", "f", "", -1, 1)] = 1.0,
) -> Annotated[float, Is("weight", "F", "N")]:
    """Weight of a mass, or the part of it along one direction"""
    return share * mass * GRAVITY


@method(r"m = \sum \rho\,\frac{\pi (D^2 - D_i^2)}{4}\,L", Citation("geometry", "", "", "derived"))
def shaft_mass(sections: tuple[Section, ...], density: Annotated[float, DENSITY]) -> Annotated[float, Is("mass of the shaft", "m", "kg")]:
    """Mass of a stepped shaft"""
    starts = [0.0, *(one.to for one in sections)]
    volume = sum(pi * (one.diameter**2 - one.hole**2) / 4 * (one.to - start) for start, one in zip(starts, sections, strict=False))
    return density * volume * 1e-6


@method(r"R = 2\,T \sin(\theta / 2)", STATICS)
def wrap_resultant(
    pull: Annotated[float, Is("pull of each strand", "T", "N", 0, 5_000_000)],
    wrap: Annotated[float, Is("angle the belt lies on the pulley", r"\theta", "deg", 0, 360)],
) -> Annotated[float, Is("pull on the shaft", "R", "N")]:
    """Pull of a belt that is equally tight on both sides"""
    return 2 * pull * sin(rad(wrap) / 2)


@method(r"F_s = k\,F", STATICS)
def load_in_state(
    load: Annotated[float, Is("load as typed", "F", "N")],
    times: Annotated[float, Is("factor of the state", "k", "", -20, 20)],
) -> Annotated[float, Is("load in this state", "F_s", "N")]:
    """A load in a state in which it is more or less"""
    return load * times


class Push(NamedTuple):
    force: Annotated[float, Is("force along the shaft, positive toward the second end", "F", "N")]
    either: Annotated[float, Is("force that may come either way", "F'", "N", 0, 5_000_000)] = 0.0


@method(r"F_a = \left|\sum F\right| + \sum F'", STATICS)
def load_along(pushes: tuple[Push, ...]) -> Annotated[float, Is("load along the shaft", "F_a", "N")]:
    """What the unit that holds the shaft endwise must carry"""
    return abs(sum(one.force for one in pushes)) + sum(one.either for one in pushes)


@method(r"M = -F\,\frac{d}{2}", STATICS)
def couple_of_push(
    force: Annotated[float, Is("force along the shaft, positive toward the second end", "F", "N")],
    diameter: Annotated[float, Is("diameter at which it acts", "d", "mm", 0, 4000)],
) -> Annotated[float, Is("couple", "M", "N.mm")]:
    """Couple of a force along the shaft that acts off its axis, as on a helical gear"""
    return -force * diameter / 2


class Couples(NamedTuple):
    sideways: Annotated[float, Is("couple in the level plane", "M_y", "N.mm")]
    upward: Annotated[float, Is("couple in the upright plane", "M_z", "N.mm")]


@method(r"M_y = M \sin\varphi, \quad M_z = M \cos\varphi", STATICS)
def parts_of_couple(
    couple: Annotated[float, Is("couple", "M", "N.mm")],
    direction: Annotated[float, Is("direction of its plane, clockwise from 12", r"\varphi", "deg", -720, 720)],
) -> Couples:
    """A couple in the two planes of a shaft"""
    return Couples(couple * sin(rad(direction)), couple * cos(rad(direction)))


class Tilt(NamedTuple):
    across: Annotated[float, Is("part of the weight across the shaft", r"\cos\beta", "")]
    along: Annotated[float, Is("part of the weight along the shaft", r"\sin\beta", "")]


@method(r"f_q = \cos\beta, \quad f_a = \sin\beta", STATICS)
def weight_on_slope(
    slope: Annotated[float, Is("how steeply the shaft lies", r"\beta", "deg", 0, 90)],
) -> Tilt:
    """How a weight divides across and along a shaft that does not lie level"""
    return Tilt(cos(rad(slope)), sin(rad(slope)))


class Slope(NamedTuple):
    angle: Annotated[float, Is("angle between shaft and seat, with what is set wrong", r"\theta", "deg")]
    verdict: Literal["inside", "between the usual limits", "over"]


@method(
    r"\theta = \sqrt{\theta_y^2 + \theta_z^2} + \theta_u + \theta_s",
    Citation("Shigley's Mechanical Engineering Design", "", "Table 7-2", "from memory"),
)
def shaft_slope(
    sideways: Annotated[float, Is("slope toward 3 o'clock", r"\theta_y", "rad", -1, 1)],
    upward: Annotated[float, Is("slope toward 12 o'clock", r"\theta_z", "rad", -1, 1)],
    set_angle: Annotated[float, Is("angle the seat is set wrong by", r"\theta_s", "deg", 0, 90)],
    low: Annotated[float, Is("angle that is always carried", r"\theta_1", "deg", 0, 90)],
    high: Annotated[float, Is("angle never to be passed", r"\theta_2", "deg", 0, 90)],
    turning: Annotated[float, Is("slope that turns with the shaft", r"\theta_u", "rad", 0, 1)] = 0.0,
) -> Slope:
    """Slope of the shaft in a bearing, with the misalignment of its seat, against what is allowed
    All are added as if they lay the same way: the worst that can be."""
    angle = degrees(hypot(sideways, upward) + turning) + set_angle
    return Slope(angle, "inside" if angle <= low else "over" if angle > high else "between the usual limits")


def _bent(
    sections: tuple[Section, ...],
    supports: tuple[Support, ...],
    loads: tuple[Acting, ...],
    modulus: float,
    density: float,
    share: float,
    also: list[float] | None = None,
) -> Bent:
    end = max((one.to for one in sections), default=0.0)
    if len({round(one.at, 6) for one in supports}) < 2:
        raise Refused(say("a shaft needs two supports that stand apart"))
    for at in [one.at for one in supports] + [one.at for one in loads]:
        if not -1e-9 <= at <= end + 1e-9:
            raise Refused(say("{at} mm lies beyond the shaft, which ends at {end} mm", at=f"{at:g}", end=f"{end:g}"))
    weight = density * 1e-6 * GRAVITY * share  # N/mm3, from g/cm3
    return bend(
        [Piece(s.to, s.diameter, s.hole) for s in sections],
        [Rest(s.at, s.settlement, s.spring) for s in supports],
        [Acts(one.at, one.force, one.couple) for one in loads],
        modulus,
        weight,
        also or (),
    )
