"""YAML as typed: what the YAML standard would read another way stays text, or is refused with its place."""

from __future__ import annotations

import os
from pathlib import Path

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from generator.plant.problems import Problems, inside, nearest, show_problem
from generator.plant.read import Listing, Tree, Word, read_listing, read_tree
from generator.value import Place


def read(folder: Path, text: str | bytes) -> tuple[Tree | None, list[str]]:
    path = folder / "plant.yml"
    path.write_bytes(text.encode() if isinstance(text, str) else text)
    problems = Problems(folder)
    tree = read_tree(path, "plant.yml", problems)
    return tree, [f"{p.place.line}:{p.place.column} {p.wrong}" for p in problems.found]


@pytest.mark.parametrize("typed", ["no", "012", "12:30", "1:12", "8.8", "1e3", "2026-03-12", "yes", "0x1F", "=", ".inf"])
def test_a_scalar_stays_text(tmp_path: Path, typed: str) -> None:
    """YAML 1.1 (yaml.org, types) takes these for a truth, octals, base 60, floats, days and more."""
    tree, problems = read(tmp_path, f"key: {typed}\n")
    assert (tree, problems) == ({"key": typed}, [])


def test_every_key_and_value_knows_its_place(tmp_path: Path) -> None:
    tree, _ = read(tmp_path, "a: x\nshafts:\n  head: {speed: '46 rpm', to: [1, 20]}\n")
    assert tree is not None
    head = tree.under("shafts").under("head")
    assert tree.key("shafts").place == Place("plant.yml", 2, 1)  # type: ignore[union-attr]
    assert head.place == Place("plant.yml", 3, 9)
    assert (head.key("speed").place, head.under("speed").place) == (Place("plant.yml", 3, 10), Place("plant.yml", 3, 17))
    assert (head.under("speed").end_column, head.under("speed").length) == (25, 8)
    assert head.under("to").place == Place("plant.yml", 3, 31)
    assert [one.place.column for one in head.under("to")] == [32, 35]
    assert isinstance(head.under("to"), Listing) and isinstance(head.under("to")[0], Word)


def test_a_byte_order_mark_and_dos_line_ends_are_fine(tmp_path: Path) -> None:
    tree, problems = read(tmp_path, b"\xef\xbb\xbfa: x\r\nb: y\r\n")
    assert (tree, problems) == ({"a": "x", "b": "y"}, [])
    assert tree is not None and tree.key("b").place == Place("plant.yml", 2, 1)  # type: ignore[union-attr]


@pytest.mark.parametrize(
    ("text", "problem"),
    [
        ("a:\tx\n", "1:3 a tab"),
        ("a:\n\tb: x\n", "2:1 a tab"),
        ("a: 60\u00a0mm\n", "1:6 a no-break space"),
        ("a: x\u200by\n", "1:5 a character that is no text"),
        (b"a: x\x00\n", "1:5 a character that is no text"),
        ("a: x\u2028b: y\n", "1:5 a character that is no text"),
        (b"a: x\nb: \xff\n", "2:1 this is no UTF-8 text"),
        ("a: x\n".encode("utf-16"), "1:1 this is no UTF-8 text"),
        ("", "1:1 the file is empty"),
        ("# nothing yet\n", "1:1 the file is empty"),
        ("null\n", "1:1 the file is empty"),
        ("- a\n", "1:1 the file holds no mapping"),
        ("a\n", "1:1 the file holds no mapping"),
        ("%YAML 1.2\n---\na: x\n", "1:1 a line that begins with % is not read"),
        ("a: " + "[" * 40 + "]" * 40 + "\n", "1:34 nested too deep"),
    ],
)
def test_a_file_that_is_no_plant_file_is_refused(tmp_path: Path, text: str | bytes, problem: str) -> None:
    tree, problems = read(tmp_path, text)
    assert (tree, problems) == (None, [problem])


@pytest.mark.parametrize("typed", ['"\\e[2J"', '"a\\0"', '"60\\_mm"', '"\\t"'])
def test_a_character_that_is_no_text_cannot_be_written_another_way(tmp_path: Path, typed: str) -> None:
    assert read(tmp_path, f"note: {typed}\n")[1] == ["1:7 a character that is no text"]


def test_a_text_of_several_lines_is_one_word_and_a_key_is_not(tmp_path: Path) -> None:
    assert read(tmp_path, "note: |\n  mind the tray\n  key at the gate\n") == ({"note": "mind the tray\nkey at the gate\n"}, [])
    assert read(tmp_path, "? |\n  one\n  two\n: x\n")[1] == ["1:3 a key of more than one line"]


def test_every_line_with_a_tab_is_named_in_one_run(tmp_path: Path) -> None:
    assert read(tmp_path, "a:\tx\nb: y\nc:\tz\n")[1] == ["1:3 a tab", "3:3 a tab"]


def test_a_file_of_brackets_is_refused_and_breaks_nothing(tmp_path: Path) -> None:
    tree, (problem,) = read(tmp_path, "[" * 20_000)
    assert tree is None and problem.endswith(" nested too deep")


def test_thirty_levels_are_read(tmp_path: Path) -> None:
    tree, problems = read(tmp_path, "a: " + "[" * 30 + "]" * 30 + "\n")
    assert tree is not None and not problems


def test_a_file_over_five_megabytes_is_refused(tmp_path: Path) -> None:
    assert read(tmp_path, "#" + "x" * 5_000_000)[1] == ["1:1 the file is too big"]


def test_what_is_no_plain_file_is_refused_and_nobody_waits_for_it(tmp_path: Path) -> None:
    os.mkfifo(tmp_path / "pipe.yml")
    (tmp_path / "folder.yml").mkdir()
    problems = Problems(tmp_path)
    for name in ("pipe.yml", "folder.yml", "absent.yml"):
        assert read_tree(tmp_path / name, name, problems) is None
    assert [(p.place.file, p.wrong) for p in problems.found] == [(n, "this is no file") for n in ("absent.yml", "folder.yml", "pipe.yml")]


def test_one_broken_file_hides_no_problem_of_another(tmp_path: Path) -> None:
    (tmp_path / "one.yml").write_text("a: [x\n")
    (tmp_path / "two.yml").write_text("a: x\na: y\n")
    problems = Problems(tmp_path)
    assert read_tree(tmp_path / "one.yml", "one.yml", problems) is None
    assert read_tree(tmp_path / "two.yml", "two.yml", problems) == {"a": "x"}
    assert [p.place.file for p in problems.found] == ["one.yml", "two.yml"]


def test_a_key_whose_value_was_refused_is_not_counted_as_missing(tmp_path: Path) -> None:
    tree, problems = read(tmp_path, "a:\nb: ~\nc: null\nd: x\ne: 'null'\n")
    assert problems == ["1:1 `a` says nothing", "2:1 `b` says nothing", "3:1 `c` says nothing"]
    assert tree is not None and tree.refused == {"a", "b", "c"}
    assert tree == {"d": "x", "e": "null"}


def test_a_list_may_be_empty_and_so_may_its_file(tmp_path: Path) -> None:
    for text in ("", "# none\n", "[]\n"):
        (tmp_path / "accepted.yml").write_text(text)
        problems = Problems(tmp_path)
        assert not read_listing(tmp_path / "accepted.yml", "accepted.yml", problems)
        assert problems.found == ()


def test_a_list_holds_its_entries(tmp_path: Path) -> None:
    (tmp_path / "accepted.yml").write_text("- finding: seal misalignment\n-\n- b\n")
    problems = Problems(tmp_path)
    assert read_listing(tmp_path / "accepted.yml", "accepted.yml", problems) == [{"finding": "seal misalignment"}, "b"]
    assert [(p.place.line, p.wrong) for p in problems.found] == [(2, "an entry of this list says nothing")]


def test_a_link_out_of_the_folder_is_not_inside(tmp_path: Path) -> None:
    plant = tmp_path / "plant"
    plant.mkdir()
    (tmp_path / "secret.yml").write_text("a: x\n")
    (plant / "own.yml").write_text("a: x\n")
    (plant / "out.yml").symlink_to(tmp_path / "secret.yml")
    (plant / "in.yml").symlink_to(plant / "own.yml")
    assert inside(plant, plant / "own.yml") and inside(plant, plant / "in.yml")
    assert not inside(plant, plant / "out.yml")
    assert not inside(plant, plant / ".." / "secret.yml")


@settings(suppress_health_check=[HealthCheck.function_scoped_fixture], max_examples=300)
@given(st.text(alphabet="ab:-[]{}&*!|>'\"%@`,?# \n<~\\", max_size=40))
def test_no_text_does_more_than_be_refused(tmp_path: Path, text: str) -> None:
    tree, problems = read(tmp_path, text)
    assert tree is not None or problems


@pytest.mark.parametrize(
    ("line", "column", "length", "shown"),
    [
        ("speed: 46", 8, 2, "    speed: 46\n           ^^"),
        ("speed: 46", 8, 99, "    speed: 46\n           ^^"),
        ("x" * 200 + "speed: 46", 208, 2, "    " + "x" * 53 + "speed: 46\n" + " " * 64 + "^^"),
    ],
)
def test_the_mark_stands_under_what_is_meant(tmp_path: Path, line: str, column: int, length: int, shown: str) -> None:
    (tmp_path / "a.yml").write_text(line + "\n")
    problems = Problems(tmp_path)
    problems.add(Place("a.yml", 1, column), "46 has no unit", "46 rpm", length)
    assert show_problem(problems.found[0]) == f"a.yml:1:{column}: 46 has no unit\n{shown}\n  right would be: 46 rpm"


def test_a_problem_is_told_once_and_in_the_order_of_the_file(tmp_path: Path) -> None:
    problems = Problems(tmp_path)
    for line in (30, 4, 30):
        problems.add(Place("b.yml", line), "wrong", "right")
    problems.add(Place("a.yml", 99), "wrong", "right")
    assert [(p.place.file, p.place.line) for p in problems.found] == [("a.yml", 99), ("b.yml", 4), ("b.yml", 30)]


def test_the_nearest_name_is_near_or_none() -> None:
    known = ["Orvane ball 60", "Orvane ball 65", "fixed", "free"]
    assert nearest("fixd", known) == "fixed"
    assert nearest("orvane bal 60", known) == "Orvane ball 60"
    assert nearest("gearbox", known) is None
    assert nearest("x", []) is None
