"""What every kind of file shares: the base of its parts, and the kinds of field that occur everywhere."""

from typing import Annotated, Any

from pydantic import BaseModel, ConfigDict, Field

from generator.plant.quantities import BandOf, Count, Date, OneOf, Percent, Quantity, ScaleOf, Text, ThreadSize, YesNo
from generator.value import Band, Value


class Part(BaseModel):
    """A mapping of known keys. Unknown keys are refused; nothing changes after reading."""

    model_config = ConfigDict(extra="forbid", frozen=True, arbitrary_types_allowed=True)


def needed(meaning: str, example: str, key: str | None = None) -> Any:
    """A key that must be there: what it means, how one is written, and the key where Python keeps the word for itself."""
    return Field(alias=key, description=meaning, examples=[example])


def may(meaning: str, example: str, key: str | None = None) -> Any:
    """A key that may be left out."""
    return Field(default=None, alias=key, description=meaning, examples=[example])


Name = Annotated[Any, Text(120)]
Words = Annotated[Any, Text(2000)]
Length = Annotated[Value, Quantity("mm", low=0, high=100_000)]
Diameter = Annotated[Value, Quantity("mm", low=3, high=1000)]
Mass = Annotated[Value, Quantity("kg", low=0, high=200_000)]
Force = Annotated[Value, Quantity("N", low=0, high=5_000_000)]
Torque = Annotated[Value, Quantity("N.m", low=0, high=100_000)]
TorqueBand = Annotated[Band, BandOf("N.m", low=0, high=100_000)]
Stress = Annotated[Value, Quantity("MPa", low=0, high=5000)]
Angle = Annotated[Value, Quantity("deg", low=0, high=360)]
Speed = Annotated[Value, Quantity("rpm", low=0, high=100_000)]
Temperature = Annotated[Value, Quantity("degC", low=-90, high=600)]
Share = Annotated[Value, Percent()]
Hardness = Annotated[Value, ScaleOf("HRC", low=1, high=70)]
Day = Annotated[Value, Date()]
Whole = Annotated[Value, Count(0, 1000)]
Thread = Annotated[Value, ThreadSize()]
Yes = Annotated[Any, YesNo()]

StrengthClass = Annotated[
    Any, OneOf("4.6", "4.8", "5.6", "5.8", "6.8", "8.8", "9.8", "10.9", "12.9", "grade 1", "grade 2", "grade 5", "grade 8",
               "A2-50", "A2-70", "A2-80", "A4-50", "A4-70", "A4-80", "unmarked")
]  # fmt: skip
BoltSurface = Annotated[Any, OneOf("plain", "zinc", "stainless", "not known")]
ThreadState = Annotated[Any, OneOf("as supplied", "oiled", "paste", "wax", "dry")]
BodyMaterial = Annotated[Any, OneOf("grey iron", "ductile iron", "steel", "stainless steel", "polymer", "aluminium")]
UnderHead = Annotated[
    Any, OneOf("S235", "E295", "GJL-150", "GJL-200", "GJL-250", "GJS-400", "1.4401", "aluminium wrought", "aluminium cast", "polymer")
]
ShaftMaterial = Annotated[
    Any, OneOf("carbon steel", "grey cast iron", "ductile iron", "stainless 1.4301", "stainless 1.4401", "stainless 1.4021",
               "duplex 1.4462", "aluminium alloy wrought", "aluminium alloy cast")
]  # fmt: skip
