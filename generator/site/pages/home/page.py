"""The start page: the areas in the order of the walk, the finder, and what is held."""

from typing import Any

from generator.mounting.sheet import MountingStandard
from generator.site.pages.held import held_machines


def home_view(standard: MountingStandard) -> dict[str, Any]:
    """What the template is given."""
    plant = standard.plant
    held = held_machines(standard)
    areas = [
        {
            "code": str(code),
            "name": str(area.name),
            "count": sum(1 for _ in plant.in_area(str(code))),
            "held": sum(1 for m in plant.in_area(str(code)) if m.tag in held),
        }
        for code, area in plant.typed.areas.items()
    ]
    return {
        "areas": areas,
        "held": held,
        "count": len(plant.machines),
        "positions": sum(len(m.positions) for m in plant.machines),
        "name": str(plant.typed.name),
    }
