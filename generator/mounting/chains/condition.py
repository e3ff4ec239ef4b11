"""Chains on the condition of a running machine: zones of vibration, limits of fans, warmth while running in."""

from typing import Annotated, Any, Literal, NamedTuple

from generator.calc.condition import VELOCITY, run_in_temperature, run_in_warmed, vibration_zones
from generator.method import Is, chain
from generator.say import say
from generator.tables import condition as look_up
from generator.tables.grease import thickener_limit
from generator.units import convert
from generator.value import Citation, Results, Value, Withheld

Support = Literal["rigid", "flexible"]


class Zone(NamedTuple):
    zone: Literal["A", "B", "C", "D"]
    group: str
    ab: Annotated[float, Is("boundary of zones A and B", "v_{AB}", "mm/s")]
    bc: Annotated[float, Is("boundary of zones B and C", "v_{BC}", "mm/s")]
    cd: Annotated[float, Is("boundary of zones C and D", "v_{CD}", "mm/s")]


@chain(Citation("ISO 10816-3", "2009", "annex A", "from memory"))
def vibration_zone(
    power: Annotated[float, Is("rated power of the machine", "P", "kW", 0, 1_000_000)],
    support: Support,
    speed: Annotated[float, Is("speed", "n", "rpm", 0, 100_000)],
    reading: Annotated[float, VELOCITY],
    shaft_height: Annotated[float, Is("shaft height of an electrical machine", "H", "mm", 1, 5000)] = None,  # type: ignore[assignment]
) -> Zone:
    """Zone of a reading of vibration, by the machine's power or shaft height
    The greatest of the directions at one bearing, velocity rms. The shaft height, where it is given, decides in place of the power.
    Rigid: the lowest frequency of machine and support together lies over 1.25 times the main one it is shaken with.
    Not for fans up to 300 kW or flexibly mounted, nor for reciprocating machines; outside 15 kW and 120 to 15 000 r/min there is no zone.
    ISO 20816-3 has taken the place of ISO 10816-3."""
    limits = look_up.zone_boundaries(_given(power), _given(support), _given(speed), _given(shaft_height))
    zone = vibration_zones.of(velocity=reading, ab=limits.ab, bc=limits.bc, cd=limits.cd)
    return Results(zone=zone, **limits)  # type: ignore[return-value]


class FanLimits(NamedTuple):
    category: str
    startup: Annotated[float, Is("greatest when starting up", r"v_{\mathrm{start}}", "mm/s")]
    alarm: Annotated[float, Is("alarm", r"v_{\mathrm{alarm}}", "mm/s")]
    shutdown: Annotated[float, Is("shut down", r"v_{\mathrm{stop}}", "mm/s")]


@chain(Citation("ISO 14694", "2003", "vibration in situ", "from memory"))
def fan_vibration_limits(
    use: Literal["industrial process", "ventilation or farm"],
    power: Annotated[float, Is("power of the fan", "P", "kW", 0.001, 1_000_000)],
    support: Support,
) -> FanLimits:
    """Limits of vibration of a fan in place
    Velocity rms, the greatest of the directions at one bearing. For ventilation and farms no limits are on file."""
    if str(_given(use).content) != "industrial process":
        held = Withheld(say("no limits are on file for fans of ventilation and farms: judge by the machine's own baseline"))
        return Results(dict.fromkeys(("category", "startup", "alarm", "shutdown"), held))  # type: ignore[return-value]
    return look_up.fan_limits(_given(power), _given(support))  # type: ignore[return-value]


class RunIn(NamedTuple):
    limit: Annotated[float, Is("continuous limit of the grease", "T_g", "degC")]
    usual_from: Annotated[float, Is("usual after running in, from", "T_1", "degC")]
    usual_to: Annotated[float, Is("usual after running in, to", "T_2", "degC")]
    alarm: Annotated[float, Is("alarm", r"T_{\mathrm{alarm}}", "degC")]
    stop: Annotated[float, Is("stop the machine", r"T_{\mathrm{stop}}", "degC")]


@chain(None)
def run_in_of_thickener(
    thickener: str,
    ambient: Annotated[float, Is("temperature of the air", "T_a", "degC", -60, 200)],
    of_sheet: Annotated[float, Is("continuous limit by the grease's own sheet", r"T_{g,\mathrm{sheet}}", "degC", 0, 400)] = None,  # type: ignore[assignment]
    baseline: Annotated[float, Is("settled temperature of this housing", "T_0", "degC", -60, 400)] = None,  # type: ignore[assignment]
) -> RunIn:
    """How warm a housing may become while it runs in, by the thickener of its grease
    Where the grease's own sheet gives a limit too, the lower of the two rules."""
    limit = _lower(thickener_limit(_given(thickener)), _given(of_sheet))
    warmth = run_in_temperature.of(ambient=ambient, limit=limit, baseline=baseline)
    return Results(limit=limit, **warmth)  # type: ignore[return-value]


@chain(None)
def run_in_of_thickener_warmed(
    thickener: str,
    settled: Annotated[float, Is("settled temperature of this housing, warmed by the process", "T_0", "degC", -60, 400)],
    of_sheet: Annotated[float, Is("continuous limit by the grease's own sheet", r"T_{g,\mathrm{sheet}}", "degC", 0, 400)] = None,  # type: ignore[assignment]
) -> RunIn:
    """How warm a housing that the process warms may become while it runs in, by the thickener of its grease
    Where the grease's own sheet gives a limit too, the lower of the two rules."""
    limit = _lower(thickener_limit(_given(thickener)), _given(of_sheet))
    return Results(limit=limit, **run_in_warmed.of(settled=settled, limit=limit))  # type: ignore[return-value]


def _lower(one: Value | Withheld, other: Value | None) -> Value | Withheld:
    if isinstance(one, Withheld) or other is None:
        return one
    return min(one, other, key=lambda value: convert(value.content, value.unit, "degC"))


def _given(value: Any) -> Any:
    """A chain is handed Values, and hands them on, where its signature, which labels them, names numbers and words."""
    return value
