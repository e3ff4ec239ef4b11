"""What is missing on paper, past its date, or names an issue that is no more."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from typing import ClassVar

from generator.findings.facts import place_of
from generator.mounting.practice import practice
from generator.mounting.sheet import MachineSheets, Sheet
from generator.mounting.wrench import run_out
from generator.plant.plant import Plant
from generator.records.ledger import standing
from generator.say import say
from generator.value import Instructed, Need, Place, Value, Withheld


@dataclass(frozen=True)
class MakerDocumentMissing:
    """Some figures only the maker can give: the turn of a thin sleeve's nut, the torque of its screw, the order of a second flange. Without the maker's document on file such a figure is not shown, and putting on is held. The document on file, its figures typed, clears it."""

    LEVEL: ClassVar[str] = "hold"
    HOLDS: ClassVar[tuple[str, ...]] = ("put on",)
    at: str
    place: Place
    maker: str
    missing: tuple[str, ...]

    def says(self) -> str:
        return say("No document of {maker} on file gives: {missing}.", maker=self.maker, missing="; ".join(self.missing))

    def clears(self) -> str:
        return say("The document asked of {maker}, and its figures typed in `library/documents/`.", maker=self.maker)


def maker_document_missing(plant: Plant, machine: MachineSheets) -> Iterator[MakerDocumentMissing]:
    """Positions with a number for the hand that only the maker can give, and nothing on file."""
    for sheet in machine.sheets:
        asked: dict[str, list[str]] = {}
        for need in _needs(sheet):
            asked.setdefault(need.subject, []).append(need.what)
        for maker, missing in asked.items():
            yield MakerDocumentMissing(sheet.id, sheet.position.place, maker, tuple(dict.fromkeys(missing)))


def _needs(sheet: Sheet) -> Iterator[Need]:
    for line in sheet.lines.values():
        if line.by_hand and isinstance(line.value, Withheld):
            yield from (need for need in line.value.needs if need.kind == "document")


@dataclass(frozen=True)
class MakerDocumentPastReview:
    """A document is looked at again by a date: makers change their figures. Past it, the figures stand, and someone must ask whether there is a newer revision. The document looked at, and its date moved, clears it."""

    LEVEL: ClassVar[str] = "put right"
    HOLDS: ClassVar[tuple[str, ...]] = ()
    at: str
    place: Place
    document: str
    review_by: str

    def says(self) -> str:
        return say("{document} was to be looked at again by {day}.", document=self.document, day=self.review_by)

    def clears(self) -> str:
        return say("The maker asked for the revision that is valid, and the date moved in its file.")


def maker_document_past_review(plant: Plant, machine: MachineSheets) -> Iterator[MakerDocumentPastReview]:
    """Positions that rest on a document past its review."""
    for sheet in machine.sheets:
        used = {
            end.reason.document
            for line in sheet.lines.values()
            for end in (line.value, getattr(line.value, "lower", None))
            if isinstance(end, Value) and isinstance(end.reason, Instructed)
        }
        for name in sorted(used):
            document = plant.library.documents.get(name)
            if document and str(document.typed.review_by.content) < plant.on.isoformat():
                yield MakerDocumentPastReview(
                    sheet.id, place_of(document.typed.review_by, document.place), name, str(document.typed.review_by.content)
                )


@dataclass(frozen=True)
class GunNotWeighed:
    """A gun's stroke changes as it wears. Strokes stand for grams only while the gun has been weighed within its time. Ten strokes weighed clear it."""

    LEVEL: ClassVar[str] = "put right"
    HOLDS: ClassVar[tuple[str, ...]] = ()
    at: str
    place: Place
    gun: str

    def says(self) -> str:
        return say("{gun} has not been weighed within its time: strokes are not stated.", gun=self.gun)

    def clears(self) -> str:
        return say("Ten strokes of {gun} weighed, figure and day typed in `library/tools.yml`.", gun=self.gun)


def gun_not_weighed(plant: Plant, machine: MachineSheets) -> Iterator[GunNotWeighed]:
    """Positions whose gun's weighing has run out."""
    for sheet in machine.sheets:
        gun = sheet.position.gun
        if (
            gun
            and sheet.lines.get("grease_feed") is None
            and (gun.typed.stroke is None or run_out(gun.typed.weighed, practice(plant, "gun_weighed"), plant.on))
        ):
            yield GunNotWeighed(sheet.id, gun.place, gun.name)


@dataclass(frozen=True)
class RecordOfAnOldIssue:
    """A job done from a sheet that had been replaced may have set a figure that is no longer right. The issue a record names is held against the ledger at its day. The job looked at against the sheet that is valid clears it."""

    LEVEL: ClassVar[str] = "put right"
    HOLDS: ClassVar[tuple[str, ...]] = ()
    at: str
    place: Place
    record: str
    named: str
    valid: int

    def says(self) -> str:
        return say(
            "Record {record} was made from issue {named}; issue {valid} was valid that day.",
            record=self.record,
            named=self.named,
            valid=self.valid,
        )

    def clears(self) -> str:
        return say("The job held against the valid sheet, and a new record made.")


def record_of_an_old_issue(plant: Plant, machine: MachineSheets) -> Iterator[RecordOfAnOldIssue]:
    """As-left records that name an issue older than the one valid on their day."""
    lines = [line for line in plant.ledger if line.tag == machine.machine.tag]
    for sheet in machine.sheets:
        seen: set[str] = set()
        for reading in sheet.position.readings:
            valid = standing(line for line in lines if line.on < reading.day).get(machine.machine.tag)
            if reading.phase != "as-left" or reading.record in seen or valid is None or not reading.issue.isdecimal():
                continue
            if int(reading.issue) < valid.issue:
                seen.add(reading.record)
                yield RecordOfAnOldIssue(sheet.id, reading.place, reading.record, reading.issue, valid.issue)
