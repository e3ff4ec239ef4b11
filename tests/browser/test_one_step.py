"""One step at a time: the step alone and large, its message before it, stops that hold, keys that stay where they are."""

from __future__ import annotations

from pathlib import Path
from typing import Any

import pytest
from axe_playwright_python.sync_playwright import Axe
from playwright.sync_api import Browser, Locator, Page, expect

from tests.browser.conftest import KIOSK, PHONE
from tests.browser.hand import Hand
from tests.browser.test_accessible import RULES

# 20 minutes of arc at one metre on a 15.4 inch screen of 1280 px are 32 px of text (ISO 9241-303, from memory); figures larger still
TEXT, FIGURE, KEY = 32, 40, 76


@pytest.fixture(params=[KIOSK, PHONE], ids=["kiosk", "phone"])
def screen(browser: Browser, request: Any) -> Any:
    """A touched screen of either size."""
    context = browser.new_context(viewport=request.param, has_touch=True)
    yield context.new_page()
    context.close()


@pytest.fixture
def hand(screen: Page, sample: Path) -> Hand:
    """The hand that has just begun to put B on, one step at a time."""
    return begin(screen, sample)


def begin(screen: Page, sample: Path) -> Hand:
    """From the job's place on the page."""
    hand = Hand(screen)
    screen.goto(f"file://{sample}/machines/INT-02.html#B-put-on")
    hand.touch(screen.locator("#B").get_by_role("button", name="One step at a time"), least=72)
    return hand


def key(hand: Hand, name: str) -> Locator:
    """A key of the bar."""
    return hand.page.locator(".step-bar").get_by_role("button", name=name, exact=True)


def title(hand: Hand) -> str:
    """Where one is."""
    return hand.page.locator(".step-head h1").inner_text()


def size(place: Locator) -> float:
    """The size of its text."""
    return float(place.evaluate("place => parseFloat(getComputedStyle(place).fontSize)"))


def sign(hand: Hand, number: str) -> None:
    """Both sign."""
    for who in ("fitter", "second person"):
        hand.touch(hand.page.locator(f"#B-put-on-{number}").get_by_text(who, exact=True))


def test_only_the_step_is_shown_and_where_it_stands(hand: Hand) -> None:
    assert title(hand) == "Step 1 of 4"
    expect(hand.page.locator(".step-head")).to_contain_text("INT-02 B, Put on")
    expect(hand.page.locator(".step-head")).to_contain_text("check K7Q4B2")
    expect(hand.page.locator(".step-head")).to_contain_text("Next stop: S1, after step 1.")
    expect(hand.page.locator("#B-put-on-1")).to_be_visible()
    for other in ("#B-put-on-2", ".top", ".banner", "#B .numbers", "#findings", "main > .safety"):
        expect(hand.page.locator(other).first).to_be_hidden()
    assert hand.page.evaluate("document.activeElement.textContent") == "Step 1 of 4"


def test_it_is_read_at_a_metre(browser: Browser, sample: Path) -> None:
    page = browser.new_context(viewport=KIOSK, has_touch=True).new_page()
    hand = begin(page, sample)
    sign_and_reach_two(hand)
    hand.touch(key(hand, "Next"))
    assert size(page.locator("#B-put-on-3 .do")) >= TEXT
    assert size(page.locator("#B-put-on-3 .fig")) >= FIGURE
    page.context.close()


def test_the_message_stands_in_the_step_before_the_action(hand: Hand) -> None:
    sign_and_reach_two(hand)
    message, action = hand.page.locator("#B-put-on-2 .safety").bounding_box(), hand.page.locator("#B-put-on-2 .do").bounding_box()
    assert message is not None and action is not None
    assert message["y"] + message["height"] <= action["y"]


def sign_and_reach_two(hand: Hand) -> None:
    """Over the first stop."""
    hand.touch(key(hand, "Next"))
    sign(hand, "s1")
    hand.touch(key(hand, "Next"))
    assert title(hand) == "Step 2 of 4"


def test_the_keys_stay_where_they_are_and_are_large(hand: Hand) -> None:
    boxes = []
    for _ in range(3):
        boxes.append([key(hand, name).bounding_box() for name in ("Back", "All steps", "Next")])
        if hand.page.locator("li.sign.here").count():
            sign(hand, "s1")
        hand.touch(key(hand, "Next"))
    assert boxes[0] == boxes[1] == boxes[2]
    assert all(box and box["height"] >= KEY for box in boxes[0])


def test_a_stop_holds_until_all_have_signed(hand: Hand) -> None:
    hand.touch(key(hand, "Next"))
    assert title(hand).startswith("S1, after step 1")
    hand.touch(hand.page.locator("#B-put-on-s1").get_by_text("fitter", exact=True))
    hand.touch(key(hand, "Next"))
    assert title(hand).startswith("S1")
    expect(hand.page.get_by_role("alert")).to_contain_text("S1 is not signed")
    hand.touch(hand.page.locator("#B-put-on-s1").get_by_text("second person", exact=True))
    expect(hand.page.get_by_role("button", name="Go on unsigned")).to_be_hidden()
    hand.touch(key(hand, "Next"))
    assert title(hand) == "Step 2 of 4"


def test_a_stop_says_which_steps_before_it_have_no_tick(hand: Hand) -> None:
    hand.touch(key(hand, "Next"))
    expect(hand.page.locator(".step-missing")).to_have_text("Not ticked: 1.")
    hand.touch(key(hand, "Back"))
    hand.touch(hand.page.locator("#B-put-on-1 .tick"), least=72)
    hand.touch(key(hand, "Next"))
    expect(hand.page.locator(".step-missing")).to_be_empty()


def test_going_on_unsigned_is_asked_for_and_stays_marked(hand: Hand) -> None:
    hand.touch(key(hand, "Next"))
    hand.touch(key(hand, "Next"))
    hand.touch(hand.page.get_by_role("button", name="Go on unsigned"), least=72)
    assert title(hand) == "Step 2 of 4"
    expect(hand.page.locator(".step-missing")).to_contain_text("Not signed on this screen: S1.")
    hand.touch(key(hand, "All steps"))
    expect(hand.page.locator("#B-put-on-s1")).to_contain_text("Gone on unsigned")
    hand.page.reload()
    expect(hand.page.locator("#B-put-on-s1")).to_contain_text("Gone on unsigned")
    expect(hand.page.locator("#B-put-on-s5")).not_to_contain_text("Gone on unsigned")


def test_a_tick_is_the_same_tick_as_in_the_list(hand: Hand) -> None:
    hand.touch(hand.page.locator("#B-put-on-1 .tick"))
    hand.touch(key(hand, "All steps"))
    expect(hand.page.locator("#B-put-on-1 .tick")).to_be_checked()
    expect(hand.page.locator(".top")).to_be_visible()
    expect(hand.page.locator("#B-put-on-2")).to_be_visible()
    hand.page.locator("#B").get_by_role("button", name="One step at a time").scroll_into_view_if_needed()
    hand.touch(hand.page.locator("#B").get_by_role("button", name="One step at a time"))
    assert title(hand).startswith("S1"), "goes on where the ticks end, at the stop nobody signed"


def test_its_drawing_comes_with_the_step_and_a_figure_unfolds_its_reason_there(hand: Hand) -> None:
    sign_and_reach_two(hand)
    hand.touch(key(hand, "Next"))
    expect(hand.page.locator("#B figure.drawing")).to_be_visible()
    expect(hand.page.locator("#B-turn")).to_be_hidden()
    hand.touch(hand.page.locator("#B-put-on-3 .fig"), least=30)
    expect(hand.page.locator("#B-turn .reason")).to_be_visible()
    expect(hand.page.locator("#B-put-on-3")).to_be_visible()
    assert title(hand) == "Step 3 of 4"
    hand.touch(key(hand, "Next"))
    expect(hand.page.locator("#B-turn")).to_be_hidden()
    expect(hand.page.locator("#B figure.drawing")).to_be_hidden()


def test_a_bounce_goes_one_step_only(screen: Page, sample: Path) -> None:
    hand = begin(screen, sample)
    screen.clock.pause_at("2030-01-01")
    screen.clock.run_for(1000)
    key(hand, "Next").click()
    screen.clock.run_for(100)
    key(hand, "Next").click()
    assert title(hand).startswith("S1")
    expect(screen.get_by_role("button", name="Go on unsigned")).to_be_hidden()


def test_by_keyboard_alone(hand: Hand) -> None:
    order = []
    for _ in range(3):
        hand.page.keyboard.press("Tab")
        order.append(hand.page.evaluate("document.activeElement.getAttribute('aria-label') || document.activeElement.textContent"))
    assert order == ["Step 1 done", "All steps", "Next"]
    hand.page.clock.fast_forward(400)
    hand.page.keyboard.press("Enter")
    assert title(hand).startswith("S1")
    hand.page.keyboard.press("Escape")
    expect(hand.page.locator(".top")).to_be_visible()
    expect(hand.page.locator("#B-put-on-s1")).to_be_in_viewport()


def test_paper_is_whole_meanwhile(hand: Hand) -> None:
    hand.page.emulate_media(media="print")
    for place in ("#A", "#B-put-on-2", "#findings", ".banner"):
        expect(hand.page.locator(place)).to_be_visible()
    expect(hand.page.locator(".step-bar")).to_be_hidden()


def test_a_held_job_has_no_steps_one_at_a_time(hand: Hand) -> None:
    hand.touch(key(hand, "All steps"))
    expect(hand.page.locator("#B-take-off .job-head")).to_have_count(0)
    expect(hand.page.locator("#B").get_by_role("button", name="One step at a time")).to_have_count(1)


def test_axe_finds_nothing_one_step_at_a_time(hand: Hand) -> None:
    """WCAG 2.2 A to AAA and good practice, by axe-core: a step, a stop, a stop that is not signed."""
    for _ in range(3):
        found: Any = Axe().run(hand.page, options={"runOnly": {"type": "tag", "values": RULES}, "resultTypes": ["violations"]})
        assert [(one["id"], one["nodes"][0]["target"]) for one in found.response["violations"]] == []
        hand.touch(key(hand, "Next"))
