"""Which input moves a value most: against closed forms. Life goes with the cube of rating over load, so one percent of load costs three."""

from __future__ import annotations

import pytest

from generator.calc.heat import warmer_than
from generator.calc.life import rating_life
from generator.mounting.moves import moves_most
from generator.value import Entered, LookedUp, Place, Value


def typed(content: float, unit: str) -> Value:
    return Value(content, unit, Entered(f"{content} {unit}", Place("test", 1)))


def life(rating: Value) -> Value:
    power = Value(3.0, "", LookedUp(None, "exponent"))
    found = rating_life.of(rating=rating, load=typed(3, "kN"), speed=typed(500, "rpm"), exponent=power).hours
    assert isinstance(found, Value)
    return found


def test_rating_moves_life_by_its_cube_and_a_constant_is_no_choice() -> None:
    # 1.01 cubed is 3.03 % more; load has the same power with the other sign, 2.94 % less
    told = moves_most(life(typed(30, "kN")))
    assert "basic dynamic load rating" in told and "3.0 % more" in told and "estimate" not in told


def test_an_estimate_among_the_inputs_is_marked() -> None:
    assert "estimate" in moves_most(life(typed(30, "kN").remark("a guess")))


def test_a_temperature_is_told_by_the_kelvin() -> None:
    warm = warmer_than.of(air=typed(40, "degC"), over=typed(10, "K"))
    told = moves_most(warm)
    # one kelvin of 50 degC is 2 %
    assert "kelvin" in told and "2.0 %" in told


@pytest.mark.parametrize("value", [typed(3, "kN"), Value("word", "", LookedUp(None, "table"))])
def test_what_is_not_computed_is_moved_by_nothing(value: Value) -> None:
    assert moves_most(value) == ""
