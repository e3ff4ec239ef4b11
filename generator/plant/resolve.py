"""Makes a Plant of the files: every name resolved, `like`, `usual` and `unit` merged, every reading at its position."""

import hashlib
from collections import defaultdict
from collections.abc import Mapping
from datetime import date
from pathlib import Path
from typing import Any

from generator.plant.load import Files, load, shared_digest
from generator.plant.merge import merged_position, nearest
from generator.plant.model.machine import Machine as MachineTyped
from generator.plant.model.machine import Position as PositionTyped
from generator.plant.model.machine import Shaft as ShaftTyped
from generator.plant.names import Names, check_machine, check_plant
from generator.plant.plant import Library, Machine, Named, Plant, Position, Reading, Shaft
from generator.plant.problems import Problem, Problems
from generator.plant.second_language import check_second_language
from generator.records.ledger import read_ledger
from generator.records.read import read_records
from generator.say import say
from generator.units import convert
from generator.value import Place, Value, Withheld


def read_plant(folder: Path, on: date) -> tuple[Plant | None, tuple[Problem, ...]]:
    """The plant as it stands on a day, or None; and every problem of every file. A plant with a problem is no plant."""
    problems = Problems(folder)
    files = load(folder, problems)
    names = Names(files, problems)
    check_plant(files, names)
    if files.second is not None:
        check_second_language(files.second, on, problems)
    tagged = _by_tag(files, problems)
    for machine in tagged.values():
        check_machine(machine, names)
    # while a machine's file can't be taken, which positions there are is not known
    readings = _readings(folder, tagged, problems) if "machines" not in files.broken else {}
    if files.plant is None or problems.found:
        return None, problems.found
    library = Library(**{kind: dict(shelf) for kind, shelf in files.library.items()})
    machines = tuple(_machine(machine, files, library, readings, problems) for machine in tagged.values())
    ledger = read_ledger(folder, problems)
    if problems.found:
        return None, problems.found
    return Plant(str(folder), on, files.plant, library, machines, tuple(files.accepted), ledger, shared_digest(files), files.second), ()


def _by_tag(files: Files, problems: Problems) -> dict[str, Named[MachineTyped]]:
    tagged: dict[str, Named[MachineTyped]] = {}
    for machine in files.machines:
        other = tagged.setdefault(machine.name, machine)
        if other is not machine:
            problems.add(
                machine.place, say("tag {tag} is there twice", tag=machine.name), say("the other is at {place}", place=other.place)
            )
    return tagged


def _readings(folder: Path, tagged: Mapping[str, Named[MachineTyped]], problems: Problems) -> dict[str, list[Reading]]:
    known = frozenset(
        f"{tag}/{letter}" for tag, machine in tagged.items() for shaft in machine.typed.shafts.values() for letter in shaft.positions
    )
    found: dict[str, list[Reading]] = defaultdict(list)
    for path in sorted((folder / "records").glob("*.csv")) if (folder / "records").is_dir() else []:
        for reading in read_records(path, path.relative_to(folder).as_posix(), known, problems):
            found[reading.position].append(reading)
    for readings in found.values():
        readings.sort(key=lambda reading: reading.when)
    return found


def _machine(
    machine: Named[MachineTyped], files: Files, library: Library, readings: Mapping[str, list[Reading]], problems: Problems
) -> Machine:
    assert files.plant is not None
    area = next(area for code, area in files.plant.areas.items() if str(code) == str(machine.typed.area))
    usuals = (machine.typed.usual, area.usual, files.plant.usual)
    siblings = {str(letter): position for shaft in machine.typed.shafts.values() for letter, position in shaft.positions.items()}
    shafts = []
    for key, shaft in machine.typed.shafts.items():
        positions = []
        for letter, own in shaft.positions.items():
            sibling = siblings.get(str(own.like)) if own.like else None
            merged = merged_position(own, sibling, (shaft.usual, *usuals))
            place = getattr(letter, "place", machine.place)
            made = _position(
                machine.name,
                str(letter),
                str(key),
                place,
                merged,
                shaft,
                library,
                tuple(readings.get(f"{machine.name}/{letter}", ())),
                problems,
            )
            if made:
                positions.append(made)
        merged_shaft = shaft.model_copy(update={"steel": _steel(shaft, usuals)})
        positions.sort(key=lambda position: _along(position))
        shafts.append(Shaft(machine.name, str(key), getattr(key, "place", machine.place), merged_shaft, tuple(positions)))
    return Machine(machine.name, machine.place, machine.typed, tuple(shafts), _digest(machine, files, readings))


def _steel(shaft: ShaftTyped, usuals: Any) -> Any:
    return nearest("steel", [shaft.steel, *(usual.steel for usual in (shaft.usual, *usuals) if usual is not None)])


def _along(position: Position) -> float:
    at = position.typed.at
    return convert(at.content, at.unit, "mm") if at is not None else 0.0


def _position(
    tag: str,
    letter: str,
    key: str,
    place: Place,
    typed: PositionTyped,
    shaft: ShaftTyped,
    library: Library,
    readings: tuple[Reading, ...],
    problems: Problems,
) -> Position | None:
    for needed, example in (("at", "at: 250 mm"), ("holds", "holds: fixed")):
        if getattr(typed, needed) is None:
            problems.add(
                place,
                say("{position} does not say `{key}`", position=f"{tag}/{letter}", key=needed),
                say("for example `{example}`", example=example),
            )
            return None
    parts = _parts(typed, library)
    if parts["bearing"] is None:
        problems.add(place, say("{position} has no bearing", position=f"{tag}/{letter}"), say("say `unit:` or `parts: {{bearing: ...}}`"))
        return None
    diameter, hole = _diameter(typed, shaft)
    fitted = typed.fitted
    fitted_unit = library.units.get(str(fitted.unit)) if fitted and fitted.unit else None
    fitted_sleeve = (fitted and fitted.sleeve) or (fitted_unit and fitted_unit.typed.sleeve)
    grease = typed.grease
    return Position(
        tag, letter, key, place, typed, diameter, hole,
        parts["bearing"], parts["sleeve"], parts["housing"], parts["unit"], parts["rings"],
        library.sleeves.get(str(fitted_sleeve)) if fitted_sleeve else None,
        library.greases.get(str(grease.planned)) if grease and grease.planned else None,
        library.greases.get(str(grease.inside)) if grease and grease.inside else None,
        library.tools.get(str(grease.gun)) if grease and grease.gun else None,
        library.fasteners.get(str(typed.bolts.fastener)) if typed.bolts and typed.bolts.fastener else None,
        readings,
    )  # fmt: skip


def _parts(typed: PositionTyped, library: Library) -> dict[str, Any]:
    unit = library.units.get(str(typed.unit)) if typed.unit else None

    def part(name: str, shelf: Mapping[str, Any]) -> Any:
        said = (typed.parts and getattr(typed.parts, name)) or (unit and getattr(unit.typed, name))
        return shelf.get(str(said)) if said else None

    own = typed.parts.rings if typed.parts else None
    of_unit = unit.typed.rings if unit else None
    return {
        "unit": unit,
        "bearing": part("bearing", library.bearings),
        "sleeve": part("sleeve", library.sleeves),
        "housing": part("housing", library.housings),
        # the rings a unit is sold with are used where it is fixed; rings named for this position are there, whatever it is called
        "rings": own or (of_unit if str(typed.holds) == "fixed" else None),
    }


def _diameter(typed: PositionTyped, shaft: ShaftTyped) -> tuple[Value | Withheld, Value | None]:
    assert typed.at is not None
    at = convert(typed.at.content, typed.at.unit, "mm")
    for section in shaft.sections:
        if at <= convert(section.to.content, section.to.unit, "mm") + 1e-6:
            return section.diameter, section.hole
    return Withheld(say("the shaft has no diameter at this place")), None


def _digest(machine: Named[MachineTyped], files: Files, readings: Mapping[str, list[Reading]]) -> str:
    own = [files.digests.get(machine.place.file, "")]
    for shaft in machine.typed.shafts.values():
        for letter in shaft.positions:
            own.extend(repr(reading) for reading in readings.get(f"{machine.name}/{letter}", ()))
    return hashlib.sha256("\n".join(own).encode()).hexdigest()
