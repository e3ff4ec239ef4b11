"""Where the grease goes in, where the old one comes out, and whether the machine runs meanwhile: the housing cut along the shaft."""

from __future__ import annotations

from dataclasses import dataclass

from markupsafe import Markup

from generator.say import say
from generator.site.drawings.panel import PICTURE, words_beside
from generator.site.drawings.pen import Layout, Pen, both

_AXIS, _HALF = 172.0, 20.0
_LEFT, _RIGHT, _TOP, _FOOT = 112.0, 238.0, 92.0, 252.0
_MIDDLE = (_LEFT + _RIGHT) / 2


@dataclass(frozen=True)
class Fitting:
    """`place` and `purge` as typed in the plant, "" where not; `gives`: strokes and grams as words; `running`: greased while it runs."""

    place: str
    purge: str
    gives: str
    running: bool

    @property
    def piped(self) -> bool:
        """Whether a pipe leads to it."""
        return self.place in ("piped out", "piped outside the guard")

    @property
    def guard(self) -> tuple[float, float] | None:
        """From where to where the guard is drawn; None where the file does not say where it stands."""
        return {"inside the guard": (44.0, 306.0), "piped outside the guard": (44.0, 306.0), "outside the guard": (4.0, 74.0)}.get(
            self.place
        )


def fitting(data: Fitting, name: str) -> Markup:
    """Both layouts."""
    return both(lambda layout: fitting_for(data, name, layout))


def fitting_for(data: Fitting, name: str, layout: Layout) -> Markup:
    """The drawing for one layout."""
    pen = Pen(layout, name)
    _housing(pen)
    if data.guard:
        left, right = data.guard
        with pen.group("guard"):
            pen.path([(left, 280), (left, 44), (right, 44), (right, 280)], "hidden")
        pen.text(left + (8 if right > 200 else 0), 36, say("guard"))
    _way_in(pen, data)
    _way_out(pen, data)
    said = ((_place(data), "bold"), (_when(data), "bold"), (data.gives, "strong"), (_out(data), ""))
    height = words_beside(pen, 284, said)
    return pen.svg(height, f"{_place(data)} {_when(data)}", " ".join(words for words, _ in said if words))


def _housing(pen: Pen) -> None:
    pen.rect(88, _FOOT, 262, _FOOT + 16, "part", "cut")
    pen.rect(_LEFT, _TOP, _RIGHT, _FOOT, "part", "cut")
    pen.rect(_LEFT + 14, _TOP + 18, _RIGHT - 14, _FOOT - 18, "part")
    for side in (-1, 1):
        pen.rect(_MIDDLE - 26, _AXIS + side * 62, _MIDDLE + 26, _AXIS + side * 48, "part", "across")
        pen.rect(_MIDDLE - 26, _AXIS + side * _HALF, _MIDDLE + 26, _AXIS + side * 34, "part", "across")
        pen.circle(_MIDDLE, _AXIS + side * 41, 9, "part")
        for x in (_LEFT, _RIGHT - 14):
            pen.rect(x, _AXIS + side * _HALF, x + 14, _AXIS + side * 34, "solid")  # a seal
    pen.rect(12, _AXIS - _HALF, PICTURE - 12, _AXIS + _HALF, "part")
    pen.line(2, _AXIS, PICTURE - 2, _AXIS, "axis")


def _way_in(pen: Pen, data: Fitting) -> None:
    """The fitting, its pipe, and the gun's way to it."""
    if data.place in ("none", ""):
        return
    x, y = (328.0, 70.0) if data.piped else (_MIDDLE, _TOP - 10)
    with pen.group("fitting"):
        if data.piped:
            pen.path([(_MIDDLE, _TOP), (_MIDDLE, y), (x - 10, y)], "edge")
            pen.rect(x - 12, y - 7, x + 6, y + 7, "solid")
        else:
            pen.rect(x - 7, y - 6, x + 7, _TOP, "solid")
    with pen.group("gun"):
        pen.arrow((x - 2, y - 52), (x - 2, y - 11), "mark", 18)


def _way_out(pen: Pen, data: Fitting) -> None:
    with pen.group("way out"):
        if data.purge == "relief plug":
            pen.rect(_RIGHT - 15, 196, _RIGHT + 1, 212, "blank")
            pen.arrow((_RIGHT - 24, 204), (_RIGHT + 34, 204), "mark", 18)
            pen.rect(_RIGHT + 38, 197, _RIGHT + 52, 211, "solid")
        elif data.purge in ("open seals", "wipe and weigh"):
            for x, way in ((_LEFT, -1), (_RIGHT, 1)):
                for side in (-1, 1):
                    pen.circle(x + way * 5, _AXIS + side * 25, 4, "mark-tip")
                    pen.arrow((x + way * 2, _AXIS + side * 30), (x + way * 30, _AXIS + side * 30), "mark", 14)


def _place(data: Fitting) -> str:
    return {
        "inside the guard": say("Fitting inside the guard."), "outside the guard": say("Fitting outside the guard."), "piped out": say("Fitting piped out."),
        "piped outside the guard": say("Fitting piped outside the guard."), "none": say("No fitting."),
    }.get(data.place, say("The file does not say where the fitting is."))  # fmt: skip


def _when(data: Fitting) -> str:
    if not data.running:
        return say("Greased stopped and isolated.")
    return say("Greased running, from outside the guard.") if data.guard else say("Greased running.")


def _out(data: Fitting) -> str:
    return {
        "relief plug": say("Plug out first: old grease leaves there. Plug in when nothing more comes."),
        "open seals": say("Old grease leaves at the seals: stop at the first clean bead round one."),
        "counted strokes": say("Counted strokes only: nothing comes out."),
        "wipe and weigh": say("What comes out at the seals is wiped off and weighed."),
    }.get(data.purge, say("The file does not say how old grease leaves."))
