"""What the plant has decided, where its scope covers a position."""

from __future__ import annotations

from generator.mounting.bench import Bench
from generator.mounting.sheet import Sheet
from generator.plant.plant import Machine, Plant, Shaft
from generator.value import Place, Ruled, Value


def ruled(bench: Bench, key: str) -> Value | None:
    """The value a rule gives for a key (`seat.class`, `nut.side`, `fixed.at` ...) at this position, None where no rule reaches it."""
    for name, rule in (bench.plant.typed.rules or {}).items():
        given = next((text for k, text in (rule.gives or {}).items() if str(k) == key), None)
        if given is not None and covers(bench, rule.where):
            place = getattr(name, "place", Place("plant.yml", 1))
            return Value(str(given), "", Ruled(str(name), str(rule.says), str(rule.approved_by), str(rule.on.content), place))
    return None


def covers(bench: Bench, where: object) -> bool:
    """Whether a rule's scope covers the position; no scope covers all."""
    if where is None:
        return True
    here = {
        "area": str(bench.machine.typed.area),
        "machine": bench.machine.tag,
        "shaft": bench.shaft.id,
        "position": bench.position.id,
        "locking": bench.locking,
        "housing": str(bench.position.housing.typed.style) if bench.position.housing else "",
    }
    return all(getattr(where, key) is None or str(getattr(where, key)) == found for key, found in here.items())


def ruled_at(plant: Plant, machine: Machine, shaft: Shaft, sheet: Sheet, key: str) -> Value | None:
    """The same for a sheet that is done."""
    from generator.locking import locking_of

    locking = locking_of(sheet.position)
    return ruled(Bench(plant, machine, shaft, sheet.position, locking.WORD if locking else "", sheet.order), key)
