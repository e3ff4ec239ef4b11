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
from generator.tables.look_ups import bolt_class, friction, head_and_hole, thread_figures
from generator.value import Citation, Results, Value, Withheld

Surface = Literal["plain", "zinc", "stainless", "not known"]
State = Literal["as supplied", "oiled", "paste", "wax", "dry"]


class Strength(NamedTuple):
    proof: Annotated[float, Is("proof strength", "S_p", "MPa")]
    yield_strength: Annotated[float, Is("yield strength, least", "R_p", "MPa")]
    tensile: Annotated[float, Is("tensile strength, least", "R_m", "MPa")]


@chain(Citation("ISO 898-1; SAE J429; ISO 3506-1", "", "tables of classes", "seen"))
def bolt_strength_class(strength_class: str, diameter: Annotated[float, Is("major diameter", "d", "mm", 3, 40)]) -> Strength:
    """Strength of a bolt by the mark on its head
    Unmarked counts as the lowest class. Stainless has no proof stress: 0.2 % proof stress stands in."""
    proof, yield_, tensile = bolt_class(strength_class, diameter)  # type: ignore[arg-type]
    return Results(proof=proof, yield_strength=yield_, tensile=tensile)  # type: ignore[return-value]


class Friction(NamedTuple):
    mu_low: Annotated[float, Is("low end of friction", r"\mu_{\min}")]
    mu_high: Annotated[float, Is("high end of friction", r"\mu_{\max}")]
    k_low: Annotated[float, Is("low end of the nut factor", r"K_{\min}")]
    k_high: Annotated[float, Is("high end of the nut factor", r"K_{\max}")]


@chain(Citation("VDI 2230 friction classes; Shigley Table 8-15", "", "", "from memory"))
def bolt_friction(surface: Surface, state: State) -> Friction:
    """Friction of a bolt by surface and state, low and high end
    The low end finds the torque that must not be passed, the high end the clamp that is left. Dry or oiled stainless is refused."""
    return Results(friction(surface, state))  # type: ignore[arg-type, return-value]


class Torques(NamedTuple):
    by_nut_factor: Annotated[float, Is("torque by the nut factor", "T_K", "N.m")]
    by_friction: Annotated[float, Is("torque by friction split", r"T_\mu", "N.m")]
    preload: Annotated[float, Is("preload at 90 % of yield", "F_M", "N")]


@chain(Citation("both ways: Shigley, equation 8-27; VDI 2230", "", "", "from memory"))
def bolt_torques(thread: str, strength_class: str, surface: Surface, state: State, nut_factor_area: Annotated[float, Is("share of the proof strength", "s", "", 0.1, 1)]) -> Torques:
    """Torque of a bolt by both ways, each with the low end of friction
    Neither must be passed: the lower one governs."""
    size, pitch = thread_figures(thread)  # type: ignore[arg-type]
    area = thread_stress_area.of(diameter=size, pitch=pitch)
    strength = bolt_strength_class.of(strength_class=strength_class, diameter=size)
    mu = bolt_friction.of(surface=surface, state=state)
    by_factor = bolt_torque_nut_factor.of(nut_factor=mu.k_low, diameter=size, proof=strength.proof, area=area.area, share=nut_factor_area)
    preload = bolt_preload_90pct.of(diameter=size, pitch=pitch, yield_strength=strength.yield_strength, thread_friction=mu.mu_low)
    head, hole = head_and_hole(size) if isinstance(size, Value) else (size, size)
    by_friction = bolt_torque_friction_split.of(preload=preload, diameter=size, pitch=pitch, thread_friction=mu.mu_low, head_friction=mu.mu_low, head=head, hole=hole)
    return Results(by_nut_factor=by_factor, by_friction=by_friction, preload=preload)  # type: ignore[return-value]


class Clamps(NamedTuple):
    most: Annotated[float, Is("greatest clamp force the torque gives", r"F_{\max}", "N")]
    aimed: Annotated[float, Is("clamp force with the high end of friction", "F", "N")]


@chain(Citation("ISO 16047; Shigley, equation 8-27", "", "", "from memory"))
def clamp_of_torque(thread: str, surface: Surface, state: State, torque: Annotated[float, Is("tightening torque", "T", "N.m", 0, 100_000)]) -> Clamps:
    """Clamp force of a torque, most and least of friction
    By friction split for metric heads; by the nut factor where the head is not tabulated."""
    size, pitch = thread_figures(thread)  # type: ignore[arg-type]
    mu = bolt_friction.of(surface=surface, state=state)
    head, hole = head_and_hole(size) if isinstance(size, Value) else (size, size)
    if isinstance(head, Withheld):
        most = bolt_force_nut_factor.of(torque=torque, nut_factor=mu.k_low, diameter=size)
        aimed = bolt_force_nut_factor.of(torque=torque, nut_factor=mu.k_high, diameter=size)
        return Results(most=most, aimed=aimed)  # type: ignore[return-value]
    facts: dict[str, Any] = {"torque": torque, "diameter": size, "pitch": pitch, "head": head, "hole": hole}
    return Results(  # type: ignore[return-value]
        most=bolt_force_from_torque.of(thread_friction=mu.mu_low, head_friction=mu.mu_low, **facts),
        aimed=bolt_force_from_torque.of(thread_friction=mu.mu_high, head_friction=mu.mu_high, **facts),
    )
