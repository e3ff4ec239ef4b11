"""How warm a bearing may run, and what its rounds say."""

from collections.abc import Iterator

from generator.mounting.sheet import MountingStandard, Sheet
from generator.say import say
from generator.site.exercises.working import Exercise, Pairs, Working, workings

ROUNDS = 3


def watch(standard: MountingStandard, wanted: str) -> Iterator[Exercise]:
    """Figures to look into it and to stop, and the last rounds to hold against them."""
    for on in workings(standard, wanted):
        if on.known("run_in_usual", "run_in_alarm", "run_in_stop"):
            question = say(
                "How warm may the housing of {id} settle after it was put on, when do you look into it, and when do you stop the machine?",
                id=on.sheet.id,
            )
            rounds = _rounds(on)
            answer = on.said("run_in_usual", "run_in_alarm", "run_in_stop", "vibration_baseline", "vibration_alarm", "vibration_change")
            if rounds:
                answer += (
                    say(
                        "Of each round, take the air from the housing. That difference is what tells; the housing alone follows the weather."
                    ),
                )
            yield on.exercise(question, on.rests_on("run_in_usual", "ambient", "settled", "limit") + rounds, answer)


def days_watched(sheet: Sheet) -> tuple[str, ...]:
    """The days of rounds on which the housing was read, oldest first."""
    return tuple(dict.fromkeys(r.when for r in sheet.position.readings if r.phase == "round" and r.quantity == "housing temperature"))


def _rounds(on: Working) -> Pairs:
    """Housing, air and vibration as read on the last rounds."""
    newest = days_watched(on.sheet)[-ROUNDS:]
    shown = ("housing temperature", "air temperature", "vibration")
    return tuple(
        (say("{day}, {quantity}", day=reading.day, quantity=reading.quantity), on.text(reading.value))
        for reading in on.sheet.position.readings
        if reading.when in newest and reading.quantity in shown
    )
