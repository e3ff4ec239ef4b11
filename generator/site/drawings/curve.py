"""One quantity against another: the curve, where the machine works on it, and what is needed."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from math import ceil, floor, log10

from markupsafe import Markup

from generator.say import say
from generator.site.drawings.pen import Drawn, Layout, Pen, Point, both
from generator.site.drawings.ticks import across, numbers, plain, powers, step_over, step_under, written
from generator.site.drawings.words import text_width

Box = tuple[float, float, float, float]


@dataclass(frozen=True)
class Curve:
    """`x_name` and `y_name` with their units; `working` and `needed` in the units of the points; `log_y`: powers of ten upward."""

    title: str
    points: tuple[tuple[float, float], ...]
    x_name: str
    y_name: str
    working: tuple[Drawn, Drawn]
    needed: Drawn | None = None
    log_y: bool = False

    @property
    def drawn(self) -> tuple[tuple[float, float], ...]:
        """The points that can be drawn, in order: above 0 where upward are powers of ten."""
        return tuple(sorted(point for point in self.points if point[1] > 0 or not self.log_y))


@dataclass(frozen=True)
class _Plot:
    """Where the curve is drawn, its ranges, and the numbers of its two scales as (value, words)."""

    left: float
    right: float
    top: float
    bottom: float
    xs: tuple[float, float]
    ys: tuple[float, float]
    log: bool
    x_numbers: tuple[tuple[float, str], ...]
    y_numbers: tuple[tuple[float, str], ...]

    def x(self, value: float) -> float:
        return self.left + (value - self.xs[0]) / (self.xs[1] - self.xs[0]) * (self.right - self.left)

    def y(self, value: float) -> float:
        low, high = self.ys
        value = max(value, low)
        part = log10(value / low) / log10(high / low) if self.log else (value - low) / (high - low)
        return self.bottom - part * (self.bottom - self.top)


def curve(data: Curve, name: str) -> Markup:
    """Both layouts."""
    return both(lambda layout: curve_for(data, name, layout))


def curve_for(data: Curve, name: str, layout: Layout) -> Markup:
    """The drawing for one layout."""
    pen = Pen(layout, name)
    y = pen.lines(2, 0, data.title, layout.width - 4, "strong")
    y = pen.lines(2, y, data.y_name, layout.width - 4)
    plot = _plot(data, layout, y + 14)
    line = [(plot.x(x), plot.y(value)) for x, value in data.drawn]
    _grid(pen, plot)
    here = (plot.x(data.working[0].size), plot.y(data.working[1].size))
    if data.needed:
        with pen.group("needed"):
            level = plot.y(data.needed.size)
            pen.rect(plot.left, level, plot.right, plot.bottom, "blank", "across")
            pen.line(plot.left, level, plot.right, level, "edge")
    pen.rect(plot.left, plot.top, plot.right, plot.bottom, "dim")
    pen.path([(plot.left, here[1]), here, (here[0], plot.bottom)], "hidden")
    with pen.group("curve"):
        pen.path(line, "mark") if line else None
    with pen.group("here"):
        pen.circle(*here, 10)
        pen.circle(*here, 4, "solid")
    _named(pen, data, plot, line, here)
    y = pen.lines((plot.left + plot.right) / 2, plot.bottom + 12 + layout.line, data.x_name, 2 * _half(plot, layout), "", "middle")
    verdict, said = list(_verdict(data)), list(_words(data))
    y = pen.lines(4, y + 6, " ".join(verdict), layout.width - 8, "bold")
    y = pen.lines(4, y, " ".join(said), layout.width - 8) if said else y
    return pen.svg(y + 4, " ".join([data.title + ".", *verdict]), " ".join([*_described(data), *verdict, *said]))


def _half(plot: _Plot, layout: Layout) -> float:
    middle = (plot.left + plot.right) / 2
    return min(middle, layout.width - middle) - 2


def _plot(data: Curve, layout: Layout, top: float) -> _Plot:
    values = [value for _, value in data.drawn] + [data.working[1].size] + ([data.needed.size] if data.needed else [])
    log = data.log_y and any(value > 0 for value in values)
    ys, y_numbers = _powers([value for value in values if value > 0]) if log else _even(values)
    places = [x for x, _ in data.drawn] + [data.working[0].size]
    low, high = min(places), max(places)
    if high - low < 1e-9 * max(abs(high), 1):
        low, high = low - max(abs(low) * 0.1, 1), high + max(abs(high) * 0.1, 1)
    left = max(text_width(words, layout.text) for _, words in y_numbers) + 14
    right = layout.width - (24 if layout.narrow else 40)
    found, step = across(low, high, right - left, layout.text, most=4 if layout.narrow else 7)
    x_numbers = tuple((one, written(one, step)) for one in found)
    return _Plot(left, right, top, top + (230 if layout.narrow else 300), (low, high), ys, log, x_numbers, y_numbers)


def _even(values: list[float]) -> tuple[tuple[float, float], tuple[tuple[float, str], ...]]:
    """The range and the numbers of an even scale; from 0 unless all lie far from it."""
    low, high = min(values), max(values)
    if low > 0 and low < 0.7 * high:
        low = 0.0
    if high - low < 1e-9 * max(abs(high), 1):
        low, high = low - max(abs(low) * 0.1, 1), high + max(abs(high) * 0.1, 1)
    step = step_over((high - low) / 5)
    ends = (floor(low / step + 1e-9) * step, ceil(high / step - 1e-9) * step)
    return ends, tuple((one, written(one, step)) for one in numbers(*ends, step))


def _powers(values: list[float]) -> tuple[tuple[float, float], tuple[tuple[float, str], ...]]:
    low, high = step_under(min(values)), step_over(max(values))
    if high <= low:
        low, high = step_under(low * 0.6), step_over(high * 1.5)
    return (low, high), tuple((one, written(one, min(one, 1))) for one in powers(low, high))


def _grid(pen: Pen, plot: _Plot) -> None:
    size = pen.layout.text
    for value, words in plot.y_numbers:
        pen.line(plot.left, plot.y(value), plot.right, plot.y(value), "grid")
        pen.text(plot.left - 8, plot.y(value) + size * 0.36, words, "", "end")
    for value, words in plot.x_numbers:
        pen.line(plot.x(value), plot.top, plot.x(value), plot.bottom, "grid")
        half = text_width(words, size) / 2
        pen.text(min(plot.x(value), pen.layout.width - 2 - half), plot.bottom + 10 + size, words, "", "middle")


def _named(pen: Pen, data: Curve, plot: _Plot, line: list[Point], here: Point) -> None:
    """Words at the needed line and at the working point, where they hide the curve least."""
    size = pen.layout.text
    taken = [*_fine(line), *((here[0] + dx, here[1] + dy) for dx in (-10, 0, 10) for dy in (-10, 0, 10))]
    if data.needed:
        level, words = plot.y(data.needed.size), _needed_words(pen, data.needed)
        width = text_width(words, size, bold=True)
        first, last = plot.right - width - 10, plot.left + 10
        wanted = [(first + (last - first) * i / 8, y) for y in (level - 8, level + size + 4) for i in (0, 8, 1, 7, 2, 6, 3, 5, 4)]
        x, y = _clearest(wanted, width, size, plot, taken)
        pen.text(x, y, words, "bold")
        taken += [(x + width * i / 12, y - size * j / 4) for i in range(13) for j in range(5)]
        taken += [(plot.left + (plot.right - plot.left) * i / 100, level) for i in range(101)]
    width = text_width(say("here"), size, bold=True)
    wanted = [(here[0] + dx, here[1] + dy) for dy in (-14, size + 8, -30, size + 24) for dx in (16, -16 - width)]
    x, y = _clearest(wanted, width, size, plot, taken)
    pen.text(x, y, say("here"), "bold")


def _needed_words(pen: Pen, needed: Drawn) -> str:
    """Its number stands in the verdict too; on the phone it would hide the curve."""
    return say("needed") if pen.layout.narrow else say("needed {size}", size=needed.words)


def _clearest(wanted: list[Point], width: float, size: float, plot: _Plot, taken: list[Point]) -> Point:
    """The first of the places for words that hides least and stands inside."""

    def hidden(place: Point) -> float:
        left, top, right, foot = place[0] - 3, place[1] - size, place[0] + width + 3, place[1] + size * 0.3
        outside = left < plot.left or right > plot.right or top < plot.top or foot > plot.bottom
        return sum(left < x < right and top < y < foot for x, y in taken) + 1000 * outside

    return min(wanted, key=hidden)


def _fine(line: list[Point]) -> Iterator[Point]:
    for (x1, y1), (x2, y2) in zip(line, line[1:], strict=False):
        steps = max(1, int(max(abs(x2 - x1), abs(y2 - y1)) / 3))
        yield from ((x1 + (x2 - x1) * i / steps, y1 + (y2 - y1) * i / steps) for i in range(steps + 1))


def _verdict(data: Curve) -> Iterator[str]:
    x, y = data.working
    if data.needed is None:
        yield say("Here: {x}, {y}.", x=x.words, y=y.words)
    elif y.size >= data.needed.size * (1 - 1e-9):
        yield say("Enough: {y} here, at {x}. Needed: {needed}.", x=x.words, y=y.words, needed=data.needed.words)
    else:
        yield say("NOT ENOUGH: {y} here, at {x}. Needed: {needed}.", x=x.words, y=y.words, needed=data.needed.words)


def _words(data: Curve) -> Iterator[str]:
    if data.needed:
        yield say("Hatched: less than needed.")
    if data.log_y:
        yield say("Upward the scale goes by powers of ten.")


def _described(data: Curve) -> Iterator[str]:
    yield say("Across: {x_name}. Upward: {y_name}.", x_name=data.x_name, y_name=data.y_name)
    if data.drawn:
        (x1, y1), (x2, y2) = data.drawn[0], data.drawn[-1]
        yield say("The curve goes from {y1} at {x1} to {y2} at {x2}.", y1=plain(y1), x1=plain(x1), y2=plain(y2), x2=plain(x2))
