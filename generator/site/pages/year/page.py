"""The year's plan: which week each area's round has how many stops, and what it uses."""

from typing import Any

from generator.mounting.sheet import MountingStandard


def year_view(standard: MountingStandard) -> dict[str, Any]:
    """What the template is given."""
    codes = [str(code) for code in standard.plant.typed.areas]
    weeks = []
    for week in range(1, 53):
        here = [task for task in standard.lubrication if week in task.weeks]
        weeks.append(
            {
                "week": week,
                "stops": [sum(1 for t in here if t.area == code) for code in codes],
                "total": len(here),
                "grams": f"{sum(t.grams.content for t in here if t.grams):.0f}",
            }
        )
    return {
        "codes": codes,
        "names": [str(a.name) for a in standard.plant.typed.areas.values()],
        "weeks": weeks,
        "year": standard.plant.on.isocalendar().year,
        "most": max((w["total"] for w in weeks), default=0),
    }
