"""Bodies of machine pages kept by the hash of all that went into them, so that one edited machine costs one page."""

from __future__ import annotations

import hashlib
import os
from collections.abc import Callable
from functools import cache
from pathlib import Path

from generator.plant.plant import Issue, Machine, Plant

HOUSE = Path(__file__).parents[1]
MOST = 20_000  # pages kept at most; then all are forgotten and made anew


def kept(plant: Plant, machine: Machine, make: Callable[[], str], name: str = "") -> str:
    """The body (of that name, of a machine's several) as it was made from the same inputs by the same code, else made now and kept. Where nothing can be kept, it is made."""
    folder = Path(plant.folder) / ".seatbook"
    path = folder / hashlib.sha256(f"{key(plant, machine)}{name}".encode()).hexdigest()
    try:
        return path.read_text(encoding="utf-8")
    except (OSError, UnicodeDecodeError):
        body = make()
    try:
        folder.mkdir(exist_ok=True)
        beside = path.with_suffix(f".{os.getpid()}")
        beside.write_text(body, encoding="utf-8")
        beside.replace(path)
    except OSError:
        return body
    return body


def forget(plant: Plant) -> None:
    """Empty the store where it has grown too large."""
    folder = Path(plant.folder) / ".seatbook"
    if folder.is_dir() and sum(1 for _ in folder.iterdir()) > MOST:
        for path in folder.iterdir():
            path.unlink(missing_ok=True)


def key(plant: Plant, machine: Machine) -> str:
    """A hash of the machine's file and records, the library, plant.yml and acceptances, the machine's ledger, the day, and the code."""
    ledger = [line for line in plant.ledger if line.tag == machine.tag]
    parts = (code(), plant.shared_digest, machine.digest, plant.on.isoformat(), plant.folder, *(_line(line) for line in ledger))
    return hashlib.sha256("\n".join(parts).encode()).hexdigest()


@cache
def code() -> str:
    """A hash of everything in the program that could change a page."""
    found = hashlib.sha256()
    for path in sorted(p for p in HOUSE.rglob("*") if p.suffix in (".py", ".html", ".csv", ".yml", ".po", ".mo")):
        found.update(path.relative_to(HOUSE).as_posix().encode())
        found.update(path.read_bytes())
    return found.hexdigest()


def _line(line: Issue) -> str:
    return f"{line.issue},{line.on},{line.code}"
