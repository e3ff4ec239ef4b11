"""The rounds of a year, week by week, and the minutes of each week."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from markupsafe import Markup

from generator.say import say
from generator.site.drawings.pen import WIDE, Layout, Pen, both
from generator.site.drawings.words import wrap

WEEKS = 52


@dataclass(frozen=True)
class Round:
    """One round: its name, and its minutes in each week from 1 to 52."""

    words: str
    minutes: tuple[float, ...]


@dataclass(frozen=True)
class Year:
    """All rounds."""

    rounds: tuple[Round, ...]

    @property
    def load(self) -> tuple[float, ...]:
        """Minutes of each week, all rounds together."""
        return tuple(sum(one.minutes[week] for one in self.rounds) for week in range(WEEKS))


def year(data: Year, name: str) -> Markup:
    """Both layouts."""
    return both(lambda layout: year_for(data, name, layout), WIDE)


def year_for(data: Year, name: str, layout: Layout) -> Markup:
    """The drawing for one layout; the phone gets two half years, one under the other."""
    pen, y = Pen(layout, name), 0.0
    halves = ((0, 26), (26, WEEKS)) if layout.narrow else ((0, WEEKS),)
    for first, last in halves:
        y = _weeks(pen, data, first, last, y) + 12
    lines = list(_words(data))
    y = pen.lines(4, y, lines[0], layout.width - 8, "bold")
    y = pen.lines(
        4,
        y,
        say("The numbers are the weeks of the year. Bars of the rounds and of the sum each have a scale of their own."),
        layout.width - 8,
    )
    return pen.svg(y + 4, say("The rounds of a year by week"), " ".join(lines))


def _weeks(pen: Pen, data: Year, first: int, last: int, y: float) -> float:
    layout = pen.layout
    start = 4.0 if layout.narrow else 220.0
    week = (layout.width - start - 4) / (last - first)
    top = max([minutes for one in data.rounds for minutes in one.minutes] + [0]) or 1
    bars = [(one.words, one.minutes, top, 30.0, "dim", "cut") for one in data.rounds]
    bars.append((say("All together"), data.load, max(data.load) or 1, 80.0, "solid", ""))
    for words, minutes, most, high, kind, fill in bars:
        rows = len(wrap(words, layout.width - 8 if layout.narrow else start - 14, layout.text, bold=kind == "solid"))
        block = rows * layout.line
        pen.lines(
            4,
            y if layout.narrow else y + max(0, high + 8 - block),
            words,
            layout.width - 8 if layout.narrow else start - 14,
            "bold" if kind == "solid" else "",
        )
        base = y + block + high + 4 if layout.narrow else y + max(high + 8, block)
        for i in range(first, last):
            if minutes[i]:
                x = start + (i - first) * week
                pen.rect(x + 1.5, base, x + week - 1.5, base - minutes[i] / most * high, kind, fill)
        pen.line(start, base, layout.width - 4, base)
        y = base + 6
    for i in range(first, last, 4):
        pen.text(start + (i - first + 0.5) * week, y + layout.text, str(i + 1), "", "middle")
    return y + layout.line


def _words(data: Year) -> Iterator[str]:
    load = data.load
    if not any(load):
        yield say("No round in this year.")
        return
    weeks = [str(week) for week, minutes in enumerate(load, 1) if minutes == max(load)]
    most, mean = f"{max(load):.0f}", f"{sum(load) / WEEKS:.0f}"
    if len(weeks) == 1:
        yield say("Most in week {week}: {most} min. Mean of all weeks: {mean} min.", week=weeks[0], most=most, mean=mean)
    else:
        yield say(
            "Most in {count} weeks, the first of them week {week}: {most} min. Mean of all weeks: {mean} min.",
            count=len(weeks),
            week=weeks[0],
            most=most,
            mean=mean,
        )
    for one in data.rounds:
        yield say(
            "{round}: {weeks} weeks, {minutes} min in the year.",
            round=one.words,
            weeks=sum(1 for m in one.minutes if m),
            minutes=f"{sum(one.minutes):.0f}",
        )
