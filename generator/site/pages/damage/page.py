"""The terms for what is seen on a bearing that was taken off: one word for one thing, on paper and in talk."""

from typing import Any

from generator.tables import table
from generator.tables.condition import damage_terms


def damage_view() -> dict[str, Any]:
    """What the template is given."""
    rows = [{name: str(value.content) for name, value in row.items()} for row in damage_terms()]
    return {"rows": rows, "source": str(table("damage-modes").citation)}
