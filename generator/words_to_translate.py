"""`seatbook words`: the file of the second language with everything that has to stand in it; what is done already stays as it is."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

from generator.plant.load import read_second_language
from generator.plant.model.second_language import Phrase, SecondLanguage
from generator.plant.problems import Problems
from generator.plant.second_language import FILE
from generator.safety import source_of, sources
from generator.say import say
from generator.terms import TERMS


def words_to_translate(folder: Path) -> tuple[int, str]:
    """The text of the file, and how many of its entries still want a text or an approval. Raises nothing: a file that can't be read is begun anew beside it."""
    done = read_second_language(folder, Problems(folder))
    lines = list(_head(done))
    wanting = 0
    for key, wanted in (("messages", {one: source_of(one) for one in sources()}), ("terms", {term: term for term in TERMS})):
        lines.append(f"{key}:")
        given = {str(name): phrase for name, phrase in getattr(done, key).items()} if done else {}
        for name, source in wanted.items():
            phrase = given.get(name)
            wanting += phrase is None or str(phrase.of) != source
            lines += _entry(name, source, phrase)
    return wanting, "\n".join(lines) + "\n"


def _head(done: SecondLanguage | None) -> Iterator[str]:
    yield say("# Safety messages and key terms in a second language. An entry without a text, or older than its source, stops publishing.")
    yield f"language: {done.language if done else 'de'}"
    yield f"name: {_quoted(str(done.name)) if done else 'Deutsch'}"
    if done and done.writes is not None:
        yield f"writes: {done.writes}"


def _entry(name: str, source: str, phrase: Phrase | None) -> Iterator[str]:
    yield f"  {name}:"
    if phrase is not None and str(phrase.of) != source:
        yield "    " + say("# its source has changed; it now says: {source}", source=source)
    yield f"    of: {_quoted(str(phrase.of) if phrase else source)}"
    if phrase is None:
        yield "    " + say("# says, approved_by and on are wanting")
        return
    yield f"    says: {_quoted(str(phrase.says))}"
    yield f"    approved_by: {_quoted(str(phrase.approved_by))}"
    yield f"    on: {phrase.on.content}"


def _quoted(text: str) -> str:
    return '"' + text.replace("\\", "\\\\").replace('"', '\\"') + '"'


__all__ = ["FILE", "words_to_translate"]
