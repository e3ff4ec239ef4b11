"""Settings of common practice: the plant's own where it has typed one, else the default, shown as common practice without a source."""

from generator.plant.model.plant import Practice
from generator.plant.plant import Plant
from generator.plant.quantities import parse_number
from generator.say import say
from generator.value import LookedUp, Value


def practice(plant: Plant, key: str) -> Value:
    """The setting under a key of the model `Practice`. Raises KeyError for a key that is none."""
    typed = getattr(plant.typed.practice, key, None) if plant.typed.practice else None
    if isinstance(typed, Value):
        return typed
    field = Practice.model_fields[key]
    # the default is the model's own example: one fact, one home
    number, unit = parse_number(str((field.examples or ["0"])[0]))
    return Value(number, unit, LookedUp(None, say("settings of common practice"), ((str(field.description), ""),)))
