"""What can be wrong with a foot under its load: it slips, or it opens at its edge."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from typing import ClassVar

from generator.findings.facts import number, said
from generator.mounting.sheet import MachineSheets
from generator.plant.plant import Plant
from generator.say import say
from generator.value import Place, Value


@dataclass(frozen=True)
class FootSlips:
    """A foot holds its place by friction under its bolts, not by the bolts. The side load on it is held against what the clamp left at the worst may hold. Stops or dowels clear it, or a stronger class of bolt; never more torque than the bolt may have."""

    LEVEL: ClassVar[str] = "put right"
    HOLDS: ClassVar[tuple[str, ...]] = ()
    at: str
    place: Place
    load: Value
    may: Value

    def says(self) -> str:
        return say("{load} push the foot sideways; {may} are held.", load=said(self.load), may=said(self.may))

    def clears(self) -> str:
        return say("Stops or dowels, or bolts of a stronger class.")

    def figure(self) -> tuple[float, str, str]:
        return number(self.load, "N"), "N", "more"


def foot_slips(plant: Plant, machine: MachineSheets) -> Iterator[FootSlips]:
    """Feet and flanges pushed harder than their clamp holds."""
    for sheet in machine.sheets:
        load, may = sheet.number("slip_load"), sheet.number("slip_allowed")
        if load and may and number(load, "N") > number(may, "N"):
            yield FootSlips(sheet.id, sheet.position.place, load, may)


@dataclass(frozen=True)
class FootOpens:
    """A side load high over the base tips its housing; the foot opens at one edge and its bolts work loose. The tipping moment is held against the one at which a gap opens. A stop, a wider foot or a housing turned to the load clears it."""

    LEVEL: ClassVar[str] = "put right"
    HOLDS: ClassVar[tuple[str, ...]] = ()
    at: str
    place: Place
    moment: Value
    may: Value

    def says(self) -> str:
        return say("The side load tips the housing with {moment}; a gap opens at {may}.", moment=said(self.moment), may=said(self.may))

    def clears(self) -> str:
        return say("A stop, a wider foot, or the base turned toward the load.")

    def figure(self) -> tuple[float, str, str]:
        return number(self.moment, "N.m"), "N.m", "more"


def foot_opens(plant: Plant, machine: MachineSheets) -> Iterator[FootOpens]:
    """Feet tipped open by their side load."""
    for sheet in machine.sheets:
        moment, may = sheet.number("tip_moment"), sheet.number("tip_allowed")
        if moment and may and number(moment, "N.m") > number(may, "N.m"):
            yield FootOpens(sheet.id, sheet.position.place, moment, may)
