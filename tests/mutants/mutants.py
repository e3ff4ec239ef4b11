"""Whether the checks would notice a formula that is wrong: each formula made wrong one place at a time.

A place counts as held where a check that comes from outside or from a closed form fails on it; what only a check of
common practice notices is counted beside it. What no check can tell from the right formula stands in `same.yml`, each
with its reason, and is not counted.
"""

from __future__ import annotations

import argparse
import ast
import signal
import sys
import warnings
from collections.abc import Iterable, Iterator
from contextlib import contextmanager
from dataclasses import dataclass, field
from importlib import import_module
from math import ceil, cos, floor, sin
from pathlib import Path
from types import FunctionType, ModuleType
from typing import Any

import yaml

from generator.calc import METHODS
from generator.method import Method
from generator.mounting.chains import ALL, CHAINS
from tests.calc.test_checks import CHECKS, PRACTICE, hold
from tests.mutants.wrong import Wrong, wrongs_in

HOUSE = Path(__file__).parents[2] / "generator" / "calc"
SAME = Path(__file__).parent / "same.yml"
SECONDS = 5
OTHER_NAMES = {"min": min, "max": max, "ceil": ceil, "floor": floor, "sin": sin, "cos": cos}


class TooLong(BaseException):
    """A check that does not end; no calculation may catch it."""


@dataclass
class Tally:
    """What came of the places of one subject."""

    subject: str
    places: int = 0
    outside: int = 0
    practice: int = 0
    same: set[tuple[str, str]] = field(default_factory=set)
    survivors: list[str] = field(default_factory=list)

    def line(self) -> str:
        """The figures in one line."""
        one, both = self._share(self.outside), self._share(self.outside + self.practice)
        return f"{self.subject:<12}{self.places:>6} wrong{self.outside:>6} noticed {one:>6}   with practice {both:>6}   {len(self.same):>3} the same"

    def _share(self, count: int) -> str:
        return f"{100 * count / self.places:.1f} %" if self.places else "-"


def main() -> int:
    """The subjects named, or all of them."""
    taken = argparse.ArgumentParser(description="Formulas made wrong one place at a time, and which of them the checks notice.")
    known = sorted(path.stem for path in HOUSE.glob("*.py") if f"generator.calc.{path.stem}" in sys.modules)
    taken.add_argument("subject", nargs="*", help=f"all where none is named; {', '.join(known)}")
    taken.add_argument("--survivors", action="store_true", help="each place that no check notices")
    given = taken.parse_args()
    warnings.simplefilter("ignore")
    signal.signal(signal.SIGVTALRM, _ring)
    reached = _what_checks_reach()
    same = {(one["in"], one["change"]) for one in yaml.safe_load(SAME.read_text(encoding="utf-8")) or ()}
    if unknown := set(given.subject) - set(known):
        taken.error(f"no subject: {', '.join(sorted(unknown))}")
    tallies = []
    for subject in given.subject or known:
        tallies.append(tally := judged(subject, reached, same))
        print(tally.line(), flush=True)
        for text in tally.survivors if given.survivors else ():
            print(f"    {text}")
    counts = {name: sum(getattr(one, name) for one in tallies) for name in ("places", "outside", "practice")}
    met = {one for tally in tallies for one in tally.same}
    print(Tally("together", **counts, same=met).line())
    for function, change in sorted(same - met) if not given.subject else ():
        print(f"stands in {SAME.name}, yet no formula has it: {function}: {change}")
    return 0


def judged(subject: str, reached: dict[tuple[str, str], list[Any]], same: set[tuple[str, str]]) -> Tally:
    """Every place of one subject made wrong, and what noticed it."""
    module = import_module(f"generator.calc.{subject}")
    path = HOUSE / f"{subject}.py"
    tree = ast.parse(path.read_text(encoding="utf-8"))
    tally = Tally(subject)
    for wrong in wrongs_in(tree):
        checks = _for(subject, wrong.function, reached)
        with _made_wrong(tree, wrong, module):
            outside = noticed(one for one in checks if one["come_by"] != PRACTICE)
            practice = not outside and noticed(one for one in checks if one["come_by"] == PRACTICE)
        place = f"{path.name}:{wrong.line} {wrong.function}: {wrong.change}"
        if (wrong.function, wrong.change) in same:
            tally.same.add((wrong.function, wrong.change))
            if outside or practice:
                tally.survivors.append(f"{place}   (stands among the same, yet a check tells it)")
            continue
        tally.places += 1
        tally.outside += outside
        tally.practice += practice
        if not outside:
            tally.survivors.append(place + ("   (common practice notices)" if practice else ""))
    return tally


def noticed(checks: Iterable[dict[str, Any]]) -> bool:
    """Whether one of the checks fails, breaks or does not end."""
    return any(not _holds(check) for check in checks)


def _holds(check: dict[str, Any]) -> bool:
    # its own seconds, so that a busy machine makes no check fail
    signal.setitimer(signal.ITIMER_VIRTUAL, SECONDS)
    try:
        hold(check)
    except (Exception, TooLong):
        return False
    finally:
        signal.setitimer(signal.ITIMER_VIRTUAL, 0)
    return True


def _ring(*_: Any) -> None:
    raise TooLong


def _what_checks_reach() -> dict[tuple[str, str], list[Any]]:
    """The checks by the functions of `calc` each of them runs through; one that fails anyway tells nothing."""
    reached: dict[tuple[str, str], list[Any]] = {}
    for one in CHECKS:
        check = one.values[0]
        through: set[tuple[str, str]] = set()

        def note(frame: Any, event: str, _: Any, through: set[tuple[str, str]] = through) -> None:
            path = Path(frame.f_code.co_filename) if event == "call" and "calc" in frame.f_code.co_filename else None
            if path and path.parent == HOUSE:
                through.add((path.stem, frame.f_code.co_qualname.partition(".")[0]))

        sys.setprofile(note)
        holds = _holds(check)
        sys.setprofile(None)
        if not holds:
            print(f"left out, since it fails as it is: {one.id}")
            continue
        for place in sorted(through):
            reached.setdefault(place, []).append(check)
    return reached


def _for(subject: str, function: str, reached: dict[tuple[str, str], list[Any]]) -> list[Any]:
    """The checks that run through a function, its own first; a constant's are those of the whole subject."""
    places = [one for one in reached if one == (subject, function) or (one[0] == subject and function.isupper())]
    checks = {id(check): check for place in places for check in reached[place]}
    own = function.replace("_", "-")
    return sorted(checks.values(), key=lambda check: check["method"] != own)


@contextmanager
def _made_wrong(tree: ast.Module, wrong: Wrong, module: ModuleType) -> Iterator[None]:
    """The wrong formula in the place of the right one, wherever it is known by name; both put back at the end."""
    right = getattr(wrong.node, wrong.attribute)
    setattr(wrong.node, wrong.attribute, wrong.instead)
    try:
        undo = _put_in(_run(tree, module), module)
    finally:
        setattr(wrong.node, wrong.attribute, right)
    try:
        yield
    finally:
        for held, name, old in undo:
            held[name] = old


def _run(tree: ast.Module, module: ModuleType) -> dict[str, Any]:
    """The module's functions and constants made anew; its kinds of rows stay the ones that others know."""
    late = [one for one in tree.body if isinstance(one, ast.ImportFrom) and one.module == "__future__"]
    anew = [one for one in tree.body if isinstance(one, ast.FunctionDef | ast.Assign | ast.AnnAssign)]
    names = {**OTHER_NAMES, **vars(module)}
    exec(compile(ast.Module([*late, *anew], []), str(module.__file__), "exec", dont_inherit=True), names)
    return names


def _put_in(names: dict[str, Any], module: ModuleType) -> list[tuple[dict[str, Any], str, Any]]:
    known: list[dict[str, Any]] = [vars(one) for name, one in list(sys.modules.items()) if name.startswith("generator") and one]
    instead = {}
    for name, old in list(vars(module).items()):
        if names[name] is not old and not name.startswith("__"):
            instead[id(old)] = (name, old, names[name])
    undo = []
    for held in [*known, METHODS, CHAINS, ALL]:
        for name, value in list(held.items()):
            own, old, new = instead.get(id(value), ("", None, None))
            # a number may be one object under many names
            if own and (name == own or isinstance(old, Method | FunctionType)):
                undo.append((held, name, old))
                held[name] = new
    return undo


if __name__ == "__main__":
    sys.exit(main())
