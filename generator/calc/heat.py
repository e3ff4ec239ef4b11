"""What heat does along the shaft."""

from typing import Annotated, Literal, NamedTuple

from generator.method import Is, Refused, method
from generator.say import say
from generator.value import Citation


@method(
    r"\Delta L = L \left( \alpha_s (t_s - t_0) - \alpha_f (t_f - t_0) \right) \cdot 10^{-6}, \quad t_0 = 20\,^\circ\mathrm{C}",
    Citation("linear thermal expansion; EN 1993-1-1", "2005", "3.2.6", "from memory"),
)
def thermal_growth(
    length: Annotated[float, Is("distance of the bearings", "L", "mm", 0, 100_000)],
    shaft: Annotated[float, Is("temperature of the shaft", "t_s", "degC", -90, 600)],
    frame: Annotated[float, Is("temperature of the frame", "t_f", "degC", -90, 600)],
    shaft_expansion: Annotated[float, Is("expansion of the shaft", r"\alpha_s", "1e-6/K", 1, 40)] = 12.0,
    frame_expansion: Annotated[float, Is("expansion of the frame", r"\alpha_f", "1e-6/K", 1, 40)] = 12.0,
) -> Annotated[float, Is("growth of the shaft against the frame", r"\Delta L", "mm")]:
    """Growth of a shaft against its frame
    Negative where the shaft is the colder. Both were set at 20 °C; a machine set warm or cold starts from there."""
    return length * (shaft_expansion * (shaft - 20) - frame_expansion * (frame - 20)) * 1e-6


class Setting(NamedTuple):
    away: Annotated[float, Is("room to leave on the side away from the fixed unit", "a", "mm")]
    toward: Annotated[float, Is("room to leave on the side toward it", "b", "mm")]
    spare: Annotated[float, Is("room then to spare at either end of its travel", "s", "mm")]
    verdict: Literal["enough", "too little"]


@method(
    r"a = \frac{w + G_{\max} + G_{\min}}{2}, \quad b = w - a, \quad s = \frac{w - (G_{\max} - G_{\min})}{2},"
    r" \quad G_{\max} = \max(0, G_h, G_c), \; G_{\min} = \min(0, G_h, G_c)",
    Citation("linear thermal expansion; plane geometry", "", "", "derived"),
)
def cold_setting(
    room: Annotated[float, Is("room the free unit has in all", "w", "mm", 0, 2000)],
    hot: Annotated[float, Is("growth away from the fixed unit, from today to hot", "G_h", "mm", -1000, 1000)],
    cold: Annotated[float, Is("growth away from it, from today to coldest", "G_c", "mm", -1000, 1000)] = 0.0,
) -> Setting:
    """Where in its travel a free unit is put today
    So that it has the same room to spare when hottest as when coldest."""
    most, least = max(0.0, hot, cold), min(0.0, hot, cold)
    away = (room + most + least) / 2
    spare = (room - (most - least)) / 2
    return Setting(away, room - away, spare, "enough" if spare >= -1e-9 else "too little")


@method(
    r"\Delta L = L \left( \alpha_s (t_s - t_{s0}) - \alpha_f (t_f - t_{f0}) \right) \cdot 10^{-6}",
    Citation("linear thermal expansion; EN 1993-1-1", "2005", "3.2.6", "from memory"),
)
def growth_from_today(
    length: Annotated[float, Is("distance of the bearings", "L", "mm", 0, 100_000)],
    shaft_now: Annotated[float, Is("temperature of the shaft today", "t_{s0}", "degC", -90, 600)],
    frame_now: Annotated[float, Is("temperature of the frame today", "t_{f0}", "degC", -90, 600)],
    shaft: Annotated[float, Is("temperature of the shaft then", "t_s", "degC", -90, 600)],
    frame: Annotated[float, Is("temperature of the frame then", "t_f", "degC", -90, 600)],
    shaft_expansion: Annotated[float, Is("expansion of the shaft", r"\alpha_s", "1e-6/K", 1, 40)] = 12.0,
    frame_expansion: Annotated[float, Is("expansion of the frame", r"\alpha_f", "1e-6/K", 1, 40)] = 12.0,
) -> Annotated[float, Is("growth from today", r"\Delta L", "mm")]:
    """Growth of a shaft against its frame from the day it is set"""
    return length * (shaft_expansion * (shaft - shaft_now) - frame_expansion * (frame - frame_now)) * 1e-6


class Sum(NamedTuple):
    one: Annotated[float, Is("room toward one end", "w_1", "mm", 0, 1000)]


@method(r"w = \sum w_i", Citation("plane geometry", "", "", "derived"))
def room_in_all(rooms: tuple[Sum, ...]) -> Annotated[float, Is("room in all", "w", "mm")]:
    """Room of a free unit from one end of its travel to the other"""
    return sum(one.one for one in rooms)


class Float(NamedTuple):
    needed: Annotated[float, Is("float needed", "f", "mm")]
    spare: Annotated[float, Is("float to spare", r"\Delta f", "mm")]
    verdict: Literal["enough", "too little"]


@method(r"f = c\,\left|\Delta L\right| + a, \quad \Delta f = f_{\mathrm{there}} - f", None)
def float_available(
    growth: Annotated[float, Is("growth toward this side", r"\Delta L", "mm", -1000, 1000)],
    there: Annotated[float, Is("float that is physically there on this side", r"f_{\mathrm{there}}", "mm", 0, 1000)],
    margin: Annotated[float, Is("factor on growth", "c", "", 1, 3)],
    setting_error: Annotated[float, Is("setting error", "a", "mm", 0, 20)] = 0.0,
) -> Float:
    """Whether the float is enough for the growth
    Only float that is physically there counts. Where a unit floats in its own clearance, it is not set by hand and has no setting error."""
    needed = margin * abs(growth) + setting_error
    spare = there - needed
    return Float(needed, spare, "enough" if spare >= -1e-9 else "too little")


@method(r"L = \left| x_2 - x_1 \right|", Citation("plane geometry", "", "", "derived"))
def distance(
    one: Annotated[float, Is("place of one", "x_1", "mm", 0, 1_000_000)],
    other: Annotated[float, Is("place of the other", "x_2", "mm", 0, 1_000_000)],
) -> Annotated[float, Is("distance along the shaft", "L", "mm")]:
    """Distance of two places along a shaft"""
    return abs(other - one)


@method(r"f = \frac{w - B}{2}", Citation("plane geometry", "", "", "derived"))
def free_room(
    wide: Annotated[float, Is("room in the housing along the shaft", "w", "mm", 0, 2000)],
    width: Annotated[float, Is("width of the outer ring", "B", "mm", 0, 2000)],
) -> Annotated[float, Is("float each way of a ring set in the middle", "f", "mm")]:
    """Float of a ring that is loose in its housing, set in the middle"""
    if width > wide:
        raise Refused(say("the ring is wider than its room"))
    return (wide - width) / 2


@method(r"T = T_a + \Delta T", None)
def warmer_than(
    air: Annotated[float, Is("temperature of the air", "T_a", "degC", -90, 200)],
    over: Annotated[float, Is("warming over it", r"\Delta T", "K", 0, 200)],
) -> Annotated[float, Is("temperature assumed at the bearing", "T", "degC")]:
    """Temperature at a bearing where none was measured
    An assumption that is marked on every number resting on it; a reading replaces it."""
    return air + over
