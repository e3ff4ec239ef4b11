"""One machine, one file: `machines/<tag>.yml`."""

from typing import Annotated, Any

from pydantic import ConfigDict

from generator.plant.model.common import (
    Angle,
    Diameter,
    Hardness,
    Length,
    Mass,
    Name,
    Part,
    ShaftMaterial,
    Share,
    Speed,
    Temperature,
    Thread,
    Whole,
    Words,
    Yes,
    may,
    needed,
)
from generator.plant.model.loads import Clock, Load
from generator.plant.model.usual import Bolts, Grease, Regrease, Runs, Seat, Steel, Surroundings, Tightening, Usual, Wanted
from generator.plant.quantities import OneOf, Quantity
from generator.value import Value

Factor = Annotated[Value, Quantity("", low=1, high=6)]
Cleanliness = Annotated[Any, OneOf("high", "normal", "slight to typical", "severe", "very severe")]


class Isolation(Part):
    procedure: Name = needed("number of the plant's own isolation procedure", "ISO-INT-05")
    energies: list[Name] = needed(
        "every energy to be isolated or released, in plain English: tension, weight, spring, pressure, hydraulic, product or running down says that it stays when the "
        "drive is off; water or condensate that it is drained; gas or hot air that it is vented; hot, burner or steam that it warms the machine",
        "[electric drive, belt tension]",
    )


class ViewedFrom(Part):
    place: Name = needed("where one stands", "walkway")
    left: Name | None = may("the end seen on the left (not for a vertical shaft)", "drive end")


class Temperatures(Part):
    shaft: Temperature = needed("the shaft, running", "45 degC")
    frame: Temperature = needed("the frame or building between the supports, at the same time", "20 degC")
    coldest: Temperature | None = may("the coldest the shaft becomes with the frame as above", "-20 degC")


class Section(Part):
    to: Length = needed("where this diameter ends, from the face of the first end", "1440 mm")
    diameter: Diameter = needed("its diameter", "80 mm")
    hole: Length | None = may("a hole through it", "30 mm")


class Notch(Part):
    bending: Factor = needed("notch factor in bending", "2")
    torsion: Factor = needed("notch factor in torsion", "1.5")


class Gap(Part):
    at: Name = needed("the end of the shaft it is at", "far end")
    room: Length = needed("how far the shaft may move there", "4 mm")


class Floats(Part):
    """How a free unit floats, and how far toward each end of the shaft."""

    model_config = ConfigDict(extra="allow", frozen=True, arbitrary_types_allowed=True)
    __pydantic_extra__: dict[str, Annotated[Value, Quantity("mm", low=0, high=1000)]]
    by: Annotated[
        Any,
        OneOf("ring loose in its housing", "pin in a grooved shaft", "guided frame", "sliding cartridge", "clearance inside the bearing"),
    ] = needed("what lets it move along the shaft", "ring loose in its housing")


class Rings(Part):
    width: Length = needed("width of one locating ring", "12.5 mm")
    each_side: Whole = needed("how many on each side of the bearing", "1")


class Parts(Part):
    bearing: Name | None = may("a name of `library/bearings.yml`", "Orvane ball 60")
    sleeve: Name | None = may("a name of `library/sleeves.yml`", "Orvane sleeve 60")
    housing: Name | None = may("a name of `library/housings.yml`", "Orvane block 60")
    rings: Rings | None = may("locating rings of a split housing", "{width: 12.5 mm, each_side: 1}")


class Fitted(Part):
    unit: Name | None = may("the unit that is really there", "Orvane block unit 60")
    bearing: Name | None = may("the bearing that is really there", "Orvane ball 60")
    sleeve: Name | None = may("the sleeve that is really there", "Orvane sleeve 2 3/8 in")
    housing: Name | None = may("the housing that is really there", "Orvane block 60")
    nut_thread: Thread | None = may("thread read on the nut that is there", "3.340-12")
    seen: Name | None = may("who saw it, and when", "site engineer, 2026-02-10")


class Fitting(Part):
    place: Annotated[Any, OneOf("inside the guard", "outside the guard", "piped out", "piped outside the guard", "none")] = needed(
        "where the grease fitting is", "piped outside the guard"
    )
    path: Length | None = may("length of the pipe", "1200 mm")


class PositionTemperature(Part):
    bearing: Temperature | None = may("the housing beside the bearing, running and settled", "62 degC")
    ring_difference: Annotated[Value, Quantity("K", low=0, high=200)] | None = may("inner ring hotter than outer by", "10 K")


class TakeUp(Part):
    used: Length | None = may("travel used as designed; a reading replaces it", "60 mm")


class Watch(Part):
    monitor: Annotated[Any, OneOf("none", "temperature", "temperature and vibration")] = needed(
        "what watches this bearing all the time", "temperature"
    )
    stops_at: Temperature | None = may("temperature at which it stops the machine", "80 degC")


class Misaligned(Part):
    height: Length | None = may("difference in height against the other support", "14 mm")
    sideways: Length | None = may("difference sideways", "2 mm")
    over: Length = needed("the distance between the two supports", "1200 mm")


class Stands(Part):
    high: Length | None = may("how far it stands over its line", "0.3 mm")
    low: Length | None = may("how far it stands under its line", "0.3 mm")
    stiffness: Annotated[Value, Quantity("N/mm", low=1, high=1e9)] | None = may("how stiff it stands; rigid unless said", "80000 N/mm")


class Position(Part):
    at: Length | None = may("middle of the bearing, from the face of the first end", "250 mm")
    like: Name | None = may("a sibling on the same machine: all of it but what follows here", "C")
    holds: Annotated[Any, OneOf("fixed", "free")] | None = may("whether it holds the shaft endwise", "fixed")
    floats: Floats | None = may(
        "how it floats, and how far toward each end (of a free unit)", "{by: guided frame, drive end: 3 mm, far end: 3 mm}"
    )
    unit: Name | None = may("a unit of `library/units.yml`", "Orvane block unit 60")
    parts: Parts | None = may(
        "parts named one by one, instead of a unit or over it", "{bearing: Brelloch plain barrel 75, housing: Brelloch split 75}"
    )
    fitted: Fitted | None = may("what is really there, where it differs from what is meant", "{sleeve: Orvane sleeve 2 3/8 in}")
    nut: Name | None = may("the end of the shaft the nut is toward", "drive end")
    collar: Name | None = may("the end of the shaft the collar or screws are toward", "far end")
    frame: Name | None = may("of a flange: the end of the shaft its frame is toward, seen from the flange", "drive end")
    mounted: Annotated[Any, OneOf("first", "second")] | None = may(
        "which unit of the shaft is locked first; the fixed one unless said", "first"
    )
    bolts: Bolts | None = may("housing bolts", "{length: 90 mm}")
    seat: Seat | None = may("class or limits of the seat here", "{class: h8}")
    grease: Grease | None = may("grease here", "{planned: Thessaryn Rowan, gun: gun 3}")
    regrease: Regrease | None = may("greased running or stopped", "{when: running, because: piped out}")
    fitting: Fitting | None = may("the grease fitting", "{place: piped outside the guard}")
    temperature: PositionTemperature | None = may("temperatures at this bearing", "{bearing: 62 degC}")
    take_up: TakeUp | None = may("of a take-up unit", "{used: 60 mm}")
    watched: Watch | None = may("what watches it", "{monitor: temperature, stops_at: 80 degC}")
    inside: Annotated[Any, OneOf("the casing", "the open")] | None = may("whether the bearing sits inside the casing", "the open")
    misaligned: Misaligned | None = may(
        "how its seat lies against the other support, by design or survey", "{height: 14 mm, over: 1200 mm}"
    )
    base_toward: Clock | None = may("which way the foot or flange faces, seen from the first end; 6 o'clock unless said", "6 o'clock")
    stands: Stands | None = may("how its support stands, where it is neither true nor rigid", "{low: 0.3 mm}")
    jack: Length | None = may("where the jack stands while this bearing is off; at the bearing unless said", "320 mm")
    stands_on: Annotated[Any, OneOf("bare clean metal", "painted", "galvanised", "shimmed")] | None = may(
        "the face the foot stands on", "painted"
    )
    mounting_faces: Annotated[Any, OneOf("oiled", "dry")] | None = may("how the seat is mounted", "oiled")
    cites: dict[Name, Name] | None = may(
        "a figure taken from a certain document, where more than one could give it", "{nut_turn: Orvane 21}"
    )
    surroundings: Surroundings | None = may("what is around this bearing", "{air: 60 degC, dust: light}")
    runs: Runs | None = may("how much it runs", "{hours: 8 hour/day, days: 5 day/week}")
    tightening: Tightening | None = may("how bolts are tightened here", "{tool: wrench with a click, lubricated: yes}")
    cleanliness: Cleanliness | None = may("cleanliness of mounting and regreasing", "normal")
    wanted: Wanted | None = may("life asked of this bearing", "{life: 40000 hour, reliability: 90 %}")
    stage: Annotated[Any, OneOf("new", "just replaced", "in service")] | None = may(
        "where it is in its life; in service unless said", "new"
    )
    note: Words | None = may("a remark for the crew, shown as typed", "mind the cable tray above")


class State(Part):
    share: Share = needed("share of the running time", "70 %")
    speed: Speed | None = may("its speed, where it differs", "30 rpm")
    times: dict[Name, Annotated[Value, Quantity("", low=0, high=20)]] | None = may("factors on loads by name", "{belt: 0.5}")


class Shaft(Part):
    name: Name = needed("what the crew calls it", "head pulley shaft")
    ends: list[Name] = needed("its two ends in order; every axial word is one of these", "[drive end, far end]")
    lies: Annotated[Any, OneOf("horizontal", "inclined", "vertical")] = needed(
        "how it lies; the first end of a vertical or inclined shaft is the upper one", "horizontal"
    )
    slope: Angle | None = may("how steeply an inclined shaft lies, from level", "15 deg")
    viewed_from: ViewedFrom = needed("where the drawing is seen from", "{place: walkway, left: drive end}")
    turns: Annotated[Any, OneOf("clockwise", "anticlockwise", "both ways")] | None = may(
        "looking along the shaft from its first end", "clockwise"
    )
    backstop: Yes | None = may("whether a backstop keeps it from turning back", "yes")
    speed: Speed = needed("its speed; the highest where it varies", "46 rpm")
    temperature: Temperatures | None = may("shaft and frame, running", "{shaft: 25 degC, frame: 10 degC}")
    material: ShaftMaterial | None = may("what the shaft is made of; carbon steel unless said", "carbon steel")
    frame_material: ShaftMaterial | None = may("what the frame is made of; carbon steel unless said", "carbon steel")
    sections: list[Section] = needed("diameters from the face of the first end; they live here only", "[{to: 1440 mm, diameter: 80 mm}]")
    seal_gap: Gap | None = may("a seal that growth can hurt", "{at: far end, room: 4 mm}")
    coupling_gap: Gap | None = may("a coupling that growth can close", "{at: drive end, room: 0.8 mm}")
    weight_on: Name | None = may("the position the weight of a vertical shaft hangs on or stands on", "A")
    positions: dict[Name, Position] = needed(
        "its bearings, by capital letters that run on over the shafts of the machine",
        "{A: {at: 250 mm, holds: fixed, unit: Orvane block unit 60}}",
    )
    loads: dict[Name, Load] | None = may("what acts on it, by name", "{pulley: {kind: weight, at: 800 mm, mass: 180 kg}}")
    states: dict[Name, State] | None = may("how it is run, by name", "{loaded: {share: 70 %}, empty: {share: 30 %}}")
    steel: Steel | None = may("the steel of this shaft", "{grade: C45, hardness: 22 HRC}")
    notch: Notch | None = may("notch factors at the worst place; those of a sleeve's seat unless said", "{bending: 2, torsion: 1.5}")
    usual: Usual | None = may("what is usual on this shaft", "{seat: {class: h9}}")


class Vibration(Part):
    power: Annotated[Value, Quantity("kW", low=0, high=100_000)] = needed("power of the machine", "22 kW")
    height: Length | None = may("height of its shaft over the base", "200 mm")
    support: Annotated[Any, OneOf("rigid", "flexible")] = needed("what it stands on", "rigid")
    fan: Yes | None = may("whether it is a fan, which has limits of its own", "yes")


class Machine(Part):
    tag: Name = needed("its tag, as on the machine", "INT-05")
    name: Name = needed("what the crew calls it", "Cross belt to the cleaner")
    area: Name = needed("the code of its area in `plant.yml`", "INT")
    walk: Whole | None = may("its place in the walk through the area; by tag unless said", "3")
    isolation: Isolation = needed(
        "how it is made safe: the plant's own procedure, and this machine's energies", "{procedure: ISO-INT-05, energies: [electric drive]}"
    )
    moving: Words | None = may("what moves in it, for the first caution", "The belt")
    hazards: list[Annotated[Any, OneOf("hot surface", "fall from height", "may turn in the wind", "steam", "heavy rotor")]] | None = may(
        "standing hazards beside moving parts, dust and food", "[hot surface]"
    )
    vibration: Vibration | None = may("what its vibration is judged by", "{power: 22 kW, height: 200 mm, support: rigid}")
    usual: Usual | None = may("what is usual on this machine", "{regrease: {when: stopped, because: plant rule 3}}")
    shafts: dict[Name, Shaft] = needed("its shafts, by a lower-case word", "{head: {...}}")
    note: Words | None = may("a remark for the crew, shown as typed", "key of the gate at the control room")


__all__ = ["Angle", "Hardness", "Machine", "Mass", "Position", "Shaft"]
