"""Jobs on a shift: ticks that come back, a sheet that changed meanwhile, what storage refuses, unfinished jobs on the start page."""

from __future__ import annotations

import json
from pathlib import Path
from typing import Any

import pytest
from playwright.sync_api import Browser, Page, expect

from tests.browser.conftest import KIOSK
from tests.browser.hand import Hand

KEY = "seatbook-job:INT-02/B:put on"
REFUSED = "Object.defineProperty(window, 'localStorage', { get() { throw new DOMException('refused', 'SecurityError'); } });"


@pytest.fixture
def screen(browser: Browser) -> Any:
    """A touched kiosk with storage of its own."""
    context = browser.new_context(viewport=KIOSK, has_touch=True)
    yield context.new_page()
    context.close()


def job(page: Page, sample: Path, anchor: str = "B-put-on") -> None:
    """The job opened from its address, whatever was open before."""
    page.goto("about:blank")
    page.goto(f"file://{sample}/machines/INT-02.html#{anchor}")


def kept(page: Page) -> dict[str, Any] | None:
    """What stands in storage for the job."""
    text = page.evaluate("key => localStorage.getItem(key)", KEY)
    return json.loads(text) if text else None


def step(page: Page, number: int | str) -> Any:
    """The tick of a step, or the step."""
    return page.locator(f"#B-put-on-{number}")


def test_ticks_come_back_and_are_kept_under_the_step_and_the_sheet(screen: Page, sample: Path) -> None:
    job(screen, sample)
    screen.clock.install()
    step(screen, 1).locator(".tick").check()
    step(screen, 3).locator(".tick").check()
    found = kept(screen)
    assert found is not None
    assert (found["ticks"], found["issue"], found["code"], found["of"], found["next"]) == (
        ["B-put-on-1", "B-put-on-3"],
        "4",
        "K7Q4B2",
        4,
        "B-put-on-2",
    )
    job(screen, sample)
    assert [step(screen, n).locator(".tick").is_checked() for n in (1, 2, 3, 4)] == [True, False, True, False]
    expect(screen.locator("#B .job-count").first).to_contain_text("2 of 4 steps ticked")
    expect(screen.locator("#B .job-count").first).to_contain_text("on this screen only")
    assert not screen.locator("#A-put-on-1 .tick").is_checked()


def test_typed_readings_of_the_same_job_are_left_alone(screen: Page, sample: Path) -> None:
    job(screen, sample)
    screen.evaluate("window.seatbookKept.set('INT-02/B', 'put on', { readings: { 'seat diameter 1 a': '64.98' } })")
    step(screen, 1).locator(".tick").check()
    found = kept(screen)
    assert found is not None
    assert (found["ticks"], found["readings"]) == (["B-put-on-1"], {"seat diameter 1 a": "64.98"})


def test_a_stop_stays_signed_for_this_visit_and_never_enters_what_lasts(screen: Page, sample: Path) -> None:
    job(screen, sample)
    step(screen, 1).locator(".tick").check()
    step(screen, "s1").get_by_label("fitter").check()
    job(screen, sample)
    assert step(screen, "s1").get_by_label("fitter").is_checked()
    assert not step(screen, "s1").get_by_label("second person").is_checked()
    assert "s1" not in json.dumps(kept(screen))
    assert screen.evaluate("Object.keys(localStorage).filter(name => name.includes('sign'))") == []


@pytest.mark.parametrize(
    ("before", "says"),
    [
        ({"issue": "3", "code": "OLD111"}, "issue 3 then, 4 now"),
        ({"issue": "4", "code": "OLD111"}, "check code OLD111 then, K7Q4B2 now"),
        ({"issue": "4", "code": "K7Q4B2", "print": "other"}, "The steps have changed"),
    ],
)
def test_a_sheet_that_changed_is_not_ticked_silently(screen: Page, sample: Path, before: dict[str, str], says: str) -> None:
    job(screen, sample)
    data = {"started": "2026-11-20", "ticks": ["B-put-on-1", "B-put-on-2"], "readings": {}, **before}
    screen.evaluate("([key, data]) => localStorage.setItem(key, data)", [KEY, json.dumps(data)])
    job(screen, sample)
    line = screen.locator("#B .job-count").first
    expect(line).to_contain_text(says)
    expect(line).to_contain_text("Steps ticked then: 1, 2")
    assert screen.locator("#B .tick:checked").count() == 0
    step(screen, 4).locator(".tick").check()
    assert kept(screen) == data  # what was ticked under the other sheet is not written over
    hand = Hand(screen)
    screen.locator("#B .job-head").scroll_into_view_if_needed()
    hand.touch(screen.locator("#B").get_by_role("button", name="Begin anew"))
    hand.touch(screen.locator("dialog").get_by_role("button", name="Begin anew"))
    assert kept(screen) is None
    assert screen.locator("#B .tick:checked").count() == 0
    step(screen, 1).locator(".tick").check()
    found = kept(screen)
    assert found is not None and found["code"] == "K7Q4B2"


def test_a_job_ended_on_another_day_is_not_the_next_one(screen: Page, sample: Path) -> None:
    job(screen, sample)
    for number in (1, 2, 3, 4):
        step(screen, number).locator(".tick").check()
    screen.evaluate("window.seatbookKept.set('INT-02/B', 'put on', { started: '2025-01-10' })")
    job(screen, sample)
    expect(screen.locator("#B .job-count").first).to_contain_text("begun 2025-01-10. For another one, begin anew")
    assert screen.locator("#B .tick:checked").count() == 0


def test_begin_anew_asks_first(screen: Page, sample: Path) -> None:
    job(screen, sample)
    step(screen, 1).locator(".tick").check()
    hand = Hand(screen)
    hand.touch(screen.locator("#B").get_by_role("button", name="Begin anew"))
    expect(screen.locator("dialog")).to_contain_text("INT-02 B, Put on")
    hand.touch(screen.get_by_role("button", name="Leave it as it is"))
    assert step(screen, 1).locator(".tick").is_checked()
    assert kept(screen) is not None
    hand.touch(screen.locator("#B").get_by_role("button", name="Begin anew"))
    screen.keyboard.press("Escape")
    assert kept(screen) is not None


def test_a_bounce_does_not_untick_and_does_not_answer(screen: Page, sample: Path) -> None:
    screen.clock.install()
    job(screen, sample)
    screen.clock.pause_at("2030-01-01")
    tick = step(screen, 1).locator(".tick")
    tick.click()
    screen.clock.run_for(120)
    tick.click()
    assert tick.is_checked()
    screen.clock.run_for(400)
    tick.click()
    assert not tick.is_checked()
    screen.clock.run_for(400)
    tick.click()
    screen.locator("#B").get_by_role("button", name="Begin anew").click()
    screen.locator("dialog").get_by_role("button", name="Begin anew").click()
    expect(screen.locator("dialog")).to_be_visible()


def test_where_storage_is_refused_ticks_live_as_long_as_the_page_and_it_says_so(screen: Page, sample: Path) -> None:
    screen.add_init_script(REFUSED)
    job(screen, sample)
    assert screen.evaluate("window.seatbookKept.lasts") is False
    expect(screen.locator("#B .job-count").first).to_contain_text("keeps no ticks")
    step(screen, 1).locator(".tick").check()
    assert screen.evaluate("window.seatbookKept.get('INT-02/B', 'put on').ticks") == ["B-put-on-1"]
    job(screen, sample)
    assert screen.locator("#B .tick:checked").count() == 0


@pytest.mark.parametrize("broken", ["{", "[]", "7", '{"ticks": "all", "readings": [1]}', '{"ticks": [1, null, {}]}'])
def test_broken_storage_hurts_no_page(screen: Page, sample: Path, broken: str) -> None:
    faults: list[object] = []
    screen.on("pageerror", lambda fault: faults.append(fault))
    job(screen, sample)
    screen.evaluate("([key, data]) => localStorage.setItem(key, data)", [KEY, broken])
    job(screen, sample)
    screen.goto(f"file://{sample}/index.html")
    assert faults == []


def test_the_start_page_leads_back_to_the_next_step(screen: Page, sample: Path) -> None:
    screen.goto(f"file://{sample}/index.html")
    expect(screen.locator("#unfinished")).to_be_hidden()
    job(screen, sample)
    step(screen, 1).locator(".tick").check()
    screen.goto(f"file://{sample}/index.html")
    line = screen.locator("#unfinished li")
    expect(line).to_contain_text("INT-02 B")
    expect(line).to_contain_text("Put on")
    expect(line).to_contain_text("1 of 4 steps, begun 20")
    expect(line).to_contain_text("on this screen only")
    Hand(screen).touch(line.get_by_role("link"))
    expect(step(screen, 2)).to_be_in_viewport()
    expect(step(screen, 1).locator(".tick")).to_be_checked()


def test_dropping_an_unfinished_job_asks(screen: Page, sample: Path) -> None:
    job(screen, sample)
    step(screen, 1).locator(".tick").check()
    screen.goto(f"file://{sample}/index.html")
    hand = Hand(screen)
    hand.touch(screen.get_by_role("button", name="Drop it: INT-02 B"))
    expect(screen.locator("#unfinished li")).to_have_count(1)
    hand.touch(screen.locator("dialog").get_by_role("button", name="Drop it"))
    expect(screen.locator("#unfinished")).to_be_hidden()
    assert kept(screen) is None


def test_a_job_ticked_to_its_end_is_not_unfinished(screen: Page, sample: Path) -> None:
    job(screen, sample)
    for number in (1, 2, 3, 4):
        step(screen, number).locator(".tick").check()
    screen.goto(f"file://{sample}/index.html")
    expect(screen.locator("#unfinished")).to_be_hidden()
