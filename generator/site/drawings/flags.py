"""Labels in one row over or under a drawing, each joined to its place by a line; none stands on another, no two lines cross."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from generator.site.drawings.pen import Pen
from generator.site.drawings.words import apart, text_width, wrap

_GAP = 14.0
_MOST = 300.0  # a label wider than this is broken
_LINES = 5


@dataclass(frozen=True)
class Flag:
    """Lines of (words, kind) that belong to a place across the drawing."""

    x: float
    lines: tuple[tuple[str, str], ...]


def fitted(pen: Pen, wanted: Sequence[Flag]) -> list[Flag] | None:
    """The flags with their lines broken and their places moved apart, in order from the left; None where they have no room in one row."""
    layout = pen.layout
    room = min(_MOST, (layout.width - 4 - _GAP * (len(wanted) - 1)) / max(len(wanted), 1))
    broken = []
    for flag in wanted:
        lines = []
        for words, kind in flag.lines:
            size, bold = layout.size(kind), bool(kind)
            if any(text_width(word, size, bold=bold) > room for word in words.split(" ")):
                return None
            lines += [(row, kind) for row in wrap(words, room, size, bold=bold) if row]
        if len(lines) > _LINES:
            return None
        broken.append(tuple(lines))
    places = balanced([(flag.x, _width(pen, lines)) for flag, lines in zip(wanted, broken, strict=True)], 2, layout.width - 2, _GAP)
    return [Flag(x, lines) for x, lines in zip(places, broken, strict=True)]


def balanced(labels: Sequence[tuple[float, float]], low: float, high: float, gap: float = 0) -> list[float]:
    """Centres of labels (centre, size), in order, kept apart and inside as `apart` does, but giving way to both sides alike."""
    turned = [(low + high - centre, size) for centre, size in reversed(labels)]
    back = [low + high - centre for centre in reversed(apart(turned, low, high, gap))]
    return [(one + other) / 2 for one, other in zip(apart(labels, low, high, gap), back, strict=True)]


def height(pen: Pen, flags: Sequence[Flag]) -> float:
    """How high the row stands."""
    return max([_height(pen, flag) for flag in flags] + [0.0])


def draw(pen: Pen, flags: Sequence[Flag], edge: float, side: int) -> None:
    """Writes the flags beyond an edge: above it (side -1) with their feet on it, or under it (side 1)."""
    for flag in flags:
        y = edge if side > 0 else edge - _height(pen, flag)
        for words, kind in flag.lines:
            size = pen.layout.size(kind)
            pen.text(flag.x, y + size, words, kind, "middle")
            y += size * 1.3


def _height(pen: Pen, flag: Flag) -> float:
    return sum(pen.layout.size(kind) * 1.3 for _, kind in flag.lines)


def _width(pen: Pen, lines: Sequence[tuple[str, str]]) -> float:
    return max([text_width(words, pen.layout.size(kind), bold=bool(kind)) for words, kind in lines] + [0.0])
