"""A ring locked by set screws: count, torque, key, and whether they hold what they must."""

from __future__ import annotations

from collections.abc import Iterator

from generator.calc.screws import screw_bite
from generator.locking.holding import hold_lines
from generator.locking.screw import screw_lines
from generator.locking.speed import speed_lines
from generator.mounting.bench import Bench
from generator.mounting.chains.locks import hex_key_size, set_screw_seating
from generator.mounting.sheet import Line
from generator.plant.model.library import SetScrews
from generator.plant.plant import Position
from generator.say import say
from generator.value import Citation, Known, LookedUp, Need, Value, Withheld

WORD = "set screws"
NAME = "set screws"


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
        yield from hold_lines(bench, screws)
        yield from bite_lines(bench, screws.hardness)
    yield from speed_lines(bench)


def _seating(screws: SetScrews | None) -> tuple[tuple[str, Known], ...]:
    if screws is None:
        return ()
    found = set_screw_seating.of(screw=screws.size)
    named = ((say("seating torque of the trade"), found.seating), (say("never passed"), found.ceiling))
    return tuple((name, value) for name, value in named if isinstance(value, Value))


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
        screw_bite.of(screw=hardness or _softest_screw(), shaft=shaft),
        beside=((say("asked by practice, points of HRC"), bench.practice("screw_over_shaft")),),
    )
    allowed = bench.maker("shaft_hardness", say("hardest shaft the screws may bite"))
    if isinstance(allowed, Value):
        yield Line("shaft_hardness_allowed", "lock", say("Hardest shaft by the maker"), allowed)


def _softest_screw() -> Value:
    """The least hardness of a set screw of class 45H, which they are taken for unless said."""
    return Value(
        45.0, "HRC", LookedUp(Citation("ISO 898-5", "", "class 45H", "from memory"), say("taken for screws of class 45H unless said"))
    )
