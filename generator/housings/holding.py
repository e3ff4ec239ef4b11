"""The shaft held before anything that carries it is opened, the unit held where it would drop, and all of it let down again."""

from __future__ import annotations

from generator.case import Case
from generator.say import say
from generator.steps import Figures, Items, Step, Told, Trouble, told


def supported(case: Case, f: Figures) -> Items:
    """The guards off, the coupling parted, what pulls let go of; then the shaft is held, level or upright."""
    yield guards_off("support")
    if case.coupled:
        yield Step("part coupling", "support", told("Mark both halves of the coupling to each other, then part it."), takes=("paint pen", "spanner"))  # fmt: skip
    if case.pulls:
        does = told("Slacken, or raise and block, what pulls or rests on the shaft: {pulls}.", pulls=", ".join(case.pulls))
        yield Step("pulls off", "support", does, told("None of it bears on the shaft any more. What a screw or a mark says of its setting is written down first."))  # fmt: skip
    if case.unweighed and not case.carrier and (f.has("jack_mass") or f.has("whole_mass")):
        does = told("No mass is typed of what sits on the shaft: {things}. Find it, and add it to the figure for the gear.", things=", ".join(case.unweighed))  # fmt: skip
        yield Step("add mass", "support", does)
    yield _upright(case, f) if case.lies == "vertical" else _level(case, f)
    if case.lies == "inclined":
        yield Step("block slope", "support", told("Block the shaft so that it cannot slide down its slope."), takes=("lifting gear",))


def guards_off(stage: str) -> Step:
    """Only once it is proven that nothing can move."""
    return Step("guards off", stage, told("Take off the guards that stand before this unit, and no others."), takes=("spanner",))


def _upright(case: Case, f: Figures) -> Step:
    if case.carrier:
        does = told("Steady the shaft sideways with a sling; its weight stays on {carrier}.", carrier=case.carrier)
        check = told("{carrier} is on, locked and bolted, and nobody touches it. The shaft does not sink when the sling is slackened by a finger's width.", carrier=case.carrier)  # fmt: skip
        sinks = Trouble(say("The shaft sinks"), told("Stop. The other unit does not hold it; hang the shaft, and ask the engineer."))
        return Step("support", "support", does, check, (sinks,), takes=("lifting gear",), picture="jack")
    does = (
        told("Hang the shaft in the sling: it carries {load}, gear rated {rating} or more.", load=f("jack_mass"), rating=f("jack_rating_mass"))
        if f.has("jack_mass")
        else told("Hang the shaft in the sling. What it carries there is not on file: ask before you lift.")
    )  # fmt: skip
    slips = Trouble(say("The sling slips or stands askew"), told("Let the shaft down onto the unit again. Another place for the sling; ask the engineer."))  # fmt: skip
    check = told("It carries; the shaft is not lifted yet.")
    return Step("support", "support", does, check, (slips,), takes=("lifting gear",), picture="jack")


def _level(case: Case, f: Figures) -> Step:
    tips = Trouble(
        say("The shaft tips or the sling slips"), told("Lower it. Another place for the jack, or a second one; ask the engineer.")
    )
    carries, picture = told("It carries; the shaft is not lifted yet."), "jack"
    if case.between:
        # what a jack carries holds with all on the shaft; of several places that only push up none carries more than the whole
        does, carries, picture = _wherever(f), told("The shaft cannot tip, sink or roll whatever comes off."), ""
    elif f.has("jack_mass"):
        does = told("Set jack or sling beside this unit: it carries {load}, rated {rating} or more.", load=f("jack_mass"), rating=f("jack_rating_mass"))  # fmt: skip
    elif f.has("jack_load"):
        does = told("Hold the shaft down beside this unit before you slacken anything: without it the shaft tips up here.")
        carries = told("It is held; it cannot rise.")
        tips = Trouble(say("It still rises"), told("Slacken nothing. Hold it at a second place too; ask the engineer."))
    else:
        does = told("Set jack or sling beside this unit. What it carries there is not on file: ask before you lift.")
    return Step("support", "support", does, carries, (tips,), takes=("lifting gear",), picture=picture)


def _wherever(f: Figures) -> Told:
    if f.has("whole_rating_mass"):
        return told(
            "Carry the shaft on both sides of this unit and wherever something comes off: all of it weighs {whole}, each place rated {rating} or more.",
            whole=f("whole_mass"), rating=f("whole_rating_mass"),
        )  # fmt: skip
    return told("Carry the shaft on both sides of this unit and wherever something comes off. What it weighs is not on file: ask before you lift.")  # fmt: skip


def way_cleared(case: Case, stage: str) -> Items:
    """What sits between the unit and the end of the shaft, off while the shaft still lies in its bearings."""
    if case.between:
        does = told("Clear the way, each part slung before it is loose. Off the shaft first: {between}. Or else all that sits toward the other end.", between=", ".join(case.between))  # fmt: skip
        yield Step("clear way", stage, does, told("Nothing is left on the way that the ring must take."), takes=("puller", "lifting gear"))


def unit_held(case: Case, f: Figures, stage: str) -> Items:
    """On an upright shaft a unit that no lock and no bolt holds falls: it is held from below first."""
    if case.lies != "vertical":
        return
    does = (
        told("Hold the unit from below, {mass}, by something that stands or hangs by itself.", mass=f("unit_mass"))
        if f.has("unit_mass")
        else told("Hold the unit from below, by something that stands or hangs by itself. Its mass is not on file: ask.")
    )
    yield Step("hold unit", stage, does, told("It stays held until bolts or lock hold it; nobody is under it."), takes=("lifting gear",))


def load_taken(case: Case, f: Figures) -> Items:
    """The shaft's weight off the unit that is about to leave it; an upright one hangs already, one that tips is held down."""
    if case.lies == "vertical" or (case.between and not f.has("whole_mass")) or not (case.between or f.has("jack_mass")):
        return
    yield Step("take load", "open", told("Lift until the shaft just floats at this unit."), told("More lift strains the next bearing."), takes=("lifting gear",))  # fmt: skip


def set_down(case: Case, f: Figures, stage: str) -> Items:
    """What carried the shaft lets go of it, so that nothing is lined up or tightened against it; an upright one once its lock holds."""
    near = told("It carries nothing now, and stays near until the end.")
    if case.lies == "vertical":
        does = told("Slacken the sling that steadies the shaft.") if case.carrier else told("Let the sling down by a finger's width: this unit carries the shaft now.")  # fmt: skip
        sinks = Trouble(say("The shaft sinks"), told("Take it back into the sling. The lock does not hold: begin again from the lock."))
        yield Step("set down", stage, does, told("The shaft does not sink, and the mark over the lock is unbroken."), (sinks,))
    elif f.has("jack_load") and not f.has("jack_mass") and not case.between:
        yield Step("set down", stage, told("Ease what holds the shaft down until this unit holds it."), told("It stays near until the end."))
    else:
        yield Step("set down", stage, told("Lower jack or sling until this unit carries the shaft."), near)


def turned_by_hand(case: Case) -> Told:
    """What turns in the wind is blocked: the block is out only while hands turn the shaft."""
    if case.windy:
        return told("Everyone clear of the rotor: block out, turn the shaft by hand, block in again.")
    return told("Turn the shaft by hand.")
