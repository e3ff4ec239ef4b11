"""Putting on and taking off a roller bearing on a sleeve: the feeler decides; turn and travel only guide."""

from __future__ import annotations

from generator.case import Case
from generator.housings.steps import pulled_toward_nut, set_in_place, stood_loose
from generator.locking.sleeve_steps import cleaned, hand_tight, load_off, nut_locked, nut_off, slid_on
from generator.say import say
from generator.steps import Blank, Figures, Items, Sign, Step, Trouble, told


def put_on(case: Case, f: Figures) -> Items:
    """Clearance before, driven up in small steps, clearance after, locked."""
    yield from read_before(case, f)
    yield from cleaned(case)
    yield from seals_on(case)
    yield from slid_on(case, f)
    yield from stood_loose(case, f)
    yield from set_in_place(case, f)
    yield from pulled_toward_nut(case, f)
    yield from load_off(case)
    yield from hand_tight(case)
    yield from _driven_up(case, f)
    yield Sign("S4", "lock", told("Clearance before, after, and what was taken: read by both, written."))
    yield from nut_locked(case, f)
    yield from _checked(case)


def take_off(case: Case, f: Figures) -> Items:
    """The nut off again."""
    yield from nut_off(case)


def read_before(case: Case, f: Figures) -> Items:
    """The clearance on the bench, both rows, on the side free of load."""
    yield Step("stand upright", "clearance", told("Stand the bearing upright on the bench, roll it, and press the inner ring square."))
    limits = f("clearance_before")
    blanks = (
        (Blank("clearance row 1", say("row 1"), "mm"), Blank("clearance row 2", say("row 2"), "mm"))
        if case.bearing == "spherical roller"
        else (Blank("clearance row 1", say("over the rollers"), "mm"),)
    )
    outside = Trouble(say("Outside its class"), told("Stop. Another bearing, or the engineer decides."))
    does = (
        told("Read the clearance over the top rollers, both rows: {band}. Slide the blade; never roll it.", band=limits)
        if case.bearing == "spherical roller"
        else told("Read the clearance over the top rollers: {band}. Slide the blade; never roll it.", band=limits)
    )
    yield Step("read clearance before", "clearance", does, None, (outside,), takes=("feeler",), blanks=blanks, picture="feeler")


def seals_on(case: Case) -> Items:
    """What must be on the shaft before the bearing."""
    if case.housing == "cartridge":
        yield Step("seals on", "lock", told("Put on the shaft all that sits behind the bearing, in the order drawn: inner cover and seal."), told("What is forgotten means starting over."))  # fmt: skip
    if case.housing != "split":
        return
    if case.felt:
        if case.holds == "fixed":
            yield Step("seals on", "lock", told("Put the inner locating ring on the shaft before the bearing, in the order drawn."), picture="seals")  # fmt: skip
        return
    does = (
        told("Put the inner seal and the inner locating ring on the shaft before the bearing, in the order drawn.")
        if case.holds == "fixed"
        else told("Put the inner seal on the shaft before the bearing, in the order drawn. No locating ring: this unit is free.")
    )
    yield Step("seals on", "lock", does, told("A seal that is forgotten means starting over."), picture="seals")


def _driven_up(case: Case, f: Figures) -> Items:
    where = (
        told("Turn the nut on in small steps. After each, read both rows below, where the outer ring hangs free.")
        if case.lies != "vertical"
        else told("Turn the nut on in small steps. After each, read both rows, at the side free of load.")
    )
    void = Trouble(say("Sleeve turned"), told("Hold its slot with a soft tool. The blade still decides."))
    yield Step("drive up", "lock", where, told("The blade feels the same in both rows."), (void,), takes=("hook wrench", "feeler"), picture="feeler")  # fmt: skip
    early = Trouble(
        say("Turn reached before the clearance"),
        told("Stop. The guide is {guide}. Read again; still short, drive no further: loosen, look at taper and seat, tell the engineer.", guide=f("drive_turn")),
    )
    late = Trouble(
        say("Clearance gone before the turn"),
        told("Stop. A false start or a seat over its limit can do it: loosen, look, begin again."),
    )
    does = told("Stop when {taken} of clearance has been taken.", taken=f("reduction"))
    yield Step("stop driving", "lock", does, None, (early, late))
    blanks = (Blank("clearance left row 1", say("row 1 left"), "mm"), Blank("clearance left row 2", say("row 2 left"), "mm"))
    less = Trouble(say("Less is left"), told("Stop. Tap it loose as in taking off; seat, taper and class are looked at, and the engineer decides."))  # fmt: skip
    yield Step(
        "read clearance after", "lock", told("Read what is left, both rows, at the same place: never under {least}.", least=f("least_left")),
        told("Before less after is what was taken."), (less,), blanks=blanks, takes=("feeler",), picture="feeler",
    )  # fmt: skip


def _checked(case: Case) -> Items:
    yield Step("turn free", "lock", told("Turn the outer ring by hand and swing it out of square and back."), told("It runs smoothly, both rows."))  # fmt: skip
    yield Sign("S5", "lock", told("Clearance inside its limits and nut locked."))
