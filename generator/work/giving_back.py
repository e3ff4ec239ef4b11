"""Giving a machine back: what was taken off, let go of or blocked is as it was, everything counted, guards on, S7, and only then power."""

from __future__ import annotations

from generator.case import Case
from generator.say import say
from generator.steps import Items, Sign, Step, Trouble, told

# energies that are set again once they have been let go of
SET_AGAIN = ("tension", "weight", "spring")


def given_back(case: Case) -> Items:
    """After a unit was put on."""
    if case.between:
        yield Step("way back", "give back", told("Put back what came off the shaft, a unit by its own sheet, and line it up by its own instruction."))
    if case.coupled:
        yield Step("join coupling", "give back", told("Line the coupling up by its own instruction, and join it by the marks."))
    if not case.only:
        yield Step(
            "all on", "give back", told("See that every unit of this machine is on, locked and bolted."), None,
            (Trouble(say("One is not"), told("Locks, jack and slings stay. Its sheet is next; tension, guards and power come with the last unit.")),),
        )  # fmt: skip
    let_go = dict.fromkeys((*(energy for energy in case.stored if any(word in energy.lower() for word in SET_AGAIN)), *case.pulls))
    if let_go:
        does = told("Take blocks out and set back, by the machine's own instruction, what was slackened, raised or blocked: {things}.", things=", ".join(let_go))  # fmt: skip
        yield Step("tension back", "give back", does)
    yield Step("gear away", "give back", told("Take slings, jacks and blocks away. Shims under the foot stay."))
    if case.windy:
        yield Step("rotor free", "give back", told("Take the block out of the rotor, hands clear of it."))
    yield from counted_back(case)
    if not case.food:
        yield Step("count", "give back", told("Count the tools back."))
    yield Step("floor", "give back", told("Wipe up grease and oil."))
    yield from _closed(case)


def given_back_greased(case: Case) -> Items:
    """After a greasing at standstill, and after the recheck: nothing was let go of but by a block."""
    yield from _unblocked(case)
    yield from counted_back(case)
    yield from _closed(case)


def counted_in(case: Case, stage: str) -> Items:
    """What goes into a food zone is known, so that what comes out can be held against it."""
    if case.food:
        yield Step("count in", stage, told("Write on the list every part, tool and cloth that goes into the food zone."))


def counted_back(case: Case) -> Items:
    """And comes out again."""
    if case.food:
        yield Step("count", "give back", told("Count parts, tools and cloths back against the list: none may stay in a food zone."))


def given_back_again(case: Case) -> Items:
    """After the recheck."""
    yield from _unblocked(case)
    yield Step("back again", "give back", told("Guards on, tools counted, everyone clear; then locks off, each by the one who put it on."))


def _unblocked(case: Case) -> Items:
    if case.stored:
        yield Step("blocks out", "give back", told("Take out what blocked: {stored}. It is set as it was.", stored=", ".join(case.stored)))
    if case.windy:
        yield Step("rotor free", "give back", told("Take the block out of the rotor, hands clear of it."))


def _closed(case: Case) -> Items:
    yield Step("guards on", "give back", told("Put every guard back and fasten it."), told("No opening is left that a hand fits in."))
    yield Sign("S7", "give back", told("Guards on, everyone clear: released to run."))
    yield Step("power", "give back", told("Locks off, each by the one who put it on; power back by {procedure}.", procedure=case.procedure))
