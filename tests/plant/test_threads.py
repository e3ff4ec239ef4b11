"""How threads are written. The figures are definitions (1 in = 25.4 mm) or said where they stand."""

from __future__ import annotations

import pytest

from generator.plant.grammar import BadQuantity
from generator.plant.read import Word
from generator.plant.threads import thread, thread_of
from generator.value import Entered, Place

HERE = Place("plant.yml", 7, 3)


def word(text: str) -> Word:
    return Word(text, HERE)


@pytest.mark.parametrize(
    ("text", "diameter", "pitch", "family"),
    [
        ("M65x2", 65.0, 2.0, "metric"),
        ("M65 x 2", 65.0, 2.0, "metric"),
        ("m8×1", 8.0, 1.0, "metric"),
        ("M16", 16.0, 2.0, "metric"),  # coarse pitches of ISO 261, from memory
        ("M20", 20.0, 2.5, "metric"),
        ("5/8-11", 15.875, 25.4 / 11, "inch"),  # 5/8 in is 15.875 mm
        ("1 1/8-7", 28.575, 25.4 / 7, "inch"),
        ("2.360-18", 59.944, 25.4 / 18, "inch"),
        ("#10-24", 4.826, 25.4 / 24, "inch"),  # number 10 is 0.190 in: ASME B1.1, from memory
        ("1-8", 25.4, 25.4 / 8, "inch"),
        ("4-4", 101.6, 6.35, "inch"),
    ],
)
def test_a_thread_has_diameter_and_pitch(text: str, diameter: float, pitch: float, family: str) -> None:
    assert thread_of(text) == (pytest.approx(diameter), pytest.approx(pitch), family)


@pytest.mark.parametrize(
    "text", ["M65", "M65x", "M65x60", "M0x1", "65x2", "5/8", "5/0-11", "#7-24", "1 #10-24", "0-11", "thread", "", "-11"]
)
def test_what_is_no_thread_is_refused(text: str) -> None:
    with pytest.raises(BadQuantity):
        thread_of(text)


def test_a_numbered_thread_without_its_sign_is_asked_about() -> None:
    """10-24 is spoken for number 10 (0.190 in); taken by its letters it would be ten inches."""
    with pytest.raises(BadQuantity) as bad:
        thread_of("10-24")
    assert (bad.value.wrong, bad.value.right) == ("10-24 can be read two ways", "#10-24 for the numbered size, 10.0-24 for inches")


@pytest.mark.parametrize(
    ("text", "content"), [("M65 X 2", "M65x2"), ("m16", "M16"), ("M8×1", "M8x1"), ("1 1/8 - 7", "1 1/8-7"), ("2.360-18", "2.360-18")]
)
def test_a_thread_is_kept_one_way_and_its_text_as_typed(text: str, content: str) -> None:
    value = thread(word(text))
    assert value.content == content
    assert value.reason == Entered(text, HERE)
