"""The lubrication plan: when a position is due, and rounds that share the work out over the year."""

from datetime import date, timedelta
from math import floor
from typing import Annotated, NamedTuple

from generator.method import Is, Refused, method
from generator.say import say

PERIODS = (1, 2, 4, 8, 13, 26, 52)


@method(r"\mathrm{due} = \mathrm{last} + \left\lfloor \frac{7\,t}{h\,d} \right\rfloor \; \mathrm{days}", None)
def due_date(
    last: str,
    interval: Annotated[float, Is("time between greasings, running", "t", "hour", 0, 10_000_000)],
    hours: Annotated[float, Is("hours run in a day", "h", "hour/day", 0.01, 24)],
    days: Annotated[float, Is("days run in a week", "d", "day/week", 0.01, 7)],
    cap: Annotated[float, Is("longest time that is allowed", r"w_{\max}", "week", 1, 520)] = 52.0,
) -> str:
    """The day a position is due again
    Rounded down to whole days; a calendar cap cuts it."""
    try:
        start = date.fromisoformat(last[:10])
    except ValueError:
        raise Refused(say("{text} is no day", text=last)) from None
    return (start + timedelta(days=min(floor(interval / (hours * days / 7) + 1e-9), floor(cap * 7)))).isoformat()


class Period(NamedTuple):
    weeks: Annotated[float, Is("weeks between rounds", "w", "week")]
    grease: Annotated[float, Is("grease at each", "G_w", "g")]


@method(r"w = \max \{1, 2, 4, 8, 13, 26, 52\} \leq w_t, \quad G_w = G\,\frac{w}{w_t}", None)
def round_period(
    weeks: Annotated[float, Is("time between greasings, calendar", "w_t", "week", 0, 520)],
    grease: Annotated[float, Is("grease at each greasing", "G", "g", 0, 100_000)],
    shortened: Annotated[float, Is("the same, where the calendar cap did not cut it", "w_u", "week", 0, 1e9)] = 0.0,
) -> Period:
    """The round a position belongs to, in whole weeks
    The greatest period that is not longer than computed.
    Grams go down only for what this rounding shortens itself, never for the calendar cap."""
    if weeks < 1 - 1e-9:
        raise Refused(say("more often than weekly: an automatic feeder, or another grease"))
    period = max(p for p in PERIODS if p <= weeks + 1e-9)
    capped = shortened > weeks + 1e-9
    return Period(float(period), grease if capped and period == 52 else grease * period / weeks)


class Task(NamedTuple):
    period: Annotated[float, Is("weeks between rounds", "w", "week", 1, 52)]
    minutes: Annotated[float, Is("minutes it takes", "m", "minute", 0, 10_000)]
    latest: Annotated[float, Is("latest week it may begin in (0: any)", "l", "", 0, 52)]


class Start(NamedTuple):
    week: Annotated[float, Is("first week", "w_1")]
    peak: Annotated[float, Is("fullest week of the year so far", r"\max", "minute")]


@method(r"\min_{w_1} \max_{w} \sum m", None)
def round_levelling(tasks: tuple[Task, ...]) -> tuple[Start, ...]:
    """First weeks that share the year's work out evenly
    Tasks with most minutes a year choose first: the week with the least resulting peak, then the least sum, then the earliest.
    Rows come in the order of the tasks; the same tasks give the same weeks."""
    load = [0.0] * 52
    order = sorted(range(len(tasks)), key=lambda i: (-tasks[i].minutes * 52 / tasks[i].period, i))
    starts: dict[int, Start] = {}
    for i in order:
        task = tasks[i]
        period = int(task.period)
        last = min(period, int(task.latest)) if task.latest else period
        best = min(range(1, max(1, last) + 1), key=lambda w: _cost(load, w, period, task.minutes))
        for week in range(best, 53, period):
            load[week - 1] += task.minutes
        starts[i] = Start(float(best), max(load))
    return tuple(starts[i] for i in range(len(tasks)))


def _cost(load: list[float], first: int, period: int, minutes: float) -> tuple[float, float, int]:
    weeks = [load[week - 1] + minutes for week in range(first, 53, period)]
    return max([*load, *weeks]), sum(weeks), first
