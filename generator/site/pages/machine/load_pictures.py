"""The drawings of loads: the bent shaft, the clearance chain, life against temperature; from the values of the sheets."""

from __future__ import annotations

from collections.abc import Iterator

from markupsafe import Markup

from generator.mounting.acting import Act
from generator.mounting.reactions import ShaftLoads
from generator.mounting.sheet import ShaftSheet, Sheet
from generator.say import say
from generator.show import text
from generator.site.drawings.bending import bending
from generator.site.drawings.bent_shaft import ActingLoad, BentShaft, SupportLoad
from generator.site.drawings.clearance_chain import ClearanceChain, Step, clearance_chain
from generator.site.drawings.curve import Curve, curve
from generator.site.drawings.pen import Drawn
from generator.units import convert
from generator.value import Band, Known, Value, Withheld


def bent_drawing(sheet: ShaftSheet) -> Markup:
    """The shaft under its loads, nothing where they are not all known."""
    loads = sheet.loads
    if loads is None:
        return Markup("")
    state = loads.heaviest()
    line, deepest = loads.line(state), sheet.lines.get("deflection")
    if isinstance(line, Withheld) or deepest is None or not isinstance(deepest.value, Value):
        return Markup("")
    shaft = BentShaft(
        length=_mm(sheet.shaft.typed.sections[-1].to),
        sections=tuple((_mm(one.to), _mm(one.diameter)) for one in sheet.shaft.typed.sections),
        supports=tuple(_supports(sheet, loads)),
        loads=tuple(one for act in loads.acts for one in _acting(act)),
        line=tuple((row.at.content, row.deflection.content) for row in line),
        deepest=Drawn(_mm(deepest.value), text(deepest.value)),
        ends=sheet.shaft.ends,
        upright=str(sheet.shaft.typed.lies) == "vertical",
    )
    return bending(shaft, f"bent-{sheet.shaft.key.replace(' ', '-')}")


def clearance_drawing(sheet: Sheet) -> Markup:
    """From the clearance before mounting to what is left running."""
    steps = []
    for key, takes in (("clearance_start", False), ("clearance_taken", True), ("clearance_heat", True), ("clearance_running", False)):
        line = sheet.lines.get(key)
        ends = _ends(line.value) if line is not None else None
        if line is None or ends is None:
            return Markup("")
        steps.append(Step(line.name, *ends, takes))
    wanted = sheet.number("clearance_wanted")
    limit = Drawn(_mm(wanted), text(wanted)) if wanted is not None else None
    return clearance_chain(ClearanceChain(tuple(steps), limit), f"clearance-{sheet.position.letter}")


def life_drawing(sheet: Sheet) -> Markup:
    """Life against the temperature of the bearing, with where it works."""
    life, warm, wanted = sheet.number("life"), sheet.number("bearing_temperature"), sheet.number("life_wanted")
    if life is None or warm is None or len(sheet.life_curve) < 3:
        return Markup("")
    working = (Drawn(convert(warm.content, warm.unit, "degC"), text(warm)), Drawn(convert(life.content, life.unit, "hour"), text(life)))
    drawn = Curve(
        title=say("Life against temperature"),
        points=sheet.life_curve,
        x_name=say("temperature at the bearing, °C"),
        y_name=say("life, hours"),
        working=working,
        needed=Drawn(convert(wanted.content, wanted.unit, "hour"), text(wanted)) if wanted is not None else None,
        log_y=True,
    )
    return curve(drawn, f"life-{sheet.position.letter}")


def _supports(sheet: ShaftSheet, loads: ShaftLoads) -> Iterator[SupportLoad]:
    state = loads.heaviest()
    for one in sheet.sheets:
        here = state.at[one.position.letter]
        if not isinstance(here.load, Value) or not isinstance(here.direction, Value) or one.position.typed.at is None:
            continue
        slope = one.number("slope")
        yield SupportLoad(
            one.position.letter,
            _mm(one.position.typed.at),
            convert(here.load.content, here.load.unit, "N") * (-1 if _upward(here.direction) else 1),
            text(here.load),
            clock(here.direction),
            say("slope {angle}", angle=text(slope)) if slope is not None else "",
        )


def _acting(act: Act) -> Iterator[ActingLoad]:
    if act.across is None or not isinstance(act.across, Value) or not isinstance(act.at, Value):
        return
    toward = clock(act.toward) if isinstance(act.toward, Value) else say("turning")
    yield ActingLoad(act.name, _mm(act.at), convert(act.across.content, act.across.unit, "N"), text(act.across), toward)


def _upward(direction: Value) -> bool:
    """Whether a housing is pulled up and not pressed down."""
    return bool(direction.content < 60 or direction.content > 300)


def clock(direction: Value) -> str:
    """A direction as a clock face, to the half hour."""
    halves = round(convert(direction.content, direction.unit, "deg") % 360 / 15) % 24
    hour, half = halves // 2 or 12, halves % 2
    return say("{hour}:30 o'clock", hour=hour) if half else say("{hour} o'clock", hour=hour)


def _ends(value: Known) -> tuple[Drawn, Drawn] | None:
    if isinstance(value, Withheld):
        return None
    low, high = (value.lower, value.upper) if isinstance(value, Band) else (value, value)
    return Drawn(_mm(low), text(low, "mm")), Drawn(_mm(high), text(high, "mm"))


def _mm(value: Value) -> float:
    return convert(value.content, value.unit, "mm")
