"""The jobs of a position made ready for a page: numbered steps with their message, figures as links to the values they state."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass

from generator.mounting.sheet import Sheet
from generator.safety import Message, message
from generator.say import say
from generator.site.render import slug
from generator.steps import Figure, Item, Procedure, Sign, Step, Told


@dataclass(frozen=True)
class FigureView:
    """A figure inside a sentence, and the value on the page it is."""

    key: str
    text: str
    held: bool
    href: str


Sentence = tuple[str | FigureView, ...]


@dataclass(frozen=True)
class TroubleView:
    """What is seen, and the way out."""

    seen: str
    do: Sentence


@dataclass(frozen=True)
class StepView:
    """One step on the page. `number`: of a stop, S0 to S8; "" for a step."""

    anchor: str
    count: int
    act: str = ""
    does: Sentence = ()
    check: Sentence = ()
    troubles: tuple[TroubleView, ...] = ()
    message: Message | None = None
    quotes: tuple[str, ...] = ()
    picture: str = ""
    number: str = ""
    what: Sentence = ()
    second: bool = True


@dataclass(frozen=True)
class JobView:
    """One job: its key and name, where it stands on the page, why it is held or has no steps, and its steps by stage."""

    key: str
    name: str
    anchor: str
    held: tuple[str, ...]
    refused: str
    stages: Mapping[str, tuple[StepView, ...]]

    @property
    def open(self) -> bool:
        """Whether it may be done now."""
        return not self.held and not self.refused

    @property
    def items(self) -> tuple[StepView, ...]:
        """All steps and stops in order."""
        return tuple(item for items in self.stages.values() for item in items)


def job_names() -> dict[str, str]:
    """The jobs as the crew calls them, on a touch field."""
    return {
        "put on": say("Put on"),
        "take off": say("Take off"),
        "grease": say("Grease"),
        "inspect": say("Inspect"),
        "run in": say("Run in"),
    }


ANCHORS = {"put on": "put-on", "take off": "take-off", "grease": "grease-job", "inspect": "inspect", "run in": "run-in"}


def job_views(sheet: Sheet, jobs: Mapping[str, Procedure], linked: bool = True) -> dict[str, JobView]:
    """The jobs of one position, by key. `linked`: whether each figure leads to its value; else only those a hand sets."""
    keys = frozenset(key for key, line in sheet.lines.items() if linked or line.by_hand)
    return {key: _job(sheet, procedure, keys) for key, procedure in jobs.items()}


def _job(sheet: Sheet, procedure: Procedure, keys: frozenset[str]) -> JobView:
    letter, key = sheet.position.letter, procedure.job
    numbered = list(_numbered(sheet, keys, f"{letter}-{slug(key)}", procedure.items))
    stages = {
        stage: tuple(view for view, item in zip(numbered, procedure.items, strict=True) if item.stage == stage)
        for stage in procedure.stages
    }
    return JobView(key, job_names()[key], f"{letter}-{ANCHORS[key]}", procedure.held, procedure.refused, stages)


def _numbered(sheet: Sheet, keys: frozenset[str], prefix: str, items: tuple[Item, ...]) -> Iterator[StepView]:
    count = 0
    for item in items:
        if isinstance(item, Sign):
            yield StepView(
                f"{prefix}-{item.number.lower()}", count, number=item.number, what=_sentence(sheet, keys, item.what), second=item.second
            )
        else:
            count += 1
            yield _step(sheet, keys, f"{prefix}-{count}", count, item)


def _step(sheet: Sheet, keys: frozenset[str], anchor: str, count: int, item: Step) -> StepView:
    caution = message(item.caution, **dict(item.caution_facts)) if item.caution else None
    return StepView(
        anchor,
        count,
        item.act,
        _sentence(sheet, keys, item.does),
        _sentence(sheet, keys, item.check) if item.check else (),
        tuple(TroubleView(trouble.seen, _sentence(sheet, keys, trouble.do)) for trouble in item.troubles),
        caution,
        item.quotes,
        item.picture,
    )


def _sentence(sheet: Sheet, keys: frozenset[str], told: Told) -> Sentence:
    return tuple(_figure(sheet, keys, part) if isinstance(part, Figure) else part for part in told.parts)


def _figure(sheet: Sheet, keys: frozenset[str], figure: Figure) -> FigureView:
    href = f"{sheet.position.letter}-{figure.key}" if figure.key in keys else ""
    return FigureView(figure.key, figure.text, figure.held, href)
