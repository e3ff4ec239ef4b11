"""What acts on a shaft, as forces at places: each typed load made into its parts across and along the shaft."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import dataclass, replace
from typing import Any

from generator.calc.bending import moment_in_state
from generator.calc.drives import build_up_force, residual_unbalance
from generator.calc.shafts import load_in_state, shaft_mass, weight_of_mass, weight_on_slope, wrap_resultant
from generator.mounting.bench import worded
from generator.mounting.pulls import PULLS, Drive
from generator.plant.plant import Plant, Shaft
from generator.say import say
from generator.tables.materials import elasticity
from generator.value import Known, LookedUp, Need, Results, Rows, Value, Withheld

WEIGHTS = ("weight",)
DOWN = Value(180.0, "deg", LookedUp(None, say("weight acts downward")))
NO_FORCE = Value(0.0, "N", LookedUp(None, say("nothing acts this way")))


@dataclass(frozen=True)
class Act:
    """One load on a shaft: across it with its direction, or along it, at a place.

    `nature`: "weight" stays when the drive is off, "drive" goes with it, "turning" turns with the shaft. `along` is positive toward
    the second end; `either`: it may come from either end. `couple` acts in the plane of `toward`. `load`: the typed load it is of.
    """

    name: str
    at: Known
    nature: str
    across: Known | None = None
    toward: Known | None = None
    along: Known | None = None
    either: bool = False
    couple: Known | None = None
    torque: Known | None = None
    load: str = ""


@dataclass(frozen=True)
class Steel:
    """What the shaft is made of: stiffness, density, and its sections as rows."""

    modulus: Known
    density: Known
    sections: Rows


def steel_of(shaft: Shaft) -> Steel:
    """The material and the sections of a shaft."""
    material = shaft.typed.material
    word = (
        worded(material) if material is not None else Value("carbon steel", "", LookedUp(None, say("taken for carbon steel unless said")))
    )
    modulus, density = elasticity(word)
    rows = [{"to": one.to, "diameter": one.diameter} | ({"hole": one.hole} if one.hole else {}) for one in shaft.typed.sections]
    return Steel(modulus, density, Rows(tuple(Results(row) for row in rows)))


def acts_on(plant: Plant, shaft: Shaft, speed: Known) -> tuple[Act, ...]:
    """Everything that acts on a shaft at a speed, its own weight along it included where it does not lie level."""
    found: list[Act] = []
    for name, load in (shaft.typed.loads or {}).items():
        found += [replace(act, load=str(name)) for act in _acts(plant, shaft, str(name), load, speed)]
    return tuple(found) + tuple(_own_weight_along(shaft))


def in_state(act: Act, times: Value | None) -> Act:
    """The act as it is in a state."""
    if times is None:
        return act
    by = {"across": load_in_state, "along": load_in_state, "couple": moment_in_state, "torque": moment_in_state}
    scaled = {part: method.of(load=value, times=times) for part, method in by.items() if (value := getattr(act, part)) is not None}
    return replace(act, **scaled)


def tilt(shaft: Shaft) -> Results | None:
    """How weight divides across and along a shaft that does not lie level; None for one that does."""
    if str(shaft.typed.lies) == "horizontal":
        return None
    if str(shaft.typed.lies) == "vertical":
        return weight_on_slope.of(slope=Value(90.0, "deg", worded(shaft.typed.lies).reason))  # type: ignore[no-any-return]
    slope: Known = shaft.typed.slope or Withheld(
        say("how steeply the shaft lies is not typed"), (Need("entry", shaft.place.file, "slope: 15 deg"),)
    )
    return weight_on_slope.of(slope=slope)  # type: ignore[no-any-return]


def _acts(plant: Plant, shaft: Shaft, name: str, load: Any, speed: Known) -> Iterator[Act]:
    kind = str(load.kind)
    if kind == "stated reaction":
        return
    if kind in PULLS:
        yield from (Act(pull.name, load.at, "drive", **pull.parts) for pull in PULLS[kind](Drive(plant, shaft, name, load, speed)))
        return
    yield from _PLAIN[kind](shaft, name, load, speed)


def _weight(shaft: Shaft, name: str, load: Any, _: Known) -> Iterator[Act]:
    share = tilt(shaft)
    if share is None:
        yield Act(name, load.at, "weight", weight_of_mass.of(mass=load.mass), DOWN)
        return
    upright = str(shaft.typed.lies) == "vertical"
    across = None if upright else weight_of_mass.of(mass=load.mass, share=share.across)
    yield Act(name, load.at, "weight", across, None if upright else DOWN, weight_of_mass.of(mass=load.mass, share=share.along))


def _strands(_: Shaft, name: str, load: Any, __: Known) -> Iterator[Act]:
    yield Act(say("{name}, tight strand", name=name), load.at, "drive", load.tight.pull, load.tight.toward)
    yield Act(say("{name}, slack strand", name=name), load.at, "drive", load.slack.pull, load.slack.toward)


def _wrap(_: Shaft, name: str, load: Any, __: Known) -> Iterator[Act]:
    yield Act(name, load.at, "drive", wrap_resultant.of(pull=load.pull, wrap=load.wrap), load.toward)


def _side(_: Shaft, name: str, load: Any, __: Known) -> Iterator[Act]:
    yield Act(name, load.at, "drive", load.force, load.toward)


def _thrust(shaft: Shaft, name: str, load: Any, _: Known) -> Iterator[Act]:
    yield along_act(shaft, name, load.at, load.force, str(load.toward))


def _unbalance(_: Shaft, name: str, load: Any, speed: Known) -> Iterator[Act]:
    found = residual_unbalance.of(mass=load.mass, grade=load.grade, speed=speed)
    yield Act(name, load.at, "turning", found.force)
    if load.build_up is not None:
        force = build_up_force.of(mass=load.build_up.mass, radius=load.build_up.radius, speed=speed)
        yield Act(say("{name}, build-up", name=name), load.at, "turning", force)


def _torque(_: Shaft, name: str, load: Any, __: Known) -> Iterator[Act]:
    yield Act(name, load.at, "drive", torque=load.torque)


_PLAIN: dict[str, Callable[[Shaft, str, Any, Known], Iterator[Act]]] = {
    "weight": _weight, "belt strands": _strands, "belt wrap": _wrap, "side force": _side, "thrust": _thrust, "unbalance": _unbalance,
    "torque": _torque,
}  # fmt: skip


def along_act(shaft: Shaft, name: str, at: Known, force: Known, end: str) -> Act:
    """A push along the shaft toward an end, or toward either."""
    if end == "either end" or not isinstance(force, Value):
        return Act(name, at, "drive", along=force, either=True)
    signed = force if end == shaft.ends[1] else load_in_state.of(load=force, times=_BACK)
    return Act(name, at, "drive", along=signed)


_BACK = Value(-1.0, "", LookedUp(None, say("toward the first end, counted negative")))


def _own_weight_along(shaft: Shaft) -> Iterator[Act]:
    share = tilt(shaft)
    if share is None:
        return
    steel = steel_of(shaft)
    mass = shaft_mass.of(sections=steel.sections, density=steel.density)
    yield Act(
        say("the shaft itself"),
        Value(0.0, "mm", LookedUp(None, say("along the whole shaft"))),
        "weight",
        along=weight_of_mass.of(mass=mass, share=share.along),
    )
