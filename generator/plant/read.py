"""YAML as typed: every scalar kept as text, every key and value with its place; what YAML would read another way is refused.

Built from the parser's events, since an anchor, an alias, a tag and a second document each have an event or a mark of their own there.
"""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path
from typing import Any

import yaml

from generator.plant.problems import Problems, lines_of
from generator.say import say
from generator.value import Place

BIGGEST = 5_000_000
DEEPEST = 30
_LOADER: Any = getattr(yaml, "CSafeLoader", yaml.SafeLoader)
_NOTHING = ("", "~", "null", "Null", "NULL")


class Word(str):
    """A scalar as typed, with its place and the column after its last character (quotes included)."""

    __slots__ = ("end_column", "place")
    place: Place
    end_column: int

    def __new__(cls, text: str, place: Place, end_column: int = 0) -> Word:
        word = super().__new__(cls, text)
        word.place = place
        word.end_column = end_column or place.column + len(text)
        return word

    @property
    def length(self) -> int:
        """How many columns it takes in its line."""
        return self.end_column - self.place.column


class Tree(dict[Word, Any]):
    """A mapping as typed, with its place. `refused` are keys whose values could not be taken: they are not missing."""

    place: Place

    def __init__(self, place: Place) -> None:
        super().__init__()
        self.place = place
        self.refused: set[str] = set()
        self._words: dict[str, Word] = {}

    def put(self, word: Word, value: Any) -> None:
        """One more key."""
        self._words[word] = word
        self[word] = value

    def key(self, key: str) -> Word | None:
        """The key as typed, with its place; None where there is no such key."""
        return self._words.get(key)

    def under(self, key: str) -> Any:
        """What stands under a key, None where there is no such key."""
        word = self.key(key)
        return None if word is None else self[word]


class Listing(list[Any]):
    """A sequence as typed, with its place."""

    place: Place

    def __init__(self, place: Place = Place("", 1)) -> None:
        super().__init__()
        self.place = place


def read_tree(path: Path, shown: str, problems: Problems) -> Tree | None:
    """The mapping a file holds, None where it can't be read; its problems say why. `shown` is its path within the plant."""
    top = _read(path, shown, problems, empty_is_fine=False)
    if top is None or isinstance(top, Tree):
        return top
    problems.add(top.place, say("the file holds no mapping"), say("lines of `key: value`"))
    return None


def read_listing(path: Path, shown: str, problems: Problems) -> Listing | None:
    """The list a file holds, None where it can't be read or is empty."""
    top = _read(path, shown, problems, empty_is_fine=True)
    if top is None or isinstance(top, Listing):
        return top
    problems.add(top.place, say("the file holds no list"), say("each entry begins with `- `"))
    return None


class _Refused(Exception):
    """The whole file can't be read."""

    def __init__(self, place: Place, wrong: str, right: str) -> None:
        self.place, self.wrong, self.right = place, wrong, right
        super().__init__(wrong)


def _read(path: Path, shown: str, problems: Problems, empty_is_fine: bool) -> Any:
    try:
        text = _text(path, shown)
        problems.remember(shown, lines_of(text))
        if not _is_plain(text, shown, problems):
            return None
        top = _Builder(shown, problems, yaml.parse(text, Loader=_LOADER)).document()
    except _Refused as refused:
        problems.add(refused.place, refused.wrong, refused.right)
        return None
    except yaml.YAMLError as bad:
        problems.add(_where(bad, shown), *_in_plain_words(bad))
        return None
    if top is None and not empty_is_fine:
        problems.add(Place(shown, 1), say("the file is empty"), say("`seatbook start FOLDER` shows what belongs in it"))
    return top


def _text(path: Path, shown: str) -> str:
    top = Place(shown, 1)
    try:
        if not path.is_file():
            raise _Refused(top, say("this is no file"), say("a plain text file of this name"))
        if path.stat().st_size > BIGGEST:
            raise _Refused(top, say("the file is too big"), say("a plant file has at most {count} MB", count=BIGGEST // 1_000_000))
        data = path.read_bytes()
    except OSError:
        raise _Refused(top, say("the file cannot be read"), say("is it a plain file, and may it be read?")) from None
    try:
        return data.decode("utf-8-sig")
    except UnicodeDecodeError as bad:
        line = data[: bad.start].count(b"\n") + 1
        raise _Refused(Place(shown, line), say("this is no UTF-8 text"), say("save the file as UTF-8")) from None


def _is_plain(text: str, shown: str, problems: Problems) -> bool:
    """Whether every character is one that can be seen. The parser never gets the text else: it says little of what it met."""
    plain = True
    for number, line in enumerate(lines_of(text), 1):
        if line.isprintable():
            continue
        plain = False
        column, odd = next((column, c) for column, c in enumerate(line, 1) if not c.isprintable())
        wrong, right = say("a character that is no text"), say("plain text; is this the right file?")
        if odd == "\t":
            wrong, right = say("a tab"), say("spaces; a tab looks different in every editor")
        elif odd == "\u00a0":
            wrong, right = say("a no-break space"), say("an ordinary space")
        problems.add(Place(shown, number, column), wrong, right)
    return plain


class _Builder:
    """Makes words, trees and listings of a file's events."""

    def __init__(self, shown: str, problems: Problems, events: Iterator[Any]) -> None:
        self.shown, self.problems, self.events = shown, problems, events

    def document(self) -> Any:
        """What the one document of the file holds; None where it is empty."""
        top, started = None, False
        for event in self.events:
            if isinstance(event, yaml.DocumentStartEvent):
                if started:
                    raise _Refused(
                        self._place(event), say("the file holds more than one document"), say("one document; a file each for the others")
                    )
                if event.version or event.tags:
                    raise _Refused(self._place(event), say("a line that begins with % is not read"), say("leave it out"))
                started = True
            elif isinstance(event, yaml.NodeEvent):
                empty = isinstance(event, yaml.ScalarEvent) and _is_nothing(event)
                top = None if empty else self._node(event, 0)
        return top

    def _node(self, event: Any, depth: int) -> Any:
        place = self._place(event)
        if depth > DEEPEST:
            raise _Refused(place, say("nested too deep"), say("no plant file needs more than {count} levels", count=DEEPEST))
        if event.anchor:
            self.problems.add(place, say("anchors and aliases are not read"), _not_repeating())
        if getattr(event, "tag", None):
            self.problems.add(place, say("the tag {tag} is not read", tag=event.tag), say("leave it out: the key says what its value is"))
        if isinstance(event, yaml.MappingStartEvent):
            return self._mapping(place, depth)
        if isinstance(event, yaml.SequenceStartEvent):
            return self._listing(place, depth)
        return self._word(event, place)

    def _mapping(self, place: Place, depth: int) -> Tree:
        tree = Tree(place)
        for event in self.events:
            if isinstance(event, yaml.MappingEndEvent):
                break
            key = self._node(event, depth + 1)
            after = next(self.events)
            value = self._node(after, depth + 1)
            if isinstance(event, yaml.ScalarEvent) and self._may_stand(key, tree, event):
                self._keep(tree, key, value, after)
            elif not isinstance(event, (yaml.ScalarEvent, yaml.AliasEvent)):
                self.problems.add(key.place, say("a key that is no word"), say("`key: value`"))
        return tree

    def _may_stand(self, key: Word, tree: Tree, event: Any) -> bool:
        first = tree.key(key)
        if key == "<<" and event.implicit[0]:
            self.problems.add(key.place, say("merge keys are not read"), _not_repeating(), key.length)
        elif "\n" in key:
            self.problems.add(key.place, say("a key of more than one line"), say("`key: value`"))
        elif not key.strip():
            self.problems.add(key.place, say("a value without a key"), say("`key: value`"))
        elif first is not None:
            right = say("the other is in line {line}; keep one", line=first.place.line)
            self.problems.add(key.place, say("`{key}` is there twice", key=key), right, key.length)
        else:
            return True
        return False

    def _keep(self, tree: Tree, key: Word, value: Any, event: Any) -> None:
        if isinstance(event, yaml.AliasEvent):
            tree.refused.add(str(key))
        elif isinstance(event, yaml.ScalarEvent) and _is_nothing(event):
            tree.refused.add(str(key))
            self.problems.add(key.place, say("`{key}` says nothing", key=key), say("give it a value, or leave the key out"), key.length)
        else:
            tree.put(key, value)

    def _listing(self, place: Place, depth: int) -> Listing:
        listing = Listing(place)
        for event in self.events:
            if isinstance(event, yaml.SequenceEndEvent):
                break
            entry = self._node(event, depth + 1)
            if isinstance(event, yaml.ScalarEvent) and _is_nothing(event):
                self.problems.add(entry.place, say("an entry of this list says nothing"), say("give it a value, or leave it out"))
            elif not isinstance(event, yaml.AliasEvent):
                listing.append(entry)
        return listing

    def _word(self, event: Any, place: Place) -> Word:
        one_line = event.start_mark.line == event.end_mark.line
        text = getattr(event, "value", "")
        if not text.replace("\n", "").isprintable():
            # double quotes let one write characters that were refused as themselves
            self.problems.add(place, say("a character that is no text"), say("plain text, without a backslash"))
            text = ""
        return Word(text, place, event.end_mark.column + 1 if one_line else place.column + 1)

    def _place(self, event: Any) -> Place:
        return Place(self.shown, event.start_mark.line + 1, event.start_mark.column + 1)


def _is_nothing(event: Any) -> bool:
    return bool(event.implicit[0]) and event.value in _NOTHING


def _not_repeating() -> str:
    return say("write it out; `usual`, `like` and `unit` keep one from repeating oneself")


def _where(bad: yaml.YAMLError, shown: str) -> Place:
    """Where the trouble begins: of a quote never closed, the quote, since the parser only notices at the end of the file."""
    scanning = str(getattr(bad, "context", "") or "").startswith("while scanning")
    first, second = ("context_mark", "problem_mark") if scanning else ("problem_mark", "context_mark")
    mark = getattr(bad, first, None) or getattr(bad, second, None)
    return Place(shown, mark.line + 1, mark.column + 1) if mark else Place(shown, 1)


def _in_plain_words(bad: yaml.YAMLError) -> tuple[str, str]:
    """What the parser found, and what to do about it, for someone who knows no parser."""
    said = str(getattr(bad, "problem", None) or bad)
    quoted = "quoted scalar" in str(getattr(bad, "context", ""))
    if " not allowed" in said and "mapping values" in said:
        return say("a colon where none can stand"), say("one `key: value` a line, in line; quotes around text that holds `: `")
    if "sequence entries" in said:
        return say("a dash where none can stand"), say("`- ` begins a line of a list; quotes around text that begins with `- `")
    if "expected key" in said or "block end" in said or "'-' indicator" in said:
        return say("this does not belong to what stands above it"), say(
            "every line of a mapping or list begins at the same column; nothing follows a closing quote or bracket"
        )
    if quoted:
        return say("a quote is opened and not closed, or holds a backslash"), say("a quote at both ends; within double quotes no backslash")
    if "':'" in said:
        return say("a line that has no colon"), say("`key: value`")
    if "cannot start any token" in said:
        return say("a value begins with a sign that YAML keeps for itself"), say("quotes around the value")
    if "',' or" in said or "node content" in said:
        return say("a bracket or brace is not closed, or a comma is too many or missing"), say("[one, two] or {key: value, key: value}")
    if "document start" in said:
        return say("the file goes on after its end"), say("one mapping; nothing after its closing brace, and no line of three points")
    if "nesting" in said:
        return say("nested too deep"), say("no plant file needs more than {count} levels", count=DEEPEST)
    return say("this cannot be read as YAML"), say("check colons, dashes, quotes and how far in each line begins")
