"""A roller bearing on an adapter sleeve, driven up until its clearance has gone down by so much."""

from generator.case import CLEARANCE as WAY
from generator.locking.sleeve_by_clearance.steps import put_on, take_off
from generator.locking.sleeve_by_clearance.values import NAME, WORD, lines, suits

__all__ = ["NAME", "WAY", "WORD", "lines", "put_on", "suits", "take_off"]
