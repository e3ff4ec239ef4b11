"""The crew's readings: `records/*.csv`, one row a quantity. Nothing is dropped in silence: a row that can't be taken is a Problem."""

import csv
import io
import re
from collections.abc import Iterator
from datetime import datetime
from pathlib import Path

from generator.plant.plant import Reading
from generator.plant.problems import Problems, nearest
from generator.say import say
from generator.units import UnitMismatch, convert, unit_named, units_for
from generator.value import Measured, Place, Value

COLUMNS = ("record", "issue", "position", "when", "by", "phase", "quantity", "value", "unit", "instrument", "note")
PHASES = ("as-found", "as-left", "run-in", "round")
# quantity: (unit it is kept in, least, most that can be believed)
QUANTITIES: dict[str, tuple[str, float, float]] = {
    "seat diameter": ("mm", 3, 1000),
    "shaft temperature": ("degC", -60, 400),
    "shaft hardness": ("HRC", 1, 70),
    "foot feeler": ("mm", 0, 20),
    "frame flatness": ("mm", 0, 50),
    "take-up used": ("mm", 0, 5000),
    "take-up used, other side": ("mm", 0, 5000),
    "clearance row 1": ("mm", 0, 2),
    "clearance row 2": ("mm", 0, 2),
    "clearance left row 1": ("mm", 0, 2),
    "clearance left row 2": ("mm", 0, 2),
    "housing temperature": ("degC", -60, 400),
    "air temperature": ("degC", -60, 100),
    "vibration": ("mm/s", 0, 500),
    "nut turn given": ("deg", 0, 2000),
    "screw torque given": ("N.m", 0, 100_000),
    "base torque given": ("N.m", 0, 100_000),
    "float toward first end": ("mm", 0, 1000),
    "float toward second end": ("mm", 0, 1000),
    "height difference": ("mm", 0, 1000),
    "sideways difference": ("mm", 0, 1000),
    "shims": ("mm", 0, 100),
    "grease given": ("g", 0, 100_000),
    "strokes given": ("", 0, 10_000),
}
_SEAT = re.compile(r"seat diameter ([1-9]) ([abc])")
_POSITION = re.compile(r"(\S+)[ /]([A-Z]{1,2})")


def read_records(path: Path, shown_as: str, known: frozenset[str], problems: Problems) -> Iterator[Reading]:
    """The readings of one file. `known` are the identities TAG/A of the plant. Problems: not text, columns, position, time, number, unit."""
    try:
        text = path.read_text(encoding="utf-8-sig")
    except (UnicodeDecodeError, OSError):
        problems.add(Place(shown_as, 1), say("the file is not UTF-8 text"), say("save it as CSV in UTF-8"))
        return
    if not text.strip():
        problems.add(
            Place(shown_as, 1), say("the file is empty"), say("the first line names the columns: {columns}", columns=",".join(COLUMNS))
        )
        return
    rows = csv.reader(io.StringIO(text.replace("\x00", "\ufffd")))
    head = next(rows)
    if tuple(head) != COLUMNS:
        problems.add(
            Place(shown_as, 1), say("the columns are not those of a record"), say("the first line is: {columns}", columns=",".join(COLUMNS))
        )
        return
    yield from _readings(rows, shown_as, known, problems)


def _readings(rows: "Iterator[list[str]]", shown_as: str, known: frozenset[str], problems: Problems) -> Iterator[Reading]:
    seen: set[tuple[str, ...]] = set()
    while True:
        try:
            cells = next(rows)
        except StopIteration:
            return
        except csv.Error:
            problems.add(Place(shown_as, 1), say("the file cannot be read as CSV"), say("one row a reading, commas between the columns"))
            return
        place = Place(shown_as, getattr(rows, "line_num", 1))
        if not any(cells):
            continue
        if len(cells) != len(COLUMNS):
            problems.add(place, say("{count} columns where {wanted} belong", count=len(cells), wanted=len(COLUMNS)), ",".join(COLUMNS))
            continue
        row = dict(zip(COLUMNS, (cell.strip() for cell in cells), strict=True))
        key = (row["record"], row["position"], row["when"], row["phase"], row["quantity"])
        if key in seen:
            problems.add(
                place,
                say("record {record} has this reading already", record=row["record"]),
                say("one row a reading; delete one, or give it its own time"),
            )
            continue
        seen.add(key)
        reading = _reading(row, place, known, problems)
        if reading:
            yield reading


def _reading(row: dict[str, str], place: Place, known: frozenset[str], problems: Problems) -> Reading | None:
    position = _POSITION.fullmatch(row["position"])
    identity = "/".join(position.groups()) if position else row["position"]
    if identity not in known:
        near = nearest(identity, known)
        right = say("nearest known: {name}", name=near) if near else say("a position is written as its tag and its letter: INT-05 C")
        problems.add(place, say("no position {name} in this plant", name=row["position"]), right)
        return None
    if row["phase"] not in PHASES:
        problems.add(place, say("no phase {name}", name=row["phase"] or "''"), say("one of: {words}", words=", ".join(PHASES)))
        return None
    try:
        datetime.fromisoformat(row["when"])
    except ValueError:
        problems.add(place, say("{text} is no date", text=row["when"] or "''"), say("write 2026-03-09 or 2026-03-09T10:20"))
        return None
    value = _value(row, place, problems)
    return value and Reading(row["record"], row["issue"], identity, row["when"], row["phase"], row["quantity"], value, row["note"], place)


def _value(row: dict[str, str], place: Place, problems: Problems) -> Value | None:
    quantity = "seat diameter" if _SEAT.fullmatch(row["quantity"]) else row["quantity"]
    if quantity not in QUANTITIES or (quantity == "seat diameter" and quantity == row["quantity"]):
        near = nearest(row["quantity"], QUANTITIES) or ", ".join(QUANTITIES)
        problems.add(place, say("no quantity {name}", name=row["quantity"] or "''"), say("nearest known: {name}", name=near))
        return None
    wanted, low, high = QUANTITIES[quantity]
    unit = unit_named(row["unit"]) if row["unit"] else ""
    try:
        number = float(row["value"]) if re.fullmatch(r"[+-]?\d+(\.\d+)?", row["value"]) else None
        kept = convert(number, unit, wanted) if number is not None and unit is not None else None
    except UnitMismatch:
        kept = None
    if kept is None:
        units = ", ".join(units_for_kind(wanted)) or say("no unit")
        problems.add(
            place,
            say("{value} {unit} is no {quantity}", value=row["value"] or "''", unit=row["unit"], quantity=quantity),
            say("a plain number, with one of: {units}", units=units),
        )
        return None
    if not low <= kept <= high:
        problems.add(
            place,
            say("{value} {unit} cannot be believed as {quantity}", value=row["value"], unit=row["unit"], quantity=quantity),
            say("from {low} to {high} {unit}; was the unit meant?", low=f"{low:g}", high=f"{high:g}", unit=wanted),
        )
        return None
    measured = Measured(row["record"], row["by"], row["when"], row["instrument"], place)
    return Value(float(row["value"]), unit or "", measured)


def units_for_kind(unit: str) -> tuple[str, ...]:
    """The units a reading kept in this one may be given in."""
    from generator.units import measures

    return units_for(measures(unit)) if unit else ()
