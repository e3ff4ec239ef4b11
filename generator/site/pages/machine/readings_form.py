"""The form in which a position's readings are typed at the kiosk: its fields, and what each is held against."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any

from generator.mounting.practice import practice
from generator.mounting.sheet import Sheet
from generator.plant.plant import Plant
from generator.records.read import QUANTITIES
from generator.say import say
from generator.show import first_unit, shown, unit_text
from generator.units import convert
from generator.value import Value

RUN_IN_MINUTES = (15, 30, 60, 120)


@dataclass(frozen=True)
class Field:
    """One reading: the record's quantity, its name, its group in a code, its unit as records spell it and as shown.

    In that unit, "" for none: `low`, `high` it is held against, `least`, `most` that can be believed. `digits` after the point it is read to.
    `after`: minutes after the machine was started, "" for a reading of standing parts.
    """

    quantity: str
    name: str
    code: str
    unit: str
    digits: int
    low: str = ""
    high: str = ""
    least: str = ""
    most: str = ""
    after: str = ""

    @property
    def key(self) -> str:
        """What it is kept under, once in a form."""
        return f"{self.quantity} {self.after}".strip()

    @property
    def shown(self) -> str:
        """Its unit as printed."""
        return unit_text(self.unit)


@dataclass(frozen=True)
class ReadingsForm:
    """`allowed` in µm: how far the readings of the seat may lie apart, "" where withheld. `warm`: how far from 20 °C it may be read.

    `limits`, `spread`, `run_in`: the same in words for the reader, "" where withheld.
    """

    at: str
    letter: str
    unit: str
    allowed: str
    warm: str
    limits: str
    spread: str
    run_in: str
    seats: tuple[tuple[str, tuple[Field, ...]], ...]
    temperature: Field
    clearance: tuple[Field, ...]
    running: tuple[Field, ...]


def readings_form(plant: Plant, sheet: Sheet) -> ReadingsForm:
    """The form of one position."""
    limits, spread = sheet.band("shaft_limits"), sheet.number("out_of_round")
    diameter = sheet.position.diameter
    unit = limits.lower.unit if limits else diameter.unit if isinstance(diameter, Value) and diameter.unit == "in" else "mm"
    digits = _digits(plant, unit)
    seats = tuple(
        (
            say("place {number}", number=place),
            tuple(
                _field(
                    f"seat diameter {place} {way}", say("place {number}, direction {way}", number=place, way=way), f"d{place}", unit, digits,
                    limits.lower if limits else None, limits.upper if limits else None,
                )
                for way in "abc"
            ),
        )
        for place in (1, 2, 3)
    )  # fmt: skip
    return ReadingsForm(
        at=sheet.id,
        letter=sheet.position.letter,
        unit=unit,
        allowed=_text(spread, "um"),
        warm=_text(practice(plant, "warm_reading"), "K"),
        limits=shown(limits).main if limits else "",
        spread=shown(spread).main if spread else "",
        run_in=_run_in(sheet),
        seats=seats,
        temperature=_field("shaft temperature", say("temperature of the shaft"), "t", "degC", 0),
        clearance=_clearance(plant, sheet),
        running=tuple(
            _field("housing temperature", say("housing after {minutes} min", minutes=minutes), "h", "degC", 0, None, sheet.number("run_in_alarm"), str(minutes))
            for minutes in RUN_IN_MINUTES
        ),
    )  # fmt: skip


def _clearance(plant: Plant, sheet: Sheet) -> tuple[Field, ...]:
    """Both rows before and after: what is there against its band, what is left against the least."""
    if "clearance_before" not in sheet.lines:
        return ()
    band = sheet.band("clearance_before")
    least = sheet.number("least_left") or sheet.number("clearance_least_left")
    one = band.lower if band else least
    # feeler blades are marked in one of these two, whatever a table of clearances is in
    unit = "in" if one is not None and first_unit(one, str(plant.typed.units)) == "in" else "mm"
    digits = 4 if unit == "in" else 3
    before, left = say("clearance before, row {row}"), say("clearance left, row {row}")
    return (
        *(_field(f"clearance row {row}", before.format(row=row), "c", unit, digits, band and band.lower, band and band.upper) for row in (1, 2)),
        *(_field(f"clearance left row {row}", left.format(row=row), "l", unit, digits, least) for row in (1, 2)),
    )  # fmt: skip


def _run_in(sheet: Sheet) -> str:
    alarm, stop = sheet.number("run_in_alarm"), sheet.number("run_in_stop")
    return (
        say("Look into it from {alarm}; stop the machine at {stop}.", alarm=shown(alarm).main, stop=shown(stop).main)
        if alarm and stop
        else ""
    )


def _field(quantity: str, name: str, code: str, unit: str, digits: int, low: Any = None, high: Any = None, after: str = "") -> Field:
    kept, least, most = QUANTITIES["seat diameter" if quantity.startswith("seat diameter") else quantity]
    believed = (f"{convert(end, kept, unit):.6g}" for end in (least, most))
    return Field(quantity, name, code, unit, digits, _text(low, unit), _text(high, unit), *believed, after)


def _text(value: Value | None, unit: str) -> str:
    return f"{convert(value.content, value.unit, unit):.12g}" if value is not None else ""


def _digits(plant: Plant, unit: str) -> int:
    """How many digits after the point a micrometer here is read to."""
    step = plant.typed.inch_reading_step if unit == "in" else plant.typed.reading_step
    finest = convert(step.content, step.unit, unit) if step is not None else 0.0001
    return len(f"{finest:.8f}".rstrip("0").partition(".")[2])
