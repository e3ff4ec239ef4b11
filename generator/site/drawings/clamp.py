"""A clamp collar seen along the shaft: its split stands over a slot of the ring, and a gap is left in it when the screw is tight."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from markupsafe import Markup

from generator.say import say
from generator.site.drawings.panel import PICTURE, words_beside
from generator.site.drawings.pen import Layout, Pen, around, both, ring

_CENTRE = (PICTURE / 2, 166.0)
_SPLIT, _SLOTS = 5.0, 4  # half the split in degrees; slots of the ring


@dataclass(frozen=True)
class Clamp:
    """`torque` of its one screw as words, "" where withheld. `toward`: the end of the shaft it is seen from, "" where not typed."""

    torque: str
    toward: str = ""


def clamp(data: Clamp, name: str) -> Markup:
    """Both layouts."""
    return both(lambda layout: clamp_for(data, name, layout))


def clamp_for(data: Clamp, name: str, layout: Layout) -> Markup:
    """The drawing for one layout."""
    pen = Pen(layout, name)
    with pen.group("collar"):
        pen.path([*ring(_CENTRE, 112, _SPLIT, 360 - _SPLIT), *ring(_CENTRE, 76, 360 - _SPLIT, _SPLIT)], "part", closed=True, fill="cut")
    with pen.group("ring"):
        pen.circle(*_CENTRE, 74, "part")
        pen.circle(*_CENTRE, 56, "part")
        for i in range(_SLOTS):
            with pen.group("slot"):
                angle = 360 * i / _SLOTS
                pen.path([around(_CENTRE, radius, angle + side * 3.2) for radius, side in ((74, -1), (56, -1), (56, 1), (74, 1))], "solid", closed=True)  # fmt: skip
    with pen.group("screw"):
        x, y = _CENTRE
        pen.rect(x - 62, y - 101, x + 62, y - 89, "part")
        pen.rect(x + 62, y - 105, x + 78, y - 85, "solid")
        pen.arrow((x + 122, y - 95), (x + 82, y - 95), "mark", 18)
    with pen.group("split"):
        pen.line(x, y - 150, x, y - 116, "mark")
    pen.text(x + 8, y - 134, say("split"), "bold")
    said = list(_words(data))
    height = words_beside(pen, 288, said)
    title = say("Clamp collar: split over a slot of the ring, screw to {torque}, a gap left", torque=data.torque) if data.torque else say("Clamp collar: no torque on file, HELD")  # fmt: skip
    return pen.svg(height, title, " ".join(one for one, _ in said))


def _words(data: Clamp) -> Iterator[tuple[str, str]]:
    if data.torque:
        yield say("Screw torque {torque}.", torque=data.torque), "strong"
        yield say("In one steady pull, then once more: it does not turn."), "bold"
    else:
        yield say("No torque on file: HELD."), "strong"
    yield say("Collar hard against its shoulder. Its split stands over a slot of the ring, as the maker shows."), ""
    yield say("A gap stays in the split. Closed: stop."), "bold"
    if data.toward:
        yield say("Seen from the collar's side, from the {end}.", end=data.toward), ""
