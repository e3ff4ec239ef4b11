"""Values as text for a reader: rounded to the safe side where a hand sets them, the second unit beside the first.

The unit is never parted from its number (a no-break space), a fraction is shown only where it is exact, no thousands marks.
"""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction
from math import ceil, floor, log10

from generator.say import say
from generator.units import convert, measures
from generator.value import Band, Computed, Entered, Instructed, Known, Value, Withheld

# a computed life longer than this says only that something else will end the bearing
MOST_HOURS = 1_000_000
SPACE = "\u00a0"
MINUS = "\u2212"

# unit: the unit shown beside it
_BESIDE = {
    "mm": "in", "in": "mm", "um": "in", "m": "ft", "N": "lbf", "kN": "lbf", "lbf": "N", "N.m": "lbf.ft", "lbf.ft": "N.m", "lbf.in": "N.m",
    "MPa": "psi", "psi": "MPa", "ksi": "MPa", "g": "oz", "oz": "g", "kg": "lb", "lb": "kg", "degC": "degF", "degF": "degC",
    "mm/s": "in/s", "kW": "hp", "hp": "kW", "cm3": "in3",
}  # fmt: skip
_WRITTEN = {
    "N.m": "N·m", "lbf.ft": "lbf·ft", "lbf.in": "lbf·in", "kN.m": "kN·m", "N.mm": "N·mm", "degC": "°C", "degF": "°F", "deg": "°", "um": "µm", "rpm": "r/min",
    "mm2": "mm²", "mm2/s": "mm²/s", "cm3": "cm³", "g/cm3": "g/cm³", "in2": "in²", "in3": "in³", "1e-6/K": "10⁻⁶/K", "hour": "h", "hour/day": "h/day", "day/week": "days/week",
}  # fmt: skip
_INCH = frozenset({"in", "ft", "lbf", "lbf.ft", "lbf.in", "psi", "ksi", "lb", "oz", "degF", "hp", "in/s", "in2", "in3"})
# digits after the point where significant figures would not do: micrometers read thousandths, screws are set in tenths
_DECIMALS = {"in": 4, "rpm": 0, "hour": 0, "day": 0}
_WHOLE_WHERE_WHOLE = ("", "%", "week", "HRC", "um", "VG", "NLGI", "mm/s", "hour/day", "day/week")


@dataclass(frozen=True)
class Shown:
    """A value for a reader: the large text, the second unit (or ""), and where a band runs, its two ends."""

    main: str
    second: str = ""
    lower: str = ""
    upper: str = ""
    unit: str = ""


def shown(value: Known, first: str = "metric") -> Shown:
    """The value in the reader's first unit ("metric" or "inch"; what is typed in inches stays in inches), the other beside it."""
    if isinstance(value, Withheld):
        return Shown(say("HELD, no figure"))
    if isinstance(value, Band):
        return _band(value, first)
    if isinstance(value.content, str):
        return Shown(say(value.content) if isinstance(value.reason, Computed) and value.content else value.content)
    unit = _handy(value, first_unit(value, first))
    main = text(value, unit)
    beside = _BESIDE.get(unit, "")
    return Shown(main, _beside(value, beside) if beside else "", unit=unit_text(unit))


def _beside(value: Value, unit: str) -> str:
    """The second unit; a torque goes down, since the first is often one that must not be passed."""
    if measures(unit) != "torque":
        return text(value, unit)
    return with_unit(figure(convert(value.content, value.unit, unit), unit, None, "down"), unit)


def text(value: Value, unit: str | None = None) -> str:
    """Number and unit in one text. A typed figure stays as it was typed in its own unit."""
    if isinstance(value.content, str):
        return value.content
    wanted = value.unit if unit is None else unit
    number = convert(value.content, value.unit, wanted)
    if wanted == "hour" and number > MOST_HOURS:
        return say("over {most}", most=with_unit(f"{MOST_HOURS}", wanted))
    return with_unit(figure(number, wanted, _typed_digits(value, wanted)), wanted)


def with_unit(number: str, unit: str) -> str:
    """The number with its unit held to it."""
    if unit in ("VG", "NLGI"):
        return f"{unit}{SPACE}{number}"
    return number + unit_text(unit) if unit == "deg" else f"{number}{SPACE}{unit_text(unit)}".rstrip(SPACE)


def unit_text(unit: str) -> str:
    """The unit as it is printed."""
    return _WRITTEN.get(unit, unit)


def first_unit(value: Value, first: str) -> str:
    """The unit a value is shown in first."""
    if value.unit in _INCH or first == "metric" or value.unit not in _BESIDE:
        return value.unit
    return _BESIDE[value.unit]


def _handy(value: Value, unit: str) -> str:
    """Computed forces of ten kilonewtons and more in kilonewtons: a reader takes in three figures, not six."""
    if unit == "N" and isinstance(value.reason, Computed) and abs(value.content) >= 10_000:
        return "kN"
    return unit


def figure(number: float, unit: str = "", digits: int | None = None, toward: str = "nearest") -> str:
    """The number alone, rounded: "nearest", "up" or "down". Turns and inches show a fraction where it is exact."""
    if unit == "turn" or (unit == "in" and digits is None):
        exact = fraction(number)
        if exact:
            return exact
    places = decimals(number, unit) if digits is None else digits
    scaled = round(number * 10**places, 6)
    whole = ceil(scaled) if toward == "up" else floor(scaled) if toward == "down" else round(scaled)
    printed = f"{whole / 10**places:.{max(0, places)}f}"
    return printed.replace("-", MINUS) if float(printed) else printed.lstrip("-")


def decimals(number: float, unit: str) -> int:
    """How many digits after the point a figure of this size and unit carries."""
    if unit in _DECIMALS:
        return _DECIMALS[unit]
    if abs(number) < 1e-9 or (unit in _WHOLE_WHERE_WHOLE and abs(number - round(number)) < 1e-6):
        return 0
    size = floor(log10(abs(number)) + 1e-9)
    if unit == "mm":
        return 3 if abs(number) < 0.1 else 2 if abs(number) < 10 else 3 if abs(number - round(number)) > 1e-6 else 0
    if unit == "um":
        return 1
    if unit in ("degC", "degF", "K"):
        return 0 if abs(number - round(number)) < 0.05 else 1
    return max(0, 2 - size) if abs(number) < 1e6 else 0


def fraction(number: float) -> str | None:
    """A mixed fraction where the number is an exact 64th; whole numbers too."""
    exact = Fraction(number).limit_denominator(64)
    if abs(float(exact) - number) > 1e-9 or number < 0 or 64 % exact.denominator:
        return None
    whole, rest = divmod(exact.numerator, exact.denominator)
    if not rest:
        return str(whole)
    part = f"{rest}/{exact.denominator}"
    return f"{whole} {part}" if whole else part


def _band(band: Band, first: str) -> Shown:
    unit = first_unit(band.upper, first)
    lower, upper = _ends(band, unit)
    main = with_unit(lower if lower == upper else say("{lower} to {upper}", lower=lower, upper=upper), unit)
    beside = _BESIDE.get(unit, "")
    second = ""
    if beside:
        one, other = _ends(band, beside)
        second = with_unit(one if one == other else say("{lower} to {upper}", lower=one, upper=other), beside)
    return Shown(main, second, lower, upper, unit_text(unit))


def _ends(band: Band, unit: str) -> tuple[str, str]:
    """Both ends with the same digits, rounded inward: printed limits never widen the band."""
    low, high = (convert(end.content, end.unit, unit) for end in (band.lower, band.upper))
    typed = [_typed_digits(end, unit) for end in (band.lower, band.upper)]
    given = [digits for digits in typed if digits is not None]
    if unit == "turn" or (unit == "in" and not given and measures(unit) == "length" and fraction(low) and fraction(high)):
        return figure(low, unit), figure(high, unit)
    digits = max(given) if given else max(_needed(low, unit), _needed(high, unit))
    if abs(high - low) < 1e-9:
        one = figure(low, unit, digits)
        return one, one
    if not band.limits:
        return figure(low, unit, digits), figure(high, unit, digits)
    one, other = figure(low, unit, digits, "up"), figure(high, unit, digits, "down")
    if high > low and one == other or low > high:
        return figure(low, unit, digits + 1, "up"), figure(high, unit, digits + 1, "down")
    return one, other


def _needed(number: float, unit: str) -> int:
    """Digits of a limit: as fine as it was rounded to, a micrometer's step at most."""
    if unit == "mm":
        return next((d for d in (0, 1, 2, 3) if abs(round(number, d) - number) < 1e-7), 3)
    return decimals(number, unit)


def _typed_digits(value: Value, unit: str) -> int | None:
    """The digits a figure was typed with, so that 0.050 mm stays 0.050 mm; None in another unit or where it was a fraction."""
    if value.unit != unit:
        return None
    typed = getattr(value.reason, "text", "") if isinstance(value.reason, (Entered, Instructed)) else ""
    number = typed.split()[0] if typed else ""
    return len(number.partition(".")[2]) if number.replace(".", "", 1).lstrip("-").isdecimal() and "to" not in typed else None
