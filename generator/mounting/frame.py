"""Housing and frame: the face the foot stands on, how the seat lies, what a take-up has left."""

from __future__ import annotations

from collections.abc import Iterator

from generator.calc.alignment import seat_flatness, support_misalignment, take_up_left
from generator.mounting.bench import Bench
from generator.mounting.chains.fits import standard_tolerance_grade
from generator.mounting.sheet import Line
from generator.plant.plant import Reading
from generator.say import say
from generator.units import convert
from generator.value import LookedUp, Value


def frame_lines(bench: Bench) -> Iterator[Line]:
    """The lines of the housing group."""
    yield from _flatness(bench)
    yield from _angle(bench)
    yield from _take_up(bench)


def _flatness(bench: Bench) -> Iterator[Line]:
    housing = bench.position.housing
    if housing is None or housing.typed.foot is None:
        return
    foot = housing.typed.foot
    longest = max((foot.length, foot.width), key=lambda v: convert(v.content, v.unit, "mm"))
    it7 = standard_tolerance_grade.of(diameter=longest, grade=Value("IT7", "", LookedUp(None, say("the grade a base is made flat to"))))
    yield Line("base_flatness", "housing", say("Flatness of the face"), seat_flatness.of(it7=it7))
    for key, quantity, name in (
        ("flatness_found", "frame flatness", say("Flatness read")),
        ("foot_feeler_found", "foot feeler", say("Blade under the loosened foot")),
    ):
        reading = bench.position.latest(quantity)
        if reading:
            yield Line(key, "housing", name, reading.value)
    yield Line("foot_feeler", "housing", say("Thickest blade that may go under a loosened foot"), bench.practice("foot_feeler"))


def _angle(bench: Bench) -> Iterator[Line]:
    typed = bench.position.typed.misaligned
    height, sideways = bench.position.latest("height difference"), bench.position.latest("sideways difference")
    if typed is None:
        return
    angle = support_misalignment.of(height=_or(height, typed.height), sideways=_or(sideways, typed.sideways), over=typed.over)
    yield Line("seat_angle", "housing", say("Angle between shaft and seat"), angle)
    for key, name, allowed in allowed_angles(bench):
        yield Line(key, "housing", name, allowed)


def allowed_angles(bench: Bench) -> Iterator[tuple[str, str, Value]]:
    """What bearing, its seals and the housing's seals allow, as far as the library says."""
    bearing, housing = bench.position.bearing, bench.position.housing
    if bearing and bearing.typed.swivels:
        yield "angle_bearing", say("Angle the bearing allows"), bearing.typed.swivels
    if bearing and bearing.typed.sealing and bearing.typed.sealing.angle:
        yield "angle_seal", say("Angle its seals allow"), bearing.typed.sealing.angle
    if housing and housing.typed.seals:
        yield "angle_housing_seal", say("Angle the housing's seals allow"), housing.typed.seals.angle


def _or(reading: Reading | None, typed: Value | None) -> Value:
    if reading:
        return reading.value
    return typed if typed is not None else Value(0.0, "mm", LookedUp(None, say("not stated, taken as none")))


def _take_up(bench: Bench) -> Iterator[Line]:
    housing = bench.position.housing
    if housing is None or housing.typed.travel is None:
        return
    reading = bench.position.latest("take-up used")
    typed = bench.position.typed.take_up
    used = reading.value if reading else typed.used if typed else None
    if used is None:
        return
    left = take_up_left.of(travel=housing.typed.travel, used=used, reserve=bench.practice("take_up_reserve"))
    yield Line("travel_used", "housing", say("Take-up travel used"), used)
    yield Line("travel_left", "housing", say("Take-up travel left"), left.left)
    yield Line("travel_reserve", "housing", say("Reserve to be kept"), left.reserve)
    other = bench.position.latest("take-up used, other side")
    if other:
        yield Line("travel_other", "housing", say("Take-up travel used on the other side"), other.value)
