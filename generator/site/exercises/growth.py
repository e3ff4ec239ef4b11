"""Growth along a shaft against the room of its free unit."""

from collections.abc import Iterator

from generator.mounting.sheet import MountingStandard
from generator.say import say
from generator.site.exercises.working import Exercise, workings


def growth(standard: MountingStandard, wanted: str) -> Iterator[Exercise]:
    """Whether a free unit has the room that growth takes."""
    for on in workings(standard, wanted):
        if on.known("growth_here", "float_first", "float_second"):
            given = (
                *on.rests_on("growth_here", "length", "shaft", "frame", "shaft_expansion", "frame_expansion"),
                *on.rests_on("float_needed_hot", "margin", "setting_error"),
                *on.lines("float_first", "float_second"),
            )
            question = say("How far does the shaft grow to {id}, and is its float enough?", id=on.sheet.id)
            yield on.exercise(question, given, on.said("growth_here", "float_needed_hot", "float_verdict_hot", "set_away", "set_toward"))
