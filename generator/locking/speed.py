"""How fast a lock may turn, by the class of the shaft under it."""

from __future__ import annotations

from collections.abc import Iterator

from generator.mounting.bench import Bench
from generator.mounting.documents import candidates, instructed
from generator.mounting.seat import seat_class
from generator.mounting.sheet import Line
from generator.say import say
from generator.value import Known, Need, Value, Withheld


def speed_lines(bench: Bench) -> Iterator[Line]:
    """The speed the maker allows for the class this shaft is made to; no figure is made up where the maker gives none."""
    rows = [row for row in candidates(bench.plant, bench.position, "most_speed") if row.unfit is None]
    class_, _ = seat_class(bench)
    if not rows:
        return
    if not isinstance(class_, Value):
        yield Line("speed_allowed", "lock", say("Greatest speed on this shaft"), class_)
        return
    speed = next((v for name, v in rows[0].figure.items() if str(name) == str(class_.content)), None)
    need = Need("document", rows[0].document.typed.maker, say("greatest speed on a shaft to {class_}", class_=class_.content))
    value: Known = (
        instructed(speed, rows[0])
        if speed is not None
        else Withheld(
            say("{document} gives no speed for a shaft to {class_}", document=rows[0].document.name, class_=class_.content), (need,)
        )
    )
    yield Line("speed_allowed", "lock", say("Greatest speed on a shaft to {class_}", class_=class_.content), value)
