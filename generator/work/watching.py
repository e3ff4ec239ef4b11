"""Running in, and looking after it in service."""

from __future__ import annotations

from generator.case import LOCKED_LAST, TURN, Case
from generator.housings.holding import guards_off
from generator.say import say
from generator.steps import Blank, Figures, Items, Sign, Step, Trouble, told
from generator.work.giving_back import counted_in, given_back_greased
from generator.work.make_safe import isolated_again

MINUTES = (15, 30, 60, 120)


def run_in(case: Case, f: Figures) -> Items:
    """From release to accepted readings, and the recheck with locks on."""
    yield Step("released", "watch", told("See that S7 is signed: guards on, everyone clear."))
    yield from _stayed_off(case)
    yield Step("air", "watch", told("Read the air beside the machine, and the housing, before it starts."), takes=("thermometer",), blanks=(Blank("air temperature", say("air"), "degC"),))  # fmt: skip
    yield Step("start", "watch", told("Start by the machine's own instruction and listen from outside the guard."), told("No rubbing, no knocking, no smell."), (_at_once(),))  # fmt: skip
    stop = Trouble(say("It passes {stop}", stop=f("run_in_stop")), told("Stop the machine. Isolate before you look."))
    climbs = Trouble(say("Still climbing at two hours, or over {alarm}", alarm=f("run_in_alarm")), told("Stop and report it. Too much grease peaks and falls; a wrong fit goes on climbing."))  # fmt: skip
    yield Step(
        "warm readings", "watch", told("Read the housing at the marked spot after 15, 30, 60 and 120 minutes. At {stop} it is stopped.", stop=f("run_in_stop")),
        told("It rises, peaks, falls and settles at or under {usual}.", usual=f("run_in_usual")), (stop, climbs), takes=("thermometer",),
        blanks=tuple(Blank("housing temperature", say("{minutes} min", minutes=minutes), "degC") for minutes in MINUTES),
    )  # fmt: skip
    if f.has("vibration_alarm"):
        yield Step(
            "vibration", "watch", told("Read vibration at the housing, three directions, as far as it is reached from outside the guard: under {alarm}.", alarm=f("vibration_alarm")), None,
            _shakes(f), takes=("vibration meter",),
            blanks=(Blank("vibration", say("greatest"), "mm/s"),),
        )  # fmt: skip
    yield Sign("S8", "watch", told("Readings accepted."))
    yield from _seen_again(case, f)


def _seen_again(case: Case, f: Figures) -> Items:
    """After a day, and after a week: isolated again, bolts and lock tried at the same torque."""
    yield from counted_in(case, "safe")
    yield from isolated_again(case)
    yield guards_off("safe")
    if case.housing not in ("take-up", "cartridge"):
        does = told("Try every housing bolt at {setting}.", setting=f("bolt_setting"))
        if case.housing == "split":
            does = told("Try every base bolt at {setting}; the cap bolts at their own: {cap}.", setting=f("bolt_setting"), cap=f("cap_torque"))
        yield Step("bolts again", "bolts", does, told("None turns by more than a few degrees."), (_turned_further(),), takes=("torque tool for the bolts",))  # fmt: skip
    if case.way in LOCKED_LAST:
        does = told("Look at the witness line, then try every screw of the lock at {torque}.", torque=f("lock_screw"))
        turns = Trouble(say("A screw turns"), told("Tighten it, draw the line anew, and see to it again the next day. It turns again: locked anew by its sheet."))  # fmt: skip
        yield Step("lock again", "lock", does, told("Line unbroken, nothing crept."), (_crept(), turns), takes=("torque tool for the lock",))
    elif case.housing == "split" or (case.housing == "cartridge" and case.way != TURN):
        yield Step("lock again", "lock", told("Look at shaft, seals and feet from outside; the housing stays shut."), told("Nothing has crept, no seal has moved."), (_crept(),))  # fmt: skip
    elif case.sleeve:
        yield Step("lock again", "lock", told("Look at the line over nut, slot and shaft."), told("Unbroken. The nut is not turned again."), (_crept(),))
    yield from given_back_greased(case)


def _at_once() -> Trouble:
    return Trouble(say("Knocking, scraping, smoke, a burnt smell, a bolt loose or a mark broken"), told("Stop the machine now, then report it."))


def _stayed_off(case: Case) -> Items:
    if case.windy and "fall from height" in case.hazards:
        yield Step("stay off", "watch", told("Nobody climbs beside the rotor while it runs. What is not read from below or by a fixed probe is not read."))  # fmt: skip


def _hot(f: Figures) -> Trouble:
    if not f.has("run_in_alarm"):
        return Trouble(say("Ten degrees over its own usual, or hotter than ever"), told("Report it the same shift. When to stop is not on file: ask."))  # fmt: skip
    return Trouble(say("Over {alarm}, or ten degrees over its own usual", alarm=f("run_in_alarm")), told("Report it the same shift. Over {stop}: stop the machine.", stop=f("run_in_stop")))  # fmt: skip


def _shakes(f: Figures) -> tuple[Trouble, ...]:
    over = Trouble(say("Over {alarm}", alarm=f("vibration_alarm")), told("Report it the same shift; read it again within a day."))
    return over, Trouble(say("It passes {trip}", trip=f("vibration_trip")), told("Stop the machine and report it."))


def _turned_further() -> Trouble:
    return Trouble(say("A bolt turns further"), told("Write which; all once more, and again after the next day. It goes on: paint, dirt or a foot that is not flat; tell the engineer."))  # fmt: skip


def _crept() -> Trouble:
    return Trouble(say("It has crept"), told("Stop. The unit is locked anew by its sheet before anything runs."))


def inspected(case: Case, f: Figures) -> Items:
    """Look, listen, feel from outside the guard; nothing is opened and nothing isolated."""
    yield from _stayed_off(case)
    yield Step("look", "watch", told("From outside the guard, look: leaks, colour of the grease, loose bolts, witness marks."), told("One change against last time means more than one limit."), (_at_once(),))  # fmt: skip
    yield Step("listen", "watch", told("Listen with a rod or a meter on the marked spot, if it can be reached from outside."), told("Even, without knocking or whistling."), (_at_once(),))  # fmt: skip
    hot = _hot(f)
    yield Step(
        "temperature", "watch", told("Read housing and air at the marked spots."), None, (hot,), takes=("thermometer",),
        blanks=(Blank("housing temperature", say("housing"), "degC"), Blank("air temperature", say("air"), "degC")),
    )  # fmt: skip
    if f.has("vibration_alarm"):
        yield Step(
            "vibration", "watch", told("Read vibration at the housing, three directions, as far as it is reached from outside the guard: under {alarm}.", alarm=f("vibration_alarm")), None,
            _shakes(f), takes=("vibration meter",),
            blanks=(Blank("vibration", say("greatest"), "mm/s"),),
        )  # fmt: skip
    if case.housing == "take-up":
        yield Step("take-up", "watch", told("Read both take-ups: used now {used}, reserve {reserve}.", used=f("travel_used"), reserve=f("travel_reserve")), blanks=(Blank("take-up used", say("this side"), "mm"), Blank("take-up used, other side", say("other side"), "mm")))  # fmt: skip
    if case.dusty:
        yield Step("dust", "watch", told("Look for dust lying on or round the housing, and report it: it is collected at standstill, never blown."), None)
    yield Step("report", "watch", told("Write the readings down; a change is reported the same shift."), takes=("record sheet",))
