"""What must hold of grease, growth and the plan at any size."""

from __future__ import annotations

from datetime import date
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from generator.calc import grease, heat, schedule
from generator.method import Refused
from generator.mounting.chains.grease import grease_factors
from generator.value import Entered, Place, Value, Withheld

HERE = Place("test", 1)
factors = st.sampled_from([1.0, 0.7, 0.5, 0.4, 0.2])
tasks = st.builds(schedule.Task, st.sampled_from([1.0, 2.0, 4.0, 8.0, 13.0, 26.0, 52.0]), st.floats(1, 60), st.just(0.0))


def typed(content: Any, unit: str = "") -> Value:
    return Value(content, unit, Entered(f"{content} {unit}", HERE))


@given(st.floats(10, 2000), st.floats(15, 200), factors, factors)
def test_worse_conditions_and_higher_speed_never_lengthen_the_interval(speed: float, bore: float, one: float, other: float) -> None:
    try:
        faster = grease.grease_interval(speed * 1.1, bore, 1.0, one, other, 1.0, 1.0, 1.0)
    except Refused:
        return
    slower = grease.grease_interval(speed, bore, 1.0, one, other, 1.0, 1.0, 1.0)
    worse = grease.grease_interval(speed, bore, 1.0, one, other * 0.5, 1.0, 1.0, 1.0)
    assert 0 < faster < slower
    assert worse == pytest.approx(slower / 2)


def test_a_bearing_too_fast_for_grease_by_hand_is_refused() -> None:
    # a 50 mm bore reaches nothing at 9899 r/min
    assert grease.grease_interval_base(9890.0, 50.0) > 0
    with pytest.raises(Refused, match="too fast"):
        grease.grease_interval_base(9900.0, 50.0)


def test_more_often_than_weekly_is_refused() -> None:
    with pytest.raises(Refused, match="automatic feeder"):
        grease.interval_in_weeks(100.0, 24.0, 7.0, 52.0)
    with pytest.raises(Refused, match="automatic feeder"):
        schedule.round_period(0.9, 10.0)


@given(st.floats(20, 120))
def test_the_table_of_heat_and_the_halving_rule_are_within_a_factor_of_four(temperature: float) -> None:
    table = grease_factors.of(
        bearing=typed("ball insert"), temperature=typed(temperature, "degC"), dust=typed("none"), water=typed("none"),
        shaking=typed(0, "mm/s"), attitude=typed("horizontal"),
    ).heat.content  # fmt: skip
    assert 0.25 <= table / grease.heat_halving(temperature) <= 4


@given(st.floats(-40, 150))
def test_a_hotter_bearing_never_has_a_better_factor(temperature: float) -> None:
    assert grease.heat_halving(temperature + 1) <= grease.heat_halving(temperature) <= 1


def test_a_condition_that_is_not_stated_withholds_every_factor() -> None:
    found = grease_factors.of(
        bearing=typed("ball insert"), temperature=typed(60, "degC"), dust=Withheld("surroundings do not say `dust`"), water=typed("none"),
        shaking=typed(0, "mm/s"), attitude=typed("horizontal"),
    )  # fmt: skip
    assert all(isinstance(value, Withheld) for value in found.values())


@given(st.floats(0.1, 500), st.floats(0.3, 5))
def test_strokes_give_what_is_wanted_and_less_than_one_stroke_more(wanted: float, stroke: float) -> None:
    found = grease.gun_strokes(wanted, stroke)
    assert found.strokes == int(found.strokes) >= 1
    assert found.given == pytest.approx(found.strokes * stroke)
    assert wanted - 1e-5 * stroke <= found.given
    assert found.given < wanted + stroke or found.strokes == 1


@given(st.floats(1, 500), st.floats(1, 50), st.floats(10, 20_000))
def test_shots_keep_the_grams_an_hour(wanted: float, most: float, interval: float) -> None:
    shots = grease.shot_split(wanted, most, interval)
    assert shots.grease <= most * 1.00001
    assert shots.grease / shots.every == pytest.approx(wanted / interval)


@given(st.floats(1, 52), st.floats(1, 200))
def test_a_round_is_never_longer_than_computed_and_keeps_the_grams_a_week(weeks: float, wanted: float) -> None:
    period = schedule.round_period(weeks, wanted)
    assert period.weeks in (1, 2, 4, 8, 13, 26, 52)
    assert period.weeks <= weeks + 1e-6 < 2.1 * period.weeks
    assert period.grease / period.weeks == pytest.approx(wanted / weeks)


@given(st.lists(tasks, min_size=1, max_size=25))
@settings(max_examples=60, deadline=None)
def test_a_year_is_levelled_the_same_way_each_time_and_nobody_starts_late(rows: list[schedule.Task]) -> None:
    starts = schedule.round_levelling(tuple(rows))
    assert starts == schedule.round_levelling(tuple(rows))
    assert all(1 <= start.week <= task.period for start, task in zip(starts, rows, strict=True))
    peak = max(start.peak for start in starts)
    assert peak <= sum(task.minutes for task in rows) + 1e-6
    assert peak >= max(task.minutes for task in rows)


@given(st.dates(date(2020, 1, 1), date(2030, 12, 31)), st.floats(10, 20_000), st.floats(1, 24), st.floats(1, 7))
def test_a_position_is_due_after_its_last_greasing_and_within_a_year(last: date, interval: float, hours: float, days: float) -> None:
    due = date.fromisoformat(schedule.due_date(last.isoformat(), interval, hours, days))
    assert 0 <= (due - last).days <= 364
    assert (due - last).days * hours * days / 7 <= interval + 1e-6


def test_a_last_greasing_that_is_no_day_is_refused() -> None:
    with pytest.raises(Refused, match="is no day"):
        schedule.due_date("last spring", 1000.0, 24.0, 7.0)


@given(st.floats(1, 20_000), st.floats(-40, 300), st.floats(-40, 60))
def test_a_shaft_hotter_by_a_kelvin_grows_and_one_as_warm_as_its_frame_does_not(length: float, shaft: float, frame: float) -> None:
    assert heat.thermal_growth(length, shaft + 1, frame) > heat.thermal_growth(length, shaft, frame)
    assert heat.thermal_growth(length, frame, frame) == pytest.approx(0, abs=1e-9)


@given(st.floats(-20, 20), st.floats(0, 20), st.floats(0, 2))
def test_float_is_enough_just_when_something_is_left(growth: float, there: float, error: float) -> None:
    found = heat.float_available(growth, there, 1.25, error)
    assert found.needed >= abs(growth)
    assert (found.verdict == "enough") == (found.spare >= -1e-9)
