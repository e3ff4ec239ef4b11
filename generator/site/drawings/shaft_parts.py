"""The things of a shaft drawing, in its own directions: u along the shaft, v across it; the board turns them into the drawing's."""

from __future__ import annotations

from dataclasses import dataclass
from math import cos, radians, sin

from generator.site.drawings.pen import Pen, Point
from generator.site.drawings.shaft_scale import Scale, pitch_of
from generator.site.drawings.strip import Carried, Section, Strip, Support

_STOP = 8.0
# half width and half height of a sign, where nothing is known of the part
_SIGN = {"pulley": (24, 20), "sprocket": (8, 22), "flights": (70, 18), "fan": (20, 30), "coupling": (16, 14), "part": (18, 14)}


@dataclass(frozen=True)
class Board:
    """Where the shaft's start lies, and whether it stands upright."""

    pen: Pen
    x: float
    y: float
    upright: bool

    def at(self, u: float, v: float) -> Point:
        """A point of the shaft on the drawing."""
        return (self.x - v, self.y + u) if self.upright else (self.x + u, self.y + v)

    def line(self, u1: float, v1: float, u2: float, v2: float, kind: str = "dim") -> None:
        """A straight line."""
        self.pen.path([self.at(u1, v1), self.at(u2, v2)], kind)

    def poly(self, points: list[Point], kind: str = "part", fill: str = "") -> None:
        """A closed shape."""
        self.pen.path([self.at(u, v) for u, v in points], kind, closed=True, fill=fill)

    def box(self, u1: float, u2: float, v1: float, v2: float, kind: str = "part", fill: str = "") -> None:
        """A box by two corners."""
        self.poly([(u1, v1), (u2, v1), (u2, v2), (u1, v2)], kind, fill)


@dataclass(frozen=True)
class Proportions:
    """Sizes of a drawing that depend on how close its bearings stand. `per_mm`: units for a millimetre of float."""

    half: float
    height: float
    foot: float
    bore: float
    per_mm: float
    thread: float

    @property
    def base(self) -> float:
        """Half the width of a foot."""
        return self.half * 1.3


def proportions(strip: Strip, along: Scale, narrow: bool) -> Proportions:
    """The sizes for a strip."""
    pitch = pitch_of(strip, along)
    half = min(16 if narrow else 24, pitch * 0.2)
    floats = [size for one in strip.supports if one.float and one.holds == "free" for size in (one.float.first.size, one.float.second.size)]
    room = max(2, min(14 if narrow else 34, pitch / 2 - half * 1.3 - _STOP - 1))
    bore = (28 if narrow else 36) / max(section.diameter for section in strip.sections) / 2
    return Proportions(
        half,
        28 if narrow else 36,
        62 if narrow else 74,
        bore,
        room / max(floats) if floats and max(floats) > 0 else 0,
        min(half, pitch / 2 - half * 1.05),
    )


def draw_shaft(board: Board, sections: tuple[Section, ...], along: Scale, size: Proportions) -> None:
    """The shaft, its steps, its centre line."""
    start, reach = 0.0, 34 if board.pen.layout.narrow else 60
    board.line(-reach, 0, along.span + reach, 0, "axis")
    for section in sections:
        r = max(section.diameter * size.bore, 5)
        board.box(along.at(start), along.at(section.to), -r, r)
        start = section.to
    board.line(-reach, 0, along.span + reach, 0, "axis")


def draw_turning(board: Board, strip: Strip, along: Scale, size: Proportions) -> None:
    """The arrow around the first end. One sees the end's face, so the near half of the ring lies toward the shaft's middle.

    Clockwise from the first end: with that end at the left the near side goes down, at the right up; at the top it goes left.
    """
    if not strip.turns:
        return
    inward = -1 if along.mirrored else 1
    centre, r, flat = along.at(0) - inward * (20 if board.pen.layout.narrow else 32), size.height - 6, 0.36

    def at(angle: float) -> Point:
        return board.at(centre + inward * flat * r * cos(radians(angle)), r * sin(radians(angle)))

    board.pen.path([at(100 + i * 4) for i in range(41)], "hidden")
    down = (strip.turns == "clockwise") != along.mirrored
    ways = {"both ways": ((0, 68), (0, -68))}.get(strip.turns, ((-72, 66),) if down else ((72, -66),))
    with board.pen.group("turning"):
        for start, end in ways:
            board.pen.bend(at, start, end)


def draw_support(board: Board, strip: Strip, support: Support, along: Scale, size: Proportions) -> None:
    """A bearing on its foot: solid where fixed; where free, a foot between stops as far off as it may float."""
    u, half, base = along.at(support.at), size.half, size.base
    r = radius_at(strip, support.at, size)
    foot = [(u - half, size.height - 4), (u + half, size.height - 4), (u + base, size.foot), (u - base, size.foot)]
    with board.pen.group(f"foot of {support.letter}"):
        board.poly(foot, "solid" if support.holds == "fixed" else "part")
    board.box(u - half, u + half, -size.height, size.height)
    for v in (-r, r):
        board.line(u - half, v, u + half, v, "hidden")
    if support.lock and support.lock_toward:
        with board.pen.group(f"{support.lock} of {support.letter}"):
            _lock(board, support.lock, u, lock_side(support, along), r, size)
    left, right = floats_drawn(support, along, size)
    stands = support.holds == "free" and support.float is not None
    outer = _STOP if stands else 0
    board.box(u - base - left - outer, u + base + right + outer, size.foot, size.foot + 8, "dim", "cut")
    board.line(u - base - left - outer, size.foot, u + base + right + outer, size.foot, "edge")
    if stands:
        with board.pen.group(f"stops of {support.letter}"):
            for stop, way in ((u - base - left, -1), (u + base + right, 1)):
                board.box(stop, stop + way * _STOP, size.foot - 14, size.foot, "solid")


def floats_drawn(support: Support, along: Scale, size: Proportions) -> tuple[float, float]:
    """The room drawn before and after a foot along the drawing."""
    if support.float is None or support.holds == "fixed":
        return 0, 0
    first, second = support.float.first.size * size.per_mm, support.float.second.size * size.per_mm
    return (second, first) if along.mirrored else (first, second)


def lock_side(support: Support, along: Scale) -> int:
    """Which way along the drawing the nut or collar stands: -1 or 1."""
    return 1 if (support.lock_toward == "second") != along.mirrored else -1


def radius_at(strip: Strip, at: float, size: Proportions) -> float:
    """The drawn radius of the shaft there."""
    return max(next((s.diameter for s in strip.sections if at <= s.to), strip.sections[-1].diameter) * size.bore, 5)


def _lock(board: Board, lock: str, u: float, side: int, r: float, size: Proportions) -> None:
    face, reach = u + side * size.half, size.thread
    if lock == "nut":
        board.box(face, face + side * reach, -r - 2, r + 2)
        for i in range(1, 5):
            board.line(face + side * reach * (0.42 + 0.13 * i), -r - 2, face + side * reach * (0.36 + 0.13 * i), r + 2)
        board.box(face, face + side * reach * 0.42, -r - 9, r + 9)
        return
    board.box(
        face,
        face + side * reach * (0.8 if lock == "collar" else 0.5),
        -r - (9 if lock == "collar" else 4),
        r + (9 if lock == "collar" else 4),
    )
    middle = face + side * reach * (0.4 if lock == "collar" else 0.25)
    board.box(middle - 2, middle + 2, -r - (9 if lock == "collar" else 8), -r + 2, "solid")


@dataclass(frozen=True)
class Extent:
    """A carried part as drawn: its middle, half its length, half its height, whether its rim is left out."""

    u: float
    half: float
    high: float
    broken: bool


def extent(part: Carried, along: Scale, size: Proportions, narrow: bool) -> Extent:
    """How a part is drawn: to its own size where that is known and fits, else as a sign of its kind."""
    sign, tall = _SIGN[part.kind]
    known = abs(along.at(part.at + part.length / 2) - along.at(part.at - part.length / 2)) / 2
    half = max(known if part.length else sign * (0.6 if narrow else 1), 4)
    wanted = max(part.diameter * size.bore, 14) if part.diameter else tall
    high = min(wanted, size.height)
    broken = bool(part.diameter) and wanted > size.height and part.kind in ("pulley", "sprocket", "part")
    return Extent(along.at(part.at), half, high, broken)


def draw_carried(board: Board, part: Carried, drawn: Extent) -> None:
    """A part on the shaft, as its kind."""
    draw = {"flights": _flights, "sprocket": _sprocket, "fan": _fan, "coupling": _coupling}.get(part.kind, _plain)
    draw(board, drawn.u, drawn.half, drawn.high)
    if drawn.broken:
        for v in (-drawn.high, drawn.high):
            _broken_off(board, drawn.u, drawn.half, v)


def _broken_off(board: Board, u: float, half: float, v: float) -> None:
    """The line that says a part goes on."""
    board.box(u - half - 3, u + half + 3, v - 3, v + 3, "blank")
    wave = min(5, half / 2)
    line = ((-half - 4, 0), (-wave, 0), (-wave / 2, -6), (wave / 2, 6), (wave, 0), (half + 4, 0))
    board.pen.path([board.at(u + a, v + b) for a, b in line])


def _plain(board: Board, u: float, half: float, high: float) -> None:
    board.box(u - half, u + half, -high, high)
    board.line(u, -high - 6, u, high + 6, "axis")


def _flights(board: Board, u: float, half: float, high: float) -> None:
    count = max(2, round(half / 16))
    step = 2 * half / count
    for i in range(count):
        a = u - half + i * step
        board.pen.path([board.at(a + step * (0.5 - 0.5 * cos(radians(t * 9))), -high * cos(radians(t * 9))) for t in range(21)], "edge")


def _sprocket(board: Board, u: float, half: float, high: float) -> None:
    board.box(u - half, u + half, -high, high)
    for v in (-high, high):
        sign = 1 if v > 0 else -1
        board.poly([(u - half, v), (u - half * 0.4, v + sign * 6), (u + half * 0.4, v + sign * 6), (u + half, v)])
    for k in range(1, 4):
        board.line(u - half, -high + k * high / 4, u + half, -high + k * high / 4)
        board.line(u - half, high - k * high / 4, u + half, high - k * high / 4)


def _fan(board: Board, u: float, half: float, high: float) -> None:
    board.poly(
        [(u - half, -high), (u + half * 0.6, -high * 0.8), (u + half, -10), (u + half, 10), (u + half * 0.6, high * 0.8), (u - half, high)]
    )
    for v in (-0.75, -0.5, 0.5, 0.75):
        board.line(u - half, high * v, u + half * 0.75, high * v * 0.85)


def _coupling(board: Board, u: float, half: float, high: float) -> None:
    board.box(u - half, u - 2, -high * 0.7, high * 0.7)
    board.box(u + 2, u + half, -high * 0.7, high * 0.7)
    board.box(u - 8, u - 2, -high, high)
    board.box(u + 2, u + 8, -high, high)
