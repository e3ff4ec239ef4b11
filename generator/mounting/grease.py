"""Grease of a position: interval with every factor, amount, strokes, limits of the grease, and whether it may meet what is inside."""

from __future__ import annotations

from collections.abc import Iterator

from generator.calc.grease import (
    grease_consumption,
    grease_interval,
    grease_interval_base,
    grease_quantity,
    gun_strokes,
    heat_halving,
    initial_fill,
    interval_in_weeks,
    quarter_of_free_space,
    shot_split,
    vibration_peak,
)
from generator.calc.schedule import round_period
from generator.mounting.bench import Bench, worded
from generator.mounting.chains.grease import grease_factors
from generator.mounting.grease_limits import bearing_temperature, first_fill_lines, highest_speed, limit_lines, speed
from generator.mounting.moves import moves_most
from generator.mounting.rating import rated
from generator.mounting.sheet import Line
from generator.mounting.wrench import run_out
from generator.say import say
from generator.units import convert
from generator.value import Known, LookedUp, Need, Results, Value, Withheld

FED_OTHERWISE = {
    "automatic": "fed automatically: look only",
    "sealed for life": "sealed for life: none",
    "oil": "oil: level by the machine's own instruction",
}
FACTORS = {
    "build": "Factor for the kind of bearing",
    "heat": "Factor for heat",
    "dirt": "Factor for dirt",
    "wet": "Factor for water",
    "shaking": "Factor for vibration",
    "attitude": "Factor for the shaft's attitude",
}


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
    yield Line(
        "grease_interval", "grease", say("Between greasings, running"), interval, beside=_beside(bench, factors), note=moves_most(interval)
    )
    yield Line("grease_weeks", "grease", say("Between greasings, calendar"), weeks)
    yield Line("bearing_temperature", "grease", say("Temperature at the bearing"), temperature)
    base = grease_interval_base.of(speed=highest_speed(bench), bore=bench.position.bearing.typed.bore.size)
    yield Line("grease_base", "grease", say("Interval before factors"), base)
    for name, words in FACTORS.items():
        yield Line(f"grease_factor_{name}", "grease", say(words), factors[name])
    yield Line("grease_halving", "grease", say("Heat by halving instead, for comparison"), heat_halving.of(temperature=temperature))
    yield from limit_lines(bench, temperature)
    yield from first_fill_lines(bench)


def _factors(bench: Bench) -> tuple[Results, Known]:
    around = bench.position.typed.surroundings
    temperature = bearing_temperature(bench)
    file = bench.position.place.file

    def word(name: str, example: str) -> Known:
        given = getattr(around, name) if around else None
        return (
            worded(given)
            if given is not None
            else Withheld(
                say("surroundings do not say `{name}`", name=name), (Need("entry", file, f"surroundings: {{{name}: {example}}}"),)
            )
        )

    read = bench.position.latest("vibration")
    shaking: Known = (
        vibration_peak.of(rms=read.value)
        if read
        else around.shaking
        if around and around.shaking
        else Value(0.0, "mm/s", LookedUp(None, say("no vibration on record: taken as quiet")), (say("vibration not measured"),))
    )
    bearing = bench.position.bearing
    assert bearing
    found: Results = grease_factors.of(
        bearing=worded(bearing.typed.kind),
        temperature=temperature,
        dust=word("dust", "light"),
        water=word("water", "none"),
        shaking=shaking,
        attitude=worded(bench.shaft.typed.lies),
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
    found: Known = grease_interval.of(speed=highest_speed(bench), bore=bearing.typed.bore.size, **factors)
    load, ratings = rated(bench).load, bearing.typed.ratings
    if not isinstance(found, Value) or not isinstance(load, Value) or ratings is None:
        return found
    heavy = convert(load.content, load.unit, "N") > 0.1 * convert(ratings.dynamic.content, ratings.dynamic.unit, "N")
    return found.remark(say("it carries more than a tenth of its rating: grease it sooner than this")) if heavy else found


def _beside(bench: Bench, factors: Results) -> tuple[tuple[str, Known], ...]:
    if not isinstance(bench.maker("grease_interval", ""), Value):
        return ()
    computed = computed_interval(bench, factors)
    return ((say("computed"), computed),) if isinstance(computed, Value) else ()


def _weeks(bench: Bench, interval: Known) -> Known:
    runs = bench.position.typed.runs
    if runs is None:
        return Withheld(
            say("how much the machine runs is not typed"),
            (Need("entry", bench.position.place.file, "runs: {hours: 16 hour/day, days: 6 day/week}"),),
        )
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
    name = (
        say("Grease: {grease}, {gun}", grease=bench.position.grease.name, gun=gun.name) if bench.position.grease and gun else say("Grease")
    )
    yield Line(
        "grease_strokes", "grease", name, strokes.strokes, by_hand=True, note=say("strokes of the gun, slowly; stop on back pressure")
    )
    yield Line(
        "grease_dose",
        "grease",
        say("Grease they give"),
        strokes.given,
        beside=((say("wanted at each greasing"), wanted),) if isinstance(wanted, Value) else (),
    )
    yield Line(
        "grease_year",
        "grease",
        say("Grease in a year, purging included"),
        grease_consumption.of(grease=strokes.given, weeks=period.weeks).with_allowance,
    )
    yield from _when(bench)
    yield from _shots(bench, wanted, interval, stroke)


def _when(bench: Bench) -> Iterator[Line]:
    when = bench.position.typed.regrease
    if when is not None:
        yield Line("grease_when", "grease", say("Greased"), worded(when.when), note=str(when.because))
    else:
        yield Line(
            "grease_when",
            "grease",
            say("Greased"),
            Withheld(
                say("the file does not say whether it is greased running or stopped"),
                (Need("entry", bench.position.place.file, "regrease: {when: stopped, because: ...}"),),
            ),
        )


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
        return Withheld(
            say("{gun} has not been weighed within its time", gun=gun.name),
            (Need("entry", "library/tools.yml", say("{gun}: weigh ten strokes", gun=gun.name)),),
        )
    if gun.typed.grease is not None and str(gun.typed.grease) != grease.name:
        return Withheld(
            say("{gun} holds {other}, not {grease}", gun=gun.name, other=gun.typed.grease, grease=grease.name),
            (Need("entry", file, say("a gun with {grease}", grease=grease.name)),),
        )
    return gun.typed.stroke


def _shots(bench: Bench, wanted: Known, interval: Known, stroke: Known) -> Iterator[Line]:
    """At high speed (half of the grease's own limit and more) the same grams an hour in shots of a quarter of the free space."""
    found = speed(bench)
    grease, bearing = bench.position.grease, bench.position.bearing
    if grease is None or bearing is None or bearing.typed.mass is None or not isinstance(found.n_dm, Value):
        return
    if found.n_dm.content < 0.5 * grease.typed.runs.n_dm.content:
        return
    free = initial_fill.of(bore=bearing.typed.bore.size, outside=bearing.typed.outside, width=bearing.typed.width, mass=bearing.typed.mass)
    most = quarter_of_free_space.of(
        volume=free, density=grease.typed.density or Value(0.9, "g/cm3", LookedUp(None, say("density of grease")))
    )
    shots = shot_split.of(grease=wanted, most=most, interval=interval)
    yield Line("grease_shots", "grease", say("Shots at high speed"), shots.shots)
    yield Line("grease_shot_hours", "grease", say("Running hours between shots"), shots.every)
    yield Line("grease_shot_strokes", "grease", say("Strokes in each shot"), gun_strokes.of(grease=shots.grease, stroke=stroke).strokes)
