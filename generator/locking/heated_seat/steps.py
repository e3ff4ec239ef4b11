"""Putting on and taking off a bearing that is pressed on its seat: warm onto the shaft, held to the shoulder, cold before anything else."""

from __future__ import annotations

from generator.case import Case
from generator.housings.holding import unit_held
from generator.housings.steps import stood_loose
from generator.locking.sleeve_by_clearance.steps import read_before, seals_on
from generator.say import say
from generator.steps import Blank, Figures, Items, Sign, Step, Trouble, told


def put_on(case: Case, f: Figures) -> Items:
    """Clearance before, heat, shoulder, cold, blade, clearance after."""
    if case.feeler:
        yield from read_before(case, f)
    yield Step(
        "clean parts", "lock", told("Wipe seat, shoulder and bore dry and free of lint."), told("A gloved finger feels no edge. A burr on a new part means another part."),
        takes=("lint-free cloth",),
    )  # fmt: skip
    yield from seals_on(case)
    yield from stood_loose(case, f)
    yield from unit_held(case, f, "lock")
    if case.dusty:
        yield Step(
            "clear the dust", "lock", told("Take the heater to a clean place outside the dust, or collect the dust and get the permit.")
        )
    yield from _heated(case, f)
    yield Sign("S4", "lock", told("Temperature reached and time written; ring at the shoulder."))
    yield from _cold(case, f)


def _heated(case: Case, f: Figures) -> Items:
    yield Step(
        "heat", "lock", told("Heat the ring evenly to {to}, and to {ceiling} at the very most, sensor on the inner ring.", to=f("heat_to"), ceiling=f("heating")),
        told("The inner ring is not far ahead of the outer one. Never an open flame."), takes=("bearing heater", "thermometer"),
        blanks=(Blank("heated to", say("reached"), "degC"),), picture="shoulder",
    )  # fmt: skip
    yield Step("demagnetise", "lock", told("Let the heater demagnetise it."), told("A clean clip on a thread is not drawn to the ring."))
    stops = Trouble(say("Stops half way"), told("Do not hammer. Pull it off while it is hot, find out why, heat again."))
    yield Step(
        "push to shoulder",
        "lock",
        told("Carry it in dry heat gloves, and slide it to the shoulder in one move."),
        None,
        (stops,),
        takes=("heat gloves",),
    )
    yield Step("hold", "lock", told("Hold it to the shoulder until it grips."), told("It shrinks away from the shoulder when it is let go too soon."), takes=("heat gloves",))  # fmt: skip


def _cold(case: Case, f: Figures) -> Items:
    yield Step("cool", "lock", told("Let it cool in air until the thermometer reads ring and shaft alike. Never quench it."))
    gap = Trouble(say("Blade goes in"), told("It does not sit at the shoulder. Pull it off as in taking off, find out why, begin again."))
    yield Step("shoulder blade", "lock", told("Try a blade of {blade} at the shoulder, all round.", blade=f("shoulder_blade")), told("It goes in nowhere."), (gap,), takes=("feeler",))  # fmt: skip
    yield Step("fasten ring", "lock", told("Where a nut or a plate holds the ring, tighten and lock it now, cold, by its maker's figure."))
    if case.feeler:
        blanks = (Blank("clearance left row 1", say("row 1 left"), "mm"), Blank("clearance left row 2", say("row 2 left"), "mm"))
        yield Step(
            "read clearance after", "lock", told("Read what is left, both rows, below, where the outer ring hangs free: never under {least}.", least=f("clearance_least_left")), None,
            (Trouble(say("Less is left"), told("Stop. Seat over its limit or wrong class; the engineer decides.")),),
            blanks=blanks, takes=("feeler",), picture="feeler",
        )  # fmt: skip
    yield Step("turn free", "lock", told("Turn the bearing by hand."), told("It runs smoothly and without a tight place."))
    yield Sign("S5", "lock", told("Ring at the shoulder all round, clearance inside its limits, cold.") if case.feeler else told("Ring at the shoulder all round, runs smoothly, cold."))  # fmt: skip


def take_off(case: Case, f: Figures) -> Items:
    """A puller on the inner ring; oil or heat where the shaft is made for it."""
    yield Step("unlock", "lock", told("Take off what holds the ring along the shaft: nut, plate or ring."), takes=("spanner",))
    yield Step("puller", "lock", told("Set the puller behind the inner ring and in line with the shaft."), told("Nothing pulls on the outer ring or the cage."), takes=("puller", "eye protection"))  # fmt: skip
    stuck = Trouble(say("Does not move"), told("Stop. Oil pressure where the shaft is drilled for it. Heat only when the engineer says how and its permit is in hand."))  # fmt: skip
    yield Step("pull", "lock", told("Pull steadily, nobody in line with the puller."), told("The shaft is not scored."), (stuck,), takes=("puller", "eye protection"))  # fmt: skip
