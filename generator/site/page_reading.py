"""How to read a machine page, on pieces of a real one: each piece as it stands there, with what it means beside it."""

from __future__ import annotations

import re
from collections.abc import Callable
from typing import Any

from jinja2 import pass_context
from markupsafe import Markup

from generator.mounting.sheet import MachineSheets, MountingStandard
from generator.say import say
from generator.show import shown
from generator.site.drawings.style import style
from generator.site.pages.machine.page import cautions, title
from generator.site.pages.machine.pictures import printed_shaft
from generator.site.pages.machine.steps_view import job_views
from generator.site.reasons import origin
from generator.site.render import rendered
from generator.work.compose import procedures


class ReadingLost(ValueError):
    """The machine the guide reads is no more."""


def page_reading(standard: MountingStandard) -> Callable[..., Markup]:
    """What the guide calls: `read_page()`. The machine is `training: page:` of the plant, else the first one that holds something."""

    @pass_context
    def read_page(context: Any) -> Markup:
        wanted = {str(topic): str(on) for topic, on in (standard.plant.typed.training or {}).items()}.get("page", "")
        machine = standard.machine(wanted) if wanted else _first(standard)
        if machine is None:
            if wanted:
                raise ReadingLost(say("plant.yml: training: page: there is no machine {tag}", tag=wanted))
            return Markup("<p>{}</p>").format(say("No machine of this plant suits this exercise yet."))
        return rendered("page_reading.html", base=context["base"], **_facts(standard, machine))

    return read_page


def _first(standard: MountingStandard) -> MachineSheets | None:
    held = {finding.tag for finding in standard.findings if finding.holds}  # type: ignore[attr-defined]
    return next((m for m in standard.machines if m.machine.tag in held), standard.machines[0] if standard.machines else None)


def _facts(standard: MountingStandard, machine: MachineSheets) -> dict[str, Any]:
    jobs = procedures(standard, machine)
    shaft = machine.shafts[0]
    sheet = next((one for one in machine.sheets if jobs[one.id]["put on"].open), machine.sheets[0])
    on = next(one for one in machine.shafts if sheet in one.sheets)
    view = job_views(sheet, jobs[sheet.id], linked=False)["put on"]
    steps = [item for item in view.items if item.message and any(not isinstance(part, str) for part in item.does)] or [item for item in view.items if item.does]  # fmt: skip
    line = next((one for one in sheet.lines.values() if one.by_hand), None)
    held = [finding for finding in standard.findings if finding.tag == machine.machine.tag and finding.holds]  # type: ignore[attr-defined]
    return {
        "tag": machine.machine.tag,
        "name": str(machine.machine.typed.name),
        "held": held[0] if held else None,
        "caution": cautions(standard.plant, machine)[0],
        "style": style(),
        "drawing": _without_names(printed_shaft(shaft, {})),
        "position": title(sheet, on),
        "letter": sheet.position.letter,
        "number": (line.name, shown(line.value), origin(line.value)) if line else None,
        "step": steps[0] if steps else None,
        "sign": next((item for item in view.items if item.number), None),
    }


def _without_names(drawing: Markup) -> Markup:
    """Names of its own, so that a page may hold it beside another."""
    return Markup(re.sub(r"\bshaft-", "read-shaft-", drawing))
