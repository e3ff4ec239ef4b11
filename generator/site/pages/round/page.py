"""A lubrication round an area: walking order, calendar weeks, gun, strokes and grams, running or stopped; and those not greased, with the reason."""

from collections import defaultdict
from typing import Any

from generator.mounting.sheet import LubricationTask, MountingStandard
from generator.show import shown


def round_view(standard: MountingStandard, code: str) -> dict[str, Any]:
    """What the template is given."""
    area = next(area for key, area in standard.plant.typed.areas.items() if str(key) == code)
    order = {machine.tag: number for number, machine in enumerate(standard.plant.in_area(code))}
    tasks = sorted(
        (t for t in standard.lubrication if t.area == code), key=lambda t: (order[t.sheet.position.tag], t.sheet.position.letter)
    )
    guns: dict[str, float] = defaultdict(float)
    for task in tasks:
        if task.grams is not None and task.sheet.position.gun:
            guns[task.sheet.position.gun.name] += task.grams.content
    return {
        "code": code,
        "name": str(area.name),
        "stops": [_stop(task) for task in tasks if not task.why_not],
        "skipped": [(t.sheet.id, t.why_not) for t in tasks if t.why_not],
        "guns": [{"name": name, "grease": _grease(standard, name), "grams": f"{grams:.0f}"} for name, grams in sorted(guns.items())],
        "year": standard.plant.on.isocalendar().year,
    }


def _grease(standard: MountingStandard, gun: str) -> str:
    tool = standard.plant.library.tools.get(gun)
    return str(tool.typed.grease) if tool and tool.typed.grease else ""


def _stop(task: LubricationTask) -> dict[str, Any]:
    position = task.sheet.position
    return {
        "id": task.sheet.id,
        "tag": position.tag,
        "letter": position.letter,
        "fitting": str(position.typed.fitting.place) if position.typed.fitting else "",
        "when": task.when,
        "gun": position.gun.name if position.gun else "",
        "grease": position.grease.name if position.grease else "",
        "strokes": shown(task.strokes).main if task.strokes else "",
        "grams": shown(task.grams).main if task.grams else "",
        "every": f"{task.every_weeks.content:g}" if task.every_weeks else "",
        "next": shown(task.next_due).main if task.next_due else "",
        "weeks": task.weeks,
    }
