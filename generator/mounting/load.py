"""The load group of a position: what comes to it, how the shaft slopes in it, what the housing may carry, what the jack must."""

from __future__ import annotations

from collections.abc import Iterator

from generator.calc.bending import height_error_felt
from generator.calc.feet import rating_toward
from generator.calc.shafts import shaft_slope
from generator.mounting.bench import Bench
from generator.mounting.frame import allowed_angles, frame_lines
from generator.mounting.jack import jack_lines
from generator.mounting.loads import LoadHere, axial_load, load_here, no_load, stated_reaction
from generator.mounting.sheet import Line
from generator.say import say
from generator.tables.life import slope_allowed
from generator.units import convert
from generator.value import Known, LookedUp, Value, Withheld

UPRIGHT = Value(180.0, "deg", LookedUp(None, say("a foot faces down unless said")))
NO_ANGLE = Value(0.0, "deg", LookedUp(None, say("no error of the seat is stated")))


def load_lines(bench: Bench) -> Iterator[Line]:
    """The lines of the load group."""
    load = load_here(bench)
    if load is None:
        yield Line("load", "load", say("Load on the housing"), no_load(bench))
    else:
        yield from _load(bench, load)
    yield Line("load_along", "load", say("Load along the shaft"), axial_load(bench), beside=_stated_along(bench))
    if load is not None:
        yield from _rating(bench, load)
    yield from _states(bench)
    yield from _slope(bench)
    yield from _height(bench)
    yield from jack_lines(bench)


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
    """What the housing may carry the way it is loaded."""
    housing = bench.position.housing
    if housing is None or housing.typed.rated is None:
        return
    rated = housing.typed.rated
    base = bench.position.typed.base_toward or UPRIGHT
    if rated.down is not None and rated.up is not None and rated.side is not None:
        may = rating_toward.of(direction=load.toward, base=base, down=rated.down, up=rated.up, side=rated.side)
        yield Line("housing_rating", "load", say("The housing may carry, this way"), may)
    if rated.along is not None:
        yield Line("housing_rating_along", "load", say("The housing may carry along the shaft"), rated.along)


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
    found = [
        shaft_slope.of(sideways=here.slope_sideways, upward=here.slope_upward, set_angle=_set_angle(bench), low=low, high=high)
        for here in (state.at[bench.position.letter] for state in bench.loads.states)
    ]
    worst = max(found, key=lambda one: one.angle.content if isinstance(one.angle, Value) else 0.0)
    yield Line("slope", "load", say("Angle between shaft and seat, with its slope"), worst.angle)
    yield Line("slope_allowed", "load", say("Angle allowed here"), high)
    yield Line("slope_verdict", "load", say("The angle is"), worst.verdict)


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
