"""What the sheets say of each way of locking. Data is the invented demo plant's; the rules they are held against are named at each test."""

from __future__ import annotations

import pytest

from generator.locking import LOCKINGS, locking_of
from generator.value import Instructed, Value
from tests.mounting.demo import ends, plant, sheet, size, why

INT_02, INT_03, MIL_03, BYP_02 = (f"machines/{tag}.yml" for tag in ("INT-02", "INT-03", "MIL-03", "BYP-02"))
ORVANE_14, ORVANE_15, SLEEVES = "library/documents/orvane-14.yml", "library/documents/orvane-15.yml", "library/sleeves.yml"
INT_02_A = "holds: fixed\n        unit: Orvane block unit 65"
SLEEVE_65 = 'shaft: 65 mm\n  taper: "1:12"\n  thread: M75x2\n  hand: right\n  nut: {thread: M75x2, works: pushes the ring, slots: 8'


@pytest.mark.parametrize(
    ("identity", "name"),
    [
        ("INT-02/A", "adapter sleeve, by the turn of the nut"),
        ("INT-01/A", "adapter sleeve, by the clearance taken"),
        ("INT-01/C", "set screws"),
        ("MIL-03/A", "eccentric collar"),
        ("INT-04/A", "clamp collar"),
        ("MIL-01/A", "pressed seat, heated"),
    ],
)
def test_the_parts_of_a_position_tell_its_way_of_locking(identity: str, name: str) -> None:
    assert sheet(identity).locking == name


def test_a_position_has_one_way_of_locking_at_most() -> None:
    positions = [p for m in plant().machines for p in m.positions]
    assert all(sum(locking.suits(p) for locking in LOCKINGS) == 1 for p in positions)
    assert all(locking_of(p) is not None for p in positions)


# --- a ball insert on its sleeve: screw geometry, one turn is one pitch ---


def test_the_turn_is_the_makers_and_says_in_which_document_it_stands() -> None:
    band = sheet("INT-02/A").band("nut_turn")
    assert band and isinstance(band.lower.reason, Instructed)
    assert (band.lower.reason.document, band.lower.reason.revision) == ("Orvane 14", "C")
    assert ends(band, "turn") == (0.625, 0.75)


def test_three_quarters_of_a_turn_are_270_degrees_6_of_8_slots_and_one_and_a_half_millimetres_on_a_pitch_of_two() -> None:
    found = sheet("INT-02/A")
    assert ends(found.value("nut_degrees"), "deg") == pytest.approx((225, 270))
    assert ends(found.value("nut_slots"), "") == (5, 6)
    assert ends(found.value("nut_travel"), "mm") == pytest.approx((1.25, 1.5))


def test_the_same_turn_at_twelve_threads_to_the_inch_travels_a_sixteenth_of_an_inch() -> None:
    # 3/4 x 25.4 mm / 12 = 1.5875 mm
    assert ends(sheet("BYP-02/B").value("nut_travel"), "mm") == pytest.approx((1.5875, 1.5875))


def test_a_band_with_no_whole_slot_in_it_is_counted_in_degrees_only() -> None:
    # 5/8 to 3/4 turn on four slots is 2.5 to 3 slots: 3; 5/8 to 0.7 turn is 2.5 to 2.8: none, and no nut is turned back to a slot
    few = (SLEEVES, SLEEVE_65, SLEEVE_65.replace("slots: 8", "slots: 4"))
    assert ends(sheet("INT-02/A", few).value("nut_slots"), "") == (3, 3)
    narrow = (ORVANE_14, "Orvane sleeve 65: {nut_turn: 5/8 to 3/4 turn", "Orvane sleeve 65: {nut_turn: 0.625 to 0.7 turn")
    found = sheet("INT-02/A", few, narrow)
    assert "no whole slot" in why(found.value("nut_slots"))
    assert ends(found.value("nut_degrees"), "deg") == pytest.approx((225, 252))


def test_without_the_makers_document_no_turn_nor_anything_that_rests_on_it_is_shown() -> None:
    found = sheet("BYP-03/B")
    for key in ("nut_turn", "nut_degrees", "nut_slots", "nut_travel", "housing_shift", "flange_gap", "flange_order", "retaining_screw"):
        assert "no document on file" in why(found.value(key)), key
    assert found.lines["flange_gap"].beside == ()
    assert "hoop_bound" not in found.lines


def test_a_turn_from_a_table_for_another_thread_is_not_used() -> None:
    assert why(sheet("BYP-02/A").value("nut_turn")) == "Orvane 14, table 4 is for sleeve.thread M85x2, not 3.340-12"


def test_a_nut_of_another_thread_than_its_sleeve_has_no_turn() -> None:
    found = sheet("INT-02/A", (INT_02, INT_02_A, INT_02_A + "\n        fitted: {nut_thread: M75x1.5}"))
    assert why(found.value("nut_turn")) == "the nut is M75x1.5, sleeve Orvane sleeve 65 is M75x2"
    assert "the nut is M75x1.5" in why(found.value("nut_travel"))


def test_the_same_thread_written_another_way_is_the_same_nut() -> None:
    found = sheet("INT-02/A", (INT_02, INT_02_A, INT_02_A + "\n        fitted: {nut_thread: M75 x 2}"))
    assert ends(found.value("nut_travel"), "mm") == pytest.approx((1.25, 1.5))


@pytest.mark.parametrize(("identity", "toward"), [("INT-02/A", "far end"), ("INT-02/B", "drive end")])
def test_while_the_nut_is_turned_the_housing_moves_away_from_it_by_up_to_the_travel(identity: str, toward: str) -> None:
    found = sheet(identity)
    assert ends(found.value("housing_shift"), "mm") == pytest.approx((0, 1.5))
    assert found.lines["shift_toward"].value.content == toward  # type: ignore[union-attr]


def test_a_nut_that_draws_the_sleeve_draws_the_shaft_toward_its_own_side() -> None:
    found = sheet("INT-02/A", (SLEEVES, SLEEVE_65, SLEEVE_65.replace("pushes the ring", "draws the sleeve")))
    assert found.lines["housing_shift"].name == "Sleeve and shaft are drawn while the nut is turned"
    assert found.lines["shift_toward"].value.content == "drive end"  # type: ignore[union-attr]


def test_the_hoop_stress_a_turn_implies_stands_beside_what_a_ring_may_carry_and_changes_no_turn() -> None:
    # Lamé's ring, shaft taken solid, from memory: 1.5 mm of 1:12 travel on the 75 mm seat, 90 mm raceway, 65 mm shaft
    found = sheet("INT-02/A")
    assert size(found.value("hoop_bound"), "MPa") == pytest.approx(284.7, abs=0.1)
    (_, carried), *_ = found.lines["hoop_bound"].beside
    assert size(carried, "MPa") == 175
    assert ends(found.value("nut_turn"), "turn") == (0.625, 0.75)


def test_gap_and_order_are_the_makers_with_the_travel_beside_for_the_second_flange_of_a_shaft_alone() -> None:
    first, second = sheet("WSH-03/A"), sheet("WSH-03/B")
    assert "flange_gap" not in first.lines
    assert ends(second.value("flange_gap"), "mm") == (1.5, 1.6)
    (_, computed), *_ = second.lines["flange_gap"].beside
    assert ends(computed, "mm") == pytest.approx((1.5, 1.6))
    assert "flange_gap" not in sheet("INT-02/B").lines  # a block stands on its slots and needs none


def test_the_gap_is_withheld_where_the_maker_gives_none_and_the_travel_still_stands_beside() -> None:
    found = sheet("WSH-03/B", (ORVANE_14, "flange_gap: 1.5 to 1.6 mm, ", ""))
    assert "gap and order" in why(found.value("flange_gap"))
    assert ends(found.lines["flange_gap"].beside[0][1], "mm") == pytest.approx((1.5, 1.6))


def test_the_retaining_screw_has_the_makers_torque_and_key() -> None:
    found = sheet("INT-02/A")
    assert ends(found.value("retaining_screw"), "N.m") == (3.5, 4.0)
    assert size(found.value("retaining_screw_key"), "mm") == 2.5


@pytest.mark.parametrize(
    ("turns", "hand", "first_end", "second_end"),
    [
        # a loose ring lags its shaft; seen from its nut a right-hand nut is then dragged tight where the shaft turns anticlockwise
        ("clockwise", "right", "drag slackens", "drag tightens"),
        ("anticlockwise", "right", "drag tightens", "drag slackens"),
        ("clockwise", "left", "drag tightens", "drag slackens"),
        ("anticlockwise", "left", "drag slackens", "drag tightens"),
    ],
)
def test_drag_by_turning_side_and_hand(turns: str, hand: str, first_end: str, second_end: str) -> None:
    edits = (
        (INT_02, "turns: clockwise", f"turns: {turns}"),
        (SLEEVES, SLEEVE_65, SLEEVE_65.replace("hand: right", f"hand: {hand}")),
    )
    assert [sheet(f"INT-02/{letter}", *edits).lines["nut_drag"].value.content for letter in "AB"] == [first_end, second_end]  # type: ignore[union-attr]


def test_drag_is_not_told_where_the_shaft_runs_both_ways_or_nobody_says_which() -> None:
    assert "both ways" in why(sheet("INT-02/A", (INT_02, "turns: clockwise", "turns: both ways")).value("nut_drag"))
    assert "which way the shaft turns" in why(sheet("INT-02/A", (INT_02, "    turns: clockwise\n", "")).value("nut_drag"))


# --- a roller bearing on its sleeve ---


def test_a_roller_bearing_is_driven_up_by_clearance_not_by_turn() -> None:
    found = sheet("INT-01/A")
    assert "nut_turn" not in found.lines
    assert ends(found.value("clearance_reduction"), "mm") == (0.045, 0.060)
    assert size(found.value("clearance_least_left"), "mm") == 0.050


def test_its_clearance_before_is_that_of_its_class() -> None:
    # ISO 5753-1, spherical roller, tapered bore over 80 to 100 mm, C3: 110 to 140 um; from memory
    assert ends(sheet("INT-01/A").value("clearance_before"), "um") == (110, 140)


# --- set screws ---


def test_set_screws_have_the_makers_torque_with_the_torque_of_the_trade_beside() -> None:
    found = sheet("INT-01/C")
    assert size(found.value("lock_screw_count"), "") == 2
    assert ends(found.value("lock_screw"), "N.m") == (26, 30)
    # set screw charts of the trade: M10 33 N.m; ISO 898-5 class 45H, test torque: 40 N.m
    assert [size(value, "N.m") for _, value in found.lines["lock_screw"].beside] == [33, 40]
    assert size(found.value("hex_key"), "mm") == 5  # ISO 4026 to 4029, M10


def test_without_the_makers_torque_that_of_the_trade_stands_beside_and_is_not_used() -> None:
    found = sheet("INT-01/C", (ORVANE_15, "lock_screw: {size: M10x1, torque: 26 to 30 N.m, key: 5 mm}, ", ""))
    assert "torque of the set screws" in why(found.value("lock_screw"))
    assert [size(value, "N.m") for _, value in found.lines["lock_screw"].beside] == [33, 40]


def test_no_holding_force_is_made_up_for_metric_screws() -> None:
    assert "metric" in why(sheet("INT-01/C", (ORVANE_15, "axial_hold: 3.6 kN, ", "")).value("screw_hold"))


def test_two_inch_screws_hold_one_and_a_third_of_one_over_the_safety() -> None:
    # Shigley, Table 7-4, from memory: a 3/8 in screw holds 2000 lbf; 1.3 x 2000 / 4 = 650 lbf
    bearing = ("library/bearings.yml", "screws: {count: 2, size: M10x1", "screws: {count: 2, size: 3/8-24")
    found = sheet("INT-01/C", bearing, (ORVANE_15, "axial_hold: 3.6 kN, ", ""))
    assert size(found.value("screw_hold"), "lbf") == pytest.approx(650)


def test_a_fixed_unit_must_hold_the_load_along_the_shaft_and_a_free_one_none() -> None:
    assert size(sheet("INT-01/C").value("screw_hold_needed"), "kN") == pytest.approx(0.4)
    assert size(sheet("INT-01/D").value("screw_hold_needed"), "kN") == 0


def test_a_unit_free_in_name_only_must_hold_it_too() -> None:
    name_only = (INT_03, "        floats: {by: guided frame, drive end: 3 mm, far end: 3 mm}\n", "")
    assert size(sheet("INT-03/B", name_only).value("screw_hold_needed"), "kN") == pytest.approx(1.2)
    assert "screw_hold_needed" not in sheet("INT-03/B").lines


def test_of_two_thrusts_their_sum_is_held_and_what_may_come_either_way_adds_to_it() -> None:
    thrust = "thrust: {kind: thrust, at: 1600 mm, force: 1.2 kN, toward: either end}"
    two = (INT_03, thrust, thrust + "\n      brush: {kind: thrust, at: 900 mm, force: 400 N, toward: far end}")
    assert size(sheet("INT-03/A", two).value("screw_hold_needed"), "kN") == pytest.approx(1.6)


def test_the_unit_a_shaft_stands_on_holds_its_weight() -> None:
    # 90 kg of rotor and a bar of steel of 50 mm, 1400 mm long: 883 N and 212 N
    assert size(sheet("UTL-02/A").value("screw_hold_needed"), "N") == pytest.approx(1094, abs=1)


def test_screws_must_be_ten_points_harder_than_the_shaft_they_bite() -> None:
    # common practice, no source
    found = sheet("UTL-03/A")
    assert size(found.value("shaft_hardness"), "HRC") == 52
    assert size(found.value("screw_bite"), "HRC") < 0
    assert size(found.lines["screw_bite"].beside[0][1], "") == 10
    assert size(found.value("shaft_hardness_allowed"), "HRC") == 35


# --- collars ---


@pytest.mark.parametrize(
    ("turns", "a", "b"), [("clockwise", "clockwise", "anticlockwise"), ("anticlockwise", "anticlockwise", "clockwise")]
)
def test_collars_that_face_away_from_each_other_lock_opposite_hands_each_seen_from_its_own_side(turns: str, a: str, b: str) -> None:
    # the collar is turned the way the shaft runs; common practice, no source
    edit = (MIL_03, "turns: clockwise", f"turns: {turns}")
    assert [sheet(f"MIL-03/{letter}", edit).lines["collar_turn"].value.content for letter in "AB"] == [a, b]  # type: ignore[union-attr]


def test_collars_that_face_the_same_way_lock_the_same_hand() -> None:
    edit = (MIL_03, "collar: far end", "collar: drive end")
    assert [sheet(f"MIL-03/{letter}", edit).lines["collar_turn"].value.content for letter in "AB"] == ["clockwise"] * 2  # type: ignore[union-attr]


def test_no_direction_is_given_on_a_shaft_that_runs_both_ways_nor_where_side_or_turning_is_not_typed() -> None:
    assert "both ways" in why(sheet("INT-03/A").value("collar_turn"))
    assert "which way the shaft turns" in why(sheet("MIL-03/A", (MIL_03, "    turns: clockwise\n", "")).value("collar_turn"))
    assert "to which end" in why(sheet("MIL-03/A", (MIL_03, "        collar: drive end\n", "")).value("collar_turn"))


def test_a_collar_holds_along_the_shaft_by_its_screw_alone_so_what_it_must_hold_is_shown_where_a_load_is_stated() -> None:
    found = sheet("INT-03/A")
    assert size(found.value("screw_hold_needed"), "kN") == pytest.approx(1.2)
    assert "metric" in why(found.value("screw_hold"))
    assert "screw_hold" not in sheet("MIL-03/A").lines


def test_the_screw_of_a_clamp_collar_has_the_makers_torque_and_key() -> None:
    found = sheet("INT-04/A")
    assert ends(found.value("lock_screw"), "N.m") == (22, 25)
    assert size(found.value("lock_screw_key"), "mm") == 6


# --- speed and heat ---


def test_how_fast_a_lock_may_turn_goes_by_the_class_of_its_shaft() -> None:
    assert size(sheet("MIL-02/A").value("speed_allowed"), "rpm") == 2600  # h7
    closer = ("machines/MIL-02.yml", "class: h7", "class: h6")
    assert size(sheet("MIL-02/A", closer, (ORVANE_15, "shaft_class: h7, axial_hold: 2.7", "shaft_class: h6, axial_hold: 2.7")).value("speed_allowed"), "rpm") == 4000  # fmt: skip


def test_a_class_the_maker_gives_no_speed_for_gets_none() -> None:
    assert "no speed for a shaft to h7" in why(sheet("MIL-02/A", (ORVANE_15, "h7: 2600 rpm, ", "")).value("speed_allowed"))


def test_a_pressed_seat_shows_the_makers_ceiling_and_nothing_worked_out_from_it() -> None:
    found = sheet("MIL-01/A")
    ceiling = found.value("heating")
    assert size(ceiling, "degC") == 110
    assert isinstance(ceiling, Value) and isinstance(ceiling.reason, Instructed)
    assert found.lines["heating"].by_hand
