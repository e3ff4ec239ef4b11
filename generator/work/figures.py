"""The values of one sheet as figures of its steps."""

from __future__ import annotations

from generator.mounting.sheet import Sheet
from generator.say import say
from generator.show import shown
from generator.steps import Figure
from generator.value import Band, Value, Withheld


class SheetFigures:
    """What a step may say of a sheet: a line's value by its key, or a word of the position that belongs to one."""

    def __init__(self, sheet: Sheet, first_end: str) -> None:
        self.sheet, self.first_end = sheet, first_end
        position = sheet.position
        self._words = {
            "gun": ("grease_strokes", position.gun.name if position.gun else ""),
            "grease_name": ("grease_strokes", position.grease.name if position.grease else ""),
        }

    def has(self, key: str) -> bool:
        """Whether the sheet has an honest value under the key."""
        if key in self._words:
            return bool(self._words[key][1])
        value = self.sheet.value(key)
        return value is not None and not isinstance(value, Withheld)

    def __call__(self, key: str) -> Figure:
        """The figure; a held one where there is none."""
        if key in self._words:
            line, word = self._words[key]
            return Figure(line, word or say("HELD"), not word)
        value = self.sheet.value(key)
        if value is None or isinstance(value, Withheld):
            return Figure(key, say("HELD"), held=True)
        return Figure(key, self._said(key, value))

    def _said(self, key: str, value: Value | Band) -> str:
        text = shown(value).main
        if key == "place":
            return say("{distance} from the face at the {end}", distance=text, end=self.first_end)
        if key == "nut_slots" and self.sheet.position.sleeve is not None:
            return say("{slots} of {all} slots", slots=text, all=f"{self.sheet.position.sleeve.typed.nut.slots.content:g}")
        if isinstance(value, Value) and not value.unit and isinstance(value.content, str):
            return say(value.content)
        return text
