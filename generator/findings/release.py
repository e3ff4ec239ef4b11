"""What would release most: documents to ask for, readings to take, entries to type, ranked by the positions they would release."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from generator.mounting.sheet import MountingStandard
from generator.value import Need, Withheld


@dataclass(frozen=True)
class Request:
    """What is asked of one maker: each figure with the positions it would release."""

    maker: str
    figures: tuple[tuple[str, tuple[str, ...]], ...]
    positions: tuple[str, ...]


@dataclass(frozen=True)
class Wanted:
    """A reading or an entry, and the positions it would release."""

    what: str
    positions: tuple[str, ...]


@dataclass(frozen=True)
class Releases:
    """All of it, what releases most first."""

    documents: tuple[Request, ...]
    readings: tuple[Wanted, ...]
    entries: tuple[Wanted, ...]


def releases(standard: MountingStandard) -> Releases:
    """From every withheld value of every position."""
    asked: dict[str, dict[str, list[str]]] = {}
    readings: dict[str, list[str]] = {}
    entries: dict[str, list[str]] = {}
    for position, need in _needs(standard):
        if need.kind == "document":
            asked.setdefault(need.subject, {}).setdefault(need.what, []).append(position)
        elif need.kind == "reading":
            readings.setdefault(need.what, []).append(position)
        else:
            entries.setdefault(f"{need.subject}: {need.what}", []).append(position)
    requests = [
        Request(maker, _ranked(figures), _once(p for positions in figures.values() for p in positions)) for maker, figures in asked.items()
    ]
    return Releases(
        tuple(sorted(requests, key=lambda r: (-len(r.positions), r.maker))),
        tuple(Wanted(what, positions) for what, positions in _ranked(readings)),
        tuple(Wanted(what, positions) for what, positions in _ranked(entries)),
    )


def _needs(standard: MountingStandard) -> Iterator[tuple[str, Need]]:
    """Of each position, the needs of the numbers a hand sets, and of the rest."""
    for machine in standard.machines:
        for sheet in machine.sheets:
            for line in sheet.lines.values():
                if isinstance(line.value, Withheld):
                    yield from ((sheet.id, need) for need in line.value.needs)
    for task in standard.lubrication:
        if isinstance(task.next_due, Withheld):
            yield from ((task.sheet.id, need) for need in task.next_due.needs)


def _ranked(found: dict[str, list[str]]) -> tuple[tuple[str, tuple[str, ...]], ...]:
    return tuple(sorted(((what, _once(positions)) for what, positions in found.items()), key=lambda one: (-len(one[1]), one[0])))


def _once(names: Iterator[str] | list[str]) -> tuple[str, ...]:
    return tuple(dict.fromkeys(names))
