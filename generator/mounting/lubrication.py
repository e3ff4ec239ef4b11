"""The year's lubrication: every position of the plant, in whole weeks, levelled area by area, due from its last greasing on record."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import replace
from datetime import date
from itertools import groupby

from generator.calc.schedule import due_date, round_levelling
from generator.mounting.practice import practice
from generator.mounting.sheet import LubricationTask, MachineSheets, Sheet
from generator.plant.plant import Machine, Plant
from generator.say import say
from generator.value import Known, LookedUp, Need, Results, Rows, Value, Withheld

MINUTES = Value(5.0, "minute", LookedUp(None, "a stop of the round"))
ANY_WEEK = Value(0.0, "", LookedUp(None, "no greasing on record: any week"))


def lubrication_plan(plant: Plant, machines: Sequence[MachineSheets]) -> tuple[LubricationTask, ...]:
    """A task a position. Those not greased say why; nothing is left out in silence."""
    tasks = [_task(plant, machine.machine, sheet) for machine in machines for sheet in machine.sheets]
    planned = []
    for _, group in groupby(sorted(tasks, key=lambda t: (t.area, t.sheet.id)), key=lambda t: t.area):
        planned.extend(_levelled(list(group)))
    return tuple(planned)


def _task(plant: Plant, machine: Machine, sheet: Sheet) -> LubricationTask:
    area = str(machine.typed.area)
    when = sheet.number("grease_when")
    feed = sheet.lines.get("grease_feed")
    if feed is not None:
        return LubricationTask(sheet, area, "", None, None, None, None, why_not=feed.note or say("sealed for life: none"))
    held = _held(sheet)
    if held:
        return LubricationTask(sheet, area, str(when.content) if when else "", None, None, None, None, why_not=say("held: {why}", why=held))
    assert when is not None
    weeks, grams, strokes = sheet.number("round_weeks"), sheet.number("grease_dose"), sheet.number("grease_strokes")
    return LubricationTask(sheet, area, str(when.content), weeks, grams, strokes, _next(plant, sheet))


def _held(sheet: Sheet) -> str:
    for key in ("round_weeks", "grease_strokes", "grease_when"):
        value = sheet.value(key)
        if isinstance(value, Withheld):
            return value.why
        if value is None:
            return say("no bearing on file")
    return ""


def _next(plant: Plant, sheet: Sheet) -> Known:
    """The day it is due again, from its last greasing on record."""
    last = max((r for r in sheet.position.readings if r.quantity in ("grease given", "strokes given")), key=lambda r: r.when, default=None)
    if last is None:
        return Withheld(say("no greasing on record"), (Need("reading", sheet.id, say("grease given")),))
    runs = sheet.position.typed.runs
    if runs is None:
        return Withheld(say("how much the machine runs is not typed"))
    day = Value(last.day, "", last.value.reason)
    interval = sheet.number("grease_interval")
    return due_date.of(
        last=day, interval=interval, hours=runs.hours, days=runs.days, cap=sheet.number("round_weeks") or practice(plant, "calendar_cap")
    )  # type: ignore[no-any-return]


def _levelled(tasks: list[LubricationTask]) -> Iterator[LubricationTask]:
    due = [task for task in tasks if not task.why_not and task.every_weeks is not None]
    rows = Rows(tuple(Results(period=task.every_weeks, minutes=MINUTES, latest=_latest(task)) for task in due))
    starts = round_levelling.of(tasks=rows)
    first = dict(zip((task.sheet.id for task in due), starts, strict=True)) if not isinstance(starts, Withheld) else {}
    for task in tasks:
        if task.sheet.id not in first or task.every_weeks is None:
            yield task
            continue
        week, period = int(first[task.sheet.id]["week"].content), int(task.every_weeks.content)
        yield replace(task, weeks=tuple(range(week, 53, period)))


def _latest(task: LubricationTask) -> Value:
    """The latest week it may begin in: the week it is next due, folded into its period, so that no interval is stretched."""
    assert task.every_weeks is not None
    if not isinstance(task.next_due, Value):
        return ANY_WEEK
    period = int(task.every_weeks.content)
    week = date.fromisoformat(str(task.next_due.content)).isocalendar().week
    return Value(float((min(week, 52) - 1) % period + 1), "", task.next_due.reason)
