"""The drawings of how a unit is locked to its shaft, by the name a step calls them by."""

from __future__ import annotations

from markupsafe import Markup

from generator.housings import style_of
from generator.mounting.sheet import ShaftSheet, Sheet
from generator.say import say
from generator.show import figure, shown, text, with_unit
from generator.site.drawings.clamp import Clamp, clamp
from generator.site.drawings.collar import Collar, collar
from generator.site.drawings.flange_gap import FlangeGap, flange_gap
from generator.site.drawings.housing_shift import HousingShift, housing_shift
from generator.site.drawings.nut_turn import NutTurn, nut_turn
from generator.site.drawings.screws import Screws, screws
from generator.site.drawings.seals import Seals, seals
from generator.site.drawings.shoulder import Shoulder, shoulder
from generator.site.pages.machine.drawn_values import drawn, first_left, in_mm, mm, room_set, said
from generator.units import convert
from generator.value import Band, Value

FRAMES = {True: "nut side", False: "opposite the nut"}


def lock_drawings(sheet: Sheet, on: ShaftSheet) -> dict[str, Markup | None]:
    """By name, in the order of the work."""
    return {
        "seals": _seals(sheet, on),
        "shoulder": _shoulder(sheet),
        "shift": _shift(sheet, on),
        "flange gap": _gap(sheet),
        "nut turn": _turn(sheet),
        "collar": _collar(sheet, on),
        "screws": _screws(sheet, on),
    }


def _turn(sheet: Sheet) -> Markup | None:
    """The maker's turn; where a blade decides, the turn that guides."""
    sleeve, counted = sheet.position.sleeve, sheet.band("nut_turn")
    turn = counted or sheet.band("drive_turn")
    if turn is None or sleeve is None:
        return None
    all_slots = int(sleeve.typed.nut.slots.content)
    least, most = (convert(end.content, end.unit, "turn") for end in (turn.lower, turn.upper))
    data = NutTurn(all_slots, least, most, shown(turn).main, _counted(sheet, all_slots), str(sleeve.typed.hand), counted is None)  # type: ignore[arg-type]
    return nut_turn(data, f"turn-{sheet.position.letter}")


def _counted(sheet: Sheet, all_slots: int) -> str:
    slots, degrees = sheet.band("nut_slots"), sheet.band("nut_degrees")
    if slots is None or degrees is None:
        return ""
    return say("{degrees}: {slots} of {all} slots", degrees=shown(degrees).main, slots=shown(slots).main, all=all_slots)


def _gap(sheet: Sheet) -> Markup | None:
    """The gap of the second flange, or why there is none to set."""
    if "flange_gap" not in sheet.lines:
        return None
    gap, travel, turn, typed = sheet.band("flange_gap"), sheet.band("nut_travel"), sheet.band("nut_turn"), sheet.position.typed
    frame = FRAMES[str(typed.frame) == str(typed.nut)] if typed.frame is not None and typed.nut is not None else ""
    count = sheet.number("bolt_count")
    data = FlangeGap(
        drawn(gap.lower) if gap else None, drawn(gap.upper) if gap else None, shown(gap).main if gap else "",
        drawn(travel.upper) if travel else None, shown(turn).main if turn else "", int(count.content) if count else 4,
        frame, str(typed.nut or ""),  # type: ignore[arg-type]
    )  # fmt: skip
    return flange_gap(data, f"gap-{sheet.position.letter}")


def _collar(sheet: Sheet, on: ShaftSheet) -> Markup | None:
    position, locks = sheet.position, sheet.position.bearing.typed.locks if sheet.position.bearing else None
    letter, side = position.letter, position.typed.collar
    if position.sleeve is not None or locks is None or str(locks.by) == "set screws":
        return None
    if str(locks.by) == "clamp collar":
        return clamp(Clamp(said(sheet, "lock_screw"), str(side or "")), f"collar-{letter}")
    if side is None or "collar_turn" not in sheet.lines:
        return None
    toward = "first" if str(side) == on.shaft.ends[0] else "second"
    turns = str(on.shaft.typed.turns) if on.shaft.typed.turns is not None else ""
    return collar(Collar(letter, toward, on.shaft.ends, turns, said(sheet, "lock_screw")), f"collar-{letter}")  # type: ignore[arg-type]


def _screws(sheet: Sheet, on: ShaftSheet) -> Markup | None:
    count, locks = sheet.number("lock_screw_count"), sheet.position.bearing.typed.locks if sheet.position.bearing else None
    if count is None or locks is None or locks.screws is None:
        return None
    apart = convert(locks.screws.apart.content, locks.screws.apart.unit, "deg") if locks.screws.apart else 360 / count.content
    data = Screws(int(count.content), apart, said(sheet, "lock_screw_thread"), said(sheet, "lock_screw"), len(on.sheets) > 1)
    return screws(data, f"screws-{sheet.position.letter}")


def _shift(sheet: Sheet, on: ShaftSheet) -> Markup | None:
    """Which way the housing goes while the nut is turned, as it is seen. A flange on its frame goes by the gap, not freely."""
    position, way, toward = sheet.position, sheet.band("housing_shift"), sheet.number("shift_toward")
    if way is None or toward is None or position.typed.nut is None or position.sleeve is None or position.housing is None:
        return None
    style = style_of(position.housing.typed.style)
    if style.flange and (sheet.order == "second" or str(position.typed.frame) != str(position.typed.nut)):
        return None
    pulled, room = sheet.order == "second", sheet.number("slot_room") if style.joint == "base" else None
    stands = {"base": "slots", "bore": "bore", "guide": "guide"}.get(style.joint, "free")
    data = HousingShift(
        drawn(way.lower), drawn(way.upper), shown(way).main, str(toward.content), (str(position.typed.nut) == on.shaft.ends[0]) == first_left(on),
        str(position.sleeve.typed.nut.works) == "draws the sleeve", stands, drawn(room) if room else None, _left(room, way) if room else "", pulled,  # type: ignore[arg-type]
    )  # fmt: skip
    return housing_shift(data, f"shift-{position.letter}")


def _left(room: Value, way: Band) -> str:
    return with_unit(figure(max(mm(room) - mm(way.upper), 0), "mm", None, "down"), "mm")


def _seals(sheet: Sheet, on: ShaftSheet) -> Markup | None:
    position, ends = sheet.position, on.shaft.ends
    if position.housing is None or str(position.housing.typed.style) != "split" or position.typed.at is None:
        return None
    room = room_set(sheet, on)
    rings = position.rings if str(position.typed.holds) == "fixed" else None
    fixed = str(position.typed.holds) == "fixed"
    data = Seals(
        int(rings.each_side.content) if rings else 1 if fixed else 0, ends, ends[0] if 2 * mm(position.typed.at) < mm(on.shaft.typed.sections[-1].to) else ends[1],
        str(position.typed.nut or "") if position.sleeve is not None else "", (drawn(room[0]), drawn(room[1])) if room and not fixed else None,
        text(rings.width) if rings else "", first_left(on),
    )  # fmt: skip
    return seals(data, f"seals-{position.letter}")


def _shoulder(sheet: Sheet) -> Markup | None:
    if "heating" not in sheet.lines:
        return None
    data = Shoulder(said(sheet, "heat_to"), said(sheet, "heating"), in_mm(sheet.value("shoulder_blade")))
    return shoulder(data, f"shoulder-{sheet.position.letter}")
