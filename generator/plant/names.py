"""Every name a file uses must be there: parts, greases, tools, documents, ends, areas, siblings, figures, rules."""

import re
from collections.abc import Iterable, Mapping
from typing import Any

from generator.plant.load import Files
from generator.plant.model.document import CHOSEN_BY, FIGURES
from generator.plant.model.library import STYLES
from generator.plant.model.machine import Machine, Position, Shaft
from generator.plant.model.plant import GIVES
from generator.plant.model.usual import CLASSES, Usual
from generator.plant.plant import Named
from generator.plant.problems import Problems, nearest
from generator.say import say
from generator.units import convert
from generator.value import Place, Value

# Evidence (a food letter, a mixing test) may be cited before it is on file: that it is missing is a finding, since the file is as meant.
NOWHERE = Place("plant.yml", 1)


class Names:
    """What is known by name, and where problems go. Two of a kind at most: this is the one thing here that gathers."""

    def __init__(self, files: Files, problems: Problems) -> None:
        self.files, self.problems = files, problems

    def must_be(self, word: Any, known: Iterable[str], what: str) -> None:
        """A problem where the word is none of the known names; a word left out is none."""
        names = [str(name) for name in known]
        if word is None or str(word) in names:
            return
        near = nearest(str(word), names)
        right = say("nearest known: {name}", name=near) if near else say("known: {names}", names=", ".join(names[:12]) or say("none yet"))
        self.problems.add(getattr(word, "place", NOWHERE), say("no {what} is called {name}", what=what, name=word), right)

    def on_a_machine(self, word: Any, known: Iterable[str], what: str) -> None:
        """A problem where no machine has such a thing; nothing is said while a machine's file can't be taken."""
        if "machines" not in self.files.broken:
            self.must_be(word, known, what)

    def in_library(self, word: Any, kind: str) -> None:
        """A problem where the library has no such thing."""
        if kind not in self.files.broken:
            self.must_be(word, self.files.library[kind], _SINGULAR[kind])


_SINGULAR = {
    "bearings": "bearing",
    "sleeves": "sleeve",
    "housings": "housing",
    "units": "unit",
    "greases": "grease",
    "fasteners": "fastener",
    "tools": "tool",
    "documents": "document",
}


def check_plant(files: Files, names: Names) -> None:
    """The names that the plant's own files and the library use."""
    plant = files.plant
    tags = [machine.name for machine in files.machines]
    if plant:
        for usual in (plant.usual, *(area.usual for area in plant.areas.values())):
            _check_usual(usual, names)
        for rule in (plant.rules or {}).values():
            for key, given in (rule.gives or {}).items():
                names.must_be(key, GIVES, say("value of a rule"))
                _check_given(str(key), given, files, names)
            if rule.where:
                names.must_be(rule.where.area, plant.areas, say("area"))
                names.on_a_machine(rule.where.machine, tags, say("machine"))
                names.must_be(rule.where.housing, STYLES, say("housing style"))
                names.on_a_machine(rule.where.position, _positions(files), say("position"))
                names.on_a_machine(rule.where.shaft, _shafts(files), say("shaft"))
        for topic, on in (plant.training or {}).items():
            names.must_be(topic, ("isolation", "sheet", "shaft", "nut", "collar", "roller", "heat", "bolts", "growth", "grease", "speed", "watch", "record", "page"), say("exercise"))
            names.on_a_machine(on, (*tags, *_positions(files)), say("machine or position"))
    _check_library(files.library, names)
    for accepted in files.accepted:
        names.on_a_machine(accepted.typed.at, _identities(files), say("machine, shaft or position"))


def _check_given(key: str, given: Any, files: Files, names: Names) -> None:
    """What a rule gives must be a word its key can have: any other would be shown, or pass unseen, and decide nothing."""
    if key == "seat.class":
        names.must_be(given, CLASSES, say("class of a seat"))
    elif key == "nut.side":
        names.must_be(given, ("drag tightens",), say("side of a nut"))
    elif key == "fixed.at":
        ends = {str(end) for machine in files.machines for shaft in machine.typed.shafts.values() for end in shaft.ends}
        names.on_a_machine(given, sorted(ends), say("end"))


def check_machine(machine: Named[Machine], names: Names) -> None:
    """The names one machine uses, its letters, and its lengths."""
    if names.files.plant:
        names.must_be(machine.typed.area, names.files.plant.areas, say("area"))
    if not re.fullmatch(r"[A-Za-z0-9][A-Za-z0-9._-]{0,39}", machine.name):
        names.problems.add(
            machine.place,
            say("{tag} cannot be a tag", tag=machine.name),
            say("letters, digits, dots and dashes, at most 40: it names the page's file"),
        )
    _check_usual(machine.typed.usual, names)
    letters: dict[str, Any] = {}
    for key, shaft in machine.typed.shafts.items():
        if not re.fullmatch(r"[a-z][a-z0-9 -]{0,39}", str(key)):
            names.problems.add(
                getattr(key, "place", machine.place),
                say("{name} cannot name a shaft", name=key),
                say("a lower-case word: head, tail, screw"),
            )
        for letter in shaft.positions:
            if not re.fullmatch(r"[A-Z]{1,2}", str(letter)):
                names.problems.add(
                    getattr(letter, "place", machine.place),
                    say("{name} cannot name a position", name=letter),
                    say("a capital letter: A, B, C"),
                )
            elif str(letter) in letters:
                names.problems.add(
                    getattr(letter, "place", machine.place),
                    say("position {letter} is there twice on {tag}", letter=letter, tag=machine.name),
                    say("letters run on over the shafts of a machine"),
                )
            letters[str(letter)] = shaft
    for shaft in machine.typed.shafts.values():
        _check_shaft(shaft, letters, names, machine.place)


def _check_shaft(shaft: Shaft, letters: Mapping[str, Any], names: Names, place: Place) -> None:
    ends = [str(end) for end in shaft.ends]
    if len(set(ends)) != 2:
        where = getattr(shaft.ends[0], "place", place) if shaft.ends else place
        names.problems.add(where, say("a shaft has two ends of different names"), say("ends: [drive end, far end]"))
        return
    names.must_be(shaft.viewed_from.left, ends, say("end"))
    for gap in (shaft.seal_gap, shaft.coupling_gap):
        if gap:
            names.must_be(gap.at, ends, say("end"))
    _check_usual(shaft.usual, names)
    _check_sections(shaft, names)
    here = [str(letter) for letter in shaft.positions]
    names.must_be(shaft.weight_on, here, say("position on this shaft"))
    for load in (shaft.loads or {}).values():
        if str(load.kind) in ("thrust", "screw"):
            names.must_be(getattr(load, "toward", None), (*ends, "either end"), say("end"))
        if str(load.kind) == "stated reaction":
            names.must_be(load.at, here, say("position on this shaft"))
    for state in (shaft.states or {}).values():
        for load in state.times or {}:
            names.must_be(load, shaft.loads or {}, say("load"))
    for letter, position in shaft.positions.items():
        _check_position(str(letter), position, letters, ends, names)


def _check_sections(shaft: Shaft, names: Names) -> None:
    far = 0.0
    for section in shaft.sections:
        to = _mm(section.to)
        if to <= far:
            names.problems.add(
                _place(section.to),
                say("this section ends before it begins"),
                say("`to` is measured from the face of the first end and grows"),
            )
        far = to
    for position in shaft.positions.values():
        if position.at is not None and not 0 <= _mm(position.at) <= far:
            names.problems.add(
                _place(position.at),
                say("{at} is not on the shaft", at=_text(position.at)),
                say("the shaft is {length} mm long", length=f"{far:g}"),
            )
    for load in (shaft.loads or {}).values():
        if isinstance(load.at, Value) and _mm(load.at) > far:
            names.problems.add(
                _place(load.at), say("{at} is not on the shaft", at=_text(load.at)), say("the shaft is {length} mm long", length=f"{far:g}")
            )


def _check_position(letter: str, position: Position, letters: Mapping[str, Any], ends: list[str], names: Names) -> None:
    for end in (position.nut, position.collar, position.frame, *((position.floats.model_extra or {}) if position.floats else {})):
        if end is not None and str(end) not in ends:
            place: Any = getattr(end, "place", None) or getattr(getattr(position.floats, "by", None), "place", NOWHERE)
            names.problems.add(
                place, say("no end of this shaft is called {name}", name=end), say("its ends are: {ends}", ends=", ".join(ends))
            )
    if position.like is not None:
        names.must_be(position.like, letters, say("position of this machine"))
        other = letters.get(str(position.like))
        sibling = next((p for k, p in other.positions.items() if str(k) == str(position.like)), None) if other else None
        if str(position.like) == letter or (sibling is not None and sibling.like is not None):
            names.problems.add(
                position.like.place,
                say("{letter} is like {other}, which is like another", letter=letter, other=position.like),
                say("`like` goes one step: name a position that is written out"),
            )
    names.in_library(position.unit, "units")
    for parts in (position.parts, position.fitted):
        if parts:
            names.in_library(parts.bearing, "bearings")
            names.in_library(parts.sleeve, "sleeves")
            names.in_library(parts.housing, "housings")
    if position.fitted:
        names.in_library(position.fitted.unit, "units")
    for figure, document in (position.cites or {}).items():
        names.must_be(figure, FIGURES, say("figure"))
        names.in_library(document, "documents")
    _check_usual(position, names)


def _check_usual(usual: Usual | Position | None, names: Names) -> None:
    if usual is None:
        return
    if usual.grease:
        names.in_library(usual.grease.planned, "greases")
        names.in_library(usual.grease.inside, "greases")
        names.in_library(usual.grease.gun, "tools")
    if usual.bolts:
        names.in_library(usual.bolts.fastener, "fasteners")


def _check_library(library: Mapping[str, Mapping[str, Named[Any]]], names: Names) -> None:
    for unit in library["units"].values():
        names.in_library(unit.typed.bearing, "bearings")
        names.in_library(unit.typed.sleeve, "sleeves")
        names.in_library(unit.typed.housing, "housings")
    for grease in library["greases"].values():
        for other in grease.typed.mixes_with or ():
            names.in_library(other.grease, "greases")
    for tool in library["tools"].values():
        names.in_library(tool.typed.grease, "greases")
    for kind in ("bearings", "housings"):
        for thing in library[kind].values():
            for part in ("ratings", "thrust", "clearance", "rated"):
                names.in_library(getattr(getattr(thing.typed, part, None), "from_", None), "documents")
    for document in library["documents"].values():
        for table in (document.typed.tables or {}).values():
            names.must_be(table.chosen_by, CHOSEN_BY, say("field that picks a row"))
            for field in table.of or {}:
                names.must_be(field, CHOSEN_BY + ("sleeve.thread",), say("field that limits a table"))


def _positions(files: Files) -> list[str]:
    return [f"{m.name}/{letter}" for m in files.machines for shaft in m.typed.shafts.values() for letter in shaft.positions]


def _shafts(files: Files) -> list[str]:
    return [f"{m.name}/{key}" for m in files.machines for key in m.typed.shafts]


def _identities(files: Files) -> list[str]:
    whole = [f"{m.name}/{key}/{letter}" for m in files.machines for key, shaft in m.typed.shafts.items() for letter in shaft.positions]
    return [*(m.name for m in files.machines), *_shafts(files), *_positions(files), *whole]


def _mm(value: Value) -> float:
    return convert(value.content, value.unit, "mm")


def _place(value: Value) -> Place:
    return getattr(value.reason, "place", NOWHERE)


def _text(value: Value) -> str:
    return getattr(value.reason, "text", str(value.content))
