"""A heated ring on its seat: sensor on the inner ring, pushed to the shoulder and held; where the blade is tried when it is cold."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from markupsafe import Markup

from generator.say import say
from generator.site.drawings.panel import words_beside
from generator.site.drawings.pen import Layout, Pen, both

_AXIS, _SEAT, _HIGH = 176.0, 44.0, 70.0
_RING, _FACE = 132.0, 216.0  # from where to where the ring stands; the face is at the shoulder


@dataclass(frozen=True)
class Shoulder:
    """Set point, ceiling and blade as words, "" where withheld."""

    to: str
    ceiling: str
    blade: str


def shoulder(data: Shoulder, name: str) -> Markup:
    """Both layouts."""
    return both(lambda layout: shoulder_for(data, name, layout))


def shoulder_for(data: Shoulder, name: str, layout: Layout) -> Markup:
    """The drawing for one layout."""
    pen = Pen(layout, name)
    with pen.group("shoulder"):
        pen.rect(_FACE, _AXIS - _HIGH, 338, _AXIS + _HIGH, "part")
    pen.rect(14, _AXIS - _SEAT, _FACE, _AXIS + _SEAT, "part")
    pen.line(2, _AXIS, 348, _AXIS, "axis")
    for side in (-1, 1):
        with pen.group("inner ring"):
            pen.rect(_RING, _AXIS + side * _SEAT, _FACE, _AXIS + side * (_SEAT + 22), "part", "cut")
        with pen.group("outer ring"):
            pen.rect(_RING, _AXIS + side * 96, _FACE, _AXIS + side * 116, "part", "cut")
        pen.circle((_RING + _FACE) / 2, _AXIS + side * 81, 15, "part")
        with pen.group("push"):
            pen.arrow((52, _AXIS + side * (_SEAT + 11)), (_RING - 4, _AXIS + side * (_SEAT + 11)), "mark", 22)
    with pen.group("sensor"):
        pen.path([(86, 60), (_RING + 4, _AXIS - _SEAT - 14)], "edge")
        pen.circle(_RING + 6, _AXIS - _SEAT - 12, 6, "solid")
    pen.text(78, 54, say("sensor"), "bold", "middle")
    with pen.group("blade"):
        pen.line(_FACE, 40, _FACE, _AXIS - _SEAT - 4, "mark")
    pen.text(_FACE + 10, 54, say("blade"), "bold")
    said = list(_words(data))
    height = words_beside(pen, 302, said)
    return pen.svg(height, _title(data), " ".join(words for words, _ in said))


def _title(data: Shoulder) -> str:
    if data.to:
        return say("Heated to {to}, sensor on the inner ring, pushed to the shoulder and held", to=data.to)
    return say("No temperature to heat to: HELD")


def _words(data: Shoulder) -> Iterator[tuple[str, str]]:
    yield (say("Heat to {to}, sensor on the inner ring.", to=data.to) if data.to else say("No set point: HELD.")), "strong"
    if data.ceiling:
        yield say("Never over {ceiling}.", ceiling=data.ceiling), "bold"
    yield say("To the shoulder in one move. Hold it there until it grips: it shrinks away from the shoulder."), ""
    if data.blade:
        yield say("Cold: a blade of {blade} goes in nowhere between ring and shoulder, all round.", blade=data.blade), ""
