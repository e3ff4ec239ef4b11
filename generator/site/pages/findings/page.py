"""Findings: what the engineering objects to, holds first; accepted ones stay visible; each rule's own text below."""

from typing import Any

from generator.findings import RULES
from generator.findings.finding import LEVELS, name_of
from generator.mounting.sheet import MountingStandard
from generator.say import say


def findings_view(standard: MountingStandard) -> dict[str, Any]:
    """What the template is given."""
    found: list[Any] = list(standard.findings)
    open_ones = [f for f in found if not f.accepted]
    rules = [
        {
            "name": say(name_of(rule)),
            "level": rule.LEVEL,
            "text": say(" ".join((rule.__doc__ or "").split())),
            "count": sum(1 for f in open_ones if type(f.rule) is rule),
        }
        for rule, _ in RULES
    ]
    return {
        "levels": [(level, [f for f in open_ones if level == f.rule.LEVEL]) for level in LEVELS],
        "accepted": [f for f in found if f.accepted],
        "rules": rules,
        "clean": [m.machine.tag for m in standard.machines if not any(f.tag == m.machine.tag for f in found)],
        "said": say("{count} findings, {accepted} of them accepted", count=len(found), accepted=len(found) - len(open_ones)),
    }
