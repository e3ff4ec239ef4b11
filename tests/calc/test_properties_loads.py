"""What must hold of loads, supports, lives and clearances at any size."""

from __future__ import annotations

from math import exp, isfinite, log10
from typing import Any

import pytest
from hypothesis import assume, given, settings
from hypothesis import strategies as st
from scipy.optimize import brentq
from scipy.stats import weibull_min

from generator.calc import clearance, equivalent, life, nuts, oils, shafts, taper
from generator.calc.shafts import Acting, Section, Support
from generator.value import Entered, Place, Results, Rows, Value

HERE = Place("test", 1)
forces = st.floats(-20_000, 20_000)
places = st.floats(0, 2000)
diameters = st.floats(30, 150)
loads = st.lists(st.tuples(places, forces), min_size=1, max_size=5)
positive = st.floats(100, 50_000)


def typed(content: Any, unit: str = "") -> Value:
    return Value(content, unit, Entered(f"{content} {unit}", HERE))


def shaft(thin: float, thick: float) -> tuple[Section, ...]:
    return (Section(600, thin), Section(1400, thick), Section(2000, thin))


def acting(found: list[tuple[float, float]]) -> tuple[Acting, ...]:
    return tuple(Acting(at, force) for at, force in found)


@given(diameters, diameters, loads)
@settings(max_examples=60)
def test_what_the_supports_carry_is_what_acts(thin: float, thick: float, found: list[tuple[float, float]]) -> None:
    supports = (Support(100), Support(900), Support(1900))
    rows = shafts.support_reactions_many(shaft(thin, thick), supports, acting(found), 210_000)
    scale = sum(abs(force) for _, force in found) + 1
    assert sum(row.force for row in rows) == pytest.approx(sum(force for _, force in found), abs=1e-6 * scale)
    moment = sum(row.force * row.at for row in rows)
    assert moment == pytest.approx(sum(force * at for at, force in found), abs=1e-6 * scale * 2000)


@given(diameters, diameters, loads)
@settings(max_examples=60)
def test_a_mirrored_shaft_has_mirrored_reactions(thin: float, thick: float, found: list[tuple[float, float]]) -> None:
    supports = (Support(100), Support(900), Support(1900))
    mirrored = tuple(Support(2000 - one.at) for one in reversed(supports))
    here = shafts.support_reactions_many(shaft(thin, thick), supports, acting(found), 210_000)
    there = shafts.support_reactions_many(shaft(thin, thick), mirrored, acting([(2000 - at, force) for at, force in found]), 210_000)
    scale = sum(abs(force) for _, force in found) + 1
    for one, other in zip(here, reversed(there), strict=True):
        assert one.force == pytest.approx(other.force, abs=1e-5 * scale)
        assert one.slope == pytest.approx(-other.slope, abs=1e-9 * scale)


@given(loads)
@settings(max_examples=60)
def test_on_two_supports_the_beam_says_what_statics_says(found: list[tuple[float, float]]) -> None:
    by_statics = shafts.support_reactions_two(150, 1700, acting(found))
    by_beam = shafts.support_reactions_many(shaft(60, 80), (Support(150), Support(1700)), acting(found), 210_000)
    scale = sum(abs(force) for _, force in found) + 1
    assert [row.force for row in by_beam] == pytest.approx([by_statics.first, by_statics.second], abs=1e-6 * scale)


@given(st.floats(-10, 10))
@settings(max_examples=30)
def test_heights_change_no_load_on_two_supports(height: float) -> None:
    rows = shafts.reaction_sensitivity(shaft(60, 80), (Support(150), Support(1700)), 210_000, abs(height))
    assert all(abs(row.change) < 1e-3 for row in rows)


def test_a_shaft_is_the_same_in_inches_and_millimetres() -> None:
    def carried(length: str, factor: float, force: str, of: float) -> list[float]:
        got = shafts.support_reactions_many.of(
            sections=Rows((Results(to=typed(2000 / factor, length), diameter=typed(60 / factor, length)),)),
            supports=Rows(tuple(Results(at=typed(at / factor, length)) for at in (0, 700, 2000))),
            loads=Rows((Results(at=typed(400 / factor, length), force=typed(1000 / of, force)),)),
            modulus=typed(210_000, "MPa"),
        )
        return [row.force.content for row in got]

    assert carried("in", 25.4, "lbf", 4.4482216152605) == pytest.approx(carried("mm", 1.0, "N", 1.0))


@given(positive, st.floats(1.0, 3.0), st.floats(1, 3000))
def test_more_load_is_never_more_life(load: float, more: float, speed: float) -> None:
    rating = load * more * 2.5
    assume(load * more <= rating / 2)
    one, other = (life.rating_life(rating, force, speed, 3, rating * 10).hours for force in (load, load * more))
    assert isfinite(one) and other <= one * (1 + 1e-12)


@given(st.sampled_from(["ball", "roller"]), st.floats(0.11, 6), st.floats(0, 1), st.floats(10, 20_000), positive, st.floats(1, 2))
def test_cleaner_thicker_or_lighter_never_shortens_the_life(
    kind: Any, kappa: float, dirt: float, fatigue: float, load: float, more: float
) -> None:
    now = life.life_modification_factor(kind, kappa, dirt, fatigue, load)
    # the rounded constants of the standard end a hair below 0.1
    assert 0.0999 <= now <= 50
    assert life.life_modification_factor(kind, kappa, min(1.0, dirt * more), fatigue, load) >= now - 1e-12
    assert life.life_modification_factor(kind, kappa, dirt, fatigue, load * more) <= now + 1e-12
    # the branches of the standard meet to a part in a thousand
    assert life.life_modification_factor(kind, kappa * more, dirt, fatigue, load) >= now * (1 - 2e-3)


@given(st.lists(st.floats(100, 1e6), min_size=1, max_size=8), st.sampled_from([10 / 9, 9 / 8, 1.5]))
def test_a_machine_lasts_no_longer_than_its_shortest_bearing(hours: list[float], exponent: float) -> None:
    together = life.system_life(tuple(life.One(one) for one in hours), exponent)
    assert together <= min(hours) * (1 + 1e-9)


@given(st.floats(90, 99.95))
def test_reliability_is_the_weibull_form_of_a_statistics_library(reliability: float) -> None:
    # ISO 281: three parameters, shape 1.5, threshold 0.05 of L10; scipy's quantile at the probability of failure
    tenth = weibull_min.ppf(0.1, 1.5)
    expected = 0.05 + 0.95 * weibull_min.ppf(1 - reliability / 100, 1.5) / tenth
    assert life.reliability_between(reliability) == pytest.approx(expected, rel=1e-9)


@given(st.floats(20, 460), st.floats(80, 150))
@settings(max_examples=40)
def test_viscosity_between_two_known_ones_is_what_a_root_finder_says(nu40: float, t: float) -> None:
    # ASTM D341 with the term for thin oils; scipy finds the root
    nu100 = nu40 / 8
    got = oils.viscosity_at_temperature(nu40, nu100, t)

    def thick(nu: float) -> float:
        return log10(log10(nu + 0.7 + exp(-1.47 - 1.84 * nu - 0.51 * nu**2)))

    def warm(celsius: float) -> float:
        return log10(celsius + 273.15)

    def off(nu: float) -> float:
        return (thick(nu) - thick(nu40)) * (warm(100) - warm(40)) - (thick(nu100) - thick(nu40)) * (warm(t) - warm(40))

    assert got == pytest.approx(brentq(off, 0.4, 5 * nu40), rel=1e-6)


@given(st.floats(40, 180), st.floats(1.05, 1.4), st.floats(0.001, 0.1))
def test_growth_by_the_ratio_is_growth_by_the_pressure(bore: float, wall: float, interference: float) -> None:
    raceway, on = bore * wall, bore * 0.9
    by_ratio = taper.growth_ratio_on_sleeve(bore, raceway, on) * interference
    pressed = taper.sleeve_pressure(interference, bore, raceway, on, 206_000)
    assert taper.raceway_growth(pressed.pressure, bore, raceway, 206_000) == pytest.approx(by_ratio, rel=1e-9)
    direct = nuts.interference_pressure(interference, bore, raceway)
    assert taper.raceway_growth(direct.pressure, bore, raceway, 206_000) == pytest.approx(
        taper.growth_ratio(bore, raceway) * interference, rel=1e-9
    )


@given(st.floats(0.005, 0.1), st.floats(0.7, 0.9), st.floats(0, 0.02), st.sampled_from([12.0, 30.0]))
def test_a_travel_takes_the_clearance_it_was_worked_out_for(reduction: float, ratio: float, smoothing: float, k: float) -> None:
    driven = taper.taper_travel(reduction, ratio, smoothing, k, 2.0)
    assert taper.taper_reduction(driven.travel, ratio, smoothing, k) == pytest.approx(reduction, abs=1e-12)


@given(st.floats(0, 0.3), st.floats(0, 0.2), st.floats(0, 0.2), st.floats(0, 0.1))
def test_every_loss_takes_from_the_clearance(before: float, fit: float, up: float, heat: float) -> None:
    assert clearance.operating_clearance(before, fit, up, heat) <= before + 1e-12


@given(st.lists(st.tuples(positive, st.floats(1, 3000), st.floats(0.01, 1)), min_size=1, max_size=6))
def test_a_mean_load_lies_between_the_least_and_the_greatest(found: list[tuple[float, float, float]]) -> None:
    mean = equivalent.mean_load(tuple(equivalent.Duty(*one) for one in found), 3)
    assert min(one[0] for one in found) * (1 - 1e-9) <= mean.load <= max(one[0] for one in found) * (1 + 1e-9)
