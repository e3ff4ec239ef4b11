"""A ball insert on an adapter sleeve, driven up by the turn of its nut."""

from generator.case import TURN as WAY
from generator.locking.sleeve_by_turn.steps import put_on, take_off
from generator.locking.sleeve_by_turn.values import NAME, WORD, lines, suits

__all__ = ["NAME", "WAY", "WORD", "lines", "put_on", "suits", "take_off"]
