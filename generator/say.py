"""The one door every fixed text for a reader goes through: gettext, so that a second language is a catalogue and no edit.

A sentence is said whole, with named facts in it; it is never glued from pieces.
"""

import gettext
from pathlib import Path

CATALOGUE = Path(__file__).parent / "messages"
_current: gettext.NullTranslations = gettext.NullTranslations()


def speak(language: str) -> None:
    """Choose the language of all that is said from here on; English needs no catalogue.

    Raises FileNotFoundError where the language has no catalogue: a caution never falls back silently.
    """
    global _current
    _current = gettext.NullTranslations() if language == "en" else gettext.translation("seatbook", CATALOGUE, languages=[language])


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
