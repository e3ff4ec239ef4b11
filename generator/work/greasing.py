"""Grease: the first, when a unit is put on, and the regreasing of the rounds."""

from __future__ import annotations

from generator.case import CLEARANCE, HEATED, Case
from generator.say import say
from generator.steps import Blank, Figures, Items, Sign, Step, Told, Trouble, told
from generator.work.make_safe import isolated

OTHERWISE = ("automatic", "oil", "sealed for life")


def first_grease(case: Case, f: Figures) -> Items:
    """After the last reading: by hand where the bearing is open, else a regreasing through the fitting."""
    if case.sealed or case.feed == "sealed for life":
        yield Step("no grease", "grease", told("Give no grease: this unit is sealed for life."))
    elif case.feed == "oil":
        yield Step(
            "oil level",
            "grease",
            told("Fill oil to the level by the machine's own instruction."),
            told("Level at standstill, on the glass."),
        )
    elif case.way in (CLEARANCE, HEATED) and not f.has("grease_first"):
        full = told("Press {grease} into the bearing by hand until it is full: {free}.", grease=f("grease_name"), free=f("grease_free")) if f.has("grease_free") else told("Press {grease} into the bearing by hand until it is full.", grease=f("grease_name"))  # fmt: skip
        yield Step("fill by hand", "grease", full, told("Clean hands, clean spatula. Nothing of another grease."), takes=("grease", "scale"), blanks=(Blank("grease given", say("given"), "g"),))  # fmt: skip
        share = told("Fill less than a third of the room beside it: it runs fast.") if case.fast else told("Fill a third to a half of the room beside it.")  # fmt: skip
        yield Step("fill beside", "grease", share, takes=("grease",))
    elif case.way in (CLEARANCE, HEATED):
        yield Step(
            "fill by hand", "grease", told("Press {grease} into the bearing by hand until full, the rest into the housing: {first} in all.", grease=f("grease_name"), first=f("grease_first")),
            told("Clean hands, clean spatula. Nothing of another grease."), takes=("grease", "scale"), blanks=(Blank("grease given", say("given"), "g"),),
        )  # fmt: skip
    elif case.feed == "automatic":
        yield Step("feeder", "grease", told("Fill the line by hand until grease arrives, then connect the feeder."), takes=("grease",))
    elif case.fast:
        yield Step("no grease", "grease", told("Give no grease now: it comes filled, and runs fast. The round begins when it has run in."))
    else:
        yield from through_the_fitting(case, f)


def through_the_fitting(case: Case, f: Figures) -> Items:
    """Wipe, waste the first squeeze, count slow strokes, stop on pressure, and let the old grease out its way."""
    yield Step(
        "wipe fitting", "grease", told("Wipe the fitting and the nozzle clean; waste the first squeeze."), takes=("lint-free cloth",)
    )
    yield Step("right gun", "grease", told("Read the name on the gun: {gun}, {grease}, and no other.", gun=f("gun"), grease=f("grease_name")), takes=("grease gun",))  # fmt: skip
    if case.purge == "relief plug":
        yield Step("plug out", "grease", told("Take the relief plug out and clear its hole."), takes=("spanner",))
    stop = Trouble(say("Back pressure, or no grease arrives"), told("Stop. Never force it: a blown seal lets dirt in. Report it."))
    yield Step(
        "strokes", "grease", _strokes(case, f), _purged(case), (stop,), takes=("grease gun",),
        blanks=(Blank("grease given", say("strokes given"), ""),), picture="fitting",
    )  # fmt: skip
    if case.purge == "relief plug":
        yield Step("plug in", "grease", told("Put the relief plug back when nothing more comes."), takes=("spanner",))
    if case.food or case.purge == "wipe and weigh":
        yield Step("wipe off", "grease", told("Wipe off and weigh what came out; none may hang over product."), takes=("lint-free cloth", "scale"), blanks=(Blank("grease out", say("came out"), "g"),))  # fmt: skip


def _strokes(case: Case, f: Figures) -> Told:
    if case.fast:
        return told("In {shots} parts, never at once, {hours} of running between them: {strokes} slow strokes in all. Give one part now.", strokes=f("grease_strokes"), shots=f("grease_shots"), hours=f("grease_shot_hours"))  # fmt: skip
    if case.regrease == "stopped":
        return told("Give {strokes} slow strokes, {grams}; after half of them turn the shaft by hand.", strokes=f("grease_strokes"), grams=f("grease_dose"))  # fmt: skip
    return told("Give {strokes} slow strokes, {grams}.", strokes=f("grease_strokes"), grams=f("grease_dose"))


def _purged(case: Case) -> Told | None:
    return {
        "relief plug": told("Old grease comes out of the plug's hole; stop when it is fresh, even before the last stroke."),
        "open seals": told("Stop at the first clean bead round the seal, even before the last stroke."),
        "counted strokes": told("Counted strokes only: nothing comes out to be seen."),
        "wipe and weigh": told("What comes out is wiped off and weighed."),
    }.get(case.purge)


def greased(case: Case, f: Figures) -> Items:
    """The regreasing of a round, running or stopped as the position says."""
    if case.sealed or case.feed in OTHERWISE:
        yield from _looked_at(case)
        return
    running = case.regrease == "running"
    if running:
        yield Step("stand clear", "safe", told("Stand where the fitting is, outside the guard: nothing loose, nothing to lean over."), None)
    else:
        yield from isolated(case)
    yield from through_the_fitting(case, f)
    if not running:
        yield Step("guards on", "give back", told("Put every guard back and fasten it."))
        yield Sign("S7", "give back", told("Guards on, everyone clear: released to run."))
        yield Step(
            "power", "give back", told("Locks off, each by the one who put it on; power back by {procedure}.", procedure=case.procedure)
        )
    climbs = Trouble(say("Still climbing after two hours"), told("Stop the machine and report it: too much grease, the wrong one, or a bearing that fails."))  # fmt: skip
    yield Step(
        "see it settle", "watch", told("Read the housing after half an hour of running, then after two hours."),
        told("A rise, then a fall, is usual; settled it is not over {usual}.", usual=f("run_in_usual")), (climbs,), takes=("thermometer",),
        blanks=(Blank("housing temperature", say("after 2 hours"), "degC"),),
    )  # fmt: skip


def _looked_at(case: Case) -> Items:
    if case.feed == "automatic":
        yield Step(
            "look at feeder", "watch", told("Look only: feeder not empty, line whole, fresh grease at the seal. Give nothing by hand.")
        )
    elif case.feed == "oil":
        yield Step(
            "look at oil",
            "watch",
            told("Look only: level on the glass, colour clear, no water below. Fill by the machine's own instruction."),
        )
    else:
        yield Step("give none", "watch", told("Give no grease: this unit is sealed for life. Look for leaks."))
