"""Publishing, whole: read, compute, build aside, verify, compare, put in place. Whatever fails before the last step leaves the old site as it was."""

from __future__ import annotations

import gc
import json
import logging
import os
from collections.abc import Callable
from dataclasses import dataclass
from datetime import date
from pathlib import Path
from typing import Any

from generator.publish.place import aside, put_in_place
from generator.publish.refusal import NotPublished
from generator.publish.verify import verify
from generator.records.ledger import NAME, written
from generator.say import say
from generator.site.build import PlantRefused, Site, prepare

HOUSE = Path(__file__).parents[2]


@dataclass(frozen=True)
class Publication:
    """What was put in place: where, which issue, how many pages, and what changed against the one before."""

    site: Path
    issue: int
    pages: int
    machines: int
    changed: tuple[str, ...]

    def as_text(self) -> str:
        """For the engineer."""
        changed = (
            say("{count} values changed against the site before: {some}", count=len(self.changed), some=", ".join(self.changed[:8]))
            if self.changed
            else say("no value changed against the site before")
        )
        return "\n".join(
            (
                say("issue {issue}: {machines} machines, {pages} pages", issue=self.issue, machines=self.machines, pages=self.pages),
                changed,
                say("open {path}", path=(self.site / "index.html").as_uri()),
            )
        )


def publish(folder: Path, site: Path, on: date, say_progress: Callable[[str], None] = lambda _: None) -> Publication:
    """Publish the plant in a folder to a site. Raises NotPublished; the site in place is then byte for byte as it was."""
    # a plant is millions of small values that live to the end: looking for dead ones among them costs a fifth of the time
    gc.disable()
    try:
        return _published(folder, site, on, say_progress)
    finally:
        gc.enable()


def _published(folder: Path, site: Path, on: date, say_progress: Callable[[str], None]) -> Publication:
    say_progress(say("reading {folder}, judged on {on}", folder=folder, on=on))
    try:
        prepared = prepare(folder.absolute(), on, publishing=True)
    except PlantRefused as refused:
        raise NotPublished(str(refused)) from refused
    assert prepared.standard is not None
    tags = [machine.machine.tag for machine in prepared.standard.machines]
    say_progress(say("{count} machines worked out; building aside", count=len(tags)))
    with aside(site) as building:
        _build(building, prepared, on, folder.absolute())
        say_progress(say("verifying links, completeness, and that nothing leads off the machine"))
        pages = verify(building, [f"machines/{tag}.html" for tag in tags] + ["index.html", "findings.html", "basis.html"])
        changed = _changes(site, building)
        issue = max((line.issue for line in prepared.ledger), default=0)
        _keep_ledger(folder, prepared)
        put_in_place(building, site, f"issue-{issue:04d}-{on.isoformat()}")
    return Publication(site, issue, pages, len(tags), changed)


def _build(building: Path, prepared: Site, on: date, folder: Path) -> None:
    os.environ.setdefault("NO_MKDOCS_2_WARNING", "1")
    os.environ.setdefault("SOURCE_DATE_EPOCH", "0")
    from mkdocs.commands.build import build
    from mkdocs.config import load_config
    from mkdocs.exceptions import Abort, MkDocsException

    logging.getLogger("mkdocs").setLevel(logging.ERROR)
    try:
        config: Any = load_config(str(HOUSE / "mkdocs.yml"), site_dir=str(building))
        plugin = config.plugins["seatbook"]
        plugin.config["plant"], plugin.config["on"] = str(folder), on.isoformat()
        plugin.prepared = prepared
        build(config)
    except (MkDocsException, Abort, ValueError, OSError) as failed:
        raise NotPublished(say("the site could not be built: {why}", why=failed)) from failed


def _changes(site: Path, building: Path) -> tuple[str, ...]:
    """The identities whose shown value differs between the site in place and the new one."""
    try:
        old = json.loads((site / "values.json").read_text(encoding="utf-8"))
    except (OSError, ValueError):
        return ()
    new = json.loads((building / "values.json").read_text(encoding="utf-8"))
    return tuple(sorted(key for key in old.keys() | new.keys() if old.get(key) != new.get(key)))


def _keep_ledger(folder: Path, prepared: Site) -> None:
    """The ledger is written whole beside itself first, so that it is never half a ledger."""
    text, path = written(prepared.ledger), folder / NAME
    if path.is_file() and path.read_text(encoding="utf-8") == text:
        return
    try:
        beside = path.with_suffix(".new")
        beside.write_text(text, encoding="utf-8")
        os.replace(beside, path)  # noqa: PTH105
    except OSError as refused:
        raise NotPublished(say("the ledger {path} could not be written", path=path), say("the site in place is as it was")) from refused
