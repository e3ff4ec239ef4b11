"""Steps that both ways of locking on an adapter sleeve share: clean, oil, slide on, hand tight, mark, lock the nut, and the nut off again."""

from __future__ import annotations

from generator.case import CLEARANCE, Case
from generator.housings.holding import unit_held
from generator.say import say
from generator.steps import Figures, Items, Step, Told, Trouble, told


def cleaned(case: Case) -> Items:
    """Dry and clean, then a thin film of light oil."""
    yield Step(
        "clean parts", "lock", told("Wipe shaft, bore, sleeve and nut dry and free of lint."),
        told("A gloved finger feels no edge. A burr on a new part means another part."), takes=("lint-free cloth",),
    )  # fmt: skip
    yield Step(
        "oil film", "lock", told("Put a thin film of light oil on the sleeve's taper, the nut's thread and the nut's face."),
        told("The taper shines and nothing runs off. Where the maker asks for a dry taper, the maker rules."), takes=("light oil",),
    )  # fmt: skip


def slid_on(case: Case, f: Figures) -> Items:
    """Onto the shaft, the nut on its side."""
    yield from unit_held(case, f, "lock")
    what = (
        told("Slide sleeve, bearing and nut on: nut toward the {side}.", side=f("nut_side"))
        if case.feeler
        else told("Slide sleeve, unit and nut on: nut toward the {side}.", side=f("nut_side"))
    )
    seen = told("The thick end of the taper is away from the nut.")
    if case.nut_lock == "tab washer":
        what = told("Slide sleeve, bearing, lock washer and nut on: nut toward the {side}.", side=f("nut_side"))
        seen = told("The thick end of the taper is away from the nut; the washer's tongue lies in the sleeve slot.")
    stuck = Trouble(say("Will not slide on"), told("Back the nut off and ease the slot with a soft wedge. Never drive it with a hammer."))
    yield Step("slide on", "lock", what, seen, (stuck,), takes=("soft wedge",))


def load_off(case: Case) -> Items:
    """Nothing presses on the ring while its nut is turned."""
    yield Step("load off", "lock", _lift(case), _load_is_off(case), takes=("lifting gear",))


def hand_tight(case: Case) -> Items:
    """The counting point: hand tight, one mark."""
    way = (
        told("Turn the nut by hand, gloves on, anticlockwise seen from the nut, until it goes no further. No wrench.")
        if case.hand == "left"
        else told("Turn the nut by hand, gloves on, clockwise seen from the nut, until it goes no further. No wrench.")
    )
    doubt = Trouble(say("In doubt"), told("Back the nut off and do it again."))
    turns = Trouble(say("Sleeve turns with the nut"), told("Hold the slot with a soft tool; turn the nut alone."))
    yield Step("hand tight", "lock", way, told("The sleeve can no longer be turned or slid on the shaft by hand."), (doubt, turns))
    yield Step(
        "mark", "lock", told("Mark nut, sleeve slot and shaft in one line."), told("One mark. It is not made anew while the nut goes on."),
        takes=("paint pen",), picture="nut turn",
    )  # fmt: skip


def _lift(case: Case) -> Told:
    if case.carrier:
        return told("Leave the shaft's weight on {carrier}: steady the shaft until it presses on no side of this unit.", carrier=case.carrier)
    if case.lies == "vertical":
        return told("Let the sling carry until this unit bears nothing along the shaft.")
    return told("Lift until the shaft just floats at this unit.")


def _load_is_off(case: Case) -> Told:
    if case.way == CLEARANCE:
        return told("The bearing hangs free: nothing touches its outer ring. More lift strains the next bearing.")
    if case.housing in ("pillow block", "tapped base") and case.lies != "vertical":
        return told("A slip of paper pulls out from under the foot. More lift strains the next bearing.")
    if case.carrier:
        return told("The housing slides by hand on the line of the shaft.")
    if case.second_flange:
        return told("The flange moves on its bolts by hand. More lift strains the next bearing.")
    if case.housing == "take-up":
        return told("The shaft moves endwise by hand. More lift strains the next bearing.")
    return told("The housing slides by hand on the line of the shaft. More lift strains the next bearing.")


def from_hand_tight(case: Case) -> Told:
    """Back to the counting point: the grip is undone, and so is what was counted from it."""
    if case.second_flange:
        return told("Load off again; tap it loose as in taking off, bolts finger loose, mark wiped off. Set the gap anew, then from hand tight.")
    return told("Load off again; tap it loose as in taking off, mark wiped off. Its place is set again, then from hand tight.")


def nut_locked(case: Case, f: Figures) -> Items:
    """What keeps the nut from slackening, always forward."""
    forward = Trouble(say("Nut does not line up"), _to_a_slot(case))
    if case.nut_lock == "retaining screw":
        does = told("Turn the retaining screw into its slot, to {torque}.", torque=f("retaining_screw"))
        takes: tuple[str, ...] = ("torque tool for the lock", "key for the lock")
    elif case.nut_lock == "locking plate":
        does, takes = told("Fit the locking plate into the nut's slot and bolt it fast."), ("spanner",)
    else:
        does, takes = told("Bend one tab of the washer flat into the nut's slot."), ("soft drift",)
    yield Step("lock nut", "lock", does, None, (forward,), takes=takes, picture="nut turn")
    yield Step("witness line", "lock", told("Draw a line in another colour over nut, sleeve slot and shaft."), told("It shows later whether anything crept."), takes=("paint pen",))  # fmt: skip


def _to_a_slot(case: Case) -> Told:
    if case.way == CLEARANCE:
        return told("Forward to the next slot, never back, and read both rows again: still inside. Else tap it loose as in taking off, and drive it up anew.")  # fmt: skip
    if case.second_flange:
        return told("Forward to the next slot within the most it may turn, never back. None within it: tap it loose, bolts finger loose, gap anew, from hand tight.")  # fmt: skip
    return told("Forward to the next slot within the most it may turn, never back. None within it: tap it loose as in taking off, then again from hand tight.")  # fmt: skip


def nut_off(case: Case) -> Items:
    """Off again: the nut stays on its thread and catches the jump."""
    if case.nut_lock == "retaining screw":
        yield Step("unlock", "lock", told("Take the retaining screw out."), takes=("key for the lock",))
    elif case.nut_lock == "locking plate":
        yield Step("unlock", "lock", told("Take the locking plate off."), takes=("spanner",))
    else:
        yield Step("unlock", "lock", told("Bend the washer's tab up out of its slot."), takes=("soft drift",))
    yield Step(
        "nut back", "lock", told("Turn the nut back by one whole turn and leave it on its thread."),
        told("A gap shows that is wider than the travel on this page."), takes=("hook wrench",),
    )  # fmt: skip
    stuck = Trouble(
        say("Does not let go"),
        told("Go a quarter round the nut and tap again. Heat or a cutter only when the engineer says how and its permit is in hand."),
    )
    yield Step(
        "let go",
        "lock",
        told("Give the nut even taps all round, through a soft tube, until the ring lets go."),
        None,
        (stuck,),
        takes=("soft tube", "soft hammer", "eye protection"),
    )
