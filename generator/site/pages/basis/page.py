"""The calculation basis: a section a method, with formula, symbols, range, source, and its checks, strongest first."""

from __future__ import annotations

from functools import cache
from typing import Any

from generator.checks import Check, all_checks, outcome
from generator.method import Is, Method, fields, label_of, meaning, row_of, words_of
from generator.mounting.chains import ALL
from generator.pairs import all_pairs
from generator.say import say
from generator.show import unit_text
from generator.site.reasons import mathml
from generator.value import Citation


def basis_view() -> dict[str, Any]:
    """What the template is given."""
    titles = {name: method.title for name, method in ALL.items()}
    return {"methods": _sections(), "pairs": all_pairs(), "titles": titles}


@cache
def _sections() -> tuple[dict[str, Any], ...]:
    return tuple(_section(method) for _, method in sorted(ALL.items()))


def _section(method: Method) -> dict[str, Any]:
    checks = [check for check in all_checks() if check.method == method.name]
    return {
        "id": method.name,
        "title": method.title,
        "about": method.about,
        "formula": mathml(method.formula),
        "chain": method.chain,
        "source": _source(method.source),
        "takes": [row for name, kind in method.takes.items() for row in _rows(name, kind)],
        "gives": [row for name, kind in (fields(method.gives) or {"result": method.gives}).items() for row in _rows(name, kind)],
        "holds": [say(words) for words in method.holds],
        "beware": [say(words) for words in method.beware],
        "checks": [row for check in checks for row in _check(check)],
        "why_none": method.why_no_outside_check,
        "practice": method.source is None,
        "doubts": [check.source for check in checks if check.come_by == "from memory"],
    }


def _check(check: Check) -> list[dict[str, str]]:
    return [
        {
            "inputs": ", ".join(f"{k} {v if not isinstance(v, list) else '…'}" for k, v in check.inputs.items()),
            "what": one.name,
            "published": one.expected,
            "computed": one.computed,
            "off": one.deviation,
            "source": check.source,
            "come_by": check.come_by,
        }
        for one in outcome(check)
    ]


def _source(source: Citation | None) -> str:
    if source is None:
        return say("common practice, no source")
    return say("{source} (from memory of the document)", source=source) if source.seen == "from memory" else str(source)


def _rows(name: str, kind: Any) -> list[dict[str, Any]]:
    row = row_of(kind)
    if row is not None:
        return [one for n, k in (fields(row) or {}).items() for one in _rows(n, k)]
    label = label_of(kind)
    if label is None:
        return [{"name": name, "meaning": meaning(kind, name), "symbol": "", "unit": "", "range": ", ".join(words_of(kind) or ())}]
    return [{"name": name, "meaning": say(label.meaning), "symbol": mathml(label.symbol), "unit": unit_text(label.unit), "range": _range(label)}]


def _range(label: Is) -> str:
    low, high = label.low, label.high
    if low == float("-inf") and high == float("inf"):
        return ""
    if high == float("inf"):
        return say("from {low}", low=f"{low:g}")
    if low == float("-inf"):
        return say("to {high}", high=f"{high:g}")
    return say("{low} to {high}", low=f"{low:g}", high=f"{high:g}")
