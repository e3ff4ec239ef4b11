"""Everything the site of a plant is made of, before any site generator sees it."""

from __future__ import annotations

import hashlib
import json
from collections.abc import Callable, Iterable, Iterator, Mapping
from dataclasses import dataclass, field, replace
from datetime import date
from pathlib import Path
from typing import Any

from markupsafe import Markup

from generator.mounting.sheet import MachineSheets, MountingStandard
from generator.mounting.standard import mounting_standard
from generator.plant.plant import Issue, Plant
from generator.plant.problems import show_problem
from generator.plant.resolve import read_plant
from generator.records.ledger import extended, standing
from generator.say import say, speak, speak_also
from generator.show import shown
from generator.site.drawings.style import style
from generator.site.drawings.warming import curves, warming
from generator.site.exercises import exercise_for, guide_value, page_reading, practice_for, term, training_rules
from generator.site.finder.index import Entry
from generator.site.finder.standard import entries_of
from generator.site.frame import Around, Page
from generator.site.kept import forget, kept
from generator.site.pages.area.page import area_view
from generator.site.pages.basis.page import basis_view
from generator.site.pages.damage.page import damage_view
from generator.site.pages.describe.page import describe_view
from generator.site.pages.documents.page import documents_view
from generator.site.pages.findings.page import findings_view
from generator.site.pages.held import held_machines
from generator.site.pages.home.page import home_view
from generator.site.pages.machine.page import machine_view
from generator.site.pages.release.page import release_view
from generator.site.pages.revisions.page import revisions_view
from generator.site.pages.round.page import round_view
from generator.site.pages.year.page import year_view
from generator.site.papers import Issued, Papers
from generator.site.render import rendered, safety_panel, slug, term_table
from generator.work.cautions import at_work, banner


class PlantRefused(Exception):
    """The plant's files cannot be taken as meant; the text is what the engineer reads. Nothing of an earlier site was touched."""


@dataclass(frozen=True)
class Site:
    """The pages, what the finder finds on them, what guides may quote, and the other files (exports), each made when it is written.

    `guide_variables` are the names a guide's text may use; each guide is also given `base`, its way to the site's root.
    """

    around: Around
    pages: Iterable[Page] = ()
    finder_entries: Iterable[Entry] = ()
    guide_variables: Mapping[str, Any] = field(default_factory=dict)
    files: Mapping[str, Callable[[], bytes]] = field(default_factory=dict)
    ledger: tuple[Issue, ...] = ()
    standard: MountingStandard | None = None


def prepare(plant_folder: Path, on: date, publishing: bool = False) -> Site:
    """Read the plant and work out its standard, as judged on a day. Raises PlantRefused before anything is written."""
    plant, problems = read_plant(plant_folder, on)
    if plant is None:
        shown_all = "\n\n".join(show_problem(problem) for problem in problems)
        raise PlantRefused(
            shown_all + "\n\n" + say("{count} problems; nothing can be published until they are mended", count=len(problems))
        )
    speak(str(plant.typed.language))
    _speak_also(plant)
    return site_of(mounting_standard(plant), publishing)


def _speak_also(plant: Plant) -> None:
    """The plant's second language beside safety messages and key terms, where it has one."""
    second = plant.second
    if second is None:
        return speak_also()
    texts = {
        "messages": {str(name): str(phrase.says) for name, phrase in second.messages.items()},
        "terms": {str(name): str(phrase.says) for name, phrase in second.terms.items()},
    }
    return speak_also(str(second.language), "rtl" if str(second.writes) == "right to left" else "ltr", texts, str(second.name))


def site_of(standard: MountingStandard, publishing: bool = False) -> Site:
    """The site of a standard. Publishing, its ledger is extended by what changed; else the ledger stays and changed sheets say so."""
    plant = standard.plant
    forget(plant)
    seen = {machine.machine.tag: texts(machine) for machine in standard.machines}
    held = held_machines(standard)
    codes = {
        machine.machine.tag: check_code(machine, seen[machine.machine.tag], held.get(machine.machine.tag, []))
        for machine in standard.machines
    }
    ledger = extended(plant.ledger, codes, plant.on) if publishing else plant.ledger
    standard = replace(standard, plant=replace(plant, ledger=ledger))
    newest = standing(ledger)
    issue = max((line.issue for line in ledger), default=0)
    around = Around(
        plant=str(plant.typed.name), issue=say("issue {issue}", issue=issue) if issue else say("not published"), on=plant.on.isoformat(),
        banner=banner(), language=str(plant.typed.language),
    )  # fmt: skip
    papers = _papers(standard, around, codes, newest)
    phones = {f"phone/{one.tag}.html": one.phone for one in papers}
    files = {"values.json": lambda: _values(seen), **phones}
    return Site(
        around,
        (*_pages(standard, around, codes, newest), *(page for one in papers for page in one.pages())),
        tuple(entries_of(standard)),
        _guide(standard, {tag: _issue_of(tag, codes, newest) for tag in codes}),
        files,
        ledger,
        standard,
    )


def texts(machine: MachineSheets) -> dict[str, str]:
    """What is shown of every value of a machine, by its identity."""
    sheets = [(one.id, one.lines) for one in (*machine.sheets, *machine.shafts)] + [(machine.machine.tag, machine.lines)]
    return {f"{identity}/{line.key}": shown(line.value).main for identity, lines in sheets for line in lines.values()}


def check_code(machine: MachineSheets, seen: Mapping[str, str], held: Iterable[Any]) -> str:
    """Six characters of a hash over what hands see on the machine's page: values, jobs held, isolation; never file and line."""
    isolation = machine.machine.typed.isolation
    words = [f"{identity}:{text}" for identity, text in seen.items()]
    words += [f"{letter}:{','.join(jobs)}" for letter, jobs, _ in held]
    words += [str(isolation.procedure), *(str(energy) for energy in isolation.energies)]
    return hashlib.sha256("\n".join(words).encode()).hexdigest()[:6].upper()


def _pages(standard: MountingStandard, around: Around, codes: Mapping[str, str], newest: Mapping[str, Issue]) -> Iterator[Page]:
    plant = standard.plant
    style_tag = style()
    yield _page("index.html", str(plant.typed.name), "home", home_view(standard), kind="home")
    areas = say("Areas"), "index.html"
    for code, area in plant.typed.areas.items():
        yield _page(f"areas/{slug(code)}.html", f"{code} {area.name}", "area", area_view(standard, str(code)), kind="kiosk", back=areas)
        yield _page(
            f"rounds/{slug(code)}.html",
            say("Lubrication round {code}", code=code),
            "round",
            round_view(standard, str(code)),
            back=(str(code), f"areas/{slug(code)}.html"),
        )
    for machine in standard.machines:
        yield _machine_page(standard, machine, around, codes, newest, style_tag)
    simple = (
        ("findings", say("Findings"), lambda: findings_view(standard)), ("release", say("What would release most"), lambda: release_view(standard)),
        ("documents", say("Documents on file"), lambda: documents_view(standard)), ("year", say("The year's plan"), lambda: year_view(standard)),
        ("basis", say("Calculation basis"), basis_view), ("describe", say("How to describe a machine"), describe_view),
        ("damage", say("Damage terms"), damage_view), ("revisions", say("Issues"), lambda: revisions_view(standard)),
    )  # fmt: skip
    for name, title, view in simple:
        yield _page(f"{name}.html", title, name, view(), back=areas)


def _page(url: str, title: str, template: str, view: Mapping[str, Any], kind: str = "desk", back: tuple[str, str] | None = None) -> Page:
    return Page(url, title, lambda: str(rendered(f"{template}/page.html", **view)), kind=kind, back=back)


def _machine_page(
    standard: MountingStandard,
    machine: MachineSheets,
    around: Around,
    codes: Mapping[str, str],
    newest: Mapping[str, Issue],
    style_tag: Markup,
) -> Page:
    tag, typed = machine.machine.tag, machine.machine.typed
    issue = _issue_of(tag, codes, newest)
    heading = Markup("<b>{}</b> {}").format(tag, str(typed.name))
    area = str(typed.area)
    return Page(
        f"machines/{tag}.html", f"{tag} {typed.name}", lambda: kept(standard.plant, machine.machine, lambda: str(style_tag) + str(rendered("machine/page.html", **machine_view(standard, machine)))) + _sheet_mark(tag, codes, newest),
        kind="machine", heading=heading, back=(area, f"areas/{slug(area)}.html"), issue=issue, foot=around.foot(codes[tag]),
    )  # fmt: skip


def _sheet_mark(tag: str, codes: Mapping[str, str], newest: Mapping[str, Issue]) -> str:
    """Which issue of the sheet a page is, for scripts that keep what is ticked under it."""
    line = newest.get(tag)
    issue = line.issue if line is not None and line.code == codes[tag] else ""
    return str(Markup('<span id="sheet" hidden data-issue="{}" data-code="{}"></span>').format(issue, codes[tag]))


def _issue_of(tag: str, codes: Mapping[str, str], newest: Mapping[str, Issue]) -> str:
    """How a machine's pages and papers are marked."""
    line = newest.get(tag)
    if line is None or line.code != codes[tag]:
        return say("not published, check {code}", code=codes[tag])
    return say("issue {issue}, {on}, check {code}", issue=line.issue, on=line.on, code=line.code)


def _papers(standard: MountingStandard, around: Around, codes: Mapping[str, str], newest: Mapping[str, Issue]) -> list[Papers]:
    return [
        Papers(standard, machine, Issued(_issue_of(tag, codes, newest), codes[tag], around.plant, around.foot(codes[tag])))
        for machine in standard.machines
        for tag in (machine.machine.tag,)
    ]


def _guide(standard: MountingStandard, issued: Mapping[str, str]) -> dict[str, Any]:
    return {
        "plant": standard.plant.typed,
        "exercise": exercise_for(standard),
        "value": guide_value(standard),
        "term": term,
        "at_work": at_work(),
        "practice": practice_for(standard),
        "training_rules": training_rules(standard),
        "safety_message": safety_panel,
        "term_table": term_table,
        "read_page": page_reading(standard, issued),
        "curve": lambda letter: Markup('<figure class="drawing">{}{}</figure>').format(
            style(), warming(curves()[letter], f"curve-{letter}")
        ),
    }


def _values(seen: Mapping[str, Mapping[str, str]]) -> bytes:
    """Every value by its identity, to compare two publications by."""
    found = {identity: text for machine in seen.values() for identity, text in machine.items()}
    return (json.dumps(found, ensure_ascii=False, indent=0, sort_keys=True) + "\n").encode()
