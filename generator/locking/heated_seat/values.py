"""A cylindrical bore pressed on its seat, mounted warm: here its limits and documents."""

from __future__ import annotations

from collections.abc import Iterator

from generator.locking.sleeve_by_clearance.values import clearance_lines
from generator.mounting.bench import Bench
from generator.mounting.sheet import Line
from generator.plant.plant import Position
from generator.say import say

WORD = "heated seat"
NAME = "pressed seat, heated"


def suits(position: Position) -> bool:
    """A cylindrical bore without a sleeve and without a lock of its own."""
    bearing = position.bearing
    return bearing is not None and position.sleeve is None and bearing.typed.locks is None and str(bearing.typed.bore.shape) == "cylinder"


def lines(bench: Bench) -> Iterator[Line]:
    """The lines of the lock group."""
    yield Line(
        "heating",
        "lock",
        say("Ceiling when heated"),
        bench.maker("heating", say("ceiling when it is heated")),
        by_hand=True,
        note=say("Sensor on the inner ring. Never an open flame."),
    )
    yield Line(
        "clearance_least_left", "lock", say("Least clearance left, cold"), bench.maker("clearance_least", say("least clearance left"))
    )
    yield Line("shoulder_blade", "lock", say("Blade that may not go in at the shoulder"), bench.practice("shoulder_blade"))
    yield from clearance_lines(bench)
