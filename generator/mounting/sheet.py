"""What the mounting standard says: a Sheet per position, a ShaftSheet per shaft, made of Lines, each one value with its reason."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass, field
from typing import TYPE_CHECKING

from generator.plant.plant import Machine, Plant, Position, Shaft
from generator.value import Band, Known, Value

if TYPE_CHECKING:
    from generator.mounting.reactions import ShaftLoads

# groups of lines, in the order of the work
GROUPS = ("seat", "housing", "parts", "lock", "clearance", "bolts", "grease", "axial", "load", "life", "watch", "readings")


@dataclass(frozen=True)
class Line:
    """One thing the sheet states.

    `by_hand`: a number a hand sets or measures against, shown large. `beside`: cross-checks, each (what it is, the value).
    `note`: one sentence for the reader, already said.
    """

    key: str
    group: str
    name: str
    value: Known
    by_hand: bool = False
    beside: tuple[tuple[str, Known], ...] = ()
    note: str = ""


@dataclass(frozen=True)
class Sheet:
    """All that is said of one position. `lines` by key, in the order of the work."""

    position: Position
    locking: str
    order: str  # "first" or "second" on its shaft
    lines: Mapping[str, Line]
    life_curve: tuple[tuple[float, float], ...] = ()  # temperature in °C, life in hours

    @property
    def id(self) -> str:
        """INT-05/A."""
        return self.position.id

    def value(self, key: str) -> Known | None:
        """The value under a key, None where the sheet has no such line."""
        line = self.lines.get(key)
        return line.value if line else None

    def number(self, key: str) -> Value | None:
        """The value under a key where it is one number or word, None where it is withheld, a band or absent."""
        value = self.value(key)
        return value if isinstance(value, Value) else None

    def band(self, key: str) -> Band | None:
        """The band under a key, None where it is none."""
        value = self.value(key)
        return value if isinstance(value, Band) else None

    def group(self, name: str) -> Iterator[Line]:
        """The lines of one group, in order."""
        return (line for line in self.lines.values() if line.group == name)


@dataclass(frozen=True)
class ShaftSheet:
    """All that is said of one shaft as a whole, and the sheets of its positions in order along it."""

    shaft: Shaft
    sheets: tuple[Sheet, ...]
    lines: Mapping[str, Line]
    loads: ShaftLoads | None = None

    @property
    def id(self) -> str:
        """INT-05/head."""
        return self.shaft.id


@dataclass(frozen=True)
class MachineSheets:
    """The sheets of one machine."""

    machine: Machine
    shafts: tuple[ShaftSheet, ...]
    lines: Mapping[str, Line] = field(default_factory=dict)

    @property
    def sheets(self) -> tuple[Sheet, ...]:
        """The sheets of all positions, in order of the shafts."""
        return tuple(sheet for shaft in self.shafts for sheet in shaft.sheets)


@dataclass(frozen=True)
class LubricationTask:
    """One position in the year's plan. `weeks`: the calendar weeks (1 to 52) it is greased in; `why_not` where it is not greased."""

    sheet: Sheet
    area: str
    when: str  # "running" or "stopped"
    every_weeks: Value | None
    grams: Value | None
    strokes: Value | None
    next_due: Known | None
    weeks: tuple[int, ...] = ()
    why_not: str = ""


@dataclass(frozen=True)
class MountingStandard:
    """The whole standard: what every page, command and export is made from."""

    plant: Plant
    machines: tuple[MachineSheets, ...]
    findings: tuple[object, ...] = ()
    lubrication: tuple[LubricationTask, ...] = ()
    _by_tag: Mapping[str, MachineSheets] = field(default_factory=dict, repr=False)

    def machine(self, tag: str) -> MachineSheets | None:
        """The sheets of the machine with this tag."""
        return self._by_tag.get(tag)

    def sheet(self, identity: str) -> Sheet | None:
        """The sheet of a position by its identity INT-05/A."""
        machine = self.machine(identity.partition("/")[0])
        return next((s for s in machine.sheets if s.id == identity), None) if machine else None
