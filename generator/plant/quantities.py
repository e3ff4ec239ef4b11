"""The kinds of field: each takes a word as typed and gives what the program works with, and tells an editor how one is written."""

from __future__ import annotations

import re
from collections.abc import Callable
from functools import cache
from typing import Any

from pydantic import PlainValidator
from pydantic_core import PydanticCustomError

from generator.plant import grammar
from generator.plant.grammar import ANY, NUMBER, SCALES, BadQuantity, parse_number
from generator.plant.problems import nearest
from generator.plant.read import Word
from generator.plant.threads import thread, thread_of
from generator.say import say
from generator.units import measures, units_for

__all__ = [
    "BadQuantity", "BandOf", "Count", "Date", "Direction", "OneOf", "Percent", "Quantity", "Ratio", "ScaleOf", "Text", "ThreadSize", "WebAddress",
    "YesNo", "parse_number", "thread_of",
]  # fmt: skip

_BARE = ["number", "string"]


@cache
def Quantity(unit: str, low: float = -ANY, high: float = ANY) -> Any:
    """A number with a unit of this kind ("" for a bare number); low and high, in this unit, are what can be believed."""
    if not unit:
        return _Kind(lambda word: grammar.quantity(word, unit, low, high), {"type": _BARE, "hint": "a bare number"})
    hint = {"hint": f"a number and a unit: {', '.join(units_for(measures(unit)))}", "pattern": f"^{NUMBER} ?{_spelt(unit)}$"}
    return _Kind(lambda word: grammar.quantity(word, unit, low, high), {"type": "string", **hint})


@cache
def BandOf(unit: str, low: float = -ANY, high: float = ANY, single: bool = False) -> Any:
    """Limits, least and most; one figure alone only where `single`."""
    one = f"{NUMBER} ?{_spelt(unit)}"
    two = f"{NUMBER}( ?{_spelt(unit)})? to {one}"
    hint = {"hint": f"least and most: 8 to 9 {unit}", "pattern": f"^({two}|{one})$" if single else f"^{two}$"}
    return _Kind(lambda word: grammar.band(word, unit, low, high, single), {"type": "string", **hint})


@cache
def Count(low: int, high: int) -> Any:
    """A bare whole number."""
    hint = {
        "type": ["integer", "string"],
        "hint": f"a whole number from {low} to {high}",
        "minimum": low,
        "maximum": high,
        "pattern": "^[0-9]+$",
    }
    return _Kind(lambda word: grammar.count(word, low, high), hint)


@cache
def Ratio() -> Any:
    """A taper, `1:12`; the content is the 12."""
    return _Kind(grammar.ratio, {"type": "string", "hint": 'a taper, in quotes: "1:12"', "pattern": "^1 ?: ?[0-9]+(\\.[0-9]+)?$"})


@cache
def ScaleOf(scale: str, low: float = 0, high: float = 1e6) -> Any:
    """A figure on a scale: 22 HRC, VG 150, NLGI 2."""
    hint = {
        "type": "string",
        "hint": f"a figure of {scale}: {SCALES[scale]}",
        "pattern": f"^(ISO )?({scale} ?[0-9.]+|[0-9.]+ ?{scale})$",
    }
    return _Kind(lambda word: grammar.scale(word, scale, low, high), hint)


@cache
def Percent() -> Any:
    """A share with its sign."""
    return _Kind(grammar.percent, {"type": "string", "hint": "a share with its sign: 70 %", "pattern": f"^{NUMBER} ?(%|percent|per cent)$"})


@cache
def Date() -> Any:
    """A calendar day; the content is its ISO text."""
    return _Kind(grammar.day, {"type": "string", "hint": "a day: 2026-03-12", "pattern": "^[0-9]{4}-[0-9]{2}-[0-9]{2}$"})


@cache
def Direction() -> Any:
    """A direction across the shaft, in degrees clockwise from 12."""
    hint = "across the shaft, 12 is up: 5 o'clock, or 130 deg clockwise from 12"
    return _Kind(
        grammar.direction, {"type": "string", "hint": hint, "pattern": f"^([0-9]+(:[0-9]+)? ?o['’]clock|{NUMBER} ?{_spelt('deg')})$"}
    )


@cache
def ThreadSize() -> Any:
    """A thread; the content is its text, read by `thread_of`."""
    return _Kind(
        thread,
        {
            "type": "string",
            "hint": "a thread: M65x2, M16, 2.360-18 or 5/8-11",
            "pattern": "^([Mm] ?[0-9.]+( ?[xX×] ?[0-9.]+)?|[#0-9./ -]+)$",
        },
    )


@cache
def OneOf(*words: str) -> Any:
    """A word of a closed list; it stays the word as typed, with its place."""

    def take(word: Word) -> Word:
        if word in words:
            return word
        listed, near = ", ".join(words), nearest(word, words)
        right = say("nearest known: {name}; one of: {words}", name=near, words=listed) if near else say("one of: {words}", words=listed)
        raise BadQuantity(say("{text} is none of the words that belong here", text=_short(word)), right)

    # an editor takes an unquoted 8.8 for a number, and some take yes for true; the reader takes either as typed
    numbers = [float(word) for word in words if re.fullmatch(r"[0-9]+\.[0-9]+", word)]
    answers = [True, False] if words == ("yes", "no") else []
    return _Kind(take, {"enum": [*words, *numbers, *answers]})


@cache
def YesNo() -> Any:
    """yes or no."""
    return OneOf("yes", "no")


@cache
def Text(most: int) -> Any:
    """Text as typed, at most so many characters long; it stays the word, with its place."""

    def take(word: Word) -> Word:
        if not word.strip():
            raise BadQuantity(say("this says nothing"), say("give it a value, or leave the key out"))
        if len(word) > most:
            raise BadQuantity(say("this text is {count} characters long", count=len(word)), say("at most {most}", most=most))
        return word

    return _Kind(take, {"type": ["string", "number", "boolean"], "maxLength": most})


@cache
def WebAddress() -> Any:
    """Where a browser in the plant finds the site; at most 60 characters, so that a label's code stays small."""

    def take(word: Word) -> Word:
        if not re.fullmatch(r"https?://[A-Za-z0-9._~:/%-]{1,60}", word):
            raise BadQuantity(
                say("{text} is no web address", text=_short(word)), say("http://name/path, at most 60 characters after http://")
            )
        return word

    return _Kind(take, {"type": "string", "pattern": "^https?://[A-Za-z0-9._~:/%-]{1,60}$"})


class _Kind:
    """What a field is annotated with: how a word is taken, and what an editor is told."""

    def __init__(self, take: Callable[[Word], Any], schema: dict[str, Any]) -> None:
        self.take, self.schema = take, schema

    def __get_pydantic_core_schema__(self, source: Any, handler: Any) -> Any:
        return PlainValidator(self._taken).__get_pydantic_core_schema__(source, handler)

    def __get_pydantic_json_schema__(self, core: Any, handler: Any) -> dict[str, Any]:
        return dict(self.schema)

    def _taken(self, given: Any) -> Any:
        if not isinstance(given, Word):
            wrong = say("a mapping where a single entry belongs") if isinstance(given, dict) else say("a list where a single entry belongs")
            raise PydanticCustomError("shape", "{wrong}", {"wrong": wrong, "right": say("`key: value` in one line")})
        try:
            return self.take(given)
        except BadQuantity as bad:
            raise PydanticCustomError("quantity", "{wrong}", {"wrong": bad.wrong, "right": bad.right}) from bad


def _spelt(unit: str) -> str:
    """Every way the units of this kind are written, as a pattern."""
    return (
        "("
        + "|".join(re.sub(r"([.*+?^$(){}|/\[\]\\])", r"\\\1", spelling) for spelling in sorted(grammar.spelt(unit), key=len, reverse=True))
        + ")"
    )


def _short(text: str) -> str:
    return text[:60] or "''"
