"""What can be wrong with the clearance of a bearing, with how it is pressed, and with how it runs."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from typing import ClassVar

from generator.findings.facts import content, number, place_of, said
from generator.mounting.sheet import MachineSheets
from generator.plant.plant import Plant
from generator.say import say
from generator.value import Place, Value


@dataclass(frozen=True)
class ClearanceLeftTooSmall:
    """A bearing that loses all its clearance seizes. What is left running, at the worst of clearance, fit and heat, is held against none. A clearance class with more, a looser fit, or less heat between the rings clears it."""

    LEVEL: ClassVar[str] = "hold"
    HOLDS: ClassVar[tuple[str, ...]] = ("put on", "run")
    at: str
    place: Place
    left: Value

    def says(self) -> str:
        return say("At the worst {left} of clearance are left running.", left=said(self.left))

    def clears(self) -> str:
        return say("More clearance before, a looser fit, or less heat between the rings.")

    def figure(self) -> tuple[float, str, str]:
        return number(self.left, "mm"), "mm", "less"


def clearance_left_too_small(plant: Plant, machine: MachineSheets) -> Iterator[ClearanceLeftTooSmall]:
    """Bearings whose running clearance at the worst is less than wanted."""
    for sheet in machine.sheets:
        band, wanted = sheet.band("clearance_running"), sheet.number("clearance_wanted")
        if band is not None and wanted is not None and number(band.lower, "mm") < number(wanted, "mm") - 1e-9:
            yield ClearanceLeftTooSmall(sheet.id, sheet.position.place, band.lower)


@dataclass(frozen=True)
class ClearanceGroupTooSmall:
    """A bearing driven up on its sleeve must keep a least clearance. Where the least that holds it takes more than it can give, it holds either too little or too tight. A bearing with a greater clearance class clears it."""

    LEVEL: ClassVar[str] = "hold"
    HOLDS: ClassVar[tuple[str, ...]] = ("put on",)
    at: str
    place: Place
    before: Value

    def says(self) -> str:
        return say("With {before} before driving up, the least that holds leaves too little.", before=said(self.before))

    def clears(self) -> str:
        return say("A bearing with a greater clearance class.")


def clearance_group_too_small(plant: Plant, machine: MachineSheets) -> Iterator[ClearanceGroupTooSmall]:
    """Sleeve-mounted roller bearings whose clearance is too little to be driven up."""
    for sheet in machine.sheets:
        verdict = sheet.number("take_verdict_1")
        if verdict is not None and verdict.content == "too little clearance for it":
            yield ClearanceGroupTooSmall(sheet.id, sheet.position.place, verdict.reason.inputs["before"])


@dataclass(frozen=True)
class RingWillNotSlideOn:
    """A ring heated to its ceiling must still slide on its seat. Where the ceiling leaves too little room, it grips half way. A colder shaft, a looser fit, or another way the engineer agrees clears it; never a hotter ring."""

    LEVEL: ClassVar[str] = "hold"
    HOLDS: ClassVar[tuple[str, ...]] = ("put on",)
    at: str
    place: Place
    room: Value

    def says(self) -> str:
        return say("At its ceiling the ring has {room} to slide on.", room=said(self.room))

    def clears(self) -> str:
        return say("A colder shaft, a looser fit, or another way the engineer agrees.")


def ring_will_not_slide_on(plant: Plant, machine: MachineSheets) -> Iterator[RingWillNotSlideOn]:
    """Heated seats whose ring has too little room at its ceiling."""
    for sheet in machine.sheets:
        room = sheet.number("heat_room")
        if room is not None and content(sheet, "heat_verdict") == "will not slide on below the ceiling":
            yield RingWillNotSlideOn(sheet.id, sheet.position.place, room)


@dataclass(frozen=True)
class RingStressTooHigh:
    """A hardened ring pressed or driven up too tight cracks from its bore. Its hoop stress at the tightest is held against the plant's limit. A looser fit, or less driving up, clears it."""

    LEVEL: ClassVar[str] = "put right"
    HOLDS: ClassVar[tuple[str, ...]] = ()
    at: str
    place: Place
    hoop: Value
    most: Value

    def says(self) -> str:
        return say("Hoop stress {hoop} at the tightest; {most} is the limit.", hoop=said(self.hoop, "MPa"), most=said(self.most, "MPa"))

    def clears(self) -> str:
        return say("A looser fit, or less clearance taken.")

    def figure(self) -> tuple[float, str, str]:
        return number(self.hoop, "MPa"), "MPa", "more"


def ring_stress_too_high(plant: Plant, machine: MachineSheets) -> Iterator[RingStressTooHigh]:
    """Pressed rings over the plant's hoop stress."""
    for sheet in machine.sheets:
        hoop, most = sheet.number("ring_hoop"), sheet.number("ring_hoop_most")
        if hoop and most and number(hoop, "MPa") > number(most, "MPa"):
            yield RingStressTooHigh(sheet.id, sheet.position.place, hoop, most)


@dataclass(frozen=True)
class SeatHoldsTooLittle:
    """A pressed joint holds by friction alone where there is no shoulder. What it may carry along the shaft at its loosest is held against what comes to it. A shoulder, a tighter fit, or more driving up clears it."""

    LEVEL: ClassVar[str] = "put right"
    HOLDS: ClassVar[tuple[str, ...]] = ()
    at: str
    place: Place
    may: Value
    must: Value

    def says(self) -> str:
        return say("The seat may carry {may} along the shaft; {must} come.", may=said(self.may), must=said(self.must))

    def clears(self) -> str:
        return say("A shoulder, a tighter fit, or more clearance taken.")

    def figure(self) -> tuple[float, str, str]:
        return number(self.must, "N"), "N", "more"


def seat_holds_too_little(plant: Plant, machine: MachineSheets) -> Iterator[SeatHoldsTooLittle]:
    """Pressed joints that may carry less along the shaft than comes."""
    for sheet in machine.sheets:
        may, must = sheet.number("seat_hold"), sheet.number("seat_hold_needed")
        if may and must and number(must, "N") > number(may, "N"):
            yield SeatHoldsTooLittle(sheet.id, place_of(must, sheet.position.place), may, must)


@dataclass(frozen=True)
class VibrationHigh:
    """The last reading of vibration lies in a zone in which a machine is not left to run, or has changed enough to ask why. Its cause found clears it. The zones are a standard's; the machine's own baseline says more."""

    LEVEL: ClassVar[str] = "put right"
    HOLDS: ClassVar[tuple[str, ...]] = ()
    at: str
    place: Place
    why: str

    def says(self) -> str:
        return self.why

    def clears(self) -> str:
        return say("The cause found, and a reading below.")


def vibration_high(plant: Plant, machine: MachineSheets) -> Iterator[VibrationHigh]:
    """Readings in zone C or D, or changed since the baseline."""
    for sheet in machine.sheets:
        zone, read = content(sheet, "vibration_zone"), sheet.position.latest("vibration")
        if read is None:
            continue
        if zone in ("C", "D"):
            yield VibrationHigh(sheet.id, read.place, say("Vibration {read} lies in zone {zone}.", read=said(read.value), zone=zone))
        elif content(sheet, "vibration_change") == "significant":
            why = say("Vibration {read} has changed from its baseline by enough to ask why.", read=said(read.value))
            yield VibrationHigh(sheet.id, read.place, why)
