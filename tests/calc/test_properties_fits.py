"""What must hold of sizes, fits, form and readings at any size."""

from __future__ import annotations

from fractions import Fraction
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from generator.calc import fits
from generator.method import Refused
from generator.mounting.chains.fits import (
    bearing_bore_tolerance,
    inch_shaft_limits,
    internal_clearance,
    iso_tolerance_limits,
    standard_tolerance_grade,
)
from generator.plant.quantities import parse_number
from generator.tables import table
from generator.value import Entered, Place, Value, Withheld

HERE = Place("test", 1)
sizes = st.floats(3.001, 500)
LIMITS = table("iso286-limits").rows
CLASSES = sorted({row["class"] for row in LIMITS})
# ISO 286-1: multiples of the tolerance unit for IT6 to IT16
MULTIPLES = {6: 10, 7: 16, 8: 25, 9: 40, 10: 64, 11: 100, 12: 160, 13: 250, 14: 400, 15: 640, 16: 1000}


def typed(content: Any, unit: str = "") -> Value:
    return Value(content, unit, Entered(f"{content} {unit}", HERE))


def _it(over: str, to: str, grade: str) -> float:
    row = next(r for r in table("iso286-it").rows if float(r["over_mm"]) <= float(over) and float(to) <= float(r["incl_mm"]))
    return float(row[f"IT{grade}_um"])


@pytest.mark.parametrize("row", [r for r in table("iso286-it").rows if r["over_mm"] != "0"], ids=lambda r: f"{r['over_mm']}-{r['incl_mm']}")
def test_tabulated_tolerances_follow_the_tolerance_unit_within_the_rounding_of_the_standard(row: dict[str, str]) -> None:
    # ISO 286-1:2010, 4.2: i = 0.45 cbrt(D) + 0.001 D, D the geometric mean of the range; the standard rounds by rules of its own
    mean = (float(row["over_mm"]) * float(row["incl_mm"])) ** 0.5
    unit = 0.45 * mean ** (1 / 3) + 0.001 * mean
    for grade, multiple in MULTIPLES.items():
        assert multiple * unit == pytest.approx(float(row[f"IT{grade}_um"]), rel=0.085)


@pytest.mark.parametrize("class_", CLASSES)
def test_a_class_is_as_wide_as_its_grade(class_: str) -> None:
    grade = class_.lstrip("defghjkmnprsDEFGHJKMNPS")
    for row in (r for r in LIMITS if r["class"] == class_):
        assert float(row["upper_um"]) - float(row["lower_um"]) == _it(row["over_mm"], row["incl_mm"], grade)


@pytest.mark.parametrize("class_", CLASSES)
def test_a_class_lies_on_the_side_of_the_nominal_size_its_letter_says(class_: str) -> None:
    letter = class_.rstrip("0123456789")
    for low, up in ((float(r["lower_um"]), float(r["upper_um"])) for r in LIMITS if r["class"] == class_):
        if letter in ("d", "e", "f", "g", "N", "P"):
            assert up < 0
        elif letter in ("m", "n", "p", "r", "F", "G"):
            assert low > 0
        elif letter in ("h", "H"):
            assert (up if letter == "h" else low) == 0
        elif letter in ("js", "JS"):
            assert low == -up
        elif letter in ("k", "K", "j", "J"):
            assert up > 0


@given(sizes, st.sampled_from(["h6", "h7", "h8", "h9", "h10", "h11"]))
@settings(deadline=None)
def test_a_shaft_h_ends_at_its_nominal_size_and_a_coarser_one_reaches_lower(size: float, class_: str) -> None:
    finer = iso_tolerance_limits.of(diameter=typed(size, "mm"), tolerance_class=typed("h5"))
    coarser = iso_tolerance_limits.of(diameter=typed(size, "mm"), tolerance_class=typed(class_))
    assert coarser.upper.content == finer.upper.content == size
    assert coarser.lower.content < finer.lower.content < size


@given(st.integers(1, 18), st.integers(0, 15), st.sampled_from(["h6", "h9", "k6", "m6"]))
@settings(deadline=None)
def test_an_inch_shaft_lies_inside_the_limits_of_its_class(whole: int, sixteenths: int, class_: str) -> None:
    size = whole + sixteenths / 16
    inch = inch_shaft_limits.of(diameter=typed(size, "in"), tolerance_class=typed(class_), step=typed(0.0001, "in"))
    metric = iso_tolerance_limits.of(diameter=typed(size * 25.4, "mm"), tolerance_class=typed(class_))
    assert metric.lower.content - 1e-6 <= inch.lower.content * 25.4 <= inch.upper.content * 25.4 <= metric.upper.content + 1e-6


@given(st.floats(3, 499), st.floats(0.0001, 0.2), st.sampled_from([0.001, 0.002, 0.01, 0.00254]))
def test_rounding_never_widens_a_band(lower: float, wide: float, step: float) -> None:
    try:
        found = fits.shaft_limit_rounding(lower, lower + wide, step)
    except Refused:
        assert wide < step
        return
    assert lower - step * 1e-5 <= found.lower <= found.upper <= lower + wide + step * 1e-5


@given(st.floats(2.6, 400))
@settings(deadline=None)
def test_a_bore_is_never_over_size_and_a_larger_one_is_not_held_closer(size: float) -> None:
    small, large = bearing_bore_tolerance.of(bore=typed(size, "mm")), bearing_bore_tolerance.of(bore=typed(size * 1.25, "mm"))
    assert small.upper.content == large.upper.content == 0
    assert large.lower.content <= small.lower.content < 0


@given(st.floats(-100, 100), st.floats(1, 100), st.floats(1, 45))
def test_the_least_interference_is_never_more_than_the_greatest(low: float, wide: float, bore: float) -> None:
    fit = fits.seat_fit(low, low + wide, -bore)
    assert fit.most - fit.least == pytest.approx(wide + bore)


@pytest.mark.parametrize("row", table("iso5753-clearance").rows, ids=lambda r: f"{r['kind']}-{r['bore_incl_mm']}")
def test_a_looser_class_has_more_clearance(row: dict[str, str]) -> None:
    classes = ("C2", "CN", "C3", "C4")
    least, most = [float(row[f"{c}_min"]) for c in classes], [float(row[f"{c}_max"]) for c in classes]
    assert least == sorted(set(least)) and most == sorted(set(most))
    assert all(a < b for a, b in zip(least, most, strict=True))


@given(st.floats(18.1, 200), st.sampled_from(["C2", "CN", "C3", "C4"]))
@settings(deadline=None)
def test_a_taper_bore_is_made_with_more_clearance_since_driving_up_takes_some(bore: float, class_: str) -> None:
    facts = {"bore": typed(bore, "mm"), "clearance": typed(class_)}
    taper = internal_clearance.of(kind=typed("spherical roller, taper"), **facts)
    cylinder = internal_clearance.of(kind=typed("spherical roller, cylinder"), **facts)
    assert taper.least.content >= cylinder.least.content and taper.most.content >= cylinder.most.content


def test_a_housed_insert_has_no_clearance_in_this_table() -> None:
    found = internal_clearance.of(kind=typed("ball insert"), bore=typed(50, "mm"), clearance=typed("C3"))
    assert isinstance(found.least, Withheld)


@given(st.floats(20, 300), st.floats(20.1, 80))
def test_a_warm_shaft_reads_large_and_a_cold_one_small(size: float, warm: float) -> None:
    assert fits.reading_at_20_degrees(size, warm, 12) < size < fits.reading_at_20_degrees(size, 40 - warm, 12)
    assert fits.reading_at_20_degrees(size, 20, 12) == size


@given(st.lists(st.tuples(st.integers(1, 3), st.floats(59.9, 60.05)), min_size=1, max_size=9), st.randoms())
def test_a_verdict_is_inside_only_where_every_reading_is_whatever_their_order(taken: list[tuple[int, float]], chance: Any) -> None:
    readings = tuple(fits.Reading(*one) for one in taken)
    found = fits.shaft_readings(readings, 59.926, 60.0, 13)
    assert found.out_of_round <= found.spread
    if found.verdict == "inside":
        assert all(59.926 - 1e-6 <= size <= 60 + 1e-6 for _, size in taken)
        assert found.spread <= 13.001
    else:
        assert min(size for _, size in taken) < 59.926 or max(size for _, size in taken) > 60 or found.spread > 13
    assert fits.shaft_readings(tuple(chance.sample(readings, len(readings))), 59.926, 60.0, 13) == found


def test_a_seat_that_was_not_read_has_no_verdict() -> None:
    with pytest.raises(Refused, match="no reading"):
        fits.shaft_readings((), 59.926, 60.0, 13)


@given(st.floats(10, 200), st.floats(0.01, 0.3), st.floats(-0.1, 0.1), st.floats(0.01, 0.1))
def test_a_bought_bar_will_do_only_where_all_it_may_be_is_inside(nominal: float, minus: float, off: float, wide: float) -> None:
    lower, upper = nominal + off - wide, nominal + off
    verdict = fits.bar_against_band(nominal, minus, lower, upper).verdict
    if verdict == "as bought, measure anyway":
        assert lower - 1e-6 <= nominal - minus and nominal <= upper + 1e-6
    elif verdict == "machine":
        assert nominal < lower or nominal - minus > upper


@given(st.integers(1, 640))
def test_every_64th_is_said_as_a_fraction_that_reads_back(sixty_fourths: int) -> None:
    said = fits.inch_fraction(sixty_fourths / 64)
    assert "." not in said
    assert parse_number(f"{said} in") == (float(Fraction(sixty_fourths, 64)), "in")


@given(sizes)
@settings(deadline=None)
def test_a_sleeve_seat_of_h10_may_be_less_true_than_one_of_h9(size: float) -> None:
    it5, it7 = (standard_tolerance_grade.of(diameter=typed(size, "mm"), grade=typed(g)).content for g in ("IT5", "IT7"))
    h9 = fits.seat_form_and_finish(size, it5, it7, "sleeve seat h9")
    h10 = fits.seat_form_and_finish(size, it5, it7, "sleeve seat h10 or wider")
    assert h9.cylindricity < h10.cylindricity
    assert h9.out_of_round == 2 * h9.cylindricity
