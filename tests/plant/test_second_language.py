"""A second language beside safety messages and key terms: whole, approved and as new as its source, or nothing is published."""

from __future__ import annotations

from datetime import date
from pathlib import Path

import pytest
import yaml

from generator.plant.resolve import read_plant
from generator.safety import SIGNALS, TEXTS, source_of
from generator.say import speak_also
from generator.site.build import PlantRefused, prepare
from generator.terms import TERMS
from generator.words_to_translate import WordsRefused, words_to_translate
from tests.copies import copy_of_demo

ON = date(2026, 11, 25)
Made = dict[str, dict[str, dict[str, str]]]


@pytest.fixture(autouse=True)
def _one_language_afterwards():  # type: ignore[no-untyped-def]
    yield
    speak_also()


def whole() -> Made:
    """A made-up language in which every text stands in brackets."""
    approved = {"approved_by": "safety lead", "on": "2026-03-01"}
    messages = {one: {"of": source_of(one), "says": f"«{source_of(one)}»", **approved} for one in TEXTS}
    terms = {term: {"of": term, "says": f"«{term}»", **approved} for term in TERMS}
    return {"messages": messages, "terms": terms}


def plant(folder: Path, made: Made, head: str = "language: qaa\nname: Made up\n") -> Path:
    copy = folder / "plant"
    copy_of_demo(copy)
    text = head + yaml.safe_dump(made, allow_unicode=True, sort_keys=False, width=10_000)
    (copy / "second_language.yml").write_text(text, encoding="utf-8")
    return copy


def wrong(folder: Path) -> list[str]:
    return [f"{one.place}: {one.wrong}" for one in read_plant(folder, ON)[1]]


def test_a_whole_one_is_taken_and_stands_under_each_message_and_term(tmp_path: Path) -> None:
    site = prepare(plant(tmp_path, whole()), ON)
    page = next(one for one in site.pages if one.url == "machines/INT-02.html")
    body = page.body() if callable(page.body) else page.body
    assert body.count('lang="qaa"') > 40
    assert "«A hanging load. It crushes" in body
    assert "«Stop and sign»" in body
    held = next(one for one in site.pages if one.url == "machines/BYP-02.html")
    assert "«HELD»" in (held.body() if callable(held.body) else held.body)
    assert "by ISO-INT-02: electric drive" in body.split("«Moving parts:")[1].split("»")[0]


def test_a_plant_without_one_has_one_language(tmp_path: Path) -> None:
    copy_of_demo(tmp_path / "plant")
    site = prepare(tmp_path / "plant", ON)
    page = next(one for one in site.pages if one.url == "machines/INT-02.html")
    assert "second-language" not in (page.body() if callable(page.body) else page.body)


def test_a_missing_message_stops_the_build(tmp_path: Path) -> None:
    made = whole()
    del made["messages"]["W6"], made["terms"]["guard"]
    folder = plant(tmp_path, made)
    found = wrong(folder)
    assert "second_language.yml:1: safety message without a text in the second language: W6" in found
    assert "second_language.yml:1: key term without a text in the second language: guard" in found
    with pytest.raises(PlantRefused):
        prepare(folder, ON)


def test_a_message_older_than_its_source_stops_the_build(tmp_path: Path) -> None:
    made = whole()
    made["messages"]["W6"]["of"] = "Grease under pressure."
    found = wrong(plant(tmp_path, made))
    assert len(found) == 1 and "the text of W6 has changed since its second language was approved" in found[0]


def test_a_lost_fact_stops_the_build(tmp_path: Path) -> None:
    made = whole()
    made["messages"]["D1"]["says"] = "«Moving parts: {what}. Isolate by {procedure}.»"
    assert any("D1 has not the same facts as its source" in one for one in wrong(plant(tmp_path, made)))


def test_an_approval_is_needed(tmp_path: Path) -> None:
    made = whole()
    del made["messages"]["C2"]["approved_by"]
    assert any("`approved_by` is missing" in one for one in wrong(plant(tmp_path, made)))


@pytest.mark.parametrize(
    ("key", "typed", "said"),
    [
        ("on", "2026-11-26", "C2 is approved on a day that has not come"),
        ("approved_by", "...", "`approved_by` of C2 has no words"),
        ("says", "...", "`says` of C2 has no words"),
        ("says", source_of("C2"), "C2 says the same as its source"),
        ("says", "«{»", "C2 has a brace that opens or closes nothing"),
    ],
)
def test_what_was_left_as_it_stood_stops_the_build(tmp_path: Path, key: str, typed: str, said: str) -> None:
    made = whole()
    made["messages"]["C2"][key] = typed
    assert any(said in one for one in wrong(plant(tmp_path, made)))


def test_a_list_that_cannot_be_read_is_not_written_over(tmp_path: Path) -> None:
    (tmp_path / "second_language.yml").write_text("language: qaa\nmessages: {D1: [\n", encoding="utf-8")
    with pytest.raises(WordsRefused, match=r"second_language\.yml"):
        words_to_translate(tmp_path)


def test_an_entry_half_filled_in_is_kept_as_far_as_it_goes(tmp_path: Path) -> None:
    made = whole()
    del made["messages"]["C2"]["on"]
    wanting, text = words_to_translate(plant(tmp_path, made))
    kept = text.partition("  C2:\n")[2].partition("\n  C3:")[0]
    assert wanting == 1 and "«" in kept and "safety lead" in kept and "# on: YYYY-MM-DD" in kept


def test_the_list_to_translate_keeps_what_is_done_and_says_what_is_wanting(tmp_path: Path) -> None:
    made = whole()
    made["messages"]["W6"]["of"] = "Grease under pressure."
    folder = plant(tmp_path, made)
    wanting, text = words_to_translate(folder)
    assert wanting == 1 and "# its source has changed" in text
    (folder / "second_language.yml").write_text(text, encoding="utf-8")
    assert words_to_translate(folder) == (1, text)


def test_from_nothing_everything_is_wanting(tmp_path: Path) -> None:
    wanting, text = words_to_translate(tmp_path)
    assert wanting == len(TEXTS) + len(TERMS) and all(f"  {one}:" in text for one in (*TEXTS, *TERMS))


def test_right_to_left_is_said(tmp_path: Path) -> None:
    folder = plant(tmp_path, whole(), "language: qab\nname: Made up\nwrites: right to left\n")
    page = next(one for one in prepare(folder, ON).pages if one.url == "machines/INT-02.html")
    assert 'dir="rtl"' in (page.body() if callable(page.body) else page.body)


def test_signal_words_stay_those_of_the_standard() -> None:
    assert set(SIGNALS.values()) == {"DANGER", "WARNING", "CAUTION", "NOTICE"}
