"""How to read a machine page, on pieces of a real one: each piece as it stands there, with what it means beside it."""

from __future__ import annotations

import re
from collections.abc import Callable, Iterator, Mapping
from dataclasses import replace
from typing import Any

from jinja2 import pass_context
from markupsafe import Markup

from generator.findings import held_jobs
from generator.mounting.sheet import Line, MachineSheets, MountingStandard
from generator.say import say
from generator.show import shown
from generator.site.drawings.style import style
from generator.site.exercises.lost import ExerciseLost
from generator.site.pages.machine.page import Box, cautions, title
from generator.site.pages.machine.pictures import printed_shaft
from generator.site.pages.machine.steps_view import JobView, StepView, job_views
from generator.site.reasons import Anchors, Why, whys
from generator.site.render import job_name, rendered
from generator.value import Band, Computed, Value
from generator.work.compose import procedures

BOXES = 2


def page_reading(standard: MountingStandard, issued: Mapping[str, str]) -> Callable[..., Markup]:
    """What the guide calls: `read_page()`. The machine is `training: page:` of the plant, else the first that shows most. `issued`: how each page is marked."""

    @pass_context
    def read_page(context: Any) -> Markup:
        wanted = {str(topic): str(on) for topic, on in (standard.plant.typed.training or {}).items()}.get("page", "").partition("/")[0]
        machine = standard.machine(wanted) if wanted else next(_by_worth(standard), None)
        if machine is None and wanted:
            raise ExerciseLost(say("plant.yml: training: page: there is no machine {tag}", tag=wanted))
        if machine is None:
            return Markup("<p>{}</p>").format(say("No machine of this plant suits this exercise yet."))
        return rendered("page_reading.html", base=context["base"], issue=issued.get(machine.machine.tag, ""), **_facts(standard, machine))

    return read_page


def _by_worth(standard: MountingStandard) -> Iterator[MachineSheets]:
    """Machines that hold something and have open work too, then those with open work, then the others."""
    held = {finding.tag for finding in standard.findings if finding.holds}  # type: ignore[attr-defined]

    def worth(machine: MachineSheets) -> int:
        jobs = procedures(standard, machine)
        is_open = any(job["put on"].open for job in jobs.values())
        return -2 * is_open - (machine.machine.tag in held)

    yield from sorted(standard.machines, key=worth)


def _facts(standard: MountingStandard, machine: MachineSheets) -> dict[str, Any]:
    jobs = procedures(standard, machine)
    first = str(standard.plant.typed.units)
    sheet = next((one for one in machine.sheets if jobs[one.id]["put on"].open), machine.sheets[0])
    on = next(one for one in machine.shafts if sheet in one.sheets)
    views = job_views(sheet, jobs[sheet.id], linked=False)
    by_hand = sorted((line for line in sheet.lines.values() if line.by_hand and _known(line)), key=lambda line: not _is_computed(line))
    boxes = [_box(line, number, first) for number, line in enumerate(by_hand[:BOXES], 1)]
    return {
        "tag": machine.machine.tag,
        "name": str(machine.machine.typed.name),
        "held": tuple(_held_lines(standard, machine)),
        "caution": cautions(standard.plant, machine)[0],
        "style": style(),
        "drawing": _without_names(printed_shaft(on, {one.id: held_jobs(standard.findings, one.id) for one in on.sheets})),  # type: ignore[arg-type]
        "letters": [one.position.letter for one in machine.sheets],
        "position": title(sheet, on),
        "letter": sheet.position.letter,
        "boxes": boxes,
        "why": boxes[0].whys[0] if boxes else None,
        "jobs": tuple(views.values()),
        "step": _step(views["put on"]),
        "sign": next((item for item in views["put on"].items if item.number not in ("", "S0")), None),
    }


def _step(view: JobView) -> StepView | None:
    """The step that shows most of what a step can have."""
    return max((item for item in view.items if item.does), key=_shows, default=None)


def _shows(item: StepView) -> int:
    with_figure = any(not isinstance(part, str) for part in item.does)
    return sum(map(bool, (item.message, with_figure, item.check, item.troubles)))


def _held_lines(standard: MountingStandard, machine: MachineSheets) -> Iterator[str]:
    for sheet in machine.sheets:
        held = held_jobs(standard.findings, sheet.id)  # type: ignore[arg-type]
        if held:
            causes = ", ".join(dict.fromkeys(finding.name for found in held.values() for finding in found))
            yield say("{letter}: {jobs}. {causes}.", letter=sheet.position.letter, jobs=", ".join(job_name(job) for job in held), causes=causes[:1].upper() + causes[1:])  # fmt: skip


def _known(line: Line) -> bool:
    return isinstance(line.value, Value | Band)


def _is_computed(line: Line) -> bool:
    value = line.value.lower if isinstance(line.value, Band) else line.value
    return isinstance(getattr(value, "reason", None), Computed)


def _box(line: Line, number: int, first: str) -> Box:
    """A number as on its page; what it rests on is named, and leads nowhere from here."""
    reasons = tuple(_leading_nowhere(why) for why in whys(line.value, Anchors("read"), first))
    return Box(f"read-number-{number}", line.name, shown(line.value, first), False, reasons, (), line.note)


def _leading_nowhere(why: Why) -> Why:
    return replace(why, rows=tuple(replace(row, link="") for row in why.rows))


def _without_names(drawing: Markup) -> Markup:
    """Names of its own, so that a page may hold it beside another."""
    return Markup(re.sub(r"\bshaft-", "read-shaft-", drawing))
