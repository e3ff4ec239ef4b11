"""Invented curves of warming to learn on: a peak of fresh grease that settles, a climb that does not, a slow rise over weeks."""

from __future__ import annotations

from dataclasses import dataclass

from markupsafe import Markup

from generator.say import say
from generator.site.drawings.pen import Layout, Pen, both


@dataclass(frozen=True)
class Warming:
    """`points`: (time, degrees over the air); `across`: what the time axis is, with its last figure; `letter` of the curve."""

    letter: str
    points: tuple[tuple[float, float], ...]
    across: str


def curves() -> dict[str, Warming]:
    """The three of the training page; invented, of no machine."""
    hours = say("hours of running, 0 to 6")
    return {
        "A": Warming("A", ((0, 0), (0.5, 19), (1, 33), (1.5, 38), (2, 36), (3, 31), (4, 29), (5, 27), (6, 27)), hours),
        "B": Warming("B", ((0, 0), (0.5, 14), (1, 24), (2, 38), (3, 49), (4, 58), (5, 66), (6, 73)), hours),
        "C": Warming("C", ((0, 24), (4, 24), (8, 25), (12, 24), (16, 26), (20, 29), (24, 33), (28, 38)), say("weeks in service, 0 to 28")),
    }


def warming(data: Warming, name: str) -> Markup:
    """Both layouts."""
    return both(lambda layout: warming_for(data, name, layout))


def warming_for(data: Warming, name: str, layout: Layout) -> Markup:
    """The drawing for one layout."""
    pen = Pen(layout, name)
    left, right, top, foot, most = 60.0, layout.width - 20, 20.0, 220.0, 80.0
    last = data.points[-1][0]
    for degrees in (0, 20, 40, 60, 80):
        y = foot - degrees / most * (foot - top)
        pen.line(left, y, right, y, "grid")
        pen.text(left - 8, y + 7, str(degrees), "", "end")
    every = last / 6 if last <= 6 else last / 7
    for number in range(round(last / every) + 1):
        x = left + number * every / last * (right - left)
        pen.line(x, foot, x, foot + 6, "dim")
        pen.text(x, foot + 8 + layout.text, f"{number * every:g}", "", "middle")
    with pen.group("curve"):
        pen.path([(left + time / last * (right - left), foot - degrees / most * (foot - top)) for time, degrees in data.points], "mark")
    pen.text(left + 10, top + 30, data.letter, "letter")
    y = pen.lines(
        left, foot + 12 + layout.line, say("{across}; up: kelvin over the air beside it. Invented.", across=data.across), right - left
    )
    shape = ", ".join(say("{degrees} K at {time}", degrees=f"{degrees:g}", time=f"{time:g}") for time, degrees in data.points)
    return pen.svg(y + 4, say("Curve {letter} of the exercise, invented", letter=data.letter), shape)
