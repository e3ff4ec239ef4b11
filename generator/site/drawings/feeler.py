"""Where the feeler goes on a bearing with rollers: over the unloaded ones, both rows, on the side free of load."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

from markupsafe import Markup

from generator.say import say
from generator.site.drawings.panel import words_beside
from generator.site.drawings.pen import Layout, Pen, around, both

Side = Literal["top", "bottom"]
_ROLLERS = 15
_CENTRE = (150.0, 152.0)
_OUTER, _RACE, _INNER, _SHAFT = 142.0, 118.0, 74.0, 50.0
_GAP = 9.0  # the clearance, drawn large


@dataclass(frozen=True)
class Feeler:
    """`side`: where the clearance is while it is read. `rows`: of rollers. `before`, `taken`, `after`: as words, "" where not known."""

    side: Side
    rows: int
    before: str
    taken: str
    after: str
    where: str


def feeler(data: Feeler, name: str) -> Markup:
    """Both layouts."""
    return both(lambda layout: feeler_for(data, name, layout))


def feeler_for(data: Feeler, name: str, layout: Layout) -> Markup:
    """The drawing for one layout: seen from the front, and the blade in both rows."""
    pen = Pen(layout, name)
    down = 1 if data.side == "bottom" else -1
    centre = (_CENTRE[0], _CENTRE[1] + down * _GAP / 2)  # the outer ring hangs or is pushed away
    with pen.group("outer ring"):
        pen.circle(*centre, _OUTER, "part", "cut")
        pen.circle(*centre, _RACE, "part")
    with pen.group("inner ring"):
        pen.circle(*_CENTRE, _INNER, "part", "across")
        pen.circle(*_CENTRE, _SHAFT, "part")
    radius = (_RACE - _INNER - _GAP / 2) / 2
    for i in range(_ROLLERS):
        pen.circle(*around(_CENTRE, _INNER + radius, i * 360 / _ROLLERS + (180 if data.side == "bottom" else 0)), radius, "part")
    edge = centre[1] + down * _RACE
    with pen.group("blade"):
        pen.path([(_CENTRE[0] - 58, edge - down * 5), (_CENTRE[0] + 150, edge - down * 5)], "mark")
    pen.text(_CENTRE[0] + 154, edge - down * 5 + 6, say("blade"), "bold")
    said = (
        (data.where, "bold"),
        (say("Both rows. Slide the blade along the roller; never roll it through.") if data.rows == 2 else say("Slide the blade along the roller; never roll it through."), ""),
        (say("Before: {before}", before=data.before) if data.before else "", ""),
        (say("To be taken: {taken}", taken=data.taken) if data.taken else "", ""),
        (say("Left: never under {after}", after=data.after) if data.after else "", ""),
        (say("The clearance is drawn much larger than it is."), ""),
    )  # fmt: skip
    height = words_beside(pen, 306, said)
    title = say("Feeler at the bottom, where the outer ring hangs free of the rollers") if data.side == "bottom" else say("Feeler at the top, where no roller bears")  # fmt: skip
    return pen.svg(height, title, " ".join(words for words, _ in said if words))
