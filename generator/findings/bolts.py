"""What can be wrong with bolts."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from typing import ClassVar

from generator.findings.facts import content, number, place_of, said
from generator.mounting.sheet import MachineSheets
from generator.plant.plant import Plant
from generator.say import say
from generator.value import Band, Place, Value, Withheld


@dataclass(frozen=True)
class PolymerOverTorque:
    """A polymer foot cracks or creeps at a torque that is usual on iron. The torque in use is held against the maker's for the housing. The maker's torque clears it, with a feel for the lower figure."""

    LEVEL: ClassVar[str] = "hold"
    HOLDS: ClassVar[tuple[str, ...]] = ("put on",)
    at: str
    place: Place
    used: Value
    allowed: Value | None

    def says(self) -> str:
        if self.allowed is None:
            return say("{used} is in use on a polymer housing, and no document of its maker gives its torque.", used=said(self.used))
        return say("{used} is in use on a polymer housing that takes {allowed}.", used=said(self.used), allowed=said(self.allowed))

    def clears(self) -> str:
        return say("The maker's torque for this housing typed in its document, and used.")

    def figure(self) -> tuple[float, str, str]:
        return number(self.used, "N.m"), "N.m", "more"


def polymer_over_torque(plant: Plant, machine: MachineSheets) -> Iterator[PolymerOverTorque]:
    """Polymer housings with a torque in use over the maker's, or without any of the maker's."""
    for sheet in machine.sheets:
        housing, typed = sheet.position.housing, sheet.position.typed.bolts
        if housing is None or str(housing.typed.body.material) != "polymer" or typed is None or typed.torque is None:
            continue
        torque = sheet.value("bolt_torque")
        allowed = torque.upper if isinstance(torque, Band) else torque if isinstance(torque, Value) else None
        if allowed is None or number(typed.torque.upper, "N.m") > number(allowed, "N.m") + 1e-9:
            yield PolymerOverTorque(sheet.id, place_of(typed.torque.upper, sheet.position.place), typed.torque.upper, allowed)


@dataclass(frozen=True)
class StainlessGall:
    """Stainless on stainless welds itself together when it is tightened dry, and a torque chart for steel bolts says nothing true about it. Paste made for stainless and the figures for it clear it."""

    LEVEL: ClassVar[str] = "hold"
    HOLDS: ClassVar[tuple[str, ...]] = ("put on",)
    at: str
    place: Place
    why: str

    def says(self) -> str:
        return self.why

    def clears(self) -> str:
        return say("Paste or wax made for stainless on thread and head, a nut of another grade where it may be, and the torque for that.")


def stainless_gall(plant: Plant, machine: MachineSheets) -> Iterator[StainlessGall]:
    """Stainless bolts in stainless nuts dry or as supplied, or with a torque from a chart for steel."""
    for sheet in machine.sheets:
        typed, fastener = sheet.position.typed.bolts, sheet.position.bolt
        if typed is None:
            continue
        surface = typed.surface or (fastener.typed.surface if fastener else None)
        if str(surface) != "stainless":
            continue
        state = str(typed.thread) if typed.thread is not None else "as supplied"
        if state not in ("paste", "wax"):
            yield StainlessGall(
                sheet.id,
                place_of(typed.thread or surface, sheet.position.place),
                say("Stainless bolts tightened {state} gall.", state=say(state)),
            )
        elif (
            typed.torque_from is not None
            and "steel" in str(typed.torque_from).lower()
            and "stainless" not in str(typed.torque_from).lower()
        ):
            yield StainlessGall(
                sheet.id,
                place_of(typed.torque_from, sheet.position.place),
                say("The torque in use on stainless bolts is from: {source}.", source=typed.torque_from),
            )


@dataclass(frozen=True)
class TappedBaseEngagement:
    """A bolt from below must reach far enough into its hole and not reach its end: one that bottoms clamps nothing at any torque, one too short strips. Engagement is held against what makes the bolt break first. A bolt of the right length clears it."""

    LEVEL: ClassVar[str] = "hold"
    HOLDS: ClassVar[tuple[str, ...]] = ("put on",)
    at: str
    place: Place
    verdict: str
    engaged: Value
    needed: Value

    def says(self) -> str:
        return say(
            "The bolt {verdict}: {engaged} engage, {needed} are needed.",
            verdict=say(self.verdict),
            engaged=said(self.engaged),
            needed=said(self.needed),
        )

    def clears(self) -> str:
        return say("A bolt whose length is frame, washer and engagement, gauged; a deeper hole; or, where no length fits, a housing or frame that leaves room for one.")

    def figure(self) -> tuple[float, str, str]:
        return number(self.engaged, "mm"), "mm", "less"


def tapped_base_engagement(plant: Plant, machine: MachineSheets) -> Iterator[TappedBaseEngagement]:
    """Tapped bases whose bolt bottoms or is too short."""
    for sheet in machine.sheets:
        verdict, engaged, needed = content(sheet, "engagement_verdict"), sheet.number("engagement"), sheet.number("engagement_needed")
        if verdict in ("bottoms", "too short") and engaged and needed:
            words = {"bottoms": "bottoms in its hole", "too short": "is too short"}
            yield TappedBaseEngagement(
                sheet.id,
                place_of(sheet.position.typed.bolts.length if sheet.position.typed.bolts else None, sheet.position.place),
                words[str(verdict)],
                engaged,
                needed,
            )


@dataclass(frozen=True)
class TorqueToolRange:
    """A torque wrench is true between 20 and 100 per cent of its range. Where no listed tool in date covers a torque, it is guessed. A tool for it on the list clears it."""

    LEVEL: ClassVar[str] = "put right"
    HOLDS: ClassVar[tuple[str, ...]] = ()
    at: str
    place: Place
    torque: Value

    def says(self) -> str:
        return say("No listed torque tool in date covers {torque}.", torque=said(self.torque))

    def clears(self) -> str:
        return say("A torque tool on the list, in date, with this torque between 20 and 100 per cent of its range.")


def torque_tool_range(plant: Plant, machine: MachineSheets) -> Iterator[TorqueToolRange]:
    """Bolt and screw torques that no listed tool covers."""
    for sheet in machine.sheets:
        torque = sheet.value("bolt_torque")
        top = torque.upper if isinstance(torque, Band) else torque
        if isinstance(sheet.value("bolt_setting"), Withheld) and isinstance(top, Value):
            yield TorqueToolRange(sheet.id, sheet.position.place, top)
