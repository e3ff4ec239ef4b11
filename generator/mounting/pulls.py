"""What each kind of drive brings onto a shaft, from its typed data: one function a kind, listed in PULLS."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import dataclass
from typing import Any

from generator.calc.conveying import conveyor_pulley_resultant, elevator_head_shaft, screw_radius, screw_thrust
from generator.calc.drives import (
    belt_pull_euler,
    belt_pull_multiple,
    belt_wrap,
    chain_pull,
    coupling_allowance,
    coupling_reaction,
    drive_torque,
    effective_pull,
    gear_forces,
    greater_pull,
    peripheral_speed,
    service_factor,
    service_torque,
)
from generator.calc.shafts import couple_of_push, load_in_state
from generator.mounting.bench import worded
from generator.mounting.practice import practice
from generator.plant.plant import Plant, Shaft
from generator.say import say
from generator.tables.drives import belt_factor, pulley_friction
from generator.value import Known, LookedUp, Need, Value, Withheld


@dataclass(frozen=True)
class Pull:
    """One force of a drive: its name, and its parts as an Act takes them."""

    name: str
    parts: dict[str, Any]


@dataclass(frozen=True)
class Drive:
    """One typed drive: the plant and shaft it is on, its name and data, and the speed of the shaft."""

    plant: Plant
    shaft: Shaft
    name: str
    load: Any
    speed: Known


def _with_service(force: Known, service: Value | None) -> Known:
    if service is None:
        return force.remark(say("no service factor is typed")) if isinstance(force, Value) else force
    return service_factor.of(force=force, factor=service)  # type: ignore[no-any-return]


def _twist(of: Drive, torque: Known) -> Known:
    """The torque that goes on into the shaft: with the service factor, where one is typed, as the pull that goes with it."""
    service = of.load.service
    return torque if service is None else service_torque.of(torque=torque, factor=service)  # type: ignore[no-any-return]


def _typed_service(force: Known, service: Value | None) -> Known:
    """The force, which has its service factor already, marked where none was typed."""
    return force.remark(say("no service factor is typed")) if service is None and isinstance(force, Value) else force


def _belt(of: Drive) -> Iterator[Pull]:
    torque = drive_torque.of(power=of.load.power, speed=of.speed)
    pull = _with_service(effective_pull.of(torque=torque, diameter=of.load.pulley), of.load.service)
    factor = belt_factor(worded(of.load.belt))
    if of.load.mate is None:
        across = belt_pull_multiple.of(pull=pull, factor=factor)
        yield Pull(of.name, {"across": across, "toward": of.load.toward, "torque": _twist(of, torque)})
        return
    wraps = belt_wrap.of(one=of.load.pulley, other=of.load.mate.pulley, centres=of.load.mate.centres)
    by_slip = belt_pull_euler.of(
        pull=pull,
        wrap=wraps.small,
        friction=of.load.mate.friction,
        groove=of.load.mate.groove,
        mass=of.load.mate.belt,
        belt_speed=peripheral_speed.of(diameter=of.load.pulley, speed=of.speed) if of.load.mate.belt is not None else None,
        tightened=of.load.mate.tightened,
    )
    by_factor = belt_pull_multiple.of(pull=pull, factor=factor, wrap=wraps.small)
    yield Pull(
        of.name,
        {"across": greater_pull.of(one=by_slip.running, other=by_factor), "toward": of.load.toward, "torque": _twist(of, torque)},
    )


def _conveyor(of: Drive) -> Iterator[Pull]:
    found = conveyor_pulley_resultant.of(
        power=of.load.power,
        belt_speed=of.load.belt_speed,
        wrap=of.load.wrap,
        friction=pulley_friction(worded(of.load.runs_in), worded(of.load.face)),
        least_slack=of.load.least_slack,
        service=of.load.service,
    )
    torque = drive_torque.of(power=of.load.power, speed=of.speed)
    yield Pull(
        say("{name}, tight strand", name=of.name),
        {"across": _typed_service(found.tight, of.load.service), "toward": of.load.tight, "torque": _twist(of, torque)},
    )
    yield Pull(say("{name}, slack strand", name=of.name), {"across": found.slack, "toward": of.load.slack})


def _elevator(of: Drive) -> Iterator[Pull]:
    found = elevator_head_shaft.of(
        lift=of.load.lift,
        carries=of.load.carries,
        belt_speed=of.load.belt_speed,
        strand=of.load.belt,
        boot=of.load.boot,
        digging=of.load.digging,
        friction=of.load.friction,
    )
    down = Value(180.0, "deg", LookedUp(None, say("both strands hang down")))
    yield Pull(of.name, {"across": found.load, "toward": down})


def _chain(of: Drive) -> Iterator[Pull]:
    found = chain_pull.of(power=of.load.power, teeth=of.load.teeth, pitch=of.load.pitch, speed=of.speed)
    torque = drive_torque.of(power=of.load.power, speed=of.speed)
    yield Pull(of.name, {"across": _with_service(found.pull, of.load.service), "toward": of.load.toward, "torque": _twist(of, torque)})


def _gear(of: Drive) -> Iterator[Pull]:
    """The force around stands across the line to the mate: against the rotation where the gear drives, with it where it is driven."""
    torque = drive_torque.of(power=of.load.power, speed=of.speed)
    angle = of.load.pressure_angle or Value(20.0, "deg", LookedUp(None, say("pressure angle unless said")))
    tooth = gear_forces.of(torque=torque, diameter=of.load.pitch_diameter, pressure_angle=angle, helix=of.load.helix)
    missing = _gear_gaps(of)
    around: Known = Withheld(missing, (Need("entry", of.shaft.place.file, "does: driven by its mate"),)) if missing else tooth.tangential
    yield Pull(
        say("{name}, around", name=of.name),
        {"across": _with_service(around, of.load.service), "toward": _turned(of.load.toward, _around(of)), "torque": _twist(of, torque)},
    )
    parting = {"across": _with_service(tooth.radial, of.load.service), "toward": _turned(of.load.toward, 180)}
    if of.load.helix is not None:
        yield from _helical(of, tooth)
    yield Pull(say("{name}, parting", name=of.name), parting)


def _gear_gaps(of: Drive) -> str:
    if of.load.does is None:
        return say("whether the gear drives its mate or is driven is not typed")
    if of.shaft.typed.turns is None:
        return say("which way the shaft turns is not typed")
    if str(of.shaft.typed.turns) == "both ways":
        return say("the shaft turns both ways: the force around is judged for each way, as a shaft of its own")
    return say("the hand of the helix is not typed") if of.load.helix is not None and of.load.hand is None else ""


def _around(of: Drive) -> float:
    """Where the force around points, from the mate's clock face: a driven gear is pushed the way its teeth move at the mate."""
    with_motion = 90 if str(of.shaft.typed.turns) == "clockwise" else -90
    return with_motion if str(of.load.does) == "driven by its mate" else -with_motion


def _helical(of: Drive, tooth: Any) -> Iterator[Pull]:
    """The push of a helix along the shaft; where the shaft turns both ways it may come from either end.

    A right-hand driver turning clockwise, seen from the first end, is pushed toward the second, as a screw is; each change turns it round.
    """
    force = _with_service(tooth.axial, of.load.service)
    if of.load.hand is None or of.load.does is None or of.shaft.typed.turns is None:
        yield Pull(say("{name}, along", name=of.name), {"along": force, "either": True})
        return
    if str(of.shaft.typed.turns) == "both ways":
        yield Pull(say("{name}, along", name=of.name), {"along": force, "either": True})
        return
    turns = (str(of.load.hand) == "right", str(of.load.does) == "drives its mate", str(of.shaft.typed.turns) == "clockwise")
    sign = 1.0 if sum(turns) % 2 == 1 else -1.0
    signed = load_in_state.of(load=force, times=Value(sign, "", LookedUp(None, say("by hand of the helix and rotation"))))
    arm = couple_of_push.of(force=signed, diameter=of.load.pitch_diameter)
    yield Pull(say("{name}, along", name=of.name), {"along": signed, "couple": arm, "toward": of.load.toward})


def _turned(toward: Value, by: float) -> Value:
    return Value((toward.content + by) % 360, "deg", toward.reason, toward.remarks)


def _screw(of: Drive) -> Iterator[Pull]:
    torque = drive_torque.of(power=of.load.power, speed=of.speed)
    found = screw_thrust.of(torque=torque, radius=screw_radius.of(diameter=of.load.diameter), lead=of.load.lead, friction=of.load.friction)
    force = _with_service(found.thrust, of.load.service)
    if str(of.load.toward) == "either end":
        yield Pull(of.name, {"along": force, "either": True, "torque": _twist(of, torque)})
        return
    back = Value(-1.0, "", LookedUp(None, say("toward the first end, counted negative")))
    signed = force if str(of.load.toward) == of.shaft.ends[1] else load_in_state.of(load=force, times=back)
    yield Pull(of.name, {"along": signed, "torque": _twist(of, torque)})


def _coupling(of: Drive) -> Iterator[Pull]:
    torque = drive_torque.of(power=of.load.power, speed=of.speed)
    if of.load.stiffness is not None and of.load.offset is not None:
        across = coupling_reaction.of(stiffness=of.load.stiffness, offset=of.load.offset)
    else:
        pull = effective_pull.of(torque=torque, diameter=of.load.circle)
        across = coupling_allowance.of(pull=pull, share=practice(of.plant, "coupling_share"))
    yield Pull(of.name, {"across": across, "toward": of.load.toward, "torque": torque})


PULLS: dict[str, Callable[[Drive], Iterator[Pull]]] = {
    "belt drive": _belt, "conveyor pulley": _conveyor, "elevator head": _elevator, "chain": _chain, "gear": _gear, "screw": _screw,
    "coupling": _coupling,
}  # fmt: skip
