"""The angle a seat stands at, and what the wrench is set to."""

from collections.abc import Iterator

from generator.mounting.sheet import MountingStandard
from generator.say import say
from generator.site.exercises.working import Exercise, workings


def bolts(standard: MountingStandard, wanted: str) -> Iterator[Exercise]:
    """Whether bearing and seals bear the angle, and the wrench for the bolts."""
    for on in workings(standard, wanted):
        if on.known("seat_angle"):
            question = say(
                "At what angle to the shaft does the seat of {id} stand? Does the bearing bear it? Do the seals? And to what is the wrench set?",
                id=on.sheet.id,
            )
            given = (
                *on.rests_on("seat_angle", "height", "sideways", "over"),
                *on.lines("angle_bearing", "angle_seal", "angle_housing_seal", "bolt_thread", "bolt_class", "thread_state", "bolt_torque"),
            )
            answer = (
                *on.said("seat_angle", "slope", "slope_allowed", "slope_verdict"),
                say("The smallest angle allowed rules: the bearing's may be wide and the seal's narrow."),
                *on.said("bolt_setting", "bolt_wrench"),
            )
            yield on.exercise(question, given, answer)
