"""What is lifted at a position: its unit, and what a jack or sling must carry of the shaft: weights alone, every drive isolated and slack."""

from __future__ import annotations

from collections.abc import Iterator
from typing import Any

from generator.calc.bending import section_weights
from generator.calc.conveying import elevator_head_shaft
from generator.calc.lifting import gravity_support_load, hold_down, lifting_gear, mass_of_weight, stands_many, unit_mass, whole_weight
from generator.calc.shafts import load_along, support_reactions_many, weight_of_mass
from generator.mounting.bench import Bench
from generator.mounting.loads import holder_letter
from generator.mounting.reactions import greatness
from generator.mounting.sheet import Line
from generator.mounting.sitting import unweighed
from generator.plant.plant import Position
from generator.say import mark, say
from generator.show import text
from generator.value import Known, LookedUp, Need, Results, Rows, Value, Withheld

NOTE = mark("Drive isolated, belts and chains slack, counterweights and backstop secured.")
AT_BEARING = mark("the jack taken to stand at the bearing: stand it as near as can be")


def jack_lines(bench: Bench) -> Iterator[Line]:
    """The lines on the jack: its load, its least rating, whether the shaft tips."""
    if bench.loads is None:
        return
    if str(bench.shaft.typed.lies) == "vertical":
        yield from _hanging(bench)
        return
    place = bench.position.typed.jack or _at_bearing(bench.position)
    others = [position for position in bench.shaft.positions if position is not bench.position]
    if len(others) == 1:
        found = gravity_support_load.of(jack=place, other=others[0].typed.at, weights=_weights(bench))
        load, verdict = found.jack, found.verdict
        yield Line("jack_load", "load", say("The jack carries while this bearing is off"), load, note=say(NOTE))
    else:
        still, raised, verdict = _many(bench, place, others)
        # a stiff shaft resists being lifted: the gear is chosen for whichever is more
        load = max((still, raised), key=greatness)
        both = (say("before it is lifted"), still), (say("lifted by {lift}", lift=text(bench.practice("jack_lift"))), raised)
        beside = tuple((name, value) for name, value in both if isinstance(value, Value))
        yield Line("jack_load", "load", say("The jack carries while this bearing is off"), load, beside=beside, note=say(NOTE))
    yield Line("jack_verdict", "load", say("On the jack the shaft"), verdict)
    yield from _rated(bench, load)
    yield from _whole(bench)


def unit_mass_line(bench: Bench) -> Iterator[Line]:
    """What bearing, sleeve and housing weigh together, as they are carried to the machine."""
    parts = [part for part in (bench.position.bearing, bench.position.sleeve, bench.position.housing) if part is not None]
    open_ = [part for part in parts if part.typed.mass is None]
    found: Known
    if open_:
        why = say("the mass of {part} is not on file", part=", ".join(part.name for part in open_))
        found = Withheld(why, tuple(Need("entry", part.place.file, "mass: 4.2 kg") for part in open_))
    else:
        found = unit_mass.of(parts=Rows(tuple(Results(mass=part.typed.mass) for part in parts)))
    yield Line("unit_mass", "load", say("Mass of the unit: bearing, sleeve and housing"), found)


def _whole(bench: Bench) -> Iterator[Line]:
    """The shaft and all on it: what no place of several that carry it can exceed, as long as none of them pulls down."""
    weights = _weights(bench)
    whole = weights if isinstance(weights, Withheld) else whole_weight.of(weights=weights)
    yield from _weighs(bench, whole)


def _weighs(bench: Bench, whole: Known) -> Iterator[Line]:
    note = say("Each place that may come to carry all of it is rated for the whole.")
    yield Line("whole_mass", "load", say("Shaft and all that sits on it"), mass_of_weight.of(force=whole), note=note)
    rating = lifting_gear.of(load=whole, margin=bench.practice("jack_margin"))
    yield Line("whole_rating_mass", "load", say("Least rating of gear for the whole"), mass_of_weight.of(force=rating))


def _rated(bench: Bench, load: Known) -> Iterator[Line]:
    """What the gear must be rated for; and both as masses, as gear is marked."""
    if isinstance(load, Value) and load.content < 0:
        held = hold_down.of(load=load, margin=bench.practice("jack_margin"))
        yield Line("hold_mass", "load", say("It is held down by as much as weighs"), mass_of_weight.of(force=held.pull))
        yield Line("hold_rating_mass", "load", say("Least rating of what holds it down"), mass_of_weight.of(force=held.rating))
    rating = lifting_gear.of(load=load, margin=bench.practice("jack_margin"))
    yield Line("jack_rating", "load", say("Least rating of jack or sling"), rating)
    yield Line("jack_mass", "load", say("The same load as a mass"), mass_of_weight.of(force=load))
    yield Line("jack_rating_mass", "load", say("Rating as a mass"), mass_of_weight.of(force=rating))


def _at_bearing(position: Position) -> Value:
    assert position.typed.at is not None
    return position.typed.at.remark(say(AT_BEARING))


def _weights(bench: Bench) -> Rows | Withheld:
    """All that weighs, downward: the shaft in its lengths, what sits on it, and bearing and housing where they hang on it.

    Whole, on a slope too: the jack carries upright, and slope shortens all arms alike.
    """
    assert bench.loads
    lengths = section_weights.of(sections=bench.loads.steel.sections, density=bench.loads.steel.density)
    if isinstance(lengths, Withheld):
        return lengths
    rows = [Results(at=row.at, force=row.force) for row in lengths]
    return Rows((*rows, *_sitting(bench)))


def _sitting(bench: Bench) -> list[Results]:
    """What sits on the shaft, and bearing, sleeve and housing that hang on it while it is open."""
    typed = (load for load in (bench.shaft.typed.loads or {}).values() if str(load.kind) == "weight")
    rows = [Results(at=load.at, force=weight_of_mass.of(mass=load.mass)) for load in typed]
    rows += [Results(at=load.at, force=_hanging_belt(load)) for load in (bench.shaft.typed.loads or {}).values() if str(load.kind) == "elevator head"]
    for name, load in unweighed(bench.shaft):
        why = say("no mass of {what} is typed, and none is counted", what=name)
        rows.append(Results(at=load.at, force=Value(0.0, "N", LookedUp(None, why), (why,))))
    at, parts = bench.position.typed.at, (bench.position.bearing, bench.position.sleeve, bench.position.housing)
    for part in parts:
        if part is not None and part.typed.mass is not None:
            rows.append(Results(at=at, force=weight_of_mass.of(mass=part.typed.mass)))
        elif part is not None and at is not None:
            why = say("the mass of {part} is not on file and not counted", part=part.name)
            rows.append(Results(at=at, force=Value(0.0, "N", LookedUp(None, why), (why,))))
    return rows


def _hanging_belt(load: Any) -> Known:
    """Belt and empty buckets of both strands, which hang on the head however slack the boot is."""
    nothing = LookedUp(None, say("empty, and the boot released"))
    still = {"carries": Value(0.0, "t/h", nothing), "boot": Value(0.0, "N", nothing), "digging": Value(0.0, "m", nothing)}
    found: Known = elevator_head_shaft.of(lift=load.lift, belt_speed=load.belt_speed, strand=load.belt, **still).load
    return found


def _many(bench: Bench, place: Value, others: list[Position]) -> tuple[Known, Known, Known]:
    """On more than two supports: the shaft's own stiffness shares the weight; lifting it costs more."""
    loads = bench.loads
    assert loads
    back = Value(-1.0, "", LookedUp(None, say("weights act downward")))
    rows = [Results(at=row.at, force=weight_down(row.force)) for row in _sitting(bench)]
    standing = [row for position, row in zip(bench.shaft.positions, loads.supports, strict=True) if position in others]
    found = []
    for lift in (None, bench.practice("jack_lift")):
        jack = Results(at=place) if lift is None else Results(at=place, settlement=lift)
        supports = Rows((jack, *standing))
        carried = support_reactions_many.of(
            sections=loads.steel.sections,
            supports=supports,
            loads=Rows(tuple(rows)),
            modulus=loads.steel.modulus,
            density=loads.steel.density,
            weight_share=back,
        )
        found.append(stands_many.of(carried=carried))
    verdict = found[1].verdict if isinstance(found[1].verdict, Value) and found[1].verdict.content != "stands" else found[0].verdict
    return found[0].jack, found[1].jack, verdict


def weight_down(force: Known) -> Known:
    """A weight, counted negative: downward."""
    return Value(-force.content, force.unit, force.reason, force.remarks) if isinstance(force, Value) else force


def _hanging(bench: Bench) -> Iterator[Line]:
    """An upright shaft: where it hangs on this unit, the sling carries all of it."""
    on = bench.shaft.typed.weight_on
    carries = str(on) == bench.position.letter if on is not None else holder_letter(bench) == bench.position.letter
    assert bench.loads
    rows = [Results(force=act.along) for act in bench.loads.acts if act.nature == "weight" and act.along is not None and not act.load]
    load = load_along.of(pushes=Rows((*rows, *(Results(force=row.force) for row in _sitting(bench)))))
    if not carries:
        # the other unit carries it; what catches the shaft if that lets go takes all of it
        yield from _weighs(bench, load)
        return
    yield Line("jack_load", "load", say("The sling carries while this unit is off"), load, note=say(NOTE))
    yield from _rated(bench, load)
