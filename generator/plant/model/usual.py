"""What may be usual: said once for the plant, an area, a machine or a shaft; the nearest wins, key by key."""

from typing import Annotated, Any

from generator.plant.model.common import (
    BoltSurface,
    Diameter,
    Hardness,
    Length,
    Name,
    Part,
    Share,
    StrengthClass,
    Temperature,
    ThreadState,
    UnderHead,
    Words,
    Yes,
    may,
    needed,
)
from generator.plant.quantities import BandOf, OneOf, Quantity
from generator.value import Band, Value

Zone = Annotated[Any, OneOf("none", "combustible dust", "food", "food and combustible dust")]


class Surroundings(Part):
    air: Temperature | None = may("temperature of the air around the machine", "5 degC")
    air_least: Temperature | None = may("the coldest air it starts in", "-20 degC")
    dust: Annotated[Any, OneOf("none", "light", "heavy", "light and abrasive", "heavy and abrasive")] | None = may(
        "dust at the bearing", "heavy and abrasive"
    )
    water: Annotated[Any, OneOf("none", "humid", "condensation", "splashed")] | None = may("water at the housing", "splashed")
    zone: Zone | None = may("what the place demands beside the ordinary", "combustible dust")
    shaking: Annotated[Value, Quantity("mm/s", low=0, high=200)] | None = may("vibration velocity at the housing, peak", "4 mm/s")


class Runs(Part):
    hours: Annotated[Value, Quantity("hour/day", low=0, high=24)] = needed("hours it runs in a day", "16 hour/day")
    days: Annotated[Value, Quantity("day/week", low=0, high=7)] = needed("days it runs in a week", "6 day/week")


class Grease(Part):
    planned: Name | None = may("the grease this position shall have: a name of `library/greases.yml`", "Thessaryn Rowan")
    inside: Name | None = may("the grease that is in it now, where known", "Thessaryn Rowan")
    gun: Name | None = may("the gun it is greased with: a name of `library/tools.yml`", "gun 3")
    feed: Annotated[Any, OneOf("gun", "automatic", "sealed for life", "oil")] | None = may("how it is lubricated; a gun unless said", "gun")
    purge: Annotated[Any, OneOf("relief plug", "open seals", "counted strokes", "wipe and weigh")] | None = may(
        "how old grease leaves", "relief plug"
    )


class Regrease(Part):
    when: Annotated[Any, OneOf("running", "stopped")] = needed("greased running or stopped", "stopped")
    because: Words = needed("the reason", "plant rule 3")


CLASSES = ("h5", "h6", "h7", "h8", "h9", "h10", "h11", "g6", "f7", "f8", "j5", "j6", "j7", "js5", "js6", "js7", "k5", "k6", "m5", "m6", "m7",
           "n5", "n6", "p6", "r6", "r7")  # fmt: skip


class Seat(Part):
    class_: Annotated[Any, OneOf(*CLASSES)] | None = may("tolerance class of the seat", "h9", "class")
    limits: Annotated[Band, BandOf("mm", low=3, high=1000)] | None = may("limits decided instead of a class", "59.95 to 60.00 mm")
    bought_as: Annotated[Any, OneOf("cold finished bar", "turned", "ground")] | None = may("how the shaft is bought", "cold finished bar")


class Steel(Part):
    grade: Name | None = may("grade of the shaft steel", "C45")
    hardness: Hardness | None = may("hardness of the shaft surface", "22 HRC")
    carbon: Share | None = may("carbon at the top of the grade's range", "0.50 %")
    rm: Annotated[Value, Quantity("MPa", low=100, high=2500)] | None = may("tensile strength", "600 MPa")
    re: Annotated[Value, Quantity("MPa", low=50, high=2500)] | None = may("yield strength", "340 MPa")


class Head(Part):
    washer: Annotated[Any, OneOf("hard", "none", "wide", "soft")] | None = may("washer under head or nut", "hard")
    on: UnderHead | None = may("what lies under it", "S235")


class BoltNut(Part):
    class_: StrengthClass | None = may("class of the nut", "8.8", "class")
    surface: BoltSurface | None = may("surface of the nut", "zinc")


class Bolts(Part):
    fastener: Name | None = may("the bolt: a name of `library/fasteners.yml`", "bolt M16 8.8")
    class_: StrengthClass | None = may("strength class or grade", "8.8", "class")
    surface: BoltSurface | None = may("surface of the bolt", "zinc")
    thread: ThreadState | None = may("state of the thread when tightened", "oiled")
    length: Length | None = may("length under the head", "90 mm")
    through: Length | None = may("what the bolt passes before it reaches the tapped hole, washer included", "15 mm")
    under_head: Head | None = may("what lies under the head", "{washer: hard, on: S235}")
    nut: BoltNut | None = may("the nut, where it is not of the bolt's class", "{class: A4-70, surface: stainless}")
    head_width: Length | None = may("width across flats of the head, for inch bolts", "15/16 in")
    torque: Annotated[Band, BandOf("N.m", low=0, high=100_000)] | None = may("a torque now in use here, to be judged", "38 to 42 N.m")
    torque_from: Name | None = may("where that torque was taken from", "torque chart for steel bolts")


class Tightening(Part):
    tool: Annotated[Any, OneOf("wrench with a scale", "wrench with a click", "angle", "impact wrench", "hand")] | None = may(
        "how bolts are tightened", "wrench with a scale"
    )
    lubricated: Yes | None = may("whether threads and head faces are oiled first", "yes")


class Wanted(Part):
    life: Annotated[Value, Quantity("hour", low=0, high=1_000_000)] = needed("hours it shall last", "40000 hour")
    reliability: Share | None = may("how many of a hundred shall reach it; 90 % unless said", "95 %")


class Usual(Part):
    surroundings: Surroundings | None = may("what is around the bearings", "{air: 5 degC, dust: light}")
    runs: Runs | None = may("how much the machines run", "{hours: 16 hour/day, days: 6 day/week}")
    grease: Grease | None = may("grease, gun and feed", "{planned: Thessaryn Rowan, gun: gun 3}")
    regrease: Regrease | None = may("greased running or stopped, and why", "{when: stopped, because: plant rule 3}")
    seat: Seat | None = may("the class shafts are made to", "{class: h9}")
    bolts: Bolts | None = may("the bolts used", '{class: "8.8", surface: zinc, thread: oiled}')
    steel: Steel | None = may("the steel of the shafts", "{grade: C45, hardness: 22 HRC}")
    tightening: Tightening | None = may("how bolts are tightened", "{tool: wrench with a scale, lubricated: yes}")
    wanted: Wanted | None = may("life asked of a bearing", "{life: 40000 hour}")
    cleanliness: Annotated[Any, OneOf("high", "normal", "slight to typical", "severe", "very severe")] | None = may(
        "cleanliness of mounting and regreasing", "normal"
    )


USUAL_KEYS = tuple(Usual.model_fields)
__all__ = ["CLASSES", "USUAL_KEYS", "Diameter", "Usual"]
