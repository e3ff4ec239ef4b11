"""Where two calculations answer one question they agree as closely as is said of them."""

from __future__ import annotations

import pytest

from generator.pairs import Pair, all_pairs


@pytest.mark.parametrize("pair", all_pairs(), ids=lambda pair: pair.question[:40])
def test_two_ways_to_one_answer_agree_as_closely_as_is_said(pair: Pair) -> None:
    assert pair.cases and pair.methods[0] != pair.methods[1]
    assert [case.case for case in pair.cases if abs(case.apart) > pair.within] == []


def test_both_rules_of_heat_are_known_to_part_where_it_is_hot() -> None:
    # handbook factors give 0.1 at 93 degC, halving every 15 K above 70 degC gives 0.346
    heat = next(pair for pair in all_pairs() if "heat-halving" in pair.methods)
    hot = next(case for case in heat.cases if case.case.startswith("93"))
    assert hot.apart > 1
