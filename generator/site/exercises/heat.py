"""How warm a ring must be to slide on."""

from collections.abc import Iterator

from generator.mounting.sheet import MountingStandard
from generator.say import say
from generator.site.exercises.working import Exercise, workings


def heat(standard: MountingStandard, wanted: str) -> Iterator[Exercise]:
    """Set point against ceiling."""
    for on in workings(standard, wanted):
        if on.known("heat_to", "heat_verdict"):
            question = say("How hot is the ring of {id} made so that it slides on, and is that under its ceiling?", id=on.sheet.id)
            given = on.rests_on("heat_to", "interference", "slip", "bore", "expansion", "shaft", "ceiling")
            yield on.exercise(question, given, on.said("heat_to", "heat_verdict", "heat_room"))
