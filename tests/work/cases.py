"""Every combination that plant data can express, as far as it decides which steps there are and in which order."""

from __future__ import annotations

from collections.abc import Iterator
from itertools import product

from generator.case import CLEARANCE, ECCENTRIC, FLANGE_ORDER, FLANGES, HEATED, SLEEVES, TURN, WAYS, Case
from generator.housings import HOUSINGS
from generator.steps import Figure

BODIES = ("grey iron", "stainless steel", "polymer")
LIES = ("horizontal", "inclined", "vertical")
FLOATS = ("", "ring loose in its housing", "pin in a grooved shaft", "guided frame", "sliding cartridge", "clearance inside the bearing")
HOLDS = (("fixed", ""), *(("free", by) for by in FLOATS))
BEARINGS = {
    CLEARANCE: ("spherical roller", "cylindrical roller", "self-aligning ball"),
    HEATED: ("spherical roller", "cylindrical roller", "deep groove ball", "self-aligning ball"),
}
NUTS = tuple(product(("pushes the ring", "draws the sleeve"), ("retaining screw", "tab washer", "locking plate"), ("right", "left")))
ORDERS = ((), FLANGE_ORDER, ("hand tight", "mark", "something else"))
TURNS = ("clockwise", "anticlockwise", "both ways", "")


def cases() -> Iterator[Case]:
    """Way of locking (with nut, lock, hand) x bearing x housing x body x attitude x fixed or free (and by what) x first or second x frame x turns."""
    for way in WAYS:
        for bearing, nut, housing, body, lies, (holds, by), order in product(
            BEARINGS.get(way, ("ball insert",)),
            NUTS if way in SLEEVES else (("", "", ""),),
            HOUSINGS,
            BODIES,
            LIES,
            HOLDS,
            ("first", "second"),
        ):
            plain = Case(
                way, housing.word, bearing, *nut, body, lies, holds, by, order, tapped=housing.tapped, procedure="ISO-1", energies=("electric drive",),
                stainless_bolts=body == "stainless steel", carrier="Q" if lies == "vertical" and holds == "free" else "",
            )  # fmt: skip
            yield from _more(plain)


def _more(case: Case) -> Iterator[Case]:
    from dataclasses import replace

    if case.way == TURN and case.housing in FLANGES and case.order == "second":
        yield from (replace(case, frame=frame, maker_order=order) for frame in ("", "opposite the nut", "nut side") for order in ORDERS)
    elif case.way == ECCENTRIC:
        yield from (replace(case, turns=turns) for turns in TURNS)
    else:
        yield case


def greasings() -> Iterator[Case]:
    """Feed x purge x running or stopped x fitting x speed x zone x sealed, for one way of locking each that is filled by hand and by gun."""
    for way, housing in ((TURN, "pillow block"), (CLEARANCE, "split")):
        for feed, purge, when, fitting, fast, zone, sealed in product(
            ("gun", "automatic", "sealed for life", "oil"), ("", "relief plug", "open seals", "counted strokes", "wipe and weigh"), ("running", "stopped"),
            ("inside the guard", "outside the guard", "piped out", "piped outside the guard", "none", ""), (False, True),
            ("none", "combustible dust", "food", "food and combustible dust"), (False, True),
        ):  # fmt: skip
            yield Case(
                way, housing, "ball insert" if way == TURN else "spherical roller", "pushes the ring", "retaining screw", "right", feed=feed, purge=purge, regrease=when,
                fitting=fitting, fast=fast, zone=zone, sealed=sealed, procedure="ISO-1", energies=("electric drive",),
            )  # fmt: skip


class All:
    """Figures of a sheet on which everything is known."""

    def has(self, key: str) -> bool:
        return True

    def __call__(self, key: str) -> Figure:
        return Figure(key, "7")


class Nothing:
    """Figures of a sheet on which everything is withheld."""

    def has(self, key: str) -> bool:
        return False

    def __call__(self, key: str) -> Figure:
        return Figure(key, "HELD", held=True)
