"""A maker's document: `library/documents/<name>.yml`. What a maker's paper says lives here and nowhere else."""

from typing import Annotated, Any

from generator.plant.model.common import (
    Day,
    Force,
    Hardness,
    Length,
    Mass,
    Name,
    Part,
    Speed,
    Temperature,
    Thread,
    Torque,
    TorqueBand,
    Words,
    may,
    needed,
)
from generator.plant.quantities import BandOf, Quantity
from generator.value import Band, Value


class ReadBy(Part):
    engineer: Name = needed("who typed these figures from the paper", "site engineer")
    on: Day = needed("the day", "2026-01-20")


class ScrewFigures(Part):
    size: Thread | None = may("its thread", "M5")
    torque: TorqueBand = needed("its torque, least and most", "3.5 to 4.0 N.m")
    key: Length | None = may("key size", "2.5 mm")


class BoltFigures(Part):
    least: Torque | None = may("least torque", "150 N.m")
    most: Torque = needed("torque that is never passed", "190 N.m")
    bolt: Thread | None = may("the bolt it is for", "M16")
    class_: Name | None = may("the class it is for", '"8.8"', "class")
    state: Name | None = may("the state of the thread it is for", "oiled")


class Row(Part):
    """Figures for one row of a maker's table. Each may be left out."""

    nut_turn: Annotated[Band, BandOf("turn", low=0, high=5, single=True)] | None = may(
        "turn of the nut from the counting point, least and most", "5/8 to 3/4 turn"
    )
    retaining_screw: ScrewFigures | None = may("the screw that locks the nut", "{size: M5, torque: 3.5 to 4.0 N.m, key: 2.5 mm}")
    lock_screw: ScrewFigures | None = may("set screws or collar screw", "{size: M8x1, torque: 12 to 14 N.m, key: 4 mm}")
    shaft_class: Name | None = may("tolerance class of the shaft", "h9")
    shaft_limits: Annotated[Band, BandOf("mm", low=3, high=1000)] | None = may("limits of the shaft", "59.95 to 60.00 mm")
    shaft_hardness: Hardness | None = may("hardest shaft its screws may bite", "35 HRC")
    flange_gap: Annotated[Band, BandOf("mm", low=0, high=20)] | None = may(
        "gap under the second flange at the counting point", "1.5 to 1.6 mm"
    )
    flange_order: Words | None = may(
        "the order for the second flange, in the maker's words, shortened", "gap, hand tight, mark, draw up, complete the turn"
    )
    clearance_reduction: Annotated[Band, BandOf("mm", low=0, high=1)] | None = may(
        "clearance to be taken, least and most", "0.045 to 0.060 mm"
    )
    clearance_least: Length | None = may("least clearance left", "0.050 mm")
    cap_torque: TorqueBand | None = may("torque of the cap bolts", "150 to 170 N.m")
    base_torque: BoltFigures | None = may("torque of the housing bolts", "{most: 190 N.m, bolt: M16}")
    grease_first: Annotated[Value, Quantity("g", low=0, high=100_000)] | None = may("first fill", "240 g")
    grease_dose: Annotated[Value, Quantity("g", low=0, high=10_000)] | None = may("each regreasing", "18 g")
    grease_interval: Annotated[Value, Quantity("hour", low=1, high=200_000)] | None = may("longest time between regreasings", "2000 hour")
    most_speed: dict[Name, Speed] | None = may("greatest speed by the class of the shaft", "{h6: 3000 rpm, h9: 1200 rpm}")
    hottest: Temperature | None = may("hottest it may run", "100 degC")
    axial_hold: Force | None = may("axial load the lock holds", "4 kN")
    heating: Temperature | None = may("ceiling when it is heated for mounting", "110 degC")
    heaviest: Mass | None = may("heaviest rotor it may carry", "300 kg")


class Table(Part):
    chosen_by: Name = needed("which field of the position picks the row", "sleeve.shaft")
    of: dict[Name, Name] | None = may("the table is good for this only; else it isn't used", "{sleeve.thread: M65x2}")
    counts_from: Words | None = may("where the count starts, in the maker's words, shortened", "hand tight, slot under the mark")
    rows: dict[Name, Row] = needed("its rows", "{60 mm: {nut_turn: 5/8 to 3/4 turn}}")


class Document(Part):
    document: Name = needed("its name, as it is cited", "Orvane 14")
    maker: Name = needed("the maker", "Orvane")
    title: Words = needed("its title", "Fitting sleeve-locked units")
    kind: Any = may("paper, letter or test report", "paper")
    revision: Name = needed("its revision", "C")
    issued: Day = needed("the day it was issued", "2024-05-02")
    review_by: Day = needed("the day by which it is looked at again", "2027-05-01")
    kept: Words = needed("where the paper is", "maintenance office, binder 3")
    read_by: ReadBy = needed("who read it into this file", "{engineer: site engineer, on: 2026-01-20}")
    tables: dict[Name, Table] | None = may("its tables", "{table 2: {chosen_by: sleeve.shaft, rows: {60 mm: {nut_turn: 5/8 to 3/4 turn}}}}")
    says: Words | None = may("what a letter or test says, shortened", "registered for incidental contact")


CHOSEN_BY = ("sleeve.shaft", "sleeve", "housing", "bearing", "unit", "bearing.bore", "housing.bolts.size")
FIGURES = tuple(Row.model_fields)
