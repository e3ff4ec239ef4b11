"""A heated ring on its seat: sensor on the inner ring, pushed to the shoulder and held; where the blade is tried when it is cold."""

from __future__ import annotations

from dataclasses import dataclass

from markupsafe import Markup

from generator.say import say
from generator.site.drawings.panel import words_beside
from generator.site.drawings.pen import Layout, Pen, both


@dataclass(frozen=True)
class Shoulder:
    """Set point, ceiling and blade as words, "" where withheld."""

    to: str
    ceiling: str
    blade: str


def shoulder(data: Shoulder, name: str) -> Markup:
    """Both layouts."""
    return both(lambda layout: shoulder_for(data, name, layout))


def shoulder_for(data: Shoulder, name: str, layout: Layout) -> Markup:
    """The drawing for one layout."""
    pen = Pen(layout, name)
    with pen.group("shoulder"):
        pen.rect(236, 78, 340, 212, "part")
    pen.rect(4, 100, 236, 190, "part")
    pen.path([(0, 145), (346, 145)], "axis")
    for top in (True, False):
        near, far = (100, 46) if top else (190, 244)
        with pen.group("ring top" if top else "ring below"):
            pen.rect(150, near, 236, near + (far - near) * 0.36, "part", "cut")
            pen.rect(150, far, 236, far - (far - near) * 0.3, "part", "cut")
        pen.circle(193, (near + far) / 2, 11, "part")
    with pen.group("push"):
        pen.arrow((60, 90), (144, 90), "mark", 20)
    with pen.group("sensor"):
        pen.path([(120, 30), (158, 88)], "dim")
        pen.circle(160, 92, 5, "solid")
    pen.text(30, 28, say("sensor"), "bold")
    with pen.group("blade"):
        pen.path([(236, 20), (236, 76)], "mark")
    pen.text(244, 30, say("blade"), "bold")
    said = (
        (say("Heat to {to}, sensor on the inner ring.", to=data.to) if data.to else say("No set point: HELD."), "bold"),
        (say("Never over {ceiling}.", ceiling=data.ceiling) if data.ceiling else "", "bold"),
        (say("To the shoulder in one move, and held until it grips: cooling, it shrinks away from the shoulder."), ""),
        (say("Cold: a blade of {blade} goes in nowhere.", blade=data.blade) if data.blade else "", ""),
    )
    height = words_beside(pen, 262, said)
    return pen.svg(
        height, say("Heated ring pushed to the shoulder, sensor on its inner ring"), " ".join(words for words, _ in said if words)
    )
