"""Training: six questions a module with one right answer, answers from the plant's own values, and a stop where a machine is gone."""

from __future__ import annotations

import re
from datetime import date
from pathlib import Path

import pytest
from jinja2 import Environment

from generator.mounting.standard import mounting_standard
from generator.plant.resolve import read_plant
from generator.site.exercises import ExerciseLost, exercise_for
from generator.site.exercises_of_work import practice_for
from tests.copies import copy_of_demo

DOCS = Path(__file__).parents[2] / "docs_src" / "training"
MODULES = sorted(DOCS.glob("t[0-9]*.md"))
ON = date(2026, 11, 25)


@pytest.mark.parametrize("path", MODULES, ids=lambda path: path.stem)
def test_a_module_asks_six_questions_with_one_right_answer_of_three_each(path: Path) -> None:
    text = path.read_text(encoding="utf-8")
    number = re.match(r"t(\d+)", path.stem)
    assert number
    for question in range(1, 7):
        choices = re.findall(rf'<details class="choice" name="t{number[1]}-{question}">.*?<b>(\w+)\.</b>', text)
        assert sorted(choices) == ["No", "No", "Right"], (path.name, question)
    assert "| task | seen done | did with help | did alone | did alone twice | date | initials of both |" in text
    assert "{{ exercise(" in text or path.stem.startswith("t0")


def test_the_right_answer_is_not_always_in_the_same_place() -> None:
    for path in MODULES:
        text = path.read_text(encoding="utf-8")
        places = {re.findall(r"<b>(\w+)\.</b>", block).index("Right") for block in re.split(r"\*\*\d\. ", text)[1:] if "<b>Right" in block}
        assert len(places) > 1, path.name


def test_there_are_twelve_modules_and_the_way_leads_to_each() -> None:
    index = (DOCS / "index.md").read_text(encoding="utf-8")
    assert [path.stem.split("-")[0] for path in sorted(MODULES, key=lambda p: int(p.stem[1:].split("-")[0]))] == [
        f"t{n}" for n in range(12)
    ]
    assert all(f"({path.name})" in index for path in (*MODULES, DOCS / "read-a-page.md", DOCS / "sign-off.md"))


def answer(topic: str, *edits: tuple[str, str, str], folder: Path) -> str:
    """The exercise as the demo plant gives it, changed."""
    copy = folder / "plant"
    copy_of_demo(copy)
    for file, old, new in edits:
        path = copy / file
        text = path.read_text(encoding="utf-8")
        assert old in text
        path.write_text(text.replace(old, new), encoding="utf-8")
    plant, problems = read_plant(copy, ON)
    assert plant, [str(p) for p in problems]
    call = (
        Environment().from_string("{{ exercise(topic) }}").render(exercise=exercise_for(mounting_standard(plant)), topic=topic, base="..")
    )
    return re.sub(r"<[^>]*>", " ", call).replace("\u00a0", " ")


@pytest.mark.parametrize(
    ("topic", "wanted"),
    [
        # growth of carbon steel 12e-6/K (handbook value) x 3200 mm x (115 - 20) K = 3.648 mm
        ("growth", "3.65 mm"),
        # 0.005 D B (common practice, no source): 0.005 x 160 x 40 = 32 g; 32 / 1.35 g a stroke = 23.7, 24 whole strokes
        ("grease", "24"),
        # n dm: 2950 r/min x (50 + 90) / 2 mm = 206 500 mm/min (definition of the speed factor)
        ("speed", "206500"),
        # (0.045 + 0.030) mm / (12e-6/K x 75 mm) = 83.3 K over 20 degC
        ("heat", "103.3 °C"),
        # atan(14 / 1200) = 0.668 degrees
        ("bolts", "0.668°"),
        # clearance of ISO 5753-1 group 3 at bore 90: 110 to 140 um (from memory); 0.110 - 0.060 = 0.050 mm left
        ("roller", "0.050 mm"),
    ],
)
def test_an_answer_is_that_of_the_published_formula(topic: str, wanted: str, tmp_path: Path) -> None:
    assert wanted in answer(topic, folder=tmp_path)


def test_an_edited_plant_marks_its_own_exercise_anew(tmp_path: Path) -> None:
    # 12e-6/K x 3200 mm x (95 - 20) K = 2.88 mm
    assert "2.88 mm" in answer("growth", ("machines/DRY-01.yml", "shaft: 115 degC", "shaft: 95 degC"), folder=tmp_path)


def test_a_machine_without_the_values_fails_the_build_instead_of_a_stale_answer(tmp_path: Path) -> None:
    with pytest.raises(ExerciseLost, match="heat"):
        answer("heat", ("plant.yml", "heat: MIL-01/A", "heat: INT-02/A"), folder=tmp_path)


def test_practice_lists_what_is_not_held_first(tmp_path: Path) -> None:
    copy_of_demo(tmp_path / "plant")
    plant, _ = read_plant(tmp_path / "plant", ON)
    assert plant
    listed = re.findall(r">([A-Z]+-\d+ [A-Z])</a>( \(HELD\))?", str(practice_for(mounting_standard(plant))("sleeve by turn")))
    held = [bool(mark) for _, mark in listed]
    assert len(listed) == 8 and held == sorted(held)
