"""A page a machine: what it is and whether it is held, how it is made safe, its shafts drawn, and each position's values with their reasons."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from typing import Any

from markupsafe import Markup

from generator.findings import held_jobs
from generator.findings.finding import Judged
from generator.mounting.case_of import hot
from generator.mounting.chains import ALL
from generator.mounting.sheet import Line, MachineSheets, MountingStandard, ShaftSheet, Sheet
from generator.plant.plant import Plant
from generator.safety import Message
from generator.say import say
from generator.show import Shown, shown
from generator.site.pages.machine.load_pictures import bent_drawing, clearance_drawing, life_drawing
from generator.site.pages.machine.pictures import lock_pictures, shaft_drawing
from generator.site.pages.machine.readings_form import ReadingsForm, readings_form
from generator.site.pages.machine.steps_view import JobView, StepView, job_views
from generator.site.reasons import Anchors, Why, anchors_for, name_of, why, why_computed, whys
from generator.site.render import job_name
from generator.value import Computed, Value, Withheld
from generator.work.cautions import standing
from generator.work.compose import procedures

# the stages of the work and the groups of values, each under one heading; what is not in the order of the steps follows as it stands here
STAGE_NAMES = {
    "sheet": "The sheet", "safe": "Make safe", "support": "Support the shaft", "seat": "Shaft and seat", "housing": "Housing and frame", "parts": "Parts", "lock": "Lock to the shaft", "bolts": "Bolts",
    "clearance": "Clearance", "grease": "Grease", "axial": "Along the shaft", "load": "Load", "life": "Life", "watch": "Watch",
    "give back": "Give back",
}  # fmt: skip


@dataclass(frozen=True)
class Box:
    """One value on the page: its anchor, name, text, and why it is so."""

    anchor: str
    name: str
    shown: Shown
    held: bool
    whys: tuple[Why, ...]
    beside: tuple[tuple[str, Shown, tuple[Why, ...]], ...]
    note: str


@dataclass(frozen=True)
class Stage:
    """One part of the work: its heading, the numbers a hand sets, the rest, and a drawing where there is one."""

    key: str
    name: str
    boxes: tuple[Box, ...]
    facts: tuple[Box, ...]
    pictures: tuple[tuple[str, Markup], ...]
    steps: tuple[StepView, ...] = ()
    choices: tuple[Box, ...] = ()  # what one step better would give, for the table


@dataclass(frozen=True)
class PositionView:
    """One position on the page."""

    id: str
    letter: str
    title: str
    jobs: Mapping[str, JobView]
    held: Mapping[str, list[Judged]]
    stages: tuple[Stage, ...]
    workings: tuple[Box, ...]
    parts: tuple[tuple[str, str, str], ...]
    readings: tuple[tuple[str, str, str, str], ...]
    form: ReadingsForm
    note: str
    stage: str


def machine_view(standard: MountingStandard, machine: MachineSheets) -> dict[str, Any]:
    """All that the template of a machine page is given."""
    plant = standard.plant
    first = str(plant.typed.units)
    found = [f for f in standard.findings if f.tag == machine.machine.tag]  # type: ignore[attr-defined]
    typed = machine.machine.typed
    held = {sheet.id: held_jobs(found, sheet.id) for sheet in machine.sheets}
    # shafts first: what a position rests on of its shaft is unfolded there, once
    shafts = [_shaft_view(shaft, held, first) for shaft in machine.shafts]
    jobs = procedures(standard, machine)
    lasting = anchors_for("machine", machine.lines.values())
    for sheet in machine.sheets:
        if "life" in sheet.lines:
            lasting.place(sheet.lines["life"].value, f"{sheet.position.letter}-life")
    return {
        "machine": typed,
        "tag": machine.machine.tag,
        "area_code": str(typed.area),
        "area_name": next(str(area.name) for code, area in plant.typed.areas.items() if str(code) == str(typed.area)),
        "isolation": typed.isolation,
        "cautions": cautions(plant, machine),
        "held": held,
        "held_lines": tuple(_held_lines(held)),
        "shafts": tuple(view for view, _ in shafts),
        "positions": tuple(
            _position_view(plant, shaft, sheet, job_views(sheet, jobs[sheet.id]), held[sheet.id], first, anchors)
            for shaft, (_, anchors) in zip(machine.shafts, shafts, strict=True)
            for sheet in shaft.sheets
        ),
        "lasting": tuple(_box(line, lasting, first) for line in machine.lines.values()),
        "findings": found,
        "documents": _documents(standard, machine),
        "ask": str(plant.typed.ask) if plant.typed.ask else say("the engineer"),
    }


def cautions(plant: Plant, machine: MachineSheets) -> tuple[Message, ...]:
    """The standing cautions of a machine, from its energies, hazards and surroundings."""
    typed = machine.machine.typed
    zones = sorted(
        {
            str(s.position.typed.surroundings.zone)
            for s in machine.sheets
            if s.position.typed.surroundings and s.position.typed.surroundings.zone
        }
    )
    return tuple(standing(
        moving=str(typed.moving) if typed.moving else "",
        procedure=str(typed.isolation.procedure),
        energies=tuple(str(energy) for energy in typed.isolation.energies),
        hazards=(*(str(hazard) for hazard in typed.hazards or ()), *(["hot surface"] if hot(plant, machine, machine.sheets) else [])),
        zones=tuple(zones),
    ))  # fmt: skip


def _held_lines(held: Mapping[str, Mapping[str, list[Judged]]]) -> Iterator[str]:
    for identity, jobs in held.items():
        if jobs:
            letter = identity.rpartition("/")[2]
            causes = ", ".join(dict.fromkeys(f.name for found in jobs.values() for f in found))
            yield say(
                "{letter}: {jobs}. {causes}.",
                letter=letter,
                jobs=", ".join(job_name(job) for job in jobs),
                causes=causes[:1].upper() + causes[1:],
            )


def _shaft_view(shaft: ShaftSheet, held: Mapping[str, Any], first: str) -> tuple[dict[str, Any], Anchors]:
    anchors = anchors_for(shaft.shaft.key.replace(" ", "-"), shaft.lines.values())
    boxes = tuple(_box(line, anchors, first) for line in shaft.lines.values())
    view = {
        "key": shaft.shaft.key,
        "name": str(shaft.shaft.typed.name),
        "drawing": shaft_drawing(shaft, held),
        "bent": bent_drawing(shaft),
        "facts": boxes,
        "workings": tuple(_working(anchor, value, anchors, first) for anchor, value in _all(anchors)),
        "speed": shown(shaft.shaft.typed.speed, first),
        "turns": str(shaft.shaft.typed.turns or say("not stated")),
        "first_end": shaft.shaft.ends[0],
    }
    return view, anchors


def _position_view(plant: Plant, shaft: ShaftSheet, sheet: Sheet, jobs: Mapping[str, JobView], held: Mapping[str, list[Judged]], first: str, of_shaft: Anchors) -> PositionView:  # fmt: skip
    anchors = anchors_for(sheet.position.letter, sheet.lines.values())
    anchors.at = {**of_shaft.at, **anchors.at}
    pictures = lock_pictures(sheet, shaft)
    pictures["clearance"]["clearance"] = clearance_drawing(sheet)
    pictures["life"] = {"life": life_drawing(sheet)}
    put_on = jobs["put on"]
    order = (*put_on.stages, *(stage for stage in STAGE_NAMES if stage not in put_on.stages)) if put_on.open else tuple(STAGE_NAMES)
    stages = []
    for group in order:
        lines = list(sheet.group(group))
        boxes = tuple(_box(line, anchors, first) for line in lines if line.by_hand)
        facts = tuple(_box(line, anchors, first) for line in lines if not line.by_hand)
        steps = put_on.stages.get(group, ()) if put_on.open else ()
        if lines or steps or group == "parts":
            drawn = tuple((name, one) for name, one in pictures.get(group, {}).items() if one)
            stages.append(Stage(group, say(STAGE_NAMES[group]), boxes, facts, drawn, steps, _choices(facts)))
    workings = tuple(_working(anchor, value, anchors, first) for anchor, value in _all(anchors))
    typed = sheet.position.typed
    note = str(typed.note) if typed.note else ""
    return PositionView(
        sheet.id,
        sheet.position.letter,
        title(sheet, shaft),
        jobs,
        held,
        tuple(stages),
        workings,
        tuple(_parts(sheet)),
        tuple(_readings(sheet, first)),
        readings_form(plant, sheet),
        note,
        str(typed.stage) if typed.stage else "",
    )


def _choices(facts: tuple[Box, ...]) -> tuple[Box, ...]:
    """The life as it is, and with each step better."""
    keys = ("life", "life_cleaner", "life_cooler", "life_thicker_oil")
    found = tuple(box for box in facts if box.anchor.partition("-")[2] in keys)
    return found if len(found) > 1 else ()


def title(sheet: Sheet, shaft: ShaftSheet) -> str:
    """Which bearing this is, in one line."""
    names = {"fixed": say("fixed"), "free": say("free")}
    holds = names[str(sheet.position.typed.holds)]
    style = str(sheet.position.housing.typed.style) if sheet.position.housing else say("no housing on file")
    return say(
        "{letter} on the {shaft}: {holds}, {style}, {locking}",
        letter=sheet.position.letter,
        shaft=shaft.shaft.typed.name,
        holds=holds,
        style=style,
        locking=sheet.locking or say("way of locking not known"),
    )


def _all(anchors: Anchors) -> Iterator[tuple[str, Value | Computed]]:
    """The workings, those met while showing workings too."""
    done = 0
    while done < len(anchors.workings):
        yield anchors.workings[done]
        done += 1


def _box(line: Line, anchors: Anchors, first: str) -> Box:
    beside = tuple((name, shown(value, first), whys(value, anchors, first)) for name, value in line.beside)
    anchor = f"{anchors.prefix}-{line.key}"
    return Box(
        anchor, line.name, shown(line.value, first), isinstance(line.value, Withheld), whys(line.value, anchors, first), beside, line.note
    )


def _working(anchor: str, value: Value | Computed, anchors: Anchors, first: str) -> Box:
    if isinstance(value, Computed):
        together = Shown(say("all rows together"))
        return Box(anchor, ALL[value.method].title, together, False, (why_computed(value, anchors, first),), (), "")
    return Box(anchor, name_of(value), shown(value, first), False, (why(value, anchors, first),), (), "")


def _parts(sheet: Sheet) -> Iterator[tuple[str, str, str]]:
    position = sheet.position
    named = (
        (say("unit"), position.unit),
        (say("bearing"), position.bearing),
        (say("sleeve"), position.sleeve),
        (say("housing"), position.housing),
        (say("grease"), position.grease),
        (say("bolt"), position.bolt),
    )
    for what, part in named:
        if part is not None:
            yield what, part.name, str(getattr(part.typed, "stores", None) or "")


def _readings(sheet: Sheet, first: str) -> Iterator[tuple[str, str, str, str]]:
    """The newest reading of each quantity: what, value, when, record."""
    newest = {reading.quantity: reading for reading in sheet.position.readings}
    for quantity, reading in sorted(newest.items()):
        yield quantity, shown(reading.value, first).main, reading.day, f"{reading.record}, {reading.place}"


def _documents(standard: MountingStandard, machine: MachineSheets) -> tuple[Any, ...]:
    used = {reason_document(value) for sheet in machine.sheets for line in sheet.lines.values() for value in _values(line)}
    return tuple(document for name, document in standard.plant.library.documents.items() if name in used)


def reason_document(value: Any) -> str:
    """The maker's document a value is from, "" for none."""
    return getattr(getattr(value, "reason", None), "document", "")


def _values(line: Line) -> Iterator[Any]:
    for value in (line.value, *(value for _, value in line.beside)):
        yield value
        yield getattr(value, "lower", None)
        yield getattr(value, "upper", None)
