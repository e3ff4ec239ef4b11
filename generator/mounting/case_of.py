"""A position of a plant as a case of work."""

from __future__ import annotations

from collections.abc import Iterable

from generator.case import Case
from generator.housings import style_of
from generator.locking import locking_of
from generator.mounting.axial import anchor_of
from generator.mounting.practice import practice
from generator.mounting.sheet import MachineSheets, ShaftSheet, Sheet
from generator.mounting.sitting import sitting, unweighed
from generator.plant.plant import Named, Plant
from generator.say import say
from generator.units import convert

# loads on the shaft that go on pulling or resting on it while it is isolated
PULLS = ("side force", "belt strands", "belt wrap", "belt drive", "conveyor pulley", "elevator head", "chain")
# words by which an energy as typed is known to stay when the drive is off
STORED = ("tension", "weight", "spring", "hydraulic", "pressure", "product", "running down", "compressed", "accumulator", "charge", " ash ", "pellets", "material")

# and those that are shut off and drained
DRAINED = ("water", "condensate", "brine", "liquor", "liquid")
GASES = ("gas", "hot air")
# and those that heat a machine while it runs
WARMS = ("hot ", "burner", "steam", "thermal", "heat")


def case_of(plant: Plant, machine: MachineSheets, shaft: ShaftSheet, sheet: Sheet) -> Case | None:
    """The case, None where bearing or housing are not known or no way of locking is."""
    position, locking = sheet.position, locking_of(sheet.position)
    if position.bearing is None or position.housing is None or locking is None:
        return None
    return Case(
        way=locking.WAY,
        housing=str(position.housing.typed.style),
        bearing=str(position.bearing.typed.kind),
        **_nut(sheet),
        body=str(position.housing.typed.body.material),
        holds=str(position.typed.holds),
        floats_by=_floats_by(sheet),
        order=sheet.order,
        **_around(plant, machine, sheet),
        **_energies(machine),
        heavy=_heavy(plant, sheet),
        **_grease(sheet),
        stainless_bolts=_stainless(sheet),
        tapped=style_of(position.housing.typed.style).tapped,
        felt="felt" in str(position.housing.typed.seals.kind).lower() if position.housing.typed.seals else False,
        lock_toward=str(position.typed.nut or position.typed.collar or ""),
        unit=_bought(sheet),
        apart=position.unit is None,
        only=len(machine.sheets) == 1,
        **_on_shaft(shaft, sheet),
    )  # type: ignore[arg-type]


def _around(plant: Plant, machine: MachineSheets, sheet: Sheet) -> dict[str, object]:
    around = sheet.position.typed.surroundings
    return {
        "zone": str(around.zone) if around and around.zone else "none",
        "water": str(around.water) if around and around.water else "none",
        "hot": hot(plant, machine, [sheet]),
        "moving": str(machine.machine.typed.moving or ""),
    }


def _energies(machine: MachineSheets) -> dict[str, object]:
    isolation = machine.machine.typed.isolation
    energies = tuple(str(energy) for energy in isolation.energies)
    return {
        "procedure": str(isolation.procedure),
        "energies": energies,
        "stored": stays(energies),
        "hazards": _hazards(machine, energies),
        "warmed": any(word in energy.lower() for word in WARMS for energy in energies),
        "gases": tuple(energy for energy in energies if any(word in energy.lower() for word in GASES)),
        "drained": tuple(energy for energy in energies if any(word in energy.lower() for word in DRAINED)),
    }


def _on_shaft(shaft: ShaftSheet, sheet: Sheet) -> dict[str, object]:
    """How it lies and turns, what else is on it, and what each of it weighs or pulls."""
    things, between = sitting(shaft.shaft), _between(shaft, sheet)
    return {
        "lies": str(shaft.shaft.typed.lies),
        "turns": str(shaft.shaft.typed.turns or ""),
        "ends": shaft.shaft.ends,
        "carrier": _carrier(shaft, sheet),
        "alone": len(shaft.sheets) == 1,
        "others": ", ".join(one.position.letter for one in shaft.sheets if one is not sheet and one.order == "first"),
        "coupled": _coupled(shaft),
        "pulls": tuple(str(name) for name, load in things if str(load.kind) in PULLS),
        "unweighed": tuple(str(name) for name, _ in unweighed(shaft.shaft)),
        "between": between,
        "units_between": tuple(one.position.letter for one in shaft.sheets if say("unit {letter}", letter=one.position.letter) in between),
    }


def _hazards(machine: MachineSheets, energies: Iterable[str]) -> frozenset[str]:
    """As typed; steam that is isolated is steam that is vented."""
    typed = {str(hazard) for hazard in machine.machine.typed.hazards or ()}
    return frozenset(typed | ({"steam"} if any("steam" in energy.lower() for energy in energies) else set()))


def stays(energies: Iterable[str]) -> tuple[str, ...]:
    """Those energies that stay when the drive is off."""
    return tuple(energy for energy in energies if any(word in f" {energy.lower()} " for word in STORED))


def hot(plant: Plant, machine: MachineSheets, sheets: Iterable[Sheet]) -> bool:
    """Whether a surface may burn bare skin: stated, or a bearing or its shaft as warm as that."""
    if any(str(hazard) == "hot surface" for hazard in machine.machine.typed.hazards or ()):
        return True
    limit = practice(plant, "hot_touch").content
    warm = [sheet.number("bearing_temperature") for sheet in sheets]
    shafts = [shaft.shaft.typed.temperature.shaft for shaft in machine.shafts if shaft.shaft.typed.temperature]
    return any(one is not None and convert(one.content, one.unit, "degC") >= limit for one in (*warm, *shafts))


def _nut(sheet: Sheet) -> dict[str, object]:
    position = sheet.position
    if position.sleeve is None:
        return {}
    nut, frame, side = position.sleeve.typed.nut, position.typed.frame, position.typed.nut
    order = sheet.number("flange_order")
    where = "" if frame is None or side is None else "nut side" if str(frame) == str(side) else "opposite the nut"
    words = tuple(" ".join(part.removeprefix(" then").split()) for part in str(order.content).split(",")) if order is not None else ()
    return {
        "works": str(nut.works), "nut_lock": str(nut.lock), "hand": str(position.sleeve.typed.hand), "frame": where, "maker_order": words,
    }  # fmt: skip


def _carrier(shaft: ShaftSheet, sheet: Sheet) -> str:
    """The other unit that an upright shaft hangs on or stands on: as typed, else the one that holds it endwise."""
    if str(shaft.shaft.typed.lies) != "vertical":
        return ""
    on = str(shaft.shaft.typed.weight_on or (shaft.loads.holder if shaft.loads else "") or anchor_of(shaft.shaft).letter)
    return "" if on == sheet.position.letter else on


def _coupled(shaft: ShaftSheet) -> bool:
    typed = shaft.shaft.typed
    return typed.coupling_gap is not None or any(str(load.kind) == "coupling" for load in (typed.loads or {}).values())


def _floats_by(sheet: Sheet) -> str:
    """How it floats: as typed; a ring without locating rings in a wide bore is loose in its housing; a take-up is guided by its frame."""
    typed, housing = sheet.position.typed, sheet.position.housing
    if str(typed.holds) != "free":
        return ""
    if typed.floats is not None:
        return str(typed.floats.by)
    assert housing
    return "guided frame" if housing.typed.guide is not None else ""


def _grease(sheet: Sheet) -> dict[str, object]:
    position = sheet.position
    grease, regrease, fitting = position.typed.grease, position.typed.regrease, position.typed.fitting
    assert position.bearing
    sealing = position.bearing.typed.sealing
    shots = sheet.number("grease_shots")
    return {
        "feed": str(grease.feed) if grease and grease.feed else "gun",
        "purge": str(grease.purge) if grease and grease.purge else "",
        "regrease": str(regrease.when) if regrease else "stopped",
        "fitting": str(fitting.place) if fitting else "",
        "fast": shots is not None and shots.content > 1,
        "sealed": sealing is not None and str(sealing.regreasable) == "no",
    }


def _stainless(sheet: Sheet) -> bool:
    class_ = sheet.number("bolt_class")
    return class_ is not None and str(class_.content).startswith("A")


def _between(shaft: ShaftSheet, sheet: Sheet) -> tuple[str, ...]:
    """What sits between the position and an end of its shaft, on the side that has less of it; () too where the places are not typed."""
    here = sheet.position.typed.at
    if here is None:
        return ()
    own = convert(here.content, here.unit, "mm")
    placed = [(one.position.typed.at, say("unit {letter}", letter=one.position.letter), False) for one in shaft.sheets]
    placed += [(load.at, str(name), str(load.kind) == "side force") for name, load in sitting(shaft.shaft)]
    ways: tuple[dict[str, bool], dict[str, bool]] = ({}, {})
    for at, name, bare in sorted((convert(at.content, at.unit, "mm"), name, bare) for at, name, bare in placed if at is not None):
        if at != own:
            ways[at > own][name] = bare
    # of two ways as long the one of things: a force alone may be no thing at all
    # nor is the unit taken off that carries an upright shaft
    carrier = say("unit {letter}", letter=_carrier(shaft, sheet))
    return tuple(min((way for way in ways if carrier not in way), key=lambda way: (len(way), sum(way.values()))))


def _bought(sheet: Sheet) -> str:
    position = sheet.position
    parts: tuple[Named[object] | None, ...] = (position.unit,) if position.unit else (position.bearing, position.sleeve, position.housing)
    return ", ".join(part.name for part in parts if part is not None)


def _heavy(plant: Plant, sheet: Sheet) -> str:
    limits = [rule.mass for rule in (plant.typed.rules or {}).values() if rule.mass is not None and str(rule.quoted_at or "") == "lifting"]
    mass = sheet.number("unit_mass")
    if not limits or mass is None:
        return "not known"
    least = min(convert(limit.content, limit.unit, "kg") for limit in limits)
    return "over" if mass.content > least else "under"
