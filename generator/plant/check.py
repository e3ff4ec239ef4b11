"""Holds a tree against its model; every error becomes a located problem with what would be right."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from types import UnionType
from typing import Annotated, Any, TypeVar, Union, get_args, get_origin

from pydantic import BaseModel, Tag, ValidationError

from generator.plant.problems import Problems, nearest
from generator.plant.read import Listing, Tree, Word
from generator.say import say

M = TypeVar("M", bound=BaseModel)


def validate(model: type[M], tree: Tree, problems: Problems) -> M | None:
    """The model of a tree, or None and its problems: unknown, missing and misshapen keys, and what the field kinds refuse."""
    try:
        return model.model_validate(tree)
    except ValidationError as bad:
        errors = bad.errors(include_url=False)
    at: dict[_Spot, list[Any]] = {}
    for error in errors:
        at.setdefault(_spot(model, error["loc"]), []).append(error)
    above = {spot.path[:depth] for spot in at for depth in range(len(spot.path))}
    for spot, here in at.items():
        error = _telling(tree, spot, here, above)
        if error is not None:
            _tell(tree, spot, error, problems)
    return None


@dataclass(frozen=True)
class _Spot:
    """Where in the file an error is (keys and indexes), and the model of the mapping it is in."""

    path: tuple[Any, ...]
    owner: type[BaseModel]


def _spot(model: type[BaseModel], loc: Iterable[Any]) -> _Spot:
    """Follows an error's path through the model: of its steps, those that name a member of a union are pydantic's own."""
    here: Any = model
    owner, path = model, []
    for step in loc:
        members = _members(here)
        if len(members) > 1:
            here = next((member for member in members if _label(member) == step), Any)
            continue
        here = _bare(members[0])
        if step == "[key]":
            break
        path.append(step)
        if isinstance(here, type) and issubclass(here, BaseModel):
            owner, field = here, _field(here, step)
            here = Any if field is None else field.annotation
        else:
            here = (get_args(here) or (Any,))[-1]
    return _Spot(tuple(path), owner)


def _members(annotation: Any) -> list[Any]:
    """The members of a union, None left out; the annotation itself where it is none."""
    bare = _bare(annotation)
    if get_origin(bare) not in (Union, UnionType):
        return [annotation]
    members = [member for member in get_args(bare) if member is not type(None)]
    return members if len(members) > 1 else _members(members[0])


def _bare(annotation: Any) -> Any:
    return _bare(get_args(annotation)[0]) if get_origin(annotation) is Annotated else annotation


def _label(member: Any) -> str:
    """What pydantic calls a member of a union in an error's path."""
    tag = next((one.tag for one in getattr(member, "__metadata__", ()) if isinstance(one, Tag)), None)
    return tag or str(getattr(_bare(member), "__name__", ""))


def _telling(tree: Tree, spot: _Spot, errors: list[Any], above: set[tuple[Any, ...]]) -> Any:
    """The one of several errors at a spot that helps: a field of several kinds gives one for each kind."""
    node = _at(tree, spot.path)
    if isinstance(node, Word):
        refused = [error for error in errors if error["type"] == "quantity"]
        return {**refused[0], "also": refused[1:]} if refused else errors[0]
    return None if isinstance(node, Tree) and spot.path in above else errors[0]


def _tell(tree: Tree, spot: _Spot, error: Any, problems: Problems) -> None:
    kind, last = error["type"], spot.path[-1] if spot.path else ""
    if kind == "missing":
        _tell_missing(tree, spot, str(last), problems)
    elif kind == "extra_forbidden":
        _tell_unknown(tree, spot, str(last), problems)
    elif kind.startswith("union_tag"):
        _tell_kind(tree, spot, error["ctx"], problems)
    elif kind in ("quantity", "shape"):
        rights = dict.fromkeys(one["ctx"]["right"] for one in (error, *error.get("also", ())))
        _add(problems, _what(tree, spot.path), error["ctx"]["wrong"], _either(list(rights)))
    else:
        key = last if isinstance(last, str) else say("entry {number} of the list", number=last + 1)
        _add(problems, _what(tree, spot.path), say("`{key}` has the wrong shape", key=key), _shape(kind))


def _tell_missing(tree: Tree, spot: _Spot, key: str, problems: Problems) -> None:
    above = _at(tree, spot.path[:-1])
    known = _known(spot.owner)
    misspelt = isinstance(above, Tree) and any(nearest(word, known) == key for word in above if word not in known)
    if isinstance(above, Tree) and (key in above.refused or misspelt):
        return
    field = _field(spot.owner, key)
    right = say("give `{key}`", key=key)
    if field is not None and field.examples:
        right = say("`{key}: {example}` ({meaning})", key=key, example=field.examples[0], meaning=field.description)
    _add(problems, _what(tree, spot.path[:-1]), say("`{key}` is missing here", key=key), right)


def _tell_unknown(tree: Tree, spot: _Spot, key: str, problems: Problems) -> None:
    known = _known(spot.owner)
    near = nearest(key, known)
    right = say("nearest known: `{key}`", key=near) if near else say("known here: {keys}", keys=", ".join(known))
    above = _at(tree, spot.path[:-1])
    _add(problems, above.key(key), say("no key `{key}` belongs here", key=key[:60]), right)


def _tell_kind(tree: Tree, spot: _Spot, context: Any, problems: Problems) -> None:
    node = _at(tree, spot.path)
    kind = node.under("kind") if isinstance(node, Tree) else None
    known = str(context.get("expected_tags", "")).replace("'", "")
    if not isinstance(node, Tree):
        _add(problems, _what(tree, spot.path), say("a mapping belongs here"), say("`kind: ...` and its fields, further in"))
    elif isinstance(kind, Word):
        near = nearest(kind, known.split(", "))
        right = say("nearest known: {name}; one of: {words}", name=near, words=known) if near else say("one of: {words}", words=known)
        _add(problems, kind, say("no kind {name} belongs here", name=kind[:60] or "''"), right)
    elif "kind" not in node.refused:
        right = say("one of: {words}", words=known) if known else say("`kind: ...` and its fields")
        _add(problems, _what(tree, spot.path), say("`{key}` is missing here", key="kind"), right)


def _shape(kind: str) -> str:
    if kind.startswith("model") or kind.startswith("dict"):
        return say("a mapping: a line each of `key: value`, further in")
    return say("a list: [one, two]")


def _either(rights: list[str]) -> str:
    return say("{one}; or {other}", one=rights[0], other=_either(rights[1:])) if len(rights) > 1 else rights[0]


def _add(problems: Problems, what: Any, wrong: str, right: str) -> None:
    problems.add(what.place, wrong, right, what.length if isinstance(what, Word) else 1)


def _at(tree: Any, path: Iterable[Any]) -> Any:
    node = tree
    for step in path:
        if isinstance(node, Tree):
            node = node.under(step)
        elif isinstance(node, Listing) and isinstance(step, int):
            node = node[step]
        else:
            return None
    return node


def _what(tree: Tree, path: tuple[Any, ...]) -> Any:
    """What to point at: a word itself; of a mapping or list the key it stands under, since that is what one looks for."""
    node, above = _at(tree, path), _at(tree, path[:-1])
    key = above.key(path[-1]) if path and isinstance(above, Tree) else None
    if key is not None and not isinstance(node, Word):
        return key
    return tree if node is None else node


def _known(model: type[BaseModel]) -> list[str]:
    return [field.alias or name for name, field in model.model_fields.items()]


def _field(model: type[BaseModel], key: str) -> Any:
    return next((field for name, field in model.model_fields.items() if (field.alias or name) == key), None)
