"""What can go wrong along the shaft."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from typing import ClassVar

from generator.findings.facts import number, place_of, said
from generator.mounting.axial import anchor_of, growth, physically_fixed
from generator.mounting.practice import practice
from generator.mounting.rules import ruled_at
from generator.mounting.sheet import MachineSheets, ShaftSheet, Sheet
from generator.plant.plant import Plant
from generator.say import say
from generator.value import Place, Value


@dataclass(frozen=True)
class TwoFixedBearings:
    """Two units that both hold the shaft endwise leave its growth nowhere to go. The bearings then load each other and run hot. It counts what is physically fixed, whatever the file calls it, and compares the growth between them, with margin, with the clearance inside the bearings. A way to float at one of them clears it."""

    LEVEL: ClassVar[str] = "hold"
    HOLDS: ClassVar[tuple[str, ...]] = ("put on", "run")
    at: str
    place: Place
    letters: str
    grows: Value

    def says(self) -> str:
        return say(
            "{letters} both hold the shaft endwise, and it grows {growth} between them.", letters=self.letters, growth=said(self.grows)
        )

    def clears(self) -> str:
        return say("One of them made free, with a way to float and room for the growth.")

    def figure(self) -> tuple[float, str, str]:
        return abs(number(self.grows, "mm")), "mm", "more"


def two_fixed_bearings(plant: Plant, machine: MachineSheets) -> Iterator[TwoFixedBearings]:
    """Shafts with two units fixed in fact, outside take-ups, whose growth is more than the clearance inside."""
    for shaft in machine.shafts:
        fixed = [s for s in shaft.sheets if physically_fixed(s.position)]
        if len(fixed) < 2 or _take_ups(fixed):
            continue
        grows = growth(shaft.shaft, fixed[0].position, fixed[-1].position)
        if isinstance(grows, Value) and abs(number(grows, "mm")) > _slack(fixed):
            yield TwoFixedBearings(
                shaft.id, fixed[-1].position.place, say("{a} and {b}", a=fixed[0].position.letter, b=fixed[-1].position.letter), grows
            )


def _take_ups(sheets: list[Sheet]) -> bool:
    return all(s.position.housing is not None and str(s.position.housing.typed.style) == "take-up" for s in sheets)


def _slack(sheets: list[Sheet]) -> float:
    """The axial clearance inside the bearings as the maker gives it; none where it does not."""
    known = [
        s.position.bearing.typed.clearance.axial
        for s in sheets
        if s.position.bearing and s.position.bearing.typed.clearance and s.position.bearing.typed.clearance.axial
    ]
    return min((number(band.lower, "mm") for band in known), default=0.0)


@dataclass(frozen=True)
class NoFixedBearing:
    """A shaft that nothing holds endwise wanders until a seal, a guard or a coupling stops it. The roles of all its units are counted. One unit made fixed clears it."""

    LEVEL: ClassVar[str] = "hold"
    HOLDS: ClassVar[tuple[str, ...]] = ("put on", "run")
    at: str
    place: Place

    def says(self) -> str:
        return say("No unit of this shaft holds it endwise.")

    def clears(self) -> str:
        return say("One unit made fixed, by the plant's rule at the end it names.")


def no_fixed_bearing(plant: Plant, machine: MachineSheets) -> Iterator[NoFixedBearing]:
    """Shafts of which every unit is free, in fact too."""
    for shaft in machine.shafts:
        if shaft.sheets and not any(physically_fixed(s.position) for s in shaft.sheets):
            yield NoFixedBearing(shaft.id, shaft.shaft.place)


@dataclass(frozen=True)
class FixedOnTheWrongSide:
    """Growth goes away from the fixed unit. Fixed at the wrong end, it goes into a coupling or seal that has less room than it needs. A plant rule that names the end is held too. Fixing the unit at the other end, or more room, clears it."""

    LEVEL: ClassVar[str] = "put right"
    HOLDS: ClassVar[tuple[str, ...]] = ()
    at: str
    place: Place
    why: str
    grows: Value | None = None

    def says(self) -> str:
        return self.why

    def clears(self) -> str:
        return say("The unit at the other end fixed, or more room where the growth goes.")


def fixed_on_the_wrong_side(plant: Plant, machine: MachineSheets) -> Iterator[FixedOnTheWrongSide]:
    """Shafts whose growth, with margin and setting error, is more than a coupling or seal has room; or fixed against a rule."""
    margin, error = practice(plant, "float_margin").content, number(practice(plant, "setting_error"), "mm")
    for shaft in machine.shafts:
        for key, what in (("coupling", say("coupling")), ("seal", say("seal"))):
            room, grows = shaft.lines.get(f"{key}_room"), shaft.lines.get(f"{key}_growth")
            if not room or not grows or not isinstance(room.value, Value) or not isinstance(grows.value, Value):
                continue
            if margin * abs(number(grows.value, "mm")) + (error if key == "seal" else 0.0) > number(room.value, "mm"):
                why = say(
                    "From {letter} the shaft grows {growth} into the {what}, which has {room}.",
                    letter=anchor_of(shaft.shaft).letter,
                    growth=said(grows.value),
                    what=what,
                    room=said(room.value),
                )
                yield FixedOnTheWrongSide(shaft.id, place_of(room.value, shaft.shaft.place), why, grows.value)
        yield from _against_rule(plant, machine, shaft)


def _against_rule(plant: Plant, machine: MachineSheets, shaft: ShaftSheet) -> Iterator[FixedOnTheWrongSide]:
    if len(shaft.sheets) < 2:
        return
    anchor = anchor_of(shaft.shaft)
    sheet = next(s for s in shaft.sheets if s.position is anchor)
    rule = ruled_at(plant, machine.machine, shaft.shaft, sheet, "fixed.at")
    if rule is None or str(rule.content) not in shaft.shaft.ends:
        return
    wanted = shaft.sheets[0] if str(rule.content) == shaft.shaft.ends[0] else shaft.sheets[-1]
    if wanted.position is not anchor:
        why = say("Fixed at {letter}; the plant's rule asks for the unit at the {end}.", letter=anchor.letter, end=rule.content)
        yield FixedOnTheWrongSide(shaft.id, anchor.place, why)


@dataclass(frozen=True)
class GrowthOverFloat:
    """A free unit needs room for the growth that comes to it, with a margin of a quarter and the error of setting it. Less, and the unit jams at the end of its float and both bearings load each other. More float, or less heat difference, clears it."""

    LEVEL: ClassVar[str] = "hold"
    HOLDS: ClassVar[tuple[str, ...]] = ("put on", "run")
    at: str
    place: Place
    grows: Value
    needed: Value
    there: Value

    def says(self) -> str:
        return say(
            "The shaft grows {growth} here and needs {needed} of float; there is {there}.",
            growth=said(self.grows),
            needed=said(self.needed),
            there=said(self.there),
        )

    def clears(self) -> str:
        return say("Float of at least {needed} toward that end.", needed=said(self.needed))

    def figure(self) -> tuple[float, str, str]:
        return number(self.needed, "mm"), "mm", "more"


def growth_over_float(plant: Plant, machine: MachineSheets) -> Iterator[GrowthOverFloat]:
    """Free units whose float is less than needed, hot or at their coldest."""
    for sheet in machine.sheets:
        for key in ("hot", "cold"):
            verdict, needed, grows = sheet.number(f"float_verdict_{key}"), sheet.number(f"float_needed_{key}"), sheet.number("growth_here")
            if verdict is not None and verdict.content == "too little" and needed and grows:
                there = verdict.reason.inputs["there"]
                yield GrowthOverFloat(sheet.id, place_of(there, sheet.position.place), grows, needed, there)
                break


@dataclass(frozen=True)
class TakeUpWithoutFloat:
    """Two take-ups that both lock their shaft leave its growth nowhere to go but sideways into the guides. Room in the guide along the shaft, or a unit free in its housing, clears it."""

    LEVEL: ClassVar[str] = "put right"
    HOLDS: ClassVar[tuple[str, ...]] = ()
    at: str
    place: Place
    grows: Value

    def says(self) -> str:
        return say("Both take-ups hold the shaft endwise, and it grows {growth} between them.", growth=said(self.grows))

    def clears(self) -> str:
        return say("One take-up with room in its guide along the shaft, or a ring free in its housing.")

    def figure(self) -> tuple[float, str, str]:
        return abs(number(self.grows, "mm")), "mm", "more"


def take_up_without_float(plant: Plant, machine: MachineSheets) -> Iterator[TakeUpWithoutFloat]:
    """Shafts on take-ups of which all are fixed in fact, with growth beyond the clearance inside."""
    for shaft in machine.shafts:
        sheets = list(shaft.sheets)
        if len(sheets) < 2 or not _take_ups(sheets) or not all(physically_fixed(s.position) for s in sheets):
            continue
        grows = growth(shaft.shaft, sheets[0].position, sheets[-1].position)
        if isinstance(grows, Value) and abs(number(grows, "mm")) > _slack(sheets):
            yield TakeUpWithoutFloat(shaft.id, sheets[-1].position.place, grows)


@dataclass(frozen=True)
class VerticalWeightOnFree:
    """The weight of an upright shaft must hang on or stand on the unit that holds it endwise. On a unit that is free it drops until something else stops it. The weight on the fixed unit, or that unit made fixed, clears it."""

    LEVEL: ClassVar[str] = "hold"
    HOLDS: ClassVar[tuple[str, ...]] = ("put on", "take off", "run")
    at: str
    place: Place
    letter: str

    def says(self) -> str:
        return say("The weight of the upright shaft is on {letter}, which is called free.", letter=self.letter)

    def clears(self) -> str:
        return say("The weight on the unit that is fixed.")


def vertical_weight_on_free(plant: Plant, machine: MachineSheets) -> Iterator[VerticalWeightOnFree]:
    """Vertical shafts whose weight is on a unit called free."""
    for shaft in machine.shafts:
        on = shaft.shaft.typed.weight_on
        if str(shaft.shaft.typed.lies) != "vertical" or on is None:
            continue
        sheet = next((s for s in shaft.sheets if s.position.letter == str(on)), None)
        if sheet and str(sheet.position.typed.holds) == "free":
            yield VerticalWeightOnFree(shaft.id, place_of(on, sheet.position.place), sheet.position.letter)


@dataclass(frozen=True)
class FreeInNameOnly:
    """A ring locked to its shaft in an ordinary housing is fixed, whatever the file calls it. Free counts only with a way to float: a cartridge, a pin in a grooved shaft, a ring loose in its housing, a guided frame. While it is called free, two fixed bearings go unseen. The way it floats, typed with its room each way, clears it; or the role said as it is."""

    LEVEL: ClassVar[str] = "put right"
    HOLDS: ClassVar[tuple[str, ...]] = ()
    at: str
    place: Place

    def says(self) -> str:
        return say("Called free, but nothing lets it move along the shaft: it holds as a fixed one does.")

    def clears(self) -> str:
        return say("The way it floats, and how far toward each end, in its file; or a unit that can float.")


def free_in_name_only(plant: Plant, machine: MachineSheets) -> Iterator[FreeInNameOnly]:
    """Free units without a way to float."""
    for shaft in machine.shafts:
        for sheet in shaft.sheets:
            if len(shaft.sheets) > 1 and str(sheet.position.typed.holds) == "free" and physically_fixed(sheet.position):
                yield FreeInNameOnly(sheet.id, place_of(sheet.position.typed.holds, sheet.position.place))
