"""The record sheet: as found and as left, each blank beside the band it is held against."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from typing import TYPE_CHECKING, Any

from generator.mounting.sheet import ShaftSheet, Sheet
from generator.say import say
from generator.show import unit_text
from generator.site.pages.machine.page import title
from generator.work.figures import SheetFigures
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
    f = SheetFigures(sheet, shaft.shaft, str(papers.standard.plant.typed.units))
    measuring = [item for item in take_along(papers.standard, papers.machine, papers.jobs) if sheet.position.letter in item.positions and _measures(papers, item.name)]  # fmt: skip
    return {
        "tag": papers.tag,
        "letter": sheet.position.letter,
        "title": title(sheet, shaft),
        "issued": papers.issued,
        "found": tuple(_found(sheet, f)),
        "left": tuple(_left(sheet, f, shaft)),
        "places": ("1", "2", "3"),
        "limits": _band(f, "shaft_limits"),
        "spread": _band(f, "out_of_round"),
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


def _band(f: SheetFigures, key: str) -> str:
    """As it stands in the steps: in the unit that is read here; nothing where the sheet has no such line."""
    return str(f(key)) if f.sheet.value(key) is not None else ""


def _unit(f: SheetFigures, metric: str) -> str:
    """The unit a plant reads first, as it is printed."""
    return unit_text({"degC": "degF", "mm/s": "in/s"}[metric] if f.first == "inch" else metric)


def _found(sheet: Sheet, f: SheetFigures) -> Iterator[Asked]:
    yield Asked(say("running: temperature, vibration"), _band(f, "run_in_usual"), (_unit(f, "degC"), _unit(f, "mm/s")))
    if "clearance_before" in sheet.lines:
        yield Asked(say("clearance as found, {unit}", unit=f.reads_in), "", (say("row 1"), say("row 2")))
    yield Asked(say("mark of the lock moved, bolts loose"), "", (say("yes / no"), say("yes / no")))
    yield Asked(say("shims; grease; damage, by the page Damage terms"), "", (say("shims"), say("grease"), say("damage, where")))


def _left(sheet: Sheet, f: SheetFigures, shaft: ShaftSheet) -> Iterator[Asked]:
    if "clearance_before" in sheet.lines:
        yield Asked(say("clearance before, {unit}", unit=f.reads_in), _band(f, "clearance_before"), (say("row 1"), say("row 2")))
        yield Asked(say("clearance after, {unit}, never under", unit=f.reads_in), _band(f, "least_left") or _band(f, "clearance_least_left"), (say("row 1"), say("row 2")))  # fmt: skip
    for key, name in (
        ("heat_to", say("heated to")), ("flange_gap", say("gap, nut hand tight")), ("nut_turn", say("nut turned on")),
        ("retaining_screw", say("retaining screw")), ("lock_screw", say("screw of the lock")), ("cap_torque", say("cap bolts")),
        ("bolt_setting", say("housing bolts, wrench set to")), ("grease_first", say("first fill")), ("grease_strokes", say("strokes given")),
    ):  # fmt: skip
        if key in sheet.lines:
            yield Asked(name, _band(f, key))
    if str(sheet.position.typed.holds) == "free":
        yield _float(f, shaft)
    minutes = tuple(say("{minutes} min", minutes=one) for one in (15, 30, 60, 120))
    yield Asked(
        say("temperature, {unit}; stop at {stop}", unit=_unit(f, "degC"), stop=_band(f, "run_in_stop")), _band(f, "run_in_usual"), minutes
    )
    yield Asked(say("vibration, {unit}", unit=_unit(f, "mm/s")), _band(f, "vibration_alarm"))


def _float(f: SheetFigures, shaft: ShaftSheet) -> Asked:
    """The room it is left with, against what it is set with toward each end; against what growth needs where that is all there is."""
    ends = tuple(say("toward the {end}", end=end) for end in shaft.shaft.ends)
    keys = ("set_first", "set_second") if f.has("set_first") and f.has("set_second") else ("float_first", "float_second")
    if all(f.has(key) for key in keys):
        first, second = (str(f(key)) for key in keys)
        return Asked(say("float left, mm"), say("{first} and {second}", first=first, second=second), ends)
    return Asked(say("float left, both ways, mm"), _band(f, "float_needed_hot"), ends)
