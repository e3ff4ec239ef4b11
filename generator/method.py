"""A method: a plain function with labelled inputs and results, that can also be given values which know their reasons.

Knows `value` and `units` only. What a method may take and give: numbers (`Is`), words (`Literal`), rows of those
(a tuple of a NamedTuple); one result, or several with names (a NamedTuple).
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass, field
from math import inf, isfinite
from typing import Any, Literal, NamedTuple, get_args, get_origin, get_type_hints

from generator.say import say
from generator.units import UnitMismatch, convert
from generator.value import Citation, Computed, Need, Results, Rows, Value, Withheld

REQUIRED = object()


class Is(NamedTuple):
    """The label of a number: what it means, its symbol (LaTeX), the unit its published formula uses, its range."""

    meaning: str
    symbol: str = ""
    unit: str = ""
    low: float = -inf
    high: float = inf


class OutsideRange(ValueError):
    """An input outside what the method is good for; the facts are fields."""

    def __init__(self, label: Is, number: float) -> None:
        self.label, self.number = label, number
        low, high = f"{label.low:g}", f"{label.high:g}"
        unit = f" {label.unit}" if label.unit else ""
        if label.high == inf:
            text = say("{meaning} {number}{unit} is below {low}", meaning=say(label.meaning), number=f"{number:g}", unit=unit, low=low)
        else:
            text = say(
                "{meaning} {number}{unit} is outside {low} to {high}",
                meaning=say(label.meaning),
                number=f"{number:g}",
                unit=unit,
                low=low,
                high=high,
            )
        super().__init__(text)


class Refused(ValueError):
    """A method says that there is no honest answer for this input, and why."""

    def __init__(self, why: str, *needs: Need) -> None:
        self.why, self.needs = why, needs
        super().__init__(why)


@dataclass(frozen=True)
class Method:
    """A labelled function. Call it with plain numbers, or `.of(...)` with Values (an absent optional one: None)."""

    does: Callable[..., Any]
    formula: str
    source: Citation | None
    holds: Mapping[str, Callable[..., bool]]
    beware: Mapping[str, Callable[..., bool]]
    chain: bool
    why_no_outside_check: str
    takes: Mapping[str, Any] = field(repr=False)
    defaults: Mapping[str, Any] = field(repr=False)
    gives: Any = field(repr=False)

    @property
    def name(self) -> str:
        """Its id, as `compute` and the pages write it: nut-travel."""
        return self.does.__name__.replace("_", "-")

    @property
    def title(self) -> str:
        """The first line of its docstring."""
        return say((self.does.__doc__ or "").strip().partition("\n")[0])

    @property
    def about(self) -> str:
        """The docstring after its title: when to use it, what it is not good for."""
        text = " ".join((self.does.__doc__ or "").strip().partition("\n")[2].split())
        return say(text) if text else ""

    def __call__(self, *given: Any, **named: Any) -> Any:
        return self.does(*given, **named)

    def of(self, **given: Any) -> Any:
        """Values in, Values out: a Value, Results by name, Rows, or Withheld (each of the named results, then)."""
        given = {name: value for name, value in given.items() if value is not None}
        try:
            return self._worked_out(given)
        except (OutsideRange, UnitMismatch) as outside:
            return self._withheld(Withheld(say("{method}: {why}", method=self.name, why=str(outside))))
        except Refused as refused:
            return self._withheld(Withheld(refused.why, refused.needs))

    def _worked_out(self, given: Mapping[str, Any]) -> Any:
        held = [one for value in given.values() for one in _held_in(value)]
        if held:
            needs = tuple(dict.fromkeys(need for value in held for need in value.needs))
            return self._withheld(Withheld("; ".join(dict.fromkeys(value.why for value in held)), needs))
        missing = [n for n in self.takes if n not in given and self.defaults[n] is REQUIRED]
        if missing:
            return self._withheld(Withheld(say("{what} is not known", what=", ".join(meaning(self.takes[n], n) for n in missing))))
        bare = {name: _plain(self.takes[name], value) for name, value in given.items()}
        facts = {**{n: d for n, d in self.defaults.items() if d is not REQUIRED}, **bare}
        for words, holds in self.holds.items():
            if not holds(**facts):
                return self._withheld(Withheld(say("{method} is good only where {condition}", method=self.name, condition=say(words))))
        if self.chain:
            return self.does(**given)
        remarks = tuple(say(words) for words, seen in self.beware.items() if seen(**facts))
        remarks += tuple(r for value in given.values() for r in _remarks(value))
        return _dressed(self.gives, self.does(**bare), lambda part: Computed(self.name, given, part), tuple(dict.fromkeys(remarks)))

    def _withheld(self, held: Withheld) -> Any:
        names = fields(self.gives)
        return Results(dict.fromkeys(names, held)) if names else held


def method(
    formula: str = "",
    source: Citation | None = None,
    holds: Mapping[str, Callable[..., bool]] | None = None,
    beware: Mapping[str, Callable[..., bool]] | None = None,
    why_no_outside_check: str = "",
) -> Callable[[Callable[..., Any]], Method]:
    """Label a function as a method. `source=None` is shown as "common practice, no source"."""
    return lambda does: _labelled(does, formula, source, holds or {}, beware or {}, False, why_no_outside_check)


def chain(
    source: Citation | None = None,
    holds: Mapping[str, Callable[..., bool]] | None = None,
    why_no_outside_check: str = "",
) -> Callable[[Callable[..., Any]], Method]:
    """Label a function on Values that looks up tables and calls methods; its results keep the reasons of its steps."""
    return lambda does: _labelled(does, "", source, holds or {}, {}, True, why_no_outside_check)


def _labelled(does: Any, formula: str, source: Any, holds: Any, beware: Any, is_chain: bool, why: str) -> Method:
    hints = get_type_hints(does, include_extras=True)
    gives = hints.pop("return")
    given = does.__kwdefaults__ or {}
    named = does.__code__.co_varnames[: does.__code__.co_argcount + does.__code__.co_kwonlyargcount]
    late = dict(zip(reversed(named[: does.__code__.co_argcount]), reversed(does.__defaults__ or ()), strict=False))
    defaults = {name: late.get(name, given.get(name, REQUIRED)) for name in named}
    return Method(does, formula, source, holds, beware, is_chain, why, hints, defaults, gives)


_FIELDS: dict[Any, dict[str, Any] | None] = {}


def fields(kind: Any) -> dict[str, Any] | None:
    """Names and labels of a NamedTuple; None for a single thing."""
    if not hasattr(kind, "_fields"):
        return None
    if kind not in _FIELDS:
        _FIELDS[kind] = get_type_hints(kind, include_extras=True)
    return _FIELDS[kind]


def row_of(kind: Any) -> Any | None:
    """The NamedTuple of a rows kind, None for anything else."""
    return get_args(kind)[0] if get_origin(kind) is tuple else None


def words_of(kind: Any) -> tuple[str, ...] | None:
    """The closed list of a word, None for anything else."""
    return get_args(kind) if get_origin(kind) is Literal else None


def label_of(kind: Any) -> Is | None:
    """The label of a number, None for anything else."""
    return next((m for m in getattr(kind, "__metadata__", ()) if isinstance(m, Is)), None)


def meaning(kind: Any, name: str) -> str:
    """What an input or result is called for a reader."""
    label = label_of(kind)
    return say(label.meaning) if label else name.replace("_", " ")


def _held_in(given: Any) -> tuple[Withheld, ...]:
    """What is withheld among an input: itself, or what stands in its rows."""
    if isinstance(given, Rows):
        return tuple(value for row in given for value in row.values() if isinstance(value, Withheld))
    return (given,) if isinstance(given, Withheld) else ()


def _plain(kind: Any, given: Any) -> Any:
    row = row_of(kind)
    if row is not None:
        return tuple(
            row(**{n: _plain(k, r[n]) for n, k in (fields(row) or {}).items() if n in r or n not in row._field_defaults}) for r in given
        )
    words = words_of(kind)
    if words is not None:
        if str(given.content) not in words:
            raise Refused(say("{word} is not one of: {words}", word=given.content, words=", ".join(words)))
        return str(given.content)
    label = label_of(kind)
    if label is None:
        return given.content
    number = convert(given.content, given.unit, label.unit)
    # a limit typed in another unit must not fall outside by the last bit of a conversion
    slack = 1e-9 * max(1.0, abs(number))
    if not (isfinite(number) and label.low - slack <= number <= label.high + slack):
        raise OutsideRange(label, number)
    return number


def _remarks(given: Any) -> tuple[str, ...]:
    if isinstance(given, Value):
        return given.remarks
    return tuple(r for row in given for value in row.values() for r in value.remarks)


def _dressed(kind: Any, got: Any, why: Callable[[str], Computed], remarks: tuple[str, ...], part: str = "") -> Any:
    row = row_of(kind)
    if row is not None:
        return Rows(tuple(_dressed(row, one, why, remarks, f"{part}[{i}]") for i, one in enumerate(got, 1)))
    names = fields(kind)
    if names:
        return Results({n: _dressed(k, getattr(got, n), why, remarks, f"{part}.{n}".strip(".")) for n, k in names.items()})
    label = label_of(kind)
    return Value(got, label.unit if label else "", why(part), remarks)
