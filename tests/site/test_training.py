"""The training pages as they are written: six questions a module with one right answer, a sign-off table, and what comes before what."""

from __future__ import annotations

import re
from pathlib import Path

import pytest

from generator.site.exercises import TOPICS
from generator.site.exercises.practice import kinds
from generator.site.render import slug

DOCS = Path(__file__).parents[2] / "docs_src" / "training"
MODULES = sorted(DOCS.glob("t[0-9]*.md"), key=lambda path: int(path.stem[1:].split("-")[0]))


@pytest.mark.parametrize("path", MODULES, ids=lambda path: path.stem)
def test_a_module_asks_six_questions_with_one_right_answer_of_three_each(path: Path) -> None:
    text = path.read_text(encoding="utf-8")
    number = re.match(r"t(\d+)", path.stem)
    assert number
    for question in range(1, 7):
        choices = re.findall(rf'<details class="choice" name="t{number[1]}-{question}">.*?<b>(\w+)\.</b>', text)
        assert sorted(choices) == ["No", "No", "Right"], (path.name, question)
    assert "| task | seen done | did with help | did alone | did alone twice | date | initials of both |" in text
    assert "{{ exercise(" in text or path.stem.startswith("t0")


@pytest.mark.parametrize("path", MODULES, ids=lambda path: path.stem)
def test_the_right_answer_cannot_be_guessed_from_its_place(path: Path) -> None:
    text = path.read_text(encoding="utf-8")
    blocks = [block for block in re.split(r"\*\*\d\. ", text) if 'class="choice" name=' in block]
    places = [re.findall(r"<b>(No|Right)\.</b>", block).index("Right") for block in blocks]
    assert len(places) == 6
    assert set(places) == {0, 1, 2} and max(map(places.count, places)) <= 3


@pytest.mark.parametrize("path", MODULES, ids=lambda path: path.stem)
def test_every_choice_says_why(path: Path) -> None:
    said = re.findall(r"<b>(?:No|Right)\.</b>\s*(.*?)</p>", path.read_text(encoding="utf-8"))
    assert len(said) == 18 and all(len(why.split()) >= 2 for why in said)


@pytest.mark.parametrize("path", MODULES[1:], ids=lambda path: path.stem)
def test_a_module_leads_to_an_exercise_and_to_positions_to_practise_on(path: Path) -> None:
    text = path.read_text(encoding="utf-8")
    topics, words = re.findall(r'exercise\("([^"]+)"\)', text), re.findall(r'practice\("([^"]+)"\)', text)
    assert topics and set(topics) <= set(TOPICS)
    assert words and set(words) <= set(kinds())


def test_every_topic_is_worked_on_in_a_module() -> None:
    asked = {topic for path in MODULES for topic in re.findall(r'exercise\("([^"]+)"\)', path.read_text(encoding="utf-8"))}
    assert asked == set(TOPICS)


def test_the_words_a_module_leads_to_stand_in_the_glossary() -> None:
    glossary = (DOCS.parent / "glossary.md").read_text(encoding="utf-8")
    for path in MODULES:
        for word in re.findall(r'term\("([^"]+)"\)', path.read_text(encoding="utf-8")):
            assert f'id="{slug(word)}"' in glossary, (path.name, word)


def needed_before() -> dict[str, set[str]]:
    """From the table of the contents page: which modules are signed before which."""
    rows = re.findall(r"^\| (T\d+) [^|]*\| ([^|]*) \|", (DOCS / "index.md").read_text(encoding="utf-8"), flags=re.M)
    return {module: set(re.findall(r"T\d+", before)) for module, before in rows}


def test_no_module_waits_for_a_later_one_and_each_says_what_it_waits_for() -> None:
    before = needed_before()
    assert list(before) == [f"T{n}" for n in range(12)]
    assert all(int(one[1:]) < int(module[1:]) for module, wanted in before.items() for one in wanted)
    for path in MODULES:
        first = re.search(r"\n([^\n]*) (?:is|are) signed first", path.read_text(encoding="utf-8"))
        linked = {f"T{n}" for n in re.findall(r"\(t(\d+)-", first[1])} if first else set()
        assert linked <= before[f"T{path.stem[1:].split('-')[0]}"], path.name


def test_the_sign_off_sheet_asks_for_all_that_a_kind_of_work_waits_for() -> None:
    sheet = (DOCS / "sign-off.md").read_text(encoding="utf-8")
    before = needed_before()
    kinds_of_work = re.findall(r"\*\*([A-Z][a-z ]+)\*\*(?::| needs) ([^.]*)\.", sheet)
    assert [name for name, _ in kinds_of_work] == ["Greasing", "Putting on and taking off", "Watching"]
    for name, listed in kinds_of_work:
        modules = set(re.findall(r"T\d+", listed))
        assert all(before[module] <= modules for module in modules if module != "T11"), name


def test_the_sign_off_sheet_has_a_row_a_module_and_a_field_for_each_way_of_having_done_it() -> None:
    sheet = (DOCS / "sign-off.md").read_text(encoding="utf-8")
    assert "| module | task | seen done | did with help | did alone | did alone twice | date | initials of both |" in sheet
    rows = re.findall(r"^\| (T\d+) ([^|]+) \| ([^|]+) \|(( \|){6})$", sheet, flags=re.M)
    assert [row[0] for row in rows] == [f"T{n}" for n in range(12)]
    assert [row[1] for row in rows] == [re.match(r"# (.*)", path.read_text(encoding="utf-8"))[1] for path in MODULES]  # type: ignore[index]


def test_there_are_twelve_modules_and_the_way_leads_to_each() -> None:
    index = (DOCS / "index.md").read_text(encoding="utf-8")
    assert [path.stem.split("-")[0] for path in MODULES] == [f"t{n}" for n in range(12)]
    assert all(f"({path.name})" in index for path in (*MODULES, DOCS / "read-a-page.md", DOCS / "sign-off.md"))
