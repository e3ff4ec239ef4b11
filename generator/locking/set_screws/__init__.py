"""A ring locked by set screws."""

from generator.case import SCREWS as WAY
from generator.locking.set_screws.steps import put_on, take_off
from generator.locking.set_screws.values import NAME, WORD, lines, suits

__all__ = ["NAME", "WAY", "WORD", "lines", "put_on", "suits", "take_off"]
