"""The drawing of a shaft shows what its values say: sides, ways, scales; and its words fit, whatever the plant's names are."""

from __future__ import annotations

import re
from dataclasses import replace

import pytest

from generator.site.drawings.pen import WIDE, Layout
from generator.site.drawings.shaft import shaft_for
from generator.site.drawings.strip import Carried, Float, Growth, Section, Strip, Support
from tests.site.drawn import ENDS, LAYOUTS, LONG, SVG, UNBROKEN, assert_words_fit, boxes, middle, mm, parsed, part, points, texts, tip

FIXED = Support("A", 250, "fixed", "HELD: putting on", held=True, lock="nut", lock_toward="first")
FREE = Support("B", 2110, "free", lock="nut", lock_toward="second", float=Float(mm(1), mm(3)))
SCREW = Strip(
    "Screw shaft", ENDS, (Section(160, 60), Section(2200, 75)), (FIXED, FREE),
    (Carried("sprocket", 60, "chain wheel", 40, 310), Carried("flights", 1180, "screw flights", 1500, 200)),
    (Growth(250, 2110, mm(0.11)),), "clockwise", "walkway",
)  # fmt: skip
MIRRORED = replace(SCREW, first_end_left=False)
UPRIGHT = replace(SCREW, upright=True, ends=("top", "bottom"))


@LAYOUTS
def test_a_nut_is_drawn_on_the_side_of_the_bearing_it_is_on(layout: Layout) -> None:
    root = parsed(shaft_for(SCREW, "s", layout))
    assert middle(part(root, "nut of A")) < middle(part(root, "foot of A"))
    assert middle(part(root, "nut of B")) > middle(part(root, "foot of B"))


@LAYOUTS
def test_seen_from_the_other_side_everything_along_the_shaft_is_mirrored(layout: Layout) -> None:
    root = parsed(shaft_for(MIRRORED, "s", layout))
    assert middle(part(root, "foot of B")) < middle(part(root, "foot of A"))
    assert middle(part(root, "nut of A")) > middle(part(root, "foot of A"))
    assert middle(part(root, "turning")) > middle(part(root, "nut of A"))


@LAYOUTS
def test_the_first_end_of_a_standing_shaft_is_at_the_top(layout: Layout) -> None:
    root = parsed(shaft_for(UPRIGHT, "s", layout))
    assert middle(part(root, "turning"), 1) < middle(part(root, "nut of A"), 1) < middle(part(root, "foot of A"), 1)
    assert middle(part(root, "foot of A"), 1) < middle(part(root, "foot of B"), 1) < middle(part(root, "nut of B"), 1)


@LAYOUTS
def test_a_nut_has_a_thread_and_a_collar_has_none(layout: Layout) -> None:
    threaded = part(parsed(shaft_for(SCREW, "s", layout)), "nut of A")
    plain = part(parsed(shaft_for(replace(SCREW, supports=(replace(FIXED, lock="collar"), FREE)), "s", layout)), "collar of A")
    assert sum(mark.get("class") == "dim" for mark in threaded) == 4
    assert not any(mark.get("class") == "dim" for mark in plain)


# Looking along from the first end, clockwise takes the top to the right hand. With that end at the left the right hand is on
# the onlooker's side, so the near side goes down; with it at the right the near side goes up; from above it goes to the left.
# Geometry; no source.
@pytest.mark.parametrize(
    ("strip", "turns", "axis", "sign"),
    [
        (SCREW, "clockwise", 1, 1),
        (SCREW, "anticlockwise", 1, -1),
        (MIRRORED, "clockwise", 1, -1),
        (MIRRORED, "anticlockwise", 1, 1),
        (UPRIGHT, "clockwise", 0, -1),
        (UPRIGHT, "anticlockwise", 0, 1),
    ],
)
def test_the_near_side_goes_the_way_the_shaft_turns(strip: Strip, turns: str, axis: int, sign: int) -> None:
    root = parsed(shaft_for(replace(strip, turns=turns), "s", WIDE))  # type: ignore[arg-type]
    point, back = tip(part(root, "turning"))
    assert (point[axis] - back[axis]) * sign > 0


def test_a_shaft_that_turns_both_ways_has_two_heads_and_one_not_stated_has_none() -> None:
    both_ways = parsed(shaft_for(replace(SCREW, turns="both ways"), "s", WIDE))
    assert sum("tip" in mark.get("class", "") for mark in part(both_ways, "turning")) == 2
    unstated = shaft_for(replace(SCREW, turns=""), "s", WIDE)
    assert 'data-part="turning"' not in unstated and "clockwise" not in unstated


@LAYOUTS
@pytest.mark.parametrize(("strip", "before", "after"), [(SCREW, 1, 3), (MIRRORED, 3, 1)], ids=["first end left", "first end right"])
def test_the_room_to_each_stop_is_the_float_by_the_bar_under_the_drawing(layout: Layout, strip: Strip, before: float, after: float) -> None:
    root = parsed(shaft_for(strip, "s", layout))
    bar = next(path for path in root.iter(f"{SVG}path") if path.get("data-float-scale"))
    length = re.search(r"h([\d.]+)", bar.get("d", ""))
    assert length
    per_mm = float(length[1]) / float(bar.get("data-float-scale", "nan"))
    left, right = part(root, "stops of B")
    foot = [x for x, _ in points(part(root, "foot of B")[0])]
    assert min(foot) - max(x for x, _ in points(left)) == pytest.approx(before * per_mm, abs=0.15)
    assert min(x for x, _ in points(right)) - max(foot) == pytest.approx(after * per_mm, abs=0.15)


def test_the_float_is_written_under_the_side_it_is_on() -> None:
    for strip, left, right in ((SCREW, "1.00\u00a0mm", "3.00\u00a0mm"), (MIRRORED, "3.00\u00a0mm", "1.00\u00a0mm")):
        root = parsed(shaft_for(strip, "s", WIDE))
        where = {box[4]: box[0] for box in boxes(root, WIDE)}
        assert where[left] < where[right]
        assert f"{left} left, {right} right" in texts(root)


def test_an_even_float_is_said_once() -> None:
    even = replace(FREE, float=Float(mm(0.2), mm(0.2)))
    assert "0.20\u00a0mm each way" in texts(parsed(shaft_for(replace(SCREW, supports=(FIXED, even)), "s", WIDE)))


def test_a_free_bearing_without_a_stated_float_has_no_stops() -> None:
    drawn = shaft_for(replace(SCREW, supports=(FIXED, replace(FREE, float=None))), "s", WIDE)
    assert 'data-part="stops of B"' not in drawn and "float not stated" in drawn


@LAYOUTS
def test_the_fixed_foot_is_solid_and_the_free_one_open(layout: Layout) -> None:
    root = parsed(shaft_for(SCREW, "s", layout))
    assert part(root, "foot of A")[0].get("class") == "solid"
    assert part(root, "foot of B")[0].get("class") == "part"


@pytest.mark.parametrize(
    ("strip", "start", "end", "by", "right", "words"),
    [
        (SCREW, 250, 2110, 0.11, True, "grows 0.11\u00a0mm"),
        (SCREW, 2110, 250, 0.11, False, "grows 0.11\u00a0mm"),
        (SCREW, 250, 2110, -0.3, False, "shrinks 0.30\u00a0mm"),
        (MIRRORED, 250, 2110, 0.11, False, "grows 0.11\u00a0mm"),
    ],
)
def test_growth_goes_away_from_where_the_shaft_is_held_and_shrinking_toward_it(
    strip: Strip, start: float, end: float, by: float, right: bool, words: str
) -> None:
    root = parsed(shaft_for(replace(strip, growths=(Growth(start, end, mm(by)),)), "s", WIDE))
    point, back = tip(part(root, "growth"))
    assert (point[0] > back[0]) is right
    assert words in texts(root)


def test_bearings_stand_to_scale_and_the_drawing_says_where_they_do_not() -> None:
    three = (FIXED, replace(FREE, letter="B", at=1180), replace(FREE, letter="C"))
    root = parsed(shaft_for(replace(SCREW, supports=three), "s", WIDE))
    a, b, c = (middle(part(root, f"foot of {letter}")) for letter in "ABC")
    assert b - a == pytest.approx(c - b, abs=0.2)  # 250, 1180, 2110 mm
    assert not any("one scale" in words for words in texts(root))
    close = (FIXED, replace(FREE, at=260), replace(FREE, letter="C"))
    assert "Distances are not drawn to one scale." in " ".join(texts(parsed(shaft_for(replace(SCREW, supports=close), "s", WIDE))))


def test_the_distance_between_bearings_is_written() -> None:
    assert "1860\u00a0mm" in texts(parsed(shaft_for(SCREW, "s", WIDE)))


@LAYOUTS
def test_steps_of_the_shaft_are_drawn(layout: Layout) -> None:
    root = parsed(shaft_for(SCREW, "s", layout))
    paths = [points(path) for path in root.iter(f"{SVG}path") if path.get("class") == "part"]
    thin, thick = paths[0], paths[1]
    heights = [max(y for _, y in one) - min(y for _, y in one) for one in (thin, thick)]
    assert heights[0] / heights[1] == pytest.approx(60 / 75, rel=0.02)


@LAYOUTS
@pytest.mark.parametrize("strip", [SCREW, MIRRORED, UPRIGHT], ids=["lying", "mirrored", "standing"])
def test_each_bearing_is_a_link_large_enough_to_touch_with_its_words_in_it(layout: Layout, strip: Strip) -> None:
    root = parsed(shaft_for(strip, "s", layout))
    links = {link.get("href"): link for link in root.iter(f"{SVG}a")}
    assert set(links) == {"#A", "#B"}
    for link in links.values():
        field = link.find(f"{SVG}rect")
        assert field is not None and float(field.get("height", 0)) >= 48 and float(field.get("width", 0)) >= 48
    words = [" ".join(texts_in) for texts_in in (texts(links["#A"]), texts(links["#B"]))]
    assert words[0] == "A fixed HELD: putting on" and words[1].startswith("B free")
    assert len(links["#A"].findall(f"{SVG}rect")) == 2 and len(links["#B"].findall(f"{SVG}rect")) == 1  # hatched where held


@LAYOUTS
def test_fields_of_bearings_stay_apart_for_a_gloved_finger(layout: Layout) -> None:
    many = tuple(replace(FREE, letter=letter, at=250 * (i + 1)) for i, letter in enumerate("ABCDEFGH"))
    root = parsed(shaft_for(replace(SCREW, supports=many), "s", layout))
    fields = [rect for link in root.iter(f"{SVG}a") for rect in link.findall(f"{SVG}rect") if rect.get("class") == "field"]
    edges = [tuple(float(rect.get(key, "nan")) for key in ("x", "y", "width", "height")) for rect in fields]
    for i, (x, y, width, height) in enumerate(edges):
        for x2, y2, width2, height2 in edges[i + 1 :]:
            assert x2 - (x + width) > 11.8 or x - (x2 + width2) > 11.8 or y2 - (y + height) > 11.8 or y - (y2 + height2) > 11.8


def test_the_text_alternative_says_what_the_drawing_says() -> None:
    root = parsed(shaft_for(SCREW, "INT-05 head", WIDE))
    title, description = root.find(f"{SVG}title"), root.find(f"{SVG}desc")
    assert title is not None and description is not None
    assert root.get("aria-labelledby") == f"{title.get('id')} {description.get('id')}"
    assert title.text == "Screw shaft, seen from the walkway: A fixed, HELD: putting on; B free, 1.00\u00a0mm left, 3.00\u00a0mm right"
    assert "Turns clockwise, looking along from the drive end." in str(description.text)
    assert "A: nut toward the drive end." in str(description.text)
    assert "B may move 1.00\u00a0mm toward the drive end and 3.00\u00a0mm toward the far end." in str(description.text)
    assert "It grows 0.11\u00a0mm toward the far end." in str(description.text)


ODD = [
    SCREW,
    replace(SCREW, ends=(LONG, LONG), seen_from=LONG),
    replace(SCREW, carried=tuple(Carried("pulley", 300 * i, LONG) for i in range(7))),
    replace(SCREW, carried=(Carried("fan", 2200, UNBROKEN, 10, 3000), Carried("coupling", 0, UNBROKEN))),
    replace(SCREW, supports=(FIXED,)),
    replace(SCREW, supports=tuple(replace(FREE, letter=one, at=100 + 2 * i) for i, one in enumerate("ABCDEFGH"))),
    replace(SCREW, supports=tuple(replace(FREE, letter=one, at=2200) for one in "WXMN")),
    replace(SCREW, supports=tuple(replace(FIXED, letter=one, at=250 * (i + 1), second_line=LONG) for i, one in enumerate("ABCDEFGH"))),
    replace(SCREW, supports=(FIXED, replace(FREE, float=Float(mm(0), mm(0))))),
    replace(SCREW, supports=(FIXED, replace(FREE, float=Float(mm(1000), mm(0.001))))),
    replace(SCREW, growths=(Growth(250, 2110, mm(1.3)), Growth(2110, 250, mm(-0.6)), Growth(250, 260, mm(0.1)))),
    replace(SCREW, sections=(Section(10, 400), Section(30000, 12)), turns="both ways"),
]


@LAYOUTS
@pytest.mark.parametrize("upright", [False, True], ids=["lying", "standing"])
@pytest.mark.parametrize("strip", ODD, ids=range(len(ODD)))
def test_words_stay_inside_and_off_each_other_for_odd_but_legal_shafts(strip: Strip, upright: bool, layout: Layout) -> None:
    assert_words_fit(shaft_for(replace(strip, upright=upright), "s", layout), layout)
    assert_words_fit(shaft_for(replace(strip, upright=upright, first_end_left=False), "s", layout), layout)


@LAYOUTS
def test_words_of_the_plant_stay_words(layout: Layout) -> None:
    hostile = "\"><script>alert('x')</script>&"
    strip = replace(SCREW, name=hostile, ends=(hostile, hostile), seen_from=hostile, carried=(Carried("part", 100, hostile),),
                    supports=(replace(FIXED, letter="A", second_line=hostile, anchor=hostile),))  # fmt: skip
    svg = shaft_for(strip, hostile, layout)
    root = parsed(svg)
    assert "<script" not in svg
    assert next(root.iter(f"{SVG}a")).get("href") == "#" + hostile
