"""How to describe a machine: every field with its meaning, unit and example, made from the model itself."""

from __future__ import annotations

import typing
from typing import Any

from pydantic import BaseModel

from generator.plant.load import LIBRARY
from generator.plant.model.document import Document
from generator.plant.model.loads import KINDS
from generator.plant.model.machine import Machine
from generator.plant.model.plant import Acceptance, Plant
from generator.plant.model.second_language import SecondLanguage
from generator.records.read import QUANTITIES
from generator.say import say


def describe_view() -> dict[str, Any]:
    """What the template is given: for each kind of file its parts, and for each part its fields."""
    files = [
        ("machine", say("machines/<tag>.yml: one machine"), Machine),
        ("plant", say("plant.yml: the plant"), Plant),
        ("accepted", say("accepted.yml: what the plant has decided to live with"), Acceptance),
    ]
    files.append(("second-language", say("second_language.yml: safety messages and key terms in a second language"), SecondLanguage))
    files += [(kind, say("library/{kind}.yml: each under its designation", kind=kind), model) for kind, model in LIBRARY.items()]
    files.append(("documents", say("library/documents/<name>.yml: a maker's document"), Document))
    seen: set[type[BaseModel]] = set()
    return {
        "files": [{"key": key, "title": title, "parts": list(_parts(model, "", seen))} for key, title, model in files],
        "loads": [{"kind": kind, "fields": _fields(model)} for kind, model in KINDS.items()],
        "quantities": QUANTITIES,
    }


def _parts(model: type[BaseModel], under: str, seen: set[type[BaseModel]]) -> typing.Iterator[dict[str, Any]]:
    if model in seen:
        return
    seen.add(model)
    yield {"under": under, "fields": _fields(model)}
    for name, field in model.model_fields.items():
        inner = _model_in(field.annotation)
        if inner is not None and inner not in KINDS.values():
            yield from _parts(inner, f"{under}{field.alias or name}: ", seen)


def _fields(model: type[BaseModel]) -> list[dict[str, Any]]:
    schema = model.model_json_schema()
    found = []
    for name, field in model.model_fields.items():
        key = field.alias or name
        about = schema.get("properties", {}).get(key, {})
        found.append(
            {
                "key": key,
                "needed": field.is_required(),
                "meaning": say(str(field.description)),
                "example": (field.examples or [""])[0],
                "kind": _kind(about),
            }
        )
    return found


def _kind(about: dict[str, Any]) -> str:
    for one in (about, *about.get("anyOf", ())):
        if "enum" in one:
            return say("one of: {words}", words=", ".join(str(word) for word in one["enum"]))
    for one in about.get("anyOf", ()):
        if one.get("description"):
            return say(str(one["description"]))
    return ""


def _model_in(annotation: Any) -> type[BaseModel] | None:
    if isinstance(annotation, type) and issubclass(annotation, BaseModel):
        return annotation
    return next((found for one in typing.get_args(annotation) if (found := _model_in(one)) is not None), None)
