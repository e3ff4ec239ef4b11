"""Energies of a machine."""

from collections.abc import Iterator

from generator.mounting.sheet import MountingStandard
from generator.say import say
from generator.site.exercises.working import Exercise


def isolation(standard: MountingStandard, wanted: str) -> Iterator[Exercise]:
    """Every energy, and how each is proven gone."""
    for machine in standard.machines:
        tag, typed = machine.machine.tag, machine.machine.typed.isolation
        if wanted.partition("/")[0] in ("", tag):
            energies = ", ".join(str(energy) for energy in typed.energies)
            answer = (
                say("By {procedure}: {energies}.", procedure=typed.procedure, energies=energies),
                say("Each is proven where it acts: try to start, look, feel from a safe place, read the gauge."),
            )
            yield Exercise(tag, "", say("Name every energy of {tag} and say how each is proven gone.", tag=tag), (), answer)
