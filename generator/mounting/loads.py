"""What acts on a position as far as it is stated: the reaction on the housing, and what pushes along the shaft."""

from __future__ import annotations

from typing import Any

from generator.mounting.bench import Bench
from generator.say import say
from generator.value import Known, LookedUp, Need, Value, Withheld


def stated_reaction(bench: Bench) -> Any | None:
    """The stated reaction at this position, None where none is typed."""
    for load in (bench.shaft.typed.loads or {}).values():
        if str(load.kind) == "stated reaction" and str(load.at) == bench.position.letter:
            return load
    return None


def axial_load(bench: Bench) -> Known:
    """The load along the shaft this position must hold: of its stated reaction, else the thrust loads where it is the fixed unit."""
    reaction = stated_reaction(bench)
    if reaction is not None and reaction.along is not None:
        return reaction.along  # type: ignore[no-any-return]
    thrusts = [load.force for load in (bench.shaft.typed.loads or {}).values() if str(load.kind) == "thrust"]
    if str(bench.position.typed.holds) == "free":
        return Value(0.0, "N", LookedUp(None, say("a free unit holds nothing along the shaft")))
    if thrusts:
        return max(thrusts, key=lambda force: force.content)  # type: ignore[no-any-return]
    return Withheld(
        say("no load along the shaft is stated"),
        (
            Need(
                "entry",
                bench.position.place.file,
                "loads: {a: {kind: stated reaction, at: A, force: 4 kN, toward: 6 o'clock, along: 0.4 kN}}",
            ),
        ),
    )
