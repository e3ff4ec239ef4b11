"""One file a machine for phones: no script, nothing that must be reached elsewhere; numbers, drawings and steps as on the kiosk."""

from __future__ import annotations

import re
from pathlib import Path
from typing import TYPE_CHECKING

from markupsafe import Markup

from generator.show import shown
from generator.site.drawings.style import style
from generator.site.pages.machine.page import cautions, title
from generator.site.pages.machine.pictures import lock_pictures, shaft_drawing
from generator.site.pages.machine.steps_view import job_views
from generator.site.reasons import origin
from generator.site.render import rendered

if TYPE_CHECKING:
    from generator.site.papers import Papers

ASSETS = Path(__file__).parents[4] / "site_overrides" / "assets"


def phone_file(papers: Papers) -> str:
    """The whole file."""
    plant, machine = papers.standard.plant, papers.machine
    positions = [
        {
            "id": sheet.id,
            "letter": sheet.position.letter,
            "title": title(sheet, shaft),
            "held": papers.held[sheet.id],
            "numbers": [(line.key, line.name, shown(line.value, str(plant.typed.units)), origin(line.value)) for line in sheet.lines.values() if line.by_hand],
            "pictures": [narrow_only(one) for drawn in lock_pictures(sheet, shaft).values() for one in drawn.values()],
            "jobs": job_views(sheet, papers.jobs[sheet.id], linked=False),
        }
        for shaft in machine.shafts
        for sheet in shaft.sheets
    ]  # fmt: skip
    css = "\n".join((ASSETS / name).read_text(encoding="utf-8") for name in ("seatbook.css", "paper.css"))
    return str(
        rendered(
            "phone/page.html", css=css, drawings=style(), tag=papers.tag, name=str(machine.machine.typed.name), issued=papers.issued,
            on=plant.on.isoformat(), language=str(plant.typed.language), cautions=cautions(plant, machine), shafts=[narrow_only(shaft_drawing(shaft, papers.held)) for shaft in machine.shafts],
            positions=positions, ask=str(plant.typed.ask or ""),
        )
    )  # fmt: skip


def narrow_only(drawn: Markup) -> Markup:
    """The layout for a phone alone: the other one would only weigh."""
    return Markup("".join(re.findall(r'<svg [^>]*class="pic narrow".*?</svg>', drawn, flags=re.DOTALL)))
