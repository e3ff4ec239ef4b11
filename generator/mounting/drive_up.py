"""A roller bearing on a sleeve: how much clearance to take, how far that drives it up, what it presses with and what it then holds."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import replace

from generator.calc.nuts import seat_holding
from generator.calc.taper import (
    growth_ratio_on_sleeve,
    inner_raceway,
    lock_nut_torque,
    nut_face,
    sleeve_pressure,
    taper_axial_force,
    taper_target,
    taper_travel,
)
from generator.mounting.bench import Bench
from generator.mounting.joint import hold_of_seat
from generator.mounting.moves import moves_most
from generator.mounting.sheet import Line
from generator.say import say
from generator.tables.drive_up import usual_least_left, usual_reduction, usual_travel
from generator.tables.look_ups import thread_figures
from generator.units import convert
from generator.value import Band, Known, LookedUp, Need, Results, Value, Withheld

STEEL = Value(206_000.0, "MPa", LookedUp(None, say("modulus of bearing steel")))


def drive_up_lines(bench: Bench, lines: Mapping[str, Line]) -> Iterator[Line]:
    """The lines of a spherical roller bearing on its sleeve."""
    bearing = bench.position.bearing
    if bearing is None or str(bearing.typed.kind) != "spherical roller" or bench.position.sleeve is None:
        return
    reduction = reduction_band(bench, lines)
    yield from _target(bench, lines, reduction)
    ratio = _ratio(bench)
    least, most = (_travel(bench, end, ratio) for end in _ends(reduction))
    yield from _guide(bench, least, most)
    yield from _pressed(bench, least, most)


def reduction_band(bench: Bench, lines: Mapping[str, Line]) -> Known:
    """Clearance to be taken: the maker's band, else the usual one."""
    line = lines.get("clearance_reduction")
    if line is not None and isinstance(line.value, Band):
        return line.value
    bearing = bench.position.bearing
    assert bearing
    usual = usual_reduction(bearing.typed.bore.size)
    return (
        usual
        if _taper_is_12(bench)
        else Withheld(say("the usual bands are for a taper 1:12"), usual.needs if isinstance(usual, Withheld) else ())
    )


def _target(bench: Bench, lines: Mapping[str, Line], reduction: Known) -> Iterator[Line]:
    """What to take of the clearance that is there, and what the blade then reads."""
    before, measured = clearance_there(bench, lines)
    least_left = _least_left(bench, lines)
    least, most = _ends(reduction)
    found = [taper_target.of(before=end, least_left=least_left, least=least, most=most) for end in _ends(before)]
    usual = usual_reduction(bench.position.bearing.typed.bore.size)  # type: ignore[union-attr]
    beside = ((say("usual in the trade"), usual),) if isinstance(usual, Band) and _taper_is_12(bench) else ()
    yield Line("reduction", "clearance", say("Clearance to take, least and most"), reduction, beside=beside)
    yield Line("least_left", "clearance", say("Least clearance that may be left"), least_left)
    note = "" if measured else say("By the clearance class: read it before driving up, and take the figure for what was read.")
    names = (
        (say("At most, from what is there"),)
        if measured
        else (say("At most, where it is at the least of its class"), say("at the most of its class"))
    )
    for number, (name, one) in enumerate(zip(names, found, strict=False), 1):
        yield Line(f"take_{number}", "clearance", name, one.reduction, note=note)
        yield Line(f"left_{number}", "clearance", say("Blade then reads at least"), one.left)
        yield Line(f"take_verdict_{number}", "clearance", say("The clearance"), one.verdict)


def clearance_there(bench: Bench, lines: Mapping[str, Line]) -> tuple[Known, bool]:
    """The clearance before mounting: the smaller of both rows as read, else the band of maker or class; and whether it was read."""
    read = [reading for row in "12" if (reading := bench.position.latest(f"clearance row {row}"))]
    if read:
        least = min(read, key=lambda one: convert(one.value.content, one.value.unit, "mm"))
        return least.value, True
    line = lines.get("clearance_before")
    if line is None:
        need = Need("reading", bench.position.id, say("clearance before mounting, both rows"))
        return Withheld(say("neither a clearance class nor a reading is on file"), (need,)), False
    return line.value, False


def _least_left(bench: Bench, lines: Mapping[str, Line]) -> Known:
    line = lines.get("clearance_least_left")
    if line is not None and isinstance(line.value, Value):
        return line.value
    bearing = bench.position.bearing
    assert bearing
    class_ = str(bearing.typed.clearance.class_) if bearing.typed.clearance and bearing.typed.clearance.class_ else "CN"
    return usual_least_left(bearing.typed.bore.size, class_)


def raceway(bench: Bench) -> Known:
    """Diameter of the inner raceway: on file, else estimated."""
    bearing = bench.position.bearing
    assert bearing
    if bearing.typed.raceway is not None:
        return bearing.typed.raceway
    word = Value("ball" if "ball" in str(bearing.typed.kind) else "roller", "", LookedUp(None, say("by the kind of bearing")))
    found: Known = inner_raceway.of(bore=bearing.typed.bore.size, outside=bearing.typed.outside, kind=word)
    return found


def _ratio(bench: Bench) -> Known:
    bearing = bench.position.bearing
    assert bearing
    found: Known = growth_ratio_on_sleeve.of(
        bore=bearing.typed.bore.size, raceway=raceway(bench), shaft=bench.position.diameter, hole=bench.position.hole
    )
    return found


def _travel(bench: Bench, reduction: Known, ratio: Known) -> Results:
    sleeve = bench.position.sleeve
    assert sleeve
    _, pitch = thread_figures(sleeve.typed.nut.thread)
    found: Results = taper_travel.of(
        reduction=reduction, ratio=ratio, smoothing=bench.practice("smoothing"), taper=sleeve.typed.taper, pitch=pitch
    )
    return found


def _guide(bench: Bench, least: Results, most: Results) -> Iterator[Line]:
    """One guide: travel, and the same travel as a turn of the nut."""
    bearing = bench.position.bearing
    assert bearing
    usual = usual_travel(bearing.typed.bore.size)
    beside = ((say("usual in the trade"), usual),) if isinstance(usual, Band) and _taper_is_12(bench) else ()
    note = say("A guide while driving up. The clearance read with the blade decides.")
    yield Line(
        "drive_travel", "clearance", say("Travel on the taper, as a guide"), _band(least.travel, most.travel), beside=beside, note=note
    )
    turn = _band(_degrees(least.turn), _degrees(most.turn))
    yield Line("drive_turn", "clearance", say("The same as a turn of the nut"), turn, note=moves_most(least.turn))


def _pressed(bench: Bench, least: Results, most: Results) -> Iterator[Line]:
    """Pressure and stress at the most, the force and torque that take, and what the seat then holds at the least."""
    bearing, sleeve = bench.position.bearing, bench.position.sleeve
    assert bearing and sleeve
    asked = {"bore": bearing.typed.bore.size, "raceway": raceway(bench), "shaft": bench.position.diameter, "modulus": STEEL}
    tight = sleeve_pressure.of(interference=most.interference, hole=bench.position.hole, **asked)
    loose = sleeve_pressure.of(interference=least.interference, hole=bench.position.hole, **asked)
    yield Line("ring_hoop", "clearance", say("Hoop stress in the ring, at the most"), tight.hoop)
    yield Line("ring_hoop_most", "clearance", say("Hoop stress it may carry"), bench.practice("ring_hoop"))
    friction = bench.practice("drive_up_friction")
    drive = taper_axial_force.of(
        pressure=tight.pressure, bore=bearing.typed.bore.size, width=bearing.typed.width, friction=friction, taper=sleeve.typed.taper
    )
    yield Line("drive_force", "clearance", say("Force that drives it up"), drive.on)
    diameter, pitch = thread_figures(sleeve.typed.nut.thread)
    yield Line("drive_torque", "clearance", say("Torque on the nut, roughly"), _nut_torque(drive.on, diameter, pitch, friction))
    held = seat_holding.of(
        pressure=loose.on_shaft, diameter=bench.position.diameter, length=bearing.typed.width, friction=seat_friction(bench)
    )
    yield from hold_of_seat(bench, held)


def _nut_torque(force: Known, diameter: Known, pitch: Known, friction: Value) -> Known:
    found: Known = lock_nut_torque.of(
        force=force, pitch=pitch, thread=diameter, face=nut_face.of(thread=diameter), thread_friction=friction, face_friction=friction
    )
    return found


def seat_friction(bench: Bench) -> Value:
    """Friction of a pressed seat: low, since it is mounted oiled, unless the file says dry."""
    dry = str(bench.position.typed.mounting_faces) == "dry"
    return bench.practice("dry_seat_friction" if dry else "seat_friction")


def _taper_is_12(bench: Bench) -> bool:
    sleeve = bench.position.sleeve
    return sleeve is not None and abs(sleeve.typed.taper.content - 12) < 1e-9


def _ends(value: Known) -> tuple[Known, Known]:
    return (value.lower, value.upper) if isinstance(value, Band) else (value, value)


def _band(lower: Known, upper: Known) -> Known:
    return Band(lower, upper) if isinstance(lower, Value) and isinstance(upper, Value) else lower if isinstance(lower, Withheld) else upper


def _degrees(turn: Known) -> Known:
    return replace(turn, content=convert(turn.content, turn.unit, "deg"), unit="deg") if isinstance(turn, Value) else turn
