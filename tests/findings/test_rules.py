"""Each rule fires on its fault and keeps silent on its near miss. Cases are the demo plant with one thing changed: file, what stood there, what stands now."""

from __future__ import annotations

from datetime import date
from pathlib import Path

import pytest

from generator.checking import check_report
from generator.findings import RULES
from generator.findings.finding import name_of
from tests.copies import copy_of_demo

PLANT = Path(__file__).parents[2] / "plant_data"
ON = date(2026, 11, 25)
M = "machines/{}.yml"
SEATS, GREASE = "records/2026-seats.csv", "records/2026-grease.csv"
Edit = tuple[str, str, str]

# what is changed, where, the rule, and whether it is found then
CASES: list[tuple[str, str, bool, list[Edit]]] = [
    ("two fixed bearings", "WSH-03/screw", False, [(M.format("WSH-03"), "shaft: 75 degC, frame: 20 degC", "shaft: 20 degC, frame: 20 degC")]),
    ("two fixed bearings", "WSH-03/screw", True, [(M.format("WSH-03"), "shaft: 75 degC, frame: 20 degC", "shaft: 21 degC, frame: 20 degC")]),
    ("no fixed bearing", "WSH-04/roll", True, [(M.format("WSH-04"), "holds: fixed", "holds: free\n        floats: {by: guided frame, drive side: 2 mm, idle side: 2 mm}")]),
    ("no fixed bearing", "WSH-04/roll", False, []),
    ("fixed on the wrong side", "DRY-03/fan", False, [(M.format("DRY-03"), "room: 0.8 mm", "room: 1.4 mm"), ("plant.yml", "gives: {fixed.at: drive end}", "gives: {seat.class: h9}")]),
    ("growth over float", "DRY-01/B", False, [(M.format("DRY-01"), "drive end: 1.5 mm, far end: 1.5 mm", "drive end: 5.1 mm, far end: 5.1 mm")]),
    ("growth over float", "DRY-01/B", True, [(M.format("DRY-01"), "drive end: 1.5 mm, far end: 1.5 mm", "drive end: 5.0 mm, far end: 5.0 mm")]),
    ("take up without float", "DRY-01/tail", False, [("library/housings.yml", "  style: take-up\n  body: {material: grey iron, strength: GJL-200}\n  foot: {length: 240 mm, width: 62 mm, thickness: 22 mm}\n  bolts: {count: 2, size: M16, apart: 190 mm, hole: 17.5 mm}\n  travel: 150 mm\n\n", "  style: take-up\n  body: {material: grey iron, strength: GJL-200}\n  foot: {length: 240 mm, width: 62 mm, thickness: 22 mm}\n  bolts: {count: 2, size: M16, apart: 190 mm, hole: 17.5 mm}\n  travel: 150 mm\n  guide: 3 mm\n\n"), (M.format("DRY-01"), "at: 2800 mm\n        holds: fixed", "at: 2800 mm\n        holds: free")]),
    ("take up travel used", "INT-02/C", False, [(SEATS, "take-up used,138", "take-up used,135")]),
    ("shaft below limit", "UTL-01/D", False, [(SEATS, ",59.91", ",59.93")]),
    ("shaft above limit", "UTL-04/A", True, [(SEATS, "seat diameter 1 a,55.016", "seat diameter 1 a,55.025")]),
    ("shaft above limit", "UTL-04/A", False, [(SEATS, "seat diameter 1 a,55.016", "seat diameter 1 a,55.024")]),
    ("shaft form", "INT-02/A", False, [(SEATS, ",64.94", ",64.97")]),
    ("inch metric near miss", "UTL-01/F", False, [(M.format("UTL-01"), "sleeve: Orvane sleeve 2 3/8 in", "sleeve: Orvane sleeve 60")]),
    ("wrong bore", "WSH-04/A", True, [(M.format("WSH-04"), "diameter: 30 mm", "diameter: 40 mm")]),
    ("wrong bore", "WSH-04/A", False, [(M.format("WSH-04"), "diameter: 30 mm", "diameter: 30.4 mm")]),
    ("nut thread not sleeve thread", "BYP-02/A", False, [(M.format("BYP-02"), "nut_turn: Orvane 14, retaining_screw: Orvane 14", "nut_turn: Orvane 21, retaining_screw: Orvane 21")]),
    ("nut thread not sleeve thread", "INT-02/A", True, [(M.format("INT-02"), "inside: the open", "fitted: {nut_thread: M75x1.5}\n        inside: the open")]),
    ("nut side against plant rule", "MIL-04/A", False, [(M.format("MIL-04"), "turns: clockwise", "turns: anticlockwise")]),
    ("nut side against rotation", "UTL-01/A", True, [(M.format("UTL-01"), "turns: anticlockwise", "turns: clockwise")]),
    ("nut side against rotation", "UTL-01/A", False, []),
    ("eccentric on reversing", "INT-03/A", False, [(M.format("INT-03"), "turns: both ways", "turns: clockwise")]),
    ("collar direction unknown", "MIL-03/A", True, [(M.format("MIL-03"), "    turns: clockwise\n", ""), ("plant.yml", ", collar: MIL-03", "")]),
    ("collar direction unknown", "MIL-03/A", False, []),
    ("set screw on hard or hollow shaft", "UTL-03/A", False, [(M.format("UTL-03"), "hardness: 52 HRC", "hardness: 35 HRC")]),
    ("set screw on hard or hollow shaft", "UTL-03/A", True, [(M.format("UTL-03"), "hardness: 52 HRC", "hardness: 36 HRC")]),
    ("set screw on hard or hollow shaft", "WSH-04/A", True, [(M.format("WSH-04"), "diameter: 30 mm}", "diameter: 30 mm, hole: 10 mm}")]),
    ("speed over locking", "MIL-02/A", False, [(M.format("MIL-02"), "speed: 3550 rpm", "speed: 2600 rpm")]),
    ("slot room below travel", "INT-02/A", True, [("library/housings.yml", "slot: {along: 20 mm, across: 25 mm}", "slot: {along: 17.4 mm, across: 25 mm}")]),
    ("slot room below travel", "INT-02/A", False, [("library/housings.yml", "slot: {along: 20 mm, across: 25 mm}", "slot: {along: 17.6 mm, across: 25 mm}")]),
    ("grease speed", "INT-04/A", False, [(M.format("INT-04"), "speed: 2950 rpm", "speed: 2570 rpm")]),
    ("grease temperature", "DRY-02/A", False, [(M.format("DRY-02"), "bearing: 128 degC", "bearing: 120 degC")]),
    ("grease mix", "BYP-01/A", False, [("library/greases.yml", "mixes_with: []", "mixes_with: [{grease: Thessaryn Sorrel, from: Thessaryn letter 2}]")]),
    ("food grease", "PAK-02/A", False, [(M.format("PAK-02"), "planned: Thessaryn Rowan, gun: gun 3", "planned: Thessaryn Linden, gun: gun 4")]),
    ("food grease", "PAK-01/A", True, [("library/greases.yml", "from: Thessaryn letter 2", "from: Thessaryn letter 9")]),
    ("grease on sealed", "WSH-04/A", True, [(M.format("WSH-04"), "collar: drive side", "collar: drive side\n        grease: {feed: automatic}")]),
    ("grease on sealed", "WSH-04/A", False, []),
    ("regrease running behind guard", "UTL-02/A", False, [(M.format("UTL-02"), "place: inside the guard", "place: piped outside the guard")]),
    ("seal misalignment", "INT-01/A", False, [(M.format("INT-01"), "height: 14 mm", "height: 10 mm")]),
    ("frame not flat", "INT-03/B", False, [(SEATS, "frame flatness,0.45", "frame flatness,0.04")]),
    ("polymer over torque", "PAK-01/A", False, [(M.format("PAK-01"), "torque: 38 to 40 N.m", "torque: 12 to 14 N.m")]),
    ("stainless gall", "WSH-01/A", False, [(M.format("WSH-01"), "thread: dry, torque: 70 to 80 N.m, torque_from: torque chart for steel bolts", "thread: paste")]),
    ("stainless gall", "WSH-01/A", True, [(M.format("WSH-01"), "thread: dry", "thread: paste")]),
    ("tapped base engagement", "PAK-03/C", True, [(M.format("PAK-03"), "length: 45 mm, through: 25 mm", "length: 47 mm, through: 25 mm")]),
    ("tapped base engagement", "PAK-03/C", False, [(M.format("PAK-03"), "length: 45 mm, through: 25 mm", "length: 46 mm, through: 25 mm")]),
    ("vertical weight on free", "WSH-02/mixer", False, [(M.format("WSH-02"), "weight_on: A", "weight_on: B")]),
    ("free in name only", "UTL-01/E", False, [(M.format("UTL-01"), "at: 8300 mm\n        holds: free", "at: 8300 mm\n        holds: free\n        floats: {by: pin in a grooved shaft, drive end: 2 mm, far end: 2 mm}")]),
    ("dust zone ignition", "INT-02/A", True, [(M.format("INT-02"), "inside: the open\n        watched: {monitor: temperature, stops_at: 80 degC}", "inside: the casing")]),
    ("dust zone ignition", "INT-02/A", False, [(M.format("INT-02"), "inside: the open", "inside: the casing")]),
    ("maker document missing", "BYP-03/A", False, [("library/documents/orvane-14.yml", "      Orvane sleeve 60:", "      Orvane long sleeve 50: {nut_turn: 5/8 to 3/4 turn, retaining_screw: {size: M5, torque: 3.5 to 4.0 N.m}}\n      Orvane sleeve 60:")]),
    ("maker document past review", "WSH-04/A", True, [("library/documents/selkorne-2.yml", "review_by: 2027-05-01", "review_by: 2026-11-24")]),
    ("maker document past review", "WSH-04/A", False, [("library/documents/selkorne-2.yml", "review_by: 2027-05-01", "review_by: 2026-11-25")]),
    ("torque tool range", "INT-02/A", True, [("library/tools.yml", "range: 20 to 120 N.m", "range: 20 to 80 N.m"), ("library/tools.yml", "range: 60 to 340 N.m", "range: 130 to 340 N.m")]),
    ("torque tool range", "INT-02/A", False, []),
    ("gun not weighed", "WSH-04/A", True, [("library/tools.yml", "stroke: 0.9 g, weighed: 2026-06-01", "stroke: 0.9 g, weighed: 2025-11-20")]),
    ("gun not weighed", "WSH-04/A", False, [("library/tools.yml", "stroke: 0.9 g, weighed: 2026-06-01", "stroke: 0.9 g, weighed: 2025-11-26")]),
    ("measured when warm", "UTL-04/A", True, [(SEATS, "UTL-04 A,2026-04-02T08:30,K7,as-found,shaft temperature,20", "UTL-04 A,2026-04-02T08:30,K7,as-found,shaft temperature,24")]),
    ("measured when warm", "UTL-04/A", False, [(SEATS, "UTL-04 A,2026-04-02T08:30,K7,as-found,shaft temperature,20", "UTL-04 A,2026-04-02T08:30,K7,as-found,shaft temperature,23")]),
    ("seat outside the makers", "INT-02/A", True, [(M.format("INT-02"), "inside: the open", "seat: {class: h10}\n        inside: the open")]),
    ("seat outside the makers", "INT-02/A", False, [(M.format("INT-02"), "inside: the open", "seat: {class: h8}\n        inside: the open")]),
    ("record of an old issue", "WSH-04/A", True, [(GREASE, "record,issue,position,when,by,phase,quantity,value,unit,instrument,note", "record,issue,position,when,by,phase,quantity,value,unit,instrument,note\nR-0999,0,WSH-04 A,2026-11-26T09:00,K4,as-left,base torque given,24,N.m,wrench 0,")]),
    ("record of an old issue", "WSH-04/A", False, [(GREASE, "record,issue,position,when,by,phase,quantity,value,unit,instrument,note", "record,issue,position,when,by,phase,quantity,value,unit,instrument,note\nR-0999,1,WSH-04 A,2026-11-26T09:00,K4,as-left,base torque given,24,N.m,wrench 0,")]),
    ("lock too weak", "WSH-04/A", True, [(M.format("WSH-04"), "force: 0.1 kN", "force: 1.6 kN")]),
    ("lock too weak", "WSH-04/A", False, [(M.format("WSH-04"), "force: 0.1 kN", "force: 1.5 kN")]),
    ("foot slips", "UTL-01/A", True, [(M.format("UTL-01"), "belt 1: {kind: side force, at: 1300 mm, force: 1 kN, toward: 6 o'clock}", "belt 1: {kind: side force, at: 1300 mm, force: 30 kN, toward: 3 o'clock}")]),
    ("foot slips", "UTL-01/A", False, [(M.format("UTL-01"), "belt 1: {kind: side force, at: 1300 mm, force: 1 kN, toward: 6 o'clock}", "belt 1: {kind: side force, at: 1300 mm, force: 3 kN, toward: 3 o'clock}")]),
    ("foot opens", "UTL-01/A", True, [(M.format("UTL-01"), "belt 1: {kind: side force, at: 1300 mm, force: 1 kN, toward: 6 o'clock}", "belt 1: {kind: side force, at: 1300 mm, force: 120 kN, toward: 3 o'clock}")]),
    ("foot opens", "UTL-01/A", False, [(M.format("UTL-01"), "belt 1: {kind: side force, at: 1300 mm, force: 1 kN, toward: 6 o'clock}", "belt 1: {kind: side force, at: 1300 mm, force: 30 kN, toward: 3 o'clock}")]),
    ("clearance left too small", "MIL-01/A", False, [(M.format("MIL-01"), "bearing: 72 degC, ring_difference: 15 K", "bearing: 72 degC, ring_difference: 8 K")]),
    ("clearance group too small", "INT-01/A", True, [("library/bearings.yml", "  clearance: {class: C3}\n  swivels: 1.5 deg\n  mass: 3.4 kg", "  clearance: {class: C2}\n  swivels: 1.5 deg\n  mass: 3.4 kg")]),
    ("clearance group too small", "INT-01/A", False, []),
    ("ring will not slide on", "UTL-04/A", True, [("plant.yml", "gives: {seat.class: m5}", "gives: {seat.class: p6}")]),
    ("ring will not slide on", "UTL-04/A", False, []),
    ("ring stress too high", "MIL-01/A", True, [("library/documents/brelloch-5.yml", "shaft_class: m6", "shaft_class: r6")]),
    ("ring stress too high", "MIL-01/A", False, [("library/documents/brelloch-5.yml", "shaft_class: m6", "shaft_class: p6")]),
    ("seat holds too little", "UTL-04/A", True, [(M.format("UTL-04"), "      reaction A:", "      thrust: {kind: thrust, at: 450 mm, force: 0.5 kN, toward: far end}\n      reaction A:")]),
    ("seat holds too little", "UTL-04/A", False, [(M.format("UTL-04"), "      reaction A:", "      thrust: {kind: thrust, at: 450 mm, force: 0.2 kN, toward: far end}\n      reaction A:")]),
    ("load on weak axis", "INT-02/A", True, [(M.format("INT-02"), "unit: Orvane block unit 65\n        nut: drive end", "unit: Orvane block unit 65\n        base_toward: 12 o'clock\n        nut: drive end"), ("library/housings.yml", "down: 75 kN, up: 26 kN, side: 38 kN", "down: 75 kN, up: 7.3 kN, side: 38 kN")]),
    ("load on weak axis", "INT-02/A", False, [(M.format("INT-02"), "unit: Orvane block unit 65\n        nut: drive end", "unit: Orvane block unit 65\n        base_toward: 12 o'clock\n        nut: drive end"), ("library/housings.yml", "down: 75 kN, up: 26 kN, side: 38 kN", "down: 75 kN, up: 7.4 kN, side: 38 kN")]),
    ("static safety too low", "INT-02/A", True, [("library/bearings.yml", "static: 43.4 kN", "static: 7.3 kN")]),
    ("static safety too low", "INT-02/A", False, [("library/bearings.yml", "static: 43.4 kN", "static: 7.4 kN")]),
    ("minimum load", "MIL-01/B", False, [(M.format("MIL-01"), "mass: 180 kg", "mass: 720 kg")]),
    ("life too short", "INT-02/A", True, [("plant.yml", "wanted: {life: 40000 hour}", "wanted: {life: 500000 hour}")]),
    ("life too short", "INT-02/A", False, []),
    ("load turns with the ring", "INT-04/A", True, [(M.format("INT-04"), "grade: 6.3 mm/s", "grade: 40 mm/s")]),
    ("load turns with the ring", "INT-04/A", False, [(M.format("INT-04"), "grade: 6.3 mm/s", "grade: 16 mm/s")]),
    ("stated reaction off", "WSH-04/A", True, [(M.format("WSH-04"), "at: A, force: 0.4 kN", "at: A, force: 0.3 kN")]),
    ("stated reaction off", "WSH-04/A", False, [(M.format("WSH-04"), "at: A, force: 0.4 kN", "at: A, force: 0.35 kN")]),
    ("slope over capability", "BYP-01/A", True, [(M.format("BYP-01"), "diameter: 130 mm", "diameter: 66 mm")]),
    ("slope over capability", "BYP-01/A", False, []),
    ("shaft too weak", "DRY-02/roll", True, [(M.format("DRY-02"), "diameter: 120 mm", "diameter: 80 mm")]),
    ("shaft too weak", "DRY-02/roll", False, []),
    ("rotor without its weight", "INT-04/fan", True, [(M.format("INT-04"), "      impeller weight: {kind: weight, at: 820 mm, mass: 78 kg}\n", "      hub: {kind: weight, at: 300 mm, mass: 8 kg}\n")]),
    ("rotor without its weight", "INT-04/fan", False, []),
    ("combination without steps", "BYP-02/B", True, [(M.format("BYP-02"), "        frame: drive end\n", "")]),
    ("combination without steps", "BYP-02/B", True, [(M.format("BYP-02"), "        frame: drive end\n", "        frame: discharge end\n")]),
    ("combination without steps", "BYP-02/B", True, [("library/documents/orvane-21.yml", "draw up crosswise", "draw up")]),
    ("combination without steps", "BYP-02/B", False, []),
    ("vibration high", "MIL-01/A", True, [(GREASE, "record,issue,position,when,by,phase,quantity,value,unit,instrument,note", "record,issue,position,when,by,phase,quantity,value,unit,instrument,note\nR-0998,1,MIL-01 A,2026-11-20T09:00,K4,round,vibration,2.9,mm/s,pen,")]),
    ("vibration high", "MIL-01/A", False, [(GREASE, "record,issue,position,when,by,phase,quantity,value,unit,instrument,note", "record,issue,position,when,by,phase,quantity,value,unit,instrument,note\nR-0998,1,MIL-01 A,2026-11-20T09:00,K4,round,vibration,2.8,mm/s,pen,")]),
]  # fmt: skip


@pytest.mark.parametrize(
    ("rule", "at", "found", "edits"),
    CASES,
    ids=[f"{rule}-{at}-{'found' if f else 'near miss'}-{n}" for n, (rule, at, f, _) in enumerate(CASES)],
)
def test_a_rule_fires_on_its_fault_and_not_beside_it(rule: str, at: str, found: bool, edits: list[Edit], tmp_path: Path) -> None:
    copy = tmp_path / "plant"
    copy_of_demo(copy)
    for file, old, new in edits:
        path = copy / file
        text = path.read_text(encoding="utf-8")
        assert old in text, (file, old)
        path.write_text(text.replace(old, new), encoding="utf-8")
    report = check_report(copy, ON)
    assert [f"{p.place}: {p.wrong}" for p in report.problems] == []
    assert ((at, rule) in {(f.rule.at, f.name) for f in report.findings}) is found


def test_every_rule_has_a_near_miss() -> None:
    assert {name_of(rule) for rule, _ in RULES} == {rule for rule, _, found, _ in CASES if not found}
