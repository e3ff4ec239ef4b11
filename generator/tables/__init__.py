"""Published tables: one CSV each, its source and edition in its head, and the look-ups that give Values.

A CSV opens with comment lines: `# title: ...`, `# source: ...`, `# edition: ...`, `# clause: ...`, `# seen: seen | from memory`;
`# source: common practice` means that there is none.
"""

import csv
from dataclasses import dataclass
from functools import cache
from importlib.resources import files
from typing import Any

from generator.say import say
from generator.value import Citation, LookedUp, Need, Value, Withheld


@dataclass(frozen=True)
class Table:
    """A published table: file name, title, citation (None: common practice) and rows as text by column."""

    name: str
    title: str
    citation: Citation | None
    rows: tuple[dict[str, str], ...]


@cache
def table(name: str) -> Table:
    """The table in `<name>.csv`. Raises FileNotFoundError for a name that is not there."""
    lines = files(__package__).joinpath(f"{name}.csv").read_text(encoding="utf-8").splitlines()
    head = dict(line[1:].split(":", 1) for line in lines if line.startswith("#") and ":" in line)
    facts = {key.strip(): text.strip() for key, text in head.items()}
    rows = tuple(csv.DictReader(line for line in lines if not line.startswith("#")))
    citation = (
        None
        if facts["source"] == "common practice"
        else Citation(facts["source"], facts.get("edition", ""), facts.get("clause", ""), facts.get("seen", "from memory"))
    )
    return Table(name, facts["title"], citation, rows)


def row_where(name: str, **keys: str) -> dict[str, str] | None:
    """The first row whose columns have these texts."""
    return next((row for row in table(name).rows if all(row[key] == text for key, text in keys.items())), None)


def row_in_range(name: str, size: float, over: str, to: str, **keys: str) -> dict[str, str] | None:
    """The first row with over < size <= to (a range runs "over a, up to and including b") and these texts."""
    for row in table(name).rows:
        if all(row[key] == text for key, text in keys.items()) and float(row[over]) < size - 1e-9 and size <= float(row[to]) + 1e-9:
            return row
    return None


def found(name: str, content: Any, unit: str = "", citation: Citation | None = None, **keys: str) -> Value:
    """A Value taken from a table, saying which row."""
    source = table(name)
    return Value(content, unit, LookedUp(citation or source.citation, source.title, tuple(keys.items())))


def not_in(name: str, what: str, *needs: Need) -> Withheld:
    """Withheld, because the table has no such row."""
    return Withheld(say("{table} has no row for {what}", table=say(table(name).title), what=what), needs)
