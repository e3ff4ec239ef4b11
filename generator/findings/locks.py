"""What can be wrong with a lock."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from typing import ClassVar

from generator.findings.facts import content, number, place_of, said
from generator.locking.sleeve import same_thread
from generator.mounting.documents import candidates
from generator.mounting.rules import ruled_at
from generator.mounting.sheet import MachineSheets
from generator.plant.plant import Plant
from generator.say import say
from generator.value import Band, Place, Value


@dataclass(frozen=True)
class NutThreadNotSleeveThread:
    """The same part of a turn on another pitch is another travel: three quarters of a turn differ by 6 per cent between 2 mm and 12 to the inch, and by 29 per cent on 18 to the inch. Thread and hand of the nut are held against the sleeve, and against the thread the maker's table is for. A nut of the sleeve's thread and a table for it clear it."""

    LEVEL: ClassVar[str] = "hold"
    HOLDS: ClassVar[tuple[str, ...]] = ("put on",)
    at: str
    place: Place
    here: Value
    wanted: str
    source: str

    def says(self) -> str:
        return say("The nut is {here}; {source} is for {wanted}.", here=self.here.content, wanted=self.wanted, source=self.source)

    def clears(self) -> str:
        return say("The maker's figures for {here}, or the nut and sleeve they are for.", here=self.here.content)


def nut_thread_not_sleeve_thread(plant: Plant, machine: MachineSheets) -> Iterator[NutThreadNotSleeveThread]:
    """Nuts of another thread than their sleeve, and turns from a table for another thread."""
    for shaft in machine.shafts:
        for sheet in shaft.sheets:
            sleeve = sheet.position.sleeve
            if sleeve is None:
                continue
            nut = sheet.number("lock_thread") or sleeve.typed.nut.thread
            if not same_thread(str(nut.content), str(sleeve.typed.thread.content)):
                yield NutThreadNotSleeveThread(
                    sheet.id,
                    place_of(nut, sheet.position.place),
                    nut,
                    str(sleeve.typed.thread.content),
                    say("sleeve {name}", name=sleeve.name),
                )
                continue
            rows = candidates(plant, sheet.position, "nut_turn")
            if rows and all(row.unfit is not None for row in rows):
                row = rows[0]
                cite = next((d for f, d in (sheet.position.typed.cites or {}).items() if str(f) == "nut_turn"), None)
                _, wanted, _ = row.unfit or ("", "", "")
                yield NutThreadNotSleeveThread(
                    sheet.id,
                    place_of(cite, row.place),
                    nut,
                    wanted,
                    say("{document}, {table}", document=row.document.name, table=row.table),
                )


@dataclass(frozen=True)
class NutSideAgainstRotation:
    """A ring that comes loose lags its shaft and drags on the nut. Seen from the nut, a right-hand nut is dragged tight only where the shaft turns anticlockwise. On the other side drag slackens it and its lock alone holds. A nut at the other side clears it; the lock is needed either way."""

    LEVEL: ClassVar[str] = "advice"
    HOLDS: ClassVar[tuple[str, ...]] = ()
    at: str
    place: Place

    def says(self) -> str:
        return say("Drag of a loose ring slackens this nut; its lock alone holds it.")

    def clears(self) -> str:
        return say("The nut on the other side of the ring.")


def nut_side_against_rotation(plant: Plant, machine: MachineSheets) -> Iterator[NutSideAgainstRotation]:
    """Nuts that drag slackens, both units of a shaft, where no rule says more."""
    for shaft in machine.shafts:
        slackened = [
            s
            for s in shaft.sheets
            if content(s, "nut_drag") == "drag slackens" and ruled_at(plant, machine.machine, shaft.shaft, s, "nut.side") is None
        ]
        # with a nut on each outer side, one of two is always dragged loose: that is how pairs are fitted, and no fault
        if len(slackened) > 1 and len(slackened) == len(shaft.sheets):
            for sheet in slackened:
                yield NutSideAgainstRotation(sheet.id, place_of(sheet.position.typed.nut, sheet.position.place))


@dataclass(frozen=True)
class NutSideAgainstPlantRule:
    """The plant has decided on which side a nut stands, so that drag of a loose ring tightens it. The nut is on the other side. The nut on the side of the rule clears it."""

    LEVEL: ClassVar[str] = "put right"
    HOLDS: ClassVar[tuple[str, ...]] = ()
    at: str
    place: Place
    rule: str

    def says(self) -> str:
        return say("Drag of a loose ring slackens this nut, against {rule}.", rule=self.rule)

    def clears(self) -> str:
        return say("The nut on the other side of the ring.")


def nut_side_against_plant_rule(plant: Plant, machine: MachineSheets) -> Iterator[NutSideAgainstPlantRule]:
    """Nuts that drag slackens where a rule asks that it tightens."""
    for shaft in machine.shafts:
        for sheet in shaft.sheets:
            rule = ruled_at(plant, machine.machine, shaft.shaft, sheet, "nut.side")
            if content(sheet, "nut_drag") == "drag slackens" and rule is not None and str(rule.content) == "drag tightens":
                yield NutSideAgainstPlantRule(
                    sheet.id, place_of(sheet.position.typed.nut, sheet.position.place), getattr(rule.reason, "rule", "")
                )


@dataclass(frozen=True)
class SlotRoomBelowTravel:
    """While a nut is turned, the housing travels along the shaft by as much as the nut. Its bolts, drawn to the nut's end of their slots first, need that much room. Less, and they are pinched and load the shaft endwise. Longer slots or the bolts out while it is turned clear it."""

    LEVEL: ClassVar[str] = "put right"
    HOLDS: ClassVar[tuple[str, ...]] = ()
    at: str
    place: Place
    room: Value
    travel: Value

    def says(self) -> str:
        return say(
            "The bolts have {room} in their slots along the shaft; the housing travels up to {travel}.",
            room=said(self.room),
            travel=said(self.travel),
        )

    def clears(self) -> str:
        return say("Slots with room for the travel, or bolts put in after the turn.")

    def figure(self) -> tuple[float, str, str]:
        return number(self.room, "mm"), "mm", "less"


def slot_room_below_travel(plant: Plant, machine: MachineSheets) -> Iterator[SlotRoomBelowTravel]:
    """Housings on a base whose slots are shorter than the travel."""
    for sheet in machine.sheets:
        room, travel = sheet.number("slot_room"), sheet.value("nut_travel")
        if room is not None and isinstance(travel, Band) and number(room, "mm") < number(travel.upper, "mm") - 1e-9:
            yield SlotRoomBelowTravel(sheet.id, place_of(room.reason.inputs["slot"], sheet.position.place), room, travel.upper)  # type: ignore[union-attr]
