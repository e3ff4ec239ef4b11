"""What both ways of locking on an adapter sleeve share: the nut's thread, its side, and which way drag turns it. They share no step."""

from __future__ import annotations

from collections.abc import Iterator

from generator.calc.nuts import housing_shift, nut_drag, nut_travel
from generator.locking.screw import screw_lines
from generator.mounting.bench import Bench, worded
from generator.mounting.sheet import Line
from generator.plant.plant import Position
from generator.plant.quantities import thread_of
from generator.say import say
from generator.tables.look_ups import thread_figures
from generator.value import Band, Known, LookedUp, Need, Value, Withheld


def sleeved(position: Position) -> bool:
    """Whether the ring sits on an adapter sleeve."""
    return position.sleeve is not None and position.bearing is not None


def thread_of_nut(bench: Bench) -> Value:
    """The thread of the nut that is there: read on the part, else the sleeve's nut in the library."""
    fitted = bench.position.typed.fitted
    if fitted and fitted.nut_thread is not None:
        return fitted.nut_thread
    assert bench.position.sleeve
    return bench.position.sleeve.typed.nut.thread


def thread_lines(bench: Bench) -> Iterator[Line]:
    """Thread, hand and slots of the nut, and its side."""
    sleeve = bench.position.sleeve
    assert sleeve
    yield Line("lock_thread", "lock", say("Thread of the nut"), thread_of_nut(bench))
    yield Line("nut_hand", "lock", say("Hand of the thread"), worded(sleeve.typed.hand))
    yield Line("nut_works", "lock", say("How the nut works"), worded(sleeve.typed.nut.works))
    side = bench.position.typed.nut
    if side is None:
        yield Line(
            "nut_side",
            "lock",
            say("Nut toward"),
            Withheld(say("the file does not say to which end the nut is"), (Need("entry", bench.position.place.file, "nut: drive end"),)),
        )
        return
    yield Line("nut_side", "lock", say("Nut toward"), worded(side))
    yield Line("nut_drag", "lock", say("Drag of a loose ring on the nut"), drag(bench))


def drag(bench: Bench) -> Known:
    """Whether drag tightens the nut or slackens it."""
    sleeve, side, turns = bench.position.sleeve, bench.position.typed.nut, bench.shaft.typed.turns
    assert sleeve and side is not None
    if turns is None:
        need = Need("entry", bench.position.place.file, "turns: clockwise")
        return Withheld(say("the file does not say which way the shaft turns"), (need,))
    if str(turns) == "both ways":
        return Withheld(say("the shaft runs both ways: one way drag slackens the nut, and its lock alone holds it"))
    return nut_drag.of(turns=worded(turns), nut_toward=end_word(bench, side), hand=worded(sleeve.typed.hand))  # type: ignore[no-any-return]


def end_word(bench: Bench, end: object) -> Value:
    """A named end as "first end" or "second end"."""
    return Value("first end" if str(end) == bench.shaft.ends[0] else "second end", "", worded(end).reason)


def same_thread(one: str, other: str) -> bool:
    """Whether two threads are one: the same diameter and pitch, however they are written."""
    a, b = thread_of(one), thread_of(other)
    return abs(a[0] - b[0]) < 0.05 and abs(a[1] - b[1]) < 0.005


def retaining_screw_lines(bench: Bench) -> Iterator[Line]:
    """The screw that keeps a nut from slackening, where the nut has one."""
    sleeve = bench.position.sleeve
    if sleeve is not None and str(sleeve.typed.nut.lock) == "retaining screw":
        yield from screw_lines(bench, "retaining_screw", say("Retaining screw"), say("torque of the retaining screw"))


def travel_band(bench: Bench, turn: Known) -> Known:
    """The travel of a turn, least and most, by the pitch of the nut that is there."""
    if not isinstance(turn, Band):
        return turn
    _, pitch = thread_figures(thread_of_nut(bench))
    least, most = nut_travel.of(pitch=pitch, turn=turn.lower), nut_travel.of(pitch=pitch, turn=turn.upper)
    if isinstance(least, Value) and isinstance(most, Value):
        return Band(least, most)
    return least if isinstance(least, Withheld) else most  # type: ignore[no-any-return]


def shift_lines(bench: Bench, travel: Known) -> Iterator[Line]:
    """How far the housing moves while the nut is turned, and toward which end."""
    sleeve, side = bench.position.sleeve, bench.position.typed.nut
    assert sleeve
    drawn = str(sleeve.typed.nut.works) == "draws the sleeve"
    name = say("Sleeve and shaft are drawn while the nut is turned") if drawn else say("Housing moves while the nut is turned")
    if not isinstance(travel, Band):
        yield Line("housing_shift", "lock", name, travel)
        return
    housing = Value("free to move", "", LookedUp(None, say("housing bolts stay finger loose while the nut is turned")))
    shift = housing_shift.of(travel=travel.upper, works=worded(sleeve.typed.nut.works), housing=housing)
    value: Known = Band(shift.least, shift.most) if isinstance(shift.most, Value) else shift.most
    yield Line(
        "housing_shift",
        "lock",
        name,
        value,
        note=say("Bolts finger loose until the turn is complete."),
    )
    if side is not None and isinstance(shift.toward, Value):
        away = str(shift.toward.content) == "away from the nut"
        ends = bench.shaft.ends
        toward = (ends[1] if str(side) == ends[0] else ends[0]) if away else str(side)
        yield Line("shift_toward", "lock", say("It moves toward"), Value(toward, "", shift.toward.reason))
