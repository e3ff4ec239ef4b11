"""A ring locked by an eccentric collar."""

from generator.case import ECCENTRIC as WAY
from generator.locking.eccentric_collar.steps import put_on, take_off
from generator.locking.eccentric_collar.values import NAME, WORD, lines, suits

__all__ = ["NAME", "WAY", "WORD", "lines", "put_on", "suits", "take_off"]
