"""Where a seat is measured: three places along it, three directions each, and the limits every reading is held against."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from markupsafe import Markup

from generator.say import say
from generator.site.drawings.panel import words_beside
from generator.site.drawings.pen import Layout, Pen, around, both

DIRECTIONS = (("a", 0.0), ("b", 60.0), ("c", 120.0))
_LEFT, _RIGHT, _AXIS = 46.0, 196.0, 112.0
_CENTRE = (282.0, _AXIS)


@dataclass(frozen=True)
class ReadingPlaces:
    """`least`, `most` and `spread`, the greatest difference, as words, "" where withheld. Place 1 is the nearest to the first end."""

    least: str
    most: str
    spread: str
    ends: tuple[str, str]
    first_left: bool = True


def reading_places(data: ReadingPlaces, name: str) -> Markup:
    """Both layouts."""
    return both(lambda layout: reading_places_for(data, name, layout))


def reading_places_for(data: ReadingPlaces, name: str, layout: Layout) -> Markup:
    """The drawing for one layout: the seat from the side, and one place of it seen along the shaft."""
    pen = Pen(layout, name)
    pen.rect(4, _AXIS - 36, _LEFT, _AXIS + 36, "part")
    pen.rect(_RIGHT, _AXIS - 36, 214, _AXIS + 36, "part")
    with pen.group("seat"):
        pen.rect(_LEFT, _AXIS - 48, _RIGHT, _AXIS + 48, "part")
    pen.line(0, _AXIS, 222, _AXIS, "axis")
    places = (_LEFT + 15, (_LEFT + _RIGHT) / 2, _RIGHT - 15)
    for number, x in zip("123", places if data.first_left else places[::-1], strict=True):
        with pen.group(f"place {number}"):
            pen.arrow((x, _AXIS - 78), (x, _AXIS - 48), "mark", 16)
            pen.arrow((x, _AXIS + 78), (x, _AXIS + 48), "mark", 16)
        pen.text(x, _AXIS - 84, number, "strong", "middle")
    with pen.group("section"):
        pen.circle(*_CENTRE, 40, "part", "cut")
    for letter, angle in DIRECTIONS:
        with pen.group(f"direction {letter}"):
            for way in (angle, angle + 180):
                pen.arrow(around(_CENTRE, 62, way), around(_CENTRE, 40, way), "mark", 14)
        x, y = around(_CENTRE, 64, angle)
        pen.text(x, y + (-4 if angle == 0 else 6 if angle < 90 else 16), letter, "strong", "middle" if angle == 0 else "start")
    said = list(_words(data))
    height = words_beside(pen, 204, said)
    return pen.svg(height, _title(data), " ".join(words for words, _ in said))


def _title(data: ReadingPlaces) -> str:
    if data.least and data.most:
        return say(
            "Seat measured nine times, three places by three directions: each from {least} to {most}", least=data.least, most=data.most
        )
    return say("Seat measured nine times, three places by three directions; no limits: HELD")


def _words(data: ReadingPlaces) -> Iterator[tuple[str, str]]:
    if data.least and data.most:
        yield say("Most {size}", size=data.most), "strong"
        yield say("Least {size}", size=data.least), "strong"
    else:
        yield say("No limits: HELD."), "strong"
    if data.spread:
        yield say("Apart from one another by {spread} at most.", spread=data.spread), "bold"
    yield say("Places: 1 just inside the edge toward the {one}, 2 in the middle, 3 just inside the other.", one=data.ends[0]), ""
    yield say("Directions: a, then b and c, the micrometer turned on by 60° each time."), ""
    yield say("Shaft and micrometer near 20 °C."), ""
