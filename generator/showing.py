"""The command `show`: a position written out whole, with the line each fact came from, then every value and why it is so."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import date
from pathlib import Path
from typing import Any

from pydantic import BaseModel

from generator.plant.plant import Plant
from generator.plant.problems import nearest, show_problem
from generator.plant.read import Word
from generator.plant.resolve import read_plant
from generator.say import say
from generator.show import shown
from generator.value import Band, Computed, Entered, Value, Withheld


def shown_position(folder: Path, on: date, identity: str) -> tuple[bool, str]:
    """Whether it is there, and its text; for an unknown one what is near, for a plant with problems the problems."""
    from generator.mounting.standard import machine_sheets

    plant, problems = read_plant(folder, on)
    if plant is None:
        return False, "\n\n".join(show_problem(problem) for problem in problems)
    wanted = identity.replace(" ", "/")
    known = [position.id for machine in plant.machines for position in machine.positions]
    if wanted not in known:
        near = nearest(wanted, known)
        return False, say("no position {name} in this plant; nearest known: {near}", name=identity, near=near) if near else say(
            "no position {name} in this plant", name=identity
        )
    machine = plant.machine(wanted.partition("/")[0])
    assert machine
    sheet = next(s for s in machine_sheets(plant, machine).sheets if s.id == wanted)
    lines = [f"{wanted}", "", say("As it is meant, each fact with the line it came from")]
    lines += list(_columns(_typed(plant, wanted)))
    lines += ["", say("Values, each with its reason")]
    lines += list(
        _columns((line.name, shown(line.value, str(plant.typed.units)).main, _reason(line.value)) for line in sheet.lines.values())
    )
    return True, "\n".join(lines)


def _typed(plant: Plant, identity: str) -> Iterator[tuple[str, str, str]]:
    tag = identity.partition("/")[0]
    machine = plant.machine(tag)
    assert machine
    for shaft in machine.shafts:
        for position in shaft.positions:
            if position.id == identity:
                yield from _facts("", position.typed)
                yield "diameter", _text(position.diameter), _place(position.diameter)
                for name in ("bearing", "sleeve", "housing"):
                    part = getattr(position, name)
                    if part is not None:
                        yield name, part.name, str(part.place)
                        yield from _facts(f"{name}.", part.typed)


def _facts(prefix: str, typed: Any) -> Iterator[tuple[str, str, str]]:
    """Every typed fact of a model, in the order of its fields, those of inner parts under dotted names."""
    given = [(field.alias or name, getattr(typed, name)) for name, field in type(typed).model_fields.items()]
    given += list((typed.model_extra or {}).items())
    for name, value in given:
        if value is None:
            continue
        if isinstance(value, BaseModel):
            yield from _facts(f"{prefix}{name}.", value)
        elif isinstance(value, dict):
            for key, one in value.items():
                yield f"{prefix}{name}.{key}", _text(one), _place(one)
        elif isinstance(value, list):
            yield f"{prefix}{name}", ", ".join(_text(one) for one in value), _place(value[0]) if value else ""
        else:
            yield f"{prefix}{name}", _text(value), _place(value)


def _text(value: Any) -> str:
    if isinstance(value, Band):
        return shown(value).main
    if isinstance(value, Value):
        return value.reason.text if isinstance(value.reason, Entered) else shown(value).main
    return value.why if isinstance(value, Withheld) else str(value)


def _place(value: Any) -> str:
    if isinstance(value, Band):
        return _place(value.lower)
    place = value.place if isinstance(value, Word) else getattr(getattr(value, "reason", None), "place", None)
    return str(place) if place else ""


def _reason(value: Any) -> str:
    from generator.site.reasons import comes_from

    if isinstance(value, Withheld):
        return value.why
    one = value.lower if isinstance(value, Band) else value
    if isinstance(one.reason, Computed):
        return say("computed by {method}", method=one.reason.method)
    place = _place(one)
    return f"{comes_from(one)} ({place})" if place else comes_from(one)


def _columns(rows: Any) -> Iterator[str]:
    rows = list(rows)
    widths = [min(44, max((len(row[i]) for row in rows), default=0)) for i in (0, 1)]
    for name, text, place in rows:
        yield f"  {name:<{widths[0]}}  {text:<{widths[1]}}  {place}".rstrip()
