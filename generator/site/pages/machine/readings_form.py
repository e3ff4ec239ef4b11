"""The form in which a position's readings are typed at the kiosk: its fields, and the limits they are judged by."""

from __future__ import annotations

from dataclasses import dataclass

from generator.mounting.practice import practice
from generator.mounting.sheet import Sheet
from generator.plant.plant import Plant
from generator.say import say
from generator.show import shown
from generator.units import convert
from generator.value import Value


@dataclass(frozen=True)
class Field:
    """One reading: the record's quantity, its name, its short name in a code, and its unit as records spell it and as shown."""

    quantity: str
    name: str
    short: str
    unit: str
    shown: str


@dataclass(frozen=True)
class ReadingsForm:
    """`low`, `high` in `unit`, `allowed` in µm: "" where they are withheld. `warm`: how far from 20 °C a shaft may be read."""

    at: str
    letter: str
    unit: str
    low: str
    high: str
    allowed: str
    limits: str
    spread: str
    warm: str
    seats: tuple[tuple[str, tuple[Field, ...]], ...]
    others: tuple[Field, ...]


def readings_form(plant: Plant, sheet: Sheet) -> ReadingsForm:
    """The form of one position."""
    limits, spread = sheet.band("shaft_limits"), sheet.number("out_of_round")
    diameter = sheet.position.diameter
    unit = limits.lower.unit if limits else diameter.unit if isinstance(diameter, Value) and diameter.unit == "in" else "mm"
    seats = tuple(
        (say("place {number}", number=place), tuple(Field(f"seat diameter {place} {way}", say("place {number}, direction {way}", number=place, way=way), f"d{place}{way}", unit, unit) for way in "abc"))
        for place in (1, 2, 3)
    )  # fmt: skip
    return ReadingsForm(
        sheet.id,
        sheet.position.letter,
        unit,
        f"{limits.lower.content:.10g}" if limits else "",
        f"{limits.upper.content:.10g}" if limits else "",
        f"{convert(spread.content, spread.unit, 'um'):.10g}" if spread else "",
        shown(limits).main if limits else "",
        shown(spread).main if spread else "",
        f"{practice(plant, 'warm_reading').content:.10g}",
        seats,
        tuple(_others(sheet)),
    )


def _others(sheet: Sheet) -> list[Field]:
    found = [Field("shaft temperature", say("temperature of the shaft"), "t", "degC", "°C")]
    if "clearance_before" in sheet.lines:
        rows = (("clearance row {}", say("clearance before"), "c"), ("clearance left row {}", say("clearance left"), "l"))
        found += [Field(key.format(row), say("{what}, row {row}", what=what, row=row), f"{short}{row}", "mm", "mm") for key, what, short in rows for row in (1, 2)]  # fmt: skip
    return found
