"""What is joined of bolts, grease, warmth and words is joined on the safe side. Expected figures by hand from published formulas."""

from __future__ import annotations

from pathlib import Path

import pytest

from generator.calc.oils import viscosity_at_temperature
from generator.plant.resolve import read_plant
from generator.value import Value
from tests.copies import copy_of_demo
from tests.mounting.demo import ON, machine, sheet, size

BYP_02, ROUNDS = "machines/BYP-02.yml", "records/2026-rounds.csv"


# --- bolts -------------------------------------------------------------------------------------------------------------------------


def test_a_bolt_from_below_presses_on_the_frame() -> None:
    tapped = next(one for one in machine("PAK-03").sheets if str(one.position.housing.typed.style) == "tapped base")  # type: ignore[union-attr]
    assert size(tapped.value("head_pressure_limit"), "MPa") == 260  # VDI 2230:1986, S235


def test_a_frame_that_is_not_typed_is_said_not_to_be_judged() -> None:
    found = sheet("INT-01/A", ("plant.yml", "under_head: {washer: hard, on: S235}", "under_head: {washer: hard}"))
    torque = found.value("bolt_torque")
    assert isinstance(torque, Value) and any("frame" in remark for remark in torque.remarks)


def test_an_impact_wrench_scatters_more() -> None:
    # VDI 2230 Table A8: up to 4; ISO 16047 solved for the force at friction 0.10, 10 % lost by settling
    found = sheet("INT-01/A", ("plant.yml", "tightening: {tool: wrench with a scale,", "tightening: {tool: impact wrench,"))
    d2, torque = 20 - 0.649519 * 2.5, size(found.value("bolt_setting"), "N.m")
    force = 1000 * torque / (0.159 * 2.5 + 0.578 * d2 * 0.10 + 0.10 * (28.19 + 22) / 4)
    assert size(found.value("bolt_clamp_least"), "N") == pytest.approx(force / 4 * 0.9, rel=1e-3)


# --- grease and warmth -------------------------------------------------------------------------------------------------------------


def test_a_bearing_loaded_over_a_tenth_is_said_to_want_grease_sooner() -> None:
    heavy, light = sheet("INT-01/C").value("grease_interval"), sheet("INT-01/A").value("grease_interval")
    assert isinstance(heavy, Value) and any("tenth" in remark for remark in heavy.remarks)
    assert isinstance(light, Value) and not light.remarks


@pytest.mark.parametrize(
    "cold",
    [
        "R-0900,1,MIL-01 A,2026-11-20T09:00,K2,as-left,housing temperature,24,degC,infrared 1,\n",
        "R-0901,1,MIL-01 A,2026-11-20T09:30,K2,run-in,housing temperature,26,degC,infrared 1,\n",
        "R-0901,1,MIL-01 A,2026-11-20T09:30,K2,run-in,housing temperature,26,degC,infrared 1,\n"
        "R-0901,1,MIL-01 A,2026-11-20T10:30,K2,run-in,housing temperature,60,degC,infrared 1,\n",
    ],
)
def test_a_bearing_that_is_not_yet_warm_says_nothing_of_how_warm_it_runs(cold: str) -> None:
    row = "R-0222,1,MIL-01 A,2026-11-17T13:17,K2,round,housing temperature,71,degC,infrared 1,\n"
    assert size(sheet("MIL-01/A", (ROUNDS, row, row + cold)).value("bearing_temperature"), "degC") == 71


def test_a_run_in_that_is_even_for_an_hour_says_it() -> None:
    row = "R-0222,1,MIL-01 A,2026-11-17T13:17,K2,round,housing temperature,71,degC,infrared 1,\n"
    new = "R-0901,1,MIL-01 A,2026-11-20T{},K2,run-in,housing temperature,{},degC,infrared 1,\n"
    even = new.format("10:30", 64) + new.format("11:30", 65)
    assert size(sheet("MIL-01/A", (ROUNDS, row, row + even)).value("bearing_temperature"), "degC") == 65


def test_viscosity_has_no_step_at_two() -> None:
    # ASTM D341: one formula for Z, whose last term fades and is nowhere cut off
    low, high = 60.0, 100.0
    for _ in range(60):
        middle = (low + high) / 2
        low, high = (middle, high) if viscosity_at_temperature(5.0, 1.5, middle) > 2 else (low, middle)
    below, above = viscosity_at_temperature(5.0, 1.5, low - 1e-4), viscosity_at_temperature(5.0, 1.5, high + 1e-4)
    assert below - above == pytest.approx(0, abs=2e-5) and below > above


# --- what is typed and cannot be so ------------------------------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("file", "old", "new", "wrong"),
    [
        ("plant.yml", "gives: {seat.class: m5}", "gives: {seat.class: m55}", "m55"),
        ("plant.yml", "gives: {nut.side: drag tightens}", "gives: {nut.side: left}", "left"),
        ("plant.yml", "gives: {fixed.at: drive end}", "gives: {fixed.at: drivee end}", "drivee end"),
        ("plant.yml", "gives: {seat.class: m5}", 'gives: {bolts.class: "10.9"}', "bolts.class"),
        (BYP_02, "      thrust: {kind: thrust, at: 1200 mm, force: 1.5 kN, toward: drive end}",
         "      push: {kind: screw, at: 1200 mm, power: 3 kW, diameter: 300 mm, lead: 300 mm, friction: 0.4, toward: drve end}", "drve end"),
    ],
)  # fmt: skip
def test_a_word_that_decides_nothing_is_a_problem_with_its_line(file: str, old: str, new: str, wrong: str, tmp_path: Path) -> None:
    copy = copy_of_demo(tmp_path / "plant")
    text = (copy / file).read_text(encoding="utf-8")
    line = text[: text.index(old)].count("\n") + 1
    (copy / file).write_text(text.replace(old, new), encoding="utf-8")
    _, problems = read_plant(copy, ON)
    assert [(p.place.file, p.place.line) for p in problems if wrong in p.wrong] == [(file, line)]
