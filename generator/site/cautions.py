"""Safety messages and the banner, in our own words. The four signal words stand here and nowhere else.

The word is chosen by the worst injury that can be believed, never by how much we care about the machine (after ANSI Z535.6 and
ISO 3864-2, from memory): DANGER will kill or maim, WARNING could, CAUTION could hurt less, NOTICE hurts no one and spoils something.
"""

from __future__ import annotations

from collections.abc import Collection, Iterable, Iterator
from dataclasses import dataclass
from typing import Literal

from generator.say import say

Signal = Literal["DANGER", "WARNING", "CAUTION", "NOTICE"]

# words by which an energy as typed is known to stay when the drive is off
STORED = ("tension", "weight", "spring", "hydraulic", "pressure", "product", "running down")


@dataclass(frozen=True)
class Message:
    """A safety message: signal word, what the hazard is, what it does to you, how to avoid it."""

    id: str
    signal: Signal
    hazard: str
    harm: str
    avoid: str


def standing(moving: str, procedure: str, energies: Iterable[str], hazards: Iterable[str], zones: Iterable[str]) -> tuple[Message, ...]:
    """What is said of a machine before anything else: its energies first, then what stands around it."""
    listed = tuple(energies)
    return (_moving(moving, procedure, listed), *_stored(listed), *_hazards(set(hazards)), *_zones(tuple(zones)))


def at_work() -> tuple[Message, ...]:
    """What is said of the work itself, whatever the machine: mounting, taking off, greasing."""
    return (*_heat_and_force(), *_grease(), *_hands_and_back(), *_damage_by_force(), *_damage_by_dirt_and_current())


def banner() -> str:
    """What these pages give way to."""
    return say(
        "These pages are this plant's own mounting standard, made from its data, makers' documents and published methods. They give way to the law "
        "where you are, to the site's rules for isolation, lifting, hot work and food, to the maker's instruction, and to the judgement of a licensed "
        "or competent person: where those are stricter, they rule. Where page and machine disagree, or a number looks wrong: stop, make safe, ask the engineer."
    )


def _moving(moving: str, procedure: str, energies: Collection[str]) -> Message:
    return Message(
        "D1",
        "DANGER",
        say("Moving parts: {what}.", what=moving) if moving else say("Moving parts."),
        say("They take a hand before you can let go."),
        say(
            "Isolate and prove it by {procedure}: {energies}. Lock, block, try to start.", procedure=procedure, energies=", ".join(energies)
        ),
    )


def _stored(energies: Collection[str]) -> Iterator[Message]:
    stored = [energy for energy in energies if any(word in energy.lower() for word in STORED)]
    if stored:
        yield Message(
            "W1",
            "WARNING",
            say("What stays when the drive is off: {energies}.", energies=", ".join(stored)),
            say("It moves on its own and crushes."),
            say("Release it, block it or let it run down first."),
        )


def _hazards(here: Collection[str]) -> Iterator[Message]:
    if "heavy rotor" in here:
        yield Message(
            "W2",
            "WARNING",
            say("A heavy rotor."),
            say("It crushes when a bearing is opened."),
            say("Sling it by the marked points; nothing of you under it."),
        )
    if "may turn in the wind" in here:
        yield Message(
            "W10",
            "WARNING",
            say("The wind may turn it while it is isolated."),
            say("Blades break hands and arms."),
            say("Block the rotor before you reach in."),
        )
    if "hot surface" in here:
        yield Message(
            "W11",
            "WARNING",
            say("Hot surfaces."),
            say("They burn the skin at a touch."),
            say("Let it cool, or wear heat gloves and cover your arms."),
        )
    if "fall from height" in here:
        yield Message(
            "W12",
            "WARNING",
            say("A fall from height."),
            say("It can kill."),
            say("Platform or harness by the site's rules; tools on a line."),
        )
    if "steam" in here:
        yield Message(
            "W13",
            "WARNING",
            say("Steam."),
            say("It scalds before it is seen."),
            say("Shut, lock and vent it; stand clear of drains until they are cold."),
        )


def _zones(zones: Collection[str]) -> Iterator[Message]:
    if any("dust" in zone for zone in zones):
        yield Message(
            "W9",
            "WARNING",
            say("Combustible dust."),
            say("A spark or a hot part sets it off in a flash."),
            say("Collect it first. No heater, grinder or flame without a permit."),
        )
    if any("food" in zone for zone in zones):
        yield Message(
            "N9",
            "NOTICE",
            say("A food zone."),
            say("A wrong grease or a lost part spoils product."),
            say("Only the grease named here; count tools and parts in and out."),
        )


def _heat_and_force() -> Iterator[Message]:
    yield Message(
        "W3",
        "WARNING",
        say("A heated bearing."),
        say("It is hotter than boiling water and burns through a wet glove."),
        say("Dry heat gloves, a clear path, and the seat ready before you lift it."),
    )
    yield Message(
        "W4",
        "WARNING",
        say("The field of an induction heater."),
        say("It can upset a heart device; rings and watches become hot."),
        say("Keep the distance its maker states. Take metal off your hands."),
    )
    yield Message(
        "W5",
        "WARNING",
        say("A steel hammer on bearing steel."),
        say("Chips fly into the eye."),
        say("A soft drift, eye protection, and nobody in line with the blow."),
    )
    yield Message(
        "W8",
        "WARNING",
        say("A sleeve that lets go."),
        say("The bearing jumps off its taper all at once."),
        say("Leave the nut on its thread, turned back by more than the travel. Stand to the side."),
    )


def _grease() -> Iterator[Message]:
    yield Message(
        "W6",
        "WARNING",
        say("Grease under pressure."),
        say("It goes through glove and skin; a pinhole can cost the hand, even if it does not hurt."),
        say("Never a finger on a leak. If it happens: to hospital at once, and say which grease."),
    )
    yield Message(
        "W7",
        "WARNING",
        say("Greasing a machine that runs."),
        say("It catches sleeve, glove or hose and pulls you in."),
        say("Only where the page says running, and the fitting is outside the guard. Else stopped and isolated."),
    )


def _hands_and_back() -> Iterator[Message]:
    yield Message(
        "C1",
        "CAUTION",
        say("Cap and base of a housing."),
        say("They pinch fingers as they close."),
        say("Lift the cap by its eyes; guide it from the side."),
    )
    yield Message(
        "C2",
        "CAUTION",
        say("Oil or grease on the floor."),
        say("You slip with a load in your hands."),
        say("Wipe it up before the next step."),
    )
    yield Message(
        "C3",
        "CAUTION",
        say("A heavy part."),
        say("It strains the back and drops on feet."),
        say("Over what the site lets you lift by hand: lifting gear, and a second person."),
    )


def _damage_by_force() -> Iterator[Message]:
    yield Message(
        "N1",
        "NOTICE",
        say("More torque than the page gives."),
        say("It cracks a foot, strips a thread or galls a bolt."),
        say("Stop at the greatest figure; no power tool on stainless."),
    )
    yield Message(
        "N3",
        "NOTICE",
        say("A lock nut turned back to meet its slot."),
        say("The grip is lost."),
        say("Forward to the next slot within the greatest turn, else from hand tight again."),
    )
    yield Message(
        "N5",
        "NOTICE",
        say("A blow on a ring, a cage or a seal."),
        say("It dents the raceway; the bearing fails early."),
        say("Push or pull only on the ring that is tight."),
    )


def _damage_by_dirt_and_current() -> Iterator[Message]:
    yield Message(
        "N2",
        "NOTICE",
        say("A second grease on top of the first."),
        say("The two may soften and run out."),
        say("One gun, one grease. No proof that they mix: strip and clean."),
    )
    yield Message(
        "N4",
        "NOTICE",
        say("A water jet on a seal."),
        say("Water goes in and grease goes out."),
        say("Wash with low pressure, from a distance, never at the seal."),
    )
    yield Message(
        "N6",
        "NOTICE",
        say("A bearing unpacked too early."),
        say("Dust in it wears it out."),
        say("Leave it wrapped until the shaft is measured and clean."),
    )
    yield Message(
        "N7",
        "NOTICE",
        say("Too much grease in a fast bearing."),
        say("It churns and runs hot."),
        say("Count the strokes; leave the relief plug out until it settles."),
    )
    yield Message(
        "N8",
        "NOTICE",
        say("Welding current through a bearing."),
        say("It burns craters into the raceways."),
        say("Clamp the return lead beside the weld, on the same side of the bearing."),
    )
