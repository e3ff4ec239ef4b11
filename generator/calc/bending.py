"""What is read off a bent shaft: its line in the plane where it bends most, the place that bears most, what a height error changes."""

from math import atan2, cos, hypot, pi, sin
from typing import Annotated, Literal, NamedTuple

from generator.calc.beam import GRAVITY
from generator.calc.shafts import DENSITY, STATICS, Change, OnLine, Section
from generator.method import Is, Refused, method
from generator.say import say
from generator.value import Citation


class Line(NamedTuple):
    at: Annotated[float, Is("place along the shaft", "x", "mm")]
    deflection: Annotated[float, Is("deflection where it bends most", "w", "mm")]
    moment: Annotated[float, Is("bending moment, both planes", "M", "N.mm")]


@method(r"w = w_y \sin\varphi + w_z \cos\varphi, \quad M = \sqrt{M_y^2 + M_z^2}", STATICS)
def bending_line(level: tuple[OnLine, ...], upright: tuple[OnLine, ...]) -> tuple[Line, ...]:
    """The bending line of a shaft from its two planes
    Seen in the plane of the greatest deflection, positive that way."""
    if len(level) != len(upright):
        raise Refused(say("the two planes are not shown at the same places"))
    deepest = max(range(len(level)), key=lambda i: hypot(level[i].deflection, upright[i].deflection), default=None)
    if deepest is None:
        raise Refused(say("nothing is shown"))
    way = atan2(level[deepest].deflection, upright[deepest].deflection)
    return tuple(
        Line(y.at, y.deflection * sin(way) + z.deflection * cos(way), hypot(y.moment, z.moment))
        for y, z in zip(level, upright, strict=True)
    )


class Deepest(NamedTuple):
    at: Annotated[float, Is("place of the greatest deflection", "x", "mm")]
    deflection: Annotated[float, Is("greatest deflection", r"w_{\max}", "mm")]


@method(r"w_{\max} = \max \left|w\right|", STATICS)
def greatest_deflection(line: tuple[Line, ...]) -> Deepest:
    """Where a shaft bends most, and how far"""
    if not line:
        raise Refused(say("nothing is shown"))
    one = max(line, key=lambda row: abs(row.deflection))
    return Deepest(one.at, abs(one.deflection))


class Worst(NamedTuple):
    at: Annotated[float, Is("place that bears most", "x", "mm")]
    moment: Annotated[float, Is("bending moment there", "M", "N.mm")]
    diameter: Annotated[float, Is("diameter there", "d", "mm")]
    hole: Annotated[float, Is("hole there", "d_i", "mm")]


@method(r"\max \frac{M}{d^3 \left(1 - (d_i/d)^4\right)}", STATICS)
def worst_section(line: tuple[Line, ...], sections: tuple[Section, ...]) -> Worst:
    """The place along a stepped shaft where bending stress is greatest
    At a step the thinner side counts."""
    found = []
    for row in line:
        starts = [0.0, *(one.to for one in sections)]
        for start, one in zip(starts, sections, strict=False):
            if start - 1e-9 <= row.at <= one.to + 1e-9:
                module = one.diameter**3 * (1 - (one.hole / one.diameter) ** 4)
                found.append((row.moment / module, row, one))
    if not found:
        raise Refused(say("nothing is shown"))
    _, row, one = max(found, key=lambda item: item[0])
    return Worst(row.at, row.moment, one.diameter, one.hole)


class Felt(NamedTuple):
    change: Annotated[float, Is("greatest change of the force on it", r"\Delta R", "N")]
    share: Annotated[float, Is("over its load", r"\Delta R / R", "%")]
    verdict: Literal["little", "align with care"]


@method(r"\Delta R = \max \left|\Delta R_i\right|", STATICS)
def height_error_felt(
    changes: tuple[Change, ...],
    at: Annotated[float, Is("place of the support", "x", "mm", 0, 100_000)],
    load: Annotated[float, Is("load on it", "R", "N", 0, 5_000_000)],
    limit: Annotated[float, Is("share that asks for care", "c", "%", 0, 100)],
) -> Felt:
    """How much an error of height of any support changes the load on this one"""
    change = max((abs(one.change) for one in changes if abs(one.at - at) < 1e-6), default=0.0)
    if change < 1e-6:
        return Felt(0.0, 0.0, "little")
    share = 100 * change / load if load > 0 else 100.0
    return Felt(change, share, "align with care" if share > limit else "little")


class Lump(NamedTuple):
    at: Annotated[float, Is("middle of the length", "x", "mm")]
    force: Annotated[float, Is("its weight, downward", "F", "N")]


@method(r"F = \rho g \frac{\pi (D^2 - D_i^2)}{4} L", Citation("geometry", "", "", "derived"))
def section_weights(sections: tuple[Section, ...], density: Annotated[float, DENSITY]) -> tuple[Lump, ...]:
    """Weight of each length of a stepped shaft, at its middle"""
    starts = [0.0, *(one.to for one in sections)]
    return tuple(
        Lump(
            (start + one.to) / 2,
            density * 1e-6 * GRAVITY * pi * (one.diameter**2 - one.hole**2) / 4 * (one.to - start),
        )
        for start, one in zip(starts, sections, strict=False)
    )


@method(r"M_s = k\,M", STATICS)
def moment_in_state(
    load: Annotated[float, Is("couple or torque as typed", "M", "N.mm")],
    times: Annotated[float, Is("factor of the state", "k", "", -20, 20)],
) -> Annotated[float, Is("couple or torque in this state", "M_s", "N.mm")]:
    """A couple or a torque in a state in which its load is more or less"""
    return load * times


class Turning(NamedTuple):
    force: Annotated[float, Is("what one rotor brings to a support", "F_i", "N")]


@method(r"F_u = \sum \left|F_i\right|", STATICS)
def turning_together(rotors: tuple[Turning, ...]) -> Annotated[float, Is("load that turns with the shaft", "F_u", "N")]:
    """What the unbalance of several rotors brings to a support, an upper bound
    Nobody knows how they stand to one another round the shaft: at the worst they pull the same way here."""
    return sum(abs(one.force) for one in rotors)


class TurningSlope(NamedTuple):
    slope: Annotated[float, Is("slope by one rotor", r"\theta_i", "rad")]


@method(r"\theta_u = \sum \left|\theta_i\right|", STATICS)
def turning_slope(rotors: tuple[TurningSlope, ...]) -> Annotated[float, Is("slope that turns with the shaft", r"\theta_u", "rad")]:
    """Slope of a shaft in a bearing that turns with it, of several rotors an upper bound"""
    return sum(abs(one.slope) for one in rotors)


class Together(NamedTuple):
    load: Annotated[float, Is("load with what turns", "F", "N")]
    share: Annotated[float, Is("turning over steady load", "F_u / F", "%")]
    fits: Literal["the ring turns against the load", "the load turns with the ring"]


@method(
    r"F = \begin{cases} F_s & F_u < c\,F_s \\ F_s + F_u & F_u \ge c\,F_s \end{cases}",
    None,
    beware={
        "the load that turns with the shaft is the greater: the fits of both rings swap": lambda steady, turning, **_: turning > steady,
    },
)
def load_with_unbalance(
    steady: Annotated[float, Is("load that stands still", "F_s", "N", 0, 5_000_000)],
    turning: Annotated[float, Is("load that turns with the shaft", "F_u", "N", 0, 5_000_000)],
    least: Annotated[float, Is("share below which it is left out", "c", "%", 0, 100)],
) -> Together:
    """Load of a bearing with the unbalance added, an upper bound"""
    share = 100 * turning / steady if steady > 0 else 100.0
    load = steady if share < least else steady + turning
    return Together(load, share, "the load turns with the ring" if turning > steady else "the ring turns against the load")
