"""The ledger of revisions: which check code each machine's sheet got in which issue, and on what day.

`ledger.csv` in the plant folder; publishing extends it, reading takes it in, so that the same inputs give the same bytes.
"""

import csv
import io
from collections.abc import Iterable, Mapping
from datetime import date
from pathlib import Path

from generator.plant.plant import Issue
from generator.plant.problems import Problems
from generator.say import say
from generator.value import Place

NAME = "ledger.csv"
COLUMNS = ("issue", "on", "machine", "code")


def read_ledger(folder: Path, problems: Problems) -> tuple[Issue, ...]:
    """The lines of the ledger, oldest first; none where nothing was published yet."""
    path = folder / NAME
    if not path.is_file():
        return ()
    try:
        rows = list(csv.reader(io.StringIO(path.read_text(encoding="utf-8").replace("\x00", "\ufffd"))))
    except (UnicodeDecodeError, csv.Error):
        problems.add(Place(NAME, 1), say("the ledger cannot be read"), say("put back the ledger that the last publication wrote"))
        return ()
    lines = []
    for number, row in enumerate(rows, 1):
        if number == 1 and tuple(row) == COLUMNS:
            continue
        line = _line(row)
        if line is None:
            problems.add(
                Place(NAME, number),
                say("this is no line of a ledger"),
                say("the ledger is written by publishing, never by hand: {columns}", columns=",".join(COLUMNS)),
            )
        else:
            lines.append(line)
    return tuple(lines)


def standing(ledger: Iterable[Issue]) -> dict[str, Issue]:
    """The newest line of each machine."""
    newest: dict[str, Issue] = {}
    for line in ledger:
        newest[line.tag] = line
    return newest


def extended(ledger: tuple[Issue, ...], codes: Mapping[str, str], on: date) -> tuple[Issue, ...]:
    """The ledger with a line for each machine whose code is new; unchanged where none is."""
    newest = standing(ledger)
    changed = sorted(tag for tag, code in codes.items() if tag not in newest or newest[tag].code != code)
    if not changed:
        return ledger
    issue = max((line.issue for line in ledger), default=0) + 1
    return (*ledger, *(Issue(issue, on.isoformat(), tag, codes[tag]) for tag in changed))


def written(ledger: Iterable[Issue]) -> str:
    """The ledger as the text of its file."""
    out = io.StringIO()
    rows = csv.writer(out, lineterminator="\n")
    rows.writerow(COLUMNS)
    rows.writerows((line.issue, line.on, line.tag, line.code) for line in ledger)
    return out.getvalue()


def _line(row: list[str]) -> Issue | None:
    if len(row) != len(COLUMNS) or not row[0].isdecimal() or len(row[0]) > 9:
        return None
    try:
        date.fromisoformat(row[1])
    except ValueError:
        return None
    return Issue(int(row[0]), row[1], row[2], row[3])
