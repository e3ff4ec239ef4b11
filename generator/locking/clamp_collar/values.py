"""A ring locked by a concentric clamp collar."""

from __future__ import annotations

from collections.abc import Iterator

from generator.locking.holding import hold_lines, pushed
from generator.locking.screw import screw_lines
from generator.locking.speed import speed_lines
from generator.mounting.bench import Bench, worded
from generator.mounting.sheet import Line
from generator.plant.plant import Position
from generator.say import say

WORD = "clamp collar"
NAME = "clamp collar"


def suits(position: Position) -> bool:
    """A ring that says it locks by a clamp collar."""
    locks = position.bearing.typed.locks if position.bearing else None
    return position.sleeve is None and locks is not None and str(locks.by) == WORD


def lines(bench: Bench) -> Iterator[Line]:
    """The lines of the lock group."""
    side = bench.position.typed.collar
    if side is not None:
        yield Line("collar_side", "lock", say("Collar toward"), worded(side))
    yield from screw_lines(bench, "lock_screw", say("Collar screw"), say("torque of the collar screw"))
    thread = bench.position.bearing.typed.locks.clamp_screw  # type: ignore[union-attr]
    if thread is not None:
        yield Line("lock_screw_thread", "lock", say("Thread of the screw"), thread)
    if pushed(bench):
        yield from hold_lines(bench, None)
    yield from speed_lines(bench)
