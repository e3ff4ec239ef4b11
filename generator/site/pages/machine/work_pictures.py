"""The drawings of the work at one position, by the name a step calls them by."""

from __future__ import annotations

from markupsafe import Markup

from generator.mounting.sheet import ShaftSheet, Sheet
from generator.say import say
from generator.show import shown, text
from generator.site.drawings.feeler import Feeler, feeler
from generator.site.drawings.fitting import Fitting, fitting
from generator.site.drawings.held_shaft import HeldShaft, held_shaft
from generator.site.drawings.reading_places import ReadingPlaces, reading_places
from generator.site.drawings.seals import Seals, seals
from generator.site.drawings.shoulder import Shoulder, shoulder
from generator.units import convert
from generator.value import Value, Withheld


def work_pictures(sheet: Sheet, on: ShaftSheet) -> dict[str, dict[str, Markup]]:
    """By group of the page, then by name."""
    found = {
        "seat": {"reading places": _places(sheet)},
        "clearance": {"feeler": _feeler(sheet)},
        "lock": {"seals": _seals(sheet, on), "shoulder": _shoulder(sheet)},
        "grease": {"fitting": _fitting(sheet)},
        "support": {"jack": _jack(sheet, on)},
    }
    return {group: {name: one for name, one in drawn.items() if one} for group, drawn in found.items()}


def _said(sheet: Sheet, key: str) -> str:
    value = sheet.value(key)
    return "" if value is None or isinstance(value, Withheld) else shown(value).main


def _places(sheet: Sheet) -> Markup:
    return reading_places(ReadingPlaces(_said(sheet, "shaft_limits"), _said(sheet, "out_of_round")), f"places-{sheet.position.letter}")


def _feeler(sheet: Sheet) -> Markup | None:
    bearing, housing = sheet.position.bearing, sheet.position.housing
    if bearing is None or housing is None or str(bearing.typed.kind) not in ("spherical roller", "cylindrical roller"):
        return None
    rows = 2 if str(bearing.typed.kind) == "spherical roller" else 1
    hanging = sheet.position.sleeve is not None
    where = (
        say("Driving up: the outer ring hangs on the shaft, so read below. On the bench, upright: read at the top.")
        if hanging
        else say("On the bench, upright: read at the top.")
    )
    data = Feeler(
        "bottom" if hanging else "top", rows, _said(sheet, "clearance_before"), _said(sheet, "reduction"),
        _said(sheet, "least_left") or _said(sheet, "clearance_least_left"), where,
    )  # fmt: skip
    return feeler(data, f"feeler-{sheet.position.letter}")


def _seals(sheet: Sheet, on: ShaftSheet) -> Markup | None:
    position = sheet.position
    if position.housing is None or str(position.housing.typed.style) != "split":
        return None
    first, second = _said(sheet, "float_first"), _said(sheet, "float_second")
    room = say("{a} toward the {one}, {b} toward the {other}", a=first, b=second, one=on.shaft.ends[0], other=on.shaft.ends[1]) if first and second else ""  # fmt: skip
    fixed = str(position.typed.holds) == "fixed"
    data = Seals(fixed, on.shaft.ends, str(position.typed.nut or on.shaft.ends[1]) == on.shaft.ends[0], position.sleeve is not None, "" if fixed else room)  # fmt: skip
    return seals(data, f"seals-{position.letter}")


def _shoulder(sheet: Sheet) -> Markup | None:
    if "heating" not in sheet.lines:
        return None
    return shoulder(Shoulder(_said(sheet, "heat_to"), _said(sheet, "heating"), _said(sheet, "shoulder_blade")), f"shoulder-{sheet.position.letter}")  # fmt: skip


def _fitting(sheet: Sheet) -> Markup | None:
    strokes, grams = sheet.number("grease_strokes"), sheet.number("grease_dose")
    if strokes is None:
        return None
    typed = sheet.position.typed
    gives = (
        say("{strokes} strokes, {grams}", strokes=text(strokes), grams=text(grams))
        if grams
        else say("{strokes} strokes", strokes=text(strokes))
    )
    place = str(typed.fitting.place) if typed.fitting else ""
    purge = str(typed.grease.purge) if typed.grease and typed.grease.purge else ""
    running = typed.regrease is not None and str(typed.regrease.when) == "running" and place != "inside the guard"
    return fitting(Fitting(place, purge, gives, running), f"fitting-{sheet.position.letter}")


def _jack(sheet: Sheet, on: ShaftSheet) -> Markup | None:
    if not _said(sheet, "jack_mass") or str(on.shaft.typed.lies) == "vertical":
        return None
    view, position = on.shaft.typed.viewed_from, sheet.position
    at = position.typed.at
    assert at is not None
    data = HeldShaft(
        _mm(on.shaft.typed.sections[-1].to),
        tuple((one.position.letter, _mm(one.position.typed.at)) for one in on.sheets if one is not sheet and one.position.typed.at is not None),
        (position.letter, _mm(at)), _mm(position.typed.jack or at), _said(sheet, "jack_mass"), _said(sheet, "jack_rating_mass"),
        view.left is None or str(view.left) == on.shaft.ends[0], on.shaft.ends,
    )  # fmt: skip
    return held_shaft(data, f"jack-{position.letter}")


def _mm(value: Value) -> float:
    return convert(value.content, value.unit, "mm")
