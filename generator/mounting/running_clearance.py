"""From the clearance before mounting to what is left running: fit or drive-up, heat, worst and best case; and a heated seat's own lines."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass

from generator.calc.clearance import (
    effective_interference,
    fit_clearance_loss,
    mounting_temperature,
    operating_clearance,
    outer_raceway,
    ring_temperature_difference,
)
from generator.calc.nuts import interference_pressure, seat_holding
from generator.mounting.bench import Bench
from generator.mounting.drive_up import clearance_there, raceway, reduction_band, seat_friction
from generator.mounting.joint import hold_of_seat
from generator.mounting.sheet import Line
from generator.say import say
from generator.show import text
from generator.tables.look_ups import expansion
from generator.value import Band, Known, LookedUp, Need, Value, Withheld

BEARING_STEEL = Value("bearing steel", "", LookedUp(None, say("rings are of bearing steel")))
NO_LOSS = Value(0.0, "mm", LookedUp(None, say("a loose seat takes nothing")))


@dataclass(frozen=True)
class Losses:
    """What is taken of the clearance, the most and the least of it; `what` names it: "fit" or "taper"."""

    what: str
    most: Known
    least: Known


def running_clearance_lines(bench: Bench, lines: Mapping[str, Line]) -> Iterator[Line]:
    """The clearance chain of a bearing, and the heating of a pressed one."""
    bearing = bench.position.bearing
    if bearing is None:
        return
    if bench.locking == "heated seat":
        yield from _heating(bench, lines)
    losses = _losses(bench, lines)
    if losses is None:
        return
    before, _ = clearance_there(bench, lines)
    heat = _heat(bench)
    low, high = (before.lower, before.upper) if isinstance(before, Band) else (before, before)
    yield Line("clearance_start", "clearance", say("Clearance before mounting"), before)
    names = {"fit": say("The fit takes"), "taper": say("Driving up takes")}
    yield Line("clearance_taken", "clearance", names[losses.what], _band(losses.least, losses.most))
    yield Line("clearance_heat", "clearance", say("Heat takes"), heat)
    worst = operating_clearance.of(before=low, heat=heat, **{losses.what: losses.most})
    best = operating_clearance.of(before=high, heat=heat, **{losses.what: losses.least})
    yield Line("clearance_running", "clearance", say("Clearance left, running"), _band(worst, best))
    yield Line("clearance_wanted", "clearance", say("Least that must be left, running"), _wanted())


def _wanted() -> Value:
    return Value(0.0, "mm", LookedUp(None, say("no preload, unless the maker says more")))


def _losses(bench: Bench, lines: Mapping[str, Line]) -> Losses | None:
    """What mounting takes; None for an insert, whose clearance and drive-up are its maker's."""
    if bench.locking == "heated seat":
        most, least = (lines[key].value if key in lines else _no_fit(bench) for key in ("seat_fit_most", "seat_fit_least"))
        return Losses("fit", _fit_loss(bench, most), _fit_loss(bench, least))
    if bench.position.sleeve is not None and str(bench.position.bearing.typed.kind) == "spherical roller":  # type: ignore[union-attr]
        band = reduction_band(bench, lines)
        return Losses("taper", *((band.upper, band.lower) if isinstance(band, Band) else (band, band)))
    return None


def _no_fit(bench: Bench) -> Withheld:
    return Withheld(say("the fit of the seat is not known"), (Need("entry", bench.position.place.file, "seat: {class: m6}"),))


def _fit_loss(bench: Bench, interference: Known) -> Known:
    bearing = bench.position.bearing
    assert bearing
    presses = effective_interference.of(
        interference=interference, smoothing=Value(0.0, "mm", LookedUp(None, say("no smoothing counted: the safe side")))
    )
    found: Known = fit_clearance_loss.of(
        interference=presses, bore=bearing.typed.bore.size, raceway=raceway(bench), hole=bench.position.hole
    )
    return found


def _heat(bench: Bench) -> Known:
    """What heat takes: the inner ring hotter than the outer, as typed, else as usual."""
    bearing, typed = bench.position.bearing, bench.position.typed.temperature
    assert bearing
    kind = "ball" if "ball" in str(bearing.typed.kind) else "roller"
    word = Value(kind, "", LookedUp(None, say("by the kind of bearing")))
    outer = bearing.typed.outer_raceway or outer_raceway.of(kind=word, bore=bearing.typed.bore.size, outside=bearing.typed.outside)
    if typed is not None and typed.ring_difference is not None:
        difference = typed.ring_difference
    else:
        difference = bench.practice("inner_hotter").remark(say("difference of the rings' temperatures assumed"))
    found: Known = ring_temperature_difference.of(raceway=outer, difference=difference, expansion=expansion(BEARING_STEEL))
    return found


def _heating(bench: Bench, lines: Mapping[str, Line]) -> Iterator[Line]:
    """How warm the ring must be, with its ceiling; how hard it then presses; what it holds."""
    bearing = bench.position.bearing
    assert bearing
    most, least = (lines[key].value if key in lines else _no_fit(bench) for key in ("seat_fit_most", "seat_fit_least"))
    ceiling = lines["heating"].value if isinstance(lines["heating"].value, Value) else bench.practice("heating_ceiling")
    warm = mounting_temperature.of(
        interference=effective_interference.of(interference=most, smoothing=NO_LOSS),
        slip=bench.practice("slip_room"),
        bore=bearing.typed.bore.size,
        expansion=expansion(BEARING_STEEL),
        shaft=bench.practice("mounting_air"),
        ceiling=ceiling,
    )
    note = say("With the shaft at {air}. Never over the ceiling.", air=text(bench.practice("mounting_air")))
    yield Line("heat_to", "lock", say("Heat the ring to"), warm.set_to, by_hand=True, note=note)
    yield Line("heat_room", "lock", say("Room to slip on then"), warm.room)
    yield Line("heat_verdict", "lock", say("That is"), warm.verdict)
    asked = {"diameter": bearing.typed.bore.size, "outside": raceway(bench), "hole": bench.position.hole}
    tight = interference_pressure.of(interference=effective_interference.of(interference=most, smoothing=NO_LOSS), **asked)
    loose = interference_pressure.of(
        interference=effective_interference.of(interference=least, smoothing=bench.practice("smoothing")), **asked
    )
    yield Line("ring_hoop", "clearance", say("Hoop stress in the ring, at the most"), tight.hoop)
    yield Line("ring_hoop_most", "clearance", say("Hoop stress it may carry"), bench.practice("ring_hoop"))
    held = seat_holding.of(
        pressure=loose.pressure, diameter=bearing.typed.bore.size, length=bearing.typed.width, friction=seat_friction(bench)
    )
    yield from hold_of_seat(bench, held)


def _band(lower: Known, upper: Known) -> Known:
    return (
        Band(lower, upper, limits=False)
        if isinstance(lower, Value) and isinstance(upper, Value)
        else lower
        if isinstance(lower, Withheld)
        else upper
    )
