"""What the working-out of one position is given: the plant, where the position stands, and the settings that rule there."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING, Any

from generator.mounting.documents import maker_figure
from generator.mounting.practice import practice
from generator.plant.plant import Machine, Plant, Position, Shaft
from generator.value import Entered, Value

if TYPE_CHECKING:
    from generator.mounting.reactions import ShaftLoads


@dataclass(frozen=True)
class Bench:
    """One position on the bench. `order` is "first" or "second" on its shaft; `locking` the word of its way of locking.

    `loads`: what its shaft carries, worked out; None where only reactions are stated, or nothing.
    """

    plant: Plant
    machine: Machine
    shaft: Shaft
    position: Position
    locking: str
    order: str
    loads: ShaftLoads | None = None

    def practice(self, key: str) -> Value:
        """A setting of common practice."""
        return practice(self.plant, key)

    def maker(self, figure: str, what: str) -> Any:
        """The maker's figure of that name, or Withheld; `what` names it in words."""
        return maker_figure(self.plant, self.position, figure, what)

    @property
    def inch(self) -> bool:
        """Whether the seat is of an inch size as typed."""
        return isinstance(self.position.diameter, Value) and self.position.diameter.unit == "in"


def worded(word: Any) -> Value:
    """A typed word as a value that knows where it was typed."""
    return Value(str(word), "", Entered(str(word), word.place))
