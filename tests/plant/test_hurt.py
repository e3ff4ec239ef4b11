"""Two hundred damaged copies of the demo plant: each gives located problems or findings, never a traceback; the published site stays as it was."""

from __future__ import annotations

import random
from datetime import date
from hashlib import sha256
from pathlib import Path

import pytest

from generator.checking import check_report
from generator.publish.publish import publish
from generator.publish.refusal import NotPublished
from tests.copies import copy_of_demo

PLANT = Path(__file__).parents[2] / "plant_data"
ON = date(2026, 11, 25)
FILES = sorted(p.relative_to(PLANT) for p in PLANT.rglob("*") if p.suffix in (".yml", ".csv"))


def damage(text: str, dice: random.Random) -> str | bytes:
    """One of many ways a file gets hurt."""
    lines = text.splitlines()
    at = dice.randrange(len(lines))
    line = lines[at]
    ways = ["drop", "double", "misspell", "unit", "absurd", "truncate", "binary", "empty", "tab", "markup", "circle", "huge"]
    way = dice.choice(ways)
    if way == "truncate":
        return text[: dice.randrange(len(text))]
    if way == "binary":
        return bytes(dice.randrange(256) for _ in range(400))
    if way == "empty":
        return ""
    if way == "huge":
        return text + "# " + "x" * 200_000
    changed = {
        "drop": "", "double": f"{line}\n{line}", "misspell": line.replace("e", "ee", 1), "unit": line.replace(" mm", " kg").replace(" rpm", " N"),
        "absurd": line.replace("1", "1000000", 1), "tab": "\t" + line, "markup": line.replace(": ", ": <script>alert(1)</script> ", 1),
        "circle": line.replace("like: A", "like: B").replace("unit: ", "like: "),
    }[way]  # fmt: skip
    lines[at] = changed
    return "\n".join(lines) + "\n"


@pytest.mark.parametrize("seed", range(200))
def test_a_damaged_plant_gives_problems_or_findings(seed: int, tmp_path: Path) -> None:
    dice = random.Random(seed)
    copy = tmp_path / "plant"
    copy_of_demo(copy)
    path = copy / dice.choice(FILES)
    hurt = damage(path.read_text(encoding="utf-8"), dice)
    path.write_bytes(hurt if isinstance(hurt, bytes) else hurt.encode())
    report = check_report(copy, ON)
    for problem in report.problems:
        assert problem.place.file and problem.place.line >= 1 and problem.wrong and problem.right
    assert report.as_text()


def test_a_plant_with_a_problem_leaves_the_site_byte_for_byte(tmp_path: Path) -> None:
    copy, site = tmp_path / "plant", tmp_path / "site"
    copy_of_demo(copy)
    publish(copy, site, ON)
    before = {p.relative_to(site): sha256(p.read_bytes()).hexdigest() for p in site.rglob("*") if p.is_file()}
    ledger = (copy / "ledger.csv").read_bytes()
    machine = copy / "machines" / "INT-02.yml"
    machine.write_text(machine.read_text().replace("speed: 68 rpm", "speed: 68"), encoding="utf-8")
    with pytest.raises(NotPublished) as refused:
        publish(copy, site, ON)
    assert "machines/INT-02.yml" in refused.value.wrong and "68 has no unit" in refused.value.wrong
    assert {p.relative_to(site): sha256(p.read_bytes()).hexdigest() for p in site.rglob("*") if p.is_file()} == before
    assert (copy / "ledger.csv").read_bytes() == ledger


def test_a_machine_of_an_exercise_that_is_gone_fails_the_build(tmp_path: Path) -> None:
    copy = tmp_path / "plant"
    copy_of_demo(copy)
    (copy / "machines" / "MIL-03.yml").unlink()
    grease = copy / "records" / "2026-grease.csv"
    grease.write_text("\n".join(line for line in grease.read_text().splitlines() if "MIL-03" not in line) + "\n", encoding="utf-8")
    with pytest.raises(NotPublished, match="MIL-03"):
        publish(copy, tmp_path / "site", ON)


def test_markup_typed_into_a_text_comes_out_as_text(tmp_path: Path) -> None:
    copy, site = tmp_path / "plant", tmp_path / "site"
    copy_of_demo(copy)
    evil = '"<script>alert(1)</script>{{ 7*7 }}"'
    machine = copy / "machines" / "INT-02.yml"
    text = (
        machine.read_text().replace("name: Bucket elevator", f"name: {evil}").replace("moving: The belt and its buckets", f"moving: {evil}")
    )
    machine.write_text(text, encoding="utf-8")
    publish(copy, site, ON)
    for page in site.rglob("*.html"):
        html = page.read_text(encoding="utf-8")
        assert "<script>alert" not in html
    assert "&lt;script&gt;alert(1)&lt;/script&gt;{{ 7*7 }}" in (site / "machines" / "INT-02.html").read_text(encoding="utf-8")
