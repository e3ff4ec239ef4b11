"""Chains on grease: conditions in words looked up."""

from typing import Annotated, Any, Literal, NamedTuple

from generator.calc.grease import grease_temperature
from generator.method import Is, chain
from generator.tables import grease as look_up
from generator.value import Citation, Results

DUST = {
    "none": "light, non-abrasive dust",
    "light": "light, non-abrasive dust",
    "heavy": "heavy, non-abrasive dust",
    "light and abrasive": "light, abrasive dust",
    "heavy and abrasive": "heavy, abrasive dust",
}
WATER = {
    "none": "humidity mostly below 80 %",
    "humid": "humidity between 80 and 90 %",
    "condensation": "occasional condensation",
    "splashed": "occasional water on housing",
}
ATTITUDE = {"horizontal": "shaft horizontal", "inclined": "shaft at 45 deg", "vertical": "shaft vertical"}
BUILD = {
    "ball insert": "ball",
    "deep groove ball": "ball",
    "self-aligning ball": "ball",
    "cylindrical roller": "cylindrical or needle roller",
    "spherical roller": "spherical or taper roller",
}
TRADE = Citation("trade lubrication handbooks; origin not a standard", "", "factors", "from memory")


class Factors(NamedTuple):
    build: Annotated[float, Is("factor for the kind of bearing", r"f_{\mathrm{build}}")]
    heat: Annotated[float, Is("factor for heat", r"f_{\mathrm{heat}}")]
    dirt: Annotated[float, Is("factor for dirt", r"f_{\mathrm{dirt}}")]
    wet: Annotated[float, Is("factor for water", r"f_{\mathrm{wet}}")]
    shaking: Annotated[float, Is("factor for vibration", r"f_{\mathrm{shaking}}")]
    attitude: Annotated[float, Is("factor for the shaft's attitude", r"f_{\mathrm{attitude}}")]


@chain(TRADE)
def grease_factors(
    bearing: Literal["ball insert", "deep groove ball", "self-aligning ball", "cylindrical roller", "spherical roller"],
    temperature: Annotated[float, Is("temperature of the housing", "T", "degC", -90, 600)],
    dust: Literal["none", "light", "heavy", "light and abrasive", "heavy and abrasive"],
    water: Literal["none", "humid", "condensation", "splashed"],
    shaking: Annotated[float, Is("vibration velocity, peak", r"\hat{v}", "mm/s", 0, 500)],
    attitude: Literal["horizontal", "inclined", "vertical"],
) -> Factors:
    """Factors on the grease interval, from words and figures
    Each row of the table holds from its lower end to under its upper end.
    A condition that is not stated is not taken as harmless: it withholds."""
    return _given(  # type: ignore[no-any-return]
        Results(
            build=look_up.grease_factor("design", BUILD[_word(bearing)]),
            heat=look_up.grease_factor_at("temperature", _given(temperature), "degC"),
            dirt=look_up.grease_factor("contamination", DUST[_word(dust)]),
            wet=look_up.grease_factor("moisture", WATER[_word(water)]),
            shaking=look_up.grease_factor_at("vibration", _given(shaking), "mm/s"),
            attitude=look_up.grease_factor("position", ATTITUDE[_word(attitude)]),
        )
    )


@chain(Citation("FIST 2-4", "1990", "table 2, and a general chart", "seen"))
def thickener_compatibility(one: str, other: str) -> str:
    """Whether two thickeners may meet, by the charts
    Charts contradict each other; the worse is taken and shown as advice.
    Without a test (ASTM D6185) or a maker's letter on file two different greases count as incompatible."""
    return _given(look_up.thickeners_together(_given(one), _given(other)))  # type: ignore[no-any-return]


@chain(None)
def thickener_temperature(thickener: str) -> Annotated[float, Is("continuous limit planned with", "T_c", "degC")]:
    """Continuous temperature planned with for a thickener"""
    return _given(look_up.thickener_limit(_given(thickener)))  # type: ignore[no-any-return]


@chain(None)
def grease_against_heat(
    thickener: str,
    coldest: Annotated[float, Is("coldest start", r"T_{\mathrm{cold}}", "degC", -90, 600)],
    hottest: Annotated[float, Is("hottest running", r"T_{\mathrm{hot}}", "degC", -90, 600)],
    lowest: Annotated[float, Is("lowest temperature of the grease", r"T_{\min}", "degC", -90, 600)],
) -> Literal["inside", "too hot", "too cold", "above the continuous limit of its thickener"]:
    """Temperatures against what a thickener stands, where the grease's own sheet gives no upper limit
    Over the usable limit of the thickener it is refused; where the table has none, the continuous limit stands in for it."""
    kind = _given(thickener)
    highest, continuous = look_up.thickener_greatest(kind), look_up.thickener_limit(kind)
    return _given(grease_temperature.of(coldest=coldest, hottest=hottest, lowest=lowest, highest=highest, continuous=continuous))  # type: ignore[no-any-return]


@chain(Citation("ISO 3448", "1992", "", "from memory"))
def viscosity_of_grade(
    grade: Annotated[float, Is("grade", r"\mathrm{VG}", "VG", 2, 3200)],
) -> Annotated[float, Is("middle viscosity at 40 °C", r"\nu_{40}", "mm2/s")]:
    """Viscosity of an ISO VG grade at 40 °C"""
    return _given(look_up.viscosity_grade(_given(grade)))  # type: ignore[no-any-return]


@chain(Citation("ISO 2137, DIN 51818", "", "consistency grades", "from memory"))
def nlgi_grade(penetration: Annotated[float, Is("worked penetration, tenths of a millimetre", "p", "", 50, 500)]) -> str:
    """Consistency grade of a grease by its worked penetration"""
    return _given(look_up.consistency(_given(penetration)))  # type: ignore[no-any-return]


def _given(value: Any) -> Any:
    """A chain is handed Values, and hands them on, where its signature, which labels them, names numbers and words."""
    return value


def _word(value: Any) -> str:
    return str(value.content)
