"""A screw whose torque only the maker can give."""

from __future__ import annotations

from collections.abc import Iterator
from typing import Any

from generator.mounting.bench import Bench
from generator.mounting.documents import candidates, instructed
from generator.mounting.sheet import Line
from generator.say import say
from generator.value import Known, Withheld


def screw_lines(bench: Bench, figure: str, name: str, what: str, beside: tuple[tuple[str, Known], ...] = ()) -> Iterator[Line]:
    """Torque and key of a screw whose torque only the maker can give."""
    given: Any = bench.maker(figure, what)
    if isinstance(given, Withheld):
        yield Line(figure, "lock", name, given, by_hand=True, beside=beside)
        return
    row = next(row for row in candidates(bench.plant, bench.position, figure) if row.unfit is None)
    yield Line(figure, "lock", name, instructed(given.torque, row), by_hand=True, beside=beside)
    if given.key is not None:
        yield Line(f"{figure}_key", "lock", say("Key for it"), instructed(given.key, row))
    if given.size is not None:
        yield Line(f"{figure}_size", "lock", say("Its thread"), instructed(given.size, row))
