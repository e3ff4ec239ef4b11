"""Chains on drives: what the tables say of belts, pulleys and service."""

from typing import Annotated, Literal, NamedTuple

from generator.calc.drives import SHIGLEY
from generator.method import Is, chain
from generator.tables.drives import belt_factor, pulley_friction, service_range
from generator.value import Citation, Results


@chain(Citation("textbooks of machine design", "", "tension ratios 3 and 5", "from memory"))
def belt_pull_factor(belt: Literal["flat", "V", "synchronous"]) -> Annotated[float, Is("factor of the belt", "k", "")]:
    """Pull of a kind of belt over its effective pull"""
    return belt_factor(belt)  # type: ignore[arg-type, return-value]


@chain(Citation("ISO 5048, DIN 22101 and ANSI/CEMA 550", "", "informative tables", "from memory"))
def conveyor_pulley_friction(
    runs_in: Literal["design", "dry", "wet clean", "wet dirty"], face: Literal["bare", "rubber", "polyurethane", "ceramic"]
) -> Annotated[float, Is("friction of belt on pulley", r"\mu", "")]:
    """Friction of a conveyor belt on its pulley, the low end"""
    return pulley_friction(runs_in, face)  # type: ignore[arg-type, return-value]


class Range(NamedTuple):
    low: Annotated[float, Is("least service factor", "f", "")]
    high: Annotated[float, Is("greatest service factor", "f", "")]


@chain(Citation(SHIGLEY, "", "Table 11-5", "from memory"))
def service_factor_range(
    application: Literal[
        "precision gearing", "commercial gearing", "poor bearing seals", "machinery without impact", "machinery with light impact",
        "machinery with moderate impact",
    ],
) -> Range:  # fmt: skip
    """Service factors by application, for the engineer to choose from"""
    low, high = service_range(application)  # type: ignore[arg-type]
    return Results(low=low, high=high)  # type: ignore[return-value]
