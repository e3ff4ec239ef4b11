"""The upper half of a bearing on its sleeve, cut along the shaft, for the drawings that show how it moves.

Drawn with the nut at the left; the slope of the taper is drawn steeper than it is.
"""

from __future__ import annotations

from collections.abc import Callable

from generator.site.drawings.pen import Pen, Point

WIDTH = 290.0
HEIGHT = 176.0
To = Callable[[float, float], Point]


def slope(u: float) -> float:
    """Height of the sleeve's outer face over the centre line."""
    return 46 + max(0.0, u - 80) / 11


def shaft_and_sleeve(pen: Pen, to: To) -> None:
    """The shaft, cut off at both ends, and the sleeve: thread at the nut's end, thick at the other."""
    pen.path([to(0, 36), to(WIDTH, 36)], "edge")
    pen.path([to(0, 0), to(WIDTH, 0)], "axis")
    pen.path([to(26, 36), to(26, 46), to(80, 46), to(262, slope(262)), to(262, 36)], "part", closed=True)
    for i in range(6):
        pen.path([to(30 + i * 9, 46), to(33 + i * 9, 41)], "dim")


def nut(pen: Pen, to: To, face: float) -> None:
    """The nut, its face toward the ring."""
    pen.path([to(face - 26, 47), to(face, 47), to(face, 82), to(face - 26, 82)], "part", closed=True)


def bearing(pen: Pen, to: To, ring: float, housing: float) -> None:
    """Rings, ball and housing; `ring` and `housing`: where their faces toward the nut stand."""
    end = ring + 72
    pen.path([to(ring, slope(ring)), to(end, slope(end)), to(end, 80), to(ring, 80)], "part", closed=True, fill="cut")
    pen.path([to(ring + 2, 102), to(ring + 70, 102), to(ring + 70, 114), to(ring + 2, 114)], "part", closed=True, fill="cut")
    pen.circle(*to(ring + 36, 91), 13)
    pen.path([to(housing - 8, 114), to(housing + 80, 114), to(housing + 80, 134), to(housing - 8, 134)], "part", closed=True, fill="across")
