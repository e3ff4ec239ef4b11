"""Codes shown on the screen, read back by a general library and held against another that writes them (ISO/IEC 18004)."""

from __future__ import annotations

import io
import random
from itertools import pairwise
from pathlib import Path
from typing import Any

import numpy as np
import pytest
import segno
import zxingcpp
from playwright.sync_api import Page

# the longest text of version 15 at level M: 415 data words less mode and length (ISO/IEC 18004, table 7, from memory; segno has the same)
LONGEST = 412
# level Q as long as it gives no more than 49 modules, version 8
LONGEST_Q = 108
LETTERS = "0123456789 ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz/.,=-äöüßéñžłø°µ½×→あ漢字語ёжщ🔧"


@pytest.fixture(scope="module")
def writer(browser: Any, sample: Path) -> Any:
    page = browser.new_page()
    page.goto(f"file://{sample}/machines/INT-02.html")
    yield page
    page.close()


def matrices(writer: Page, texts: list[str]) -> list[list[list[int]]]:
    """Each text as the page writes it."""
    return writer.evaluate("texts => texts.map(text => window.seatbookCode.matrix(text))", texts)


def read(matrix: list[list[int]]) -> bytes:
    """What the reading library finds in the picture of a code, four modules of white around it."""
    field = np.pad(np.array(matrix, dtype=np.uint8), 4)
    found = zxingcpp.read_barcodes(
        np.kron(255 * (1 - field), np.ones((4, 4), dtype=np.uint8)).astype(np.uint8), formats=zxingcpp.BarcodeFormat.QRCode
    )
    assert len(found) == 1
    return found[0].bytes


def as_segno(text: str, level: str, mask: int | None = None) -> list[list[int]]:
    """The same text by the writing library, bytes at this level and no higher."""
    made = segno.make_qr(text, error=level, mask=mask, mode="byte", encoding="utf-8", boost_error=False)
    return [[int(dark) for dark in row] for row in made.matrix]


def penalty(matrix: list[list[int]]) -> int:
    """How badly a mask breaks up the picture, by ISO/IEC 18004, 7.8.3, as the writing library counts it."""
    return segno.encoder.evaluate_mask(tuple(bytearray(row) for row in matrix), len(matrix), len(matrix))


def test_every_length_is_read_back_and_as_small_as_it_can_be(writer: Page) -> None:
    chance = random.Random(18004)
    texts = ["".join(chance.choices("SB1 INT-02/A 64.981,=", k=length)) for length in range(1, LONGEST + 1)]
    for text, matrix in zip(texts, matrices(writer, texts), strict=True):
        assert read(matrix) == text.encode()
        assert len(matrix) == len(as_segno(text, "q" if len(text) <= LONGEST_Q else "m"))


def test_any_letters_are_read_back(writer: Page) -> None:
    chance = random.Random(10646)
    texts = ["".join(chance.choices(LETTERS, k=chance.randint(1, 90))) for _ in range(150)]
    for text, matrix in zip(texts, matrices(writer, texts), strict=True):
        assert read(matrix) == text.encode()


# bytes that fill versions to the last (ISO/IEC 18004, table 7, from memory; where room is left the other writer pads with one word too many)
FULL_Q = dict(enumerate((11, 20, 32, 46, 60, 74, 86, 108), 1))
FULL_M = dict(enumerate((122, 152, 180, 213, 251, 287, 331, 362, 412), 7))


@pytest.mark.parametrize(("level", "full"), [("q", FULL_Q), ("m", FULL_M)])
def test_module_for_module_it_is_the_code_of_another_writer(writer: Page, level: str, full: dict[int, int]) -> None:
    chance = random.Random(2015)
    texts = ["".join(chance.choices(LETTERS[:64], k=length)) for length in full.values()]
    for version, text, matrix in zip(full, texts, matrices(writer, texts), strict=True):
        assert len(matrix) == 17 + 4 * version
        masked = [as_segno(text, level, mask) for mask in range(8)]
        assert matrix in masked, version
        assert penalty(matrix) == min(penalty(one) for one in masked), version


def test_a_text_that_is_too_long_gives_no_code(writer: Page) -> None:
    assert writer.evaluate("length => window.seatbookCode.matrix('x'.repeat(length))", LONGEST + 1) is None
    assert writer.evaluate("length => window.seatbookCode.svg('x'.repeat(length))", LONGEST + 1) is None


@pytest.mark.parametrize("theme", ["light", "dark", "forced"])
def test_the_picture_on_the_screen_is_read_with_its_quiet_zone(writer: Page, theme: str) -> None:
    writer.evaluate("theme => { document.documentElement.dataset.theme = theme; }", theme)
    writer.emulate_media(forced_colors="active" if theme == "forced" else "none")
    writer.evaluate("""() => { document.querySelectorAll('.tried').forEach(one => one.remove());
        const made = window.seatbookCode.svg('SB1 INT-02/A 4'); made.classList.add('tried'); made.style.cssText = 'width:300px;display:block';
        document.body.prepend(made); }""")
    picture = zxingcpp.read_barcodes(_pixels(writer.locator(".tried").screenshot()))
    assert [one.text for one in picture] == ["SB1 INT-02/A 4"]
    modules = len(as_segno("SB1 INT-02/A 4", "q"))
    assert writer.locator(".tried").get_attribute("viewBox") == f"0 0 {modules + 8} {modules + 8}"
    white = _pixels(writer.locator(".tried").screenshot())
    edge = round(300 * 4 / (modules + 8)) - 2
    assert white[:edge].min() > 240 and white[:, :edge].min() > 240 and white[-edge:].min() > 240 and white[:, -edge:].min() > 240


def test_two_digits_at_the_end_tell_a_slip_of_the_hand(writer: Page) -> None:
    text = "SB1 INT-02/A 4 3F09AC K-2611251420 as-left d1=64.981,64.980,64.979 d2=64.981,64.980,64.979 d3=64.981,64.980,64.979 t=21 by=K7"
    assert writer.evaluate("text => window.seatbookSlip.checked(text)", text) == f"{text} {_rest(text)}"
    changed = [text[:at] + other + text[at + 1 :] for at in range(len(text)) for other in "0189 ,.=-KSk" if other != text[at]]
    swapped = [text[:at] + b + a + text[at + 2 :] for at, (a, b) in enumerate(pairwise(text)) if a != b]
    found = writer.evaluate("all => all.map(text => window.seatbookSlip.checked(text).slice(-2))", changed + swapped)
    assert _rest(text) not in found


def _rest(text: str) -> str:
    """ISO/IEC 7064, MOD 97-10: the weights are the powers of ten; here of the characters' own numbers."""
    return f"{sum(ord(one) * 10**at for at, one in enumerate(reversed(text))) % 97:02d}"


def _pixels(png: bytes) -> Any:
    from PIL import Image

    return np.array(Image.open(io.BytesIO(png)).convert("L"))
