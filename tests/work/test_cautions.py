"""What a safety message must be. Signal words by the worst injury: ANSI Z535.6 and ISO 3864-2 (from memory, editions not at hand)."""

from __future__ import annotations

import re
from pathlib import Path
from typing import Any

import pytest

from generator.plant.model.machine import Machine
from generator.plant.model.usual import Surroundings
from generator.safety import Message
from generator.work.cautions import at_work, banner, standing

HOUSE = Path(__file__).parents[2]
# the hazards and zones a machine's file may name, written out; the model's own lists are held against them below
HAZARDS = ("hot surface", "fall from height", "may turn in the wind", "steam", "heavy rotor")
ZONES = ("none", "combustible dust", "food", "food and combustible dust")
EVERYTHING = (
    *standing("The belt", "ISO-X-01", ("electric drive", "belt tension"), HAZARDS, ZONES),
    *at_work(),
)


def of(energies: tuple[str, ...] = ("electric drive",), hazards: tuple[str, ...] = (), zones: tuple[str, ...] = ()) -> list[str]:
    return [message.id for message in standing("", "ISO-X-01", energies, hazards, zones)]


def one(name: str) -> Message:
    return next(message for message in EVERYTHING if message.id == name)


def test_moving_parts_come_first_and_name_the_procedure_and_every_energy() -> None:
    first = standing("The belt", "ISO-X-01", ("electric drive", "belt tension", "hot water"), ("steam",), ("food",))[0]
    assert (first.id, first.signal) == ("D1", "DANGER")
    assert first.hazard == "Moving parts: The belt."
    assert "ISO-X-01: electric drive, belt tension, hot water." in first.avoid
    assert "try to start" in first.avoid


def test_a_machine_whose_moving_parts_are_not_named_still_has_the_first_message() -> None:
    assert standing("", "ISO-X-01", ("electric drive",), (), ())[0].hazard == "Moving parts."


def test_a_plain_machine_has_one_message_and_no_more() -> None:
    assert of(zones=("none",)) == ["D1"]


@pytest.mark.parametrize(
    "energy",
    ["belt tension", "chain tension", "counterweight", "weight of the rotor", "hydraulic load", "Spring in the scraper", "pump pressure",
     "product in the buckets", "rotor running down"],
)  # fmt: skip
def test_what_stays_when_the_drive_is_off_is_named(energy: str) -> None:
    messages = standing("", "ISO-X-01", ("electric drive", energy), (), ())
    assert [message.id for message in messages] == ["D1", "W1"]
    assert energy in messages[1].hazard and "electric drive" not in messages[1].hazard


@pytest.mark.parametrize(
    ("hazard", "expected"),
    [("heavy rotor", "W2"), ("may turn in the wind", "W10"), ("hot surface", "W11"), ("fall from height", "W12"), ("steam", "W13")],
)
def test_each_standing_hazard_has_its_message(hazard: str, expected: str) -> None:
    assert of(hazards=(hazard,)) == ["D1", expected]


@pytest.mark.parametrize(
    ("zone", "expected"),
    [("none", []), ("combustible dust", ["W9"]), ("food", ["N9"]), ("food and combustible dust", ["W9", "N9"])],
)
def test_each_zone_has_its_message(zone: str, expected: list[str]) -> None:
    assert of(zones=(zone,)) == ["D1", *expected]


def test_no_word_a_file_may_name_is_left_without_its_test() -> None:
    assert set(_words(Machine.model_json_schema()["properties"]["hazards"])) == set(HAZARDS)
    assert set(_words(Surroundings.model_json_schema()["properties"]["zone"])) == set(ZONES)


def test_hot_work_heights_and_lifting_are_left_to_the_rules_of_the_site() -> None:
    assert "permit" in one("W9").avoid
    assert "the site's rules" in one("W12").avoid
    assert "the site lets you lift" in one("C3").avoid


def test_grease_under_the_skin_goes_to_hospital_even_if_it_does_not_hurt() -> None:
    # occupational medicine: high-pressure injection is an emergency, delay is the harm (common practice, no source)
    message = one("W6")
    assert message.signal == "WARNING"
    assert "even if it does not hurt" in message.harm
    assert "to hospital at once, and say which grease" in message.avoid


def test_the_nut_stays_on_its_thread_while_a_sleeve_is_let_go() -> None:
    assert "Leave the nut on its thread" in one("W8").avoid


def test_an_identity_is_used_once_and_its_letter_is_that_of_its_word() -> None:
    ids = [message.id for message in EVERYTHING]
    assert len(set(ids)) == len(ids)
    for message in EVERYTHING:
        assert re.fullmatch(message.signal[0] + r"\d+", message.id), message.id


@pytest.mark.parametrize("message", EVERYTHING, ids=lambda message: message.id)
def test_a_message_says_hazard_harm_and_how_to_avoid_it_in_short_sentences(message: Message) -> None:
    for part in (message.hazard, message.harm, message.avoid):
        assert part[0].isupper() and part.endswith(".")
        assert all(len(sentence.split()) <= 20 for sentence in re.split(r"[.;]\s", part)), part


@pytest.mark.parametrize("message", [m for m in EVERYTHING if m.signal == "NOTICE"], ids=lambda message: message.id)
def test_a_notice_is_about_things_alone(message: Message) -> None:
    assert not re.search(r"\b(hand|finger|eye|skin|burns you|crush\w*|kill)\b", message.harm), message.harm


def test_the_banner_gives_way_to_law_site_maker_and_licensed_judgement_and_says_stop() -> None:
    for word in (
        "law where you are",
        "isolation",
        "lifting",
        "hot work",
        "food",
        "maker's instruction",
        "licensed",
        "stop, make safe, ask",
    ):
        assert word in banner()


def test_signal_words_stand_in_safety_messages_alone() -> None:
    pages = [*(HOUSE / "docs_src").rglob("*.md"), *(HOUSE / "plant_data").rglob("*.yml")]
    sources = [path for path in (HOUSE / "generator").rglob("*.py") if path.name != "safety.py"]
    found = [
        str(path.relative_to(HOUSE))
        for path in (*pages, *sources)
        if re.search(r"(?<![_A-Z])(DANGER|WARNING|CAUTION)(?![_A-Z])", path.read_text(encoding="utf-8"))
    ]
    assert found == []


def _words(schema: Any) -> list[str]:
    """Every closed list in a schema, its words."""
    if isinstance(schema, dict):
        own = schema.get("enum", [])
        return [*own, *(word for inner in schema.values() for word in _words(inner))]
    return [word for inner in schema for word in _words(inner)] if isinstance(schema, list) else []
