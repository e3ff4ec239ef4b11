"""What every page must do for the one who reads it: on the kiosk, on a phone, in the dark, on paper, without script."""

from __future__ import annotations

from pathlib import Path

import pytest
from playwright.sync_api import Browser, Page, expect

# WCAG 2.2, 1.4.10 reflow: 320 px wide without scrolling sideways; 2.5.5 targets of 44 px
REFLOW = {"width": 320, "height": 700}
# A4 less 10 mm margins, at 96 px an inch: 190 mm
PAPER = 718


def test_the_chosen_position_is_the_one_in_the_address_and_needs_no_script(browser: Browser, sample: Path) -> None:
    page = browser.new_context(java_script_enabled=False).new_page()
    page.goto(f"file://{sample}/machines/INT-02.html")
    expect(page.locator("#A")).to_be_visible()
    expect(page.locator("#B")).to_be_hidden()
    page.goto(f"file://{sample}/machines/INT-02.html#B-limits")
    expect(page.locator("#A")).to_be_hidden()
    expect(page.locator("#B")).to_be_visible()
    page.context.close()


def test_a_link_to_a_value_opens_its_reason(kiosk: Page, sample: Path) -> None:
    kiosk.goto(f"file://{sample}/machines/INT-02.html#B-limits")
    expect(kiosk.locator("#B-limits")).to_have_attribute("open", "")
    expect(kiosk.locator("#B-turn")).not_to_have_attribute("open", "")


def test_dark_is_remembered_from_page_to_page(kiosk: Page, served: str) -> None:
    kiosk.goto(f"{served}/index.html")
    kiosk.get_by_label("Dark").check()
    kiosk.goto(f"{served}/machines/INT-02.html")
    expect(kiosk.get_by_label("Dark")).to_be_checked()
    assert background(kiosk) == "rgb(22, 24, 29)"
    kiosk.get_by_label("Dark").uncheck()
    assert background(kiosk) == "rgb(251, 250, 247)"


@pytest.mark.parametrize("page", ["index.html", "areas/int.html", "machines/INT-02.html", "machines/INT-02.html#B-turn"])
def test_no_page_scrolls_sideways_on_the_smallest_screen(browser: Browser, sample: Path, page: str) -> None:
    small = browser.new_context(viewport=REFLOW).new_page()
    small.goto(f"file://{sample}/{page}")
    assert small.evaluate("document.documentElement.scrollWidth") <= REFLOW["width"]
    small.context.close()


def test_paper_shows_every_column_of_the_widest_table(kiosk: Page, sample: Path) -> None:
    kiosk.set_viewport_size({"width": PAPER, "height": 1000})
    kiosk.goto(f"file://{sample}/machines/INT-02.html")
    kiosk.emulate_media(media="print")
    for cell in kiosk.locator("table.wide th, table.wide td").all():
        box = cell.bounding_box()
        assert box is not None
        assert box["x"] >= 0
        assert box["x"] + box["width"] <= PAPER
        assert cell.evaluate("cell => cell.scrollWidth <= cell.clientWidth + 1")


def test_paper_shows_every_position_the_banner_and_the_check_code(kiosk: Page, sample: Path) -> None:
    kiosk.goto(f"file://{sample}/machines/INT-02.html#B")
    kiosk.emulate_media(media="print")
    expect(kiosk.locator("#A")).to_be_visible()
    expect(kiosk.locator("#B")).to_be_visible()
    expect(kiosk.locator(".banner")).to_be_visible()
    expect(kiosk.get_by_text("Check code B2-K7Q4.")).to_be_visible()
    expect(kiosk.get_by_role("link", name="Find", exact=True)).to_be_hidden()


def test_paper_is_black_on_white_even_from_a_dark_screen(kiosk: Page, sample: Path) -> None:
    kiosk.goto(f"file://{sample}/machines/INT-02.html")
    kiosk.get_by_label("Dark").check()
    kiosk.emulate_media(media="print")
    assert background(kiosk) == "rgb(255, 255, 255)"
    assert kiosk.evaluate("getComputedStyle(document.body).color") == "rgb(0, 0, 0)"


def test_the_triangle_stands_for_injury_alone(kiosk: Page, sample: Path) -> None:
    """ISO 3864-2 and ANSI Z535.4: a message about damage only carries no safety alert symbol (from memory)."""
    kiosk.goto(f"file://{sample}/machines/INT-02.html")
    counts = {word: kiosk.locator(f"main > .safety.{word} .word svg").count() for word in ("danger", "warning", "caution", "notice")}
    assert counts == {"danger": 1, "warning": 1, "caution": 1, "notice": 0}


def test_what_is_touched_is_large_enough_for_a_glove(kiosk: Page, sample: Path) -> None:
    kiosk.goto(f"file://{sample}/index.html")
    for target in kiosk.locator(".top .button, .key, .rows a, .foot a").all():
        box = target.bounding_box()
        assert box is not None
        assert box["height"] >= 47.5, target.inner_text()


def background(page: Page) -> str:
    """The colour behind everything."""
    return str(page.evaluate("getComputedStyle(document.body).backgroundColor"))
