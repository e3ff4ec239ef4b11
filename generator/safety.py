"""Every safety message, in our own words, by an id that stays. The four signal words stand here and nowhere else.

The word is chosen by the worst injury that can be believed, never by how much we care about the machine (after ANSI Z535.6 and
ISO 3864-2, from memory): DANGER will kill or maim, WARNING could, CAUTION could hurt less, NOTICE hurts no one and spoils something.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Literal

from generator.say import mark, say, second_says

Signal = Literal["DANGER", "WARNING", "CAUTION", "NOTICE"]
SIGNALS: Mapping[str, Signal] = {"D": "DANGER", "W": "WARNING", "C": "CAUTION", "N": "NOTICE"}


@dataclass(frozen=True)
class Message:
    """A safety message: signal word, what the hazard is, what it does to you, how to avoid it."""

    id: str
    signal: Signal
    hazard: str
    harm: str
    avoid: str
    second: str = ""  # the whole of it in the second language


# id: hazard, what it does, how to avoid it; the letter of the id is that of its signal word
_TAKES = mark("They take a hand before you can let go.")
_ISOLATE = mark("Isolate and prove it by {procedure}: {energies}. Lock, block, try to start.")
NOT_NAMED = "D3"  # what D1 says where the machine's file does not name what moves
TEXTS: Mapping[str, tuple[str, str, str]] = {
    "D1": (mark("Moving parts: {what}."), _TAKES, _ISOLATE),
    "D2": (
        mark("The machine runs."), mark("It takes hand, sleeve or hair and does not let go."),
        mark("Stay outside the guard. Nothing loose, no hand, rod or meter through an opening."),
    ),
    NOT_NAMED: (mark("Moving parts."), _TAKES, _ISOLATE),
    "W1": (mark("What stays when the drive is off: {energies}."), mark("It moves on its own and crushes."), mark("Release it, block it or let it run down first.")),
    "W2": (mark("A hanging load."), mark("It crushes when it slips or when a bearing is opened."), mark("Sling it by the marked points; nothing of you under it.")),
    "W3": (
        mark("A heated bearing."), mark("It is hotter than boiling water and burns through a wet glove."),
        mark("Dry heat gloves, a clear path, and the seat ready before you lift it."),
    ),
    "W4": (
        mark("The field of an induction heater."), mark("It can upset a heart device; rings and watches become hot."),
        mark("Keep the distance its maker states. Take metal off your hands."),
    ),
    "W5": (
        mark("A steel hammer on bearing steel."), mark("Chips fly into the eye."),
        mark("A soft drift, eye protection, and nobody in line with the blow."),
    ),
    "W6": (
        mark("Grease under pressure."), mark("It goes through glove and skin; a pinhole can cost the hand, even if it does not hurt."),
        mark("Never a finger on a leak. If it happens: to hospital at once, and say which grease."),
    ),
    "W7": (
        mark("Greasing a machine that runs."), mark("It catches sleeve, glove or hose and pulls you in."),
        mark("Only where the page says running, and the fitting is outside the guard. Else stopped and isolated."),
    ),
    "W8": (
        mark("A sleeve that lets go."), mark("The bearing jumps off its taper all at once."),
        mark("Leave the nut on its thread, turned back by more than the travel. Stand to the side."),
    ),
    "W9": (
        mark("Combustible dust."), mark("A spark or a hot part sets it off in a flash."),
        mark("Collect it first. No heater, grinder or flame without a permit."),
    ),
    "W10": (mark("The wind may turn it while it is isolated."), mark("Blades break hands and arms."), mark("Block the rotor before you reach in.")),
    "W11": (mark("Hot surfaces."), mark("They burn the skin at a touch."), mark("Let it cool, or wear heat gloves and cover your arms.")),
    "W12": (mark("A fall from height."), mark("It can kill."), mark("Platform or harness by the site's rules; tools on a line.")),
    "W13": (mark("Steam, hot water."), mark("It scalds before it is seen."), mark("Shut, lock, vent and drain it; stand clear of drains until they are cold.")),
    "W14": (mark("A puller under load."), mark("When the ring lets go, parts fly."), mark("Eye protection, a cover over it, nobody in line.")),
    "W15": (
        mark("A shaft whose bearing is opened."), mark("It drops or rolls and crushes."),
        mark("See that it is held before the first bolt is slackened."),
    ),
    "W16": (
        mark("What a block held."), mark("It moves when the block comes out, and crushes."), mark("Everyone clear; take the block out from the side, by a tool or a line."),
    ),
    "W17": (
        mark("Gas, hot air."), mark("It burns, explodes or takes the breath away."), mark("Shut, lock and vent it; no flame near, and test the air where the site asks for it."),
    ),
    "C1": (mark("A gap that closes."), mark("It pinches fingers."), mark("Lift by the eyes, guide from the side, take shims out by their tails.")),
    "C2": (mark("Oil or grease on the floor."), mark("You slip with a load in your hands."), mark("Wipe it up before the next step.")),
    "C3": (
        mark("A heavy part."), mark("It strains the back and drops on feet."),
        mark("Over what the site lets you lift by hand: lifting gear, and a second person."),
    ),
    "C4": (mark("Sharp edges and burrs."), mark("They cut."), mark("Gloves on, and a stone or scraper pushed away from you.")),
    "N1": (
        mark("More torque than the page gives."), mark("It cracks a foot, strips a thread or galls a bolt."),
        mark("Stop at the greatest figure; no power tool on stainless."),
    ),
    "N2": (mark("A second grease on top of the first."), mark("The two may soften and run out."), mark("One gun, one grease. No proof that they mix: strip and clean.")),
    "N3": (
        mark("A lock nut turned back to meet its slot."), mark("The grip is lost."),
        mark("Forward to the next slot within the greatest turn, else from hand tight again."),
    ),
    "N4": (mark("A water jet on a seal."), mark("Water goes in and grease goes out."), mark("Wash with low pressure, from a distance, never at the seal.")),
    "N5": (mark("A blow on a ring, a cage or a seal."), mark("It dents the raceway; the bearing fails early."), mark("Push or pull only on the ring that is tight.")),
    "N6": (mark("A bearing unpacked too early."), mark("Dust in it wears it out."), mark("Leave it wrapped until the shaft is measured and clean.")),
    "N7": (mark("Too much grease in a fast bearing."), mark("It churns and runs hot."), mark("Count the strokes; never the whole amount at once.")),
    "N8": (
        mark("Welding current through a bearing."), mark("It burns craters into the raceways."),
        mark("Clamp the return lead beside the weld, on the same side of the bearing."),
    ),
    "N9": (mark("A food zone."), mark("A wrong grease or a lost part spoils product."), mark("Only the grease named here; count tools and parts in and out.")),
    "N10": (mark("Grease or paste on the taper."), mark("It changes the grip and makes the turn wrong."), mark("Light oil only, a thin film.")),
    "N11": (mark("Stainless threads run dry."), mark("They gall and seize at half the torque."), mark("Paste on thread and head face, turned slowly by hand.")),
}  # fmt: skip


def sources() -> tuple[str, ...]:
    """The ids of all messages."""
    return tuple(TEXTS)


def source_of(identity: str) -> str:
    """The whole text of a message as it is said here, its facts still open: what a translation is made from."""
    return " ".join(TEXTS[identity])


def message(identity: str, **facts: str) -> Message:
    """The message of an id, its facts filled in. Raises KeyError for an id there is not, or a fact that is missing."""
    text = NOT_NAMED if identity == "D1" and not facts.get("what") else identity
    hazard, harm, avoid = TEXTS[text]
    return Message(
        identity,
        SIGNALS[identity[0]],
        say(hazard, **facts),
        say(harm, **facts),
        say(avoid, **facts),
        second_says("messages", text, **facts),
    )
