"""The viscosity index beside a general chemistry library (`chemicals`), which interpolates the printed tables of ASTM D2270."""

from __future__ import annotations

import pytest
from chemicals.viscosity import VI_Hs, VI_Ls, VI_nus, viscosity_index

from generator.mounting.chains.oils import viscosity_index_of_oil, viscosity_of_oil
from generator.value import Entered, Place, Value

# viscosity at 40 °C as a multiple of that at 100 °C, from oils of a high index to those of a low one
STEEPNESS = (3.5, 4.5, 5.5, 6.5, 8.0, 10.0, 13.0, 17.0)
AT_100 = (2.0, 2.7, 3.79, 3.8, 4.4, 5.05, 6.4, 7.0, 7.7, 8.86, 11.1, 14.9, 18.0, 19.4, 27.9, 31.3, 45.0, 54.9, 69.9, 70.0, 95.0, 150.0)


def typed(number: float, unit: str = "mm2/s") -> Value:
    return Value(number, unit, Entered(f"{number} {unit}", Place("test", 1)))


@pytest.mark.parametrize("nu100", AT_100)
def test_the_index_is_that_of_the_library(nu100: float) -> None:
    for steepness in STEEPNESS:
        nu40 = nu100 * steepness
        theirs = viscosity_index(nu40 * 1e-6, nu100 * 1e-6)
        # a thousandth of L and H is what the equations and the printed tables lie apart
        bounds = [viscosity_index(nu40 * part * 1e-6, nu100 * 1e-6) for part in (0.999, 1.001)]
        ours = viscosity_index_of_oil.of(nu40=typed(nu40), nu100=typed(nu100)).exact.content
        assert min(bounds) - 0.1 <= ours <= max(bounds) + 0.1, (nu40, nu100, theirs)


def test_l_and_h_are_within_a_thousandth_of_the_printed_tables() -> None:
    for nu, low, high in zip(VI_nus, VI_Ls, VI_Hs, strict=True):
        got = viscosity_index_of_oil.of(nu40=typed(float(high)), nu100=typed(float(nu)))
        assert got.at_zero.content == pytest.approx(low, rel=1e-3)
        assert got.at_hundred.content == pytest.approx(high, rel=1e-3)


@pytest.mark.parametrize("index", [0.0, 30.0, 80.0, 95.0, 99.9, 100.0, 100.1, 130.0, 160.0, 220.0])
@pytest.mark.parametrize("nu40", [10.0, 22.0, 32.0, 46.0, 68.0, 100.0, 150.0, 220.0, 320.0, 460.0, 680.0, 1000.0, 1500.0])
def test_an_index_read_backward_is_the_librarys_index_again(nu40: float, index: float) -> None:
    nu100 = viscosity_of_oil.of(nu40=typed(nu40), index=typed(index, ""), temperature=typed(60.0, "degC")).nu100
    if not isinstance(nu100, Value):
        assert viscosity_index(nu40 * 1e-6, 2.001e-6) > index, nu100
        return
    again = [viscosity_index(nu40 * part * 1e-6, nu100.content * 1e-6) for part in (0.999, 1.001)]
    assert min(again) - 0.2 <= index <= max(again) + 0.2
