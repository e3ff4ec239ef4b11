"""Every fixed text is in the catalogue, so that a second language is a translation and no edit of the program."""

from __future__ import annotations

import re
from datetime import date
from gettext import NullTranslations
from html import unescape
from io import BytesIO
from pathlib import Path

import pytest
from babel.messages.extract import extract_from_dir
from babel.messages.pofile import read_po

from generator import say
from generator.messages.described import described
from generator.mounting.standard import mounting_standard
from generator.plant.resolve import read_plant
from generator.site import build, papers, render
from generator.site.build import site_of
from generator.site.frame import Page

HOUSE = Path(__file__).parents[1] / "generator"
PLANT = Path(__file__).parents[1] / "plant_data"
METHODS = [("**.py", "python"), ("**.html", "jinja2.ext:babel_extract")]
KEYWORDS = {"say": None, "told": None, "mark": None, "_": None, "gettext": None}


def extracted() -> set[str]:
    """Every text that passes through gettext."""
    options = {"**.html": {"silent": "false", "trimmed": "true"}}
    return {
        str(message) for _, _, message, _, _ in extract_from_dir(HOUSE, METHODS, options, KEYWORDS) if isinstance(message, str) and message
    }


def test_the_catalogue_holds_every_text() -> None:
    catalogue = read_po(BytesIO((HOUSE / "messages" / "seatbook.pot").read_bytes()))
    listed = {str(message.id) for message in catalogue if message.id}
    wanted = extracted() | described()
    assert wanted - listed == set(), "make the catalogue anew: python -m generator.messages"
    assert listed - wanted == set(), "make the catalogue anew: python -m generator.messages"


def test_the_templates_say_nothing_outside_the_catalogue() -> None:
    for path in HOUSE.rglob("*.html"):
        text = re.sub(
            r"\{#.*?#\}|\{%.*?%\}|\{\{.*?\}\}|<style>.*?</style>|<[^>]*>|&\w+;", " ", path.read_text(encoding="utf-8"), flags=re.DOTALL
        )
        loose = [word for word in re.findall(r"[A-Za-z]{3,}", text) if word not in LITERAL]
        assert loose == [], path


# words of the files themselves, the same in every language
LITERAL = {"dense", "kind", "record", "issue", "position", "when", "phase", "quantity", "value", "unit", "instrument", "note"}


class Bracketed(NullTranslations):
    """A made-up language: every text stands in brackets."""

    def gettext(self, message: str) -> str:
        return f"\u27e6{message}\u27e7"


def test_no_text_of_a_page_stands_outside_the_catalogue(monkeypatch: pytest.MonkeyPatch) -> None:
    """What is left of a page without the brackets is data of the plant, numbers, units and the words of sources."""
    monkeypatch.setattr(say, "_current", Bracketed())
    render.environment.cache_clear()
    for module in (build, papers):
        monkeypatch.setattr(module, "kept", lambda _plant, _machine, make, _name="": make())
    plant, _ = read_plant(PLANT, date(2026, 11, 25))
    assert plant
    data = {word for path in PLANT.rglob("*") if path.suffix in (".yml", ".csv") for word in words(path.read_text(encoding="utf-8"))}
    data |= {word for path in (HOUSE / "tables").glob("*.csv") for word in words(path.read_text(encoding="utf-8"))}
    try:
        outside = {text: page.url for page in site_of(mounting_standard(plant)).pages if page.url in LOOKED_AT for text in loose(page, data)}
    finally:
        render.environment.cache_clear()
    assert outside == {}


LOOKED_AT = (
    "index.html", "areas/int.html", "machines/INT-02.html", "machines/MIL-01.html", "machines/BYP-02.html", "sheets/INT-02-B.html", "sheets/BYP-02-A.html",
    "records/INT-01-A.html", "take/INT-01.html", "labels/INT-01.html", "paper/INT-01.html", "rounds/int.html", "findings.html", "release.html", "year.html", "revisions.html",
)  # fmt: skip


def words(text: str) -> list[str]:
    return re.findall(r"[A-Za-z]{3,}", text)


def loose(page: Page, data: set[str]) -> set[str]:
    """Stretches of two or more words between tags that no bracket holds and no data explains."""
    body = page.body() if callable(page.body) else page.body
    text = re.sub(r"<(style|math|script).*?</\1>", "", unescape(str(body)), flags=re.DOTALL)
    text = re.sub(r"<code>.*?</code>|<[^>]*>|[\w/<>-]+\.(yml|csv)", "|", text)
    while (shorter := re.sub("\u27e6[^\u27e6\u27e7]*\u27e7", "", text)) != text:
        text = shorter
    stretches = ([word for word in words(stretch) if word not in data] for stretch in text.split("|"))
    return {" ".join(left) for left in stretches if len(left) >= 2}
