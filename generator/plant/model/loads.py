"""Loads on a shaft, each of a kind. Directions are clock faces seen along the shaft from its first end; 12 is up."""

from typing import Annotated, Any

from pydantic import Discriminator, Tag

from generator.plant.model.common import Angle, Diameter, Force, Length, Mass, Name, Part, Torque, Whole, Yes, may, needed
from generator.plant.quantities import Direction, OneOf, Quantity
from generator.value import Value

Clock = Annotated[Value, Direction()]
Power = Annotated[Value, Quantity("kW", low=0, high=20_000)]
Factor = Annotated[Value, Quantity("", low=0, high=10)]
Rate = Annotated[Value, Quantity("m/s", low=0, high=100)]
PerLength = Annotated[Value, Quantity("kg/m", low=0, high=1000)]
Friction = Annotated[Value, Quantity("", low=0, high=1.2)]
At = needed("where it acts, from the face of the first end", "800 mm")
SERVICE = may("service factor; it is applied once, to the pull", "1.3")
POWER = needed("the power taken", "7.5 kW")


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


class Mate(Part):
    pulley: Diameter = needed("pitch diameter of the other pulley", "560 mm")
    centres: Length = needed("distance of the two shafts", "900 mm")
    groove: Angle | None = may("angle of the V groove; flat unless said", "38 deg")
    friction: Friction = needed("friction of belt on pulley", "0.3")
    belt: PerLength | None = may("mass of the belt, all strands side by side", "0.4 kg/m")
    tightened: Factor | None = may("how much tighter than the slip limit the belt is set", "1.4")


class BeltDrive(Part):
    kind: Annotated[Any, OneOf("belt drive")] = needed("the kind of load", "belt drive")
    at: Length = At
    power: Power = POWER
    pulley: Diameter = needed("pitch diameter of the pulley on this shaft", "280 mm")
    belt: Annotated[Any, OneOf("flat", "V", "synchronous")] = needed("the kind of belt", "V")
    toward: Clock = needed("which way the drive pulls", "4 o'clock")
    mate: Mate | None = may(
        "the other pulley, for the pull by the slip limit", "{pulley: 560 mm, centres: 900 mm, friction: 0.3, tightened: 1.4}"
    )
    service: Factor | None = SERVICE


class Chain(Part):
    kind: Annotated[Any, OneOf("chain")] = needed("the kind of load", "chain")
    at: Length = At
    power: Power = POWER
    teeth: Whole = needed("teeth of the sprocket on this shaft", "38")
    pitch: Length = needed("pitch of the chain", "25.4 mm")
    toward: Clock = needed("which way the chain pulls", "5 o'clock")
    service: Factor | None = SERVICE


class Gear(Part):
    kind: Annotated[Any, OneOf("gear")] = needed("the kind of load", "gear")
    at: Length = At
    power: Power = needed("the power taken", "15 kW")
    pitch_diameter: Diameter = needed("pitch diameter of the gear on this shaft", "200 mm")
    pressure_angle: Angle | None = may("pressure angle", "20 deg")
    helix: Angle | None = may("helix angle", "15 deg")
    hand: Annotated[Any, OneOf("right", "left")] | None = may("hand of the helix", "right")
    does: Annotated[Any, OneOf("drives its mate", "driven by its mate")] | None = may("which of the two drives", "driven by its mate")
    toward: Clock = needed("where the mate stands", "3 o'clock")
    service: Factor | None = SERVICE


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


class BuildUp(Part):
    mass: Mass = needed("what sticks to it, on one side", "0.2 kg")
    radius: Length = needed("how far out", "400 mm")


class Unbalance(Part):
    kind: Annotated[Any, OneOf("unbalance")] = needed("the kind of load", "unbalance")
    at: Length = At
    mass: Mass = needed("mass of the rotor; its weight is a load of its own", "120 kg")
    grade: Annotated[Value, Quantity("mm/s", low=0, high=4000)] = needed("balance quality planned for in service", "16 mm/s")
    build_up: BuildUp | None = may("what builds up on it", "{mass: 0.2 kg, radius: 400 mm}")


class ConveyorPulley(Part):
    kind: Annotated[Any, OneOf("conveyor pulley")] = needed("the kind of load", "conveyor pulley")
    at: Length = At
    power: Power = POWER
    belt_speed: Rate = needed("speed of the belt", "1.2 m/s")
    wrap: Angle = needed("the angle the belt lies on the pulley", "190 deg")
    face: Annotated[Any, OneOf("bare", "rubber", "polyurethane", "ceramic")] = needed("face of the pulley", "rubber")
    runs_in: Annotated[Any, OneOf("design", "dry", "wet clean", "wet dirty")] = needed("what it runs in", "wet clean")
    tight: Clock = needed("which way the tight strand pulls", "9 o'clock")
    slack: Clock = needed("which way the slack strand pulls", "8:30 o'clock")
    least_slack: Force | None = may("least pull of the slack strand, for sag or by the take-up", "1.5 kN")
    service: Factor | None = SERVICE


class ElevatorHead(Part):
    kind: Annotated[Any, OneOf("elevator head")] = needed("the kind of load", "elevator head")
    at: Length = At
    lift: Length = needed("height from boot to head", "20 m")
    carries: Annotated[Value, Quantity("t/h", low=0, high=10_000)] = needed("what it lifts", "72 t/h")
    belt_speed: Rate = needed("speed of the belt or chain", "1.6 m/s")
    belt: PerLength = needed("mass of belt and buckets of one strand", "14 kg/m")
    boot: Force = needed("pull of each strand at the boot", "1.5 kN")
    digging: Length = needed("lift that digging in the boot is worth", "2 m")
    friction: Friction = needed("friction of belt on pulley", "0.3")


class ScrewDrive(Part):
    kind: Annotated[Any, OneOf("screw")] = needed("the kind of load", "screw")
    at: Length = At
    power: Power = POWER
    diameter: Diameter = needed("outside diameter of the screw", "300 mm")
    lead: Length = needed("lead of the flight", "300 mm")
    friction: Friction = needed("friction of the material on the flight", "0.4")
    toward: Name = needed("the end the shaft is pushed toward, against the material's way, or `either end`", "drive end")
    service: Factor | None = SERVICE


class CouplingPull(Part):
    kind: Annotated[Any, OneOf("coupling")] = needed("the kind of load", "coupling")
    at: Length = At
    power: Power = POWER
    circle: Diameter = needed("circle on which its elements stand", "180 mm")
    stiffness: Annotated[Value, Quantity("N/mm", low=0, high=1e7)] | None = may("its stiffness across the shaft", "900 N/mm")
    offset: Length | None = may("how far the shafts are out of line", "0.2 mm")
    toward: Clock = needed("which way it may pull; take the way that is worst", "6 o'clock")


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
    shock: Yes | None = may("`yes` where it comes in blows", "yes")


KINDS: dict[str, type[Part]] = {
    "weight": Weight, "belt strands": BeltStrands, "belt wrap": BeltWrap, "belt drive": BeltDrive, "conveyor pulley": ConveyorPulley,
    "elevator head": ElevatorHead, "chain": Chain, "gear": Gear, "screw": ScrewDrive, "coupling": CouplingPull, "thrust": Thrust,
    "side force": SideForce, "unbalance": Unbalance, "torque": TurningMoment, "stated reaction": StatedReaction,
}  # fmt: skip


def kind_of(load: Any) -> str:
    """Which of the kinds a typed load is."""
    return str(load.get("kind", "")) if isinstance(load, dict) else str(getattr(load, "kind", ""))


Load = Annotated[
    Annotated[Weight, Tag("weight")] | Annotated[BeltStrands, Tag("belt strands")] | Annotated[BeltWrap, Tag("belt wrap")]
    | Annotated[BeltDrive, Tag("belt drive")] | Annotated[ConveyorPulley, Tag("conveyor pulley")]
    | Annotated[ElevatorHead, Tag("elevator head")] | Annotated[Chain, Tag("chain")] | Annotated[Gear, Tag("gear")]
    | Annotated[ScrewDrive, Tag("screw")] | Annotated[CouplingPull, Tag("coupling")]
    | Annotated[Thrust, Tag("thrust")] | Annotated[SideForce, Tag("side force")] | Annotated[Unbalance, Tag("unbalance")]
    | Annotated[TurningMoment, Tag("torque")] | Annotated[StatedReaction, Tag("stated reaction")],
    Discriminator(kind_of),
]  # fmt: skip
