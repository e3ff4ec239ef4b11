"""How quantities are written. The figures are definitions (1 in = 25.4 mm, 12 hours on a clock face) or said where they stand."""

from __future__ import annotations

import re

import pytest
from hypothesis import given
from hypothesis import strategies as st

from generator.plant import grammar
from generator.plant.grammar import BadQuantity, parse_number
from generator.plant.read import Word
from generator.plant.threads import thread_of
from generator.units import UNITS, convert
from generator.value import Entered, Place

HERE = Place("plant.yml", 7, 3)


def word(text: str) -> Word:
    return Word(text, HERE)


@pytest.mark.parametrize(
    ("text", "number", "unit"),
    [
        ("60 mm", 60.0, "mm"),
        ("60mm", 60.0, "mm"),
        ("60.5 mm", 60.5, "mm"),
        (".5 in", 0.5, "in"),
        ("2 15/16 in", 2.9375, "in"),
        ("2-15/16 in", 2.9375, "in"),
        ('2 15/16"', 2.9375, "in"),
        ("15/16 in", 0.9375, "in"),
        ("5/8 turn", 0.625, "turn"),
        ("-20 degC", -20.0, "degC"),
        ("-2 1/2 in", -2.5, "in"),
        ("20 °C", 20.0, "degC"),
        ("190 Nm", 190.0, "N.m"),
        ("140 ft-lb", 140.0, "lbf.ft"),
        ("46 1/min", 46.0, "rpm"),
        ("11.5 1e-6/K", 11.5, "1e-6/K"),
        ("300000", 300000.0, ""),
        ("70 %", 70.0, "%"),
    ],
)
def test_a_quantity_is_one_number_and_one_unit(text: str, number: float, unit: str) -> None:
    assert parse_number(text) == (number, unit)


def test_a_mixed_fraction_of_an_inch_is_not_mistaken() -> None:
    """2 7/16 in is 61.9125 mm: 2.4375 times 25.4. A reader that takes it for 2 * 7/16 gives 22.225 mm."""
    number, unit = parse_number("2 7/16 in")
    assert convert(number, unit, "mm") == pytest.approx(61.9125)


@pytest.mark.parametrize(
    ("text", "wrong", "right"),
    [
        (
            "60,5 mm",
            "60,5 mm has a comma or a mark for thousands in its number",
            "a point for decimals, nothing for thousands: 60.5 mm, 1200 mm",
        ),
        (
            "1 200 mm",
            "1 200 mm has a comma or a mark for thousands in its number",
            "a point for decimals, nothing for thousands: 60.5 mm, 1200 mm",
        ),
        (
            "1'200 mm",
            "1'200 mm has a comma or a mark for thousands in its number",
            "a point for decimals, nothing for thousands: 60.5 mm, 1200 mm",
        ),
        ("1.5e3 mm", "1.5e3 mm has a power of ten in its number", "the number written out"),
        ("60 mm 5", "60 mm 5 holds more than one number", "one number and one unit, as 60 mm or 2 15/16 in"),
        ("60 70 mm", "60 70 mm holds more than one number", "one number and one unit, as 60 mm or 2 15/16 in"),
        ("60 * 2 mm", "60 * 2 mm holds more than one number", "one number and one unit, as 60 mm or 2 15/16 in"),
        ("1/2/3 in", "1/2/3 in holds more than one number", "one number and one unit, as 60 mm or 2 15/16 in"),
        ("5 ft 3 in", "5 ft 3 in holds more than one number", "one number and one unit, as 60 mm or 2 15/16 in"),
        ("60 mn", "mn is no unit that is known", "a unit as mm, in, N.m, kN, degC"),
        ("60 qqq", "qqq is no unit that is known", "a unit as mm, in, N.m, kN, degC"),
        ("2 16/16 in", "2 16/16 is no fraction", "as 15/16 or 2 15/16"),
        ("1/0 in", "1/0 is no fraction", "as 15/16 or 2 15/16"),
        ("−5 degC", "−5 degC begins with a dash that is no minus", "the plain minus: -5 degC"),
        ("inf mm", "inf mm is no quantity", "a number and a unit, as 60 mm or 2 15/16 in"),
        ("nan", "nan is no quantity", "a number and a unit, as 60 mm or 2 15/16 in"),
        ("mm", "mm is no quantity", "a number and a unit, as 60 mm or 2 15/16 in"),
        ("", "'' is no quantity", "a number and a unit, as 60 mm or 2 15/16 in"),
        ("٦٠ mm", "٦٠ mm is no quantity", "a number and a unit, as 60 mm or 2 15/16 in"),
        ("2½ in", "2½ in has a fraction in one sign", "the fraction written out, as 2 1/2 in"),
        ("9" * 81, "this is 81 characters long", "a quantity is short, as 60 mm"),
    ],
)
def test_what_could_be_read_two_ways_is_refused(text: str, wrong: str, right: str) -> None:
    with pytest.raises(BadQuantity) as bad:
        parse_number(text)
    assert (bad.value.wrong, bad.value.right) == (wrong, right)


@given(st.text(max_size=90))
def test_no_text_does_more_than_be_refused(text: str) -> None:
    for takes in (
        parse_number,
        thread_of,
        lambda t: grammar.band(word(t), "mm"),
        lambda t: grammar.direction(word(t)),
        lambda t: grammar.day(word(t)),
        lambda t: grammar.ratio(word(t)),
        lambda t: grammar.scale(word(t), "VG", 2, 3200),
    ):
        try:
            takes(text)
        except BadQuantity as bad:
            assert bad.wrong and bad.right


@given(st.decimals(min_value=-99999, max_value=99999, places=4), st.sampled_from(sorted(UNITS)))
def test_every_unit_is_read_back_as_itself(number: object, unit: str) -> None:
    assert parse_number(f"{number:f} {unit}") == (float(f"{number:f}"), unit)


def test_a_value_keeps_the_text_and_the_place() -> None:
    value = grammar.quantity(word("2 15/16 in"), "mm")
    assert (value.content, value.unit) == (2.9375, "in")
    assert value.reason == Entered("2 15/16 in", HERE)


@pytest.mark.parametrize(
    ("text", "unit", "wrong", "right"),
    [
        ("60", "mm", "60 has no unit", "with its unit, as 60 mm; units that fit: mm, cm, m, um, in, ft"),
        ("60 mn", "mm", "mn is no unit that is known", "units that fit: mm, cm, m, um, in, ft"),
        ("9 turrn", "turn", "turrn is no unit that is known", "nearest known: turn; units that fit: deg, rad, turn"),
        ("60 N", "mm", "60 N is of the kind force, and length belongs here", "units that fit: mm, cm, m, um, in, ft"),
        ("3 degC", "K", "3 degC is of the kind temperature, and temperature difference belongs here", "units that fit: K"),
        ("10 K", "degC", "10 K is of the kind temperature difference, and temperature belongs here", "units that fit: degC, degF"),
        ("60 mm", "", "60 mm has a unit where none belongs", "the bare number"),
    ],
)
def test_a_quantity_of_the_wrong_kind_says_which_units_fit(text: str, unit: str, wrong: str, right: str) -> None:
    with pytest.raises(BadQuantity) as bad:
        grammar.quantity(word(text), unit)
    assert (bad.value.wrong, bad.value.right) == (wrong, right)


def test_what_cannot_be_believed_is_judged_in_one_unit() -> None:
    assert grammar.quantity(word("39 in"), "mm", low=3, high=1000).content == 39.0
    with pytest.raises(BadQuantity) as bad:
        grammar.quantity(word("40 in"), "mm", low=3, high=1000)
    assert (bad.value.wrong, bad.value.right) == ("40 in cannot be believed here", "from 3 to 1000 mm; was the unit meant?")


@pytest.mark.parametrize(
    ("text", "unit", "lower", "upper"),
    [
        ("8 to 9 mm", "mm", (8.0, "mm", "8 mm"), (9.0, "mm", "9 mm")),
        ("8 mm to 9 mm", "mm", (8.0, "mm", "8 mm"), (9.0, "mm", "9 mm")),
        ("8 mm to 0.5 in", "mm", (8.0, "mm", "8 mm"), (0.5, "in", "0.5 in")),
        ("5/8 to 3/4 turn", "turn", (0.625, "turn", "5/8 turn"), (0.75, "turn", "3/4 turn")),
        ("3.5 to 4.0 N.m", "N.m", (3.5, "N.m", "3.5 N.m"), (4.0, "N.m", "4.0 N.m")),
        ("-20 to 120 degC", "degC", (-20.0, "degC", "-20 degC"), (120.0, "degC", "120 degC")),
        ('2 7/16" to 2 1/2"', "mm", (2.4375, "in", '2 7/16 "'), (2.5, "in", '2 1/2 "')),
        ("8 to 8 mm", "mm", (8.0, "mm", "8 mm"), (8.0, "mm", "8 mm")),
        ("10 mm2/s to 20 mm2/s", "mm2/s", (10.0, "mm2/s", "10 mm2/s"), (20.0, "mm2/s", "20 mm2/s")),
    ],
)
def test_a_band_is_least_and_most(text: str, unit: str, lower: tuple[float, str, str], upper: tuple[float, str, str]) -> None:
    band = grammar.band(word(text), unit)
    assert (band.lower.content, band.lower.unit, band.lower.reason) == (*lower[:2], Entered(lower[2], HERE))
    assert (band.upper.content, band.upper.unit, band.upper.reason) == (*upper[:2], Entered(upper[2], HERE))


@pytest.mark.parametrize(
    ("text", "wrong", "right"),
    [
        ("9 to 8 mm", "9 to 8 mm runs from more to less", "least first, then most"),
        ("1 in to 20 mm", "1 in to 20 mm runs from more to less", "least first, then most"),
        ("8-9 mm", "8-9 mm is no pair of limits", "least and most, as 8 to 9 mm"),
        ("8 mm", "8 mm is no pair of limits", "least and most, as 8 to 9 mm"),
        ("8 to 9", "8 to 9 has no unit", "with its unit, as 8 to 9 mm; units that fit: mm, cm, m, um, in, ft"),
        ("8 to 9 N", "8 to 9 N is of the kind force, and length belongs here", "units that fit: mm, cm, m, um, in, ft"),
        ("8 to 9 to 10 mm", "8 to 9 to 10 mm holds more than one number", "one number and one unit, as 60 mm or 2 15/16 in"),
    ],
)
def test_a_band_that_is_none_is_refused(text: str, wrong: str, right: str) -> None:
    with pytest.raises(BadQuantity) as bad:
        grammar.band(word(text), "mm")
    assert (bad.value.wrong, bad.value.right) == (wrong, right)


def test_one_figure_stands_for_both_limits_only_where_asked() -> None:
    band = grammar.band(word("3/4 turn"), "turn", single=True)
    assert band.lower == band.upper
    assert (band.lower.content, band.lower.unit) == (0.75, "turn")


@pytest.mark.parametrize(("text", "content"), [("8", 8), ("0", 0), ("012", 12)])
def test_a_count_is_a_bare_whole_number(text: str, content: int) -> None:
    assert grammar.count(word(text), 0, 100).content == content


@pytest.mark.parametrize("text", ["8.0", "-1", "8 mm", "eight", "1e2", "101", ""])
def test_what_is_no_count_is_refused(text: str) -> None:
    with pytest.raises(BadQuantity):
        grammar.count(word(text), 0, 100)


def test_a_taper_of_one_in_twelve_is_twelve() -> None:
    assert grammar.ratio(word("1:12")).content == 12.0
    assert grammar.ratio(word("1 : 30")).content == 30.0
    for bad in ("12", "12:1", "1:0", "1:1", "1/12", "1:12 mm"):
        with pytest.raises(BadQuantity):
            grammar.ratio(word(bad))


@pytest.mark.parametrize(
    ("text", "scale", "number"),
    [
        ("22 HRC", "HRC", 22.0),
        ("HRC 22", "HRC", 22.0),
        ("VG 150", "VG", 150.0),
        ("ISO VG 150", "VG", 150.0),
        ("NLGI 2", "NLGI", 2.0),
        ("NLGI 0", "NLGI", 0.0),
    ],
)
def test_a_figure_on_a_scale(text: str, scale: str, number: float) -> None:
    value = grammar.scale(word(text), scale, 0, 4000)
    assert (value.content, value.unit) == (number, scale)


@pytest.mark.parametrize(
    ("text", "scale"), [("22", "HRC"), ("22 HV", "HRC"), ("150", "VG"), ("ISO HRC 22", "HRC"), ("VG 150 NLGI 2", "VG")]
)
def test_a_figure_of_another_scale_is_refused(text: str, scale: str) -> None:
    with pytest.raises(BadQuantity):
        grammar.scale(word(text), scale, 0, 4000)


@pytest.mark.parametrize("grade", ["NLGI 00", "NLGI 000"])
def test_the_grades_softer_than_nlgi_0_are_not_taken_for_it(grade: str) -> None:
    """Worked penetration, DIN 51818 (from memory): 0 is 355 to 385, 00 is 400 to 430, 000 is 445 to 475."""
    with pytest.raises(BadQuantity):
        grammar.scale(word(grade), "NLGI", 0, 6)


def test_a_share_has_its_sign() -> None:
    assert (grammar.percent(word("70 %")).content, grammar.percent(word("70%")).unit) == (70.0, "%")
    for bad in ("70", "0.7", "101 %", "-1 %", "70 mm"):
        with pytest.raises(BadQuantity):
            grammar.percent(word(bad))


def test_a_day_is_in_the_calendar() -> None:
    """2024 had a 29 February; 2100 will have none (the Gregorian rule of centuries)."""
    assert grammar.day(word("2024-02-29")).content == "2024-02-29"
    for bad in ("2100-02-29", "2026-02-30", "2026-13-01", "12.03.2026", "2026-3-12", "20260312", "0226-03-12", "2026-03-12T10:20"):
        with pytest.raises(BadQuantity):
            grammar.day(word(bad))


@pytest.mark.parametrize(
    ("text", "degrees"),
    [
        ("12 o'clock", 0.0),
        ("3 o'clock", 90.0),
        ("5 o'clock", 150.0),
        ("5:30 o'clock", 165.0),
        ("9 o’clock", 270.0),
        ("130 deg", 130.0),
        ("0 deg", 0.0),
    ],
)
def test_a_direction_is_degrees_clockwise_from_twelve(text: str, degrees: float) -> None:
    """A clock face: an hour is 30 degrees, a minute past half a degree."""
    value = grammar.direction(word(text))
    assert (value.content, value.unit) == (degrees, "deg")


@pytest.mark.parametrize("text", ["13 o'clock", "0 o'clock", "5:60 o'clock", "5:3 o'clock", "5", "up", "361 deg", "-30 deg", "5 mm"])
def test_what_is_no_direction_is_refused(text: str) -> None:
    with pytest.raises(BadQuantity):
        grammar.direction(word(text))


def test_a_refusal_never_shows_a_hole() -> None:
    for text in ("60,5 mm", "60", "60 N", "x", "60 mn"):
        with pytest.raises(BadQuantity) as bad:
            grammar.quantity(word(text), "mm")
        assert not re.search(r"[{}]", bad.value.wrong + bad.value.right)
