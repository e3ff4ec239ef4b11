"""Grease: the first, when a unit is put on, and the regreasing of the rounds."""

from __future__ import annotations

from generator.case import CLEARANCE, HEATED, Case
from generator.housings.holding import guards_off
from generator.say import say
from generator.steps import Blank, Figures, Items, Step, Told, Trouble, told
from generator.work.giving_back import counted_back, counted_in, given_back_greased
from generator.work.make_safe import isolated_to_grease

OTHERWISE = ("automatic", "oil", "sealed for life")


def by_hand(case: Case) -> bool:
    """Whether the first fill goes in by hand, while the bearing lies open."""
    return case.way in (CLEARANCE, HEATED) and not case.sealed and case.feed not in ("oil", "sealed for life")


def bearing_filled(case: Case, f: Figures) -> Items:
    """The bearing itself, full, after the last reading."""
    full = told("Press {grease} into the bearing by hand until it is full: {free}.", grease=f("grease_name"), free=f("grease_free")) if f.has("grease_free") else told("Press {grease} into the bearing by hand until it is full.", grease=f("grease_name"))  # fmt: skip
    yield Step("fill by hand", "axial", full, told("Clean hands, clean spatula. Nothing of another grease."), takes=("grease", "scale"))


def beside_filled(case: Case, f: Figures, stage: str) -> Items:
    """The room beside the bearing: what is left of the first fill, else a part of it."""
    if f.has("grease_first"):
        share = told("Put the rest into the housing beside the bearing: {first} in all, the bearing's counted.", first=f("grease_first"))
    elif case.fast:
        share = told("Fill less than a third of the room beside it: it runs fast.")
    else:
        share = told("Fill a third to a half of the room beside it.")
    yield Step("fill beside", stage, share, takes=("grease", "scale"), blanks=(Blank("grease given", say("given in all"), "g"),))


def first_grease(case: Case, f: Figures) -> Items:
    """Of a unit that comes filled or is fed otherwise, once it stands."""
    if case.sealed or case.feed == "sealed for life":
        yield Step("no grease", "grease", told("Give no grease: this unit is sealed for life."))
    elif case.feed == "oil":
        yield Step(
            "oil level",
            "grease",
            told("Fill oil to the level by the machine's own instruction."),
            told("Level at standstill, on the glass."),
        )
    elif case.feed == "automatic":
        yield Step("feeder", "grease", told("Fill the line by hand until grease arrives, then connect the feeder."), takes=("grease",))
    elif f.has("grease_first"):
        given = told("Give {first} in slow strokes: the first fill of its maker.", first=f("grease_first"))
        yield from through_the_fitting(case, f, given)
    else:
        check = told("Where its maker asks for grease at mounting, the maker rules: stop and ask for the figure.")
        yield Step("no grease", "grease", told("Give no grease now: a new insert comes filled. The first round is due by the plan."), check)


def through_the_fitting(case: Case, f: Figures, given: Told) -> Items:
    """Wipe, waste the first squeeze, count slow strokes, stop on pressure, and let the old grease out its way."""
    yield Step("right gun", "grease", told("Read the name on the gun: {gun}, {grease}, and no other.", gun=f("gun"), grease=f("grease_name")), takes=("grease gun",))  # fmt: skip
    yield Step("wipe fitting", "grease", told("Wipe the fitting and the nozzle clean; waste the first squeeze into a cloth."), takes=("lint-free cloth",))  # fmt: skip
    if case.purge == "relief plug":
        yield Step("plug out", "grease", told("Take the relief plug out and clear its hole."), takes=("spanner",))
    stop = Trouble(say("Back pressure, or no grease arrives"), told("Stop. Never force it: a blown seal lets dirt in. Report it."))
    yield Step(
        "strokes", "grease", given, _purged(case), (stop,), takes=("grease gun",),
        blanks=(Blank("grease given", say("strokes given"), ""),), picture="fitting",
    )  # fmt: skip
    if case.purge == "relief plug":
        yield Step("plug in", "grease", told("Put the relief plug back when nothing more comes."), takes=("spanner",))
    if case.food or case.purge == "wipe and weigh":
        yield Step("wipe off", "grease", told("Wipe off and weigh what came out; none may hang over product."), takes=("lint-free cloth", "scale"), blanks=(Blank("grease out", say("came out"), "g"),))  # fmt: skip


def _strokes(case: Case, f: Figures) -> Told:
    if case.fast:
        return told(
            "In {shots} parts, never at once: {strokes} slow strokes in all. Give {now} now, and the next part after {hours} of running.",
            strokes=f("grease_strokes"), shots=f("grease_shots"), now=f("grease_shot_strokes"), hours=f("grease_shot_hours"),
        )  # fmt: skip
    if case.regrease != "stopped":
        return told("Give {strokes} slow strokes, {grams}.", strokes=f("grease_strokes"), grams=f("grease_dose"))
    if case.windy or case.stored:
        # no block comes out for a turn by hand
        return told("Give {strokes} slow strokes, {grams}.", strokes=f("grease_strokes"), grams=f("grease_dose"))
    return told("Give {strokes} slow strokes, {grams}; after half of them turn the shaft by hand, as far as the guard allows it.", strokes=f("grease_strokes"), grams=f("grease_dose"))  # fmt: skip


def _purged(case: Case) -> Told | None:
    return {
        "relief plug": told("Old grease comes out of the plug's hole; stop when it is fresh, even before the last stroke."),
        "open seals": told("Stop at the first clean bead round the seal, even before the last stroke."),
        "counted strokes": told("Counted strokes only: nothing comes out to be seen."),
        "wipe and weigh": told("Stop at the first clean bead, even before the last stroke. What comes out is wiped off and weighed."),
    }.get(case.purge)


def greased(case: Case, f: Figures) -> Items:
    """The regreasing of a round, running or stopped as the position says."""
    if case.sealed or case.feed in OTHERWISE:
        yield from _looked_at(case)
        return
    running = case.regrease == "running"
    yield from counted_in(case, "safe")
    if case.hot and case.warmed:
        yield Step("read before", "safe", told("While it runs warm, from outside the guard: read housing and air, and write both."), takes=("thermometer",))  # fmt: skip
    if running:
        yield Step("stand clear", "safe", told("Stand where the fitting is, outside the guard: nothing loose, nothing to lean over."), None)
    else:
        yield from isolated_to_grease(case)
        if case.fitting in ("inside the guard", ""):
            yield guards_off("safe")
    yield from through_the_fitting(case, f, _strokes(case, f))
    if not running:
        yield from given_back_greased(case)
    elif case.food:
        yield from counted_back(case)
    settled = (
        told("A rise, then a fall, is usual; settled it is not over {usual}.", usual=f("run_in_usual"))
        if f.has("run_in_usual")
        else told("A rise, then a fall, is usual; settled it is no warmer than it was before.")
    )
    climbs = Trouble(say("Still climbing after two hours"), told("Stop the machine and report it: too much grease, the wrong one, or a bearing that fails."))  # fmt: skip
    yield Step(
        "see it settle", "watch", told("Read the housing after half an hour of running, then after two hours."),
        settled, _too_warm(f, climbs), takes=("thermometer",),
        blanks=(Blank("housing temperature", say("after 2 hours"), "degC"),),
    )  # fmt: skip


def _too_warm(f: Figures, climbs: Trouble) -> tuple[Trouble, ...]:
    if not f.has("run_in_stop"):
        return (climbs,)
    return climbs, Trouble(say("Settled over it, or {stop} at any time", stop=f("run_in_stop")), told("Settled over it: report it the same shift. At {stop}: stop the machine.", stop=f("run_in_stop")))  # fmt: skip


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
