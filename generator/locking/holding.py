"""What a lock may carry along the shaft, against what it must."""

from __future__ import annotations

from collections.abc import Iterator

from generator.calc.screws import set_screw_holding
from generator.mounting.bench import Bench
from generator.mounting.loads import axial_load
from generator.mounting.sheet import Line
from generator.plant.model.library import SetScrews
from generator.say import say
from generator.tables.look_ups import screw_seating
from generator.value import Known, Value, Withheld


def hold_lines(bench: Bench, screws: SetScrews | None) -> Iterator[Line]:
    """The load the lock may carry and the load it must; of a collar too, which holds along the shaft by its screw alone."""
    yield Line("screw_hold", "lock", say("Load along the shaft the lock may carry"), _may_carry(bench, screws))
    yield Line("screw_hold_needed", "lock", say("Load along the shaft it must carry"), axial_load(bench))


def pushed(bench: Bench) -> bool:
    """Whether something is stated that pushes along the shaft here, even where it does not say how much comes to this position."""
    load = axial_load(bench)
    if isinstance(load, Value):
        return bool(load.content > 0)
    loads = (bench.shaft.typed.loads or {}).values()
    return str(bench.shaft.typed.lies) != "horizontal" or any(str(load.kind) == "thrust" for load in loads)


def _may_carry(bench: Bench, screws: SetScrews | None) -> Known:
    """The maker's figure, else the published one of inch set screws with the plant's safety."""
    maker: Known = bench.maker("axial_hold", say("axial load the lock holds"))
    if isinstance(maker, Value) or screws is None:
        return maker
    _, _, one = screw_seating(screws.size)
    found = set_screw_holding.of(one_screw=one, count=screws.count, diameter=bench.position.diameter, safety=bench.practice("screw_safety"))
    if isinstance(found.axial, Value):
        return found.axial
    return Withheld(found.axial.why, maker.needs if isinstance(maker, Withheld) else ())
