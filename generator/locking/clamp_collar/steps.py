"""Putting on and taking off a ring locked by a concentric clamp collar: one screw, one steady pull."""

from __future__ import annotations

from generator.case import Case
from generator.locking.screw_steps import aligned_before_locking, cleaned, locked_and_free, screw_key, slid_off
from generator.say import say
from generator.steps import Figures, Items, Step, Trouble, told


def put_on(case: Case, f: Figures) -> Items:
    """On the shaft, bolted, aligned, then the collar."""
    yield from cleaned(case, told("Slacken the collar until it turns freely on the ring."))
    yield from aligned_before_locking(case, f)
    yield Step("collar on", "lock", told("Push the collar hard against its shoulder on the ring."), told("No gap behind it."))
    yield Step(
        "collar split", "lock", told("Turn the collar until its split stands over the ring's slots as the maker shows."), picture="collar"
    )
    closed = Trouble(say("Split is closed before the torque"), told("Stop. The shaft is under its limit, or the collar is the wrong one."))
    yield Step(
        "clamp screw", "lock", told("Tighten the collar screw in one steady pull to {torque}. Screw dry, as supplied.", torque=f("lock_screw")),
        told("A gap is left in the split."), (closed,), takes=screw_key(f),
    )  # fmt: skip
    yield Step(
        "clamp again", "lock", told("Pull once more to {torque}.", torque=f("lock_screw")), told("It does not turn."), takes=screw_key(f)
    )
    yield from locked_and_free(case, f, told("Collar home, screw at torque, a gap left in the split."))


def take_off(case: Case, f: Figures) -> Items:
    """Screw slack, ring off."""
    yield Step("unlock", "lock", told("Slacken the collar screw and slide the collar away from the ring."), takes=("key for the lock",))
    yield Step("dress", "lock", told("Picture every mark, then dress what lies open between ring and shaft end."), told("A dent under the ring is dressed when the ring is off; it is drawn over slowly."), takes=("fine stone", "eye protection"))
    yield from slid_off(case)
