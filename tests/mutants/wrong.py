"""One formula made wrong in one place: which places there are, and what stands there instead."""

from __future__ import annotations

import ast
from collections.abc import Iterator
from dataclasses import dataclass
from typing import Any

OPERATORS: dict[type[ast.operator], type[ast.operator]] = {
    ast.Add: ast.Sub, ast.Sub: ast.Add, ast.Mult: ast.Div, ast.Div: ast.Mult, ast.Pow: ast.Mult,
}  # fmt: skip
# the end that belongs or not, then the other way round
COMPARISONS: dict[type[ast.cmpop], tuple[type[ast.cmpop], ...]] = {
    ast.Lt: (ast.LtE, ast.Gt),
    ast.LtE: (ast.Lt, ast.GtE),
    ast.Gt: (ast.GtE, ast.Lt),
    ast.GtE: (ast.Gt, ast.LtE),
    ast.Eq: (ast.NotEq,),
    ast.NotEq: (ast.Eq,),
}
NAMES = {"min": "max", "max": "min", "ceil": "floor", "floor": "ceil", "sin": "cos", "cos": "sin"}
# what a reader is told, and what labels a number, is no formula
TEXTS = {"say", "Refused", "Is", "Citation", "Need"}
# a smaller figure added to a side of a comparison is room for the last bit
LAST_BIT = 1e-6


@dataclass(frozen=True)
class Wrong:
    """One place of a formula and what stands there instead."""

    function: str
    line: int
    change: str
    node: Any
    attribute: str
    instead: Any


def wrongs_in(tree: ast.Module) -> list[Wrong]:
    """All that can be made wrong in the formulas of a module: its functions, and its constants that are figures."""
    found: list[Wrong] = []
    for part in tree.body:
        if isinstance(part, ast.FunctionDef):
            figures = [one for one in (*part.args.defaults, *part.args.kw_defaults) if one]
            for root in (*figures, *part.body):
                found += _below(root, root, part.name)
        elif isinstance(part, ast.Assign) and not any(isinstance(one, ast.Call) for one in ast.walk(part.value)):
            found += _below(part.value, part.value, ast.unparse(part.targets[0]))
    return found


def _below(node: ast.AST, parent: ast.AST, function: str) -> Iterator[Wrong]:
    if isinstance(node, ast.Call) and isinstance(node.func, ast.Name) and node.func.id in TEXTS:
        return
    for attribute, instead in _instead(node, parent):
        # a number alone tells nobody which one it is
        around = parent if isinstance(node, ast.Constant | ast.UnaryOp | ast.Name) and isinstance(parent, ast.expr | ast.keyword) else node
        old = getattr(node, attribute)
        line, before = getattr(node, "lineno", 0), ast.unparse(around)
        setattr(node, attribute, instead)
        change = f"{before} -> {ast.unparse(around)}"
        setattr(node, attribute, old)
        yield Wrong(function, line, change, node, attribute, instead)
    for name, below in ast.iter_fields(node):
        if name in {"annotation", "returns", "decorator_list"}:
            continue
        for one in below if isinstance(below, list) else [below]:
            if isinstance(one, ast.AST):
                yield from _below(one, node, function)


def _instead(node: Any, parent: ast.AST) -> Iterator[tuple[str, Any]]:
    if isinstance(node, ast.Constant) and type(node.value) in {int, float} and not _only_the_last_bit(node, parent):
        figure: Any = node.value
        yield "value", figure + 1 if isinstance(figure, int) else figure * 1.01 if figure else 0.01
    elif isinstance(node, ast.BinOp | ast.AugAssign) and type(node.op) in OPERATORS:
        yield "op", OPERATORS[type(node.op)]()
    elif isinstance(node, ast.Compare):
        for i, op in enumerate(node.ops):
            for other in COMPARISONS.get(type(op), ()):
                end = COMPARISONS[type(op)][0] is other and len(COMPARISONS[type(op)]) > 1
                if not (end and any(_has_room(side) for side in (node.left, *node.comparators))):
                    yield "ops", [*node.ops[:i], other(), *node.ops[i + 1 :]]
    elif isinstance(node, ast.UnaryOp) and isinstance(node.op, ast.USub):
        yield "op", ast.UAdd()
    elif isinstance(node, ast.Name) and isinstance(node.ctx, ast.Load) and node.id in NAMES:
        yield "id", NAMES[node.id]


def _only_the_last_bit(node: Any, parent: ast.AST) -> bool:
    """The room of a comparison and the places of a `round`: a hundredth more of them is nothing a source could tell."""
    if isinstance(parent, ast.Call) and isinstance(parent.func, ast.Name) and parent.func.id == "round":
        return parent.args[1:] == [node]
    return _has_room(parent) and 0 < abs(node.value) <= LAST_BIT


def _has_room(side: Any) -> bool:
    """A side of a comparison with room for the last bit: a figure that lies at the very end of that room has no source."""
    if isinstance(side, ast.BinOp) and isinstance(side.op, ast.Add | ast.Sub):
        side = side.right
    if isinstance(side, ast.UnaryOp):
        side = side.operand
    return isinstance(side, ast.Constant) and isinstance(side.value, float) and 0 < abs(side.value) <= LAST_BIT
