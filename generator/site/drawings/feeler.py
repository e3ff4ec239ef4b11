"""Where the feeler goes on a bearing with rollers: over one that carries nothing, both rows, for each way the bearing lies or hangs."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from typing import Literal

from markupsafe import Markup

from generator.say import say
from generator.site.drawings.pen import Layout, Pen, Point, around, both, ring
from generator.site.drawings.roller_rows import roller_rows

Lies = Literal["bench", "hanging", "seated"]
# where nothing presses a roller: a ring stands on the bench and the inner ring sinks in it; a ring hangs on a held shaft; a shaft lies in its base
SIDE: dict[Lies, int] = {"bench": -1, "hanging": 1, "seated": -1}
_ROLLERS = 13
_OUTER, _RACE, _INNER, _BORE = 80.0, 66.0, 41.0, 28.0
_GAP = 6.0  # the clearance, drawn large
_CELL = 176.0


@dataclass(frozen=True)
class Reading:
    """One way the bearing lies while it is read, and what is read there as sentences, "" none."""

    lies: Lies
    figures: tuple[str, ...] = ()


@dataclass(frozen=True)
class Feeler:
    """`rows` of rollers; `note`: what else must be known, "" for nothing."""

    readings: tuple[Reading, ...]
    rows: int = 2
    note: str = ""


def feeler(data: Feeler, name: str) -> Markup:
    """Both layouts."""
    return both(lambda layout: feeler_for(data, name, layout))


def feeler_for(data: Feeler, name: str, layout: Layout) -> Markup:
    """The drawing for one layout: the bearing from the front for each reading, and cut open with the blade in both rows."""
    pen, size = Pen(layout, name), 0.9 if layout.narrow else 1.2
    cells = len(data.readings) + 1
    across = layout.width if layout.narrow else layout.width / max(cells, 4)
    y = low = 4.0
    for i, one in enumerate([*data.readings, None]):
        left, top = (4.0, y) if layout.narrow else (i * across + 4, 4.0)
        with pen.group(one.lies if one else "cut open"):
            if one:
                _front(pen, one.lies, (left, top), size)
            else:
                roller_rows(pen, data.rows, SIDE[data.readings[-1].lies] if len(data.readings) == 1 else 1, (left, top), size)
        x, under = (left + _CELL * size + 12, top) if layout.narrow else (left, top + _CELL * size + 6)
        for words, kind in _beside(one, data.rows):
            under = pen.lines(x, under, words, across - (x - left) - 12, kind) + 2
        under = max(under, top + _CELL * size) + 10
        low, y = max(low, under), under
    for words in _below(data):
        low = pen.lines(4, low, words, layout.width - 8)
    return pen.svg(low + 4, _title(data), " ".join(_described(data)))


def _title(data: Feeler) -> str:
    return " ".join(_where(one.lies) for one in data.readings)


def _where(lies: Lies) -> str:
    return {
        "bench": say("Bearing loose, upright on the bench: blade at the top."),
        "hanging": say("Shaft held up, outer ring hanging: blade at the bottom."),
        "seated": say("Shaft resting in its housing, cap off: blade at the top."),
    }[lies]


def _beside(one: Reading | None, rows: int) -> Iterator[tuple[str, str]]:
    if one:
        yield _where(one.lies), "bold"
        yield from ((words, "") for words in one.figures if words)
    else:
        yield (say("Both rows: slide the blade along the roller.") if rows == 2 else say("Slide the blade along the roller.")), "bold"
        yield say("Never roll a roller over it."), ""


def _below(data: Feeler) -> Iterator[str]:
    if data.note:
        yield data.note
    yield say("The clearance is drawn much larger than it is.")


def _described(data: Feeler) -> Iterator[str]:
    for one in (*data.readings, None):
        yield from (words for words, _ in _beside(one, data.rows))
    yield from _below(data)


def _front(pen: Pen, lies: Lies, start: Point, size: float) -> None:
    """Rollers rest against the inner ring all round; the outer ring is off them on the side free of load."""
    side = SIDE[lies]
    x, y = start[0] + 88 * size, start[1] + 86 * size
    inner = (x, y - side * _GAP / 2 * size)
    outer = (x, y + side * _GAP / 2 * size)
    if lies == "bench":
        pen.rect(start[0], outer[1] + _OUTER * size, start[0] + _CELL * size, start[1] + _CELL * size, "dim", "cut")
    elif lies == "seated":
        base = [(x - 88 * size, outer[1]), *ring(outer, _OUTER * size, 270, 90), (x + 88 * size, outer[1])]
        pen.path(
            [*base, (x + 88 * size, start[1] + _CELL * size), (x - 88 * size, start[1] + _CELL * size)], "part", closed=True, fill="cut"
        )
    with pen.group("outer ring"):
        pen.circle(*outer, _OUTER * size, "part", "across")
        pen.circle(*outer, _RACE * size, "part")
    radius = (_RACE - _INNER - _GAP) / 2
    for i in range(_ROLLERS):
        pen.circle(*around(inner, (_INNER + radius) * size, i * 360 / _ROLLERS + (180 if side > 0 else 0)), radius * size, "part")
    with pen.group("inner ring"):
        pen.circle(*inner, _INNER * size, "part", "across")
        pen.circle(*inner, _BORE * size, "part", "" if lies == "bench" else "cut")
    if lies == "hanging":
        pen.arrow((inner[0], inner[1] + 22 * size), (inner[0], inner[1] - 24 * size), "edge", 14)
    with pen.group("blade"):
        middle = 180 if side > 0 else 0
        pen.path(ring(outer, (_RACE - _GAP / 2) * size, middle - 20, middle + 20), "mark")
