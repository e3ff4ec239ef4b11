"""A shaft that stands: its first end at the top, what is said of each part in one column beside it."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass

from markupsafe import Markup

from generator.say import say
from generator.site.drawings.fields import draw_field, field
from generator.site.drawings.pen import Layout, Pen
from generator.site.drawings.shaft import Strip, caption, growth_words, lock_word
from generator.site.drawings.shaft_level import caption_and_scale
from generator.site.drawings.shaft_parts import (
    Board,
    Proportions,
    draw_carried,
    draw_shaft,
    draw_support,
    draw_turning,
    floats_drawn,
    lock_side,
    proportions,
)
from generator.site.drawings.shaft_scale import Scale, scale
from generator.site.drawings.words import apart, text_width, wrap


@dataclass(frozen=True)
class Block:
    """Something said beside the shaft: where it points, how high it is, how it is drawn at a top."""

    u: float
    reach: float
    height: float
    draw: Callable[[float], None]


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
    reaches = [draw_carried(board, part, along, size) for part in strip.carried]
    for one in strip.supports:
        draw_support(board, strip, one, along, size)
    draw_turning(board, strip, along, size)
    _float_figures(board, strip, along, size)
    _growths(board, strip, along)
    bottom = _column(board, _blocks(board, strip, along, size, reaches, column), column, span)
    y = max(bottom, top + span + (38 if layout.narrow else 64))
    y = pen.lines(2, y, strip.ends[1], layout.width - 4, "bold") + 4
    y = caption_and_scale(pen, " ".join([*caption(strip), *_growth_sentences(strip)]), size, y)
    return pen.svg(y, title, description, role="group")


def _figures(strip: Strip) -> list[str]:
    return [
        words for one in strip.supports if one.float and one.holds == "free" for words in (one.float.first.words, one.float.second.words)
    ]


def _float_figures(board: Board, strip: Strip, along: Scale, size: Proportions) -> None:
    labels = []
    for one in strip.supports:
        if one.float and one.holds == "free":
            before, after = floats_drawn(one, along, size)
            u = along.at(one.at)
            labels += [(u - size.base - before / 2, one.float.first.words), (u + size.base + after / 2, one.float.second.words)]
    pen = board.pen
    labels.sort()
    middles = apart([(board.y + u, pen.layout.line) for u, _ in labels], 0, board.y + along.span + 200)
    for y, (_, words) in zip(middles, labels, strict=True):
        pen.text(board.x - size.foot - 16, y + pen.layout.text * 0.36, words, "", "end")


def _growths(board: Board, strip: Strip, along: Scale) -> None:
    for growth in strip.growths:
        start, end = board.y + along.at(growth.start), board.y + along.at(growth.end)
        board.pen.arrow(*(((14, start), (14, end)) if growth.by.size >= 0 else ((14, end), (14, start))), kind="mark", size=18)


def _growth_sentences(strip: Strip) -> list[str]:
    found = []
    for growth in strip.growths:
        toward = strip.end("second" if (growth.end > growth.start) == (growth.by.size >= 0) else "first")
        found.append(say("Arrow at the left: it {growth} toward the {end}.", growth=growth_words(growth), end=toward))
    return found


def _blocks(board: Board, strip: Strip, along: Scale, size: Proportions, reaches: list[float], column: float) -> list[Block]:
    pen, layout = board.pen, board.pen.layout
    room = layout.width - column - 4
    blocks = []
    for one in strip.supports:
        made = field(one, strip, pen, room)
        blocks.append(
            Block(along.at(one.at), size.height, made.height + 8, lambda y, made=made: draw_field(pen, made, column, y + 4, made.height))
        )  # type: ignore[misc]
        if one.lock and one.lock_toward:
            u = along.at(one.at) + lock_side(one, along) * (size.half + size.thread * 0.4)
            words = lock_word(one.lock)
            blocks.append(Block(u, 24, layout.line, lambda y, words=words: _say(pen, column, y, words, room)))  # type: ignore[misc]
    for part, reach in zip(strip.carried, reaches, strict=True):
        high = len(wrap(part.words, room, layout.text)) * layout.line
        blocks.append(Block(along.at(part.at), reach, high, lambda y, words=part.words: _say(pen, column, y, words, room)))  # type: ignore[misc]
    return sorted(blocks, key=lambda block: block.u)


def _say(pen: Pen, x: float, y: float, words: str, room: float) -> None:
    pen.lines(x, y, words, room)


def _column(board: Board, blocks: list[Block], column: float, span: float) -> float:
    """Draws what is said, each beside its part; gives the y under the last."""
    low = board.y - 60
    high = max(board.y + span + 60, low + sum(block.height + 6 for block in blocks))
    middles = apart([(board.y + block.u, block.height) for block in blocks], low, high, 6)
    for middle, block in zip(middles, blocks, strict=True):
        start = board.at(block.u, -block.reach)
        board.pen.path([(start[0] + 2, start[1]), (column - 12, middle), (column - 4, middle)])
    for middle, block in zip(middles, blocks, strict=True):
        block.draw(middle - block.height / 2)
    return max([middle + block.height / 2 for middle, block in zip(middles, blocks, strict=True)] + [0.0])
