"""An eccentric collar, seen from its own side: it locks the way the shaft turns."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from markupsafe import Markup

from generator.say import say
from generator.site.drawings.panel import PICTURE, words_beside
from generator.site.drawings.pen import Layout, Pen, Point, around, both
from generator.site.drawings.strip import End, Turns
from generator.site.drawings.words import text_width

_CENTRE = (PICTURE / 2, 172.0)


@dataclass(frozen=True)
class Collar:
    """A collar toward one end of a shaft. `screw`: the torque of its set screw as the page shows it, or ""."""

    letter: str
    toward: End
    ends: tuple[str, str]
    turns: Turns
    screw: str = ""


def collar(one: Collar, name: str) -> Markup:
    """Both layouts."""
    return both(lambda layout: collar_for(one, name, layout))


def collar_for(one: Collar, name: str, layout: Layout) -> Markup:
    """The drawing for one layout. No arrow is drawn where no one way is the shaft's."""
    pen, end = Pen(layout, name), one.ends[0] if one.toward == "first" else one.ends[1]
    way = clockwise_from_collar(one)
    if way is None:
        pen.rect(2, 2, PICTURE, 74, "edge", "held")
        pen.rect(PICTURE / 2 - 74, 8, PICTURE / 2 + 74, 68, "blank")
        pen.text(PICTURE / 2, 48, say("HELD"), "strong", "middle")
        words = _no_way(one)
        return pen.svg(
            words_beside(pen, 80, [(words, "strong")]), say("{letter}: HELD, no way to lock the collar", letter=one.letter), words
        )
    _ring(pen, 1 if way else -1)
    _arrow(pen, 1 if way else -1)
    head = say("{letter}: clockwise", letter=one.letter) if way else say("{letter}: anticlockwise", letter=one.letter)
    lines = list(_words(one))
    y = words_beside(
        pen,
        336,
        [(head, "letter"), (say("Seen from the collar's side, from the {end}.", end=end), "strong"), *((line, "") for line in lines)],
    )
    title = (
        say("{letter}: the eccentric collar locks clockwise, seen from the {end}", letter=one.letter, end=end)
        if way
        else say("{letter}: the eccentric collar locks anticlockwise, seen from the {end}", letter=one.letter, end=end)
    )
    return pen.svg(y, title, " ".join(lines))


def clockwise_from_collar(one: Collar) -> bool | None:
    """Whether the shaft turns clockwise seen from the collar's side; None where it has no one way.

    Turning words look along from the first end; from the second end the same shaft turns the other way.
    """
    if one.turns not in ("clockwise", "anticlockwise"):
        return None
    return (one.turns == "clockwise") == (one.toward == "first")


def _no_way(one: Collar) -> str:
    if one.turns == "both ways":
        return say("The shaft turns both ways. An eccentric collar is not for it.")
    return say("It is not stated which way the shaft turns.")


def _words(one: Collar) -> Iterator[str]:
    yield say("Turn the collar the way the shaft turns until it binds. Then one firm tap on the drift, the same way.")
    if one.screw:
        yield say("Then the set screw: {torque}.", torque=one.screw)
    yield say("The eccentric is drawn larger than it is.")


def _ring(pen: Pen, way: int) -> None:
    off = around(_CENTRE, 12, way * 40)
    pen.circle(*_CENTRE, 108)
    pen.circle(*off, 80, "part", "cut")
    pen.circle(*_CENTRE, 60)
    for (x, y), reach in ((_CENTRE, 24), (off, 10)):
        pen.line(x - reach, y, x + reach, y)
        pen.line(x, y - reach, x, y + reach)
    _hole(pen, way * -140, 9, 92, "solid")
    _hole(pen, way * 150, 8, 62, "hidden")
    for words, angle, radius in ((say("drift hole"), -140, 122), (say("set screw"), 150, 122), (say("collar"), 100, 120)):
        x, y = around(_CENTRE, radius, way * angle)
        foot = y + (22 if abs(angle) > 120 else 7)
        long, right = text_width(words, pen.layout.text), x > _CENTRE[0]
        pen.text(min(x, PICTURE - long) if right else max(x, long), foot, words, "", "start" if right else "end")


def _hole(pen: Pen, angle: float, half: float, deep: float, kind: str) -> None:
    corners = [(107.0, -half), (deep, -half), (deep, half), (107.0, half)]
    pen.path([around(_CENTRE, radius, angle + aside / radius * 57.3) for radius, aside in corners], kind, closed=True)


def _arrow(pen: Pen, way: int) -> None:
    def at(angle: float) -> Point:
        return around(_CENTRE, 134, way * angle)

    with pen.group("turn"):
        pen.bend(at, -75, 70, size=26)
