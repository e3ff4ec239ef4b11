"""Readings typed at the kiosk: judged by the engine's rule, kept on this screen, given out as slip, code and file."""

from __future__ import annotations

import csv
import io
import json
import random
import re
from collections.abc import Iterator
from dataclasses import replace
from datetime import date
from pathlib import Path
from typing import Any

import numpy as np
import pytest
import zxingcpp
from PIL import Image
from playwright.sync_api import Browser, Locator, Page, expect

from generator.calc.fits import Reading, shaft_readings
from generator.mounting.sheet import MountingStandard
from generator.mounting.standard import mounting_standard
from generator.plant.resolve import read_plant
from generator.site.pages.machine.readings_form import readings_form
from generator.units import convert
from tests.browser.conftest import KIOSK
from tests.browser.hand import Hand
from tests.copies import PLANT, copy_of_demo

ON = date(2026, 11, 25)
# a band of thousandths, of hundredths, in inches, of a press seat, of a small shaft
FORMS = ("INT-02/B", "INT-01/C", "BYP-02/A", "UTL-04/A", "PAK-01/A")
ENGINE = {"inside": "inside", "below the limit": "below", "above the limit": "above", "size inside, form outside": "form"}
GOOD = ("64.981", "64.980", "64.979", "64.982", "64.981", "64.980", "64.983", "64.982", "64.981")
REFUSED = "Object.defineProperty(window, 'localStorage', { get() { throw new DOMException('refused', 'SecurityError'); } });"
# types readings into a form and says what the page says: the verdict's key, and the notes of the nine
TYPE_ALL = """([at, cases]) => { const form = document.querySelector(`form[data-at="${at}"]`), box = form.querySelector('[data-verdict]');
    const seats = [...form.querySelectorAll('[data-quantity^="seat diameter"]')], warm = form.querySelector('[data-quantity="shaft temperature"]');
    return cases.map(([values, degrees]) => { warm.value = degrees; seats.forEach((one, n) => { one.value = values[n]; }); seats[8].dispatchEvent(new Event('input', {bubbles: true}));
        return [box.dataset.is, seats.map(one => one.parentNode.querySelector('.note').textContent)]; }); }"""


@pytest.fixture(scope="module")
def standard() -> MountingStandard:
    plant, _ = read_plant(PLANT, ON)
    assert plant
    return mounting_standard(plant)


@pytest.fixture
def screen(browser: Browser) -> Iterator[Page]:
    context = browser.new_context(viewport=KIOSK, has_touch=True, accept_downloads=True)
    page = context.new_page()
    page.broken = []  # type: ignore[attr-defined]
    page.on("pageerror", lambda error: page.broken.append(str(error)))  # type: ignore[attr-defined]
    yield page
    assert page.broken == []  # type: ignore[attr-defined]
    context.close()


def opened(page: Page, site: Path, at: str) -> Locator:
    """The form of a position, in sight."""
    tag, letter = at.split("/")
    page.goto("about:blank")
    page.goto(f"{(site / f'machines/{tag}.html').as_uri()}#{letter}-readings")
    return page.locator(f"form[data-at='{at}']")


def typed(form: Locator, values: tuple[str, ...], degrees: str = "21") -> None:
    for number, value in enumerate(values):
        form.locator("[data-quantity^='seat diameter']").nth(number).fill(value)
    form.locator("[data-quantity='shaft temperature']").fill(degrees)
    form.page.keyboard.press("Tab")


def field(form: Locator, key: str) -> Locator:
    return form.locator(f"[data-key='{key}']").first


def cases(low: float, high: float, allowed: float, unit: str, digits: int, chance: random.Random) -> Iterator[list[str]]:
    """Nine readings each: about the band's ends and its middle, spread less, as much and more than allowed; some with blanks."""
    step, spread = 10.0**-digits, allowed / convert(1, unit, "um")
    for middle in (low, low + step, (low + high) / 2, high - step, high, low - step, high + step):
        for wide in (0, spread / 2, spread, spread + step, 2 * spread):
            for blanks in (0, 0, 1, 4):
                values = [f"{chance.uniform(middle - wide / 2, middle + wide / 2):.{digits}f}" for _ in range(7)]
                values += [f"{middle - wide / 2:.{digits}f}", f"{middle + wide / 2:.{digits}f}"]
                for at in chance.sample(range(9), blanks):
                    values[at] = ""
                yield values


def by_the_engine(values: list[str], low: float, high: float, allowed: float, unit: str) -> str:
    """The verdict of `calc.fits.shaft_readings`, in millimetres; "not all" where fewer than nine lie inside."""
    there = tuple(Reading(1.0 + number // 3, convert(float(value), unit, "mm")) for number, value in enumerate(values) if value)
    found = ENGINE[shaft_readings(there, convert(low, unit, "mm"), convert(high, unit, "mm"), allowed).verdict]
    return "not all" if found == "inside" and len(there) < 9 else found


@pytest.mark.parametrize("at", FORMS)
def test_the_page_judges_as_the_engine_does(screen: Page, site: Path, standard: MountingStandard, at: str) -> None:
    form = opened(screen, site, at)
    seat = form.locator("[data-quantity^='seat diameter']").first.evaluate("one => ({...one.dataset})")
    sheet = standard.sheet(at)
    assert sheet
    band, spread = sheet.band("shaft_limits"), sheet.number("out_of_round")
    assert band and spread
    unit, low, high, allowed = band.lower.unit, band.lower.content, band.upper.content, convert(spread.content, spread.unit, "um")
    assert seat["unit"] == unit
    tried = list(cases(low, high, allowed, unit, int(seat["digits"]), random.Random(at)))
    found = screen.evaluate(TYPE_ALL, [at, [[values, "20"] for values in tried]])
    for values, (verdict, notes) in zip(tried, found, strict=True):
        assert verdict == by_the_engine(values, low, high, allowed, unit), values
        for value, note in zip(values, notes, strict=True):
            size = convert(float(value), unit, "mm") if value else None
            under, over = (
                (size is not None and size < convert(low, unit, "mm") - 1e-7),
                (size is not None and size > convert(high, unit, "mm") + 1e-7),
            )
            assert note.split(" ")[0] == ("" if size is None else "Under" if under else "Over" if over else "Inside.")
    # in a band as narrow as the form allows, nothing can be inside by size and outside by form
    wider = convert(high - low, unit, "um") > allowed + 1e-6
    assert {verdict for verdict, _ in found} == {"inside", "below", "above", "not all"} | ({"form"} if wider else set())


@pytest.mark.parametrize(
    ("degrees", "judged"), [("17", True), ("23", True), ("23.1", False), ("16.9", False), ("-5", False), ("31", False)]
)
def test_a_warm_or_cold_shaft_is_not_judged(screen: Page, site: Path, degrees: str, judged: bool) -> None:
    form = opened(screen, site, "INT-02/B")
    typed(form, GOOD, degrees)
    expect(form.locator("[data-verdict]")).to_have_attribute("data-is", "inside" if judged else "warm")
    assert ("Inside." in form.locator(".seats").inner_text()) is judged
    assert [field(form, f"seat diameter 1 {way}").input_value() for way in "abc"] == list(GOOD[:3])


def test_what_is_assumed_is_said(screen: Page, site: Path) -> None:
    form = opened(screen, site, "INT-02/B")
    typed(form, GOOD, "")
    expect(form.locator("[data-verdict]")).to_have_text("Size inside, form inside. No temperature of the shaft typed: 20 °C assumed.")


@pytest.mark.parametrize(("at", "value", "asked"), [
    ("INT-02/B", "2.559", True), ("INT-02/B", "1650", True), ("INT-02/B", "64.9", False), ("BYP-02/A", "74.59", True), ("BYP-02/A", "2.93", False),
])  # fmt: skip
def test_the_other_unit_is_asked_about_and_never_changed(screen: Page, site: Path, at: str, value: str, asked: bool) -> None:
    form = opened(screen, site, at)
    typed(form, (value,))
    note = form.locator(".seats .note").first.inner_text()
    assert (f"Is this in {'in' if at == 'BYP-02/A' else 'mm'}?" in note) is asked
    assert form.locator("[data-quantity^='seat']").first.input_value() == value


def test_without_limits_readings_are_taken_and_not_judged(screen: Page, site: Path) -> None:
    form = opened(screen, site, "INT-02/B")
    form.evaluate("form => form.querySelectorAll('[data-low]').forEach(one => { one.dataset.low = one.dataset.high = ''; })")
    typed(form, GOOD)
    expect(form.locator("[data-verdict]")).to_have_text("No limits on file: written, not judged.")
    assert form.locator(".seats .note").all_inner_texts() == [""] * 10


def test_without_a_limit_of_form_nothing_is_said_of_form(screen: Page, site: Path) -> None:
    form = opened(screen, site, "INT-02/B")
    form.evaluate("form => { form.dataset.allowed = ''; }")
    typed(form, GOOD)
    expect(form.locator("[data-verdict]")).to_have_attribute("data-is", "size only")


def test_a_withheld_limit_never_reaches_the_form(standard: MountingStandard) -> None:
    sheet = standard.sheet("INT-02/B")
    assert sheet
    form = readings_form(standard.plant, replace(sheet, lines={}))
    assert (form.limits, form.allowed, form.clearance) == ("", "", ())
    assert {(one.low, one.high) for _, fields in form.seats for one in fields} == {("", "")}


def test_a_figure_is_not_judged_before_it_is_whole(screen: Page, site: Path) -> None:
    form = opened(screen, site, "INT-02/B")
    first = form.locator("[data-quantity^='seat']").first
    first.focus()
    for typed_so_far in ("6", "64", "64.", "64.9"):
        first.press_sequentially(typed_so_far[-1])
        assert form.locator(".seats .note").first.inner_text() == ""
    screen.keyboard.press("Tab")
    expect(form.locator(".seats .note").first).to_have_text("Under 64.926 mm by 0.026.")


def test_a_key_puts_nothing_into_the_page_and_takes_nothing_out(screen: Page, site: Path) -> None:
    """What comes or goes has a page of thousands of values styled anew, which a hand feels; a changed word does not."""
    form = opened(screen, site, "INT-02/B")
    screen.evaluate(
        "new MutationObserver(all => { window.changes = (window.changes || 0) + all.length; }).observe(document.body, {childList: true, subtree: true})"
    )
    typed(form, (*GOOD[:8], "64.900"))
    expect(form.locator("[data-verdict]")).to_have_attribute("data-is", "below")
    assert screen.evaluate("window.changes || 0") == 0


def test_gloved_fingers_type_on_our_own_keys(screen: Page, site: Path) -> None:
    hand = Hand(screen)
    form = opened(screen, site, "INT-02/B")
    form.evaluate("form => form.scrollIntoView()")
    for key in form.locator(".key").all():
        box = key.bounding_box()
        assert box and box["height"] >= 60 and box["width"] >= 60
    for value in GOOD:
        for digit in value:
            screen.wait_for_timeout(160)
            hand.touch(form.locator(f".key[data-key='{digit}']"))
        screen.wait_for_timeout(160)
        hand.touch(form.locator(".key[data-key='next']"))
    assert tuple(one.input_value() for one in form.locator("[data-quantity^='seat']").all()) == GOOD
    expect(form.locator("[data-keys-for]")).to_have_text("temperature of the shaft")
    for _ in range(2):
        hand.touch(form.locator(".key[data-key='2']"))
        screen.wait_for_timeout(160)
    hand.touch(form.locator(".key[data-key='back']"))
    assert field(form, "shaft temperature").input_value() == "2"
    # a stiff glove touches twice
    form.locator(".key[data-key='1']").evaluate("key => { key.click(); key.click(); }")
    assert field(form, "shaft temperature").input_value() == "21"
    expect(form.locator("[data-verdict]")).to_have_text("Size inside, form inside.")


def test_a_keyboard_alone_is_enough(screen: Page, site: Path) -> None:
    form = opened(screen, site, "INT-02/B")
    form.locator("[data-quantity]").first.focus()
    for value in (*GOOD, "21"):
        screen.keyboard.type(value)
        screen.keyboard.press("Enter")
    expect(form.locator("[data-verdict]")).to_have_text("Size inside, form inside.")
    screen.locator(":focus").evaluate("one => one.closest('form').querySelector('[data-phase]').focus()")
    screen.keyboard.press("Space")
    for _ in range(3):
        screen.keyboard.press("Tab")
    assert screen.locator(":focus").inner_text() == "Slip, code and file"
    screen.keyboard.press("Enter")
    expect(screen.locator("dialog.slip h2")).to_be_focused()
    screen.keyboard.press("Escape")
    expect(screen.locator("dialog")).to_have_count(0)
    expect(form.locator("[data-slip]")).to_be_focused()


def test_leaving_a_field_does_not_move_the_page_under_the_finger(screen: Page, site: Path) -> None:
    form = opened(screen, site, "INT-02/B")
    for number, value in enumerate((*GOOD[:8], "64.9")):
        form.locator("[data-quantity^='seat']").nth(number).fill(value)
    form.locator("[value='as-left']").tap()
    expect(form.locator("[value='as-left']")).to_be_checked()
    expect(form.locator("[data-verdict]")).to_have_attribute("data-is", "below")


def test_what_a_slip_needs_is_asked_for(screen: Page, site: Path) -> None:
    form = opened(screen, site, "INT-02/B")
    slip, missing = form.locator("[data-slip]"), form.locator("[data-missing]")
    slip.click()
    expect(missing).to_have_text("Nothing is typed yet.")
    typed(form, ("64,98x",))
    slip.click()
    expect(missing).to_have_text("place 1, direction a: this is no number. Mend it or delete it first.")
    typed(form, ("64,981",))
    slip.click()
    expect(missing).to_have_text("Say first: were they read as found, or as left?")
    form.locator("[value='as-found']").check()
    field(form, "housing temperature 15").fill("31")
    slip.click()
    expect(missing).to_have_text("Type first when the machine was started.")
    expect(screen.locator("dialog")).to_have_count(0)
    form.locator("[data-start]").fill("25.10")
    slip.click()
    expect(screen.locator("dialog")).to_have_count(0)
    form.locator("[data-start]").fill("14.30")
    slip.click()
    expect(screen.locator("dialog.slip")).to_be_visible()


def test_readings_come_back_and_the_crew_number_does_not(screen: Page, site: Path) -> None:
    form = opened(screen, site, "INT-02/B")
    typed(form, GOOD)
    form.locator("[value='as-left']").check()
    form.locator("[data-by]").fill("K7")
    screen.reload()
    assert tuple(one.input_value() for one in form.locator("[data-quantity^='seat']").all()) == GOOD
    expect(form.locator("[data-verdict]")).to_have_attribute("data-is", "inside")
    expect(form.locator("[value='as-left']")).to_be_checked()
    assert form.locator("[data-by]").input_value() == ""
    assert "K7" not in (screen.evaluate("JSON.stringify(localStorage)"))
    assert "Kept on this screen only, not yet with the engineer." in form.inner_text()


def test_readings_of_an_older_sheet_are_told_apart(screen: Page, site: Path) -> None:
    form = opened(screen, site, "INT-02/B")
    typed(form, GOOD)
    expect(form.locator("[data-changed]")).to_be_hidden()
    kept = json.loads(screen.evaluate("localStorage.getItem('seatbook-job:INT-02/B:readings')"))
    screen.evaluate(
        "text => localStorage.setItem('seatbook-job:INT-02/B:readings', text)", json.dumps({**kept, "issue": "0", "code": "OLD"})
    )
    screen.reload()
    expect(form.locator("[data-changed]")).to_contain_text("0 then")


def test_wiped_means_gone_after_asking(screen: Page, site: Path) -> None:
    form = opened(screen, site, "INT-02/B")
    typed(form, GOOD)
    form.locator("[data-wipe]").click()
    screen.wait_for_timeout(350)
    screen.get_by_role("button", name="Leave it as it is").click()
    assert field(form, "seat diameter 1 a").input_value() == GOOD[0]
    form.locator("[data-wipe]").click()
    screen.wait_for_timeout(350)
    screen.get_by_role("button", name="Wipe them").click()
    assert {one.input_value() for one in form.locator("[data-quantity]").all()} == {""}
    assert screen.evaluate("localStorage.getItem('seatbook-job:INT-02/B:readings')") is None


def test_where_storage_is_refused_it_says_so(screen: Page, site: Path) -> None:
    screen.add_init_script(REFUSED)
    form = opened(screen, site, "INT-02/B")
    typed(form, GOOD)
    expect(form.locator("[data-verdict]")).to_have_attribute("data-is", "inside")
    assert "This screen keeps no readings" in form.inner_text()
    assert "Kept on this screen" not in form.inner_text()


def full(form: Locator) -> None:
    """A whole record of a roller bearing, out of band in places."""
    typed(form, ("79.988", "79.986", "79.987", "79.985", "79.920", "79.985", "79.983", "79,982", "79.984"), "19")
    for key, value in (
        ("clearance row 1", "0.12"),
        ("clearance row 2", "0.13"),
        ("clearance left row 1", "0.07"),
        ("clearance left row 2", "0.02"),
    ):
        field(form, key).fill(value)
    form.locator("[data-start]").fill("14.30")
    for after, value in ((15, "31"), (30, "35"), (60, "52"), (120, "40")):
        field(form, f"housing temperature {after}").fill(value)
    form.locator("[value='as-left']").check()
    form.locator("[data-instrument]").fill('micrometer 75-100, "B"')
    form.locator("[data-by]").fill("K7")


def read_code(page: Page) -> str:
    found = zxingcpp.read_barcodes(
        np.array(Image.open(io.BytesIO(page.locator("dialog .qr").screenshot())).convert("L")), formats=zxingcpp.BarcodeFormat.QRCode
    )
    assert len(found) == 1
    return found[0].text


def test_the_code_on_the_screen_says_what_was_typed(screen: Page, site: Path) -> None:
    form = opened(screen, site, "INT-02/B")
    typed(form, GOOD)
    form.locator("[value='as-left']").check()
    form.locator("[data-slip]").click()
    text = read_code(screen)
    assert text == screen.locator(".slip-text").inner_text()
    sheet = screen.evaluate("window.seatbookSheet")
    assert re.fullmatch(
        rf"SB1 INT-02/B {sheet['issue']} {sheet['code']} K-\d{{10}} as-left d1=64.981,64.980,64.979 d2=64.982,64.981,64.980 d3=64.983,64.982,64.981 t=21 \d\d",
        text,
    )
    assert len(text) <= 130
    # 49 modules at most, and four of white on each side
    assert int(screen.locator("dialog .qr").get_attribute("viewBox").split()[-1]) <= 57  # type: ignore[union-attr]


def test_a_full_record_and_inches_fit_a_code_too(screen: Page, site: Path) -> None:
    form = opened(screen, site, "INT-01/B")
    full(form)
    form.locator("[data-slip]").click()
    assert " c=0.12,0.13 l=0.07,0.02 h=14:30,31,35,52,40 by=K7 " in read_code(screen)
    screen.keyboard.press("Escape")
    form = opened(screen, site, "BYP-02/A")
    typed(form, ("2.9350", "2.9351"))
    form.locator("[value='as-found']").check()
    form.locator("[data-slip]").click()
    assert " as-found d1.in=2.9350,2.9351, t=21 " in read_code(screen)


def test_the_file_is_taken_by_the_reader_of_records_and_judged_the_same(screen: Page, site: Path, tmp_path: Path) -> None:
    form = opened(screen, site, "INT-01/B")
    full(form)
    form.locator("[data-slip]").click()
    with screen.expect_download() as download:
        screen.get_by_text("As a file").click()
    plant_folder = copy_of_demo(tmp_path / "plant")
    name = download.value.suggested_filename
    download.value.save_as(plant_folder / "records" / name)
    rows = list(csv.DictReader((plant_folder / "records" / name).open(encoding="utf-8")))
    assert len(rows) == 9 + 1 + 4 + 4
    assert {row["phase"] for row in rows} == {"as-left", "run-in"}
    assert [row["when"][-5:] for row in rows if row["phase"] == "run-in"] == ["14:45", "15:00", "15:30", "16:30"]
    assert {(row["by"], row["instrument"], row["record"]) for row in rows} == {("K7", 'micrometer 75-100, "B"', name[:-4])}
    plant, problems = read_plant(plant_folder, ON)
    assert plant is not None and problems == ()
    position = next(p for m in plant.machines for p in m.positions if p.id == "INT-01/B")
    mine = {(one.quantity, one.when[-5:]): one.value.content for one in position.readings if one.record == name[:-4]}
    assert len(mine) == len(rows)
    assert {key[0]: value for key, value in mine.items()}["seat diameter 3 b"] == 79.982
    verdict = mounting_standard(plant).sheet("INT-01/B").number("seat_verdict")  # type: ignore[union-attr]
    assert verdict is not None and verdict.content == "below the limit"
    expect(form.locator("[data-verdict]")).to_have_attribute("data-is", "below")


def test_the_slip_on_paper_is_alone_and_says_all(screen: Page, site: Path) -> None:
    form = opened(screen, site, "INT-01/B")
    full(form)
    form.locator("[data-slip]").click()
    screen.set_viewport_size({"width": 718, "height": 979})  # 190 x 259 mm at 96 px an inch: the part of A4 and Letter that both print
    screen.emulate_media(media="print")
    shown = screen.evaluate(
        "[...document.body.children].filter(one => one.getClientRects().length && getComputedStyle(one).display !== 'none').map(one => one.className)"
    )
    assert shown == ["slip"]
    slip = screen.locator("dialog.slip")
    assert slip.locator("button:visible, a:visible").count() == 0
    text = slip.inner_text()
    for said in (
        "INT-01 B",
        screen.evaluate("window.seatbookIssue"),
        "79.988, 79.986, 79.987",
        "Size outside, under the limit",
        "Under 79.926 mm by 0.006.",
        "initials",
        "Not yet with the engineer",
    ):
        assert said in text
    assert slip.evaluate("one => one.scrollWidth <= one.clientWidth")
    assert slip.bounding_box()["height"] <= 979  # type: ignore[index]


def test_it_never_says_that_anything_was_saved_or_sent(screen: Page, site: Path) -> None:
    form = opened(screen, site, "INT-01/B")
    full(form)
    form.locator("[data-slip]").click()
    words = (
        form.inner_text()
        + screen.locator("dialog").inner_text()
        + json.dumps(screen.evaluate("JSON.parse(document.getElementById('words').textContent)"))
    )
    assert not re.search(r"\b(saved|sent|submitted|uploaded)\b", words, re.I)


@pytest.mark.parametrize("wide", [320, 360, 853])
def test_a_small_screen_shows_form_and_slip_without_sideways_scrolling(browser: Browser, site: Path, wide: int) -> None:
    context = browser.new_context(viewport={"width": wide, "height": 640}, has_touch=True)
    form = opened(context.new_page(), site, "INT-01/B")
    full(form)
    beyond = "[...document.querySelectorAll('form[data-at=\"INT-01/B\"] *')].filter(one => one.getBoundingClientRect().right > innerWidth + 0.5).length"
    assert form.page.evaluate(beyond) == 0
    form.locator("[data-slip]").click()
    assert form.page.locator("dialog.slip").evaluate(
        "one => one.scrollWidth <= one.clientWidth && one.getBoundingClientRect().right <= innerWidth"
    )
    context.close()


@pytest.mark.parametrize(("dark", "forced"), [(True, "none"), (False, "active"), (True, "active")])
def test_outside_is_told_by_frame_and_words_in_any_colours(screen: Page, site: Path, dark: bool, forced: Any) -> None:
    form = opened(screen, site, "INT-02/B")
    screen.locator("#dark").set_checked(dark)
    screen.emulate_media(forced_colors=forced)
    typed(form, ("64.900", "64.981"))
    style = "one => [getComputedStyle(one).borderTopStyle, parseFloat(getComputedStyle(one).borderTopWidth) > 4]"
    assert field(form, "seat diameter 1 a").evaluate(style) == ["double", True]
    assert field(form, "seat diameter 1 b").evaluate(style) == ["solid", False]
    form.locator("[value='as-left']").check()
    form.locator("[data-slip]").click()
    assert read_code(screen).startswith("SB1 INT-02/B ")


def test_without_script_the_limits_and_blanks_stand_there(browser: Browser, site: Path) -> None:
    context = browser.new_context(viewport=KIOSK, java_script_enabled=False)
    page = context.new_page()
    page.goto(f"{(site / 'machines/INT-02.html').as_uri()}#B-readings")
    section = page.locator("#B-readings")
    assert "64.926 to 65.000" in section.inner_text()
    assert section.locator("form").is_hidden()
    assert section.locator(".boxed td:visible").count() == 9
    assert section.locator("a[href='../records/INT-02-B.html']").is_visible()
    context.close()
