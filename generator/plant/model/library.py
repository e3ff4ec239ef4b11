"""The library: what is bought, by designation. One file a kind, in `library/`."""

from typing import Annotated, Any

from generator.plant.model.common import (
    Angle,
    BodyMaterial,
    BoltSurface,
    Day,
    Diameter,
    Force,
    Hardness,
    Length,
    Mass,
    Name,
    Part,
    Speed,
    StrengthClass,
    Stress,
    Temperature,
    Thread,
    Whole,
    Yes,
    may,
    needed,
)
from generator.plant.model.machine import Rings
from generator.plant.quantities import BandOf, OneOf, Quantity, Ratio, ScaleOf
from generator.value import Band, Value

Plain = Annotated[Value, Quantity("", low=0, high=100)]
Source = may("the maker's document the figures are from", "Orvane 14")


class Bore(Part):
    shape: Annotated[Any, OneOf("taper", "cylinder")] = needed("shape of the bore", "taper")
    ratio: Annotated[Value, Ratio()] | None = may("its taper", '"1:12"')
    size: Diameter = needed("its size (of a taper: the small end)", "65 mm")


class Ratings(Part):
    dynamic: Force = needed("basic dynamic load rating C", "52 kN")
    static: Force = needed("basic static load rating C0", "36 kN")
    fatigue: Force | None = may("fatigue load limit Cu", "1.6 kN")
    from_: Name | None = may("the maker's document", "Orvane 14", "from")


class Thrust(Part):
    e: Plain = needed("limit of Fa/Fr, e of ISO 281", "0.24")
    Y1: Plain = needed("factor Y1 of ISO 281", "2.8")
    Y2: Plain = needed("factor Y2 of ISO 281", "4.2")
    Y0: Plain = needed("factor Y0 of ISO 76", "2.8")
    from_: Name | None = may("the maker's document", "Brelloch 3", "from")


class Clearance(Part):
    class_: Annotated[Any, OneOf("C2", "CN", "C3", "C4", "C5")] | None = may("clearance class of ISO 5753-1", "C3", "class")
    radial: Annotated[Band, BandOf("mm", low=0, high=2)] | None = may("radial internal clearance, least and most", "0.023 to 0.043 mm")
    axial: Annotated[Band, BandOf("mm", low=0, high=5)] | None = may("axial internal clearance, least and most", "0.2 to 0.4 mm")
    from_: Name | None = may("the maker's document", "Orvane 14", "from")


class Sealing(Part):
    kind: Annotated[Any, OneOf("lip", "shield", "labyrinth", "felt strip", "open")] = needed("kind of seal", "lip")
    regreasable: Yes = needed("whether it can be greased again", "yes")
    angle: Angle | None = may("misalignment the seal allows", "2 deg")


class SetScrews(Part):
    count: Whole = needed("how many", "2")
    size: Thread = needed("their thread", "M8x1")
    apart: Angle | None = may("the angle between them", "120 deg")
    hardness: Hardness | None = may("their hardness; 45 HRC unless said", "45 HRC")


class Locks(Part):
    by: Annotated[Any, OneOf("set screws", "eccentric collar", "clamp collar")] = needed(
        "how the inner ring is locked to the shaft", "set screws"
    )
    screws: SetScrews | None = may("set screws in ring or collar", "{count: 2, size: M8x1, apart: 120 deg}")
    clamp_screw: Thread | None = may("the screw of a clamp collar", "M8")


class Elements(Part):
    count: Whole = needed("balls or rollers in one row", "19")
    size: Length = needed("their diameter", "17 mm")
    angle: Angle | None = may("contact angle", "11 deg")


class Bearing(Part):
    maker: Name = needed("its maker", "Orvane")
    kind: Annotated[Any, OneOf("ball insert", "deep groove ball", "spherical roller", "cylindrical roller", "self-aligning ball")] = needed(
        "kind of bearing", "ball insert"
    )
    bore: Bore = needed("its bore", '{shape: taper, ratio: "1:12", size: 65 mm}')
    outside: Diameter = needed("outside diameter", "120 mm")
    width: Length = needed("width of the ring that is greased (total width)", "38 mm")
    ratings: Ratings | None = may("load ratings", "{dynamic: 52 kN, static: 36 kN, from: Orvane 14}")
    thrust: Thrust | None = may("thrust factors of a roller bearing", "{e: 0.24, Y1: 2.8, Y2: 4.2, Y0: 2.8}")
    clearance: Clearance | None = may("internal clearance", "{class: C3}")
    sealing: Sealing | None = may("its seals", "{kind: lip, regreasable: yes, angle: 2 deg}")
    locks: Locks | None = may("how its ring locks to the shaft, where no sleeve does", "{by: set screws, screws: {count: 2, size: M8x1}}")
    swivels: Angle | None = may("misalignment the bearing allows", "1.5 deg")
    most_speed: Speed | None = may("limiting speed of the maker, tightest shaft", "4000 rpm")
    raceway: Diameter | None = may("effective diameter of the inner raceway", "103 mm")
    outer_raceway: Diameter | None = may("diameter of the outer raceway", "142 mm")
    pitch_circle: Diameter | None = may("pitch circle of the rolling elements", "125 mm")
    elements: Elements | None = may("its rolling elements", "{count: 19, size: 17 mm, angle: 11 deg}")
    mass: Mass | None = may("its mass", "1.9 kg")
    stores: Name | None = may("stores number", "41207")


class Nut(Part):
    thread: Thread = needed("thread of the nut", "M65x2")
    works: Annotated[Any, OneOf("pushes the ring", "draws the sleeve")] = needed("how it drives the ring up", "pushes the ring")
    slots: Whole = needed("slots round the nut", "8")
    lock: Annotated[Any, OneOf("retaining screw", "tab washer", "locking plate")] = needed(
        "what keeps it from slackening", "retaining screw"
    )


class Sleeve(Part):
    maker: Name | None = may("its maker", "Orvane")
    shaft: Diameter = needed("the shaft it is for", "60 mm")
    taper: Annotated[Value, Ratio()] = needed("its taper", '"1:12"')
    thread: Thread = needed("its thread", "M65x2")
    hand: Annotated[Any, OneOf("right", "left")] = needed("hand of the thread", "right")
    nut: Nut = needed("the nut that belongs to it", "{thread: M65x2, works: pushes the ring, slots: 8, lock: retaining screw}")
    wall: Annotated[Any, OneOf("thin", "full")] | None = may("thin: the turn can only come from the maker", "thin")
    mass: Mass | None = may("its mass", "0.6 kg")
    stores: Name | None = may("stores number", "41233")


class Body(Part):
    material: BodyMaterial = needed("what the housing is made of", "grey iron")
    strength: Name | None = may("grade", "GJL-200")
    pressure: Stress | None = may("pressure the maker allows under a bolt head, for polymer", "12 MPa")
    sleeves: Yes | None = may("whether metal sleeves stand in the bolt holes", "yes")
    spacer_outside: Length | None = may("outside of that metal sleeve", "16 mm")
    spacer_length: Length | None = may("its length", "22 mm")


class Foot(Part):
    length: Length = needed("across the shaft", "240 mm")
    width: Length = needed("along the shaft", "62 mm")
    thickness: Length = needed("under the bolt head", "22 mm")


class Slot(Part):
    along: Length = needed("room for the bolt along the shaft", "18 mm")
    across: Length = needed("room for the bolt across the shaft", "25 mm")


class HousingBolts(Part):
    count: Whole = needed("how many", "2")
    size: Thread = needed("thread", "M16")
    apart: Length | None = may("their distance across the shaft", "190 mm")
    apart_along: Length | None = may("their distance along the shaft, where there are four", "120 mm")
    slot: Slot | None = may("the slots they stand in", "{along: 18 mm, across: 25 mm}")
    hole: Length | None = may("the hole they stand in, where it is round", "14 mm")


class Tapped(Part):
    depth: Length = needed("full thread from the face", "18 mm")
    strength: Name | None = may("grade of what is tapped", "GJL-200")


class HousingBore(Part):
    size: Diameter = needed("bore of the housing", "160 mm")
    class_: Name | None = may("its tolerance class", "G7", "class")
    wide: Length | None = may("room along the shaft for bearing and rings", "65 mm")


class Rated(Part):
    down: Force | None = may("toward the base", "60 kN")
    up: Force | None = may("away from the base", "18 kN")
    side: Force | None = may("to the side", "30 kN")
    along: Force | None = may("along the shaft", "12 kN")
    from_: Name | None = may("the maker's document", "Orvane 14", "from")


class HousingSeals(Part):
    kind: Name = needed("kind of seal", "felt strip")
    angle: Angle = needed("misalignment it allows", "0.5 deg")


STYLES = ("pillow block", "tapped base", "two-bolt flange", "three-bolt flange", "four-bolt flange", "take-up", "cartridge", "split")


class Housing(Part):
    maker: Name = needed("its maker", "Orvane")
    style: Annotated[Any, OneOf(*STYLES)] = needed("style of housing", "pillow block")
    body: Body = needed("its material", "{material: grey iron, strength: GJL-200}")
    foot: Foot | None = may("its foot or flange", "{length: 240 mm, width: 62 mm, thickness: 22 mm}")
    bolts: HousingBolts | None = may("the bolts that hold it", "{count: 2, size: M16, apart: 190 mm, slot: {along: 18 mm, across: 25 mm}}")
    tapped: Tapped | None = may("the tapped holes of a tapped base", "{depth: 18 mm, strength: GJL-200}")
    cap_bolts: HousingBolts | None = may("the bolts of its cap", "{count: 2, size: M16}")
    centre_height: Length | None = may("shaft centre over the base", "69.8 mm")
    bore: HousingBore | None = may("bore of a split housing or the bore a cartridge sits in", "{size: 160 mm, class: G7, wide: 65 mm}")
    travel: Length | None = may("travel of a take-up", "150 mm")
    guide: Length | None = may("room a take-up has in its guide along the shaft, each way", "0.5 mm")
    rated: Rated | None = may("loads the housing may carry", "{down: 60 kN, up: 18 kN, side: 30 kN, from: Orvane 14}")
    seals: HousingSeals | None = may("seals of the housing", "{kind: felt strip, angle: 0.5 deg}")
    cavity: Annotated[Value, Quantity("cm3", low=0, high=100_000)] | None = may("free volume beside the bearing", "420 cm3")
    mass: Mass | None = may("its mass", "3.8 kg")
    stores: Name | None = may("stores number", "41201")


class Unit(Part):
    bearing: Name | None = may("a name of `bearings.yml`", "Orvane ball 60")
    sleeve: Name | None = may("a name of `sleeves.yml`", "Orvane sleeve 60")
    housing: Name | None = may("a name of `housings.yml`", "Orvane block 60")
    rings: Rings | None = may("locating rings, used where the position is fixed", "{width: 12.5 mm, each_side: 1}")
    stores: Name | None = may("stores number", "41200")


class BaseOil(Part):
    kind: Annotated[Any, OneOf("mineral", "white oil", "synthetic hydrocarbon", "ester", "polyglycol", "silicone", "perfluorinated")] = (
        needed("kind of oil", "mineral")
    )
    viscosity: Annotated[Value, ScaleOf("VG", low=2, high=3200)] | Annotated[Value, Quantity("mm2/s", low=1, high=5000)] = needed(
        "grade, or viscosity at 40 degC", "VG 150"
    )
    at_100: Annotated[Value, Quantity("mm2/s", low=1, high=500)] | None = may("viscosity at 100 degC", "15 mm2/s")


THICKENERS = ("aluminium", "aluminium complex", "barium", "calcium", "calcium 12-hydroxy", "calcium complex", "calcium sulfonate", "clay",
              "lithium", "lithium complex", "polyurea", "polyurea shear stable", "sodium")  # fmt: skip


class GreaseRuns(Part):
    from_: Temperature = needed("lowest temperature it may start at", "-20 degC", "from")
    to: Temperature = needed("highest temperature it may run at", "120 degC")
    n_dm: Annotated[Value, Quantity("", low=1000, high=3_000_000)] = needed("highest speed times mean diameter, mm/min", "300000")


class Food(Part):
    registered: Annotated[Any, OneOf("incidental contact", "no contact", "direct contact")] = needed(
        "what it is registered for", "incidental contact"
    )
    from_: Name = needed("the letter or sheet on file", "Thessaryn letter 2", "from")


class MixesWith(Part):
    grease: Name = needed("the other grease", "Thessaryn Sorrel")
    from_: Name = needed("the test or letter on file", "Thessaryn letter 3", "from")


class Grease(Part):
    maker: Name | None = may("its maker", "Thessaryn")
    thickener: Annotated[Any, OneOf(*THICKENERS)] = needed("its thickener", "lithium complex")
    base_oil: BaseOil = needed("its oil", "{kind: mineral, viscosity: VG 150}")
    grade: Annotated[Value, ScaleOf("NLGI", low=0, high=6)] = needed("consistency", "NLGI 2")
    runs: GreaseRuns = needed("what it is good for", "{from: -20 degC, to: 120 degC, n_dm: 300000}")
    food: Food | Annotated[Any, OneOf("not registered")] = needed("food registration", "not registered")
    additives: Annotated[Any, OneOf("none", "EP")] | None = may("extreme-pressure additives", "EP")
    density: Annotated[Value, Quantity("g/cm3", low=0.5, high=2.5)] | None = may("its density", "0.9 g/cm3")
    mixes_with: list[MixesWith] | None = may("evidence on file that it may be mixed; none: incompatible", "[]")
    stores: Name | None = may("stores number", "50113")


class Fastener(Part):
    kind: Annotated[Any, OneOf("bolt", "nut", "washer", "set screw", "cap screw")] = needed("what it is", "bolt")
    size: Thread = needed("its thread", "M16")
    class_: StrengthClass | None = may("strength class or grade", '"8.8"', "class")
    surface: BoltSurface | None = may("its surface", "zinc")
    head_width: Length | None = may("width across flats", "24 mm")
    stores: Name | None = may("stores number", "10862")


class Tool(Part):
    kind: Annotated[
        Any,
        OneOf(
            "torque wrench", "torque driver", "grease gun", "micrometer", "feeler", "hook wrench", "dial indicator", "thermometer", "scale"
        ),
    ] = needed("what it is", "torque wrench")
    range: (
        Annotated[Band, BandOf("N.m", low=0, high=100_000)]
        | Annotated[Band, BandOf("mm", low=0, high=5000)]
        | Annotated[Band, BandOf("degC", low=-200, high=2000)]
        | None
    ) = may("what it measures or sets", "20 to 120 N.m")
    step: (
        Annotated[Value, Quantity("N.m", low=0, high=1000)]
        | Annotated[Value, Quantity("mm", low=0, high=100)]
        | Annotated[Value, Quantity("K", low=0, high=20)]
        | None
    ) = may("its finest step", "1 N.m")
    calibrated: Day | None = may("last calibrated", "2026-01-12")
    grease: Name | None = may("the one grease in this gun", "Thessaryn Rowan")
    stroke: Annotated[Value, Quantity("g", low=0, high=100)] | None = may("what one stroke gives, weighed", "1.35 g")
    weighed: Day | None = may("the day it was weighed", "2026-02-01")
