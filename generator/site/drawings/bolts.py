"""The order in which the bolts of a housing are tightened, seen on the bolt heads."""

from __future__ import annotations

from dataclasses import dataclass
from math import hypot
from typing import Literal

from markupsafe import Markup

from generator.say import say
from generator.site.drawings.panel import PICTURE, words_beside
from generator.site.drawings.pen import Layout, Pen, Point, around, both

# in the order they are tightened; four go crosswise
ORDER: dict[int, tuple[Point, ...]] = {
    2: ((-104, 0), (104, 0)),
    3: ((0, -100), (87, 50), (-87, 50)),
    4: ((-86, -80), (86, 80), (86, -80), (-86, 80)),
}


@dataclass(frozen=True)
class Bolts:
    """`size` and the torque of each round as the page shows them. `foot`: a housing on a foot, seen from above; else a flange."""

    count: Literal[2, 3, 4]
    size: str
    rounds: tuple[str, ...]
    foot: bool = False


def bolts(data: Bolts, name: str) -> Markup:
    """Both layouts."""
    return both(lambda layout: bolts_for(data, name, layout))


def bolts_for(data: Bolts, name: str, layout: Layout) -> Markup:
    """The drawing for one layout."""
    pen, (cx, cy) = Pen(layout, name), _centre(data)
    places = [(cx + x, cy + y) for x, y in ORDER[data.count]]
    _housing(pen, data)
    for one, other in zip(places, places[1:], strict=False):
        with pen.group("order"):
            _path(pen, one, other, aside=58 if data.count == 2 else 0)
    for number, (x, y) in enumerate(places, 1):
        with pen.group(f"bolt {number}"):
            pen.path([around((x, y), 26, 30 + 60 * i) for i in range(6)], "part", closed=True)
        pen.text(x, y + layout.strong * 0.36, str(number), "strong", "middle")
    said = [say("Round {number}: {torque}, in this order.", number=i, torque=torque) for i, torque in enumerate(data.rounds, 1)]
    last = say("Then once more round at the same torque: none turns.")
    seen = say("Seen from above.") if data.foot else ""
    words = [(data.size, "strong"), *((line, "bold") for line in said), (last, ""), (seen, "")]
    y = words_beside(pen, 162 if data.count == 2 else 282, words)
    return pen.svg(y, _title(data), " ".join([data.size, *said, last]))


def _title(data: Bolts) -> str:
    torque = data.rounds[-1] if data.rounds else ""
    if data.count == 4:
        return say("4 bolts {size}, tightened crosswise, to {torque} in the last round", size=data.size, torque=torque)
    return say("{count} bolts {size}, tightened in turn, to {torque} in the last round", count=data.count, size=data.size, torque=torque)


def _centre(data: Bolts) -> Point:
    return PICTURE / 2, 96.0 if data.count == 2 else 140.0


def _housing(pen: Pen, data: Bolts) -> None:
    (x, y), count = _centre(data), data.count
    if count == 2:
        pen.rect(x - 148, y - 42, x + 148, y + 42)
    elif count == 3:
        pen.circle(x, y, 134)
    else:
        pen.rect(x - 126, y - 122, x + 126, y + 122)
    if data.foot:
        over = 56 if count == 2 else 134
        with pen.group("shaft from above"):
            pen.rect(x - 20, y - over, x + 20, y + over)
        pen.rect(x - 52, y - 36, x + 52, y + 36)
        pen.line(x, y - over - 6, x, y + over + 6, "axis")
        return
    pen.circle(x, y, 44)
    pen.circle(x, y, 25)


def _path(pen: Pen, one: Point, other: Point, aside: float) -> None:
    """From one bolt to the next; with two, around the bearing."""
    long = hypot(other[0] - one[0], other[1] - one[1])
    ux, uy = (other[0] - one[0]) / long, (other[1] - one[1]) / long
    if not aside:
        pen.arrow((one[0] + ux * 28, one[1] + uy * 28), (other[0] - ux * 28, other[1] - uy * 28), "mark", 18)
        return
    y = one[1] - aside - 8
    pen.path([(one[0], one[1] - 26), (one[0], y), (other[0], y)], "mark")
    pen.arrow((other[0], y), (other[0], other[1] - 28), "mark", 18)
