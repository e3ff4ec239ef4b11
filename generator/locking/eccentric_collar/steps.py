"""Putting on and taking off a ring locked by an eccentric collar: turned the way the shaft runs, seen from the collar's own side."""

from __future__ import annotations

from generator.case import Case
from generator.locking.screw_steps import aligned_before_locking, cleaned, locked_and_free, screw_key, slid_off
from generator.say import say
from generator.steps import Figures, Items, Step, Trouble, told


def put_on(case: Case, f: Figures) -> Items:
    """On the shaft, bolted, aligned, then the collar."""
    yield from cleaned(case, told("Turn the collar screw back until it does not stand in the bore."))
    yield from aligned_before_locking(case, f)
    yield Step("collar on", "lock", told("Push the collar against the ring until its recess takes the ring's step."))
    slips = Trouble(say("It does not bind"), told("Stop. Wrong way round, worn step, or shaft under its limit."))
    yield Step(
        "turn collar", "lock", told("Turn the collar {way}, seen from the collar's own side, until it binds.", way=f("collar_turn")),
        told("That is the way the shaft runs."), (slips,), picture="collar",
    )  # fmt: skip
    yield Step(
        "tap collar", "lock", told("Give one firm tap the same way, with a soft drift in the blind hole."),
        takes=("soft drift", "soft hammer", "eye protection"),
    )  # fmt: skip
    yield Step("collar screw", "lock", told("Tighten the collar screw to {torque}.", torque=f("lock_screw")), takes=screw_key(f))
    yield from locked_and_free(case, f, told("Collar bound the way the shaft runs, screw at torque."))


def take_off(case: Case, f: Figures) -> Items:
    """Screw out, collar back against the way it was turned."""
    bound = (
        told("It was bound {way}, seen from the collar's own side.", way=f("collar_turn"))
        if f.has("collar_turn")
        else told("Which way that was is not on the page: the marks on collar and ring say it.")
    )
    yield Step("unlock", "lock", told("Turn the collar screw out until it does not stand in the bore."), takes=("key for the lock",))
    yield Step(
        "collar back", "lock", told("Tap the collar loose, soft drift in the blind hole, against the way it was bound; slide it clear."),
        bound, takes=("soft drift", "soft hammer", "eye protection"), picture="collar",
    )  # fmt: skip
    yield Step("dress", "lock", told("Picture every mark, then dress what lies open between ring and shaft end."), told("A dent under the ring is dressed when the ring is off; it is drawn over slowly."), takes=("fine stone", "eye protection"))  # fmt: skip
    yield from slid_off(case)
