"""The ways a ring is locked to its shaft, one module each, named in one list."""

from types import ModuleType

from generator.locking import clamp_collar, eccentric_collar, heated_seat, set_screws, sleeve_by_clearance, sleeve_by_turn
from generator.plant.plant import Position

LOCKINGS: tuple[ModuleType, ...] = (sleeve_by_turn, sleeve_by_clearance, set_screws, eccentric_collar, clamp_collar, heated_seat)


def locking_of(position: Position) -> ModuleType | None:
    """The way of locking a position's parts make, None where they make none."""
    return next((locking for locking in LOCKINGS if locking.suits(position)), None)
