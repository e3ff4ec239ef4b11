"""Grease of a position: interval with every factor, amount, strokes, limits of the grease, and whether it may meet what is inside."""

from __future__ import annotations

from collections.abc import Iterator
from typing import Any

from generator.calc.grease import (
    grease_consumption,
    grease_interval,
    grease_interval_base,
    grease_quantity,
    grease_temperature,
    gun_strokes,
    heat_halving,
    initial_fill,
    interval_in_weeks,
    quarter_of_free_space,
    shot_split,
    speed_limit,
)
from generator.calc.heat import warmer_than
from generator.calc.schedule import round_period
from generator.mounting.bench import Bench, worded
from generator.mounting.chains.grease import grease_factors, thickener_compatibility, thickener_temperature
from generator.mounting.sheet import Line
from generator.mounting.wrench import run_out
from generator.say import say
from generator.value import Known, LookedUp, Need, Results, Value, Withheld

FED_OTHERWISE = {"automatic": "fed automatically: look only", "sealed for life": "sealed for life: none", "oil": "oil: level by the machine's own instruction"}
FACTORS = {"build": "Factor for the kind of bearing", "heat": "Factor for heat", "dirt": "Factor for dirt", "wet": "Factor for water", "shaking": "Factor for vibration", "attitude": "Factor for the shaft's attitude"}


def grease_lines(bench: Bench) -> Iterator[Line]:
    """The lines of the grease group."""
    feed = bench.position.typed.grease.feed if bench.position.typed.grease else None
    if bench.position.bearing is None:
        return
    if feed is not None and str(feed) in FED_OTHERWISE:
        yield Line("grease_feed", "grease", say("Lubrication"), worded(feed), note=say(FED_OTHERWISE[str(feed)]))
        return
    sealing = bench.position.bearing.typed.sealing
    if sealing is not None and str(sealing.regreasable) == "no":
        yield Line("grease_feed", "grease", say("Lubrication"), Value("sealed for life", "", worded(sealing.regreasable).reason))
        return
    factors, temperature = _factors(bench)
    interval = _interval(bench, factors)
    weeks = _weeks(bench, interval)
    yield from _give(bench, interval, weeks)
    yield Line("grease_interval", "grease", say("Between greasings, running"), interval, beside=_beside(bench, factors))
    yield Line("grease_weeks", "grease", say("Between greasings, calendar"), weeks)
    yield Line("bearing_temperature", "grease", say("Temperature at the bearing"), temperature)
    base = grease_interval_base.of(speed=highest_speed(bench), bore=bench.position.bearing.typed.bore.size)
    yield Line("grease_base", "grease", say("Interval before factors"), base)
    for name, words in FACTORS.items():
        yield Line(f"grease_factor_{name}", "grease", say(words), factors[name])
    yield Line("grease_halving", "grease", say("Heat by halving instead, for comparison"), heat_halving.of(temperature=temperature))
    yield from _limits(bench, temperature)
    yield from _first_fill(bench)


def highest_speed(bench: Bench) -> Value:
    """The highest speed of the shaft over its states."""
    speeds = [bench.shaft.typed.speed, *(state.speed for state in (bench.shaft.typed.states or {}).values() if state.speed is not None)]
    return max(speeds, key=lambda speed: speed.content)


def bearing_temperature(bench: Bench) -> Known:
    """What the housing reaches: read, typed, the shaft's, else warmer than the air by what practice assumes; each a step weaker, and marked."""
    read = bench.position.latest("housing temperature")
    typed = bench.position.typed.temperature
    if read:
        return read.value
    if typed is not None and typed.bearing is not None:
        return typed.bearing
    if bench.shaft.typed.temperature is not None:
        return bench.shaft.typed.temperature.shaft.remark(say("bearing temperature not measured: the shaft's is taken"))
    around = bench.position.typed.surroundings
    if around is not None and around.air is not None:
        warm = warmer_than.of(air=around.air, over=bench.practice("starts_over"))
        return warm.remark(say("bearing temperature not measured: assumed over the air")) if isinstance(warm, Value) else warm
    return Withheld(say("no temperature is known at this bearing"), (Need("reading", bench.position.id, say("housing temperature")),))


def _factors(bench: Bench) -> tuple[Results, Known]:
    around = bench.position.typed.surroundings
    temperature = bearing_temperature(bench)
    file = bench.position.place.file

    def word(name: str, example: str) -> Known:
        given = getattr(around, name) if around else None
        return worded(given) if given is not None else Withheld(say("surroundings do not say `{name}`", name=name), (Need("entry", file, f"surroundings: {{{name}: {example}}}"),))

    read = bench.position.latest("vibration")
    shaking: Known = read.value if read else around.shaking if around and around.shaking else Value(0.0, "mm/s", LookedUp(None, say("no vibration on record: taken as quiet")), (say("vibration not measured"),))
    bearing = bench.position.bearing
    assert bearing
    found: Results = grease_factors.of(
        bearing=worded(bearing.typed.kind), temperature=temperature, dust=word("dust", "light"), water=word("water", "none"), shaking=shaking, attitude=worded(bench.shaft.typed.lies)
    )
    return found, temperature


def _interval(bench: Bench, factors: Results) -> Known:
    """The maker's interval where there is one, else the computed; the computed stands beside it."""
    maker = bench.maker("grease_interval", say("time between greasings"))
    return maker if isinstance(maker, Value) else computed_interval(bench, factors)


def computed_interval(bench: Bench, factors: Results) -> Known:
    """The interval by speed, bore and factors."""
    bearing = bench.position.bearing
    assert bearing
    return grease_interval.of(speed=highest_speed(bench), bore=bearing.typed.bore.size, **factors)  # type: ignore[no-any-return]


def _beside(bench: Bench, factors: Results) -> tuple[tuple[str, Known], ...]:
    if not isinstance(bench.maker("grease_interval", ""), Value):
        return ()
    computed = computed_interval(bench, factors)
    return ((say("computed"), computed),) if isinstance(computed, Value) else ()


def _weeks(bench: Bench, interval: Known) -> Known:
    runs = bench.position.typed.runs
    if runs is None:
        return Withheld(say("how much the machine runs is not typed"), (Need("entry", bench.position.place.file, "runs: {hours: 16 hour/day, days: 6 day/week}"),))
    return interval_in_weeks.of(interval=interval, hours=runs.hours, days=runs.days, cap=bench.practice("calendar_cap"))  # type: ignore[no-any-return]


def _give(bench: Bench, interval: Known, weeks: Known) -> Iterator[Line]:
    """Grams, whole strokes of the named gun, in which round, running or stopped."""
    bearing, gun = bench.position.bearing, bench.position.gun
    assert bearing
    maker = bench.maker("grease_dose", say("grease at each greasing"))
    computed = grease_quantity.of(outside=bearing.typed.outside, width=bearing.typed.width)
    wanted: Known = maker if isinstance(maker, Value) else computed
    period = round_period.of(weeks=weeks, grease=wanted, shortened=_uncapped(bench, interval))
    yield Line("round_weeks", "grease", say("Greased every"), period.weeks)
    stroke = _stroke(bench)
    strokes = gun_strokes.of(grease=period.grease, stroke=stroke)
    name = say("Grease: {grease}, {gun}", grease=bench.position.grease.name, gun=gun.name) if bench.position.grease and gun else say("Grease")
    yield Line("grease_strokes", "grease", name, strokes.strokes, by_hand=True, note=say("strokes of the gun, slowly; stop on back pressure"))
    yield Line("grease_dose", "grease", say("Grease they give"), strokes.given, beside=((say("wanted at each greasing"), wanted),) if isinstance(wanted, Value) else ())
    yield Line("grease_year", "grease", say("Grease in a year, purging included"), grease_consumption.of(grease=strokes.given, weeks=period.weeks).with_allowance)
    when = bench.position.typed.regrease
    if when is not None:
        yield Line("grease_when", "grease", say("Greased"), worded(when.when), note=str(when.because))
    else:
        yield Line("grease_when", "grease", say("Greased"), Withheld(say("the file does not say whether it is greased running or stopped"), (Need("entry", bench.position.place.file, "regrease: {when: stopped, because: ...}"),)))
    yield from _shots(bench, wanted, interval)


def _uncapped(bench: Bench, interval: Known) -> Known | None:
    runs = bench.position.typed.runs
    if runs is None or not isinstance(interval, Value):
        return None
    far = Value(520.0, "week", LookedUp(None, say("no cap")))
    found = interval_in_weeks.of(interval=interval, hours=runs.hours, days=runs.days, cap=far)
    return found if isinstance(found, Value) else None


def _stroke(bench: Bench) -> Known:
    gun, grease = bench.position.gun, bench.position.grease
    file = bench.position.place.file
    if grease is None:
        return Withheld(say("no grease is planned for this position"), (Need("entry", file, "grease: {planned: ...}"),))
    if gun is None:
        return Withheld(say("no gun is named for this position"), (Need("entry", file, "grease: {gun: ...}"),))
    if gun.typed.stroke is None or run_out(gun.typed.weighed, bench.practice("gun_weighed"), bench.plant.on):
        return Withheld(say("{gun} has not been weighed within its time", gun=gun.name), (Need("entry", "library/tools.yml", say("{gun}: weigh ten strokes", gun=gun.name)),))
    if gun.typed.grease is not None and str(gun.typed.grease) != grease.name:
        return Withheld(say("{gun} holds {other}, not {grease}", gun=gun.name, other=gun.typed.grease, grease=grease.name), (Need("entry", file, say("a gun with {grease}", grease=grease.name)),))
    return gun.typed.stroke


def _shots(bench: Bench, wanted: Known, interval: Known) -> Iterator[Line]:
    """At high speed (half of the grease's own limit and more) the same grams an hour in shots of a quarter of the free space."""
    found = speed(bench)
    grease, bearing = bench.position.grease, bench.position.bearing
    if grease is None or bearing is None or bearing.typed.mass is None or not isinstance(found.n_dm, Value):
        return
    if found.n_dm.content < 0.5 * grease.typed.runs.n_dm.content:
        return
    free = initial_fill.of(bore=bearing.typed.bore.size, outside=bearing.typed.outside, width=bearing.typed.width, mass=bearing.typed.mass)
    most = quarter_of_free_space.of(volume=free, density=grease.typed.density or Value(0.9, "g/cm3", LookedUp(None, say("density of grease"))))
    shots = shot_split.of(grease=wanted, most=most, interval=interval)
    yield Line("grease_shots", "grease", say("Shots at high speed"), shots.shots)
    yield Line("grease_shot_hours", "grease", say("Running hours between shots"), shots.every)


def speed(bench: Bench) -> Results:
    """Speed times mean diameter against the grease's limit."""
    grease, bearing = bench.position.grease, bench.position.bearing
    assert bearing
    allowed: Any = grease.typed.runs.n_dm if grease else Withheld(say("no grease is planned for this position"))
    found: Results = speed_limit.of(speed=highest_speed(bench), bore=bearing.typed.bore.size, outside=bearing.typed.outside, allowed=allowed)
    return found


def _limits(bench: Bench, hot: Known) -> Iterator[Line]:
    grease, inside = bench.position.grease, bench.position.grease_inside
    if grease is None:
        return
    found = speed(bench)
    yield Line("n_dm", "grease", say("Speed times mean diameter"), found.n_dm)
    yield Line("n_dm_allowed", "grease", say("Limit of the grease"), grease.typed.runs.n_dm)
    yield Line("n_dm_verdict", "grease", say("Speed against that limit"), found.verdict)
    around = bench.position.typed.surroundings
    cold: Known = Withheld(say("the air is not typed"))
    if around is not None and (around.air_least or around.air):
        cold = around.air_least or around.air
    continuous = thickener_temperature.of(thickener=worded(grease.typed.thickener))
    yield Line("grease_cold", "grease", say("Coldest start"), cold)
    yield Line("grease_heat_verdict", "grease", say("Temperature against the grease's range"), grease_temperature.of(coldest=cold, hottest=hot, lowest=grease.typed.runs.from_, highest=grease.typed.runs.to, continuous=continuous if isinstance(continuous, Value) else None))
    if inside is not None and inside.name != grease.name:
        yield Line("grease_mix", "grease", say("Charts on meeting {other}", other=inside.name), thickener_compatibility.of(one=worded(grease.typed.thickener), other=worded(inside.typed.thickener)))


def _first_fill(bench: Bench) -> Iterator[Line]:
    maker = bench.maker("grease_first", say("first fill"))
    bearing = bench.position.bearing
    if isinstance(maker, Value):
        yield Line("grease_first", "grease", say("First fill"), maker)
    elif bearing is not None and bearing.typed.mass is not None and str(bearing.typed.kind) != "ball insert":
        free = initial_fill.of(bore=bearing.typed.bore.size, outside=bearing.typed.outside, width=bearing.typed.width, mass=bearing.typed.mass)
        yield Line("grease_free", "grease", say("Free space in the bearing, filled by hand"), free)
