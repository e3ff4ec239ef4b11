"""What is taken to the machine: what the steps of putting on and taking off need, with range or size; what several positions share, once."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass, replace

from generator.mounting.sheet import MachineSheets, MountingStandard, Sheet
from generator.say import mark, say
from generator.show import shown, text
from generator.steps import Procedure
from generator.work.tools import fitting_tool, key_for, torque_tool

GROUPS = {
    "isolation": mark("Isolation"),
    "paper": mark("Paper"),
    "parts": mark("Parts"),
    "consumables": mark("Consumables"),
    "tools": mark("Tools"),
    "lifting": mark("Lifting"),
    "protection": mark("Protection"),
}


@dataclass(frozen=True)
class Item:
    """One thing to take. `each`: how many a position needs; 0 for what one of does for all. `missing`: what the plant's list lacks for it."""

    group: str
    name: str
    size: str = ""
    each: int = 0
    stores: str = ""
    notes: tuple[str, ...] = ()
    missing: bool = False
    positions: tuple[str, ...] = ()


# what needs no choosing: its group and its name
PLAIN = {
    "lint-free cloth": ("consumables", mark("lint-free cloth")),
    "light oil": ("consumables", mark("light oil")),
    "thread grease": ("consumables", mark("paste for stainless threads")),
    "paint pen": ("consumables", mark("paint pen")),
    "tags": ("consumables", mark("tags and clean bags")),
    "fine stone": ("tools", mark("fine stone")),
    "scraper": ("tools", mark("scraper")),
    "straightedge": ("tools", mark("straightedge")),
    "depth gauge": ("tools", mark("depth gauge")),
    "soft wedge": ("tools", mark("soft wedge")),
    "soft drift": ("tools", mark("soft drift")),
    "soft hammer": ("tools", mark("soft hammer")),
    "soft tube": ("tools", mark("soft tube over the shaft")),
    "tape": ("tools", mark("measuring tape")),
    "caliper": ("tools", mark("caliper")),
    "puller": ("tools", mark("puller for the inner ring")),
    "bearing heater": ("tools", mark("bearing heater with a sensor for the inner ring")),
    "vibration meter": ("tools", mark("vibration meter")),
    "eye protection": ("protection", mark("eye protection")),
    "heat gloves": ("protection", mark("dry heat gloves")),
    "fall protection": ("protection", mark("fall protection by the site's rules")),
    "position sheet": ("paper", mark("position sheet")),
    "record sheet": ("paper", mark("record sheet")),
}


def take_along(standard: MountingStandard, machine: MachineSheets, jobs: Mapping[str, Mapping[str, Procedure]]) -> tuple[Item, ...]:
    """Everything for all positions of a machine, by group; each item knows the positions it is for."""
    found: dict[tuple[str, str, str], Item] = {}
    for sheet in machine.sheets:
        for item in _for(standard, machine, sheet, jobs[sheet.id]):
            key = (item.group, item.name, item.size)
            known = found.get(key)
            positions = (*known.positions, sheet.position.letter) if known else (sheet.position.letter,)
            notes = dict.fromkeys(note for one in (known, item) if one for note in one.notes)
            found[key] = replace(known or item, positions=tuple(dict.fromkeys(positions)), notes=tuple(notes))
    order = list(GROUPS)
    return tuple(sorted(found.values(), key=lambda item: order.index(item.group)))


def _needs(jobs: Mapping[str, Procedure]) -> tuple[str, ...]:
    """What the steps name; where a job is held its steps still say what it would take, so that nothing is missing on the day it is released."""
    named = [word for job in ("take off", "put on") for step in jobs[job].steps for word in step.takes]
    return tuple(dict.fromkeys((*named, "position sheet", "record sheet")))


def _for(standard: MountingStandard, machine: MachineSheets, sheet: Sheet, jobs: Mapping[str, Procedure]) -> Iterator[Item]:
    isolation = machine.machine.typed.isolation
    energies = ", ".join(str(energy) for energy in isolation.energies)
    yield Item("isolation", say("locks, tags and keys for {procedure}", procedure=isolation.procedure), notes=(energies,))
    yield Item("protection", say("gloves, shoes and what the site asks for"))
    yield from _parts(sheet)
    around = sheet.position.typed.surroundings
    food = around is not None and "food" in str(around.zone or "")
    for word in _needs(jobs):
        if word == "light oil" and food:
            yield Item("consumables", say("light oil registered for incidental contact with food"))
        elif word in PLAIN:
            group, name = PLAIN[word]
            yield Item(group, say(name))
        elif word in GREASES and jobs["grease"].held:
            yield Item("consumables", say("grease: HELD"), notes=(say("{why}. Ask before you take any.", why="; ".join(jobs["grease"].held)),))
        elif word in CHOSEN:
            yield from CHOSEN[word](standard, sheet)


def _parts(sheet: Sheet) -> Iterator[Item]:
    position = sheet.position
    bought = (position.unit,) if position.unit else (position.bearing, position.sleeve, position.housing)
    mass = sheet.number("unit_mass")
    for part in bought:
        if part is not None:
            yield Item(
                "parts", part.name, each=1, stores=_stores(part.typed), notes=(text(mass),) if mass and part is position.unit else ()
            )
    count, thread, class_ = sheet.number("bolt_count"), sheet.number("bolt_thread"), sheet.number("bolt_class")
    if count is not None and thread is not None:
        length = position.typed.bolts.length if position.typed.bolts else None
        size = say("{thread}, {length} under the head", thread=thread.content, length=text(length)) if length else str(thread.content)
        name = say("bolts of class {class_}, with hard washers", class_=class_.content) if class_ else say("bolts with hard washers")
        yield Item("parts", name, size, each=int(count.content), stores=_stores(position.bolt.typed) if position.bolt else "")
    screws = sheet.number("lock_screw_count")
    if screws is not None:
        size = sheet.number("lock_screw_thread")
        yield Item("parts", say("new set screws"), str(size.content) if size else "", each=int(screws.content))


def _stores(typed: object) -> str:
    return str(getattr(typed, "stores", None) or "")


def _grease(standard: MountingStandard, sheet: Sheet) -> Iterator[Item]:
    grease = sheet.position.grease
    amount = sheet.number("grease_first") or sheet.number("grease_dose")
    if grease is not None:
        yield Item("consumables", grease.name, text(amount) if amount else "", each=1, stores=_stores(grease.typed))


def _gun(standard: MountingStandard, sheet: Sheet) -> Iterator[Item]:
    gun, grease = sheet.position.gun, sheet.position.grease
    strokes = sheet.number("grease_strokes")
    notes = (say("{strokes} strokes", strokes=text(strokes)),) if strokes else ()
    name = gun.name if gun else say("grease gun for this grease alone")
    yield Item("tools", name, grease.name if grease else "", notes=notes, missing=gun is None)


def _shim(standard: MountingStandard, sheet: Sheet) -> Iterator[Item]:
    gap = sheet.value("flange_gap")
    yield Item("consumables", say("shim stock with tails"), shown(gap).main if gap else "")


def _lifting(standard: MountingStandard, sheet: Sheet) -> Iterator[Item]:
    rating, mass = sheet.number("jack_rating_mass"), sheet.number("unit_mass")
    if rating is not None:
        yield Item("lifting", say("jack or sling for the shaft"), say("rated {rating} or more", rating=text(rating)))
    else:
        yield Item("lifting", say("jack or sling for the shaft"), say("load not on file: ask"), missing=True)
    yield Item(
        "lifting", say("sling or second person for the unit"), text(mass) if mass else say("mass not on file: ask"), missing=mass is None
    )


def _spanner(standard: MountingStandard, sheet: Sheet) -> Iterator[Item]:
    thread = sheet.number("bolt_thread")
    yield Item("tools", say("spanners"), say("for {thread}", thread=thread.content) if thread else "")


def _hook(standard: MountingStandard, sheet: Sheet) -> Iterator[Item]:
    thread = sheet.number("lock_thread")
    tool = fitting_tool(standard.plant, "hook wrench", None)
    size = say("for a nut {thread}", thread=thread.content) if thread else ""
    yield Item("tools", tool.name if tool else say("hook wrench"), size)


def _bore_gauge(standard: MountingStandard, sheet: Sheet) -> Iterator[Item]:
    bearing = sheet.position.bearing
    yield Item("tools", say("bore gauge"), text(bearing.typed.bore.size) if bearing else "")


def _ranged(kind: str, name: str, key: str) -> object:
    """A tool of the plant's list whose range covers a value of the sheet."""

    def found(standard: MountingStandard, sheet: Sheet) -> Iterator[Item]:
        value = sheet.value(key) if key else None
        tool = fitting_tool(standard.plant, kind, value)
        span = shown(tool.typed.range).main if tool and tool.typed.range is not None else shown(value).main if value else ""
        yield Item("tools", tool.name if tool else say(name), span, missing=tool is None)

    return found


def _torque(keys: tuple[str, ...]) -> object:
    def found(standard: MountingStandard, sheet: Sheet) -> Iterator[Item]:
        known = next((value for key in keys if (value := sheet.value(key)) is not None), None)
        if known is None:
            return
        tool, setting = torque_tool(standard.plant, known)
        what = say("set to {setting}", setting=setting) if setting else shown(known).main
        span = shown(tool.typed.range).main if tool and tool.typed.range is not None else ""
        yield Item("tools", tool.name if tool else say("torque tool"), span or what, notes=(what,) if span else (), missing=tool is None)

    return found


def _key(standard: MountingStandard, sheet: Sheet) -> Iterator[Item]:
    size = key_for(sheet)
    yield Item("tools", say("hexagon key, whole and unworn"), size, missing=not size)


GREASES = {"grease": _grease, "grease gun": _gun}
CHOSEN = {
    **GREASES,
    "shim stock": _shim,
    "lifting gear": _lifting,
    "spanner": _spanner,
    "hook wrench": _hook,
    "bore gauge": _bore_gauge,
    "micrometer": _ranged("micrometer", mark("micrometer"), "shaft_limits"),
    "feeler": _ranged("feeler", mark("feeler gauge"), ""),
    "thermometer": _ranged("thermometer", mark("thermometer"), ""),
    "scale": _ranged("scale", mark("scale"), ""),
    "torque tool for the bolts": _torque(("bolt_torque",)),
    "torque tool for the cap": _torque(("cap_torque",)),
    "torque tool for the lock": _torque(("retaining_screw", "lock_screw")),
    "key for the lock": _key,
}
# what stands on the list for every job and is said otherwise above
ELSEWHERE = ("isolation kit", "parts")
