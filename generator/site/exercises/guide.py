"""What a guide calls: an exercise, a value, a word of the glossary."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping
from dataclasses import asdict
from typing import Any

from jinja2 import pass_context
from markupsafe import Markup

from generator.mounting.sheet import MountingStandard
from generator.say import say
from generator.show import shown
from generator.site.exercises.bolts import bolts
from generator.site.exercises.grease import grease, speed
from generator.site.exercises.growth import growth
from generator.site.exercises.heat import heat
from generator.site.exercises.isolation import isolation
from generator.site.exercises.locks import collar, nut
from generator.site.exercises.lost import ExerciseLost
from generator.site.exercises.record import record
from generator.site.exercises.roller import roller
from generator.site.exercises.seat import holding, readings
from generator.site.exercises.watch import watch
from generator.site.exercises.working import Exercise
from generator.site.render import rendered, slug

TOPICS: Mapping[str, Callable[[MountingStandard, str], Iterator[Exercise]]] = {
    "isolation": isolation, "sheet": holding, "shaft": readings, "nut": nut, "collar": collar, "roller": roller, "heat": heat, "bolts": bolts,
    "growth": growth, "grease": grease, "speed": speed, "watch": watch, "record": record,
}  # fmt: skip


def exercise_for(standard: MountingStandard) -> Callable[..., Markup]:
    """What a guide calls: `exercise("nut")`. Raises ExerciseLost where the plant names something that is not there."""
    chosen = {str(topic): str(on) for topic, on in (standard.plant.typed.training or {}).items()}

    @pass_context
    def exercise(context: Any, topic: str) -> Markup:
        if topic not in TOPICS:
            raise ExerciseLost(say("a guide asks for the exercise {topic}, which there is not", topic=topic))
        wanted = chosen.get(topic, "")
        found = next(TOPICS[topic](standard, wanted), None)
        if found is not None:
            return rendered("exercise.html", base=context["base"], topic=topic, **asdict(found))
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


def training_rules(standard: MountingStandard) -> tuple[str, ...]:
    """The plant's own rules on how long a signature holds, each in its words with who decided it."""
    return tuple(
        say("{name}: {says} ({by}, {on}).", name=name, says=rule.says, by=rule.approved_by, on=rule.on.content)
        for name, rule in (standard.plant.typed.rules or {}).items()
        if rule.quoted_at is not None and str(rule.quoted_at) == "training"
    )


@pass_context
def term(context: Any, word: str) -> Markup:
    """A link to a word of the glossary."""
    return Markup('<a href="{}/glossary.html#{}">{}</a>').format(context["base"], slug(word), word)
