"""The command `check`: problems of the files, else the findings of the plant."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date
from pathlib import Path
from typing import Any

from generator.findings.finding import LEVELS, Judged
from generator.plant.problems import Problem, show_problem
from generator.plant.resolve import read_plant
from generator.say import say


@dataclass(frozen=True)
class Report:
    """What `check` found on a day."""

    folder: Path
    on: date
    problems: tuple[Problem, ...]
    findings: tuple[Judged, ...]
    machines: int
    positions: int

    @property
    def exit_code(self) -> int:
        """2: problems; 1: findings beyond advice that nobody accepted; 0: neither."""
        if self.problems:
            return 2
        return 1 if any(not f.accepted and f.rule.LEVEL != "advice" for f in self.findings) else 0

    def as_text(self) -> str:
        """For the engineer at a terminal."""
        if self.problems:
            shown = "\n\n".join(show_problem(problem) for problem in self.problems)
            return shown + "\n\n" + say("{count} problems; nothing can be published until they are mended", count=len(self.problems))
        lines = [_said(finding) for finding in self.findings]
        counts = ", ".join(
            say("{count} {level}", count=sum(1 for f in self.findings if level == f.rule.LEVEL and not f.accepted), level=level)
            for level in LEVELS
        )
        accepted = sum(1 for f in self.findings if f.accepted)
        total = say(
            "{machines} machines, {positions} positions, judged on {on}: {counts}, {accepted} accepted",
            machines=self.machines,
            positions=self.positions,
            on=self.on,
            counts=counts,
            accepted=accepted,
        )
        return "\n\n".join([*lines, total])

    def as_json(self) -> dict[str, Any]:
        """For other programs."""
        return {
            "plant": str(self.folder),
            "judged_on": self.on.isoformat(),
            "machines": self.machines,
            "positions": self.positions,
            "problems": [
                {
                    "file": p.place.file,
                    "line": p.place.line,
                    "column": p.place.column,
                    "text": p.line_text,
                    "wrong": p.wrong,
                    "right": p.right,
                }
                for p in self.problems
            ],
            "findings": [_json(finding) for finding in self.findings],
        }


def check_report(folder: Path, on: date) -> Report:
    """Read the plant and judge it. A folder with problems has no findings yet."""
    from generator.mounting.standard import mounting_standard

    plant, problems = read_plant(folder, on)
    if plant is None:
        return Report(folder, on, problems, (), 0, 0)
    standard = mounting_standard(plant)
    positions = sum(len(machine.positions) for machine in plant.machines)
    return Report(folder, on, (), tuple(standard.findings), len(plant.machines), positions)  # type: ignore[arg-type]


def _said(finding: Judged) -> str:
    held = say("holds: {jobs}", jobs=", ".join(finding.holds)) if finding.holds else ""
    head = f"{finding.rule.LEVEL}: {finding.rule.at}: {finding.name}" + (f" ({held})" if held else "")
    lines = [head, f"  {finding.rule.says()}", f"  {say('clears it: {what}', what=finding.rule.clears())}", f"  {finding.rule.place}"]
    if finding.accepted:
        lines.append(
            "  "
            + say(
                "accepted by {by} until {until}: {because}",
                by=finding.accepted_by,
                until=finding.accepted_until,
                because=finding.accepted_because,
            )
        )
    if finding.back_because:
        lines.append("  " + say("was accepted, and is back: {why}", why=finding.back_because))
    return "\n".join(lines)


def _json(finding: Judged) -> dict[str, Any]:
    place = finding.rule.place
    return {
        "finding": finding.name,
        "level": finding.rule.LEVEL,
        "at": finding.rule.at,
        "holds": list(finding.holds),
        "says": finding.rule.says(),
        "clears": finding.rule.clears(),
        "file": place.file,
        "line": place.line,
        "accepted_until": finding.accepted_until or None,
        "back_because": finding.back_because or None,
    }
