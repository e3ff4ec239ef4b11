"""Putting a unit on, from the sheet in the hand to the locks off: the spine that is the same for every way of locking."""

from __future__ import annotations

from types import ModuleType

from generator.case import HEATED, LOCKED_LAST, TURN, Case
from generator.housings.holding import set_down, stiff, supported, turned_by_hand, way_cleared
from generator.housings.steps import bolted, done, floated, frame_checked, holes_gauged, housed
from generator.say import say
from generator.steps import Blank, Figures, Items, Sign, Step, Told, Trouble, told
from generator.work.giving_back import counted_in, given_back
from generator.work.greasing import bearing_filled, beside_filled, by_hand, first_grease
from generator.work.make_safe import isolated, sheet_in_hand


def put_on(case: Case, f: Figures, locking: ModuleType) -> Items:
    """Every step and stop, in order."""
    yield from sheet_in_hand()
    yield from counted_in(case, "safe")
    yield from isolated(case, running=False)
    yield from supported(case, f)
    yield from way_cleared(case, "support")
    yield from seat_accepted(case, f)
    yield from frame_checked(case, f)
    yield from parts_matched(case, f)
    yield from locking.put_on(case, f)
    if case.way in LOCKED_LAST:
        yield from first_grease(case, f)
    elif case.way == TURN:
        yield from floated(case, f, "axial")
        yield from _bolted_last(case, f)
        yield from first_grease(case, f)
    elif by_hand(case):
        yield from _greased_as_it_closes(case, f)
    else:
        yield from housed(case, f)
        yield from _open_and_shut(case, f, ())
        yield from first_grease(case, f)
    yield from given_back(case)


def _greased_as_it_closes(case: Case, f: Figures) -> Items:
    """The bearing is filled while it hangs in the open, the room beside it while the housing is still open."""
    yield from bearing_filled(case, f)
    if case.housing == "cartridge":
        # what slides over the bearing closes at once
        yield from beside_filled(case, f, "axial")
        yield from housed(case, f)
        yield from _open_and_shut(case, f, ())
    else:
        yield from housed(case, f)
        yield from _open_and_shut(case, f, beside_filled(case, f, "bolts"))


def _open_and_shut(case: Case, f: Figures, filled: Items) -> Items:
    """A split base is lined up before its float is set, and bolted after; what slides in a bore is set there."""
    if case.housing == "split":
        yield from _bolted_last(case, f, filled)
    else:
        yield from floated(case, f, "axial")
        yield from _bolted_last(case, f)


def _bolted_last(case: Case, f: Figures, while_open: Items = ()) -> Items:
    yield from bolted(case, f, while_open)
    if case.lies == "vertical":
        yield from set_down(case, f, "bolts")
    yield Step("turn free last", "bolts", turned_by_hand(case), _as_free(case), (stiff(case, locked=True),))
    yield Sign("S6", "bolts", done(case))


def _as_free(case: Case) -> Told:
    return {
        "take-up": told("It turns as freely as before the lock nuts were tight."),
        "cartridge": told("It turns as freely as before the stop was fitted."),
    }.get(case.housing, told("It turns freely, and no seal drags."))


def seat_accepted(case: Case, f: Figures) -> Items:
    """Nine readings, near 20 degrees, inside size and form: S2."""
    yield Step("clean seat", "seat", told("Clean the seat; dress burrs and old marks by hand."), told("A gloved finger feels no edge."), takes=("lint-free cloth", "fine stone"))  # fmt: skip
    warm = Trouble(say("More than {limit} off 20 °C, warmer or colder", limit=f("warm_reading")), told("Let shaft and micrometer come to the same temperature; write it, and the engineer corrects the readings."))  # fmt: skip
    yield Step(
        "seat temperature", "seat", told("Read the temperature of shaft and micrometer: near 20 °C."), None, (warm,), takes=("thermometer",),
        blanks=(Blank("shaft temperature", say("shaft"), "degC"),),
    )  # fmt: skip
    limits = f("shaft_limits")
    small = Trouble(say("A reading is outside"), told("Stop. The shaft is not used as it is; write all nine and tell the engineer."))
    form = Trouble(say("All inside, but they differ by more than {spread}", spread=f("out_of_round")), told("Stop. Size passes, form fails: the grip would be false."))  # fmt: skip
    yield Step(
        "measure seat", "seat", told("Measure nine diameters, three places by three directions: all inside {limits}.", limits=limits),
        told("They differ from one another by no more than {spread}.", spread=f("out_of_round")), (small, form), takes=("micrometer",),
        blanks=(Blank("seat smallest", say("smallest"), "mm"), Blank("seat largest", say("largest"), "mm")), picture="reading places",
    )  # fmt: skip
    yield Sign("S2", "seat", told("Shaft accepted, readings written."))


def parts_matched(case: Case, f: Figures) -> Items:
    """Carried, unpacked only now, read aloud: S3."""
    bring = (
        told("Bring the parts to the machine, still wrapped: {unit}, {mass}.", unit=case.unit, mass=f("unit_mass"))
        if f.has("unit_mass")
        else told("Bring the parts to the machine, still wrapped: {unit}. The mass is not on file: ask before you lift.", unit=case.unit)
    )
    yield Step("carry parts", "parts", bring, takes=("parts",))
    yield Step("unpack", "parts", told("Unpack the bearing now, not before."), told("Its own grease or oil stays in, unless the maker says otherwise."))  # fmt: skip
    near = Trouble(say("One sign differs"), told("Stop. An inch part looks like a metric one; nothing near is good enough."))
    if case.sleeve:
        does = told("Read designation, clearance class and nut thread {thread} aloud from the parts.", thread=f("lock_thread"))
    else:
        does = told("Read designation and clearance class aloud from the parts.")
    yield Step("read designation", "parts", does, told("The second person reads along on the sheet."), (near,))
    if case.way == HEATED:
        over = Trouble(say("It is not what its maker states for its class"), told("Stop. Another bearing, or the engineer decides."))
        yield Step("measure ring", "parts", told("Measure the bore of the ring at the same temperature as the shaft, and write it."), None, (over,), takes=("bore gauge",))  # fmt: skip
    if case.apart and case.way in (TURN, *LOCKED_LAST):
        yield Step("insert in", "parts", told("Enter the insert crosswise in the slots of its housing, and swing it square."), told("Grease hole and stop stand where the maker shows them."))  # fmt: skip
    yield from holes_gauged(case, f)
    yield Sign("S3", "parts", told("Every part is the one on the sheet."))
