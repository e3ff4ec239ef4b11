"""A shaft that lies: drawn along the page, the end that stands left as seen from the stated place at the left."""

from __future__ import annotations

from dataclasses import dataclass
from itertools import pairwise

from markupsafe import Markup

from generator.say import say
from generator.site.drawings.fields import field_rows
from generator.site.drawings.pen import Layout, Pen
from generator.site.drawings.shaft_parts import (
    Board,
    Extent,
    Proportions,
    draw_carried,
    draw_shaft,
    draw_support,
    draw_turning,
    extent,
    floats_drawn,
    lock_side,
    proportions,
    radius_at,
)
from generator.site.drawings.shaft_scale import Scale, scale
from generator.site.drawings.strip import Growth, Strip, caption, growth_words, lock_word
from generator.site.drawings.words import clipped, rows, text_width

_ARROW = 56.0


@dataclass(frozen=True)
class Label:
    """Words at a place along the shaft: a bearing's letter, a part's name with what it points to, or a growth with room for its arrow."""

    x: float
    words: str
    kind: str = ""
    points_to: float | None = None
    growth: Growth | None = None

    @property
    def extra(self) -> float:
        """Room beside the words."""
        return _ARROW if self.growth else 0


def level(strip: Strip, name: str, layout: Layout, title: str, description: str) -> Markup:
    """The drawing of a lying shaft."""
    pen = Pen(layout, name)
    margin = 44 if layout.narrow else 84
    along = scale(strip, layout.width - 2 * margin, 30 if layout.narrow else 60)
    size = proportions(strip, along, layout.narrow)
    extents = [extent(part, along, size, layout.narrow) for part in strip.carried]
    ordered = sorted(strip.supports, key=lambda one: along.at(one.at))
    y = field_rows(pen, strip, [(margin + along.at(one.at), one) for one in ordered], 2) + 6
    above = _above(pen, strip, along, extents, margin)
    axis = y + _height(pen, above) + size.height + 16
    board = Board(pen, margin, axis, upright=False)
    draw_shaft(board, strip.sections, along, size)
    for part, drawn in zip(strip.carried, extents, strict=True):
        draw_carried(board, part, drawn)
    for one in ordered:
        draw_support(board, strip, one, along, size)
    draw_turning(board, strip, along, size)
    _draw_above(pen, strip, above, axis, size)
    named = _lock_names(board, strip, along, size)
    y = _below(pen, strip, along, size, margin, axis + size.foot + 12)
    y = _distances(pen, strip, along, margin, y)
    return pen.svg(_words_under(pen, strip, along, size, named, y), title, description, role="group")


def _above(pen: Pen, strip: Strip, along: Scale, extents: list[Extent], margin: float) -> list[Label]:
    letters = [Label(margin + along.at(one.at), one.letter, "strong") for one in strip.supports]
    room = pen.layout.width * 0.48
    parts = [
        Label(margin + drawn.u, clipped(part.words, room, pen.layout.text), points_to=drawn.high)
        for part, drawn in zip(strip.carried, extents, strict=True)
    ]
    grown = [Label(margin + (along.at(one.start) + along.at(one.end)) / 2, growth_words(one), "bold", growth=one) for one in strip.growths]
    return letters + parts + grown


def _placed(pen: Pen, labels: list[Label]) -> list[tuple[float, int]]:
    return rows([(one.x, _width(pen, one) + one.extra) for one in labels], 0, pen.layout.width, 10)


def _width(pen: Pen, label: Label) -> float:
    return text_width(label.words, pen.layout.size(label.kind), bold=bool(label.kind))


def _height(pen: Pen, labels: list[Label]) -> float:
    return (max([row for _, row in _placed(pen, labels)] + [-1]) + 1) * pen.layout.strong * 1.2


def _draw_above(pen: Pen, strip: Strip, labels: list[Label], axis: float, size: Proportions) -> None:
    step, foot = pen.layout.strong * 1.2, axis - size.height - 12
    placed = list(zip(_placed(pen, labels), labels, strict=True))
    for (x, row), label in placed:
        if label.points_to is not None:
            pen.line(x, foot - row * step + 4, label.x, axis - label.points_to - 2)
    for (x, row), label in placed:
        y = foot - row * step
        pen.text(x - label.extra / 2, y, label.words, label.kind, "middle")
        if label.growth:
            start = x - label.extra / 2 + _width(pen, label) / 2 + 8
            _growth_arrow(pen, start, y - pen.layout.text * 0.35, _to_the_right(label.growth, strip))


def _to_the_right(growth: Growth, strip: Strip) -> bool:
    return ((growth.end > growth.start) == (growth.by.size >= 0)) == strip.first_end_left


def _growth_arrow(pen: Pen, x: float, y: float, right: bool) -> None:
    ends = ((x, y), (x + _ARROW - 10, y))
    with pen.group("growth"):
        pen.arrow(*(ends if right else ends[::-1]), kind="mark", size=18)


def _lock_names(board: Board, strip: Strip, along: Scale, size: Proportions) -> bool:
    """Names each nut or collar beside its foot where there is room; gives whether all could be."""
    pen = board.pen
    taken = [(along.at(one.at) - size.base - 2, along.at(one.at) + size.base + 2) for one in strip.supports]
    taken += [(along.at(part.at) - 20, along.at(part.at) + 20) for part in strip.carried]
    every = True
    for one in strip.supports:
        if not (one.lock and one.lock_toward):
            continue
        side, words = lock_side(one, along), lock_word(one.lock)
        start = along.at(one.at) + side * (size.base + 5)
        end = start + side * text_width(words, pen.layout.text)
        low, high = min(start, end), max(start, end)
        if any(low < b and high > a for a, b in taken) or board.x + low < 0 or board.x + high > pen.layout.width:
            every = False
            continue
        taken.append((low - 4, high + 4))
        foot = board.y + max(size.height * 0.55, radius_at(strip, one.at, size) + 10) + pen.layout.text
        pen.text(board.x + start, foot, words, "", "start" if side > 0 else "end")
    return every


def _below(pen: Pen, strip: Strip, along: Scale, size: Proportions, margin: float, y: float) -> float:
    """What each free foot may move, under its own side; then the names of the ends."""
    labels = []
    for one in strip.supports:
        if one.float and one.holds == "free":
            before, after = floats_drawn(one, along, size)
            words = (one.float.second.words, one.float.first.words) if along.mirrored else (one.float.first.words, one.float.second.words)
            u = margin + along.at(one.at)
            if words[0] == words[1]:
                labels.append(Label(u, words[0]))
            else:
                labels += [Label(u - size.base - before, words[0]), Label(u + size.base + after, words[1])]
    placed = _placed(pen, labels)
    for (x, row), label in zip(placed, labels, strict=True):
        foot = y + pen.layout.text + row * pen.layout.line
        if row or abs(x - label.x) > 40:
            pen.line(label.x, y, x, foot - pen.layout.text)
    for (x, row), label in zip(placed, labels, strict=True):
        pen.text(x, y + pen.layout.text + row * pen.layout.line, label.words, "", "middle")
    used = max([row for _, row in placed] + [-1]) + 1
    left, right = strip.ends if strip.first_end_left else strip.ends[::-1]
    room, layout = pen.layout.width / 2 - 10, pen.layout
    clear = used == 0 or _ends_clear(placed, labels, layout, left, right)
    start = y if clear and used <= 1 else y + used * layout.line
    under_left, under_right = pen.lines(2, start, left, room, "bold"), pen.lines(layout.width - 2, start, right, room, "bold", "end")
    return max(under_left, under_right, y + used * layout.line)


def _ends_clear(placed: list[tuple[float, int]], labels: list[Label], layout: Layout, left: str, right: str) -> bool:
    """Whether the names of the ends fit on one line outside all that stands there."""
    spans = [
        (x - text_width(one.words, layout.text) / 2, x + text_width(one.words, layout.text) / 2)
        for (x, _), one in zip(placed, labels, strict=True)
    ]
    return (
        min(a for a, _ in spans) > text_width(left, layout.text, bold=True) + 14
        and max(b for _, b in spans) < layout.width - text_width(right, layout.text, bold=True) - 14
    )


def _distances(pen: Pen, strip: Strip, along: Scale, margin: float, y: float) -> float:
    """From each bearing to the next, in mm."""
    places = sorted((margin + along.at(one.at), one.at) for one in strip.supports)
    if len(places) < 2:
        return y
    y += 10
    spans = [
        ((a + b) / 2, say("{distance} mm", distance=f"{abs(m - n):g}").replace(" ", "\u00a0"), b - a) for (a, m), (b, n) in pairwise(places)
    ]
    layout = pen.layout
    fits = all(text_width(words, layout.text) + 44 < gap for _, words, gap in spans)
    for (a, _), (b, _) in pairwise(places):
        pen.line(a, y, b, y)
        for x, way in ((a, 180), (b, 0)):
            pen.line(x, y - 7, x, y + 7)
            pen.head((x, y), way, min(13, (b - a) / 3))
    if fits:
        for x, words, _ in spans:
            half = text_width(words, layout.text) / 2 + 4
            pen.rect(x - half, y - 6, x + half, y + 6, "blank")
            pen.text(x, y + layout.text * 0.36, words, "", "middle")
        return y + 14
    placed = rows([(x, text_width(words, layout.text)) for x, words, _ in spans], 0, layout.width, 10)
    for (x, row), (middle, _, _) in zip(placed, spans, strict=True):
        foot = y + 8 + layout.text + row * layout.line
        if row:
            pen.line(middle, y, x, foot - layout.text)
    for (x, row), (_, words, _) in zip(placed, spans, strict=True):
        pen.text(x, y + 8 + layout.text + row * layout.line, words, "", "middle")
    return y + 14 + (max(row for _, row in placed) + 1) * layout.line


def _words_under(pen: Pen, strip: Strip, along: Scale, size: Proportions, named: bool, y: float) -> float:
    sentences = list(caption(strip))
    if not along.true:
        sentences.append(say("Distances are not drawn to one scale."))
    if not named:
        sentences.append(say("A nut or collar is drawn on the side of the bearing where it is."))
    return caption_and_scale(pen, " ".join(sentences), size, y + 4)


def caption_and_scale(pen: Pen, words: str, size: Proportions, y: float) -> float:
    """The sentences, and how large a float is drawn; on one line where both fit."""
    layout = pen.layout
    under = pen.lines(2, y, words, layout.width - 4) if words else y
    reach = text_width(words, layout.text) + 30
    if words and reach + 80 + text_width(_stands_for("0.000"), layout.text) < layout.width:
        return max(under, scale_bar(pen, size, reach, y)) + 4
    return scale_bar(pen, size, 4, under) + 4


def scale_bar(pen: Pen, size: Proportions, x: float, y: float) -> float:
    """How large a float is drawn: a bar, and what it stands for."""
    if not size.per_mm:
        return y
    stands_for = next(step * 10.0**power for power in range(3, -5, -1) for step in (5, 2, 1) if step * 10.0**power * size.per_mm <= 60)
    long, foot = stands_for * size.per_mm, y + pen.layout.text + 2
    pen.out.append(f'<path class="edge" data-float-scale="{stands_for:g}" d="M{x:.1f},{foot - 12:.1f}v10h{long:.2f}v-10"/>')
    return pen.lines(x + long + 12, y, _stands_for(f"{stands_for:g}"), pen.layout.width - x - long - 14)


def _stands_for(length: str) -> str:
    return say("is {length} mm of float as drawn.", length=length)
