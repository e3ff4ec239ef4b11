"""Taking a unit off: isolated and held, looked at before anything is wiped away, the lock last opened first."""

from __future__ import annotations

from types import ModuleType

from generator.case import Case
from generator.housings.holding import load_taken, supported, unit_held, way_cleared
from generator.housings.opening import held_below, let_go, opened, opens, sampled
from generator.say import say
from generator.steps import Blank, Figures, Items, Step, Trouble, told
from generator.work.giving_back import counted_back, counted_in
from generator.work.make_safe import isolated, sheet_in_hand


def take_off(case: Case, f: Figures, locking: ModuleType) -> Items:
    """Every step and stop, in order."""
    yield Step(
        "as found running", "sheet", told("Before it stops, and only from outside the guard: read temperature, vibration, noise."), None,
        takes=("thermometer",), blanks=(Blank("housing temperature", say("as found"), "degC"),),
    )  # fmt: skip
    yield from sheet_in_hand()
    yield from counted_in(case, "safe")
    yield from isolated(case, running=True)
    yield from supported(case, f)
    yield from _as_found(case)
    yield from way_cleared(case, "open")
    if case.lies == "vertical":
        yield from unit_held(case, f, "open")
        yield from load_taken(case, f)
    yield from opened(case, f)
    if case.feeler and case.housing == "split":
        yield Step(
            "clearance as found", "open", told("Read the clearance as it is, both rows, on the side free of load."), takes=("feeler",),
            blanks=(Blank("clearance row 1", say("row 1"), "mm"), Blank("clearance row 2", say("row 2"), "mm")), picture="feeler",
        )  # fmt: skip
    yield from locking.take_off(case, f)
    if case.sleeve:
        yield from let_go(case)
        sticks = Trouble(say("Sleeve sticks"), told("Light oil, spread its slot gently with a soft wedge, and wait. No blow."))
        yield Step("slide off", "lock", told("Take the nut off, and slide sleeve and bearing from the shaft."), held_below(case) or told("Nothing is driven along the shaft."), (sticks,))  # fmt: skip
    yield Step("look at seat", "seat", told("Wipe the seat and look: wear, colour, old dents."), told("Write it on the record sheet."), takes=("lint-free cloth",))  # fmt: skip
    yield Step("keep parts", "parts", told("Bag and tag the failed parts, unwashed, and keep them until the engineer has seen them."), takes=("tags",))
    if case.food:
        yield from counted_back(case)
    yield Step("leave safe", "give back", told("Leave the shaft held and the locks on. No power until a unit is on again and S7 is signed."))


def _as_found(case: Case) -> Items:
    yield Step(
        "as found", "as found", told("Write what is seen before anything is wiped: marks of lock and nut, loose bolts, shims, grease."),
        told("A picture helps. What is wiped away is lost."), takes=("record sheet", "paint pen"),
    )  # fmt: skip
    if not opens(case):
        yield sampled(told("Catch a spoon of the old grease at seal or relief in a clean bag, tagged."), "as found")
    yield Step("clean outside", "as found", told("Clean the housing outside before it is opened."), takes=("lint-free cloth",))
    if not opens(case):
        mark = told("Mark on the housing which side faces the drive.") if case.lies == "vertical" else told("Mark “up” on the housing.")
        yield Step("load zone", "as found", mark, told("It shows later where the load came from."), takes=("paint pen",))
