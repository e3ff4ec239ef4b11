"""A plant folder is closed: nothing outside it is read, whatever a file in it points at."""

from __future__ import annotations

from pathlib import Path

import pytest

from generator.plant.load import load
from generator.plant.problems import Problems

PLANT = "name: Tarnholt Pulse Works\nlanguage: en\nunits: metric\nreading_step: 0.001 mm\nareas: {INT: {name: Intake}}\n"


@pytest.mark.parametrize("name", ["accepted.yml", "library/tools.yml", "machines/INT-05.yml", "library/documents/orvane-14.yml"])
def test_a_link_that_leaves_the_folder_is_refused(tmp_path: Path, name: str) -> None:
    outside = tmp_path / "outside.yml"
    outside.write_text("secret: of another plant\n")
    folder = tmp_path / "plant"
    (folder / name).parent.mkdir(parents=True)
    (folder / "plant.yml").write_text(PLANT)
    (folder / name).symlink_to(outside)
    problems = Problems(folder)
    load(folder, problems)
    assert [(p.place.file, p.wrong) for p in problems.found] == [(name, "the file leads out of the plant folder")]
    # the line of the file outside is not shown either
    assert problems.found[0].line_text == ""


def test_a_folder_of_plain_files_is_read(tmp_path: Path) -> None:
    (tmp_path / "plant.yml").write_text(PLANT)
    (tmp_path / "accepted.yml").write_text("")
    problems = Problems(tmp_path)
    files = load(tmp_path, problems)
    assert problems.found == ()
    assert files.plant is not None and str(files.plant.name) == "Tarnholt Pulse Works"
