"""Grams, strokes, and whether a grease stands the speed."""

from collections.abc import Iterator

from generator.mounting.sheet import MountingStandard
from generator.say import say
from generator.site.exercises.working import Exercise, computed_by, workings


def grease(standard: MountingStandard, wanted: str) -> Iterator[Exercise]:
    """From grams to strokes of the gun at hand."""
    for on in workings(standard, wanted):
        gun, planned = on.sheet.position.gun, on.sheet.position.grease
        if not on.known("grease_strokes", "grease_dose") or gun is None or planned is None:
            continue
        # where the maker gives the grams, they are given and not worked out
        by_size = computed_by(on.sheet.value("grease_dose"), "grease-quantity")
        wanted_grams = on.rests_on("grease_dose", "grease")
        strokes = on.text(on.sheet.lines["grease_strokes"].value)
        answer = (
            *(say("{name}: {value}.", name=name, value=value) for name, value in wanted_grams),
            say("Strokes of {gun} with {grease}: {strokes}.", gun=gun.name, grease=planned.name, strokes=strokes),
            *on.said("grease_dose", "round_weeks", "grease_when"),
        )
        given = (on.inputs(by_size, "outside", "width") if by_size else wanted_grams) + on.rests_on("grease_dose", "stroke")
        question = say("How many strokes does {id} get, and what does its page say on when and how?", id=on.sheet.id)
        yield on.exercise(question, given, answer)


def speed(standard: MountingStandard, wanted: str) -> Iterator[Exercise]:
    """Speed times mean diameter against the grease's limit."""
    for on in workings(standard, wanted):
        if on.known("n_dm", "n_dm_allowed", "n_dm_verdict"):
            given = on.rests_on("n_dm", "speed", "bore", "outside") + on.lines("n_dm_allowed")
            yield on.exercise(say("Does its grease stand the speed of {id}?", id=on.sheet.id), given, on.said("n_dm", "n_dm_verdict"))
