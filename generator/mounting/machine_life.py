"""The life of a machine: until the first of its bearings fails."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from generator.calc.life import system_life
from generator.mounting.sheet import Line, ShaftSheet
from generator.say import say
from generator.value import LookedUp, Results, Rows, Value, Withheld

MIXED = Value(10 / 9, "", LookedUp(None, say("exponent of scatter, balls or balls and rollers")))
ROLLERS = Value(9 / 8, "", LookedUp(None, say("exponent of scatter, rollers alone")))


def machine_life_lines(shafts: Sequence[ShaftSheet]) -> Iterator[Line]:
    """The life of all bearings of a machine together, where there is more than one."""
    sheets = [sheet for shaft in shafts for sheet in shaft.sheets if "life" in sheet.lines]
    if len(sheets) < 2:
        return
    lives = [sheet.lines["life"].value for sheet in sheets]
    held = [sheet.position.letter for sheet, life in zip(sheets, lives, strict=True) if not isinstance(life, Value)]
    if held:
        why = say("the life of {letters} is not known", letters=", ".join(held))
        needs = tuple(dict.fromkeys(need for life in lives if isinstance(life, Withheld) for need in life.needs))
        yield Line("machine_life", "life", say("Until the first of its bearings fails"), Withheld(why, needs))
        return
    rollers = all("roller" in str(sheet.position.bearing.typed.kind) for sheet in sheets if sheet.position.bearing)
    rows = Rows(tuple(Results(hours=life) for life in lives))
    life = system_life.of(lives=rows, exponent=ROLLERS if rollers else MIXED)
    yield Line("machine_life", "life", say("Until the first of its bearings fails"), life)
