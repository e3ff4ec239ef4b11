"""Values of a sheet as a drawing is told them: sizes in mm, words as the page shows them."""

from __future__ import annotations

from dataclasses import replace

from generator.mounting.axial import anchor_of
from generator.mounting.sheet import ShaftSheet, Sheet
from generator.show import SPACE, shown, text
from generator.site.drawings.pen import Drawn
from generator.units import convert
from generator.value import Band, Known, Value, Withheld


def mm(value: Value) -> float:
    """The size in mm."""
    return convert(value.content, value.unit, "mm")


def drawn(value: Value) -> Drawn:
    """Size and words."""
    return Drawn(mm(value), text(value))


def said(sheet: Sheet, key: str) -> str:
    """The value under a key as the page shows it, "" where it is withheld or absent."""
    value = sheet.value(key)
    return "" if value is None or isinstance(value, Withheld) else shown(value).main


def in_mm(value: Known | None) -> str:
    """A length in mm whatever it is kept in, as blades and micrometers are marked; inches stay inches; "" where there is none."""
    if isinstance(value, Band):
        return shown(Band(_to_mm(value.lower), _to_mm(value.upper))).main
    return shown(_to_mm(value)).main if isinstance(value, Value) else ""


def ends(band: Band) -> tuple[str, str]:
    """Least and most, each with its unit, in digits as on the page."""
    found = shown(band)
    return f"{found.lower}{SPACE}{found.unit}", f"{found.upper}{SPACE}{found.unit}"


def _to_mm(value: Value) -> Value:
    return value if value.unit != "um" else replace(value, content=mm(value), unit="mm")


def room_set(sheet: Sheet, on: ShaftSheet) -> tuple[Value, Value] | None:
    """Room toward the first end and toward the second as a free unit is set; its float where there is nothing to set."""
    away, toward = sheet.number("set_away"), sheet.number("set_toward")
    at, anchor = sheet.position.typed.at, anchor_of(on.shaft).typed.at
    if away is not None and toward is not None and at is not None and anchor is not None:
        return (toward, away) if mm(at) > mm(anchor) else (away, toward)
    first, second = sheet.number("float_first"), sheet.number("float_second")
    return (first, second) if first is not None and second is not None else None


def first_left(on: ShaftSheet) -> bool:
    """Whether the first end is seen at the left."""
    left = on.shaft.typed.viewed_from.left
    return left is None or str(left) == on.shaft.ends[0]
