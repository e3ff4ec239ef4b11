"""Along the shaft: how much it grows between its bearings, and what float is physically there to take it."""

from __future__ import annotations

from collections.abc import Iterator

from generator.calc.heat import cold_setting, distance, float_available, free_room, growth_from_today, room_in_all, thermal_growth
from generator.mounting.bench import Bench, worded
from generator.mounting.practice import practice
from generator.mounting.sheet import Line
from generator.plant.plant import Position, Shaft
from generator.say import say
from generator.show import text
from generator.tables.look_ups import expansion
from generator.units import convert
from generator.value import Known, LookedUp, Need, Results, Rows, Value, Withheld


def physically_fixed(position: Position) -> bool:
    """Whether a unit holds its shaft endwise in fact: a free one counts as free only with a way to float."""
    if str(position.typed.holds) == "fixed" or position.rings is not None:
        return True
    return float_toward(position, None) is None


def float_toward(position: Position, end: str | None) -> Value | None:
    """The float toward an end (or any float at all for None): typed, else a take-up's guide, else a ring's room in its split housing."""
    floats = position.typed.floats
    if floats is not None:
        given = {str(name): value for name, value in (floats.model_extra or {}).items()}
        return next((value for value in given.values() if value.content > 0), None) if end is None else given.get(end)
    housing = position.housing
    if housing is not None and housing.typed.guide is not None:
        return housing.typed.guide
    return _room_in_bore(position)


def _room_in_bore(position: Position) -> Value | None:
    """The room of a ring without locating rings in its housing, each way. A ball insert sits in its housing's sphere and has none."""
    housing, bearing = position.housing, position.bearing
    if housing is None or bearing is None or position.rings is not None or str(bearing.typed.kind) == "ball insert":
        return None
    if housing.typed.bore is None or housing.typed.bore.wide is None:
        return None
    room = free_room.of(wide=housing.typed.bore.wide, width=bearing.typed.width)
    return room if isinstance(room, Value) and room.content > 0 else None


def shaft_lines(shaft: Shaft) -> Iterator[Line]:
    """The lines of a shaft as a whole: growth from its fixed unit to the farthest one, and the gaps growth can close."""
    if len(shaft.positions) < 2:
        return
    anchor = anchor_of(shaft)
    farthest = max((p for p in shaft.positions if p is not anchor), key=lambda p: abs(_at(p) - _at(anchor)))
    yield Line("growth", "axial", say("Growth from {a} to {b}", a=anchor.letter, b=farthest.letter), growth(shaft, anchor, farthest))
    if shaft.typed.temperature is not None and shaft.typed.temperature.coldest is not None:
        yield Line("growth_cold", "axial", say("The same at its coldest"), growth(shaft, anchor, farthest, cold=True))
    for key, name, gap in (
        ("coupling", say("Room in the coupling"), shaft.typed.coupling_gap),
        ("seal", say("Room in the seal"), shaft.typed.seal_gap),
    ):
        if gap is not None:
            yield Line(f"{key}_room", "axial", name, gap.room)
            yield Line(
                f"{key}_growth",
                "axial",
                say("Growth from {a} to the {end}", a=anchor.letter, end=gap.at),
                growth_to_end(shaft, anchor, str(gap.at)),
            )


def position_axial_lines(bench: Bench) -> Iterator[Line]:
    """Float of a free unit toward each end, and whether it is enough for the growth that comes that way."""
    position, shaft = bench.position, bench.shaft
    if position.typed.at is not None:
        yield Line("place", "axial", say("Its middle, from the face of the {end}", end=bench.shaft.ends[0]), position.typed.at)
    yield Line("holds", "axial", say("Along the shaft it is"), worded(position.typed.holds))
    if str(position.typed.holds) == "fixed" or len(shaft.positions) < 2:
        return
    if position.typed.floats is not None:
        yield Line("floats_by", "axial", say("It floats by"), worded(position.typed.floats.by))
    anchor = anchor_of(shaft)
    hot, cold = growth(shaft, anchor, position), growth(shaft, anchor, position, cold=True)
    beside = _beside_typed(position)
    yield Line("growth_here", "axial", say("Growth from {a} to here", a=anchor.letter), hot)
    for number, end in enumerate(shaft.ends):
        there = float_toward(position, end)
        known: Known = (
            there
            if there is not None
            else Withheld(
                say("no way to float is typed"), (Need("entry", position.place.file, "floats: {by: ..., " + shaft.ends[0] + ": 3 mm}"),)
            )
        )
        yield Line(f"float_{'first' if number == 0 else 'second'}", "axial", say("Float toward the {end}", end=end), known, beside=beside)
    yield from _verdicts(bench, anchor, hot, cold)
    yield from _setting(bench, anchor)


def _beside_typed(position: Position) -> tuple[tuple[str, Known], ...]:
    """What the parts say of a float that was typed."""
    by = str(position.typed.floats.by) if position.typed.floats is not None else ""
    room, clearance = _room_in_bore(position), position.bearing.typed.clearance if position.bearing else None
    if by == "ring loose in its housing" and room is not None:
        return ((say("each way by the housing's bore, ring in the middle"), room),)
    if by == "clearance inside the bearing" and clearance is not None and clearance.axial is not None:
        return ((say("axial clearance of the bearing, both ways together"), clearance.axial),)
    return ()


def anchor_of(shaft: Shaft) -> Position:
    """The unit growth is counted from: the one called fixed, else the first."""
    return next((p for p in shaft.positions if str(p.typed.holds) == "fixed"), shaft.positions[0])


def growth(shaft: Shaft, one: Position, other: Position, cold: bool = False) -> Known:
    """Growth of the shaft against its frame between two units; the coldest where asked (Withheld where none is stated)."""
    assert one.typed.at is not None and other.typed.at is not None
    temperatures = shaft.typed.temperature
    if temperatures is None:
        return _no_temperatures(shaft)
    hot = temperatures.coldest if cold else temperatures.shaft
    if hot is None:
        return Withheld(say("the coldest temperature is not typed"))
    return _growth(shaft, distance.of(one=one.typed.at, other=other.typed.at), hot, temperatures.frame)


def growth_to_end(shaft: Shaft, anchor: Position, end: str) -> Known:
    """Growth from a unit to an end of the shaft."""
    last = shaft.typed.sections[-1].to
    place = Value(0.0, "mm", LookedUp(None, say("the face of the first end"))) if end == shaft.ends[0] else last
    temperatures = shaft.typed.temperature
    if temperatures is None:
        return _no_temperatures(shaft)
    return _growth(shaft, distance.of(one=anchor.typed.at, other=place), temperatures.shaft, temperatures.frame)


def _growth(shaft: Shaft, length: Known, hot: Value, frame: Value) -> Known:
    of_shaft, of_frame = _expansions(shaft)
    return thermal_growth.of(length=length, shaft=hot, frame=frame, shaft_expansion=of_shaft, frame_expansion=of_frame)  # type: ignore[no-any-return]


def _expansions(shaft: Shaft) -> tuple[Known, Known]:
    """Expansion of shaft and frame by what they are made of."""
    materials = shaft.typed.material, shaft.typed.frame_material
    steel = Value("carbon steel", "", LookedUp(None, say("taken for carbon steel unless said")))
    of_shaft, of_frame = (worded(material) if material is not None else steel for material in materials)
    return expansion(of_shaft), expansion(of_frame, "frame")


def _no_temperatures(shaft: Shaft) -> Withheld:
    return Withheld(
        say("the temperatures of shaft and frame are not typed"),
        (Need("entry", shaft.place.file, "temperature: {shaft: 45 degC, frame: 20 degC}"),),
    )


def toward(shaft: Shaft, anchor: Position, position: Position, amount: float) -> str:
    """The end a growth of this sign pushes the unit's ring toward."""
    away = _at(position) > _at(anchor)
    return shaft.ends[1] if away == (amount >= 0) else shaft.ends[0]


def _verdicts(bench: Bench, anchor: Position, hot: Known, cold: Known) -> Iterator[Line]:
    """Float against growth, hot and cold. Float inside the bearing is not set by hand, so it has neither margin nor setting error."""
    position = bench.position
    inside = position.typed.floats is not None and str(position.typed.floats.by) == "clearance inside the bearing"
    one = Value(1.0, "", LookedUp(None, say("growth alone, since clearance inside the bearing is not set by hand")))
    margin = one if inside else practice(bench.plant, "float_margin")
    error = None if inside else practice(bench.plant, "setting_error")
    for key, amount in (("hot", hot), ("cold", cold)):
        if key == "cold" and isinstance(amount, Withheld):
            continue
        there: Known | None = Withheld(amount.why, amount.needs) if isinstance(amount, Withheld) else None
        if isinstance(amount, Value):
            there = float_toward(position, toward(bench.shaft, anchor, position, amount.content))
        if there is None:
            there = Withheld(
                say("no way to float is typed"), (Need("entry", position.place.file, "floats: {by: ..., mm toward each end}"),)
            )
        found = float_available.of(growth=amount, there=there, margin=margin, setting_error=error)
        name = say("Float needed") if key == "hot" else say("Float needed at its coldest")
        yield Line(f"float_needed_{key}", "axial", name, found.needed)
        yield Line(
            f"float_verdict_{key}", "axial", say("Float there is") if key == "hot" else say("Float there is, at its coldest"), found.verdict
        )


def _setting(bench: Bench, anchor: Position) -> Iterator[Line]:
    """Where in its travel the unit is put on the day, shaft and frame as warm as practice takes them."""
    position, shaft = bench.position, bench.shaft
    temperatures, inside = shaft.typed.temperature, position.typed.floats
    if temperatures is None or (inside is not None and str(inside.by) == "clearance inside the bearing"):
        return
    rooms = [float_toward(position, end) for end in shaft.ends]
    if any(room is None for room in rooms):
        return
    room = room_in_all.of(rooms=Rows(tuple(Results(one=one) for one in rooms)))
    hot = _from_today(bench, anchor, temperatures.shaft, temperatures.frame)
    cold = _from_today(bench, anchor, temperatures.coldest, temperatures.frame) if temperatures.coldest is not None else None
    found = cold_setting.of(room=room, hot=hot, cold=cold)
    if isinstance(found.verdict, Value) and found.verdict.content == "too little":
        return  # what can't be set is a finding, not a figure
    ends = shaft.ends if _at(position) > _at(anchor) else (shaft.ends[1], shaft.ends[0])
    now = text(practice(bench.plant, "mounting_air"))
    yield Line("set_away", "axial", say("Set at {now} with this room toward the {end}", now=now, end=ends[1]), found.away)
    yield Line("set_toward", "axial", say("and this toward the {end}", end=ends[0]), found.toward)


def _from_today(bench: Bench, anchor: Position, hot: Value, frame: Value) -> Known:
    """Growth from the day of setting, away from the anchor."""
    now = practice(bench.plant, "mounting_air")
    of_shaft, of_frame = _expansions(bench.shaft)
    return growth_from_today.of(
        length=distance.of(one=anchor.typed.at, other=bench.position.typed.at),
        shaft_now=now, frame_now=now, shaft=hot, frame=frame, shaft_expansion=of_shaft, frame_expansion=of_frame,
    )  # type: ignore[no-any-return]  # fmt: skip


def _at(position: Position) -> float:
    assert position.typed.at is not None
    return convert(position.typed.at.content, position.typed.at.unit, "mm")
