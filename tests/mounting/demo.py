"""Sheets of the demo plant with a thing or two changed: file, what stood there, what stands now."""

from __future__ import annotations

import tempfile
from datetime import date
from pathlib import Path

from generator.mounting.sheet import MachineSheets, Sheet
from generator.mounting.standard import machine_sheets
from generator.plant.plant import Plant
from generator.plant.resolve import read_plant
from generator.units import convert
from generator.value import Band, Value, Withheld
from tests.copies import copy_of_demo

PLANT = Path(__file__).parents[2] / "plant_data"
ON = date(2026, 11, 25)
Edit = tuple[str, str, str]


def plant(*edits: Edit) -> Plant:
    """The demo plant, changed."""
    with tempfile.TemporaryDirectory() as folder:
        copy = Path(folder) / "plant"
        copy_of_demo(copy)
        for file, old, new in edits:
            path = copy / file
            text = path.read_text(encoding="utf-8")
            assert old in text, (file, old)
            path.write_text(text.replace(old, new), encoding="utf-8")
        read, problems = read_plant(copy, ON)
    assert read is not None, [f"{p.place}: {p.wrong}" for p in problems]
    return read


def machine(tag: str, *edits: Edit) -> MachineSheets:
    """All sheets of one machine of it."""
    read = plant(*edits)
    found = read.machine(tag)
    assert found is not None
    return machine_sheets(read, found)


def sheet(identity: str, *edits: Edit) -> Sheet:
    """One position's sheet of it."""
    sheets = machine(identity.partition("/")[0], *edits).sheets
    return next(s for s in sheets if s.id == identity)


def size(value: object, unit: str) -> float:
    """A number in a unit."""
    assert isinstance(value, Value), value
    return convert(value.content, value.unit, unit)


def ends(value: object, unit: str) -> tuple[float, float]:
    """Both ends of a band in a unit."""
    assert isinstance(value, Band), value
    return size(value.lower, unit), size(value.upper, unit)


def why(value: object) -> str:
    """Why a value is withheld."""
    assert isinstance(value, Withheld), value
    return value.why
