"""Set screws and collars."""

from typing import Annotated, Literal, NamedTuple

from generator.method import Is, Refused, method
from generator.say import say
from generator.value import Citation

SHIGLEY = Citation("Shigley, Mechanical Engineering Design", "", "Table 7-4 and its safety factors", "from memory")


class Holding(NamedTuple):
    axial: Annotated[float, Is("axial force that may be put on the lock", "F_a", "N")]
    torque: Annotated[float, Is("torque that may be put on the lock", "T", "N.m")]


@method(r"F_a = \frac{c\,F_1}{S}, \quad c = 1 \;\mathrm{or}\; 1.3, \quad T = \frac{F_a\,d}{2000}", SHIGLEY)
def set_screw_holding(
    one_screw: Annotated[float, Is("holding force of one screw at its seating torque", "F_1", "N", 10, 200_000)],
    count: Annotated[float, Is("number of screws", "z", "", 1, 4)],
    diameter: Annotated[float, Is("shaft diameter", "d", "mm", 3, 300)],
    safety: Annotated[float, Is("safety factor", "S", "", 1, 10)] = 1.0,
) -> Holding:
    """What set screws hold
    Two screws in one ring hold 1.3 times one, not twice. Charts of the trade give less than half of these forces: keep the dynamic safety factor. The screw must be ten points of HRC harder than the shaft."""
    force = one_screw * (1.0 if count < 2 else 1.3) / safety
    return Holding(force, force * diameter / 2000)


class Clamped(NamedTuple):
    axial: Annotated[float, Is("axial force at which it slips", "F_a", "N")]
    torque: Annotated[float, Is("torque at which it slips", "T", "N.m")]


@method(r"F_a = 4\,\mu\,F, \quad T = \frac{F_a\,d}{2000}", Citation("statics of a split clamp, stiff halves", "", "", "derived"))
def concentric_clamp_collar(
    screw_force: Annotated[float, Is("clamp force of the screw", "F", "N", 10, 200_000)],
    diameter: Annotated[float, Is("shaft diameter", "d", "mm", 3, 300)],
    friction: Annotated[float, Is("friction between fingers and shaft", r"\mu", "", 0.05, 0.3)],
) -> Clamped:
    """What a clamp collar holds, an upper estimate
    Bending the fingers takes part of the screw's force: a safety of two or more belongs on it."""
    force = 4 * friction * screw_force
    return Clamped(force, force * diameter / 2000)


@method("", None)
def eccentric_collar(
    turns: Literal["clockwise", "anticlockwise", "both ways"],
    collar_toward: Literal["first end", "second end"],
) -> Literal["clockwise", "anticlockwise"]:
    """Which way an eccentric collar is turned, seen from the collar's own side
    It is turned and tapped in the direction the shaft runs. Collars that face away from each other therefore lock opposite hands, each seen from its own side. On a shaft that runs both ways it can unlock."""
    if turns == "both ways":
        raise Refused(say("the shaft runs both ways: an eccentric collar can unlock; a sleeve, a clamp collar or two screws hold there"))
    seen_the_same = collar_toward == "first end"
    return turns if seen_the_same else "anticlockwise" if turns == "clockwise" else "clockwise"


@method(r"\Delta = H_{\mathrm{screw}} - H_{\mathrm{shaft}}", None)
def screw_bite(
    screw: Annotated[float, Is("hardness of the screw", r"H_{\mathrm{screw}}", "HRC", 1, 70)],
    shaft: Annotated[float, Is("hardness of the shaft", r"H_{\mathrm{shaft}}", "HRC", 1, 70)],
) -> Annotated[float, Is("how much harder the screw is", r"\Delta", "HRC")]:
    """Whether a set screw can bite
    Ten points of HRC are asked for by practice; less, and the screw dents instead of biting and creeps."""
    return screw - shaft
