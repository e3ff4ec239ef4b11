"""A page an area: its machines in walking order, held ones marked, and its lubrication round."""

from typing import Any

from generator.mounting.sheet import MountingStandard
from generator.site.pages.held import held_machines


def area_view(standard: MountingStandard, code: str) -> dict[str, Any]:
    """What the template is given."""
    held = held_machines(standard)
    area = next(area for key, area in standard.plant.typed.areas.items() if str(key) == code)
    machines = [
        {
            "tag": m.tag,
            "name": str(m.typed.name),
            "shafts": ", ".join(str(s.typed.name) for s in m.shafts),
            "held": held.get(m.tag, []),
            "letters": [p.letter for p in m.positions],
        }
        for m in standard.plant.in_area(code)
    ]
    return {"code": code, "name": str(area.name), "machines": machines}
