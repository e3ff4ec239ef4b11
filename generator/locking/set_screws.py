"""A ring locked by set screws: count, torque, key, and whether they hold what they must."""

from __future__ import annotations

from collections.abc import Iterator

from generator.calc.screws import screw_bite, set_screw_holding
from generator.locking.screw import screw_lines
from generator.locking.speed import speed_lines
from generator.mounting.bench import Bench
from generator.mounting.chains.locks import hex_key_size, set_screw_seating
from generator.mounting.loads import axial_load
from generator.mounting.sheet import Line
from generator.plant.plant import Position
from generator.say import say
from generator.tables.look_ups import screw_seating
from generator.value import Known, LookedUp, Need, Value, Withheld

WORD = "set screws"
NAME = "set screws"
HARD = Value(45.0, "HRC", LookedUp(None, "set screws of class 45H, the softest they may be"))


def suits(position: Position) -> bool:
    """A ring that says it locks by set screws."""
    locks = position.bearing.typed.locks if position.bearing else None
    return position.sleeve is None and locks is not None and str(locks.by) == WORD


def lines(bench: Bench) -> Iterator[Line]:
    """The lines of the lock group."""
    locks = bench.position.bearing.typed.locks  # type: ignore[union-attr]
    screws = locks.screws
    if screws is not None:
        yield Line("lock_screw_count", "lock", say("Set screws"), screws.count)
        yield Line("lock_screw_thread", "lock", say("Thread of the screws"), screws.size)
    yield from screw_lines(bench, "lock_screw", say("Screw torque"), say("torque of the set screws"), beside=_seating(screws))
    if screws is not None:
        yield Line("hex_key", "lock", say("Hex key by the standard"), hex_key_size.of(screw=screws.size))
        yield from _hold(bench, screws)
        yield from bite_lines(bench, screws.hardness)
    yield from speed_lines(bench)


def _seating(screws: object) -> tuple[tuple[str, Known], ...]:
    if screws is None:
        return ()
    found = set_screw_seating.of(screw=screws.size)  # type: ignore[attr-defined]
    named = ((say("seating torque of the trade"), found.seating), (say("never passed"), found.ceiling))
    return tuple((name, value) for name, value in named if isinstance(value, Value))


def _hold(bench: Bench, screws: object) -> Iterator[Line]:
    """What the screws hold against the load along the shaft: the maker's figure, else the published one of inch screws."""
    needed = axial_load(bench)
    maker = bench.maker("axial_hold", say("axial load the screws hold"))
    if isinstance(maker, Value):
        hold: Known = maker
    else:
        _, _, one = screw_seating(screws.size)  # type: ignore[attr-defined]
        found = set_screw_holding.of(
            one_screw=one, count=screws.count, diameter=bench.position.diameter, safety=bench.practice("screw_safety")
        )  # type: ignore[attr-defined]
        hold = found.axial if isinstance(found.axial, Value) else Withheld(found.axial.why, maker.needs)
    yield Line("screw_hold", "lock", say("Axial load the screws may carry"), hold)
    yield Line("screw_hold_needed", "lock", say("Axial load they must carry"), needed)


def bite_lines(bench: Bench, hardness: Value | None) -> Iterator[Line]:
    """Whether the screws are hard enough for this shaft: measured hardness before the typed one."""
    measured = bench.position.latest("shaft hardness")
    steel = bench.shaft.typed.steel
    shaft: Known = (
        measured.value
        if measured
        else steel.hardness
        if steel and steel.hardness
        else Withheld(say("the hardness of the shaft is not known"), (Need("reading", bench.position.id, say("shaft hardness")),))
    )
    yield Line("shaft_hardness", "lock", say("Hardness of the shaft"), shaft)
    yield Line(
        "screw_bite",
        "lock",
        say("How much harder the screws are"),
        screw_bite.of(screw=hardness or HARD, shaft=shaft),
        beside=((say("asked by practice, points of HRC"), bench.practice("screw_over_shaft")),),
    )
    allowed = bench.maker("shaft_hardness", say("hardest shaft the screws may bite"))
    if isinstance(allowed, Value):
        yield Line("shaft_hardness_allowed", "lock", say("Hardest shaft by the maker"), allowed)
