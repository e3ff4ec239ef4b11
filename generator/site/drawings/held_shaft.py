"""Where jack or sling stands while a unit is off, to the scale of the shaft, and what it carries."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import dataclass
from typing import Literal

from markupsafe import Markup

from generator.say import say
from generator.site.drawings.panel import PICTURE, words_beside
from generator.site.drawings.pen import Layout, Pen, both
from generator.site.drawings.words import apart, text_width

_THICK = 44.0
_AXIS = 78.0


@dataclass(frozen=True)
class HeldShaft:
    """`sections`: up to where and how thick, mm. `supports`: letter and place of those that stay; `off`: of the one that is off.

    `jack`: its place; `place`: the same as words, "" where it is the bearing's own. `lifts`: where the shaft goes up and not down,
    at the "other" support or "here"; `carries` is then what holds it down. `carries` "" of an upright shaft: its weight stays on the other unit.
    """

    sections: tuple[tuple[float, float], ...]
    supports: tuple[tuple[str, float], ...]
    off: tuple[str, float]
    jack: float
    carries: str
    rated: str
    ends: tuple[str, str]
    place: str = ""
    first_left: bool = True
    lifts: Literal["", "here", "other"] = ""
    upright: bool = False


def held_shaft(data: HeldShaft, name: str) -> Markup:
    """Both layouts."""
    return both(lambda layout: held_shaft_for(data, name, layout))


def held_shaft_for(data: HeldShaft, name: str, layout: Layout) -> Markup:
    """The drawing for one layout."""
    pen = Pen(layout, name)
    height = _hung(pen, data) if data.upright else _lying(pen, data)
    return pen.svg(height, _title(data), " ".join(words for words, _ in _words(data)))


def _title(data: HeldShaft) -> str:
    letter, load = data.off[0], data.carries
    if data.upright and load:
        return say("The shaft hung in a sling while {letter} is off: it carries {load}", letter=letter, load=load)
    if data.upright:
        return say("The shaft steadied sideways while {letter} is off: its weight stays on the other unit", letter=letter)
    if data.lifts == "here":
        return say("While {letter} is off the shaft goes up there: held down with {load}", letter=letter, load=load)
    return say(
        "Jack or sling while {letter} is off: it carries {load}, rated {rating} or more", letter=letter, load=load, rating=data.rated
    )


def _words(data: HeldShaft) -> Iterator[tuple[str, str]]:
    letter = data.off[0]
    if data.lifts == "here":
        yield (
            say("The shaft goes up at {letter}, with {load}: hold it down there, or hang its heavy end.", letter=letter, load=data.carries),
            "bold",
        )
        yield say("A jack from below does not hold it."), "bold"
    elif data.carries:
        yield say("It carries {load}. Rated {rating} or more.", load=data.carries, rating=data.rated), "bold"
    if data.lifts == "other":
        yield say("The shaft tips: hold the other end down first."), "bold"
    if data.upright and data.carries:
        yield say("All that hangs on {letter} hangs in the sling while it is off.", letter=letter), ""
    elif data.upright:
        yield say("Steady it sideways with a sling. Its weight stays on the other unit."), "bold"
    elif data.lifts != "here" and data.place:
        yield say("It stands {place} from the face of the {end}.", place=data.place, end=data.ends[0]), ""
    elif data.lifts != "here":
        yield say("Worked out for {letter} itself: stand it as near to {letter} as can be.", letter=letter), ""
    yield (say("The {end} is above.", end=data.ends[0]) if data.upright else say("Places along the shaft are drawn to scale.")), ""


def _lying(pen: Pen, data: HeldShaft) -> float:
    """The shaft as it lies, feet under what stays, the jack's arrow from below."""
    layout, length = pen.layout, data.sections[-1][0]
    left, right = 22.0, layout.width - 22.0

    def x(place: float) -> float:
        part = min(max(place / length, 0), 1)
        return left + (part if data.first_left else 1 - part) * (right - left)

    y = max(
        pen.lines(4, 0, _left(data), layout.width / 2 - 10, "bold"),
        pen.lines(layout.width - 4, 0, _right(data), layout.width / 2 - 10, "bold", "end"),
    )
    axis, per_mm = y + _AXIS, _THICK / max(thick for _, thick in data.sections)
    with pen.group("shaft"):
        start = 0.0
        for to, thick in data.sections:
            pen.rect(x(start), axis - thick * per_mm / 2, x(to), axis + thick * per_mm / 2, "part")
            start = to
    pen.line(left - 18, axis, right + 18, axis, "axis")
    for letter, place in data.supports:
        with pen.group(f"support {letter}"):
            foot = [(-10, 24), (10, 24), (18, 66), (-18, 66)]
            pen.path([(x(place) + u, axis + v) for u, v in foot], "solid", closed=True)
    with pen.group(f"off {data.off[0]}"):
        pen.rect(x(data.off[1]) - 15, axis - 34, x(data.off[1]) + 15, axis + 34, "hidden")
    labels = sorted([*data.supports, data.off], key=lambda one: x(one[1]))
    centres = apart([(x(place), text_width(letter, layout.strong, bold=True) + 12) for letter, place in labels], 2, layout.width - 2)
    for (letter, _), centre in zip(labels, centres, strict=True):
        pen.text(centre, axis - 44, letter, "strong", "middle")
    _force(pen, data, x, axis)
    y = axis + 90
    for words, kind in _words(data):
        y = pen.lines(4, y, words, layout.width - 8, kind) + 2
    return y + 4


def _force(pen: Pen, data: HeldShaft, x: Callable[[float], float], axis: float) -> None:
    """The jack's arrow from below, or what holds the shaft down."""
    if data.lifts == "here":
        with pen.group("hold down"):
            pen.arrow((x(data.jack), axis + 28), (x(data.jack), axis + 76), "mark", 24)
    else:
        with pen.group("jack"):
            pen.arrow((x(data.jack), axis + 70), (x(data.jack), axis + 25), "mark", 24)
            pen.rect(x(data.jack) - 20, axis + 70, x(data.jack) + 20, axis + 80, "mark-tip")
    if data.lifts == "other" and len(data.supports) == 1:
        with pen.group("hold down"):
            pen.arrow((x(data.supports[0][1]) + 30, axis + 26), (x(data.supports[0][1]) + 30, axis + 72), "mark", 20)


def _left(data: HeldShaft) -> str:
    return data.ends[0] if data.first_left else data.ends[1]


def _right(data: HeldShaft) -> str:
    return data.ends[1] if data.first_left else data.ends[0]


def _hung(pen: Pen, data: HeldShaft) -> float:
    """An upright shaft, its first end above, in a sling."""
    length, per_mm = data.sections[-1][0], _THICK / max(thick for _, thick in data.sections)
    top, middle, long = 84.0, PICTURE / 2, 200.0
    with pen.group("shaft"):
        start = 0.0
        for to, thick in data.sections:
            pen.rect(
                middle - thick * per_mm / 2, top + start / length * long, middle + thick * per_mm / 2, top + to / length * long, "part"
            )
            start = to
    pen.line(middle, top - 12, middle, top + long + 12, "axis")
    for letter, place in (*data.supports, data.off):
        y = top + place / length * long
        with pen.group(f"off {letter}" if letter == data.off[0] else f"support {letter}"):
            for side in (-1, 1):
                pen.rect(middle + side * 26, y - 12, middle + side * 60, y + 12, "hidden" if letter == data.off[0] else "solid")
        pen.text(middle + 72, y + 8, letter, "strong")
    with pen.group("jack" if data.carries else "steady"):
        if data.carries:
            pen.path([(middle - 22, top + 14), (middle, 44), (middle + 22, top + 14)], "edge")
            pen.arrow((middle, 44), (middle, 4), "mark", 22)
        else:
            for side in (-1, 1):
                pen.arrow((middle + side * 26, top + long / 2), (middle + side * 110, top + long / 2), "mark", 18)
    return words_beside(pen, top + long + 18, _words(data))
