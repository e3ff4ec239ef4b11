"""The order of seals, locating rings and bearing on the shaft of a split housing, and how the bearing then stands in its bore."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from markupsafe import Markup

from generator.say import say
from generator.site.drawings.pen import Drawn, Layout, Pen, both
from generator.site.drawings.words import wrap

_AXIS = 108.0
_ROOM = 34.0  # how large the larger float is drawn
# half its height, half its width, its hatching
_SHAPES = {"seal": (44, 9, ""), "ring": (60, 7, "across"), "bearing": (66, 24, "cut"), "nut": (42, 12, "")}


@dataclass(frozen=True)
class Seals:
    """`rings`: locating rings on each side, 0 where it is free. `on_from`: the end the parts come on from. `nut`: the end it is toward, "" for none.

    `room`: float toward the first end and the second, where it is free; `ring`: the width of a locating ring as words.
    """

    rings: int
    ends: tuple[str, str]
    on_from: str
    nut: str = ""
    room: tuple[Drawn, Drawn] | None = None
    ring: str = ""
    first_left: bool = True


def seals(data: Seals, name: str) -> Markup:
    """Both layouts."""
    return both(lambda layout: seals_for(data, name, layout))


def seals_for(data: Seals, name: str, layout: Layout) -> Markup:
    """The drawing for one layout: the parts apart on the shaft, numbered as they go on; under it the bearing in its bore."""
    pen, parts = Pen(layout, name), order(data)
    left, right = data.ends if data.first_left else data.ends[::-1]
    y = max(
        pen.lines(4, 0, left, layout.width / 2 - 12, "bold"), pen.lines(layout.width - 4, 0, right, layout.width / 2 - 12, "bold", "end")
    )
    from_left = data.on_from == left
    y = _apart(pen, parts, from_left, y)
    if layout.narrow:
        for number, (_, what) in enumerate(parts, 1):
            y = pen.lines(4, y, say("{number} {what}", number=number, what=what), layout.width - 8, "bold")
    y = pen.lines(4, y + 2, say("On from the {end}, in the order of the numbers: 1 first.", end=data.on_from), layout.width - 8)
    y = _in_bore(pen, data, y + 14)
    said = list(_words(data))
    for words, kind in said:
        y = pen.lines(4, y + 2, words, layout.width - 8, kind)
    listed = [say("{number} {what}", number=number, what=what) for number, (_, what) in enumerate(parts, 1)]
    return pen.svg(y + 4, _title(data), "; ".join(listed) + ". " + " ".join(words for words, _ in said))


def order(data: Seals) -> list[tuple[str, str]]:
    """Kind and name of each part in the order it goes on."""
    rings = [("ring", say("locating ring"))] * data.rings
    bearing = ("bearing", say("sleeve and bearing") if data.nut else say("bearing"))
    nut = [("nut", say("nut"))] if data.nut else []
    mounted = [bearing, *nut] if data.nut == data.on_from else [*nut, bearing]
    return [("seal", say("inner seal")), *rings, *mounted, *rings, ("seal", say("outer seal"))]


def _title(data: Seals) -> str:
    if data.rings:
        return say("Fixed: seal and locating ring before the bearing, ring and seal after it")
    return say("Free: seal before the bearing, seal after it, no locating rings")


def _words(data: Seals) -> Iterator[tuple[str, str]]:
    if data.rings and not data.ring:
        yield say("Fixed: locating rings on both sides, as many on one as on the other. No play."), "bold"
    elif data.rings == 1:
        yield say("Fixed: one locating ring on each side, {width} wide. No play.", width=data.ring), "bold"
    elif data.rings:
        yield say("Fixed: {count} locating rings on each side, {width} wide. No play.", count=data.rings, width=data.ring), "bold"
    elif data.room:
        first, second = data.room
        yield say("Free: no rings. Room {a} toward the {one}, {b} toward the {other}.", a=first.words, one=data.ends[0], b=second.words, other=data.ends[1]), "bold"  # fmt: skip
    else:
        yield say("Free: no rings. How much room it has is not on file."), "bold"
    yield say("The order is drawn, not the sizes."), ""


def _apart(pen: Pen, parts: list[tuple[str, str]], from_left: bool, y: float) -> float:
    """The parts in a row, number over each, on wide paper its name under it; gives the y under all."""
    width, size = pen.layout.width, pen.layout.text
    step, axis = (width - 12) / (len(parts) + 1), y + _AXIS
    pen.rect(6, axis - 16, width - 6, axis + 16, "part")
    pen.line(0, axis, width, axis, "axis")
    low = axis + 76
    for number, (kind, what) in enumerate(parts, 1):
        x = 6 + step * (len(parts) + 1 - number if from_left else number)
        half, widest, fill = _SHAPES[kind]
        wide = min(float(widest), step / 2 - 3)
        with pen.group(f"{kind} {number}"):
            pen.rect(x - wide, axis - half, x + wide, axis + half, "part", fill)
        pen.text(x, axis - 76, str(number), "strong", "middle")
        if not pen.layout.narrow:
            rows = wrap(what, step - 8, size)
            for i, row in enumerate(rows):
                pen.text(x, axis + 76 + size + i * size * 1.2, row, "", "middle")
            low = max(low, axis + 76 + len(rows) * size * 1.2 + 8)
    tail, tip = (2.0, step * 0.62) if from_left else (width - 2, width - step * 0.62)
    with pen.group("on from"):
        pen.arrow((tail, axis - 40), (tip, axis - 40), "mark", 18)
    return low


def _in_bore(pen: Pen, data: Seals, y: float) -> float:
    """The bearing in the base: rings fill its bore on both sides, or room is left, each side to one scale; gives the y under it."""
    middle, half = pen.layout.width / 2, 60.0
    sides = [_ROOM * 0.6] * 2
    if data.room and not data.rings:
        y += pen.layout.text * 1.2
        per_mm = _ROOM / max(data.room[0].size, data.room[1].size, 1e-9)
        sides = [one.size * per_mm for one in (data.room if data.first_left else data.room[::-1])]
    left, right = middle - half - sides[0], middle + half + sides[1]
    wall = 30.0
    outline = [
        (left - wall, y),
        (left, y),
        (left, y + 44),
        (right, y + 44),
        (right, y),
        (right + wall, y),
        (right + wall, y + 70),
        (left - wall, y + 70),
    ]
    with pen.group("bore"):
        pen.path(outline, "part", closed=True, fill="cut")
    with pen.group("outer ring in bore"):
        pen.rect(middle - half, y + 10, middle + half, y + 43, "part", "across")
    for start, end in ((left, middle - half), (middle + half, right)):
        if data.rings:
            for i in range(data.rings):
                wide = (end - start) / data.rings
                with pen.group("ring in bore"):
                    pen.rect(start + i * wide + 1, y + 4, start + (i + 1) * wide - 1, y + 43, "solid")
        elif data.room and end - start > 3:
            pen.line(start, y + 26, end, y + 26, "mark")
    if data.room and not data.rings:
        first, second = data.room if data.first_left else data.room[::-1]
        pen.text(middle - half, y - 6, first.words, "bold", "end")
        pen.text(middle + half, y - 6, second.words, "bold")
    return y + 78
