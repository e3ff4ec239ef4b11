"""The methods, by subject: this list is all the registry there is."""

from types import ModuleType

from generator.calc import (
    alignment,
    bolts,
    clearance,
    equivalent,
    feet,
    fits,
    grease,
    heat,
    life,
    lifting,
    nuts,
    schedule,
    screws,
    shafts,
    taper,
)
from generator.method import Method

SUBJECTS: tuple[ModuleType, ...] = (
    fits,
    nuts,
    screws,
    bolts,
    feet,
    alignment,
    heat,
    grease,
    schedule,
    shafts,
    lifting,
    equivalent,
    life,
    taper,
    clearance,
)

METHODS: dict[str, Method] = {m.name: m for subject in SUBJECTS for m in vars(subject).values() if isinstance(m, Method)}
