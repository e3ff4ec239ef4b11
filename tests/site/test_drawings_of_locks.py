"""The drawings of a lock hold to their values over whole ranges: the turn, the gap, the room in the slots, the order of screws and seals."""

from __future__ import annotations

from dataclasses import replace
from itertools import pairwise

import pytest

from generator.site.drawings.bolts import Bolts, bolts_for
from generator.site.drawings.clamp import Clamp, clamp_for
from generator.site.drawings.flange_gap import FlangeGap, flange_gap_for
from generator.site.drawings.housing_shift import HousingShift, housing_shift_for
from generator.site.drawings.nut_turn import NutTurn, nut_turn_for
from generator.site.drawings.pen import NARROW, PANEL, Layout
from generator.site.drawings.screws import Screws, screws_for
from generator.site.drawings.seals import Seals, order, seals_for
from generator.site.drawings.shoulder import Shoulder, shoulder_for
from tests.site.drawn import ENDS, LONG, UNBROKEN, angle_of, assert_told, bearing_of, middle, mm, parsed, part, points, span, texts, tip

LAYOUTS = pytest.mark.parametrize("layout", [PANEL, NARROW], ids=["wide", "narrow"])
GAP = FlangeGap(mm(1.5), mm(1.6), "1.50 to 1.60\u00a0mm", mm(1.5), "3/4 turn", 4, "opposite the nut", "far end")
SHIFT = HousingShift(mm(0), mm(1.5), "0 to 1.50\u00a0mm", "far end", stands="slots", slot=mm(4), left="2.50\u00a0mm", pulled=True)
SEALS = Seals(1, ENDS, "drive end", "drive end", None, "12.5\u00a0mm")


@pytest.mark.parametrize("slots", [2, 3, 4, 6, 8, 12, 16, 18, 24])
def test_the_nut_has_as_many_slots_as_its_values_say(slots: int) -> None:
    (outline,) = part(parsed(nut_turn_for(NutTurn(slots, 0.5, 0.75, "3/4 turn"), "n", PANEL)), "nut")
    rim = [((x - 175) ** 2 + (y - 176) ** 2) ** 0.5 for x, y in points(outline)]
    deep = [r < 90 for r in rim]
    assert sum(here and not before for before, here in pairwise([deep[-1], *deep])) == slots


@LAYOUTS
@pytest.mark.parametrize("hand", ["right", "left"])
def test_least_and_most_turn_are_marked_at_their_true_angles_the_way_the_thread_closes(layout: Layout, hand: str) -> None:
    # a right-hand nut closes clockwise seen from its outer face; ISO 68 threads; geometry, no source
    way = 1 if hand == "right" else -1
    for sixteenth in range(1, 32):
        least, most = sixteenth / 16, (sixteenth + 1) / 16
        root = parsed(nut_turn_for(NutTurn(8, least, most, "turn", hand=hand), "n", layout))  # type: ignore[arg-type]
        for name, turn in (("mark after the least", least), ("mark after the turn", most), ("mark at hand tight", 0.0)):
            assert abs((angle_of(part(root, name)) - way * turn * 360 + 180) % 360 - 180) < 0.5
        assert abs((bearing_of(tip(part(root, "turn"))[0], (175, 176)) - way * least * 360 + 180) % 360 - 180) < 0.5


def test_the_sleeve_slot_is_where_the_first_mark_is_and_named() -> None:
    root = parsed(nut_turn_for(NutTurn(8, 0.5, 0.75, "3/4 turn"), "n", PANEL))
    left, top, right, bottom = span(part(root, "sleeve slot"))
    assert (left + right) / 2 == pytest.approx(175) and bottom < 176
    assert {"sleeve", "slot"} <= set(texts(root))
    assert "seen from the nut side" in str(nut_turn_for(NutTurn(8, 0.5, 0.75, "3/4 turn"), "n", PANEL))


def test_a_turn_that_only_guides_says_that_the_blade_decides() -> None:
    assert "A guide only: the blade decides." in texts(parsed(nut_turn_for(NutTurn(4, 0.3, 0.5, "guide", guide=True), "n", PANEL)))
    assert "blade" not in nut_turn_for(NutTurn(4, 0.3, 0.5, "turn"), "n", PANEL)


def test_gap_travel_and_the_most_of_the_gap_are_in_proportion_over_a_range() -> None:
    for tenth in range(5, 40):
        least = tenth / 10
        data = replace(GAP, least=mm(least), most=mm(least * 1.2), travel=mm(least))
        root = parsed(flange_gap_for(data, "f", PANEL))
        face = max(x for x, _ in points(part(root, "flange 1")[0]))
        flush = max(x for x, _ in points(part(root, "flange 2")[0])) - PANEL.width / 3
        at_most = points(part(root, "gap at most")[0])[0][0]
        assert (flush - at_most) / (flush - face) == pytest.approx(1.2, rel=0.02)
        went = middle(part(root, "nut 3")) - middle(part(root, "nut 2")) - PANEL.width / 3
        assert went == pytest.approx(flush - face, abs=0.25)


@pytest.mark.parametrize("count", [2, 3, 4])
def test_a_shim_lies_at_every_bolt_with_its_tail_outside_the_flange(count: int) -> None:
    root = parsed(flange_gap_for(replace(GAP, bolts=count), "f", PANEL))
    shims = part(root, "shim")
    assert len(shims) == count
    left, _, right, _ = span(part(root, "flange from the front")[:1])
    for shim in shims:
        start, _, end, _ = span([shim])
        assert start < left or end > right or count == 3
    assert "1.50 to 1.60\u00a0mm" in texts(root)


@pytest.mark.parametrize(
    ("changed", "words"),
    [
        ({"least": None, "most": None, "gap": ""}, "No gap on file"),
        ({"travel": None, "turn": ""}, "No turn on file"),
        ({"frame": "nut side"}, "closes no gap"),
        ({"frame": ""}, "does not say on which side"),
    ],
)
def test_no_stage_is_drawn_where_there_is_no_gap_to_set(changed: dict[str, object], words: str) -> None:
    svg = flange_gap_for(replace(GAP, **changed), "f", PANEL)  # type: ignore[arg-type]
    root = parsed(svg)
    assert "HELD" in texts(root) and words in " ".join(texts(root)) and 'data-part="flange 2"' not in svg
    assert any("-held)" in mark.get("style", "") for mark in root.iter())
    assert "HELD" in str(root[0].text)
    frame, flange = (middle(part(root, f"{name} 1")) for name in ("frame", "flange"))
    assert (frame < flange) is (changed.get("frame") == "nut side")


def test_a_bolt_stands_at_the_end_of_its_slot_away_from_the_nut_and_its_way_is_to_scale() -> None:
    for nut_left in (True, False):
        for tenth in range(5, 40, 5):
            data = replace(SHIFT, most=mm(tenth / 10), nut_left=nut_left)
            root = parsed(housing_shift_for(data, "h", PANEL))
            slot, bolt, used = (span(part(root, name)) for name in ("slot", "bolt", "slot used"))
            away, toward = (slot[2] - bolt[2], bolt[0] - slot[0]) if nut_left else (bolt[0] - slot[0], slot[2] - bolt[2])
            assert away == pytest.approx(7, abs=1) and toward > 90
            room = (slot[2] - slot[0]) - (bolt[2] - bolt[0]) - 14
            assert (used[2] - used[0]) / room == pytest.approx(tenth / 10 / 4, rel=0.03)
            point, back = tip(part(root, "pulled"))
            assert (point[0] < back[0]) is nut_left


def test_a_bolt_of_the_first_unit_stands_in_the_middle_of_its_slot() -> None:
    root = parsed(housing_shift_for(replace(SHIFT, pulled=False), "h", PANEL))
    slot, bolt = span(part(root, "slot")), span(part(root, "bolt"))
    assert slot[0] + slot[2] == pytest.approx(bolt[0] + bolt[2], abs=0.2)
    assert "in the middle of their slots" in " ".join(texts(root))


@pytest.mark.parametrize(("pulled", "most", "pinched"), [(True, 4.0, False), (True, 4.1, True), (False, 2.0, False), (False, 2.1, True)])
def test_slots_with_less_room_than_the_travel_are_said_to_pinch(pulled: bool, most: float, pinched: bool) -> None:
    svg = housing_shift_for(replace(SHIFT, pulled=pulled, most=mm(most)), "h", PANEL)
    assert ("pinched" in svg) is pinched


def test_what_is_left_of_the_room_in_the_slots_is_written_and_a_cartridge_has_none() -> None:
    assert "Left after the turn: 2.50\u00a0mm or more." in " ".join(texts(parsed(housing_shift_for(SHIFT, "h", PANEL))))
    bore = housing_shift_for(replace(SHIFT, stands="bore", slot=None), "h", PANEL)
    assert "pull the cartridge toward the nut" in bore and 'data-part="slot"' not in bore


@pytest.mark.parametrize("count", [2, 3, 4])
@pytest.mark.parametrize("foot", [True, False])
def test_bolts_are_drawn_to_their_count_and_the_title_says_the_last_torque(count: int, foot: bool) -> None:
    data = Bolts(count, "M16", ("all to about half", "34.0 to 38.0\u00a0N·m"), foot)  # type: ignore[arg-type]
    root = parsed(bolts_for(data, "b", PANEL))
    assert all(part(root, f"bolt {number}") for number in range(1, count + 1))
    assert "34.0 to 38.0\u00a0N·m" in str(root[0].text) and ("crosswise" in str(root[0].text)) is (count == 4)
    if foot:  # the bolts of a foot stand on both sides of the shaft
        left, _, right, _ = span(part(root, "shaft from above"))
        sides = [middle(part(root, f"bolt {number}")) for number in range(1, count + 1)]
        assert min(sides) < left and max(sides) > right


def test_set_screws_stand_apart_as_typed_and_their_order_leads_back_to_the_first() -> None:
    for apart in range(40, 181, 10):
        root = parsed(screws_for(Screws(2, apart, "M8x1", "12\u00a0N·m"), "s", PANEL))
        angles = [bearing_of(centre_of(part(root, f"screw {number}")), (175, 150)) for number in (1, 2)]
        assert (angles[1] - angles[0]) % 360 == pytest.approx(apart, abs=0.5)
        heads = [bearing_of(points(mark)[0], (175, 150)) for mark in part(root, "order") if "tip" in mark.get("class", "")]
        assert [round((head - angles[0]) % 360) for head in heads] == [apart - 12, 12]


def test_a_torque_that_is_withheld_is_said_to_be_held() -> None:
    for svg in (
        screws_for(Screws(2, 120, "M8", ""), "s", PANEL),
        clamp_for(Clamp(""), "c", PANEL),
        shoulder_for(Shoulder("", "", ""), "h", PANEL),
    ):
        assert "HELD" in str(parsed(svg)[0].text) and any("HELD" in words for words in texts(parsed(svg)))


def test_the_split_of_a_clamp_collar_stands_over_a_slot_of_the_ring_and_is_open() -> None:
    root = parsed(clamp_for(Clamp("22\u00a0N·m", "top"), "c", PANEL))
    slots = [centre_of([mark]) for mark in part(root, "slot")]
    assert any(x == pytest.approx(175, abs=0.2) and y < 166 for x, y in slots)
    collar = [x for x, y in points(part(root, "collar")[0]) if y < 100]
    assert min(abs(x - 175) for x in collar) > 4
    assert "A gap stays in the split. Closed: stop." in texts(root)


@pytest.mark.parametrize(
    ("rings", "nut", "on_from", "kinds"),
    [
        (1, "drive end", "drive end", ["seal", "ring", "bearing", "nut", "ring", "seal"]),
        (1, "far end", "drive end", ["seal", "ring", "nut", "bearing", "ring", "seal"]),
        (2, "", "drive end", ["seal", "ring", "ring", "bearing", "ring", "ring", "seal"]),
        (0, "far end", "far end", ["seal", "bearing", "nut", "seal"]),
    ],
)
@LAYOUTS
def test_seals_and_rings_go_on_before_the_bearing_from_the_end_it_comes_on(
    layout: Layout, rings: int, nut: str, on_from: str, kinds: list[str]
) -> None:
    data = Seals(rings, ENDS, on_from, nut, (mm(3), mm(1)))
    assert [kind for kind, _ in order(data)] == kinds
    for first_left in (True, False):
        root = parsed(seals_for(replace(data, first_left=first_left), "s", layout))
        across = [middle_of(part(root, f"{kind} {number}")) for number, kind in enumerate(kinds, 1)]
        from_left = (on_from == ENDS[0]) is first_left
        assert across == sorted(across, reverse=from_left)  # the first to go on ends up farthest in
        point, back = tip(part(root, "on from"))
        assert (point[0] > back[0]) is from_left


def test_a_free_bearing_has_its_room_to_scale_and_a_fixed_one_is_filled_with_rings() -> None:
    for first, second in ((3, 3), (1, 3), (4, 0.5)):
        for first_left in (True, False):
            root = parsed(seals_for(Seals(0, ENDS, "drive end", "", (mm(first), mm(second)), first_left=first_left), "s", PANEL))
            bore, outer = points(part(root, "bore")[0]), span(part(root, "outer ring in bore"))
            left, right = outer[0] - bore[1][0], bore[4][0] - outer[2]
            assert left / right == pytest.approx((first / second) if first_left else (second / first), rel=0.05)
    fixed = parsed(seals_for(replace(SEALS, rings=2), "s", PANEL))
    assert len(part(fixed, "ring in bore")) == 4 and "Fixed" in str(fixed[0].text)


def test_a_heated_ring_stands_at_the_shoulder_with_the_sensor_on_its_inner_ring() -> None:
    root = parsed(shoulder_for(Shoulder("103\u00a0°C", "110\u00a0°C", "0.03\u00a0mm"), "h", PANEL))
    inner, outer, face = (span(part(root, name)) for name in ("inner ring", "outer ring", "shoulder"))
    assert inner[2] == pytest.approx(face[0]) and outer[2] == pytest.approx(face[0])
    sensor = centre_of([mark for mark in part(root, "sensor") if mark.get("cx")])
    top = span(part(root, "inner ring")[:1])
    assert top[0] <= sensor[0] <= top[2] and abs(sensor[1] - top[1]) < 14
    point, back = tip(part(root, "push"))
    assert point[0] > back[0] and point[0] <= inner[0]
    blade = points(part(root, "blade")[0])
    assert all(x == pytest.approx(face[0]) for x, _ in blade)
    assert "103\u00a0°C" in str(root[0].text) and "Never over 110\u00a0°C." in texts(root)


EVERY = [
    (screws_for, Screws(2, 120, LONG, UNBROKEN)),
    (screws_for, Screws(1, 0, "", "")),
    (clamp_for, Clamp(LONG, UNBROKEN)),
    (shoulder_for, Shoulder(LONG, UNBROKEN, LONG)),
    (seals_for, Seals(2, (LONG, UNBROKEN), UNBROKEN, UNBROKEN, None, LONG)),
    (seals_for, Seals(0, ENDS, "far end", "", (mm(3), mm(0)))),
    (seals_for, SEALS),
    (flange_gap_for, replace(GAP, least=None, frame="")),
    (flange_gap_for, replace(GAP, bolts=2, gap=LONG, nut_toward=UNBROKEN)),
    (housing_shift_for, SHIFT),
    (housing_shift_for, replace(SHIFT, most=mm(9), left=LONG, toward=UNBROKEN, nut_left=False)),
    (bolts_for, Bolts(2, LONG, (UNBROKEN, LONG), True)),
    (nut_turn_for, NutTurn(18, 1.2, 1.4, UNBROKEN, LONG, "left", True)),
]


@LAYOUTS
@pytest.mark.parametrize(("draw", "data"), EVERY, ids=range(len(EVERY)))
def test_words_stay_inside_at_the_longest_and_the_alternative_tells(draw, data, layout: Layout) -> None:  # type: ignore[no-untyped-def]
    assert_told(draw(data, "d", layout), layout)


def middle_of(marks: list) -> float:  # type: ignore[type-arg]
    left, _, right, _ = span(marks)
    return (left + right) / 2


def centre_of(marks: list) -> tuple[float, float]:  # type: ignore[type-arg]
    left, top, right, bottom = span(marks)
    return (left + right) / 2, (top + bottom) / 2
