"""A cylindrical bore pressed on its seat, mounted warm."""

from generator.case import HEATED as WAY
from generator.locking.heated_seat.steps import put_on, take_off
from generator.locking.heated_seat.values import NAME, WORD, lines, suits

__all__ = ["NAME", "WAY", "WORD", "lines", "put_on", "suits", "take_off"]
