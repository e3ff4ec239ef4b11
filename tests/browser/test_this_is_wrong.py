""" "This is wrong": beside each number and step, a slip and a code that say which one is meant."""

from __future__ import annotations

import io
import re
from collections.abc import Iterator
from pathlib import Path

import numpy as np
import pytest
import zxingcpp
from PIL import Image
from playwright.sync_api import Browser, Page, expect

from tests.browser.conftest import KIOSK
from tests.browser.hand import Hand


@pytest.fixture
def screen(browser: Browser, site: Path) -> Iterator[Page]:
    context = browser.new_context(viewport=KIOSK, has_touch=True)
    page = context.new_page()
    page.goto(f"{(site / 'machines/INT-02.html').as_uri()}#B")
    yield page
    context.close()


def code(page: Page) -> str:
    found = zxingcpp.read_barcodes(
        np.array(Image.open(io.BytesIO(page.locator("dialog .qr").screenshot())).convert("L")), formats=zxingcpp.BarcodeFormat.QRCode
    )
    assert len(found) == 1
    assert found[0].text == page.locator(".slip-text").inner_text()
    return found[0].text


def test_a_number_is_reported_by_its_identity(screen: Page) -> None:
    hand = Hand(screen)
    screen.locator("#B-nut_turn summary, #B-shaft_limits summary").first.click()
    anchor = screen.locator("#B details[open]").first.get_attribute("id")
    assert anchor
    button = screen.locator(f"#{anchor} .wrong")
    button.scroll_into_view_if_needed()
    hand.touch(button)
    shown = screen.locator(f"#{anchor} summary .value").inner_text().split()[0]
    expect(screen.locator("dialog h2")).to_be_focused()
    assert shown in screen.locator("dialog").inner_text()
    hand.touch(screen.get_by_role("button", name="The number looks wrong"), least=72)
    sheet = screen.evaluate("window.seatbookSheet")
    assert re.fullmatch(rf"SB2 INT-02/B/{anchor[2:]} {sheet['issue']} {sheet['code']} number \d\d", code(screen))
    slip = screen.locator("dialog.slip").inner_text()
    for said in (
        "INT-02 B",
        f"INT-02/B/{anchor[2:]}",
        screen.evaluate("window.seatbookIssue"),
        "The number looks wrong",
        shown,
        "Not yet with the engineer",
        "initials",
    ):
        assert said in slip
    assert not re.search(r"\b(saved|sent)\b", slip)


def test_a_step_is_reported_by_what_it_does_with_the_keyboard_alone(screen: Page) -> None:
    step = screen.locator("#B ol.steps:not([data-held]) li.step").nth(2)
    act, job = step.get_attribute("data-act"), step.evaluate("one => one.closest('ol').dataset.job")
    step.locator(".wrong").focus()
    screen.keyboard.press("Enter")
    screen.wait_for_timeout(350)
    for _ in range(3):
        screen.keyboard.press("Tab")
    assert screen.locator(":focus").inner_text() == "It cannot be done so"
    screen.keyboard.press("Enter")
    assert code(screen).startswith(f"SB2 INT-02/B/{job}/{act} ")
    screen.keyboard.press("Escape")
    expect(screen.locator("dialog")).to_have_count(0)


def test_a_bounce_of_the_opening_touch_chooses_nothing(screen: Page) -> None:
    bounce = "one => { const now = Date.now(); Date.now = () => now; one.click(); document.querySelector('dialog .choices button').click(); }"
    screen.locator("#B li.step .wrong").first.evaluate(bounce)
    expect(screen.locator("dialog.ask")).to_be_visible()
    expect(screen.locator("dialog.slip")).to_have_count(0)


def test_every_number_and_step_of_a_page_has_an_identity_of_its_own(screen: Page) -> None:
    screen.evaluate("document.querySelectorAll('main details').forEach(one => { one.open = true; })")
    screen.wait_for_timeout(500)
    missing = screen.evaluate(
        "[...document.querySelectorAll('main details:has(> .reason), main li.step')].filter(one => !one.querySelector('.wrong')).map(one => one.id)"
    )
    assert missing == []
    acts = screen.evaluate(
        "[...document.querySelectorAll('main li.step')].map(one => [one.closest('ol').dataset.at, one.closest('ol').dataset.job, one.dataset.act].join('/'))"
    )
    assert len(acts) == len(set(acts)) > 50
    small = screen.evaluate(
        "[...document.querySelectorAll('.wrong')].filter(one => one.getClientRects().length && one.getBoundingClientRect().height < 47.5).length"
    )
    assert small == 0


def test_the_page_does_not_carry_it_for_each_number(site: Path) -> None:
    text = (site / "machines/INT-02.html").read_text(encoding="utf-8")
    assert text.count("This is wrong") == 1


def test_without_script_the_page_says_how_to_report_on_paper(browser: Browser, site: Path) -> None:
    context = browser.new_context(viewport=KIOSK, java_script_enabled=False)
    page = context.new_page()
    page.goto((site / "machines/INT-02.html").as_uri())
    assert page.locator(".wrong").count() == 0
    assert page.get_by_text("Something wrong on this page?").is_visible()
    context.close()


def test_it_is_not_printed(screen: Page) -> None:
    screen.emulate_media(media="print")
    assert screen.locator(".wrong:visible").count() == 0
