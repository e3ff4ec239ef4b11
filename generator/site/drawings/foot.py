"""Where the blade is tried before a housing is bolted: under its foot, or under a straightedge over the face of the frame."""

from __future__ import annotations

from dataclasses import dataclass

from markupsafe import Markup

from generator.say import say
from generator.site.drawings.panel import words_beside
from generator.site.drawings.pen import Layout, Pen, both


@dataclass(frozen=True)
class Foot:
    """`blade`: the thickest that may not go under, `flatness` of the face, as words, "" where withheld. `face`: a flange's frame."""

    blade: str
    flatness: str
    face: bool = False


def foot(data: Foot, name: str) -> Markup:
    """Both layouts."""
    return both(lambda layout: foot_for(data, name, layout))


def foot_for(data: Foot, name: str, layout: Layout) -> Markup:
    """The drawing for one layout."""
    pen = Pen(layout, name)
    y = 80.0 if data.face else 150.0
    with pen.group("frame"):
        pen.rect(16, y, 334, y + 32, "part", "cut")
    if data.face:
        with pen.group("straightedge"):
            pen.rect(56, y - 38, 294, y, "part")
    else:
        pen.path([(56, 150), (56, 128), (112, 128), (128, 52), (222, 52), (238, 128), (294, 128), (294, 150)], "part", closed=True)
        pen.circle(175, 96, 32, "part")
        for x in (84, 266):
            pen.rect(x - 8, 128, x + 8, 150, "hidden")
    with pen.group("blade"):
        for tail, tip in (((4, y - 32), (50, y - 3)), ((346, y - 32), (300, y - 3))):
            pen.arrow(tail, tip, "mark", 18)
    said = [
        (say("A blade of {blade} must go under nowhere.", blade=data.blade) if data.blade else say("No blade on file: HELD."), "strong"),
        (say("Straightedge laid over the face: lengthwise, across, and both diagonals.") if data.face else say("Foot on its face, bolts out: tried at every corner."), ""),
        (say("Face flat within {flatness}.", flatness=data.flatness) if data.flatness else "", ""),
    ]  # fmt: skip
    height = words_beside(pen, y + 40, said)
    title = say("Blade under a straightedge over the frame: {blade} must go under nowhere", blade=data.blade) if data.face else say("Blade under the foot: {blade} must go under nowhere", blade=data.blade)  # fmt: skip
    return pen.svg(height, title, " ".join(words for words, _ in said if words))
