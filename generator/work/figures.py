"""The values of one sheet as figures of its steps."""

from __future__ import annotations

from dataclasses import replace
from math import ceil

from generator.mounting.axial import anchor_of
from generator.mounting.sheet import Sheet
from generator.plant.plant import Position, Shaft
from generator.say import say
from generator.show import figure, first_unit, shown, with_unit
from generator.steps import Figure
from generator.units import convert
from generator.value import Band, Value, Withheld

# what is set on a tool's own scale stays as the tool is marked
AS_MARKED = ("bolt_setting", "bolt_half")
# what must be reached and can only be set or gauged so finely is said upward; in these units as a whole number
UPWARD = {"engagement_needed": "mm", "heat_to": "degC degF", "jack_mass": "", "jack_rating_mass": "", "whole_mass": "", "hold_mass": "", "hold_rating_mass": "", "whole_rating_mass": ""}


class SheetFigures:
    """What a step may say of a sheet: a line's value by its key, or a word of the position that belongs to one."""

    def __init__(self, sheet: Sheet, shaft: Shaft, first: str) -> None:
        self.sheet, self.first_end, self.first = sheet, shaft.ends[0], first
        position = sheet.position
        # the room a free unit is set with is counted from the unit that holds the shaft; steps name the ends
        ends = ("set_toward", "set_away") if _beyond(position, shaft) else ("set_away", "set_toward")
        self._other_names = dict(zip(("set_first", "set_second"), ends, strict=True))
        self._words = {
            "gun": ("grease_strokes", position.gun.name if position.gun else ""),
            "grease_name": ("grease_strokes", position.grease.name if position.grease else ""),
        }

    def has(self, key: str) -> bool:
        """Whether the sheet has an honest value under the key."""
        if key in self._words:
            return bool(self._words[key][1])
        key = self._other_names.get(key, key)
        value = self.sheet.value(key)
        return value is not None and not isinstance(value, Withheld)

    def __call__(self, key: str) -> Figure:
        """The figure; a held one where there is none."""
        if key in self._words:
            line, word = self._words[key]
            return Figure(line, word or say("HELD"), not word)
        key = self._other_names.get(key, key)
        value = self.sheet.value(key)
        if value is None or isinstance(value, Withheld):
            return Figure(key, say("HELD"), held=True)
        return Figure(key, self._said(key, value))

    def _as_read(self, value: Value | Band) -> Value | Band:
        """Thousandths in the unit that blade and micrometer are marked in here."""
        if isinstance(value, Band):
            return replace(value, lower=self._as_read(value.lower), upper=self._as_read(value.upper))
        if value.unit != "um":
            return value
        return replace(value, content=convert(value.content, "um", self.reads_in), unit=self.reads_in)

    @property
    def reads_in(self) -> str:
        """The unit that blade and micrometer are marked in here: that of the shaft's limits as they are shown."""
        limits = self.sheet.band("shaft_limits")
        return "in" if limits is not None and first_unit(limits.lower, self.first) == "in" else "mm"

    def _over_ceiling(self, key: str, number: float, unit: str) -> bool:
        """Whether a set point rounded upward would pass what the ring may be heated to."""
        ceiling = self.sheet.number("heating") if key == "heat_to" else None
        return ceiling is not None and number > convert(ceiling.content, ceiling.unit, unit)

    def _said(self, key: str, value: Value | Band) -> str:
        if key in UPWARD and isinstance(value, Value):
            unit = first_unit(value, self.first)
            number = convert(value.content, value.unit, unit)
            whole = unit in UPWARD[key].split() and not self._over_ceiling(key, ceil(number), unit)
            return with_unit(figure(number, unit, 0 if whole else None, "up"), unit)
        text = shown(self._as_read(value), "metric" if key in AS_MARKED else self.first).main
        if key == "place":
            return say("{distance} from the face at the {end}", distance=text, end=self.first_end)
        if key == "nut_slots" and self.sheet.position.sleeve is not None:
            return say("{slots} of {all} slots", slots=text, all=f"{self.sheet.position.sleeve.typed.nut.slots.content:g}")
        if isinstance(value, Value) and not value.unit and isinstance(value.content, str):
            return say(value.content)
        return text


def _beyond(position: Position, shaft: Shaft) -> bool:
    """Whether it lies beyond the unit that holds the shaft, seen from the first end."""
    here, there = position.typed.at, anchor_of(shaft).typed.at
    return here is not None and there is not None and convert(here.content, here.unit, "mm") > convert(there.content, there.unit, "mm")
