"""The real site of the demo plant in real Chromium, opened from its folder, with the network watched."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path
from typing import Any

import pytest

PLANT = Path(__file__).parents[2] / "plant_data"
PAGES = (
    "index.html", "areas/int.html", "machines/BYP-02.html", "machines/UTL-01.html", "machines/UTL-02.html", "rounds/int.html", "year.html",
    "findings.html", "release.html", "documents.html", "basis.html", "describe.html", "revisions.html", "glossary.html", "training/index.html",
    "training/t3-sleeve-and-nut.html", "not-covered.html", "kiosk.html",
)  # fmt: skip


@pytest.fixture
def page(browser: Any) -> Iterator[Any]:
    context = browser.new_context(viewport={"width": 1280, "height": 800}, has_touch=True)
    one = context.new_page()
    one.asked = []
    one.on("request", lambda request: one.asked.append(request.url))
    yield one
    context.close()


@pytest.mark.parametrize("url", PAGES)
def test_every_kind_of_page_asks_nothing_of_another_machine(page: Any, site: Path, url: str) -> None:
    page.goto((site / url).as_uri())
    assert [asked for asked in page.asked if not asked.startswith(("file:", "data:"))] == []
    assert page.locator(".banner").inner_text().strip()
    assert page.locator("h1").inner_text().strip()
    assert page.evaluate("document.documentElement.scrollWidth") <= 1280


@pytest.mark.parametrize(
    ("typed", "first"),
    [("INT-02", "INT-02"), ("int2", "INT-02"), ("INT 02", "INT-02"), ("UTL-1", "UTL-01"), ("ITN-02", "INT-02"), ("Orvane 14", "Orvane 14")],
)
def test_the_finder_finds(page: Any, site: Path, typed: str, first: str) -> None:
    page.goto((site / "index.html").as_uri())
    page.fill("[data-finder-input]", typed)
    page.wait_for_selector("[data-finder-results] a")
    assert first in page.locator("[data-finder-results] a").first.inner_text()


@pytest.mark.parametrize(
    ("typed", "among"), [("Brelloch barrel 90", "Brelloch barrel 90"), ("weld", "glossary"), ("micrometer", "measure")]
)
def test_the_finder_finds_a_designation_and_words_of_the_guides(page: Any, site: Path, typed: str, among: str) -> None:
    page.goto((site / "index.html").as_uri())
    page.fill("[data-finder-input]", typed)
    page.wait_for_selector("[data-finder-results] a")
    found = page.locator("[data-finder-results] a").evaluate_all("all => all.map(a => a.textContent + ' ' + a.getAttribute('href'))")
    assert any(among.lower() in one.lower() for one in found)


@pytest.mark.parametrize("tag", ["BYP-02", "INT-02", "WSH-02", "UTL-04"])
def test_every_number_of_a_machine_page_has_a_reason_that_unfolds(page: Any, site: Path, tag: str) -> None:
    page.goto((site / f"machines/{tag}.html").as_uri())
    boxes = page.locator("main details")
    assert boxes.count() > 20
    empty = page.evaluate(
        "[...document.querySelectorAll('main details')].filter(d => !d.querySelector('.reason') || !d.querySelector('.reason').textContent.trim()).map(d => d.id)"
    )
    assert empty == []


def test_a_withheld_number_says_what_would_release_it(page: Any, site: Path) -> None:
    page.goto((site / "machines/BYP-03.html").as_uri())
    box = page.locator("#A-nut_turn")
    assert "HELD" in box.locator("summary").inner_text()
    assert "Would release it" in (box.locator(".reason").text_content() or "")


def test_touching_a_bearing_shows_its_values(page: Any, site: Path) -> None:
    page.goto((site / "machines/INT-02.html").as_uri())
    assert page.locator("#A").is_visible() and not page.locator("#B").is_visible()
    page.locator("svg a[href='#B']:visible").first.click()
    assert page.locator("#B").is_visible() and not page.locator("#A").is_visible()


def test_a_phone_reads_it_without_sideways_scrolling(browser: Any, site: Path) -> None:
    context = browser.new_context(viewport={"width": 320, "height": 640})
    one = context.new_page()
    for url in ("machines/BYP-02.html", "rounds/int.html", "findings.html", "basis.html"):
        one.goto((site / url).as_uri())
        assert one.evaluate("document.documentElement.scrollWidth") <= 320, url
    context.close()
