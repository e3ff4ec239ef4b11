"""Chains on grease: conditions in words looked up."""

from typing import Annotated, Literal, NamedTuple

from generator.method import Is, chain
from generator.tables.look_ups import consistency, grease_factor, grease_factor_at, thickener_limit, thickeners_together, viscosity_grade
from generator.value import Citation, Results

DUST = {"none": "light, non-abrasive dust", "light": "light, non-abrasive dust", "heavy": "heavy, non-abrasive dust", "light and abrasive": "light, abrasive dust", "heavy and abrasive": "heavy, abrasive dust"}
WATER = {"none": "humidity mostly below 80 %", "humid": "humidity between 80 and 90 %", "condensation": "occasional condensation", "splashed": "occasional water on housing"}
ATTITUDE = {"horizontal": "shaft horizontal", "inclined": "shaft at 45 deg", "vertical": "shaft vertical"}
BUILD = {"ball insert": "ball", "deep groove ball": "ball", "self-aligning ball": "ball", "cylindrical roller": "cylindrical or needle roller", "spherical roller": "spherical or taper roller"}
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
    Each row of the table holds from its lower end to under its upper end. A condition that is not stated is not taken as harmless: it withholds."""
    return Results(  # type: ignore[return-value]
        build=grease_factor("design", BUILD[bearing.content]),  # type: ignore[attr-defined]
        heat=grease_factor_at("temperature", temperature, "degC"),  # type: ignore[arg-type]
        dirt=grease_factor("contamination", DUST[dust.content]),  # type: ignore[attr-defined]
        wet=grease_factor("moisture", WATER[water.content]),  # type: ignore[attr-defined]
        shaking=grease_factor_at("vibration", shaking, "mm/s"),  # type: ignore[arg-type]
        attitude=grease_factor("position", ATTITUDE[attitude.content]),  # type: ignore[attr-defined]
    )


@chain(Citation("FIST 2-4", "1990", "table 2, and a general chart", "seen"))
def thickener_compatibility(one: str, other: str) -> str:
    """Whether two thickeners may meet, by the charts
    Charts contradict each other; the worse is taken and shown as advice. Without a test (ASTM D6185) or a maker's letter on file two different greases count as incompatible."""
    return thickeners_together(one, other)  # type: ignore[arg-type, return-value]


@chain(None)
def thickener_temperature(thickener: str) -> Annotated[float, Is("continuous limit planned with", "T_c", "degC")]:
    """Continuous temperature planned with for a thickener"""
    return thickener_limit(thickener)  # type: ignore[arg-type, return-value]


@chain(Citation("ISO 3448", "1992", "", "from memory"))
def viscosity_of_grade(grade: Annotated[float, Is("grade", "VG", "", 2, 3200)]) -> Annotated[float, Is("middle viscosity at 40 °C", r"\nu_{40}", "mm2/s")]:
    """Viscosity of an ISO VG grade at 40 °C"""
    return viscosity_grade(grade)  # type: ignore[arg-type, return-value]


@chain(Citation("ISO 2137, DIN 51818", "", "consistency grades", "from memory"))
def nlgi_grade(penetration: Annotated[float, Is("worked penetration, tenths of a millimetre", "p", "", 80, 480)]) -> str:
    """Consistency grade of a grease by its worked penetration"""
    return consistency(penetration.content)  # type: ignore[attr-defined, return-value]
