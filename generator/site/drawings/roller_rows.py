"""The side free of load of a bearing with rollers, cut along the shaft: the blade between roller and outer ring, in each row."""

from __future__ import annotations

from generator.site.drawings.pen import Pen, Point
from generator.site.drawings.sleeve_section import To

_MIDDLE, _HALF = 88.0, 56.0
_GAP = 8.0


def _race(u: float, rows: int) -> float:
    """How far from the bore the outer raceway lies: hollow for two rows, straight for one."""
    return 112 + (12 * (1 - ((u - _MIDDLE) / _HALF) ** 2) if rows == 2 else 8)


def roller_rows(pen: Pen, rows: int, side: int, start: Point, size: float) -> None:
    """Drawn with the gap below for side 1, above for -1."""

    def to(u: float, v: float) -> Point:
        return start[0] + u * size, start[1] + (v if side > 0 else 168 - v) * size

    left, right = _MIDDLE - _HALF, _MIDDLE + _HALF
    steps = [left + (right - left) * i / 20 for i in range(21)]
    pen.path([to(left - 22, 12), to(right + 22, 12), to(right + 22, 44), to(left - 22, 44)], "part", closed=True, fill="cut")
    pen.path([to(left, 44), to(right, 44), to(right, 70), to(left, 70)], "part", closed=True, fill="across")
    with pen.group("outer ring cut"):
        pen.path([*(to(u, _race(u, rows)) for u in steps), to(right, 150), to(left, 150)], "part", closed=True, fill="across")
    for number, middle in enumerate((_MIDDLE - 28, _MIDDLE + 28) if rows == 2 else (_MIDDLE,), 1):
        with pen.group(f"roller {number}"):
            _roller(pen, to, middle, rows)
        out = -1 if middle < _MIDDLE else 1
        inner, beyond = middle - out * 18, left - 24 if out < 0 else right + 24
        along = [inner + (beyond - inner) * i / 12 for i in range(13)]
        with pen.group(f"blade {number}"):
            pen.path([to(u, _race(min(max(u, left), right), rows) - _GAP / 2) for u in along], "mark")
        foot = _race(left if out < 0 else right, rows) - _GAP / 2 - 16
        pen.arrow(to(beyond - out * 24, foot), to(beyond, foot), "dim", 10)
        pen.arrow(to(beyond, foot), to(beyond - out * 24, foot), "dim", 10)


def _roller(pen: Pen, to: To, middle: float, rows: int) -> None:
    """Its axis lies along the raceway under it."""
    slope = _race(middle + 1, rows) - _race(middle, rows)
    half = 22.0 if rows == 2 else 30.0
    near, far = 70.0, _race(middle, rows) - _GAP
    corners = [(-half, near), (half, near), (half, far), (-half, far)]
    pen.path([to(middle + u, v + slope * u) for u, v in corners], "part", closed=True)
