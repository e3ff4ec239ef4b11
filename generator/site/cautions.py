"""Standing cautions of a machine and the banner, in our own words. The four signal words stand here and nowhere else."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import dataclass

from generator.say import say


@dataclass(frozen=True)
class Message:
    """A safety message: signal word, what the hazard is, what it does to you, how to avoid it."""

    id: str
    signal: str
    hazard: str
    harm: str
    avoid: str


def standing(moving: str, procedure: str, energies: Iterable[str], hazards: Iterable[str], zones: Iterable[str]) -> Iterator[Message]:
    """What is said of a machine before anything else: its energies first, then what stands around it."""
    listed = ", ".join(energies)
    yield Message(
        "D1", "DANGER", say("Moving parts: {what}.", what=moving) if moving else say("Moving parts."), say("They take a hand before you can let go."),
        say("Isolate and prove it by {procedure}: {energies}. Lock, block, try to start.", procedure=procedure, energies=listed),
    )  # fmt: skip
    here = set(hazards)
    if any("dust" in zone for zone in zones):
        yield Message("W9", "WARNING", say("Combustible dust."), say("It burns in a flash."), say("Collect it first. No heater, grinder or flame without a permit."))
    if "hot surface" in here or "steam" in here:
        yield Message("W11", "WARNING", say("Hot surfaces."), say("They burn the skin at a touch."), say("Let it cool or wear heat gloves; keep clear of steam."))
    if "may turn in the wind" in here:
        yield Message("W10", "WARNING", say("The wind may turn it while it is isolated."), say("Blades break hands and arms."), say("Block the rotor before you reach in."))
    if "heavy rotor" in here:
        yield Message("W2", "WARNING", say("A heavy rotor."), say("It crushes when a bearing is opened."), say("Sling it by the marked points; nothing of you under it."))
    if "fall from height" in here:
        yield Message("W12", "WARNING", say("A fall from height."), say("It kills."), say("Platform or harness by the site's rules."))
    if any(zone.startswith("food") for zone in zones):
        yield Message("N9", "NOTICE", say("A food zone."), say("A wrong grease or a lost part spoils product."), say("Only the grease named here; count tools and parts in and out."))


def banner() -> str:
    """What these pages give way to."""
    return say(
        "These pages are this plant's own mounting standard, made from its data, makers' documents and published methods. They give way to the law "
        "where you are, to the site's rules for isolation, lifting, hot work and food, to the maker's instruction, and to the judgement of a licensed "
        "or competent person: where those are stricter, they rule. Where page and machine disagree, or a number looks wrong: stop, make safe, ask the engineer."
    )
