"""What comes to a position: across the shaft and along it, computed from what acts on the shaft, else as stated."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from typing import Any

from generator.calc.shafts import load_along
from generator.mounting.axial import physically_fixed
from generator.mounting.bench import Bench
from generator.mounting.reactions import State, greatness
from generator.say import say
from generator.value import Known, LookedUp, Need, Results, Rows, Value, Withheld

NOTHING_ALONG = LookedUp(None, say("a free unit holds nothing along the shaft"))


@dataclass(frozen=True)
class LoadHere:
    """The load across at a position, in the state it carries most; `computed` is False where only a stated reaction is known."""

    force: Known
    toward: Known
    steady: Known
    state: str
    shock: bool
    computed: bool
    turning: Known | None = None
    fits: Known | None = None


@dataclass(frozen=True)
class Duty:
    """One state at a position: its share of the time, speed, load across and along; `steady`: the part across that stands still."""

    name: str
    share: Value
    speed: Value
    across: Known
    along: Known
    steady: Known


def stated_reaction(bench: Bench) -> Any | None:
    """The stated reaction at this position, None where none is typed."""
    for load in (bench.shaft.typed.loads or {}).values():
        if str(load.kind) == "stated reaction" and str(load.at) == bench.position.letter:
            return load
    return None


def load_here(bench: Bench) -> LoadHere | None:
    """The load across at this position, None where nothing is known of it."""
    stated = stated_reaction(bench)
    shock = stated is not None and str(stated.shock) == "yes"
    if bench.loads is not None:
        found = _in_state(bench, bench.loads.worst(bench.position.letter), shock)
        if isinstance(found.force, Value) or stated is None:
            return found
    if stated is None:
        return None
    return LoadHere(stated.force, stated.toward, stated.force, "", shock, False)


def _in_state(bench: Bench, state: State, shock: bool) -> LoadHere:
    here = state.at[bench.position.letter]
    return LoadHere(here.load, here.direction, here.steady, state.name, shock, True, here.turning, here.fits)


def loads_here(bench: Bench) -> tuple[LoadHere, ...]:
    """The load across at this position in every state: what is weak one way is not always worst where the load is greatest."""
    worst = load_here(bench)
    if worst is None or not worst.computed or bench.loads is None:
        return (worst,) if worst is not None else ()
    return tuple(_in_state(bench, state, worst.shock) for state in bench.loads.states)


def holder_letter(bench: Bench) -> str:
    """The letter of the one unit that holds the shaft endwise, "" where none or several do."""
    return bench.loads.holder if bench.loads is not None else ""


def no_load(bench: Bench) -> Withheld:
    """Withheld, because nothing is known of the load here."""
    letter = bench.position.letter
    entry = f"loads: {{reaction at {letter}: {{kind: stated reaction, at: {letter}, force: 4 kN, toward: 6 o'clock}}}}"
    return Withheld(say("no load on this shaft is typed"), (Need("entry", bench.position.place.file, entry),))


def duties(bench: Bench) -> Iterator[Duty]:
    """The states this position sees, one where only a reaction is stated, none where nothing is."""
    if bench.loads is not None and isinstance(bench.loads.states[0].at[bench.position.letter].load, Value):
        for state in bench.loads.states:
            here = state.at[bench.position.letter]
            yield Duty(state.name, state.share, state.speed, here.load, _along(bench, state.along), here.steady)
        return
    stated = stated_reaction(bench)
    if stated is not None:
        whole = Value(100.0, "%", LookedUp(None, say("one state, all the time")))
        yield Duty("", whole, bench.shaft.typed.speed, stated.force, axial_load(bench), stated.force)


def axial_load(bench: Bench) -> Known:
    """The load along the shaft this position must hold: the sum of what pushes, where it alone holds the shaft; else as stated.

    Running or at rest, whichever is more: what lifts a shaft that runs does not lift it standing still.
    """
    stated = stated_reaction(bench)
    if bench.loads is not None and (bench.loads.holder or stated is None or stated.along is None):
        states = bench.loads.states
        return _along(bench, max((*(state.along for state in states), *(state.at_rest for state in states)), key=greatness))
    if stated is not None and stated.along is not None:
        return stated.along  # type: ignore[no-any-return]
    if not physically_fixed(bench.position):
        return Value(0.0, "N", NOTHING_ALONG)
    return _only_thrust(bench)


def more_at_rest(bench: Bench) -> bool:
    """Whether this position holds more along the shaft standing still than running."""
    if bench.loads is None or not physically_fixed(bench.position):
        return False
    running, resting = (
        max(greatness(one) for one in along) for along in zip(*((s.along, s.at_rest) for s in bench.loads.states), strict=True)
    )
    return resting > running


def _along(bench: Bench, along: Known) -> Known:
    """What of the push along the shaft comes to this position."""
    if not physically_fixed(bench.position):
        return Value(0.0, "N", NOTHING_ALONG)
    if bench.loads is not None and not bench.loads.holder and isinstance(along, Value) and along.content > 0:
        return along.remark(say("more than one unit holds the shaft endwise: each is taken to hold all of the push"))
    return along


def _only_thrust(bench: Bench) -> Known:
    """Of a shaft of which no load across is typed: the thrusts that are."""
    rows = [Results(force=Value(0.0, "N", NOTHING_ALONG), either=load.force) for load in _thrusts(bench)]
    if str(bench.shaft.typed.lies) == "horizontal" and rows:
        found: Known = load_along.of(pushes=Rows(tuple(rows)))
        return found
    why = say("no load along the shaft is stated") if not rows else say("the shaft does not lie level: its weight acts along it")
    entry = f"loads: {{a: {{kind: stated reaction, at: {bench.position.letter}, force: 4 kN, toward: 6 o'clock, along: 0.4 kN}}}}"
    return Withheld(why, (Need("entry", bench.position.place.file, entry),))


def _thrusts(bench: Bench) -> list[Any]:
    return [load for load in (bench.shaft.typed.loads or {}).values() if str(load.kind) == "thrust"]
