"""Chains on life: equivalent load of a ball bearing, reliability, cleanliness."""

from typing import Annotated, Literal, NamedTuple

from generator.calc.equivalent import AXIAL, ISO_281, RADIAL, STATIC, ball_load, relative_axial_load
from generator.calc.life import KAPPA, PITCH, contamination_of_level, reliability_between
from generator.method import Is, chain
from generator.say import say
from generator.tables.life import cleanliness_constants, f0_of, reliability_factor_of, thrust_factors
from generator.value import Citation, LookedUp, Results, Value


class BallLoad(NamedTuple):
    e: Annotated[float, Is("limit of the ratio", "e", "")]
    y: Annotated[float, Is("thrust factor", "Y", "")]
    load: Annotated[float, Is("dynamic equivalent load", "P", "N")]


@chain(ISO_281)
def equivalent_load_ball(
    radial: Annotated[float, RADIAL],
    axial: Annotated[float, AXIAL],
    static_rating: Annotated[float, STATIC],
    f0: Annotated[float, Is("factor of ISO 76", "f_0", "", 8, 18)] = None,  # type: ignore[assignment]
) -> BallLoad:
    """Dynamic equivalent load of a deep-groove ball bearing or ball insert
    Thrust factors for Normal clearance: with more clearance the true load is the smaller. Without the size of the balls, f0 is taken as 13."""
    taken = f0 if f0 is not None else Value(13.0, "", LookedUp(None, say("f0 where the balls are not on file")), (say("f0 taken as 13"),))
    relative = relative_axial_load.of(axial=axial, static_rating=static_rating, f0=taken)
    if not isinstance(relative, Value):
        return Results(e=relative, y=relative, load=relative)  # type: ignore[return-value]
    e, y = thrust_factors(relative)
    load = ball_load.of(radial=radial, axial=axial, e=e, y=y, static_rating=static_rating)
    # a push of nothing needs no factor of the balls, nor a remark that it was guessed
    quiet = isinstance(load, Value) and isinstance(axial, Value) and axial.content == 0
    return Results(e=e, y=y, load=load if not quiet else Value(load.content, load.unit, load.reason, radial.remarks))  # type: ignore[return-value, attr-defined]


@chain(Citation("ISO 76", "2006", "table of f0", "from memory"))
def f0_factor(
    ratio: Annotated[float, Is("size of the balls on their circle", r"\gamma", "", 0, 0.3)],
) -> Annotated[float, Is("factor of ISO 76", "f_0", "")]:
    """Factor f0 of a ball bearing by the size of its balls"""
    return f0_of(ratio)  # type: ignore[arg-type, return-value]


@chain(Citation("ISO 281", "2007", "table 12", "from memory"))
def reliability_factor(
    reliability: Annotated[float, Is("reliability", "S", "%", 90, 99.95)],
) -> Annotated[float, Is("factor of reliability", "a_1", "")]:
    """Factor of reliability
    By the table where it has the row, else by the form behind it."""
    return reliability_factor_of(reliability) or reliability_between.of(reliability=reliability)  # type: ignore[arg-type, return-value]


@chain(Citation("ISO 281", "2007", "annex A", "from memory"))
def contamination_factor(
    level: Literal["high", "normal", "slight to typical", "severe", "very severe"],
    ratio: Annotated[float, KAPPA],
    pitch: Annotated[float, PITCH],
) -> Annotated[float, Is("contamination factor", "e_C", "")]:
    """Contamination factor by the level of cleanliness, grease
    High: clean mounting and good seals, closed for life. Normal: the same, greased clean. Slight to typical: ordinary mounting. Severe: dirty place, poor seals. Very severe: heavy dirt or water."""
    gain, loss = cleanliness_constants(level, pitch)  # type: ignore[arg-type]
    return contamination_of_level.of(ratio=ratio, pitch=pitch, gain=gain, loss=loss)  # type: ignore[no-any-return]
