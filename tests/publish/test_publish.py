"""Publishing puts a whole, verified site in place in one step, and keeps a ledger of what changed."""

from __future__ import annotations

import shutil
from datetime import date
from pathlib import Path

import pytest

from generator.publish.publish import publish
from generator.publish.refusal import NotPublished
from generator.publish.verify import verify
from tests.copies import copy_of_demo

PLANT = Path(__file__).parents[2] / "plant_data"
ON = date(2026, 11, 25)


@pytest.fixture
def copy(tmp_path: Path) -> Path:
    folder = tmp_path / "plant"
    copy_of_demo(folder)
    return folder


def test_the_same_plant_on_the_same_day_is_the_same_bytes(copy: Path, tmp_path: Path) -> None:
    publish(copy, tmp_path / "one", ON)
    publish(copy, tmp_path / "two", ON)
    names = sorted(p.relative_to(tmp_path / "one") for p in (tmp_path / "one").rglob("*") if p.is_file())
    assert names
    assert all((tmp_path / "one" / n).read_bytes() == (tmp_path / "two" / n).read_bytes() for n in names)


def test_a_changed_figure_is_a_new_issue_of_that_machine_alone(copy: Path, tmp_path: Path) -> None:
    before = (copy / "ledger.csv").read_text().splitlines()
    document = copy / "library" / "documents" / "selkorne-2.yml"
    document.write_text(document.read_text().replace("least: 22 N.m, most: 25 N.m", "least: 22 N.m, most: 24 N.m"), encoding="utf-8")
    done = publish(copy, tmp_path / "site", date(2026, 11, 26))
    added = (copy / "ledger.csv").read_text().splitlines()[len(before) :]
    assert [line.split(",")[2] for line in added] == ["WSH-04"]
    assert done.issue == 2


def test_a_comment_voids_no_paper(copy: Path, tmp_path: Path) -> None:
    before = (copy / "ledger.csv").read_bytes()
    machine = copy / "machines" / "WSH-04.yml"
    machine.write_text("# seen again\n" + machine.read_text(), encoding="utf-8")
    publish(copy, tmp_path / "site", ON)
    assert (copy / "ledger.csv").read_bytes() == before


def test_a_folder_that_is_not_ours_is_never_replaced(copy: Path, tmp_path: Path) -> None:
    site = tmp_path / "site"
    site.mkdir()
    (site / "mine.txt").write_text("mine")
    with pytest.raises(NotPublished):
        publish(copy, site, ON)
    assert (site / "mine.txt").read_text() == "mine"


def test_a_dead_link_or_an_outside_one_is_not_published(tmp_path: Path) -> None:
    (tmp_path / "index.html").write_text('<a href="gone.html">x</a><img src="https://example.org/x.png"><a href="#nowhere">y</a>')
    with pytest.raises(NotPublished) as refused:
        verify(tmp_path, ["index.html", "machines/A.html"])
    for words in ("gone.html", "example.org", "#nowhere", "machines/A.html"):
        assert words in refused.value.wrong


def test_one_edit_after_another_gives_the_bytes_of_a_full_build(copy: Path, tmp_path: Path) -> None:
    publish(copy, tmp_path / "site", ON)
    machine = copy / "machines" / "WSH-04.yml"
    machine.write_text(machine.read_text().replace("speed: 110 rpm", "speed: 112 rpm"), encoding="utf-8")
    publish(copy, tmp_path / "site", ON)
    shutil.rmtree(copy / ".seatbook")
    publish(copy, tmp_path / "full", ON)
    names = sorted(p.relative_to(tmp_path / "full") for p in (tmp_path / "full").rglob("*") if p.is_file())
    assert [n for n in names if (tmp_path / "site" / n).read_bytes() != (tmp_path / "full" / n).read_bytes()] == []
