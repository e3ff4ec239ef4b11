"""What each support of a shaft carries, in every state it is run in: across, along, turning with the shaft; its slopes and its line."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass
from math import inf

from generator.calc.bending import bending_line, load_with_unbalance, turning_slope, turning_together
from generator.calc.shafts import (
    load_along,
    load_in_state,
    parts_of_couple,
    parts_of_force,
    reaction_sensitivity,
    resultant_of_planes,
    shaft_line,
    support_reactions_many,
)
from generator.mounting.acting import NO_FORCE, Act, Steel, acts_on, in_state, steel_of, tilt
from generator.mounting.axial import physically_fixed
from generator.mounting.practice import practice
from generator.plant.plant import Plant, Position, Shaft
from generator.say import say
from generator.units import convert
from generator.value import Known, LookedUp, Results, Rows, Value, Withheld

ALWAYS = Value(100.0, "%", LookedUp(None, say("one state, all the time")))
NONE_OF_IT = Value(0.0, "", LookedUp(None, say("a shaft that stands upright has no weight across it")))


@dataclass(frozen=True)
class Reaction:
    """What one support carries in one state. `load`: size with what turns; `steady` and `direction`: what stands still."""

    steady: Known
    direction: Known
    load: Known
    turning: Known | None
    fits: Known | None
    slope_sideways: Known
    slope_upward: Known
    slope_turning: Known | None = None


@dataclass(frozen=True)
class State:
    """One state the shaft is run in, and what comes to each position by its letter. `at_rest`: what weight alone pushes along it."""

    name: str
    share: Value
    speed: Value
    at: Mapping[str, Reaction]
    along: Known
    at_rest: Known
    rows: tuple[Rows, Rows]
    acts: tuple[Act, ...] = ()


@dataclass(frozen=True)
class ShaftLoads:
    """The loads of a shaft, worked out. `holder`: the letter of the one unit that holds it endwise, "" where it is not one."""

    acts: tuple[Act, ...]
    steel: Steel
    supports: Rows
    states: tuple[State, ...]
    sensitivity: Rows | Withheld
    holder: str
    upright_share: Value | Withheld

    def worst(self, letter: str) -> State:
        """The state in which a position carries most."""
        return max(self.states, key=lambda state: greatness(state.at[letter].load))

    def heaviest(self) -> State:
        """The state in which the shaft's supports carry most together."""
        return max(self.states, key=lambda state: sum(greatness(one.load) for one in state.at.values()))

    def line(self, state: State) -> Rows | Withheld:
        """The bending line in a state."""
        level, upright = (_line(self, rows, share) for rows, share in zip(state.rows, (NONE_OF_IT, self.upright_share), strict=True))
        found: Rows | Withheld = bending_line.of(level=level, upright=upright)
        return found


def shaft_loads(plant: Plant, shaft: Shaft) -> ShaftLoads | None:
    """All that acts on a shaft, brought to its supports; None where only reactions are stated, or nothing."""
    acts = acts_on(plant, shaft, shaft.typed.speed)
    if not any(act.across is not None for act in acts) or len(shaft.positions) < 2:
        return None
    steel, supports = steel_of(shaft), Rows(tuple(_support(position) for position in shaft.positions))
    share = _upright_share(shaft)
    states = tuple(_states(plant, shaft, steel, supports, share))
    felt = reaction_sensitivity.of(
        sections=steel.sections, supports=supports, modulus=steel.modulus, height=practice(plant, "height_error")
    )
    return ShaftLoads(acts, steel, supports, states, felt, holder_of(shaft), share)


def holder_of(shaft: Shaft) -> str:
    """The letter of the one unit that holds the shaft endwise; "" where none or more than one does."""
    holding = [position.letter for position in shaft.positions if physically_fixed(position)]
    return holding[0] if len(holding) == 1 else ""


def _support(position: Position) -> Results:
    row = Results(at=position.typed.at)
    stands = position.typed.stands
    if stands is None:
        return row
    if stands.high is not None:
        row["settlement"] = stands.high
    elif stands.low is not None:
        row["settlement"] = load_down(stands.low)
    if stands.stiffness is not None:
        row["spring"] = stands.stiffness
    return row


def load_down(low: Value) -> Value:
    """A distance under the line, counted negative; the reason stays what was typed."""
    return Value(-low.content, low.unit, low.reason, low.remarks)


def _upright_share(shaft: Shaft) -> Value | Withheld:
    """How much of the shaft's own weight acts across it, downward."""
    if str(shaft.typed.lies) == "vertical":
        return NONE_OF_IT
    share = tilt(shaft)
    down = Value(-1.0, "", LookedUp(None, say("a level shaft's weight acts across it, downward")))
    if share is None:
        return down
    across: Value | Withheld = share.across
    return Value(-across.content, "", across.reason, across.remarks) if isinstance(across, Value) else across


def _states(plant: Plant, shaft: Shaft, steel: Steel, supports: Rows, share: Value | Withheld) -> Iterator[State]:
    typed = shaft.typed.states or {}
    if not typed:
        yield _state(plant, shaft, steel, supports, share, say("running"), ALWAYS, shaft.typed.speed, {})
    for name, state in typed.items():
        times = {str(load): factor for load, factor in (state.times or {}).items()}
        yield _state(plant, shaft, steel, supports, share, str(name), state.share, state.speed or shaft.typed.speed, times)


def _state(
    plant: Plant,
    shaft: Shaft,
    steel: Steel,
    supports: Rows,
    upright_share: Value | Withheld,
    name: str,
    share: Value,
    speed: Value,
    times: Mapping[str, Value],
) -> State:
    acts = tuple(in_state(act, times.get(act.load)) for act in acts_on(plant, shaft, speed))
    level, upright = _planes(acts)
    asked = {"sections": steel.sections, "supports": supports, "modulus": steel.modulus}
    sideways = support_reactions_many.of(**asked, loads=level)
    upward = support_reactions_many.of(**asked, loads=upright, density=steel.density, weight_share=upright_share)
    # a rotor at a time: nobody knows how the unbalance of one stands to that of another
    turning = tuple(
        support_reactions_many.of(**asked, loads=Rows((Results(at=act.at, force=act.across),))) for act in acts if act.nature == "turning"
    )
    at = {position.letter: _reaction(plant, index, sideways, upward, turning) for index, position in enumerate(shaft.positions)}
    resting = _along(act for act in acts if act.nature == "weight")
    return State(name, share, speed, at, _along(acts), resting, (level, upright), acts)


def _planes(acts: Iterable[Act]) -> tuple[Rows, Rows]:
    """The acts across the shaft in the level and the upright plane."""
    level, upright = [], []
    for act in acts:
        if act.nature == "turning" or act.toward is None:
            continue
        if act.across is not None:
            parts = parts_of_force.of(force=act.across, direction=act.toward)
            level.append(Results(at=act.at, force=parts.sideways))
            upright.append(Results(at=act.at, force=parts.upward))
        if act.couple is not None:
            couples = parts_of_couple.of(couple=act.couple, direction=act.toward)
            level.append(Results(at=act.at, couple=couples.sideways))
            upright.append(Results(at=act.at, couple=couples.upward))
    return Rows(tuple(level)), Rows(tuple(upright))


def _reaction(
    plant: Plant, index: int, sideways: Rows | Withheld, upward: Rows | Withheld, turning: tuple[Rows | Withheld, ...]
) -> Reaction:
    one, other = (_part(rows, index, "force") for rows in (sideways, upward))
    steady = resultant_of_planes.of(sideways=one, upward=other)
    load, fits, size, slope = steady.size, None, None, None
    if turning:
        size = turning_together.of(rotors=Rows(tuple(Results(force=_part(rotor, index, "force")) for rotor in turning)))
        slope = turning_slope.of(rotors=Rows(tuple(Results(slope=_part(rotor, index, "slope")) for rotor in turning)))
        both = load_with_unbalance.of(steady=steady.size, turning=size, least=practice(plant, "unbalance_share"))
        load, fits = both.load, both.fits
    slopes = _part(sideways, index, "slope"), _part(upward, index, "slope"), slope
    return Reaction(steady.size, steady.direction, load, size, fits, *slopes)


def _part(rows: Rows | Withheld, index: int, part: str) -> Known:
    found: Known = rows if isinstance(rows, Withheld) else rows.rows[index][part]
    return found


def _along(acts: Iterable[Act]) -> Known:
    """What pushes along the shaft altogether."""
    rows = []
    for act in acts:
        if act.along is None:
            continue
        rows.append(Results(force=NO_FORCE, either=act.along) if act.either else Results(force=act.along))
    found: Known = load_along.of(pushes=Rows(tuple(rows)))
    return found


def _line(loads: ShaftLoads, rows: Rows, share: Value | Withheld) -> Rows | Withheld:
    steel = loads.steel
    found: Rows | Withheld = shaft_line.of(
        sections=steel.sections,
        supports=loads.supports,
        loads=rows,
        modulus=steel.modulus,
        density=steel.density,
        weight_share=share,
        # fine enough that the line between two supports is seen round
        pieces=Value(float(max(24, 12 * len(loads.supports.rows))), "", LookedUp(None, say("places shown"))),
    )
    return found


def greatness(value: Known) -> float:
    """By which the worst of several is picked: what is not known may be the worst."""
    return float(convert(value.content, value.unit, "N")) if isinstance(value, Value) else inf


__all__ = ["Reaction", "ShaftLoads", "State", "greatness", "holder_of", "load_in_state", "shaft_loads"]
