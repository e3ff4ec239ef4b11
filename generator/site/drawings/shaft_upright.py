"""A shaft that stands: its first end at the top, what is said of each part in one column beside it."""

from __future__ import annotations

from dataclasses import dataclass

from markupsafe import Markup

from generator.site.drawings.fields import Field, draw_field, field
from generator.site.drawings.pen import Layout, Pen
from generator.site.drawings.shaft_level import caption_and_scale
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
)
from generator.site.drawings.shaft_scale import Scale, scale
from generator.site.drawings.strip import Strip, caption, growth_sentence, lock_word
from generator.site.drawings.words import apart, text_width, wrap


@dataclass(frozen=True)
class Block:
    """Something said beside the shaft: where it points, how high it is, and the field or words."""

    u: float
    reach: float
    height: float
    content: Field | str


def upright(strip: Strip, name: str, layout: Layout, title: str, description: str) -> Markup:
    """The drawing of a standing shaft."""
    pen = Pen(layout, name)
    figures = max([text_width(words, layout.text) for words in _figures(strip)] + [0])
    x = (64 if layout.narrow else 92) + min(figures, layout.width * 0.25) + 8 + (28 if strip.growths else 0)
    column = x + (52 if layout.narrow else 90)
    span = (130.0 if layout.narrow else 100) * len(strip.supports) + 36 * len(strip.carried) + 60
    along = scale(strip, span, 90)
    size = proportions(strip, along, layout.narrow)
    above = list(wrap(strip.ends[0], layout.width - 4, layout.text, bold=True))
    top = len(above) * layout.line + (44 if layout.narrow else 66)
    board = Board(pen, x, top, upright=True)
    pen.lines(2, 0, strip.ends[0], layout.width - 4, "bold")
    draw_shaft(board, strip.sections, along, size)
    extents = [extent(part, along, size, layout.narrow) for part in strip.carried]
    for part, drawn in zip(strip.carried, extents, strict=True):
        draw_carried(board, part, drawn)
    for one in strip.supports:
        draw_support(board, strip, one, along, size)
    draw_turning(board, strip, along, size)
    lowest = _float_figures(board, strip, along, size)
    _growths(board, strip, along)
    bottom = _column(board, _blocks(board, strip, along, size, extents, column), column, span)
    y = max(bottom, lowest, top + span + (38 if layout.narrow else 64))
    y = pen.lines(2, y, strip.ends[1], layout.width - 4, "bold") + 4
    y = caption_and_scale(pen, " ".join([*caption(strip), *(growth_sentence(one, strip) for one in strip.growths)]), size, y)
    return pen.svg(y, title, description, role="group")


def _figures(strip: Strip) -> list[str]:
    return [
        words for one in strip.supports if one.float and one.holds == "free" for words in (one.float.first.words, one.float.second.words)
    ]


def _float_figures(board: Board, strip: Strip, along: Scale, size: Proportions) -> float:
    """Writes each float beside its stop; gives the y under the last."""
    labels = []
    for one in strip.supports:
        if one.float and one.holds == "free":
            before, after = floats_drawn(one, along, size)
            u = along.at(one.at)
            labels += [(u - size.base - before / 2, one.float.first.words), (u + size.base + after / 2, one.float.second.words)]
    pen = board.pen
    labels.sort()
    middles = apart([(board.y + u, pen.layout.line) for u, _ in labels], 0, board.y + along.span + 200 + pen.layout.line * len(labels))
    for y, (_, words) in zip(middles, labels, strict=True):
        pen.text(board.x - size.foot - 16, y + pen.layout.text * 0.36, words, "", "end")
    return max([*middles, 0]) + pen.layout.line / 2 + 4


def _growths(board: Board, strip: Strip, along: Scale) -> None:
    for growth in strip.growths:
        start, end = board.y + along.at(growth.start), board.y + along.at(growth.end)
        ends = ((14.0, start), (14.0, end))
        with board.pen.group("growth"):
            board.pen.arrow(*(ends if growth.by.size >= 0 else ends[::-1]), kind="mark", size=18)


def _blocks(board: Board, strip: Strip, along: Scale, size: Proportions, extents: list[Extent], column: float) -> list[Block]:
    layout = board.pen.layout
    room = layout.width - column - 4
    blocks = []
    for one in strip.supports:
        made = field(one, strip, board.pen, room)
        blocks.append(Block(along.at(one.at), size.height, made.height + 8, made))
        if one.lock and one.lock_toward:
            u = along.at(one.at) + lock_side(one, along) * (size.half + size.thread * 0.4)
            blocks.append(Block(u, 24, layout.line, lock_word(one.lock)))
    for part, drawn in zip(strip.carried, extents, strict=True):
        blocks.append(Block(drawn.u, drawn.high, len(wrap(part.words, room, layout.text)) * layout.line, part.words))
    return sorted(blocks, key=lambda block: block.u)


def _column(board: Board, blocks: list[Block], column: float, span: float) -> float:
    """Draws what is said, each beside its part; gives the y under the last."""
    low = board.y - 60
    high = max(board.y + span + 60, low + sum(block.height + 6 for block in blocks))
    middles = apart([(board.y + block.u, block.height) for block in blocks], low, high, 6)
    for middle, block in zip(middles, blocks, strict=True):
        start = board.at(block.u, -block.reach)
        board.pen.path([(start[0] + 2, start[1]), (column - 12, middle), (column - 4, middle)])
    for middle, block in zip(middles, blocks, strict=True):
        top = middle - block.height / 2
        if isinstance(block.content, str):
            board.pen.lines(column, top, block.content, board.pen.layout.width - column - 4)
        else:
            draw_field(board.pen, block.content, column, top + 4, block.content.height)
    return max([middle + block.height / 2 for middle, block in zip(middles, blocks, strict=True)] + [0.0])
