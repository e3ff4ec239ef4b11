"""The positions of this plant on which a kind of work can be looked at and practised."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass
from typing import Any

from jinja2 import pass_context
from markupsafe import Markup

from generator.findings import held_jobs
from generator.locking import LOCKINGS, locking_of
from generator.mounting.sheet import MountingStandard, Sheet
from generator.plant.model.library import STYLES
from generator.say import say
from generator.site.exercises.lost import ExerciseLost
from generator.site.exercises.watch import ROUNDS, days_watched
from generator.site.render import rendered
from generator.value import Band, Value

MOST = 24  # more links than this are no help in choosing one


@dataclass(frozen=True)
class Kind:
    """A kind of work: which positions it is done on, and the job that must not be held there."""

    suits: Callable[[Sheet], bool]
    job: str = "put on"


def kinds() -> Mapping[str, Kind]:
    """Every kind a guide may ask for, by its word."""
    ways = {word for locking in LOCKINGS for word in (locking.WAY, locking.WORD)}
    return {
        **{way: Kind(lambda sheet, way=way: _locked(sheet, way)) for way in ways},
        **{style: Kind(lambda sheet, style=style: _housing(sheet) == style) for style in STYLES},
        **{word: Kind(lambda sheet, word=word: _body(sheet) == word) for word in ("polymer", "stainless steel")},
        **{word: Kind(lambda sheet, word=word: str(sheet.position.typed.holds) == word) for word in ("fixed", "free")},
        **{f"greased {when}": Kind(lambda sheet, when=when: _greased(sheet, when), "grease") for when in ("running", "stopped")},
        "seat measured": Kind(lambda sheet: sheet.number("seat_verdict") is not None),
        "float": Kind(lambda sheet: sheet.number("float_first") is not None),
        "rounds": Kind(lambda sheet: len(days_watched(sheet)) >= ROUNDS, ""),
        "on record": Kind(lambda sheet: bool(sheet.position.readings), ""),
    }  # fmt: skip


def practice_for(standard: MountingStandard) -> Callable[..., Markup]:
    """What a guide calls: `practice("sleeve by clearance")`. Those on which the work is not held first. Raises ExerciseLost for no kind of work."""
    known = kinds()

    @pass_context
    def practice(context: Any, word: str) -> Markup:
        if word not in known:
            raise ExerciseLost(say("a guide asks for positions to practise {word} on, which is no kind of work", word=word))
        found = [(sheet, _held(standard, sheet, known[word].job)) for machine in standard.machines for sheet in machine.sheets if known[word].suits(sheet)]  # fmt: skip
        found.sort(key=lambda one: (one[1], one[0].id))
        return rendered("practice.html", base=context["base"], positions=found[:MOST], more=len(found[MOST:]))

    return practice


def _held(standard: MountingStandard, sheet: Sheet, job: str) -> bool:
    return job in held_jobs(standard.findings, sheet.id)  # type: ignore[arg-type]


def _locked(sheet: Sheet, way: str) -> bool:
    locking = locking_of(sheet.position)
    return locking is not None and way in (locking.WAY, locking.WORD)


def _housing(sheet: Sheet) -> str:
    return str(sheet.position.housing.typed.style) if sheet.position.housing else ""


def _body(sheet: Sheet) -> str:
    return str(sheet.position.housing.typed.body.material) if sheet.position.housing else ""


def _greased(sheet: Sheet, when: str) -> bool:
    said = sheet.number("grease_when")
    return isinstance(sheet.value("grease_strokes"), Value | Band) and said is not None and str(said.content) == when
