"""The room a free bearing has left, cold, when it is set and hot."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from markupsafe import Markup

from generator.say import say
from generator.site.drawings.pen import Drawn, Layout, Pen, both
from generator.site.drawings.words import text_width, wrap


@dataclass(frozen=True)
class FloatState:
    """One state: its name; how far the bearing stands from the middle, above 0 toward the second end; the room left at each side as words.

    `first`: toward the first end, `second`: toward the second.
    """

    words: str
    shift: float
    first: str
    second: str


@dataclass(frozen=True)
class FloatRoom:
    """`first` and `second`: from the middle to each stop. The drawing has its first end at the left unless mirrored."""

    letter: str
    ends: tuple[str, str]
    first: Drawn
    second: Drawn
    states: tuple[FloatState, ...]
    first_end_left: bool = True


def float_room(room: FloatRoom, name: str) -> Markup:
    """Both layouts."""
    return both(lambda layout: float_room_for(room, name, layout))


def float_room_for(room: FloatRoom, name: str, layout: Layout) -> Markup:
    """The drawing for one layout."""
    pen, size = Pen(layout, name), layout.text
    margin = (
        max([text_width(words, layout.size(_kind(layout)), bold=True) for one in room.states for words in (one.first, one.second)] + [40])
        + 24
    )
    ring = 66.0 if layout.narrow else 130.0
    span = layout.width - 2 * margin
    total = room.first.size + room.second.size
    per_mm = max(span - ring, 10) / total if total > 0 else 0
    left, right = room.ends if room.first_end_left else room.ends[::-1]
    one = pen.lines(2, 0, left, layout.width / 2 - 10, "bold")
    top = max(one, pen.lines(layout.width - 2, 0, right, layout.width / 2 - 10, "bold", "end"))
    before = (room.first if room.first_end_left else room.second).size * per_mm
    middle, y, last = margin + before + ring / 2 if total > 0 else layout.width / 2, top + 4, None
    for state in room.states:
        for row in wrap(state.words, layout.width - 2 * margin - 28, size, bold=True):
            pen.text(margin + 16, y + size, row, "bold")
            y += layout.line
        x = middle + state.shift * per_mm * (1 if room.first_end_left else -1)
        _state(pen, state, x, y, ring, margin, room.first_end_left)
        if last is not None and abs(x - last) > 24:
            pen.arrow((last, y + 24), (x, y + 24), "mark", 20)
        last, y = x, y + 64
    _stops(pen, margin, layout.width - margin, top, y)
    lines = list(_words(room))
    return pen.svg(
        pen.lines(4, y + 8, " ".join(lines[-1:]), layout.width - 8) + 4,
        say("Room of {letter} along the shaft. {states}", letter=room.letter, states=" ".join(lines[:-1])),
        " ".join(lines),
    )


def _kind(layout: Layout) -> str:
    return "bold" if layout.narrow else "strong"


def _state(pen: Pen, state: FloatState, x: float, y: float, ring: float, margin: float, first_left: bool) -> None:
    pen.line(margin, y + 50, pen.layout.width - margin, y + 50)
    pen.rect(x - ring / 2, y + 4, x + ring / 2, y + 50, "part", "cut")
    pen.line(x, y, x, y + 54, "axis")
    left, right = (state.first, state.second) if first_left else (state.second, state.first)
    kind = _kind(pen.layout)
    pen.text(margin - 22, y + 36, left, kind, "end")
    pen.text(pen.layout.width - margin + 22, y + 36, right, kind)


def _stops(pen: Pen, left: float, right: float, top: float, bottom: float) -> None:
    for x, way in ((left, -1), (right, 1)):
        pen.rect(x, top, x + way * 12, bottom, "solid")


def _words(room: FloatRoom) -> Iterator[str]:
    for one in room.states:
        yield say(
            "{state}: {first} left toward the {one}, {second} toward the {other}.",
            state=one.words,
            first=one.first,
            one=room.ends[0],
            second=one.second,
            other=room.ends[1],
        )
    yield say("Beside each: the room left on that side. Room and shift are drawn to one scale, the ring is not.")
