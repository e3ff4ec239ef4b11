"""What the bolts hold: clamp left after scatter, the foot against slipping and lifting, a tapped hole against stripping."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from math import inf
from typing import TYPE_CHECKING, Any

from generator.calc.bolts import least_clamp, thread_stress_area, tightening_scatter
from generator.calc.feet import (
    bolt_breaking_load,
    foot_lift_off,
    foot_prying,
    foot_slip,
    load_on_base,
    tapped_hole,
    thread_engagement,
    tipping_moment,
)
from generator.housings import style_of
from generator.mounting.bench import Bench, worded
from generator.mounting.chains.bolts import bolt_strength_class, clamp_of_torque
from generator.mounting.loads import LoadHere, axial_load, load_here, loads_here, no_load
from generator.mounting.sheet import Line
from generator.say import say
from generator.tables.bolts import shear_strength, strip_factor
from generator.tables.look_ups import thread_figures
from generator.value import Band, Citation, Known, LookedUp, Need, Value, Withheld

if TYPE_CHECKING:
    from generator.mounting.bolts import Bolt


def foot_lines(bench: Bench, bolt: Bolt, torque: Known, polymer: bool) -> Iterator[Line]:
    """Clamp left, and what the foot may carry under the load that comes here."""
    if polymer:
        creeping = Withheld(say("a polymer foot creeps: its clamp is not counted on against slipping"))
        yield Line("bolt_clamp_least", "bolts", say("Least clamp left in a bolt"), creeping)
        return
    set_to = torque.lower if isinstance(torque, Band) else torque
    clamp = clamp_of_torque.of(
        thread=bolt.thread,
        surface=bolt.surface,
        state=bolt.state,
        torque=set_to,
        head=bolt.head if isinstance(bolt.head, Value) else None,
        hole=bolt.hole if isinstance(bolt.hole, Value) else None,
    )
    settling = bench.practice("embedding_loss")
    by_scatter = tightening_scatter.of(clamp=clamp.most, scatter=_scatter(bench), embedding=settling)
    least = least_clamp.of(by_scatter=by_scatter, by_friction=clamp.aimed, embedding=settling)
    yield Line(
        "bolt_clamp_least",
        "bolts",
        say("Least clamp left in a bolt"),
        least,
        beside=((say("clamp with the high end of friction"), clamp.aimed),) if isinstance(clamp.aimed, Value) else (),
    )
    yield from _held(bench, bolt, least)


def _scatter(bench: Bench) -> Value:
    """Greatest over least clamp, by what the bolts are tightened with."""
    tightening = bench.position.typed.tightening
    if tightening is None or str(tightening.tool) not in ("impact wrench", "hand"):
        return bench.practice("wrench_scatter")
    source = Citation("VDI 2230 Part 1", "2015", "Table A8, impact driver; by hand no better", "from memory")
    return Value(4.0, "", LookedUp(source, say("scatter of the tightening"), (("tool", str(tightening.tool)),)))


def _held(bench: Bench, bolt: Bolt, clamp: Known) -> Iterator[Line]:
    housing = bench.position.housing
    assert housing
    joint = style_of(housing.typed.style).joint
    if joint not in ("base", "face"):
        return
    load = load_here(bench)
    if load is None:
        yield Line("slip_allowed", "bolts", say("Side load the foot may carry"), no_load(bench))
        return
    safety = bench.practice("slip_safety_shock" if load.shock else "slip_safety")
    bare = str(bench.position.typed.stands_on) == "bare clean metal"
    friction = bench.practice("bare_foot_friction" if bare else "foot_friction")
    asked = {"bolts": bolt.count, "clamp": clamp, "friction": friction, "safety": safety}
    if joint == "face":
        yield Line("slip_load", "bolts", say("Load across the bolts"), load.force)
        # toward which end it pushes may change: it is taken to draw the flange off its frame
        drawn = _against(axial_load(bench))
        may = foot_slip.of(down=drawn, **asked)
        yield Line("slip_allowed", "bolts", say("Load across the bolts that may be carried"), may)
        return
    yield from _on_a_base(bench, bolt, asked)


def _against(force: Known) -> Known:
    return replace(force, content=-force.content) if isinstance(force, Value) else force


def _on_a_base(bench: Bench, bolt: Bolt, asked: dict[str, Any]) -> Iterator[Line]:
    """Slipping, lifting and tipping, each in the state in which it is nearest; the load may be less then than at its greatest."""
    housing = bench.position.housing
    assert housing
    cases = [_resolved(bench, case) for case in loads_here(bench)]
    slips = [(sides.push, foot_slip.of(down=sides.down, **asked)) for sides in cases]
    push, may = max(slips, key=lambda one: _share(*one))
    yield Line("slip_load", "bolts", say("Side load on the foot"), push)
    yield Line("slip_allowed", "bolts", say("Side load the foot may carry"), may)
    if housing.typed.foot is None or any(not isinstance(sides.down, Value) for sides in cases):
        return
    plain = {key: asked[key] for key in ("bolts", "clamp", "safety")}
    lifts = [foot_lift_off.of(uplift=_against(sides.down), length=housing.typed.foot.length, **plain) for sides in cases]
    yield Line("lift_allowed", "bolts", say("Clamp left against lifting"), min((lift.clamp for lift in lifts), key=_size))
    at = max(range(len(cases)), key=lambda i: _share(cases[i].side, lifts[i].moment))
    yield Line("tip_allowed", "bolts", say("Tipping moment without a gap"), lifts[at].moment)
    yield from _tipping(bench, bolt, cases[at])


def _resolved(bench: Bench, case: LoadHere) -> Any:
    """A load resolved onto the base the way it faces, with what turns and what pushes along the shaft."""
    counted = isinstance(case.force, Value) and isinstance(case.steady, Value) and case.force.content > case.steady.content
    return load_on_base.of(
        force=case.steady, direction=case.toward, base=bench.position.typed.base_toward, turning=case.turning if counted else None,
        along=axial_load(bench),
    )  # fmt: skip


def _share(load: Known, may: Known) -> float:
    """How much of what may be is used: all and more where either is not known."""
    if not isinstance(load, Value) or not isinstance(may, Value):
        return inf
    return float(load.content / may.content) if may.content > 0 else inf


def _size(value: Known) -> float:
    return float(value.content) if isinstance(value, Value) else -inf


def _tipping(bench: Bench, bolt: Bolt, sides: Any) -> Iterator[Line]:
    """The tipping moment there is; and what the pulled bolts then carry, of a foot with four."""
    housing = bench.position.housing
    assert housing and housing.typed.foot
    if housing.typed.centre_height is None:
        return
    moment = tipping_moment.of(side=sides.side, height=housing.typed.centre_height)
    yield Line("tip_moment", "bolts", say("Tipping moment of the side load"), moment)
    typed = housing.typed.bolts
    if typed is None or typed.count.content < 4 or typed.apart is None:
        return
    pried = foot_prying.of(bolts=bolt.count, moment=moment, down=sides.down, length=housing.typed.foot.length, apart=typed.apart)
    yield Line("pried", "bolts", say("Each pulled bolt then carries"), pried.each)


def tapped_lines(bench: Bench, bolt: Bolt) -> Iterator[Line]:
    """Engagement of a bolt from below in a tapped base, against what it needs; whether it bottoms."""
    housing, typed = bench.position.housing, bench.position.typed.bolts
    assert housing
    file = bench.position.place.file
    if housing.typed.tapped is None or typed is None or typed.length is None or typed.through is None:
        yield Line(
            "engagement",
            "bolts",
            say("Thread engaged"),
            Withheld(
                say("bolt length, what it passes, or the depth of the hole is not typed"),
                (Need("entry", file, "bolts: {length: 40 mm, through: 20 mm}"),),
            ),
        )
        return
    needed = needed_engagement(bolt, housing.typed.tapped.strength)
    found = tapped_hole.of(length=typed.length, through=typed.through, depth=housing.typed.tapped.depth, needed=needed)
    yield Line("engagement_needed", "bolts", say("Engagement needed, so that the bolt breaks first"), needed)
    yield Line("engagement", "bolts", say("Thread engaged"), found.engagement)
    yield Line("tapped_spare", "bolts", say("Thread left in the hole"), found.spare)
    yield Line("engagement_verdict", "bolts", say("Bolt in its tapped hole"), found.verdict)


def needed_engagement(bolt: Bolt, grade: object) -> Known:
    """The engagement at which the bolt breaks before a thread strips."""
    if grade is None:
        return Withheld(
            say("the material of the tapped hole is not typed"), (Need("entry", "library/housings.yml", "tapped: {strength: GJL-200}"),)
        )
    diameter, pitch = thread_figures(bolt.thread)
    strength = bolt_strength_class.of(strength_class=bolt.strength_class, diameter=diameter)
    area = thread_stress_area.of(diameter=diameter, pitch=pitch)
    breaking = bolt_breaking_load.of(tensile=strength.tensile, area=area.area)
    factor = strip_factor(diameter) if isinstance(diameter, Value) else diameter
    found = thread_engagement.of(
        diameter=diameter,
        pitch=pitch,
        force=breaking.force,
        base_shear=shear_strength(worded(grade)),
        bolt_shear=breaking.shear,
        limits_factor=factor,
    )
    return found.needed  # type: ignore[no-any-return]
