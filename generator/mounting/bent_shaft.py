"""The lines of a shaft under its loads: how far it bends, and what its steel bears."""

from __future__ import annotations

from collections.abc import Iterator

from generator.calc.bending import greatest_deflection, worst_section
from generator.calc.lifting import endurance_limit, fatigue_safety, greatest_torque, shaft_stress, yield_safety
from generator.mounting.practice import practice
from generator.mounting.reactions import ShaftLoads
from generator.mounting.sheet import Line
from generator.plant.plant import Plant, Shaft
from generator.say import say
from generator.value import Known, Need, Results, Rows, Value, Withheld


def bent_shaft_lines(plant: Plant, shaft: Shaft, loads: ShaftLoads | None) -> Iterator[Line]:
    """Deflection and stress in the state in which the supports carry most."""
    if loads is None:
        return
    yield from _acting(loads)
    yield from _reactions(loads)
    line = loads.line(loads.heaviest())
    deepest = greatest_deflection.of(line=line)
    yield Line("deflection", "load", say("The shaft bends by"), deepest.deflection)
    yield Line("deflection_at", "load", say("at, from the face of the first end"), deepest.at)
    worst = worst_section.of(line=line, sections=loads.steel.sections)
    yield Line("moment", "load", say("Bending moment where it bears most"), worst.moment)
    yield Line("moment_at", "load", say("that is at"), worst.at)
    torque = greatest_torque.of(torques=_torques(loads))
    yield Line("torque", "load", say("Torque in the shaft"), torque)
    stress = shaft_stress.of(
        moment=worst.moment,
        torque=torque,
        diameter=worst.diameter,
        hole=worst.hole,
        bending_notch=shaft.typed.notch.bending if shaft.typed.notch else practice(plant, "seat_notch"),
        torsion_notch=shaft.typed.notch.torsion if shaft.typed.notch else practice(plant, "seat_notch_torsion"),
    )
    yield Line("stress", "load", say("Stress in its steel, bending and torsion"), stress.combined)
    yield from _safety(plant, shaft, stress, worst.diameter)


def _acting(loads: ShaftLoads) -> Iterator[Line]:
    """What acts on the shaft, each with its size and direction."""
    for number, act in enumerate(loads.acts, 1):
        if act.across is not None:
            beside = ((say("toward, clockwise from 12"), act.toward),) if act.toward is not None else ()
            yield Line(f"act_{number}", "load", say("Acts: {name}", name=act.name), act.across, beside=beside)
        if act.along is not None:
            yield Line(f"act_{number}_along", "load", say("Acts along: {name}", name=act.name), act.along)


def _reactions(loads: ShaftLoads) -> Iterator[Line]:
    """What each support carries, in each state."""
    for number, state in enumerate(loads.states, 1):
        for letter, here in state.at.items():
            name = (
                say("On {letter}, {state}", letter=letter, state=state.name) if len(loads.states) > 1 else say("On {letter}", letter=letter)
            )
            beside = ((say("toward, clockwise from 12"), here.direction),)
            yield Line(f"on_{letter}_{number}", "load", name, here.load, beside=beside)


def _torques(loads: ShaftLoads) -> Rows:
    """Of every drive in every state: a slow state or a start may twist more than the one that bends most."""
    return Rows(tuple(Results(torque=act.torque) for state in loads.states for act in state.acts if act.torque is not None))


def _safety(plant: Plant, shaft: Shaft, stress: Results, diameter: Known) -> Iterator[Line]:
    steel = shaft.typed.steel
    missing = Withheld(
        say("the strength of the shaft's steel is not typed"), (Need("entry", shaft.place.file, "steel: {rm: 600 MPa, re: 340 MPa}"),)
    )
    tensile: Known = steel.rm if steel is not None and steel.rm is not None else missing
    endurance = endurance_limit.of(tensile=tensile, diameter=diameter, reliability=practice(plant, "endurance_reliability"))
    safety = fatigue_safety.of(bending=stress.bending, torsion=stress.torsion, endurance=endurance, tensile=tensile)
    yield Line("fatigue_safety", "load", say("Safety against fatigue"), safety)
    yield Line("fatigue_wanted", "load", say("Safety wanted"), practice(plant, "fatigue_safety"))
    if steel is not None and isinstance(steel.re, Value):
        yield Line("yield_safety", "load", say("Safety against yielding"), yield_safety.of(stress=stress.combined, strength=steel.re))
