"""The chain from a bolt and what lies under its head to what a hand may set, and what clamp that leaves at the worst."""

from __future__ import annotations

from typing import Annotated, Any, NamedTuple

from generator.calc.bolts import (
    bolt_bearing_pressure,
    bolt_torque_friction_split,
    force_of_pressure,
    least_torque,
    lower_of_two,
    tightening_scatter,
)
from generator.method import Is, chain
from generator.mounting.chains.bolts import State, Surface, bolt_friction, bolt_torques, clamp_of_torque, pressure_limit, thread_dimensions
from generator.say import say
from generator.value import Citation, Results, Value, Withheld


class Limits(NamedTuple):
    torque_most: Annotated[float, Is("torque that is not passed", r"T_{\max}", "N.m")]
    torque_least: Annotated[float, Is("torque below which too little clamp may be left", r"T_{\min}", "N.m")]
    clamp_most: Annotated[float, Is("greatest clamp force", r"F_{\max}", "N")]
    clamp_least: Annotated[float, Is("least clamp force left", r"F_{\min}", "N")]
    pressure_torque: Annotated[float, Is("torque at which the face under the head is at its limit", "T_p", "N.m")]


@chain(Citation("VDI 2230; Shigley, equations 8-27 and 8-31", "", "", "from memory"))
def bolt_torque_limits(
    thread: str,
    strength_class: str,
    surface: Surface,
    state: State,
    under_head: str,
    scatter: Annotated[float, Is("scatter of the tightening", r"\alpha_A", "", 1, 5)],
    embedding: Annotated[float, Is("share lost as faces settle", "f_Z", "", 0, 0.9)],
    share: Annotated[float, Is("share of the proof strength", "s", "", 0.1, 1)],
    needed: Annotated[float, Is("clamp force needed of one bolt", r"F_{\mathrm{need}}", "N", 0, 3_000_000)],
    head: Annotated[float, Is("bearing diameter of the head (0: by the table)", "d_w", "mm", 0, 150)] = 0.0,
    hole: Annotated[float, Is("hole (0: by the table)", "d_h", "mm", 0, 110)] = 0.0,
    slot: Annotated[float, Is("width of a slot longer than the head (0: none)", "w", "mm", 0, 110)] = 0.0,
    washer_thickness: Annotated[float, Is("thickness of a hard washer (0: none)", "h_s", "mm", 0, 20)] = 0.0,
    washer_outside: Annotated[float, Is("outside of that washer", "d_W", "mm", 0, 200)] = 0.0,
) -> Limits:
    """What a bolt may be set to, and the clamp left at the worst
    Most: the lower of both ways with the low end of friction, and of the torque at which the face under the head is at its limit.
    Least: what still leaves the needed clamp with the high end of friction, after scatter and settling.
    Least above most: the bolt is too weak. Where the face cannot be judged, no torque is given;
    where only the head is not known, the nut factor alone governs, and it is marked."""
    facts: Any = {"thread": thread, "surface": surface, "state": state, "head": _typed(head), "hole": _typed(hole)}
    both = bolt_torques.of(strength_class=strength_class, nut_factor_area=share, **facts)
    spread = {"slot": _typed(slot), "washer_thickness": _typed(washer_thickness), "washer_outside": _typed(washer_outside)}
    face = _face_torque(facts, under_head, both.preload, spread)
    most = _most(both, face)
    clamp = clamp_of_torque.of(torque=most, **facts)
    left = tightening_scatter.of(clamp=clamp.aimed, scatter=scatter, embedding=embedding)
    least = least_torque.of(torque=most, clamp=left, needed=needed)
    found: Any = Results(torque_most=most, torque_least=least, clamp_most=clamp.most, clamp_least=left, pressure_torque=face)
    return found  # type: ignore[no-any-return]


def _face_torque(facts: Any, under_head: Any, preload: Any, spread: dict[str, Any]) -> Any:
    sizes = thread_dimensions.of(thread=facts["thread"])
    mu = bolt_friction.of(surface=facts["surface"], state=facts["state"])
    head, hole = facts["head"] or sizes.head, facts["hole"] or sizes.hole
    opening = {} if spread["slot"] else {"hole": hole}
    found = bolt_bearing_pressure.of(clamp=preload, head=head, **opening, **spread)
    allowed = force_of_pressure.of(allowed=pressure_limit.of(material=under_head), area=found.area)
    thread_facts = {"diameter": sizes.diameter, "pitch": sizes.pitch, "thread_friction": mu.mu_low, "head_friction": mu.mu_low}
    return bolt_torque_friction_split.of(preload=allowed, head=head, hole=hole, **thread_facts)


def _most(both: Any, face: Any) -> Any:
    if isinstance(both.by_nut_factor, Withheld):
        return both.by_nut_factor
    if isinstance(both.preload, Value) and isinstance(both.by_friction, Withheld):
        return both.by_nut_factor.remark(say("the head is not known: judged by the nut factor alone, without the pressure under it"))
    return lower_of_two.of(one=lower_of_two.of(one=both.by_nut_factor, other=both.by_friction), other=face)


def _typed(given: Any) -> Any:
    """An input that was left out is left out of the next step too."""
    return given if isinstance(given, Value) and given.content else None
