"""The beam held against two libraries that know nothing of it: PyNiteFEA (frames) and sympy's Beam (closed form)."""

from __future__ import annotations

from math import pi
from typing import Any, NamedTuple

import pytest
from Pynite import FEModel3D
from sympy import linsolve, symbols
from sympy.physics.continuum_mechanics.beam import Beam

from generator.calc.shafts import Acting, OnLine, Section, Support, reaction_sensitivity, shaft_line, support_reactions_many

E = 210_000.0
STEEL = 7.85e-6 * 9.80665  # N/mm3
HEIGHT = 0.1
# the room: a ten-millionth of the greatest figure of its kind on the shaft
ROOM = 1e-7


class Shaft(NamedTuple):
    """A shaft as typed: (to, diameter, hole), (at, settlement, spring), (at, force, couple), and whether its own weight counts."""

    name: str
    sections: list[tuple[float, ...]]
    supports: list[tuple[float, ...]]
    loads: list[tuple[float, ...]]
    heavy: bool = False


SHAFTS = [
    Shaft("between two supports", [(1000, 60)], [(0,), (1000,)], [(300, -2000)]),
    Shaft("overhung at one end", [(1300, 60)], [(0,), (1000,)], [(1300, -1000), (400, 500)]),
    Shaft("overhung at both ends, hollow, with couples", [(1800, 90, 45)], [(300,), (1400,)], [(0, -900), (1800, -700, 2e5), (700, 0, -6e5)]),
    Shaft("three supports", [(2000, 60)], [(0,), (1000,), (2000,)], [(500, -3200)]),
    Shaft("three supports, one settled, a couple", [(2400, 80)], [(100,), (1300, -0.4), (2300,)], [(700, -6000), (1800, -2500, 4e5)]),
    Shaft("three supports, the middle one a spring", [(2000, 70)], [(0,), (900, 0, 5000), (2000,)], [(500, -4000), (1500, -1000)]),
    Shaft("three supports, a settled spring at the end, overhung", [(2500, 75, 30)], [(50,), (1100,), (2200, 0.3, 20000)], [(2500, -3000), (600, 2000)]),
    Shaft("four supports, heights out", [(3000, 70)], [(100,), (1000, -0.3), (2000, 0.2), (2900,)], [(600, -3000), (1500, 1000), (2500, -2000)]),
    Shaft("five supports, heights out, a couple", [(4000, 65, 25)], [(50,), (1000, 0.1), (2000,), (3000, -0.2), (3950,)], [(1500, -5000, 3e5), (3500, -800)]),
    Shaft("stepped, overhung", [(400, 50), (1200, 80), (1600, 50)], [(200,), (1400,)], [(800, -9000), (1550, -700)], True),
    Shaft("stepped, hollow, three supports", [(500, 60, 30), (2000, 90, 40)], [(100,), (900,), (1900,)], [(500, -4000), (1400, -2500)], True),
    Shaft("stepped, two springs and a rigid support", [(800, 70), (1500, 100), (2200, 70)], [(100, 0, 8000), (1100, 0.2), (2100, -0.1, 12000)], [(600, -7000, -2e5)]),
    Shaft("stepped, hollow, five supports", [(1000, 45), (3000, 60, 20), (4000, 45)], [(50,), (1000, 0.1), (2000,), (3000, -0.2, 9000), (3950,)], [(1500, -5000), (3500, -800, 1e5)], True),
    Shaft("steep steps, couples alone", [(300, 40), (600, 120, 60), (1400, 60), (1700, 40)], [(0,), (800,), (1700,)], [(500, 0, 8e5), (1400, 0, -5e5)]),
]  # fmt: skip
EVEN = [one for one in SHAFTS if len(one.sections) == 1]


def ours(shaft: Shaft) -> tuple[tuple[Section, ...], tuple[Support, ...], tuple[Acting, ...]]:
    return (
        tuple(Section(*one) for one in shaft.sections),
        tuple(Support(*one) for one in shaft.supports),
        tuple(Acting(*one) for one in shaft.loads),
    )


def line(shaft: Shaft) -> list[OnLine]:
    return list(shaft_line(*ours(shaft), E, 7.85 if shaft.heavy else 0.0))


def close(found: list[float], wanted: list[float], least: float) -> None:
    """Each figure to a ten-millionth of the greatest of its kind; `least` where all of them are nothing."""
    assert found == pytest.approx(wanted, rel=0, abs=ROOM * max(least, *(abs(one) for one in wanted)))


def inertia(section: tuple[float, ...]) -> float:
    _, diameter, hole = (*section, 0.0)[:3]
    return pi * (diameter**4 - hole**4) / 64


def area(section: tuple[float, ...]) -> float:
    _, diameter, hole = (*section, 0.0)[:3]
    return pi / 4 * (diameter**2 - hole**2)


class Frame:
    """A shaft in the frame library, with nodes where it is asked for; a spring stands on ground that may be moved."""

    def __init__(self, shaft: Shaft, places: list[float]) -> None:
        self.shaft, self.model = shaft, FEModel3D()
        self.model.add_material("steel", E, E / 2.6, 0.3, 0)
        for x in places:
            self.model.add_node(f"n{x}", x, 0, 0)
        self.members = [self._member(a, b) for a, b in zip(places[:-1], places[1:], strict=True)]
        self.held = [self._support(i, *(*one, 0.0, 0.0)[:3]) for i, one in enumerate(shaft.supports)]
        for at, force, couple in ((*one, 0.0)[:3] for one in shaft.loads):
            self.model.add_node_load(f"n{_near(places, at)}", "FY", force)
            self.model.add_node_load(f"n{_near(places, at)}", "MZ", couple)
        self.model.analyze_linear(check_stability=False, check_statics=False)

    def _member(self, a: float, b: float) -> str:
        section = next(one for one in self.shaft.sections if one[0] >= b - 1e-6)
        second, name = inertia(section), f"m{a}"
        self.model.add_section(name, area(section), second, second, 2 * second)
        self.model.add_member(name, f"n{a}", f"n{b}", "steel", name)
        if self.shaft.heavy:
            self.model.add_member_dist_load(name, "FY", -STEEL * area(section), -STEEL * area(section))
        return name

    def _support(self, i: int, at: float, settlement: float, spring: float) -> str:
        node = foot = f"n{float(at)}"
        self.model.def_support(node, i == 0, not spring, True, i == 0, False, False)
        if spring:
            foot = f"g{i}"
            self.model.add_node(foot, at, -100, 0)
            self.model.def_support(foot, True, True, True, True, True, True)
            self.model.add_spring(f"s{i}", foot, node, spring)
        self.model.def_node_disp(foot, "DY", settlement)
        return foot

    def reactions(self) -> list[float]:
        return [-self.model.nodes[one].RxnFY["Combo 1"] for one in self.held]

    def at(self, place: float, way: str) -> float:
        return float(getattr(self.model.nodes[f"n{float(place)}"], way)["Combo 1"])

    def moments(self) -> list[float]:
        """The greater of both sides of each node, its size."""
        ends = [self.model.members[one] for one in self.members]
        after = [abs(one.moment("Mz", 0)) for one in ends] + [0.0]
        before = [0.0] + [abs(one.moment("Mz", one.L())) for one in ends]
        return [float(max(pair)) for pair in zip(before, after, strict=True)]


def _near(places: list[float], at: float) -> float:
    return min(places, key=lambda one: abs(one - at))


@pytest.mark.parametrize("shaft", SHAFTS, ids=lambda one: one.name)
def test_a_frame_library_finds_the_same(shaft: Shaft) -> None:
    rows = line(shaft)
    frame = Frame(shaft, [row.at for row in rows])
    carried = support_reactions_many(*ours(shaft), E, 7.85 if shaft.heavy else 0.0)
    close([one.force for one in carried], frame.reactions(), 1.0)
    close([one.slope for one in carried], [frame.at(one.at, "RZ") for one in carried], 1e-6)
    close([row.deflection for row in rows], [frame.at(row.at, "DY") for row in rows], 1e-4)
    close([row.moment for row in rows], frame.moments(), 1.0)


@pytest.mark.parametrize("shaft", [one for one in SHAFTS if len(one.supports) > 2], ids=lambda one: one.name)
def test_a_frame_library_feels_a_height_error_the_same(shaft: Shaft) -> None:
    places = sorted({0.0, *(float(one[0]) for one in (*shaft.sections, *shaft.supports))})
    wanted = []
    for raised in range(len(shaft.supports)):
        placed = [(at, HEIGHT if i == raised else 0.0, *more[1:]) for i, (at, *more) in enumerate(shaft.supports)]
        wanted += Frame(Shaft("", shaft.sections, placed, []), places).reactions()
    sections, supports, _ = ours(shaft)
    close([one.change for one in reaction_sensitivity(sections, supports, E, HEIGHT)], wanted, 1.0)


def solved(shaft: Shaft) -> tuple[Any, list[float]]:
    """The beam in closed form on two of its supports, the others being forces that bring it to where they stand."""
    (section,) = shaft.sections
    beam, rests = Beam(section[0], E, inertia(section)), [(*one, 0.0, 0.0)[:3] for one in shaft.supports]
    unknown = list(symbols(f"R0:{len(rests)}"))
    firm = [one for one, (_, settlement, spring) in zip(unknown, rests, strict=True) if not (settlement or spring)][:2]
    for one, (at, *_) in zip(unknown, rests, strict=True):
        beam.apply_load(one, at, -1)
        if one in firm:
            beam.bc_deflection.append((at, 0))
    for at, force, couple in ((*one, 0.0)[:3] for one in shaft.loads):
        beam.apply_load(force, at, -1)
        # there a couple counts the other way
        beam.apply_load(-couple, at, -2)
    beam.solve_for_reaction_loads(*firm)
    found = dict(beam.reaction_loads)
    line, others = beam.deflection(), [one for one in unknown if one not in firm]
    lies = []
    for one, (at, settlement, spring) in zip(unknown, rests, strict=True):
        if one not in firm:
            lies.append(line.subs(beam.variable, at) - settlement + (one / spring if spring else 0))
    if others:
        (forces,) = linsolve(lies, others)
        found.update(zip(others, forces, strict=True))
    return line.subs(found).subs(found), [-float(found[one].subs(found)) for one in unknown]


@pytest.mark.parametrize("shaft", EVEN, ids=lambda one: one.name)
def test_a_closed_form_library_finds_the_same(shaft: Shaft) -> None:
    deflection, reactions = solved(shaft)
    (x,) = deflection.free_symbols
    rows = line(shaft)[::4]
    close([one.force for one in support_reactions_many(*ours(shaft), E)], reactions, 1.0)
    close([row.deflection for row in rows], [float(deflection.subs(x, row.at)) for row in rows], 1e-4)
