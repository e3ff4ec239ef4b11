"""Pairs of calculations that answer one question: both worked out for the same cases, and how far they lie apart."""

from __future__ import annotations

from dataclasses import dataclass
from functools import cache
from pathlib import Path
from typing import Any

from generator.compute import inputs_of, named
from generator.mounting.chains import ALL
from generator.plant.quantities import parse_number
from generator.say import say
from generator.show import with_unit
from generator.units import convert
from generator.value import Rows, Value


@dataclass(frozen=True)
class Case:
    """One case: what it is, both results as text, and how far the second lies from the first, as a share."""

    case: str
    one: str
    other: str
    apart: float


@dataclass(frozen=True)
class Pair:
    """A question two calculations answer; `within`: how far apart they may lie, as a share."""

    question: str
    says: str
    methods: tuple[str, str]
    within: float
    cases: tuple[Case, ...]


@cache
def all_pairs() -> tuple[Pair, ...]:
    """Every pair, worked out."""
    import yaml

    typed = yaml.load((Path(__file__).parent / "pairs.yml").read_text(encoding="utf-8"), Loader=yaml.BaseLoader)
    return tuple(_pair(one) for one in typed)


def _pair(typed: dict[str, Any]) -> Pair:
    first = typed["cases"][0]
    share, _ = parse_number(typed["within"])
    return Pair(
        say(typed["question"]),
        say(typed["says"]),
        (first["one"]["method"], first["other"]["method"]),
        share / 100,
        tuple(_case(case) for case in typed["cases"]),
    )


def _case(typed: dict[str, Any]) -> Case:
    one, other = _result(typed["one"]), _result(typed["other"])
    here, there = float(one.content), convert(other.content, other.unit, one.unit)
    return Case(say(typed["case"]), with_unit(f"{here:.5g}", one.unit), with_unit(f"{there:.5g}", one.unit), (there - here) / here)


def _result(asked: dict[str, Any]) -> Value:
    method = ALL[asked["method"]]
    got = method.of(**inputs_of(method, asked["inputs"], "pairs.yml"))
    part = asked.get("result", "result")
    if isinstance(got, Rows):
        row, _, name = part.partition(".")
        found: Value = got.rows[int(row) - 1][name]
        return found
    value: Value = named(got)[part]
    return value
