"""The drawings of loads, clearance and life stand to scale and say in words what they show."""

from __future__ import annotations

import re
from dataclasses import replace
from xml.etree import ElementTree

import pytest
from markupsafe import Markup

from generator.site.drawings.bending import bending, bending_for
from generator.site.drawings.bent_shaft import ActingLoad, BentShaft, SupportLoad
from generator.site.drawings.clearance_chain import ClearanceChain, Step, clearance_chain, clearance_chain_for
from generator.site.drawings.curve import Curve, curve, curve_for
from generator.site.drawings.flags import balanced
from generator.site.drawings.pen import NARROW, PANEL, Drawn, Layout
from generator.site.drawings.style import style
from generator.site.drawings.ticks import across, plain, powers, step_over, step_under, written
from generator.site.drawings.words import text_width
from tests.site.drawn import ENDS, LONG, SVG, UNBROKEN, assert_words_fit, boxes, mm, parsed, part, points, texts, tip

LAYOUTS = pytest.mark.parametrize("layout", [PANEL, NARROW], ids=["panel", "narrow"])

A = SupportLoad("A", 250, 12000, "12.0 kN", "6 o'clock", "slope 0.209°")
B = SupportLoad("B", 1750, 4000, "4.0 kN", "6:30 o'clock", "slope 0.167°")
CHAIN = ActingLoad("chain", 100, 8000, "8.0 kN", "7 o'clock")
PULLEY = ActingLoad("pulley", 1000, 8000, "8.0 kN", "6 o'clock")
LINE = ((0, -0.4), (250, 0), (1000, 0.8), (1750, 0), (2000, -0.3))
SHAFT = BentShaft(2000, ((200, 60), (2000, 80)), (A, B), (CHAIN, PULLEY), LINE, mm(0.8), ENDS)

BEFORE = Step("Clearance before mounting", mm(0.11), mm(0.14))
FIT = Step("Driving up takes", mm(0.04), mm(0.06), takes=True)
HEAT = Step("Heat takes", mm(0.01), mm(0.02), takes=True)
LEFT = Step("Clearance left, running", mm(0.03), mm(0.09))
STEPS = ClearanceChain((BEFORE, FIT, HEAT, LEFT), mm(0.02))

LIFE = Curve(
    "Life against load",
    tuple((load, 64000 * (10 / load) ** 3) for load in (5, 8, 10, 14, 20)),
    "load, kN",
    "life, h",
    (Drawn(10, "10\u00a0kN"), Drawn(64000, "64000\u00a0h")),
    Drawn(20000, "20000\u00a0h"),
    log_y=True,
)


def height(marks: list[ElementTree.Element]) -> float:
    ends = [y for mark in marks for _, y in points(mark)]
    return max(ends) - min(ends)


def across_of(marks: list[ElementTree.Element]) -> tuple[float, float]:
    """Left and right of a bar or a line."""
    xs = [x for mark in marks for x, _ in points(mark)]
    for mark in marks:
        if mark.tag == f"{SVG}rect":
            xs += [float(mark.get("x", "nan")), float(mark.get("x", "nan")) + float(mark.get("width", "nan"))]
    return min(xs), max(xs)


def said(svg: Markup) -> tuple[str, str]:
    root = parsed(svg)
    return str(root.findtext(f"{SVG}title")), str(root.findtext(f"{SVG}desc"))


# Bending


@LAYOUTS
def test_bearings_arrows_and_bending_stand_at_their_places(layout: Layout) -> None:
    root = parsed(bending_for(SHAFT, "s", layout))
    left, right = across_of(part(root, "shaft"))
    for name, at in (("force at A", 250), ("force at B", 1750), ("bearing A", 250), ("bearing B", 1750), ("load 1", 100), ("load 2", 1000)):
        x = tip(part(root, name))[0][0] if "bearing" not in name else points(part(root, name)[0])[0][0]
        assert (x - left) / (right - left) == pytest.approx(at / 2000, abs=0.002), name
    assert points(part(root, "bending line")[0])[2][0] == pytest.approx((left + right) / 2, abs=0.2)


@LAYOUTS
def test_arrows_are_as_long_as_their_forces_to_one_scale(layout: Layout) -> None:
    root = parsed(bending_for(SHAFT, "s", layout))
    assert height(part(root, "load 1")) / height(part(root, "force at A")) == pytest.approx(8 / 12, rel=0.01)
    assert height(part(root, "force at B")) / height(part(root, "force at A")) == pytest.approx(4 / 12, rel=0.02)


@LAYOUTS
def test_loads_press_from_above_bearings_hold_from_below_and_one_pressed_the_other_way_points_away(layout: Layout) -> None:
    lifted = replace(B, size=-4000, clock="12 o'clock")
    svg = bending_for(replace(SHAFT, supports=(A, lifted)), "s", layout)
    root = parsed(svg)
    middle = sum(y for _, y in points(part(root, "shaft")[0])) / len(points(part(root, "shaft")[0]))
    (_, load), (_, back) = tip(part(root, "load 1"))
    assert back < load < middle
    (_, held), (_, back) = tip(part(root, "force at A"))
    assert middle < held < back
    (_, away), (_, back) = tip(part(root, "force at B"))
    assert middle < back < away
    assert "B is pressed the other way: its arrow leads away from the shaft." in said(svg)[1]
    assert "the other way" not in said(bending_for(SHAFT, "s", layout))[1]


@LAYOUTS
def test_the_steps_of_the_shaft_are_to_scale(layout: Layout) -> None:
    outline = points(part(parsed(bending_for(SHAFT, "s", layout)), "shaft")[0])
    thin, thick = (outline[-1 - i][1] - outline[i][1] for i in (0, 2))
    assert thin / thick == pytest.approx(60 / 80, rel=0.02)
    assert (outline[1][0] - outline[0][0]) / (outline[3][0] - outline[0][0]) == pytest.approx(200 / 2000, abs=0.002)


@LAYOUTS
def test_bending_is_too_large_by_what_is_said_and_goes_down_the_way_it_bends_most(layout: Layout) -> None:
    svg = bending_for(SHAFT, "s", layout)
    root = parsed(svg)
    drawn = points(part(root, "bending line")[0])
    per_mm = (drawn[-1][0] - drawn[0][0]) / 2000
    times = float(re.findall(r"Bending drawn ([\d.]+) times too large", said(svg)[1])[0])
    assert (drawn[2][1] - drawn[1][1]) / 0.8 / per_mm == pytest.approx(times, rel=0.01)
    assert drawn[2][1] > drawn[1][1] > drawn[0][1]
    mark = next(one for one in part(root, "deepest") if one.tag == f"{SVG}circle")
    assert (float(mark.get("cx", 0)), float(mark.get("cy", 0))) == pytest.approx(drawn[2], abs=0.1)
    assert "0.80\u00a0mm" in texts(root)


def test_the_words_of_a_bent_shaft_give_every_force_its_place_and_way() -> None:
    title, words = said(bending_for(SHAFT, "s", PANEL))
    assert title == "The shaft under its loads: it bends 0.80\u00a0mm. A carries 12.0 kN; B carries 4.0 kN"
    words = words.replace("\u00a0", " ")
    for sentence in (
        "From the drive end to the far end: 2000 mm.",
        "1: chain, at 100 mm: 8.0 kN toward 7 o'clock.",
        "2: pulley, at 1000 mm: 8.0 kN toward 6 o'clock.",
        "A, at 250 mm: 12.0 kN toward 6 o'clock; slope 0.209°.",
        "B, at 1750 mm: 4.0 kN toward 6:30 o'clock; slope 0.167°.",
        "O'clock as seen from the drive end: the way a load pulls, and the way the shaft presses on a bearing.",
        "Arrows are to one scale, the longest 12.0 kN.",
        "It bends most, 0.80 mm, at 1000 mm from the drive end.",
    ):
        assert sentence in words
    assert "upright" not in words
    assert "The shaft stands upright; it is drawn lying." in said(bending_for(replace(SHAFT, upright=True), "s", PANEL))[1]


@LAYOUTS
def test_labels_stand_in_the_order_of_their_arrows_or_in_a_list(layout: Layout) -> None:
    root = parsed(bending_for(SHAFT, "s", layout))
    where = {box[4]: box[0] for box in boxes(root, layout)}
    assert where["chain"] < where["pulley"]
    many = tuple(replace(PULLEY, name=f"roller number {i}", at=200.0 * i) for i in range(1, 9))
    listed = parsed(bending_for(replace(SHAFT, loads=many), "s", layout))
    joined = " ".join(texts(listed)).replace("\u00a0", " ")
    assert all(f"roller number {i}" in joined for i in range(1, 9))
    if layout is NARROW:
        assert "3: roller number 3, at 600 mm: 8.0 kN toward 6 o'clock." in joined
        assert [word for word in texts(listed) if word.isdecimal()] == [str(i) for i in range(1, 9)]


@LAYOUTS
def test_two_loads_at_one_place_are_set_side_by_side(layout: Layout) -> None:
    root = parsed(bending_for(replace(SHAFT, loads=(PULLEY, replace(PULLEY, name="belt"))), "s", layout))
    one, other = (tip(part(root, f"load {i}"))[0][0] for i in (1, 2))
    left, right = across_of(part(root, "shaft"))
    assert other - one == pytest.approx(16, abs=0.1)
    assert (one + other) / 2 == pytest.approx((left + right) / 2, abs=0.1)


@LAYOUTS
def test_a_shaft_without_loads_without_bending_or_with_little_force_is_said(layout: Layout) -> None:
    still = replace(SHAFT, loads=(), line=((0, 0), (2000, 0)), deepest=mm(0), supports=(replace(A, size=0, words="0 N", clock=""),))
    svg = bending_for(still, "s", layout)
    _, words = said(svg)
    assert "No load is shown." in words and "It does not bend." in words and "A dot: too small a force for an arrow." in words
    assert "times" not in words and "o'clock" not in words.lower() and 'data-part="load 1"' not in svg
    unknown = bending_for(replace(SHAFT, line=(), deepest=None), "s", layout)
    assert 'data-part="bending line"' not in unknown and "bends" not in said(unknown)[1]
    assert said(unknown)[0].startswith("The shaft under its loads. A carries")
    small = bending_for(replace(SHAFT, supports=(A, replace(B, size=-40))), "s", layout)
    assert "B is pressed the other way." in said(small)[1] and part(parsed(small), "force at B")[0].tag == f"{SVG}circle"


@LAYOUTS
@pytest.mark.parametrize(("diameter", "own"), [(80, False), (3000, True), (5, True)])
def test_diameters_with_a_scale_of_their_own_are_said(layout: Layout, diameter: float, own: bool) -> None:
    svg = bending_for(replace(SHAFT, sections=((2000, diameter),)), "s", layout)
    outline = points(part(parsed(svg), "shaft")[0])
    thick, long = height(part(parsed(svg), "shaft")), outline[1][0] - outline[0][0]
    assert ("Diameters are drawn to a scale of their own." in said(svg)[1]) is (abs(thick / long / (diameter / 2000) - 1) > 0.05)
    assert own is False or abs(thick / long / (diameter / 2000) - 1) > 0.05


# Clearance


@LAYOUTS
def test_bands_and_what_is_taken_are_to_one_scale(layout: Layout) -> None:
    root = parsed(clearance_chain_for(STEPS, "c", layout))
    first, last = across_of(part(root, "band 1")), across_of(part(root, "band 4"))
    per_mm = (first[1] - last[0]) / (0.14 - 0.03)
    assert (first[1] - first[0]) / per_mm == pytest.approx(0.03, abs=0.0003)
    assert (last[1] - last[0]) / per_mm == pytest.approx(0.06, abs=0.0003)
    limit = points(part(root, "limit")[0])[0][0]
    assert (last[0] - limit) / per_mm == pytest.approx(0.01, abs=0.0003)


@LAYOUTS
def test_the_most_is_taken_of_the_least_and_the_least_of_the_most(layout: Layout) -> None:
    assert STEPS.levels == [pytest.approx(one) for one in ((0.11, 0.14), (0.05, 0.10), (0.03, 0.09), (0.03, 0.09))]
    root = parsed(clearance_chain_for(STEPS, "c", layout))
    first, last = across_of(part(root, "band 1")), across_of(part(root, "band 4"))
    worst, best = (tip(part(root, f"{case} 2"))[0][0] for case in ("worst", "best"))
    per_mm = (first[1] - last[0]) / 0.11
    assert (first[0] - worst) / per_mm == pytest.approx(0.06, abs=0.0005)
    assert (first[1] - best) / per_mm == pytest.approx(0.04, abs=0.0005)
    assert tip(part(root, "worst 3"))[0][0] == pytest.approx(last[0], abs=0.2)
    assert tip(part(root, "best 3"))[0][0] == pytest.approx(last[1], abs=0.2)


@pytest.mark.parametrize(
    ("least", "most", "limit", "verdict", "solid"),
    [
        (0.03, 0.09, 0.02, "Good: at worst 0.03\u00a0mm is left; the least allowed is 0.02\u00a0mm.", False),
        (0.02, 0.09, 0.02, "Good: at worst 0.02\u00a0mm is left; the least allowed is 0.02\u00a0mm.", False),
        (0.01, 0.09, 0.02, "TOO SMALL at worst: 0.01\u00a0mm is left; the least allowed is 0.02\u00a0mm.", True),
        (-0.03, 0.01, 0.02, "TOO SMALL: even at best 0.01\u00a0mm is left; the least allowed is 0.02\u00a0mm.", True),
        (0.03, 0.09, None, "Left: 0.03\u00a0to\u00a00.09\u00a0mm.", False),
    ],
)
def test_what_is_left_is_judged(least: float, most: float, limit: float | None, verdict: str, solid: bool) -> None:
    chain = ClearanceChain((BEFORE, FIT, Step("left", mm(least), mm(most))), None if limit is None else mm(limit))
    svg = clearance_chain_for(chain, "c", PANEL)
    title, words = said(svg)
    assert verdict in title and verdict in words and verdict.split(":")[0] in " ".join(texts(parsed(svg)))
    assert ('data-part="under the limit"' in svg) is solid
    assert ("Solid: less than is allowed." in words) is solid
    assert ("preload" in words) is (least < 0)
    assert ('data-part="limit"' in svg) is (limit is not None)


def test_every_step_is_said_with_its_band() -> None:
    _, words = said(clearance_chain_for(STEPS, "c", PANEL))
    words = words.replace("\u00a0", " ")
    assert "Clearance before mounting: 0.11 to 0.14 mm. Driving up takes: 0.04 to 0.06 mm. Heat takes: 0.01 to 0.02 mm." in words
    assert Step("Heat takes", mm(0.01), mm(0.01), takes=True).line == "Heat takes: 0.01\u00a0mm"
    assert replace(BEFORE, most=Drawn(0.14, "140\u00a0µm")).band == "0.11\u00a0mm\u00a0to\u00a0140\u00a0µm"


# Curves


@LAYOUTS
def test_the_working_point_and_the_curve_are_to_one_scale(layout: Layout) -> None:
    root = parsed(curve_for(LIFE, "k", layout))
    line = points(part(root, "curve")[0])
    here = part(root, "here")[0]
    assert (float(here.get("cx", 0)), float(here.get("cy", 0))) == pytest.approx(line[2], abs=0.1)
    # eight times the life is three times the height of twice the life
    assert (line[2][1] - line[0][1]) == pytest.approx(line[4][1] - line[2][1], abs=0.2)
    assert (line[2][0] - line[0][0]) / (line[4][0] - line[0][0]) == pytest.approx(5 / 15, abs=0.002)


@LAYOUTS
def test_an_even_scale_is_even(layout: Layout) -> None:
    root = parsed(curve_for(replace(LIFE, log_y=False, points=((0, 0), (10, 64000), (20, 32000))), "k", layout))
    line = points(part(root, "curve")[0])
    assert (line[0][1] - line[2][1]) / (line[0][1] - line[1][1]) == pytest.approx(0.5, abs=0.01)
    level = points(next(one for one in part(root, "needed") if one.tag == f"{SVG}path"))[0][1]
    assert (line[0][1] - level) / (line[0][1] - line[1][1]) == pytest.approx(20000 / 64000, abs=0.01)
    assert "powers of ten" not in " ".join(texts(root))


@pytest.mark.parametrize(
    ("needed", "verdict"),
    [
        (20000, "Enough: 64000\u00a0h here, at 10\u00a0kN. Needed: 20000\u00a0h."),
        (64000, "Enough: 64000\u00a0h here, at 10\u00a0kN. Needed: 64000\u00a0h."),
        (80000, "NOT ENOUGH: 64000\u00a0h here, at 10\u00a0kN. Needed: 80000\u00a0h."),
        (None, "Here: 10\u00a0kN, 64000\u00a0h."),
    ],
)
def test_life_is_judged_where_the_machine_works(needed: float | None, verdict: str) -> None:
    svg = curve_for(replace(LIFE, needed=None if needed is None else Drawn(needed, f"{needed}\u00a0h")), "k", PANEL)
    title, words = said(svg)
    assert title == f"Life against load. {verdict}"
    assert verdict in words and "Across: load, kN. Upward: life, h. The curve goes from 512000 at 5 to 8000 at 20." in words
    assert ('data-part="needed"' in svg) is (needed is not None)


def test_steps_of_scales_are_one_two_and_five() -> None:
    assert [step_over(one) for one in (1, 1.1, 2.1, 5.1, 0.013)] == [1, 2, 5, 10, 0.02]
    assert [step_under(one) for one in (1, 1.9, 4.9, 9.9, 0.013)] == [1, 1, 2, 5, 0.01]
    assert powers(2000, 20000) == [2000, 5000, 10000, 20000]
    assert powers(20, 5e6) == [100, 1000, 1e4, 1e5, 1e6]
    assert len(powers(1e-9, 1e30)) <= 7
    assert across(0, 0.14, 500, 20) == ([0, 0.05, 0.1], 0.05)
    assert [written(one, 0.05) for one in (0.0, -0.05, 0.1)] == ["0", "\u22120.05", "0.10"]
    assert [plain(one) for one in (0, 0.0123456, 512000, -1.5)] == ["0", "0.0123", "512000", "\u22121.5"]


def test_labels_give_way_to_both_sides() -> None:
    assert balanced([(50, 10), (50, 10)], 0, 100) == [45, 55]
    assert balanced([(1, 10), (2, 10)], 0, 100) == [5, 15]
    assert balanced([(10, 4), (50, 4)], 0, 100) == [10, 50]


# All of them


SUPPORTS = tuple(replace(A, letter=one, at=200.0 * i, size=(-1) ** i * 900.0 * i) for i, one in enumerate("ABCDEFGH", 1))
ODD = [
    SHAFT,
    replace(SHAFT, loads=(), supports=()),
    replace(SHAFT, loads=(CHAIN,), supports=(A,), line=()),
    replace(SHAFT, ends=(LONG, LONG), loads=(replace(CHAIN, name=LONG),)),
    replace(SHAFT, loads=(replace(CHAIN, name=UNBROKEN), PULLEY), supports=(A, replace(B, slope_words=LONG))),
    replace(SHAFT, supports=SUPPORTS, loads=tuple(replace(PULLEY, name=f"wheel {i}", at=1000) for i in range(9))),
    replace(SHAFT, supports=(A, replace(B, at=252), replace(B, letter="C", at=254)), upright=True),
    replace(SHAFT, supports=(replace(A, at=0), replace(B, at=2000, size=-12000))),
    replace(SHAFT, sections=(), loads=(replace(CHAIN, size=-5000), replace(PULLEY, size=0))),
    replace(SHAFT, length=2, sections=((1, 900),), supports=(replace(A, at=0.5),), loads=(), line=((0, 0), (2, 1)), deepest=mm(1)),
    replace(SHAFT, line=((0, 1e-9), (2000, -1e-9)), deepest=mm(0)),
    replace(SHAFT, line=tuple((x, -0.5) for x in range(0, 2001, 100))),
]
CHAINS = [
    STEPS,
    ClearanceChain((BEFORE,)),
    ClearanceChain((), mm(0.02)),
    ClearanceChain((replace(BEFORE, words=LONG), replace(FIT, words=UNBROKEN), LEFT), mm(0)),
    ClearanceChain((replace(BEFORE, least=mm(0), most=mm(0)), replace(LEFT, least=mm(0), most=mm(0))), mm(0)),
    ClearanceChain((BEFORE, FIT, replace(HEAT, least=mm(-0.02), most=mm(-0.01)))),
    ClearanceChain((BEFORE, FIT, HEAT, replace(LEFT, least=mm(-0.5), most=mm(-0.3))), mm(0.8)),
]
CURVES = [
    LIFE,
    replace(LIFE, log_y=False),
    replace(LIFE, points=()),
    replace(LIFE, points=((10, 64000),), needed=None),
    replace(LIFE, points=((10, 64000),), needed=None, log_y=False),
    replace(LIFE, points=((5, 0), (10, 64000), (20, 1e-4)), needed=Drawn(0, "0\u00a0h")),
    replace(LIFE, title=LONG, x_name=LONG, y_name=UNBROKEN, working=(Drawn(20, LONG), Drawn(8000, LONG))),
    replace(LIFE, needed=Drawn(64000, "64000\u00a0h")),
    replace(LIFE, points=((5, -3), (10, 2)), working=(mm(10), mm(2)), needed=mm(-1), log_y=False),
    replace(LIFE, points=((0, 5), (1e6, 5.0001)), working=(mm(1e6), mm(5)), needed=None, log_y=False),
    replace(LIFE, points=((1, 1e9), (100, 1e-2)), working=(mm(1), mm(1e9))),
]
DRAWN = (
    [(f"bending {i}", lambda layout, one=one: bending_for(one, "s", layout)) for i, one in enumerate(ODD)]
    + [(f"clearance {i}", lambda layout, one=one: clearance_chain_for(one, "c", layout)) for i, one in enumerate(CHAINS)]
    + [(f"curve {i}", lambda layout, one=one: curve_for(one, "k", layout)) for i, one in enumerate(CURVES)]
)


@LAYOUTS
@pytest.mark.parametrize("draw", [draw for _, draw in DRAWN], ids=[name for name, _ in DRAWN])
def test_words_stay_inside_and_off_each_other_and_every_number_is_one(draw, layout: Layout) -> None:  # type: ignore[no-untyped-def]
    svg = draw(layout)
    assert_words_fit(svg, layout)
    assert not re.search(r"\b(nan|inf)\b", str(svg), re.IGNORECASE)
    width, high = (float(one) for one in parsed(svg).get("viewBox", "").split()[2:])
    for mark in (*parsed(svg).iter(f"{SVG}path"), *parsed(svg).iter(f"{SVG}circle")):
        centre = [(float(mark.get("cx", 0)), float(mark.get("cy", 0)))] if mark.get("cx") else points(mark)
        if "hatch" not in mark.get("class", ""):
            assert all(-1 <= x <= width + 1 and -1 <= y <= high + 1 for x, y in centre)


@pytest.mark.parametrize(
    "drawn", [bending(SHAFT, "s"), clearance_chain(STEPS, "c"), curve(LIFE, "k")], ids=["bending", "clearance", "curve"]
)
def test_both_layouts_are_there_with_no_script_no_colour_and_known_marks(drawn: Markup) -> None:
    assert drawn.count("<svg") == 2 and 'class="pic wide"' in drawn and 'class="pic narrow"' in drawn
    assert "<script" not in drawn and not re.search(r"#[0-9a-f]{3,6}\b(?!-)|rgb", re.sub(r"url\(#[^)]*\)", "", str(drawn)))
    known = set(re.findall(r"\.pic \.([\w-]+)", str(style())))
    used = set(re.findall(r'<(?:path|rect|circle) class="([^"]*)"', str(drawn)))
    assert used <= known


@LAYOUTS
def test_words_of_the_plant_stay_words(layout: Layout) -> None:
    hostile = "\"><script>alert('x')</script>&"
    for svg in (
        bending_for(replace(SHAFT, ends=(hostile, hostile), loads=(replace(CHAIN, name=hostile),)), hostile, layout),
        clearance_chain_for(ClearanceChain((replace(BEFORE, words=hostile),)), hostile, layout),
        curve_for(replace(LIFE, title=hostile, x_name=hostile), hostile, layout),
    ):
        parsed(svg)
        assert "<script" not in svg


def test_the_needed_line_is_named_where_it_hides_nothing() -> None:
    root = parsed(curve_for(LIFE, "k", PANEL))
    named = next(text for text in root.iter(f"{SVG}text") if "".join(text.itertext()).startswith("needed"))
    left, foot = float(named.get("x", 0)), float(named.get("y", 0))
    right = left + text_width("needed 20000\u00a0h", PANEL.text, bold=True)
    line = points(part(root, "curve")[0])
    inside = [(x, y) for x, y in line if left < x < right and foot - PANEL.text < y < foot]
    assert not inside
