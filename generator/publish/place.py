"""Putting a verified site in place in one step: the site's name is a link, and changing a link is atomic."""

import os
import shutil
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

from generator.publish.refusal import NotPublished
from generator.say import say

KEPT = 5  # earlier publications that stay beside the site, to go back to


def shelf(site: Path) -> Path:
    """Where the publications of a site are kept, the one in place among them."""
    return site.parent / f".{site.name}.published"


@contextmanager
def aside(site: Path) -> Iterator[Path]:
    """An empty folder to build in; gone afterwards unless it was put in place. One publication at a time.

    Raises NotPublished where the site's name is taken by something else, or another publication is running.
    """
    if site.exists() and not site.is_symlink():
        raise NotPublished(
            say("{site} is a folder that was not published by this program", site=site),
            say("move it away, or give another place with --site"),
        )
    home = shelf(site)
    home.mkdir(parents=True, exist_ok=True)
    building = home / "building"
    lock = home / "lock"
    handle = _locked(lock)
    try:
        shutil.rmtree(building, ignore_errors=True)
        building.mkdir()
        yield building
    finally:
        shutil.rmtree(building, ignore_errors=True)
        os.close(handle)


def put_in_place(building: Path, site: Path, name: str) -> Path:
    """The building becomes the site; whoever reads it sees the old one whole or the new one whole."""
    home = shelf(site)
    settled = _free(home / name)
    building.rename(settled)
    turning = home / "turning"
    turning.unlink(missing_ok=True)
    turning.symlink_to(settled.relative_to(site.parent))
    os.replace(turning, site)  # noqa: PTH105 - the atomic step, said as such
    _forget(home, settled)
    return settled


def _locked(lock: Path) -> int:
    import fcntl

    handle = os.open(lock, os.O_RDWR | os.O_CREAT, 0o644)
    try:
        fcntl.flock(handle, fcntl.LOCK_EX | fcntl.LOCK_NB)
    except OSError:
        os.close(handle)
        raise NotPublished(say("another publication of this site is running"), say("wait until it is done")) from None
    return handle


def _free(path: Path) -> Path:
    number, free = 2, path
    while free.exists():
        free, number = path.with_name(f"{path.name}-{number}"), number + 1
    return free


def _forget(home: Path, newest: Path) -> None:
    kept = sorted(
        (p for p in home.iterdir() if p.is_dir() and p.name.startswith("issue-") and p != newest), key=lambda p: p.stat().st_mtime
    )
    for old in kept[: max(0, len(kept) - KEPT)]:
        shutil.rmtree(old, ignore_errors=True)
