"""What sits on a shaft by its loads as typed: pulleys, wheels, couplings; and of which of it no mass is typed."""

from __future__ import annotations

from typing import Any

from generator.plant.plant import Shaft
from generator.units import convert

# loads that are something on the shaft: a pulley, a wheel, a coupling
SITS = (
    "weight",
    "side force",
    "belt strands",
    "belt wrap",
    "belt drive",
    "conveyor pulley",
    "elevator head",
    "chain",
    "gear",
    "screw",
    "coupling",
)


def sitting(shaft: Shaft) -> list[tuple[Any, Any]]:
    """Loads that are something on the shaft, by name; a side force where a weight sits is only what acts on that."""
    loads = [(name, load) for name, load in (shaft.typed.loads or {}).items() if str(load.kind) in SITS]
    weights = _places(loads, "weight")
    return [(name, load) for name, load in loads if str(load.kind) != "side force" or _mm(load) not in weights]


def unweighed(shaft: Shaft) -> tuple[tuple[Any, Any], ...]:
    """What sits on the shaft where no weight is typed: no jack and no sling is reckoned for it."""
    things = sitting(shaft)
    weights = _places(things, "weight")
    return tuple((name, load) for name, load in things if _mm(load) not in weights)


def _places(loads: list[tuple[Any, Any]], kind: str) -> set[float]:
    return {_mm(load) for _, load in loads if str(load.kind) == kind}


def _mm(load: Any) -> float:
    return convert(load.at.content, load.at.unit, "mm")
