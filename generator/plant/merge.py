"""Not repeating oneself: `like` (a sibling), `usual` (shaft, machine, area, plant; nearest wins) merged into one position."""

from collections.abc import Iterable, Sequence
from typing import Any

from pydantic import BaseModel

from generator.plant.model.machine import Position
from generator.plant.model.usual import USUAL_KEYS, Usual

# these are sets of separate facts, so they are merged key by key; the other usual keys are said whole
MERGED = ("bolts", "grease", "steel", "seat", "tightening")
# what belongs to one position alone and is never taken from a sibling
OWN = ("at", "like", "fitted", "stage", "note", "mounted", "misaligned", "stands", "jack")


def merged_position(own: Position, sibling: Position | None, usuals: Sequence[Usual | None]) -> Position:
    """The position as meant: its own keys, then its sibling's, then what is usual, nearest first."""
    found: dict[str, Any] = {}
    for name in Position.model_fields:
        levels = [getattr(own, name)]
        if sibling is not None and name not in OWN:
            levels.append(getattr(sibling, name))
        if name in USUAL_KEYS:
            levels.extend(getattr(usual, name) for usual in usuals if usual is not None)
        found[name] = nearest(name, levels)
    if own.unit is not None and own.parts is None:
        found["parts"] = None
    if own.holds == "fixed":
        found["floats"] = own.floats
    return own.model_copy(update=found)


def nearest(name: str, levels: Iterable[Any]) -> Any:
    """The nearest that is said; of a merged key, each of its own keys nearest."""
    said = [level for level in levels if level is not None]
    if not said or name not in MERGED or len(said) == 1:
        return said[0] if said else None
    return _merged(said)


def _merged(said: Sequence[BaseModel]) -> BaseModel:
    kind = type(said[0])
    fields = {name: next((value for level in said if (value := getattr(level, name)) is not None), None) for name in kind.model_fields}
    return said[0].model_copy(update=fields)
