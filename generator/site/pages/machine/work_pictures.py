"""The drawings of the work at one position that have nothing to do with its lock, by group of the page and by the name a step calls them by."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from markupsafe import Markup

from generator.housings import style_of
from generator.mounting.axial import anchor_of
from generator.mounting.sheet import ShaftSheet, Sheet
from generator.say import say
from generator.show import figure, shown, text, with_unit
from generator.site.drawings.bolts import Bolts, bolts
from generator.site.drawings.feeler import Feeler, Reading, feeler
from generator.site.drawings.fitting import Fitting, fitting
from generator.site.drawings.float_room import FloatRoom, FloatState, float_room
from generator.site.drawings.foot import Foot, foot
from generator.site.drawings.held_shaft import HeldShaft, held_shaft
from generator.site.drawings.pen import Drawn
from generator.site.drawings.reading_places import ReadingPlaces, reading_places
from generator.site.drawings.seat_band import SeatBand, Section, seat_band
from generator.site.pages.machine.drawn_values import drawn, ends, first_left, in_mm, mm, room_set, said
from generator.units import convert
from generator.value import Band, Computed, Value, Withheld


def work_pictures(sheet: Sheet, on: ShaftSheet) -> dict[str, dict[str, Markup | None]]:
    """By group of the page, then by name."""
    return {
        "support": {"jack": _jack(sheet, on)},
        "seat": {"reading places": _places(sheet, on), "readings": _readings(sheet)},
        "housing": {"foot": _foot(sheet)},
        "clearance": {"feeler": _feeler(sheet, on)},
        "bolts": {"bolts": _bolts(sheet)},
        "grease": {"fitting": _fitting(sheet)},
        "axial": {"float": _float(sheet, on)},
    }


def _places(sheet: Sheet, on: ShaftSheet) -> Markup:
    limits = sheet.band("shaft_limits")
    least, most = ends(limits) if limits else ("", "")
    data = ReadingPlaces(least, most, in_mm(sheet.value("out_of_round")), on.shaft.ends, first_left(on))
    return reading_places(data, f"places-{sheet.position.letter}")


def _readings(sheet: Sheet) -> Markup | None:
    """The last readings of the seat against its limits."""
    limits = sheet.band("shaft_limits")
    read = [r for r in sheet.position.readings if r.quantity.startswith("seat diameter")]
    if not isinstance(limits, Band) or not read:
        return None
    last, unit = [r for r in read if r.record == read[-1].record], limits.lower.unit
    sections = []
    for number in sorted({r.quantity.split()[2] for r in last}):
        values = tuple(
            Drawn(convert(r.value.content, r.value.unit, unit), text(r.value, unit)) for r in last if r.quantity.split()[2] == number
        )
        sections.append(Section(say("place {number}", number=number), values))
    verdict = sheet.number("seat_verdict")
    lower, upper = (Drawn(end.content, words) for end, words in zip((limits.lower, limits.upper), ends(limits), strict=True))
    seat = SeatBand(lower, upper, tuple(sections), form_outside=verdict is not None and "form outside" in verdict.content)
    return seat_band(seat, f"seat-{sheet.position.letter}")


def _foot(sheet: Sheet) -> Markup | None:
    housing = sheet.position.housing
    if housing is None or "foot_feeler" not in sheet.lines or style_of(housing.typed.style).joint not in ("base", "face"):
        return None
    data = Foot(in_mm(sheet.value("foot_feeler")), in_mm(sheet.value("base_flatness")), style_of(housing.typed.style).flange)
    return foot(data, f"foot-{sheet.position.letter}")


def _feeler(sheet: Sheet, on: ShaftSheet) -> Markup | None:
    """Before on the bench; then on the held shaft, the ring hanging; and in a housing that opens, as it lies there."""
    bearing, housing = sheet.position.bearing, sheet.position.housing
    if bearing is None or housing is None or str(bearing.typed.kind) not in ("spherical roller", "cylindrical roller"):
        return None
    upright = str(on.shaft.typed.lies) == "vertical"
    readings = [Reading("bench", tuple(_before(sheet)))]
    if not upright:
        readings.append(Reading("hanging", tuple(_after(sheet))))
        readings += [Reading("seated", (say("As found, before it is taken off."),))] if str(housing.typed.style) == "split" else []
    rows = 2 if str(bearing.typed.kind) == "spherical roller" else 1
    note = say("On an upright shaft: on the side free of load. {figures}", figures=" ".join(_after(sheet))) if upright else ""
    return feeler(Feeler(tuple(readings), rows, note), f"feeler-{sheet.position.letter}")


def _before(sheet: Sheet) -> Iterator[str]:
    before = in_mm(sheet.value("clearance_before"))
    if before:
        yield say("Before: {before}.", before=before)
    for row in ("1", "2"):
        read = in_mm(sheet.value(f"clearance_read_{row}"))
        if read:
            yield say("Row {row} was read as {read}.", row=row, read=read)


def _after(sheet: Sheet) -> Iterator[str]:
    heated = "heating" in sheet.lines
    taken = "" if heated else in_mm(sheet.value("reduction"))
    left = in_mm(sheet.value("clearance_least_left" if heated else "least_left"))
    if taken:
        yield say("Drive up until {taken} has been taken.", taken=taken)
    if left:
        yield say("Left, cold: never under {left}.", left=left) if heated else say("Left: never under {left}.", left=left)


def _bolts(sheet: Sheet) -> Markup | None:
    """The order the housing bolts are tightened in: first to half, then to the torque."""
    count, thread, torque = sheet.number("bolt_count"), sheet.number("bolt_thread"), sheet.value("bolt_torque")
    housing = sheet.position.housing
    if (
        housing is None
        or count is None
        or thread is None
        or torque is None
        or isinstance(torque, Withheld)
        or int(count.content) not in (2, 3, 4)
    ):
        return None
    joint = style_of(housing.typed.style).joint
    if joint not in ("base", "face"):
        return None
    rounds = (say("all to about half"), shown(torque).main)
    return bolts(Bolts(int(count.content), str(thread.content), rounds, joint == "base"), f"bolts-{sheet.position.letter}")  # type: ignore[arg-type]


def _fitting(sheet: Sheet) -> Markup | None:
    strokes, grams, shots = said(sheet, "grease_strokes"), said(sheet, "grease_dose"), sheet.number("grease_shots")
    if not strokes:
        return None
    typed = sheet.position.typed
    parts = shots is not None and shots.content > 1
    if parts:
        gives = say("{strokes} strokes in all, {grams}, in {shots} parts", strokes=strokes, grams=grams, shots=text(shots))  # type: ignore[arg-type]
    else:
        gives = say("{strokes} strokes, {grams}", strokes=strokes, grams=grams) if grams else say("{strokes} strokes", strokes=strokes)
    place = str(typed.fitting.place) if typed.fitting else ""
    purge = str(typed.grease.purge) if typed.grease and typed.grease.purge else ""
    # what stands behind a guard is never greased running, whatever the file says
    running = typed.regrease is not None and str(typed.regrease.when) == "running" and place not in ("inside the guard", "")
    return fitting(Fitting(place, purge, gives, running), f"fitting-{sheet.position.letter}")


def _float(sheet: Sheet, on: ShaftSheet) -> Markup | None:
    """Room a free unit has, as set, running warm and at its coldest."""
    at, anchor, rooms = sheet.position.typed.at, anchor_of(on.shaft).typed.at, room_set(sheet, on)
    if rooms is None or at is None or anchor is None or sheet.number("growth_here") is None:
        return None
    way, (first, second) = 1 if mm(at) > mm(anchor) else -1, rooms
    room = (mm(first), mm(second))
    states = [FloatState(say("as set"), 0.0, text(first), text(second))]
    for name, growth in _growths(sheet):
        shift = way * mm(growth)
        if not -room[0] <= shift <= room[1]:
            return None
        states.append(FloatState(name, shift, _mm_words(room[0] + shift), _mm_words(room[1] - shift)))
    data = FloatRoom(sheet.position.letter, on.shaft.ends, drawn(first), drawn(second), tuple(states), first_left(on))
    return float_room(data, f"float-{sheet.position.letter}")


def _growths(sheet: Sheet) -> Iterator[tuple[str, Value]]:
    """How far it goes from where it is set: by what the setting was worked out from, else by the growth alone."""
    away, grows = sheet.number("set_away"), sheet.number("growth_here")
    inputs = away.reason.inputs if away is not None and isinstance(away.reason, Computed) else {}
    warm = inputs.get("hot", grows)
    if isinstance(warm, Value):
        yield say("running warm"), warm
    if isinstance(inputs.get("cold"), Value):
        yield say("at its coldest"), inputs["cold"]


def _mm_words(size: float) -> str:
    return with_unit(figure(size, "mm"), "mm")


def _jack(sheet: Sheet, on: ShaftSheet) -> Markup | None:
    position, at, load = sheet.position, sheet.position.typed.at, sheet.number("jack_load")
    upright, weight_on = str(on.shaft.typed.lies) == "vertical", on.shaft.typed.weight_on
    steadied = upright and load is None and weight_on is not None and str(weight_on) != position.letter
    if at is None or (load is None and not steadied):
        return None
    up = load is not None and load.content < 0
    if load is not None and not up and not said(sheet, "jack_mass"):
        return None
    verdict, jack = sheet.number("jack_verdict"), position.typed.jack
    tips = verdict is not None and str(verdict.content).startswith("tips")
    carries = text(replace(load, content=-load.content)) if up and load is not None else said(sheet, "jack_mass")
    data = HeldShaft(
        tuple((mm(one.to), mm(one.diameter)) for one in on.shaft.typed.sections),
        tuple((one.position.letter, mm(one.position.typed.at)) for one in on.sheets if one is not sheet and one.position.typed.at is not None),
        (position.letter, mm(at)), mm(jack or at), carries, said(sheet, "jack_rating_mass"), on.shaft.ends, text(jack) if jack else "",
        first_left(on), "here" if up else "other" if tips else "", upright,
    )  # fmt: skip
    return held_shaft(data, f"jack-{position.letter}")
