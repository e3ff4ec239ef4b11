"""A problem says that a file can't be taken as meant: where, what is wrong, what would be right."""

from __future__ import annotations

import re
from collections.abc import Iterable
from dataclasses import dataclass
from difflib import get_close_matches
from pathlib import Path

from generator.say import say
from generator.value import Place

# the only line ends there can be: whatever else a program may take for one is refused as a character that is no text
_LINE_END = re.compile(r"\r\n|\r|\n")
_LONGEST_SHOWN = 120


@dataclass(frozen=True, slots=True)
class Problem:
    """Where (file, line, column), the line itself, how much of it is meant, what is wrong, and what would be right."""

    place: Place
    line_text: str
    length: int
    wrong: str
    right: str


class Problems:
    """Gathers the problems of a whole run, each once, in the order of files and lines."""

    def __init__(self, folder: Path) -> None:
        self.folder = folder
        self._found: dict[tuple[str, int, int, str], Problem] = {}
        self._lines: dict[str, list[str]] = {}

    def add(self, place: Place, wrong: str, right: str, length: int = 1) -> None:
        """One more problem; the same one twice is one."""
        key = (place.file, place.line, place.column, wrong)
        self._found.setdefault(key, Problem(place, self.line_of(place), max(1, length), wrong, right))

    @property
    def found(self) -> tuple[Problem, ...]:
        """All of them, file by file, from the top."""
        return tuple(self._found[key] for key in sorted(self._found))

    def line_of(self, place: Place) -> str:
        """The line as it stands in the file; "" where there is none."""
        if place.file not in self._lines:
            self._lines[place.file] = self._read(place.file)
        lines = self._lines[place.file]
        return lines[place.line - 1] if 0 < place.line <= len(lines) else ""

    def remember(self, shown: str, lines: list[str]) -> None:
        """Keeps the lines of a file that was just read, so that it is not read again."""
        self._lines[shown] = lines

    def _read(self, shown: str) -> list[str]:
        path = self.folder / shown
        try:
            ours = path.is_file() and inside(self.folder, path)
            return lines_of(path.read_text(encoding="utf-8-sig", errors="replace")) if ours else []
        except OSError:
            return []


def show_problem(problem: Problem) -> str:
    """A problem as text: place, the line with a mark under it, what is wrong, what would be right."""
    place, line = problem.place, problem.line_text
    head = f"{place.file}:{place.line}:{place.column}: {_one_line(problem.wrong)}"
    right = f"  {say('right would be: {right}', right=_one_line(problem.right))}"
    if not line.strip():
        return f"{head}\n{right}"
    start = min(max(place.column - 1, 0), len(line))
    # a window keeps the mark in sight on a very long line
    cut = max(0, start - _LONGEST_SHOWN // 2) if len(line) > _LONGEST_SHOWN else 0
    window = "".join(c if c.isprintable() else "\ufffd" for c in line[cut : cut + _LONGEST_SHOWN])
    mark = " " * (start - cut) + "^" * max(1, min(problem.length, len(window) - (start - cut)))
    return f"{head}\n    {window}\n    {mark}\n{right}"


def _one_line(text: str) -> str:
    return " ".join(text.split())


def inside(folder: Path, path: Path) -> bool:
    """Whether a file really lies in the folder, links followed."""
    return path.resolve().is_relative_to(folder.resolve())


def lines_of(text: str) -> list[str]:
    """The lines of a text, as YAML counts them."""
    return _LINE_END.split(text)


def nearest(name: str, known: Iterable[str]) -> str | None:
    """The known name nearest to a misspelt one, None where none is near."""
    names = {str(one).lower(): str(one) for one in known}
    near = get_close_matches(str(name).lower()[:80], names, n=1, cutoff=0.6)
    return names[near[0]] if near else None
