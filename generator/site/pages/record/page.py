"""The record sheet: as found and as left, each blank beside the band it is held against."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from typing import TYPE_CHECKING, Any

from generator.mounting.sheet import ShaftSheet, Sheet
from generator.say import say
from generator.show import shown
from generator.site.pages.machine.page import title
from generator.value import Withheld
from generator.work.take_along import take_along

if TYPE_CHECKING:
    from generator.site.papers import Papers


@dataclass(frozen=True)
class Asked:
    """One thing to write: what, the band it is held against, and how many blanks, each with its name."""

    what: str
    band: str
    blanks: tuple[str, ...] = ("",)


def record_view(papers: Papers, shaft: ShaftSheet, sheet: Sheet) -> dict[str, Any]:
    """Everything on the record sheet."""
    first = str(papers.standard.plant.typed.units)
    measuring = [item for item in take_along(papers.standard, papers.machine, papers.jobs) if sheet.position.letter in item.positions and _measures(papers, item.name)]  # fmt: skip
    return {
        "tag": papers.tag,
        "letter": sheet.position.letter,
        "title": title(sheet, shaft),
        "issued": papers.issued,
        "found": tuple(_found(sheet, first)),
        "left": tuple(_left(sheet, first)),
        "places": ("1", "2", "3"),
        "limits": _band(sheet, "shaft_limits", first),
        "spread": _band(sheet, "out_of_round", first),
        "tools": [(item.name, item.size, _calibrated(papers, item.name)) for item in measuring],
    }


def _measures(papers: Papers, name: str) -> bool:
    tool = papers.standard.plant.library.tools.get(name)
    return tool is not None and str(tool.typed.kind) in (
        "micrometer",
        "torque wrench",
        "torque driver",
        "feeler",
        "thermometer",
        "dial indicator",
    )


def _calibrated(papers: Papers, name: str) -> str:
    tool = papers.standard.plant.library.tools[name]
    return str(tool.typed.calibrated.content) if tool.typed.calibrated else say("no day on file")


def _band(sheet: Sheet, key: str, first: str) -> str:
    value = sheet.value(key)
    return "" if value is None else say("HELD") if isinstance(value, Withheld) else shown(value, first).main


def _found(sheet: Sheet, first: str) -> Iterator[Asked]:
    yield Asked(say("running: temperature, vibration"), _band(sheet, "run_in_usual", first), (say("°C"), say("mm/s")))
    if "clearance_before" in sheet.lines:
        yield Asked(say("clearance as found, mm"), "", (say("row 1"), say("row 2")))
    yield Asked(say("mark of the lock moved, bolts loose"), "", (say("yes / no"), say("yes / no")))
    yield Asked(say("shims; grease; damage, by the page Damage terms"), "", (say("shims"), say("grease"), say("damage, where")))


def _left(sheet: Sheet, first: str) -> Iterator[Asked]:
    if "clearance_before" in sheet.lines:
        yield Asked(say("clearance before, mm"), _band(sheet, "clearance_before", first), (say("row 1"), say("row 2")))
        yield Asked(say("clearance after, mm, never under"), _band(sheet, "least_left", first) or _band(sheet, "clearance_least_left", first), (say("row 1"), say("row 2")))  # fmt: skip
    for key, name in (
        ("heat_to", say("heated to")), ("flange_gap", say("gap, nut hand tight")), ("nut_turn", say("nut turned on")),
        ("retaining_screw", say("retaining screw")), ("lock_screw", say("screw of the lock")), ("cap_torque", say("cap bolts")),
        ("bolt_setting", say("housing bolts, wrench set to")), ("grease_first", say("first fill")), ("grease_strokes", say("strokes given")),
    ):  # fmt: skip
        if key in sheet.lines:
            yield Asked(name, _band(sheet, key, first))
    if str(sheet.position.typed.holds) == "free":
        yield Asked(say("float left, both ways, mm"), _band(sheet, "float_needed_hot", first), ("", ""))
    minutes = tuple(say("{minutes} min", minutes=one) for one in (15, 30, 60, 120))
    yield Asked(
        say("temperature, °C; stop at {stop}", stop=_band(sheet, "run_in_stop", first)), _band(sheet, "run_in_usual", first), minutes
    )
    yield Asked(say("vibration, mm/s"), _band(sheet, "vibration_alarm", first))
