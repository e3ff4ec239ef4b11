"""One position's sheet: which way it is locked, which unit of its shaft it is, and its lines in the order of the work."""

from collections.abc import Iterable, Iterator

from generator.locking import locking_of
from generator.mounting.axial import position_axial_lines
from generator.mounting.bench import Bench
from generator.mounting.bolts import bolt_lines
from generator.mounting.drive_up import drive_up_lines
from generator.mounting.frame import frame_lines
from generator.mounting.grease import grease_lines
from generator.mounting.life import life_curve, life_lines
from generator.mounting.load import load_lines
from generator.mounting.reactions import ShaftLoads
from generator.mounting.running_clearance import running_clearance_lines
from generator.mounting.seat import seat_lines
from generator.mounting.sheet import GROUPS, Line, Sheet
from generator.mounting.watch import watch_lines
from generator.plant.plant import Machine, Plant, Position, Shaft


def position_sheet(plant: Plant, machine: Machine, shaft: Shaft, position: Position, loads: ShaftLoads | None) -> Sheet:
    """Everything the standard says of one position."""
    locking = locking_of(position)
    order = order_on_shaft(shaft, position)
    bench = Bench(plant, machine, shaft, position, locking.WORD if locking else "", order, loads)
    lines = _by_key(_lines(bench, locking))
    for more in (bolt_lines, drive_up_lines, running_clearance_lines):
        lines.update(_by_key(more(bench, lines)))
    ordered = sorted(lines.values(), key=lambda line: GROUPS.index(line.group))
    return Sheet(position, locking.NAME if locking else "", order, {line.key: line for line in ordered}, life_curve(lines))


def order_on_shaft(shaft: Shaft, position: Position) -> str:
    """ "first" or "second": as typed, else the fixed unit is locked first, then the others along the shaft."""
    if position.typed.mounted is not None:
        return str(position.typed.mounted)
    fixed = [p for p in shaft.positions if str(p.typed.holds) == "fixed"]
    first = fixed[0] if fixed else shaft.positions[0]
    return "first" if position is first or position.letter == first.letter else "second"


def _lines(bench: Bench, locking: "object | None") -> Iterator[Line]:
    yield from seat_lines(bench)
    yield from frame_lines(bench)
    if locking is not None:
        yield from locking.lines(bench)  # type: ignore[attr-defined]
    yield from grease_lines(bench)
    yield from position_axial_lines(bench)
    yield from load_lines(bench)
    yield from life_lines(bench)
    yield from watch_lines(bench)


def _by_key(lines: Iterable[Line]) -> dict[str, Line]:
    return {line.key: line for line in lines}
