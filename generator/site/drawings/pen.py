"""The pen every drawing is made with: lines, arrows, words that keep their size, and the SVG around them.

No text is scaled: a drawing is laid out twice, for the width of a desk or kiosk and for that of a phone, and shown one to one.
"""

from __future__ import annotations

import re
from collections.abc import Callable, Iterable, Iterator, Sequence
from contextlib import contextmanager
from dataclasses import dataclass
from math import atan2, cos, degrees, pi, radians, sin

from markupsafe import Markup, escape

from generator.site.drawings.words import wrap

Point = tuple[float, float]


@dataclass(frozen=True)
class Layout:
    """One width a drawing is laid out for, with the sizes of its text."""

    name: str
    width: float
    text: float
    strong: float
    letter: float

    def size(self, kind: str) -> float:
        """The size of a kind of text: "", "bold", "strong" or "letter"."""
        return {"strong": self.strong, "letter": self.letter}.get(kind, self.text)

    @property
    def line(self) -> float:
        """From one line of text to the next."""
        return self.text * 1.3

    @property
    def narrow(self) -> bool:
        """Whether this is the phone's."""
        return self.name == "narrow"


WIDE = Layout("wide", 1232, 20, 24, 40)
PANEL = Layout("wide", 960, 20, 24, 40)  # beside the heading of a stage of work
NARROW = Layout("narrow", 358, 16, 18, 32)


@dataclass(frozen=True)
class Drawn:
    """A number as it is drawn, and as the page shows it."""

    size: float
    words: str


class Pen:
    """Collects the marks of one drawing."""

    def __init__(self, layout: Layout, name: str) -> None:
        self.layout = layout
        self.name = re.sub(r"[^\w.-]", "-", name) + "-" + layout.name
        self.out: list[str] = []

    @contextmanager
    def group(self, part: str) -> Iterator[None]:
        """All that is drawn within belongs to one named part."""
        self.out.append(f'<g data-part="{escape(part)}">')
        yield
        self.out.append("</g>")

    def path(self, points: Iterable[Point], kind: str = "dim", *, closed: bool = False, fill: str = "") -> None:
        """A line through points; `fill` names a hatching: "cut", "across" or "held"."""
        d = "M" + "L".join(f"{x:.1f},{y:.1f}" for x, y in points) + ("Z" if closed else "")
        self.out.append(f'<path class="{kind}"{self._fill(fill)} d="{d}"/>')

    def line(self, x1: float, y1: float, x2: float, y2: float, kind: str = "dim") -> None:
        """A straight line."""
        self.path([(x1, y1), (x2, y2)], kind)

    def rect(self, x1: float, y1: float, x2: float, y2: float, kind: str = "part", fill: str = "") -> None:
        """A box by two of its corners."""
        left, top, width, height = min(x1, x2), min(y1, y2), abs(x2 - x1), abs(y2 - y1)
        self.out.append(f'<rect class="{kind}"{self._fill(fill)} x="{left:.1f}" y="{top:.1f}" width="{width:.1f}" height="{height:.1f}"/>')

    def circle(self, x: float, y: float, r: float, kind: str = "part", fill: str = "") -> None:
        """A circle."""
        self.out.append(f'<circle class="{kind}"{self._fill(fill)} cx="{x:.1f}" cy="{y:.1f}" r="{r:.1f}"/>')

    def text(self, x: float, y: float, words: str, kind: str = "", anchor: str = "start") -> None:
        """Words on one line, y at their foot."""
        self.out.append(f'<text class="{kind}" x="{x:.1f}" y="{y:.1f}" text-anchor="{anchor}">{escape(words)}</text>')

    def lines(self, x: float, y: float, words: str, room: float, kind: str = "", anchor: str = "start") -> float:
        """Words broken to the room, the first line's top at y; gives the y under the last."""
        size = self.layout.size(kind)
        for row in wrap(words, room, size, bold=bool(kind)):
            self.text(x, y + size, row, kind, anchor)
            y += size * 1.3
        return y

    def head(self, tip: Point, toward: float, size: float, kind: str = "tip") -> None:
        """The head of an arrow; toward in degrees, 0 right, 90 down."""
        angle = radians(toward)

        def at(back: float, aside: float) -> Point:
            return tip[0] - back * cos(angle) - aside * sin(angle), tip[1] - back * sin(angle) + aside * cos(angle)

        self.path([tip, at(size, size * 0.38), at(size, -size * 0.38)], kind, closed=True)

    def arrow(self, start: Point, end: Point, kind: str = "dim", size: float = 14) -> None:
        """A straight arrow; "mark" in the accent, "dim" thin."""
        angle = atan2(end[1] - start[1], end[0] - start[0])
        self.path([start, (end[0] - size * 0.8 * cos(angle), end[1] - size * 0.8 * sin(angle))], kind)
        self.head(end, degrees(angle), size, "mark-tip" if kind == "mark" else "tip")

    def bend(self, at: Callable[[float], Point], start: float, end: float, kind: str = "mark", size: float = 18) -> None:
        """An arrow along a curve, from one parameter to the other."""
        points = [at(start + (end - start) * i / 40) for i in range(41)]
        last, near = points[-1], next((p for p in reversed(points) if _apart(p, points[-1]) > size * 0.8), points[0])
        self.path([p for p in points if _apart(p, last) > size * 0.7], kind)
        self.head(last, degrees(atan2(last[1] - near[1], last[0] - near[0])), size, "mark-tip" if kind == "mark" else "tip")

    def svg(self, height: float, title: str, description: str, role: str = "img") -> Markup:
        """The whole drawing with its text alternative. A drawing with links in it is a "group", or they could not be reached."""
        width, name = self.layout.width, self.name
        return Markup(
            f'<svg xmlns="http://www.w3.org/2000/svg" class="pic {self.layout.name}" viewBox="0 0 {width:.0f} {height:.0f}"'
            f' style="max-width:{width:.0f}px" role="{role}" aria-labelledby="{name}-title {name}-desc">'
            f'<title id="{name}-title">{escape(title)}</title><desc id="{name}-desc">{escape(description)}</desc>'
            f"<defs>{self._hatch('cut', 45, 9, 1.2)}{self._hatch('across', -45, 9, 1.2)}{self._hatch('held', 45, 12, 6)}</defs>"
            + "".join(self.out)
            + "</svg>"
        )

    def _fill(self, fill: str) -> str:
        return f' style="fill:url(#{self.name}-{fill})"' if fill else ""

    def _hatch(self, kind: str, turn: float, pitch: float, thick: float) -> str:
        size = f'width="{pitch}" height="{pitch}"'
        lines = f'<path class="hatch" style="stroke-width:{thick}" d="M{pitch / 2},0V{pitch}"/>'
        return (
            f'<pattern id="{self.name}-{kind}" {size} patternUnits="userSpaceOnUse" patternTransform="rotate({turn})">'
            f'<rect class="blank" {size}/>{lines}</pattern>'
        )


def both(draw: Callable[[Layout], Markup], wide: Layout = PANEL) -> Markup:
    """A drawing laid out for desk and phone; the style shows the one that fits."""
    return draw(wide) + draw(NARROW)


def around(centre: Point, radius: float, angle: float) -> Point:
    """A point on a circle; the angle in degrees clockwise from 12 o'clock."""
    return centre[0] + radius * sin(radians(angle)), centre[1] - radius * cos(radians(angle))


def ring(centre: Point, radius: float, start: float, end: float) -> Sequence[Point]:
    """Points along a circle, fine enough to look round."""
    count = max(2, int(abs(end - start) * pi / 180 * radius / 4))
    return [around(centre, radius, start + (end - start) * i / count) for i in range(count + 1)]


def _apart(one: Point, other: Point) -> float:
    return float(((one[0] - other[0]) ** 2 + (one[1] - other[1]) ** 2) ** 0.5)
