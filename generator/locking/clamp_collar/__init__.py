"""A ring locked by a concentric clamp collar."""

from generator.case import CLAMP as WAY
from generator.locking.clamp_collar.steps import put_on, take_off
from generator.locking.clamp_collar.values import NAME, WORD, lines, suits

__all__ = ["NAME", "WAY", "WORD", "lines", "put_on", "suits", "take_off"]
