"""What can be wrong with loads: on the bearing, the housing, the shaft."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from typing import ClassVar

from generator.findings.facts import content, number, place_of, said
from generator.mounting.practice import practice
from generator.mounting.sheet import MachineSheets
from generator.plant.plant import Plant
from generator.say import say
from generator.value import Place, Value


@dataclass(frozen=True)
class StaticSafetyTooLow:
    """A bearing that stands or turns slowly under too much load is dented. Its static rating over the greatest load is held against what ISO 76 asks. A larger bearing, or less load, clears it."""

    LEVEL: ClassVar[str] = "hold"
    HOLDS: ClassVar[tuple[str, ...]] = ("put on", "run")
    at: str
    place: Place
    safety: Value
    wanted: Value

    def says(self) -> str:
        return say("Static safety {safety}; {wanted} is wanted.", safety=said(self.safety), wanted=said(self.wanted))

    def clears(self) -> str:
        return say("A larger bearing, or less load: start, shock and jam included.")

    def figure(self) -> tuple[float, str, str]:
        return number(self.safety, ""), "", "less"


def static_safety_too_low(plant: Plant, machine: MachineSheets) -> Iterator[StaticSafetyTooLow]:
    """Bearings under more than their static safety allows."""
    for sheet in machine.sheets:
        safety, wanted = sheet.number("static_safety"), sheet.number("static_safety_wanted")
        if safety and wanted and safety.content < wanted.content - 1e-9:
            yield StaticSafetyTooLow(sheet.id, place_of(safety, sheet.position.place), safety, wanted)


@dataclass(frozen=True)
class LoadOnWeakAxis:
    """A housing carries much toward its base, less to the side, least away from it; a pull on the cap breaks it off. The load on it, in its direction, is held against the maker's rating that way. The base turned to the load, stops or dowels, or a stronger housing clears it."""

    LEVEL: ClassVar[str] = "hold"
    HOLDS: ClassVar[tuple[str, ...]] = ("put on", "run")
    at: str
    place: Place
    load: Value
    may: Value

    def says(self) -> str:
        return say("The housing takes {load}; the way it comes it may carry {may}.", load=said(self.load), may=said(self.may))

    def clears(self) -> str:
        return say("The base turned toward the load, or a housing rated for it.")

    def figure(self) -> tuple[float, str, str]:
        return number(self.load, "N"), "N", "more"


def load_on_weak_axis(plant: Plant, machine: MachineSheets) -> Iterator[LoadOnWeakAxis]:
    """Housings loaded beyond their rating, across in the direction of the load, or along the shaft."""
    for sheet in machine.sheets:
        across = "housing_load" if "housing_load" in sheet.lines else "load"
        for load_key, may_key in ((across, "housing_rating"), ("load_along", "housing_rating_along")):
            load, may = sheet.number(load_key), sheet.number(may_key)
            if load and may and number(load, "N") > number(may, "N") * (1 + 1e-9):
                yield LoadOnWeakAxis(sheet.id, place_of(load, sheet.position.place), load, may)


@dataclass(frozen=True)
class MinimumLoad:
    """A bearing that runs nearly without load slides instead of rolling, and its surfaces smear; a fast and large one soonest. The load at its lightest is held against a share of its rating. A smaller bearing, or more load on it, clears it."""

    LEVEL: ClassVar[str] = "put right"
    HOLDS: ClassVar[tuple[str, ...]] = ()
    at: str
    place: Place
    least: Value

    def says(self) -> str:
        return say("At its lightest it carries less than the {least} it should.", least=said(self.least))

    def clears(self) -> str:
        return say("A smaller bearing here, or more load on it.")


def minimum_load(plant: Plant, machine: MachineSheets) -> Iterator[MinimumLoad]:
    """Bearings that carry too little, where they turn fast enough for it to matter."""
    for shaft in machine.shafts:
        for sheet in shaft.sheets:
            least, speed = sheet.number("least_load"), sheet.number("n_dm")
            fast = speed is None or number(speed, "") > 50_000
            if content(sheet, "least_load_verdict") == "may skid" and least and fast:
                yield MinimumLoad(sheet.id, sheet.position.place, least)


@dataclass(frozen=True)
class LifeTooShort:
    """The life of a bearing at its load, oil and dirt is held against the life the plant asks of it. Cleaner, cooler, thicker oil or a larger bearing clears it; its page says which gives most."""

    LEVEL: ClassVar[str] = "put right"
    HOLDS: ClassVar[tuple[str, ...]] = ()
    at: str
    place: Place
    life: Value
    wanted: Value
    limit: str

    def says(self) -> str:
        return say("It lasts {life}; {wanted} is wanted.", life=said(self.life), wanted=said(self.wanted))

    def clears(self) -> str:
        return say("What limits it is {limit}. See what one step better gives.", limit=self.limit)

    def figure(self) -> tuple[float, str, str]:
        return number(self.life, "hour"), "hour", "less"


def life_too_short(plant: Plant, machine: MachineSheets) -> Iterator[LifeTooShort]:
    """Bearings that do not last as long as the plant asks."""
    for sheet in machine.sheets:
        life, wanted = sheet.number("life"), sheet.number("life_wanted")
        if life and wanted and content(sheet, "life_verdict") == "too short":
            limit = str(content(sheet, "life_limited_by") or say("not known"))
            yield LifeTooShort(sheet.id, place_of(wanted, sheet.position.place), life, wanted, limit)


@dataclass(frozen=True)
class LoadTurnsWithTheRing:
    """Where unbalance is more than weight and pull, the load turns with the shaft: the inner ring feels it at one spot, the outer all round. The usual fits are then the wrong way round, and the outer ring creeps in its housing. Balancing, or fits chosen for it, clears it."""

    LEVEL: ClassVar[str] = "put right"
    HOLDS: ClassVar[tuple[str, ...]] = ()
    at: str
    place: Place
    turning: Value
    steady: Value

    def says(self) -> str:
        return say("{turning} turn with the shaft, {steady} stand still.", turning=said(self.turning), steady=said(self.steady))

    def clears(self) -> str:
        return say("The rotor balanced; or a tight outer ring, by the engineer's decision.")


def load_turns_with_the_ring(plant: Plant, machine: MachineSheets) -> Iterator[LoadTurnsWithTheRing]:
    """Positions whose unbalance is more than the load that stands still."""
    for sheet in machine.sheets:
        turning, steady = sheet.number("load_turning"), sheet.number("load_steady")
        if turning and steady and number(turning, "N") > number(steady, "N"):
            yield LoadTurnsWithTheRing(sheet.id, sheet.position.place, turning, steady)


@dataclass(frozen=True)
class StatedReactionOff:
    """A reaction that someone once stated is kept as a cross-check. Where it lies far off what the loads on file give, one of the two is wrong. The loads put right, or the stated reaction taken out, clears it."""

    LEVEL: ClassVar[str] = "put right"
    HOLDS: ClassVar[tuple[str, ...]] = ()
    at: str
    place: Place
    computed: Value
    stated: Value

    def says(self) -> str:
        return say("Stated {stated}, computed {computed}.", stated=said(self.stated), computed=said(self.computed))

    def clears(self) -> str:
        return say("The loads in the file put right, or the stated reaction.")


def stated_reaction_off(plant: Plant, machine: MachineSheets) -> Iterator[StatedReactionOff]:
    """Stated reactions that differ from the computed ones by more than practice allows."""
    room = practice(plant, "reaction_difference")
    share = room.content / 100 if room.unit == "%" else room.content
    for sheet in machine.sheets:
        for key in ("load", "load_along"):
            line = sheet.lines.get(key)
            # what turns with the shaft is in no statement of a steady reaction
            computed = sheet.number("load_steady") or sheet.number(key) if key == "load" else sheet.number(key)
            if line is None or not line.beside or computed is None or not isinstance(line.beside[0][1], Value):
                continue
            stated = line.beside[0][1]
            one, other = number(computed, "N"), number(stated, "N")
            if abs(one - other) > share * max(one, other):
                yield StatedReactionOff(sheet.id, place_of(stated, sheet.position.place), computed, stated)


@dataclass(frozen=True)
class SlopeOverCapability:
    """A shaft that bends stands askew in its bearing; seals feel it first. Its slope, with what the seat is set wrong, is held against the least that bearing and seals allow. A stiffer shaft, supports nearer the load, or a bearing that swivels clears it."""

    LEVEL: ClassVar[str] = "put right"
    HOLDS: ClassVar[tuple[str, ...]] = ()
    at: str
    place: Place
    angle: Value
    allowed: Value

    def says(self) -> str:
        return say(
            "The shaft stands {angle} askew here; {allowed} is allowed.", angle=said(self.angle, "deg"), allowed=said(self.allowed, "deg")
        )

    def clears(self) -> str:
        return say("A stiffer shaft, supports nearer the load, or a bearing and seal that allow it.")

    def figure(self) -> tuple[float, str, str]:
        return number(self.angle, "deg"), "deg", "more"


def slope_over_capability(plant: Plant, machine: MachineSheets) -> Iterator[SlopeOverCapability]:
    """Bearings in which the shaft's slope passes what is allowed; where the seat alone does already, that is said elsewhere."""
    for sheet in machine.sheets:
        turning, may = sheet.number("slope_turning"), sheet.number("slope_turning_allowed")
        if content(sheet, "slope_turning_verdict") == "over" and turning and may:
            yield SlopeOverCapability(sheet.id, sheet.position.place, turning, may)
            continue
        angle, allowed, seat = sheet.number("slope"), sheet.number("slope_allowed"), sheet.number("seat_angle")
        if content(sheet, "slope_verdict") != "over" or not angle or not allowed:
            continue
        if seat is None or number(seat, "deg") <= number(allowed, "deg"):
            yield SlopeOverCapability(sheet.id, sheet.position.place, angle, allowed)


@dataclass(frozen=True)
class ShaftTooWeak:
    """A turning shaft breaks where its stress, notch counted, comes near what its steel endures. The safety is held against the plant's. A thicker shaft, better steel, or less overhang clears it."""

    LEVEL: ClassVar[str] = "put right"
    HOLDS: ClassVar[tuple[str, ...]] = ()
    at: str
    place: Place
    safety: Value
    wanted: Value

    def says(self) -> str:
        return say("Safety of the shaft {safety}; {wanted} is wanted.", safety=said(self.safety), wanted=said(self.wanted))

    def clears(self) -> str:
        return say("A thicker shaft, stronger steel, or the load nearer its supports.")

    def figure(self) -> tuple[float, str, str]:
        return number(self.safety, ""), "", "less"


def shaft_too_weak(plant: Plant, machine: MachineSheets) -> Iterator[ShaftTooWeak]:
    """Shafts with too little safety against fatigue or yielding."""
    for shaft in machine.shafts:
        for key, wanted in (("fatigue_safety", practice(plant, "fatigue_safety")), ("yield_safety", practice(plant, "yield_safety"))):
            line = shaft.lines.get(key)
            if line is not None and isinstance(line.value, Value) and line.value.content < wanted.content - 1e-9:
                yield ShaftTooWeak(shaft.id, shaft.shaft.place, line.value, wanted)
                break


@dataclass(frozen=True)
class RotorWithoutItsWeight:
    """A rotor typed as an unbalance alone brings no weight onto its shaft. Its weight is a load of its own at the same place. That load typed clears it."""

    LEVEL: ClassVar[str] = "advice"
    HOLDS: ClassVar[tuple[str, ...]] = ()
    at: str
    place: Place
    name: str

    def says(self) -> str:
        return say("The rotor {name} has unbalance but no weight.", name=self.name)

    def clears(self) -> str:
        return say("A load of kind weight at the same place.")


def rotor_without_its_weight(plant: Plant, machine: MachineSheets) -> Iterator[RotorWithoutItsWeight]:
    """Unbalances at a place where nothing weighs."""
    for shaft in machine.shafts:
        loads = shaft.shaft.typed.loads or {}
        heavy = [number(load.at, "mm") for load in loads.values() if str(load.kind) == "weight"]
        for name, load in loads.items():
            if str(load.kind) == "unbalance" and not any(abs(number(load.at, "mm") - at) < 1 for at in heavy):
                yield RotorWithoutItsWeight(shaft.id, getattr(name, "place", shaft.shaft.place), str(name))
