"""Which input moves a computed value most: each step is shaken by a hundredth on its own, and the shares are multiplied along the way."""

from __future__ import annotations

from typing import Any

from generator.method import Method, fields, label_of, meaning, row_of
from generator.mounting.chains import ALL
from generator.say import say
from generator.units import convert
from generator.value import Computed, Known, LookedUp, Rows, Value

SHAKE = 0.01
WARM = ("degC", "degF")


def moves_most(value: Known) -> str:
    """One sentence: the input that moves a value most, by how much, and whether that input is an estimate. "" where none does."""
    if not isinstance(value, Value) or not isinstance(reason := value.reason, Computed) or not isinstance(value.content, (int, float)):
        return ""
    felt: dict[int, tuple[str, Value, float]] = {}
    _shares(reason, 1.0, felt)
    if not felt:
        return ""
    what, leaf, effect = max(((what, leaf, _effect(leaf, share)) for what, leaf, share in felt.values()), key=lambda one: abs(one[2]))
    if abs(effect) < 0.05:
        return ""
    facts = {"what": what, "percent": f"{abs(effect):.1f}"}
    if leaf.unit in WARM:
        told = (
            say("Moves it most: {what}. One kelvin more makes it {percent} % more.", **facts)
            if effect > 0
            else say("Moves it most: {what}. One kelvin more makes it {percent} % less.", **facts)
        )
    elif effect > 0:
        told = say("Moves it most: {what}. One percent more makes it {percent} % more.", **facts)
    else:
        told = say("Moves it most: {what}. One percent more makes it {percent} % less.", **facts)
    return f"{told} {say('That figure is an estimate.')}" if leaf.remarks else told


def _effect(leaf: Value, share: float) -> float:
    """Percent for one percent more of the input; of a temperature, for one kelvin more."""
    warm = convert(leaf.content, leaf.unit, "degC") if leaf.unit in WARM else 0.0
    return 100 * share / warm if warm else share


def _shares(reason: Computed, share: float, felt: dict[int, tuple[str, Value, float]]) -> None:
    """Adds to `felt` how much each leaf below a step moves it, in percent for a percent."""
    method = ALL.get(reason.method)
    if method is None or method.chain or any(isinstance(given, Rows) for given in reason.inputs.values()):
        return
    bare = _bare(method, reason.inputs)
    base = _result(method, bare, reason.part)
    if base is None or base == 0:
        return
    for name, given in reason.inputs.items():
        if not isinstance(bare.get(name), float) or bare[name] == 0:
            continue
        moved = _result(method, {**bare, name: bare[name] * (1 + SHAKE)}, reason.part)
        if moved is None:
            continue
        here = share * (moved - base) / base / SHAKE
        inner = given.reason
        if isinstance(inner, Computed) and _goes_on(inner):
            _shares(inner, here, felt)
        elif not isinstance(inner, LookedUp) or given.remarks:  # a constant of a table moves nothing that could be changed
            what = meaning(method.takes[name], name)
            _, _, before = felt.get(id(given), (what, given, 0.0))
            felt[id(given)] = (what, given, before + here)


def _goes_on(reason: Computed) -> bool:
    method = ALL.get(reason.method)
    return method is not None and not method.chain and not any(isinstance(given, Rows) for given in reason.inputs.values())


def _bare(method: Method, inputs: Any) -> dict[str, Any]:
    found: dict[str, Any] = {}
    for name, given in inputs.items():
        label = label_of(method.takes[name])
        if label is None or row_of(method.takes[name]) is not None:
            found[name] = given.content
        else:
            found[name] = float(convert(given.content, given.unit, label.unit))
    return found


def _result(method: Method, bare: dict[str, Any], part: str) -> float | None:
    try:
        got = method.does(**bare)
    except (ValueError, ZeroDivisionError, OverflowError):
        return None
    if fields(method.gives):
        got = getattr(got, part, None)
    return float(got) if isinstance(got, (int, float)) else None
