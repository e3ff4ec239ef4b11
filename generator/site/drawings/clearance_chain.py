"""The clearance of a bearing from before mounting to running: what is there, what is taken of it, what is left."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from markupsafe import Markup

from generator.say import say
from generator.site.drawings.pen import Drawn, Layout, Pen, both
from generator.site.drawings.ticks import across, written
from generator.site.drawings.words import text_width, wrap

_BAR = 34.0


@dataclass(frozen=True)
class Step:
    """A clearance there is, or what something takes of it; least and most."""

    words: str
    least: Drawn
    most: Drawn
    takes: bool = False

    @property
    def band(self) -> str:
        """From least to most, the unit said once."""
        (least, _, one), (_, _, other) = self.least.words.rpartition("\u00a0"), self.most.words.rpartition("\u00a0")
        if self.least.words == self.most.words:
            return self.most.words
        first = least if least and one == other else self.least.words
        return say("{least} to {most}", least=first, most=self.most.words).replace(" ", "\u00a0")

    @property
    def line(self) -> str:
        """What stands beside its bar."""
        return say("{step}: {band}", step=self.words, band=self.band)


@dataclass(frozen=True)
class ClearanceChain:
    """Steps in order, the last the clearance left running. All in one unit; `limit`: the least that must be left."""

    steps: tuple[Step, ...]
    limit: Drawn | None = None
    unit: str = "mm"

    @property
    def levels(self) -> list[tuple[float, float]]:
        """The least and the most there is after each step: at worst the least less the most taken."""
        found: list[tuple[float, float]] = []
        for step in self.steps:
            least, most = found[-1] if found else (0.0, 0.0)
            found.append((least - step.most.size, most - step.least.size) if step.takes else (step.least.size, step.most.size))
        return found


@dataclass(frozen=True)
class _Scale:
    low: float
    high: float
    left: float
    right: float

    def at(self, size: float) -> float:
        return self.left + (size - self.low) / (self.high - self.low) * (self.right - self.left)


def clearance_chain(chain: ClearanceChain, name: str) -> Markup:
    """Both layouts."""
    return both(lambda layout: clearance_chain_for(chain, name, layout))


def clearance_chain_for(chain: ClearanceChain, name: str, layout: Layout) -> Markup:
    """The drawing for one layout: a row a step, its words beside it, on the phone over it."""
    pen, scale = Pen(layout, name), _scale(chain, layout)
    y = _limit_words(pen, chain, scale)
    numbers, step = across(scale.low, scale.high, scale.right - scale.left, layout.text)
    before: tuple[float, float] = (0.0, 0.0)
    for i, (one, level) in enumerate(zip(chain.steps, chain.levels, strict=True)):
        rows = wrap(one.line, _words_room(layout, scale), layout.text, bold=not one.takes)
        block = len(rows) * layout.line
        top, high = (y + block + 4, _BAR + 8) if layout.narrow else (y, max(_BAR + 8, block + 12))
        for number in numbers:
            pen.line(scale.at(number), top, scale.at(number), top + high, "edge" if abs(number) < step * 1e-6 else "grid")
        middle = top + high / 2
        if one.takes:
            _taken(pen, i, scale, before, level, top, top + high)
        else:
            _there(pen, i, scale, level, (top, top + high), chain)
        if chain.limit:
            pen.line(scale.at(chain.limit.size), top, scale.at(chain.limit.size), top + high, "mark")
        pen.lines(2, y if layout.narrow else middle - block / 2, one.line, _words_room(layout, scale), "" if one.takes else "bold")
        y, before = top + high, level
    y = _numbers(pen, numbers, step, scale, y)
    verdict, said = list(_verdict(chain)), list(_words(chain))
    y = pen.lines(4, y + 6, " ".join(verdict), layout.width - 8, "bold") if verdict else y + 6
    y = pen.lines(4, y, " ".join(said), layout.width - 8) if said else y
    facts = [f"{step.line}." for step in chain.steps]
    return pen.svg(y + 4, " ".join([say("Clearance, from before mounting to running."), *verdict]), " ".join(facts + verdict + said))


def _scale(chain: ClearanceChain, layout: Layout) -> _Scale:
    sizes = [size for level in chain.levels for size in level] + [0.0] + ([chain.limit.size] if chain.limit else [])
    low, high = min(sizes), max(sizes)
    if high - low < 1e-9:
        high = low + 0.01
    left, right = (16.0, layout.width - 16) if layout.narrow else (layout.width * 0.38, layout.width - 24)
    return _Scale(low, high, left, right)


def _words_room(layout: Layout, scale: _Scale) -> float:
    return layout.width - 4 if layout.narrow else scale.left - 30


def _limit_words(pen: Pen, chain: ClearanceChain, scale: _Scale) -> float:
    """What must be left, over its line; gives the y under it."""
    if not chain.limit:
        return 2
    words = say("least allowed {size}", size=chain.limit.words)
    half = text_width(words, pen.layout.text, bold=True) / 2
    x = scale.at(chain.limit.size)
    with pen.group("limit"):
        pen.path([(x, pen.layout.line + 2), (x, pen.layout.line + 10)], "mark")
    pen.text(min(max(x, half + 2), pen.layout.width - half - 2), pen.layout.text, words, "bold", "middle")
    return pen.layout.line + 10


def _there(pen: Pen, number: int, scale: _Scale, level: tuple[float, float], row: tuple[float, float], chain: ClearanceChain) -> None:
    """The band, joined to the rows before and after it."""
    middle, last = sum(row) / 2, number == len(chain.steps) - 1
    least, most = (scale.at(size) for size in level)
    for x in (least, most):
        if number:
            pen.path([(x, row[0]), (x, middle)], "hidden")
        if not last:
            pen.path([(x, middle), (x, row[1])], "hidden")
    with pen.group(f"band {number + 1}"):
        if most - least < 1:
            pen.line(least, middle - _BAR / 2, least, middle + _BAR / 2, "edge")
        else:
            pen.rect(least, middle - _BAR / 2, most, middle + _BAR / 2, "part", "cut")
    limit = chain.limit if last else None
    if limit and level[0] < limit.size - 1e-9:
        with pen.group("under the limit"):
            pen.rect(least, middle - _BAR / 2, min(most, scale.at(limit.size)), middle + _BAR / 2, "solid")


def _taken(
    pen: Pen, number: int, scale: _Scale, before: tuple[float, float], after: tuple[float, float], top: float, bottom: float
) -> None:
    """Two arrows: the best case thin, the worst thick under it."""
    third = (bottom - top) / 3
    for j, (y, kind) in enumerate(((top + 2 * third, "edge"), (top + third, "dim"))):
        start, end = scale.at(before[j]), scale.at(after[j])
        pen.path([(start, top), (start, y)], "hidden")
        pen.path([(end, y), (end, bottom)], "hidden")
        with pen.group(f"{('worst', 'best')[j]} {number + 1}"):
            if abs(end - start) < 4:
                pen.circle(end, y, 3, "solid")
            else:
                pen.arrow((start, y), (end, y), kind, min((18, 13)[j], abs(end - start) * 0.8))


def _numbers(pen: Pen, numbers: list[float], step: float, scale: _Scale, y: float) -> float:
    size = pen.layout.text
    for number in numbers:
        words = written(number, step)
        half = text_width(words, size) / 2
        pen.text(min(max(scale.at(number), half + 2), pen.layout.width - 2 - half), y + 4 + size, words, "", "middle")
    return y + 4 + pen.layout.line


def _verdict(chain: ClearanceChain) -> Iterator[str]:
    if not chain.steps or chain.steps[-1].takes:
        return
    last, limit = chain.steps[-1], chain.limit
    if limit is None:
        yield say("Left: {band}.", band=last.band)
    elif last.least.size >= limit.size - 1e-9:
        yield say("Good: at worst {least} is left; the least allowed is {limit}.", least=last.least.words, limit=limit.words)
    elif last.most.size >= limit.size - 1e-9:
        yield say("TOO SMALL at worst: {least} is left; the least allowed is {limit}.", least=last.least.words, limit=limit.words)
    else:
        yield say("TOO SMALL: even at best {most} is left; the least allowed is {limit}.", most=last.most.words, limit=limit.words)


def _words(chain: ClearanceChain) -> Iterator[str]:
    yield say("Scale in {unit}.", unit=chain.unit)
    if any(step.takes for step in chain.steps):
        yield say("Thick arrow: the worst case, the most taken of the least. Thin arrow: the best case.")
    if chain.limit and chain.steps and not chain.steps[-1].takes and chain.steps[-1].least.size < chain.limit.size - 1e-9:
        yield say("Solid: less than is allowed.")
    if any(level[0] < -1e-9 for level in chain.levels):
        yield say("Left of 0 the bearing is pressed together: preload.")
