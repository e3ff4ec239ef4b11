"""A plain `mkdocs build` writes our pages into the frame, and nothing of the theme's own beside them."""

from __future__ import annotations

from datetime import date
from pathlib import Path

import pytest
from mkdocs.commands.build import build
from mkdocs.config import load_config
from mkdocs.exceptions import Abort

from generator.site import plugin
from generator.site.build import PlantRefused, Site
from generator.site.finder.index import Entry
from generator.site.frame import Around, Page

ROOT = Path(__file__).parents[2]
GUIDE = "# Before hands\n\nAsk {{ who }}.\n\n## Isolate\n\nLock it. [Machine](../machines/INT-02.html)\n"


def site(_: Path, on: date) -> Site:
    """A site of two pages."""
    pages = (
        Page("index.html", "Areas", "<p>start</p>", kind="home"),
        Page("machines/INT-02.html", "INT-02", lambda: "<p>machine</p>", back=("Intake", "index.html")),
    )
    entries = (Entry("machine", "INT-02", "Cross belt", "machines/INT-02.html"),)
    around = Around("Harrow", issue="issue 2", on=on.isoformat(), banner="Stricter rules rule.")
    return Site(around, pages, entries, {"who": "<the engineer>"}, {"exports/values.json": lambda: b"{}"})


@pytest.fixture
def built(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    """The site, built by MkDocs with the configuration of the repository."""
    monkeypatch.setattr(plugin, "prepare", site)
    docs = tmp_path / "docs"
    (docs / "training").mkdir(parents=True)
    (docs / "index.md").write_text("# Placeholder\n")
    (docs / "training" / "index.md").write_text(GUIDE)
    config = load_config(str(ROOT / "mkdocs.yml"), docs_dir=str(docs), site_dir=str(tmp_path / "site"))
    config.plugins["seatbook"].config["on"] = "2026-11-25"
    config.plugins.on_startup(command="build", dirty=False)
    build(config)
    return tmp_path / "site"


def test_every_file_of_the_site_is_ours(built: Path) -> None:
    assets = {f"assets/{path.name}" for path in (ROOT / "site_overrides" / "assets").iterdir()}
    assert {path.relative_to(built).as_posix() for path in built.rglob("*") if path.is_file()} == assets | {
        "assets/finder-index.js",
        "exports/values.json",
        "index.html",
        "machines/INT-02.html",
        "training/index.html",
    }


def test_a_page_stands_in_the_frame(built: Path) -> None:
    html = (built / "machines" / "INT-02.html").read_text()
    assert "<p>machine</p>" in html
    assert "Stricter rules rule." in html
    assert "Harrow, mounting standard, issue 2, judged on 2026-11-25." in html
    assert 'href="../assets/seatbook.css"' in html
    assert 'href="../training/index.html"' in html


def test_the_foot_leads_only_to_pages_that_are_there(built: Path) -> None:
    assert "glossary.html" not in (built / "index.html").read_text()


def test_a_made_page_takes_the_place_of_a_guide_of_the_same_address(built: Path) -> None:
    assert "<p>start</p>" in (built / "index.html").read_text()


def test_a_guide_quotes_values_and_they_are_escaped(built: Path) -> None:
    html = (built / "training" / "index.html").read_text()
    assert "Ask &lt;the engineer&gt;." in html
    assert 'href="../machines/INT-02.html"' in html


def test_the_finder_knows_pages_and_guides(built: Path) -> None:
    index = (built / "assets" / "finder-index.js").read_text()
    assert '"INT-02","Cross belt","machines/INT-02.html"' in index
    assert '"Isolate","Before hands","training/index.html#isolate","Lock it. Machine"' in index


def test_nothing_is_asked_of_another_computer(built: Path) -> None:
    for path in built.rglob("*"):
        if path.suffix in (".html", ".css", ".js"):
            text = path.read_text().replace("http://www.w3.org/2000/svg", "")  # the name of SVG, which nobody fetches
            assert "http:" not in text, path
            assert "https:" not in text, path


def test_a_refused_plant_leaves_the_old_site_untouched(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, caplog: pytest.LogCaptureFixture
) -> None:
    def refuse(_: Path, on: date) -> Site:
        raise PlantRefused(f"machines/INT-02.yml:3: no such bearing ({on})")

    monkeypatch.setattr(plugin, "prepare", refuse)
    old = tmp_path / "site" / "index.html"
    old.parent.mkdir()
    old.write_text("old")
    config = load_config(str(ROOT / "mkdocs.yml"), site_dir=str(tmp_path / "site"))
    config.plugins["seatbook"].config["on"] = "2026-11-25"
    with pytest.raises(Abort):
        build(config)
    assert "machines/INT-02.yml:3: no such bearing (2026-11-25)" in caplog.text
    assert old.read_text() == "old"
