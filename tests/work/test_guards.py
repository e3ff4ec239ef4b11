"""Each hazardous step has its message before it, in the same frame and no more than one; chosen from energies, heat, height, dust, food, weight.

Which work hurts how is common practice of the trade, no source; the signal words after ANSI Z535.6 (from memory).
"""

from __future__ import annotations

import re
from dataclasses import replace
from itertools import chain, combinations

import pytest

from generator.case import CLAMP, CLEARANCE, ECCENTRIC, HEATED, SCREWS, TURN, Case
from generator.safety import TEXTS, message
from generator.steps import JOBS, Step
from generator.work.cautions import GUARDS
from generator.work.compose import composed
from tests.work.cases import All, Nothing, cases, greasings

HAZARDS = ("hot surface", "fall from height", "may turn in the wind", "steam", "heavy rotor")
PLAIN = Case(
    TURN, "pillow block", "ball insert", "pushes the ring", "retaining screw", "right", procedure="ISO-1", energies=("electric drive",)
)
# what must never be done without its message: written out here, not read from the program
MUST = {
    "isolate": "D1", "release": "W1", "support": "W2", "block rotor": "W10", "vent": "W13", "let cool": "W11", "height": "W12",
    "start": "D2", "look": "D2", "stand clear": "W7", "strokes": "W6", "let go": "W8", "pull": "W14", "heat": "W4", "push to shoulder": "W3",
    "tap collar": "W5", "collar back": "W5", "cap on": "C1", "shims out": "C1", "bolts out": "W15", "clear the dust": "W9", "clear way": "W2", "pulls off": "W2", "rotor free": "W16", "run cool": "D2", "count in": "N9", "part coupling": "W2", "join coupling": "C1", "stay off": "D2", "read before": "D2", "unit back": "W2", "base away": "C1", "shut gas": "W17", "load off": "W2", "set down": "W2", "take load": "W2", "hold unit": "W2", "drain": "W13", "way back": "W2", "gear away": "W2", "blocks out": "W16", "tension back": "W16", "nut back": "W8", "vibration": "D2", "lock nut": "N3",
}  # fmt: skip


def steps(job: str, case: Case) -> list[Step]:
    return list(composed(job, case, All()).steps)


def messages(job: str, case: Case) -> dict[str, str]:
    return {step.act: step.caution for step in steps(job, case)}


@pytest.fixture(scope="module")
def every() -> set[tuple[str, str, str]]:
    """What is done, behind which message, in which words: over every combination but those of hand and lock that change none of it."""
    thin = (case for case in chain(cases(), greasings()) if case.hand != "left" and case.nut_lock != "locking plate")
    return {(step.act, step.caution, str(step.does)) for case in chain(thin, _surroundings()) for job in JOBS for step in steps(job, case)}


def test_every_hazardous_step_of_every_combination_has_its_message(every: set[tuple[str, str, str]]) -> None:
    assert {(act, caution) for act, caution, _ in every if act in MUST and caution != MUST[act]} == set()
    assert set(MUST) <= {act for act, _, _ in every}


def _surroundings() -> list[Case]:
    """Every set of hazards x zone x warm or not x weight x what stays."""
    sets = chain.from_iterable(combinations(HAZARDS, n) for n in range(len(HAZARDS) + 1))
    return [
        replace(PLAIN, way=way, housing=housing, hazards=frozenset(hazards), zone=zone, hot=hot, heavy=heavy, stored=stored, drained=("hot water",) if stored else (), gases=("gas burner",) if stored else (), warmed=hot, coupled=hot, between=("pulley", "unit Q") if stored and not hot else (), units_between=("Q",) if stored and not hot else (), holds="free" if stored else "fixed", floats_by="clearance inside the bearing" if stored else "", pulls=("pulley",) if stored else ())
        for hazards in sets
        for way, housing in ((TURN, "pillow block"), (HEATED, "split"))
        for zone in ("none", "combustible dust", "food", "food and combustible dust")
        for hot in (False, True)
        for heavy in ("under", "over", "not known")
        for stored in ((), ("belt tension",))
    ]


def test_what_a_machine_has_is_met_before_hands_reach_it() -> None:
    for case in _surroundings():
        acts = [step.act for step in steps("put on", case)]
        for hazard, act in (("fall from height", "height"), ("may turn in the wind", "block rotor"), ("steam", "vent")):
            assert (act in acts) == (hazard in case.hazards)
        assert ("let cool" in acts) == case.hot
        assert ("release" in acts) == bool(case.stored)
        assert all(
            acts.index(act) < acts.index("support") for act in ("height", "block rotor", "vent", "let cool", "release") if act in acts
        )


@pytest.mark.parametrize(
    ("case", "act", "wanted"),
    [
        (replace(PLAIN, zone="combustible dust"), "face", "W9"), (PLAIN, "face", ""),
        (replace(PLAIN, zone="food"), "count", "N9"), (PLAIN, "count", ""),
        (replace(PLAIN, heavy="over"), "carry parts", "C3"), (replace(PLAIN, heavy="under"), "carry parts", ""), (PLAIN, "carry parts", "C3"),
        (replace(PLAIN, body="polymer"), "bolts final", "N1"), (replace(PLAIN, stainless_bolts=True), "bolts final", "N1"), (PLAIN, "bolts final", ""),
        (replace(PLAIN, stainless_bolts=True), "bolts ready", "N11"),
        (replace(PLAIN, lies="vertical"), "load off", "W2"), (replace(PLAIN, lies="vertical"), "set down", "W2"), (PLAIN, "set down", "W2"), (replace(PLAIN, hazards=frozenset({"may turn in the wind"})), "turn free", "W10"), (PLAIN, "load off", "W2"),
        (PLAIN, "oil film", "N10"), (replace(PLAIN, way=SCREWS), "oil film", ""),
        (replace(PLAIN, way=ECCENTRIC), "tap collar", "W5"), (replace(PLAIN, way=CLAMP), "floor", "C2"),
        (replace(PLAIN, way=CLEARANCE, housing="split", bearing="spherical roller"), "fill by hand", "N2"),
    ],
)  # fmt: skip
def test_a_message_is_chosen_from_what_the_place_is(case: Case, act: str, wanted: str) -> None:
    assert messages("put on", case)[act] == wanted


def test_a_fast_bearing_gets_no_full_charge() -> None:
    # common practice, no source: small amounts often at high speed
    assert "strokes" not in {step.act for step in composed("put on", replace(PLAIN, fast=True), Nothing()).steps}
    strokes = next(step for step in steps("grease", replace(PLAIN, fast=True)) if step.act == "strokes")
    assert "parts" in str(strokes.does)


def test_running_is_greased_without_isolation_only_from_outside_the_guard() -> None:
    outside = composed("grease", replace(PLAIN, regrease="running", fitting="piped outside the guard"), All())
    assert "stand clear" in [step.act for step in outside.steps] and "isolate" not in [step.act for step in outside.steps]
    inside = composed("grease", replace(PLAIN, regrease="running", fitting="inside the guard"), All())
    assert inside.refused and not inside.items


def test_every_guard_names_a_message_there_is_and_a_step_there_is(every: set[tuple[str, str, str]]) -> None:
    assert set(GUARDS) <= {act for act, _, _ in every}
    assert {identity for guards in GUARDS.values() for identity, _ in guards} <= set(TEXTS)


def test_a_message_before_a_step_is_filled_in_whole() -> None:
    for case in (PLAIN, replace(PLAIN, stored=("belt tension",), energies=("electric drive", "belt tension"), moving="The belt")):
        for job in JOBS:
            for step in steps(job, case):
                if step.caution:
                    said = message(step.caution, **dict(step.caution_facts))
                    assert "{" not in said.hazard + said.harm + said.avoid


def test_sentences_are_short_and_do_one_thing(every: set[tuple[str, str, str]]) -> None:
    # one action a step; about twenty words a sentence: common practice, no source
    assert {does for _, _, does in every if any(len(sentence.split()) > 22 for sentence in re.split(r"[.;:]\s", does))} == set()
