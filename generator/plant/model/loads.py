"""Loads on a shaft, each of a kind. Directions are clock faces seen along the shaft from its first end; 12 is up."""

from typing import Annotated, Any

from pydantic import Discriminator, Tag

from generator.plant.model.common import Angle, Diameter, Force, Length, Mass, Name, Part, Torque, Whole, may, needed
from generator.plant.quantities import Direction, OneOf, Quantity
from generator.value import Value

Clock = Annotated[Value, Direction()]
Power = Annotated[Value, Quantity("kW", low=0, high=20_000)]
Factor = Annotated[Value, Quantity("", low=0, high=10)]
At = needed("where it acts, from the face of the first end", "800 mm")


class Pull(Part):
    pull: Force = needed("the pull of this strand", "9.5 kN")
    toward: Clock = needed("which way it pulls", "9 o'clock")


class Weight(Part):
    kind: Annotated[Any, OneOf("weight")] = needed("the kind of load", "weight")
    at: Length = At
    mass: Mass = needed("what it weighs", "180 kg")


class BeltStrands(Part):
    kind: Annotated[Any, OneOf("belt strands")] = needed("the kind of load", "belt strands")
    at: Length = At
    tight: Pull = needed("the tight strand", "{pull: 9.5 kN, toward: 9 o'clock}")
    slack: Pull = needed("the slack strand", "{pull: 4.2 kN, toward: 8 o'clock}")


class BeltWrap(Part):
    kind: Annotated[Any, OneOf("belt wrap")] = needed("the kind of load", "belt wrap")
    at: Length = At
    pull: Force = needed("the pull of the belt on each side", "4.2 kN")
    wrap: Angle = needed("the angle the belt lies on the pulley", "40 deg")
    toward: Clock = needed("which way the resultant pulls", "2 o'clock")


class BeltDrive(Part):
    kind: Annotated[Any, OneOf("belt drive")] = needed("the kind of load", "belt drive")
    at: Length = At
    power: Power = needed("the power taken", "7.5 kW")
    pulley: Diameter = needed("pitch diameter of the pulley on this shaft", "280 mm")
    belt: Annotated[Any, OneOf("flat", "V", "synchronous")] = needed("the kind of belt", "V")
    toward: Clock = needed("which way the drive pulls", "4 o'clock")
    service: Factor | None = may("service factor", "1.3")


class Chain(Part):
    kind: Annotated[Any, OneOf("chain")] = needed("the kind of load", "chain")
    at: Length = At
    power: Power = needed("the power taken", "7.5 kW")
    teeth: Whole = needed("teeth of the sprocket on this shaft", "38")
    pitch: Length = needed("pitch of the chain", "25.4 mm")
    toward: Clock = needed("which way the chain pulls", "5 o'clock")
    service: Factor | None = may("service factor", "1.3")


class Gear(Part):
    kind: Annotated[Any, OneOf("gear")] = needed("the kind of load", "gear")
    at: Length = At
    power: Power = needed("the power taken", "15 kW")
    pitch_diameter: Diameter = needed("pitch diameter of the gear on this shaft", "200 mm")
    pressure_angle: Angle | None = may("pressure angle", "20 deg")
    helix: Angle | None = may("helix angle", "15 deg")
    toward: Clock = needed("where the mate stands", "3 o'clock")
    service: Factor | None = may("service factor", "1.2")


class Thrust(Part):
    kind: Annotated[Any, OneOf("thrust")] = needed("the kind of load", "thrust")
    at: Length = At
    force: Force = needed("the force along the shaft", "0.4 kN")
    toward: Name = needed("the end it pushes toward, or `either end`", "far end")


class SideForce(Part):
    kind: Annotated[Any, OneOf("side force")] = needed("the kind of load", "side force")
    at: Length = At
    force: Force = needed("the force across the shaft", "1.2 kN")
    toward: Clock = needed("which way it pushes", "6 o'clock")


class Unbalance(Part):
    kind: Annotated[Any, OneOf("unbalance")] = needed("the kind of load", "unbalance")
    at: Length = At
    mass: Mass = needed("mass of the rotor", "120 kg")
    grade: Annotated[Value, Quantity("mm/s", low=0, high=4000)] = needed("balance quality planned for in service", "16 mm/s")


class TurningMoment(Part):
    kind: Annotated[Any, OneOf("torque")] = needed("the kind of load", "torque")
    at: Length = At
    torque: Torque = needed("the torque taken or given here", "240 N.m")


class StatedReaction(Part):
    kind: Annotated[Any, OneOf("stated reaction")] = needed("the kind of load", "stated reaction")
    at: Name = needed("the position it acts at", "A")
    force: Force = needed("the reaction across the shaft as stated, on the housing", "4.2 kN")
    toward: Clock = needed("which way it pushes the housing", "6 o'clock")
    along: Force | None = may("the part along the shaft", "0.4 kN")
    shock: Any = may("`yes` where it comes in blows", "yes")


KINDS: dict[str, type[Part]] = {
    "weight": Weight, "belt strands": BeltStrands, "belt wrap": BeltWrap, "belt drive": BeltDrive, "chain": Chain, "gear": Gear,
    "thrust": Thrust, "side force": SideForce, "unbalance": Unbalance, "torque": TurningMoment, "stated reaction": StatedReaction,
}  # fmt: skip


def kind_of(load: Any) -> str:
    """Which of the kinds a typed load is."""
    return str(load.get("kind", "")) if isinstance(load, dict) else str(getattr(load, "kind", ""))


Load = Annotated[
    Annotated[Weight, Tag("weight")] | Annotated[BeltStrands, Tag("belt strands")] | Annotated[BeltWrap, Tag("belt wrap")]
    | Annotated[BeltDrive, Tag("belt drive")] | Annotated[Chain, Tag("chain")] | Annotated[Gear, Tag("gear")]
    | Annotated[Thrust, Tag("thrust")] | Annotated[SideForce, Tag("side force")] | Annotated[Unbalance, Tag("unbalance")]
    | Annotated[TurningMoment, Tag("torque")] | Annotated[StatedReaction, Tag("stated reaction")],
    Discriminator(kind_of),
]  # fmt: skip
