"""What the makers' documents on file say for a position: the one place where a maker's figure is found."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import dataclass
from typing import Any

from generator.plant.model.document import Document, Table
from generator.plant.plant import Named, Plant, Position
from generator.plant.quantities import BadQuantity, parse_number
from generator.say import say
from generator.units import UnitMismatch, convert
from generator.value import Band, Entered, Instructed, Need, Place, Value, Withheld

# which field of a position picks a row, or limits a table: its text as a reader would type it
FIELDS: dict[str, Callable[[Position], Any]] = {
    "sleeve.shaft": lambda p: p.sleeve and p.sleeve.typed.shaft,
    "sleeve.thread": lambda p: p.sleeve and p.sleeve.typed.thread,
    "sleeve": lambda p: p.sleeve and p.sleeve.name,
    "housing": lambda p: p.housing and p.housing.name,
    "bearing": lambda p: p.bearing and p.bearing.name,
    "unit": lambda p: p.unit and p.unit.name,
    "bearing.bore": lambda p: p.bearing and p.bearing.typed.bore.size,
    "housing.bolts.size": lambda p: p.housing and p.housing.typed.bolts and p.housing.typed.bolts.size,
}


@dataclass(frozen=True)
class Candidate:
    """A row of a document that could give a figure; `unfit` names the condition of its table that this position does not meet."""

    document: Named[Document]
    table: str
    row: str
    counts_from: str
    figure: Any
    place: Place
    unfit: tuple[str, str, str] | None = None  # field, what the table is for, what is here


def candidates(plant: Plant, position: Position, name: str) -> tuple[Candidate, ...]:
    """Every row on file that could give the figure, those of the cited document only where the position cites one."""
    cited = next((str(d) for f, d in (position.typed.cites or {}).items() if str(f) == name), None)
    found = []
    for document in plant.library.documents.values():
        if cited is None or document.name == cited:
            found.extend(_in_document(document, position, name))
    return tuple(found)


def maker_figure(plant: Plant, position: Position, name: str, what: str) -> Any:
    """The maker's figure with its reason, or Withheld with the document to ask for. `what` names the figure in words."""
    rows = candidates(plant, position, name)
    fit = [row for row in rows if row.unfit is None]
    if fit:
        return instructed(fit[0].figure, fit[0])
    maker = maker_of(position)
    need = Need("document", maker, say("{what} for {part}", what=what, part=part_of(position)))
    if rows:
        field, wanted, here = rows[0].unfit or ("", "", "")
        return Withheld(
            say(
                "{document}, {table} is for {field} {wanted}, not {here}",
                document=rows[0].document.name,
                table=rows[0].table,
                field=field,
                wanted=wanted,
                here=here,
            ),
            (need,),
        )
    return Withheld(say("no document on file gives the {what} for {part}", what=what, part=part_of(position)), (need,))


def instructed(figure: Any, row: Candidate) -> Any:
    """The figure as the document gives it: every value in it says document, revision, table, row and date."""
    if isinstance(figure, Value):
        return Value(figure.content, figure.unit, _reason(row, figure.reason), figure.remarks)
    if isinstance(figure, Band):
        return Band(instructed(figure.lower, row), instructed(figure.upper, row))
    if isinstance(figure, str):
        return Value(str(figure), "", _reason(row, Entered(str(figure), getattr(figure, "place", row.place))))
    return figure


def maker_of(position: Position) -> str:
    """Whom to ask about this position."""
    for part in (position.sleeve, position.bearing, position.housing):
        maker = getattr(part.typed, "maker", None) if part else None
        if maker:
            return str(maker)
    return say("the maker")


def part_of(position: Position) -> str:
    """The part the maker knows it by."""
    part = position.unit or position.sleeve or position.bearing or position.housing
    return part.name if part else position.id


def _in_document(document: Named[Document], position: Position, name: str) -> Iterator[Candidate]:
    for title, table in (document.typed.tables or {}).items():
        picked = FIELDS.get(str(table.chosen_by), lambda _: None)(position)
        if picked is None:
            continue
        for key, row in table.rows.items():
            figure = getattr(row, name, None)
            if figure is not None and same(str(key), picked):
                place = getattr(key, "place", document.place)
                yield Candidate(document, str(title), str(key), str(table.counts_from or ""), figure, place, _unfit(table, position))


def _unfit(table: Table, position: Position) -> tuple[str, str, str] | None:
    for field, wanted in (table.of or {}).items():
        here = FIELDS.get(str(field), lambda _: None)(position)
        if here is None or not same(str(wanted), here):
            return str(field), str(wanted), text_of(here)
    return None


def same(typed: str, here: Any) -> bool:
    """Whether a row's key means what the position has: the same name, or the same quantity in whatever unit."""
    if typed == text_of(here):
        return True
    if not isinstance(here, Value) or isinstance(here.content, str):
        return False
    try:
        number, unit = parse_number(typed)
        return abs(convert(number, unit, here.unit) - here.content) < 1e-6 * max(1.0, abs(here.content))
    except (BadQuantity, UnitMismatch):
        return False


def text_of(here: Any) -> str:
    """A field's text as typed."""
    if isinstance(here, Value):
        return here.reason.text if isinstance(here.reason, Entered) else str(here.content)
    return str(here) if here is not None else say("nothing")


def _reason(row: Candidate, typed: Any) -> Instructed:
    document = row.document.typed
    where = say("{table}, row {row}", table=row.table, row=row.row)
    issued = str(document.issued.content)
    return Instructed(row.document.name, str(document.revision), where, issued, getattr(typed, "place", row.place))
