"""Housing bolts: the torque, what limits it, what it is set with, and the clamp that is left."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from typing import Any

from generator.calc.bolts import (
    bolt_bearing_pressure,
    bolt_torque_friction_split,
    force_of_pressure,
    head_bearing_diameter,
    lower_of_two,
    slot_room,
    torque_rounding,
)
from generator.housings import style_of
from generator.mounting.bench import Bench, worded
from generator.mounting.chains.bolts import bolt_friction, bolt_torques
from generator.mounting.documents import candidates, instructed
from generator.mounting.foot import foot_lines, tapped_lines
from generator.mounting.sheet import Line
from generator.mounting.wrench import ANY, wrench_lines
from generator.plant.model.document import BoltFigures
from generator.say import say
from generator.tables.bolts import head_and_hole, plain_washer, pressure_limit
from generator.tables.look_ups import thread_figures
from generator.units import convert
from generator.value import Band, Known, LookedUp, Need, Value, Withheld


@dataclass(frozen=True)
class Bolt:
    """The bolts of a position as they are meant: thread, count, class, surface, state of the thread, what lies under the head."""

    thread: Value
    count: Value
    strength_class: Known
    surface: Value
    state: Value
    diameter: Known
    under: Any
    head: Known
    hole: Known


def bolt_of(bench: Bench) -> Bolt | None:
    """The bolts of the housing, None for a housing without."""
    housing, typed, fastener = bench.position.housing, bench.position.typed.bolts, bench.position.bolt
    if housing is None or housing.typed.bolts is None:
        return None
    size = housing.typed.bolts.size
    class_ = (typed and typed.class_) or (fastener and fastener.typed.class_)
    stainless = class_ is not None and str(class_).startswith("A")
    # a bolt of a stainless class is stainless, whatever its surface is called
    surface = (typed and typed.surface) or (fastener and fastener.typed.surface)
    state = typed.thread if typed else None
    unknown = Value("not known", "", LookedUp(None, say("a surface that is not typed may be any")))
    supplied = Value("as supplied", "", LookedUp(None, say("a state that is not typed is as supplied")))
    file = bench.position.place.file
    strength: Known = (
        worded(class_) if class_ else Withheld(say("the class of the bolts is not typed"), (Need("entry", file, 'bolts: {class: "8.8"}'),))
    )
    diameter, _ = thread_figures(size)
    return Bolt(
        size,
        housing.typed.bolts.count,
        strength,
        Value("stainless", "", worded(class_).reason) if stainless else worded(surface) if surface else unknown,
        worded(state) if state else supplied,
        diameter,
        typed.under_head if typed else None,
        *_head_and_hole(bench, diameter),
    )


def _head_and_hole(bench: Bench, diameter: Known) -> tuple[Known, Known]:
    """Bearing diameter of the head and its hole: tabled for metric bolts; of an inch bolt by its width across flats and the housing's hole."""
    housing, typed, fastener = bench.position.housing, bench.position.typed.bolts, bench.position.bolt
    if not isinstance(diameter, Value) or housing is None or housing.typed.bolts is None:
        return diameter, diameter
    head, hole = head_and_hole(diameter)
    flats = (typed.head_width if typed else None) or (fastener.typed.head_width if fastener else None)
    if isinstance(head, Withheld):
        file = bench.position.place.file
        head = (
            head_bearing_diameter.of(flats=flats)
            if flats is not None
            else Withheld(head.why, (Need("entry", file, "bolts: {head_width: 15/16 in}"),))
        )
    if isinstance(hole, Withheld) and housing.typed.bolts.hole is not None:
        hole = housing.typed.bolts.hole
    return head, hole


def bolt_lines(bench: Bench, so_far: Mapping[str, Line]) -> Iterator[Line]:
    """The lines of the bolts group."""
    bolt = bolt_of(bench)
    housing = bench.position.housing
    if bolt is None or housing is None:
        return
    yield Line("bolt_count", "bolts", say("Bolts"), bolt.count)
    yield Line("bolt_thread", "bolts", say("Thread of the bolts"), bolt.thread)
    yield Line("bolt_class", "bolts", say("Class of the bolts"), bolt.strength_class)
    yield Line("thread_state", "bolts", say("Threads, when tightened"), bolt.state)
    polymer = str(housing.typed.body.material) == "polymer"
    limits = () if polymer else tuple(_limits(bench, bolt))
    torque = _governing(bench, bolt, polymer, limits)
    yield Line(
        "bolt_torque",
        "bolts",
        say("Torque of the housing bolts"),
        torque,
        by_hand=True,
        beside=tuple((line.name, line.value) for line in limits if line.key.startswith("torque_by")),
        note=_how(bolt),
    )
    yield from (line for line in limits if not line.key.startswith("torque_by"))
    settings = tuple(wrench_lines(bench, torque))
    yield from settings
    setting = next((line.value for line in settings if line.key == "bolt_setting"), torque)
    yield from foot_lines(bench, bolt, setting if isinstance(setting, Value) else torque, polymer)
    if style_of(housing.typed.style).tapped:
        yield from tapped_lines(bench, bolt)
    yield from _slot(bench, so_far)
    yield from _cap(bench)


def _how(bolt: Bolt) -> str:
    return say(
        "{count} x {thread}, thread {state}.",
        count=f"{bolt.count.content:g}",
        thread=bolt.thread.content,
        state=say(str(bolt.state.content)),
    )


def _governing(bench: Bench, bolt: Bolt, polymer: bool, limits: tuple[Line, ...]) -> Known:
    """The maker's figure; a ceiling of the maker's lets a lower computed torque govern; else the lowest computed one; never a computed one on polymer."""
    maker = _maker(bench, bolt)
    unknown = next((line.value for line in limits if line.key.endswith("_pressure") and isinstance(line.value, Withheld)), None)
    computed = unknown or _down(_lowest([line.value for line in limits if line.key.startswith("torque_by")]))
    if isinstance(computed, Value) and not polymer and (bolt.under is None or bolt.under.on is None):
        computed = computed.remark(say("what the frame is made of is not typed: the pressure on it is not judged"))
    if isinstance(maker, Band):
        return maker
    if isinstance(maker, Value):
        return maker if polymer or not isinstance(computed, Value) else _lowest([maker, computed])
    if polymer:
        return maker
    return computed


def _maker(bench: Bench, bolt: Bolt) -> Known:
    """The maker's torque where it is for this bolt, class and state."""
    given: Any = bench.maker("base_torque", say("torque of the housing bolts"))
    if not isinstance(given, BoltFigures):
        return given  # type: ignore[no-any-return]
    row = next(row for row in candidates(bench.plant, bench.position, "base_torque") if row.unfit is None)
    need = Need(
        "document",
        str(row.document.typed.maker),
        say(
            "torque of the housing bolts for {thread}, {class_}, {state}",
            thread=bolt.thread.content,
            class_=getattr(bolt.strength_class, "content", "?"),
            state=bolt.state.content,
        ),
    )
    for wanted, here in (
        (given.bolt.content if given.bolt else None, bolt.thread.content),
        (given.class_, getattr(bolt.strength_class, "content", None)),
        (given.state, bolt.state.content),
    ):
        if wanted is not None and str(wanted) != str(here):
            return Withheld(
                say("{document} gives the torque for {wanted}, not {here}", document=row.document.name, wanted=wanted, here=here), (need,)
            )
    most = instructed(given.most, row)
    return Band(instructed(given.least, row), most) if given.least is not None else most  # type: ignore[no-any-return]


def _limits(bench: Bench, bolt: Bolt) -> Iterator[Line]:
    """The torque by both ways and by the pressure under the head, and that pressure itself."""
    share = Value(0.75, "", LookedUp(None, say("share of the proof strength for bolts that are used again")))
    both = bolt_torques.of(
        thread=bolt.thread,
        strength_class=bolt.strength_class,
        surface=bolt.surface,
        state=bolt.state,
        nut_factor_area=share,
        head=bolt.head if isinstance(bolt.head, Value) else None,
        hole=bolt.hole if isinstance(bolt.hole, Value) else None,
    )
    yield Line("torque_by_factor", "bolts", say("by the nut factor"), both.by_nut_factor)
    yield Line("torque_by_friction", "bolts", say("by friction split"), both.by_friction)
    yield Line("bolt_preload", "bolts", say("Preload at 90 % of yield"), both.preload)
    yield from _pressure(bench, bolt, both.preload)


def _pressure(bench: Bench, bolt: Bolt, preload: Known) -> Iterator[Line]:
    """Under the head, on the housing with its slot or hole; under the nut, on the frame with a round hole. The weaker face limits the torque."""
    housing = bench.position.housing
    if not isinstance(bolt.diameter, Value) or not isinstance(preload, Value) or housing is None or housing.typed.bolts is None:
        return
    head, hole = bolt.head, bolt.hole
    sizes = housing.typed.bolts
    width = min((sizes.slot.along, sizes.slot.across), key=lambda v: convert(v.content, v.unit, "mm")) if sizes.slot else None
    on = worded(bolt.under.on) if bolt.under is not None and bolt.under.on is not None else None
    faces: list[tuple[str, str, Known | None, Value | None, Known]] = []
    if style_of(housing.typed.style).tapped:
        # the bolt comes from below: its head bears on the frame, and nothing presses on the housing
        faces += [("head", say("under the head, on the frame"), sizes.hole or hole, None, on)] if on else []
    else:
        faces.append(
            ("head", say("under the head, on the housing"), None if width else (sizes.hole or hole), width, _body(housing.typed.body))
        )
        faces += [("nut", say("under the nut, on the frame"), hole, None, on)] if on else []
    thickness, outside = _washer(bolt)
    mu = bolt_friction.of(surface=bolt.surface, state=bolt.state)
    _, pitch = thread_figures(bolt.thread)
    for key, name, round_hole, slot, material in faces:
        found = bolt_bearing_pressure.of(
            clamp=preload, head=head, hole=round_hole, slot=slot, washer_thickness=thickness, washer_outside=outside
        )
        limit = pressure_limit(material) if isinstance(material, Value) else material
        yield Line(f"{key}_pressure", "bolts", say("Pressure {where}, at that preload", where=name), found.pressure)
        yield Line(f"{key}_pressure_limit", "bolts", say("Pressure that may be {where}", where=name), limit)
        allowed = force_of_pressure.of(allowed=limit, area=found.area)
        torque = bolt_torque_friction_split.of(
            preload=allowed, diameter=bolt.diameter, pitch=pitch, thread_friction=mu.mu_low, head_friction=mu.mu_low, head=head, hole=hole
        )
        yield Line(f"torque_by_{key}_pressure", "bolts", say("by the pressure {where}", where=name), torque)


def _body(body: Any) -> Known:
    """What the housing's foot is made of, as the table of pressures names it; a grade that is not typed counts as the weakest of its kind."""
    if body.strength is not None:
        return worded(body.strength)
    weakest = {"grey iron": "GJL-150", "ductile iron": "GJS-400", "steel": "S235", "stainless steel": "1.4401"}.get(str(body.material))
    if weakest is None:
        return Withheld(say("no grade is typed for a body of {material}", material=body.material))
    return Value(weakest, "", worded(body.material).reason, (say("grade of the housing not typed: the weakest is taken"),))


def _washer(bolt: Bolt) -> tuple[Value | None, Value | None]:
    if bolt.under is None or str(bolt.under.washer) not in ("hard", "wide") or not isinstance(bolt.diameter, Value):
        return None, None
    thickness, outside = plain_washer(bolt.diameter)
    return (thickness, outside) if isinstance(thickness, Value) and isinstance(outside, Value) else (None, None)


def _down(torque: Known) -> Known:
    """A computed torque is one that must not be passed: it is stated rounded down."""
    if not isinstance(torque, Value):
        return torque
    step = Value(1.0 if torque.content >= 20 else 0.1, "N.m", LookedUp(None, say("the step a computed torque is stated in")))
    return torque_rounding.of(least=ANY, most=torque, step=step)  # type: ignore[no-any-return]


def _lowest(found: list[Known]) -> Known:
    values = [value for value in found if isinstance(value, Value)]
    if not values:
        return next((value for value in found if isinstance(value, Withheld)), Withheld(say("no torque can be computed")))
    lowest = values[0]
    for other in values[1:]:
        lowest = lower_of_two.of(one=lowest, other=other)
    return lowest


def _slot(bench: Bench, so_far: Mapping[str, Line]) -> Iterator[Line]:
    """Room of the bolts in their slots along the shaft, against the travel of the housing."""
    sizes = bench.position.housing.typed.bolts  # type: ignore[union-attr]
    travel = so_far.get("nut_travel")
    diameter, _ = thread_figures(sizes.size)
    if sizes.slot is None or travel is None:
        return
    yield Line("slot_room", "bolts", say("Room of the bolt along its slot"), slot_room.of(slot=sizes.slot.along, bolt=diameter))


def _cap(bench: Bench) -> Iterator[Line]:
    housing = bench.position.housing
    if housing is not None and housing.typed.cap_bolts is not None:
        yield Line(
            "cap_torque",
            "bolts",
            say("Torque of the cap bolts"),
            bench.maker("cap_torque", say("torque of the cap bolts")),
            by_hand=True,
            note=say("Cross-wise; cap and base are a matched pair."),
        )
