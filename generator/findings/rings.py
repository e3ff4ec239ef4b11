"""What can be wrong with a ring locked by screws or a collar."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from typing import ClassVar

from generator.findings.facts import content, number, place_of, said
from generator.mounting.sheet import MachineSheets
from generator.plant.plant import Plant
from generator.say import say
from generator.value import Place, Value


@dataclass(frozen=True)
class EccentricOnReversing:
    """An eccentric collar is driven tight in the direction the shaft runs. A shaft that runs both ways, or can turn back, can drive it loose again. Another way of locking clears it."""

    LEVEL: ClassVar[str] = "hold"
    HOLDS: ClassVar[tuple[str, ...]] = ("put on", "run")
    at: str
    place: Place

    def says(self) -> str:
        return say("An eccentric collar on a shaft that turns both ways can unlock.")

    def clears(self) -> str:
        return say("A sleeve, a clamp collar or two set screws in its place.")


def eccentric_on_reversing(plant: Plant, machine: MachineSheets) -> Iterator[EccentricOnReversing]:
    """Eccentric collars on shafts that turn both ways."""
    for shaft in machine.shafts:
        if str(shaft.shaft.typed.turns) != "both ways":
            continue
        for sheet in shaft.sheets:
            if sheet.locking == "eccentric collar":
                yield EccentricOnReversing(sheet.id, place_of(shaft.shaft.typed.turns, sheet.position.place))


@dataclass(frozen=True)
class CollarDirectionUnknown:
    """Without the rotation of the shaft, or the side of the collar, no arrow can be drawn, and a collar turned the wrong way works loose. Both typed clear it."""

    LEVEL: ClassVar[str] = "hold"
    HOLDS: ClassVar[tuple[str, ...]] = ("put on",)
    at: str
    place: Place
    missing: str

    def says(self) -> str:
        return say("The collar's direction is not known: {missing} is not typed.", missing=self.missing)

    def clears(self) -> str:
        return say("`{missing}` in the machine's file, seen on the machine.", missing=self.missing)


def collar_direction_unknown(plant: Plant, machine: MachineSheets) -> Iterator[CollarDirectionUnknown]:
    """Eccentric collars of shafts whose turning, or of positions whose side, is not typed."""
    for shaft in machine.shafts:
        for sheet in shaft.sheets:
            if sheet.locking != "eccentric collar":
                continue
            missing = "turns" if shaft.shaft.typed.turns is None else "collar" if sheet.position.typed.collar is None else ""
            if missing:
                yield CollarDirectionUnknown(sheet.id, sheet.position.place, missing)


@dataclass(frozen=True)
class SetScrewOnHardOrHollowShaft:
    """A set screw holds by biting. It must be ten points of HRC harder than the shaft, and a hollow shaft dents under it. Hardness as measured or typed is held against the screw and the maker's limit. Another way of locking, or a shaft soft enough, clears it."""

    LEVEL: ClassVar[str] = "hold"
    HOLDS: ClassVar[tuple[str, ...]] = ("put on",)
    at: str
    place: Place
    why: str

    def says(self) -> str:
        return self.why

    def clears(self) -> str:
        return say("A sleeve or clamp collar in its place, or a shaft the screws can bite.")


def set_screw_on_hard_or_hollow_shaft(plant: Plant, machine: MachineSheets) -> Iterator[SetScrewOnHardOrHollowShaft]:
    """Set screws that cannot bite, in screw locks and eccentric collars."""
    for sheet in machine.sheets:
        if sheet.locking not in ("set screws", "eccentric collar"):
            continue
        hardness, bite, allowed = sheet.number("shaft_hardness"), sheet.number("screw_bite"), sheet.number("shaft_hardness_allowed")
        if sheet.position.hole is not None:
            yield SetScrewOnHardOrHollowShaft(
                sheet.id,
                place_of(sheet.position.hole, sheet.position.place),
                say("The shaft is hollow, {hole}: it dents under a set screw.", hole=said(sheet.position.hole)),
            )
        elif hardness and allowed and number(hardness, "HRC") > number(allowed, "HRC"):
            yield SetScrewOnHardOrHollowShaft(
                sheet.id,
                place_of(hardness, sheet.position.place),
                say("The shaft has {hardness}; the maker's screws bite up to {allowed}.", hardness=said(hardness), allowed=said(allowed)),
            )
        elif hardness and bite and bite.content < sheet.lines["screw_bite"].beside[0][1].content:  # type: ignore[union-attr]
            yield SetScrewOnHardOrHollowShaft(
                sheet.id,
                place_of(hardness, sheet.position.place),
                say("The shaft has {hardness}: the screws are only {bite} harder.", hardness=said(hardness), bite=said(bite)),
            )


@dataclass(frozen=True)
class SpeedOverLocking:
    """How fast a locked ring may turn depends on how closely it sits: on a looser shaft it runs out of true and frets. The shaft's speed is held against what the maker allows for this class. A closer class or another way of locking clears it."""

    LEVEL: ClassVar[str] = "put right"
    HOLDS: ClassVar[tuple[str, ...]] = ()
    at: str
    place: Place
    speed: Value
    allowed: Value
    class_: str

    def says(self) -> str:
        return say(
            "{speed} on a shaft to {class_}; the maker allows {allowed}.",
            speed=said(self.speed),
            class_=self.class_,
            allowed=said(self.allowed),
        )

    def clears(self) -> str:
        return say("A shaft to a closer class that the maker allows for this speed, or a lock that needs none.")

    def figure(self) -> tuple[float, str, str]:
        return number(self.speed, "rpm"), "rpm", "more"


def speed_over_locking(plant: Plant, machine: MachineSheets) -> Iterator[SpeedOverLocking]:
    """Shafts that turn faster than the maker allows for the lock on this class, or for the bearing at all."""
    for shaft in machine.shafts:
        for sheet in shaft.sheets:
            bearing = sheet.position.bearing
            speed = shaft.shaft.typed.speed
            limits = [v for v in (sheet.number("speed_allowed"), bearing.typed.most_speed if bearing else None) if v is not None]
            over = [v for v in limits if number(speed, "rpm") > number(v, "rpm")]
            if over:
                lowest = min(over, key=lambda v: number(v, "rpm"))
                yield SpeedOverLocking(
                    sheet.id, place_of(speed, sheet.position.place), speed, lowest, str(content(sheet, "seat_class") or "?")
                )


@dataclass(frozen=True)
class LockTooWeak:
    """A ring locked by screws or a collar holds its shaft endwise by that lock alone. What the lock may carry, by its maker or by the published figure with the plant's safety, is held against the load along the shaft. A stronger lock, or a unit with a shoulder, clears it."""

    LEVEL: ClassVar[str] = "put right"
    HOLDS: ClassVar[tuple[str, ...]] = ()
    at: str
    place: Place
    may: Value
    must: Value

    def says(self) -> str:
        return say("The lock may carry {may} along the shaft; {must} come.", may=said(self.may), must=said(self.must))

    def clears(self) -> str:
        return say("A lock that carries {must}, or a shoulder that takes it.", must=said(self.must))

    def figure(self) -> tuple[float, str, str]:
        return number(self.must, "N"), "N", "more"


def lock_too_weak(plant: Plant, machine: MachineSheets) -> Iterator[LockTooWeak]:
    """Locks that may carry less along the shaft than comes to them."""
    for sheet in machine.sheets:
        may, must = sheet.number("screw_hold"), sheet.number("screw_hold_needed")
        if may is not None and must is not None and number(must, "N") > number(may, "N"):
            yield LockTooWeak(sheet.id, place_of(must, sheet.position.place), may, must)
