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
        "A": Warming("A", ((0, 0), (0.5, 22), (1, 38), (1.5, 44), (2, 41), (3, 33), (4, 30), (5, 29), (6, 29)), hours),
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
    with pen.group("curve"):
        pen.path([(left + time / last * (right - left), foot - degrees / most * (foot - top)) for time, degrees in data.points], "mark")
    pen.text(left + 10, top + 30, data.letter, "letter")
    y = pen.lines(left, foot + 8, say("{across}; up: kelvin over the air beside it. Invented.", across=data.across), right - left)
    shape = ", ".join(say("{degrees} K at {time}", degrees=f"{degrees:g}", time=f"{time:g}") for time, degrees in data.points)
    return pen.svg(y + 4, say("Curve {letter} of the exercise", letter=data.letter), shape)
