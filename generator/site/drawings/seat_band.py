"""The seat of a bearing: the limits as a band, and every reading of it as a mark in or out of it."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from markupsafe import Markup

from generator.say import say
from generator.site.drawings.pen import Drawn, Layout, Pen, around, both
from generator.site.drawings.words import apart, text_width


@dataclass(frozen=True)
class Section:
    """The readings at one place along the seat, one a direction."""

    words: str
    readings: tuple[Drawn, ...]


@dataclass(frozen=True)
class SeatBand:
    """Limits and readings, all in one unit."""

    lower: Drawn
    upper: Drawn
    sections: tuple[Section, ...] = ()
    form_outside: bool = False

    @property
    def readings(self) -> tuple[Drawn, ...]:
        """All of them."""
        return tuple(one for section in self.sections for one in section.readings)


def seat_band(seat: SeatBand, name: str) -> Markup:
    """Both layouts."""
    return both(lambda layout: seat_band_for(seat, name, layout))


def seat_band_for(seat: SeatBand, name: str, layout: Layout) -> Markup:
    """The drawing for one layout."""
    pen = Pen(layout, name)
    low, high = min(one.size for one in (seat.lower, *seat.readings)), max(one.size for one in (seat.upper, *seat.readings))
    spread = max(high - low, 1e-9)
    top, bottom = 24.0, 250.0

    def at(size: float) -> float:
        return bottom - 20 - (size - low) / spread * (bottom - top - 40)

    limits = ((say("most {size}", size=seat.upper.words), seat.upper), (say("least {size}", size=seat.lower.words), seat.lower))
    room = max(text_width(words, layout.text, bold=True) for words, _ in limits) + 16
    pen.rect(room, at(seat.upper.size), layout.width - 4, at(seat.lower.size), "dim", "cut")
    middles = apart([(at(limit.size), layout.line) for _, limit in limits], 0, bottom)
    for (words, limit), middle in zip(limits, middles, strict=True):
        pen.line(room - 6, at(limit.size), layout.width - 4, at(limit.size), "edge")
        pen.text(room - 12, middle + layout.text * 0.36, words, "bold", "end")
    y = _readings(pen, seat, room, at, bottom)
    lines = list(_words(seat))
    y = pen.lines(4, y + 4, lines[0], layout.width - 8, "bold")
    y = pen.lines(4, y, " ".join(lines[1:]), layout.width - 8) if lines[1:] else y
    return pen.svg(
        y + 4,
        say("Seat, {least} to {most}: {verdict}", least=seat.lower.words, most=seat.upper.words, verdict=lines[0]),
        " ".join(_listed(seat)),
    )


def _readings(pen: Pen, seat: SeatBand, room: float, at, bottom: float) -> float:  # type: ignore[no-untyped-def]
    """The marks, a column a section, numbered; gives the y under the numbers."""
    if not seat.sections:
        return bottom
    column = (pen.layout.width - 8 - room) / len(seat.sections)
    for i, section in enumerate(seat.sections):
        middle = room + column * (i + 0.5)
        step = min(30.0, column / (len(section.readings) + 1))
        for j, one in enumerate(section.readings):
            x = middle + (j - (len(section.readings) - 1) / 2) * step
            _mark(pen, j, x, at(one.size), inside(seat, one), min(9.0, step * 0.45))
        pen.text(middle, bottom + pen.layout.text, str(i + 1), "bold", "middle")
    return bottom + pen.layout.line + 4


def _mark(pen: Pen, direction: int, x: float, y: float, good: bool, r: float) -> None:
    kind = "part" if good else "mark-tip"
    if direction % 3 == 0:
        pen.circle(x, y, r, kind)
    else:
        corners, start = ((4, 45), (3, 0))[direction % 3 - 1]
        pen.path([around((x, y), r * 1.25, start + 360 * i / corners) for i in range(corners)], kind, closed=True)


def inside(seat: SeatBand, one: Drawn) -> bool:
    """Whether a reading is within the limits, the limits themselves being within."""
    return seat.lower.size - 1e-9 <= one.size <= seat.upper.size + 1e-9


def _words(seat: SeatBand) -> Iterator[str]:
    count, out = len(seat.readings), sum(not inside(seat, one) for one in seat.readings)
    if not count:
        yield say("No reading yet.")
        return
    yield (
        say("All {count} readings are inside.", count=count)
        if not out and not seat.form_outside
        else say("All {count} readings are inside, but the form is OUTSIDE.", count=count)
        if not out
        else say("{out} of {count} readings are OUTSIDE.", out=out, count=count)
    )
    for i, section in enumerate(seat.sections, 1):
        if section.words != say("place {number}", number=i):
            yield say("{number}: {place}.", number=i, place=section.words)
    yield say("A circle, a square, a triangle: the first, second and third direction. Filled: outside.")


def _listed(seat: SeatBand) -> Iterator[str]:
    for section in seat.sections:
        yield say("{place}: {readings}.", place=section.words, readings=", ".join(one.words for one in section.readings))
    if not seat.sections:
        yield say("No reading yet.")
