"""The line a shaft bends to, drawn over its bearings, larger than it is."""

from __future__ import annotations

from collections.abc import Sequence

from generator.say import say
from generator.site.drawings import flags
from generator.site.drawings.bent_shaft import Board, no_break
from generator.site.drawings.flags import Flag
from generator.site.drawings.words import text_width

_FOOT = 22.0


def draw_line(board: Board, supports: Sequence[float], y: float) -> tuple[float, bool]:
    """The line with its greatest value over the bearings, which stand at these x; gives the y under it, and whether the slopes could be written."""
    shaft, pen = board.shaft, board.pen
    if not shaft.line:
        return y, not any(one.slope_words for one in shaft.supports)
    scale = board.bend_times * board.per_mm
    up, down = (max([sign * deflection for _, deflection in shaft.line] + [0.0]) * scale for sign in (-1, 1))
    label = y + pen.layout.text * 1.3 if shaft.deepest else y
    axis = label + 10 + up
    foot = axis + max(down, _FOOT + 6) + 10
    pen.line(board.x(0) - 14, axis, board.x(shaft.length) + 14, axis, "axis")
    bottom, written = _bearings(board, supports, axis, foot)
    with pen.group("bending line"):
        pen.path([(board.x(at), axis + deflection * scale) for at, deflection in shaft.line], "mark")
    if shaft.deepest and scale:
        _deepest(board, axis, label, scale)
    return bottom, written


def times_too_large(times: float) -> str:
    """How the bending is drawn, in words."""
    shown = f"{times:.10g}"
    if times == 1:
        return say("Bending drawn as large as it is.")
    return (
        say("Bending drawn {times} times too large.", times=shown)
        if times > 1
        else say("Bending drawn {times} times its size.", times=shown)
    )


def _bearings(board: Board, supports: Sequence[float], axis: float, foot: float) -> tuple[float, bool]:
    pen, ordered = board.pen, sorted(board.shaft.supports, key=lambda one: one.at)
    letters = [Flag(x, ((one.letter, "strong"),)) for x, one in zip(supports, ordered, strict=True)]
    whole = [
        Flag(x, ((one.letter, "strong"), *([(one.slope_words, "")] if one.slope_words else [])))
        for x, one in zip(supports, ordered, strict=True)
    ]
    fit = flags.fitted(pen, whole)
    placed = fit or flags.fitted(pen, letters) or letters
    for x, flag, one in zip(supports, placed, ordered, strict=True):
        with pen.group(f"bearing {one.letter}"):
            pen.path([(x, axis + 5), (x - 8, axis + _FOOT), (x + 8, axis + _FOOT)], "part", closed=True)
        pen.path([(x, axis + _FOOT + 2), (x, foot - 4), (flag.x, foot + 6)], "grid")
    flags.draw(pen, placed, foot + 8, 1)
    return foot + 8 + flags.height(pen, placed), fit is not None


def _deepest(board: Board, axis: float, label: float, scale: float) -> None:
    shaft, pen = board.shaft, board.pen
    assert shaft.deepest
    at = shaft.deepest_at
    x, y = board.x(at), axis + dict(shaft.line)[at] * scale
    words = no_break(shaft.deepest.words)
    half = text_width(words, pen.layout.text, bold=True) / 2
    pen.line(x, label + 2, x, min(axis, y))
    with pen.group("deepest"):
        if abs(y - axis) > 24:
            pen.arrow((x, axis), (x, y - (6 if y > axis else -6)), "dim", 14)
        pen.circle(x, y, 6, "mark-tip")
    pen.text(min(max(x, half + 2), pen.layout.width - half - 2), label - 4, words, "bold", "middle")
