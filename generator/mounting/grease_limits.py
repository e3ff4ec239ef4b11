"""What a grease may bear at a position: speed, temperature, what it meets; and the first fill."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import datetime, timedelta
from typing import Any

from generator.calc.grease import (
    grease_temperature,
    initial_fill,
    speed_limit,
)
from generator.calc.heat import warmer_than
from generator.mounting.bench import Bench, worded
from generator.mounting.chains.grease import thickener_compatibility, thickener_temperature
from generator.mounting.sheet import Line
from generator.plant.plant import Reading
from generator.say import say
from generator.units import convert
from generator.value import Known, Need, Results, Value, Withheld


def highest_speed(bench: Bench) -> Value:
    """The highest speed of the shaft over its states."""
    speeds = [bench.shaft.typed.speed, *(state.speed for state in (bench.shaft.typed.states or {}).values() if state.speed is not None)]
    return max(speeds, key=lambda speed: speed.content)


def bearing_temperature(bench: Bench) -> Known:
    """What the housing reaches: read, typed, the shaft's, else warmer than the air by what practice assumes; each a step weaker, and marked."""
    settled = settled_temperature(bench)
    if settled is not None:
        return settled
    if bench.shaft.typed.temperature is not None:
        return bench.shaft.typed.temperature.shaft.remark(say("bearing temperature not measured: the shaft's is taken"))
    around = bench.position.typed.surroundings
    if around is not None and around.air is not None:
        warm = warmer_than.of(air=around.air, over=bench.practice("starts_over"))
        return warm.remark(say("bearing temperature not measured: assumed over the air")) if isinstance(warm, Value) else warm
    return Withheld(say("no temperature is known at this bearing"), (Need("reading", bench.position.id, say("housing temperature")),))


def settled_temperature(bench: Bench) -> Value | None:
    """What the housing is known to settle at: read, else typed; None where it is neither."""
    read, typed = _settled(bench), bench.position.typed.temperature
    return read.value if read else typed.bearing if typed is not None else None


def _settled(bench: Bench) -> Reading | None:
    """The newest reading of a housing that runs warm: none from a bearing just left, nor from a run-in that is not over."""
    readings = [r for r in bench.position.readings if r.quantity == "housing temperature" and r.phase != "as-left"]
    return next((r for r in reversed(readings) if r.phase != "run-in" or _runs_even(r, readings)), None)


def _runs_even(last: Reading, readings: list[Reading]) -> bool:
    """Whether a reading while running in lies within 2 K of one an hour and more before it."""

    def warm(reading: Reading) -> float:
        return convert(reading.value.content, reading.value.unit, "degC")

    def when(reading: Reading) -> datetime:
        return datetime.fromisoformat(reading.when).replace(tzinfo=None)

    same = [r for r in readings if r.phase == "run-in" and r.record == last.record]
    before = [r for r in same if when(last) - when(r) >= timedelta(hours=1)]
    return bool(before) and abs(warm(last) - warm(before[-1])) <= 2


def speed(bench: Bench) -> Results:
    """Speed times mean diameter against the grease's limit."""
    grease, bearing = bench.position.grease, bench.position.bearing
    assert bearing
    allowed: Any = grease.typed.runs.n_dm if grease else Withheld(say("no grease is planned for this position"))
    found: Results = speed_limit.of(
        speed=highest_speed(bench), bore=bearing.typed.bore.size, outside=bearing.typed.outside, allowed=allowed
    )
    return found


def limit_lines(bench: Bench, hot: Known) -> Iterator[Line]:
    """Speed and temperature against the grease, and what it meets inside."""
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
    yield Line(
        "grease_heat_verdict",
        "grease",
        say("Temperature against the grease's range"),
        grease_temperature.of(
            coldest=cold,
            hottest=hot,
            lowest=grease.typed.runs.from_,
            highest=grease.typed.runs.to,
            continuous=continuous if isinstance(continuous, Value) else None,
        ),
    )
    if inside is not None and inside.name != grease.name:
        yield Line(
            "grease_mix",
            "grease",
            say("Charts on meeting {other}", other=inside.name),
            thickener_compatibility.of(one=worded(grease.typed.thickener), other=worded(inside.typed.thickener)),
        )


def first_fill_lines(bench: Bench) -> Iterator[Line]:
    """The first fill by the maker, else the free space that is filled by hand."""
    maker = bench.maker("grease_first", say("first fill"))
    bearing = bench.position.bearing
    if isinstance(maker, Value):
        yield Line("grease_first", "grease", say("First fill"), maker)
    elif bearing is not None and bearing.typed.mass is not None and str(bearing.typed.kind) != "ball insert":
        free = initial_fill.of(
            bore=bearing.typed.bore.size, outside=bearing.typed.outside, width=bearing.typed.width, mass=bearing.typed.mass
        )
        yield Line("grease_free", "grease", say("Free space in the bearing, filled by hand"), free)
