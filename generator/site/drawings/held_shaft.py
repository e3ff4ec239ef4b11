"""Where jack or sling stands while a unit is off, to the scale of the shaft, and what it carries."""

from __future__ import annotations

from dataclasses import dataclass

from markupsafe import Markup

from generator.say import say
from generator.site.drawings.pen import Layout, Pen, both
from generator.site.drawings.words import apart, text_width


@dataclass(frozen=True)
class HeldShaft:
    """`length` in mm; `supports`: letter and place of those that stay; `off`: of the one that is off; `jack`: its place; figures as words."""

    length: float
    supports: tuple[tuple[str, float], ...]
    off: tuple[str, float]
    jack: float
    carries: str
    rated: str
    first_left: bool
    ends: tuple[str, str]


def held_shaft(data: HeldShaft, name: str) -> Markup:
    """Both layouts."""
    return both(lambda layout: held_shaft_for(data, name, layout))


def held_shaft_for(data: HeldShaft, name: str, layout: Layout) -> Markup:
    """The drawing for one layout."""
    pen = Pen(layout, name)
    left, right = 30.0, layout.width - 30.0

    def x(place: float) -> float:
        part = place / data.length
        return left + (part if data.first_left else 1 - part) * (right - left)

    pen.rect(left, 76, right, 100, "part")
    pen.path([(left - 20, 88), (right + 20, 88)], "axis")
    for letter, place in data.supports:
        with pen.group(f"support {letter}"):
            pen.path([(x(place) - 12, 100), (x(place) + 12, 100), (x(place) + 22, 140), (x(place) - 22, 140)], "solid", closed=True)
    with pen.group("jack"):
        pen.arrow((x(data.jack), 150), (x(data.jack), 104), "mark", 20)
    labels = sorted([*data.supports, data.off], key=lambda one: x(one[1]))
    centres = apart([(x(place), 30) for _, place in labels], left - 20, right + 20)
    for (letter, _), centre in zip(labels, centres, strict=True):
        pen.text(centre, 62, letter, "strong", "middle")
    with pen.group(f"off {data.off[0]}"):
        pen.rect(x(data.off[1]) - 16, 66, x(data.off[1]) + 16, 110, "hidden")
    words = say("carries {load}, rated {rating} or more", load=data.carries, rating=data.rated)
    room = text_width(words, layout.size("bold"), bold=True)
    y = pen.lines(min(max(left - 26, x(data.jack) - room / 2), max(left - 26, right + 26 - room)), 152, words, layout.width - 8, "bold")
    first, second = data.ends if data.first_left else (data.ends[1], data.ends[0])
    pen.text(left - 26, y + 20, first)
    pen.text(right + 26, y + 20, second, "", "end")
    title = say("Jack or sling beside {letter} while it is off: it carries {load}", letter=data.off[0], load=data.carries)
    return pen.svg(y + 28, title, words)
