"""The one door every fixed text for a reader goes through: gettext, so that a second language is a catalogue and no edit.

A sentence is said whole, with named facts in it; it is never glued from pieces.
"""

import gettext
from pathlib import Path

CATALOGUE = Path(__file__).parent / "messages"
# what a plant gives beside it for messages and terms: by kind, by name; and its tag, direction and name
_second: dict[str, dict[str, str]] = {}
_tag: tuple[str, str, str] = ("", "ltr", "")
_current: gettext.NullTranslations = gettext.NullTranslations()


def speak(language: str) -> None:
    """Choose the language of all that is said from here on; English needs no catalogue.

    Raises FileNotFoundError where the language has no catalogue: a caution never falls back silently.
    """
    global _current
    _current = gettext.NullTranslations() if language == "en" else gettext.translation("seatbook", CATALOGUE, languages=[language])


def speak_also(tag: str = "", direction: str = "ltr", texts: dict[str, dict[str, str]] | None = None, name: str = "") -> None:
    """Choose what stands beside safety messages and key terms in a second language; nothing unless said."""
    global _second, _tag
    _second, _tag = texts or {}, (tag, direction, name)


def second_says(kind: str, name: str, **facts: str) -> str:
    """The second language's text of a message or term with its facts filled in, "" where the plant has no second language."""
    text = _second.get(kind, {}).get(name, "")
    return text.format(**facts) if text else ""


def second_tag() -> tuple[str, str, str]:
    """The second language's tag, its direction, and what its speakers call it."""
    return _tag


def say(text: str, /, **facts: object) -> str:
    """The text in the chosen language, with its named facts filled in."""
    said = _current.gettext(text)
    return said.format(**facts) if facts else said


def mark(text: str) -> str:
    """A fixed text that stands in a table and is said later: the catalogue takes it from here."""
    return text


def catalogue() -> gettext.NullTranslations:
    """What the template engine's own extension is given."""
    return _current
