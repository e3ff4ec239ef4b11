"""The drawings of a machine page, from the values of its sheets."""

from __future__ import annotations

import re
from collections.abc import Mapping
from typing import Any

from markupsafe import Markup

from generator.mounting.axial import anchor_of
from generator.mounting.sheet import ShaftSheet, Sheet
from generator.say import say
from generator.show import figure, shown, text, with_unit
from generator.site.drawings.bolts import Bolts, bolts
from generator.site.drawings.collar import Collar, collar
from generator.site.drawings.flange_gap import FlangeGap, flange_gap
from generator.site.drawings.float_room import FloatRoom, FloatState, float_room
from generator.site.drawings.housing_shift import HousingShift, housing_shift
from generator.site.drawings.nut_turn import NutTurn, nut_turn
from generator.site.drawings.pen import Drawn
from generator.site.drawings.seat_band import SeatBand, seat_band
from generator.site.drawings.seat_band import Section as Read
from generator.site.drawings.shaft import shaft
from generator.site.drawings.strip import Carried, Float, Growth, Section, Strip, Support
from generator.site.pages.machine.work_pictures import work_pictures
from generator.units import convert
from generator.value import Band, Value, Withheld

CARRIED = {
    "weight": "part",
    "belt strands": "pulley",
    "belt wrap": "pulley",
    "belt drive": "pulley",
    "chain": "sprocket",
    "gear": "sprocket",
    "unbalance": "fan",
}


def shaft_drawing(sheet: ShaftSheet, held: Mapping[str, Any]) -> Markup:
    """The shaft as it is seen from the stated place."""
    typed = sheet.shaft.typed
    view = typed.viewed_from
    strip = Strip(
        name=str(typed.name),
        ends=sheet.shaft.ends,
        sections=tuple(Section(_mm(one.to), _mm(one.diameter)) for one in typed.sections),
        supports=tuple(_support(one, sheet, held) for one in sheet.sheets),
        carried=tuple(_carried(sheet)),
        growths=tuple(_growths(sheet)),
        turns=str(typed.turns) if typed.turns is not None else "",  # type: ignore[arg-type]
        seen_from=str(view.place),
        first_end_left=view.left is None or str(view.left) == sheet.shaft.ends[0],
        upright=str(typed.lies) == "vertical",
    )
    return shaft(strip, f"shaft-{sheet.shaft.key.replace(' ', '-')}")


def printed_shaft(sheet: ShaftSheet, held: Mapping[str, Any]) -> Markup:
    """The same where nothing can be touched: its fields lead nowhere."""
    return Markup(re.sub(r"<a href=[^>]*>", "<g>", shaft_drawing(sheet, held)).replace("</a>", "</g>"))


def lock_pictures(sheet: Sheet, on: ShaftSheet) -> dict[str, dict[str, Markup]]:
    """The drawings of one position, by the group they stand in and the name a step calls them by."""
    letter = sheet.position.letter
    lock: dict[str, Markup | None] = {}
    turn, slots, sleeve = sheet.band("nut_turn"), sheet.band("nut_slots"), sheet.position.sleeve
    if turn and sleeve:
        words = (
            text(turn.upper)
            if turn.lower.content == turn.upper.content
            else say("{least} to {most}", least=text(turn.lower), most=text(turn.upper))
        )
        counted = (
            say(
                "{least} to {most} of {all} slots",
                least=f"{slots.lower.content:g}",
                most=f"{slots.upper.content:g}",
                all=f"{sleeve.typed.nut.slots.content:g}",
            )
            if slots
            else ""
        )
        least, most = (convert(end.content, end.unit, "turn") for end in (turn.lower, turn.upper))
        data = NutTurn(int(sleeve.typed.nut.slots.content), least, most, words, counted, str(sleeve.typed.hand))  # type: ignore[arg-type]
        lock["nut turn"] = nut_turn(data, f"turn-{letter}")
    gap, travel = sheet.band("flange_gap"), sheet.band("nut_travel")
    if gap and travel and turn:
        drawn = FlangeGap(_drawn(gap.lower), _drawn(travel.upper), text(turn.upper))
        lock["flange gap"] = flange_gap(drawn, f"gap-{letter}")
    if sheet.lines.get("collar_turn") is not None and sheet.position.typed.collar is not None:
        toward = "first" if str(sheet.position.typed.collar) == on.shaft.ends[0] else "second"
        turns = str(on.shaft.typed.turns) if on.shaft.typed.turns is not None else ""
        lock["collar"] = collar(Collar(letter, toward, on.shaft.ends, turns), f"collar-{letter}")  # type: ignore[arg-type]
    found: dict[str, dict[str, Markup | None]] = {
        "lock": {**lock, "shift": _shift(sheet, on)},
        "seat": {"readings": _seat(sheet)},
        "bolts": {"bolts": _bolts(sheet)},
        "axial": {"float": _float(sheet, on)},
    }
    work = work_pictures(sheet, on)
    groups = dict.fromkeys((*found, *work))
    return {group: {**{name: one for name, one in found.get(group, {}).items() if one}, **work.get(group, {})} for group in groups}


def _shift(sheet: Sheet, on: ShaftSheet) -> Markup | None:
    """Which way the housing goes while the nut is turned, as it is seen."""
    way, toward = sheet.band("housing_shift"), sheet.number("shift_toward")
    if way is None or toward is None or sheet.position.typed.nut is None or sheet.position.sleeve is None:
        return None
    first_left = on.shaft.typed.viewed_from.left is None or str(on.shaft.typed.viewed_from.left) == on.shaft.ends[0]
    nut_left = (str(sheet.position.typed.nut) == on.shaft.ends[0]) == first_left
    drawn = str(sheet.position.sleeve.typed.nut.works) == "draws the sleeve"
    data = HousingShift(_drawn(way.lower), _drawn(way.upper), shown(way).main, str(toward.content), nut_left, drawn)
    return housing_shift(data, f"shift-{sheet.position.letter}")


def _bolts(sheet: Sheet) -> Markup | None:
    """The order the housing bolts are tightened in: first to half, then to the torque."""
    count, thread, torque = sheet.number("bolt_count"), sheet.number("bolt_thread"), sheet.value("bolt_torque")
    if count is None or thread is None or torque is None or isinstance(torque, Withheld) or int(count.content) not in (2, 3, 4):
        return None
    rounds = (say("all to about half"), shown(torque).main)
    return bolts(Bolts(int(count.content), str(thread.content), rounds), f"bolts-{sheet.position.letter}")  # type: ignore[arg-type]


def _float(sheet: Sheet, on: ShaftSheet) -> Markup | None:
    """Room a free unit has, as set and warm."""
    first, second, grows = sheet.number("float_first"), sheet.number("float_second"), sheet.number("growth_here")
    if first is None or second is None or grows is None:
        return None
    anchor = anchor_of(on.shaft)
    assert anchor.typed.at is not None and sheet.position.typed.at is not None
    shift = _mm(grows) if _mm(sheet.position.typed.at) > _mm(anchor.typed.at) else -_mm(grows)
    room = (_mm(first), _mm(second))
    if not -room[0] <= shift <= room[1]:
        return None
    states = (
        FloatState(say("as set"), 0.0, text(first), text(second)),
        FloatState(
            say("running warm"), shift, with_unit(figure(room[0] + shift, "mm"), "mm"), with_unit(figure(room[1] - shift, "mm"), "mm")
        ),
    )
    view = on.shaft.typed.viewed_from.left
    left = view is None or str(view) == on.shaft.ends[0]
    return float_room(
        FloatRoom(sheet.position.letter, on.shaft.ends, _drawn(first), _drawn(second), states, left), f"float-{sheet.position.letter}"
    )


def _seat(sheet: Sheet) -> Markup | None:
    limits = sheet.band("shaft_limits")
    read = [r for r in sheet.position.readings if r.quantity.startswith("seat diameter")]
    if not isinstance(limits, Band) or not read:
        return None
    last = [r for r in read if r.record == read[-1].record]
    unit = limits.lower.unit
    sections = []
    for number in sorted({r.quantity.split()[2] for r in last}):
        values = tuple(
            Drawn(convert(r.value.content, r.value.unit, unit), text(r.value, unit)) for r in last if r.quantity.split()[2] == number
        )
        sections.append(Read(say("section {number}", number=number), values))
    verdict = sheet.number("seat_verdict")
    lower, upper = (Drawn(end.content, text(end)) for end in (limits.lower, limits.upper))
    seat = SeatBand(lower, upper, tuple(sections), form_outside=verdict is not None and "form outside" in verdict.content)
    return seat_band(seat, f"seat-{sheet.position.letter}")


def _support(sheet: Sheet, on: ShaftSheet, held: Mapping[str, Any]) -> Support:
    position = sheet.position
    jobs = held.get(sheet.id) or {}
    side = position.typed.nut if position.sleeve is not None else position.typed.collar
    locks = position.bearing.typed.locks if position.bearing else None
    lock = "nut" if position.sleeve else "" if locks is None else "screws" if str(locks.by) == "set screws" else "collar"
    toward = None if side is None else "first" if str(side) == on.shaft.ends[0] else "second"
    first, second = sheet.number("float_first"), sheet.number("float_second")
    room = Float(_drawn(first), _drawn(second)) if first is not None and second is not None else None
    assert position.typed.at is not None
    return Support(
        position.letter, _mm(position.typed.at), str(position.typed.holds), say("HELD: {jobs}", jobs=", ".join(say(job) for job in jobs)) if jobs else "", bool(jobs),  # type: ignore[arg-type]
        lock if toward else "", toward, room,  # type: ignore[arg-type]
    )  # fmt: skip


def _carried(sheet: ShaftSheet) -> Any:
    for name, load in (sheet.shaft.typed.loads or {}).items():
        kind = CARRIED.get(str(load.kind))
        if kind is not None and isinstance(load.at, Value):
            diameter = getattr(load, "pulley", None) or getattr(load, "pitch_diameter", None)
            yield Carried(kind, _mm(load.at), str(name), 0, _mm(diameter) if diameter else 0)  # type: ignore[arg-type]


def _growths(sheet: ShaftSheet) -> Any:
    if len(sheet.sheets) < 2:
        return
    anchor = anchor_of(sheet.shaft)
    for one in sheet.sheets:
        grows = one.number("growth_here")
        if grows is not None and one.position is not anchor and anchor.typed.at and one.position.typed.at:
            yield Growth(_mm(anchor.typed.at), _mm(one.position.typed.at), Drawn(grows.content, text(grows)))


def _drawn(value: Value) -> Drawn:
    return Drawn(_mm(value), text(value))


def _mm(value: Value) -> float:
    return convert(value.content, value.unit, "mm")
