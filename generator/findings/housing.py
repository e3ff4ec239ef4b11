"""What can be wrong with housing, frame and bolts."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from typing import ClassVar

from generator.findings.facts import number, place_of, said, zone
from generator.mounting.practice import practice
from generator.mounting.sheet import MachineSheets
from generator.plant.plant import Plant
from generator.say import say
from generator.value import Place, Value


@dataclass(frozen=True)
class SealMisalignment:
    """A bearing may swivel further than its seals can follow. The angle of the seat is held against the smallest of what bearing, its seals and the housing's seals allow. Feet brought into line, or a seal that follows, clears it."""

    LEVEL: ClassVar[str] = "put right"
    HOLDS: ClassVar[tuple[str, ...]] = ()
    at: str
    place: Place
    angle: Value
    allowed: Value

    def says(self) -> str:
        return say("The seat stands {angle} off the shaft; {allowed} are allowed.", angle=said(self.angle), allowed=said(self.allowed))

    def clears(self) -> str:
        return say("The supports brought into line, or seals for this angle.")

    def figure(self) -> tuple[float, str, str]:
        return number(self.angle, "deg"), "deg", "more"


def seal_misalignment(plant: Plant, machine: MachineSheets) -> Iterator[SealMisalignment]:
    """Seats further off than the least of what is allowed."""
    for sheet in machine.sheets:
        angle = sheet.number("seat_angle")
        allowed = [v for v in (sheet.number(key) for key in ("angle_bearing", "angle_seal", "angle_housing_seal")) if v is not None]
        if angle is None or not allowed:
            continue
        least = min(allowed, key=lambda v: number(v, "deg"))
        if number(angle, "deg") > number(least, "deg"):
            typed = sheet.position.typed.misaligned
            yield SealMisalignment(sheet.id, place_of(typed.height if typed else None, sheet.position.place), angle, least)


@dataclass(frozen=True)
class FrameNotFlat:
    """A housing drawn down on a face that is not flat is twisted: its ring cannot swivel square, and its bolts carry the twist. Flatness read and the blade under a loosened foot are held against their limits. A face machined or shimmed clears it."""

    LEVEL: ClassVar[str] = "put right"
    HOLDS: ClassVar[tuple[str, ...]] = ()
    at: str
    place: Place
    found: Value
    allowed: Value

    def says(self) -> str:
        return say("{found} out of flat; {allowed} are allowed.", found=said(self.found, "mm"), allowed=said(self.allowed, "mm"))

    def clears(self) -> str:
        return say("The face machined, or full-foot shims, and read again.")

    def figure(self) -> tuple[float, str, str]:
        return number(self.found, "mm"), "mm", "more"


def frame_not_flat(plant: Plant, machine: MachineSheets) -> Iterator[FrameNotFlat]:
    """Faces over the flatness asked, or with a blade under a loosened foot."""
    for sheet in machine.sheets:
        for read, limit in (("flatness_found", "base_flatness"), ("foot_feeler_found", "foot_feeler")):
            found, allowed = sheet.number(read), sheet.number(limit)
            if found and allowed and number(found, "mm") > number(allowed, "mm") + 1e-9:
                yield FrameNotFlat(sheet.id, place_of(found, sheet.position.place), found, allowed)


@dataclass(frozen=True)
class TakeUpTravelUsed:
    """A take-up near the end of its travel cannot take up the next stretch: the belt slips, or the shaft stands crooked where its two sides differ. A shorter belt or chain clears it."""

    LEVEL: ClassVar[str] = "put right"
    HOLDS: ClassVar[tuple[str, ...]] = ()
    at: str
    place: Place
    left: Value
    why: str

    def says(self) -> str:
        return self.why

    def clears(self) -> str:
        return say("The belt or chain shortened, both sides set alike.")

    def figure(self) -> tuple[float, str, str]:
        return number(self.left, "mm"), "mm", "less"


def take_up_travel_used(plant: Plant, machine: MachineSheets) -> Iterator[TakeUpTravelUsed]:
    """Take-ups with less left than the reserve, or of which two sides differ too much."""
    for shaft in machine.shafts:
        used: list[tuple[str, Value]] = []
        for sheet in shaft.sheets:
            left, reserve, now = sheet.number("travel_left"), sheet.number("travel_reserve"), sheet.number("travel_used")
            if not left or not reserve or not now:
                continue
            used.append((sheet.position.letter, now))
            if number(left, "mm") < number(reserve, "mm") - 1e-9:
                why = say("{left} of travel are left; {reserve} are to be kept.", left=said(left, "mm"), reserve=said(reserve, "mm"))
                yield TakeUpTravelUsed(sheet.id, place_of(now, sheet.position.place), left, why)
        if len(used) == 2:
            apart = abs(number(used[0][1], "mm") - number(used[1][1], "mm"))
            if apart > number(practice(plant, "take_up_difference"), "mm"):
                why = say("The two sides differ by {apart} mm: the shaft stands crooked.", apart=f"{apart:g}")
                yield TakeUpTravelUsed(shaft.id, place_of(used[1][1], shaft.shaft.place), used[1][1], why)


@dataclass(frozen=True)
class DustZoneIgnition:
    """A hot bearing lights dust. In a dust zone a bearing inside the casing needs a monitor, and none may run hot. Its measured temperature is held against the plant's limit. A monitor that stops the machine, or the bearing outside and cool, clears it (29 CFR 1910.272(q) asks for it on bucket elevators of grain)."""

    LEVEL: ClassVar[str] = "hold"
    HOLDS: ClassVar[tuple[str, ...]] = ("run",)
    at: str
    place: Place
    why: str

    def says(self) -> str:
        return self.why

    def clears(self) -> str:
        return say("A monitor that stops the machine; the bearing outside the casing; the cause of the heat found.")


def dust_zone_ignition(plant: Plant, machine: MachineSheets) -> Iterator[DustZoneIgnition]:
    """Dust zones with a bearing inside the casing without a monitor, or hot as measured."""
    hot = practice(plant, "dust_temperature")
    for sheet in machine.sheets:
        if "combustible dust" not in zone(sheet):
            continue
        watched = sheet.position.typed.watched
        unwatched = watched is None or str(watched.monitor) == "none"
        if str(sheet.position.typed.inside) == "the casing" and unwatched:
            yield DustZoneIgnition(
                sheet.id,
                place_of(sheet.position.typed.inside, sheet.position.place),
                say("Inside the casing in a dust zone, and nothing watches it."),
            )
        read = sheet.position.latest("housing temperature")
        if read is not None and number(read.value, "degC") > number(hot, "degC"):
            yield DustZoneIgnition(
                sheet.id,
                read.place,
                say("Measured {temperature} in a dust zone; {limit} is hot here.", temperature=said(read.value), limit=said(hot)),
            )
