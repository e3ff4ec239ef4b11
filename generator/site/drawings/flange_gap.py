"""The second flange on a shaft: set off the frame by a gap, drawn up flush, then its nut turned. Gap and travel to one scale."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from math import sqrt
from typing import Literal

from markupsafe import Markup

from generator.say import say
from generator.site.drawings.bolts import ORDER
from generator.site.drawings.panel import PICTURE, words_beside
from generator.site.drawings.pen import Drawn, Layout, Pen, Point, around, both
from generator.site.drawings.sleeve_section import To, bearing, nut, shaft_and_sleeve

_FRAME = 196.0
_MOST = 30.0  # how large the larger of gap and travel is drawn
Frame = Literal["opposite the nut", "nut side", ""]


@dataclass(frozen=True)
class FlangeGap:
    """`least` and `most` of the gap, `gap` both as words; `travel`: of the nut over its turn; `turn` and `source` as words.

    Least, most or travel None: withheld. `frame`: the side of the flange its frame stands on. `nut_toward`: the end, for the words.
    """

    least: Drawn | None
    most: Drawn | None
    gap: str
    travel: Drawn | None
    turn: str
    bolts: int = 4
    frame: Frame = "opposite the nut"
    nut_toward: str = ""
    source: str = ""

    @property
    def held(self) -> bool:
        """Whether there is a gap to set: its figures are on file, and the frame is where the flange closes it."""
        return self.least is None or self.most is None or self.travel is None or self.frame != "opposite the nut"


def flange_gap(data: FlangeGap, name: str) -> Markup:
    """Both layouts."""
    return both(lambda layout: flange_gap_for(data, name, layout))


def flange_gap_for(data: FlangeGap, name: str, layout: Layout) -> Markup:
    """The drawing for one layout: three stages, side by side or one under the other, and the flange with a shim at every bolt."""
    pen = Pen(layout, name)
    if data.held:
        return _held(pen, data)
    assert data.least and data.most and data.travel
    said = stages(data)
    per_mm = _MOST / max(data.most.size, data.travel.size, 1e-9)
    y = low = 0.0
    for i, words in enumerate(said):
        x = 6 + i * (layout.width / 3) if not layout.narrow else 30
        _stage(pen, i, (x, y), (data.least.size * per_mm, data.most.size * per_mm, data.travel.size * per_mm))
        pen.text(x, y + 214 + layout.letter * 0.6, str(i + 1), "letter")
        under = pen.lines(x + 38, y + 208, words, (layout.width - x if layout.narrow else layout.width / 3) - 52)
        low = max(low, under)
        y = under + 12 if layout.narrow else 0
    wrong = list(_misfit(data))
    for words in wrong:
        low = pen.lines(4, low + 6, words, layout.width - 8, "bold")
    low = _all_round(pen, data, low + 10)
    return pen.svg(low + 4, _title(data), " ".join([*said, *wrong, *_notes(data)]))


def stages(data: FlangeGap) -> tuple[str, str, str]:
    """What is done, in order."""
    return (
        say("Nut hand tight, mark set. Gap {gap} at every bolt.", gap=data.gap),
        say("Draw the flange up, bolt by bolt, until flush. Leave the nut; no new mark."),
        say(
            "Turn the nut {turn} from the first mark: it travels {travel}.", turn=data.turn, travel=data.travel.words if data.travel else ""
        ),
    )


def _title(data: FlangeGap) -> str:
    if data.frame == "nut side":
        return say("Second flange, frame on the nut side: HELD, the gap does not close")
    if data.held:
        return say("Second flange: HELD, no gap to set")
    return say("Second flange: gap {gap} at hand tight, drawn up flush, then the nut turned {turn}", gap=data.gap, turn=data.turn)


def _misfit(data: FlangeGap) -> Iterator[str]:
    """What would go wrong where gap and travel do not belong together; a gap a tenth wider than the travel is usual."""
    assert data.least and data.most and data.travel
    if data.travel.size > data.least.size + 1e-6:
        yield say("The travel is more than the gap: the frame would stop the flange before the nut is turned that far.")
    elif data.travel.size < data.most.size * 0.85:
        yield say("The travel is less than the gap: the nut would end short of the ring.")


def _notes(data: FlangeGap) -> Iterator[str]:
    yield say("A shim at every bolt, the same feel at each: its tail outside the flange.")
    if data.nut_toward:
        yield say("Drawn with the nut at the left: toward the {end}. The frame is on the other side of the flange.", end=data.nut_toward)
    yield say("Gap and travel are drawn to one scale, larger than the parts.")
    if data.source:
        yield data.source


def _all_round(pen: Pen, data: FlangeGap, y: float) -> float:
    """The flange from the front with a shim at each bolt, and the gap in figures beside it; gives the y under both."""
    size, places = 0.72, ORDER.get(data.bolts, ORDER[4])
    centre = (PICTURE / 2, y + (104 if len(places) > 2 else 60))
    half = {2: (148, 46), 3: (134, 134)}.get(len(places), (126, 122))
    with pen.group("flange from the front"):
        if len(places) == 3:
            pen.circle(*centre, 134 * size)
        else:
            pen.rect(centre[0] - half[0] * size, centre[1] - half[1] * size, centre[0] + half[0] * size, centre[1] + half[1] * size)
        pen.circle(*centre, 30)
        pen.circle(*centre, 17)
    for u, v in places:
        at = (centre[0] + u * size, centre[1] + v * size)
        out = 1 if u > 0 else -1
        edge = half[0] * size if len(places) != 3 else sqrt((134 * size) ** 2 - (v * size + 23) ** 2)
        with pen.group("shim"):
            pen.rect(at[0] - out * 12, at[1] + 17, centre[0] + out * (edge + 26), at[1] + 29, "mark")
        pen.path([around(at, 16, 30 + 60 * i) for i in range(6)], "part", closed=True)
    notes = [(words, "") for words in _notes(data)]
    return words_beside(pen, 2 * centre[1] - y - 4, [(data.gap, "letter"), *notes], y)


def _held(pen: Pen, data: FlangeGap) -> Markup:
    """The flange at its frame with a hatched bar where the gap would be."""
    mirrored = data.frame == "nut side"
    _stage(pen, 0, (30.0, 0.0), (_MOST, _MOST, _MOST), held=True, nut_side=mirrored)
    said = [(say("HELD"), "letter"), *((words, "strong") for words in _why(data))]
    return pen.svg(words_beside(pen, 206, said), _title(data), " ".join(_why(data)))


def _why(data: FlangeGap) -> Iterator[str]:
    if data.frame == "nut side":
        yield say("The frame stands on the nut side: the ring travels away from it and closes no gap. The maker must say how.")
    elif data.frame == "":
        yield say("The file does not say on which side of the flange the frame stands.")
    if data.least is None or data.most is None:
        yield say("No gap on file: gap and order come from the maker's document.")
    elif data.travel is None:
        yield say("No turn on file, so no travel to set the gap by.")


def _stage(pen: Pen, stage: int, start: Point, sizes: tuple[float, float, float], held: bool = False, nut_side: bool = False) -> None:
    """Hand tight, the nut touches the ring. The flange takes the ring with it over the gap; the nut follows by its travel."""
    gap, most, travel = sizes

    def to(u: float, v: float) -> Point:
        return start[0] + u, start[1] + 196 - v

    off = gap if stage == 0 else 0
    flange = _FRAME - off
    ring = flange - 88
    face = _FRAME - gap - 88 + (min(travel, gap) if stage == 2 else 0)
    shaft_and_sleeve(pen, to)
    frame = (flange - 20 - gap - 24, flange - 20 - gap) if nut_side else (_FRAME, _FRAME + 24)
    with pen.group(f"frame {stage + 1}"):
        pen.path([to(frame[0], 146 if nut_side else 76), to(frame[0], 172), to(frame[1], 172), to(frame[1], 146 if nut_side else 76)], "part", closed=True, fill="cut")  # fmt: skip
    bearing(pen, to, ring, flange - 80)
    with pen.group(f"flange {stage + 1}"):
        pen.path([to(flange - 20, 114), to(flange, 114), to(flange, 166), to(flange - 20, 166)], "part", closed=True, fill="across")
    if held:
        near, far = (frame[1], flange - 20) if nut_side else (flange, frame[0])
        pen.path([to(near, 172), to(far, 172), to(far, 140), to(near, 140)], "edge", closed=True, fill="held")
    else:
        _bolt(pen, to, flange)
    with pen.group(f"nut {stage + 1}"):
        nut(pen, to, face)
    if held:
        return
    if stage == 0:
        _measure(pen, to, flange, _FRAME - most)
    elif stage == 1:
        pen.arrow(to(flange - 96, 149), to(flange - 40, 149), "mark", 20)
    else:
        pen.arrow(to(face - 90, 64), to(face - 30, 64), "mark", 20)


def _bolt(pen: Pen, to: To, flange: float) -> None:
    pen.path([to(flange - 34, 145), to(_FRAME + 40, 145), to(_FRAME + 40, 153), to(flange - 34, 153)], "part", closed=True)
    pen.path([to(flange - 34, 140), to(flange - 22, 140), to(flange - 22, 158), to(flange - 34, 158)], "part", closed=True)


def _measure(pen: Pen, to: To, flange: float, most: float) -> None:
    """The gap from the flange's face to the frame; dashed where the face may stand at the most."""
    pen.arrow(to(flange - 36, 180), to(flange, 180), size=12)
    pen.arrow(to(_FRAME + 36, 180), to(_FRAME, 180), size=12)
    with pen.group("gap at least"):
        pen.path([to(flange, 166), to(flange, 188)])
    if flange - most > 0.3:
        with pen.group("gap at most"):
            pen.path([to(most, 114), to(most, 188)], "hidden")
    pen.path([to(_FRAME, 172), to(_FRAME, 188)])
    pen.text(*to(_FRAME + 42, 174), say("gap"), "bold")
