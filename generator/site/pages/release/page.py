"""What would release most: documents to ask for, readings to take, entries to type, ranked by the positions they release."""

from typing import Any

from generator.findings.release import releases
from generator.mounting.sheet import MountingStandard


def release_view(standard: MountingStandard) -> dict[str, Any]:
    """What the template is given."""
    return {"release": releases(standard), "plant_name": str(standard.plant.typed.name), "ask": str(standard.plant.typed.ask or "")}
