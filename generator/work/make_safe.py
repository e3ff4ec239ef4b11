"""What comes before any hand touches the machine: the right sheet, isolation proven."""

from __future__ import annotations

from generator.case import Case
from generator.say import say
from generator.steps import Items, Sign, Step, Told, Trouble, told


def sheet_in_hand() -> Items:
    """S0: paper and kiosk say the same."""
    yield Step(
        "sheet", "sheet", told("Hold the paper against the kiosk: same issue, same check code, not HELD."), takes=("position sheet",)
    )
    yield Sign("S0", "sheet", told("Sheet in force, job not held."), second=False)


def isolated(case: Case, running: bool) -> Items:
    """For work at the shaft, running until then or not: isolated, what stays let go of or blocked, proven: S1."""
    release = told("Release, block or let run down what stays: {stored}.", stored=", ".join(case.stored))
    if running or case.order == "first":
        yield from run_cool(case)
    yield from _isolated(case, _isolate(case), release)
    yield Sign("S1", "safe", told("Isolation proven at this machine."))


def isolated_to_grease(case: Case) -> Items:
    """To reach a fitting: nothing is let go of that would have to be set anew. S1."""
    yield from run_cool(case)
    yield from _isolated(case, _isolate(case), _blocked(case))
    yield Sign("S1", "safe", told("Isolation proven at this machine."))


def isolated_again(case: Case) -> Items:
    """For the recheck after running in. S1."""
    isolate = told("After a day and after a week, or by the plant's rule: isolate by {procedure} again.", procedure=case.procedure)
    yield from run_cool(case)
    yield from _isolated(case, isolate, _blocked(case))
    yield Sign("S1", "safe", told("Isolation proven at this machine."))


def run_cool(case: Case) -> Items:
    """A shaft that stops hot bends, and burns whoever reaches it."""
    if case.hot and case.warmed:
        yield Step("run cool", "safe", told("Shut the heat off and let it run until it is cool; only then stop it."), told("A shaft that stops hot bends."))  # fmt: skip


def _isolated(case: Case, isolate: Told, release: Told) -> Items:
    yield Step("isolate", "safe", isolate, told("Only those whom the plant has authorised lock. Each puts on a lock of their own."), takes=("isolation kit",))  # fmt: skip
    if case.stored:
        yield Step("release", "safe", release)
    if "steam" in case.hazards:
        yield Step("vent", "safe", told("Shut, lock and vent the steam; wait until its drains are cold."))
    if case.drained:
        yield Step("drain", "safe", told("Shut, lock and drain by the procedure, and see that nothing more comes: {drained}.", drained=", ".join(case.drained)))  # fmt: skip
    if case.gases:
        yield Step("shut gas", "safe", told("Shut, lock and vent by the procedure, and see that nothing more comes: {gases}.", gases=", ".join(case.gases)))  # fmt: skip
    if case.hot or case.warmed:
        yield Step("let cool", "safe", told("Let it cool until a thermometer says that bare skin may touch it."), takes=("thermometer",))
    yield _proven(case)
    # only what cannot start is held by a block, and nobody climbs beside what may still turn
    if case.windy:
        yield Step("block rotor", "safe", told("Block the rotor so that no wind turns it, or see that its block holds, from outside its reach."), takes=("isolation kit",))
    if "fall from height" in case.hazards:
        yield Step("height", "safe", told("Stand on a platform or hang in a harness by the site's rules; tools on a line."), takes=("fall protection",))  # fmt: skip


def _blocked(case: Case) -> Told:
    return told("Block or let run down what stays, and leave it set as it is: {stored}.", stored=", ".join(case.stored))


def _proven(case: Case) -> Step:
    """That it cannot start, tried."""
    moves = Trouble(say("It starts, or anything moves"), told("Nobody goes on. Lock and release again, from the first step."))
    check = told("Nothing starts, and nothing moves of itself. Every control is back at off.")
    if case.windy:
        moves = Trouble(say("It starts"), told("Nobody goes on. Lock and release again, from the first step."))
        check = told("Nothing starts; only the wind may stir it, and it is blocked next. Every control is back at off.")
    return Step("prove", "safe", told("Everyone clear of all that could move: try to start it at every control, then watch the shaft."), check, (moves,))


def _isolate(case: Case) -> Told:
    energies = ", ".join(case.energies)
    if case.order == "second" and case.others:
        return told(
            "Isolate by {procedure}: {energies}. Where locks are still on from {others}: look at each and sign again.",
            procedure=case.procedure, energies=energies, others=case.others,
        )  # fmt: skip
    return told("Isolate by {procedure}: {energies}.", procedure=case.procedure, energies=energies)
