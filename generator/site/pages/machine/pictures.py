"""The drawings of a machine page, from the values of its sheets."""

from __future__ import annotations

import re
from collections.abc import Mapping
from dataclasses import replace
from typing import Any

from markupsafe import Markup

from generator.mounting.axial import anchor_of
from generator.mounting.sheet import ShaftSheet, Sheet
from generator.say import say
from generator.show import text
from generator.site.drawings.pen import Drawn
from generator.site.drawings.shaft import shaft
from generator.site.drawings.strip import Carried, Float, Growth, Section, Strip, Support, description
from generator.site.pages.machine.drawn_values import drawn, mm
from generator.site.pages.machine.lock_drawings import lock_drawings
from generator.site.pages.machine.work_pictures import work_pictures
from generator.value import Value

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
    return shaft(strip_of(sheet, held), f"shaft-{sheet.shaft.key.replace(' ', '-')}")


def strip_of(sheet: ShaftSheet, held: Mapping[str, Any]) -> Strip:
    """What is drawn of a shaft."""
    typed = sheet.shaft.typed
    view = typed.viewed_from
    return Strip(
        name=str(typed.name),
        ends=sheet.shaft.ends,
        sections=tuple(Section(mm(one.to), mm(one.diameter)) for one in typed.sections),
        supports=tuple(_support(one, sheet, held) for one in sheet.sheets),
        carried=tuple(_carried(sheet)),
        growths=tuple(_growths(sheet)),
        turns=str(typed.turns) if typed.turns is not None else "",  # type: ignore[arg-type]
        seen_from=str(view.place),
        first_end_left=view.left is None or str(view.left) == sheet.shaft.ends[0],
        upright=str(typed.lies) == "vertical",
    )


def printed_shaft(sheet: ShaftSheet, held: Mapping[str, Any]) -> Markup:
    """The same where nothing can be touched: its fields lead nowhere."""
    return Markup(re.sub(r"<a href=[^>]*>", "<g>", shaft_drawing(sheet, held)).replace("</a>", "</g>"))


def place_words(sheet: ShaftSheet, letter: str, held: Mapping[str, Any]) -> tuple[str, ...]:
    """What the drawing says of one position, in sentences: from where it is seen, how it turns, where its lock is, how far it may move."""
    strip = strip_of(sheet, held)
    return tuple(description(replace(strip, supports=tuple(one for one in strip.supports if one.letter == letter), carried=())))


def lock_pictures(sheet: Sheet, on: ShaftSheet) -> dict[str, dict[str, Markup]]:
    """The drawings of one position, by the group they stand in and the name a step calls them by."""
    found: dict[str, dict[str, Markup | None]] = {**work_pictures(sheet, on), "lock": lock_drawings(sheet, on)}
    return {group: {name: one for name, one in drawings.items() if one} for group, drawings in found.items()}


def _support(sheet: Sheet, on: ShaftSheet, held: Mapping[str, Any]) -> Support:
    position = sheet.position
    jobs = held.get(sheet.id) or {}
    side = position.typed.nut if position.sleeve is not None else position.typed.collar
    locks = position.bearing.typed.locks if position.bearing else None
    lock = "nut" if position.sleeve else "" if locks is None else "screws" if str(locks.by) == "set screws" else "collar"
    toward = None if side is None else "first" if str(side) == on.shaft.ends[0] else "second"
    first, second = sheet.number("float_first"), sheet.number("float_second")
    room = Float(drawn(first), drawn(second)) if first is not None and second is not None else None
    assert position.typed.at is not None
    return Support(
        position.letter, mm(position.typed.at), str(position.typed.holds), say("HELD: {jobs}", jobs=", ".join(say(job) for job in jobs)) if jobs else "", bool(jobs),  # type: ignore[arg-type]
        lock if toward else "", toward, room,  # type: ignore[arg-type]
    )  # fmt: skip


def _carried(sheet: ShaftSheet) -> Any:
    for name, load in (sheet.shaft.typed.loads or {}).items():
        kind = CARRIED.get(str(load.kind))
        if kind is not None and isinstance(load.at, Value):
            diameter = getattr(load, "pulley", None) or getattr(load, "pitch_diameter", None)
            yield Carried(kind, mm(load.at), str(name), 0, mm(diameter) if diameter else 0)  # type: ignore[arg-type]


def _growths(sheet: ShaftSheet) -> Any:
    if len(sheet.sheets) < 2:
        return
    anchor = anchor_of(sheet.shaft)
    for one in sheet.sheets:
        grows = one.number("growth_here")
        if grows is not None and one.position is not anchor and anchor.typed.at and one.position.typed.at:
            yield Growth(mm(anchor.typed.at), mm(one.position.typed.at), Drawn(grows.content, text(grows)))
