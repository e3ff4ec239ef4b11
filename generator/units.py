"""The one place where units are known: how they are written, what they measure, and how they convert.

Factors come from pint, asked once per pair and kept. Temperatures and differences of temperature are distinct kinds.
"""

from functools import cache
from typing import Any


class UnitMismatch(ValueError):
    """Two units that do not measure the same thing."""

    def __init__(self, given: str, wanted: str) -> None:
        self.given, self.wanted = given, wanted
        super().__init__(f"{given or 'no unit'} cannot be given as {wanted or 'a bare number'}")


# unit as we print it: (what it measures, pint's name, other ways it is written)
UNITS: dict[str, tuple[str, str, tuple[str, ...]]] = {
    "mm": ("length", "mm", ("millimetre", "millimetres", "millimeter", "millimeters")),
    "cm": ("length", "cm", ()),
    "m": ("length", "m", ("metre", "metres", "meter", "meters")),
    "um": ("length", "um", ("µm", "μm", "micrometre", "micron", "microns")),
    "in": ("length", "inch", ('"', "″", "inch", "inches", "in.")),
    "ft": ("length", "foot", ("foot", "feet", "ft.")),
    "N": ("force", "N", ("newton", "newtons")),
    "kN": ("force", "kN", ()),
    "lbf": ("force", "lbf", ()),
    "kgf": ("force", "kgf", ("kp",)),
    "kip": ("force", "kip", ()),
    "N.m": ("torque", "N*m", ("Nm", "N·m", "N m", "N*m", "newton metre", "newton metres", "N-m")),
    "kN.m": ("torque", "kN*m", ("kNm", "kN·m", "kN m", "kN*m")),
    "N.mm": ("torque", "N*mm", ("Nmm", "N·mm")),
    "lbf.in": ("torque", "lbf*inch", ("lb.in", "in.lb", "in-lb", "lb-in", "lbf·in", "in·lbf", "in-lbf", "in.lbf", "lbf in")),
    "lbf.ft": ("torque", "lbf*foot", ("lb.ft", "ft.lb", "ft-lb", "lb-ft", "lbf·ft", "ft·lbf", "ft-lbf", "ft.lbf", "lbf ft")),
    "MPa": ("pressure", "MPa", ("N/mm2", "N/mm²")),
    "kPa": ("pressure", "kPa", ()),
    "bar": ("pressure", "bar", ()),
    "psi": ("pressure", "psi", ()),
    "ksi": ("pressure", "ksi", ()),
    "g": ("mass", "g", ("gram", "grams")),
    "kg": ("mass", "kg", ()),
    "t": ("mass", "tonne", ("tonne", "tonnes")),
    "oz": ("mass", "oz", ("ounce", "ounces")),
    "lb": ("mass", "lb", ("lbs",)),
    "g/stroke": ("mass", "g", ()),
    "rpm": ("speed", "rpm", ("r/min", "1/min", "min-1", "rev/min", "/min")),
    "Hz": ("frequency", "Hz", ("1/s", "hertz")),
    "degC": ("temperature", "degC", ("°C", "C", "deg C", "℃")),
    "degF": ("temperature", "degF", ("°F", "F", "deg F", "℉")),
    "K": ("temperature difference", "K", ("kelvin",)),
    "deg": ("angle", "degree", ("°", "degree", "degrees")),
    "rad": ("angle", "radian", ()),
    "turn": ("angle", "turn", ("turns", "rev")),
    "second": ("time", "second", ("s", "seconds")),
    "minute": ("time", "minute", ("min", "minutes")),
    "hour": ("time", "hour", ("h", "hours")),
    "day": ("time", "day", ("days", "d")),
    "week": ("time", "week", ("weeks",)),
    "month": ("time", "month", ("months",)),
    "year": ("time", "year", ("years", "a")),
    "hour/day": ("hours a day", "hour/day", ("h/d", "h/day", "hours/day")),
    "day/week": ("days a week", "day/week", ("d/week", "days/week", "d/wk")),
    "hour/year": ("hours a year", "hour/year", ("h/year", "h/a")),
    "mm2/s": ("viscosity", "mm**2/s", ("mm²/s", "cSt")),
    "mm2": ("area", "mm**2", ("mm²",)),
    "in2": ("area", "inch**2", ("in²",)),
    "cm3": ("volume", "cm**3", ("cm³", "ml", "cc")),
    "L": ("volume", "liter", ("l", "litre", "litres")),
    "in3": ("volume", "inch**3", ("in³",)),
    "g/cm3": ("density", "g/cm**3", ("g/cm³", "kg/L")),
    "mm/s": ("velocity", "mm/s", ()),
    "m/s": ("velocity", "m/s", ()),
    "in/s": ("velocity", "inch/s", ()),
    "kW": ("power", "kW", ()),
    "W": ("power", "W", ()),
    "hp": ("power", "hp", ()),
    "%": ("share", "percent", ("percent", "per cent")),
    "kg/m": ("mass per length", "kg/m", ()),
    "t/h": ("mass flow", "tonne/hour", ("tonne/hour", "tonnes/hour")),
    "N/mm": ("stiffness", "N/mm", ()),
    "1e-6/K": ("expansion", "1e-6/K", ("um/m/K",)),
    "HRC": ("hardness", "", ("HRc",)),
    "VG": ("viscosity grade", "", ("ISO VG",)),
    "NLGI": ("consistency", "", ()),
}
_SPELT = {spelling: unit for unit, (_, _, others) in UNITS.items() for spelling in (unit, *others)}
_SPELT_LOWER = {spelling.lower(): unit for spelling, unit in reversed(_SPELT.items()) if len(spelling) > 1}


def unit_named(text: str) -> str | None:
    """Our name of a unit however it is written, None where it is not known."""
    text = " ".join(text.split())
    return _SPELT.get(text) or (_SPELT_LOWER.get(text.lower()) if len(text) > 1 else None)


def spellings() -> tuple[str, ...]:
    """Every spelling that is understood, longest first."""
    return tuple(sorted(_SPELT, key=len, reverse=True))


def measures(unit: str) -> str:
    """What a unit measures, in words: "length", "torque"; "" for a bare number."""
    return UNITS[unit][0] if unit else ""


def units_for(kind: str) -> tuple[str, ...]:
    """The units that measure this kind of thing."""
    return tuple(unit for unit, (what, _, _) in UNITS.items() if what == kind)


def convert(number: float, given: str, wanted: str) -> float:
    """The number in another unit of the same kind. Raises UnitMismatch."""
    if given == wanted:
        return number
    scale, shift = _conversion(given, wanted)
    return number * scale + shift


@cache
def _conversion(given: str, wanted: str) -> tuple[float, float]:
    if {given, wanted} == {"", "%"}:
        return (0.01, 0.0) if given == "%" else (100.0, 0.0)
    if given not in UNITS or wanted not in UNITS or measures(given) != measures(wanted):
        raise UnitMismatch(given, wanted)
    ask = _registry().Quantity
    ours, theirs = UNITS[given][1], UNITS[wanted][1]
    zero = ask(0.0, ours).to(theirs).magnitude
    if measures(given) != "temperature":
        return float(ask(1.0, ours).to(theirs).magnitude), 0.0
    return float(ask(1.0, ours).to(theirs).magnitude - zero), float(zero)


@cache
def _registry() -> Any:
    import pint  # slow to load, and most runs need a handful of factors

    return pint.UnitRegistry(autoconvert_offset_to_baseunit=True)
