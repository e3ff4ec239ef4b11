"""The watch group of a position: how warm it may become, what vibration is usual, at what frequencies a defect is heard."""

from __future__ import annotations

from collections.abc import Iterator

from generator.calc.condition import defect_frequencies, significant_change, vibration_alarms
from generator.calc.equivalent import pitch_circle
from generator.mounting.bench import Bench, worded
from generator.mounting.chains.condition import fan_vibration_limits, run_in_of_thickener, run_in_of_thickener_warmed, vibration_zone
from generator.mounting.grease_limits import settled_temperature
from generator.mounting.sheet import Line
from generator.plant.plant import Reading
from generator.say import say
from generator.units import convert
from generator.value import Known, LookedUp, Need, Results, Rows, Value, Withheld

FREQUENCIES = {
    "bpfo_hz": "Defect of the outer ring",
    "bpfi_hz": "Defect of the inner ring",
    "twice_bsf_hz": "Defect of a rolling element",
    "ftf_hz": "The cage",
}


def watch_lines(bench: Bench) -> Iterator[Line]:
    """The lines of the watch group."""
    if bench.position.bearing is None:
        return
    yield from _run_in(bench)
    yield from _vibration(bench)
    yield from _frequencies(bench)


def _run_in(bench: Bench) -> Iterator[Line]:
    """How warm the housing may become while running in."""
    grease, around = bench.position.grease, bench.position.typed.surroundings
    if grease is None:
        return
    air: Known = (
        around.air
        if around is not None and around.air is not None
        else Withheld(say("the air around is not typed"), (Need("entry", bench.position.place.file, "surroundings: {air: 20 degC}"),))
    )
    thickener, limit = worded(grease.typed.thickener), grease.typed.runs.to
    found = run_in_of_thickener.of(thickener=thickener, ambient=air, of_sheet=limit)
    settled = _warmed(bench, found) if isinstance(air, Value) else None
    if settled is not None:
        found = run_in_of_thickener_warmed.of(thickener=thickener, settled=settled, of_sheet=limit)
    note = say("Read the housing at 0, 15, 30, 60, 120 and 240 minutes. A rise, then a small fall, is usual.")
    yield Line("run_in_usual", "watch", say("Usual after running in, up to"), found.usual_to, note=note)
    yield Line("run_in_alarm", "watch", say("Look into it from"), found.alarm)
    yield Line("run_in_stop", "watch", say("Stop the machine at"), found.stop)


def _warmed(bench: Bench, usual: Results) -> Known | None:
    """The settled temperature of a housing that is warmer than its own friction makes it; withheld where only the shaft is known to be."""
    settled = settled_temperature(bench)
    shaft = bench.shaft.typed.temperature
    known = [one for one in (settled, shaft.shaft if shaft else None) if one is not None]
    if not any(_over(one, usual) for one in known):
        return None
    if settled is not None:
        return settled
    need = Need("entry", bench.position.place.file, "temperature: {bearing: 70 degC}")
    return Withheld(say("the process warms this shaft, and what the housing settles at is not known"), (need,))


def _over(temperature: Value, usual: Results) -> bool:
    """Whether it lies over what friction alone explains; where the air leaves nothing, it does."""
    most = usual.usual_to
    return not isinstance(most, Value) or convert(temperature.content, temperature.unit, "degC") > most.content


def _vibration(bench: Bench) -> Iterator[Line]:
    """The zone of the last reading, where the machine is one that has zones; baseline, alarm and trip from readings after running in."""
    last, typed = bench.position.latest("vibration"), bench.machine.typed.vibration
    if typed is None:
        return
    if str(typed.fan) == "yes":
        use = Value("industrial process", "", LookedUp(None, say("a fan of a process")))
        limits = fan_vibration_limits.of(use=use, power=typed.power, support=worded(typed.support))
        yield Line("vibration_alarm", "watch", say("Vibration: alarm at"), limits.alarm)
        yield Line("vibration_trip", "watch", say("Vibration: stop at"), limits.shutdown)
        return
    reading: Known = (
        last.value if last else Withheld(say("no vibration is on record"), (Need("reading", bench.position.id, say("vibration")),))
    )
    found = vibration_zone.of(
        power=typed.power, support=worded(typed.support), speed=bench.shaft.typed.speed, reading=reading, shaft_height=typed.height
    )
    yield Line("vibration_zone", "watch", say("Zone of the last vibration reading"), found.zone)
    yield from _baseline(bench, last, found)


def _baseline(bench: Bench, last: Reading | None, zone: Results) -> Iterator[Line]:
    readings = after_mounting(bench)
    if len(readings) < 3 or not isinstance(zone.bc, Value):
        return
    rows = Rows(tuple(Results(velocity=reading.value) for reading in readings[:3]))
    alarms = vibration_alarms.of(readings=rows, bc=zone.bc, cd=zone.cd)
    yield Line("vibration_baseline", "watch", say("Vibration: baseline"), alarms.baseline)
    yield Line("vibration_alarm", "watch", say("Vibration: alarm at"), alarms.alarm)
    yield Line("vibration_trip", "watch", say("Vibration: stop at"), alarms.trip)
    if last is not None:
        change = significant_change.of(before=alarms.baseline, now=last.value, bc=zone.bc)
        yield Line("vibration_change", "watch", say("Change since the baseline"), change.verdict)


def after_mounting(bench: Bench) -> list[Reading]:
    """Vibration read on rounds since the bearing was last worked on, oldest first."""
    mounted = max((r.when for r in bench.position.readings if r.phase == "as-left"), default="")
    return [r for r in bench.position.readings if r.quantity == "vibration" and r.phase == "round" and r.when > mounted]


def _frequencies(bench: Bench) -> Iterator[Line]:
    """Defect frequencies, where the rolling elements are on file."""
    bearing = bench.position.bearing
    assert bearing
    inside = bearing.typed.elements
    if inside is None:
        return
    pitch = bearing.typed.pitch_circle or pitch_circle.of(bore=bearing.typed.bore.size, outside=bearing.typed.outside)
    found = defect_frequencies.of(
        element=inside.size, pitch=pitch, elements=inside.count, speed=bench.shaft.typed.speed, angle=inside.angle
    )
    for key, name in FREQUENCIES.items():
        yield Line(key, "watch", say(name), found[key])
