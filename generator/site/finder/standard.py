"""What there is to find in a mounting standard."""

from __future__ import annotations

from collections.abc import Iterator

from generator.findings import RULES
from generator.findings.finding import name_of
from generator.mounting.chains import ALL
from generator.mounting.sheet import MachineSheets, MountingStandard, Sheet
from generator.say import say
from generator.site.finder.index import Entry
from generator.site.render import slug
from generator.tables.condition import damage_terms


def entries_of(standard: MountingStandard) -> Iterator[Entry]:
    """Machines and their positions, areas, parts with where they are fitted, documents, rules, calculations."""
    for machine in standard.machines:
        yield from _machine(machine)
    for code, area in standard.plant.typed.areas.items():
        yield Entry("area", str(code), str(area.name), f"areas/{slug(code)}.html")
    yield from _parts(standard)
    for document in standard.plant.library.documents.values():
        yield Entry(
            "document", document.name, str(document.typed.title), f"documents.html#{slug(document.name)}", (str(document.typed.maker),)
        )
    for rule, _ in RULES:
        yield Entry("finding", say(name_of(rule)), "", f"findings.html#rule-{slug(name_of(rule))}", (say(" ".join((rule.__doc__ or "").split())),))
    for row in damage_terms():
        yield Entry("damage", str(row.sub_mode.content), str(row.mode.content), "damage.html")
    for name, method in sorted(ALL.items()):
        yield Entry("calculation", method.title.rstrip("."), "", f"basis.html#{name}", (name,))


def _machine(machine: MachineSheets) -> Iterator[Entry]:
    typed, tag = machine.machine.typed, machine.machine.tag
    shafts = tuple(str(shaft.shaft.typed.name) for shaft in machine.shafts)
    yield Entry("machine", tag, str(typed.name), f"machines/{tag}.html", (str(typed.area), *shafts))
    for sheet in machine.sheets:
        names = dict.fromkeys(_fitted(sheet))
        yield Entry(
            "position", sheet.id.replace("/", " "), ", ".join(names), f"machines/{tag}.html#{sheet.position.letter}", (str(typed.name),)
        )


def _parts(standard: MountingStandard) -> Iterator[Entry]:
    where: dict[str, list[Sheet]] = {}
    for machine in standard.machines:
        for sheet in machine.sheets:
            for name in _fitted(sheet):
                where.setdefault(name, []).append(sheet)
    for name, sheets in sorted(where.items()):
        at = tuple(dict.fromkeys(sheet.id.replace("/", " ") for sheet in sheets))
        shown = ", ".join(at[:6]) + (", \u2026" if len(at) > 6 else "")
        yield Entry("part", name, shown, f"machines/{sheets[0].position.tag}.html#{sheets[0].position.letter}-parts-list")


def _fitted(sheet: Sheet) -> Iterator[str]:
    position = sheet.position
    for part in (position.unit, position.bearing, position.sleeve, position.housing, position.grease):
        if part is not None:
            yield part.name
