"""`seatbook words`: the file of the second language with everything that has to stand in it; what is done already stays as it is."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from itertools import takewhile
from pathlib import Path
from typing import Any

from generator.plant.load import read_second_tree
from generator.plant.problems import Problems, show_problem
from generator.plant.read import Tree
from generator.plant.second_language import FILE, facts_of
from generator.safety import source_of, sources
from generator.say import say
from generator.terms import TERMS

# what an entry needs beside the text it was made from, and how the place for it is held open
ASKED = {"says": '"..."', "approved_by": '"..."', "on": "YYYY-MM-DD"}


class WordsRefused(Exception):
    """The file there is can't be read, so nothing is written over it; the text says where."""


@dataclass(frozen=True)
class _Entry:
    """A message or term, its present text, and whatever the file has of it, whole or not."""

    name: str
    source: str
    typed: Mapping[str, str]

    @property
    def whole(self) -> bool:
        return self._now == self.source and all(key in self.typed for key in ASKED) and facts_of(self.typed["says"]) == facts_of(self.source)

    @property
    def _now(self) -> str:
        return self.typed.get("of", self.source)

    def lines(self) -> Iterator[str]:
        yield f"  {self.name}:"
        if self._now != self.source:
            yield "    # " + say("its source has changed; it now says: {source}", source=self.source)
        yield f"    of: {_quoted(self._now)}"
        for key, example in ASKED.items():
            text = self.typed.get(key)
            if text is None:
                yield f"    # {key}: {example}"
            else:
                yield f"    {key}: {text if key == 'on' else _quoted(text)}"
        for key in self.typed.keys() - ASKED.keys() - {"of"}:
            yield f"    {key}: {_quoted(self.typed[key])}"


def words_to_translate(folder: Path) -> tuple[int, str]:
    """How many entries still want a text or an approval, and the text of the file. Raises WordsRefused where the file there is can't be read."""
    problems = Problems(folder)
    done = read_second_tree(folder, problems)
    if problems.found:
        raise WordsRefused("\n\n".join(show_problem(one) for one in problems.found))
    lines, wanting = list(_head(folder, done)), 0
    for key, wanted in (("messages", {one: source_of(one) for one in sources()}), ("terms", {term: term for term in TERMS})):
        given = _typed(done, key)
        entries = [_Entry(name, source, given.get(name, {})) for name, source in wanted.items()]
        wanting += sum(not entry.whole for entry in entries)
        lines += [f"{key}:", *(line for entry in entries for line in entry.lines())]
        lines += [f"  # {line}" for name, typed in given.items() if name not in wanted for line in _left_over(name, typed)]
    return wanting, "\n".join(lines) + "\n"


def _typed(done: Tree | None, key: str) -> dict[str, dict[str, str]]:
    """What the file has under a key, by name."""
    section = done.under(key) if done is not None else None
    if not isinstance(section, Tree):
        return {}
    return {str(name): {str(field): str(text) for field, text in body.items()} for name, body in section.items() if isinstance(body, Tree)}


def _left_over(name: str, typed: Mapping[str, str]) -> Iterator[str]:
    yield say("{name} is no name of a message or term:", name=name)
    yield from (f"{key}: {_quoted(text)}" for key, text in typed.items())


def _head(folder: Path, done: Tree | None) -> Iterator[str]:
    if done is None:
        yield "# " + say("Safety messages and key terms in a second language. An entry without a text, or older than its source, stops publishing.")
        yield "# " + say("Take the # away where you fill in. A fact in braces stays as it is.")
        yield 'language: "de"'
        yield 'name: "Deutsch"'
        return
    yield from takewhile(lambda line: line.startswith("#"), (folder / FILE).read_text(encoding="utf-8-sig").splitlines())
    for key in ("language", "name", "writes"):
        typed: Any = done.under(key)
        if typed is not None:
            yield f"{key}: {_quoted(str(typed))}"


def _quoted(text: str) -> str:
    return '"' + text.replace("\\", "\\\\").replace('"', '\\"') + '"'


__all__ = ["FILE", "WordsRefused", "words_to_translate"]
