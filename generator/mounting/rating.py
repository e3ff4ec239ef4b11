"""What a bearing is rated for against what comes to it: equivalent load, static safety, least load, rating life."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from generator.calc.equivalent import (
    ball_ratio,
    equivalent_load_cylindrical,
    equivalent_load_roller,
    mean_load,
    minimum_load,
    pitch_circle,
    roller_factors_agree,
    static_safety,
)
from generator.calc.life import fatigue_load_limit, rating_life
from generator.mounting.bench import Bench
from generator.mounting.chains.life import equivalent_load_ball, f0_factor
from generator.mounting.loads import Duty, axial_load, duties, load_here, no_load
from generator.mounting.reactions import greatness
from generator.mounting.sheet import Line
from generator.say import say
from generator.tables.life import least_static_safety
from generator.value import Known, LookedUp, Need, Results, Rows, Value, Withheld

GROOVED = ("ball insert", "deep groove ball")


@dataclass(frozen=True)
class Rated:
    """A bearing held against its load: kind ("ball" or "roller"), mean load and speed, rating life, pitch circle, fatigue limit."""

    kind: Value
    load: Known
    speed: Known
    hours: Known
    pitch: Known
    fatigue: Known


def kind_of(bench: Bench) -> Value:
    """Ball or roller."""
    bearing = bench.position.bearing
    assert bearing
    return Value("ball" if "ball" in str(bearing.typed.kind) else "roller", "", LookedUp(None, say("by the kind of bearing")))


def rated(bench: Bench) -> Rated:
    """The rating of the bearing here, each figure withheld where the data do not allow it."""
    bearing = bench.position.bearing
    assert bearing
    kind, states = kind_of(bench), list(duties(bench))
    exponent = Value(3.0 if kind.content == "ball" else 10 / 3, "", LookedUp(None, say("exponent of life: 3 for balls, 10/3 for rollers")))
    if states:
        rows = Rows(tuple(Results(load=equivalent_load(bench, duty), speed=duty.speed, share=duty.share) for duty in states))
        mean = mean_load.of(states=rows, exponent=exponent)
    else:
        mean = Results(load=no_load(bench), speed=no_load(bench))
    ratings = bearing.typed.ratings
    c, c0 = (ratings.dynamic, ratings.static) if ratings else (_unrated(bench), _unrated(bench))
    life = rating_life.of(rating=c, load=mean.load, speed=mean.speed, exponent=exponent, static_rating=c0)
    pitch = bearing.typed.pitch_circle or pitch_circle.of(bore=bearing.typed.bore.size, outside=bearing.typed.outside)
    fatigue = ratings.fatigue if ratings and ratings.fatigue else fatigue_load_limit.of(kind=kind, static_rating=c0, pitch=pitch)
    return Rated(kind, mean.load, mean.speed, life.hours, pitch, fatigue)


def _unrated(bench: Bench) -> Withheld:
    bearing = bench.position.bearing
    assert bearing
    need = Need("document", str(bearing.typed.maker), say("load ratings of {bearing}", bearing=bearing.name))
    return Withheld(say("no load ratings of {bearing} are on file", bearing=bearing.name), (need,))


def equivalent_load(bench: Bench, duty: Duty) -> Known:
    """The dynamic equivalent load in one state."""
    bearing = bench.position.bearing
    assert bearing
    kind, ratings, factors = str(bearing.typed.kind), bearing.typed.ratings, bearing.typed.thrust
    c0 = ratings.static if ratings else _unrated(bench)
    if kind in GROOVED:
        return equivalent_load_ball.of(radial=duty.across, axial=duty.along, static_rating=c0, f0=_f0(bench)).load  # type: ignore[no-any-return]
    if kind == "cylindrical roller":
        return equivalent_load_cylindrical.of(radial=duty.across, axial=duty.along)  # type: ignore[no-any-return]
    if factors is None:
        if isinstance(duty.along, Value) and duty.along.content == 0:
            return duty.across
        return _no_factors(bench)
    return equivalent_load_roller.of(radial=duty.across, axial=duty.along, e=factors.e, y1=factors.Y1, y2=factors.Y2)  # type: ignore[no-any-return]


def _no_factors(bench: Bench) -> Withheld:
    bearing = bench.position.bearing
    assert bearing
    need = Need("document", str(bearing.typed.maker), say("thrust factors e, Y1, Y2, Y0 of {bearing}", bearing=bearing.name))
    return Withheld(say("no thrust factors of {bearing} are on file", bearing=bearing.name), (need,))


def _f0(bench: Bench) -> Known | None:
    """The factor f0 from the size of the balls, None where they are not on file."""
    bearing = bench.position.bearing
    assert bearing
    inside = bearing.typed.elements
    if inside is None:
        return None
    pitch = bearing.typed.pitch_circle or pitch_circle.of(bore=bearing.typed.bore.size, outside=bearing.typed.outside)
    found: Known = f0_factor.of(ratio=ball_ratio.of(ball=inside.size, pitch=pitch, angle=inside.angle))
    return found


def rating_lines(bench: Bench, found: Rated) -> Iterator[Line]:
    """The lines on load against rating."""
    yield Line("equivalent_load", "life", say("Equivalent load, over all states"), found.load)
    bearing = bench.position.bearing
    assert bearing
    # of a self-aligning ball bearing the factors follow another form: Y1 e = 0.63, Y2 e = 0.975 of ISO 281
    if bearing.typed.thrust is not None and "roller" in str(bearing.typed.kind):
        factors = bearing.typed.thrust
        agree = roller_factors_agree.of(e=factors.e, y1=factors.Y1, y2=factors.Y2, y0=factors.Y0)
        yield Line("thrust_factors", "life", say("Thrust factors on file, with one another"), agree)
    yield from _static(bench, found)
    yield from _least(bench, found)
    yield Line("rating_life", "life", say("Rating life"), found.hours)


def _static(bench: Bench, found: Rated) -> Iterator[Line]:
    bearing, load = bench.position.bearing, load_here(bench)
    assert bearing
    ratings, along = bearing.typed.ratings, axial_load(bench)
    by_factor = str(bearing.typed.kind) not in GROOVED
    safety = static_safety.of(
        # ISO 76 counts a self-aligning ball bearing as it does rollers, by a factor of its own
        kind=Value("roller" if by_factor else "ball", "", found.kind.reason),
        radial=load.force if load else no_load(bench),
        axial=along,
        static_rating=ratings.static if ratings else _unrated(bench),
        y0=_static_factor(bench, along) if by_factor else None,
    )
    yield Line("static_safety", "life", say("Static safety"), safety.safety)
    running = "shock" if load is not None and load.shock else "normal"
    yield Line("static_safety_wanted", "life", say("Static safety wanted"), least_static_safety(str(found.kind.content), running))


def _static_factor(bench: Bench, along: Known) -> Known | None:
    """Y0 as on file; without it a push along the shaft cannot be judged, and none needs none."""
    bearing = bench.position.bearing
    assert bearing
    if bearing.typed.thrust is not None:
        return bearing.typed.thrust.Y0
    return None if isinstance(along, Value) and along.content == 0 else _no_factors(bench)


def _least(bench: Bench, found: Rated) -> Iterator[Line]:
    """The least load over the states against what the bearing should carry; unbalance, which is an upper bound, is not counted on."""
    bearing, states = bench.position.bearing, list(duties(bench))
    assert bearing
    across = [duty.steady for duty in states]
    radial = min(across, key=lambda one: greatness(one) if isinstance(one, Value) else -1.0) if across else no_load(bench)
    ratings = bearing.typed.ratings
    factor = bench.practice("ball_least_load" if found.kind.content == "ball" else "roller_least_load")
    least = minimum_load.of(radial=radial, rating=ratings.dynamic if ratings else _unrated(bench), factor=factor)
    yield Line("least_load", "life", say("Least load it should carry"), least.least)
    yield Line("least_load_verdict", "life", say("At its lightest it carries"), least.verdict)
