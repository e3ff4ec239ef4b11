"""Markup and script typed into every text that is not a name of something else come out as text, on every page."""

from __future__ import annotations

import re
from datetime import date
from pathlib import Path
from typing import Any

import yaml

from generator.publish.publish import publish
from tests.copies import copy_of_demo

PLANT = Path(__file__).parents[2] / "plant_data"
EVIL = "<script>alert(1)</script><img src=x onerror=alert(2)>{{ 7*7 }}&lt"
# the free texts of every kind of file; names that must resolve are changed everywhere at once below
TEXTS = frozenset({
    "ask", "says", "because", "approved_by", "by", "moving", "note", "procedure", "title", "kept", "engineer", "counts_from", "stores", "seen",
    "torque_from", "flange_order", "revision",
})  # fmt: skip
# `by` is a closed word where it says how a ring is locked or how a unit floats
CLOSED_BY = frozenset({
    "set screws", "eccentric collar", "clamp collar", "ring loose in its housing", "pin in a grooved shaft", "guided frame",
    "sliding cartridge", "clearance inside the bearing",
})  # fmt: skip
NAMES = frozenset({
    "Tarnholt Pulse Works", "walkway", "head shaft", "Bucket elevator", "Intake", "drive side", "Orvane block unit 65", "Orvane block 65",
    "Thessaryn Rowan", "gun 3", "rule 3", "Orvane 14", "Selkorne", "counterweight", "electric drive", "wrench 1",
})  # fmt: skip


def hurt(node: Any, key: str = "") -> Any:
    """The tree with markup in every free text, and in the names wherever they stand."""
    if isinstance(node, dict):
        return {hurt(name): hurt(value, str(name)) for name, value in node.items()}
    if isinstance(node, list):
        return [hurt(one) for one in node]
    if node in NAMES:
        return f"{node} <u class=evil>{EVIL}"
    return f"{EVIL} {key}" if key in TEXTS and node not in CLOSED_BY else node


def test_markup_in_every_text_is_text_on_every_page(tmp_path: Path) -> None:
    copy, site = tmp_path / "plant", tmp_path / "site"
    copy_of_demo(copy)
    for path in copy.rglob("*.yml"):
        tree = yaml.load(path.read_text(encoding="utf-8"), Loader=yaml.BaseLoader)
        path.write_text(yaml.safe_dump(hurt(tree), default_style='"', width=10_000, allow_unicode=True, sort_keys=False), encoding="utf-8")
    for path in (copy / "records").glob("*.csv"):
        rows = path.read_text(encoding="utf-8").splitlines()
        path.write_text(
            "\n".join([rows[0], *(re.sub(r",([^,]*),([^,]*)$", rf",{EVIL},{EVIL}", row) for row in rows[1:])]) + "\n", encoding="utf-8"
        )
    publish(copy, site, date(2026, 11, 25))
    pages = list(site.rglob("*.html"))
    assert len(pages) > 50
    for page in pages:
        html = page.read_text(encoding="utf-8")
        assert "<script>alert" not in html and "<img src=x" not in html and "<u class=evil" not in html, page.name
    whole = "".join(page.read_text(encoding="utf-8") for page in pages)
    assert whole.count("&lt;script&gt;alert(1)&lt;/script&gt;") > 500
    assert "{{ 7*7 }}" in whole and "&amp;lt" in whole
