"""How threads are written: `M65x2`, `M16` (coarse), `2.360-18`, `5/8-11`, `#10-24`."""

from __future__ import annotations

import re
from fractions import Fraction

from generator.plant.grammar import BadQuantity
from generator.plant.read import Word
from generator.say import say
from generator.tables import row_where
from generator.value import Entered, Value

_METRIC = re.compile(r"M ?([0-9]+(?:\.[0-9]+)?)(?: ?[x×] ?([0-9]+(?:\.[0-9]+)?))?", re.IGNORECASE)
_INCH = re.compile(r"(?:([0-9]+)[ -])?([0-9]+/[0-9]+|[0-9]*\.[0-9]+|[0-9]+|#[0-9]+) ?- ?([0-9]+(?:\.[0-9]+)?)")
# ASME B1.1, from memory: numbered sizes, each 0.013 in over the last, number 0 being 0.060 in
_NUMBERED = (0, 1, 2, 3, 4, 5, 6, 8, 10, 12)


def thread_of(text: str) -> tuple[float, float, str]:
    """Major diameter in mm, pitch in mm, and the family ("metric" or "inch") of a thread. Raises BadQuantity."""
    text = " ".join(text.split())
    if len(text) < 40:
        metric, inch = _METRIC.fullmatch(text), _INCH.fullmatch(text)
        if metric:
            return _metric(text, metric.group(1), metric.group(2))
        if inch:
            return _inch(text, *inch.groups())
    raise BadQuantity(say("{text} is no thread", text=text[:40] or "''"), say("as M65x2, M16, 2.360-18 or 5/8-11"))


def thread(word: Word) -> Value:
    """A thread; the content is its text, always written one way. Raises BadQuantity."""
    thread_of(word)
    return Value(_one_way(word), "", Entered(str(word), word.place))


def _one_way(text: str) -> str:
    text = " ".join(text.split())
    if _METRIC.fullmatch(text):
        return "M" + text[1:].replace(" ", "").replace("×", "x").replace("X", "x")
    return re.sub(r" ?- ?(?=[0-9.]+$)", "-", text)


def _metric(text: str, size: str, pitch: str | None) -> tuple[float, float, str]:
    if pitch is None:
        coarse = row_where("thread-metric-coarse", d_mm=f"{float(size):g}")
        if coarse is None:
            raise BadQuantity(say("{text} does not say its pitch", text=text), say("size and pitch, as M65x2"))
        pitch = coarse["pitch_mm"]
    if not (1 <= float(size) <= 1000 and 0.2 <= float(pitch) <= 8 and float(pitch) < float(size) / 3):
        raise BadQuantity(say("{text} cannot be believed as a thread", text=text), say("size and pitch in millimetres, as M65x2"))
    return float(size), float(pitch), "metric"


def _inch(text: str, whole: str | None, size: str, count: str) -> tuple[float, float, str]:
    per_inch = float(count)
    if size.startswith("#"):
        number = int(size[1:])
        inches = 0.060 + 0.013 * number if number in _NUMBERED and whole is None else 0.0
    elif size.isdecimal() and int(size) <= 12 and per_inch >= 24:
        right = say("#{size}-{count} for the numbered size, {size}.0-{count} for inches", size=size, count=count)
        raise BadQuantity(say("{text} can be read two ways", text=text), right)
    else:
        inches = float(whole or 0) + _inches(size)
    if not (0.05 <= inches <= 40 and 1 <= per_inch <= 100 and 1 / per_inch < inches / 2):
        raise BadQuantity(say("{text} cannot be believed as a thread", text=text), say("inches and threads to the inch, as 5/8-11"))
    return inches * 25.4, 25.4 / per_inch, "inch"


def _inches(size: str) -> float:
    try:
        return float(Fraction(size))
    except ZeroDivisionError:
        return 0.0
