"""The house keeps its own rules: sizes, commands in README, variants tested in the demo, layers."""

from __future__ import annotations

import ast
import subprocess
import sys
from pathlib import Path

import pytest

from generator.cli import main
from generator.housings import HOUSINGS
from generator.locking import LOCKINGS
from generator.plant.resolve import read_plant

HOUSE = Path(__file__).parents[1]
SOURCES = sorted((HOUSE / "generator").rglob("*.py"))


@pytest.mark.parametrize("path", SOURCES, ids=lambda p: str(p.relative_to(HOUSE)))
def test_no_file_is_over_300_lines_and_no_function_over_40(path: Path) -> None:
    text = path.read_text(encoding="utf-8")
    assert text.count("\n") <= 300
    for node in ast.walk(ast.parse(text)):
        if isinstance(node, ast.FunctionDef):
            assert (node.end_lineno or 0) - node.lineno < 41, node.name


@pytest.mark.parametrize("command", sorted(main.commands))
def test_every_command_has_its_line_in_the_readme(command: str) -> None:
    assert f"seatbook {command}" in (HOUSE / "README.md").read_text(encoding="utf-8")


def test_the_layers_hold() -> None:
    done = subprocess.run([str(Path(sys.executable).parent / "lint-imports")], cwd=HOUSE, capture_output=True, text=True, check=False)
    assert done.returncode == 0, done.stdout


def test_every_way_of_locking_and_every_style_of_housing_stands_in_the_demo_plant() -> None:
    from datetime import date

    plant, _ = read_plant(HOUSE / "plant_data", date(2026, 11, 25))
    assert plant
    positions = [p for m in plant.machines for p in m.positions]
    assert all(any(locking.suits(p) for p in positions) for locking in LOCKINGS)
    assert {str(p.housing.typed.style) for p in positions if p.housing} == {style.word for style in HOUSINGS}
