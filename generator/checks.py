"""The checks of the calculations: read from the files beside them, worked out, and compared."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from functools import cache
from pathlib import Path
from typing import Any

from generator.compute import inputs_of, named
from generator.mounting.chains import ALL
from generator.plant.quantities import BadQuantity, parse_number
from generator.show import with_unit
from generator.units import UnitMismatch, convert
from generator.value import Value, Withheld

HOUSE = Path(__file__).parent
# strongest first
STRENGTH = ("standard", "handbook", "worked example", "other library", "closed form", "from memory", "common practice, no source")


@dataclass(frozen=True)
class Check:
    """One case: inputs and expected results as printed in the source, and how the figure was come by."""

    method: str
    inputs: dict[str, Any]
    expected: dict[str, Any]
    source: str
    come_by: str


@dataclass(frozen=True)
class Outcome:
    """One result of a case beside what was published."""

    name: str
    expected: str
    computed: str
    deviation: str


@cache
def all_checks() -> tuple[Check, ...]:
    """Every check of every calculation, strongest first."""
    import yaml

    found = []
    for path in sorted(HOUSE.rglob("*.checks.yml")):
        for one in yaml.load(path.read_text(encoding="utf-8"), Loader=yaml.BaseLoader) or []:
            found.append(Check(one["method"], one["inputs"], one["expected"], one["source"], one["come_by"]))
    return tuple(sorted(found, key=lambda check: STRENGTH.index(check.come_by)))


def outcome(check: Check) -> Iterator[Outcome]:
    """What the calculation gives for the case, result by result."""
    got = named(ALL[check.method].of(**inputs_of(ALL[check.method], check.inputs, "check")))
    for name, wanted in check.expected.items():
        value = got.get(name)
        if isinstance(value, Withheld) or not isinstance(value, Value):
            yield Outcome(name, str(wanted) if isinstance(wanted, str) else "", value.why if isinstance(value, Withheld) else "", "")
        elif isinstance(value.content, str):
            yield Outcome(name, str(wanted), value.content, "")
        else:
            yield _number(name, str(wanted), value)


def _number(name: str, wanted: str, value: Value) -> Outcome:
    try:
        number, unit = parse_number(wanted)
        computed = convert(value.content, value.unit, unit) if unit else value.content
    except (BadQuantity, UnitMismatch):
        return Outcome(name, wanted, f"{value.content:.6g}", "")
    off = "" if number == 0 else f"{(computed - number) / number:+.2%}"
    return Outcome(name, wanted, with_unit(f"{computed:.6g}", unit), off)
