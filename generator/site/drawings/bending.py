"""A shaft under its loads: what acts on it from above, what its bearings hold against it from below, and the line it bends to."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from markupsafe import Markup

from generator.say import say
from generator.site.drawings import flags
from generator.site.drawings.bending_line import draw_line, times_too_large
from generator.site.drawings.bent_shaft import BentShaft, Board, board_of, held, mm, no_break
from generator.site.drawings.flags import Flag
from generator.site.drawings.pen import Layout, Pen, both

_PITCH = 16.0  # between two arrows
_DOT = 7.0  # an arrow shorter than this is a dot
_ELBOW = 14.0


@dataclass(frozen=True)
class _Arrow:
    """One force as drawn: across the drawing at x, at the shaft's surface so far from its axis."""

    x: float
    surface: float
    size: float
    force: str
    part: str
    key: str
    label: tuple[tuple[str, str], ...]
    sentence: str


def bending(shaft: BentShaft, name: str) -> Markup:
    """Both layouts."""
    return both(lambda layout: bending_for(shaft, name, layout))


def bending_for(shaft: BentShaft, name: str, layout: Layout) -> Markup:
    """The drawing for one layout."""
    pen = Pen(layout, name)
    board = board_of(shaft, pen)
    loads, supports = _loads(board), _supports(board)
    over, under = (flags.fitted(pen, [Flag(one.x, one.label) for one in side]) for side in (loads, supports))
    keyed_over, keyed_under = over or _keys(pen, loads), under or _keys(pen, supports)
    y = _ends(pen, shaft)
    axis = y + (flags.height(pen, keyed_over) + _ELBOW + board.longest + 6 if loads else 0) + board.thickest + 10
    _outline(board, axis)
    _side(board, loads, keyed_over, axis, -1)
    y = _side(board, supports, keyed_under, axis, 1)
    y, slopes_stand = draw_line(board, [one.x for one in supports], y + 14)
    listed = [one.sentence for one in loads] if over is None else []
    if under is None or not slopes_stand:
        listed += [one.sentence for one in supports]
    y += 8
    for line in listed:
        y = pen.lines(4, y, line, layout.width - 8)
    said = list(_words(board, [*loads, *supports]))
    y = pen.lines(4, y + 4, " ".join(said), layout.width - 8)
    return pen.svg(y + 4, _title(shaft), " ".join(_described(shaft, loads, supports) + said))


def _title(shaft: BentShaft) -> str:
    carried = "; ".join(say("{letter} carries {force}", letter=one.letter, force=one.words) for one in shaft.supports)
    if shaft.line and shaft.deepest:
        return say("The shaft under its loads: it bends {size}. {carried}", size=shaft.deepest.words, carried=carried)
    return say("The shaft under its loads. {carried}", carried=carried)


def _ends(pen: Pen, shaft: BentShaft) -> float:
    room = pen.layout.width / 2 - 10
    return max(pen.lines(2, 0, shaft.ends[0], room, "bold"), pen.lines(pen.layout.width - 2, 0, shaft.ends[1], room, "bold", "end")) + 6


def _loads(board: Board) -> list[_Arrow]:
    ordered = sorted(board.shaft.loads, key=lambda one: one.at)
    arrows = []
    for i, (x, one) in enumerate(zip(_apart(board, [load.at for load in ordered]), ordered, strict=True), 1):
        force = no_break(one.words)
        put = say("{force} toward {clock}", force=force, clock=no_break(one.clock)) if one.clock else force
        sentence = say("{number}: {load}, at {place}: {force}.", number=i, load=one.name, place=mm(one.at), force=put)
        arrows.append(_Arrow(x, board.radius(one.at), one.size, force, f"load {i}", str(i), ((one.name, ""), (put, "")), sentence))
    return arrows


def _supports(board: Board) -> list[_Arrow]:
    ordered = sorted(board.shaft.supports, key=lambda one: one.at)
    arrows = []
    for x, one in zip(_apart(board, [support.at for support in ordered]), ordered, strict=True):
        put = held(one)
        sentence = (
            say("{letter}, at {place}: {force}; {slope}.", letter=one.letter, place=mm(one.at), force=put, slope=one.slope_words)
            if one.slope_words
            else say("{letter}, at {place}: {force}.", letter=one.letter, place=mm(one.at), force=put)
        )
        label = ((one.letter, "strong"), (put, ""))
        arrows.append(_Arrow(x, board.radius(one.at), one.size, no_break(one.words), f"force at {one.letter}", one.letter, label, sentence))
    return arrows


def _apart(board: Board, places: Sequence[float]) -> list[float]:
    return flags.balanced([(board.x(at), _PITCH) for at in places], 0, board.pen.layout.width)


def _keys(pen: Pen, arrows: Sequence[_Arrow]) -> list[Flag]:
    """Each by its number or letter alone, where whole labels have no room."""
    keys = [Flag(one.x, ((one.key, "strong"),)) for one in arrows]
    return flags.fitted(pen, keys) or keys


def _outline(board: Board, axis: float) -> None:
    over = [(board.x(at), axis - board.thick(diameter)) for at, diameter in board.corners()]
    with board.pen.group("shaft"):
        board.pen.path(over + [(x, 2 * axis - y) for x, y in reversed(over)], "part", closed=True)
    board.pen.line(board.x(0) - 14, axis, board.x(board.shaft.length) + 14, axis, "axis")


def _side(board: Board, arrows: Sequence[_Arrow], placed: Sequence[Flag], axis: float, side: int) -> float:
    """The arrows of one side of the shaft with their labels; gives the y beyond them."""
    pen, edge = board.pen, axis + side * (board.thickest + 10 + board.longest)
    if not arrows:
        return axis + side * (board.thickest + 10)
    for one, flag in zip(arrows, placed, strict=True):
        near = axis + side * (one.surface + 4)
        far = near + side * abs(one.size) * board.per_newton
        dot = abs(far - near) < _DOT
        pen.path([(one.x, near + side * 6 if dot else far), (one.x, edge), (flag.x, edge + side * (_ELBOW - 2))], "grid")
        with pen.group(one.part):
            if dot:
                pen.circle(one.x, near + side * 4, 4, "solid")
            else:
                ends = ((one.x, far), (one.x, near))
                pen.arrow(*(ends if one.size >= 0 else ends[::-1]), kind="edge", size=min(18, abs(far - near) * 0.8))
    flags.draw(pen, placed, edge + side * _ELBOW, side)
    return edge + side * (_ELBOW + flags.height(pen, placed))


def _words(board: Board, arrows: Sequence[_Arrow]) -> Iterator[str]:
    shaft = board.shaft
    if shaft.upright:
        yield say("The shaft stands upright; it is drawn lying.")
    if not shaft.loads:
        yield say("No load is shown.")
    elif shaft.supports:
        yield say("From above: what acts on the shaft. From below: what its bearings hold against it.")
    if any([one.clock for one in shaft.loads] + [one.clock for one in shaft.supports]):
        yield say("O'clock as seen from the {end}: the way a load pulls, and the way the shaft presses on a bearing.", end=shaft.ends[0])
    for one in shaft.supports:
        if one.size * board.per_newton <= -_DOT:
            yield say("{letter} is pressed the other way: its arrow leads away from the shaft.", letter=one.letter)
        elif one.size < 0:
            yield say("{letter} is pressed the other way.", letter=one.letter)
    most = max(((abs(one.size), one.force) for one in arrows), default=(0.0, ""))
    if most[0]:
        yield say("Arrows are to one scale, the longest {force}.", force=most[1])
    if any(abs(one.size) * board.per_newton < _DOT for one in arrows):
        yield say("A dot: too small a force for an arrow.")
    yield from _bent(board)


def _bent(board: Board) -> Iterator[str]:
    shaft = board.shaft
    if shaft.deepest and board.bend_times > 0:
        yield say(
            "It bends most, {size}, at {place} from the {end}.",
            size=no_break(shaft.deepest.words),
            place=mm(shaft.deepest_at),
            end=shaft.ends[0],
        )
        yield times_too_large(board.bend_times)
    elif shaft.line:
        yield say("It does not bend.")
    if abs(board.per_thick / board.per_mm - 1) > 0.01:
        yield say("Diameters are drawn to a scale of their own.")


def _described(shaft: BentShaft, loads: Sequence[_Arrow], supports: Sequence[_Arrow]) -> list[str]:
    ends = say("From the {first} to the {second}: {length}.", first=shaft.ends[0], second=shaft.ends[1], length=mm(shaft.length))
    return [ends, *(one.sentence for one in loads), *(one.sentence for one in supports)]
