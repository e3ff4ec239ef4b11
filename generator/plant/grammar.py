"""How quantities are written. A strict grammar of our own: no arithmetic, no guessing of units, the text kept as typed."""

from __future__ import annotations

import re
from datetime import date

from generator.plant.problems import nearest
from generator.plant.read import Word
from generator.say import say
from generator.units import UNITS, UnitMismatch, convert, measures, spellings, unit_named, units_for
from generator.value import Band, Entered, Value

LONGEST = 80
NUMBER = r"[+-]?(?:[0-9]+[ -][0-9]+/[0-9]+|[0-9]+/[0-9]+|[0-9]+(?:\.[0-9]+)?|\.[0-9]+)"
ANY = 1e12
_ONE = re.compile(rf"({NUMBER}) ?(.*)")
_TWO = re.compile(rf"({NUMBER}) ?(.*?) to ({NUMBER}) ?(.*)")
_THOUSANDS = re.compile(r"[0-9][,'_ ][0-9]{3}(?![0-9/])|[0-9],[0-9]")
_ONE_SIGN = re.compile("[¼½¾⅐-⅟]")
_CLOCK = re.compile(r"([0-9]{1,2})(?::([0-9]{2}))? ?o['’]clock")
_DAY = re.compile(r"[0-9]{4}-[0-9]{2}-[0-9]{2}")
_RATIO = re.compile(r"1 ?: ?([0-9]{1,3}(?:\.[0-9]+)?)")
_FIGURE = r"(?:0|[1-9][0-9]*)(?:\.[0-9]+)?"
# how a figure of each scale is written
SCALES = {"HRC": "22 HRC", "VG": "VG 150", "NLGI": "NLGI 2"}


class BadQuantity(ValueError):
    """A text that is no such quantity: what is wrong, and what would be right."""

    def __init__(self, wrong: str, right: str) -> None:
        self.wrong, self.right = wrong, right
        super().__init__(f"{wrong}; {right}")


def parse_number(text: str, wanted: str = "") -> tuple[float, str]:
    """Number and unit ("" for a bare number) of one quantity: `60 mm`, `2 15/16 in`, `2-15/16"`, `-20 degC`. Raises BadQuantity.

    `wanted` is a unit of the kind that belongs here, so that a misspelt unit is compared with those that fit.
    """
    text = _tidy(text)
    found = _ONE.fullmatch(text)
    if not found:
        raise BadQuantity(say("{text} is no quantity", text=text or "''"), say("a number and a unit, as 60 mm or 2 15/16 in"))
    return _number(found.group(1)), _unit(found.group(2), text, wanted)


def quantity(word: Word, unit: str, low: float = -ANY, high: float = ANY) -> Value:
    """A quantity of the kind the unit measures ("" for a bare number); low and high, in that unit, are what can be believed."""
    number, given = parse_number(word, unit)
    must_fit(word, given, unit)
    must_be_believed(word, convert(number, given, unit), unit, low, high)
    return Value(number, given, Entered(str(word), word.place))


def band(word: Word, unit: str, low: float = -ANY, high: float = ANY, single: bool = False) -> Band:
    """Limits, least and most: `8 to 9 mm`, `5/8 to 3/4 turn`; one figure alone only where `single`. Raises BadQuantity."""
    text = _tidy(word)
    found = _TWO.fullmatch(text)
    if found is None:
        if not single:
            raise BadQuantity(
                say("{text} is no pair of limits", text=text or "''"), say("least and most, as {example}", example=f"8 to 9 {unit}".strip())
            )
        one = quantity(word, unit, low, high)
        return Band(one, one)
    first, between, second, after = found.groups()
    given = _unit(after, text, unit)
    lower_unit = _unit(between, text, unit) if between else given
    lower, upper = _number(first), _number(second)
    for number, one_unit in ((lower, lower_unit), (upper, given)):
        must_fit(word, one_unit, unit)
        must_be_believed(word, convert(number, one_unit, unit), unit, low, high)
    if convert(lower, lower_unit, unit) > convert(upper, given, unit):
        raise BadQuantity(say("{text} runs from more to less", text=text), say("least first, then most"))
    return Band(
        Value(lower, lower_unit, Entered(f"{first} {between or after}".strip(), word.place)),
        Value(upper, given, Entered(f"{second} {after}".strip(), word.place)),
    )


def count(word: Word, low: int, high: int) -> Value:
    """A bare whole number: slots, bolts, teeth. Raises BadQuantity."""
    text = _tidy(word)
    if not re.fullmatch(r"[0-9]{1,9}", text):
        raise BadQuantity(say("{text} is no count", text=text or "''"), say("a bare whole number, as 8"))
    must_be_believed(word, int(text), "", low, high)
    return Value(int(text), "", Entered(str(word), word.place))


def ratio(word: Word) -> Value:
    """A taper, `1:12`; the content is the 12. Raises BadQuantity."""
    text = _tidy(word)
    found = _RATIO.fullmatch(text)
    if not found or float(found.group(1)) < 2:
        raise BadQuantity(say("{text} is no taper", text=text or "''"), say('as "1:12", in quotes'))
    return Value(float(found.group(1)), "", Entered(str(word), word.place))


def scale(word: Word, name: str, low: float, high: float) -> Value:
    """A figure on a scale: `22 HRC`, `VG 150`, `NLGI 2`. Raises BadQuantity.

    A figure with a zero before it is none: NLGI 00 and NLGI 000 are grades of their own, each softer than NLGI 0.
    """
    text = _tidy(word)
    found = re.fullmatch(rf"(?:ISO )?{name} ?({_FIGURE})" if name == "VG" else rf"{name} ?({_FIGURE})|({_FIGURE}) ?{name}", text)
    if not found:
        example = SCALES.get(name, f"{name} 1")
        raise BadQuantity(say("{text} is no figure of {scale}", text=text or "''", scale=name), say("as {example}", example=example))
    number = float(next(figure for figure in found.groups() if figure))
    must_be_believed(word, number, name, low, high)
    return Value(number, name, Entered(str(word), word.place))


def percent(word: Word) -> Value:
    """A share with its sign, `70 %`. Raises BadQuantity."""
    number, unit = parse_number(word)
    if unit != "%":
        raise BadQuantity(say("{text} is no share", text=word), say("with its sign, as 70 %"))
    must_be_believed(word, number, "%", 0, 100)
    return Value(number, "%", Entered(str(word), word.place))


def day(word: Word) -> Value:
    """A calendar day; the content is its ISO text. Raises BadQuantity."""
    text = _tidy(word)
    try:
        found = date.fromisoformat(text) if _DAY.fullmatch(text) else None
    except ValueError:
        raise BadQuantity(say("{text} is in no calendar", text=text), say("year, month, day, as 2026-03-12")) from None
    if found is None:
        raise BadQuantity(say("{text} is no day", text=text or "''"), say("year, month, day, as 2026-03-12"))
    if not 1900 <= found.year <= 2200:
        raise BadQuantity(say("{text} cannot be believed here", text=text), say("a year from 1900 to 2200"))
    return Value(found.isoformat(), "", Entered(str(word), word.place))


def direction(word: Word) -> Value:
    """A direction across the shaft, in degrees clockwise from 12: `5 o'clock`, `5:30 o'clock`, `130 deg`. Raises BadQuantity."""
    text = _tidy(word)
    clock = _CLOCK.fullmatch(text)
    if clock and 1 <= int(clock.group(1)) <= 12 and int(clock.group(2) or 0) < 60:
        degrees = (int(clock.group(1)) % 12) * 30 + int(clock.group(2) or 0) / 2
        return Value(degrees, "deg", Entered(str(word), word.place))
    if "clock" in text:
        raise BadQuantity(
            say("{text} is no direction", text=text), say("from 1 to 12 o'clock, or in degrees clockwise from 12, as 130 deg")
        )
    return quantity(word, "deg", 0, 360)


def spelt(unit: str) -> list[str]:
    """Every way the units of this kind are written."""
    return [spelling for one in units_for(measures(unit)) for spelling in (one, *UNITS[one][2])]


def must_fit(word: str, given: str, unit: str) -> None:
    """A unit of the kind that belongs here. Raises BadQuantity."""
    if given == unit or {given, unit} == {"", "%"}:
        return
    fit = ", ".join(units_for(measures(unit))) if unit else ""
    if not given:
        example = f"{word.strip()} {unit}"
        raise BadQuantity(
            say("{text} has no unit", text=word), say("with its unit, as {example}; units that fit: {units}", example=example, units=fit)
        )
    try:
        convert(1.0, given, unit)
    except UnitMismatch:
        if not unit:
            raise BadQuantity(say("{text} has a unit where none belongs", text=word), say("the bare number")) from None
        wrong = say("{text} is of the kind {given}, and {kind} belongs here", text=word, given=measures(given), kind=measures(unit))
        raise BadQuantity(wrong, say("units that fit: {units}", units=fit)) from None


def must_be_believed(word: str, number: float, unit: str, low: float, high: float) -> None:
    """Within what can be believed at this place. Raises BadQuantity."""
    if low <= number <= high:
        return
    span = say("from {low} to {high}", low=f"{low:.10g}", high=f"{high:.10g}")
    right = say("{span} {unit}; was the unit meant?", span=span, unit=unit) if unit else span
    raise BadQuantity(say("{text} cannot be believed here", text=word), right)


def _tidy(text: str) -> str:
    """Single spaces. Refuses what no grammar below could say well."""
    text = " ".join(text.split())
    if len(text) > LONGEST:
        raise BadQuantity(say("this is {count} characters long", count=len(text)), say("a quantity is short, as 60 mm"))
    if _THOUSANDS.search(text):
        raise BadQuantity(
            say("{text} has a comma or a mark for thousands in its number", text=text),
            say("a point for decimals, nothing for thousands: 60.5 mm, 1200 mm"),
        )
    if _ONE_SIGN.search(text):
        raise BadQuantity(say("{text} has a fraction in one sign", text=text), say("the fraction written out, as 2 1/2 in"))
    if text.startswith(("−", "–")):
        raise BadQuantity(
            say("{text} begins with a dash that is no minus", text=text), say("the plain minus: -{rest}", rest=text[1:].strip())
        )
    return text


def _number(text: str) -> float:
    sign = -1.0 if text.startswith("-") else 1.0
    whole, _, part = text.lstrip("+-").replace("-", " ").rpartition(" ")
    if "/" not in part:
        return sign * float(part)
    top, bottom = (int(one) for one in part.split("/"))
    if bottom == 0 or (whole and top >= bottom):
        raise BadQuantity(say("{text} is no fraction", text=text), say("as 15/16 or 2 15/16"))
    return sign * (float(whole or 0) + top / bottom)


def _unit(text: str, whole: str, wanted: str) -> str:
    if not text:
        return ""
    known = unit_named(text)
    if known is not None:
        return known
    if re.match(r"[eE][+-]?[0-9]", text):
        raise BadQuantity(say("{text} has a power of ten in its number", text=whole), say("the number written out"))
    if re.search(r"(?:^|[ /+*x-])[0-9.]", text):
        raise BadQuantity(say("{text} holds more than one number", text=whole), say("one number and one unit, as 60 mm or 2 15/16 in"))
    # of so few letters every guess is as near, and a guess may be a thousand times off
    near = nearest(text, spelt(wanted) if wanted else spellings()) if len(text) > 2 else None
    right = say("a unit as mm, in, N.m, kN, degC")
    if wanted:
        right = say("units that fit: {units}", units=", ".join(units_for(measures(wanted))))
    raise BadQuantity(
        say("{unit} is no unit that is known", unit=text), say("nearest known: {unit}; {right}", unit=near, right=right) if near else right
    )
