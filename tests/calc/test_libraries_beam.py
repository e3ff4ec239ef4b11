"""The beam held against two libraries that know nothing of it: sympy's Beam (closed form) and PyNiteFEA (frames)."""

from __future__ import annotations

from math import pi

import pytest
from Pynite import FEModel3D
from sympy import symbols
from sympy.physics.continuum_mechanics.beam import Beam

from generator.calc.shafts import Acting, Section, Support, shaft_line, support_reactions_many

E = 210_000.0
# sections (to, diameter, hole), supports (at, settlement), loads (at, force)
SHAFTS = [
    ([(1000, 60, 0)], [(0, 0), (1000, 0)], [(300, -2000)]),
    ([(1300, 60, 0)], [(0, 0), (1000, 0)], [(1300, -1000), (400, 500)]),
    ([(400, 50, 0), (1200, 80, 0), (1600, 50, 0)], [(200, 0), (1400, 0)], [(800, -9000), (1550, -700)]),
    ([(500, 60, 30), (2000, 90, 40)], [(100, 0), (900, 0), (1900, 0)], [(500, -4000), (1400, -2500)]),
    ([(3000, 70, 0)], [(100, 0), (1000, -0.3), (2000, 0.2), (2900, 0)], [(600, -3000), (1500, 1000), (2500, -2000)]),
    ([(1000, 45, 0), (3000, 60, 20), (4000, 45, 0)], [(50, 0), (1000, 0.1), (2000, 0), (3000, -0.2), (3950, 0)], [(1500, -5000), (3500, -800)]),
]  # fmt: skip


def inertia(diameter: float, hole: float) -> float:
    return pi * (diameter**4 - hole**4) / 64


@pytest.mark.parametrize("shaft", SHAFTS, ids=lambda s: f"{len(s[0])} lengths on {len(s[1])} supports")
def test_a_frame_library_finds_the_same_reactions_and_deflections(shaft: tuple[list, list, list]) -> None:  # type: ignore[type-arg]
    lengths, rests, pushes = shaft
    model = FEModel3D()
    model.add_material("steel", E, E / 2.6, 0.3, 0)
    places = sorted({0.0, *(float(x[0]) for x in lengths), *(float(x[0]) for x in rests), *(float(x[0]) for x in pushes)})
    for x in places:
        model.add_node(f"n{x}", x, 0, 0)
    for i, (a, b) in enumerate(zip(places[:-1], places[1:], strict=True)):
        _, diameter, hole = next(one for one in lengths if one[0] >= b)
        second = inertia(diameter, hole)
        model.add_section(f"s{i}", pi / 4 * (diameter**2 - hole**2), second, second, 2 * second)
        model.add_member(f"m{i}", f"n{a}", f"n{b}", "steel", f"s{i}")
    for j, (at, off) in enumerate(rests):
        model.def_support(f"n{float(at)}", j == 0, True, True, j == 0, False, False)
        model.def_node_disp(f"n{float(at)}", "DY", off)
    for at, force in pushes:
        model.add_node_load(f"n{float(at)}", "FY", force)
    model.analyze(check_statics=False)
    sections = tuple(Section(*one) for one in lengths)
    supports, acting = tuple(Support(*one) for one in rests), tuple(Acting(*one) for one in pushes)
    ours = support_reactions_many(sections, supports, acting, E)
    for row, (at, _) in zip(ours, rests, strict=True):
        node = model.nodes[f"n{float(at)}"]
        assert row.force == pytest.approx(-node.RxnFY["Combo 1"], rel=1e-5, abs=1e-2)
        assert row.slope == pytest.approx(node.RZ["Combo 1"], rel=1e-5, abs=1e-8)
    line = {round(row.at, 3): row.deflection for row in shaft_line(sections, supports, acting, E)}
    for at, _ in pushes:
        assert line[round(float(at), 3)] == pytest.approx(model.nodes[f"n{float(at)}"].DY["Combo 1"], rel=1e-5, abs=1e-7)


@pytest.mark.parametrize(
    "shaft", [s for s in SHAFTS if len(s[0]) == 1 and not any(off for _, off in s[1])], ids=lambda s: f"{len(s[2])} loads"
)
def test_a_closed_form_library_finds_the_same_reactions(shaft: tuple[list, list, list]) -> None:  # type: ignore[type-arg]
    lengths, rests, pushes = shaft
    ((length, diameter, hole),) = lengths
    beam = Beam(length, E, inertia(diameter, hole))
    unknown = symbols(f"R0:{len(rests)}")
    for one, (at, _) in zip(unknown, rests, strict=True):
        beam.apply_load(one, at, -1)
        beam.bc_deflection.append((at, 0))
    for at, force in pushes:
        beam.apply_load(force, at, -1)
    beam.solve_for_reaction_loads(*unknown)
    ours = support_reactions_many((Section(*lengths[0]),), tuple(Support(*one) for one in rests), tuple(Acting(*one) for one in pushes), E)
    for row, one in zip(ours, unknown, strict=True):
        assert row.force == pytest.approx(-float(beam.reaction_loads[one]), rel=1e-6, abs=1e-3)


def test_a_closed_form_library_finds_the_same_on_three_supports() -> None:
    beam = Beam(2000, E, inertia(60, 0))
    a, b, c = symbols("a b c")
    for one, at in ((a, 0), (b, 1000), (c, 2000)):
        beam.apply_load(one, at, -1)
        beam.bc_deflection.append((at, 0))
    beam.apply_load(-3200, 500, -1)
    beam.solve_for_reaction_loads(a, b, c)
    ours = support_reactions_many((Section(2000, 60),), (Support(0), Support(1000), Support(2000)), (Acting(500, -3200),), E)
    assert [row.force for row in ours] == pytest.approx([-float(beam.reaction_loads[one]) for one in (a, b, c)], rel=1e-6)
