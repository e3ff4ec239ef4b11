"""A ball insert on an adapter sleeve, driven up by the turn of its nut: the turn is the maker's and cannot be worked out."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from generator.calc.nuts import ball_insert_turns, flange_gap, turn_in_slots
from generator.locking.sleeve import retaining_screw_lines, same_thread, shift_lines, sleeved, thread_lines, thread_of_nut, travel_band
from generator.locking.speed import speed_lines
from generator.mounting.bench import Bench
from generator.mounting.documents import candidates
from generator.mounting.sheet import Line
from generator.plant.plant import Position
from generator.say import say
from generator.units import convert
from generator.value import Band, Known, Value, Withheld

WORD = "adapter sleeve"
NAME = "adapter sleeve, by the turn of the nut"


def suits(position: Position) -> bool:
    """A ball insert on a sleeve."""
    return sleeved(position) and str(position.bearing.typed.kind) == "ball insert"  # type: ignore[union-attr]


def lines(bench: Bench) -> Iterator[Line]:
    """The lines of the lock group."""
    yield from thread_lines(bench)
    turn = _turn(bench)
    travel = travel_band(bench, turn)
    yield Line("nut_turn", "lock", say("Nut turn from hand tight"), turn, by_hand=True, note=_counts_from(bench))
    yield Line("nut_degrees", "lock", say("The same in degrees"), _in_degrees(turn))
    yield from _slots(bench, turn)
    yield Line("nut_travel", "lock", say("Travel of the nut"), travel)
    yield from shift_lines(bench, travel)
    yield from _plausible(bench, travel)
    yield from _second_flange(bench, travel)
    yield from retaining_screw_lines(bench)
    yield from speed_lines(bench)


def _turn(bench: Bench) -> Known:
    """The maker's turn; none where the nut that is there is of another thread than the sleeve, since there it is another travel."""
    sleeve, here = bench.position.sleeve, thread_of_nut(bench)
    assert sleeve
    if not same_thread(str(here.content), str(sleeve.typed.thread.content)):
        return Withheld(
            say("the nut is {here}, sleeve {name} is {thread}", here=here.content, name=sleeve.name, thread=sleeve.typed.thread.content)
        )
    turn: Known = bench.maker("nut_turn", say("turn of the nut"))
    return turn


def _counts_from(bench: Bench) -> str:
    rows = [row for row in candidates(bench.plant, bench.position, "nut_turn") if row.unfit is None]
    return say("The count starts: {words}.", words=rows[0].counts_from) if rows and rows[0].counts_from else ""


def _in_degrees(turn: Known) -> Known:
    if not isinstance(turn, Band):
        return turn
    return Band(*(replace(end, content=convert(end.content, end.unit, "deg"), unit="deg") for end in (turn.lower, turn.upper)))


def _slots(bench: Bench, turn: Known) -> Iterator[Line]:
    sleeve = bench.position.sleeve
    assert sleeve
    if not isinstance(turn, Band):
        yield Line("nut_slots", "lock", say("The same in slots of the nut"), turn)
        return
    found = turn_in_slots.of(least=turn.lower, most=turn.upper, slots=sleeve.typed.nut.slots)
    value = Band(found.least, found.most) if isinstance(found.least, Value) else found.least
    yield Line("nut_slots", "lock", say("The same, whole slots of {count}", count=f"{sleeve.typed.nut.slots.content:g}"), value)


def _plausible(bench: Bench, travel: Known) -> Iterator[Line]:
    """What the turn could do to the ring at most: a plausibility band, never a correction of the maker's turn."""
    bearing, sleeve = bench.position.bearing, bench.position.sleeve
    if not isinstance(travel, Band) or bearing is None or sleeve is None or bearing.typed.raceway is None:
        return
    implied = ball_insert_turns.of(
        travel=travel.upper,
        taper=sleeve.typed.taper,
        bore=bearing.typed.bore.size,
        raceway=bearing.typed.raceway,
        shaft=bench.position.diameter,
    )
    yield Line(
        "hoop_bound",
        "lock",
        say("Hoop stress the turn implies, at most"),
        implied.hoop,
        beside=((say("what a ring may carry here"), bench.practice("ring_hoop")),),
        note=say("Part of the turn only closes the sleeve on the shaft, so the ring carries less."),
    )


def _second_flange(bench: Bench, travel: Known) -> Iterator[Line]:
    housing = bench.position.housing
    if bench.order != "second" or housing is None or not str(housing.typed.style).endswith("flange"):
        return
    gap = bench.maker("flange_gap", say("gap and order of the second flange"))
    computed: Known = travel
    if isinstance(travel, Band):
        found = flange_gap.of(travel=travel.upper, over=bench.practice("gap_over"))
        computed = Band(found.least, found.most) if isinstance(found.least, Value) else found.least
    beside = ((say("computed: the travel, and up to so much more"), computed),) if isinstance(computed, Band) else ()
    yield Line("flange_gap", "lock", say("Gap under the flange, nut hand tight"), gap, by_hand=True, beside=beside)
    yield Line(
        "flange_order", "lock", say("Order for the second flange"), bench.maker("flange_order", say("gap and order of the second flange"))
    )
