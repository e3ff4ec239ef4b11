"""Steps of the demo's positions that must say a certain thing, held against the values of their sheets."""

from __future__ import annotations

from datetime import date
from pathlib import Path

import pytest

from generator.mounting.standard import mounting_standard
from generator.plant.resolve import read_plant
from generator.steps import Procedure
from generator.work.compose import procedures
from generator.work.take_along import take_along
from tests.copies import copy_of_demo

PLANT = Path(__file__).parents[2] / "plant_data"


@pytest.fixture(scope="module")
def jobs() -> dict[str, dict[str, Procedure]]:
    return jobs_of(PLANT)


def jobs_of(folder: Path) -> dict[str, dict[str, Procedure]]:
    plant, _ = read_plant(folder, date(2026, 11, 25))
    assert plant
    standard = mounting_standard(plant)
    return {position: dict(found) for machine in standard.machines for position, found in procedures(standard, machine).items()}


def says(procedure: Procedure, act: str) -> str:
    return next(str(step.does) for step in procedure.steps if step.act == act).replace("\u00a0", " ")


def test_every_position_has_its_five_jobs(jobs: dict[str, dict[str, Procedure]]) -> None:
    assert len(jobs) == 65
    assert all(tuple(found) == ("put on", "take off", "grease", "inspect", "run in") for found in jobs.values())
    assert all(found["take off"].items for found in jobs.values())


def test_the_room_of_a_free_unit_lies_where_the_shaft_grows_to(jobs: dict[str, dict[str, Procedure]]) -> None:
    # 12e-6/K x 900 mm x 83 K = 0.9 mm of growth from the unit at the impeller toward the drive: cold, the larger room is toward the drive
    assert (
        says(jobs["DRY-03/A"]["put on"], "set float")
        == "Set the ring in its bore: 3.45 mm of room toward the drive end, 2.55 mm toward the impeller end."
    )
    # beyond the unit that holds the shaft it is the other way about
    assert (
        says(jobs["BYP-01/B"]["put on"], "set float")
        == "Set the ring in its bore: 3.41 mm of room toward the drive end, 4.59 mm toward the far end."
    )


def test_the_second_flange_of_the_feed_screw_has_gap_turn_and_order(jobs: dict[str, dict[str, Procedure]]) -> None:
    put_on = jobs["BYP-02/B"]["put on"]
    assert put_on.open
    assert "0.0630 to 0.0660 in off the frame" in says(put_on, "set gap")
    assert says(put_on, "turn nut") == "Turn the nut on by 3/4 turn, that is 270° or 6 of 8 slots, counted from the first mark."
    acts = [step.act for step in put_on.steps]
    assert acts.index("set gap") < acts.index("mark") < acts.index("draw flange up") < acts.index("turn nut") < acts.index("bolts final")


def test_a_shaft_that_tips_is_held_down_and_not_said_to_have_no_load(jobs: dict[str, dict[str, Procedure]]) -> None:
    assert "tips up" in says(jobs["INT-04/A"]["put on"], "support")


def test_a_held_job_says_why_and_no_figure_is_guessed(jobs: dict[str, dict[str, Procedure]]) -> None:
    assert jobs["BYP-02/A"]["put on"].held == ("nut thread not sleeve thread",)
    assert "second flange" in jobs["BYP-03/B"]["put on"].refused
    assert jobs["UTL-02/A"]["grease"].refused
    assert not jobs["BYP-02/A"]["take off"].held


def test_blades_and_micrometers_are_read_in_their_own_unit(jobs: dict[str, dict[str, Procedure]]) -> None:
    assert all("µm" not in str(sentence) for found in jobs.values() for procedure in found.values() for step in procedure.steps for sentence in (step.does, step.check or ""))  # fmt: skip


def acts(procedure: Procedure) -> list[str]:
    return [step.act for step in procedure.steps]


def test_what_sits_on_the_way_comes_off_before_and_goes_back_after(jobs: dict[str, dict[str, Procedure]]) -> None:
    # statics has no part in it: a ring that goes over a shaft end passes whatever sits there (common practice, no source)
    for job, then in (("put on", "slide on"), ("take off", "unlock")):
        assert "unit A, belt 1." in says(jobs["UTL-01/B"][job], "clear way")
        found = acts(jobs["UTL-01/B"][job])
        assert found.index("prove") < found.index("support") < found.index("clear way") < found.index(then)
    found = acts(jobs["UTL-01/B"]["put on"])
    assert found.index("slide on") < found.index("way back") < found.index("guards on")
    assert "first: rotor." in says(jobs["UTL-02/A"]["take off"], "clear way")  # the wind acts on the rotor and is no thing of its own
    # a figure for the jack holds with all on the shaft: it is not said where something comes off
    # steel of 12.6 m x 60 mm at 7850 kg/m3 is 279.66 kg, ring, sleeve and block 5.64 kg: 285.3 kg, and a quarter more 356.6 kg, both said upward
    assert "all of it weighs 286 kg, each place rated 357 kg or more" in says(jobs["UTL-01/B"]["take off"], "support")
    support = next(step for step in jobs["UTL-01/B"]["take off"].steps if step.act == "support")
    assert support.picture == "" and "it carries" not in str(support.does)
    assert "clear way" not in acts(jobs["INT-01/A"]["put on"]) and "way back" not in acts(jobs["INT-01/A"]["put on"])


def test_old_grease_is_taken_where_it_can_be_reached(jobs: dict[str, dict[str, Procedure]]) -> None:
    split, closed, cartridge = (acts(jobs[one]["take off"]) for one in ("INT-01/A", "INT-02/A", "UTL-04/A"))
    assert split.index("cap off") < split.index("load zone") < split.index("grease sample") < split.index("raise")
    assert closed.index("grease sample") < closed.index("bolts out") and "seal or relief" in says(
        jobs["INT-02/A"]["take off"], "grease sample"
    )
    assert cartridge.index("cartridge off") < cartridge.index("grease sample")


def test_on_an_upright_shaft_what_slides_off_is_held_from_below(jobs: dict[str, dict[str, Procedure]]) -> None:
    for position, held in (("UTL-02/A", True), ("WSH-02/B", True), ("INT-02/A", False)):
        off = next(step for step in jobs[position]["take off"].steps if step.act == "slide off")
        assert ("held from below" in str(off.check)) == held and (off.caution == "W2") == held


def test_a_collar_bound_nobody_knows_which_way_is_still_taken_off(jobs: dict[str, dict[str, Procedure]]) -> None:
    back = next(step for step in jobs["INT-03/A"]["take off"].steps if step.act == "collar back")
    assert "HELD" not in str(back.check) and "marks" in str(back.check)


def test_a_plant_that_reads_inches_first_has_them_in_its_steps_but_not_on_its_wrench(tmp_path: Path) -> None:
    # 64.926 / 25.4 = 2.55614, rounded inward to ten-thousandths; 120 N.m / 1.35582 = 88.5 lbf.ft (1 lbf = 4.4482216 N, 1 ft = 0.3048 m)
    copy_of_demo(tmp_path / "plant")
    typed = tmp_path / "plant/plant.yml"
    typed.write_text(typed.read_text(encoding="utf-8").replace("units: metric", "units: inch"), encoding="utf-8")
    put_on = jobs_of(tmp_path / "plant")["INT-02/B"]["put on"]
    assert "2.5562 to 2.5590 in" in says(put_on, "measure seat")
    assert says(put_on, "bolts final") == "Then all to 88.5 lbf·ft: set the wrench to 120 N·m."
    seat = next(step for step in put_on.steps if step.act == "measure seat")
    assert [blank.unit for blank in seat.blanks] == ["in", "in"]


def test_what_pulls_or_rests_on_the_shaft_is_off_before_it_is_held(jobs: dict[str, dict[str, Procedure]]) -> None:
    for position, name in (("DRY-02/A", "drum"), ("UTL-04/A", "belts"), ("UTL-01/A", "belt 1")):
        for job in ("put on", "take off"):
            found = acts(jobs[position][job])
            assert name in says(jobs[position][job], "pulls off") and found.index("S1" if "S1" in found else "prove") < found.index(
                "pulls off"
            )
            assert found.index("pulls off") < found.index("support")
        assert "tension back" in acts(jobs[position]["put on"])
    assert "pulls off" not in acts(jobs["BYP-02/B"]["put on"])


def test_the_load_is_off_a_unit_before_it_leaves_and_on_it_before_it_is_lined_up(jobs: dict[str, dict[str, Procedure]]) -> None:
    off, on = acts(jobs["INT-02/A"]["take off"]), acts(jobs["INT-02/A"]["put on"])
    assert off.index("bolts out") < off.index("take load") < off.index("unlock")
    assert on.index("lock nut") < on.index("set down") < on.index("align") < on.index("bolts final")
    cartridge = acts(jobs["UTL-04/A"]["take off"])
    assert cartridge.index("take load") < cartridge.index("cartridge off")


def test_nobody_gives_back_a_shaft_with_a_unit_missing_or_a_blocked_rotor(jobs: dict[str, dict[str, Procedure]]) -> None:
    first = acts(jobs["INT-04/B"]["put on"])
    assert first.index("count") < first.index("guards on") < first.index("rotor free") < first.index("last guard") < first.index("power")
    for found in jobs.values():
        if found["put on"].items:
            put_on = acts(found["put on"])
            assert put_on.index("floor") < put_on.index("count") < put_on.index("guards on") < put_on.index("power")
    # a unit of another shaft of the machine counts too, on the second sheet as on the first
    for position in ("INT-02/A", "INT-02/B", "UTL-02/A"):
        put_on = acts(jobs[position]["put on"])
        assert put_on.index("all on") < put_on.index("tension back") < put_on.index("gear away") < put_on.index("guards on")
    again = acts(jobs["INT-02/A"]["run in"])
    assert again.index("isolate") < again.index("release") < again.index("prove") < again.index("bolts again") < again.index("guards on") < again.index("blocks out") < again.index("last guard")


def test_an_upright_shaft_leans_on_nothing_that_is_held(jobs: dict[str, dict[str, Procedure]]) -> None:
    # A is to carry the weight and is held: B, which leans on it, is not taken off either
    assert jobs["WSH-02/B"]["take off"].held and jobs["WSH-02/B"]["put on"].held
    lower = jobs["UTL-02/B"]["put on"]
    assert "its weight stays on A" in says(lower, "support") and "A has let go" in str(next(step for step in lower.steps if step.act == "set down").troubles[0].do)
    assert "the weight" not in says(lower, "set down") and "carries the shaft now" in says(jobs["UTL-02/A"]["put on"], "set down")


def test_no_machine_runs_in_while_another_unit_of_it_is_held(jobs: dict[str, dict[str, Procedure]]) -> None:
    assert jobs["BYP-02/B"]["put on"].open and jobs["BYP-02/B"]["run in"].held == ("A, nut thread not sleeve thread",)
    assert jobs["INT-02/B"]["run in"].open


def test_figures_that_must_be_reached_are_said_upward(jobs: dict[str, dict[str, Procedure]]) -> None:
    # 103.3 and 13.939 by their sheets: no heater is set and no hole gauged to a thousandth
    assert "104 °C" in says(jobs["MIL-01/A"]["put on"], "heat")
    assert "14 mm" in says(jobs["PAK-03/A"]["put on"], "gauge hole")


def test_a_housing_the_process_warms_is_held_against_its_own_usual(jobs: dict[str, dict[str, Procedure]]) -> None:
    # DRY-01/A settles at 85 in 20 degrees of air: 85 + 10 and 85 + 15 (common practice, no source)
    readings = next(step for step in jobs["DRY-01/A"]["run in"].steps if step.act == "warm readings")
    assert "at or under 95\u00a0°C" in str(readings.check) and "over 100\u00a0°C" in readings.troubles[1].seen
    assert jobs["DRY-02/A"]["run in"].held == ("no figure: Stop the machine at",)


def test_what_a_machine_asks_for_is_said_where_it_is_isolated(jobs: dict[str, dict[str, Procedure]]) -> None:
    isolate = next(step for step in jobs["INT-04/A"]["take off"].steps if step.act == "isolate")
    assert isolate.quotes[0] == "Mind here: hold the impeller with its strap before anything is opened."


def test_a_new_insert_is_given_nothing_unless_its_maker_says_how_much(jobs: dict[str, dict[str, Procedure]]) -> None:
    assert "no grease" in acts(jobs["INT-02/B"]["put on"]) and "strokes" not in acts(jobs["INT-02/B"]["put on"])
    assert "strokes" in acts(jobs["INT-02/B"]["grease"])


def test_a_grease_that_is_held_is_on_no_list(tmp_path: Path) -> None:
    # a split housing is filled by hand: its grease is on the list, until it is one that may not come near food
    copy_of_demo(tmp_path / "plant")
    typed = tmp_path / "plant/plant.yml"
    for zone, named in (("combustible dust", True), ("food", False)):
        was = (PLANT / "plant.yml").read_text(encoding="utf-8")
        typed.write_text(was.replace("zone: combustible dust", f"zone: {zone}"), encoding="utf-8")
        plant, _ = read_plant(tmp_path / "plant", date(2026, 11, 25))
        assert plant
        standard = mounting_standard(plant)
        machine = next(one for one in standard.machines if one.machine.tag == "INT-01")
        listed = take_along(standard, machine, procedures(standard, machine))
        assert any("Rowan" in item.name for item in listed) == named
        assert any("HELD" in item.name for item in listed) != named


def test_wash_water_is_drained_and_no_ash(jobs: dict[str, dict[str, Procedure]]) -> None:
    drained = jobs["WSH-01/B"]["take off"]
    assert "wash water" in says(drained, "drain") and "wash water" not in says(drained, "release")
    assert says(jobs["UTL-03/A"]["take off"], "release").endswith("hot ash.")


def test_the_gear_of_an_upright_shaft_has_its_figure_whatever_comes_off(jobs: dict[str, dict[str, Procedure]]) -> None:
    assert "kg" in says(jobs["UTL-02/A"]["take off"], "support") and "kg" in says(jobs["UTL-02/B"]["take off"], "support")
    assert "unit A" not in says(jobs["UTL-02/B"]["take off"], "clear way")


def test_a_gear_figure_that_lacks_something_says_so(jobs: dict[str, dict[str, Procedure]]) -> None:
    assert "drum" in says(jobs["DRY-02/A"]["put on"], "add mass")
    support = says(jobs["DRY-02/A"]["put on"], "support")
    assert "and what no mass is typed of" in support and "rated" in support
    found = acts(jobs["DRY-02/A"]["put on"])
    assert found.index("add mass") < found.index("pulls off") < found.index("support")


def test_a_split_base_comes_under_its_bearing_and_its_cap_bolts_keep_their_figure(jobs: dict[str, dict[str, Procedure]]) -> None:
    on = acts(jobs["INT-01/A"]["put on"])
    assert on.index("lock nut") < on.index("fill by hand") < on.index("bolts in loose") < on.index("into housing") < on.index("bolts half")
    assert on.index("fill beside") < on.index("cap on") < on.index("cap bolts") < on.index("bolts final")
    assert "not the cap's" in says(jobs["INT-01/A"]["put on"], "bolts final")


def test_the_second_flange_is_lifted_before_its_gap_is_set(jobs: dict[str, dict[str, Procedure]]) -> None:
    on = acts(jobs["BYP-02/B"]["put on"])
    assert on.index("load off") < on.index("set gap") < on.index("hand tight") and on.index("bolts half") < on.index("set down") < on.index("bolts final")


def test_a_unit_that_came_off_is_on_again_before_a_float_is_set_from_it(jobs: dict[str, dict[str, Procedure]]) -> None:
    found = acts(jobs["INT-04/B"]["put on"])
    assert found.index("clear way") < found.index("unit back") < found.index("set float")
    assert says(jobs["INT-04/B"]["put on"], "unit back").endswith("up to S6: A.")


def test_what_was_driven_up_is_looked_at_by_a_line_drawn_after_it_was_locked(jobs: dict[str, dict[str, Procedure]]) -> None:
    found = acts(jobs["INT-02/A"]["put on"])
    assert found.index("lock nut") < found.index("witness line") < found.index("turn free")
    stiff = next(step for step in jobs["INT-01/A"]["put on"].steps if step.act == "turn free last").troubles[0]
    assert "leave the lock shut" in str(stiff.do)
