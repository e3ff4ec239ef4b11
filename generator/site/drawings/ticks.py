"""Round numbers for scales: steps of 1, 2 and 5, and how their numbers are written."""

from __future__ import annotations

from itertools import count
from math import ceil, floor, log10

from generator.site.drawings.words import text_width

_ROUND = (1, 2, 5)


def step_over(least: float) -> float:
    """The smallest of 1, 2, 5 times a power of ten that is not below the least; the least is above 0."""
    power = floor(log10(least))
    return next(float(f"{one}e{power + up}") for up in (0, 1) for one in _ROUND if float(f"{one}e{power + up}") >= least * (1 - 1e-9))


def step_under(most: float) -> float:
    """The greatest of 1, 2, 5 times a power of ten that is not above the most; the most is above 0."""
    power = floor(log10(most))
    found = [float(f"{one}e{power + up}") for up in (-1, 0, 1) for one in _ROUND]
    return max(one for one in found if one <= most * (1 + 1e-9))


def numbers(low: float, high: float, step: float) -> list[float]:
    """Every multiple of the step from low to high."""
    return [i * step for i in range(ceil(low / step - 1e-9), floor(high / step + 1e-9) + 1)]


def written(number: float, step: float) -> str:
    """A number of a scale with the digits its step needs."""
    if abs(number) < step * 1e-6:
        return "0"
    digits = max(0, -floor(log10(step) + 1e-9))
    text = f"{number:.{digits}f}"
    return text.replace("-", "\u2212")


def across(low: float, high: float, room: float, size: float, most: int = 6) -> tuple[list[float], float]:
    """Numbers for a scale that runs across, few enough that they stand apart when written; and their step."""
    spread = high - low
    step = step_over(spread / most)
    for _ in range(12):
        found = numbers(low, high, step)
        widths = [text_width(written(one, step), size) for one in found]
        if len(found) < 2 or max(widths) + size * 0.8 <= step / spread * room:
            break
        step = step_over(step * 1.5)
    return found, step


def powers(low: float, high: float, most: int = 7) -> list[float]:
    """Numbers for a scale of powers of ten: 1, 2 and 5 of each where they are few, else every power, every second, and so on."""
    first, last = floor(log10(low)) - 1, ceil(log10(high)) + 1
    fine = [float(f"{one}e{power}") for power in range(first, last + 1) for one in _ROUND]
    inside = [one for one in fine if low * (1 - 1e-9) <= one <= high * (1 + 1e-9)]
    if len(inside) <= most:
        return inside
    whole = [float(f"1e{power}") for power in range(first, last + 1)]
    whole = [one for one in whole if low * (1 - 1e-9) <= one <= high * (1 + 1e-9)]
    return whole[:: next(n for n in count(1) if len(whole) / n <= most)]


def plain(number: float) -> str:
    """Any number in three figures, without an exponent."""
    if not number:
        return "0"
    digits = 2 - floor(log10(abs(number)))
    text = f"{round(number, digits):.{max(0, min(digits, 12))}f}"
    return (text.rstrip("0").rstrip(".") if "." in text else text).replace("-", "\u2212")
