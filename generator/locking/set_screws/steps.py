"""Putting on and taking off a ring locked by set screws: bolted down first, locked last."""

from __future__ import annotations

from generator.case import Case
from generator.locking.screw_steps import aligned_before_locking, cleaned, locked_and_free, screw_key, slid_off
from generator.say import say
from generator.steps import Figures, Items, Step, Trouble, told


def put_on(case: Case, f: Figures) -> Items:
    """On the shaft, bolted, aligned, then the screws."""
    yield from cleaned(case, told("Back the set screws out until none stands in the bore."))
    yield from aligned_before_locking(case, f)
    if not case.alone:
        other = Trouble(say("The other unit is not on yet"), told("Any way that is clear of old dents."))
        yield Step("screws in line", "lock", told("Turn the ring on the shaft until its screws face as the other unit's do."), None, (other,))
    key = screw_key(f)
    yield Step(
        "screws half",
        "lock",
        told("Tighten each screw in turn to about half of {torque}.", torque=f("lock_screw")),
        takes=key,
        picture="screws",
    )
    flat = Trouble(say("Screw falls into an old dent"), told("Screws out, turn the ring to sound metal, begin again. No sound metal under it: the engineer."))  # fmt: skip
    yield Step(
        "screws full",
        "lock",
        told("Tighten each screw in turn to {torque}.", torque=f("lock_screw")),
        None,
        (flat,),
        takes=key,
        picture="screws",
    )
    loose = Trouble(say("It still turns"), told("Go round all screws again until none turns. A rounded key or screw: new ones."))
    yield Step(
        "screws again", "lock", told("Go back to the first screw: {torque} once more.", torque=f("lock_screw")), told("It does not turn."),
        (loose,), takes=key, picture="screws",
    )  # fmt: skip
    yield from locked_and_free(case, f, told("Screws at torque on the second round."))


def take_off(case: Case, f: Figures) -> Items:
    """Screws out, burrs off, then the ring."""
    yield Step("unlock", "lock", told("Turn the set screws out until none stands in the bore."), takes=("key for the lock",))
    yield Step("dress", "lock", told("Picture every mark, then dress what lies open between ring and shaft end."), told("A dent under the ring is dressed when the ring is off; it is drawn over slowly."), takes=("fine stone", "eye protection"))  # fmt: skip
    yield from slid_off(case)
