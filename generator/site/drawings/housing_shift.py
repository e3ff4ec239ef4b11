"""Which way a bearing goes along the shaft while its nut is tightened, how far, and the room its bolts have for it in their slots."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from typing import Literal

from markupsafe import Markup

from generator.say import say
from generator.site.drawings.panel import PICTURE, words_beside
from generator.site.drawings.pen import Drawn, Layout, Pen, Point, around, both
from generator.site.drawings.sleeve_section import WIDTH, bearing, nut, shaft_and_sleeve

_MOST = 34.0
_ROOM, _BOLT = 96.0, 22.0  # the room of a bolt in its slot as drawn, half a bolt
Stands = Literal["slots", "bore", "guide", "free"]


@dataclass(frozen=True)
class HousingShift:
    """Least and most of the way; `band` as the page shows it. `nut_left`: on which side the nut is seen.

    `toward`: the end it goes toward. The housing goes away from the nut; where it is the shaft that moves, it comes toward the nut.
    `stands`: what lets the housing go. `slot`: room of a bolt in its slot, `left`: what is left of it as words. `pulled`: first pulled to the nut.
    """

    least: Drawn
    most: Drawn
    band: str
    toward: str
    nut_left: bool = True
    shaft_moves: bool = False
    stands: Stands = "free"
    slot: Drawn | None = None
    left: str = ""
    pulled: bool = False

    @property
    def pinched(self) -> bool:
        """Whether the room it has in the slots is less than its way: the whole of it where it is pulled toward the nut first, else half."""
        return self.slot is not None and self.most.size > self.slot.size * (1 if self.pulled else 0.5) + 1e-9


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
    height = _slot(pen, shift, 232) if shift.slot and not shift.shaft_moves else 204
    lines = list(_words(shift))
    y = words_beside(pen, height, [(_title(shift), "strong"), (shift.band, "letter"), *lines])
    return pen.svg(y, _title_with_band(shift), " ".join(words for words, _ in lines))


def _slot(pen: Pen, shift: HousingShift, y: float) -> float:
    """A bolt in its slot from above, at hand tight. The slot goes with the housing, so the bolt's way in it is toward the nut."""
    assert shift.slot
    away = 1 if shift.nut_left else -1  # the side away from the nut
    middle, high = PICTURE / 2, y + _BOLT + 10
    per_mm = _ROOM / max(shift.slot.size, shift.most.size, 1e-9)
    room = shift.slot.size * per_mm
    half = room / 2
    centre = middle + away * (half if shift.pulled else 0)
    end = 7.0
    outline = [around((middle + side * half, high), _BOLT + end, start + 15 * i) for side, start in ((1, 0), (-1, 180)) for i in range(13)]
    with pen.group("foot"):
        pen.rect(14, y - 10, PICTURE - 14, high + _BOLT + 22, "part")
    with pen.group("slot"):
        pen.path(outline, "part", closed=True)
    edge = centre - away * _BOLT
    with pen.group("slot used"):
        pen.rect(edge, high - 12, edge - away * shift.most.size * per_mm, high + 12, "edge", "cut")
    with pen.group("bolt"):
        pen.circle(centre, high, _BOLT, "solid")
    if shift.pulled:
        with pen.group("pulled"):
            pen.arrow((middle - away * 60, high + _BOLT + 34), (middle - away * 140, high + _BOLT + 34), "mark", 20)
        return high + _BOLT + 50
    return high + _BOLT + 30


def _title(shift: HousingShift) -> str:
    if shift.shaft_moves:
        return say("The shaft comes toward the nut, toward the {end}", end=shift.toward)
    return say("The housing goes away from the nut, toward the {end}", end=shift.toward)


def _title_with_band(shift: HousingShift) -> str:
    if shift.shaft_moves:
        return say("The shaft comes toward the nut, toward the {end}, by {band}", end=shift.toward, band=shift.band)
    return say("The housing goes away from the nut, toward the {end}, by {band}", end=shift.toward, band=shift.band)


def _words(shift: HousingShift) -> Iterator[tuple[str, str]]:
    if not shift.shaft_moves:
        yield from _room(shift)
    yield say("Counted from hand tight, drawn dashed. Hatched: from the least to the most."), ""
    yield say("Travel and taper are drawn larger than the parts."), ""


def _room(shift: HousingShift) -> Iterator[tuple[str, str]]:
    if shift.pulled:
        yield (
            {
                "slots": say("Before hand tight: pull the housing toward the nut until its bolts touch their slots."),
                "bore": say("Before hand tight: pull the cartridge toward the nut as far as it goes."),
                "guide": say("Before hand tight: pull the unit toward the nut until it touches its guides."),
                "free": say("Before hand tight: pull the housing toward the nut as far as it goes."),
            }[shift.stands],
            "bold",
        )
    elif shift.stands == "slots":
        yield say("Bolts finger loose, in the middle of their slots."), "bold"
    if shift.slot and shift.pinched:
        yield say("The slots have {room} of room, less than it goes: the bolts would be pinched.", room=shift.slot.words), "bold"
    elif shift.slot and shift.pulled:
        yield say("Room in the slots {room}. Left after the turn: {left} or more.", room=shift.slot.words, left=shift.left), "bold"
    elif shift.slot:
        yield say("Room in the slots {room}, half of it each way.", room=shift.slot.words), ""
    if shift.stands == "slots":
        yield say("Bolts stay finger loose while the nut is turned."), ""
