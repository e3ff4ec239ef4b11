"""A JSON Schema of a kind of file, for an editor: meanings, examples, patterns, closed lists, no unknown keys."""

from __future__ import annotations

import json
from pathlib import Path
from typing import Any

from pydantic import BaseModel

DIALECT = "https://json-schema.org/draft/2020-12/schema"


def json_schema(model: type[BaseModel]) -> dict[str, Any]:
    """The schema of a kind of file. The reader is stricter: it also knows units, calendars and names."""
    made = model.model_json_schema(by_alias=True, mode="validation")
    return {"$schema": DIALECT, **_for_an_editor(made)}


def _for_an_editor(node: Any, names: bool = False) -> Any:
    """Without titles, which only repeat the key, and without null, since a key with nothing after it is refused.

    `names` says that the keys of this mapping are names of the plant's, so that a field called title stays.
    """
    if isinstance(node, list):
        return [_for_an_editor(one) for one in node]
    if not isinstance(node, dict):
        return node
    if names:
        return {key: _for_an_editor(value) for key, value in node.items()}
    kept = {key: _for_an_editor(value, key in ("properties", "$defs")) for key, value in node.items() if not _idle(key, node)}
    choices = [one for one in kept.get("anyOf", ()) if one != {"type": "null"}]
    if len(choices) == 1 and "anyOf" in kept:
        kept = {**choices[0], **{key: value for key, value in kept.items() if key != "anyOf"}}
    elif choices:
        kept["anyOf"] = choices
    hint = kept.pop("hint", None)
    if hint:
        kept["description"] = f"{kept['description']}; {hint}" if "description" in kept else hint
    return kept


def _idle(key: str, node: dict[str, Any]) -> bool:
    return key == "title" or (key == "default" and node["default"] is None)


def write_schemas(folder: Path) -> tuple[Path, ...]:
    """Write the schema of each kind of file to FOLDER/schema; an editor is told of one by a first line in the file."""
    from generator.plant.load import LIBRARY
    from generator.plant.model.document import Document
    from generator.plant.model.machine import Machine
    from generator.plant.model.plant import Acceptance, Plant
    from generator.plant.model.second_language import SecondLanguage

    kinds: dict[str, dict[str, Any]] = {"plant": json_schema(Plant), "machine": json_schema(Machine), "document": json_schema(Document)}
    kinds["accepted"] = {"type": "array", "items": json_schema(Acceptance)}
    kinds["second_language"] = json_schema(SecondLanguage)
    kinds |= {kind: {"type": "object", "additionalProperties": json_schema(model)} for kind, model in LIBRARY.items()}
    written = []
    (folder / "schema").mkdir(parents=True, exist_ok=True)
    for kind, schema in kinds.items():
        path = folder / "schema" / f"{kind}.json"
        path.write_text(json.dumps(_lifted(schema), indent=1, ensure_ascii=False) + "\n", encoding="utf-8")
        written.append(path)
    return tuple(written)


def _lifted(schema: dict[str, Any]) -> dict[str, Any]:
    """References count from the top of the document, so the shared definitions go there."""
    inner = schema.get("items") or schema.get("additionalProperties")
    if isinstance(inner, dict) and "$defs" in inner:
        schema = {**schema, "$defs": inner.pop("$defs")}
    return schema
