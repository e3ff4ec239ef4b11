"""A combination of parts, attitude and roles for which the work has no order that holds."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from typing import ClassVar

from generator.case import refusal
from generator.mounting.case_of import case_of
from generator.mounting.sheet import MachineSheets
from generator.plant.plant import Plant
from generator.refusals import REFUSALS
from generator.say import say
from generator.value import Place

# said already by a finding of its own
SAID = ("second flange without the maker's order", "eccentric on a shaft that turns both ways")


@dataclass(frozen=True)
class CombinationWithoutSteps:
    """Steps are composed from the way of locking, the housing, how the shaft lies, what is fixed and what was mounted first. Some combinations make no sense, and for some only the maker can give the order; these have no steps. Parts and roles that go together, or the maker's instruction on file, clear it (common practice, no source)."""

    LEVEL: ClassVar[str] = "hold"
    HOLDS: ClassVar[tuple[str, ...]] = ("put on",)
    at: str
    place: Place
    why: str

    def says(self) -> str:
        return REFUSALS[self.why].text()

    def clears(self) -> str:
        return say("The file put right where it is wrong, or the maker's document on file with the order.")


def combination_without_steps(plant: Plant, machine: MachineSheets) -> Iterator[CombinationWithoutSteps]:
    """Positions whose case is refused and of which no other finding says so."""
    for shaft in machine.shafts:
        for sheet in shaft.sheets:
            case = case_of(plant, machine, shaft, sheet)
            why = refusal(case) if case else ""
            if why and why not in SAID:
                yield CombinationWithoutSteps(sheet.id, sheet.position.place, why)
