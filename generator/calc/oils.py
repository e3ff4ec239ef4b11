"""Oil by temperature: viscosity between and beyond two known ones, and the index that says how fast it thins."""

from itertools import pairwise
from math import exp, log10
from typing import Annotated, NamedTuple

from generator.method import Is, Refused, method
from generator.say import say
from generator.value import Citation

D341 = Citation("ASTM D341", "2009", "equations for kinematic viscosity and temperature", "from memory")
D2270 = Citation("ASTM D2270", "2010", "procedures A and B", "from memory")
NU40 = Is("viscosity at 40 °C", r"\nu_{40}", "mm2/s", 0.5, 100_000)
NU100 = Is("viscosity at 100 °C", r"\nu_{100}", "mm2/s", 0.3, 10_000)
THINS = {"the oil is thinner at 100 °C than at 40 °C": lambda nu40, nu100, **_: nu40 > nu100}
THINNEST, THIN, THICKEST = 0.21, 10.0, 2e7


@method(
    r"\lg \lg Z = A - B \lg T, \quad Z = \nu + 0.7 + e^{-1.47 - 1.84\,\nu - 0.51\,\nu^2}, \quad T = t + 273.15\,\mathrm{K}",
    D341,
    holds=THINS,
    beware={
        "outside -20 to 150 °C, where the rule is known to hold": lambda temperature, **_: not -20 <= temperature <= 150,
        "thinner than 2 mm²/s, where the rule is less sure": lambda nu40, nu100, temperature, **_: _at(nu40, nu100, temperature) <= 2,
    },
)
def viscosity_at_temperature(
    nu40: Annotated[float, NU40],
    nu100: Annotated[float, NU100],
    temperature: Annotated[float, Is("temperature of the oil", "t", "degC", -60, 300)],
) -> Annotated[float, Is("viscosity at this temperature", r"\nu", "mm2/s")]:
    """Viscosity of an oil at a temperature
    A straight line on the viscosity chart through the two known points. Not for an oil near its pour point, nor for a grease as a whole: its base oil."""
    return _at(nu40, nu100, temperature)


def _at(nu40: float, nu100: float, temperature: float) -> float:
    low, high = log10(log10(_z(nu40))), log10(log10(_z(nu100)))
    start, end, here = (log10(t + 273.15) for t in (40.0, 100.0, temperature))
    at = low + (high - low) * (here - start) / (end - start)
    if at > log10(log10(_z(THICKEST))):
        raise Refused(say("so thick at this temperature that the rule no longer holds"))
    z = 10 ** (10**at)
    if z < _z(THINNEST):
        raise Refused(say("so thin at this temperature that the rule no longer holds"))
    return z - 0.7 if z > _z(THIN) else _thin(z)


def _z(nu: float) -> float:
    # from 10 mm²/s on the last term is less than the last bit: it is left out nowhere, so that there is no step
    return nu + 0.7 + exp(-1.47 - 1.84 * nu - 0.51 * nu**2)


def _thin(z: float) -> float:
    """The viscosity of a thin oil that has this Z, found by halving."""
    low, high = THINNEST, THIN
    for _ in range(60):
        middle = (low + high) / 2
        low, high = (middle, high) if _z(middle) < z else (low, middle)
    return (low + high) / 2


A = Is("coefficient of L, squared", "a", "", -1000, 1000)
B = Is("coefficient of L", "b", "", -1000, 1000)
C = Is("constant of L", "c", "", -1000, 1000)
D = Is("coefficient of H, squared", "d", "", -1000, 1000)
E = Is("coefficient of H", "e", "", -1000, 1000)
F = Is("constant of H", "f", "", -1000, 1000)


class Index(NamedTuple):
    at_zero: Annotated[float, Is("viscosity at 40 °C of an oil of index 0", "L", "mm2/s")]
    at_hundred: Annotated[float, Is("viscosity at 40 °C of an oil of index 100", "H", "mm2/s")]
    exact: Annotated[float, Is("viscosity index", r"\mathrm{VI}")]
    printed: Annotated[float, Is("viscosity index as it is reported", r"\mathrm{VI}")]


@method(
    r"L = a\,\nu_{100}^2 + b\,\nu_{100} + c, \quad H = d\,\nu_{100}^2 + e\,\nu_{100} + f, \quad \mathrm{VI} = \begin{cases}"
    r" 100\,\frac{L - \nu_{40}}{L - H} & \nu_{40} \geq H \\ 100 + \frac{10^N - 1}{0.00715} & \nu_{40} < H \end{cases},"
    r" \quad N = \frac{\lg H - \lg \nu_{40}}{\lg \nu_{100}}",
    D2270,
    holds=THINS,
)
def viscosity_index(
    nu40: Annotated[float, NU40],
    nu100: Annotated[float, Is("viscosity at 100 °C", r"\nu_{100}", "mm2/s", 2, 10_000)],
    a: Annotated[float, A],
    b: Annotated[float, B],
    c: Annotated[float, C],
    d: Annotated[float, D],
    e: Annotated[float, E],
    f: Annotated[float, F],
) -> Index:
    """Viscosity index of an oil
    The coefficients belong to the range of the viscosity at 100 °C. There is no index under 2 mm²/s. Reported as a whole number, a half to the even one."""
    at_zero, at_hundred = a * nu100**2 + b * nu100 + c, d * nu100**2 + e * nu100 + f
    index = _index(nu40, nu100, at_zero, at_hundred)
    return Index(at_zero, at_hundred, index, float(round(index)))


def _index(nu40: float, nu100: float, at_zero: float, at_hundred: float) -> float:
    if not at_zero > at_hundred > 0:
        raise Refused(say("the coefficients are not those of this viscosity"))
    if nu40 >= at_hundred:
        return 100 * (at_zero - nu40) / (at_zero - at_hundred)
    return float(100 + (10 ** (log10(at_hundred / nu40) / log10(nu100)) - 1) / 0.00715)


class Coefficients(NamedTuple):
    low: Annotated[float, Is("range of the viscosity at 100 °C, from", "", "mm2/s", 2, 10_000)]
    a: Annotated[float, A]
    b: Annotated[float, B]
    c: Annotated[float, C]
    d: Annotated[float, D]
    e: Annotated[float, E]
    f: Annotated[float, F]
    high: Annotated[float, Is("range of the viscosity at 100 °C, to", "", "mm2/s", 2, 10_000)] = 10_000.0


@method(
    r"\mathrm{VI}\left(\nu_{40}, \nu_{100}\right) = \mathrm{VI}",
    D2270,
    beware={"viscosity at 100 °C drawn from the viscosity index, which is a rounded figure": lambda **_: True},
)
def viscosity_at_100_from_index(
    nu40: Annotated[float, NU40],
    index: Annotated[float, Is("viscosity index", r"\mathrm{VI}", "", 0, 500)],
    coefficients: tuple[Coefficients, ...],
) -> Annotated[float, Is("viscosity at 100 °C", r"\nu_{100}", "mm2/s")]:
    """Viscosity at 100 °C of an oil whose index is known
    The index rises with it, so that halving finds it; the ranges of the coefficients join one another."""
    if not coefficients or any(abs(one.high - after.low) > 1e-9 for one, after in pairwise(coefficients)):
        raise Refused(say("the ranges of the coefficients do not join"))
    low, high = coefficients[0].low, min(coefficients[-1].high, nu40) * (1 - 1e-12)
    if high <= low or not _of(nu40, low, coefficients) <= index <= _of(nu40, high, coefficients):
        raise Refused(say("no viscosity at 100 °C in the ranges of the coefficients gives this index"))
    for _ in range(80):
        middle = (low + high) / 2
        low, high = (middle, high) if _of(nu40, middle, coefficients) < index else (low, middle)
    # the ranges meet with a step of a small part of an index: beyond half an index it is no meeting of ranges
    if abs(_of(nu40, high, coefficients) - index) > 0.5:
        raise Refused(say("the ranges of the coefficients do not meet"))
    return high


def _of(nu40: float, nu100: float, coefficients: tuple[Coefficients, ...]) -> float:
    row = next((r for r in reversed(coefficients) if r.low <= nu100), coefficients[0])
    return _index(nu40, nu100, row.a * nu100**2 + row.b * nu100 + row.c, row.d * nu100**2 + row.e * nu100 + row.f)
