"""Holds a tree against its model; every error becomes a located problem with what would be right."""

from __future__ import annotations

from collections.abc import Iterable
from typing import Any, TypeVar, get_args

from pydantic import BaseModel, ValidationError

from generator.plant.model.loads import KINDS
from generator.plant.problems import Problems, nearest
from generator.plant.read import Listing, Tree, Word
from generator.say import say
from generator.value import Place

M = TypeVar("M", bound=BaseModel)


def validate(model: type[M], tree: Tree, problems: Problems) -> M | None:
    """The model of a tree, or None and its problems: unknown, missing and misshapen keys, and what the field kinds refuse."""
    try:
        return model.model_validate(tree)
    except ValidationError as errors:
        found = errors.errors(include_url=False)
    told: set[tuple[Any, ...]] = set()
    for error in found:
        path = _typed_path(tree, error["loc"])
        # a field of several kinds gives an error for each kind: one is enough for a reader
        key = (*path, error["type"] if error["type"] in ("missing", "extra_forbidden") else "")
        if key not in told:
            told.add(key)
            _tell(model, tree, error, path, problems)
    return None


def _typed_path(tree: Any, loc: Iterable[Any]) -> tuple[Any, ...]:
    """The part of an error's path that the file knows: pydantic adds names of its own for unions."""
    path: list[Any] = []
    node = tree
    steps = list(loc)
    for number, step in enumerate(steps):
        if isinstance(node, Tree) and isinstance(step, str) and step in node:
            node = node[next(k for k in node if k == step)]
            path.append(step)
        elif isinstance(node, Listing) and isinstance(step, int) and step < len(node):
            node = node[step]
            path.append(step)
        elif number == len(steps) - 1 and isinstance(node, Tree) and isinstance(step, str):
            path.append(step)
    return tuple(path)


def _tell(model: type[BaseModel], tree: Tree, error: Any, path: tuple[Any, ...], problems: Problems) -> None:
    kind, context = error["type"], error.get("ctx") or {}
    last = path[-1] if path else ""
    if kind == "missing":
        place = _place(tree, path[:-1])
        problems.add(place, say("`{key}` is missing here", key=last), _example(_model_at(model, tree, path[:-1]), last))
    elif kind == "extra_forbidden":
        known = _keys(_model_at(model, tree, path[:-1]))
        near = nearest(str(last), known)
        right = say("nearest known: `{key}`", key=near) if near else say("known here: {keys}", keys=", ".join(known))
        problems.add(_key_place(tree, path), say("no key `{key}` belongs here", key=last), right, len(str(last)))
    elif kind.startswith("union_tag"):
        load = _at(tree, path)
        place = load["kind"].place if isinstance(load, Tree) and "kind" in load and isinstance(load["kind"], Word) else _place(tree, path)
        named = str(load.get("kind", "")) if isinstance(load, Tree) else ""
        problems.add(place, say("no load is of kind {kind}", kind=named or "''"), say("one of: {words}", words=", ".join(KINDS)), len(named))
    elif kind in ("quantity", "shape"):
        node = _at(tree, path)
        problems.add(_place(tree, path), str(context.get("wrong", error["msg"])), str(context.get("right", "")), len(node) if isinstance(node, Word) else 1)
    else:
        shape = {"model_type": say("a mapping: keys and values, further in"), "dict_type": say("a mapping: names, and under each its fields"), "list_type": say("a list: [one, two]")}
        wrong = say("`{key}` has the wrong shape", key=last)
        problems.add(_place(tree, path), wrong, shape.get(kind, error["msg"]))


def _at(tree: Any, path: Iterable[Any]) -> Any:
    node = tree
    for step in path:
        if isinstance(node, Tree):
            node = next((node[k] for k in node if k == step), None)
        elif isinstance(node, Listing) and isinstance(step, int):
            node = node[step]
    return node


def _place(tree: Tree, path: tuple[Any, ...]) -> Place:
    node = _at(tree, path)
    place = getattr(node, "place", None)
    if isinstance(node, Tree) and path:
        return _key_place(tree, path)
    return place or _key_place(tree, path)


def _key_place(tree: Tree, path: tuple[Any, ...]) -> Place:
    parent = _at(tree, path[:-1]) if path else None
    if isinstance(parent, Tree):
        return next((k.place for k in parent if k == path[-1]), parent.place)
    node = _at(tree, path)
    return getattr(node, "place", tree.place)


def _model_at(model: type[BaseModel], tree: Tree, path: tuple[Any, ...]) -> type[BaseModel]:
    """The model that rules at a place, found by walking the fields' annotations."""
    here: Any = model
    node: Any = tree
    for step in path:
        node = next((node[k] for k in node if k == step), None) if isinstance(node, Tree) else node[step] if isinstance(node, Listing) and isinstance(step, int) else None
        if isinstance(here, type) and issubclass(here, BaseModel):
            field = next((f for n, f in here.model_fields.items() if (f.alias or n) == step), None)
            here = field.annotation if field else here
        else:
            here = _inside(here)
        here = _model_of(here, node) or here
    return here if isinstance(here, type) and issubclass(here, BaseModel) else model


def _inside(annotation: Any) -> Any:
    """What a dict or a list holds."""
    for one in (annotation, *get_args(annotation)):
        args = get_args(one)
        if args and getattr(one, "__origin__", None) in (dict, list):
            return args[-1]
    return annotation


def _model_of(annotation: Any, node: Any) -> Any:
    if isinstance(annotation, type) and issubclass(annotation, BaseModel):
        return annotation
    if isinstance(node, Tree) and str(node.get("kind", "")) in KINDS and "Tag" in repr(annotation):  # type: ignore[call-overload]
        return KINDS[str(node["kind"])]  # type: ignore[index]
    if getattr(annotation, "__origin__", None) in (dict, list):
        return None
    return next((found for one in get_args(annotation) if (found := _model_of(one, node)) is not None), None)


def _keys(model: type[BaseModel]) -> list[str]:
    return [field.alias or name for name, field in model.model_fields.items()]


def _example(model: type[BaseModel], key: Any) -> str:
    field = next((f for n, f in model.model_fields.items() if (f.alias or n) == key), None)
    if field is None or not field.examples:
        return say("give `{key}`", key=key)
    return say("`{key}: {example}` ({meaning})", key=key, example=field.examples[0], meaning=field.description)
