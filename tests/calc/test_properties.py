"""What must hold of nuts, pressed rings, screws and collars at any size."""

from __future__ import annotations

from math import isfinite
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from generator.calc import alignment, nuts, screws
from generator.method import Refused
from generator.mounting.chains.locks import hex_key_size, set_screw_seating
from generator.tables import table
from generator.value import Entered, Place, Value, Withheld

HERE = Place("test", 1)
pitches = st.floats(0.5, 4)
bores = st.floats(20, 200)
walls = st.floats(1.05, 1.6)
turns = st.floats(0, 1080)
hands = st.sampled_from(["clockwise", "anticlockwise"])


def typed(content: Any, unit: str = "") -> Value:
    return Value(content, unit, Entered(f"{content} {unit}", HERE))


@given(pitches, turns)
def test_a_whole_turn_more_is_a_pitch_further(pitch: float, turn: float) -> None:
    assert nuts.nut_travel(pitch, turn + 360) - nuts.nut_travel(pitch, turn) == pytest.approx(pitch)


def test_a_travel_is_the_same_in_turns_and_degrees_inches_and_millimetres() -> None:
    metric = nuts.nut_travel.of(pitch=typed(25.4 / 12, "mm"), turn=typed(270, "deg"))
    inch = nuts.nut_travel.of(pitch=typed(1 / 12, "in"), turn=typed(0.75, "turn"))
    # three quarters of a twelfth of an inch
    assert metric.content == pytest.approx(1.5875)
    assert inch.content == pytest.approx(1.5875)


@given(turns, st.floats(0, 180), st.sampled_from([4.0, 8.0, 12.0, 18.0]))
def test_slots_lie_inside_the_turn_and_never_beyond_it(least: float, wide: float, slots: float) -> None:
    try:
        found = nuts.turn_in_slots(least, least + wide, slots)
    except Refused:
        assert wide < 360 / slots
        return
    assert least - 1e-3 <= found.least * 360 / slots <= found.most * 360 / slots <= least + wide + 1e-3
    assert found.least == int(found.least) and found.most == int(found.most)


@given(st.floats(0, 5))
def test_what_moves_moves_at_most_by_the_travel_and_a_held_housing_turns_the_way_round(travel: float) -> None:
    free, held = nuts.housing_shift(travel, "pushes the ring"), nuts.housing_shift(travel, "pushes the ring", "held")
    assert (free.least, free.most) == (held.least, held.most) == (0.0, travel)
    assert (free.toward, held.toward) == ("away from the nut", "toward the nut")


@given(st.floats(0, 5), st.floats(0, 0.5))
def test_a_gap_is_never_less_than_the_travel(travel: float, over: float) -> None:
    gap = nuts.flange_gap(travel, over)
    assert travel == gap.least <= gap.most == travel + over


@given(hands, st.sampled_from(["right", "left"]))
def test_nuts_at_the_two_ends_of_a_shaft_are_dragged_opposite_ways(turning: Any, hand: Any) -> None:
    assert nuts.nut_drag(turning, "first end", hand) != nuts.nut_drag(turning, "second end", hand)
    assert nuts.nut_drag(turning, "first end", hand) == nuts.nut_drag(
        "anticlockwise" if turning == "clockwise" else "clockwise", "second end", hand
    )


def test_one_turn_of_eighteen_threads_to_the_inch_loads_a_slit_sleeve_less_the_flatter_its_taper() -> None:
    # thick-walled cylinder by Lamé on a sleeve without hoop stiffness; worked by hand to whole MPa
    expected = {12: (0.118, 367), 20: (0.071, 220), 30: (0.047, 147)}
    for taper, (interference, hoop) in expected.items():
        found = nuts.ball_insert_turns(25.4 / 18, taper, 55.0, 66.0, 49.2125)
        assert found.interference == pytest.approx(interference, abs=0.0006)
        assert found.hoop == pytest.approx(hoop, abs=0.6)


def test_a_gap_wider_than_the_travel_presses_more_than_the_turn() -> None:
    # what drives the ring is the gap: 1.588 mm on a taper of 1:12, against 1.411 mm of travel
    assert nuts.ball_insert_turns(1.588, 12, 55.0, 66.0, 49.2125).interference == pytest.approx(0.1323, abs=1e-4)
    assert nuts.ball_insert_turns(1.411, 12, 55.0, 66.0, 49.2125).interference == pytest.approx(0.1176, abs=1e-4)


@given(st.floats(0.1, 3), bores, walls, st.floats(0.7, 0.99))
def test_a_ring_on_a_sleeve_is_stressed_less_than_straight_on_the_shaft(travel: float, bore: float, wall: float, shaft: float) -> None:
    on_sleeve = nuts.ball_insert_turns(travel, 12, bore, wall * bore, shaft * bore)
    straight = nuts.interference_pressure(travel / 12, bore, wall * bore)
    assert 0 < on_sleeve.hoop < straight.hoop
    # a sleeve of no thickness is no sleeve
    thin = nuts.ball_insert_turns(travel, 12, bore, wall * bore, bore * (1 - 1e-9))
    assert thin.hoop == pytest.approx(straight.hoop, rel=1e-6)


@given(st.floats(0.001, 0.2), bores, walls)
def test_pressure_grows_with_interference_and_with_the_wall_of_the_ring(interference: float, bore: float, wall: float) -> None:
    found = nuts.interference_pressure(interference, bore, wall * bore)
    assert isfinite(found.pressure) and 0 < found.pressure < found.hoop
    assert nuts.interference_pressure(2 * interference, bore, wall * bore).pressure == pytest.approx(2 * found.pressure)
    assert nuts.interference_pressure(interference, bore, wall * bore * 1.1).pressure > found.pressure
    assert nuts.interference_pressure(interference, bore, wall * bore, hole=0.5 * bore).pressure < found.pressure


@given(st.floats(0.001, 0.2), bores, walls)
def test_steel_on_steel_is_the_short_form_of_lame(interference: float, bore: float, wall: float) -> None:
    outside = wall * bore
    short = 206_000 * interference * (outside**2 - bore**2) / (2 * bore * outside**2)
    assert nuts.interference_pressure(interference, bore, outside).pressure == pytest.approx(short)


def test_a_pressure_is_the_same_in_inches_and_in_millimetres() -> None:
    metric = nuts.interference_pressure.of(interference=typed(0.0254, "mm"), diameter=typed(50.8, "mm"), outside=typed(76.2, "mm"))
    inch = nuts.interference_pressure.of(interference=typed(0.001, "in"), diameter=typed(2, "in"), outside=typed(3, "in"))
    assert inch.pressure.content == pytest.approx(metric.pressure.content)


@given(st.floats(1, 200), bores, st.floats(5, 200), st.floats(0.05, 0.2))
def test_a_seat_twice_as_long_or_pressed_twice_as_hard_holds_twice(pressure: float, bore: float, length: float, friction: float) -> None:
    one = nuts.seat_holding(pressure, bore, length, friction)
    assert nuts.seat_holding(pressure, bore, 2 * length, friction).force == pytest.approx(2 * one.force)
    assert nuts.seat_holding(2 * pressure, bore, length, friction).torque == pytest.approx(2 * one.torque)
    assert one.torque == pytest.approx(one.force * bore / 2000)


@given(st.floats(100, 30_000), st.floats(10, 150), st.floats(1, 8))
def test_two_screws_hold_more_than_one_and_less_than_twice(force: float, diameter: float, safety: float) -> None:
    one, two = screws.set_screw_holding(force, 1, diameter, safety), screws.set_screw_holding(force, 2, diameter, safety)
    assert one.axial < two.axial < 2 * one.axial
    assert screws.set_screw_holding(force, 2, diameter, safety + 1).axial < two.axial


@given(st.floats(500, 50_000), st.floats(10, 150), st.floats(0.05, 0.29))
def test_stiff_halves_hold_less_than_a_flexible_band_would(force: float, diameter: float, friction: float) -> None:
    held = screws.concentric_clamp_collar(force, diameter, friction)
    # a flexible band presses 2 pi times the force of its screw, the bound of what any clamp can
    assert held.axial < 2 * 3.14159265 * friction * force
    assert held.torque == pytest.approx(held.axial * diameter / 2000)


def test_a_flexible_band_is_the_upper_bound_of_a_clamp() -> None:
    # 8 kN, friction 0.15: 2 pi F mu = 7540 N for a band, 4800 N for stiff halves
    assert screws.concentric_clamp_collar(8000, 50, 0.15).axial == pytest.approx(4800)


@given(hands)
def test_collars_that_face_apart_lock_opposite_hands(turning: Any) -> None:
    assert screws.eccentric_collar(turning, "first end") != screws.eccentric_collar(turning, "second end")


@pytest.mark.parametrize("end", ["first end", "second end"])
def test_no_eccentric_collar_on_a_shaft_that_runs_both_ways(end: str) -> None:
    found = screws.eccentric_collar.of(turns=typed("both ways"), collar_toward=typed(end))
    assert isinstance(found, Withheld) and "both ways" in found.why


@pytest.mark.parametrize("row", [*table("set-screw-metric").rows, *table("set-screw-inch").rows], ids=lambda row: row["size"])
def test_no_screw_is_seated_beyond_the_torque_that_is_never_passed(row: dict[str, str]) -> None:
    found = set_screw_seating.of(screw=typed(row["size"] if row["size"].startswith("M") else f"{row['size']}-20"))
    if isinstance(found.seating, Value):
        assert 0 < found.seating.content <= found.ceiling.content


@pytest.mark.parametrize("row", table("hex-key").rows, ids=lambda row: row["size"])
def test_a_key_is_about_half_its_screw(row: dict[str, str]) -> None:
    size = row["size"]
    wide = float(size[1:]) if size.startswith("M") else {"#10": 0.19}.get(size) or _inches(size)
    key = hex_key_size.of(screw=typed(size if size.startswith("M") else f"{size}-20"))
    assert 0.4 < key.content / wide < 0.6


@given(st.floats(0, 2), st.floats(0, 2), st.floats(100, 5000))
def test_the_angle_of_two_supports_is_more_than_that_of_either_direction(height: float, sideways: float, over: float) -> None:
    both = alignment.support_misalignment(height, sideways, over)
    assert both >= max(alignment.support_misalignment(height, 0, over), alignment.support_misalignment(0, sideways, over)) - 1e-12
    assert alignment.support_misalignment(height, sideways, 2 * over) <= both


def _inches(fraction: str) -> float:
    top, _, bottom = fraction.partition("/")
    return float(top) / float(bottom or 1)
