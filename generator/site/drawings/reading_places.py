"""Where a seat is measured: three places along it, three directions each, against its limits."""

from __future__ import annotations

from dataclasses import dataclass

from markupsafe import Markup

from generator.say import say
from generator.site.drawings.panel import words_beside
from generator.site.drawings.pen import Layout, Pen, around, both

DIRECTIONS = (("a", 0.0), ("b", 120.0), ("c", 240.0))


@dataclass(frozen=True)
class ReadingPlaces:
    """Limits and the greatest difference as words, "" where withheld."""

    limits: str
    spread: str


def reading_places(data: ReadingPlaces, name: str) -> Markup:
    """Both layouts."""
    return both(lambda layout: reading_places_for(data, name, layout))


def reading_places_for(data: ReadingPlaces, name: str, layout: Layout) -> Markup:
    """The drawing for one layout: the seat from the side, and one section from its end."""
    pen = Pen(layout, name)
    pen.rect(4, 76, 60, 154, "part")
    pen.rect(60, 66, 200, 164, "part")
    pen.rect(200, 76, 212, 154, "part")
    pen.path([(0, 115), (220, 115)], "axis")
    for number, x in (("1", 76), ("2", 130), ("3", 184)):
        with pen.group(f"place {number}"):
            pen.path([(x, 50), (x, 180)], "mark")
        pen.text(x, 42, number, "strong", "middle")
    centre = (294.0, 115.0)
    pen.circle(*centre, 44, "part")
    for letter, angle in DIRECTIONS:
        with pen.group(f"direction {letter}"):
            pen.path([around(centre, 56, angle), around(centre, 56, angle + 180)], "dim")
        pen.text(*_label(centre, angle), letter, "strong", "middle")
    said = (
        (say("Nine readings: places 1, 2, 3 along the seat; directions a, b, c a third of a turn apart."), ""),
        (say("All inside {limits}.", limits=data.limits) if data.limits else say("No limits: HELD."), "bold"),
        (say("Apart from one another by {spread} at most.", spread=data.spread) if data.spread else "", "bold"),
        (say("Shaft and micrometer near 20 °C."), ""),
    )
    height = words_beside(pen, 196, said)
    title = say("Seat measured at three places in three directions: all inside {limits}", limits=data.limits) if data.limits else say("Seat measured at three places in three directions; no limits on file")  # fmt: skip
    return pen.svg(height, title, " ".join(words for words, _ in said if words))


def _label(centre: tuple[float, float], angle: float) -> tuple[float, float]:
    x, y = around(centre, 70, angle)
    return x, y + 8
