"""Shaft and seat: the band the shaft must lie in, its form, what a bought bar may measure, and what was read there."""

from __future__ import annotations

import re
from collections.abc import Iterator
from typing import Any

from generator.calc.fits import reading_at_20_degrees, seat_fit, seat_form_and_finish, shaft_limit_rounding, shaft_readings
from generator.mounting.bench import Bench, worded
from generator.mounting.chains.fits import (
    bearing_bore_tolerance,
    cold_finished_bar,
    in_inches,
    iso_tolerance_limits,
    standard_tolerance_grade,
)
from generator.mounting.rules import ruled
from generator.mounting.sheet import Line
from generator.say import say
from generator.tables.look_ups import expansion
from generator.units import convert
from generator.value import Band, Known, LookedUp, Need, Results, Rows, Value, Withheld

CARBON = Value("carbon steel", "", LookedUp(None, "a shaft is taken for carbon steel unless said"))
_SEAT = re.compile(r"seat diameter ([1-9]) ([abc])")


def seat_lines(bench: Bench) -> Iterator[Line]:
    """The lines of the seat group."""
    class_, beside = seat_class(bench)
    limits = permitted_band(bench, class_)
    yield Line("shaft_limits", "seat", say("Shaft"), limits, by_hand=True, beside=beside)
    if isinstance(class_, Value):
        yield Line("seat_class", "seat", say("Tolerance class of the seat"), class_)
    form = _form(bench, class_)
    for key, name in (
        ("cylindricity", say("Cylindricity")),
        ("out_of_round", say("Differences of diameter accepted")),
        ("run_out", say("Total radial run-out")),
        ("roughness", say("Roughness Ra")),
    ):
        yield Line(key, "seat", name, form[key])
    yield Line("warm_reading", "seat", say("How far from 20 °C a shaft may be read uncorrected"), bench.practice("warm_reading"))
    yield from _fit(bench, class_)
    yield from _bar(bench, limits)
    yield from _readings(bench, limits, form)


def seat_class(bench: Bench) -> tuple[Known, tuple[tuple[str, Known], ...]]:
    """The class that governs and what stands beside it: a plant ruling inside the maker's band, the maker's, the typed one."""
    maker = bench.maker("shaft_class", say("class of the shaft"))
    rule = ruled(bench, "seat.class")
    typed = bench.position.typed.seat
    own = worded(typed.class_) if typed and typed.class_ is not None else None
    decided = rule or own
    beside = tuple(
        (name, value)
        for name, value in ((say("the maker's class"), maker), (say("the plant's class"), decided))
        if isinstance(value, Value)
    )
    if isinstance(maker, Value):
        if decided is not None and decided.content != maker.content and class_inside(bench, decided, maker):
            return decided, beside
        return maker, beside if decided is not None and decided.content != maker.content else ()
    if decided is not None:
        return decided, ()
    file = bench.position.place.file
    return Withheld(
        say("no document, rule or entry gives the class of the shaft"), (*maker.needs, Need("entry", file, "seat: {class: h9}"))
    ), ()


def class_inside(bench: Bench, one: Value, other: Value) -> bool:
    """Whether the band of one class lies inside the band of another at this size."""
    a = iso_tolerance_limits.of(diameter=bench.position.diameter, tolerance_class=one)
    b = iso_tolerance_limits.of(diameter=bench.position.diameter, tolerance_class=other)
    if not all(isinstance(x, Value) for x in (a.lower, a.upper, b.lower, b.upper)):
        return False
    return bool(a.lower.content >= b.lower.content - 1e-9 and a.upper.content <= b.upper.content + 1e-9)


def permitted_band(bench: Bench, class_: Known) -> Known:
    """The limits a micrometer is held against, rounded inward: the maker's, the plant's typed ones, else those of the class."""
    maker = bench.maker("shaft_limits", say("limits of the shaft"))
    typed = bench.position.typed.seat
    for given in (maker, typed.limits if typed and typed.class_ is None else None):
        if isinstance(given, Band):
            return rounded(bench, given.lower, given.upper)
    if not isinstance(class_, Value):
        return class_
    limits = iso_tolerance_limits.of(diameter=bench.position.diameter, tolerance_class=class_)
    return rounded(bench, limits.lower, limits.upper)


def rounded(bench: Bench, lower: Known, upper: Known) -> Known:
    """Limits rounded inward to what is read here; a shaft of inch size in inches."""
    step = bench.plant.typed.inch_reading_step if bench.inch else bench.plant.typed.reading_step
    if step is None:
        step = Value(0.0001, "in", LookedUp(None, say("inch micrometers are read to 0.0001 in")))
    limits = shaft_limit_rounding.of(lower=lower, upper=upper, step=step)
    if bench.inch:
        limits = in_inches(limits)
    if isinstance(limits.lower, Value) and isinstance(limits.upper, Value):
        return Band(limits.lower, limits.upper)
    return limits.lower if isinstance(limits.lower, Withheld) else Withheld(say("no limits"))


def _form(bench: Bench, class_: Known) -> Results:
    names = ("cylindricity", "out_of_round", "run_out", "roughness")
    if not isinstance(class_, Value):
        held = class_ if isinstance(class_, Withheld) else Withheld(say("no class"))
        return Results(dict.fromkeys(names, held))
    it5 = standard_tolerance_grade.of(diameter=bench.position.diameter, grade=_grade("IT5"))
    it7 = standard_tolerance_grade.of(diameter=bench.position.diameter, grade=_grade("IT7"))
    seat = Value(_seat_word(str(class_.content)), "", class_.reason)
    found: Results = seat_form_and_finish.of(diameter=bench.position.diameter, it5=it5, it7=it7, seat=seat)
    return found


def _grade(name: str) -> Value:
    return Value(name, "", LookedUp(None, say("the grade that form is taken from")))


def _seat_word(class_: str) -> str:
    letter, grade = class_.rstrip("0123456789"), int(re.sub(r"\D", "", class_) or 9)
    if letter in ("h", "g", "f", "e", "d"):
        return "clearance seat h5 to h8" if grade <= 8 else "sleeve seat h9" if grade == 9 else "sleeve seat h10 or wider"
    return "press seat, grade 6 or finer" if grade <= 6 else "press seat, grade 7"


def _fit(bench: Bench, class_: Known) -> Iterator[Line]:
    """A fit is stated for a cylindrical bore pressed on its seat; housed inserts have a bore tolerance of their own."""
    bearing = bench.position.bearing
    if (
        bearing is None
        or str(bearing.typed.bore.shape) != "cylinder"
        or str(bearing.typed.kind) == "ball insert"
        or not isinstance(class_, Value)
    ):
        return
    shaft = iso_tolerance_limits.of(diameter=bench.position.diameter, tolerance_class=class_)
    bore = bearing_bore_tolerance.of(bore=bearing.typed.bore.size)
    fit = seat_fit.of(
        lower_deviation=shaft.lower_deviation, upper_deviation=shaft.upper_deviation, bore_lower=bore.lower, bore_upper=bore.upper
    )
    yield Line("seat_fit_least", "seat", say("Least interference"), fit.least)
    yield Line("seat_fit_most", "seat", say("Greatest interference"), fit.most)


def _bar(bench: Bench, limits: Known) -> Iterator[Line]:
    seat, steel = bench.position.typed.seat, bench.shaft.typed.steel
    if seat is None or str(seat.bought_as) != "cold finished bar" or not isinstance(limits, Band):
        return
    carbon: Any = (
        steel.carbon
        if steel and steel.carbon
        else Withheld(say("the carbon of the steel is not typed"), (Need("entry", bench.position.place.file, "steel: {carbon: 0.28 %}"),))
    )
    bar = cold_finished_bar.of(nominal=bench.position.diameter, carbon=carbon, lower=limits.lower, upper=limits.upper)
    yield Line("bar_least", "seat", say("Least a bought bar may measure"), bar.least)
    yield Line("bar_verdict", "seat", say("Bar as bought"), bar.verdict)


def _readings(bench: Bench, limits: Known, form: Results) -> Iterator[Line]:
    readings = [r for r in bench.position.readings if _SEAT.fullmatch(r.quantity)]
    if not readings:
        return
    newest = readings[-1].when
    record = readings[-1].record
    latest = [r for r in readings if r.when == newest or r.record == record]
    warm = [r for r in bench.position.readings if r.quantity == "shaft temperature" and (r.record == record or r.when == newest)]
    if warm:
        yield Line("seat_temperature", "seat", say("Shaft temperature when read"), warm[-1].value)
    rows = Rows(tuple(Results(section=_section(r), diameter=_at_20(bench, r.value, warm[-1].value if warm else None)) for r in latest))
    lower, upper = (limits.lower, limits.upper) if isinstance(limits, Band) else (limits, limits)
    held = next((row.diameter for row in rows if isinstance(row.diameter, Withheld)), None)
    found = shaft_readings.of(readings=held or rows, lower=lower, upper=upper, allowed=form.out_of_round)
    for key, part, name in (
        ("seat_smallest", "smallest", say("Smallest reading")),
        ("seat_largest", "largest", say("Largest reading")),
        ("seat_round_found", "out_of_round", say("Greatest difference within a section")),
        ("seat_taper_found", "spread", say("Greatest difference over the seat")),
        ("seat_verdict", "verdict", say("Readings against band and form")),
    ):
        yield Line(key, "seat", name, found[part])


def _section(reading: Any) -> Value:
    found = _SEAT.fullmatch(reading.quantity)
    assert found
    return Value(float(found.group(1)), "", reading.value.reason)


def _at_20(bench: Bench, reading: Value, warm: Value | None) -> Value | Withheld:
    """The reading as it is, or brought to 20 °C where the shaft was measured further from it than the plant allows."""
    if warm is None:
        return reading.remark(say("shaft temperature not recorded, 20 °C assumed"))
    away = abs(convert(warm.content, warm.unit, "degC") - 20)
    if away <= bench.practice("warm_reading").content:
        return reading
    material = bench.shaft.typed.material
    alpha = expansion(worded(material) if material is not None else CARBON)
    return reading_at_20_degrees.of(reading=reading, temperature=warm, expansion=alpha)
    # a warm reading that can't be corrected is no reading: used raw it would pass an undersized shaft
