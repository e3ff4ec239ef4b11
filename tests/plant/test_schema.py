"""The schema an editor is given, and the examples it and the messages show."""

from __future__ import annotations

import json
import re
from pathlib import Path
from typing import Annotated, Any

import pytest
from pydantic import BaseModel, TypeAdapter

from generator.plant.model.common import Part
from generator.plant.model.document import Document
from generator.plant.model.library import Bearing, Fastener, Grease, Housing, Sleeve, Tool, Unit
from generator.plant.model.machine import Machine
from generator.plant.model.plant import Acceptance, Plant
from generator.plant.problems import Problems
from generator.plant.read import read_tree
from generator.plant.schema import json_schema, write_schemas
from tests.copies import PLANT

KINDS = (Plant, Acceptance, Machine, Document, Bearing, Sleeve, Housing, Unit, Grease, Fastener, Tool)


def every_part(model: type[BaseModel] = Part) -> list[type[BaseModel]]:
    return [one for part in model.__subclasses__() if part.__module__.startswith("generator.") for one in (part, *every_part(part))]


def fields() -> list[Any]:
    # dots stand for more than an example can hold: the whole of a machine's shafts
    found = [
        (part, name, field) for part in every_part() for name, field in part.model_fields.items() if field.examples != ["{head: {...}}"]
    ]
    return [pytest.param(field.alias or name, field, id=f"{part.__name__}.{field.alias or name}") for part, name, field in found]


@pytest.mark.parametrize(("key", "field"), fields())
def test_the_example_of_a_field_is_taken_by_it(tmp_path: Path, key: str, field: Any) -> None:
    """A message says "right would be" with this example: it must be right."""
    (example,) = field.examples
    (tmp_path / "plant.yml").write_text(f"{key}: {example}\n")
    problems = Problems(tmp_path)
    tree = read_tree(tmp_path / "plant.yml", "plant.yml", problems)
    assert tree is not None and problems.found == ()
    TypeAdapter(Annotated[field.annotation, key, *field.metadata]).validate_python(tree.under(key))


@pytest.mark.parametrize("model", KINDS)
def test_every_kind_of_file_has_a_schema(model: type[BaseModel]) -> None:
    schema = json_schema(model)
    assert schema["$schema"] == "https://json-schema.org/draft/2020-12/schema"
    assert json.loads(json.dumps(schema)) == schema
    assert schema["additionalProperties"] is False
    assert all(field["description"] for field in schema["properties"].values())


def test_a_schema_says_what_a_field_means_how_it_is_written_and_what_is_needed() -> None:
    section = json_schema(Machine)["$defs"]["Section"]
    assert section["required"] == ["to", "diameter"]
    assert section["additionalProperties"] is False
    diameter = section["properties"]["diameter"]
    assert diameter["description"] == "its diameter; a number and a unit: mm, cm, m, um, in, ft"
    assert diameter["examples"] == ["80 mm"]


def test_a_pattern_knows_a_quantity_from_what_is_none() -> None:
    pattern = json_schema(Machine)["$defs"]["Section"]["properties"]["diameter"]["pattern"]
    for taken in ("80 mm", "2 15/16 in", '2-15/16"', "80mm"):
        assert re.search(pattern, taken)
    for refused in ("80", "80 N", "80,5 mm", "2 in 3", "mm"):
        assert not re.search(pattern, refused)


def test_a_pattern_keeps_to_what_every_editor_reads() -> None:
    """ECMA-262 with the u flag, as JSON Schema 2020-12 asks, has no escape of a character that means nothing."""
    text = json.dumps(json_schema(Machine)) + json.dumps(json_schema(Grease)) + json.dumps(json_schema(Tool))
    escaped = set(re.findall(r"\\\\(.)", text))
    assert escaped <= set(".*+?^$(){}|/[]")


def test_a_kind_of_load_is_known_by_one_word() -> None:
    loads = json_schema(Machine)["$defs"]
    assert loads["Thrust"]["properties"]["kind"]["enum"] == ["thrust"]
    assert loads["SideForce"]["properties"]["kind"]["enum"] == ["side force"]


def test_a_closed_list_takes_what_an_editor_makes_of_it() -> None:
    """YAML takes 8.8 without quotes for a number (and 1.1 takes yes for true); the reader takes either as typed."""
    sealing = json_schema(Bearing)["$defs"]["Sealing"]["properties"]
    assert sealing["regreasable"]["enum"] == ["yes", "no", True, False]
    fastener = json_schema(Fastener)["properties"]["class"]
    assert "8.8" in fastener["enum"] and 8.8 in fastener["enum"]


def test_a_key_that_may_be_left_out_may_not_be_empty() -> None:
    assert '"null"' not in json.dumps(json_schema(Machine))


def test_the_demo_s_schemas_are_those_of_the_model(tmp_path: Path) -> None:
    fresh = write_schemas(tmp_path)
    there = PLANT / "schema"
    assert [path.name for path in fresh if path.read_bytes() != (there / path.name).read_bytes()] == []
