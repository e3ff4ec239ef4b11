"""What is taken to a machine: for chosen positions or all of it; tools they share stand once."""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

from generator.say import say
from generator.work.take_along import GROUPS, take_along

if TYPE_CHECKING:
    from generator.site.papers import Papers


def take_view(papers: Papers) -> dict[str, Any]:
    """The groups with their items, and the positions one can choose."""
    items = take_along(papers.standard, papers.machine, papers.jobs)
    groups = [(say(name), [item for item in items if item.group == key]) for key, name in GROUPS.items()]
    return {
        "tag": papers.tag,
        "letters": [sheet.position.letter for sheet in papers.machine.sheets],
        "groups": [(name, found) for name, found in groups if found],
    }
