"""Everything the site of a plant is made of, before any site generator sees it."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping
from dataclasses import dataclass, field
from datetime import date
from pathlib import Path
from typing import Any

from generator.say import say
from generator.site.finder.index import Entry
from generator.site.frame import Around, Page


class PlantRefused(Exception):
    """The plant's files cannot be taken as meant; the text is what the engineer reads. Nothing of an earlier site was touched."""


@dataclass(frozen=True)
class Site:
    """The pages, what the finder finds on them, what guides may quote, and the other files (exports), each made when it is written.

    `guide_variables` are the names a guide's text may use; each guide is also given `base`, its way to the site's root.
    """

    around: Around
    pages: Iterable[Page] = ()
    finder_entries: Iterable[Entry] = ()
    guide_variables: Mapping[str, Any] = field(default_factory=dict)
    files: Mapping[str, Callable[[], bytes]] = field(default_factory=dict)


def prepare(plant_folder: Path, on: date) -> Site:
    """Read the plant and work out its standard, as judged on a day. Raises PlantRefused before anything is written."""
    around = Around(
        plant=plant_folder.name, on=on.isoformat(), banner=say("No plant has been read. These pages hold no number to work by.")
    )
    return Site(around)
