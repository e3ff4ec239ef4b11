"""Where the grease goes in, and where the old one comes out."""

from __future__ import annotations

from dataclasses import dataclass

from markupsafe import Markup

from generator.say import say
from generator.site.drawings.panel import words_beside
from generator.site.drawings.pen import Layout, Pen, both


@dataclass(frozen=True)
class Fitting:
    """`place` and `purge` as typed in the plant; `gives`: strokes and grams as words; `running`: greased while it runs."""

    place: str
    purge: str
    gives: str
    running: bool


def fitting(data: Fitting, name: str) -> Markup:
    """Both layouts."""
    return both(lambda layout: fitting_for(data, name, layout))


def fitting_for(data: Fitting, name: str, layout: Layout) -> Markup:
    """The drawing for one layout: housing, guard, fitting and the way out."""
    pen = Pen(layout, name)
    pen.path([(90, 236), (90, 216), (120, 216), (134, 110), (226, 110), (240, 216), (270, 216), (270, 236)], "part", closed=True)
    pen.circle(180, 156, 46, "part", "cut")
    pen.circle(180, 156, 24, "part")
    outside = "outside" in data.place or data.place == "piped out"
    guard = 306.0 if not outside else 290.0
    with pen.group("guard"):
        pen.path([(66, 250), (66, 70), (guard, 70), (guard, 250)], "hidden")
    pen.text(70, 62, say("guard"))
    end = (320.0, 92.0) if outside else (180.0, 84.0)
    with pen.group("fitting"):
        if outside:
            pen.path([(180, 110), (180, 92), (end[0] - 10, 92)], "edge")
            pen.rect(end[0] - 12, 84, end[0] + 6, 100, "solid")
        else:
            pen.rect(172, 88, 188, 110, "solid")
    if outside:
        pen.arrow((end[0] + 30, 40), (end[0] + 2, 78), "mark", 18)
    else:
        pen.arrow((240, 30), (190, 82), "mark", 18)
    with pen.group("way out"):
        if data.purge == "relief plug":
            pen.arrow((180, 214), (180, 266), "mark", 18)
        elif data.purge != "counted strokes":
            pen.arrow((128, 156), (78, 156), "mark", 18)
            pen.arrow((232, 156), (guard - 12, 156), "mark", 18)
    said = ((_place(data), "bold"), (_when(data), "bold"), (data.gives, "bold"), (_out(data), ""))
    height = words_beside(pen, 274, said)
    return pen.svg(height, say("Grease fitting {place}: {when}", place=say(data.place or "not on file"), when=_when(data)), " ".join(words for words, _ in said if words))  # fmt: skip


def _place(data: Fitting) -> str:
    return {
        "inside the guard": say("Fitting inside the guard."), "outside the guard": say("Fitting outside the guard."), "piped out": say("Fitting piped out."),
        "piped outside the guard": say("Fitting piped outside the guard."), "none": say("No fitting."),
    }.get(data.place, say("The file does not say where the fitting is."))  # fmt: skip


def _when(data: Fitting) -> str:
    return say("Greased running, from outside the guard.") if data.running else say("Greased stopped and isolated.")


def _out(data: Fitting) -> str:
    return {
        "relief plug": say("Plug out first: old grease leaves there. Plug in when nothing more comes."),
        "open seals": say("Stop at the first clean bead round the seal."),
        "counted strokes": say("Counted strokes only: nothing comes out."),
        "wipe and weigh": say("What comes out is wiped off and weighed."),
    }.get(data.purge, say("The file does not say how old grease leaves."))
