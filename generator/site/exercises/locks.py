"""The nut of a sleeve, and the way a collar is turned."""

from collections.abc import Iterator

from generator.mounting.sheet import MountingStandard
from generator.say import say
from generator.site.exercises.working import Exercise, shafts, workings


def nut(standard: MountingStandard, wanted: str) -> Iterator[Exercise]:
    """Turn, degrees, slots and travel of a nut."""
    for on in workings(standard, wanted):
        if on.sheet.band("nut_turn") and on.sheet.band("nut_travel"):
            question = say(
                "How many slots is the nut of {id} turned, how far does it travel, and which way does the housing move?", id=on.sheet.id
            )
            yield on.exercise(
                question, on.lines("lock_thread", "nut_turn"), on.said("nut_degrees", "nut_slots", "nut_travel", "shift_toward")
            )


def collar(standard: MountingStandard, wanted: str) -> Iterator[Exercise]:
    """Which way each collar of a shaft is turned."""
    for shaft in shafts(standard, wanted):
        turned = [(sheet.position.letter, sheet.number("collar_turn")) for sheet in shaft.sheets]
        answer = tuple(
            say("{letter}, seen from its own collar side: {way}.", letter=letter, way=say(str(way.content)))
            for letter, way in turned
            if way
        )
        if answer:
            tag = shaft.shaft.tag
            given = ((say("turns, looking along from the {end}", end=shaft.shaft.ends[0]), say(str(shaft.shaft.typed.turns))),)
            question = say("Draw the arrow on the collar of each unit of {tag}, as you see it standing before the collar.", tag=tag)
            yield Exercise(tag, next(letter for letter, way in turned if way), question, given, answer)
