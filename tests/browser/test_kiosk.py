"""The kiosk set up, found its way about, and without scripts: on the real site of the demo plant."""

from __future__ import annotations

import json
from collections.abc import Callable, Iterator
from pathlib import Path
from typing import Any

import pytest
from playwright.sync_api import Browser, Page, expect

from tests.browser.conftest import KIOSK, PHONE, REFUSED
from tests.browser.hand import Hand


@pytest.fixture
def screen(browser: Browser) -> Iterator[Page]:
    """A touched kiosk with storage of its own."""
    context = browser.new_context(viewport=KIOSK, has_touch=True)
    yield context.new_page()
    context.close()


# ---- the set-up page


def test_the_ruler_gives_the_zoom(screen: Page, site: Path) -> None:
    screen.goto((site / "kiosk.html").as_uri())
    answer = screen.locator("[data-ruler] [data-answer]")
    expect(answer).to_contain_text("The bar is true")
    bar = screen.locator(".setup-bar").bounding_box()
    assert bar is not None and abs(bar["width"] - 100 / 25.4 * 96) < 1  # CSS Values 4: 1 in is 96 px
    screen.fill("#ruler", "89,3")
    expect(answer).to_contain_text("zoom to 112 %")
    expect(answer).to_contain_text("nearest step of most browsers is 110 %: the bar is then 98 mm")
    screen.fill("#ruler", "80")
    screen.fill("#zoom", "125")
    expect(answer).to_contain_text("zoom to 156 %")
    screen.fill("#zoom", "80")
    expect(answer).to_contain_text("zoom to 100 %")
    screen.fill("#ruler", "66")
    screen.fill("#zoom", "100")
    expect(answer).to_contain_text("845 px of width")  # 1280 x 0.66
    screen.locator("[data-step='1']").tap()
    expect(screen.locator("#ruler")).to_have_value("67")


def test_touches_are_counted_in_fields_of_true_size(screen: Page, site: Path) -> None:
    hand = Hand(screen)
    screen.goto((site / "kiosk.html").as_uri())
    large, small = screen.locator("[data-field='large']"), screen.locator("[data-field='small']")
    large.scroll_into_view_if_needed()
    for field, millimetres in ((large, 19), (small, 12)):
        box = field.bounding_box()
        assert box is not None and abs(box["width"] - millimetres / 25.4 * 96) < 1 and abs(box["height"] - box["width"]) < 1
    hand.touch(large)
    hand.touch(large)
    hand.touch(small, least=45)
    area = screen.locator(".setup-touch").bounding_box()
    assert area is not None
    screen.clock.fast_forward(400)
    screen.touchscreen.tap(area["x"] + area["width"] - 20, area["y"] + 20)
    expect(screen.locator("[data-touch] [data-answer]")).to_have_text(
        "19 mm: 2 touched. 12 mm: 1 touched. Beside them: 1. Twice within a third of a second: 0."
    )


def test_what_this_browser_keeps_is_tried_and_said(screen: Page, site: Path) -> None:
    setup = (site / "kiosk.html").as_uri()
    screen.goto(setup)
    part = screen.locator("[data-store]")
    expect(part).to_contain_text("Kept:")
    expect(part).to_contain_text("A mark was set now")
    expect(part).to_contain_text("No other page has seen the mark yet")
    screen.goto((site / "machines/INT-02.html").as_uri())
    screen.goto(setup)
    expect(part).to_contain_text("is still there")
    expect(part).to_contain_text("Another page of this folder has seen the mark")


def test_where_storage_is_refused_the_set_up_page_says_so(screen: Page, site: Path) -> None:
    screen.add_init_script(REFUSED)
    screen.goto((site / "kiosk.html").as_uri())
    expect(screen.locator("[data-store]")).to_contain_text("Not kept")
    screen.locator("#kiosk-here").click()
    expect(screen.locator("#kiosk-here")).not_to_be_checked()
    expect(screen.locator("[data-kiosk]")).to_contain_text("keeps no setting")


def test_the_kiosk_switch_is_remembered(screen: Page, site: Path) -> None:
    screen.goto((site / "kiosk.html").as_uri())
    expect(screen.locator("#kiosk-here")).not_to_be_checked()
    screen.locator("#kiosk-here").check()
    screen.reload()
    expect(screen.locator("#kiosk-here")).to_be_checked()
    expect(screen.locator("[data-kiosk]")).to_contain_text("goes back to the start")


# ---- finding by touch


def test_every_bearing_of_the_plant_is_three_touches_away(screen: Page, site: Path) -> None:
    """Start, area, machine, bearing: the links of each page, and the bearing's own among them twice, in the drawing and as a name."""
    bearings = 0
    hrefs: Callable[[str], list[str]] = lambda where: screen.locator(where).evaluate_all("all => all.map(a => a.getAttribute('href'))")  # noqa: E731
    screen.goto((site / "index.html").as_uri())
    for area in hrefs(".rows a[href^='areas/']"):
        screen.goto((site / area).as_uri())
        machines = hrefs(".rows > li > a")
        beside = hrefs(".rows .places a")
        for machine in machines:
            screen.goto((site / "areas" / machine).resolve().as_uri())
            letters = screen.locator(".position").evaluate_all("all => all.map(one => one.id)")
            for letter in letters:
                assert f"#{letter}" in hrefs("figure.drawing svg a")
                assert f"#{letter}" in hrefs(".places a")
                assert f"{machine}#{letter}" in beside
            bearings += len(letters)
    assert bearings == 65


def test_a_new_user_finds_the_second_flange_unit_its_turn_and_its_gap(screen: Page, site: Path) -> None:
    hand = Hand(screen)
    screen.goto((site / "index.html").as_uri())
    hand.touch(screen.get_by_role("link", name="BYP Pellets"))
    hand.touch(screen.get_by_role("link", name="Pellet feed screw"))
    hand.touch(screen.locator("svg.wide a[href='#B']"))
    turn, gap = screen.locator("#B-nut_turn summary"), screen.locator("#B-flange_gap summary")
    while not (hand.sees(turn) and hand.sees(gap)) and hand.touches < 8:
        hand.pull_up()
    assert hand.touches < 5
    expect(turn).to_contain_text("3/4 turn")
    expect(gap).to_contain_text("0.0630")


def test_letters_come_up_on_demand(screen: Page, sample: Path) -> None:
    hand = Hand(screen)
    screen.goto(f"file://{sample}/index.html")
    keys = screen.locator("[data-finder-keys]")
    expect(keys.get_by_role("button", name="Q", exact=True)).to_have_count(0)
    hand.touch(keys.get_by_role("button", name="letters"), least=59.5)
    for letter in "DUST":
        hand.touch(keys.get_by_role("button", name=letter, exact=True), least=59.5)
    hand.touch(keys.get_by_role("button", name="space"), least=59.5)
    hand.touch(keys.get_by_role("button", name="F", exact=True), least=59.5)
    hand.touch(keys.get_by_role("button", name="take the last one away"), least=59.5)
    expect(screen.locator("[data-finder-input]")).to_have_value("DUST ")
    expect(screen.locator("[data-finder-results] .name").first).to_have_text("Dust fan")
    hand.touch(keys.get_by_role("button", name="digits"), least=59.5)
    expect(keys.get_by_role("button", name="7", exact=True)).to_be_visible()
    assert screen.evaluate("document.activeElement.tagName") != "INPUT"


# ---- without scripts


@pytest.fixture(params=[KIOSK, PHONE], ids=["kiosk", "phone"])
def still(browser: Browser, request: Any) -> Iterator[Page]:
    """A screen on which no script runs."""
    context = browser.new_context(viewport=request.param, java_script_enabled=False)
    yield context.new_page()
    context.close()


def test_without_scripts_the_way_to_the_steps_is_whole(still: Page, site: Path) -> None:
    still.goto((site / "index.html").as_uri())
    expect(still.locator(".find")).to_be_hidden()
    expect(still.locator("#unfinished")).to_be_hidden()
    expect(still.get_by_text("No scripts run here.")).to_be_visible()
    still.get_by_role("link", name="BYP Pellets").click()
    still.get_by_role("link", name="Pellet feed screw").click()
    still.locator(".places").get_by_role("link", name="BYP-02 B").click()
    expect(still.locator("#B")).to_be_visible()
    expect(still.locator("#A")).to_be_hidden()
    still.locator(".position:visible .actions").get_by_role("link", name="Put on").click()
    step = still.locator("#B-put-on li[data-act='turn nut']")
    expect(step.locator(".do")).to_contain_text("3/4 turn")
    expect(step.locator(".tick")).to_be_visible()
    expect(still.get_by_role("button", name="One step at a time")).to_have_count(0)


def test_without_scripts_reasons_unfold_and_dark_is_dark(still: Page, site: Path) -> None:
    still.goto((site / "machines/BYP-02.html").as_uri() + "#B")
    reason = still.locator("#B-nut_turn .reason")
    expect(reason).to_be_hidden()
    still.locator("#B-nut_turn summary").click()
    expect(reason).to_be_visible()
    expect(still.get_by_role("link", name="This is wrong").first).to_be_hidden()
    still.get_by_label("Dark").check()
    expect(still.locator("body")).to_have_css("background-color", "rgb(22, 24, 29)")


@pytest.mark.parametrize("page", ["paper/BYP-02.html", "sheets/BYP-02-B.html", "records/BYP-02-B.html", "take/BYP-02.html", "kiosk.html"])
def test_without_scripts_papers_and_set_up_show_nothing_dead(still: Page, site: Path, page: str) -> None:
    still.goto((site / page).as_uri())
    expect(still.locator("main")).to_be_visible()
    assert still.locator("button:visible").count() == 0


def test_the_words_of_scripts_stand_on_every_page_once(screen: Page, site: Path) -> None:
    screen.goto((site / "machines/INT-02.html").as_uri())
    words = json.loads(screen.locator("#words").text_content() or "{}")
    source = "\n".join(path.read_text(encoding="utf-8") for path in sorted((site / "assets").glob("*.js")))
    asked = set(screen.evaluate('text => [...text.matchAll(/say\\("([^"]+)"[,)]/g)].map(found => found[1])', source))
    assert {word for word in asked if word not in words} == set()
