"""What can be wrong with a shaft under a bearing."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from typing import ClassVar

from generator.findings.facts import content, number, place_of, said
from generator.mounting.bench import Bench
from generator.mounting.practice import practice
from generator.mounting.rules import ruled_at
from generator.mounting.seat import class_inside
from generator.mounting.sheet import MachineSheets, Sheet
from generator.plant.plant import Plant
from generator.say import say
from generator.value import Instructed, Place, Value


@dataclass(frozen=True)
class ShaftBelowLimit:
    """A shaft under its lower limit lets the ring creep, frets, and eats part of a nut's turn before anything grips. The smallest of the nine readings is held against the lower limit. A shaft inside its limits, measured, clears it."""

    LEVEL: ClassVar[str] = "hold"
    HOLDS: ClassVar[tuple[str, ...]] = ("put on",)
    at: str
    place: Place
    smallest: Value
    limit: Value

    def says(self) -> str:
        return say(
            "The smallest reading is {smallest}; the lower limit is {limit}.",
            smallest=said(self.smallest, "mm"),
            limit=said(self.limit, "mm"),
        )

    def clears(self) -> str:
        return say("A shaft whose nine readings lie inside the limits.")

    def figure(self) -> tuple[float, str, str]:
        return number(self.smallest, "mm"), "mm", "less"


def shaft_below_limit(plant: Plant, machine: MachineSheets) -> Iterator[ShaftBelowLimit]:
    """Seats with a reading under the lower limit."""
    for sheet in machine.sheets:
        limits, smallest = sheet.band("shaft_limits"), sheet.number("seat_smallest")
        if limits and smallest and content(sheet, "seat_verdict") == "below the limit":
            yield ShaftBelowLimit(sheet.id, _read_at(sheet), smallest, limits.lower)


@dataclass(frozen=True)
class ShaftAboveLimit:
    """A shaft over its upper limit does not take the ring without force, or presses it tighter than its clearance allows. A shaft inside its limits clears it."""

    LEVEL: ClassVar[str] = "hold"
    HOLDS: ClassVar[tuple[str, ...]] = ("put on",)
    at: str
    place: Place
    largest: Value
    limit: Value

    def says(self) -> str:
        return say(
            "The largest reading is {largest}; the upper limit is {limit}.", largest=said(self.largest, "mm"), limit=said(self.limit, "mm")
        )

    def clears(self) -> str:
        return say("A shaft whose nine readings lie inside the limits.")


def shaft_above_limit(plant: Plant, machine: MachineSheets) -> Iterator[ShaftAboveLimit]:
    """Seats with a reading over the upper limit."""
    for sheet in machine.sheets:
        limits, largest = sheet.band("shaft_limits"), sheet.number("seat_largest")
        if limits and largest and content(sheet, "seat_verdict") == "above the limit":
            yield ShaftAboveLimit(sheet.id, _read_at(sheet), largest, limits.upper)


@dataclass(frozen=True)
class ShaftForm:
    """A seat can lie inside its limits and still be tapered or out of round. The ring then grips in one place and frets in another. The spread of the readings is held against twice the cylindricity. A seat turned or ground true clears it."""

    LEVEL: ClassVar[str] = "put right"
    HOLDS: ClassVar[tuple[str, ...]] = ()
    at: str
    place: Place
    spread: Value
    allowed: Value

    def says(self) -> str:
        return say(
            "Size is inside, form is not: the readings differ by {spread}, {allowed} are accepted.",
            spread=said(self.spread),
            allowed=said(self.allowed),
        )

    def clears(self) -> str:
        return say("A seat whose readings differ by no more than {allowed}.", allowed=said(self.allowed))

    def figure(self) -> tuple[float, str, str]:
        return number(self.spread, "um"), "um", "more"


def shaft_form(plant: Plant, machine: MachineSheets) -> Iterator[ShaftForm]:
    """Seats inside their limits, outside their form."""
    for sheet in machine.sheets:
        spread, allowed = sheet.number("seat_taper_found"), sheet.number("out_of_round")
        if spread and allowed and content(sheet, "seat_verdict") == "size inside, form outside":
            yield ShaftForm(sheet.id, _read_at(sheet), spread, allowed)


@dataclass(frozen=True)
class InchMetricNearMiss:
    """Sizes of the two systems lie close enough to slide onto each other and too far to hold: 60 mm and 2 3/8 in are 0.325 mm apart. The bore that is meant or really there is held against the shaft. The right sleeve or ring clears it."""

    LEVEL: ClassVar[str] = "hold"
    HOLDS: ClassVar[tuple[str, ...]] = ("put on", "run")
    at: str
    place: Place
    shaft: Value
    bore: Value
    part: str

    def says(self) -> str:
        return say(
            "{part} is for {bore}, the shaft is {shaft}: {loose} mm apart.",
            part=self.part,
            bore=said(self.bore),
            shaft=said(self.shaft),
            loose=f"{abs(number(self.bore, 'mm') - number(self.shaft, 'mm')):.3f}",
        )

    def clears(self) -> str:
        return say("A part for this shaft's own size.")


def inch_metric_near_miss(plant: Plant, machine: MachineSheets) -> Iterator[InchMetricNearMiss]:
    """Parts whose bore differs from the shaft by less than the plant's near miss, but not by nothing."""
    near = number(practice(plant, "near_miss"), "mm")
    for sheet in machine.sheets:
        position = sheet.position
        if not isinstance(position.diameter, Value):
            continue
        bores: list[tuple[str, Value]] = [(s.name, s.typed.shaft) for s in (position.sleeve, position.fitted_sleeve) if s is not None]
        if position.sleeve is None and position.bearing is not None and str(position.bearing.typed.bore.shape) == "cylinder":
            bores.append((position.bearing.name, position.bearing.typed.bore.size))
        for part, bore in bores:
            apart = abs(number(bore, "mm") - number(position.diameter, "mm"))
            if 0.001 < apart < near:
                yield InchMetricNearMiss(sheet.id, _part_place(sheet, part), position.diameter, bore, part)


def _part_place(sheet: Sheet, part: str) -> Place:
    fitted = sheet.position.typed.fitted
    word = fitted.sleeve if fitted and fitted.sleeve is not None and str(fitted.sleeve) == part else None
    return place_of(word, sheet.position.place)


@dataclass(frozen=True)
class WrongBore:
    """The bore of a part is not the size of the shaft it is meant for, by more than a near miss. Probably the wrong designation was typed. The part for this shaft clears it."""

    LEVEL: ClassVar[str] = "hold"
    HOLDS: ClassVar[tuple[str, ...]] = ("put on",)
    at: str
    place: Place
    shaft: Value
    bore: Value
    part: str

    def says(self) -> str:
        return say("{part} is for {bore}, the shaft is {shaft}.", part=self.part, bore=said(self.bore), shaft=said(self.shaft))

    def clears(self) -> str:
        return say("The designation of the part for this shaft, or the shaft's size as it is.")


def wrong_bore(plant: Plant, machine: MachineSheets) -> Iterator[WrongBore]:
    """Parts whose bore is another size altogether."""
    near = number(practice(plant, "near_miss"), "mm")
    for sheet in machine.sheets:
        position = sheet.position
        if not isinstance(position.diameter, Value) or position.bearing is None:
            continue
        part, bore = (
            (position.sleeve.name, position.sleeve.typed.shaft)
            if position.sleeve
            else (position.bearing.name, position.bearing.typed.bore.size)
        )
        if abs(number(bore, "mm") - number(position.diameter, "mm")) >= near:
            yield WrongBore(sheet.id, place_of(position.diameter, position.place), position.diameter, bore, part)


@dataclass(frozen=True)
class MeasuredWhenWarm:
    """A warm shaft reads large: 60 mm grow by 0.7 thousandths for each kelvin. The reading is corrected for the verdict and shown raw. A reading at 20 °C clears it."""

    LEVEL: ClassVar[str] = "advice"
    HOLDS: ClassVar[tuple[str, ...]] = ()
    at: str
    place: Place
    temperature: Value

    def says(self) -> str:
        return say(
            "The shaft was measured at {temperature}; its readings were brought to 20 °C for the verdict.",
            temperature=said(self.temperature),
        )

    def clears(self) -> str:
        return say("Readings taken within the plant's limit of 20 °C.")

    def figure(self) -> tuple[float, str, str]:
        return abs(number(self.temperature, "degC") - 20), "K", "more"


def measured_when_warm(plant: Plant, machine: MachineSheets) -> Iterator[MeasuredWhenWarm]:
    """Seats measured too far from 20 °C."""
    limit = practice(plant, "warm_reading").content
    for sheet in machine.sheets:
        warm = sheet.number("seat_temperature")
        if warm and abs(number(warm, "degC") - 20) > limit:
            yield MeasuredWhenWarm(sheet.id, place_of(warm, sheet.position.place), warm)


@dataclass(frozen=True)
class SeatOutsideTheMakers:
    """A plant may be stricter than the maker, not laxer: its class must lie inside the maker's band. The maker's class governs until it is put right. A class inside the maker's clears it."""

    LEVEL: ClassVar[str] = "put right"
    HOLDS: ClassVar[tuple[str, ...]] = ()
    at: str
    place: Place
    ours: Value
    makers: Value

    def says(self) -> str:
        return say(
            "The plant asks for {ours}, the maker for {makers}; the maker's governs.", ours=self.ours.content, makers=self.makers.content
        )

    def clears(self) -> str:
        return say("A class inside the maker's, or none of the plant's own.")


def seat_outside_the_makers(plant: Plant, machine: MachineSheets) -> Iterator[SeatOutsideTheMakers]:
    """Positions whose typed or ruled class is wider than the maker's."""
    for shaft in machine.shafts:
        for sheet in shaft.sheets:
            makers = sheet.number("seat_class")
            if makers is None or not isinstance(makers.reason, Instructed):
                continue
            typed = sheet.position.typed.seat
            ruled = ruled_at(plant, machine.machine, shaft.shaft, sheet, "seat.class")
            ours = ruled or (typed and typed.class_)
            if ours is None or str(getattr(ours, "content", ours)) == str(makers.content):
                continue
            bench = Bench(plant, machine.machine, shaft.shaft, sheet.position, "", sheet.order)
            value = ours if isinstance(ours, Value) else Value(str(ours), "", makers.reason)
            if not class_inside(bench, value, makers):
                yield SeatOutsideTheMakers(sheet.id, place_of(ours, sheet.position.place), value, makers)


def _read_at(sheet: Sheet) -> Place:
    readings = [r for r in sheet.position.readings if r.quantity.startswith("seat diameter")]
    return readings[-1].place if readings else sheet.position.place
