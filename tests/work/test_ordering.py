"""The ordering rules, each over every combination, and each shown to catch what it is for. Common practice of the trade, no source."""

from __future__ import annotations

from collections import Counter
from dataclasses import replace
from itertools import combinations

import pytest

from generator.case import LOCKED_LAST, WAYS, Case, refusal
from generator.refusals import REFUSALS
from generator.steps import JOBS, Item, Sign, Step
from generator.work.compose import composed
from generator.work.ordering import RULES, Acts, broken
from tests.work.cases import All, Nothing, cases, greasings

FIGURES = All(), Nothing()


@pytest.mark.parametrize("way", WAYS)
@pytest.mark.parametrize("figures", FIGURES, ids=("all known", "all withheld"))
def test_no_rule_is_broken_over_every_combination(way: str, figures: All | Nothing) -> None:
    seen: Counter[str] = Counter()
    for case in cases():
        if case.way != way:
            continue
        # what is withheld changes the steps of putting on alone
        for job in JOBS if isinstance(figures, All) else ("put on",):
            procedure = composed(job, case, figures)
            seen["refused" if procedure.refused else "composed"] += 1
            assert bool(procedure.items) != bool(procedure.refused), (job, case)
            wrong = [rule.number for rule in broken(job, case, procedure.items)] if procedure.items else []
            assert wrong == [], (job, case, [getattr(i, "act", getattr(i, "number", "")) for i in procedure.items])
            _well_formed(job, case, procedure.items)
    assert seen["composed"] > 100


def test_no_rule_is_broken_over_every_way_of_greasing() -> None:
    for case in greasings():
        for job in ("put on", "grease"):
            for figures in FIGURES:
                procedure = composed(job, case, figures)
                assert [rule.number for rule in broken(job, case, procedure.items)] == [], (job, case)
                _well_formed(job, case, procedure.items)


def _well_formed(job: str, case: Case, items: tuple[Item, ...]) -> None:
    """Each act once, each stage in one piece, each stop once and in order."""
    acts = [item.act for item in items if isinstance(item, Step)]
    assert len(set(acts)) == len(acts), (job, case, acts)
    stages = [item.stage for item in items]
    changes = [stage for stage, before in zip(stages, [None, *stages], strict=False) if stage != before]
    assert job == "grease" or len(set(changes)) == len(changes), (job, case, changes)
    stops = [item.number for item in items if isinstance(item, Sign)]
    # after a day the isolation of the recheck is signed as any other
    wanted = ["S8", "S1", "S7"] if job == "run in" and stops else sorted(set(stops))
    assert stops == wanted, (job, case, stops)


def test_how_many_combinations_there_are() -> None:
    # written out so that a lost dimension is noticed
    every = list(cases())
    refused = Counter(refusal(case) for case in every)
    assert len(every) == len(set(every)) == EXPECTED
    assert set(refused) - {""} == set(REFUSALS)
    assert all(count > 0 for count in refused.values())


EXPECTED = 76_608


SWAPS = {
    "R1": [("isolate", "support"), ("S1", "clean seat")],
    "R2": [("S2", "unpack"), ("measure seat", "unpack")],
    "R3": [("set place", "hand tight")],
    "R4": [("load off", "hand tight")],
    "R5": [("hand tight", "mark"), ("mark", "turn nut"), ("turn nut", "lock nut")],
    "R6": [("bolts in loose", "hand tight"), ("lock nut", "bolts half")],
    "R7": [("pull toward nut", "hand tight"), ("set float", "lock nut")],
    "R8": [("set gap", "hand tight"), ("draw flange up", "turn nut"), ("draw flange up", "mark"), ("turn nut", "bolts final"), ("end checks", "turn nut")],
    "R9": [("bolts final", "lock nut"), ("bolts final", "bolts half"), ("bolts final", "set float")],
    "R10": [("read clearance before", "drive up"), ("read clearance after", "fill by hand"), ("read clearance after", "drive up")],
    "R11": [("cool", "shoulder blade"), ("hold", "cool"), ("push to shoulder", "heat"), ("cool", "fill by hand")],
    "R12": [("bolts final", "screws half"), ("turn free before", "screws half"), ("align", "screws half")],
    "R13": [("S2", "S3"), ("S5", "S6"), ("S0", "S1")],
    "R14": [("guards on", "power"), ("S7", "power")],
}  # fmt: skip
SUITS = {
    "R8": Case("sleeve by turn", "four-bolt flange", "ball insert", "pushes the ring", "retaining screw", "right", holds="free", floats_by="guided frame", order="second", frame="opposite the nut",
               maker_order=("gap", "hand tight", "mark", "draw up crosswise", "complete the turn", "final torque"), procedure="ISO-1"),
    "R10": Case("sleeve by clearance", "split", "spherical roller", "pushes the ring", "tab washer", "right", procedure="ISO-1"),
    "R11": Case("heated seat", "split", "spherical roller", procedure="ISO-1"),
    "R12": Case("set screws", "pillow block", holds="free", floats_by="guided frame", procedure="ISO-1"),
}  # fmt: skip
USUAL = Case("sleeve by turn", "pillow block", "ball insert", "pushes the ring", "retaining screw", "right", holds="free", floats_by="guided frame", order="second", procedure="ISO-1")  # fmt: skip


@pytest.mark.parametrize(("number", "one", "other"), [(number, *pair) for number, pairs in SWAPS.items() for pair in pairs])
def test_a_rule_catches_two_steps_that_change_places(number: str, one: str, other: str) -> None:
    case = SUITS.get(number, USUAL)
    items = list(composed("put on", case, All()).items)
    assert number not in [rule.number for rule in broken("put on", case, items)]
    names = Acts(items).names
    a, b = names.index(one), names.index(other)
    items[a], items[b] = items[b], items[a]
    assert number in [rule.number for rule in broken("put on", case, items)]


@pytest.mark.parametrize("number", [rule.number for rule in RULES])
def test_a_rule_catches_a_step_that_is_left_out(number: str) -> None:
    case = SUITS.get(number, USUAL)
    items = composed("put on", case, All()).items
    missed = [one for one, _ in SWAPS[number]]
    left = [item for item in items if getattr(item, "act", getattr(item, "number", "")) != missed[0]]
    assert len(left) == len(items) - 1
    assert number in [rule.number for rule in broken("put on", case, left)]


def test_a_second_mark_is_caught() -> None:
    items = composed("put on", USUAL, All()).items
    mark = next(item for item in items if isinstance(item, Step) and item.act == "mark")
    assert "R5" in [rule.number for rule in broken("put on", USUAL, (*items, mark))]


def test_rules_are_fourteen_and_numbered() -> None:
    assert [rule.number for rule in RULES] == [f"R{number}" for number in range(1, 15)]
    assert all(a.says != b.says for a, b in combinations(RULES, 2))


def test_what_hangs_upright_is_held_before_it_is_loose_and_let_down_before_it_is_signed() -> None:
    seen = 0
    for case in cases():
        if case.lies != "vertical" or case.hand == "left" or case.nut_lock == "locking plate" or case.body != "grey iron":
            continue
        for job, loose, last in (("put on", "slide on", "S6"), ("take off", "unlock", "leave safe")):
            acts = Acts(composed(job, case, All()).items)
            if not acts.names:
                continue
            seen += 1
            assert acts.in_order("support", "hold unit", last), (job, case)
            assert acts.before("hold unit", loose) and acts.before("hold unit", "push to shoulder"), (job, case)
            if job == "put on":
                locked = "S5" if case.way in LOCKED_LAST else "bolts final"
                assert acts.in_order(locked, "set down", "S6"), case
    assert seen > 1000


def test_no_shaft_that_another_unit_carries_is_lifted() -> None:
    for case in cases():
        if case.carrier and case.hand != "left" and case.body == "grey iron":
            said = " ".join(str(step.does) for step in composed("put on", case, All()).steps)
            assert "Let the sling carry" not in said and "Hang the shaft" not in said and "carries the shaft now" not in said


def test_a_rotor_is_blocked_once_it_cannot_start_and_free_only_behind_its_guards() -> None:
    windy = frozenset({"may turn in the wind"})
    for case in cases():
        # nut, hand, body and which way it turns change nothing of it
        if case.works == "draws the sleeve" or case.hand == "left" or case.nut_lock not in ("", "retaining screw") or case.body != "grey iron":
            continue
        for job in ("put on", "grease", "run in"):
            procedure = composed(job, replace(case, hazards=windy), All())
            acts = Acts(procedure.items)
            if acts.has("block rotor"):
                assert acts.in_order("prove", "block rotor", "guards on", "rotor free", "S7"), (job, case)
                # what is blocked is turned with the block out
                turned = [str(step.does) for step in procedure.steps if "turn the shaft" in str(step.does).lower()]
                assert all("block out" in does for does in turned), (job, case)
