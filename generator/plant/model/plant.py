"""`plant.yml` and `accepted.yml`: the plant, its areas and rules, and what it has decided to live with."""

from typing import Annotated, Any

from generator.plant.model.common import Day, Length, Mass, Name, Part, Share, Stress, Temperature, Words, may, needed
from generator.plant.model.usual import Usual
from generator.plant.quantities import OneOf, Quantity, WebAddress
from generator.value import Value

Factor = Annotated[Value, Quantity("", low=0, high=20)]


class Area(Part):
    name: Name = needed("what the crew calls it", "Intake")
    usual: Usual | None = may("what is usual in this area", "{surroundings: {air: 5 degC}}")


class Where(Part):
    area: Name | None = may("an area code", "PAK")
    machine: Name | None = may("a machine's tag", "INT-05")
    shaft: Name | None = may("a shaft, as MACHINE/shaft", "INT-05/head")
    position: Name | None = may("a position, as MACHINE/letter", "INT-05/A")
    locking: Annotated[Any, OneOf("adapter sleeve", "set screws", "eccentric collar", "clamp collar", "heated seat")] | None = may(
        "a way of locking", "adapter sleeve"
    )
    housing: Name | None = may("a housing style", "pillow block")


QUOTED_AT = (
    "isolating",
    "lifting",
    "hot work",
    "greasing",
    "working at height",
    "working with food",
    "in dust",
    "locking",
    "bolting",
    "giving back",
    "training",
)
GIVES = ("seat.class", "nut.side", "fixed.at")


class Rule(Part):
    says: Words = needed("the rule in words", "grease stopped and isolated unless the fitting is piped out")
    gives: dict[Name, Name] | None = may("the value it gives: one of " + ", ".join(f"`{key}`" for key in GIVES), "{seat.class: h8}")
    quoted_at: Annotated[Any, OneOf(*QUOTED_AT)] | None = may("the work at which the crew is shown it, in its own words", "lifting")
    where: Where | None = may("where it holds; everywhere unless said", "{area: PAK, locking: adapter sleeve}")
    after: Annotated[Value, Quantity("hour", low=0, high=100_000)] | None = may("a time after which it asks for something", "24 hour")
    mass: Mass | None = may("a mass it names", "40 kg")
    approved_by: Name = needed("who decided", "site engineer")
    on: Day = needed("the day it was decided", "2026-02-10")
    because: Words | None = may("why", "bought bar measured loose twice in 2025")


class Practice(Part):
    """Settings of common practice, which the plant may set for itself; each default is common practice, no source."""

    float_margin: Factor | None = may("factor on growth when it is held against float", "1.25")
    setting_error: Length | None = may("how far off its place a unit may be set", "0.5 mm")
    wrench_scatter: Factor | None = may("greatest over least clamp force with a torque wrench", "1.6")
    embedding_loss: Share | None = may("clamp force lost as faces settle", "10 %")
    foot_friction: Factor | None = may("friction under a foot that is painted, oiled or shimmed", "0.10")
    bare_foot_friction: Factor | None = may("friction under a foot on bare clean metal", "0.15")
    slip_safety: Factor | None = may("safety against a foot slipping, steady load", "1.2")
    slip_safety_shock: Factor | None = may("safety against a foot slipping, blows", "1.5")
    screw_safety: Factor | None = may("safety on the holding of set screws", "4")
    screw_over_shaft: Annotated[Value, Quantity("", low=0, high=40)] | None = may(
        "points of HRC a set screw must be harder than the shaft", "10"
    )
    ring_hoop: Stress | None = may("hoop stress a hardened ring may carry", "175 MPa")
    hoop_warning: Stress | None = may("hoop stress in a hardened ring from which it is watched", "140 MPa")
    smoothing: Length | None = may("interference lost as the seats of a sleeve smooth out", "0.008 mm")
    slip_room: Length | None = may("room a heated ring is given to slide on", "0.030 mm")
    heating_ceiling: Temperature | None = may("hottest a ring is heated, where its maker says nothing", "110 degC")
    mounting_air: Temperature | None = may("temperature of shaft and frame when a unit is set", "20 degC")
    shoulder_blade: Length | None = may("thickest blade that may go in between a heated ring and its shoulder", "0.03 mm")
    hot_touch: Temperature | None = may(
        "surface temperature from which bare skin is burnt in a minute (ISO 13732-1, from memory)", "51 degC"
    )
    seat_friction: Factor | None = may("friction of a pressed seat mounted oiled", "0.08")
    dry_seat_friction: Factor | None = may("friction of a pressed seat mounted dry", "0.12")
    drive_up_friction: Factor | None = may("friction on taper, thread and nut while driving up, oiled", "0.12")
    seat_safety: Factor | None = may("safety on what a pressed seat holds", "2")
    inner_hotter: Annotated[Value, Quantity("K", low=0, high=200)] | None = may(
        "inner ring hotter than outer, running, where it is not known", "10 K"
    )
    jack_margin: Factor | None = may("rating of a jack or sling over its load", "1.25")
    jack_lift: Length | None = may("how far a shaft is lifted to take a bearing off", "0.2 mm")
    height_error: Length | None = may("error of height a support may have", "0.1 mm")
    height_change: Share | None = may("change of a support's load by it that asks for careful alignment", "20 %")
    reaction_difference: Share | None = may("how far a stated reaction may lie off the computed one", "20 %")
    unbalance_share: Share | None = may("share of the steady load below which unbalance is left out", "5 %")
    coupling_share: Share | None = may("part of its tangential pull a coupling may bring across the shaft", "15 %")
    seat_notch: Factor | None = may("notch factor of a seat in bending, by fretting", "2")
    seat_notch_torsion: Factor | None = may("the same in torsion", "1.5")
    endurance_reliability: Factor | None = may("factor for 99 % reliability of the endurance limit", "0.814")
    fatigue_safety: Factor | None = may("safety of a shaft against fatigue", "1.5")
    yield_safety: Factor | None = may("safety of a shaft against yielding", "2")
    cooler_step: Annotated[Value, Quantity("K", low=0, high=100)] | None = may("how much cooler is worth asking about", "10 K")
    ball_least_load: Share | None = may("least load of a ball bearing over its rating", "1 %")
    roller_least_load: Share | None = may("least load of a roller bearing over its rating", "2 %")
    take_up_reserve: Share | None = may("share of a take-up's travel kept in reserve", "10 %")
    take_up_difference: Length | None = may("how far the two take-ups of a shaft may differ", "3 mm")
    foot_feeler: Length | None = may("thickest blade that may go under a loosened foot", "0.05 mm")
    warm_reading: Annotated[Value, Quantity("K", low=0, high=50)] | None = may(
        "how far from 20 degC a shaft may be measured uncorrected", "3 K"
    )
    near_miss: Length | None = may("sizes closer than this are taken for one another", "1 mm")
    dust_temperature: Temperature | None = may("bearing temperature that is hot in a dust zone", "80 degC")
    gap_over: Length | None = may("how much a flange gap may be over the travel", "0.1 mm")
    calendar_cap: Annotated[Value, Quantity("week", low=1, high=520)] | None = may("longest time between greasings", "52 week")
    gun_weighed: Annotated[Value, Quantity("month", low=1, high=120)] | None = may("how long a weighing of a gun holds", "12 month")
    tool_calibrated: Annotated[Value, Quantity("month", low=1, high=120)] | None = may("how long a calibration holds", "12 month")
    starts_over: Annotated[Value, Quantity("K", low=0, high=150)] | None = may(
        "warming over the air that is assumed where no temperature is known", "30 K"
    )


class Plant(Part):
    name: Name = needed("the plant's name", "Tarnholt Pulse Works")
    language: Annotated[Any, OneOf("en")] = needed("language of the pages", "en")
    units: Annotated[Any, OneOf("metric", "inch")] = needed("what is shown first; the other stands beside it", "metric")
    reading_step: Length = needed("finest figure a micrometer here is read to; limits are rounded inward to it", "0.001 mm")
    inch_reading_step: Annotated[Value, Quantity("in", low=0.000001, high=0.1)] | None = may(
        "the same for shafts of inch size", "0.0001 in"
    )
    ask: Words | None = may("whom the crew asks", "the engineer, extension 214")
    address: Annotated[Any, WebAddress()] | None = may(
        "where phones in the plant reach this site; labels carry it", "http://standard.tarnholt.lan"
    )
    areas: dict[Name, Area] = needed("areas by code, in the order of the walk", "{INT: {name: Intake}}")
    usual: Usual | None = may("what is usual in the plant", "{seat: {class: h9}}")
    rules: dict[Name, Rule] | None = may(
        "what the plant has decided; a rule is cited by its key",
        "{rule 3: {says: grease stopped, approved_by: safety lead, on: 2026-02-10}}",
    )
    training: dict[Name, Name] | None = may(
        "the machine or position an exercise is worked on; the first that suits unless said", "{nut: INT-02/A}"
    )
    practice: Practice | None = may("settings of common practice", "{setting_error: 0.5 mm}")


class Acceptance(Part):
    finding: Name = needed("the finding by its name", "seal misalignment")
    at: Name = needed("where it was found", "INT-05/head/A")
    figure: Words | None = may("the figure as it stood when accepted; worse than this and it is a finding again", "0.55 deg")
    by: Name = needed("who accepted it", "site engineer")
    on: Day = needed("the day it was accepted", "2026-03-12")
    until: Day = needed("the day it ends", "2026-09-30")
    because: Words = needed("why it can be lived with", "new feet are ordered; seal looked at weekly")
