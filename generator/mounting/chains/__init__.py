"""The chains, by subject, and all that `compute` and the calculation basis know: methods and chains by id."""

from types import ModuleType

from generator.calc import METHODS
from generator.method import Method
from generator.mounting.chains import bolts, condition, drives, fits, grease, life, locks, oils, torque_limits

SUBJECTS: tuple[ModuleType, ...] = (fits, locks, bolts, torque_limits, grease, life, drives, condition, oils)

CHAINS: dict[str, Method] = {m.name: m for subject in SUBJECTS for m in vars(subject).values() if isinstance(m, Method) and m.chain}
ALL: dict[str, Method] = {**METHODS, **CHAINS}
