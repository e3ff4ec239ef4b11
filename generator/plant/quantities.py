"""How quantities are written. A strict grammar of our own: no arithmetic, no guessing of units, the text kept as typed."""

from __future__ import annotations

import re
from collections.abc import Callable
from datetime import date
from functools import cache
from typing import Any

from pydantic import PlainValidator, WithJsonSchema
from pydantic_core import PydanticCustomError

from generator.plant.problems import nearest
from generator.plant.read import Word
from generator.say import say
from generator.units import UnitMismatch, convert, measures, spellings, unit_named, units_for
from generator.value import Band, Entered, Place, Value

_NUMBER = r"[+-]?(?:\d+[ -]\d+/\d+|\d+/\d+|\d+(?:\.\d+)?|\.\d+)"
_SPLIT = re.compile(rf"\s*({_NUMBER})\s*(.*?)\s*", re.DOTALL)
_BAND = re.compile(rf"\s*({_NUMBER})\s*([^\d\s]\S*(?: \S+)??)?\s+to\s+({_NUMBER})\s*(.*?)\s*", re.DOTALL)
_COMMA = re.compile(r"\d,\d")
_METRIC_THREAD = re.compile(r"M(\d+(?:\.\d+)?)(?:\s*[x×]\s*(\d+(?:\.\d+)?))?", re.IGNORECASE)
_INCH_THREAD = re.compile(r"(\d+/\d+|\d+(?:[ -]\d+/\d+)?|\d*\.\d+|#\d+)\s*-\s*(\d+(?:\.\d+)?)")
# coarse pitches of ISO 261, for a thread given by its size alone
COARSE = {3: 0.5, 4: 0.7, 5: 0.8, 6: 1.0, 7: 1.0, 8: 1.25, 10: 1.5, 12: 1.75, 14: 2.0, 16: 2.0, 18: 2.5, 20: 2.5, 22: 2.5, 24: 3.0, 27: 3.0, 30: 3.5,
          33: 3.5, 36: 4.0, 39: 4.0, 42: 4.5, 45: 4.5, 48: 5.0}  # fmt: skip
_NUMBERED = {"#0": 0.06, "#1": 0.073, "#2": 0.086, "#3": 0.099, "#4": 0.112, "#5": 0.125, "#6": 0.138, "#8": 0.164, "#10": 0.19, "#12": 0.216}


class BadQuantity(ValueError):
    """A text that is no such quantity: what is wrong, and what would be right."""

    def __init__(self, wrong: str, right: str) -> None:
        self.wrong, self.right = wrong, right
        super().__init__(f"{wrong}; {right}")


def parse_number(text: str) -> tuple[float, str]:
    """Number and unit ("" for a bare number) of one quantity: `60 mm`, `2 15/16 in`, `2-15/16"`, `-20 degC`. Raises BadQuantity."""
    if _COMMA.search(text):
        raise BadQuantity(say("{text} has a comma in its number", text=text), say("a point for decimals and no mark for thousands: 60.5 mm, 1200 mm"))
    found = _SPLIT.fullmatch(text)
    if not found or len(text) > 100:
        raise BadQuantity(say("{text} is no quantity", text=text[:60] or "''"), say("a number and a unit, as 60 mm or 2 15/16 in"))
    number, unit = _number(found.group(1)), found.group(2)
    return number, _unit(unit, text) if unit else ""


def thread_of(text: str) -> tuple[float, float, str]:
    """Major diameter in mm, pitch in mm, and the family ("metric" or "inch") of a thread: `M65x2`, `M16`, `2.360-18`, `5/8-11`. Raises BadQuantity."""
    metric = _METRIC_THREAD.fullmatch(text.strip())
    if metric:
        size = float(metric.group(1))
        pitch = float(metric.group(2)) if metric.group(2) else COARSE.get(int(size) if size.is_integer() else -1)
        if pitch is None or not 0.2 <= pitch < size:
            raise BadQuantity(say("{text} does not say its pitch", text=text), say("write it out: M65x2"))
        return size, pitch, "metric"
    inch = _INCH_THREAD.fullmatch(text.strip())
    if inch:
        size = _NUMBERED[inch.group(1)] if inch.group(1) in _NUMBERED else _number(inch.group(1))
        count = float(inch.group(2))
        if 0 < size < 40 and 1 <= count <= 100:
            return size * 25.4, 25.4 / count, "inch"
    raise BadQuantity(say("{text} is no thread", text=text[:60]), say("as M65x2, M16, 2.360-18 or 5/8-11"))


def quantity(word: str, unit: str, low: float, high: float, place: Place) -> Value:
    """A quantity of the kind the unit measures ("" for a bare number), within what can be believed. Raises BadQuantity."""
    number, given = parse_number(word)
    _fits(word, given, unit)
    _believed(word, convert(number, given, unit), unit, low, high)
    return Value(number, given, Entered(str(word), place))


def band(word: str, unit: str, low: float, high: float, single: bool, place: Place) -> Band:
    """Limits, least and most: `8 to 9 mm`, `5/8 to 3/4 turn`; a single figure where `single`. Raises BadQuantity."""
    found = _BAND.fullmatch(word)
    if not found:
        if not single and _SPLIT.fullmatch(word):
            raise BadQuantity(say("{text} is one figure where two belong", text=word), say("least and most, as 3.5 to 4.0 N.m"))
        one = quantity(word, unit, low, high, place)
        return Band(one, one)
    first, between, second, after = found.groups()
    if _COMMA.search(word):
        raise BadQuantity(say("{text} has a comma in its number", text=word), say("a point for decimals: 3.5 to 4.0 N.m"))
    given = _unit(after, word) if after else ""
    lower_unit = _unit(between, word) if between else given
    for one in (given, lower_unit):
        _fits(word, one, unit)
    lower, upper = _number(first), _number(second)
    if convert(lower, lower_unit, unit) > convert(upper, given, unit):
        raise BadQuantity(say("{text} runs from more to less", text=word), say("least first, then most"))
    for number, one in ((lower, lower_unit), (upper, given)):
        _believed(word, convert(number, one, unit), unit, low, high)
    return Band(
        Value(lower, lower_unit, Entered(f"{first} {between or after}".strip(), place)),
        Value(upper, given, Entered(f"{second} {after}".strip(), place)),
    )


def direction(word: str, place: Place) -> Value:
    """A direction across the shaft, in degrees clockwise from 12: `5 o'clock`, `130 deg`. Raises BadQuantity."""
    clock = re.fullmatch(r"\s*(\d{1,2})(?::(\d\d))?\s*o['’]clock\s*", word)
    if clock and 1 <= int(clock.group(1)) <= 12 and int(clock.group(2) or 0) < 60:
        return Value((int(clock.group(1)) % 12) * 30 + int(clock.group(2) or 0) / 2, "deg", Entered(str(word), place))
    if clock or "clock" in word:
        raise BadQuantity(say("{text} is no direction", text=word), say("from 1 to 12 o'clock, or 130 deg"))
    return quantity(word, "deg", 0, 360, place)


def _number(text: str) -> float:
    sign = -1.0 if text.startswith("-") else 1.0
    text = text.lstrip("+-")
    whole, _, part = text.replace("-", " ").rpartition(" ")
    if "/" not in part:
        return sign * float(part)
    top, bottom = (int(one) for one in part.split("/"))
    if bottom == 0 or (whole and top >= bottom):
        raise BadQuantity(say("{text} is no fraction", text=text), say("as 2 15/16"))
    return sign * (float(whole or 0) + top / bottom)


def _unit(text: str, whole: str) -> str:
    known = unit_named(text)
    if known is None:
        if re.search(r"\d", text) and not re.search(r"[a-zA-Z°\"µ%]", text):
            raise BadQuantity(say("{text} is no quantity", text=whole), say("one number and one unit, as 60 mm"))
        near = nearest(text, spellings())
        raise BadQuantity(say("{unit} is no unit that is known", unit=text), say("nearest known: {unit}", unit=near) if near else say("as in 60 mm, 190 N.m, 12 kN"))
    return known


def _fits(word: str, given: str, unit: str) -> None:
    if {given, unit} == {"", "%"} or (given == unit == ""):
        return
    if not given:
        units = units_for(measures(unit))
        raise BadQuantity(say("{text} has no unit", text=word), say("with its unit, as {text} {unit}; units that fit: {units}", text=word, unit=units[0], units=", ".join(units)))
    try:
        convert(1.0, given, unit)
    except UnitMismatch:
        kind = measures(unit) or say("a bare number")
        fit = ", ".join(units_for(measures(unit))) if unit else say("no unit")
        raise BadQuantity(say("{text} is a {given}, not a {kind}", text=word, given=measures(given), kind=kind), say("units that fit: {units}", units=fit)) from None


def _believed(word: str, number: float, unit: str, low: float, high: float) -> None:
    if not low <= number <= high:
        right = say("from {low} to {high} {unit}; was the unit meant?", low=f"{low:g}", high=f"{high:g}", unit=unit)
        raise BadQuantity(say("{text} cannot be believed here", text=word), right.replace(" ;", ";"))


# ---- the kinds of field, as the models use them ------------------------------------------------------------


def _kind(take: Callable[[Word], Any], schema: dict[str, Any]) -> Any:
    """A field kind: takes a Word, gives what the program works with, refuses with what would be right."""

    def taken(given: Any) -> Any:
        if not isinstance(given, Word):
            shape = say("a mapping") if isinstance(given, dict) else say("a list")
            raise PydanticCustomError("shape", "{wrong}", {"wrong": say("{shape} where a single entry belongs", shape=shape), "right": say("`key: value` in one line")})
        try:
            return take(given)
        except BadQuantity as bad:
            raise PydanticCustomError("quantity", "{wrong}", {"wrong": bad.wrong, "right": bad.right}) from bad

    return _Marked(PlainValidator(taken), WithJsonSchema({"type": ["string", "number", "boolean"], **schema}))


class _Marked:
    """Two annotations under one name, so that a field says `Annotated[Value, Quantity("mm")]`."""

    def __init__(self, validator: PlainValidator, schema: WithJsonSchema) -> None:
        self.validator, self.schema = validator, schema

    def __get_pydantic_core_schema__(self, source: Any, handler: Any) -> Any:
        return self.validator.__get_pydantic_core_schema__(source, handler)

    def __get_pydantic_json_schema__(self, core: Any, handler: Any) -> Any:
        return dict(self.schema.json_schema or {})


@cache
def Quantity(unit: str, low: float = -1e12, high: float = 1e12) -> Any:
    """A number with a unit of this kind."""
    units = ", ".join(units_for(measures(unit))) if unit else ""
    hint = {"description": f"a number and a unit of {measures(unit)}: {units}"} if unit else {"description": "a bare number"}
    return _kind(lambda word: quantity(word, unit, low, high, word.place), hint)


@cache
def BandOf(unit: str, low: float = -1e12, high: float = 1e12, single: bool = False) -> Any:
    """Limits, least and most."""
    return _kind(lambda word: band(word, unit, low, high, single, word.place), {"description": f"least and most with a unit of {measures(unit)}, as `3.5 to 4.0 {unit}`"})


@cache
def Count(low: int, high: int) -> Any:
    """A bare whole number."""

    def take(word: Word) -> Value:
        if not re.fullmatch(r"\d{1,9}", word.strip()):
            raise BadQuantity(say("{text} is no whole number", text=word), say("a bare whole number, as 8"))
        _believed(word, int(word), "", low, high)
        return Value(int(word), "", Entered(str(word), word.place))

    return _kind(take, {"description": f"a whole number from {low} to {high}"})


@cache
def Ratio() -> Any:
    """A taper, `1:12`; the content is the 12."""

    def take(word: Word) -> Value:
        found = re.fullmatch(r"1\s*:\s*(\d{1,3}(?:\.\d+)?)", word.strip())
        if not found or float(found.group(1)) < 2:
            raise BadQuantity(say("{text} is no taper", text=word), say('as "1:12", in quotes'))
        return Value(float(found.group(1)), "", Entered(str(word), word.place))

    return _kind(take, {"description": 'a taper, as "1:12"'})


@cache
def ScaleOf(scale: str, low: float = 0, high: float = 1e6) -> Any:
    """A number on a scale: 22 HRC, VG 150, NLGI 2."""

    def take(word: Word) -> Value:
        found = re.fullmatch(rf"(?:ISO )?{scale}\s*(\d+(?:\.\d+)?)|(\d+(?:\.\d+)?)\s*{scale}", word.strip())
        if not found:
            right = f"22 {scale}" if scale == "HRC" else f"{scale} 150" if scale == "VG" else f"{scale} 2"
            raise BadQuantity(say("{text} is no figure of {scale}", text=word, scale=scale), say("as {example}", example=right))
        number = float(found.group(1) or found.group(2))
        _believed(word, number, scale, low, high)
        return Value(number, scale, Entered(str(word), word.place))

    return _kind(take, {"description": f"a figure on the scale {scale}"})


@cache
def Percent() -> Any:
    """A share."""

    def take(word: Word) -> Value:
        number, unit = parse_number(word)
        if unit != "%":
            raise BadQuantity(say("{text} is no share", text=word), say("with its sign, as 70 %"))
        _believed(word, number, "%", 0, 100)
        return Value(number, "%", Entered(str(word), word.place))

    return _kind(take, {"description": "a share, as `70 %`"})


@cache
def Date() -> Any:
    """A calendar day; the content is its ISO text."""

    def take(word: Word) -> Value:
        try:
            if not re.fullmatch(r"\d{4}-\d\d-\d\d", word.strip()):
                raise ValueError
            day = date.fromisoformat(word.strip())
        except ValueError:
            raise BadQuantity(say("{text} is no day", text=word), say("year, month, day, as 2026-03-12")) from None
        return Value(day.isoformat(), "", Entered(str(word), word.place))

    return _kind(take, {"description": "a day, as 2026-03-12"})


@cache
def Direction() -> Any:
    """A direction across the shaft."""
    return _kind(lambda word: direction(word, word.place), {"description": "as `5 o'clock` or `130 deg` clockwise from 12"})


@cache
def ThreadSize() -> Any:
    """A thread; the content is its text, read by `thread_of`."""

    def take(word: Word) -> Value:
        thread_of(word)
        return Value(word.strip().replace("×", "x"), "", Entered(str(word), word.place))

    return _kind(take, {"description": "a thread, as M65x2, M16, 2.360-18 or 5/8-11"})


@cache
def OneOf(*words: str) -> Any:
    """A word of a closed list; it stays the word as typed, with its place."""

    def take(word: Word) -> Word:
        if word not in words:
            near = nearest(word, words)
            listed = say("one of: {words}", words=", ".join(words))
            raise BadQuantity(say("{text} is none of the words that belong here", text=word), say("nearest known: {name}; {listed}", name=near, listed=listed) if near else listed)
        return word

    return _kind(take, {"enum": list(words)})


@cache
def YesNo() -> Any:
    """yes or no."""
    return OneOf("yes", "no")


@cache
def Text(most: int) -> Any:
    """Any text of one kind or another, as typed."""

    def take(word: Word) -> Word:
        if len(word) > most:
            raise BadQuantity(say("this text is {count} characters long", count=len(word)), say("at most {most}", most=most))
        return word

    return _kind(take, {"description": "text"})
