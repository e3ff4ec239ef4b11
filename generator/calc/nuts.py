"""The lock nut on its sleeve: travel, slots, which way the housing moves, the gap of a second flange, what the taper may do to the ring."""

from math import ceil, floor, log, pi
from typing import Annotated, Literal, NamedTuple

from generator.method import Is, Refused, method
from generator.say import say
from generator.value import Citation

STATICS = Citation("screw and wedge geometry", "", "", "derived")
LAME = Citation("Lamé's thick-walled cylinder; Shigley, Mechanical Engineering Design, press and shrink fits", "", "", "from memory")


@method(r"s = P\,\frac{\theta}{360}", STATICS)
def nut_travel(
    pitch: Annotated[float, Is("pitch of the nut's thread", "P", "mm", 0.2, 10)],
    turn: Annotated[float, Is("turn of the nut", r"\theta", "deg", 0, 3600)],
) -> Annotated[float, Is("axial movement of the nut on the sleeve", "s", "mm")]:
    """Travel of a lock nut
    With the nut bearing on the inner ring, the ring goes the same way, away from the nut. What moves in space is told by the housing's shift."""
    return pitch * turn / 360


class Slots(NamedTuple):
    least: Annotated[float, Is("least whole slots", r"n_{\min}")]
    most: Annotated[float, Is("most whole slots", r"n_{\max}")]


@method(
    r"n_{\min} = \left\lceil \frac{z\,\theta_1}{360} \right\rceil, \quad n_{\max} = \left\lfloor \frac{z\,\theta_2}{360} \right\rfloor",
    STATICS,
)
def turn_in_slots(
    least: Annotated[float, Is("least turn", r"\theta_1", "deg", 0, 3600)],
    most: Annotated[float, Is("greatest turn", r"\theta_2", "deg", 0, 3600)],
    slots: Annotated[float, Is("slots round the nut", "z", "", 1, 40)],
) -> Slots:
    """A turn counted in slots of the nut
    Only whole slots inside the band count, and a nut is locked forward, never back. No whole slot inside: the turn is counted in degrees from the mark."""
    low, high = ceil(round(slots * least / 360, 6)), floor(round(slots * most / 360, 6))
    if low > high:
        raise Refused(say("no whole slot of this nut lies inside the turn; count degrees from the mark"))
    return Slots(float(low), float(high))


class Shift(NamedTuple):
    least: Annotated[float, Is("least movement of the housing", r"x_{\min}", "mm")]
    most: Annotated[float, Is("greatest movement of the housing", r"x_{\max}", "mm")]
    toward: Literal["away from the nut", "toward the nut"]


@method(r"0 \leq x \leq s", STATICS)
def housing_shift(
    travel: Annotated[float, Is("travel of the nut", "s", "mm", 0, 50)],
    works: Literal["pushes the ring", "draws the sleeve"],
    housing: Literal["free to move", "held"] = "free to move",
) -> Shift:
    """Which way the housing moves while the nut is turned, and how far
    The travel is between ring and sleeve. A sleeve that grips lets ring and housing go; a held housing draws sleeve and shaft the other way. So the bolts stay finger loose while the nut is turned."""
    if works == "draws the sleeve" or housing == "held":
        return Shift(0.0, travel, "toward the nut")
    return Shift(0.0, travel, "away from the nut")


class Gap(NamedTuple):
    least: Annotated[float, Is("least gap", r"g_{\min}", "mm")]
    most: Annotated[float, Is("greatest gap", r"g_{\max}", "mm")]


@method(r"g_{\min} = s, \quad g_{\max} = s + a", STATICS)
def flange_gap(
    travel: Annotated[float, Is("travel of the nut", "s", "mm", 0, 50)],
    over: Annotated[float, Is("how much the gap may be over it", "a", "mm", 0, 1)],
) -> Gap:
    """Gap under the second flange on a shaft, nut hand tight
    Less, and the face stops the travel; more, and the bolts drive the ring too far or pull the shaft endwise. Shown beside the maker's figure; the order of work comes from the maker alone."""
    return Gap(travel, travel + over)


class Implied(NamedTuple):
    interference: Annotated[float, Is("greatest interference the turn implies", r"\delta", "mm")]
    hoop: Annotated[float, Is("hoop stress in the ring, upper bound", r"\sigma", "MPa")]


@method(
    r"\delta \leq \frac{s}{k}, \quad \sigma \leq \frac{E\,\delta}{d} \cdot \frac{R}{R + 1 + \ln \frac{d}{d_s}}, \quad R = \frac{F^2 + d^2}{F^2 - d^2}",
    LAME,
)
def ball_insert_turns(
    travel: Annotated[float, Is("travel of the nut", "s", "mm", 0, 20)],
    taper: Annotated[float, Is("taper denominator", "k", "", 5, 50)],
    bore: Annotated[float, Is("mean seat diameter of the ring", "d", "mm", 10, 300)],
    raceway: Annotated[float, Is("effective raceway diameter", "F", "mm", 10, 500)],
    shaft: Annotated[float, Is("shaft diameter under the slit sleeve", "d_s", "mm", 10, 300)],
    modulus: Annotated[float, Is("modulus of elasticity", "E", "MPa", 50_000, 300_000)] = 206_000.0,
) -> Implied:
    """What a maker's turn implies for the ring: a band for plausibility
    From nothing up to this: part of the turn may only close the sleeve on the shaft. It never corrects the maker's turn and never makes one up."""
    if not shaft < bore < raceway:
        raise Refused(say("shaft, ring bore and raceway must grow in this order"))
    interference = travel / taper
    ratio = (raceway**2 + bore**2) / (raceway**2 - bore**2)
    return Implied(interference, modulus * interference / bore * ratio / (ratio + 1 + log(bore / shaft)))


class Pressed(NamedTuple):
    pressure: Annotated[float, Is("pressure between ring and shaft", "p", "MPa")]
    hoop: Annotated[float, Is("hoop stress at the bore of the ring", r"\sigma_t", "MPa")]


@method(
    r"p = \frac{\delta}{d\left(\frac{1}{E_1}\left(\frac{d^2+d_i^2}{d^2-d_i^2} - \nu_1\right) + \frac{1}{E_2}\left(\frac{F^2+d^2}{F^2-d^2} + \nu_2\right)\right)},"
    r" \quad \sigma_t = p\,\frac{F^2+d^2}{F^2-d^2}",
    LAME,
)
def interference_pressure(
    interference: Annotated[float, Is("effective interference on diameter", r"\delta", "mm", 0, 2)],
    diameter: Annotated[float, Is("diameter of the joint", "d", "mm", 5, 1000)],
    outside: Annotated[float, Is("outside diameter of the ring", "F", "mm", 5, 2000)],
    modulus: Annotated[float, Is("modulus of elasticity of the ring", "E_2", "MPa", 10_000, 400_000)] = 206_000.0,
    poisson: Annotated[float, Is("Poisson's ratio of the ring", r"\nu_2", "", 0, 0.5)] = 0.3,
    shaft_modulus: Annotated[float, Is("modulus of elasticity of the shaft", "E_1", "MPa", 10_000, 400_000)] = 206_000.0,
    shaft_poisson: Annotated[float, Is("Poisson's ratio of the shaft", r"\nu_1", "", 0, 0.5)] = 0.3,
    hole: Annotated[float, Is("hole in the shaft", "d_i", "mm", 0, 1000)] = 0.0,
) -> Pressed:
    """Pressure and hoop stress of an interference fit
    Plane stress, elastic. Take the effective interference: what smoothing takes off is taken off before."""
    if outside <= diameter or hole >= diameter:
        raise Refused(say("the ring must be larger than the joint, and the hole smaller"))
    ratio = (outside**2 + diameter**2) / (outside**2 - diameter**2)
    shaft = ((diameter**2 + hole**2) / (diameter**2 - hole**2) - shaft_poisson) / shaft_modulus
    pressure = interference / (diameter * (shaft + (ratio + poisson) / modulus))
    return Pressed(pressure, pressure * ratio)


class Grip(NamedTuple):
    force: Annotated[float, Is("axial force at which it slips", "F", "N")]
    torque: Annotated[float, Is("torque at which it slips", "T", "N.m")]


@method(r"F = \mu\,p\,\pi\,d\,L, \quad T = \frac{F\,d}{2000}", Citation("statics of friction", "", "", "derived"))
def seat_holding(
    pressure: Annotated[float, Is("pressure in the joint", "p", "MPa", 0, 500)],
    diameter: Annotated[float, Is("diameter of the joint", "d", "mm", 5, 1000)],
    length: Annotated[float, Is("length of the joint", "L", "mm", 1, 1000)],
    friction: Annotated[float, Is("friction", r"\mu", "", 0.02, 0.3)],
) -> Grip:
    """What a pressed joint holds
    Design friction is low, since the steps oil the seats. A safety of two or more belongs on it."""
    force = friction * pressure * pi * diameter * length
    return Grip(force, force * diameter / 2000)


@method(r"F_{zul} = \frac{F}{s}", None)
def safe_hold(
    force: Annotated[float, Is("axial force at which it slips", "F", "N", 0, 50_000_000)],
    safety: Annotated[float, Is("safety", "s", "", 1, 10)],
) -> Annotated[float, Is("load it may carry", r"F_{zul}", "N")]:
    """Load a joint may carry along the shaft"""
    return force / safety


@method("", STATICS, why_no_outside_check="a rule of directions; it follows from which way a dragged ring turns a thread")
def nut_drag(
    turns: Literal["clockwise", "anticlockwise"],
    nut_toward: Literal["first end", "second end"],
    hand: Literal["right", "left"],
) -> Literal["drag tightens", "drag slackens"]:
    """Whether drag of a loose ring tightens the nut or slackens it
    A loose ring lags the shaft and drags the nut back against the rotation. Seen from the nut, a right-hand nut is tightened so only if the shaft turns anticlockwise. The lock of the nut is needed either way."""
    # looking along from the first end one sees the face of a nut at the first end; a nut at the second end is looked at from the other side
    seen_anticlockwise = (turns == "anticlockwise") == (nut_toward == "first end")
    return "drag tightens" if seen_anticlockwise == (hand == "right") else "drag slackens"
