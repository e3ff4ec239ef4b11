"""Exercises on roller bearings, heat, bolts, growth, grease, watching and records: each worked from the values of this plant's own pages."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from typing import Any

from markupsafe import Markup

from generator.locking import locking_of
from generator.mounting.sheet import MountingStandard, Sheet
from generator.say import say
from generator.show import shown, text
from generator.value import Band, Value

Facts = Iterator[dict[str, Any]]


def practice_for(standard: MountingStandard) -> Callable[[str], Markup]:
    """What a guide calls: `practice("sleeve by clearance")`. The positions on which this work can be looked at, those not held first."""

    def practice(way: str) -> Markup:
        held = {finding.rule.at for finding in standard.findings if "put on" in finding.holds}  # type: ignore[attr-defined]
        found = [sheet for machine in standard.machines for sheet in machine.sheets if _is(sheet, way)]
        found.sort(key=lambda sheet: (sheet.id in held, sheet.id))
        if not found:
            return Markup("<p>{}</p>").format(say("No position of this plant is of this kind yet."))
        links = [Markup('<li><a href="../machines/{}.html#{}">{} {}</a>{}</li>').format(s.position.tag, s.position.letter, s.position.tag, s.position.letter, f" ({say('HELD')})" if s.id in held else "") for s in found[:8]]  # fmt: skip
        return Markup('<ul class="practice">{}</ul>').format(Markup("").join(links))

    return practice


def _is(sheet: Sheet, way: str) -> bool:
    locking = locking_of(sheet.position)
    if locking is not None and way in (locking.WAY, locking.WORD):
        return True
    housing = sheet.position.housing
    words = {str(housing.typed.style), str(housing.typed.body.material)} if housing else set()
    return way in words or way == str(sheet.position.typed.holds)


def _all(standard: MountingStandard, wanted: str) -> Iterator[Sheet]:
    for machine in standard.machines:
        yield from (sheet for sheet in machine.sheets if wanted in ("", sheet.id, machine.machine.tag))


def _facts(sheet: Sheet, question: str, given: tuple[str, ...], answer: tuple[str, ...], more: tuple[str, ...] = ()) -> dict[str, Any]:
    """An exercise from lines of a sheet: those given, those that are the answer, and sentences that follow."""
    return {
        "at": sheet.position.tag,
        "anchor": sheet.position.letter,
        "question": question,
        "given": [(sheet.lines[key].name, shown(sheet.lines[key].value).main) for key in given if key in sheet.lines],
        "answer": [
            *(
                say("{name}: {value}.", name=sheet.lines[key].name, value=_said(sheet.lines[key].value))
                for key in answer
                if key in sheet.lines
            ),
            *more,
        ],
    }


def _said(value: Any) -> str:
    return say(value.content) if isinstance(value, Value) and isinstance(value.content, str) and not value.unit else shown(value).main


def _known(sheet: Sheet, *keys: str) -> bool:
    return all(isinstance(sheet.value(key), Value | Band) for key in keys)


def roller(standard: MountingStandard, wanted: str) -> Facts:
    """How far a roller bearing is driven up."""
    for sheet in _all(standard, wanted):
        if _known(sheet, "reduction", "least_left", "take_1", "left_1", "drive_turn"):
            question = say(
                "How much of its clearance is taken at {id}, what does the blade read then, and what turn of the nut goes with it?",
                id=sheet.id,
            )
            yield _facts(sheet, question, ("clearance_before", "clearance_read_1", "clearance_read_2", "reduction", "least_left"), ("take_1", "left_1", "drive_travel", "drive_turn"),
                         (say("The blade decides; travel and turn only guide."),))  # fmt: skip


def heat(standard: MountingStandard, wanted: str) -> Facts:
    """How warm a ring must be."""
    for sheet in _all(standard, wanted):
        if _known(sheet, "heat_to", "heating", "seat_fit_most"):
            question = say("How hot is the ring of {id} made so that it slides on, and is that under its ceiling?", id=sheet.id)
            yield _facts(sheet, question, ("seat_fit_most", "heat_room", "heating"), ("heat_to", "heat_verdict"))


def bolts(standard: MountingStandard, wanted: str) -> Facts:
    """Whether bearing and seal bear the angle between shaft and seat."""
    for sheet in _all(standard, wanted):
        if _known(sheet, "seat_angle"):
            question = say(
                "The seat of {id} stands at an angle to the shaft. Does the bearing bear it? Do the seals? And to what is the wrench set?",
                id=sheet.id,
            )
            yield _facts(sheet, question, ("seat_angle",), ("angle_bearing", "angle_seal", "angle_housing_seal", "bolt_torque", "bolt_setting", "bolt_wrench"),
                         (say("The smallest angle allowed rules: the bearing's may be wide and the seal's narrow."),))  # fmt: skip


def growth(standard: MountingStandard, wanted: str) -> Facts:
    """Whether a free unit has the room that growth takes."""
    for sheet in _all(standard, wanted):
        if _known(sheet, "growth_here", "float_first", "float_second"):
            question = say("How far does the shaft grow to {id}, and is its float enough?", id=sheet.id)
            yield _facts(sheet, question, ("float_first", "float_second"), ("growth_here", "float_needed_hot", "float_verdict_hot"))


def grease(standard: MountingStandard, wanted: str) -> Facts:
    """Grams and strokes."""
    for sheet in _all(standard, wanted):
        gun = sheet.position.gun
        if _known(sheet, "grease_strokes", "grease_dose") and gun is not None and gun.typed.stroke is not None:
            given = _facts(
                sheet,
                say("How many strokes does {id} get, and how often?", id=sheet.id),
                (),
                ("grease_dose", "grease_strokes", "round_weeks", "grease_when"),
            )
            bearing = sheet.position.bearing
            assert bearing
            given["given"] = [
                (say("outside diameter"), text(bearing.typed.outside)), (say("width"), text(bearing.typed.width)), (say("one stroke of {gun}", gun=gun.name), text(gun.typed.stroke)),
            ]  # fmt: skip
            yield given


def speed(standard: MountingStandard, wanted: str) -> Facts:
    """Whether a grease stands the speed."""
    for sheet in _all(standard, wanted):
        if _known(sheet, "n_dm", "n_dm_allowed", "n_dm_verdict"):
            yield _facts(sheet, say("Does its grease stand the speed of {id}?", id=sheet.id), ("n_dm_allowed",), ("n_dm", "n_dm_verdict"))


def watch(standard: MountingStandard, wanted: str) -> Facts:
    """How warm a bearing may run."""
    for sheet in _all(standard, wanted):
        if _known(sheet, "run_in_usual", "run_in_alarm", "run_in_stop"):
            question = say(
                "{id} has been put on. How warm may its housing settle, when do you report it, and when do you stop the machine?",
                id=sheet.id,
            )
            yield _facts(sheet, question, (), ("run_in_usual", "run_in_alarm", "run_in_stop"))


def record(standard: MountingStandard, wanted: str) -> Facts:
    """Three mistakes in a filled record sheet."""
    for sheet in _all(standard, wanted):
        limits = sheet.band("shaft_limits")
        if limits is None:
            continue
        low = limits.lower
        wrong = Value(low.content - (0.020 if low.unit == "mm" else 0.001), low.unit, low.reason)
        rows = [
            (say("issue"), say("not written")),
            (say("shaft, smallest of nine"), text(wrong)),
            (say("shaft temperature"), "20 °C"),
            ("S4", say("fitter K4, second K7")),
            ("S5", say("fitter K4")),
            (say("strokes given"), _said(sheet.lines["grease_strokes"].value) if _known(sheet, "grease_strokes") else "-"),
        ]
        answer = [
            say("The issue is missing: nobody can tell whether the sheet was in force."),
            say("{reading} is under the least of {limits}: the shaft should not have been accepted at S2.", reading=text(wrong), limits=shown(limits).main),
            say("S5 has one pair of initials: the second person did not sign, so the job should have stopped there."),
        ]  # fmt: skip
        yield {
            "at": sheet.position.tag, "anchor": sheet.position.letter, "question": say("This record of {id} has three mistakes. Find them.", id=sheet.id), "given": rows, "answer": answer,
        }  # fmt: skip


OF_WORK = {
    "roller": roller, "heat": heat, "bolts": bolts, "growth": growth, "grease": grease, "speed": speed, "watch": watch, "record": record,
}  # fmt: skip
