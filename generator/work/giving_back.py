"""Giving a machine back: what was taken off, let go of or blocked is as it was, guards on, everything counted, S7, and only then power."""

from __future__ import annotations

from generator.case import FLANGES, Case
from generator.say import say
from generator.steps import Items, Sign, Step, Told, Trouble, told

# energies that are set again once they have been let go of
SET_AGAIN = ("tension", "weight", "spring")


def given_back(case: Case) -> Items:
    """After a unit was put on."""
    if case.between:
        check = told("A rotor is blocked before its sling comes off.") if case.windy else None
        yield Step("way back", "give back", told("Put back what came off the shaft and line it up by its own instruction; a unit by its own sheet, up to S6."), check)  # fmt: skip
    if case.coupled:
        yield Step("join coupling", "give back", told("Line the coupling up by its own instruction, and join it by the marks."))
    if not case.only:
        yield Step(
            "all on", "give back", told("See that every unit of this machine is on, locked and bolted."), None,
            (Trouble(say("One is not"), told("Locks, blocks, jack and slings stay. Its sheet is next; tension, guards and power come with the last unit.")),),
        )  # fmt: skip
    yield from _set_again(case)
    yield Step("gear away", "give back", _gear_away(case))
    yield Step("floor", "give back", told("Wipe up grease and oil."))
    yield from _closed(case)


def _set_again(case: Case) -> Items:
    kept = [energy for energy in case.stored if any(word in energy.lower() for word in SET_AGAIN)]
    # "belt tension" is what "belt" pulls with: it is set once
    things = dict.fromkeys((*kept, *(pull for pull in case.pulls if not any(pull.lower().rstrip("s") in energy.lower() for energy in kept))))
    if things:
        does = told("Set back, by the machine's own instruction, what was slackened, clamped, raised or blocked: {things}.", things=", ".join(things))  # fmt: skip
        yield Step("tension back", "give back", does, told("What hangs free comes last, nobody under it."))
    if case.housing == "take-up":
        yield Step("take-ups even", "give back", told("Read both sides again, and tighten the lock nuts once more."), told("Both read the same."), takes=("tape", "spanner"))  # fmt: skip


def _gear_away(case: Case) -> Told:
    if case.second_flange:
        return told("Take slings, jacks and blocks away. No shim stock is left behind the flange.")
    if case.housing in (*FLANGES, "cartridge", "take-up"):
        return told("Take slings, jacks and blocks away.")
    return told("Take slings, jacks and blocks away. Shims under the foot stay.")


def given_back_greased(case: Case) -> Items:
    """After a greasing at standstill, and after the recheck: nothing was let go of but by a block."""
    if not case.only:
        open_ = Trouble(say("Another is open"), told("Take nothing out and give no power: sign here, and hand over to that sheet."))
        yield Step("others open", "give back", told("Ask whether another sheet is open at this machine."), told("None is: every other lock is off."), (open_,))  # fmt: skip
    blocked = [energy for energy in case.stored if "running down" not in energy.lower()]
    if blocked:
        yield Step("blocks out", "give back", told("Take out the blocks that were set against: {stored}.", stored=", ".join(blocked)), told("What ran down stays down; what was set stands as it stood."))  # fmt: skip
    yield from _closed(case)


def counted_in(case: Case, stage: str) -> Items:
    """What goes into a food zone is known, so that what comes out can be held against it."""
    if case.food:
        yield Step("count in", stage, told("Write on the list every part, tool and cloth that goes into the food zone."))


def counted_back(case: Case) -> Items:
    """And comes out again."""
    if case.food:
        yield Step("count", "give back", told("Count parts, tools and cloths back against the list: none may stay in a food zone."))
    else:
        yield Step("count", "give back", told("Count the tools back."))


def _closed(case: Case) -> Items:
    if case.windy:
        # nobody hangs guards beside what the wind can turn
        yield Step("guards on", "give back", told("Put every guard back and fasten it, but the one over the rotor's block."), told("No other opening is left that a hand fits in."))  # fmt: skip
        yield Step("rotor free", "give back", told("Take the block out of the rotor from outside its reach, and close the last guard."))
    else:
        yield Step("guards on", "give back", told("Put every guard back and fasten it."), told("No opening is left that a hand fits in."))
    yield from counted_back(case)
    yield Sign("S7", "give back", told("Guards on, everyone clear: released to run."))
    yield Step("power", "give back", told("Locks off, each by the one who put it on; power back by {procedure}.", procedure=case.procedure))
