"""Steps that the ways of locking by screw or collar share: on the shaft, bolted down and turning free before anything is locked."""

from __future__ import annotations

from generator.case import Case
from generator.housings.holding import set_down, stiff, turned_by_hand, unit_held
from generator.housings.opening import held_below, let_go
from generator.housings.steps import bolted, done, floated, set_in_place, stood_loose
from generator.say import say
from generator.steps import Figures, Items, Sign, Step, Told, Trouble, told


def cleaned(case: Case, clear: Told) -> Items:
    """Dry and clean, the bore clear of screws, a thin film of oil, onto the shaft."""
    yield Step(
        "clean parts", "axial", told("Wipe shaft and bore dry and free of lint."), told("A gloved finger feels no edge. A burr in a new bore means another part."),
        takes=("lint-free cloth",),
    )  # fmt: skip
    yield Step("clear bore", "axial", clear, takes=("key for the lock",))
    yield Step("oil film", "axial", told("Put a thin film of light oil on the shaft."), takes=("light oil",))


def aligned_before_locking(case: Case, f: Figures) -> Items:
    """The housing stands bolted, aligned and turning free; the free unit has its float. Then S4."""
    does = told("Slide the unit on: lock toward the {side}.", side=case.lock_toward) if case.lock_toward else told("Slide the unit on, the lock to the side that can be reached.")  # fmt: skip
    yield from unit_held(case, f, "axial")
    stuck = Trouble(say("Will not slide on"), told("Take it off and look: burr, shaft over its limit. Never a hammer on the ring."))
    yield Step("slide on", "axial", does, None, (stuck,))
    yield from stood_loose(case, f)
    yield from set_in_place(case, f)
    yield from floated(case, f, "axial")
    yield from bolted(case, f)
    yield Step("turn free before", "bolts", turned_by_hand(case), told("Before anything is locked it turns freely, and the ring stands square."), (stiff(case, locked=False),))  # fmt: skip
    yield Sign("S4", "bolts", _ready(case))


def _ready(case: Case) -> Told:
    return {
        "take-up": told("Lock nuts tight, both sides alike, shaft free: ready to lock."),
        "cartridge": told("Cartridge stopped, shaft free: ready to lock."),
    }.get(case.housing, told("Bolted, aligned, shaft free: ready to lock."))


def locked_and_free(case: Case, f: Figures, what: Told) -> Items:
    """Locked, a line drawn over it, and still free."""
    yield Step("witness line", "lock", told("Draw one line over lock, ring and shaft."), told("It shows later whether anything crept."), takes=("paint pen",))  # fmt: skip
    yield Sign("S5", "lock", what)
    if case.lies == "vertical":
        yield from set_down(case, f, "lock")
    yield Step("turn free", "lock", turned_by_hand(case), told("It turns as freely as before it was locked, and no seal drags."), (stiff(case, locked=True),))
    yield Sign("S6", "lock", done(case))


def screw_key(f: Figures) -> tuple[str, ...]:
    """What tightens the lock's screw."""
    return ("torque tool for the lock", "key for the lock")


def slid_off(case: Case) -> Items:
    """Off the frame and off the shaft, by its inner ring."""
    yield from let_go(case)
    stuck = Trouble(say("Does not slide"), told("Light oil, time, and a puller on the inner ring. Never a blow on housing or seal."))
    yield Step(
        "slide off", "lock", told("Slide the unit off by hand or with a puller on the inner ring."), held_below(case), (stuck,), takes=("puller",)
    )
