"""Bolts: preload and torque by two ways, what scatter leaves of the clamp, the pressure under the head, what a wrench can be set to."""

from math import asin, floor, pi, sqrt
from typing import Annotated, Literal, NamedTuple

from generator.method import Is, Refused, method
from generator.say import say
from generator.value import Citation

SHIGLEY = Citation("Shigley, Mechanical Engineering Design", "", "equations 8-27 and 8-31", "from memory")
VDI = Citation("VDI 2230 Part 1", "2015", "5.4.2", "seen")


class Area(NamedTuple):
    area: Annotated[float, Is("stress area", "A_s", "mm2")]
    pitch_diameter: Annotated[float, Is("pitch diameter", "d_2", "mm")]


@method(
    r"A_s = \begin{cases} \frac{\pi}{4} \left( \frac{d_2 + d_3}{2} \right)^2 & \mathrm{metric} \\"
    r" \frac{\pi}{4} \left( d - 0.9743\,P \right)^2 & \mathrm{unified} \end{cases},"
    r" \quad d_2 = d - 0.649519\,P, \quad d_3 = d - 1.226869\,P",
    Citation("ISO 898-1 for metric, ASME B1.1 for unified threads", "", "clause 9; stress area", "from memory"),
)
def thread_stress_area(
    diameter: Annotated[float, Is("major diameter", "d", "mm", 1, 120)],
    pitch: Annotated[float, Is("pitch", "P", "mm", 0.2, 10)],
    profile: Literal["metric", "unified"] = "metric",
) -> Area:
    """Stress area of a thread of 60 degrees
    The profile is the same, the two standards count its area differently: the unified formula gives 1 to 2 per cent less."""
    d2, d3 = diameter - 0.649519 * pitch, diameter - 1.226869 * pitch
    across = (d2 + d3) / 2 if profile == "metric" else diameter - 0.9743 * pitch
    return Area(pi / 4 * across**2, d2)


@method(r"F = s\,S_p\,A_s, \quad T = \frac{K\,d\,F}{1000}", SHIGLEY)
def bolt_torque_nut_factor(
    nut_factor: Annotated[float, Is("nut factor", "K", "", 0.05, 0.5)],
    diameter: Annotated[float, Is("major diameter", "d", "mm", 3, 100)],
    proof: Annotated[float, Is("proof strength", "S_p", "MPa", 100, 1500)],
    area: Annotated[float, Is("stress area", "A_s", "mm2", 1, 10_000)],
    share: Annotated[float, Is("share of the proof strength", "s", "", 0.1, 1)] = 0.75,
) -> Annotated[float, Is("tightening torque", "T", "N.m")]:
    """Torque by the nut factor
    One factor stands for all friction, so it scatters more than the split of friction does.
    The lowest factor that may apply gives the torque that is not passed."""
    return nut_factor * diameter * share * proof * area / 1000


@method(
    r"F_M = A_0 \frac{0.9\,R_p}{\sqrt{1 + 3 \left( 1.5\,\frac{d_2}{d_0} \left( \frac{P}{\pi d_2} + 1.155\,\mu_G \right) \right)^2}},"
    r" \quad A_0 = \frac{\pi d_0^2}{4}, \quad d_0 = \frac{d_2 + d_3}{2}",
    VDI,
)
def bolt_preload_90pct(
    diameter: Annotated[float, Is("major diameter", "d", "mm", 5, 39)],
    pitch: Annotated[float, Is("pitch", "P", "mm", 0.5, 6)],
    yield_strength: Annotated[float, Is("yield strength", "R_p", "MPa", 150, 1300)],
    thread_friction: Annotated[float, Is("friction in the thread", r"\mu_G", "", 0.04, 0.3)],
) -> Annotated[float, Is("preload at 90 % of yield", "F_M", "N")]:
    """Preload that uses 90 % of the yield strength, tension and torsion together
    The higher the friction, the more of the bolt is spent on torsion and the less clamps."""
    d2, d3 = diameter - 0.649519 * pitch, diameter - 1.226869 * pitch
    d0 = (d2 + d3) / 2
    twist = 1.5 * d2 / d0 * (pitch / (pi * d2) + 1.155 * thread_friction)
    return pi * d0**2 / 4 * 0.9 * yield_strength / sqrt(1 + 3 * twist**2)


@method(
    r"T = \frac{F}{1000} \left( 0.159\,P + 0.578\,d_2\,\mu_G + \mu_K \frac{d_w + d_h}{4} \right)",
    Citation("ISO 16047 and VDI 2230 Part 1", "", "5.4.3", "seen"),
)
def bolt_torque_friction_split(
    preload: Annotated[float, Is("preload", "F", "N", 1, 3_000_000)],
    diameter: Annotated[float, Is("major diameter", "d", "mm", 5, 39)],
    pitch: Annotated[float, Is("pitch", "P", "mm", 0.5, 6)],
    thread_friction: Annotated[float, Is("friction in the thread", r"\mu_G", "", 0.04, 0.3)],
    head_friction: Annotated[float, Is("friction under the head", r"\mu_K", "", 0.04, 0.3)],
    head: Annotated[float, Is("bearing diameter of the head", "d_w", "mm", 5, 70)],
    hole: Annotated[float, Is("hole", "d_h", "mm", 5, 45)],
) -> Annotated[float, Is("tightening torque", "T", "N.m")]:
    """Torque with friction split between thread and head
    With the low end of friction it gives the torque that is not passed; with the high end, what clamp that torque still gives."""
    if hole >= head:
        raise Refused(say("the hole is wider than the head"))
    d2 = diameter - 0.649519 * pitch
    return preload * (0.159 * pitch + 0.578 * d2 * thread_friction + head_friction * (head + hole) / 4) / 1000


@method(
    r"F = \frac{1000\,T}{0.159\,P + 0.578\,d_2\,\mu_G + \mu_K \frac{d_w + d_h}{4}}",
    Citation("ISO 16047, solved for the force", "", "", "derived"),
)
def bolt_force_from_torque(
    torque: Annotated[float, Is("tightening torque", "T", "N.m", 0, 100_000)],
    diameter: Annotated[float, Is("major diameter", "d", "mm", 3, 100)],
    pitch: Annotated[float, Is("pitch", "P", "mm", 0.2, 10)],
    thread_friction: Annotated[float, Is("friction in the thread", r"\mu_G", "", 0.04, 0.3)],
    head_friction: Annotated[float, Is("friction under the head", r"\mu_K", "", 0.04, 0.3)],
    head: Annotated[float, Is("bearing diameter of the head", "d_w", "mm", 5, 150)],
    hole: Annotated[float, Is("hole", "d_h", "mm", 3, 110)],
) -> Annotated[float, Is("clamp force", "F", "N")]:
    """Clamp force that a torque gives"""
    d2 = diameter - 0.649519 * pitch
    return 1000 * torque / (0.159 * pitch + 0.578 * d2 * thread_friction + head_friction * (head + hole) / 4)


@method(r"F = \frac{1000\,T}{K\,d}", Citation("Shigley, equation 8-27 solved for the force", "", "", "derived"))
def bolt_force_nut_factor(
    torque: Annotated[float, Is("tightening torque", "T", "N.m", 0, 100_000)],
    nut_factor: Annotated[float, Is("nut factor", "K", "", 0.05, 0.5)],
    diameter: Annotated[float, Is("major diameter", "d", "mm", 3, 100)],
) -> Annotated[float, Is("clamp force", "F", "N")]:
    """Clamp force that a torque gives, by the nut factor"""
    return 1000 * torque / (nut_factor * diameter)


@method(
    r"F_{\min} = \frac{F_M}{\alpha_A} (1 - f_Z)", Citation("VDI 2230 Part 1", "2015", "Table A8; embedding: common practice", "from memory")
)
def tightening_scatter(
    clamp: Annotated[float, Is("clamp force aimed at", "F_M", "N", 0, 3_000_000)],
    scatter: Annotated[float, Is("scatter of the tightening", r"\alpha_A", "", 1, 5)],
    embedding: Annotated[float, Is("share lost as faces settle", "f_Z", "", 0, 0.9)],
) -> Annotated[float, Is("least clamp force left", r"F_{\min}", "N")]:
    """Clamp force left after scatter and settling"""
    return clamp / scatter * (1 - embedding)


@method(
    r"F_{\min} = \min \left( F_\alpha, F_\mu (1 - f_Z) \right)",
    Citation("the lower of two ways to the clamp that is left", "", "", "derived"),
)
def least_clamp(
    by_scatter: Annotated[float, Is("clamp left by the scatter of the tightening", r"F_\alpha", "N", 0, 3_000_000)],
    by_friction: Annotated[float, Is("clamp with the high end of friction", r"F_\mu", "N", 0, 3_000_000)],
    embedding: Annotated[float, Is("share lost as faces settle", "f_Z", "", 0, 0.9)],
) -> Annotated[float, Is("least clamp force left", r"F_{\min}", "N")]:
    """Clamp force that may be counted on
    Where the friction may be anything in a wide range, the usual scatter does not cover it: the lower of the two ways counts."""
    return min(by_scatter, by_friction * (1 - embedding))


class Pressure(NamedTuple):
    area: Annotated[float, Is("area that carries the head", "A", "mm2")]
    pressure: Annotated[float, Is("pressure under the head", "p", "MPa")]


@method(
    r"p = \frac{F}{A}, \quad A = \frac{\pi}{4}\left(d_a^2 - d_h^2\right),"
    r" \quad A_{\mathrm{slot}} = \frac{\pi d_a^2}{4} - \frac{d_a^2}{2}\arcsin\frac{w}{d_a} - \frac{w}{2}\sqrt{d_a^2 - w^2},"
    r" \quad d_a = \min\left(d_W, d_w + 1.6\,h_s\right)",
    Citation("VDI 2230 Part 1; the slot: plane geometry", "2015", "5.5.4", "from memory"),
)
def bolt_bearing_pressure(
    clamp: Annotated[float, Is("greatest clamp force", "F", "N", 0, 3_000_000)],
    head: Annotated[float, Is("bearing diameter of the head", "d_w", "mm", 3, 150)],
    hole: Annotated[float, Is("round hole", "d_h", "mm", 0, 110)] = 0.0,
    slot: Annotated[float, Is("width of a slot longer than the head (0: none)", "w", "mm", 0, 110)] = 0.0,
    washer_thickness: Annotated[float, Is("thickness of a hard washer (0: none)", "h_s", "mm", 0, 20)] = 0.0,
    washer_outside: Annotated[float, Is("outside of that washer", "d_W", "mm", 0, 200)] = 0.0,
) -> Pressure:
    """Pressure under a bolt's head, over a hole or a slot
    A hard flat washer spreads the head by 1.6 times its thickness at most.
    Over the limit: a washer or less preload; a torque is never cut in silence."""
    across = min(washer_outside, head + 1.6 * washer_thickness) if washer_thickness and washer_outside else head
    if max(hole, slot) >= across:
        raise Refused(say("the head falls into its hole; a washer that spans it is needed"))
    if slot:
        area = pi * across**2 / 4 - (across**2 / 2 * asin(slot / across) + slot / 2 * sqrt(across**2 - slot**2))
    else:
        area = pi / 4 * (across**2 - hole**2)
    return Pressure(area, clamp / area)


@method(r"T_{\mathrm{set}} = g \left\lfloor \frac{T_{\max}}{g} \right\rfloor \geq T_{\min}", None)
def torque_rounding(
    least: Annotated[float, Is("least torque", r"T_{\min}", "N.m", 0, 100_000)],
    most: Annotated[float, Is("greatest torque", r"T_{\max}", "N.m", 0, 100_000)],
    step: Annotated[float, Is("graduation of the wrench", "g", "N.m", 0.001, 1000)],
) -> Annotated[float, Is("setting of the wrench", r"T_{\mathrm{set}}", "N.m")]:
    """What a wrench is set to
    The largest mark inside the band, never above it."""
    setting = floor(round(most / step, 6)) * step
    if setting < least - 1e-9:
        raise Refused(say("no mark of this wrench lies inside the torque"))
    return round(setting, 9)


@method(r"T_1 = g \left\lfloor \frac{T_{\mathrm{set}}}{2g} \right\rfloor", None)
def first_round(
    setting: Annotated[float, Is("setting of the wrench", r"T_{\mathrm{set}}", "N.m", 0.01, 100_000)],
    step: Annotated[float, Is("graduation of the wrench", "g", "N.m", 0.001, 1000)],
) -> Annotated[float, Is("torque of the first round", "T_1", "N.m")]:
    """What all bolts are tightened to before the final figure
    The mark at half of the final setting or next below it, so that the foot is drawn down evenly."""
    half = floor(round(setting / 2 / step, 6)) * step
    if half <= 0:
        raise Refused(say("half of the setting lies under the first mark of this wrench"))
    return round(half, 9)


@method(r"F_{\mathrm{all}} = p_G\,A", Citation("VDI 2230 Part 1", "2015", "5.5.4, solved for the force", "derived"))
def force_of_pressure(
    allowed: Annotated[float, Is("pressure that may be under the head", "p_G", "MPa", 0.1, 3000)],
    area: Annotated[float, Is("area that carries the head", "A", "mm2", 1, 50_000)],
) -> Annotated[float, Is("clamp force the face may carry", r"F_{\mathrm{all}}", "N")]:
    """Clamp force that the face under a head may carry"""
    return allowed * area


@method(r"F_{\mathrm{all}} = p_{\mathrm{all}}\,A", None)
def polymer_housing_bolt(
    allowed: Annotated[float, Is("pressure the maker allows on the polymer", r"p_{\mathrm{all}}", "MPa", 0.1, 300)],
    area: Annotated[float, Is("area that carries the head", "A", "mm2", 1, 50_000)],
) -> Annotated[float, Is("clamp force the polymer allows", r"F_{\mathrm{all}}", "N")]:
    """Clamp force a polymer housing allows, without metal sleeves in its holes
    Polymer creeps: half of the clamp is taken as lost, and no holding against slip is counted on."""
    return allowed * area


@method(r"T = \min(T_1, T_2)", Citation("the lower of two limits", "", "", "derived"))
def lower_of_two(
    one: Annotated[float, Is("one limit", "T_1", "N.m", 0, 1_000_000)],
    other: Annotated[float, Is("the other limit", "T_2", "N.m", 0, 1_000_000)],
) -> Annotated[float, Is("the limit that governs", "T", "N.m")]:
    """Of two limits of a torque, the lower
    Where the maker's figure is a ceiling, the computed torque below it governs and both are shown."""
    return min(one, other)


@method(r"T_{\min} = T\,\frac{F_{\mathrm{need}}}{F_{\min}}", Citation("torque and clamp force are proportional", "", "", "derived"))
def least_torque(
    torque: Annotated[float, Is("a torque", "T", "N.m", 0, 100_000)],
    clamp: Annotated[float, Is("least clamp force it leaves", r"F_{\min}", "N", 1, 3_000_000)],
    needed: Annotated[float, Is("clamp force needed", r"F_{\mathrm{need}}", "N", 0, 3_000_000)],
) -> Annotated[float, Is("torque below which too little clamp may be left", r"T_{\min}", "N.m")]:
    """Least torque that still leaves the clamp that is needed"""
    return torque * needed / clamp


@method(r"r = w - d", Citation("plane geometry", "", "", "derived"))
def slot_room(
    slot: Annotated[float, Is("slot along the shaft", "w", "mm", 0, 500)],
    bolt: Annotated[float, Is("bolt", "d", "mm", 1, 100)],
) -> Annotated[float, Is("room of the bolt in its slot", "r", "mm")]:
    """Room of a bolt in its slot along the shaft
    With the housing drawn toward the nut first, all of it is there for the travel away from the nut."""
    return slot - bolt


class Window(NamedTuple):
    least: Annotated[float, Is("least setting the wrench may be used at", r"T_1", "N.m")]
    most: Annotated[float, Is("greatest setting", r"T_2", "N.m")]


@method(r"T_1 = \max(T_a, 0.2\,T_b), \quad T_2 = T_b", Citation("ISO 6789-1", "2017", "20 to 100 % of the greatest value", "from memory"))
def wrench_window(
    lowest: Annotated[float, Is("lowest mark of the wrench", "T_a", "N.m", 0, 100_000)],
    highest: Annotated[float, Is("highest mark", "T_b", "N.m", 0, 100_000)],
) -> Window:
    """Where on its scale a torque wrench may be used"""
    return Window(max(lowest, 0.2 * highest), highest)


@method(r"d_w = 0.95\,s", Citation("ASME B18.2.1", "2012", "washer face at least 95 % of the width across flats", "from memory"))
def head_bearing_diameter(
    flats: Annotated[float, Is("width across flats", "s", "mm", 5, 150)],
) -> Annotated[float, Is("bearing diameter of the head", "d_w", "mm")]:
    """Bearing diameter of an inch hexagon head, by its width across flats
    The least the standard allows: less torque and more pressure than a larger face, so on the safe side for both."""
    return 0.95 * flats
