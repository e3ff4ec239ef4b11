"""Chains on bolts: strength and friction looked up, both ways to a torque, the clamp that is left."""

from __future__ import annotations

from typing import Annotated, Any, Literal, NamedTuple

from generator.calc.bolts import (
    bolt_force_from_torque,
    bolt_force_nut_factor,
    bolt_preload_90pct,
    bolt_torque_friction_split,
    bolt_torque_nut_factor,
    thread_stress_area,
)
from generator.method import Is, chain
from generator.say import say
from generator.tables import bolts as look_up
from generator.tables.look_ups import thread_figures, thread_profile
from generator.value import Citation, LookedUp, Results, Value, Withheld

Surface = Literal["plain", "zinc", "stainless", "not known"]
State = Literal["as supplied", "oiled", "paste", "wax", "dry"]


class Strength(NamedTuple):
    proof: Annotated[float, Is("proof strength", "S_p", "MPa")]
    yield_strength: Annotated[float, Is("yield strength, least", "R_p", "MPa")]
    tensile: Annotated[float, Is("tensile strength, least", "R_m", "MPa")]


@chain(Citation("ISO 898-1; SAE J429; ISO 3506-1", "", "tables of classes", "seen"))
def bolt_strength_class(strength_class: str, diameter: Annotated[float, Is("major diameter", "d", "mm", 3, 40)]) -> Strength:
    """Strength of a bolt by the mark on its head
    Unmarked counts as the lowest class. Stainless has no proof stress: 0.2 % proof stress stands in.
    The upper figures of grade 2 hold for bolts up to 6 in long."""
    proof, yield_, tensile = look_up.bolt_class(*_values(strength_class, diameter))
    return _results(proof=proof, yield_strength=yield_, tensile=tensile)  # type: ignore[no-any-return]


class Friction(NamedTuple):
    mu_low: Annotated[float, Is("low end of friction", r"\mu_{\min}")]
    mu_high: Annotated[float, Is("high end of friction", r"\mu_{\max}")]
    k_low: Annotated[float, Is("low end of the nut factor", r"K_{\min}")]
    k_high: Annotated[float, Is("high end of the nut factor", r"K_{\max}")]


@chain(Citation("VDI 2230 friction classes; Shigley Table 8-15", "", "", "from memory"))
def bolt_friction(surface: Surface, state: State) -> Friction:
    """Friction of a bolt by surface and state, low and high end
    The low end finds the torque that must not be passed, the high end the clamp that is left. Dry or oiled stainless is refused."""
    return _results(**look_up.friction(*_values(surface, state)))  # type: ignore[no-any-return]


class Dimensions(NamedTuple):
    diameter: Annotated[float, Is("major diameter", "d", "mm")]
    pitch: Annotated[float, Is("pitch", "P", "mm")]
    area: Annotated[float, Is("stress area as printed", "A_s", "mm2")]
    head: Annotated[float, Is("bearing diameter of the head", "d_w", "mm")]
    hole: Annotated[float, Is("medium hole", "d_h", "mm")]


@chain(Citation("ISO 261, ISO 4014, ISO 273; ASME B1.1", "", "", "from memory"))
def thread_dimensions(thread: str) -> Dimensions:
    """Dimensions of a bolt by its thread
    The printed stress area of coarse threads; head and hole of metric bolts from M5 to M24. The head of an inch bolt is measured."""
    (given,) = _values(thread)
    size, pitch = thread_figures(given)
    head, hole = _head_and_hole(given, size)
    return _results(diameter=size, pitch=pitch, area=look_up.published_area(given), head=head, hole=hole)  # type: ignore[no-any-return]


@chain(Citation("VDI 2230", "1986", "table of limiting surface pressure", "seen"))
def pressure_limit(material: str) -> Annotated[float, Is("pressure that may be under a bolt head", "p_G", "MPa")]:
    """Pressure a material may carry under a bolt head
    The older edition accepts; the higher figures of the later one accept nothing by themselves. Polymer and aluminium: none."""
    found: Any = look_up.pressure_limit(*_values(material))
    return found  # type: ignore[no-any-return]


class Torques(NamedTuple):
    by_nut_factor: Annotated[float, Is("torque by the nut factor", "T_K", "N.m")]
    by_friction: Annotated[float, Is("torque by friction split", r"T_\mu", "N.m")]
    preload: Annotated[float, Is("preload at 90 % of yield", "F_M", "N")]


@chain(Citation("both ways: Shigley, equation 8-27; VDI 2230", "", "", "from memory"))
def bolt_torques(
    thread: str,
    strength_class: str,
    surface: Surface,
    state: State,
    nut_factor_area: Annotated[float, Is("share of the proof strength", "s", "", 0.1, 1)],
    head: Annotated[float, Is("bearing diameter of the head (0: by the table)", "d_w", "mm", 0, 150)] = 0.0,
    hole: Annotated[float, Is("hole (0: by the table)", "d_h", "mm", 0, 110)] = 0.0,
) -> Torques:
    """Torque of a bolt by both ways, each with the low end of friction
    Neither must be passed: the lower one governs. A bolt of a stainless class is judged as stainless, whatever its surface is called."""
    (given,) = _values(thread)
    size, pitch = thread_figures(given)
    area = thread_stress_area.of(diameter=size, pitch=pitch, profile=thread_profile(given))
    strength = bolt_strength_class.of(strength_class=strength_class, diameter=size)
    mu = bolt_friction.of(surface=_surface(surface, strength_class), state=state)
    by_factor = bolt_torque_nut_factor.of(nut_factor=mu.k_low, diameter=size, proof=strength.proof, area=area.area, share=nut_factor_area)
    thread_facts: dict[str, Any] = {"diameter": size, "pitch": pitch, "thread_friction": mu.mu_low}
    preload = bolt_preload_90pct.of(yield_strength=strength.yield_strength, **thread_facts)
    known_head, known_hole = _head_and_hole(given, size, head, hole)
    by_friction = bolt_torque_friction_split.of(preload=preload, head_friction=mu.mu_low, head=known_head, hole=known_hole, **thread_facts)
    return _results(by_nut_factor=by_factor, by_friction=by_friction, preload=preload)  # type: ignore[no-any-return]


class Clamps(NamedTuple):
    most: Annotated[float, Is("greatest clamp force the torque gives", r"F_{\max}", "N")]
    aimed: Annotated[float, Is("clamp force with the high end of friction", "F", "N")]


@chain(Citation("ISO 16047; Shigley, equation 8-27", "", "", "from memory"))
def clamp_of_torque(
    thread: str,
    surface: Surface,
    state: State,
    torque: Annotated[float, Is("tightening torque", "T", "N.m", 0, 100_000)],
    head: Annotated[float, Is("bearing diameter of the head (0: by the table)", "d_w", "mm", 0, 150)] = 0.0,
    hole: Annotated[float, Is("hole (0: by the table)", "d_h", "mm", 0, 110)] = 0.0,
) -> Clamps:
    """Clamp force of a torque, most and least of friction
    By friction split for metric heads; by the nut factor where the head is not tabulated."""
    (given,) = _values(thread)
    size, pitch = thread_figures(given)
    mu = bolt_friction.of(surface=surface, state=state)
    known_head, known_hole = _head_and_hole(given, size, head, hole)
    if isinstance(known_head, Withheld) or isinstance(known_hole, Withheld):
        most = bolt_force_nut_factor.of(torque=torque, nut_factor=mu.k_low, diameter=size)
        aimed = bolt_force_nut_factor.of(torque=torque, nut_factor=mu.k_high, diameter=size)
        return _results(most=most, aimed=aimed)  # type: ignore[no-any-return]
    facts: dict[str, Any] = {"torque": torque, "diameter": size, "pitch": pitch, "head": known_head, "hole": known_hole}
    most = bolt_force_from_torque.of(thread_friction=mu.mu_low, head_friction=mu.mu_low, **facts)
    aimed = bolt_force_from_torque.of(thread_friction=mu.mu_high, head_friction=mu.mu_high, **facts)
    return _results(most=most, aimed=aimed)  # type: ignore[no-any-return]


def _surface(surface: Any, strength_class: Any) -> Any:
    if not str(strength_class.content).startswith("A") or str(surface.content) == "stainless":
        return surface
    return Value("stainless", "", LookedUp(None, say("a bolt of a stainless class"), (("class", str(strength_class.content)),)))


def _head_and_hole(thread: Value, size: Any, head: Any = 0.0, hole: Any = 0.0) -> tuple[Any, Any]:
    """As measured where given; else by the table, which knows metric heads alone."""
    if not isinstance(size, Value):
        return size, size
    metric = isinstance(profile := thread_profile(thread), Value) and profile.content == "metric"
    known = look_up.head_and_hole(size) if metric else (_measure("head"), _measure("hole"))
    measured = (head, hole)
    tabled = tuple(one if isinstance(one, Value) and one.content else other for one, other in zip(measured, known, strict=True))
    return tabled[0], tabled[1]


def _measure(what: str) -> Withheld:
    return Withheld(say("the {what} of an inch bolt is not tabulated: measure it", what=say(what)))


def _values(*given: Any) -> Any:
    """A chain is handed Values where its signature, which labels them, names numbers and words."""
    return given


def _results(**named: Any) -> Any:
    return Results(named)
