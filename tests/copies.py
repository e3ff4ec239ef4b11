"""Copies of the demo plant to change, without what publishing keeps beside it."""

from __future__ import annotations

import shutil
from pathlib import Path

PLANT = Path(__file__).parents[1] / "plant_data"


def copy_of_demo(to: Path) -> Path:
    """The demo plant's files, copied to a folder that is not there yet."""
    return Path(shutil.copytree(PLANT, to, ignore=shutil.ignore_patterns(".seatbook")))
