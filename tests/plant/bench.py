"""A small model with every shape a plant's file has, to hold examples against."""

from __future__ import annotations

from typing import Annotated, Any

from pydantic import BaseModel, ConfigDict, Discriminator, Field, Tag

from generator.plant.quantities import Date, OneOf, Quantity, ScaleOf, Text
from generator.value import Value

Length = Annotated[Value, Quantity("mm", low=0, high=100_000)]
Name = Annotated[Any, Text(120)]


class Part(BaseModel):
    model_config = ConfigDict(extra="forbid", frozen=True, arbitrary_types_allowed=True)


class Seat(Part):
    at: Length = Field(description="where it is", examples=["250 mm"])
    diameter: Length = Field(description="its diameter", examples=["60 mm"])


class Weight(Part):
    kind: Annotated[Any, OneOf("weight")]
    mass: Annotated[Value, Quantity("kg")]


class Torque(Part):
    kind: Annotated[Any, OneOf("torque")]
    torque: Annotated[Value, Quantity("N.m")]
    at: Length


def kind_of(load: Any) -> str:
    return str(load.get("kind", "")) if isinstance(load, dict) else ""


Load = Annotated[Annotated[Weight, Tag("weight")] | Annotated[Torque, Tag("torque")], Discriminator(kind_of)]


class Room(Part):
    model_config = ConfigDict(extra="allow", frozen=True, arbitrary_types_allowed=True)
    __pydantic_extra__: dict[str, Length]
    by: Annotated[Any, OneOf("guided frame")]


class Food(Part):
    registered: Annotated[Any, OneOf("incidental contact", "no contact")]


class Grease(Part):
    viscosity: Annotated[Value, ScaleOf("VG", low=2, high=3200)] | Annotated[Value, Quantity("mm2/s")]
    food: Food | Annotated[Any, OneOf("not registered")] | None = None
    opened: Annotated[Value, Date()] | None = None


class Bench(Part):
    speed: Annotated[Value, Quantity("rpm")] = Field(description="its speed", examples=["46 rpm"])
    seats: dict[Name, Seat] = Field(description="its seats", examples=["{A: {at: 250 mm, diameter: 60 mm}}"])
    loads: dict[Name, Load] | None = None
    room: Room | None = None
    grease: Grease | None = None
    class_: Annotated[Any, OneOf("h6", "h9")] | None = Field(default=None, alias="class")
