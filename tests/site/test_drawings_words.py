"""Words in drawings: the room they take, how they break, how labels keep clear of one another."""

from __future__ import annotations

import pytest

from generator.site.drawings.words import apart, clipped, rows, text_width, wrap
from tests.site.drawn import UNBROKEN


# Advance widths of a common sans serif in thousandths of its size (Adobe Core 14 font metrics, Helvetica and Helvetica-Bold; from memory).
@pytest.mark.parametrize(
    ("words", "regular", "bold"),
    [
        ("0.20 mm", 556 * 3 + 278 + 278 + 833 * 2, 556 * 3 + 278 + 278 + 889 * 2),
        ("WWW", 944 * 3, 944 * 3),
        ("illi", 222 * 4, 278 * 4),
        ("free", 278 + 333 + 556 * 2, 333 + 389 + 556 * 2),
    ],
)
def test_words_are_never_reckoned_narrower_than_they_are(words: str, regular: int, bold: int) -> None:
    assert text_width(words, 20) >= regular * 0.02
    assert text_width(words, 20, bold=True) >= bold * 0.02


def test_lines_break_between_words_and_a_unit_stays_with_its_number() -> None:
    assert wrap("float is 0.20\u00a0mm", 100, 20) == ["float is", "0.20\u00a0mm"]
    assert "".join(wrap(UNBROKEN, 100, 20)) == UNBROKEN
    assert all(text_width(line, 20) <= 100 for line in wrap(UNBROKEN, 100, 20))


def test_labels_move_no_further_than_keeps_them_apart() -> None:
    assert apart([(10, 4), (50, 4)], 0, 100) == [10, 50]
    assert apart([(50, 10), (50, 10)], 0, 100) == [50, 60]
    assert apart([(99, 10), (99, 10)], 0, 100) == [85, 95]


def test_a_label_without_room_goes_to_the_next_row() -> None:
    assert rows([(20, 30), (40, 30), (80, 30)], 0, 100, 5) == [(20, 0), (40, 1), (80, 0)]


def test_a_name_too_long_is_cut_where_it_shows() -> None:
    assert clipped("chain wheel", 1000, 20) == "chain wheel"
    assert clipped(UNBROKEN, 100, 20).endswith("…") and text_width(clipped(UNBROKEN, 100, 20), 20) <= 100
