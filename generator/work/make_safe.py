"""What comes before any hand touches the machine: the right sheet, isolation proven, the shaft held."""

from __future__ import annotations

from generator.case import Case
from generator.say import say
from generator.steps import Figures, Items, Sign, Step, Told, Trouble, told


def sheet_in_hand() -> Items:
    """S0: paper and kiosk say the same."""
    yield Step(
        "sheet", "sheet", told("Hold the paper against the kiosk: same issue, same check code, not HELD."), takes=("position sheet",)
    )
    yield Sign("S0", "sheet", told("Sheet in force, job not held."), second=False)


def isolated(case: Case) -> Items:
    """Isolated, what stays released, proven: S1."""
    yield Step("isolate", "safe", _isolate(case), told("Only those whom the plant has authorised lock. Each puts on a lock of their own."), takes=("isolation kit",))  # fmt: skip
    if case.stored:
        yield released("release", case)
    if "may turn in the wind" in case.hazards:
        yield Step("block rotor", "safe", told("Block the rotor so that no wind turns it."), takes=("isolation kit",))
    if "steam" in case.hazards:
        yield Step("vent", "safe", told("Shut, lock and vent the steam; wait until its drains are cold."))
    if case.hot:
        yield cooled("let cool")
    if "fall from height" in case.hazards:
        yield Step("height", "safe", told("Stand on a platform or hang in a harness by the site's rules; tools on a line."), takes=("fall protection",))  # fmt: skip
    yield proven("prove")
    yield Sign("S1", "safe", told("Isolation proven at this machine."))


def released(act: str, case: Case) -> Step:
    """What stays when the drive is off, let go of."""
    return Step(act, "safe", told("Release, block or let run down what stays: {stored}.", stored=", ".join(case.stored)))


def cooled(act: str) -> Step:
    """No hand before a thermometer says so."""
    return Step(act, "safe", told("Let it cool until a thermometer says that bare skin may touch it."), takes=("thermometer",))


def proven(act: str) -> Step:
    """That it cannot start, tried."""
    moves = Trouble(say("It starts, or anything moves"), told("Nobody goes on. Lock and release again, from the first step."))
    check = told("Nothing starts, and nothing moves of itself. Every control is back at off.")
    return Step(act, "safe", told("Try to start it at every control, then watch the shaft."), check, (moves,))


def _isolate(case: Case) -> Told:
    energies = ", ".join(case.energies)
    if case.order == "second" and case.others:
        return told(
            "Isolate by {procedure}: {energies}. Where locks are still on from {others}: look at each and sign again.",
            procedure=case.procedure, energies=energies, others=case.others,
        )  # fmt: skip
    return told("Isolate by {procedure}: {energies}.", procedure=case.procedure, energies=energies)


def supported(case: Case, f: Figures) -> Items:
    """The shaft held before anything that carries it is opened."""
    tips = Trouble(
        say("The shaft tips or the sling slips"), told("Lower it. Another place for the jack, or a second one; ask the engineer.")
    )
    if case.pulls:
        does = told("Slacken, or raise and block, what pulls or rests on the shaft: {pulls}.", pulls=", ".join(case.pulls))
        yield Step("pulls off", "support", does, told("None of it bears on the shaft any more."))
    # an upright shaft hangs whole in its sling: what comes off it makes it lighter
    if case.between and case.lies != "vertical":
        does = told("Carry the shaft beside this unit and wherever something comes off. What each place carries then is not on file: ask before you lift.")
        check = told("The shaft cannot tip, sink or roll whatever comes off.")
    elif case.lies == "vertical" and not case.weight_on:
        does = told("Steady the shaft sideways with a sling; its weight stays on the other unit.")
        check = told("Hang check: the shaft does not sink when the sling is slackened by a finger's width.")
    elif f.has("jack_mass"):
        does = (
            told(
                "Hang the shaft in the sling: it carries {load}, gear rated {rating} or more.",
                load=f("jack_mass"),
                rating=f("jack_rating_mass"),
            )
            if case.lies == "vertical"
            else told(
                "Set jack or sling beside this unit: it carries {load}, rated {rating} or more.",
                load=f("jack_mass"),
                rating=f("jack_rating_mass"),
            )
        )
        check = told("It carries; the shaft is not lifted yet.")
    elif f.has("jack_load"):
        does = told("Hold the shaft down beside this unit before you slacken anything: without it the shaft tips up here.")
        check = told("It is held; it cannot rise.")
        tips = Trouble(say("It still rises"), told("Slacken nothing. Hold it at a second place too; ask the engineer."))
    else:
        does = told("Set jack or sling beside this unit. What it carries there is not on file: ask before you lift.")
        check = told("It carries; the shaft is not lifted yet.")
    yield Step("support", "support", does, check, (tips,), takes=("lifting gear",), picture="jack")
    if case.lies == "inclined":
        yield Step("block slope", "support", told("Block the shaft so that it cannot slide down its slope."), takes=("lifting gear",))


def way_cleared(case: Case) -> Items:
    """What sits between the unit and the end of the shaft, off while the shaft still lies in its bearings."""
    if case.between:
        does = told("Clear the way. Off the shaft first: {between}. Or else all that sits toward the other end.", between=", ".join(case.between))
        yield Step("clear way", "support", does, told("Nothing is left on the way that the ring must take."), takes=("puller",))
