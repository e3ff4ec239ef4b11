"""The drawings of where a hand goes: blade, micrometer, grease gun, jack; each on the right side, for every case."""

from __future__ import annotations

from dataclasses import replace
from itertools import pairwise, product

import pytest

from generator.site.drawings.feeler import Feeler, Reading, feeler_for
from generator.site.drawings.fitting import Fitting, fitting_for
from generator.site.drawings.foot import Foot, foot_for
from generator.site.drawings.held_shaft import HeldShaft, held_shaft_for
from generator.site.drawings.pen import NARROW, PANEL, Layout
from generator.site.drawings.reading_places import ReadingPlaces, reading_places_for
from tests.site.drawn import ENDS, LONG, UNBROKEN, assert_told, bearing_of, circles, middle, parsed, part, points, span, texts, tip

LAYOUTS = pytest.mark.parametrize("layout", [PANEL, NARROW], ids=["wide", "narrow"])
PLACES = ReadingPlaces("64.926\u00a0mm", "65.000\u00a0mm", "0.013\u00a0mm", ENDS)
FEELER = Feeler(
    (Reading("bench", ("Before: 0.110 to 0.140\u00a0mm.",)), Reading("hanging", ("Left: never under 0.050\u00a0mm.",)), Reading("seated"))
)
HELD = HeldShaft(((300, 80), (1300, 125), (1600, 80)), (("B", 1400),), ("A", 200), 320, "214\u00a0kg", "267\u00a0kg", ENDS, "320\u00a0mm")
FITTING = Fitting("piped outside the guard", "open seals", "24 strokes, 32.4\u00a0g", False)


# common practice, no source: a ring that stands on a bench or in its base carries its rollers below, so the gap is at the top;
# a ring that hangs on a held shaft rests on the rollers above, so the gap is at the bottom
@LAYOUTS
@pytest.mark.parametrize(("lies", "top"), [("bench", True), ("hanging", False), ("seated", True)])
def test_the_blade_is_on_the_side_free_of_load_and_the_rollers_touch_on_the_other(layout: Layout, lies: str, top: bool) -> None:
    root = parsed(feeler_for(Feeler((Reading(lies),)), "f", layout))  # type: ignore[arg-type]
    outer, race = circles(part(root, "outer ring"))
    rollers = [one for one in circles(part(root, lies)) if one[2] < race[2] / 3]
    blade = points(part(root, "blade")[0])
    assert all((y < outer[1] - race[2] / 2) is top for _, y in blade)
    free = [race[2] - ((x - race[0]) ** 2 + (y - race[1]) ** 2) ** 0.5 - r for x, y, r in rollers]
    below = [gap for gap, (_, y, _) in zip(free, rollers, strict=True) if (y > outer[1]) is top]
    above = [gap for gap, (_, y, _) in zip(free, rollers, strict=True) if (y > outer[1]) is not top]
    assert min(free) > -0.3 and min(below) < 0.8 and max(above) > 4
    where = "blade at the top" if top else "blade at the bottom"
    assert where in str(root[0].text)


@LAYOUTS
@pytest.mark.parametrize("rows", [1, 2])
def test_the_blade_lies_between_roller_and_outer_ring_in_every_row_and_goes_along_it(layout: Layout, rows: int) -> None:
    root = parsed(feeler_for(replace(FEELER, rows=rows), "f", layout))
    blades = [points(part(root, f"blade {number}")[0]) for number in range(1, rows + 1)]
    for blade in blades:
        across, high = (max(p[axis] for p in blade) - min(p[axis] for p in blade) for axis in (0, 1))
        assert across > 3 * high  # along the shaft, not round it
    race = sorted(points(part(root, "outer ring cut")[0])[:21])
    for number, blade in enumerate(blades, 1):
        left, _, right, _ = span(part(root, f"roller {number}"))
        under = [(x, y) for x, y in blade if left + 3 < x < right - 3]
        assert len(under) > 3
        for x, y in under:
            assert level(points(part(root, f"roller {number}")[0])[2:], x) < y - 0.5 and y + 0.5 < level(race, x)
    if rows == 2:
        (left, _), (right, _) = blades[0][0], blades[1][0]
        assert left < right
    words = " ".join(texts(root))
    assert ("Both rows" in words) is (rows == 2) and "Never roll a roller" in words


def test_figures_stand_by_the_reading_they_belong_to() -> None:
    root = parsed(feeler_for(FEELER, "f", PANEL))
    first = [float(mark.get("x", 0)) for mark in root.iter() if "".join(mark.itertext()).startswith("Before:") and mark.get("x")]
    second = [float(mark.get("x", 0)) for mark in root.iter() if "".join(mark.itertext()).startswith("Left:") and mark.get("x")]
    assert first[0] < PANEL.width / 4 < second[0] < PANEL.width / 2


@LAYOUTS
@pytest.mark.parametrize("first_left", [True, False])
def test_nine_places_are_drawn_on_the_seat_place_one_nearest_the_first_end(layout: Layout, first_left: bool) -> None:
    root = parsed(reading_places_for(replace(PLACES, first_left=first_left), "r", layout))
    seat = span(part(root, "seat"))
    at = [middle(part(root, f"place {number}")) for number in (1, 2, 3)]
    assert all(seat[0] < x < seat[2] for x in at) and at == sorted(at, reverse=not first_left)
    assert at[1] == pytest.approx((seat[0] + seat[2]) / 2, abs=0.2)
    assert min(at) - seat[0] < (seat[2] - seat[0]) / 5 and seat[2] - max(at) < (seat[2] - seat[0]) / 5
    (x, y, _), *_ = circles(part(root, "section"))
    angles = [bearing_of(tip(part(root, f"direction {letter}"))[1], (x, y)) % 180 for letter in "abc"]
    assert [round((angle - angles[0]) % 180) for angle in angles] == [0, 60, 120]
    for letter in "abc":  # two faces of the micrometer, across from each other
        one, other = [points(mark)[0] for mark in part(root, f"direction {letter}") if "tip" in mark.get("class", "")]
        assert (one[0] + other[0]) / 2 == pytest.approx(x, abs=0.2) and (one[1] + other[1]) / 2 == pytest.approx(y, abs=0.2)


def test_limits_are_both_written_and_none_is_held() -> None:
    assert {"Most 65.000\u00a0mm", "Least 64.926\u00a0mm"} <= set(texts(parsed(reading_places_for(PLACES, "r", PANEL))))
    none = parsed(reading_places_for(replace(PLACES, least="", most="", spread=""), "r", PANEL))
    assert "No limits: HELD." in texts(none) and "HELD" in str(none[0].text)


@pytest.mark.parametrize(
    ("place", "inside", "piped"),
    [
        ("inside the guard", True, False),
        ("outside the guard", False, False),
        ("piped outside the guard", False, True),
        ("piped out", False, True),
    ],
)
def test_the_fitting_is_drawn_where_it_is_and_the_gun_goes_to_it(place: str, inside: bool, piped: bool) -> None:
    root = parsed(fitting_for(replace(FITTING, place=place), "f", PANEL))
    head = span(part(root, "fitting")[-1:])
    if place != "piped out":
        left, _, right, _ = span(part(root, "guard"))
        assert (left < head[0] and head[2] < right) is inside
    assert (len(part(root, "fitting")) == 2) is piped
    point, _ = tip(part(root, "gun"))
    assert head[0] - 1 <= point[0] <= head[2] + 1 and abs(point[1] - head[1]) < 8


@pytest.mark.parametrize(("purge", "ways"), [("open seals", 4), ("wipe and weigh", 4), ("relief plug", 1), ("counted strokes", 0), ("", 0)])
def test_old_grease_leaves_along_the_shaft_at_open_seals_or_where_the_plug_was(purge: str, ways: int) -> None:
    svg = fitting_for(replace(FITTING, purge=purge), "f", PANEL)
    marks = [mark for group in parsed(svg).iter() if group.get("data-part") == "way out" for mark in group]
    heads = [points(mark) for mark in marks if mark.get("d") and "tip" in mark.get("class", "")]
    assert len(heads) == ways
    for point, one, other in heads:
        assert abs(point[1] - (one[1] + other[1]) / 2) < 0.2  # level: along the shaft
    assert ("The file does not say how old grease leaves." in " ".join(texts(parsed(svg)))) is (purge == "")


@pytest.mark.parametrize("running", [True, False])
def test_running_or_stopped_and_strokes_are_said_in_the_title_and_beside(running: bool) -> None:
    root = parsed(fitting_for(replace(FITTING, running=running), "f", NARROW))
    assert ("running" in str(root[0].text)) is running and ("stopped and isolated" in str(root[0].text)) is not running
    assert "24 strokes, 32.4\u00a0g" in texts(root)


@LAYOUTS
@pytest.mark.parametrize("first_left", [True, False])
def test_the_jack_stands_to_the_scale_of_the_shaft(layout: Layout, first_left: bool) -> None:
    for at, other, jack in product((100, 400), (900, 1500), (150, 650, 1200)):
        data = replace(HELD, off=("A", at), supports=(("B", other),), jack=jack, first_left=first_left)
        root = parsed(held_shaft_for(data, "h", layout))
        left, _, right, _ = span(part(root, "shaft"))
        for name, place in (("jack", jack), ("off A", at), ("support B", other)):
            drawn = (middle_of(part(root, name)) - left) / (right - left)
            assert (drawn if first_left else 1 - drawn) == pytest.approx(place / 1600, abs=0.003)


def test_steps_of_the_shaft_are_to_scale_and_the_jack_lifts() -> None:
    root = parsed(held_shaft_for(HELD, "h", PANEL))
    high = [span([mark]) for mark in part(root, "shaft")]
    assert (high[0][3] - high[0][1]) / (high[1][3] - high[1][1]) == pytest.approx(80 / 125, rel=0.01)
    point, back = tip(part(root, "jack"))
    assert point[1] < back[1] and "214\u00a0kg" in str(root[0].text)


def test_a_shaft_that_goes_up_is_held_down_and_no_jack_is_drawn_under_it() -> None:
    here = held_shaft_for(replace(HELD, lifts="here", carries="395\u00a0N"), "h", PANEL)
    point, back = tip(part(parsed(here), "hold down"))
    assert point[1] > back[1] and 'data-part="jack"' not in here and "395\u00a0N" in str(parsed(here)[0].text)
    other = parsed(held_shaft_for(replace(HELD, lifts="other"), "h", PANEL))
    assert middle(part(other, "hold down")) > middle(part(other, "support B"))
    assert part(other, "jack") and any("hold the other end down" in words for words in texts(other))


def test_an_upright_shaft_hangs_or_is_steadied() -> None:
    hung = parsed(held_shaft_for(replace(HELD, upright=True), "h", PANEL))
    point, back = tip(part(hung, "jack"))
    assert point[1] < back[1] and span(part(hung, "off A"))[1] < span(part(hung, "support B"))[1]
    steadied = held_shaft_for(replace(HELD, upright=True, carries="", rated=""), "h", PANEL)
    assert 'data-part="jack"' not in steadied and "weight stays on the other unit" in steadied


@pytest.mark.parametrize("face", [True, False])
def test_the_blade_is_tried_at_the_joint(face: bool) -> None:
    root = parsed(foot_for(Foot("0.05\u00a0mm", "0.046\u00a0mm", face), "f", PANEL))
    top = span(part(root, "frame"))[1]
    point, _ = tip(part(root, "blade"))
    assert abs(point[1] - top) < 5 and "0.05\u00a0mm" in str(root[0].text)
    assert ("Straightedge" in " ".join(texts(root))) is face


EVERY = [
    (feeler_for, FEELER),
    (feeler_for, Feeler((Reading("bench", (LONG, UNBROKEN)),), 1, LONG)),
    (feeler_for, Feeler(tuple(Reading(lies, (LONG, UNBROKEN, "")) for lies in ("bench", "hanging", "seated")))),  # type: ignore[arg-type]
    (reading_places_for, PLACES),
    (reading_places_for, ReadingPlaces(LONG, UNBROKEN, LONG, (UNBROKEN, LONG))),
    *((fitting_for, Fitting(place, purge, LONG, True)) for place in ("inside the guard", "outside the guard", "none", "") for purge in ("relief plug", "")),
    *((held_shaft_for, replace(HELD, carries=LONG, rated=UNBROKEN, ends=(LONG, UNBROKEN), lifts=lifts)) for lifts in ("", "here", "other")),
    (held_shaft_for, replace(HELD, supports=tuple((letter, 200 + i * 100) for i, letter in enumerate("BCDEFG")), off=("A", 150))),
    (held_shaft_for, replace(HELD, upright=True, carries=UNBROKEN, ends=(LONG, LONG))),
    (foot_for, Foot(LONG, UNBROKEN, True)),
    (foot_for, Foot("", "")),
]  # fmt: skip


@LAYOUTS
@pytest.mark.parametrize(("draw", "data"), EVERY, ids=range(len(EVERY)))
def test_words_stay_inside_at_the_longest_and_the_alternative_tells(draw, data, layout: Layout) -> None:  # type: ignore[no-untyped-def]
    assert_told(draw(data, "d", layout), layout)


def middle_of(marks: list) -> float:  # type: ignore[type-arg]
    left, _, right, _ = span(marks)
    return (left + right) / 2


def level(line: list[tuple[float, float]], at: float) -> float:
    """The height of a line through points at a place across."""
    ordered = sorted(line)
    for (x1, y1), (x2, y2) in pairwise(ordered):
        if x1 <= at <= x2:
            return y1 + (y2 - y1) * (at - x1) / (x2 - x1)
    raise AssertionError(f"{at} is not on the line")
