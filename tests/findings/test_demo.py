"""The demo plant: every deliberate fault is found, nothing else is, and clean machines are clean."""

from __future__ import annotations

from datetime import date
from pathlib import Path

import pytest

from generator.checking import Report, check_report
from generator.mounting.standard import mounting_standard
from generator.plant.resolve import read_plant
from generator.value import Withheld

PLANT = Path(__file__).parents[2] / "plant_data"
ON = date(2026, 11, 25)

# every deliberate fault of the demo plant, written out: where, and the name of its rule
FAULTS = {
    ("BYP-01/A", "grease mix"), ("BYP-02/A", "nut thread not sleeve thread"), ("BYP-03/A", "maker document missing"),
    ("BYP-03/B", "maker document missing"), ("DRY-01/B", "growth over float"), ("DRY-01/tail", "take up without float"),
    ("DRY-02/A", "grease temperature"), ("DRY-02/B", "grease temperature"), ("DRY-03/fan", "fixed on the wrong side"),
    ("INT-01/A", "seal misalignment"), ("INT-02/A", "shaft form"), ("INT-02/C", "take up travel used"), ("INT-02/D", "take up travel used"),
    ("INT-03/A", "eccentric on reversing"), ("INT-03/B", "eccentric on reversing"), ("INT-03/B", "frame not flat"),
    ("DRY-03/A", "minimum load"), ("DRY-03/B", "minimum load"), ("MIL-01/A", "clearance left too small"),
    ("MIL-01/B", "clearance left too small"), ("MIL-01/B", "minimum load"), ("INT-04/A", "grease speed"), ("INT-04/B", "grease speed"), ("MIL-02/A", "speed over locking"), ("MIL-02/B", "speed over locking"),
    ("MIL-04/A", "nut side against plant rule"), ("PAK-01/A", "polymer over torque"), ("PAK-02/A", "food grease"),
    ("PAK-03/A", "tapped base engagement"), ("PAK-03/B", "tapped base engagement"), ("UTL-01/D", "shaft below limit"),
    ("UTL-01/E", "free in name only"), ("UTL-01/F", "inch metric near miss"), ("UTL-01/G", "free in name only"),
    ("UTL-02/A", "regrease running behind guard"), ("UTL-03/A", "set screw on hard or hollow shaft"),
    ("UTL-03/B", "set screw on hard or hollow shaft"), ("WSH-01/A", "stainless gall"), ("WSH-02/A", "free in name only"),
    ("WSH-02/mixer", "vertical weight on free"), ("WSH-03/screw", "two fixed bearings"),
}  # fmt: skip


@pytest.fixture(scope="module")
def report() -> Report:
    return check_report(PLANT, ON)


def test_the_files_are_as_meant(report: Report) -> None:
    assert report.problems == ()
    assert report.machines == 25


def test_each_deliberate_fault_is_found_and_nothing_else(report: Report) -> None:
    assert {(f.rule.at, f.name) for f in report.findings} == FAULTS


@pytest.mark.parametrize("tag", ["WSH-04", "MIL-03", "UTL-04"])
def test_a_clean_machine_has_nothing_to_report(report: Report, tag: str) -> None:
    assert [f.name for f in report.findings if f.tag == tag] == []


@pytest.mark.parametrize("tag", ["WSH-04", "MIL-03", "UTL-04"])
def test_no_number_for_the_hand_is_withheld_on_a_clean_machine(tag: str) -> None:
    plant, _ = read_plant(PLANT, ON)
    assert plant
    sheets = next(m for m in mounting_standard(plant).machines if m.machine.tag == tag).sheets
    assert [f"{s.id}/{line.key}" for s in sheets for line in s.lines.values() if line.by_hand and isinstance(line.value, Withheld)] == []


def test_two_findings_stand_accepted_and_one_acceptance_has_run_out(report: Report) -> None:
    assert {f.rule.at for f in report.findings if f.accepted} == {"INT-01/A", "INT-02/D"}
    assert [f.rule.at for f in report.findings if f.back_because] == ["INT-03/B"]


def test_acceptances_run_out_on_their_day() -> None:
    later = check_report(PLANT, date(2027, 3, 1))
    assert not any(f.accepted for f in later.findings)


def test_a_held_turn_shows_no_figure() -> None:
    plant, _ = read_plant(PLANT, ON)
    assert plant
    sheet = mounting_standard(plant).sheet("BYP-02/A")
    assert sheet and isinstance(sheet.value("nut_turn"), Withheld) and isinstance(sheet.value("nut_travel"), Withheld)
