"""What can be printed for a machine, position by position."""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

from generator.site.pages.machine.page import title

if TYPE_CHECKING:
    from generator.site.papers import Papers


def paper_view(papers: Papers) -> dict[str, Any]:
    """The links of the page."""
    positions = [
        (sheet.position.letter, title(sheet, shaft), not papers.jobs[sheet.id]["put on"].open)
        for shaft in papers.machine.shafts
        for sheet in shaft.sheets
    ]
    return {"tag": papers.tag, "positions": positions}
