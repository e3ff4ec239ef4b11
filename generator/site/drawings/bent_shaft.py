"""What a drawing of a shaft under its loads is told, and where on the page its places lie."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from math import floor, log10

from generator.say import say
from generator.site.drawings.pen import Drawn, Pen

_THIN, _THICK = 14.0, 44.0
_BESIDE = 9.0  # half an arrow's head, and a little


@dataclass(frozen=True)
class SupportLoad:
    """A bearing under the shaft, at so many mm. `size` in N, below 0 where the shaft presses on it against the way of the others.

    `clock`: the way the shaft presses on it. `slope_words`: how the shaft slopes in it.
    """

    letter: str
    at: float
    size: float
    words: str
    clock: str
    slope_words: str = ""


@dataclass(frozen=True)
class ActingLoad:
    """What acts on the shaft, at so many mm. `size` in N; `clock`: the way it pulls."""

    name: str
    at: float
    size: float
    words: str
    clock: str


@dataclass(frozen=True)
class BentShaft:
    """`sections`: up to where (mm), how thick (mm). `line`: place and deflection in mm, above 0 the way the shaft bends most.

    Everything is counted from the first of the two ends, which is drawn at the left.
    """

    length: float
    sections: tuple[tuple[float, float], ...]
    supports: tuple[SupportLoad, ...]
    loads: tuple[ActingLoad, ...]
    line: tuple[tuple[float, float], ...]
    deepest: Drawn | None
    ends: tuple[str, str]
    upright: bool = False

    @property
    def deepest_at(self) -> float:
        """Where it bends most."""
        return max(self.line, key=lambda point: abs(point[1]))[0]


@dataclass(frozen=True)
class Board:
    """The page under one drawing, and its scales: units for a mm along, a mm of thickness, a newton; how much too large the bending is."""

    pen: Pen
    shaft: BentShaft
    margin: float
    per_mm: float
    per_thick: float
    per_newton: float
    longest: float
    bend_times: float

    def x(self, at: float) -> float:
        """Where a place along the shaft lies."""
        return self.margin + at * self.per_mm

    def thick(self, diameter: float) -> float:
        """From the axis to the surface."""
        return diameter / 2 * self.per_thick

    @property
    def thickest(self) -> float:
        """From the axis to the surface where the shaft is thickest."""
        return max(self.thick(diameter) for _, diameter in _sections(self.shaft))

    def radius(self, at: float) -> float:
        """From the axis to the surface at a place, the thicker beside a step, so that an arrow stands clear of it."""
        beside, start, found = _BESIDE / self.per_mm, 0.0, [0.0]
        for to, diameter in _sections(self.shaft):
            if start - beside <= at <= to + beside:
                found.append(diameter)
            start = to
        return self.thick(max(found))

    def corners(self) -> Iterator[tuple[float, float]]:
        """Place and diameter at both ends of each section, from the first end."""
        start = 0.0
        for to, diameter in _sections(self.shaft):
            yield start, diameter
            yield to, diameter
            start = to


def board_of(shaft: BentShaft, pen: Pen) -> Board:
    """The scales a shaft is drawn to."""
    narrow = pen.layout.narrow
    margin, longest, sag = (34.0, 64.0, 46.0) if narrow else (60.0, 90.0, 64.0)
    per_mm = (pen.layout.width - 2 * margin) / max(shaft.length, 1e-9)
    thickest = max(diameter for _, diameter in _sections(shaft))
    drawn = min(max(thickest * per_mm, _THIN), _THICK)
    force = max([abs(one.size) for one in shaft.loads] + [abs(one.size) for one in shaft.supports] + [0.0])
    worst = max((abs(deflection) for _, deflection in shaft.line), default=0.0)
    times = _two_figures(sag / worst / per_mm) if worst > 0 else 0.0
    return Board(pen, shaft, margin, per_mm, drawn / thickest, longest / force if force else 0.0, longest if force else 20.0, times)


def held(support: SupportLoad) -> str:
    """What a bearing carries, and the way it is pressed."""
    force = no_break(support.words)
    return say("{force} toward {clock}", force=force, clock=no_break(support.clock)) if support.clock else force


def mm(place: float) -> str:
    """A place along the shaft."""
    return no_break(say("{distance} mm", distance=f"{round(place, 1):.10g}"))


def no_break(words: str) -> str:
    """Words that stay on one line."""
    return words.replace(" ", "\u00a0")


def _sections(shaft: BentShaft) -> tuple[tuple[float, float], ...]:
    """Its sections inside its length; the last reaches to its end."""
    inside = [(to, diameter) for to, diameter in sorted(shaft.sections) if to < shaft.length and diameter > 0]
    last = next((diameter for to, diameter in sorted(shaft.sections) if to >= shaft.length and diameter > 0), None)
    return (*inside, (shaft.length, last or (inside[-1][1] if inside else 1.0)))


def _two_figures(number: float) -> float:
    power = floor(log10(number)) - 1
    return float(f"{floor(number / 10.0**power + 1e-9)}e{power}")
