"""Chains on fits: tables looked up, then worked out; each step stays visible in the result."""

from typing import Annotated, Any, Literal, NamedTuple

from generator.calc.fits import bar_against_band, shaft_limit_rounding, size_limits
from generator.method import Is, chain
from generator.tables.look_ups import bar_tolerance, bore_tolerance, clearance_class, deviations, load_class, standard_tolerance
from generator.value import Citation, Results

Size = Annotated[float, Is("nominal size", "d", "mm", 3, 500)]
Words = Any


class ClassLimits(NamedTuple):
    lower_deviation: Annotated[float, Is("lower deviation", r"\mathrm{ei}", "um")]
    upper_deviation: Annotated[float, Is("upper deviation", r"\mathrm{es}", "um")]
    lower: Annotated[float, Is("lower limit of size", r"d_{\min}", "mm")]
    upper: Annotated[float, Is("upper limit of size", r"d_{\max}", "mm")]


@chain(Citation("ISO 286-1 and ISO 286-2", "2010", "tables", "seen"))
def iso_tolerance_limits(diameter: Size, tolerance_class: str) -> ClassLimits:
    """Limits of size from a tolerance class
    For shafts (h9) and holes (H7), over 3 to 500 mm; only classes that are tabulated, never by the generating formula."""
    low, up = deviations(diameter, tolerance_class)  # type: ignore[arg-type]
    limits = size_limits.of(diameter=diameter, lower_deviation=low, upper_deviation=up)
    return Results(lower_deviation=low, upper_deviation=up, **limits)  # type: ignore[return-value]


class InchLimits(NamedTuple):
    lower: Annotated[float, Is("lower limit of size", r"d_{\min}", "in")]
    upper: Annotated[float, Is("upper limit of size", r"d_{\max}", "in")]


@chain(Citation("ISO 286-2, with 1 in = 25.4 mm exactly", "2010", "tables", "seen"))
def inch_shaft_limits(
    diameter: Annotated[float, Is("nominal size", "d", "in", 0.12, 19.6)],
    tolerance_class: str,
    step: Annotated[float, Is("finest figure that is read", "s", "in", 0.000001, 0.1)],
) -> InchLimits:
    """An inch shaft on a class of ISO 286
    The class is looked up at the size in millimetres; the limits are brought back and rounded inward, never the deviations."""
    limits = iso_tolerance_limits.of(diameter=diameter, tolerance_class=tolerance_class)
    return in_inches(shaft_limit_rounding.of(lower=limits.lower, upper=limits.upper, step=step))  # type: ignore[return-value]


def in_inches(limits: Any) -> Results:
    """Limits in millimetres given again in inches, their reasons kept."""
    from dataclasses import replace

    from generator.value import Value

    return Results(
        {name: replace(v, content=round(v.content / 25.4, 9), unit="in") if isinstance(v, Value) else v for name, v in limits.items()}
    )


class Bore(NamedTuple):
    lower: Annotated[float, Is("lower deviation of the bore", r"t_{\mathrm{low}}", "um")]
    upper: Annotated[float, Is("upper deviation of the bore", r"t_{\mathrm{up}}", "um")]


@chain(Citation("ISO 492", "2014", "Normal class", "from memory"))
def bearing_bore_tolerance(bore: Annotated[float, Is("bore", "d", "mm", 2.6, 500)]) -> Bore:
    """Bore tolerance of a bearing of Normal class
    Cylindrical bores. Not for housed inserts, whose bores have a tolerance of their own, nor for taper rollers."""
    low, up = bore_tolerance(bore)  # type: ignore[arg-type]
    return Results(lower=low, upper=up)  # type: ignore[return-value]


@chain(Citation("ANSI/ABMA 7", "1995", "Table 1", "from memory"))
def shaft_class_by_load(
    bearing: Literal["deep groove ball", "spherical roller", "cylindrical roller"],
    load: Literal["light", "normal", "heavy"],
    bore: Annotated[float, Is("bore", "d", "mm", 1, 500)],
    ring: Literal["turns against the load", "stands, must slide", "stands"],
) -> str:
    """Shaft class for a bearing pressed on its seat
    Solid steel shafts. n6 and tighter, and any roller under heavy load, need more than Normal internal clearance. Where the load turns with the shaft, the inner ring stands against it."""
    return load_class(bearing, load, bore, ring)  # type: ignore[arg-type, return-value]


class BoughtBar(NamedTuple):
    minus: Annotated[float, Is("size tolerance, minus only", "t", "in")]
    least: Annotated[float, Is("least the bar may measure", r"b_{\min}", "mm")]
    verdict: Literal["as bought, measure anyway", "measure and select", "machine"]


@chain(Citation("ASTM A108", "2003", "Table A1.1", "seen"))
def cold_finished_bar(
    nominal: Annotated[float, Is("nominal size of the bar", "d", "mm", 3, 230)],
    carbon: Annotated[float, Is("carbon, top of the grade's range", "C", "%", 0, 2)],
    lower: Annotated[float, Is("lower limit of the seat", r"d_{\min}", "mm", 1, 230)],
    upper: Annotated[float, Is("upper limit of the seat", r"d_{\max}", "mm", 1, 230)],
) -> BoughtBar:
    """What a bought bar may measure, and whether it will do
    Minus only. Heat-treated, stainless or high-carbon bar has wider limits, not tabulated: ask for the mill's."""
    minus = bar_tolerance(nominal, carbon)  # type: ignore[arg-type]
    judged = bar_against_band.of(nominal=nominal, minus=minus, lower=lower, upper=upper)
    return Results(minus=minus, **judged)  # type: ignore[return-value]


class Clearances(NamedTuple):
    least: Annotated[float, Is("least radial clearance", r"G_{\min}", "um")]
    most: Annotated[float, Is("greatest radial clearance", r"G_{\max}", "um")]


@chain(Citation("ISO 5753-1", "2009", "tables", "from memory"))
def internal_clearance(
    kind: Literal["deep groove ball", "spherical roller, cylinder", "spherical roller, taper"],
    bore: Annotated[float, Is("bore", "d", "mm", 10, 500)],
    clearance: Literal["C2", "CN", "C3", "C4"],
) -> Clearances:
    """Radial internal clearance of a class
    Housed inserts have a table of their own, which is not given: take it from the maker."""
    least, most = clearance_class(kind, bore, clearance)  # type: ignore[arg-type]
    return Results(least=least, most=most)  # type: ignore[return-value]


@chain(Citation("ISO 286-1", "2010", "Table 1", "seen"))
def standard_tolerance_grade(
    diameter: Annotated[float, Is("nominal size", "d", "mm", 0.1, 500)], grade: Literal["IT4", "IT5", "IT6", "IT7", "IT8", "IT9", "IT10"]
) -> Annotated[float, Is("standard tolerance", r"\mathrm{IT}", "um")]:
    """Standard tolerance of a grade at a size"""
    return standard_tolerance(diameter, str(grade.content))  # type: ignore[arg-type, attr-defined, return-value]
