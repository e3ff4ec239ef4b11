"""The plant's own tools: which covers a figure."""

from __future__ import annotations

from generator.mounting.practice import practice
from generator.mounting.sheet import Sheet
from generator.mounting.wrench import in_date, run_out, setting_on
from generator.plant.model.library import Tool
from generator.plant.plant import Named, Plant
from generator.show import text
from generator.units import UnitMismatch, convert
from generator.value import Band, Known, LookedUp, Value, Withheld

NOTHING = Value(0.0, "N.m", LookedUp(None, "a ceiling has no least torque"))


def fitting_tool(plant: Plant, kind: str, value: Known | None) -> Named[Tool] | None:
    """The tool of that kind with the narrowest range that covers the value, in calibration where it has one; None where there is none."""
    ends = (value.lower, value.upper) if isinstance(value, Band) else (value,) if isinstance(value, Value) else ()
    fit = [tool for tool in plant.library.tools.values() if str(tool.typed.kind) == kind and _covers(plant, tool, ends)]
    return min(fit, key=_span, default=None)


def _covers(plant: Plant, tool: Named[Tool], ends: tuple[Value, ...]) -> bool:
    if tool.typed.calibrated is not None and run_out(tool.typed.calibrated, practice(plant, "tool_calibrated"), plant.on):
        return False
    if not ends:
        return True
    if not isinstance(tool.typed.range, Band):
        return False
    least, most = tool.typed.range.lower, tool.typed.range.upper
    try:
        return all(
            least.content <= convert(end.content, end.unit, least.unit) <= convert(most.content, most.unit, least.unit) for end in ends
        )
    except UnitMismatch:
        return False


def _span(tool: Named[Tool]) -> float:
    span = tool.typed.range
    return span.upper.content - span.lower.content if isinstance(span, Band) else 0.0


def torque_tool(plant: Plant, torque: Known) -> tuple[Named[Tool] | None, str]:
    """The torque tool that reaches the torque within 20 to 100 % of its range, and the mark it is set to."""
    if isinstance(torque, Withheld):
        return None, ""
    least, most = (torque.lower, torque.upper) if isinstance(torque, Band) else (NOTHING, torque)
    found = [(tool, setting) for tool in in_date(plant) if (setting := setting_on(tool, least, most)) is not None]
    if not found:
        return None, ""
    tool, setting = min(found, key=lambda one: (one[0].typed.step.content if one[0].typed.step else 1e9, one[0].name))
    return tool, text(setting)


def key_for(sheet: Sheet) -> str:
    """The size of the key that turns the lock's screw: the maker's, else the standard's."""
    for name in ("retaining_screw_key", "lock_screw_key", "hex_key"):
        size = sheet.number(name)
        if size is not None:
            return text(size)
    return ""
