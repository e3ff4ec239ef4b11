"""Texts for readers that stand where no call says them: labels and docstrings of calculations, titles of tables, fields of the model, rules, pairs."""

from __future__ import annotations

import re
from collections.abc import Iterator
from pathlib import Path
from typing import Any, get_args

import yaml
from pydantic import BaseModel

from generator.findings import RULES
from generator.findings.finding import name_of
from generator.method import Method, fields, label_of, row_of, words_of
from generator.mounting.chains import ALL
from generator.plant.load import LIBRARY
from generator.plant.model.document import Document
from generator.plant.model.loads import KINDS
from generator.plant.model.machine import Machine
from generator.plant.model.plant import Acceptance, Plant
from generator.plant.model.second_language import SecondLanguage

HOUSE = Path(__file__).parents[1]


def described() -> set[str]:
    """All of them; each is said where it is shown."""
    found = set(_of_methods()) | set(_of_tables()) | set(_of_rules()) | set(_of_pairs())
    seen: set[type[BaseModel]] = set()
    for model in (Machine, Plant, Acceptance, SecondLanguage, Document, *LIBRARY.values(), *KINDS.values()):
        found |= set(_of_model(model, seen))
    return {text for text in found if text}


def _of_methods() -> Iterator[str]:
    for method in ALL.values():
        lines = (method.does.__doc__ or "").strip().partition("\n")
        yield lines[0]
        yield " ".join(lines[2].split())
        yield from (*method.holds, *method.beware)
        yield from _labels(method)


def _labels(method: Method) -> Iterator[str]:
    for kind in (*method.takes.values(), method.gives):
        yield from _label(kind)


def _label(kind: Any) -> Iterator[str]:
    label = label_of(kind)
    if label is not None:
        yield label.meaning
    yield from words_of(kind) or ()
    for inner in (fields(row_of(kind) or kind) or {}).values():
        yield from _label(inner)


def _of_tables() -> Iterator[str]:
    for path in (HOUSE / "tables").glob("*.csv"):
        yield from re.findall(r"^# title:\s*(.+?)\s*$", path.read_text(encoding="utf-8"), flags=re.MULTILINE)


def _of_rules() -> Iterator[str]:
    for rule, _ in RULES:
        yield name_of(rule)
        yield " ".join((rule.__doc__ or "").split())


def _of_pairs() -> Iterator[str]:
    for pair in yaml.safe_load((HOUSE / "pairs.yml").read_text(encoding="utf-8")):
        yield from (pair["question"], pair["says"], *(case["case"] for case in pair["cases"]))


def _of_model(model: type[BaseModel], seen: set[type[BaseModel]]) -> Iterator[str]:
    if model in seen:
        return
    seen.add(model)
    for field in model.model_fields.values():
        yield str(field.description or "")
        for inner in _models(field.annotation):
            yield from _of_model(inner, seen)


def _models(annotation: Any) -> Iterator[type[BaseModel]]:
    if isinstance(annotation, type) and issubclass(annotation, BaseModel):
        yield annotation
    for one in get_args(annotation):
        yield from _models(one)
