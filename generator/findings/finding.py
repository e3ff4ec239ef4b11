"""What a finding is: the engineer's objection to a plant that was read as meant.

A rule is a frozen dataclass named for the fault in words, and the function that looks for it. Its docstring is its page; `LEVEL` is
hold, put right or advice; `HOLDS` the jobs it holds. Every rule has the fields `at` (identity), `place` (where to look in the files), its typed
facts, and the methods `says()` (one or two sentences with the numbers), `clears()` (what would clear it) and, where it has one, `figure()`.
"""

from __future__ import annotations

import re
from collections.abc import Callable, Iterator
from dataclasses import dataclass
from datetime import date
from typing import Any, Protocol

from generator.mounting.sheet import MachineSheets
from generator.plant.plant import Named, Plant
from generator.say import say
from generator.units import UnitMismatch, convert
from generator.value import Place

JOBS = ("put on", "take off", "grease", "run")
LEVELS = ("hold", "put right", "advice")


class Rule(Protocol):
    """The shape of a finding, as pages and commands use it."""

    LEVEL: str
    HOLDS: tuple[str, ...]
    NUMBER: int

    @property
    def at(self) -> str:
        """Where it was found: INT-05/A, INT-05/head or INT-05."""

    @property
    def place(self) -> Place:
        """Where to look in the files."""

    def says(self) -> str:
        """What is wrong, with its numbers."""

    def clears(self) -> str:
        """What would clear it."""


@dataclass(frozen=True)
class Judged:
    """A finding with what the plant has said of it: `accepted_until` where it stands accepted, `back_because` where an acceptance failed."""

    rule: Any
    accepted_by: str = ""
    accepted_until: str = ""
    accepted_because: str = ""
    back_because: str = ""

    @property
    def accepted(self) -> bool:
        """Whether someone has decided to live with it, in date and no worse."""
        return bool(self.accepted_until) and not self.back_because

    @property
    def holds(self) -> tuple[str, ...]:
        """The jobs it holds now."""
        return () if self.accepted or self.rule.LEVEL != "hold" else self.rule.HOLDS

    @property
    def name(self) -> str:
        """The name of its rule, in words."""
        return say(name_of(type(self.rule)))

    @property
    def tag(self) -> str:
        """The machine it was found on."""
        return str(self.rule.at).partition("/")[0]


def name_of(rule: type) -> str:
    """A rule's name in words: ShaftBelowLimit is "shaft below limit"."""
    return " ".join(re.findall(r"[A-Z][a-z0-9]*", rule.__name__)).lower()


Looks = Callable[[Plant, MachineSheets], Iterator[Any]]


def judged(plant: Plant, rule: Any) -> Judged:
    """The finding held against what the plant has accepted."""
    for accepted in plant.accepted:
        if accepted.name == name_of(type(rule)) and _same_place(str(accepted.typed.at), rule.at):
            until, by, because = str(accepted.typed.until.content), str(accepted.typed.by), str(accepted.typed.because)
            return Judged(rule, by, until, because, _back(accepted, rule, plant.on))
    return Judged(rule)


def _same_place(accepted: str, at: str) -> bool:
    """INT-05/head/A is INT-05/A."""
    parts = accepted.split("/")
    return at in (accepted, "/".join((parts[0], parts[-1])))


def _back(accepted: Named[Any], rule: Any, on: date) -> str:
    from generator.plant.quantities import BadQuantity, parse_number

    until = str(accepted.typed.until.content)
    if on.isoformat() > until:
        return say("the acceptance ended on {until}", until=until)
    figure = getattr(rule, "figure", None)
    if figure is None or accepted.typed.figure is None:
        return ""
    number, unit, worse = figure()
    try:
        was, was_unit = parse_number(str(accepted.typed.figure))
        stood = convert(was, was_unit, unit)
    except (BadQuantity, UnitMismatch):
        return say("the figure it was accepted at, {figure}, is none of this finding's", figure=accepted.typed.figure)
    is_worse = number > stood + 1e-9 if worse == "more" else number < stood - 1e-9
    if is_worse:
        return say("it was accepted at {stood} {unit} and is now {number} {unit}", stood=f"{stood:g}", number=f"{number:g}", unit=unit)
    return ""
