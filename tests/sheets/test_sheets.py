"""Sheets whole, for a reader to look over when they change: every value with its reason, and the fragment of its page."""

from __future__ import annotations

import re
from datetime import date
from pathlib import Path
from typing import Any

import pytest

from generator.mounting.sheet import MountingStandard
from generator.mounting.standard import mounting_standard
from generator.plant.resolve import read_plant
from generator.showing import shown_position
from generator.site.pages.machine.page import machine_view
from generator.site.render import rendered

PLANT = Path(__file__).parents[2] / "plant_data"
ON = date(2026, 11, 25)
CASES = ("INT-02/A", "INT-01/A", "BYP-02/B", "WSH-04/A", "MIL-03/B", "UTL-04/A", "PAK-01/A", "PAK-03/C", "BYP-03/B")


@pytest.fixture(scope="module")
def standard() -> MountingStandard:
    plant, problems = read_plant(PLANT, ON)
    assert plant is not None and not problems
    return mounting_standard(plant)


@pytest.mark.parametrize("identity", CASES)
def test_every_value_and_its_reason(identity: str, file_regression: Any) -> None:
    found, text = shown_position(PLANT, ON, identity)
    assert found
    file_regression.check(
        text[text.index("Values, each") :] + "\n", basename=identity.replace("/", "-"), extension=".txt", encoding="utf-8"
    )


@pytest.mark.parametrize("tag", ["MIL-03", "BYP-03"])
def test_the_page_of_a_machine(standard: MountingStandard, tag: str, file_regression: Any) -> None:
    machine = standard.machine(tag)
    assert machine
    html = str(rendered("machine/page.html", **machine_view(standard, machine)))
    # drawings have tests of their own, and every reason stands in the texts above; here stands what the page shows closed
    bare = re.sub(
        r"<svg.*?</svg>", "", re.sub(r'<div class="reason">.*?</div>(?=</details>|\s*</details>)', "", html, flags=re.S), flags=re.S
    )
    file_regression.check(bare.replace("><", ">\n<"), basename=tag, extension=".html", encoding="utf-8")
