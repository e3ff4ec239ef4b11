"""The five jobs of every position as procedures: composed from its case, each step with its caution and the plant's own rules."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import replace

from generator.case import Case, refusal
from generator.findings import held_jobs
from generator.locking import LOCKINGS
from generator.mounting.case_of import case_of
from generator.mounting.sheet import MachineSheets, MountingStandard, ShaftSheet, Sheet
from generator.refusals import REFUSALS, no_greasing, no_parts
from generator.say import say
from generator.steps import JOBS, Figures, Item, Items, Procedure, Step
from generator.work.cautions import guarding
from generator.work.figures import SheetFigures
from generator.work.greasing import greased
from generator.work.plant_rules import quoted
from generator.work.put_on import put_on
from generator.work.take_off import take_off
from generator.work.watching import inspected, run_in

# a job is held by what holds these of the findings' jobs
HELD_BY = {"put on": ("put on",), "take off": ("take off",), "grease": ("grease",), "inspect": (), "run in": ("put on", "run")}


def procedures(standard: MountingStandard, machine: MachineSheets) -> Mapping[str, Mapping[str, Procedure]]:
    """By the identity of a position, by job."""
    found = [finding for finding in standard.findings if finding.tag == machine.machine.tag]  # type: ignore[attr-defined]
    return {sheet.id: _of(standard, machine, shaft, sheet, found) for shaft in machine.shafts for sheet in shaft.sheets}


def composed(job: str, case: Case, f: Figures) -> Procedure:
    """One job of a case. Refused, with the reason in words, where the case makes no sense or no order for it is on file."""
    why = refusal(case)
    if why and job in ("put on", "run in") or why in REFUSALS and job == "take off" and REFUSALS[why].off:
        return Procedure(job, "", refused=REFUSALS[why].text())
    if job == "grease" and (no := no_greasing(case)):
        return Procedure(job, "", refused=no)
    items = tuple(guarding(item, case) if isinstance(item, Step) else item for item in _items(job, case, f))
    return Procedure(job, "", items)


def _items(job: str, case: Case, f: Figures) -> Items:
    locking = next(one for one in LOCKINGS if case.way == one.WAY)
    if job == "put on":
        return put_on(case, f, locking)
    if job == "take off":
        return take_off(case, f, locking)
    return {"grease": greased, "inspect": inspected, "run in": run_in}[job](case, f)


def _of(standard: MountingStandard, machine: MachineSheets, shaft: ShaftSheet, sheet: Sheet, found: list[object]) -> dict[str, Procedure]:
    case = case_of(standard.plant, machine, shaft, sheet)
    if case is None:
        return {job: Procedure(job, sheet.id, refused=no_parts()) for job in JOBS}
    f = SheetFigures(sheet, shaft.shaft, str(standard.plant.typed.units))
    result = {}
    for job in JOBS:
        procedure = composed(job, case, f)
        items: tuple[Item, ...] = tuple(quoted(standard.plant, machine, sheet, _as_read(item, f.reads_in)) for item in procedure.items)
        why = tuple(dict.fromkeys(_causes(job, machine, sheet, case, found))) or tuple(_without_figure(sheet, procedure))
        result[job] = replace(procedure, position=sheet.id, items=items, held=why)
    return result


def _causes(job: str, machine: MachineSheets, sheet: Sheet, case: Case, found: list[object]) -> Iterator[str]:
    """What holds a job here; what holds another unit on which it leans, by that unit's letter."""
    yield from _held_by(found, sheet, HELD_BY[job])
    for other in machine.sheets:
        letter = other.position.letter
        # no machine runs in with a unit that is not right, and nothing hangs on a unit that may not be put on
        leans = job == "run in" or (job in ("put on", "take off") and letter == case.carrier)
        if other is not sheet and leans:
            names = dict.fromkeys(_held_by(found, other, ("put on", "run")))
            here = set(_held_by(found, sheet, HELD_BY[job]))
            yield from (say("{letter}, {name}", letter=letter, name=name) for name in names if name not in here)


def _held_by(found: list[object], sheet: Sheet, jobs: tuple[str, ...]) -> Iterator[str]:
    held = held_jobs(found, sheet.id)  # type: ignore[arg-type]
    return (finding.name for job in jobs for finding in held.get(job, ()))


def _as_read(item: Item, unit: str) -> Item:
    """Its blanks for what blade and micrometer say in the unit these are marked in here."""
    if not isinstance(item, Step) or not item.blanks:
        return item
    read = (replace(one, unit=unit) if one.quantity.startswith(("seat", "clearance")) else one for one in item.blanks)
    return replace(item, blanks=tuple(read))


def _without_figure(sheet: Sheet, procedure: Procedure) -> Iterator[str]:
    """The figures a job needs and does not have."""
    missing = dict.fromkeys(figure.key for step in procedure.steps for figure in step.does.figures if figure.held)
    for key in missing:
        line = sheet.lines.get(key)
        yield (
            say("no figure: {name}", name=line.name) if line else say("not on file: {name}", name=_unsaid().get(key, key.replace("_", " ")))
        )


def _unsaid() -> dict[str, str]:
    """What a figure is called where the sheet has no line for it."""
    return {
        "floats_by": say("how it floats"),
        "float_first": say("its float"),
        "float_second": say("its float"),
        "place": say("its place along the shaft"),
        "bolt_torque": say("the housing bolts"),
        "grease_strokes": say("grease, gun or strokes"),
        "cap_torque": say("the torque of the cap bolts"),
        "thread_state": say("the state of the threads"),
    }
