"""Three mistakes in a filled record sheet."""

from collections.abc import Iterator

from generator.mounting.sheet import MountingStandard
from generator.say import say
from generator.site.exercises.working import Exercise, workings
from generator.value import Value

# how far under the least limit the wrong reading lies, in the unit of the limit: enough to be no slip of the pencil
UNDER = {"mm": 0.020, "in": 0.001}


def record(standard: MountingStandard, wanted: str) -> Iterator[Exercise]:
    """A sheet without an issue, with a shaft accepted under its limit, and with one pair of initials where two are asked."""
    for on in workings(standard, wanted):
        limits = on.sheet.band("shaft_limits")
        if limits is None:
            continue
        low = limits.lower
        wrong = on.text(Value(low.content - UNDER[low.unit], low.unit, low.reason))
        both = say("fitter K4, second K7")
        given = (
            (say("position"), on.sheet.id),
            (say("issue"), say("not written")),
            (say("shaft, smallest of nine"), wrong),
            (say("shaft, largest of nine"), on.text(limits.upper)),
            (say("shaft temperature"), on.text(Value(20.0, "degC", low.reason))),
            (say("S2, shaft accepted"), both),
            ("S4", both),
            ("S5", say("fitter K4")),
            *((say("strokes given"), strokes) for _, strokes in on.lines("grease_strokes")),
        )
        answer = (
            say("The issue is missing: nobody can tell whether the sheet was in force."),
            say("{reading} is under the least of {limits}: the shaft should not have been accepted at S2.", reading=wrong, limits=on.text(limits)),
            say("S5 has one pair of initials: the second person did not sign, so the job should have stopped there."),
        )  # fmt: skip
        question = say("This record of {id} is invented and has three mistakes. Find them.", id=on.sheet.id)
        yield on.exercise(question, given, answer)
