"""What a step of work is: one action in words with its figures inside, the check after it, the caution before it, where one stops and signs.

Knows values by their key only; ways of locking and housings write steps, `work/` puts them in order, `site/` shows them.
"""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from typing import Protocol

from generator.say import say

JOBS = ("put on", "take off", "grease", "inspect", "run in")

# stages of a job; one that is also a group of the machine page stands under the heading of that group
STAGES = (
    "sheet",
    "safe",
    "support",
    "as found",
    "open",
    "seat",
    "housing",
    "parts",
    "clearance",
    "axial",
    "lock",
    "bolts",
    "grease",
    "give back",
    "watch",
)


@dataclass(frozen=True)
class Figure:
    """A value of the sheet inside a sentence: the key of its line (of the shaft's, with `shaft:` before it), and its text."""

    key: str
    text: str
    held: bool = False

    def __str__(self) -> str:
        return self.text


@dataclass(frozen=True)
class Told:
    """A sentence in parts: words, and the figures in it."""

    parts: tuple[str | Figure, ...]

    def __str__(self) -> str:
        return "".join(str(part) for part in self.parts)

    @property
    def figures(self) -> Iterator[Figure]:
        """The figures in it."""
        return (part for part in self.parts if isinstance(part, Figure))


class Figures(Protocol):
    """The values of a sheet as figures of a sentence."""

    def __call__(self, key: str) -> Figure:
        """The figure under a key; a held one where the value is withheld or the sheet has none."""

    def has(self, key: str) -> bool:
        """Whether the sheet has a value under the key that is not withheld."""


def told(text: str, /, **facts: object) -> Told:
    """A fixed sentence in the chosen language with its facts and figures filled in."""
    figures = [fact for fact in facts.values() if isinstance(fact, Figure)]
    marked = {name: f"\ue000{figures.index(fact)}\ue001" if isinstance(fact, Figure) else fact for name, fact in facts.items()}
    said = say(text, **marked)
    parts = re.split("\ue000(\\d+)\ue001", said)
    return Told(tuple(figures[int(part)] if number % 2 else part for number, part in enumerate(parts) if part))


@dataclass(frozen=True)
class Trouble:
    """What to do when a step does not go: what is seen, and the way out."""

    seen: str
    do: Told


@dataclass(frozen=True)
class Blank:
    """A reading written down at a step: the record's quantity, its name, its unit, and the limits it is held against, as shown."""

    quantity: str
    name: str
    unit: str
    least: str = ""
    most: str = ""


@dataclass(frozen=True)
class Step:
    """One action.

    `act`: what it does, a word the ordering rules go by, once in a job. `caution`: the id of the one message before it with its facts, "" for none.
    `takes`: what it needs in the hand, words of `work.take_along`. `picture`: the name of the drawing that belongs to it.
    `quotes`: the plant's own rules that apply to it.
    """

    act: str
    stage: str
    does: Told
    check: Told | None = None
    troubles: tuple[Trouble, ...] = ()
    caution: str = ""
    caution_facts: tuple[tuple[str, str], ...] = ()
    takes: tuple[str, ...] = ()
    blanks: tuple[Blank, ...] = ()
    picture: str = ""
    quotes: tuple[str, ...] = ()

    @property
    def held(self) -> bool:
        """Whether a figure it needs is withheld."""
        return any(figure.held for figure in self.does.figures)


@dataclass(frozen=True)
class Sign:
    """A stop: nobody goes on before both have signed. `number`: S0 to S8."""

    number: str
    stage: str
    what: Told
    second: bool = True  # a second person signs too


Item = Step | Sign
Items = Iterable[Item]


@dataclass(frozen=True)
class Procedure:
    """A job at one position: its steps and stops in order. `refused`: why there are none. `held`: why it may not be done now."""

    job: str
    position: str
    items: tuple[Item, ...] = ()
    refused: str = ""
    held: tuple[str, ...] = ()

    @property
    def steps(self) -> tuple[Step, ...]:
        """Its steps, without the stops."""
        return tuple(item for item in self.items if isinstance(item, Step))

    @property
    def open(self) -> bool:
        """Whether it may be done now."""
        return not self.held and not self.refused

    @property
    def stages(self) -> tuple[str, ...]:
        """The stages it goes through, in order, each once."""
        return tuple(dict.fromkeys(item.stage for item in self.items))

    def of(self, stage: str) -> tuple[Item, ...]:
        """The steps and stops of one stage."""
        return tuple(item for item in self.items if item.stage == stage)
