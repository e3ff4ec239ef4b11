"""Set screws of a ring, seen along the shaft: the order they are tightened in, one after the other and back to the first."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from markupsafe import Markup

from generator.say import say
from generator.site.drawings.panel import PICTURE, words_beside
from generator.site.drawings.pen import Layout, Pen, around, both, ring

_CENTRE = (PICTURE / 2, 150.0)


@dataclass(frozen=True)
class Screws:
    """`apart`: the angle from one to the next, degrees. `size` and `torque` as words, "" where withheld; `others`: another unit on the shaft."""

    count: int
    apart: float
    size: str
    torque: str
    others: bool = True


def screws(data: Screws, name: str) -> Markup:
    """Both layouts."""
    return both(lambda layout: screws_for(data, name, layout))


def screws_for(data: Screws, name: str, layout: Layout) -> Markup:
    """The drawing for one layout."""
    pen = Pen(layout, name)
    pen.circle(*_CENTRE, 98, "part", "cut")
    pen.circle(*_CENTRE, 52, "part")
    start = -data.apart * (data.count - 1) / 2
    places = [start + data.apart * i for i in range(data.count)]
    for number, angle in enumerate(places, 1):
        with pen.group(f"screw {number}"):
            pen.path([around(_CENTRE, radius, angle + aside / radius * 57.3) for radius, aside in ((102, -10), (53, -10), (53, 10), (102, 10))], "solid", closed=True)  # fmt: skip
        x, y = around(_CENTRE, 124, angle)
        pen.text(x, y + layout.strong * 0.36, str(number), "strong", "middle")
    for radius, one, other in [(78.0, a, b) for a, b in zip(places, places[1:], strict=False)] + (
        [(66.0, places[-1], places[0])] if data.count > 1 else []
    ):
        with pen.group("order"):
            toward = 1 if other > one else -1
            points = ring(_CENTRE, radius, one + toward * 12, other - toward * 12)
            pen.path(points[:-1], "mark")
            pen.head(points[-1], other - toward * 12 + (0 if toward > 0 else 180), 16, "mark-tip")
    said = list(_words(data))
    height = words_beside(pen, 262, said)
    return pen.svg(height, _title(data), " ".join(words for words, _ in said))


def _title(data: Screws) -> str:
    if not data.torque:
        return say("Set screws: no torque on file, HELD")
    return say("{count} set screws: each in turn to half, each to {torque}, then the first again", count=data.count, torque=data.torque)


def _words(data: Screws) -> Iterator[tuple[str, str]]:
    if data.size:
        yield data.size, "strong"
    if data.torque:
        yield say("Round 1: each in turn to about half."), "bold"
        yield say("Round 2: each in turn to {torque}.", torque=data.torque), "bold"
        yield say("Then the first once more: {torque}. None turns.", torque=data.torque), "bold"
    else:
        yield say("No torque on file: HELD."), "bold"
    if data.others:
        yield say("Screws of both units face the same way."), ""
