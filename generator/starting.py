"""The command `start`: a small commented plant that passes `check`, to begin from."""

from __future__ import annotations

import shutil
from pathlib import Path

from generator.say import say

SMALL = Path(__file__).parent / "small_plant"


class StartRefused(Exception):
    """The folder is not empty, or cannot be written."""


def start_plant(folder: Path) -> str:
    """Copy the small plant into a new or empty folder. Raises StartRefused; nothing that is there is ever overwritten."""
    if folder.exists() and (not folder.is_dir() or any(folder.iterdir())):
        raise StartRefused(say("{folder} is there already and is not empty; name a new folder", folder=folder))
    try:
        shutil.copytree(SMALL, folder, dirs_exist_ok=True)
    except OSError as refused:
        raise StartRefused(say("{folder} cannot be written: {why}", folder=folder, why=refused)) from refused
    return say(
        "made {folder}\nnext: seatbook check --plant {folder}, then seatbook publish --plant {folder} --site site-of-mine", folder=folder
    )
