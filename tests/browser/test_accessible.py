"""Every kind of page held against WCAG 2.2 A, AA and AAA rules by axe-core, in light and dark, at the kiosk and on a phone."""

from __future__ import annotations

from pathlib import Path
from typing import Any

import pytest
from axe_playwright_python.sync_playwright import Axe
from playwright.sync_api import Browser

PAGES = (
    "index.html", "areas/int.html", "machines/BYP-02.html", "rounds/int.html", "year.html", "findings.html", "release.html", "documents.html", "basis.html",
    "describe.html", "damage.html", "revisions.html", "glossary.html", "training/index.html", "training/t10-watch.html", "training/read-a-page.html",
    "training/sign-off.html", "not-covered.html", "kiosk.html", "paper/INT-01.html", "take/INT-01.html", "labels/INT-01.html", "sheets/BYP-02-B.html",
    "sheets/BYP-02-A.html", "records/INT-01-A.html", "phone/MIL-03.html",
)  # fmt: skip
RULES = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "wcag2aaa", "best-practice"]
LOOKS = {"kiosk": ((1280, 800), ""), "dark": ((1280, 800), "dark"), "phone": ((390, 844), "")}
# pages of which many hold the same: looked at in one look only, since they are long
ONCE = ("basis.html", "describe.html", "machines/BYP-02.html", "findings.html", "glossary.html")


@pytest.mark.parametrize(("look", "url"), [(look, url) for look in LOOKS for url in PAGES if look == "kiosk" or url not in ONCE])
def test_axe_finds_nothing(browser: Browser, site: Path, look: str, url: str) -> None:
    (width, height), theme = LOOKS[look]
    context = browser.new_context(viewport={"width": width, "height": height})
    page = context.new_page()
    page.goto((site / url).as_uri())
    if theme:
        page.evaluate("document.documentElement.dataset.theme = 'dark'")
    # a reference page is thousands of like rows: thirty parts of it are as good as all
    page.evaluate("Array.from(document.querySelectorAll('main > section, main > article')).slice(30).forEach(one => one.remove())")
    found: Any = Axe().run(page, options={"runOnly": {"type": "tag", "values": RULES}, "resultTypes": ["violations"]})
    assert [(one["id"], one["nodes"][0]["target"], len(one["nodes"])) for one in found.response["violations"]] == []
    context.close()


def test_axe_finds_nothing_on_a_position_with_steps_and_reasons_open(browser: Browser, site: Path) -> None:
    context = browser.new_context(viewport={"width": 1280, "height": 800})
    page = context.new_page()
    page.goto((site / "machines/MIL-03.html").as_uri() + "#B")
    page.evaluate("document.querySelectorAll('#B details').forEach((one, n) => { if (n % 9 === 0) one.open = true; })")
    found: Any = Axe().run(page, context="#B", options={"runOnly": {"type": "tag", "values": RULES}, "resultTypes": ["violations"]})
    assert [(one["id"], one["nodes"][0]["target"], len(one["nodes"])) for one in found.response["violations"]] == []
    context.close()
