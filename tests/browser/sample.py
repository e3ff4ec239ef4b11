"""A small invented site: every part of a page once, in the frame, with a finder; no plant behind it."""

from __future__ import annotations

import shutil
from collections.abc import Iterator
from pathlib import Path
from types import SimpleNamespace

from jinja2 import Environment, FileSystemLoader
from markupsafe import Markup

from generator.say import say
from generator.site.finder.index import Entry, script
from generator.site.frame import Around, Frames, Page, links
from generator.site.render import environment
from generator.site.words import script_words

OVERRIDES = Path(__file__).parents[2] / "site_overrides"
AREAS = {"INT": "Intake", "WSH": "Wash and soak", "MIL": "Milling"}
WORDS = ("Bucket elevator", "Pit drag conveyor", "Cross belt", "Roller mill", "Steep screw", "Dust fan", "Pellet cooler", "Line shaft")
AROUND = Around(
    "Harrow Sample Works",
    "issue 2, 2026-03-12",
    "2026-11-25",
    "These pages give way to stricter rules. If page and machine disagree: stop.",
    links=links(),
)


def sample_site(folder: Path, machines: int = 36) -> Path:
    """The site, written into the folder."""
    shutil.copytree(OVERRIDES / "assets", folder / "assets")
    (folder / "assets" / "finder-index.js").write_text(script(entries(machines)), encoding="utf-8")
    frame = Environment(loader=FileSystemLoader(OVERRIDES)).get_template("main.html")
    frames = Frames(
        lambda root, slots: frame.render(base_url=root, slots=slots, seatbook=AROUND, _=say, script_words=script_words()), AROUND
    )
    for page in _pages(tags_of(min(machines, 36))):
        path = folder / page.url
        path.parent.mkdir(parents=True, exist_ok=True)
        path.write_text(frames.filled(page), encoding="utf-8")
    return folder


def tags_of(machines: int) -> list[str]:
    """INT-01, WSH-01, MIL-01, INT-02 ..."""
    codes = list(AREAS)
    return [f"{codes[n % len(codes)]}-{n // len(codes) + 1:02d}" for n in range(machines)]


def entries(machines: int, each: int = 4) -> Iterator[Entry]:
    """For each machine itself and its positions; then parts, a document, a glossary word, a guide, a rule and a calculation."""
    for number, tag in enumerate(tags_of(machines)):
        name = WORDS[number % len(WORDS)]
        yield Entry("machine", tag, name, f"machines/{tag}.html", (tag[:3],))
    for number, tag in enumerate(tags_of(machines)):
        for letter in "ABCDEFGHIJKLMNOPQRSTUVW"[:each]:
            yield Entry(
                "position",
                f"{tag} {letter}",
                f"Tarrow insert {number % 90 + 10}, Rowan soft",
                f"machines/{tag}.html#{letter}",
                (WORDS[number % len(WORDS)],),
            )
    yield Entry("part", "Tarrow insert 65", "INT-01 A, MIL-04 B", "machines/INT-01.html#A")
    yield Entry("document", "Tarrow 14", "Turn of the nut, metric sleeves", "documents.html#tarrow-14")
    yield Entry("word", "adapter sleeve", "A slotted wedge between shaft and ring.", "glossary.html#adapter-sleeve")
    yield Entry("guide", "Sleeve and nut", "Training", "training/t3.html", ("where hand tight is and why the load comes off first",))
    yield Entry(
        "finding", "shaft below limit", "", "findings.html#rule-shaft-below-limit", ("The seat measures less than its least diameter.",)
    )
    yield Entry("calculation", "Travel of the ring along the sleeve", "", "basis.html#nut-travel", ("nut-travel",))


def _pages(tags: list[str]) -> Iterator[Page]:
    env = environment()
    yield Page(
        "index.html",
        "Areas",
        env.from_string(_text("home")).render(count=len(tags), areas=AREAS),
        kind="home",
        heading=Markup("<b>Mounting standard</b> Harrow Sample Works"),
    )
    for code, name in AREAS.items():
        here = [tag for tag in tags if tag.startswith(code)]
        yield Page(
            f"areas/{code.lower()}.html",
            name,
            env.from_string(_text("area")).render(tags=here),
            kind="desk",
            back=("All areas", "index.html"),
        )
    for tag in tags:
        body = env.from_string(_text("machine")).render(
            cautions=_cautions(), numbers=_numbers, facts=_facts, tag=tag, columns=[f"Column {n}" for n in range(1, 10)]
        )
        heading = Markup("<b>{}</b> Cross belt to the cleaner").format(tag)
        yield Page(
            f"machines/{tag}.html",
            f"{tag} Cross belt",
            body,
            kind="machine",
            heading=heading,
            back=("Intake INT", "areas/int.html"),
            issue="issue 4, 2026-03-12, check K7Q4B2",
            foot=AROUND.foot("B2-K7Q4"),
        )


def _text(name: str) -> str:
    return (Path(__file__).parent / "sample_pages" / f"{name}.html").read_text(encoding="utf-8")


def _cautions() -> list[SimpleNamespace]:
    said = (
        ("DANGER", "Turning shaft.", "It takes a hand before you can let go.", "Lock, block, try-start."),
        ("WARNING", "Stored tension.", "The belt moves when it is let go.", "Release or block it first."),
        ("CAUTION", "Oily floor.", "You slip.", "Wipe it first."),
        ("NOTICE", "Too much torque.", "The foot cracks.", "Stop at the figure."),
    )
    return [SimpleNamespace(signal=word, hazard=hazard, harm=harm, avoid=avoid, second="") for word, hazard, harm, avoid in said]


def _box(letter: str, key: str, name: str, held: bool = False, note: str = "", **figure: str) -> SimpleNamespace:
    shown = SimpleNamespace(**{"main": "", "second": "", "lower": "", "upper": "", "unit": ""} | figure)
    rows = [
        SimpleNamespace(
            what="nut thread pitch", symbol="P", shown="2\u00a0mm", comes_from="a published table", where="library/sleeves.yml:14", link=""
        )
    ]
    reason = SimpleNamespace(
        label="",
        method="nut-travel",
        sentence="Computed",
        title="Travel of the ring",
        formula="",
        rows=rows,
        remarks=["Rests on an estimate."],
        where="",
    )
    return SimpleNamespace(anchor=f"{letter}-{key}", name=name, shown=shown, held=held, whys=[reason], beside=[], note=note)


def _numbers(letter: str) -> list[SimpleNamespace]:
    return [
        _box(
            letter,
            "turn",
            "Turn of the nut",
            main="5/8 to 3/4\u00a0turn",
            lower="5/8",
            upper="3/4",
            unit="turn",
            second="225 to 270\u00b0",
            note="Counted from the hand-tight mark.",
        ),
        _box(letter, "limits", "Shaft diameter", main="", lower="79.926", upper="80.000", unit="mm", second="3.1467 to 3.1496\u00a0in"),
        _box(letter, "base", "Base bolts", main="290\u00a0N\u00b7m", unit="N\u00b7m", second="214\u00a0lbf\u00b7ft"),
        _box(letter, "screw", "Retaining screw", held=True, main="HELD, no figure"),
        _box(letter, "feed", "Grease feed", main="stopped and isolated"),
    ]


def _facts(letter: str) -> list[SimpleNamespace]:
    return [
        _box(letter, "class", "Limits of the seat", main="h9"),
        _box(letter, "growth", "Growth of the shaft", main="1.21\u00a0mm", unit="mm", second="0.0476\u00a0in"),
        _box(letter, "left", "Clearance left", held=True, main="HELD, no figure"),
    ]
