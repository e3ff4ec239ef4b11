"""Exercises of the training pages, worked on machines of this plant: question, given values, and the answer from the same values as the pages."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from typing import Any

from jinja2 import pass_context
from markupsafe import Markup

from generator.mounting.sheet import MountingStandard, ShaftSheet, Sheet
from generator.say import say
from generator.show import shown
from generator.site.exercises_of_work import OF_WORK
from generator.site.render import rendered, slug


class ExerciseLost(ValueError):
    """An exercise names a machine or position that is no more, or whose values are withheld: its answer would be stale."""


def exercise_for(standard: MountingStandard) -> Callable[..., Markup]:
    """What a guide calls: `exercise("nut")`. Raises ExerciseLost where the plant names something that is not there."""
    chosen = {str(topic): str(on) for topic, on in (standard.plant.typed.training or {}).items()}

    @pass_context
    def exercise(context: Any, topic: str) -> Markup:
        makers = {"isolation": _isolation, "sheet": _sheet, "shaft": _shaft, "nut": _nut, "collar": _collar, **OF_WORK}
        wanted = chosen.get(topic, "")
        for facts in makers[topic](standard, wanted):
            return rendered("exercise.html", base=context["base"], topic=topic, **facts)
        if wanted:
            raise ExerciseLost(say("plant.yml: training: {topic}: {on} has no values for this exercise", topic=topic, on=wanted))
        return Markup("<p>{}</p>").format(say("No machine of this plant suits this exercise yet."))

    return exercise


def guide_value(standard: MountingStandard) -> Callable[[str], Markup]:
    """What a guide calls to quote a value: `value("INT-02/A/nut_turn")`. Raises ExerciseLost for one that is not there."""

    def value(identity: str) -> Markup:
        position, _, key = identity.rpartition("/")
        sheet = standard.sheet(position)
        known = sheet.value(key) if sheet else None
        if known is None:
            raise ExerciseLost(say("a guide quotes {identity}, which this plant does not have", identity=identity))
        return Markup('<span class="u">{}</span>').format(shown(known, str(standard.plant.typed.units)).main)

    return value


@pass_context
def term(context: Any, word: str) -> Markup:
    """A link to a word of the glossary."""
    return Markup('<a href="{}/glossary.html#{}">{}</a>').format(context["base"], slug(word), word)


def _isolation(standard: MountingStandard, wanted: str) -> Iterator[dict[str, Any]]:
    for machine in standard.machines:
        if wanted in ("", machine.machine.tag):
            isolation = machine.machine.typed.isolation
            energies = [str(energy) for energy in isolation.energies]
            yield {
                "at": machine.machine.tag,
                "anchor": "",
                "question": say("Name every energy of {tag} and say how each is proven gone.", tag=machine.machine.tag),
                "given": [],
                "answer": [
                    say("By {procedure}: {energies}.", procedure=isolation.procedure, energies=", ".join(energies)),
                    say("Each is proven where it acts: try to start, look, feel from a safe place, read the gauge."),
                ],
            }


def _sheet(standard: MountingStandard, wanted: str) -> Iterator[dict[str, Any]]:
    for _, shaft in _shafts(standard, wanted):
        fixed = [s.position.letter for s in shaft.sheets if str(s.position.typed.holds) == "fixed"]
        if len(shaft.sheets) < 2 or not fixed:
            continue
        grows = shaft.lines.get("growth")
        answer = [say("Fixed: {letters}. It holds the shaft; growth goes away from it.", letters=", ".join(fixed))]
        if grows is not None:
            answer.append(say("{name}: {value}.", name=grows.name, value=shown(grows.value).main))
        yield {
            "at": shaft.shaft.tag,
            "anchor": fixed[0],
            "question": say(
                "Find the fixed unit of the {shaft} of {tag}, and say where its growth goes.",
                shaft=shaft.shaft.typed.name,
                tag=shaft.shaft.tag,
            ),
            "given": [],
            "answer": answer,
        }


def _shaft(standard: MountingStandard, wanted: str) -> Iterator[dict[str, Any]]:
    for sheet in _sheets(standard, wanted):
        limits, verdict = sheet.band("shaft_limits"), sheet.number("seat_verdict")
        if not limits or not verdict:
            continue
        readings = [r for r in sheet.position.readings if r.quantity.startswith("seat diameter")]
        last = [r for r in readings if r.record == readings[-1].record]
        given = [(r.quantity, shown(r.value).main) for r in last] + [
            (sheet.lines["out_of_round"].name, shown(sheet.lines["out_of_round"].value).main)
        ]
        spread = sheet.lines["seat_taper_found"]
        answer = [
            say("Limits: {limits}.", limits=shown(limits).main),
            say("{name}: {value}.", name=spread.name, value=shown(spread.value).main),
            say("Verdict: {verdict}.", verdict=say(str(verdict.content))),
        ]
        yield {
            "at": sheet.position.tag,
            "anchor": sheet.position.letter,
            "question": say("These are the readings of the seat at {id}. Is size inside? Is form inside?", id=sheet.id),
            "given": given,
            "answer": answer,
        }


def _nut(standard: MountingStandard, wanted: str) -> Iterator[dict[str, Any]]:
    for sheet in _sheets(standard, wanted):
        turn, travel = sheet.band("nut_turn"), sheet.band("nut_travel")
        if not turn or not travel:
            continue
        given = [(sheet.lines[key].name, shown(sheet.lines[key].value).main) for key in ("lock_thread", "nut_turn")]
        answer = [
            say("{name}: {value}.", name=sheet.lines[key].name, value=shown(sheet.lines[key].value).main)
            for key in ("nut_degrees", "nut_slots", "nut_travel", "shift_toward")
            if key in sheet.lines
        ]
        yield {
            "at": sheet.position.tag,
            "anchor": sheet.position.letter,
            "question": say(
                "How many slots is the nut of {id} turned, how far does it travel, and which way does the housing move?", id=sheet.id
            ),
            "given": given,
            "answer": answer,
        }


def _collar(standard: MountingStandard, wanted: str) -> Iterator[dict[str, Any]]:
    for machine, shaft in _shafts(standard, wanted):
        with_collar = [s for s in shaft.sheets if s.number("collar_turn") is not None]
        if not with_collar:
            continue
        given = [(say("turns, looking along from the {end}", end=shaft.shaft.ends[0]), say(str(shaft.shaft.typed.turns)))]
        answer = [
            say("{letter}, seen from its own collar side: {way}.", letter=s.position.letter, way=say(str(s.number("collar_turn").content)))
            for s in with_collar
        ]  # type: ignore[union-attr]
        yield {
            "at": machine,
            "anchor": with_collar[0].position.letter,
            "question": say("Draw the arrow on the collar of each unit of {tag}, as you see it standing before the collar.", tag=machine),
            "given": given,
            "answer": answer,
        }


def _shafts(standard: MountingStandard, wanted: str) -> Iterator[tuple[str, ShaftSheet]]:
    for machine in standard.machines:
        if wanted in ("", machine.machine.tag):
            yield from ((machine.machine.tag, shaft) for shaft in machine.shafts)


def _sheets(standard: MountingStandard, wanted: str) -> Iterator[Sheet]:
    for machine in standard.machines:
        yield from (sheet for sheet in machine.sheets if wanted in ("", sheet.id, machine.machine.tag))
