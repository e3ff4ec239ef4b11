"""The methods, by subject: this list is all the registry there is."""

from types import ModuleType

from generator.calc import (
    alignment,
    bending,
    bolts,
    clearance,
    condition,
    conveying,
    drives,
    equivalent,
    feet,
    fits,
    grease,
    heat,
    life,
    lifting,
    nuts,
    oils,
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
    bending,
    lifting,
    equivalent,
    life,
    taper,
    clearance,
    drives,
    conveying,
    condition,
    oils,
)

METHODS: dict[str, Method] = {m.name: m for subject in SUBJECTS for m in vars(subject).values() if isinstance(m, Method)}
