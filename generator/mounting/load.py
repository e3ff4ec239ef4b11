"""The load group of a position: what comes to it, how the shaft slopes in it, what the housing may carry, what the jack must."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import replace
from math import inf
from typing import Any

from generator.calc.bending import height_error_felt
from generator.calc.feet import rating_toward
from generator.calc.shafts import shaft_slope
from generator.mounting.bench import Bench
from generator.mounting.frame import allowed_angles, frame_lines
from generator.mounting.jack import jack_lines, unit_mass_line
from generator.mounting.loads import LoadHere, axial_load, load_here, loads_here, more_at_rest, no_load, stated_reaction
from generator.mounting.sheet import Line
from generator.say import say
from generator.tables.life import slope_allowed
from generator.units import convert
from generator.value import Known, LookedUp, Results, Value, Withheld

UPRIGHT = Value(180.0, "deg", LookedUp(None, say("a foot faces down unless said")))
NO_ANGLE = Value(0.0, "deg", LookedUp(None, say("no error of the seat is stated")))
STILL = Value(0.0, "rad", LookedUp(None, say("what stands still is judged apart")))


def load_lines(bench: Bench) -> Iterator[Line]:
    """The lines of the load group."""
    load = load_here(bench)
    if load is None:
        yield Line("load", "load", say("Load on the housing"), no_load(bench))
    else:
        yield from _load(bench, load)
    note = say("At rest: it carries more along the shaft then than running.") if more_at_rest(bench) else ""
    yield Line("load_along", "load", say("Load along the shaft"), axial_load(bench), beside=_stated_along(bench), note=note)
    if load is not None:
        yield from _rating(bench, load)
    yield from _states(bench)
    yield from _slope(bench)
    yield from _height(bench)
    yield from jack_lines(bench)
    yield from unit_mass_line(bench)


def _load(bench: Bench, load: LoadHere) -> Iterator[Line]:
    stated = stated_reaction(bench)
    beside: tuple[tuple[str, Known], ...] = ((say("as stated"), stated.force),) if stated is not None and load.computed else ()
    note = say("In the state: {state}.", state=load.state) if bench.loads and len(bench.loads.states) > 1 else ""
    yield Line("load", "load", say("Load on the housing"), load.force, beside=beside, note=note)
    yield Line("load_toward", "load", say("Its direction, clockwise from 12"), load.toward)
    if load.turning is not None:
        yield Line("load_steady", "load", say("Of it stands still"), load.steady)
        yield Line("load_turning", "load", say("Turns with the shaft"), load.turning)
    if load.fits is not None:
        yield Line("load_fits", "load", say("For the fits"), load.fits)


def _stated_along(bench: Bench) -> tuple[tuple[str, Known], ...]:
    stated = stated_reaction(bench)
    if stated is None or stated.along is None or bench.loads is None or not bench.loads.holder:
        return ()
    return ((say("as stated"), stated.along),)


def _rating(bench: Bench, load: LoadHere) -> Iterator[Line]:
    """What the housing may carry the way it is loaded; of several states the one in which it has least to spare."""
    housing = bench.position.housing
    if housing is None or housing.typed.rated is None:
        return
    rated = housing.typed.rated
    base = bench.position.typed.base_toward or UPRIGHT
    if rated.down is not None and rated.up is not None and rated.side is not None:
        cases = [(case, _may_carry(case, base, rated)) for case in loads_here(bench)]
        case, may = max(cases, key=lambda one: _used(one[0].force, one[1]))
        if case.state != load.state:
            yield Line("housing_load", "load", say("Load the way the housing carries least of it, {state}", state=case.state), case.force)
        yield Line("housing_rating", "load", say("The housing may carry, this way"), may)
    if rated.along is not None:
        yield Line("housing_rating_along", "load", say("The housing may carry along the shaft"), rated.along)


def _may_carry(case: LoadHere, base: Value, rated: Any) -> Known:
    """The rating the way the load comes; of a load that turns with the shaft, and so comes every way, the least."""
    ways: tuple[Known, ...] = (case.toward,)
    if isinstance(case.fits, Value) and case.fits.content == "the load turns with the ring":
        ways = tuple(replace(base, content=(base.content + off) % 360) for off in (0, 90, 180))
    found = [rating_toward.of(direction=way, base=base, down=rated.down, up=rated.up, side=rated.side) for way in ways]
    return min(found, key=lambda one: one.content if isinstance(one, Value) else -1.0)


def _used(load: Known, may: Known) -> float:
    """Which share of a rating is used; all of it and more where one is not known."""
    if not isinstance(load, Value) or not isinstance(may, Value) or may.content <= 0:
        return inf
    return convert(load.content, load.unit, "N") / convert(may.content, may.unit, "N")


def _states(bench: Bench) -> Iterator[Line]:
    """The load in each state, where there is more than one."""
    if bench.loads is None or len(bench.loads.states) < 2:
        return
    for number, state in enumerate(bench.loads.states, 1):
        yield Line(f"load_state_{number}", "load", say("Load, {state}", state=state.name), state.at[bench.position.letter].load)


def _slope(bench: Bench) -> Iterator[Line]:
    """The worst slope over the states, with what the seat is set wrong, against what bearing and seals allow."""
    if bench.loads is None or bench.position.bearing is None:
        return
    low, high = slope_limits(bench)
    here = [state.at[bench.position.letter] for state in bench.loads.states]
    # an insert swivels in its housing, which stands still: what turns with the shaft its balls must take
    swivels = str(bench.position.bearing.typed.kind) == "ball insert"
    asked = {"set_angle": _set_angle(bench), "low": low, "high": high}
    worst = _worst_slope(
        shaft_slope.of(sideways=one.slope_sideways, upward=one.slope_upward, turning=None if swivels else one.slope_turning, **asked)
        for one in here
    )
    yield Line("slope", "load", say("Angle between shaft and seat, with its slope"), worst.angle)
    yield Line("slope_allowed", "load", say("Angle allowed here"), high)
    yield Line("slope_verdict", "load", say("The angle is"), worst.verdict)
    if swivels and any(one.slope_turning is not None for one in here):
        low, high = slope_allowed("deep groove ball")
        worst = _worst_slope(
            shaft_slope.of(sideways=STILL, upward=STILL, turning=one.slope_turning, set_angle=NO_ANGLE, low=low, high=high) for one in here
        )
        yield Line("slope_turning", "load", say("Of the slope turns with the shaft"), worst.angle)
        yield Line("slope_turning_allowed", "load", say("Turning slope allowed in a ball ring"), high)
        yield Line("slope_turning_verdict", "load", say("The turning slope is"), worst.verdict)


def _worst_slope(found: Iterable[Results]) -> Results:
    """The greatest of several; one that is not known may be."""
    return max(found, key=lambda one: float(one.angle.content) if isinstance(one.angle, Value) else inf)


def slope_limits(bench: Bench) -> tuple[Known, Known]:
    """What is always carried and what is never to be passed: the least the file gives for bearing and seals, else the usual ones."""
    bearing = bench.position.bearing
    assert bearing
    low, high = slope_allowed(str(bearing.typed.kind))
    on_file = [value for _, _, value in allowed_angles(bench)]
    if on_file:
        least = min(on_file, key=lambda value: convert(value.content, value.unit, "deg"))
        return least, least
    return low, high


def _set_angle(bench: Bench) -> Known:
    angle = next((line.value for line in frame_lines(bench) if line.key == "seat_angle"), None)
    return angle if angle is not None else NO_ANGLE


def _height(bench: Bench) -> Iterator[Line]:
    """What an error of height does to the load here; nothing on two supports."""
    loads = bench.loads
    if loads is None or len(bench.shaft.positions) < 3 or isinstance(loads.sensitivity, Withheld):
        return
    worst = loads.worst(bench.position.letter).at[bench.position.letter]
    felt = height_error_felt.of(
        changes=loads.sensitivity, at=bench.position.typed.at, load=worst.steady, limit=bench.practice("height_change")
    )
    yield Line(
        "height_felt", "load", say("A support off its height changes the load by"), felt.change, beside=((say("of the load"), felt.share),)
    )
    yield Line("height_verdict", "load", say("Heights"), felt.verdict)
