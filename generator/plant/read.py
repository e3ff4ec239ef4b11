"""YAML as typed: every scalar kept as text, every key and value with its place; what YAML would read another way is refused."""

from __future__ import annotations

from pathlib import Path
from typing import Any

import yaml

from generator.plant.problems import Problems
from generator.say import say
from generator.value import Place

BIGGEST = 5_000_000
DEEPEST = 30
_LOADER: Any = getattr(yaml, "CSafeLoader", yaml.SafeLoader)


class Word(str):
    """A scalar as typed, with its place."""

    __slots__ = ("place",)
    place: Place

    def __new__(cls, text: str, place: Place) -> Word:
        word = super().__new__(cls, text)
        word.place = place
        return word


class Tree(dict[Word, Any]):
    """A mapping as typed, with its place."""

    place: Place


class Listing(list[Any]):
    """A sequence as typed, with its place."""

    place: Place


def read_tree(path: Path, shown: str, problems: Problems) -> Tree | None:
    """The mapping a file holds, None where it can't be read; its problems say why."""
    top = _read(path, shown, problems)
    if top is None or isinstance(top, Tree):
        return top
    problems.add(top.place, say("the file holds no mapping"), say("lines of `key: value`"))
    return None


def read_listing(path: Path, shown: str, problems: Problems) -> Listing | None:
    """The list a file holds, None where it can't be read."""
    top = _read(path, shown, problems, empty_is_fine=True)
    if top is None or isinstance(top, Listing):
        return top
    problems.add(top.place, say("the file holds no list"), say("each entry begins with `- `"))
    return None


def inside(folder: Path, path: Path) -> bool:
    """Whether a file really lies in the folder, links followed."""
    return path.resolve().is_relative_to(folder.resolve())


def _read(path: Path, shown: str, problems: Problems, empty_is_fine: bool = False) -> Any:
    text = _text(path, shown, problems)
    if text is None:
        return None
    try:
        node = yaml.compose(text, Loader=_LOADER)
    except yaml.YAMLError as bad:
        mark = getattr(bad, "problem_mark", None) or getattr(bad, "context_mark", None)
        place = Place(shown, mark.line + 1, mark.column + 1) if mark else Place(shown, 1)
        problems.add(place, _in_plain_words(bad), say("check colons, dashes and how far in each line begins; quote text that holds `: ` or begins with a sign"))
        return None
    except RecursionError:
        problems.add(Place(shown, 1), say("nested too deep"), say("no plant file needs more than {count} levels", count=DEEPEST))
        return None
    if node is None:
        if not empty_is_fine:
            problems.add(Place(shown, 1), say("the file is empty"), say("`seatbook start FOLDER` shows what belongs in it"))
        return None
    return _Taker(shown, problems).taken(node, 0)


def _text(path: Path, shown: str, problems: Problems) -> str | None:
    top = Place(shown, 1)
    try:
        if path.stat().st_size > BIGGEST:
            problems.add(top, say("the file is too big"), say("a plant file has at most {count} MB", count=BIGGEST // 1_000_000))
            return None
        data = path.read_bytes()
    except OSError:
        problems.add(top, say("the file cannot be read"), say("is it a plain file, and may it be read?"))
        return None
    try:
        text = data.decode("utf-8-sig")
    except UnicodeDecodeError as bad:
        line = data[: bad.start].count(b"\n") + 1
        problems.add(Place(shown, line), say("this is no UTF-8 text"), say("save the file as UTF-8"))
        return None
    for number, line_text in enumerate(text.splitlines(), 1):
        if "\t" in line_text[: len(line_text) - len(line_text.lstrip())]:
            problems.add(Place(shown, number), say("a tab at the beginning of the line"), say("spaces; YAML takes no tabs there"))
            return None
        odd = next((i for i, c in enumerate(line_text) if not c.isprintable() and c != "\t"), None)
        if odd is not None:
            problems.add(Place(shown, number, odd + 1), say("a character that is no text"), say("plain text; is this the right file?"))
            return None
    return text


class _Taker:
    """Turns composed nodes into words, trees and listings; remembers the nodes it met, since an alias is a node met twice."""

    def __init__(self, shown: str, problems: Problems) -> None:
        self.shown, self.problems = shown, problems
        self.met: set[int] = set()

    def taken(self, node: Any, depth: int) -> Any:
        place = Place(self.shown, node.start_mark.line + 1, node.start_mark.column + 1)
        if id(node) in self.met:
            self.problems.add(place, say("anchors and aliases are not read"), say("`usual`, `like` and `unit` keep one from repeating oneself"))
            return Word("", place)
        self.met.add(id(node))
        if depth > DEEPEST:
            self.problems.add(place, say("nested too deep"), say("no plant file needs more than {count} levels", count=DEEPEST))
            return Word("", place)
        if isinstance(node, yaml.ScalarNode):
            if not node.tag.startswith("tag:yaml.org,2002:"):
                self.problems.add(place, say("the tag {tag} is not read", tag=node.tag), say("plain text"))
            return Word(node.value, place)
        if isinstance(node, yaml.SequenceNode):
            listing = Listing(self.taken(one, depth + 1) for one in node.value)
            listing.place = place
            return listing
        return self._mapping(node, depth, place)

    def _mapping(self, node: Any, depth: int, place: Place) -> Tree:
        tree = Tree()
        tree.place = place
        for key, value in node.value:
            at = Place(self.shown, key.start_mark.line + 1, key.start_mark.column + 1)
            if not isinstance(key, yaml.ScalarNode):
                self.problems.add(at, say("a key that is no word"), say("`key: value`"))
            elif key.value == "<<":
                self.problems.add(at, say("merge keys are not read"), say("`usual`, `like` and `unit` keep one from repeating oneself"), 2)
            elif key.value in tree:
                first = next(k for k in tree if k == key.value)
                right = say("the other is in line {line}; keep one", line=first.place.line)
                self.problems.add(at, say("`{key}` is there twice", key=key.value), right, len(key.value))
            else:
                self._keep(tree, Word(key.value, at), value, depth)
        return tree

    def _keep(self, tree: Tree, key: Word, value: Any, depth: int) -> None:
        taken = self.taken(value, depth + 1)
        if isinstance(taken, Word) and taken == "" and getattr(value, "style", None) is None:
            self.problems.add(key.place, say("`{key}` says nothing", key=key), say("give it a value, or leave the key out"), len(key))
            return
        tree[key] = taken


def _in_plain_words(bad: yaml.YAMLError) -> str:
    said = str(getattr(bad, "problem", None) or bad).strip()
    if "anchor" in said or "alias" in said:
        return say("anchors and aliases are not read")
    if "another document" in said or "expected a single document" in said or "document" in said:
        return say("the file holds more than one document")
    return say("this is no YAML: {what}", what=said[:200])
