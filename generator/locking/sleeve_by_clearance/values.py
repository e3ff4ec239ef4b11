"""A roller bearing on an adapter sleeve, driven up until its clearance has gone down by so much: here its data, limits and documents."""

from __future__ import annotations

from collections.abc import Iterator

from generator.locking.sleeve import retaining_screw_lines, sleeved, thread_lines
from generator.locking.speed import speed_lines
from generator.mounting.bench import Bench, worded
from generator.mounting.chains.fits import internal_clearance
from generator.mounting.sheet import Line
from generator.plant.plant import Position
from generator.say import say
from generator.value import Band, Known, Value

WORD = "adapter sleeve"
NAME = "adapter sleeve, by the clearance taken"


def suits(position: Position) -> bool:
    """A bearing other than a ball insert on a sleeve."""
    return sleeved(position) and str(position.bearing.typed.kind) != "ball insert"  # type: ignore[union-attr]


def lines(bench: Bench) -> Iterator[Line]:
    """The lines of the lock group."""
    yield from thread_lines(bench)
    yield Line(
        "clearance_reduction",
        "lock",
        say("Clearance to be taken"),
        bench.maker("clearance_reduction", say("clearance to be taken")),
        by_hand=True,
        note=say("Read both rows, on the side free of load."),
    )
    yield Line(
        "clearance_least_left",
        "lock",
        say("Least clearance left"),
        bench.maker("clearance_least", say("least clearance left")),
        by_hand=True,
    )
    yield from clearance_lines(bench)
    yield from retaining_screw_lines(bench)
    yield from speed_lines(bench)


def clearance_lines(bench: Bench) -> Iterator[Line]:
    """The clearance before mounting: of the class, and as read."""
    bearing = bench.position.bearing
    assert bearing
    clearance = bearing.typed.clearance
    if clearance is not None and clearance.radial is not None:
        yield Line("clearance_before", "lock", say("Clearance before, new"), clearance.radial)
    elif clearance is not None and clearance.class_ is not None:
        yield Line("clearance_before", "lock", say("Clearance before, by its class"), _of_class(bench))
    for row in ("1", "2"):
        read = bench.position.latest(f"clearance row {row}")
        if read:
            yield Line(f"clearance_read_{row}", "lock", say("Clearance read before, row {row}", row=row), read.value)


def _of_class(bench: Bench) -> Known:
    bearing = bench.position.bearing
    assert bearing and bearing.typed.clearance
    word = worded(bearing.typed.clearance.class_)
    shape = "taper" if str(bearing.typed.bore.shape) == "taper" else "cylinder"
    kind = str(bearing.typed.kind) if str(bearing.typed.kind) != "spherical roller" else f"spherical roller, {shape}"
    found = internal_clearance.of(kind=Value(kind, "", word.reason), bore=bearing.typed.bore.size, clearance=word)
    return Band(found.least, found.most) if isinstance(found.least, Value) else found.least
