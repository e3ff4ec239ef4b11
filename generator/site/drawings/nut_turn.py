"""The turn of a lock nut, seen from the nut's side: how far from the mark set hand tight, and which way."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from math import asin, degrees
from typing import Literal

from markupsafe import Markup

from generator.say import say
from generator.site.drawings.panel import PICTURE, words_beside
from generator.site.drawings.pen import Layout, Pen, Point, around, both, ring
from generator.site.drawings.words import wrap

_CENTRE = (PICTURE / 2, 176.0)
_RIM = 98.0
_FIRST = 14.0  # from the rim to the arc
_WIND = 12.0  # how far it winds out in a turn


@dataclass(frozen=True)
class NutTurn:
    """Turns from hand tight, least and most. `words` the turn as the page shows it, `counted` the same in slots and degrees.

    `guide`: the turn only guides, and a blade decides.
    """

    slots: int
    least: float
    most: float
    words: str
    counted: str = ""
    hand: Literal["right", "left"] = "right"
    guide: bool = False


def nut_turn(turn: NutTurn, name: str) -> Markup:
    """Both layouts."""
    return both(lambda layout: nut_turn_for(turn, name, layout))


def nut_turn_for(turn: NutTurn, name: str, layout: Layout) -> Markup:
    """The drawing for one layout."""
    pen, way = Pen(layout, name), 1 if turn.hand == "right" else -1
    _nut(pen, turn.slots)
    _band(pen, turn, way)
    _slot_numbers(pen, turn, way)
    title = _title(turn)
    y = words_beside(pen, 352, [(turn.words, "letter"), (turn.counted, "strong"), *_words(turn)])
    return pen.svg(y, title, " ".join(words for words, _ in _words(turn)))


def _title(turn: NutTurn) -> str:
    if turn.hand == "right":
        return say("Lock nut seen from its own side: {turn} clockwise from the hand-tight mark", turn=turn.words)
    return say("Lock nut seen from its own side: {turn} anticlockwise from the hand-tight mark", turn=turn.words)


def _words(turn: NutTurn) -> Iterator[tuple[str, str]]:
    if turn.guide:
        yield say("A guide only: the blade decides."), "bold"
    if turn.hand == "right":
        yield say("Right-hand thread: clockwise, seen from the nut side."), "bold"
    else:
        yield say("Left-hand thread: anticlockwise, seen from the nut side."), "bold"
    yield say("The nut has {slots} slots.", slots=turn.slots), ""
    if turn.most > turn.least:
        yield say("Open mark: hand tight, in line with the sleeve slot. Filled: the same mark after the least and after the most turn."), ""
        yield say("Hatched: from the least to the most turn."), ""
    else:
        yield say("Open mark: hand tight, in line with the sleeve slot. Filled mark: the same mark after the turn."), ""


def _nut(pen: Pen, slots: int) -> None:
    half = min(degrees(asin(11 / _RIM)), 75 / slots)
    outline: list[Point] = []
    for i in range(slots):
        middle = 360 * i / slots
        outline += [around(_CENTRE, radius, middle + side * half) for radius, side in ((_RIM, -1), (_RIM - 15, -1), (_RIM - 15, 1))]
        outline += ring(_CENTRE, _RIM, middle + half, middle + 360 / slots - half)
    with pen.group("nut"):
        pen.path(outline, "part", closed=True)
    pen.circle(*_CENTRE, 62)
    pen.circle(*_CENTRE, 46)
    with pen.group("sleeve slot"):
        pen.rect(_CENTRE[0] - 5, _CENTRE[1] - 62, _CENTRE[0] + 5, _CENTRE[1] - 44, "solid")
    size = pen.layout.text
    for i, row in enumerate(wrap(say("sleeve slot"), 84, size)):
        pen.text(_CENTRE[0], _CENTRE[1] - 44 + (i + 1) * size * 1.15, row, "", "middle")


def _band(pen: Pen, turn: NutTurn, way: int) -> None:
    """The arc winds outward, so that a second turn can be told from the first."""

    def at(angle: float, out: float = 0) -> Point:
        return around(_CENTRE, _RIM + _FIRST + _WIND * angle / 360 + out, way * angle)

    least, most = turn.least * 360, turn.most * 360
    if most > least:
        steps = [least + (most - least) * i / 40 for i in range(41)]
        with pen.group("least to most"):
            pen.path([at(a, -7) for a in steps] + [at(a, 7) for a in reversed(steps)], "edge", closed=True, fill="cut")
    with pen.group("turn"):
        pen.bend(at, 0, least)
    pen.path([around(_CENTRE, 66, 0), at(0, 10)], "edge")
    for angle in sorted({least, most}):
        pen.path([around(_CENTRE, _RIM - 12, way * angle), at(angle, 12)], "edge")
    with pen.group("mark at hand tight"):
        _mark(pen, 0, "part")
    if most > least:
        with pen.group("mark after the least"):
            _mark(pen, way * least, "mark-tip")
    with pen.group("mark after the turn"):
        _mark(pen, way * most, "mark-tip")


def _mark(pen: Pen, angle: float, kind: str) -> None:
    pen.path([around(_CENTRE, _RIM - 16, angle), around(_CENTRE, 67, angle - 7), around(_CENTRE, 67, angle + 7)], kind, closed=True)


def _slot_numbers(pen: Pen, turn: NutTurn, way: int) -> None:
    """Counts the slots of the last round."""
    last = int(turn.most * turn.slots + 0.001)
    radius = _RIM + _FIRST + _WIND * max(turn.most, 1) + 22
    every = 1 if turn.slots <= 16 else 2
    for count in range(max(1, last - turn.slots + 1), last + 1):
        if (last - count) % every:
            continue
        x, y = around(_CENTRE, min(radius, 156), way * 360 * count / turn.slots)
        pen.text(x, y + 7, str(count), "bold" if count >= turn.least * turn.slots - 0.01 else "", "middle")
