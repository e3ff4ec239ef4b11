"""How much room words take, how they break, and how labels keep clear of one another."""

from __future__ import annotations

from collections.abc import Sequence

# Advance widths in parts of the type size, those of a wide sans serif, so that words fit in a narrower one too.
_SLIM = frozenset(" \u00a0ijl.,:;'|!I·")
_SLENDER = frozenset('()[]/\\ftr-"°')
_BROAD = frozenset("mwMW%@&+=<>×−±→←—…")
_BOLDER = 1.12


def text_width(words: str, size: float, *, bold: bool = False) -> float:
    """The most room the words take on one line."""
    return size * sum(_width(letter) for letter in words) * (_BOLDER if bold else 1)


def wrap(words: str, room: float, size: float, *, bold: bool = False) -> list[str]:
    """The words in lines that fit the room; a word that fits no line is parted."""
    lines: list[str] = []
    for word in _fitting(words.split(" "), room, size, bold):
        joined = f"{lines[-1]} {word}" if lines else word
        if lines and text_width(joined, size, bold=bold) <= room:
            lines[-1] = joined
        else:
            lines.append(word)
    return lines or [""]


def clipped(words: str, room: float, size: float) -> str:
    """The words, or as much of their start as the room takes."""
    if text_width(words, size) <= room:
        return words
    return next(words[:n] + "…" for n in range(len(words) - 1, -1, -1) if n == 0 or text_width(words[:n] + "…", size) <= room)


def apart(labels: Sequence[tuple[float, float]], low: float, high: float, gap: float = 0) -> list[float]:
    """Centres of labels (centre, size), in order, moved as little as keeps them from each other and inside low to high."""
    centres: list[float] = []
    edge = low - gap
    for centre, size in labels:
        centres.append(max(centre, edge + gap + size / 2))
        edge = centres[-1] + size / 2
    edge = high + gap
    for i in reversed(range(len(labels))):
        centres[i] = min(centres[i], edge - gap - labels[i][1] / 2)
        edge = centres[i] - labels[i][1] / 2
    return centres


def rows(labels: Sequence[tuple[float, float]], low: float, high: float, gap: float = 12) -> list[tuple[float, int]]:
    """Centre and row of each label (centre, size): the first row with room, never outside low to high."""
    taken: list[list[tuple[float, float]]] = []
    placed = []
    for centre, size in labels:
        inside = min(max(centre, low + size / 2), max(high - size / 2, low + size / 2))
        left, right = inside - size / 2 - gap, inside + size / 2 + gap
        row = next((i for i, spans in enumerate(taken) if all(right <= a or left >= b for a, b in spans)), len(taken))
        if row == len(taken):
            taken.append([])
        taken[row].append((left + gap, right - gap))
        placed.append((inside, row))
    return placed


def _fitting(words: Sequence[str], room: float, size: float, bold: bool) -> list[str]:
    parts = []
    for word in words:
        while len(word) > 1 and text_width(word, size, bold=bold) > room:
            fit = max(1, next(n for n in range(len(word), 0, -1) if n == 1 or text_width(word[:n], size, bold=bold) <= room))
            parts.append(word[:fit])
            word = word[fit:]
        parts.append(word)
    return parts


def _width(letter: str) -> float:
    if letter in _SLIM:
        return 0.33
    if letter in _SLENDER:
        return 0.43
    if letter in _BROAD or ord(letter) > 0x2E7F:
        return 1.0
    return 0.79 if letter.isupper() else 0.65
