"""Chains on oils and greases by their papers: viscosity at a temperature, viscosity index, what the letters of a grease say."""

from typing import Annotated, Any, NamedTuple

from generator.calc.oils import D341, D2270, NU40, NU100, viscosity_at_100_from_index, viscosity_at_temperature, viscosity_index
from generator.calc.oils import Index as OilIndex
from generator.method import Is, chain
from generator.say import say
from generator.tables import oils as look_up
from generator.value import Citation, LookedUp, Results, Value


class Viscosity(NamedTuple):
    nu100: Annotated[float, Is("viscosity at 100 °C", r"\nu_{100}", "mm2/s")]
    viscosity: Annotated[float, Is("viscosity at this temperature", r"\nu", "mm2/s")]


@chain(D341)
def viscosity_of_oil(
    nu40: Annotated[float, NU40],
    temperature: Annotated[float, Is("temperature of the oil", "t", "degC", -60, 300)],
    nu100: Annotated[float, NU100] = None,  # type: ignore[assignment]
    index: Annotated[float, Is("viscosity index", r"\mathrm{VI}", "", 0, 500)] = None,  # type: ignore[assignment]
) -> Viscosity:
    """Viscosity of an oil at a temperature, from its data sheet
    From its viscosity at 40 °C and at 100 °C; without the second, from its viscosity index; without either, as a mineral oil of index 95."""
    known = nu100
    if known is None:
        known = viscosity_at_100_from_index.of(
            nu40=nu40, index=index if index is not None else _usual_index(), coefficients=look_up.all_index_coefficients()
        )
    return Results(nu100=known, viscosity=viscosity_at_temperature.of(nu40=nu40, nu100=known, temperature=temperature))  # type: ignore[return-value]


def _usual_index() -> Value:
    why = LookedUp(None, say("viscosity index of a mineral oil"))
    return Value(95.0, "", why, (say("viscosity index taken as 95, as of a mineral oil"),))


@chain(D2270)
def viscosity_index_of_oil(nu40: Annotated[float, NU40], nu100: Annotated[float, NU100]) -> OilIndex:
    """Viscosity index of an oil from its data sheet"""
    return viscosity_index.of(nu40=nu40, nu100=nu100, **look_up.index_coefficients(_given(nu100)))  # type: ignore[no-any-return]


class Decoded(NamedTuple):
    standard: str
    use: str
    additives: str
    base_oil: str
    water: str
    consistency: str
    highest: Annotated[float, Is("highest temperature", r"T_{\max}", "degC")]
    lowest: Annotated[float, Is("lowest temperature", r"T_{\min}", "degC")]


@chain(Citation("DIN 51825 with DIN 51502, and ISO 6743-9", "", "designation", "from memory"))
def grease_designation(designation: str) -> Decoded:
    """What the letters of a grease say
    KP2K-30 or ISO-L-XBCEB2. A letter that is not known, or a word with two readings, gives nothing: it stays as it is written."""
    return look_up.decoded(_given(designation))  # type: ignore[return-value]


def _given(value: Any) -> Any:
    """A chain is handed Values, and hands them on, where its signature, which labels them, names numbers and words."""
    return value
