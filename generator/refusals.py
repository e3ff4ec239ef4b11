"""Why there are no steps for a case, in words for the crew."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass

from generator.case import Case
from generator.say import say


@dataclass(frozen=True)
class Refusal:
    """`text` says it; `off`: whether there are no steps for taking off either."""

    text: Callable[[], str]
    off: bool = False


REFUSALS = {
    "insert in a split housing": Refusal(lambda: say("No steps: a ball insert swivels in an undivided housing, and this one is split. The file is wrong, or the parts are."), True),
    "clearance behind a closed housing": Refusal(lambda: say("No steps: the clearance of this bearing is read with a blade while it is driven up, and this housing does not open. Its maker's instruction is needed.")),
    "heated into a closed housing": Refusal(lambda: say("No steps: a heated bearing is pressed on in the open, and this housing does not open. Its maker's instruction is needed.")),
    "take-up under an upright shaft": Refusal(lambda: say("No steps: a take-up slides, and cannot hold an upright shaft."), True),
    "eccentric on a shaft that turns both ways": Refusal(lambda: say("No steps: an eccentric collar lets go when the shaft turns the other way. Another way of locking is needed.")),
    "cartridge in a guided frame": Refusal(lambda: say("No steps: this unit is said to float with its frame, and its cartridge slides already. Say which of the two it is.")),
    "sliding cartridge that is none": Refusal(lambda: say("No steps: this unit is said to float in a sliding cartridge, and its housing is none.")),
    "insert loose in its housing": Refusal(lambda: say("No steps: a ball insert sits in the sphere of its housing and cannot float there.")),
    "pin under a lock that clamps": Refusal(lambda: say("No steps: this unit is said to float on a pin in a grooved shaft, and its lock clamps the ring to that shaft. Say which of the two it is; for a ring that slides on its shaft the maker's instruction is needed.")),
    "second flange without the maker's order": Refusal(lambda: say("No steps: gap and order of the second flange on a shaft are its maker's to say, and no document on file says them.")),
    "second flange in an order not known here": Refusal(lambda: say("No steps: the maker's order for the second flange is not one that these steps can follow. The engineer writes it out.")),
    "second flange, frame side not said": Refusal(lambda: say("No steps: the file does not say on which side of this flange its frame stands.")),
    "second flange that does not close its gap": Refusal(lambda: say("No steps: this nut drives away from the frame, so the gap does not close. The maker's instruction for this case is needed.")),
}  # fmt: skip


def no_greasing(case: Case) -> str:
    """Why it is not greased as the file says, "" where it can be."""
    if case.regrease == "running" and case.fitting == "inside the guard" and case.feed == "gun" and not case.sealed:
        return say(
            "No steps: it is marked to be greased running, and its fitting is inside the guard. Stop and isolate, or pipe the fitting out."
        )
    if case.fitting == "none" and case.feed == "gun" and not case.sealed:
        return say("No steps: it is marked to be greased by a gun and has no fitting.")
    return ""


def no_parts() -> str:
    """The parts that decide the steps are not on file."""
    return say("No steps: bearing, housing or way of locking are not on file.")
