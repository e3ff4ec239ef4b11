"""Growth of shafts and the float that is there for it. Growth: 12e-6 a kelvin for carbon steel, EN 1993-1-1, from memory (EN 10088-1 for stainless).
Margin of a quarter and half a millimetre of setting error: common practice, no source. Data is the invented demo plant's."""

from __future__ import annotations

import pytest

from generator.mounting.axial import anchor_of, physically_fixed, toward
from generator.plant.plant import Plant, Position, Shaft
from tests.mounting.demo import Edit, ends, machine, plant, sheet, size, why

DRY_01, DRY_02, BYP_02, INT_02, UTL_01 = (f"machines/{tag}.yml" for tag in ("DRY-01", "DRY-02", "BYP-02", "INT-02", "UTL-01"))
HOUSINGS = "library/housings.yml"


def shaft(identity: str, *edits: Edit) -> Shaft:
    tag, _, key = identity.partition("/")
    return next(s.shaft for s in machine(tag, *edits).shafts if s.shaft.key == key)


def position(read: Plant, identity: str) -> Position:
    return next(p for m in read.machines for p in m.positions if p.id == identity)


# --- what holds endwise in fact ---


@pytest.mark.parametrize(
    ("identity", "fixed"),
    [
        ("INT-02/A", True),  # called fixed
        ("INT-02/B", False),  # a guided frame
        ("UTL-01/A", False),  # a pin in a grooved shaft
        ("UTL-01/E", True),  # a ball insert locked to its shaft in an ordinary housing, called free
        ("DRY-01/B", False),  # a sliding cartridge
        ("DRY-02/B", False),  # a roller ring without locating rings
        ("DRY-02/A", True),  # the same with its locating rings
        ("WSH-02/A", True),  # called free, no way to float
    ],
)
def test_free_counts_only_with_a_way_to_float(identity: str, fixed: bool) -> None:
    assert physically_fixed(position(plant(), identity)) is fixed


def test_a_roller_ring_narrower_than_its_housing_floats_though_nobody_typed_how() -> None:
    untyped = (DRY_02, "        floats: {by: ring loose in its housing, drive end: 3 mm, far end: 3 mm}\n", "")
    read = plant(untyped)
    assert not physically_fixed(position(read, "DRY-02/B"))
    # bore 65 mm wide, ring 40 mm: 12.5 mm each way, set in the middle
    assert size(sheet("DRY-02/B", untyped).value("float_second"), "mm") == pytest.approx(12.5)


def test_a_ring_as_wide_as_its_housing_is_held_by_it() -> None:
    untyped = (DRY_02, "        floats: {by: ring loose in its housing, drive end: 3 mm, far end: 3 mm}\n", "")
    tight = (HOUSINGS, "bore: {size: 160 mm, class: G7, wide: 65 mm}", "bore: {size: 160 mm, class: G7, wide: 40 mm}")
    assert physically_fixed(position(plant(untyped, tight), "DRY-02/B"))


def test_a_float_of_nothing_is_no_float() -> None:
    nothing = (INT_02, "by: guided frame, drive end: 3 mm, far end: 3 mm", "by: guided frame, drive end: 0 mm, far end: 0 mm")
    assert physically_fixed(position(plant(nothing), "INT-02/B"))


def test_a_take_up_floats_by_the_room_in_its_guide() -> None:
    old = "  bolts: {count: 2, size: M16, apart: 190 mm, hole: 17.5 mm}\n  travel: 150 mm\n\n"
    guide = (HOUSINGS, old, old.replace("150 mm\n", "150 mm\n  guide: 3 mm\n"))
    free = (DRY_01, "at: 2800 mm\n        holds: fixed", "at: 2800 mm\n        holds: free")
    found = sheet("DRY-01/D", guide, free)
    assert [size(found.value(key), "mm") for key in ("float_first", "float_second")] == [3, 3]
    assert size(found.value("growth_here"), "mm") == pytest.approx(1.872)
    # 1.25 x 1.872 + 0.5
    assert size(found.value("float_needed_hot"), "mm") == pytest.approx(2.84)
    assert found.lines["float_verdict_hot"].value.content == "enough"  # type: ignore[union-attr]


# --- growth ---


def test_a_dryer_shaft_grows_by_its_length_and_how_much_hotter_than_its_frame_it_is() -> None:
    # 12e-6 x 3200 mm x (115 - 20) K = 3.648 mm
    lines = machine("DRY-01").shafts[0].lines
    assert size(lines["growth"].value, "mm") == pytest.approx(3.648)
    assert lines["growth"].name == "Growth from A to B"


def test_a_stainless_shaft_in_a_steel_frame_grows_by_the_greater_of_what_is_published_for_it() -> None:
    # 1.4301: handbooks give 17.3e-6 a kelvin, EN 10088-1 16.0e-6, both from memory; the worse for a shaft: 17.3e-6 x 3200 mm x 95 K
    old = "    speed: 12 rpm\n    temperature: {shaft: 115"
    steel = (DRY_01, old, old.replace("rpm\n", "rpm\n    material: stainless 1.4301\n"))
    assert size(machine("DRY-01", steel).shafts[0].lines["growth"].value, "mm") == pytest.approx(5.2592)


def test_growth_is_withheld_where_temperatures_are_not_typed() -> None:
    unsaid = (DRY_01, "    temperature: {shaft: 115 degC, frame: 20 degC}\n", "")
    assert "temperatures of shaft and frame" in why(machine("DRY-01", unsaid).shafts[0].lines["growth"].value)
    assert "temperatures of shaft and frame" in why(sheet("DRY-01/B", unsaid).value("float_verdict_hot"))


def test_growth_is_counted_from_the_fixed_unit_wherever_it_stands() -> None:
    line = shaft("UTL-01/line")
    assert anchor_of(line).letter == "D"


@pytest.mark.parametrize(
    ("letter", "amount", "end"),
    [
        ("A", 1.0, "drive end"),  # before the fixed unit, growing
        ("G", 1.0, "far end"),  # beyond it, growing
        ("A", -1.0, "far end"),  # a shaft colder than its frame draws it in
        ("G", -1.0, "drive end"),
    ],
)
def test_a_growing_shaft_pushes_outward_from_its_fixed_unit_and_a_shrinking_one_pulls_in(letter: str, amount: float, end: str) -> None:
    line = shaft("UTL-01/line")
    one = next(p for p in line.positions if p.letter == letter)
    assert toward(line, anchor_of(line), one, amount) == end


# --- float against growth ---


def test_a_float_of_one_and_a_half_is_too_little_for_a_growth_of_three_and_a_half() -> None:
    found = sheet("DRY-01/B")
    # 1.25 x 3.648 + 0.5
    assert size(found.value("float_needed_hot"), "mm") == pytest.approx(5.06)
    assert found.lines["float_verdict_hot"].value.content == "too little"  # type: ignore[union-attr]


@pytest.mark.parametrize(("far", "verdict"), [("5.1 mm", "enough"), ("5.0 mm", "too little")])
def test_only_the_float_on_the_side_the_growth_goes_to_counts(far: str, verdict: str) -> None:
    edit = (DRY_01, "drive end: 1.5 mm, far end: 1.5 mm", f"drive end: 0.1 mm, far end: {far}")
    assert sheet("DRY-01/B", edit).lines["float_verdict_hot"].value.content == verdict  # type: ignore[union-attr]


def test_the_coldest_shaft_pulls_the_other_way_and_needs_its_float_there() -> None:
    cold = (DRY_01, "{shaft: 115 degC, frame: 20 degC}", "{shaft: 115 degC, frame: 20 degC, coldest: -10 degC}")
    room = (DRY_01, "drive end: 1.5 mm, far end: 1.5 mm", "drive end: 1.9 mm, far end: 6 mm")
    found = sheet("DRY-01/B", cold, room)
    # 12e-6 x 3200 mm x -30 K = -1.152 mm; 1.25 x 1.152 + 0.5 = 1.94 mm
    assert size(found.value("float_needed_cold"), "mm") == pytest.approx(1.94)
    assert found.lines["float_verdict_hot"].value.content == "enough"  # type: ignore[union-attr]
    assert found.lines["float_verdict_cold"].value.content == "too little"  # type: ignore[union-attr]


def test_clearance_inside_the_bearing_is_not_set_by_hand_so_growth_alone_is_held_against_it() -> None:
    found = sheet("BYP-02/B")
    # 12e-6 x 1860 mm x 5 K = 0.1116 mm
    assert size(found.value("float_needed_hot"), "mm") == pytest.approx(0.1116)
    assert found.lines["float_verdict_hot"].value.content == "enough"  # type: ignore[union-attr]
    # the maker's axial clearance stands beside the half of it that was typed for each end
    assert ends(found.lines["float_first"].beside[0][1], "mm") == (0.4, 0.6)


def test_the_room_by_the_parts_stands_beside_a_float_that_was_typed() -> None:
    found = sheet("DRY-02/B")
    assert size(found.value("float_first"), "mm") == 3
    assert size(found.lines["float_first"].beside[0][1], "mm") == pytest.approx(12.5)


def test_a_unit_with_no_way_to_float_has_none_and_no_verdict() -> None:
    # warm, so that there is growth to take
    found = sheet("UTL-01/G", (UTL_01, "{shaft: 20 degC, frame: 20 degC}", "{shaft: 30 degC, frame: 20 degC}"))
    assert why(found.value("float_first")) == "no way to float is typed"
    assert why(found.value("float_verdict_hot")) == "no way to float is typed"
    assert size(found.value("growth_here"), "mm") == pytest.approx(0.72)


def test_a_fixed_unit_has_no_float_lines() -> None:
    assert [line.key for line in sheet("INT-02/A").group("axial")] == ["place", "holds"]


# --- what growth can close ---


def test_growth_into_a_coupling_is_counted_from_the_fixed_unit_to_that_end() -> None:
    lines = machine("DRY-03").shafts[0].lines
    # the fan is fixed at the impeller: 1100 mm to the face of the coupling, 83 K: 12e-6 x 1100 x 83 = 1.0956 mm
    assert size(lines["coupling_growth"].value, "mm") == pytest.approx(1.0956)
    assert size(lines["coupling_room"].value, "mm") == pytest.approx(0.8)
