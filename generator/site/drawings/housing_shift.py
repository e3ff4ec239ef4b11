"""Which way a bearing goes along the shaft while its nut is tightened, and how far."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from markupsafe import Markup

from generator.say import say
from generator.site.drawings.panel import PICTURE, words_beside
from generator.site.drawings.pen import Drawn, Layout, Pen, Point, both
from generator.site.drawings.sleeve_section import WIDTH, bearing, nut, shaft_and_sleeve

_MOST = 34.0


@dataclass(frozen=True)
class HousingShift:
    """Least and most of the way; `band` as the page shows it. `nut_left`: on which side the nut is seen.

    `toward`: the end it goes toward. The housing goes away from the nut; where it is the shaft that moves, it comes toward the nut.
    """

    least: Drawn
    most: Drawn
    band: str
    toward: str
    nut_left: bool = True
    shaft_moves: bool = False


def housing_shift(shift: HousingShift, name: str) -> Markup:
    """Both layouts."""
    return both(lambda layout: housing_shift_for(shift, name, layout))


def housing_shift_for(shift: HousingShift, name: str, layout: Layout) -> Markup:
    """The drawing for one layout."""
    pen = Pen(layout, name)

    def to(u: float, v: float) -> Point:
        return (30 + u if shift.nut_left else PICTURE - 30 - u), 196 - v

    per_mm = _MOST / max(shift.most.size, 1e-9)
    least, most = shift.least.size * per_mm, shift.most.size * per_mm
    ring = 98 + most
    shaft_and_sleeve(pen, to)
    pen.path([to(98, 46), to(98, 80), to(170, 80)], "hidden")
    bearing(pen, to, ring, ring + 8)
    with pen.group("nut"):
        nut(pen, to, ring)
    pen.path([to(98, 148), to(98, 46)], "hidden")
    limits = [to(98 + least, 150), to(98 + most, 150), to(98 + most, 164), to(98 + least, 164)]
    with pen.group("band"):
        pen.path(limits, "edge", closed=True, fill="cut")
    pen.path([to(98, 157), to(98 + least, 157)], "edge")
    pen.path([to(98, 148), to(98, 166)], "edge")
    ends = (to(WIDTH - 130, 18), to(WIDTH - 60, 18))[::-1] if shift.shaft_moves else (to(ring + 94, 124), to(ring + 150, 124))
    with pen.group("way"):
        pen.arrow(*ends, kind="mark", size=22)
    lines = list(_words(shift))
    title = _title(shift)
    y = words_beside(pen, 204, [(title, "strong"), (shift.band, "letter"), *((line, "") for line in lines)])
    return pen.svg(y, _title_with_band(shift), " ".join(lines))


def _title(shift: HousingShift) -> str:
    if shift.shaft_moves:
        return say("The shaft comes toward the nut, toward the {end}", end=shift.toward)
    return say("The housing goes away from the nut, toward the {end}", end=shift.toward)


def _title_with_band(shift: HousingShift) -> str:
    if shift.shaft_moves:
        return say("The shaft comes toward the nut, toward the {end}, by {band}", end=shift.toward, band=shift.band)
    return say("The housing goes away from the nut, toward the {end}, by {band}", end=shift.toward, band=shift.band)


def _words(shift: HousingShift) -> Iterator[str]:
    yield say("Counted from hand tight, drawn dashed. Hatched: from the least to the most.")
    if not shift.shaft_moves:
        yield say("Leave that much room in the bolt slots, with the bolts finger loose, while the nut is turned.")
    yield say("Travel and taper are drawn larger than the parts.")
