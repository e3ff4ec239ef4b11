"""What a pressed joint holds, against what it must: the push along the shaft and the torque that could turn the ring."""

from __future__ import annotations

from collections.abc import Iterator

from generator.calc.nuts import safe_hold
from generator.mounting.bench import Bench
from generator.mounting.loads import axial_load
from generator.mounting.sheet import Line
from generator.say import say
from generator.value import Known, Results, Value


def hold_of_seat(bench: Bench, held: Results) -> Iterator[Line]:
    """The load along the shaft the joint may carry, and the load it must; the maker's figure rules where there is one."""
    maker = bench.maker("axial_hold", say("axial load the lock holds"))
    computed: Known = safe_hold.of(force=held.force, safety=bench.practice("seat_safety"))
    rules = maker if isinstance(maker, Value) else computed
    beside = ((say("computed"), computed),) if isinstance(maker, Value) and isinstance(computed, Value) else ()
    yield Line("seat_hold", "lock", say("Load along the shaft the seat may carry"), rules, beside=beside)
    yield Line("seat_hold_needed", "lock", say("Load along the shaft it must carry"), axial_load(bench))
    yield Line("seat_hold_torque", "lock", say("Torque at which the ring would turn"), held.torque)
