"""What is printed: one side of A4 and of Letter for every position, codes that a reader of another make reads, a file for phones that needs nothing else."""

from __future__ import annotations

import re
import shutil
from datetime import date
from io import BytesIO
from pathlib import Path

import numpy as np
import pytest
import yaml
import zxingcpp
from PIL import Image
from playwright.sync_api import Browser, Page

from generator.publish.publish import publish
from generator.say import speak_also
from tests.copies import copy_of_demo
from tests.plant.test_second_language import whole

PAPERS = ("A4", "Letter")


def sides(page: Page, size: str) -> int:
    """How many sides of paper a page takes."""
    return len(re.findall(rb"/Type /Page[^s]", page.pdf(format=size)))


@pytest.mark.parametrize("folder", ["sheets", "records"])
def test_every_sheet_fits_one_side_of_a4_and_of_letter(browser: Browser, site: Path, folder: str) -> None:
    page = browser.new_context().new_page()
    found = {}
    for path in sorted((site / folder).glob("*.html")):
        page.goto(path.as_uri())
        found |= {(path.stem, size): count for size in PAPERS if (count := sides(page, size)) != 1}
    assert found == {}
    page.context.close()


def test_the_fullest_sheets_fit_one_side_in_two_languages(browser: Browser, tmp_path: Path) -> None:
    """The second language a quarter longer than the first, every fact in it."""
    copy_of_demo(tmp_path / "plant")
    longer = whole()
    for entry in (*longer["messages"].values(), *longer["terms"].values()):
        entry["says"] += " ßßßß" * (len(entry["of"]) // 20)
    second = "language: qaa\nname: Made up\n" + yaml.safe_dump(longer, allow_unicode=True, width=10_000)
    (tmp_path / "plant/second_language.yml").write_text(second, encoding="utf-8")
    publish(tmp_path / "plant", tmp_path / "site", date(2026, 11, 25))
    page = browser.new_context().new_page()
    for name in ("BYP-01-A", "BYP-02-B", "DRY-03-A", "INT-01-A", "MIL-04-A"):
        page.goto((tmp_path / f"site/sheets/{name}.html").as_uri())
        assert page.locator(".second-language").count() > 4
        assert [size for size in PAPERS if sides(page, size) != 1] == [], name
    page.context.close()
    speak_also()


def test_what_is_taken_along_for_one_position_fits_one_side(browser: Browser, site: Path) -> None:
    page = browser.new_context(viewport={"width": 1280, "height": 800}).new_page()
    page.goto((site / "take/INT-01.html").as_uri())
    for letter in "BCD":
        page.uncheck(f"#take-{letter}")
    assert page.locator(".taken li:visible").count() < page.locator(".taken li").count()
    assert [size for size in PAPERS if sides(page, size) > 1] == []
    # what A alone needs is there, what C alone needs is not
    assert page.get_by_text("hook wrench 1").first.is_visible()
    assert not page.get_by_text("new set screws").is_visible()
    page.context.close()


def test_a_label_reads_without_a_phone_and_with_one(browser: Browser, site: Path) -> None:
    page = browser.new_context(device_scale_factor=2).new_page()
    page.goto((site / "labels/INT-02.html").as_uri())
    # users at the machine: capitals of 10 mm; 96 px an inch, capitals are 0.7 em
    tag = page.locator(".label-tag").first
    assert tag.evaluate("one => parseFloat(getComputedStyle(one).fontSize)") * 0.7 / 96 * 25.4 >= 10
    said = set()
    for number in range(page.locator(".label svg.qr").count()):
        picture = page.locator(".label svg.qr").nth(number).screenshot()
        read = zxingcpp.read_barcodes(np.array(Image.open(BytesIO(picture)).convert("L")))
        assert len(read) == 1
        said.add(read[0].text)
        # 21 modules and a quiet zone of 4 on each side at least, each half a millimetre or more
        width = page.locator(".label svg.qr").nth(number).evaluate("one => one.getBoundingClientRect().width") / 96 * 25.4
        assert width >= (21 + 8) * 0.5
    assert {one.split()[0] for one in said} == {"INT-02"} and len(said) == 5
    page.context.close()


def test_a_held_sheet_is_held_across_and_has_no_steps(browser: Browser, site: Path) -> None:
    page = browser.new_context().new_page()
    page.goto((site / "sheets/BYP-02-A.html").as_uri())
    assert "HELD" in page.locator(".held-paper").inner_text()
    assert page.locator(".do").count() == 0 and page.locator(".signs").count() == 1
    assert "What clears it:" in page.locator(".large").inner_text()
    page.context.close()


def test_a_sheet_has_its_numbers_steps_blanks_and_stops(browser: Browser, site: Path) -> None:
    page = browser.new_context().new_page()
    page.goto((site / "sheets/BYP-02-B.html").as_uri())
    text = page.locator("div.paper").inner_text().replace("\u00a0", " ")
    for word in ("2.9346", "2.9375", "3/4 turn", "270°, 6 of 8 slots", "0.0630", "0.0660", "set wrench 2 to 160", "check", "1 of 1"):
        assert word in text
    assert [stop for stop in ("S1", "S2", "S3", "S4", "S5", "S6", "S7", "S8") if f"sign {stop}" not in text] == []
    box = page.locator(".box b").first.evaluate("one => parseFloat(getComputedStyle(one).fontSize)")
    assert box / 96 * 72 >= 18
    page.context.close()


def test_the_file_for_phones_needs_nothing_else(browser: Browser, site: Path, tmp_path: Path) -> None:
    shutil.copy(site / "phone/MIL-03.html", tmp_path / "MIL-03.html")
    asked: list[str] = []
    context = browser.new_context(viewport={"width": 320, "height": 700}, java_script_enabled=False)
    page = context.new_page()
    page.on("request", lambda request: asked.append(request.url))
    page.goto((tmp_path / "MIL-03.html").as_uri())
    assert [url for url in asked if not url.startswith("data:")] == [(tmp_path / "MIL-03.html").as_uri()]
    assert page.locator("ol.steps li").count() > 60
    assert page.locator("html").evaluate("one => one.scrollWidth") <= 320
    assert (tmp_path / "MIL-03.html").stat().st_size < 500_000
    context.close()


def test_what_is_read_in_inches_is_written_in_inches(browser: Browser, site: Path) -> None:
    page = browser.new_context().new_page()
    page.goto((site / "sheets/BYP-02-B.html").as_uri())
    assert page.locator(".do .blanks i").all_inner_texts()[:2] == ["smallest, in", "largest, in"]
    page.goto((site / "records/BYP-02-B.html").as_uri())
    assert "2.9346 to 2.9375 in" in (text := page.locator(".record").inner_text().replace("\u00a0", " "))
    assert "apart by 0.0005 in at most" in text and "µm" not in text
    page.goto((site / "sheets/INT-02-B.html").as_uri())
    assert page.locator(".do .blanks i").all_inner_texts()[:2] == ["smallest, mm", "largest, mm"]
    page.context.close()


def test_the_float_left_is_held_against_what_it_is_set_to(browser: Browser, site: Path) -> None:
    page = browser.new_context().new_page()
    page.goto((site / "records/DRY-03-A.html").as_uri())
    row = page.locator("tr", has_text="float left")
    assert row.locator(".band").inner_text().replace("\u00a0", " ") == "3.45 mm and 2.55 mm"
    assert row.locator(".blanks i").all_inner_texts() == ["toward the drive end", "toward the impeller end"]
    page.context.close()
