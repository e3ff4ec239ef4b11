"""The ledger of revisions: in which issue each machine's sheet last changed, its day and check code."""

from typing import Any

from generator.mounting.sheet import MountingStandard
from generator.records.ledger import standing


def revisions_view(standard: MountingStandard) -> dict[str, Any]:
    """What the template is given."""
    newest = standing(standard.plant.ledger)
    rows = [(machine.tag, newest.get(machine.tag)) for machine in standard.plant.machines]
    issues = sorted({(line.issue, line.on) for line in standard.plant.ledger}, reverse=True)
    return {
        "rows": rows,
        "issues": [(issue, on, [line.tag for line in standard.plant.ledger if line.issue == issue]) for issue, on in issues[:20]],
    }
