"""The finder, in a browser: what a gloved hand types finds the machine, from a folder and from a server, without any other computer.

The ways a tag is typed, and that the answer comes while typing, are our own demands on a kiosk; common practice, no source.
"""

from __future__ import annotations

from pathlib import Path

import pytest
from playwright.sync_api import Page, expect

from tests.browser.sample import sample_site

BOX = "[data-finder-input]"
RESULTS = "[data-finder-results]"


def tags(page: Page, typed: str) -> list[str]:
    """The names found, in order."""
    page.fill(BOX, typed)
    page.wait_for_selector(f"{RESULTS} .found-count")
    return page.locator(f"{RESULTS} .tag").all_inner_texts()


@pytest.mark.parametrize("typed", ["int2", "INT 02", "INT-02", "int02", "Int_2", " int-2 "])
def test_a_tag_is_found_however_it_is_typed(kiosk: Page, sample: Path, typed: str) -> None:
    kiosk.goto(f"file://{sample}/index.html")
    assert tags(kiosk, typed)[0] == "INT-02"


def test_a_tag_is_found_before_those_it_begins(kiosk: Page, sample: Path) -> None:
    kiosk.goto(f"file://{sample}/index.html")
    found = tags(kiosk, "int1")
    assert found[0] == "INT-01"
    assert "INT-10" in found


@pytest.mark.parametrize(
    ("typed", "found"),
    [
        ("itn-07", "INT-07"),  # two changed about
        ("in-07", "INT-07"),  # one less
        ("intt-07", "INT-07"),  # one more
        ("imt-07", "INT-07"),  # one other
        ("bukcet", "INT-01"),
        ("buckt elevator", "INT-01"),
        ("elevatr", "INT-01"),
        ("adpter", "adapter sleeve"),
    ],
)
def test_one_slip_is_forgiven(kiosk: Page, sample: Path, typed: str, found: str) -> None:
    kiosk.goto(f"file://{sample}/index.html")
    assert found in tags(kiosk, typed)


def test_two_slips_are_not_forgiven(kiosk: Page, sample: Path) -> None:
    kiosk.goto(f"file://{sample}/index.html")
    kiosk.fill(BOX, "bxcktt")
    expect(kiosk.locator(RESULTS)).to_contain_text("Nothing found")
    expect(kiosk.locator(f"{RESULTS} a")).to_have_count(0)


def test_what_fits_is_not_mixed_with_what_nearly_fits(kiosk: Page, sample: Path) -> None:
    kiosk.goto(f"file://{sample}/index.html")
    assert {tag[:6] for tag in tags(kiosk, "int-07")} == {"INT-07"}


def test_a_position_a_part_a_document_and_a_text_are_found(kiosk: Page, sample: Path) -> None:
    kiosk.goto(f"file://{sample}/index.html")
    assert tags(kiosk, "int 2 b")[0] == "INT-02 B"
    assert tags(kiosk, "insert 65")[0] == "Tarrow insert 65"
    assert tags(kiosk, "tarrow 14")[0] == "Tarrow 14"
    assert tags(kiosk, "hand tight") == ["Sleeve and nut"]
    assert tags(kiosk, "shaft below limit") == ["shaft below limit"]


def test_results_stand_under_their_kind(kiosk: Page, sample: Path) -> None:
    kiosk.goto(f"file://{sample}/index.html")
    tags(kiosk, "int-02")
    assert kiosk.locator(f"{RESULTS} h3").all_inner_texts() == ["Machines", "Positions"]


def test_a_result_leads_to_the_machine(kiosk: Page, sample: Path) -> None:
    kiosk.goto(f"file://{sample}/index.html")
    kiosk.fill(BOX, "wsh3")
    kiosk.locator(f"{RESULTS} a").first.click()
    expect(kiosk.locator("h1")).to_contain_text("WSH-03")


def test_the_keypad_needs_no_keyboard(phone: Page, sample: Path) -> None:
    phone.goto(f"file://{sample}/index.html")
    for key in ("MIL", "1", "9"):
        phone.get_by_role("button", name=key, exact=True).tap()
    phone.get_by_role("button", name="take the last one away").tap()
    expect(phone.locator(BOX)).to_have_value("MIL1")
    expect(phone.locator(f"{RESULTS} .tag").first).to_have_text("MIL-01")
    assert phone.evaluate("document.activeElement.tagName") != "INPUT"


def test_the_button_on_every_page_leads_into_the_box(kiosk: Page, sample: Path) -> None:
    kiosk.goto(f"file://{sample}/machines/INT-02.html")
    kiosk.get_by_role("link", name="Find", exact=True).click()
    expect(kiosk.locator(BOX)).to_be_focused()


def test_nothing_leaves_the_machine(kiosk: Page, sample: Path, served: str, outside: list[str]) -> None:
    for start in (f"file://{sample}", served):
        for page in ("index.html", "areas/int.html", "machines/INT-02.html"):
            kiosk.goto(f"{start}/{page}")
        kiosk.goto(f"{start}/index.html")
        assert tags(kiosk, "int2")[0] == "INT-02"
    assert outside == []


def test_the_list_is_fetched_only_when_the_box_is_touched(kiosk: Page, served: str) -> None:
    asked: list[str] = []
    kiosk.on("request", lambda request: asked.append(request.url))
    kiosk.goto(f"{served}/index.html")
    assert not [url for url in asked if url.endswith("finder-index.js")]
    kiosk.locator(BOX).focus()
    kiosk.wait_for_function("window.seatbookIndex")
    assert [url for url in asked if url.endswith("finder-index.js")]


def test_without_script_every_area_can_still_be_reached(browser: object, sample: Path) -> None:
    page = browser.new_context(java_script_enabled=False).new_page()  # type: ignore[attr-defined]
    page.goto(f"file://{sample}/index.html")
    expect(page.locator(BOX)).to_be_hidden()
    page.get_by_role("link", name="MIL").click()
    page.get_by_role("link", name="MIL-02").click()
    page.get_by_role("link", name="B free").click()
    expect(page.locator("#B")).to_be_visible()
    expect(page.locator("#A")).to_be_hidden()
    page.context.close()


def test_among_twenty_thousand_entries_the_right_one_comes_first(kiosk: Page, tmp_path: Path) -> None:
    kiosk.goto(f"file://{sample_site(tmp_path, machines=1000)}/index.html")
    assert tags(kiosk, "int334")[0] == "INT-334"
    assert "MIL-300" in tags(kiosk, "mli-300")
