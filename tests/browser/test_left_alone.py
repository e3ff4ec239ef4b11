"""The kiosk left alone: it asks, counts, forgets who signed, and goes back to the start. On the real site of the demo plant."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

import pytest
from playwright.sync_api import Browser, Locator, Page, expect

from tests.browser.conftest import KIOSK, REFUSED

KIOSK_ON = "localStorage.setItem('seatbook-kiosk', 'yes')"
# WCAG 2.2, 2.2.1: a reader is warned, and has at least 20 seconds to stay
LEAST_WARNING = 20_000
FIVE_MINUTES = 300_000


@pytest.fixture
def screen(browser: Browser) -> Iterator[Page]:
    """A touched kiosk with storage of its own."""
    context = browser.new_context(viewport=KIOSK, has_touch=True)
    yield context.new_page()
    context.close()


@pytest.fixture
def left_alone(screen: Page, sample: Path) -> Page:
    """A screen set up as a kiosk, on a machine's page, its clock in our hands."""
    screen.goto(f"file://{sample}/index.html")
    screen.evaluate(KIOSK_ON)
    screen.clock.install(time="2026-11-25T08:00:00")
    screen.clock.pause_at("2026-11-25T09:00:00")
    screen.goto(f"file://{sample}/machines/INT-02.html")
    return screen


def idle(page: Page) -> Locator:
    """The question."""
    return page.locator("dialog.idle")


def test_after_five_minutes_it_asks_and_after_a_minute_it_goes(left_alone: Page) -> None:
    left_alone.clock.run_for(FIVE_MINUTES - 5_000)
    expect(idle(left_alone)).to_have_count(0)
    left_alone.clock.run_for(7_000)
    expect(idle(left_alone)).to_be_visible()
    assert left_alone.evaluate("document.activeElement.textContent") == "Keep this open"
    left_alone.clock.run_for(LEAST_WARNING)
    expect(idle(left_alone)).to_be_visible()
    left_alone.clock.run_for(60_000 - LEAST_WARNING)
    left_alone.wait_for_url("**/index.html")


@pytest.mark.parametrize("stay", ["touch", "Escape"])
def test_it_stays_where_somebody_answers(left_alone: Page, stay: str) -> None:
    left_alone.clock.run_for(FIVE_MINUTES + 2_000)
    if stay == "touch":
        keep = left_alone.get_by_role("button", name="Keep this open")
        box = keep.bounding_box()
        assert box is not None and box["height"] >= 100
        keep.tap()
    else:
        left_alone.keyboard.press("Escape")
    left_alone.clock.run_for(120_000)
    assert "INT-02" in left_alone.url
    expect(idle(left_alone)).to_have_count(0)


@pytest.mark.parametrize("sign_of_life", ["touch", "key", "scroll"])
def test_any_sign_of_life_begins_the_five_minutes_again(left_alone: Page, sign_of_life: str) -> None:
    left_alone.clock.run_for(FIVE_MINUTES - 20_000)
    if sign_of_life == "touch":
        left_alone.touchscreen.tap(640, 400)
    elif sign_of_life == "key":
        left_alone.keyboard.press("Shift")
    else:
        left_alone.mouse.wheel(0, 300)
        left_alone.wait_for_timeout(100)
    left_alone.clock.run_for(60_000)
    expect(idle(left_alone)).to_have_count(0)


def test_the_count_is_read_out_three_times_only(left_alone: Page) -> None:
    left_alone.clock.run_for(FIVE_MINUTES + 2_000)
    heard = []
    for _ in range(52):
        heard.append(idle(left_alone).get_by_role("status").inner_text())
        left_alone.clock.run_for(1_000)
    assert len(dict.fromkeys(heard)) == 3


def test_signatures_and_what_was_typed_to_find_go_ticks_stay(left_alone: Page) -> None:
    left_alone.evaluate("location.hash = 'B-put-on'")
    left_alone.locator("#B-put-on-1 .tick").check()
    left_alone.locator("#B-put-on-s1").get_by_label("fitter").check()
    left_alone.clock.run_for(FIVE_MINUTES + 2_000)
    left_alone.clock.run_for(61_000)
    left_alone.wait_for_url("**/index.html")
    expect(left_alone.locator("#unfinished li")).to_contain_text("1 of 4 steps")
    assert left_alone.evaluate("Object.keys(sessionStorage).length") == 0
    left_alone.locator("#unfinished a").click()
    left_alone.wait_for_load_state()
    expect(left_alone.locator("#B-put-on-1 .tick")).to_be_checked()
    assert not left_alone.locator("#B-put-on-s1").get_by_label("fitter").is_checked()


def test_never_while_printing(left_alone: Page) -> None:
    left_alone.evaluate("window.dispatchEvent(new Event('beforeprint'))")
    left_alone.clock.run_for(2 * FIVE_MINUTES)
    expect(idle(left_alone)).to_have_count(0)
    left_alone.evaluate("window.dispatchEvent(new Event('afterprint'))")
    left_alone.clock.run_for(FIVE_MINUTES - 5_000)
    expect(idle(left_alone)).to_have_count(0)


@pytest.mark.parametrize("why", ["not set up", "storage refused"])
def test_a_desk_or_a_phone_never_goes_by_itself(screen: Page, sample: Path, why: str) -> None:
    if why == "storage refused":
        screen.add_init_script(REFUSED)
    screen.clock.install()
    screen.goto(f"file://{sample}/machines/INT-02.html")
    screen.clock.run_for(3 * FIVE_MINUTES)
    expect(idle(screen)).to_have_count(0)


def test_crew_numbers_go_and_readings_stay(screen: Page, site: Path) -> None:
    screen.goto((site / "index.html").as_uri())
    screen.evaluate(KIOSK_ON)
    screen.clock.install()
    screen.goto((site / "machines/INT-02.html").as_uri() + "#B-readings")
    form = screen.locator("#B-readings form")
    form.locator("[data-quantity]").first.fill("64.98")
    form.locator("[data-by]").fill("417")
    screen.evaluate(
        "window.addEventListener('seatbook-forget', () => { window.name = document.querySelector('#B-readings [data-by]').value })"
    )
    screen.clock.run_for(FIVE_MINUTES + 2_000)
    screen.clock.run_for(61_000)
    screen.wait_for_url("**/index.html")
    assert screen.evaluate("window.name") == ""
    assert "417" not in screen.evaluate("JSON.stringify(localStorage) + JSON.stringify(sessionStorage)")
    expect(screen.locator("#unfinished li")).to_contain_text("1 typed")
    screen.locator("#unfinished a").click()
    screen.wait_for_load_state()
    expect(form.locator("[data-quantity]").first).to_have_value("64.98")
