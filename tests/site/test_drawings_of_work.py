"""The drawings of the work at a bearing, and of the year, show what their values say."""

from __future__ import annotations

import re
from dataclasses import replace
from xml.etree import ElementTree

import pytest
from markupsafe import Markup

from generator.site.drawings import seat_band as seats
from generator.site.drawings.bolts import Bolts, bolts, bolts_for
from generator.site.drawings.collar import Collar, clockwise_from_collar, collar, collar_for
from generator.site.drawings.flange_gap import FlangeGap, flange_gap, flange_gap_for
from generator.site.drawings.float_room import FloatRoom, FloatState, float_room, float_room_for
from generator.site.drawings.housing_shift import HousingShift, housing_shift, housing_shift_for
from generator.site.drawings.nut_turn import NutTurn, nut_turn, nut_turn_for
from generator.site.drawings.pen import NARROW, PANEL, WIDE, Drawn
from generator.site.drawings.shaft import shaft
from generator.site.drawings.strip import Section, Strip, Support
from generator.site.drawings.style import style
from generator.site.drawings.year import Round, Year, year, year_for
from tests.site.drawn import ENDS, LONG, SVG, UNBROKEN, angle_of, assert_words_fit, boxes, middle, mm, parsed, part, texts, tip

SCREW = Strip("Screw shaft", ENDS, (Section(2200, 75),), (Support("A", 250, "fixed", "HELD: putting on", held=True),))

BAND = "1.50 to 1.60\u00a0mm"
TURN = NutTurn(8, 5 / 8, 3 / 4, "5/8 to 3/4 turn", "5 to 6 slots of 8")
GAP = FlangeGap(mm(1.5), mm(1.6), BAND, mm(1.5), "3/4 turn", source="Orvane 14, table 6.")
SHIFT = HousingShift(mm(0), mm(1.5), "0 to 1.50\u00a0mm", "far end")
COLLAR = Collar("A", "first", ENDS, "clockwise", "5\u00a0N·m")
ROOM = FloatRoom(
    "B",
    ENDS,
    mm(3),
    mm(3),
    (FloatState("coldest", -1.6, "1.4\u00a0mm", "4.6\u00a0mm"), FloatState("hottest", 2.1, "5.1\u00a0mm", "0.9\u00a0mm")),
)
BOLTS = Bolts(4, "M16", ("95\u00a0N·m", "190\u00a0N·m"))


def sized(*sizes: float) -> tuple[Drawn, ...]:
    return tuple(Drawn(size, f"{size:.3f}\u00a0mm") for size in sizes)


SEAT = seats.SeatBand(
    *sized(59.926, 60), (seats.Section("near the nut", sized(60, 59.926, 59.98)), seats.Section("far", sized(59.95, 59.921, 59.94)))
)
YEAR = Year((Round("intake", tuple(40.0 if week % 13 == 0 else 0.0 for week in range(52))), Round("wash", tuple([15.0] + [5.0] * 51))))


def test_the_mark_stands_where_the_most_turn_takes_it_clockwise_on_a_right_hand_thread() -> None:
    assert angle_of(part(parsed(nut_turn_for(TURN, "n", PANEL)), "mark after the turn")) == pytest.approx(270, abs=0.5)
    assert angle_of(part(parsed(nut_turn_for(TURN, "n", PANEL)), "mark at hand tight")) % 360 == pytest.approx(0, abs=0.5)


def test_a_left_hand_nut_is_turned_the_other_way() -> None:
    left = nut_turn_for(replace(TURN, hand="left"), "n", PANEL)
    assert angle_of(part(parsed(left), "mark after the turn")) == pytest.approx(90, abs=0.5)
    assert "anticlockwise" in left


def test_the_slots_of_the_last_round_are_counted_and_those_allowed_are_bold() -> None:
    root = parsed(nut_turn_for(TURN, "n", PANEL))
    counted = {"".join(text.itertext()): text.get("class") for text in root.iter(f"{SVG}text") if "".join(text.itertext()).isdecimal()}
    assert counted == {"1": "", "2": "", "3": "", "4": "", "5": "bold", "6": "bold"}
    beyond = [words for words in texts(parsed(nut_turn_for(replace(TURN, least=1.25, most=1.75), "n", PANEL))) if words.isdecimal()]
    assert beyond == ["7", "8", "9", "10", "11", "12", "13", "14"]


@pytest.mark.parametrize(
    ("toward", "turns", "clockwise"),
    [("first", "clockwise", True), ("second", "clockwise", False), ("first", "anticlockwise", False), ("second", "anticlockwise", True)],
)
def test_a_collar_locks_the_way_the_shaft_turns_seen_from_its_own_side(toward: str, turns: str, clockwise: bool) -> None:
    one = replace(COLLAR, toward=toward, turns=turns)  # type: ignore[arg-type]
    assert clockwise_from_collar(one) is clockwise
    svg = collar_for(one, "c", PANEL)
    point, back = tip(part(parsed(svg), "turn"))  # the arrow goes over the top
    assert (point[0] > back[0]) is clockwise
    assert ("A: clockwise" if clockwise else "A: anticlockwise") in texts(parsed(svg))


@pytest.mark.parametrize("turns", ["both ways", ""])
def test_no_way_is_drawn_for_a_collar_whose_shaft_has_no_one_way(turns: str) -> None:
    svg = collar_for(replace(COLLAR, turns=turns), "c", PANEL)  # type: ignore[arg-type]
    assert "HELD" in texts(parsed(svg)) and 'data-part="turn"' not in svg


def test_the_nut_closes_on_the_ring_again_where_travel_and_gap_are_one() -> None:
    root = parsed(flange_gap_for(GAP, "f", PANEL))
    start = [6 + stage * PANEL.width / 3 for stage in range(3)]
    nut = [middle(part(root, f"nut {stage + 1}")) - start[stage] for stage in range(3)]
    flange = [middle(part(root, f"flange {stage + 1}")) - start[stage] for stage in range(3)]
    assert nut[1] == pytest.approx(nut[0], abs=0.1)  # drawing the flange up leaves the nut alone
    assert flange[1] - flange[0] == pytest.approx(nut[2] - nut[1], abs=0.2)  # gap = travel
    assert flange[2] == pytest.approx(flange[1], abs=0.1)


def test_gap_and_travel_are_drawn_to_one_scale() -> None:
    root = parsed(flange_gap_for(replace(GAP, least=mm(2), most=mm(2), travel=mm(1.5)), "f", PANEL))
    width = PANEL.width / 3
    gap = middle(part(root, "flange 2")) - middle(part(root, "flange 1")) - width
    travel = middle(part(root, "nut 3")) - middle(part(root, "nut 2")) - width
    assert gap / travel == pytest.approx(2 / 1.5, rel=0.02)


@pytest.mark.parametrize(
    ("gap", "travel", "words"), [(1.0, 1.5, "The travel is more than the gap"), (2.0, 1.5, "The travel is less than the gap")]
)
def test_a_gap_that_does_not_belong_to_the_travel_is_said(gap: float, travel: float, words: str) -> None:
    assert words in flange_gap_for(replace(GAP, least=mm(gap), most=mm(gap), travel=mm(travel)), "f", PANEL)
    assert "The travel is" not in flange_gap_for(replace(GAP, least=mm(1.55)), "f", PANEL)


@pytest.mark.parametrize(("nut_left", "shaft_moves"), [(True, False), (False, False), (True, True), (False, True)])
def test_the_housing_goes_away_from_the_nut_and_a_shaft_comes_toward_it(nut_left: bool, shaft_moves: bool) -> None:
    root = parsed(housing_shift_for(replace(SHIFT, nut_left=nut_left, shaft_moves=shaft_moves), "h", PANEL))
    point, back = tip(part(root, "way"))
    goes_right = point[0] > back[0]
    assert goes_right is (nut_left != shaft_moves)
    assert (middle(part(root, "nut")) < 175) is nut_left


def test_four_bolts_are_tightened_crosswise() -> None:
    # common practice, no source: the second bolt stands across from the first, the fourth across from the third
    root = parsed(bolts_for(BOLTS, "b", PANEL))
    at = {
        "".join(text.itertext()): (float(text.get("x", 0)), float(text.get("y", 0)))
        for text in root.iter(f"{SVG}text")
        if text.get("text-anchor") == "middle"
    }
    assert (at["1"][0] < at["2"][0], at["1"][1] < at["2"][1]) == (True, True)
    assert (at["3"][0] > at["4"][0], at["3"][1] < at["4"][1]) == (True, True)
    assert sum("tip" in mark.get("class", "") for mark in part(root, "order")) == 3


@pytest.mark.parametrize("count", [2, 3, 4])
def test_every_bolt_has_its_number_and_every_round_its_torque(count: int) -> None:
    words = texts(parsed(bolts_for(replace(BOLTS, count=count), "b", PANEL)))  # type: ignore[arg-type]
    assert [word for word in words if word.isdecimal()] == [str(i) for i in range(1, count + 1)]
    assert "Round 1: 95\u00a0N·m, in this order." in words and "Round 2: 190\u00a0N·m, in this order." in words


def test_the_ring_stands_in_its_room_to_scale_in_every_state() -> None:
    root = parsed(float_room_for(ROOM, "r", PANEL))
    stops = sorted(
        float(rect.get("x", 0)) + (12 if i == 0 else 0)
        for i, rect in enumerate(r for r in root.iter(f"{SVG}rect") if r.get("class") == "solid")
    )
    rings = [
        (float(r.get("x", 0)), float(r.get("x", 0)) + float(r.get("width", 0))) for r in root.iter(f"{SVG}rect") if r.get("class") == "part"
    ]
    per_mm = (stops[1] - stops[0] - 130) / 6
    assert [round((left - stops[0]) / per_mm, 1) for left, _ in rings] == [1.4, 5.1]
    assert [round((stops[1] - right) / per_mm, 1) for _, right in rings] == [4.6, 0.9]


def test_a_room_seen_from_the_other_side_is_mirrored() -> None:
    root = parsed(float_room_for(replace(ROOM, first_end_left=False), "r", PANEL))
    where = {box[4]: box[0] for box in boxes(root, PANEL)}
    assert where["far end"] < where["drive end"] and where["4.6\u00a0mm"] < where["1.4\u00a0mm"]


def test_a_reading_on_a_limit_is_inside_and_one_beyond_it_is_filled_and_said() -> None:
    root = parsed(seats.seat_band_for(SEAT, "s", PANEL))
    assert sum(mark.get("class") == "mark-tip" for mark in root.iter()) == 1
    assert "1 of 6 readings are OUTSIDE." in texts(root)
    good = replace(SEAT, sections=SEAT.sections[:1])
    assert "All 3 readings are inside." in texts(parsed(seats.seat_band_for(good, "s", PANEL)))
    bad_form = replace(good, form_outside=True)
    assert "All 3 readings are inside, but the form is OUTSIDE." in texts(parsed(seats.seat_band_for(bad_form, "s", PANEL)))


def test_a_reading_stands_as_high_in_the_band_as_it_is_large() -> None:
    seat = seats.SeatBand(*sized(59.9, 60), (seats.Section("middle", sized(59.975)),))
    root = parsed(seats.seat_band_for(seat, "s", PANEL))
    band = next(rect for rect in root.iter(f"{SVG}rect") if "cut" in rect.get("style", ""))
    top, height = float(band.get("y", 0)), float(band.get("height", 0))
    mark = next(root.iter(f"{SVG}circle"))
    assert (top + height - float(mark.get("cy", 0))) / height == pytest.approx(0.75, abs=0.01)


def test_a_seat_without_readings_says_so() -> None:
    assert "No reading yet." in texts(parsed(seats.seat_band_for(replace(SEAT, sections=()), "s", PANEL)))


def test_the_year_shows_the_sum_of_each_week_and_names_the_heaviest() -> None:
    assert YEAR.load[0] == 55 and YEAR.load[1] == 5 and YEAR.load[13] == 45
    root = parsed(year_for(YEAR, "y", WIDE))
    sums = [float(rect.get("height", 0)) for rect in root.iter(f"{SVG}rect") if rect.get("class") == "solid"]
    assert len(sums) == 52 and sums[0] == max(sums) and sums[13] / sums[0] == pytest.approx(45 / 55, rel=0.01)
    assert "Most in week 1: 55 min. Mean of all weeks: 8 min." in texts(root)


def test_a_year_without_rounds_says_so() -> None:
    assert "No round in this year." in texts(parsed(year_for(Year(()), "y", WIDE)))


NUTS = [
    TURN,
    replace(TURN, words=LONG, counted=UNBROKEN),
    replace(TURN, slots=24, least=2.5, most=3),
    NutTurn(2, 0, 0.01, "1/100 turn"),
]
COLLARS = [COLLAR, replace(COLLAR, toward="second", ends=(LONG, UNBROKEN)), replace(COLLAR, turns="both ways")]
SEATS = [
    SEAT,
    replace(SEAT, sections=tuple(seats.Section(LONG, sized(59.9, 70)) for _ in range(6))),
    replace(SEAT, upper=SEAT.lower),
]
DETAILS = [
    (nut_turn_for, NUTS, PANEL),
    (collar_for, COLLARS, PANEL),
    (flange_gap_for, [GAP, replace(GAP, least=mm(0), gap=LONG, turn=UNBROKEN, source=LONG, nut_toward=LONG, bolts=3)], PANEL),
    (housing_shift_for, [SHIFT, replace(SHIFT, toward=UNBROKEN, band=LONG, nut_left=False)], PANEL),
    (bolts_for, [replace(BOLTS, count=n, size=LONG) for n in (2, 3, 4)], PANEL),
    (float_room_for, [ROOM, replace(ROOM, ends=(LONG, UNBROKEN)), replace(ROOM, first=mm(0), second=mm(0))], PANEL),
    (seats.seat_band_for, SEATS, PANEL),
    (year_for, [YEAR, Year(()), Year(tuple(Round(LONG, (0.1,) * 52) for _ in range(9)))], WIDE),
]
ALL = [(draw, data, layout) for draw, every, wide in DETAILS for data in every for layout in (wide, NARROW)]


@pytest.mark.parametrize(
    ("draw", "data", "layout"), ALL, ids=[f"{draw.__name__}-{layout.name}-{i}" for i, (draw, _, layout) in enumerate(ALL)]
)
def test_words_stay_inside_and_off_each_other_in_every_detail(draw, data, layout) -> None:  # type: ignore[no-untyped-def]
    svg = draw(data, "d", layout)
    assert_words_fit(svg, layout)
    root = parsed(svg)
    assert root.get("role") == "img" and root.get("aria-labelledby") == f"d-{layout.name}-title d-{layout.name}-desc"
    assert root.find(f"{SVG}title").text and root.find(f"{SVG}desc").text  # type: ignore[union-attr]


BOTH = [
    shaft(SCREW, "n"),
    nut_turn(TURN, "n"),
    collar(COLLAR, "n"),
    flange_gap(GAP, "n"),
    housing_shift(SHIFT, "n"),
    bolts(BOLTS, "n"),
    float_room(ROOM, "n"),
    seats.seat_band(SEAT, "n"),
    year(YEAR, "n"),
]


@pytest.mark.parametrize("drawn", BOTH, ids=range(len(BOTH)))
def test_both_layouts_come_with_ids_of_their_own_and_no_colour_of_their_own(drawn: Markup) -> None:
    root = ElementTree.fromstring(f"<page>{drawn}</page>")
    assert [svg.get("class") for svg in root] == ["pic wide", "pic narrow"]
    ids = [mark.get("id") for mark in root.iter() if mark.get("id")]
    assert len(ids) == len(set(ids))
    used = set(re.findall(r"url\(#([^)]+)\)", drawn)) | {one for svg in root for one in svg.get("aria-labelledby", "").split()}
    assert used <= set(ids)
    assert not re.search(r"#[0-9a-f]{3,6}\b(?![-\w])|rgb\(", re.sub(r'href="[^"]*"|url\([^)]*\)', "", drawn))


def test_the_style_knows_ink_paper_and_accent_alone() -> None:
    named = set(re.findall(r"var\((--[a-z]+)", style()))
    assert named == {"--ink", "--paper", "--accent", "--field", "--label"}  # the last two a page sets on the chosen bearing
    assert not re.search(r"#[0-9a-f]{3}|rgb", style())
