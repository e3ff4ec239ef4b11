"""A problem says that a file can't be taken as meant: where, what is wrong, what would be right."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from difflib import get_close_matches
from pathlib import Path

from generator.say import say
from generator.value import Place


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
        self._found.setdefault(key, Problem(place, self._line(place), max(1, length), wrong, right))

    @property
    def found(self) -> tuple[Problem, ...]:
        """All of them, file by file, from the top."""
        return tuple(self._found[key] for key in sorted(self._found))

    def _line(self, place: Place) -> str:
        if place.file not in self._lines:
            try:
                self._lines[place.file] = (self.folder / place.file).read_text(encoding="utf-8", errors="replace").splitlines()
            except OSError:
                self._lines[place.file] = []
        lines = self._lines[place.file]
        return lines[place.line - 1][:400] if 0 < place.line <= len(lines) else ""


def show_problem(problem: Problem) -> str:
    """A problem as text: place, the line with a mark under it, what is wrong, what would be right."""
    place, line = problem.place, problem.line_text
    head = f"{place.file}:{place.line}:{place.column}: {problem.wrong}"
    if not line.strip():
        return f"{head}\n  {say('right would be: {right}', right=problem.right)}"
    start = min(place.column - 1, len(line))
    # a window keeps the mark in sight on a very long line
    cut = max(0, start - 60)
    window = "".join(c if c.isprintable() else "\ufffd" for c in line[cut : cut + 120])
    mark = " " * (start - cut) + "^" * max(1, min(problem.length, len(window) - (start - cut)))
    return f"{head}\n    {window}\n    {mark}\n  {say('right would be: {right}', right=problem.right)}"


def nearest(name: str, known: Iterable[str]) -> str | None:
    """The known name nearest to a misspelt one, None where none is near."""
    names = {str(one).lower(): str(one) for one in known}
    near = get_close_matches(str(name).lower()[:80], names, n=1, cutoff=0.6)
    return names[near[0]] if near else None
