"""What is joined is joined on the safe side: each load case to the formula it belongs to. Expected figures by hand from published formulas."""

from __future__ import annotations

from math import hypot, pi

import pytest

from generator.mounting.acting import Act, in_state
from generator.mounting.sheet import Sheet
from generator.value import LookedUp, Value
from tests.mounting.demo import Edit, ends, machine, sheet, size, why

G = 9.80665
INT_01, INT_04, UTL_01, UTL_02, UTL_03, UTL_04, MIL_01, WSH_04, BYP_02 = (
    f"machines/{tag}.yml" for tag in ("INT-01", "INT-04", "UTL-01", "UTL-02", "UTL-03", "UTL-04", "MIL-01", "WSH-04", "BYP-02")
)
BEARINGS, HOUSINGS, ROUNDS = "library/bearings.yml", "library/housings.yml", "records/2026-rounds.csv"
LINE_B = "      B:\n        at: 2300 mm\n"


def number(found: Sheet, key: str) -> float:
    value = found.value(key)
    assert isinstance(value, Value), (key, value)
    return float(value.content)


def typed(number: float, unit: str) -> Value:
    return Value(number, unit, LookedUp(None, "by hand"))


# --- the foot: which way it faces, what turns, what pushes along -----------------------------------------------------------------


@pytest.mark.parametrize(("hour", "share"), [("6 o'clock", (0, 1)), ("3 o'clock", (1, 0)), ("9 o'clock", (1, 0)), ("12 o'clock", (0, -1))])
def test_a_foot_on_a_wall_or_under_a_ceiling_is_loaded_the_way_it_faces(hour: str, share: tuple[int, int]) -> None:
    # statics: what weighs down shears a foot on a wall and draws one off a ceiling; H <= mu (n F + down) / S
    found = sheet("UTL-01/B", (UTL_01, LINE_B, LINE_B + f"        base_toward: {hour}\n"))
    load, clamp = number(found, "load"), number(found, "bolt_clamp_least")
    assert number(found, "slip_load") == pytest.approx(share[0] * load, abs=1e-6)
    assert number(found, "slip_allowed") == pytest.approx(0.10 * (2 * clamp + share[1] * load) / 1.2, rel=1e-6)
    assert number(found, "tip_moment") == pytest.approx(share[0] * load * 0.0698, abs=1e-6)


def test_what_turns_with_the_shaft_pushes_a_foot_sideways_and_up_once_a_turn() -> None:
    # ISO 21940-11: F = m G omega; statics of an overhang: it comes to the near support times (820 - 250) / 350
    found = sheet("INT-04/B")
    turning = 78 * 6.3e-3 * (2 * pi * 2950 / 60) * (820 - 250) / 350
    down = number(found, "load_steady") - turning
    assert number(found, "slip_load") == pytest.approx(turning, rel=1e-6)
    assert number(found, "slip_allowed") == pytest.approx(0.10 * (2 * number(found, "bolt_clamp_least") + down) / 1.2, rel=1e-6)


def test_a_push_along_the_shaft_pushes_its_foot_too() -> None:
    # what weighs presses straight down, and the screw pushes along; on a wall the two stand at right angles
    assert number(sheet("UTL-03/A"), "slip_load") == pytest.approx(500, rel=1e-6)
    wall = "        at: 6300 mm\n", "        at: 6300 mm\n        base_toward: 3 o'clock\n"
    push = "    loads:\n", "    loads:\n      push: {kind: thrust, at: 6300 mm, force: 2 kN, toward: far end}\n"
    only = tuple(
        (UTL_01, f"        at: {at} mm\n        holds: free\n        unit: Orvane block unit 60\n        nut: drive end\n",
         f"        at: {at} mm\n        holds: free\n        unit: Orvane block unit 60\n        nut: drive end\n"
         "        floats: {by: pin in a grooved shaft, drive end: 3 mm, far end: 3 mm}\n")
        for at in (8300, 12300)
    )  # fmt: skip
    found = sheet("UTL-01/D", (UTL_01, *wall), (UTL_01, *push), *only)
    assert number(found, "slip_load") == pytest.approx(hypot(number(found, "load"), 2000), rel=1e-6)


def test_a_push_along_the_shaft_draws_at_the_bolts_of_a_flange() -> None:
    # friction of the clamp that is left: mu (4 F - 1500) / S
    found = sheet("BYP-02/A")
    assert number(found, "slip_allowed") == pytest.approx(0.10 * (4 * number(found, "bolt_clamp_least") - 1500) / 1.2, rel=1e-6)


def test_a_housing_is_judged_in_the_state_in_which_it_is_weakest() -> None:
    # 60 kN down of 67 is less used than 18 up of 23: 20 kN less the 1.69 kN that hang there
    belts = ", ".join(f"belt {n}: 20" for n in range(1, 7))
    both = f"    states:\n      full: {{share: 50 %, times: {{lift: 0, {belts}}}}}\n      lifted: {{share: 50 %}}\n    loads:\n"
    found = sheet(
        "UTL-01/B", (UTL_01, "    loads:\n", both + "      lift: {kind: side force, at: 2300 mm, force: 20 kN, toward: 12 o'clock}\n")
    )
    assert size(found.value("load_toward"), "deg") == pytest.approx(180)
    assert number(found, "housing_rating") == 23_000
    assert number(found, "housing_load") == pytest.approx(20_000 - number(sheet("UTL-01/B"), "load"), rel=1e-6)


def test_a_load_that_turns_with_the_ring_comes_every_way_at_the_housing() -> None:
    found = sheet("INT-04/A", (INT_04, "grade: 6.3 mm/s", "grade: 40 mm/s"))
    assert number(found, "load_turning") > number(found, "load_steady")
    assert number(found, "housing_rating") == 17_000  # the least of 49, 17 and 24 kN
    assert number(sheet("INT-04/B"), "housing_rating") == 49_000


# --- states, and what is not known of one ------------------------------------------------------------------------------------------


def test_a_state_scales_a_load_whatever_its_name() -> None:
    states = "    states:\n      full: {share: 50 %, times: {'belt 1, old': 3}}\n      empty: {share: 50 %}\n    loads:\n"
    edits: tuple[Edit, ...] = ((UTL_01, "    loads:\n", states), (UTL_01, "      belt 1:", "      'belt 1, old':"))
    full = sheet("UTL-01/B", *edits)
    # superposition: twice the belt more is twice what taking it away takes
    without = number(sheet("UTL-01/B", (UTL_01, "at: 1300 mm, force: 1 kN", "at: 1300 mm, force: 0 kN")), "load")
    assert number(full, "load") == pytest.approx(number(full, "load_state_2") + 2 * (number(full, "load_state_2") - without), rel=1e-6)


def test_a_state_scales_couple_and_torque_as_it_scales_the_force() -> None:
    act = Act("gear", typed(500, "mm"), "drive", along=typed(100, "N"), couple=typed(-10_000, "N.mm"), torque=typed(50, "N.m"))
    scaled = in_state(act, typed(3, ""))
    assert size(scaled.along, "N") == 300 and size(scaled.couple, "N.mm") == -30_000 and size(scaled.torque, "N.m") == pytest.approx(150)


def test_a_state_that_is_not_known_may_be_the_worst() -> None:
    # the pull of a belt at no speed is not 60000 P / (2 pi n)
    jam = "    states:\n      run: {share: 99 %}\n      jam: {share: 1 %, speed: 0 rpm}\n    loads:\n"
    stated = "      reaction A: {kind: stated reaction, at: A, force: 5.5 kN, toward: 6 o'clock}\n"
    found = sheet("MIL-01/A", (MIL_01, "    loads:\n", jam), (MIL_01, stated, ""))
    for key in ("load", "static_safety", "slope", "least_load_verdict"):
        assert "at rest" in why(found.value(key)), key


def test_what_lifts_a_running_shaft_does_not_lift_it_at_rest() -> None:
    # rotor 90 kg, shaft 50 mm by 1400 mm, and a thrust upward that leaves little of it while running
    lifted = sheet("UTL-02/A", (UTL_02, "    loads:\n", "    loads:\n      lift: {kind: thrust, at: 700 mm, force: 1 kN, toward: top}\n"))
    weight = (90 + 7.85e-6 * pi * 25**2 * 1400) * G
    assert number(lifted, "load_along") == pytest.approx(weight, rel=1e-3)
    assert "At rest" in lifted.lines["load_along"].note
    assert number(lifted, "static_safety") == pytest.approx(number(sheet("UTL-02/A"), "static_safety"), rel=1e-6)
    assert number(lifted, "equivalent_load") < number(sheet("UTL-02/A"), "equivalent_load")


def test_the_torque_in_a_shaft_has_the_service_factor_of_the_pull_and_is_that_of_the_slowest_state() -> None:
    # Shigley chapter 3, T = 60000 P / (2 pi n), times 1.3; half the speed, twice the torque
    torque = 60_000 * 37 / (2 * pi * 1480) * 1.3
    slow = "    states:\n      fast: {share: 90 %}\n      slow: {share: 10 %, speed: 740 rpm}\n    loads:\n"
    assert size(machine("MIL-01").shafts[0].lines["torque"].value, "N.m") == pytest.approx(torque, rel=1e-6)
    assert size(machine("MIL-01", (MIL_01, "    loads:\n", slow)).shafts[0].lines["torque"].value, "N.m") == pytest.approx(2 * torque)


# --- rotors ------------------------------------------------------------------------------------------------------------------------


def test_two_rotors_may_pull_the_same_way_at_a_bearing() -> None:
    # ISO 21940-11 and statics: 151.8 N at 220 beyond B, 100 mm beyond A; nobody knows how they stand to one another
    other = "    loads:\n      second: {kind: unbalance, at: 150 mm, mass: 78 kg, grade: 6.3 mm/s}\n"
    force = 78 * 6.3e-3 * (2 * pi * 2950 / 60)
    found = machine("INT-04", (INT_04, "    loads:\n", other)).sheets
    assert number(found[0], "load_turning") == pytest.approx(force * 220 / 350 + force * 450 / 350, rel=1e-6)
    assert number(found[1], "load_turning") == pytest.approx(force * 570 / 350 + force * 100 / 350, rel=1e-6)


def test_the_slope_that_turns_is_held_against_what_the_balls_of_an_insert_take() -> None:
    # Shigley A-9, overhang: F a L / (3 E I) at the near support; Table 7-2 deep-groove ball: 0.003 rad
    found = sheet("INT-04/B")
    force = 78 * 6.3e-3 * (2 * pi * 2950 / 60)
    slope = force * 220 * 350 / (3 * 210_000 * pi * 50**4 / 64)
    assert size(found.value("slope_turning"), "rad") == pytest.approx(slope, rel=1e-4)
    assert size(found.value("slope_turning_allowed"), "rad") == pytest.approx(0.003, rel=1e-6)
    worse = sheet("INT-04/B", (INT_04, "grade: 6.3 mm/s", "grade: 400 mm/s"))
    assert number(worse, "slope") == pytest.approx(number(found, "slope"))
    worse = sheet("INT-04/B", (INT_04, "mass: 78 kg, grade: 6.3 mm/s", "mass: 7800 kg, grade: 6.3 mm/s"))
    assert str(worse.value("slope_turning_verdict").content) == "over"  # type: ignore[union-attr]


def test_a_bearing_at_its_lightest_is_not_helped_by_unbalance() -> None:
    # the least load asked is 1 % of 35.1 kN; 500 N of weight overhung leave less at A, unbalance would hide it
    found = sheet("INT-04/A", (INT_04, "{kind: weight, at: 820 mm, mass: 78 kg}", "{kind: weight, at: 820 mm, mass: 63 kg}"))
    assert number(found, "load_steady") < 351 < number(found, "load")
    assert str(found.value("least_load_verdict").content) == "may skid"  # type: ignore[union-attr]


def test_straight_up_is_twelve_o_clock() -> None:
    assert number(sheet("INT-04/A"), "load_toward") == 0


# --- the jack ----------------------------------------------------------------------------------------------------------------------


def test_bearing_and_housing_hang_on_a_shaft_of_many_supports_too() -> None:
    heavier = sheet("UTL-01/D", (HOUSINGS, "  mass: 3.8 kg", "  mass: 13.8 kg"))
    assert number(heavier, "jack_load") - number(sheet("UTL-01/D"), "jack_load") == pytest.approx(10 * G, rel=1e-6)


def test_the_gear_is_rated_for_the_lifted_shaft() -> None:
    found = sheet("UTL-01/D")
    before, lifted = (size(value, "N") for _, value in found.lines["jack_load"].beside)
    assert lifted > before and number(found, "jack_load") == lifted
    assert number(found, "jack_rating") == pytest.approx(1.25 * lifted)


def test_a_jack_carries_upright_on_a_slope_as_on_the_level() -> None:
    # moments of upright forces: the slope shortens every arm alike
    steep = sheet("WSH-04/A", (WSH_04, "lies: horizontal", "lies: inclined\n    slope: 60 deg"))
    assert number(steep, "jack_load") == pytest.approx(number(sheet("WSH-04/A"), "jack_load"), rel=1e-9)


def test_an_elevators_belt_hangs_on_its_head_however_slack_the_boot() -> None:
    # statics: ten kilograms a metre more in two strands of 18 m, half of it at each of two bearings that stand alike
    heavier = sheet("INT-02/A", ("machines/INT-02.yml", "belt: 14 kg/m", "belt: 24 kg/m"))
    assert number(heavier, "jack_load") - number(sheet("INT-02/A"), "jack_load") == pytest.approx(10 * 2 * 18 * G / 2, rel=1e-6)


def test_a_mass_that_is_not_on_file_is_said_to_be_missing() -> None:
    found = sheet("INT-01/A", (BEARINGS, "  mass: 3.4 kg\n", ""))
    load = found.value("jack_load")
    assert isinstance(load, Value) and any("Brelloch barrel 90" in remark for remark in load.remarks)


# --- the bearing -------------------------------------------------------------------------------------------------------------------

FACTORS = "  thrust: {e: 0.24, Y1: 2.8, Y2: 4.2, Y0: 2.8, from: Brelloch 5}\n"
PUSHED = (MIL_01, "    loads:\n", "    loads:\n      push: {kind: thrust, at: 800 mm, force: 2 kN, toward: far end}\n")


def test_a_pushed_roller_without_factors_has_no_static_safety() -> None:
    assert "thrust factors" in why(sheet("MIL-01/A", PUSHED, (BEARINGS, FACTORS, "")).value("static_safety"))
    assert isinstance(sheet("MIL-01/A", (BEARINGS, FACTORS, "")).value("static_safety"), Value)


def test_a_self_aligning_ball_bearing_is_judged_by_its_own_factor() -> None:
    # ISO 76: P0 = Fr + Y0 Fa; ISO 281 gives it factors that a check made for rollers would call wrong
    kind = "  kind: spherical roller\n  bore: {shape: cylinder, size: 75 mm}"
    found = sheet("MIL-01/A", PUSHED, (BEARINGS, kind, kind.replace("spherical roller", "self-aligning ball")))
    assert number(found, "static_safety") == pytest.approx(185_000 / (number(found, "load") + 2.8 * 2000), rel=1e-6)
    assert "thrust_factors" not in found.lines


def test_the_raceway_of_a_ball_bearing_lies_a_fifth_of_the_way_out() -> None:
    # Lamé: I d / F; F = (4 d + D) / 5 = 64 mm, so that both raceways lie about the pitch circle; m5 at 55: 11 to 24, bore -15 to 0
    assert ends(sheet("UTL-04/A").value("clearance_taken"), "mm") == pytest.approx((0.011 * 55 / 64, 0.039 * 55 / 64), rel=1e-6)
