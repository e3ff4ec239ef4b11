"""The shaft held before anything that carries it is opened, the unit held where it would drop, and all of it let down again."""

from __future__ import annotations

from generator.case import FLANGES, HEATED, LOCKED_LAST, Case
from generator.say import say
from generator.steps import Figures, Items, Step, Told, Trouble, told


def guards_off(stage: str) -> Step:
    """Only once it is proven that nothing can move."""
    return Step("guards off", stage, told("Take off the guards before this unit and before what is slackened, parted or taken off here; no others."), takes=("spanner",))


def supported(case: Case, f: Figures) -> Items:
    """The guards off, what pulls let go of; then the shaft is held, level or upright, and its coupling parted."""
    yield guards_off("support")
    whole = case.carrier or (case.between and case.lies != "vertical")
    figured = f.has("whole_mass" if whole else "jack_mass")
    if case.unweighed and figured:
        does = told("Find the mass of what the file has none of, before any gear is set: {things}.", things=", ".join(case.unweighed))
        yield Step("add mass", "support", does, told("What of it hangs on the shaft while it is held is added to the figure, with its margin."))
    if case.pulls:
        yield _let_go_of(case)
    yield _upright(case, f, figured) if case.lies == "vertical" else _level(case, f)
    if case.lies == "inclined":
        yield Step("block slope", "support", told("Block the shaft so that it cannot slide down its slope."), takes=("lifting gear",))
    if case.coupled:
        does = told("Mark both halves of the coupling to each other, sling each half, then part it.")
        yield Step("part coupling", "support", does, takes=("paint pen", "spanner", "lifting gear"))


def _let_go_of(case: Case) -> Step:
    pulls = ", ".join(case.pulls)
    none = told("None of it bears on the shaft any more. What a screw or a mark says of its setting is written down first.")
    if case.housing == "take-up":
        does = told("Write what both screws read, then slacken them by turns until nothing pulls: {pulls}.", pulls=pulls)
        return Step("pulls off", "support", does, told("None of it bears on the shaft any more."), takes=("spanner", "tape"))
    return Step("pulls off", "support", told("Slacken, clamp, or raise and block, what pulls or rests on the shaft: {pulls}.", pulls=pulls), none)  # fmt: skip


def _upright(case: Case, f: Figures, figured: bool) -> Step:
    hangs = told("It hangs by an eye in the shaft end or a clamp under a shoulder, never by a bare choked sling; not on a part that comes off later.")  # fmt: skip
    if case.carrier:
        does = (
            told("Hang a sling just slack to catch the shaft, rated {rating} or more; its weight stays on {carrier}. Steady it sideways.", rating=f("whole_rating_mass"), carrier=case.carrier)
            if figured
            else told("Hang a sling just slack to catch the shaft; its weight stays on {carrier}. What it weighs is not on file: ask before you lift.", carrier=case.carrier)
        )  # fmt: skip
        sinks = Trouble(say("{carrier} is not on, locked and bolted", carrier=case.carrier), told("Stop. Its sheet is first: nothing leans on a unit that does not hold."))  # fmt: skip
        return Step("support", "support", does, hangs, (sinks,), takes=("lifting gear",), picture="jack")
    does = (
        told("Hang the shaft in the sling: it carries {load}, gear rated {rating} or more.", load=f("jack_mass"), rating=f("jack_rating_mass"))
        if figured
        else told("Hang the shaft in the sling. What it carries there is not on file: ask before you lift.")
    )  # fmt: skip
    slips = Trouble(say("The sling slips or stands askew"), told("Let the shaft down onto stands set ready under it. Another place for the sling; ask the engineer."))  # fmt: skip
    return Step("support", "support", does, hangs, (slips,), takes=("lifting gear",), picture="jack")


def _level(case: Case, f: Figures) -> Step:
    tips = Trouble(
        say("The shaft tips or the sling slips"), told("Lower it onto blocks set ready under it. Another place, or a second one; ask the engineer.")
    )
    carries, picture = told("It carries the shaft at its height; nothing is lifted yet."), "jack"
    if case.between:
        # what a jack carries holds with all on the shaft; of several places that only push up none carries more than the whole
        does, carries, picture = _wherever(f), told("The shaft cannot tip, sink or roll whatever comes off; where it would rise it is held down."), ""  # fmt: skip
    elif f.has("jack_mass"):
        load, rating = f("jack_mass"), f("jack_rating_mass")
        does = (
            told("Set jack or sling on the side the ring does not come from: it carries {load} and what no mass is typed of; gear rated for both.", load=load)
            if case.unweighed
            else told("Set jack or sling on the side the ring does not come from: it carries {load}, rated {rating} or more.", load=load, rating=rating)
        )  # fmt: skip
    elif f.has("jack_load"):
        does = _held_down(f)
        carries = told("It is held; it cannot rise.")
        tips = Trouble(say("It still rises"), told("Slacken nothing. Hold it at a second place too; ask the engineer."))
    else:
        does = told("Set jack or sling on the side the ring does not come from. What it carries there is not on file: ask before you lift.")
    return Step("support", "support", does, carries, (tips,), takes=("lifting gear",), picture=picture)


def _held_down(f: Figures) -> Told:
    if f.has("hold_rating_mass"):
        return told(
            "Hold the shaft down beside this unit, or it tips up here: by {pull}, gear rated {rating} or more.",
            pull=f("hold_mass"), rating=f("hold_rating_mass"),
        )  # fmt: skip
    return told("Hold the shaft down beside this unit before you slacken anything: without it the shaft tips up here.")


def _wherever(f: Figures) -> Told:
    if f.has("whole_rating_mass"):
        return told(
            "Carry the shaft beside this unit, clear of the ring's way, and wherever something comes off: all of it weighs {whole}, each place rated {rating} or more.",
            whole=f("whole_mass"), rating=f("whole_rating_mass"),
        )  # fmt: skip
    return told("Carry the shaft beside this unit, clear of the ring's way, and wherever something comes off. What it weighs is not on file: ask before you lift.")  # fmt: skip


def way_cleared(case: Case, stage: str) -> Items:
    """What sits between the unit and the end of the shaft, off while the shaft still lies in its bearings."""
    if not case.between:
        return
    between = ", ".join(case.between)
    does = told("Clear the way, each part slung before it is loose. Off the shaft first: {between}.", between=between)
    if case.way != HEATED and not case.carrier:
        # to a shoulder and past a unit that carries there is one way only
        does = told("Clear the way, each part slung before it is loose. Off the shaft first: {between}. Or bring the ring on from the other end, all there off.", between=between)  # fmt: skip
    check = told("Tied before its block comes out. Nothing is left on the way that the ring must take.") if case.windy else told("Nothing is left on the way that the ring must take.")  # fmt: skip
    second = Trouble(say("A sling stands in the way"), told("Set a second one behind it first, then take the front one away."))
    yield Step("clear way", stage, does, check, (second,), takes=("puller", "lifting gear"))


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
    """The shaft's weight off the unit that is about to leave it; one that tips is held down already."""
    if case.carrier:
        moves = Trouble(say("The mark moves when the lock opens"), told("Stop. {carrier} does not hold: the sling takes the shaft; ask the engineer.", carrier=case.carrier))  # fmt: skip
        yield Step("take load", "open", told("Mark the shaft's height against something fixed."), told("It is looked at again when the lock is open."), (moves,), takes=("paint pen",))  # fmt: skip
    elif case.lies == "vertical":
        yield Step("take load", "open", told("Take up the sling until it carries the whole shaft; mark its height."), told("The mark does not move when the lock is slackened."), takes=("lifting gear", "paint pen"))  # fmt: skip
    elif f.has("whole_mass") if case.between else f.has("jack_mass"):
        yield Step("take load", "open", told("Lift until the shaft just floats at this unit."), told("More lift strains the next bearing."), takes=("lifting gear",))  # fmt: skip


def rises(case: Case, f: Figures) -> bool:
    """Whether the shaft tips up where this unit is off."""
    return case.lies != "vertical" and not case.between and f.has("jack_load") and not f.has("jack_mass")


def set_down_early(case: Case, f: Figures) -> bool:
    """A foot stands by itself with its bolts loose; a flange hangs on them, and an upright shaft or one that rises needs them tight."""
    return case.lies != "vertical" and case.housing not in (*FLANGES, "split") and not rises(case, f)


def set_down(case: Case, f: Figures, stage: str) -> Items:
    """What carried the shaft lets go of it, so that nothing is lined up or tightened against it; an upright one once its lock holds."""
    if case.carrier:
        does = told("Ease the sling until it is just slack, and look at the shaft's height.")
        sinks = Trouble(say("The shaft sinks"), told("Stop. The sling takes it: {carrier} has let go, not this lock; tell the engineer.", carrier=case.carrier))  # fmt: skip
        yield Step("set down", stage, does, told("The shaft does not sink, and the line over the lock is unbroken."), (sinks,))
    elif case.lies == "vertical":
        does = told("Let the sling down by a finger's width: this unit carries the shaft now.")
        sinks = Trouble(say("The shaft sinks"), told("Take it back into the sling. The lock does not hold: begin again from the lock."))
        yield Step("set down", stage, does, told("The shaft does not sink, and the line over the lock is unbroken."), (sinks,))
    elif rises(case, f):
        yield Step("set down", stage, told("Ease what holds the shaft down, once every other unit of it is on, locked and bolted."), told("It does not rise; what held it stays near until the end."))
    else:
        kept = told("The gear here carries nothing now and stays near. Wherever another unit or part is off, the gear stays loaded.")
        yield Step("set down", stage, told("Lower the gear beside this unit, and only that, until the unit carries its share."), kept)


def turned_by_hand(case: Case) -> Told:
    """What turns in the wind is blocked: the block is out only while hands turn the shaft."""
    if case.windy:
        return told("Turn the shaft by hand. Where the rotor is on: everyone clear of it, block out, turn, block in again.")
    return told("Turn the shaft by hand.")


def stiff(case: Case, locked: bool) -> Trouble:
    """The way out where a shaft that should be free is not; what is driven up stays driven up."""
    if case.housing == "cartridge" and case.way not in LOCKED_LAST:
        again = told("Loosen the stop, leave the lock shut. Stop, bore and seals are looked at before it is fitted again.")
    elif case.way not in LOCKED_LAST:
        again = told("Slacken the bolts, leave the lock shut. Frame, float and seals are looked at before they are tight again; still stiff: the engineer.")  # fmt: skip
    elif not locked:
        again = told("Slacken the bolts, and begin again from lining up.")
    elif case.lies == "vertical":
        again = told("Take the shaft into the sling first, and see that it carries. Then slacken lock and bolts, and begin again from lining up.")
    else:
        again = told("Slacken lock and bolts, and begin again from lining up.")
    return Trouble(say("Stiff, or a seal drags"), again)
