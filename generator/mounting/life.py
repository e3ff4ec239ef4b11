"""The life group of a position: how long its bearing lasts, what limits it, and what one step better would give."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass, replace
from typing import Any

from generator.calc import METHODS
from generator.calc.life import (
    LEVELS,
    contamination_level,
    contamination_of_level,
    cooler_by,
    life_modification_factor,
    life_verdict,
    modified_life,
    times_the_life,
    viscosity_ratio,
    what_limits,
)
from generator.calc.oils import viscosity_at_temperature
from generator.method import label_of
from generator.mounting.bench import Bench, worded
from generator.mounting.chains.grease import viscosity_of_grade
from generator.mounting.chains.life import contamination_factor, reliability_factor
from generator.mounting.chains.oils import viscosity_of_oil
from generator.mounting.grease_limits import bearing_temperature
from generator.mounting.moves import moves_most
from generator.mounting.rating import Rated, rated, rating_lines
from generator.mounting.sheet import Line
from generator.say import say
from generator.tables.grease import next_grade
from generator.units import convert
from generator.value import Computed, Known, LookedUp, Need, Results, Rows, Value, Withheld

NINETY = Value(90.0, "%", LookedUp(None, say("nine of ten, unless more is asked")))


@dataclass(frozen=True)
class Around:
    """What makes a bearing last: its oil at 40 °C, its temperature, how clean it is inside."""

    nu40: Known
    nu100: Value | None
    temperature: Known
    level: Known


@dataclass(frozen=True)
class Lasting:
    """The steps from surroundings to life."""

    viscosity: Known
    kappa: Known
    contamination: Known
    factor: Known
    hours: Known


def life_lines(bench: Bench) -> Iterator[Line]:
    """The lines of the life group."""
    if bench.position.bearing is None:
        return
    found = rated(bench)
    yield from rating_lines(bench, found)
    around = _around(bench)
    lasting = lasts(bench, found, around)
    yield Line("level", "life", say("Cleanliness inside"), around.level)
    yield Line("viscosity", "life", say("Viscosity of the grease's oil, warm"), lasting.viscosity)
    yield Line("kappa", "life", say("Viscosity ratio"), lasting.kappa)
    yield Line("contamination", "life", say("Contamination factor"), lasting.contamination)
    yield Line("life_factor", "life", say("Life factor for oil and dirt"), lasting.factor)
    yield Line("life", "life", say("Life"), lasting.hours, note=moves_most(lasting.hours))
    yield from _wanted(bench, lasting)
    yield from _choices(bench, found, around, lasting)


def lasts(bench: Bench, found: Rated, around: Around) -> Lasting:
    """How long a bearing lasts in surroundings."""
    viscosity = viscosity_of_oil.of(nu40=around.nu40, temperature=around.temperature, nu100=around.nu100).viscosity
    oil = viscosity_ratio.of(viscosity=viscosity, speed=found.speed, pitch=found.pitch)
    dirt = contamination_factor.of(level=around.level, ratio=oil.ratio, pitch=found.pitch)
    factor = life_modification_factor.of(kind=found.kind, ratio=oil.ratio, contamination=dirt, fatigue=found.fatigue, load=found.load)
    wanted = bench.position.typed.wanted
    asked = wanted.reliability if wanted is not None and wanted.reliability is not None else NINETY
    hours = modified_life.of(hours=found.hours, modification=factor, reliability=reliability_factor.of(reliability=asked))
    return Lasting(viscosity, oil.ratio, dirt, factor, hours)


def life_curve(lines: Mapping[str, Line]) -> tuple[tuple[float, float], ...]:
    """Life at temperatures about the bearing's own, for the drawing: (degC, hours), the same steps on bare numbers."""
    life, warm = lines.get("life"), lines.get("bearing_temperature")
    if life is None or warm is None or not isinstance(life.value, Value) or not isinstance(warm.value, Value):
        return ()
    facts = _bare_facts(life.value)
    here = convert(warm.value.content, warm.value.unit, "degC")
    points = []
    for step in range(-30, 31, 10):
        try:
            viscosity = viscosity_at_temperature(facts["nu40"], facts["nu100"], here + step)
            kappa = viscosity_ratio(viscosity, facts["speed"], facts["pitch"]).ratio
            dirt = contamination_of_level(kappa, facts["pitch"], facts["gain"], facts["loss"])
            if kappa >= 0.1:
                factor = life_modification_factor(facts["kind"], kappa, dirt, facts["fatigue"], facts["load"])
                points.append((here + step, facts["hours"] * factor * facts["reliability"]))
        except ValueError:
            continue
    return tuple(points)


def _bare_facts(life: Value) -> dict[str, Any]:
    """Every input of the steps that led to a life, as bare numbers by name, in the units of their methods."""
    found: dict[str, Any] = {}
    waiting: list[Any] = [life]
    while waiting:
        reason = waiting.pop().reason
        if not isinstance(reason, Computed) or reason.method not in _STEPS:
            continue
        for name, given in reason.inputs.items():
            label = label_of(METHODS[reason.method].takes[name])
            found.setdefault(name, convert(given.content, given.unit, label.unit) if label else given.content)
            waiting.append(given)
    return found


_STEPS = ("modified-life", "life-modification-factor", "viscosity-ratio", "contamination-of-level", "viscosity-at-temperature")


def _around(bench: Bench) -> Around:
    grease = bench.position.grease
    if grease is None:
        none = Withheld(
            say("no grease is planned for this position"), (Need("entry", bench.position.place.file, "grease: {planned: ...}"),)
        )
        return Around(none, None, bearing_temperature(bench), _level(bench))
    oil = grease.typed.base_oil
    nu40 = viscosity_of_grade.of(grade=oil.viscosity) if oil.viscosity.unit == "VG" else oil.viscosity
    return Around(nu40, oil.at_100, bearing_temperature(bench), _level(bench))


def _level(bench: Bench) -> Known:
    """The level of cleanliness inside, from mounting, place and seal; each that is not said withholds it."""
    around, bearing, housing = bench.position.typed.surroundings, bench.position.bearing, bench.position.housing
    file = bench.position.place.file
    assert bearing

    def said(word: object, what: str, example: str) -> Known:
        return worded(word) if word is not None else Withheld(what, (Need("entry", file, example),))

    seal = bearing.typed.sealing.kind if bearing.typed.sealing else housing.typed.seals.kind if housing and housing.typed.seals else None
    found: Known = contamination_level.of(
        mounting=said(bench.position.typed.cleanliness, say("cleanliness of mounting is not said"), "cleanliness: normal"),
        dust=said(around.dust if around else None, say("surroundings do not say `dust`"), "surroundings: {dust: light}"),
        water=said(around.water if around else None, say("surroundings do not say `water`"), "surroundings: {water: none}"),
        seal=said(seal, say("no seal of bearing or housing is on file"), "sealing: {kind: lip, regreasable: yes}"),
    )
    return found


def _wanted(bench: Bench, lasting: Lasting) -> Iterator[Line]:
    wanted = bench.position.typed.wanted
    if wanted is None:
        return
    yield Line("life_wanted", "life", say("Life wanted"), wanted.life)
    yield Line("life_verdict", "life", say("The life is"), life_verdict.of(hours=lasting.hours, wanted=wanted.life))


def _choices(bench: Bench, found: Rated, around: Around, now: Lasting) -> Iterator[Line]:
    """What one step better would give: cleaner, cooler, thicker oil; and so what limits the life."""
    if not isinstance(now.hours, Value) or now.hours.content <= 0:
        return
    rows = []
    for word, name, better in _better(bench, around):
        hours = lasts(bench, found, better).hours
        if isinstance(hours, Value):
            times = times_the_life.of(hours=hours, before=now.hours)
            yield Line(f"life_{word.replace(' ', '_')}", "life", name, hours, beside=((say("times the life"), times),))
            rows.append(Results(choice=Value(word, "", LookedUp(None, name)), hours=hours))
    yield Line("life_limited_by", "life", say("What limits it"), what_limits.of(hours=now.hours, choices=Rows(tuple(rows))))


def _better(bench: Bench, around: Around) -> Iterator[tuple[str, str, Around]]:
    if isinstance(around.level, Value) and str(around.level.content) != LEVELS[0]:
        step = LEVELS[LEVELS.index(str(around.level.content)) - 1]
        yield "cleaner", say("Life, one step cleaner"), replace(around, level=Value(step, "", LookedUp(None, say("one step cleaner"))))
    less = bench.practice("cooler_step")
    yield (
        "cooler",
        say("Life, cooler by {less} K", less=f"{less.content:g}"),
        replace(around, temperature=cooler_by.of(temperature=around.temperature, less=less)),
    )
    grease = bench.position.grease
    grade = next_grade(around.nu40) if grease is not None and isinstance(around.nu40, Value) else None
    if grade is not None:
        yield (
            "thicker oil",
            say("Life, oil one grade thicker: {grade}", grade=f"VG {grade.content:g}"),
            replace(around, nu40=viscosity_of_grade.of(grade=grade), nu100=None),
        )
