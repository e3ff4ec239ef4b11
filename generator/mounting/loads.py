"""What acts on a position as far as it is stated: the reaction on the housing, and what pushes along the shaft."""

from __future__ import annotations

from typing import Any

from generator.mounting.axial import physically_fixed
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
    """The load along the shaft this position must hold: of its stated reaction, else the one thrust, where it holds the shaft endwise.

    Where more acts than one thrust, or the shaft stands and its weight hangs on it, only a stated reaction says what comes here.
    """
    reaction = stated_reaction(bench)
    if reaction is not None and reaction.along is not None:
        return reaction.along  # type: ignore[no-any-return]
    if not physically_fixed(bench.position):
        return Value(0.0, "N", LookedUp(None, say("a free unit holds nothing along the shaft")))
    thrusts = [load.force for load in (bench.shaft.typed.loads or {}).values() if str(load.kind) == "thrust"]
    if str(bench.shaft.typed.lies) == "horizontal" and len(thrusts) == 1:
        return thrusts[0]  # type: ignore[no-any-return]
    why = say("no load along the shaft is stated") if not thrusts else say("more than one thrust acts along the shaft")
    if str(bench.shaft.typed.lies) != "horizontal":
        why = say("the shaft does not lie level: its weight acts along it")
    example = "loads: {a: {kind: stated reaction, at: A, force: 4 kN, toward: 6 o'clock, along: 0.4 kN}}"
    return Withheld(why, (Need("entry", bench.position.place.file, example),))
