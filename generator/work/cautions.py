"""Which safety message stands where: at the head of a machine, before the step it guards, and on the page of general cautions."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator, Mapping
from dataclasses import replace

from generator.case import Case
from generator.mounting.case_of import stays
from generator.safety import Message, message
from generator.say import say
from generator.steps import Step

# hazards of a machine as its file names them, with the message each has
HAZARDS = {"heavy rotor": "W2", "may turn in the wind": "W10", "hot surface": "W11", "fall from height": "W12", "steam": "W13"}
# what is said of the work itself, whatever the machine
AT_WORK = (
    "W3",
    "W4",
    "W5",
    "W8",
    "W14",
    "W15",
    "W16",
    "W17",
    "W6",
    "W7",
    "D2",
    "C1",
    "C2",
    "C3",
    "C4",
    "N1",
    "N11",
    "N3",
    "N10",
    "N5",
    "N2",
    "N4",
    "N6",
    "N7",
    "N8",
)

Asks = Callable[[Case], bool]


def _always(_: Case) -> bool:
    return True


def _windy(case: Case) -> bool:
    return case.windy


# the message that stands before a step, by what the step does; the first whose condition holds, and never a second
GUARDS: Mapping[str, tuple[tuple[str, Asks], ...]] = {
    "isolate": (("D1", _always),),
    "release": (("W1", _always),),
    "block rotor": (("W10", _always),),
    "vent": (("W13", _always),),
    "drain": (("W13", _always),),
    "let cool": (("W11", _always),),
    "height": (("W12", _always),),
    "as found running": (("D2", _always),),
    "start": (("D2", _always),),
    "look": (("D2", _always),),
    "stand clear": (("W7", _always),),
    "support": (("W2", _always),),
    "raise": (("W2", _always),),
    "into housing": (("C1", lambda case: case.housing == "split"),),
    "clean seat": (("C4", _always),),
    "dress": (("C4", _always),),
    "face": (("W9", lambda case: case.dusty and case.housing != "cartridge"),),
    "bolts ready": (("N11", lambda case: case.stainless_bolts),),
    "carry parts": (("C3", lambda case: case.heavy != "under"),),
    "unpack": (("N6", _always),),
    "oil film": (("N10", lambda case: case.sleeve),),
    "load off": (("W2", _always),),
    "lock nut": (("N3", _always),),
    "shims out": (("C1", _always),),
    "tap collar": (("W5", _always),),
    "collar back": (("W5", _always),),
    "let go": (("W8", _always),),
    "slide off": (("W2", lambda case: case.lies == "vertical"), ("N5", lambda case: not case.sleeve)),
    "clear way": (("W2", _always),),
    "way back": (("W2", _always),),
    "pulls off": (("W2", _always),),
    "rotor free": (("W16", _always),),
    "take load": (("W2", _always),),
    "slide on": (("W2", lambda case: case.lies == "vertical"),),
    "blocks out": (("W16", _always),),
    "tension back": (("W16", _always),),
    "hold unit": (("W2", _always),),
    "set down": (("W2", _always),),
    "part coupling": (("W2", _always),),
    "join coupling": (("C1", _always),),
    "stay off": (("D2", _always),),
    "read before": (("D2", _always),),
    "unit back": (("W2", _always),),
    "base away": (("C1", _always),),
    "shut gas": (("W17", _always),),
    "bolts in loose": (("W2", lambda case: case.housing == "split"),),
    "gear away": (("W2", _always),),
    "turn free": (("W10", _windy),),
    "turn free before": (("W10", _windy),),
    "turn free last": (("W10", _windy),),
        "vibration": (("D2", _always),),
    "nut back": (("W8", _always),),
    "pull": (("W14", _always),),
    "clear the dust": (("W9", _always),),
    "heat": (("W4", _always),),
    "push to shoulder": (("W3", _always),),
    "cap on": (("C1", _always),),
    "cap off": (("C3", _always),),
    "bolts out": (("W15", _always),),
    "bolts final": (("N1", lambda case: case.housing not in ("take-up", "cartridge") and (case.body == "polymer" or case.stainless_bolts)),),
    "right gun": (("N2", _always),),
    "fill by hand": (("N2", _always),),
    "strokes": (("W6", _always),),
    "see it settle": (("D2", _always),),
    "floor": (("C2", _always),),
    "count": (("N9", lambda case: case.food),),
    "count in": (("N9", _always),),
    "run cool": (("D2", _always),),
}  # fmt: skip


def guarding(step: Step, case: Case) -> Step:
    """The step with the one message that must stand before it."""
    for identity, holds in GUARDS.get(step.act, ()):
        if holds(case):
            return replace(step, caution=identity, caution_facts=_facts(identity, case))
    return step


def _facts(identity: str, case: Case) -> tuple[tuple[str, str], ...]:
    """What a message before a step is filled in with."""
    if identity == "D1":
        return ("what", case.moving), ("procedure", case.procedure), ("energies", ", ".join(case.energies))
    return (("energies", ", ".join(case.stored)),) if identity == "W1" else ()


def standing(moving: str, procedure: str, energies: Iterable[str], hazards: Iterable[str], zones: Iterable[str]) -> tuple[Message, ...]:
    """What is said of a machine before anything else: its energies first, then what stands around it."""
    listed, here, around = tuple(energies), set(hazards), tuple(zones)
    return tuple(_standing(moving, procedure, listed, here, around))


def _standing(moving: str, procedure: str, energies: tuple[str, ...], hazards: set[str], zones: tuple[str, ...]) -> Iterator[Message]:
    yield message("D1", what=moving, procedure=procedure, energies=", ".join(energies))
    stored = stays(energies)
    if stored:
        yield message("W1", energies=", ".join(stored))
    yield from (message(identity) for hazard, identity in HAZARDS.items() if hazard in hazards)
    if any("dust" in zone for zone in zones):
        yield message("W9")
    if any("food" in zone for zone in zones):
        yield message("N9")


def at_work() -> tuple[Message, ...]:
    """What is said of the work itself, whatever the machine: mounting, taking off, greasing."""
    return tuple(message(identity) for identity in AT_WORK)


def banner() -> str:
    """What these pages give way to."""
    return say(
        "These pages are this plant's own mounting standard, made from its data, makers' documents and published methods. They give way to the law "
        "where you are, to the site's rules for isolation, lifting, hot work and food, to the maker's instruction, and to the judgement of a licensed "
        "or competent person: where those are stricter, they rule. Where page and machine disagree, or a number looks wrong: stop, make safe, ask the engineer."
    )
