"""The plant's own rules, quoted at the steps they apply to: who may isolate, what is lifted by hand, hot work."""

from __future__ import annotations

from dataclasses import replace

from generator.locking import locking_of
from generator.mounting.sheet import MachineSheets, Sheet
from generator.plant.plant import Plant
from generator.say import say
from generator.steps import Item, Step

# the acts at which a rule of that kind is quoted
ACTS = {
    "isolating": ("isolate",),
    "lifting": ("carry parts", "support", "cap on", "cap off"),
    "hot work": ("heat",),
    "greasing": ("strokes", "fill by hand", "stand clear"),
    "working at height": ("height",),
    "working with food": ("count in", "count", "wipe off"),
    "in dust": ("clear the dust", "face", "dust"),
    "locking": ("screws again", "collar screw", "clamp again", "lock nut", "lock again"),
    "bolting": ("bolts final", "bolts again"),
    "giving back": ("power",),
    "training": (),  # quoted on the sign-off sheet, at no step
}


def quoted(plant: Plant, machine: MachineSheets, sheet: Sheet, item: Item) -> Item:
    """The step with the rules that apply to it, each in the plant's own words with who decided it; where it is isolated, what is minded at this machine."""
    if not isinstance(item, Step):
        return item
    found = tuple(
        say("{name}: {says} ({by}, {on}).", name=name, says=rule.says, by=rule.approved_by, on=rule.on.content)
        for name, rule in (plant.typed.rules or {}).items()
        if rule.quoted_at is not None
        and item.act in ACTS[str(rule.quoted_at)]
        and _here(str(rule.quoted_at), sheet)
        and _covers(rule.where, machine, sheet)
    )
    note = machine.machine.typed.note
    if item.act in ("isolate", "block rotor") and note:
        found = (say("Mind here: {note}.", note=str(note).rstrip(".")), *found)
    return replace(item, quotes=found) if found else item


def _here(work: str, sheet: Sheet) -> bool:
    """Food and dust are worked with only where the zone says so."""
    around = sheet.position.typed.surroundings
    zone = str(around.zone) if around is not None and around.zone else "none"
    return {"working with food": "food" in zone, "in dust": "dust" in zone}.get(work, True)


def _covers(where: object, machine: MachineSheets, sheet: Sheet) -> bool:
    if where is None:
        return True
    locking, position = locking_of(sheet.position), sheet.position
    here = {
        "area": str(machine.machine.typed.area), "machine": machine.machine.tag, "shaft": f"{machine.machine.tag}/{position.shaft}",
        "position": sheet.id, "locking": locking.WORD if locking else "", "housing": str(position.housing.typed.style) if position.housing else "",
    }  # fmt: skip
    return all(getattr(where, key) is None or str(getattr(where, key)) == found for key, found in here.items())
