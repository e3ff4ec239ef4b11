"""The year's plan: which week each area's round has how many stops, and what it uses."""

from typing import Any

from generator.mounting.lubrication import MINUTES
from generator.mounting.sheet import MountingStandard
from generator.site.drawings.style import style
from generator.site.drawings.year import Round, Year, year


def year_view(standard: MountingStandard) -> dict[str, Any]:
    """What the template is given."""
    codes = [str(code) for code in standard.plant.typed.areas]
    weeks: list[dict[str, Any]] = []
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
    rounds = tuple(
        Round(f"{code} {area.name}", tuple(float(week["stops"][number] * MINUTES.content) for week in weeks))
        for number, (code, area) in enumerate(standard.plant.typed.areas.items())
    )
    return {
        "drawing": style() + year(Year(rounds), "year") if any(any(one.minutes) for one in rounds) else "",
        "codes": codes,
        "names": [str(a.name) for a in standard.plant.typed.areas.values()],
        "weeks": weeks,
        "year": standard.plant.on.isocalendar().year,
        "most": max((w["total"] for w in weeks), default=0),
    }
