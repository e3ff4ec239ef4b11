"""The plant as read: every name resolved, every quantity a Value that knows its file and line."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass, field
from datetime import date
from typing import Any, Generic, TypeVar

from generator.plant.model.document import Document
from generator.plant.model.library import Bearing, Fastener, Grease, Housing, Sleeve, Tool, Unit
from generator.plant.model.machine import Machine as MachineTyped
from generator.plant.model.machine import Position as PositionTyped
from generator.plant.model.machine import Shaft as ShaftTyped
from generator.plant.model.plant import Acceptance
from generator.plant.model.plant import Plant as PlantTyped
from generator.plant.model.second_language import SecondLanguage
from generator.value import Measured, Place, Value, Withheld

T = TypeVar("T")


@dataclass(frozen=True)
class Named(Generic[T]):
    """A thing of the library under its designation, and where it is written."""

    name: str
    typed: T
    place: Place


@dataclass(frozen=True)
class Reading:
    """One row of the records: what was read at a position, when, in which phase; the value knows its record."""

    record: str
    issue: str
    position: str
    when: str
    phase: str
    quantity: str
    value: Value
    note: str
    place: Place

    @property
    def day(self) -> str:
        """The day of the reading, as an ISO date."""
        return self.when[:10]

    @property
    def measured(self) -> Measured:
        """Who, when and with what."""
        assert isinstance(self.value.reason, Measured)
        return self.value.reason


@dataclass(frozen=True)
class Position:
    """One bearing on a shaft: its merged data, its parts, and all readings taken at it (oldest first)."""

    tag: str
    letter: str
    shaft: str
    place: Place
    typed: PositionTyped
    diameter: Value | Withheld
    hole: Value | None
    bearing: Named[Bearing] | None
    sleeve: Named[Sleeve] | None
    housing: Named[Housing] | None
    unit: Named[Unit] | None
    rings: Any
    fitted_sleeve: Named[Sleeve] | None
    grease: Named[Grease] | None
    grease_inside: Named[Grease] | None
    gun: Named[Tool] | None
    bolt: Named[Fastener] | None
    readings: tuple[Reading, ...] = ()

    @property
    def id(self) -> str:
        """Its identity: INT-05/A."""
        return f"{self.tag}/{self.letter}"

    def latest(self, quantity: str) -> Reading | None:
        """The newest reading of a quantity."""
        return next((r for r in reversed(self.readings) if r.quantity == quantity), None)


@dataclass(frozen=True)
class Shaft:
    """One shaft: its typed data, and its positions in order along it."""

    tag: str
    key: str
    place: Place
    typed: ShaftTyped
    positions: tuple[Position, ...]

    @property
    def id(self) -> str:
        """Its identity: INT-05/head."""
        return f"{self.tag}/{self.key}"

    @property
    def ends(self) -> tuple[str, str]:
        """The names of its two ends, in order."""
        return str(self.typed.ends[0]), str(self.typed.ends[1])


@dataclass(frozen=True)
class Machine:
    """One machine: its typed data, its shafts, and a hash of its file and its records."""

    tag: str
    place: Place
    typed: MachineTyped
    shafts: tuple[Shaft, ...]
    digest: str = ""

    @property
    def positions(self) -> tuple[Position, ...]:
        """All positions, shaft by shaft."""
        return tuple(position for shaft in self.shafts for position in shaft.positions)


@dataclass(frozen=True)
class Library:
    """All that is bought, by designation, and the makers' documents by name."""

    bearings: Mapping[str, Named[Bearing]] = field(default_factory=dict)
    sleeves: Mapping[str, Named[Sleeve]] = field(default_factory=dict)
    housings: Mapping[str, Named[Housing]] = field(default_factory=dict)
    units: Mapping[str, Named[Unit]] = field(default_factory=dict)
    greases: Mapping[str, Named[Grease]] = field(default_factory=dict)
    fasteners: Mapping[str, Named[Fastener]] = field(default_factory=dict)
    tools: Mapping[str, Named[Tool]] = field(default_factory=dict)
    documents: Mapping[str, Named[Document]] = field(default_factory=dict)


@dataclass(frozen=True)
class Issue:
    """One line of the ledger: in this issue, of this day, this machine's sheet got this check code."""

    issue: int
    on: str
    tag: str
    code: str


@dataclass(frozen=True)
class Plant:
    """The whole plant on a day."""

    folder: str
    on: date
    typed: PlantTyped
    library: Library
    machines: tuple[Machine, ...]
    accepted: tuple[Named[Acceptance], ...] = ()
    ledger: tuple[Issue, ...] = ()
    shared_digest: str = ""
    second: SecondLanguage | None = None

    def machine(self, tag: str) -> Machine | None:
        """The machine with this tag."""
        return next((m for m in self.machines if m.tag == tag), None)

    def in_area(self, code: str) -> Iterator[Machine]:
        """The machines of an area, in walking order."""
        here = [m for m in self.machines if str(m.typed.area) == code]
        yield from sorted(here, key=lambda m: (m.typed.walk.content if m.typed.walk else 10**6, m.tag))
