"""Every fixed text is in the catalogue, so that a second language is a translation and no edit of the program."""

from __future__ import annotations

from io import BytesIO
from pathlib import Path

from babel.messages.extract import extract_from_dir
from babel.messages.pofile import read_po

HOUSE = Path(__file__).parents[1] / "generator"
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
    assert extracted() - listed == set(), "make the catalogue anew: python -m generator.messages"
    assert listed - extracted() == set(), "make the catalogue anew: python -m generator.messages"


def test_the_templates_say_nothing_outside_the_catalogue() -> None:
    import re

    for path in HOUSE.rglob("*.html"):
        text = re.sub(
            r"\{#.*?#\}|\{%.*?%\}|\{\{.*?\}\}|<style>.*?</style>|<[^>]*>|&\w+;", " ", path.read_text(encoding="utf-8"), flags=re.DOTALL
        )
        loose = [word for word in re.findall(r"[A-Za-z]{3,}", text) if word not in LITERAL]
        assert loose == [], path


# words of the files themselves, the same in every language
LITERAL = {"kind", "record", "issue", "position", "when", "phase", "quantity", "value", "unit", "instrument", "note"}
