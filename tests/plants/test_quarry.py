"""A second plant, of another trade and half in inches, computes without touching the code. Statics by hand; its data is invented."""

from __future__ import annotations

from datetime import date
from pathlib import Path

import pytest

from generator.mounting.sheet import MountingStandard, Sheet
from generator.mounting.standard import mounting_standard
from generator.plant.resolve import read_plant
from generator.publish.publish import publish
from generator.units import convert
from generator.value import Value, Withheld

QUARRY = Path(__file__).parent / "quarry"
ON = date(2026, 11, 25)


@pytest.fixture(scope="module")
def standard() -> MountingStandard:
    plant, problems = read_plant(QUARRY, ON)
    assert plant is not None and not problems
    return mounting_standard(plant)


def sheet(standard: MountingStandard, identity: str) -> Sheet:
    found = standard.sheet(identity)
    assert found is not None
    return found


def number(found: Sheet, key: str, unit: str) -> float:
    value = found.value(key)
    assert isinstance(value, Value), (found.id, key, value)
    return convert(value.content, value.unit, unit)


def test_every_bearing_of_it_has_a_load_a_life_and_a_jack_load(standard: MountingStandard) -> None:
    sheets = [one for machine in standard.machines for one in machine.sheets]
    assert len(standard.machines) == 6 and len(sheets) == 13
    for key in ("load", "load_along", "static_safety", "rating_life", "life", "n_dm"):
        assert [one.id for one in sheets if isinstance(one.value(key), Withheld)] == [], key
    assert [m.machine.tag for m in standard.machines if not isinstance(m.lines["machine_life"].value, Value)] == []


def test_pounds_and_newtons_come_to_the_same_weight(standard: MountingStandard) -> None:
    # wheel of 90 lb and a bar 2 7/16 in by 48 in of 0.2836 lb/in3 (7.85 g/cm3) on a slope of 18 degrees, half to each support
    bar = 0.28360 * 3.14159265 / 4 * 2.4375**2 * 48
    steady = (90 + bar) / 2 * 0.9510565
    assert number(sheet(standard, "SC-3/A"), "load_steady", "lbf") == pytest.approx(steady, rel=1e-3)
    along = (90 + bar) * 0.3090170
    assert number(sheet(standard, "SC-3/A"), "load_along", "lbf") == pytest.approx(along, rel=1e-3)


def test_an_upright_pump_hangs_on_the_unit_that_holds_it(standard: MountingStandard) -> None:
    bar = 0.28360 * 3.14159265 / 4 * 2.4375**2 * 50
    assert number(sheet(standard, "PM-5/A"), "load_along", "lbf") == pytest.approx(55 + bar, rel=1e-3)
    assert number(sheet(standard, "PM-5/B"), "load_along", "lbf") == 0


def test_a_low_middle_support_carries_less_than_a_true_one_would(standard: MountingStandard) -> None:
    loads = [number(sheet(standard, f"WN-6/{letter}"), "load", "N") for letter in "ABC"]
    assert min(loads) > 0
    assert number(sheet(standard, "WN-6/B"), "height_felt", "N") > 0


def test_it_publishes(tmp_path: Path) -> None:
    import shutil

    copy = Path(shutil.copytree(QUARRY, tmp_path / "quarry"))
    publish(copy, tmp_path / "site", ON, lambda _: None)
    assert sorted(page.stem for page in (tmp_path / "site" / "machines").glob("*.html")) == ["CR-1", "CV-2", "LG-4", "PM-5", "SC-3", "WN-6"]
