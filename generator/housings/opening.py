"""How each style of housing comes off: opened, the load taken from it, free of its frame, and the old grease sampled."""

from __future__ import annotations

from generator.case import CLEARANCE, HEATED, Case
from generator.housings.holding import load_taken
from generator.say import say
from generator.steps import Figures, Items, Step, Told, Trouble, told


def let_go(case: Case) -> Items:
    """The housing free of its frame, once the lock is open."""
    if case.housing == "take-up":
        yield Step("out of frame", "lock", told("Slide the unit out of its guides."))
    elif case.housing == "cartridge" and case.way not in (CLEARANCE, HEATED):
        yield Step("out of frame", "lock", told("Slide the cartridge out of its bore."))
    elif case.housing not in ("split", "cartridge"):
        yield Step("out of frame", "lock", told("Take the housing bolts out, the unit held."), takes=("spanner",))


def opens(case: Case) -> bool:
    """Whether the bearing lies open once its housing is off, with the old grease in it."""
    return case.housing == "split" or (case.housing == "cartridge" and case.way in (CLEARANCE, HEATED))


def sampled(does: Told, stage: str) -> Step:
    """A sample of the old grease."""
    return Step("grease sample", stage, does, takes=("tags",))


def held_below(case: Case) -> Told | None:
    """What is looked at before anything slides off an upright shaft."""
    return told("It is held from below, nobody under it: it drops when it lets go.") if case.lies == "vertical" else None


def _marked(case: Case) -> Step:
    mark = told("Mark on the outer ring which side faces the drive.") if case.lies == "vertical" else told("Mark “up” on the outer ring.")
    return Step("load zone", "open", mark, told("It shows later where the load came from."), takes=("paint pen",))


def opened(case: Case, f: Figures) -> Items:
    """Off the frame, before the lock is touched."""
    if case.housing == "take-up":
        does = told("Take the slack screw clear of the unit.") if case.pulls else told("Write what both screws read; then slacken the lock nuts, and the screws of both sides by turns.")  # fmt: skip
        yield Step("bolts out", "open", does, takes=("spanner", "tape"))
    elif case.housing == "cartridge":
        does = told("Take out what holds the cartridge endwise and keeps it from turning.") if case.holds == "fixed" else told("Take out the stop of the cartridge.")  # fmt: skip
        yield Step("bolts out", "open", does, takes=("spanner",))
        if opens(case):
            if case.lies != "vertical":
                yield from load_taken(case, f)
            yield Step("cartridge off", "open", told("Take the covers off and slide the cartridge off the bearing, along the shaft."), held_below(case))
            yield _marked(case)
            yield sampled(told("Take a spoon of the old grease into a clean bag, tagged."), "open")
    elif case.housing == "split":
        yield Step("cap off", "open", told("Take the cap bolts out and lift the cap off, two people or a hoist."), takes=("spanner", "lifting gear"))  # fmt: skip
        yield _marked(case)
        yield sampled(told("Take a spoon of the old grease into a clean bag, tagged."), "open")
        yield Step("bolts out", "open", told("Slacken the base bolts. Leave them in."), takes=("spanner",))
        if case.holds == "fixed":
            yield Step("rings out", "open", told("Write how many locating rings and on which side; the open ones come out now."), told("Whole ones rise with the shaft."))  # fmt: skip
        yield Step("raise", "open", told("Raise the shaft until the bearing hangs free of the base, and no more."), None, takes=("lifting gear",))
        walls = Trouble(say("It cannot be drawn away"), told("Raise until the bearing clears the end walls; other units are slackened by their sheets first."))  # fmt: skip
        yield Step("base away", "open", told("Take the base bolts out and draw the base away with its shims, no hand between bearing and base."), None, (walls,), takes=("spanner",))  # fmt: skip
        if case.holds == "fixed" and case.felt:
            yield Step("seal off", "open", told("Slide the outer locating ring off the shaft."))
        elif not case.felt:
            yield Step("seal off", "open", told("Slide the outer seal off the shaft, and the outer locating ring where there is one."))
    else:
        yield Step("bolts out", "open", told("Slacken the housing bolts. Leave them in, finger loose."), takes=("spanner",))
    if not opens(case) and case.lies != "vertical":
        yield from load_taken(case, f)
