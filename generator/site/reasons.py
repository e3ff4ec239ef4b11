"""Why a number is so, made ready for a page: one level deep, with links to the values it rests on."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass, field, replace
from functools import cache
from typing import Any

from markupsafe import Markup

from generator.method import Method, fields, label_of, meaning, row_of
from generator.mounting.chains import ALL
from generator.mounting.sheet import Line
from generator.say import say
from generator.show import shown, text
from generator.value import Band, Computed, Entered, Instructed, Known, LookedUp, Measured, Rows, Ruled, Value, Withheld


@dataclass(frozen=True)
class Row:
    """One thing a number rests on: what it is, its text, where it comes from, where that is written, and a link to it on this page."""

    what: str
    symbol: Markup
    shown: str
    comes_from: str
    where: str
    link: str = ""


@dataclass(frozen=True)
class Why:
    """The reason of one value: a sentence, the formula and method where it is computed, the rows it rests on, its remarks."""

    sentence: str
    where: str = ""
    formula: Markup = Markup("")
    method: str = ""
    title: str = ""
    rows: tuple[Row, ...] = ()
    remarks: tuple[str, ...] = ()
    label: str = ""


@dataclass
class Anchors:
    """Where each value stands on a page, by the identity of the object; values met on the way that stand nowhere yet become workings."""

    prefix: str
    at: dict[int, str] = field(default_factory=dict)
    workings: list[tuple[str, Value | Computed]] = field(default_factory=list)

    def place(self, value: Known, anchor: str) -> None:
        """This value stands under this anchor."""
        for one in (value.lower, value.upper) if isinstance(value, Band) else (value,):
            self.at.setdefault(id(one), anchor)

    def link(self, value: Value) -> str:
        """The anchor of a computed value, giving it a place among the workings where it has none."""
        if id(value) not in self.at:
            anchor = f"{self.prefix}-working-{len(self.workings) + 1}"
            self.at[id(value)] = anchor
            self.workings.append((anchor, value))
        return self.at[id(value)]

    def together(self, call: Computed) -> str:
        """The anchor of a calculation that gives rows: worked out once, for all of its rows."""
        key = id(call.inputs)
        if key not in self.at:
            anchor = f"{self.prefix}-working-{len(self.workings) + 1}"
            self.at[key] = anchor
            self.workings.append((anchor, call))
        return self.at[key]


def anchors_for(prefix: str, lines: Iterable[Line]) -> Anchors:
    """The anchors of a position's or shaft's lines: A-nut_turn."""
    anchors = Anchors(prefix)
    for line in lines:
        anchors.place(line.value, f"{prefix}-{line.key}")
    return anchors


def whys(value: Known, anchors: Anchors, first: str) -> tuple[Why, ...]:
    """The reasons of a value: one, or two where the ends of a band are so for reasons of their own."""
    if isinstance(value, Withheld):
        return (Why(value.why, remarks=tuple(release(value))),)
    if isinstance(value, Band):
        lower, upper = why(value.lower, anchors, first), why(value.upper, anchors, first)
        if _alike(lower, upper):
            return (lower,)
        return (_labelled(lower, say("lower limit")), _labelled(upper, say("upper limit")))
    return (why(value, anchors, first),)


def release(held: Withheld) -> Iterator[str]:
    """What would release a withheld value, a sentence each."""
    for need in held.needs:
        if need.kind == "document":
            yield say("Would release it: a document of {maker} that gives {what}.", maker=need.subject, what=need.what)
        elif need.kind == "reading":
            yield say("Would release it: a reading at {position}: {what}.", position=need.subject, what=need.what)
        else:
            yield say("Would release it: an entry in {file}: {what}.", file=need.subject, what=need.what)


def why(value: Value, anchors: Anchors, first: str) -> Why:
    """The reason of one number or word."""
    reason = value.reason
    if not isinstance(reason, Computed):
        return Why(comes_from(value), where_written(value), remarks=value.remarks)
    if reason.part.startswith("["):
        method = ALL[reason.method]
        whole = Row(method.title, Markup(""), say("all rows together"), say("computed"), "", anchors.together(reason))
        return Why(say("computed, with the others of its rows"), "", Markup(""), method.name, method.title, (whole,), value.remarks)
    return why_computed(reason, anchors, first, value.remarks)


def why_computed(reason: Computed, anchors: Anchors, first: str, remarks: tuple[str, ...] = ()) -> Why:
    """How a calculation comes to its result: its formula, and all it was given."""
    method = ALL[reason.method]
    rows = tuple(row for name, given in reason.inputs.items() for row in _rows(method, name, given, anchors, first))
    return Why(say("computed"), "", mathml(method.formula), method.name, method.title, rows, remarks)


def comes_from(value: Value) -> str:
    """Where a value comes from, in one phrase."""
    reason = value.reason
    if isinstance(reason, Entered):
        return say("typed by the engineer: {text}", text=reason.text)
    if isinstance(reason, Measured):
        return say(
            "measured {on} by {by} with {instrument}, record {record}",
            on=reason.on[:10],
            by=reason.by,
            instrument=reason.instrument or say("an instrument not named"),
            record=reason.record,
        )
    if isinstance(reason, Instructed):
        return say(
            "the maker: {document}, revision {revision} of {issued}, {table}",
            document=reason.document,
            revision=reason.revision,
            issued=reason.issued,
            table=reason.table,
        )
    if isinstance(reason, Ruled):
        return say(
            "plant {rule}: {says}; approved by {by} on {on}", rule=reason.rule, says=reason.says, by=reason.approved_by, on=reason.on
        )
    if isinstance(reason, LookedUp):
        row = ", ".join(f"{key} {word}".strip() for key, word in reason.keys)
        if reason.citation is None:
            return (
                say("common practice, no source: {table}, {row}", table=say(reason.table), row=row)
                if row
                else say("common practice, no source: {table}", table=say(reason.table))
            )
        return say("{source}: {row}", source=reason.citation, row=row) if row else str(reason.citation)
    return say("computed by {method}", method=reason.method)


def origin(value: Known) -> str:
    """Where a value comes from, in one line: why it is withheld where it is."""
    if isinstance(value, Withheld):
        return value.why
    return comes_from(value.lower if isinstance(value, Band) else value)


def where_written(value: Value) -> str:
    """File and line, document, or table a value is written in; "" for a computed one."""
    place = getattr(value.reason, "place", None)
    if place is not None:
        return str(place)
    return value.reason.table if isinstance(value.reason, LookedUp) else ""


def name_of(value: Value) -> str:
    """What a computed value is called: the meaning of its part of the method's result."""
    assert isinstance(value.reason, Computed)
    gives = ALL[value.reason.method].gives
    part = value.reason.part
    names = fields(gives)
    if names and part in names:
        return meaning(names[part], part)
    return meaning(gives, ALL[value.reason.method].title)


@cache
def mathml(formula: str) -> Markup:
    """A LaTeX formula as MathML; nothing for none."""
    if not formula:
        return Markup("")
    from latex2mathml.converter import convert

    # an HTML page needs no name space on it, and there are thousands
    return Markup(convert(formula).replace(' xmlns="http://www.w3.org/1998/Math/MathML" display="inline"', ""))


def _rows(method: Method, name: str, given: Any, anchors: Anchors, first: str) -> Iterator[Row]:
    kind = method.takes[name]
    row = row_of(kind)
    if row is not None or isinstance(given, Rows):
        call = _one_call(given)
        if call is not None:
            title = ALL[call.method].title
            yield Row(title, Markup(""), say("{count} rows", count=len(given.rows)), say("computed"), "", anchors.together(call))
            return
        source = _one_table(given)
        if source is not None:
            yield Row(
                meaning(kind, name), Markup(""), say("{count} rows", count=len(given.rows)), comes_from(source), where_written(source)
            )
            return
        for number, one in enumerate(given, 1):
            for part, value in one.items():
                yield _row(
                    say("{what}, row {number}", what=meaning((fields(row) or {}).get(part), part), number=number),
                    Markup(""),
                    value,
                    anchors,
                    first,
                )
        return
    label = label_of(kind)
    yield _row(meaning(kind, name), mathml(label.symbol) if label else Markup(""), given, anchors, first)


def _one_call(given: Rows) -> Computed | None:
    """The calculation that gave these rows, None where they are not all of one."""
    reasons = [value.reason for row in given for value in row.values()]
    if not reasons or not isinstance(reasons[0], Computed) or not reasons[0].part.startswith("["):
        return None
    first = reasons[0]
    return first if all(isinstance(one, Computed) and one.inputs is first.inputs for one in reasons) else None


def _one_table(given: Rows) -> Value | None:
    """A value of these rows where all of them stand in one published table, None elsewhere."""
    values = [value for row in given for value in row.values()]
    tables = {value.reason.table for value in values if isinstance(value.reason, LookedUp)}
    if len(tables) != 1 or len(values) < 12 or not all(isinstance(value.reason, LookedUp) for value in values):
        return None
    first: Value = values[0]
    return replace(first, reason=replace(first.reason, keys=()))


def _row(what: str, symbol: Markup, value: Value, anchors: Anchors, first: str) -> Row:
    if isinstance(value.reason, Computed):
        return Row(what, symbol, _short(value, first), say("computed"), "", anchors.link(value))
    return Row(what, symbol, _short(value, first), comes_from(value), where_written(value), anchors.at.get(id(value), ""))


def _short(value: Value, first: str) -> str:
    both = shown(value, first)
    typed = value.reason.text if isinstance(value.reason, Entered) else ""
    if typed and value.unit == "in" and "/" in typed:
        return f"{typed} = {text(value, 'mm')}"
    return both.main


def _alike(one: Why, other: Why) -> bool:
    return (one.sentence, one.where, one.method, one.rows) == (other.sentence, other.where, other.method, other.rows)


def _labelled(one: Why, label: str) -> Why:
    return replace(one, label=label)


__all__ = [
    "Anchors",
    "Mapping",
    "Row",
    "Why",
    "anchors_for",
    "comes_from",
    "mathml",
    "name_of",
    "origin",
    "release",
    "why",
    "where_written",
    "whys",
]
