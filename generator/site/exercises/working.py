"""What every exercise is made with: the lines of a sheet as its page shows them, and what a computed line rests on."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from generator.method import meaning
from generator.mounting.chains import ALL
from generator.mounting.sheet import MountingStandard, ShaftSheet, Sheet
from generator.say import say
from generator.show import shown
from generator.value import Band, Computed, Known, Rows, Value

Pairs = tuple[tuple[str, str], ...]


@dataclass(frozen=True)
class Exercise:
    """One exercise: the machine it is worked on and where on its page, the question, what is given, and the answer a sentence each."""

    at: str
    anchor: str
    question: str
    given: Pairs
    answer: tuple[str, ...]


@dataclass(frozen=True)
class Working:
    """One sheet to make an exercise from. `first`: the units the plant reads first, so that exercise and page show the same."""

    sheet: Sheet
    first: str

    def known(self, *keys: str) -> bool:
        """Whether there is an honest value under each of the keys."""
        return all(isinstance(self.sheet.value(key), Value | Band) for key in keys)

    def text(self, value: Known) -> str:
        """A value as the page shows it."""
        return shown(value, self.first).main

    def lines(self, *keys: str) -> Pairs:
        """Name and text of those of the lines that the sheet has."""
        return tuple((self.sheet.lines[key].name, self.text(self.sheet.lines[key].value)) for key in keys if self.known(key))

    def said(self, *keys: str) -> tuple[str, ...]:
        """The same as sentences."""
        return tuple(say("{name}: {value}.", name=name, value=value) for name, value in self.lines(*keys))

    def rests_on(self, key: str, *names: str) -> Pairs:
        """What a computed line was given, under the names its method has for it."""
        value = self.sheet.value(key)
        return self.inputs(value.lower if isinstance(value, Band) else value, *names)

    def inputs(self, value: Known | None, *names: str) -> Pairs:
        """The same for any value."""
        reason = getattr(value, "reason", None)
        if not isinstance(reason, Computed):
            return ()
        takes = ALL[reason.method].takes
        return tuple(
            (_headed(meaning(takes[name], name)), self.text(reason.inputs[name]))
            for name in names
            if isinstance(reason.inputs.get(name), Value)
        )

    def exercise(self, question: str, given: Pairs, answer: tuple[str, ...]) -> Exercise:
        """An exercise on this position."""
        return Exercise(self.sheet.position.tag, self.sheet.position.letter, question, given, answer)


def workings(standard: MountingStandard, wanted: str) -> Iterator[Working]:
    """The sheets an exercise may be made from: those of the machine or position wanted, all for none."""
    first = str(standard.plant.typed.units)
    for machine in standard.machines:
        yield from (Working(sheet, first) for sheet in machine.sheets if wanted in ("", sheet.id, machine.machine.tag))


def shafts(standard: MountingStandard, wanted: str) -> Iterator[ShaftSheet]:
    """The same for exercises on a whole shaft."""
    for machine in standard.machines:
        yield from (shaft for shaft in machine.shafts if wanted in ("", machine.machine.tag, *(sheet.id for sheet in shaft.sheets)))


def computed_by(value: object, method: str) -> Value | None:
    """The value among all that this one rests on which that method computed, None where none was."""
    reason = getattr(value, "reason", None)
    if not isinstance(reason, Computed):
        return None
    if reason.method == method:
        return value  # type: ignore[return-value]
    under = (computed_by(given, method) for given in reason.inputs.values() if not isinstance(given, Rows))
    return next((found for found in under if found is not None), None)


def _headed(words: str) -> str:
    return words[:1].upper() + words[1:]
