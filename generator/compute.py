"""One method by hand: what it takes, and what it gives for inputs typed on the command line or in a case file."""

from __future__ import annotations

from collections.abc import Mapping
from math import isinf
from pathlib import Path
from typing import Any

from generator.method import REQUIRED, Method, fields, label_of, meaning, row_of, words_of
from generator.plant.quantities import BadQuantity, parse_number
from generator.say import say
from generator.show import unit_text, with_unit
from generator.value import Entered, Place, Results, Rows, Value, Withheld


class BadCase(ValueError):
    """An input that can't be taken: what is wrong, and what would be right."""

    def __init__(self, wrong: str, right: str) -> None:
        self.wrong, self.right = wrong, right
        super().__init__(f"{wrong}: {right}")


def inputs_of(method: Method, typed: Mapping[str, Any], origin: str) -> dict[str, Any]:
    """The typed inputs as Values (rows as Rows). Raises BadCase for a name, word or quantity that can't be taken."""
    values = {}
    for line, (name, given) in enumerate(typed.items(), 1):
        if name not in method.takes:
            raise BadCase(
                say("{method} takes no {name}", method=method.name, name=name), say("it takes: {names}", names=", ".join(method.takes))
            )
        values[name] = value_of(method.takes[name], given, name, Place(origin, line))
    return values


def value_of(kind: Any, given: Any, name: str, place: Place) -> Any:
    """One typed input as a Value, in the unit of its label where it is a bare number."""
    row = row_of(kind)
    if row is not None:
        if not isinstance(given, list) or not all(isinstance(one, Mapping) for one in given):
            raise BadCase(
                say("{name} is rows", name=name),
                say("give them by --from: a list of mappings with {names}", names=", ".join(fields(row) or {})),
            )
        return Rows(tuple(_row_of_values(row, one, place) for one in given))
    words = words_of(kind)
    label = label_of(kind)
    if words is not None and str(given) not in words:
        raise BadCase(say("{given} is no {name}", given=repr(str(given)), name=name), say("one of: {words}", words=", ".join(words)))
    if label is None:
        return Value(str(given), "", Entered(str(given), place))
    try:
        number, unit = parse_number(str(given))
    except BadQuantity as bad:
        raise BadCase(say("{name}: {wrong}", name=name, wrong=bad.wrong), bad.right) from bad
    bare = str(given).strip().lstrip("+-").replace(".", "", 1).isdecimal()
    return Value(number, label.unit if bare else unit, Entered(str(given), place))


def _row_of_values(row: Any, given: Mapping[str, Any], place: Place) -> Results:
    unknown = next((name for name in given if name not in (fields(row) or {})), None)
    if unknown is not None:
        raise BadCase(say("a row takes no {name}", name=unknown), say("it takes: {names}", names=", ".join(fields(row) or {})))
    return Results(
        {n: value_of(k, given.get(n, ""), n, place) for n, k in (fields(row) or {}).items() if n in given or n not in row._field_defaults}
    )


def case_from(path: Path, method: Method) -> dict[str, Any]:
    """The inputs of a case file: the mapping under `inputs`, as a check has them, or the mapping itself."""
    import yaml

    try:
        found = yaml.load(path.read_text(encoding="utf-8"), Loader=yaml.BaseLoader)
    except (OSError, UnicodeDecodeError) as bad:
        raise BadCase(say("{path} cannot be read", path=path), say("a YAML file with `inputs:`")) from bad
    except yaml.YAMLError as bad:
        raise BadCase(say("{path} is no YAML", path=path), " ".join(str(bad).split())) from bad
    if isinstance(found, list) and len(found) == 1:
        found = found[0]
    if not isinstance(found, dict):
        raise BadCase(
            say("{path} is no case", path=path), say("`method: {method}` and `inputs:` with a name and a value a line", method=method.name)
        )
    case = found.get("inputs", found)
    if not isinstance(case, dict) or (str(found.get("method", method.name)) != method.name):
        raise BadCase(
            say("{path} is no case of {method}", path=path, method=method.name), say("`method: {method}` and `inputs:`", method=method.name)
        )
    return {name: given for name, given in case.items() if name != "method"}


def as_json(method: Method, given: Any) -> dict[str, Any]:
    """The result as plain data."""
    gives, remarks, held = {}, [], None
    for name, value in named(given).items():
        gives[name], more, why = _plain(value)
        remarks.extend(more)
        held = held or why
    return {"method": method.name, "gives": {} if held else gives, "remarks": list(dict.fromkeys(remarks)), "withheld": held}


def named(given: Any) -> dict[str, Any]:
    """Results by name; a single one is called `result`."""
    return dict(given) if isinstance(given, dict) else {"result": given}


def described(method: Method) -> str:
    """What a method takes and gives, as text."""
    lines = [f"{method.name}: {method.title}", ""]
    if method.about:
        lines += [method.about, ""]
    lines.append(say("takes"))
    lines += [_described_one(name, kind, method.defaults[name]) for name, kind in method.takes.items()]
    lines += ["", say("gives")]
    lines += [_described_one(name, kind, REQUIRED) for name, kind in (fields(method.gives) or {"result": method.gives}).items()]
    lines += ["", say("source: {source}", source=method.source or say("common practice, no source"))]
    return "\n".join(lines)


def as_text(given: Any) -> str:
    """The result as text, with its remarks."""
    lines, remarks = [], []
    for name, value in named(given).items():
        if isinstance(value, Withheld):
            lines.append(f"{name}: {say('withheld')}: {value.why}")
        elif isinstance(value, Rows):
            lines += [f"{name} {number}: " + ", ".join(f"{n} {_exact(v)}" for n, v in row.items()) for number, row in enumerate(value, 1)]
        else:
            lines.append(f"{name} = {_exact(value)}")
            remarks += value.remarks
    return "\n".join(lines + [f"  {remark}" for remark in dict.fromkeys(remarks)])


def _exact(value: Value) -> str:
    """Number and unit with seven figures: what is worked out by hand is compared, not set."""
    return value.content if isinstance(value.content, str) else with_unit(f"{value.content:.7g}", value.unit)


def _plain(value: Any) -> tuple[Any, list[str], str | None]:
    if isinstance(value, Withheld):
        return None, [], value.why
    if isinstance(value, Rows):
        rows = [{n: _plain(v)[0] for n, v in row.items()} for row in value]
        return {"rows": rows}, [r for row in value for v in row.values() for r in v.remarks], None
    if isinstance(value.content, str):
        return {"word": value.content}, list(value.remarks), None
    return {"number": value.content, "unit": value.unit}, list(value.remarks), None


def _described_one(name: str, kind: Any, default: Any) -> str:
    row = row_of(kind)
    if row is not None:
        return f"  {name}: " + say("rows of {names}", names=", ".join(fields(row) or {}))
    words = words_of(kind)
    label = label_of(kind)
    after = "" if default is REQUIRED else "; " + say("{default} unless given", default=default)
    if words is not None:
        return f"  {name}: " + say("one of {words}", words=" | ".join(words)) + after
    if label is None:
        return f"  {name}: {meaning(kind, name)}{after}"
    unit = f" [{unit_text(label.unit) or '-'}]"
    span = (
        ""
        if isinf(label.low) and isinf(label.high)
        else f", {label.low:g} to {label.high:g}"
        if not isinf(label.high)
        else say(", from {low}", low=f"{label.low:g}")
    )
    return f"  {name}: {label.meaning}, {label.symbol or '-'}{unit}{span}{after}"
