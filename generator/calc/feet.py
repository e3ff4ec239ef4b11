"""What bolts hold: a foot against slipping and lifting, a thread against stripping."""

from math import cos, hypot, pi, sin, tan
from math import radians as rad
from typing import Annotated, Literal, NamedTuple

from generator.method import Is, method
from generator.value import Citation

STATICS = Citation("statics of a bolted foot", "", "", "derived")


@method(r"H \leq \frac{\mu \left( n\,F_V + F_{\mathrm{down}} \right)}{S}", STATICS)
def foot_slip(
    bolts: Annotated[float, Is("number of bolts", "n", "", 1, 12)],
    clamp: Annotated[float, Is("least clamp force of one bolt", "F_V", "N", 0, 3_000_000)],
    down: Annotated[float, Is("load pressing the foot down (negative: up)", r"F_{\mathrm{down}}", "N", -3_000_000, 3_000_000)],
    friction: Annotated[float, Is("friction under the foot", r"\mu", "", 0.02, 0.5)],
    safety: Annotated[float, Is("safety", "S", "", 1, 3)],
) -> Annotated[float, Is("side load the foot may carry", "H", "N")]:
    """Side load a foot may carry before it slips
    If it fails: stops, dowels or a better class of bolt; never more torque."""
    return max(0.0, friction * (bolts * clamp + down) / safety)


class Lift(NamedTuple):
    clamp: Annotated[float, Is("clamp left against uplift", r"F_{\mathrm{left}}", "N")]
    moment: Annotated[float, Is("tipping moment without a gap", r"M_{\max}", "N.m")]


@method(r"F_{\mathrm{left}} = n\,F_V - S\,U, \quad M_{\max} = \frac{\left( n\,F_V - U \right) L}{6000}", STATICS)
def foot_lift_off(
    bolts: Annotated[float, Is("number of bolts", "n", "", 1, 12)],
    clamp: Annotated[float, Is("least clamp force of one bolt", "F_V", "N", 0, 3_000_000)],
    uplift: Annotated[float, Is("load lifting the foot (negative: down)", "U", "N", -3_000_000, 3_000_000)],
    length: Annotated[float, Is("length of the foot in the direction of the tipping", "L", "mm", 1, 5000)],
    safety: Annotated[float, Is("safety", "S", "", 1, 3)] = 1.0,
) -> Lift:
    """Whether a foot lifts or opens at its edge
    The kern of a rectangular contact; what the joint carries of the load is left out, on the safe side."""
    return Lift(bolts * clamp - safety * max(uplift, 0.0), max(0.0, bolts * clamp - uplift) * length / 6000)


class Pried(NamedTuple):
    together: Annotated[float, Is("force in the bolts of the pull side, together", "F_b", "N")]
    each: Annotated[float, Is("force in each of them", "F_1", "N")]


@method(
    r"F_b = \max \left( 0, \frac{M - F_{\mathrm{down}} \frac{L}{2}}{\frac{L}{2} + \frac{a}{2}} \right),"
    r" \quad F_1 = \begin{cases} \frac{2 F_b}{n} & a > 0 \\ \frac{F_b}{n} & a = 0 \end{cases}",
    STATICS,
    holds={"the bolts are four or more, or stand in one line across the load": lambda bolts, apart, **_: bolts >= 4 or apart == 0},
)
def foot_prying(
    bolts: Annotated[float, Is("number of bolts", "n", "", 1, 12)],
    moment: Annotated[float, Is("tipping moment", "M", "N.m", 0, 1_000_000)],
    down: Annotated[float, Is("load pressing the foot down", r"F_{\mathrm{down}}", "N", -3_000_000, 3_000_000)],
    length: Annotated[float, Is("length of the foot along the load", "L", "mm", 1, 5000)],
    apart: Annotated[float, Is("bolts apart along the load (0: in one line across it)", "a", "mm", 0, 5000)],
) -> Pried:
    """Force in the pulled bolts once the foot has opened, an estimate
    For start and jam only. The true pivot lies inside the edge, so it is on the low side: keep it under 0.8 of the least clamp.
    Two bolts in line along the load open the foot at once and are not judged so."""
    together = max(0.0, (moment * 1000 - down * length / 2) / (length / 2 + apart / 2))
    return Pried(together, together / (bolts / 2 if apart else bolts))


@method(r"M = H\,h / 1000", STATICS)
def tipping_moment(
    side: Annotated[float, Is("side load on the foot", "H", "N", 0, 5_000_000)],
    height: Annotated[float, Is("height of the shaft over the base", "h", "mm", 0, 5000)],
) -> Annotated[float, Is("tipping moment", "M", "N.m")]:
    """Tipping moment of a side load on a foot"""
    return side * height / 1000


class Strip(NamedTuple):
    internal: Annotated[float, Is("strip area of the tapped thread per length", r"A_i'", "mm2")]
    external: Annotated[float, Is("strip area of the bolt thread per length", r"A_e'", "mm2")]
    needed: Annotated[float, Is("engagement needed", r"m", "mm")]


@method(
    r"A_i' = \frac{c\,\pi d}{P} \left( \frac{P}{2} + \frac{d - D_2}{\sqrt{3}} \right),"
    r" \quad A_e' = \frac{c\,\pi D_1}{P} \left( \frac{P}{2} + \frac{d_2 - D_1}{\sqrt{3}} \right),"
    r" \quad D_2 = d_2 = d - 0.649519\,P, \quad D_1 = d - 1.082532\,P,"
    r" \quad m = \max \left( \frac{F}{0.897\,\tau_i A_i'}, \frac{F}{0.897\,\tau_e A_e'} \right) + 0.8\,P",
    Citation("FED-STD-H28/2B and ISO/TR 16224", "", "strip areas", "from memory"),
)
def thread_engagement(
    diameter: Annotated[float, Is("major diameter", "d", "mm", 3, 100)],
    pitch: Annotated[float, Is("pitch", "P", "mm", 0.3, 8)],
    force: Annotated[float, Is("force to be carried", "F", "N", 0, 3_000_000)],
    base_shear: Annotated[float, Is("shear strength of the base", r"\tau_i", "MPa", 20, 1000)],
    bolt_shear: Annotated[float, Is("shear strength of the bolt", r"\tau_e", "MPa", 20, 1000)],
    limits_factor: Annotated[float, Is("factor of the worst limits on the basic areas", "c", "", 0.5, 1)],
) -> Strip:
    """Engagement a tapped hole needs
    Basic areas are 20 to 30 per cent too large; the factor takes the worst limits of the tolerance classes.
    With the breaking load of the bolt as force, the bolt fails first."""
    d2 = diameter - 0.649519 * pitch
    d1 = diameter - 1.082532 * pitch
    internal = limits_factor * pi * diameter / pitch * (pitch / 2 + (diameter - d2) * tan(rad(30)))
    external = limits_factor * pi * d1 / pitch * (pitch / 2 + (d2 - d1) * tan(rad(30)))
    least = max(force / (0.897 * base_shear * internal), force / (0.897 * bolt_shear * external))
    return Strip(internal, external, least + 0.8 * pitch)


class Engaged(NamedTuple):
    engagement: Annotated[float, Is("thread engaged", r"m_{\mathrm{is}}", "mm")]
    spare: Annotated[float, Is("thread left in the hole", "r", "mm")]
    verdict: Literal["engages", "bottoms", "too short"]


@method(r"m_{\mathrm{is}} = \min(l - t, h), \quad r = h - (l - t)", STATICS)
def tapped_hole(
    length: Annotated[float, Is("length of the bolt under its head", "l", "mm", 1, 1000)],
    through: Annotated[float, Is("what it passes before the hole", "t", "mm", 0, 1000)],
    depth: Annotated[float, Is("full thread in the hole", "h", "mm", 1, 500)],
    needed: Annotated[float, Is("engagement needed", "m", "mm", 0, 500)],
) -> Engaged:
    """Whether a bolt from below engages enough, and does not bottom
    A bolt that bottoms clamps nothing at any torque."""
    reach = length - through
    engaged = max(0.0, min(reach, depth))
    verdict: Literal["engages", "bottoms", "too short"] = (
        "bottoms" if reach > depth - 1e-9 else "too short" if engaged < needed - 1e-9 else "engages"
    )
    return Engaged(engaged, depth - reach, verdict)


class Sides(NamedTuple):
    down: Annotated[float, Is("part of the load pressing onto the base (negative: away from it)", "F_d", "N")]
    side: Annotated[float, Is("part of the load to the side, across the shaft", "F_s", "N")]
    push: Annotated[float, Is("push that would shift the foot", "F_h", "N")]


@method(
    r"F_d = F \cos(\varphi - \varphi_b) - F_u, \quad F_s = F \left| \sin(\varphi - \varphi_b) \right| + F_u, \quad F_h = \sqrt{F_s^2 + F_a^2}",
    Citation("resolving a force", "", "", "derived"),
)
def load_on_base(
    force: Annotated[float, Is("reaction on the housing that stands still", "F", "N", 0, 5_000_000)],
    direction: Annotated[float, Is("its direction, clockwise from up", r"\varphi", "deg", 0, 360)],
    base: Annotated[float, Is("direction the base faces, clockwise from up", r"\varphi_b", "deg", 0, 360)] = 180.0,
    turning: Annotated[float, Is("load that turns with the shaft", "F_u", "N", 0, 5_000_000)] = 0.0,
    along: Annotated[float, Is("load along the shaft", "F_a", "N", 0, 5_000_000)] = 0.0,
) -> Sides:
    """A load resolved onto the base of a housing, wherever the base faces
    What turns with the shaft comes every way in turn: it is counted to the side and away from the base."""
    off = rad(direction - base)
    side = force * abs(sin(off)) + turning
    return Sides(force * cos(off) - turning, side, hypot(side, along))


class Breaking(NamedTuple):
    force: Annotated[float, Is("breaking load of the bolt", "F", "N")]
    shear: Annotated[float, Is("shear strength of the bolt", r"\tau_e", "MPa")]


@method(r"F = R_m A_s, \quad \tau_e = 0.62\,R_m", Citation("VDI 2230 Part 1", "2015", "5.5.5", "from memory"))
def bolt_breaking_load(
    tensile: Annotated[float, Is("tensile strength", "R_m", "MPa", 100, 2000)],
    area: Annotated[float, Is("stress area", "A_s", "mm2", 1, 10_000)],
) -> Breaking:
    """Breaking load of a bolt, and the shear strength of its thread"""
    return Breaking(tensile * area, 0.62 * tensile)


@method(
    r"F_{zul} = \begin{cases} F_{\mathrm{down}} & \varphi = 0^\circ \\ F_{\mathrm{side}} & \varphi = 90^\circ \\ F_{\mathrm{up}} & \varphi = 180^\circ \\"
    r" \min \text{ of the two beside it} & \text{between} \end{cases}",
    None,
)
def rating_toward(
    direction: Annotated[float, Is("direction of the load, clockwise from up", r"\varphi", "deg", 0, 360)],
    base: Annotated[float, Is("direction the base faces, clockwise from up", r"\varphi_b", "deg", 0, 360)],
    down: Annotated[float, Is("rating toward the base", r"F_{\mathrm{down}}", "N", 0, 50_000_000)],
    up: Annotated[float, Is("rating away from the base", r"F_{\mathrm{up}}", "N", 0, 50_000_000)],
    side: Annotated[float, Is("rating to the side", r"F_{\mathrm{side}}", "N", 0, 50_000_000)],
) -> Annotated[float, Is("load the housing may carry this way", r"F_{zul}", "N")]:
    """Load a housing may carry in a direction
    Between two directions it is rated in, the smaller of the two."""
    off = abs((direction - base + 180) % 360 - 180)
    if off <= 1:
        return down
    if abs(off - 90) <= 1:
        return side
    if off >= 179:
        return up
    return min(side, down if off < 90 else up)
