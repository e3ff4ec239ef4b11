"""Clearance of a roller bearing on its sleeve."""

from collections.abc import Iterator

from generator.mounting.sheet import MountingStandard
from generator.say import say
from generator.site.exercises.working import Exercise, workings


def roller(standard: MountingStandard, wanted: str) -> Iterator[Exercise]:
    """How much of its clearance is taken, and what is left."""
    for on in workings(standard, wanted):
        if on.known("take_1", "left_1", "drive_travel", "drive_turn"):
            question = say(
                "How much of its clearance is taken at {id} at the most, what does the blade read then, and what turn of the nut goes with it?",
                id=on.sheet.id,
            )
            given = on.rests_on("take_1", "before", "least", "most", "least_left") + on.rests_on("drive_turn", "pitch")
            answer = (*on.said("take_1", "left_1", "drive_travel", "drive_turn"), say("The blade decides; travel and turn only guide."))
            yield on.exercise(question, given, answer)
