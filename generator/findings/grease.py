"""What can be wrong with grease."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from typing import ClassVar

from generator.findings.facts import content, number, place_of, said, zone
from generator.mounting.sheet import MachineSheets
from generator.plant.plant import Plant
from generator.say import say
from generator.value import Place, Value


@dataclass(frozen=True)
class GreaseSpeed:
    """Above its own limit of speed times mean diameter a grease churns, runs hot and leaves the rollers dry. A grease for the speed clears it."""

    LEVEL: ClassVar[str] = "put right"
    HOLDS: ClassVar[tuple[str, ...]] = ()
    at: str
    place: Place
    found: Value
    allowed: Value
    grease: str

    def says(self) -> str:
        return say(
            "{found} mm/min against the {allowed} of {grease}.",
            found=f"{self.found.content:.0f}",
            allowed=f"{self.allowed.content:.0f}",
            grease=self.grease,
        )

    def clears(self) -> str:
        return say("A grease whose limit is higher, after cleaning out this one.")

    def figure(self) -> tuple[float, str, str]:
        return float(self.found.content), "", "more"


def grease_speed(plant: Plant, machine: MachineSheets) -> Iterator[GreaseSpeed]:
    """Positions over the speed limit of their grease."""
    for sheet in machine.sheets:
        found, allowed, grease = sheet.number("n_dm"), sheet.number("n_dm_allowed"), sheet.position.grease
        if content(sheet, "n_dm_verdict") == "over" and found and allowed and grease:
            yield GreaseSpeed(sheet.id, _planned_at(sheet), found, allowed, grease.name)


@dataclass(frozen=True)
class GreaseTemperature:
    """Outside its range a grease burns away or does not move. The bearing's temperature, and the coldest start, are held against the range of the grease. A grease for the temperature clears it, or a bearing that runs cooler."""

    LEVEL: ClassVar[str] = "put right"
    HOLDS: ClassVar[tuple[str, ...]] = ()
    at: str
    place: Place
    verdict: str
    temperature: Value
    limit: Value
    grease: str

    def says(self) -> str:
        return say(
            "{verdict}: {temperature} against {limit} of {grease}.",
            verdict=say(self.verdict).capitalize(),
            temperature=said(self.temperature),
            limit=said(self.limit),
            grease=self.grease,
        )

    def clears(self) -> str:
        return say("A grease for this temperature, or the heat kept from the bearing.")

    def figure(self) -> tuple[float, str, str]:
        return number(self.temperature, "degC"), "degC", "less" if self.verdict == "too cold" else "more"


def grease_temperature(plant: Plant, machine: MachineSheets) -> Iterator[GreaseTemperature]:
    """Positions too hot or too cold for their grease."""
    for sheet in machine.sheets:
        verdict, grease = content(sheet, "grease_heat_verdict"), sheet.position.grease
        hot, cold = sheet.number("bearing_temperature"), sheet.number("grease_cold")
        if grease and verdict == "too hot" and hot:
            yield GreaseTemperature(sheet.id, _planned_at(sheet), "too hot", hot, grease.typed.runs.to, grease.name)
        if grease and verdict == "too cold" and cold:
            yield GreaseTemperature(sheet.id, _planned_at(sheet), "too cold", cold, grease.typed.runs.from_, grease.name)


@dataclass(frozen=True)
class GreaseMix:
    """Two greases in one bearing can soften each other and run out, whatever their charts say. Without a test or the makers' letter on file they count as incompatible. Such evidence on file clears it, or the bearing stripped and cleaned."""

    LEVEL: ClassVar[str] = "hold"
    HOLDS: ClassVar[tuple[str, ...]] = ("grease",)
    at: str
    place: Place
    inside: str
    planned: str
    charts: str

    def says(self) -> str:
        return say(
            "{inside} is inside, {planned} is planned, and no test on file lets them meet (charts: {charts}).",
            inside=self.inside,
            planned=self.planned,
            charts=say(self.charts),
        )

    def clears(self) -> str:
        return say("The bearing cleaned out before {planned}; or a test or letter on file.", planned=self.planned)


def grease_mix(plant: Plant, machine: MachineSheets) -> Iterator[GreaseMix]:
    """Positions with another grease inside than planned, without evidence."""
    for sheet in machine.sheets:
        planned, inside = sheet.position.grease, sheet.position.grease_inside
        if planned is None or inside is None or planned.name == inside.name:
            continue
        pairs = [(planned, inside.name), (inside, planned.name)]
        evidence = [
            m
            for grease, other in pairs
            for m in grease.typed.mixes_with or ()
            if str(m.grease) == other and str(m.from_) in plant.library.documents
        ]
        if not evidence:
            word = sheet.position.typed.grease.inside if sheet.position.typed.grease else None
            yield GreaseMix(
                sheet.id, place_of(word, sheet.position.place), inside.name, planned.name, str(content(sheet, "grease_mix") or "not listed")
            )


@dataclass(frozen=True)
class FoodGrease:
    """Above or beside open food only grease registered for incidental contact may be used (21 CFR 178.3570, ISO 21469), with its registration on file. A registered grease, after cleaning out, clears it."""

    LEVEL: ClassVar[str] = "hold"
    HOLDS: ClassVar[tuple[str, ...]] = ("grease", "put on")
    at: str
    place: Place
    grease: str
    why: str

    def says(self) -> str:
        return say("{grease} in a food zone: {why}.", grease=self.grease, why=self.why)

    def clears(self) -> str:
        return say("A grease registered for incidental contact, its letter on file, and the bearing cleaned, not purged.")


def food_grease(plant: Plant, machine: MachineSheets) -> Iterator[FoodGrease]:
    """Food zones with a grease, planned or inside, that is not registered."""
    for sheet in machine.sheets:
        if not zone(sheet).startswith("food"):
            continue
        for grease in {g.name: g for g in (sheet.position.grease, sheet.position.grease_inside) if g is not None}.values():
            food = grease.typed.food
            registered = str(getattr(food, "registered", ""))
            letter = str(getattr(food, "from_", ""))
            if registered not in ("incidental contact", "direct contact"):
                yield FoodGrease(sheet.id, _planned_at(sheet), grease.name, say("not registered for incidental contact"))
            elif letter not in plant.library.documents:
                yield FoodGrease(
                    sheet.id,
                    place_of(getattr(food, "from_", None), grease.place),
                    grease.name,
                    say("its letter {letter} is not on file", letter=letter),
                )


@dataclass(frozen=True)
class GreaseOnSealed:
    """A sealed or automatically fed bearing that is greased by gun as well is greased twice, or its seals are blown out and it runs hot. One way of feeding clears it."""

    LEVEL: ClassVar[str] = "put right"
    HOLDS: ClassVar[tuple[str, ...]] = ("grease",)
    at: str
    place: Place
    feed: str

    def says(self) -> str:
        return say("{feed}, and a gun is named for it or grease was given by hand.", feed=self.feed)

    def clears(self) -> str:
        return say("The gun taken out of its data and off the round, or the feed as it really is.")


def grease_on_sealed(plant: Plant, machine: MachineSheets) -> Iterator[GreaseOnSealed]:
    """Sealed or fed positions with a gun of their own, or with a greasing on record since they were fitted so."""
    for sheet in machine.sheets:
        feed, typed = sheet.number("grease_feed"), sheet.position.typed.grease
        if feed is None or str(feed.content) == "oil":
            continue
        given = next((r for r in reversed(sheet.position.readings) if r.quantity in ("grease given", "strokes given")), None)
        gun = typed.gun if typed else None
        if gun is not None or given is not None:
            yield GreaseOnSealed(
                sheet.id, place_of(gun, given.place if given else sheet.position.place), say(str(feed.content)).capitalize()
            )


@dataclass(frozen=True)
class RegreaseRunningBehindGuard:
    """Greasing a running machine through its guard takes a hand. Running is allowed only where the fitting is outside the guard or piped out of it. The fitting piped out, or greased stopped and isolated, clears it."""

    LEVEL: ClassVar[str] = "hold"
    HOLDS: ClassVar[tuple[str, ...]] = ("grease",)
    at: str
    place: Place

    def says(self) -> str:
        return say("Marked to be greased running, and its fitting is inside the guard.")

    def clears(self) -> str:
        return say("The fitting piped outside the guard, or greased stopped and isolated.")


def regrease_running_behind_guard(plant: Plant, machine: MachineSheets) -> Iterator[RegreaseRunningBehindGuard]:
    """Positions greased running whose fitting is inside the guard, or not said."""
    for sheet in machine.sheets:
        typed = sheet.position.typed
        if (
            sheet.lines.get("grease_feed") is None
            and typed.regrease is not None
            and str(typed.regrease.when) == "running"
            and (typed.fitting is None or str(typed.fitting.place) == "inside the guard")
        ):
            yield RegreaseRunningBehindGuard(sheet.id, place_of(typed.regrease.when, sheet.position.place))


def _planned_at(sheet: object) -> Place:
    position = sheet.position  # type: ignore[attr-defined]
    return place_of(position.typed.grease.planned if position.typed.grease else None, position.place)
