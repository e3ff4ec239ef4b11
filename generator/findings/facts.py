"""Small helpers the rules share: facts of a sheet and their texts."""

from __future__ import annotations

from generator.mounting.sheet import Sheet
from generator.show import text
from generator.units import convert
from generator.value import Place, Value


def content(sheet: Sheet, key: str) -> object:
    """The bare content of a line, None where it has no single value."""
    value = sheet.number(key)
    return value.content if value else None


def number(value: Value, unit: str) -> float:
    """A value's number in a unit."""
    return convert(value.content, value.unit, unit)


def said(value: Value, unit: str | None = None) -> str:
    """A value as text."""
    return text(value, unit)


def place_of(value: object, otherwise: Place) -> Place:
    """Where a value or a typed word is written."""
    place = getattr(value, "place", None) or getattr(getattr(value, "reason", None), "place", None)
    return place if isinstance(place, Place) else otherwise


def zone(sheet: Sheet) -> str:
    """The zone of a position, "" for none."""
    around = sheet.position.typed.surroundings
    return str(around.zone) if around and around.zone is not None else ""
