"""The second flange on a shaft: set off the frame by a gap, drawn up flush, then its nut turned. Gap and travel to one scale."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from markupsafe import Markup

from generator.say import say
from generator.site.drawings.pen import Drawn, Layout, Pen, Point, both
from generator.site.drawings.sleeve_section import bearing, nut, shaft_and_sleeve

_FRAME = 196.0
_MOST = 30.0  # how large the larger of gap and travel is drawn


@dataclass(frozen=True)
class FlangeGap:
    """`gap`: its size and, as words, the band on the page; `travel`: of the nut over its turn; `turn` and `source` as words."""

    gap: Drawn
    travel: Drawn
    turn: str
    source: str = ""


def flange_gap(data: FlangeGap, name: str) -> Markup:
    """Both layouts."""
    return both(lambda layout: flange_gap_for(data, name, layout))


def flange_gap_for(data: FlangeGap, name: str, layout: Layout) -> Markup:
    """The drawing for one layout: three stages, side by side or one under the other."""
    pen, said = Pen(layout, name), stages(data)
    per_mm = _MOST / max(data.gap.size, data.travel.size, 1e-9)
    y = low = 0.0
    for i, words in enumerate(said):
        x = 6 + i * (layout.width / 3) if not layout.narrow else 30
        _stage(pen, i, x, y, data.gap.size * per_mm, data.travel.size * per_mm)
        pen.text(x, y + 214 + layout.letter * 0.6, str(i + 1), "letter")
        under = pen.lines(x + 38, y + 208, words, (layout.width - x if layout.narrow else layout.width / 3) - 52)
        low = max(low, under)
        y = under + 12 if layout.narrow else 0
    wrong = list(_misfit(data))
    for words in wrong:
        low = pen.lines(4, low + 6, words, layout.width - 8, "bold")
    notes = [say("Gap and travel are drawn to one scale, larger than the parts."), *([data.source] if data.source else [])]
    low = pen.lines(4, low + 6, " ".join(notes), layout.width - 8)
    title = say("Second flange: gap {gap} at hand tight, drawn up flush, then the nut turned {turn}", gap=data.gap.words, turn=data.turn)
    return pen.svg(low + 4, title, " ".join([*said, *wrong]))


def stages(data: FlangeGap) -> tuple[str, str, str]:
    """What is done, in order."""
    return (
        say("Nut hand tight, mark set. Gap {gap} all round.", gap=data.gap.words),
        say("Draw the flange up, bolt by bolt, until flush. Leave the nut; no new mark."),
        say("Turn the nut {turn} from the first mark: it travels {travel}.", turn=data.turn, travel=data.travel.words),
    )


def _misfit(data: FlangeGap) -> Iterator[str]:
    """What would go wrong where gap and travel do not belong together; a gap a tenth wider than the travel is usual."""
    if data.travel.size > data.gap.size + 1e-9:
        yield say("The travel is more than the gap: the frame would stop the flange before the nut is turned that far.")
    elif data.travel.size < data.gap.size * 0.85:
        yield say("The travel is less than the gap: the nut would end short of the ring.")


def _stage(pen: Pen, stage: int, x: float, y: float, gap: float, travel: float) -> None:
    """Hand tight, the nut touches the ring. The flange takes the ring with it over the gap; the nut follows by its travel."""

    def to(u: float, v: float) -> Point:
        return x + u, y + 196 - v

    off = gap if stage == 0 else 0
    flange = _FRAME - off
    ring = flange - 88
    face = _FRAME - gap - 88 + (min(travel, gap) if stage == 2 else 0)
    shaft_and_sleeve(pen, to)
    pen.path([to(_FRAME, 76), to(_FRAME, 172), to(_FRAME + 24, 172), to(_FRAME + 24, 76)], "part", closed=True, fill="cut")
    bearing(pen, to, ring, flange - 80)
    with pen.group(f"flange {stage + 1}"):
        pen.path([to(flange - 20, 114), to(flange, 114), to(flange, 166), to(flange - 20, 166)], "part", closed=True, fill="across")
    pen.path([to(flange - 34, 145), to(_FRAME + 40, 145), to(_FRAME + 40, 153), to(flange - 34, 153)], "part", closed=True)
    pen.path([to(flange - 34, 140), to(flange - 22, 140), to(flange - 22, 158), to(flange - 34, 158)], "part", closed=True)
    with pen.group(f"nut {stage + 1}"):
        nut(pen, to, face)
    if stage == 0:
        pen.arrow(to(flange - 36, 180), to(flange, 180), size=12)
        pen.arrow(to(_FRAME + 36, 180), to(_FRAME, 180), size=12)
        pen.path([to(flange, 166), to(flange, 188)])
        pen.path([to(_FRAME, 172), to(_FRAME, 188)])
        pen.text(*to(_FRAME + 42, 174), say("gap"), "bold")
    elif stage == 1:
        pen.arrow(to(flange - 96, 149), to(flange - 40, 149), "mark", 20)
    else:
        pen.arrow(to(face - 90, 64), to(face - 30, 64), "mark", 20)
