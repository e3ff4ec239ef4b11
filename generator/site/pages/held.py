"""Which machines hold a job, and why in one line each."""

from typing import Any

from generator.findings import held_jobs
from generator.mounting.sheet import MountingStandard


def held_machines(standard: MountingStandard) -> dict[str, list[tuple[str, tuple[str, ...], tuple[str, ...]]]]:
    """By tag: (position, jobs held, names of the findings), only machines that hold something."""
    by_tag: dict[str, list[Any]] = {}
    for finding in standard.findings:
        by_tag.setdefault(finding.tag, []).append(finding)  # type: ignore[attr-defined]
    held = {}
    for machine in standard.machines:
        rows = []
        for sheet in machine.sheets:
            jobs = held_jobs(by_tag.get(machine.machine.tag, []), sheet.id)
            if jobs:
                names = tuple(dict.fromkeys(f.name for found in jobs.values() for f in found))
                rows.append((sheet.position.letter, tuple(jobs), names))
        if rows:
            held[machine.machine.tag] = rows
    return held
