"""The torque wrench: which listed tool covers the torque, and the mark it is set to."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import date

from generator.calc.bolts import first_round, torque_rounding, wrench_window
from generator.mounting.bench import Bench
from generator.mounting.practice import practice
from generator.mounting.sheet import Line
from generator.plant.model.library import Tool
from generator.plant.plant import Named, Plant
from generator.say import say
from generator.units import convert
from generator.value import Band, Entered, Known, LookedUp, Need, Value, Withheld

ANY = Value(0.0, "N.m", LookedUp(None, "a ceiling has no least torque"))


def wrench_lines(bench: Bench, torque: Known) -> Iterator[Line]:
    """The tool and its setting; Withheld where no listed tool covers the torque."""
    if isinstance(torque, Withheld):
        return
    least, most = (torque.lower, torque.upper) if isinstance(torque, Band) else (ANY, torque)
    found = [(tool, setting) for tool in in_date(bench.plant) if (setting := setting_on(tool, least, most)) is not None]
    if not found:
        held = Withheld(
            say("no listed torque tool in date covers this torque between 20 and 100 % of its range"),
            (Need("entry", "library/tools.yml", say("a torque tool for it")),),
        )
        yield Line("bolt_setting", "bolts", say("Set the wrench to"), held)
        return
    tool, setting = min(found, key=lambda one: (one[0].typed.step.content if one[0].typed.step else 1e9, one[0].name))
    yield Line("bolt_setting", "bolts", say("Set the wrench to"), setting, by_hand=True, note=tool.name)
    assert tool.typed.step is not None
    yield Line("bolt_half", "bolts", say("All to this in the first round"), first_round.of(setting=setting, step=tool.typed.step))
    yield Line("bolt_wrench", "bolts", say("Tool"), Value(tool.name, "", Entered(tool.name, tool.place)))


def in_date(plant: Plant) -> Iterator[Named[Tool]]:
    """The torque tools whose calibration has not run out."""
    for tool in plant.library.tools.values():
        if str(tool.typed.kind) in ("torque wrench", "torque driver") and not run_out(
            tool.typed.calibrated, practice(plant, "tool_calibrated"), plant.on
        ):
            yield tool


def run_out(day: Value | None, months: Value, on: date) -> bool:
    """Whether a calibration or weighing of a day has run out; one without a day has."""
    if day is None:
        return True
    made = date.fromisoformat(str(day.content))
    whole = round(months.content)
    year, month = divmod(made.month - 1 + whole, 12)
    last = date(made.year + year, month + 1, min(made.day, 28))
    return on > last


def setting_on(tool: Named[Tool], least: Value, most: Value) -> Value | None:
    """The mark of this tool inside the torque, None where there is none."""
    if not isinstance(tool.typed.range, Band) or tool.typed.step is None:
        return None
    window = wrench_window.of(lowest=tool.typed.range.lower, highest=tool.typed.range.upper)
    if not isinstance(window.least, Value):
        return None
    top = min(convert(most.content, most.unit, "N.m"), window.most.content)
    setting = torque_rounding.of(
        least=least, most=most if top >= convert(most.content, most.unit, "N.m") else window.most, step=tool.typed.step
    )
    if (
        isinstance(setting, Value)
        and setting.content >= window.least.content - 1e-9
        and setting.content >= 0.85 * convert(most.content, most.unit, "N.m")
    ):
        return setting
    return None
