"""A ring locked by an eccentric collar: the way it is turned, seen from the side one stands on."""

from __future__ import annotations

from collections.abc import Iterator

from generator.calc.screws import eccentric_collar
from generator.locking.holding import hold_lines, pushed
from generator.locking.screw import screw_lines
from generator.locking.set_screws.values import bite_lines
from generator.locking.sleeve import end_word
from generator.locking.speed import speed_lines
from generator.mounting.bench import Bench, worded
from generator.mounting.chains.locks import hex_key_size
from generator.mounting.sheet import Line
from generator.plant.plant import Position
from generator.say import say
from generator.value import Known, Need, Withheld

WORD = "eccentric collar"
NAME = "eccentric collar"


def suits(position: Position) -> bool:
    """A ring that says it locks by an eccentric collar."""
    locks = position.bearing.typed.locks if position.bearing else None
    return position.sleeve is None and locks is not None and str(locks.by) == WORD


def lines(bench: Bench) -> Iterator[Line]:
    """The lines of the lock group."""
    side = bench.position.typed.collar
    if side is not None:
        yield Line("collar_side", "lock", say("Collar toward"), worded(side))
    yield Line(
        "collar_turn",
        "lock",
        say("Turn the collar, seen from its own side"),
        _turn(bench),
        by_hand=True,
        note=say("One firm tap the same way, with a soft drift in the blind hole."),
    )
    screws = bench.position.bearing.typed.locks.screws  # type: ignore[union-attr]
    yield from screw_lines(bench, "lock_screw", say("Collar screw"), say("torque of the collar screw"))
    if screws is not None:
        yield Line("hex_key", "lock", say("Hex key by the standard"), hex_key_size.of(screw=screws.size))
        yield from bite_lines(bench, screws.hardness)
    if pushed(bench):
        yield from hold_lines(bench, screws)
    yield from speed_lines(bench)


def _turn(bench: Bench) -> Known:
    file = bench.position.place.file
    if bench.shaft.typed.turns is None:
        return Withheld(say("the file does not say which way the shaft turns"), (Need("entry", file, "turns: clockwise"),))
    if bench.position.typed.collar is None:
        return Withheld(say("the file does not say to which end the collar is"), (Need("entry", file, "collar: drive end"),))
    return eccentric_collar.of(turns=worded(bench.shaft.typed.turns), collar_toward=end_word(bench, bench.position.typed.collar))  # type: ignore[no-any-return]
