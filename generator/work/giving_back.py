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
    if not case.only:
        yield Step("all on", "give back", told("See that every unit of this machine is on, locked and bolted, and that no other sheet is open here."), told("What another sheet left to put back is done with this one."), _not_all_on())  # fmt: skip
    if case.coupled:
        yield Step("join coupling", "give back", told("Line the coupling up by its own instruction, and join it by the marks."))
    yield from _set_again(case)
    yield Step("gear away", "give back", _gear_away(case))
    yield Step("floor", "give back", told("Wipe up grease and oil."))
    yield from _closed(case, [energy for energy in _blocked(case) if energy not in _kept(case)])


def _not_all_on() -> tuple[Trouble, ...]:
    return (
        Trouble(say("One is not"), told("Locks, blocks, jack and slings stay. Its sheet is next; coupling, tension, guards and power come with the last unit.")),
        Trouble(say("Another sheet is open"), told("Set nothing back and give no power: sign here, and hand over to that sheet.")),
    )  # fmt: skip


def _set_again(case: Case) -> Items:
    kept = _kept(case)
    # "belt tension" is what "belt" pulls with: it is set once
    things = dict.fromkeys((*kept, *(pull for pull in case.pulls if not any(pull.lower().rstrip("s") in energy.lower() for energy in kept))))
    if things:
        does = told("Set back, by the machine's own instruction, what was slackened, clamped, raised or blocked: {things}.", things=", ".join(things))  # fmt: skip
        yield Step("tension back", "give back", does, told("What hangs free comes last, nobody under it."))
    if case.housing == "take-up":
        yield Step("take-ups even", "give back", told("Read both sides again, and tighten the lock nuts once more."), told("Both read the same."), takes=("tape", "spanner"))  # fmt: skip


def _kept(case: Case) -> list[str]:
    """What is set again where it was let go of."""
    return [energy for energy in case.stored if any(word in energy.lower() for word in SET_AGAIN)]


def _blocked(case: Case) -> list[str]:
    """What may stand behind a block; what runs down needs none."""
    return [energy for energy in case.stored if "running down" not in energy.lower()]


def _gear_away(case: Case) -> Told:
    if case.second_flange:
        return told("Take slings and jacks away. No shim stock is left behind the flange.")
    if case.housing in (*FLANGES, "cartridge", "take-up"):
        return told("Take slings and jacks away.")
    return told("Take slings and jacks away. Shims under the foot stay.")


def given_back_greased(case: Case) -> Items:
    """After a greasing at standstill, and after the recheck: nothing was let go of but by a block."""
    if not case.only:
        open_ = Trouble(say("Another is open"), told("Take nothing out and give no power: sign here, and hand over to that sheet."))
        yield Step("others open", "give back", told("Ask whether another sheet is open at this machine."), told("None is: every other lock is off."), (open_,))  # fmt: skip
    yield from _closed(case, _blocked(case))


def counted_in(case: Case, stage: str) -> Items:
    """What goes into a food zone is known, so that what comes out can be held against it."""
    if case.food:
        yield Step("count in", stage, told("Write on the list every part, tool and cloth that goes into the food zone."))


def counted_back(case: Case) -> Items:
    """And comes out again."""
    missing = Trouble(say("One is missing"), told("No guard is closed and every block stays until it is found."))
    if case.food:
        yield Step("count", "give back", told("Count parts, tools and cloths back against the list: none may stay in a food zone."), None, (missing,))  # fmt: skip
    else:
        yield Step("count", "give back", told("Count the tools back, all but those for the guards."), None, (missing,))


def _closed(case: Case, blocked: list[str]) -> Items:
    yield from counted_back(case)
    if case.windy or blocked:
        # nobody hangs guards beside what moves when its block is out
        yield Step("guards on", "give back", told("Put every guard back and fasten it, but one over a block."), told("No other opening is left that a hand fits in."))  # fmt: skip
        if blocked:
            yield Step("blocks out", "give back", told("Take out, from outside their reach, the blocks set against: {stored}.", stored=", ".join(blocked)), told("What ran down stays down; what was set stands as it stood."))  # fmt: skip
        if case.windy:
            yield Step("rotor free", "give back", told("Take the block out of the rotor, from outside its reach."))
        yield Step("last guard", "give back", told("Close the last guard."), told("The tools for the guards are counted too."))
    else:
        yield Step("guards on", "give back", told("Put every guard back and fasten it."), told("No opening is left that a hand fits in; the tools for them are counted too."))  # fmt: skip
    yield Sign("S7", "give back", told("Guards on, everyone clear: released to run."))
    yield Step("power", "give back", told("Locks off, each by the one who put it on; power back by {procedure}.", procedure=case.procedure))
