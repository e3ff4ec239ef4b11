"""The shaft: which unit holds it, and whether its seats are inside their limits."""

from collections.abc import Iterator

from generator.mounting.sheet import MountingStandard
from generator.say import say
from generator.show import shown
from generator.site.exercises.working import Exercise, shafts, workings


def holding(standard: MountingStandard, wanted: str) -> Iterator[Exercise]:
    """Which unit of a shaft is fixed, and where growth goes."""
    first = str(standard.plant.typed.units)
    for shaft in shafts(standard, wanted):
        fixed = [sheet.position.letter for sheet in shaft.sheets if str(sheet.position.typed.holds) == "fixed"]
        if len(shaft.sheets) < 2 or not fixed:
            continue
        grows = shaft.lines.get("growth")
        answer = [say("Fixed: {letters}. It holds the shaft; growth goes away from it.", letters=", ".join(fixed))]
        if grows is not None:
            answer.append(say("{name}: {value}.", name=grows.name, value=shown(grows.value, first).main))
        question = say(
            "Find the fixed unit of the {shaft} of {tag}, and say where its growth goes.", shaft=shaft.shaft.typed.name, tag=shaft.shaft.tag
        )
        yield Exercise(shaft.shaft.tag, fixed[0], question, (), tuple(answer))


def readings(standard: MountingStandard, wanted: str) -> Iterator[Exercise]:
    """Size and form from the readings on record."""
    for on in workings(standard, wanted):
        verdict = on.sheet.number("seat_verdict")
        if not on.known("shaft_limits", "seat_verdict", "out_of_round", "seat_taper_found"):
            continue
        diameters = [r for r in on.sheet.position.readings if r.quantity.startswith("seat diameter")]
        given = tuple((r.quantity, on.text(r.value)) for r in diameters if r.record == diameters[-1].record)
        limits = on.sheet.lines["shaft_limits"].value
        answer = (
            say("Limits: {limits}.", limits=on.text(limits)),
            *on.said("seat_taper_found"),
            say("Verdict: {verdict}.", verdict=say(str(verdict.content)) if verdict else ""),
        )
        question = say("These are the readings of the seat at {id}. Is size inside? Is form inside?", id=on.sheet.id)
        yield on.exercise(question, given + on.lines("out_of_round"), answer)
