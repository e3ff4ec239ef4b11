"""Every calculation gives what the published sources beside it say: one test an entry of every `*.checks.yml`."""

from __future__ import annotations

from pathlib import Path
from typing import Any

import pytest
import yaml

from generator.compute import inputs_of, named
from generator.method import fields, label_of, row_of
from generator.mounting.chains import ALL
from generator.plant.quantities import parse_number
from generator.units import convert
from generator.value import Rows, Value, Withheld

HOUSE = Path(__file__).parents[2] / "generator"
PRACTICE = "common practice, no source"
COME_BY = {
    "standard", "handbook", "worked example", "other library", "closed form", "from memory", PRACTICE,
}  # fmt: skip


def _checks() -> list[Any]:
    found = []
    for path in sorted(HOUSE.rglob("*.checks.yml")):
        for number, check in enumerate(yaml.load(path.read_text(encoding="utf-8"), Loader=yaml.BaseLoader), 1):
            found.append(pytest.param(check, id=f"{path.name.partition('.')[0]}-{number}-{check['method']}"))
    return found


CHECKS = _checks()


@pytest.mark.parametrize("check", CHECKS)
def test_gives_what_the_source_says(check: dict[str, Any]) -> None:
    hold(check)


def hold(check: dict[str, Any]) -> None:
    """Run one check; fails where the calculation does not give what its source says."""
    method = ALL[check["method"]]
    got = method.of(**inputs_of(method, check["inputs"], "check"))
    within = check.get("within", {})
    if "remark" in check:
        assert _remarks(got) == (() if check["remark"] == "none" else (check["remark"],))
    if "rows" in check["expected"]:
        rows = check["expected"]["rows"]
        assert isinstance(got, Rows) and len(got.rows) == len(rows)
        for row, wanted in zip(got, rows, strict=True):
            for name, text in wanted.items():
                _agrees(row[name], text, within.get(name), name)
        return
    for name, text in check["expected"].items():
        _agrees(named(got)[name], text, within.get(name), name)


@pytest.mark.parametrize("check", CHECKS)
def test_a_check_says_where_its_figure_is_from(check: dict[str, Any]) -> None:
    assert check["come_by"] in COME_BY
    assert check["source"].strip()
    assert check["expected"]


@pytest.mark.parametrize("name", sorted(ALL))
def test_every_calculation_is_held_against_the_world_outside(name: str) -> None:
    checked = [check for check in CHECKS if check.values[0]["method"] == name]
    assert checked or ALL[name].why_no_outside_check, f"{name} has no check and does not say why there is none"


@pytest.mark.parametrize("name", sorted(ALL))
def test_every_number_of_a_calculation_has_a_meaning(name: str) -> None:
    method = ALL[name]
    kinds = [*method.takes.values(), *(fields(method.gives) or {"result": method.gives}).values()]
    for kind in kinds:
        for one in (fields(row_of(kind)) or {"": kind}).values() if row_of(kind) else (kind,):
            label = label_of(one)
            assert label is None or label.meaning
    assert method.title


def _remarks(got: Any) -> tuple[str, ...]:
    """What is said beside the results, each of it once."""
    return tuple(dict.fromkeys(text for one in named(got).values() for text in one.remarks))


def _agrees(got: Any, wanted: str, within: str | None, name: str) -> None:
    if wanted == "withheld":
        assert isinstance(got, Withheld), f"{name}: {got} should be withheld"
        return
    assert isinstance(got, Value), f"{name} is withheld: {got}"
    if isinstance(got.content, str):
        assert got.content == wanted
        return
    number, unit = parse_number(wanted)
    found = convert(got.content, got.unit, unit) if unit else got.content
    assert abs(found - number) <= _room(number, unit, within), f"{name}: {found:.7g} {unit}, the source says {wanted}"


def _room(number: float, unit: str, within: str | None) -> float:
    """What a check leaves open; without a word of it, only the last bit of a conversion."""
    if within is None:
        return 1e-9 * max(1.0, abs(number))
    room, of = parse_number(within)
    if of == "%" and unit != "%":
        return abs(number) * room / 100
    # kelvins are the room a temperature has
    return room if {of, unit} <= {"degC", "K"} or not of else convert(room, of, unit)
