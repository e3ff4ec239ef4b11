"""Values that know why they are so. This file imports nothing of ours."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass, field, replace
from typing import Any


@dataclass(frozen=True, slots=True)
class Place:
    """Where something is written: file (relative to the plant folder), line and column, both from 1."""

    file: str
    line: int
    column: int = 1

    def __str__(self) -> str:
        return f"{self.file}:{self.line}"


@dataclass(frozen=True, slots=True)
class Citation:
    """A published work: its name, edition, where in it, and how the figure was come by.

    `seen` is "seen" where the figure was read in a published copy, "from memory" where it was not seen again,
    "derived" where it is our own arithmetic.
    """

    work: str
    edition: str = ""
    clause: str = ""
    seen: str = "from memory"

    def __str__(self) -> str:
        named = f"{self.work}:{self.edition}" if self.edition else self.work
        return f"{named}, {self.clause}" if self.clause else named


@dataclass(frozen=True, slots=True)
class Entered:
    """The engineer typed it; the text is kept as typed."""

    text: str
    place: Place


@dataclass(frozen=True, slots=True)
class Measured:
    """A crew's reading: record number, who (initials), when, with what, and where it is written."""

    record: str
    by: str
    on: str
    instrument: str
    place: Place


@dataclass(frozen=True, slots=True)
class Instructed:
    """The maker's document on file."""

    document: str
    revision: str
    table: str
    issued: str
    place: Place


@dataclass(frozen=True, slots=True)
class Ruled:
    """The plant decided."""

    rule: str
    says: str
    approved_by: str
    on: str
    place: Place


@dataclass(frozen=True, slots=True)
class LookedUp:
    """A table: `citation=None` is shown as "common practice, no source". `keys` say which row: (name, text) pairs."""

    citation: Citation | None
    table: str
    keys: tuple[tuple[str, str], ...] = ()


@dataclass(frozen=True, slots=True)
class Computed:
    """The result of a method, by the method's name; `part` names one of several results."""

    method: str
    inputs: Mapping[str, Any] = field(repr=False)  # a tree: written out it would be longer than any plant
    part: str = ""


Reason = Entered | Measured | Instructed | Ruled | LookedUp | Computed


@dataclass(frozen=True, slots=True)
class Value:
    """A number or a word, its unit ("" where it has none), exactly one reason, and remarks that travel downstream."""

    content: Any
    unit: str
    reason: Reason
    remarks: tuple[str, ...] = ()

    def remark(self, *texts: str) -> Value:
        """The same value, marked."""
        return replace(self, remarks=tuple(dict.fromkeys(self.remarks + texts)))


@dataclass(frozen=True, slots=True)
class Band:
    """A lower and an upper value of one kind. `limits`: what is allowed, rounded inward; else what may be, rounded to the nearest."""

    lower: Value
    upper: Value
    limits: bool = True


@dataclass(frozen=True, slots=True)
class Need:
    """One thing that would release a withheld value.

    `kind` is "document" (subject: the maker), "reading" (subject: the position) or "entry" (subject: the file).
    """

    kind: str
    subject: str
    what: str


@dataclass(frozen=True, slots=True)
class Withheld:
    """Where no honest number exists: why, and what would release it."""

    why: str
    needs: tuple[Need, ...] = ()


Known = Value | Band | Withheld


class Results(dict[str, Any]):
    """The named results of a method, each reached by its name."""

    def __getattr__(self, name: str) -> Any:
        try:
            return self[name]
        except KeyError:
            raise AttributeError(name) from None


@dataclass(frozen=True, slots=True)
class Rows:
    """Rows of named values, as a method takes or gives them (readings, loads along a shaft)."""

    rows: tuple[Results, ...] = field(default=())

    def __iter__(self) -> Iterator[Results]:
        return iter(self.rows)
