"""What comes to a position from what acts on its shaft. Statics worked by hand; the data is the invented demo plant's with a thing changed."""

from __future__ import annotations

import pytest

from generator.mounting.sheet import Sheet
from generator.value import Value
from tests.mounting.demo import Edit, machine, sheet, size, why

WSH_04, INT_02, UTL_03, BYP_01, UTL_02, UTL_01, INT_04 = (
    f"machines/{tag}.yml" for tag in ("WSH-04", "INT-02", "UTL-03", "BYP-01", "UTL-02", "UTL-01", "INT-04")
)
G = 9.80665
# weight of a bar of steel of 30 mm, 900 mm long: 7.85 g/cm3
BAR = 7.85e-6 * 3.14159265 * 15**2 * 900 * G


def load(identity: str, *edits: Edit) -> float:
    return size(sheet(identity, *edits).value("load"), "N")


def number(found: Sheet, key: str) -> float:
    value = found.value(key)
    assert isinstance(value, Value), value
    return float(value.content)


def test_a_weight_in_the_middle_comes_half_to_each_end_with_half_the_shaft() -> None:
    # 80 kg in the middle of two supports, and the bar
    assert load("WSH-04/A") == pytest.approx((80 * G + BAR) / 2, rel=1e-4)
    assert load("WSH-04/B") == pytest.approx((80 * G + BAR) / 2, rel=1e-4)


def test_a_weight_presses_down_and_a_belt_pulls_its_way() -> None:
    assert size(sheet("WSH-04/A").value("load_toward"), "deg") == pytest.approx(180)
    pulled = sheet("WSH-01/C")
    # 1000 N to the right on each support, and some weight: between 3 and 4 o'clock
    assert 90 < size(pulled.value("load_toward"), "deg") < 120


def test_on_a_slope_less_weight_comes_across_and_some_comes_along() -> None:
    edits = ((WSH_04, "lies: horizontal", "lies: inclined\n    slope: 30 deg"), (WSH_04, "      tracking:", "      none:"))
    found = sheet("WSH-04/A", *edits)
    weight = 80 * G + BAR
    assert size(found.value("load"), "N") == pytest.approx(weight / 2 * 0.8660254, rel=1e-4)
    # downhill toward the second end; the tracking pushes 100 N toward the first, but not at rest
    assert size(found.value("load_along"), "N") == pytest.approx(weight * 0.5, rel=1e-3)


def test_a_slope_that_is_not_said_withholds_and_says_so() -> None:
    found = sheet("WSH-04/A", (WSH_04, "lies: horizontal", "lies: inclined"), (WSH_04, "{kind: stated reaction, at: A, force: 0.4 kN, toward: 6 o'clock, along: 0.1 kN}", "{kind: side force, at: 450 mm, force: 1 N, toward: 6 o'clock}"))  # fmt: skip
    assert "how steeply" in why(found.value("load"))


def test_an_upright_shaft_hangs_all_its_weight_on_the_unit_that_holds_it() -> None:
    # rotor 90 kg, shaft 50 mm by 1400 mm
    shaft = 7.85e-6 * 3.14159265 * 25**2 * 1400 * G
    found = sheet("UTL-02/A")
    assert size(found.value("load_along"), "N") == pytest.approx(90 * G + shaft, rel=1e-3)
    # bearing 0.53 kg and housing 2.2 kg hang on it until they are off
    assert size(found.value("jack_load"), "N") == pytest.approx((90 + 0.53 + 2.2) * G + shaft, rel=1e-3)
    assert size(sheet("UTL-02/B").value("load_along"), "N") == 0


def test_states_are_worked_out_each_and_the_worst_is_shown() -> None:
    found = sheet("INT-02/A")
    loaded, empty = number(found, "load_state_1"), number(found, "load_state_2")
    assert loaded > empty and number(found, "load") == loaded
    # only the belt, 11 994 N, is 0.6 of itself when empty: 0.4 of it less, half on each support
    assert loaded - empty == pytest.approx(0.4 * 11_994 / 2, rel=1e-3)


def test_a_gear_says_what_is_missing_for_its_force() -> None:
    found = sheet(
        "BYP-01/A",
        (BYP_01, "turns: clockwise", "turns: both ways"),
        (
            BYP_01,
            "{kind: stated reaction, at: A, force: 7 kN, toward: 6 o'clock}",
            "{kind: side force, at: 1300 mm, force: 1 N, toward: 6 o'clock}",
        ),
    )
    assert "both ways" in why(found.value("load"))


def test_a_driven_gear_is_pushed_the_way_its_teeth_move() -> None:
    # mate at 3 o'clock, turning clockwise: there the teeth move down, and so the driven gear is pushed down, its driver up
    driven = load("BYP-01/A")
    driving = load("BYP-01/A", (BYP_01, "does: driven by its mate", "does: drives its mate"))
    assert driven > driving


def test_unbalance_adds_to_what_stands_still() -> None:
    found = sheet("INT-04/B")
    # 78 kg at G 6.3 and 2950 r/min: m G omega / 1000 = 151.8 N, at 820 mm on supports at 250 and 600 mm
    turning = 78 * 6.3 * 2950 * 2 * 3.14159265 / 60 / 1000 * (820 - 250) / 350
    assert number(found, "load_turning") == pytest.approx(turning, rel=1e-3)
    assert number(found, "load") == pytest.approx(number(found, "load_steady") + turning, rel=1e-3)


def test_a_jack_carries_what_statics_says() -> None:
    # shaft and roll balance in the middle; bearing and housing hang at the jack
    found = sheet("WSH-04/A")
    hung = sum(
        float(part.typed.mass.content) for part in (found.position.bearing, found.position.housing) if part and part.typed.mass is not None
    )
    assert number(found, "jack_load") == pytest.approx((80 * G + BAR) / 2 + hung * G, rel=1e-3)
    assert number(found, "jack_rating") == pytest.approx(1.25 * number(found, "jack_load"))


def test_a_bearing_over_the_overhang_tips_the_shaft_when_it_is_off() -> None:
    found = sheet("INT-04/B", (INT_04, "collar: impeller end", "jack: 500 mm\n        collar: impeller end"))
    assert str(found.value("jack_verdict").content).startswith("tips")  # type: ignore[union-attr]


def test_two_units_that_hold_are_each_taken_to_hold_all_of_the_push() -> None:
    edit = ("machines/WSH-03.yml", "{kind: stated reaction, at: A, force: 3 kN, toward: 6 o'clock, along: 2 kN}", "{kind: side force, at: 2600 mm, force: 1 N, toward: 6 o'clock}")  # fmt: skip
    for identity in ("WSH-03/A", "WSH-03/B"):
        along = sheet(identity, edit).value("load_along")
        # 1.1 kW at 45 r/min on a screw of 300 mm, lead 300 mm, friction 0.4: T/(r tan(23.0 + 21.8 deg)) = 2.09 kN
        assert size(along, "kN") == pytest.approx(2.09, abs=0.01)
        assert isinstance(along, Value) and any("more than one unit" in remark for remark in along.remarks)


def test_a_height_error_matters_on_many_supports_and_not_on_two() -> None:
    assert sheet("WSH-04/A").value("height_felt") is None
    low = sheet("UTL-01/B", (UTL_01, "at: 2300 mm\n", "at: 2300 mm\n        stands: {low: 1 mm}\n"))
    assert number(low, "load") < number(sheet("UTL-01/B"), "load")


def test_nothing_typed_is_said_to_be_nothing_typed() -> None:
    bare = sheet("UTL-03/B", (UTL_03, "      flights and ash: {kind: weight, at: 950 mm, mass: 284 kg}\n", ""), (UTL_03, "at: B, force: 1.5 kN", "at: A, force: 1.5 kN"))  # fmt: skip
    assert "no load on this shaft" in why(bare.value("load"))


def test_the_machine_lasts_less_long_than_its_shortest_bearing() -> None:
    found = machine("INT-02")
    lives = [number(one, "life") for one in found.sheets]
    together = found.lines["machine_life"].value
    assert isinstance(together, Value) and together.content < min(lives)
