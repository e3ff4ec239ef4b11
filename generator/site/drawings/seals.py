"""The order of seals, locating rings and bearing on the shaft of a split housing."""

from __future__ import annotations

from dataclasses import dataclass

from markupsafe import Markup

from generator.say import say
from generator.site.drawings.pen import Layout, Pen, both


@dataclass(frozen=True)
class Seals:
    """`fixed`: rings both sides of the bearing; else none. `inner`: the end of the shaft the inside is toward."""

    fixed: bool
    ends: tuple[str, str]
    nut_first: bool  # the nut is on the side of the first end
    sleeve: bool
    room: str = ""  # float each way, as words


def seals(data: Seals, name: str) -> Markup:
    """Both layouts."""
    return both(lambda layout: seals_for(data, name, layout))


def seals_for(data: Seals, name: str, layout: Layout) -> Markup:
    """The drawing for one layout: the parts apart on the shaft, numbered as they go on; the last ones come from the nut's side."""
    pen = Pen(layout, name)
    width = layout.width - 8
    parts = order(data)
    step = width / (len(parts) + 1)
    pen.rect(4, 92, width, 128, "part")
    pen.path([(0, 110), (width + 8, 110)], "axis")
    shown = list(reversed(parts)) if data.nut_first else list(parts)
    for place, (number, kind, _) in enumerate(shown, 1):
        x = 4 + place * step
        half, wide = {"seal": (46, 9), "ring": (62, 8), "bearing": (70, 24), "nut": (44, 14)}[kind]
        with pen.group(f"{kind} {number}"):
            pen.rect(x - wide, 110 - half, x + wide, 110 + half, "part", {"bearing": "cut", "ring": "across"}.get(kind, ""))
        pen.text(x, 24, str(number), "strong", "middle")
    pen.text(4, 206, data.ends[0], "bold")
    pen.text(width, 206, data.ends[1], "bold", "end")
    said = "  ".join(say("{number} {what}", number=number, what=what) for number, _, what in parts)
    y = pen.lines(4, 216, said, width)
    if data.room:
        y = pen.lines(4, y + 4, say("Free: the bearing floats in its bore, {room}.", room=data.room), width, "bold")
    title = say("Order on the shaft: seal, ring and bearing, rings on both sides: fixed") if data.fixed else say("Order on the shaft: seal and bearing, no rings: free")  # fmt: skip
    return pen.svg(y + 4, title, said)


def order(data: Seals) -> list[tuple[int, str, str]]:
    """Number, kind and name, in the order they go on."""
    kinds = [("seal", say("inner seal")), *([("ring", say("locating ring"))] if data.fixed else []), ("bearing", say("sleeve and bearing") if data.sleeve else say("bearing"))]  # fmt: skip
    kinds += [("nut", say("nut"))] if data.sleeve else []
    kinds += [("ring", say("locating ring"))] if data.fixed else []
    kinds += [("seal", say("outer seal"))]
    return [(number, kind, what) for number, (kind, what) in enumerate(kinds, 1)]
