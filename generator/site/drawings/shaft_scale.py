"""Where along the drawn shaft a length lies: to scale as far as bearings stay apart, stretched where they would not."""

from __future__ import annotations

from bisect import bisect_right
from dataclasses import dataclass
from itertools import pairwise

from generator.site.drawings.strip import Strip
from generator.site.drawings.words import apart


@dataclass(frozen=True)
class Scale:
    """Lengths in mm to units from the drawing's start; `true` where one scale holds throughout."""

    knots: tuple[tuple[float, float], ...]
    mirrored: bool
    span: float
    true: bool

    def at(self, length: float) -> float:
        """Where a length lies."""
        length = min(max(length, self.knots[0][0]), self.knots[-1][0])
        i = min(max(bisect_right([mm for mm, _ in self.knots], length) - 1, 0), len(self.knots) - 2)
        (mm1, u1), (mm2, u2) = self.knots[i], self.knots[i + 1]
        u = u1 + (length - mm1) / (mm2 - mm1) * (u2 - u1) if mm2 > mm1 else u1
        return self.span - u if self.mirrored else u


def scale(strip: Strip, span: float, least_pitch: float) -> Scale:
    """The scale of a strip drawn over a span, bearings at least a pitch apart."""
    length = strip.length
    places = sorted(one.at for one in strip.supports)
    pitch = min(least_pitch, span / max(1, len(places)))
    wanted = [min(max(mm / length, 0), 1) * span for mm in places]
    drawn = apart([(u, pitch) for u in wanted], -pitch / 2, span + pitch / 2)
    knots = sorted({0.0: 0.0, length: span} | dict(zip(places, drawn, strict=True)))
    inside = {0.0: 0.0, length: span} | dict(zip(places, drawn, strict=True))
    true = all(abs(a - b) < 0.5 for a, b in zip(wanted, drawn, strict=True))
    return Scale(
        tuple((mm, inside[mm]) for mm in knots if 0 <= mm <= length), strip.upright is False and not strip.first_end_left, span, true
    )


def pitch_of(strip: Strip, along: Scale) -> float:
    """The least distance of two bearings as drawn."""
    places = sorted(along.at(one.at) for one in strip.supports)
    return min([b - a for a, b in pairwise(places)] + [along.span])
