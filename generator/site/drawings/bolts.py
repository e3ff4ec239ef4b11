"""The order in which the bolts of a housing are tightened, seen on the bolt heads."""

from __future__ import annotations

from dataclasses import dataclass
from math import hypot
from typing import Literal

from markupsafe import Markup

from generator.say import say
from generator.site.drawings.panel import PICTURE, words_beside
from generator.site.drawings.pen import Layout, Pen, Point, around, both

_CENTRE = (PICTURE / 2, 140.0)
# in the order they are tightened; four go crosswise
ORDER: dict[int, tuple[Point, ...]] = {
    2: ((-104, 0), (104, 0)),
    3: ((0, -100), (87, 50), (-87, 50)),
    4: ((-86, -80), (86, 80), (86, -80), (-86, 80)),
}


@dataclass(frozen=True)
class Bolts:
    """`size` and the torque of each round as the page shows them."""

    count: Literal[2, 3, 4]
    size: str
    rounds: tuple[str, ...]


def bolts(data: Bolts, name: str) -> Markup:
    """Both layouts."""
    return both(lambda layout: bolts_for(data, name, layout))


def bolts_for(data: Bolts, name: str, layout: Layout) -> Markup:
    """The drawing for one layout."""
    pen, (cx, cy) = Pen(layout, name), _CENTRE
    places = [(cx + x, cy + y) for x, y in ORDER[data.count]]
    _housing(pen, data.count)
    for one, other in zip(places, places[1:], strict=False):
        with pen.group("order"):
            _path(pen, one, other, aside=58 if data.count == 2 else 0)
    for number, (x, y) in enumerate(places, 1):
        pen.path([around((x, y), 26, 30 + 60 * i) for i in range(6)], "part", closed=True)
        pen.text(x, y + layout.strong * 0.36, str(number), "strong", "middle")
    said = [say("Round {number}: {torque}, in this order.", number=i, torque=torque) for i, torque in enumerate(data.rounds, 1)]
    last = say("Then once more round at the same torque: none turns.")
    y = words_beside(pen, 200 if data.count == 2 else 282, [(data.size, "strong"), *((line, "bold") for line in said), (last, "")])
    return pen.svg(y, say("{count} bolts {size}, the order of tightening", count=data.count, size=data.size), " ".join([*said, last]))


def _housing(pen: Pen, count: int) -> None:
    (x, y) = _CENTRE
    if count == 2:
        pen.rect(x - 148, y - 42, x + 148, y + 42)
    elif count == 3:
        pen.circle(x, y, 134)
    else:
        pen.rect(x - 126, y - 122, x + 126, y + 122)
    pen.circle(x, y, 44)
    pen.circle(x, y, 25)


def _path(pen: Pen, one: Point, other: Point, aside: float) -> None:
    """From one bolt to the next; with two, around the bearing."""
    long = hypot(other[0] - one[0], other[1] - one[1])
    ux, uy = (other[0] - one[0]) / long, (other[1] - one[1]) / long
    if not aside:
        pen.arrow((one[0] + ux * 28, one[1] + uy * 28), (other[0] - ux * 28, other[1] - uy * 28), "mark", 18)
        return
    y = one[1] - aside - 4
    pen.path([(one[0], one[1] - 26), (one[0], y), (other[0], y)], "mark")
    pen.arrow((other[0], y), (other[0], other[1] - 28), "mark", 18)
