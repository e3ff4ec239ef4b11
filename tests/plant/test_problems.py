"""Every example of `problems/*.md`: the exact message of a fault, and the near miss that passes."""

from __future__ import annotations

import re
from pathlib import Path

import pytest

from generator.plant.check import validate
from generator.plant.problems import Problems, show_problem
from generator.plant.read import read_tree
from tests.plant.bench import Bench

EXAMPLES = Path(__file__).parent / "problems"
_BLOCK = re.compile(r"^## (?P<title>.+?)$|^```(?P<kind>yaml(?: bench)?|message)\n(?P<text>.*?)^```$", re.MULTILINE | re.DOTALL)


def examples() -> list[pytest.param]:  # type: ignore[valid-type]
    found: list[tuple[str, str, str, str]] = []
    for page in sorted(EXAMPLES.glob("*.md")):
        title = page.stem
        for block in _BLOCK.finditer(page.read_text(encoding="utf-8")):
            if block["title"]:
                title = block["title"]
            elif block["kind"] == "message":
                found[-1] = (*found[-1][:3], block["text"])
            else:
                found.append((f"{page.stem}: {title}", block["kind"], block["text"], ""))
    return [pytest.param(kind, text, message, id=f"{title}: {'refused' if message else 'taken'}") for title, kind, text, message in found]


@pytest.mark.parametrize(("kind", "text", "message"), examples())
def test_an_example_gives_its_message_or_none(tmp_path: Path, kind: str, text: str, message: str) -> None:
    (tmp_path / "plant.yml").write_text(text, encoding="utf-8")
    problems = Problems(tmp_path)
    tree = read_tree(tmp_path / "plant.yml", "plant.yml", problems)
    bench = validate(Bench, tree, problems) if kind == "yaml bench" and tree is not None else None
    assert "\n\n".join(show_problem(problem) for problem in problems.found) == message.rstrip("\n")
    assert message or tree is not None
    assert message or kind == "yaml" or bench is not None


def test_there_are_examples_of_both() -> None:
    ids = [str(example.id) for example in examples()]
    assert sum(one.endswith("refused") for one in ids) >= 20
    assert sum(one.endswith("taken") for one in ids) >= 15
