"""The labels of a machine: one a position and one for the machine, readable without a phone; the code beside it says the same to one."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING, Any

import segno
from markupsafe import Markup

from generator.mounting.sheet import Sheet
from generator.say import say
from generator.show import text

if TYPE_CHECKING:
    from generator.site.papers import Papers

# millimetres a module: half of one is read by any phone, more where labels become dirty (common practice, no source)
CLEAN, DIRTY = 0.5, 0.8


@dataclass(frozen=True)
class Label:
    """One label. `lines`: what stands under the tag; `code`: its picture; `says`: what the code says."""

    tag: str
    letter: str
    toward: str
    lines: tuple[str, ...]
    code: Markup
    says: str


def label_view(papers: Papers) -> dict[str, Any]:
    """All labels of the machine."""
    address = papers.standard.plant.typed.address
    labels = [_label(papers, None, str(address) if address else "")]
    labels += [_label(papers, sheet, str(address) if address else "") for sheet in papers.machine.sheets]
    return {"labels": labels, "issue": papers.issued.issue}


def _label(papers: Papers, sheet: Sheet | None, address: str) -> Label:
    letter = sheet.position.letter if sheet else ""
    says = f"{address.rstrip('/')}/machines/{papers.tag}.html" + (f"#{letter}" if letter else "") if address else _short(papers, letter)
    dirty = any("abrasive" in str(s.position.typed.surroundings.dust) or "heavy" in str(s.position.typed.surroundings.dust) for s in papers.machine.sheets if s.position.typed.surroundings)  # fmt: skip
    lines = tuple(_greasing(papers, sheet)) if sheet else (str(papers.machine.machine.typed.name), str(papers.machine.machine.typed.isolation.procedure))  # fmt: skip
    return Label(papers.tag, letter, _toward(papers, sheet) if sheet else "", lines, qr(says, DIRTY if dirty else CLEAN), says)


def _short(papers: Papers, letter: str) -> str:
    return " ".join(part for part in (papers.tag, letter, papers.issued.issue.split(",")[0], papers.issued.code) if part)


def qr(says: str, module: float) -> Markup:
    """A code of level Q with its quiet zone of four modules, drawn in millimetres."""
    made = segno.make(says, error="q", boost_error=False, micro=False)
    return Markup(made.svg_inline(scale=module, unit="mm", border=4, omitsize=False, title=says, svgclass="qr", lineclass=None))


def _toward(papers: Papers, sheet: Sheet) -> str:
    """Which end of its shaft it is nearest to, with an arrow as it is seen from the stated place."""
    shaft = next(one for one in papers.machine.shafts if sheet in one.sheets)
    place = shaft.sheets.index(sheet)
    first = place * 2 < len(shaft.sheets)
    end = shaft.shaft.ends[0 if first else 1]
    view = shaft.shaft.typed.viewed_from
    if str(shaft.shaft.typed.lies) == "vertical":
        arrow = "\u2191" if first else "\u2193"
    else:
        left = (view.left is None or str(view.left) == shaft.shaft.ends[0]) == first
        arrow = "\u2190" if left else "\u2192"
    return say("{arrow} {end}", arrow=arrow, end=end)


def _greasing(papers: Papers, sheet: Sheet) -> Any:
    strokes, grams, weeks = sheet.number("grease_strokes"), sheet.number("grease_dose"), sheet.number("round_weeks")
    when, feed = sheet.number("grease_when"), sheet.number("grease_feed")
    if feed is not None:
        yield say(str(feed.content))
        return
    if papers.jobs[sheet.id]["grease"].held:
        yield say("grease: HELD, see the kiosk")
        return
    if sheet.position.grease is not None:
        yield sheet.position.grease.name
    if strokes is None or grams is None or weeks is None:
        yield say("grease: HELD, see the kiosk")
        return
    yield say("{gun}: {strokes} strokes, {grams}", gun=sheet.position.gun.name if sheet.position.gun else say("gun"), strokes=text(strokes), grams=text(grams))  # fmt: skip
    running = when is not None and str(when.content) == "running"
    yield say("every {weeks}, running", weeks=text(weeks)) if running else say("every {weeks}, stopped and isolated", weeks=text(weeks))
