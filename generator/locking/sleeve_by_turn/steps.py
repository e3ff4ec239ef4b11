"""Putting on and taking off a ball insert on a sleeve: everything counts from hand tight."""

from __future__ import annotations

from generator.case import Case
from generator.housings.holding import set_down, set_down_early, turned_by_hand
from generator.housings.steps import pulled_toward_nut, set_in_place, stood_loose
from generator.locking.sleeve_steps import cleaned, from_hand_tight, hand_tight, load_off, nut_locked, nut_off, slid_on
from generator.say import say
from generator.steps import Figures, Items, Sign, Step, Trouble, told


def put_on(case: Case, f: Figures) -> Items:
    """From the clean shaft to the locked nut."""
    yield from cleaned(case)
    yield from slid_on(case, f)
    if case.second_flange:
        # a shaft that is lifted after the gap is set takes the gap with it
        endwise = told("The unit that holds the shaft endwise is on, locked and bolted.") if case.holds == "free" else told("The shaft is held endwise until the nut is locked.")  # fmt: skip
        yield Step("bolts in loose", "lock", told("Put the flange bolts in, finger loose."), endwise)
        yield from load_off(case)
        yield from stood_loose(case, f)
        yield from set_in_place(case, f)
    else:
        yield from stood_loose(case, f)
        yield from set_in_place(case, f)
        yield from pulled_toward_nut(case, f)
        yield from load_off(case)
    yield from hand_tight(case)
    if case.second_flange:
        yield Sign("S4", "lock", told("Load off, gap the same all round, hand tight, marked."))
        yield from _drawn_up(case, f)
    else:
        yield Sign("S4", "lock", told("Load off, hand tight, marked."))
    yield from _turned(case, f)
    yield from nut_locked(case, f)
    # what hangs in its gear does not turn freely; an upright shaft stays in its sling until the bolts hold
    if set_down_early(case, f):
        yield from set_down(case, f, "lock")
    yield from _checked(case)


def take_off(case: Case, f: Figures) -> Items:
    """The nut off again."""
    yield from nut_off(case)


def _drawn_up(case: Case, f: Figures) -> Items:
    """The second flange: flush by its bolts while nut and mark stay as they are."""
    yield Step("shims out", "lock", told("Take the shim stock out by its tails."))
    bind = Trouble(say("Bolts bind or the gap closes on one side"), from_hand_tight(case))
    yield Step(
        "draw flange up", "lock", told("Draw the flange up flush, the bolts in turn, a little each. Leave the nut; make no new mark."),
        told("No blade goes between flange and frame."), (bind,), takes=("spanner", "feeler"), picture="flange gap",
    )  # fmt: skip


def _turned(case: Case, f: Figures) -> Items:
    void = Trouble(say("Sleeve turned: the count is void"), from_hand_tight(case))
    hard = Trouble(
        say("Goes very hard before the least turn"),
        told("Stop. Shaft over its limit, dry taper or a false start: loosen, look, begin again."),
    )
    easy = Trouble(say("Still easy at the most"), told("Stop. Shaft under its limit or a wrong sleeve: loosen, look, and tell the engineer."))
    sticks = Trouble(say("Cartridge sticks"), told("Stop. Ease it in its bore until it goes with the ring."))
    guides = Trouble(say("Unit sticks in its guides"), told("Stop. Free the shaft endwise until it goes with the ring."))
    bind = (
        sticks
        if case.housing == "cartridge"
        else guides
        if case.housing == "take-up"
        else (
            Trouble(say("Bolts bind"), told("Stop. Loosen the bolts of both units and shift them, else set this one anew from hand tight."))
            if case.order == "second"
            else Trouble(say("Housing bolts bind"), told("Stop. Loosen them until the housing goes with the ring."))
        )
    )
    does = told("Turn the nut on by {turn}, that is {degrees} or {slots}, counted from the first mark.", turn=f("nut_turn"), degrees=f("nut_degrees"), slots=f("nut_slots"))  # fmt: skip
    check = told("The mark on the shaft still meets the sleeve slot. Never past the most.")
    # a second flange is flush by now: what binds was met when it was drawn up
    ways_out = (void, hard, easy) if case.second_flange else (void, hard, easy, bind)
    yield Step("turn nut", "lock", does, check, ways_out, takes=("hook wrench", "soft wedge"), picture="nut turn")


def _checked(case: Case) -> Items:
    fails = Trouble(say("One of them fails"), from_hand_tight(case))
    if case.second_flange:
        yield Step(
            "end checks",
            "lock",
            told("Try three things: nut hard on the ring, sleeve mark unmoved, shaft free with its end play."),
            None,
            (fails,),
        )
        yield Sign("S5", "lock", told("Nut hard on the ring. Sleeve mark unmoved. Shaft free, with its end play."))
        return
    yield Step(
        "turn free", "lock", turned_by_hand(case), told("It turns freely, the ring stands square, no seal drags."), (fails,)
    )
    yield Sign("S5", "lock", told("Turn complete and nut locked; the mark on the shaft has not moved."))
