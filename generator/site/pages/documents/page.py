"""The makers' documents on file: revision, date, where they are kept, what they say, who relies on them."""

from typing import Any

from pydantic import BaseModel

from generator.mounting.sheet import MountingStandard
from generator.show import shown
from generator.site.pages.machine.page import reason_document
from generator.value import Band, Value


def documents_view(standard: MountingStandard) -> dict[str, Any]:
    """What the template is given."""
    on = standard.plant.on.isoformat()
    users: dict[str, list[str]] = {}
    for machine in standard.machines:
        for sheet in machine.sheets:
            for name in sorted(
                {reason_document(v) for line in sheet.lines.values() for v in (line.value, getattr(line.value, "lower", None))} - {""}
            ):
                users.setdefault(name, []).append(sheet.id)
    documents = [
        {
            "name": d.name,
            "typed": d.typed,
            "past": str(d.typed.review_by.content) < on,
            "users": users.get(d.name, []),
            "tables": _tables(d.typed),
            "place": d.place,
        }
        for d in sorted(standard.plant.library.documents.values(), key=lambda d: d.name)
    ]
    return {"documents": documents}


def _tables(document: Any) -> list[tuple[str, str, list[tuple[str, str]]]]:
    tables = []
    for title, table in (document.tables or {}).items():
        rows = [
            (
                str(key),
                "; ".join(
                    f"{name.replace('_', ' ')} {_text(figure)}"
                    for name in type(row).model_fields
                    if (figure := getattr(row, name)) is not None
                ),
            )
            for key, row in table.rows.items()
        ]
        limits = ", ".join(f"{field} {text}" for field, text in (table.of or {}).items())
        tables.append((str(title), limits, rows))
    return tables


def _text(figure: Any) -> str:
    if isinstance(figure, (Value, Band)):
        return shown(figure).main
    if isinstance(figure, dict):
        return ", ".join(f"{key} {_text(value)}" for key, value in figure.items())
    if isinstance(figure, BaseModel):
        return ", ".join(
            f"{name.rstrip('_')} {_text(one)}" for name in type(figure).model_fields if (one := getattr(figure, name)) is not None
        )
    return str(figure)
