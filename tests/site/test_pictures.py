"""The drawings of the demo's positions: a step that points to a drawing finds it, and what is drawn is what the sheet says."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import date
from pathlib import Path

import pytest
from markupsafe import Markup

from generator.mounting.sheet import MountingStandard, ShaftSheet, Sheet
from generator.mounting.standard import mounting_standard
from generator.plant.resolve import read_plant
from generator.show import text
from generator.site.pages.machine.pictures import lock_pictures
from generator.work.compose import procedures
from tests.site.drawn import assert_words_fit, bearing_of, middle, parsed, part, points, texts

PLANT = Path(__file__).parents[2] / "plant_data"


@pytest.fixture(scope="module")
def standard() -> MountingStandard:
    plant, problems = read_plant(PLANT, date(2026, 11, 25))
    assert plant is not None and not problems
    return mounting_standard(plant)


@pytest.fixture(scope="module")
def pictures(standard: MountingStandard) -> dict[str, dict[str, Markup]]:
    return {
        sheet.id: {name: one for drawn in lock_pictures(sheet, on).values() for name, one in drawn.items()}
        for on, sheet in sheets(standard)
    }


def sheets(standard: MountingStandard) -> Iterator[tuple[ShaftSheet, Sheet]]:
    return ((on, sheet) for machine in standard.machines for on in machine.shafts for sheet in on.sheets)


def wide(picture: Markup) -> Markup:
    return Markup(picture[: picture.index("</svg>") + 6])


def test_every_step_that_points_to_a_drawing_finds_it_where_its_job_may_be_done(
    standard: MountingStandard, pictures: dict[str, dict[str, Markup]]
) -> None:
    pointed = set()
    for machine in standard.machines:
        for identity, jobs in procedures(standard, machine).items():
            for procedure in jobs.values():
                wanted = {step.picture for step in procedure.steps if step.picture}
                pointed |= wanted
                missing = wanted - set(pictures[identity])
                assert not procedure.open or not missing, f"{identity}, {procedure.job}: {missing}"
    assert pointed >= {"nut turn", "flange gap", "feeler", "reading places", "bolts", "collar", "screws", "fitting", "seals", "shift", "shoulder", "jack", "float", "foot"}  # fmt: skip


def test_the_room_drawn_toward_an_end_is_the_room_set_toward_that_end(
    standard: MountingStandard, pictures: dict[str, dict[str, Markup]]
) -> None:
    seen = 0
    for on, sheet in sheets(standard):
        lines = [sheet.lines[key] for key in ("set_away", "set_toward") if key in sheet.lines]
        if not lines or "float" not in pictures[sheet.id]:
            continue
        description = str(parsed(wide(pictures[sheet.id]["float"]))[1].text)
        first = description.split(". ")[0]
        for line in lines:
            end = next(end for end in on.shaft.ends if line.name.endswith(end))
            assert f"{text(line.value)} left toward the {end}" in first or f"{text(line.value)} toward the {end}" in first  # type: ignore[arg-type]
            seen += 1
    assert seen > 20


def test_a_jack_is_drawn_where_the_bearing_is_along_its_shaft(standard: MountingStandard, pictures: dict[str, dict[str, Markup]]) -> None:
    for on, sheet in sheets(standard):
        picture = pictures[sheet.id].get("jack")
        if picture is None or str(on.shaft.typed.lies) == "vertical":
            continue
        root = parsed(wide(picture))
        places = {one.position.letter: one.position.typed.at.content for one in on.sheets}  # type: ignore[union-attr]
        drawn = {letter: middle(part(root, f"support {letter}")) for letter in places if letter != sheet.position.letter}
        others = sorted(drawn, key=lambda letter: places[letter])
        left = on.shaft.typed.viewed_from.left
        seen = [drawn[letter] for letter in others]
        assert seen == sorted(seen, reverse=left is not None and str(left) != on.shaft.ends[0])


def test_the_nut_is_drawn_turned_as_far_as_the_sheet_says(standard: MountingStandard, pictures: dict[str, dict[str, Markup]]) -> None:
    seen = 0
    for _, sheet in sheets(standard):
        turn = sheet.band("nut_degrees")
        if turn is None:
            continue
        root = parsed(wide(pictures[sheet.id]["nut turn"]))
        at = bearing_of(points(part(root, "mark after the turn")[0])[0], (175, 176))
        assert at == pytest.approx(turn.upper.content % 360, abs=0.5)
        seen += 1
    assert seen > 10


def test_second_flanges_show_their_gap_or_why_there_is_none(standard: MountingStandard, pictures: dict[str, dict[str, Markup]]) -> None:
    shown = {identity: parsed(wide(drawn["flange gap"])) for identity, drawn in pictures.items() if "flange gap" in drawn}
    assert "HELD" in texts(shown["BYP-03/B"]) and "HELD" not in texts(shown["BYP-02/B"])
    assert all("shift" not in pictures[identity] for identity in shown)
    band = standard.sheet("BYP-02/B").band("flange_gap")  # type: ignore[union-attr]
    assert band and any(
        text(band.lower, "in").split("\u00a0")[0] in words and text(band.upper, "in") in words for words in texts(shown["BYP-02/B"])
    )


def test_a_heated_bearing_is_read_hanging_after_it_is_on_and_its_figure_stands_there(pictures: dict[str, dict[str, Markup]]) -> None:
    words = " ".join(texts(parsed(wide(pictures["MIL-01/A"]["feeler"]))))
    assert "blade at the bottom" in words.replace("blade at the bottom.", "blade at the bottom") and "Left, cold: never under" in words


def test_words_of_the_demo_fit_in_both_layouts(pictures: dict[str, dict[str, Markup]]) -> None:
    from generator.site.drawings.pen import NARROW, PANEL

    for drawn in pictures.values():
        for picture in drawn.values():
            first = wide(picture)
            assert_words_fit(first, PANEL)
            assert_words_fit(Markup(picture[len(first) :]), NARROW)
