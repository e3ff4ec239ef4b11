"""Reads every file of a plant folder into its model; all problems of all files in one run."""

import hashlib
from collections.abc import Iterator, Mapping
from dataclasses import dataclass, field
from pathlib import Path
from typing import Any

from pydantic import BaseModel

from generator.plant.check import validate
from generator.plant.model.document import Document
from generator.plant.model.library import Bearing, Fastener, Grease, Housing, Sleeve, Tool, Unit
from generator.plant.model.machine import Machine
from generator.plant.model.plant import Acceptance
from generator.plant.model.plant import Plant as PlantTyped
from generator.plant.model.second_language import SecondLanguage
from generator.plant.plant import Named
from generator.plant.problems import Problems, inside
from generator.plant.read import BIGGEST, Listing, Tree, read_listing, read_tree
from generator.say import say
from generator.value import Place

LIBRARY: dict[str, type[BaseModel]] = {
    "bearings": Bearing, "sleeves": Sleeve, "housings": Housing, "units": Unit, "greases": Grease, "fasteners": Fastener, "tools": Tool,
}  # fmt: skip

SECOND = "second_language.yml"


@dataclass
class Files:
    """Every file of the plant as typed; a file that could not be taken is absent and has its problems."""

    plant: PlantTyped | None = None
    accepted: list[Named[Acceptance]] = field(default_factory=list)
    library: dict[str, dict[str, Named[Any]]] = field(default_factory=lambda: {kind: {} for kind in (*LIBRARY, "documents")})
    machines: list[Named[Machine]] = field(default_factory=list)
    second: SecondLanguage | None = None
    digests: dict[str, str] = field(default_factory=dict)
    # kinds of which a file could not be taken: what their names are is not known, so nothing is said of names of that kind
    broken: set[str] = field(default_factory=set)


def load(folder: Path, problems: Problems) -> Files:
    """Every YAML file of the folder. The folder must be there; `plant.yml` missing is a problem."""
    files = Files()
    if not (folder / "plant.yml").is_file():
        problems.add(
            Place("plant.yml", 1),
            say("there is no plant.yml in {folder}", folder=folder),
            say("`seatbook start FOLDER` makes a small plant to begin from"),
        )
        return files
    files.plant = _taken(folder / "plant.yml", folder, PlantTyped, problems, files)
    _accepted(folder, problems, files)
    if (folder / SECOND).is_file():
        files.second = _taken(folder / SECOND, folder, SecondLanguage, problems, files)
    for kind, model in LIBRARY.items():
        _library(folder, kind, model, problems, files)
    for path in _yaml_in(folder / "library" / "documents"):
        document = _taken(path, folder, Document, problems, files)
        if document:
            _keep(files.library["documents"], str(document.document), document, _place(path, folder, document.document), problems)
    for path in _yaml_in(folder / "machines"):
        machine = _taken(path, folder, Machine, problems, files)
        if machine:
            files.machines.append(Named(str(machine.tag), machine, _place(path, folder, machine.tag)))
    _strangers(folder, problems)
    return files


def read_second_tree(folder: Path, problems: Problems) -> Tree | None:
    """The second language's file as it was typed, whole or not; None where there is none or it cannot be read."""
    return _tree(folder / SECOND, folder, problems, Files()) if (folder / SECOND).is_file() else None


def _taken(path: Path, folder: Path, model: type[Any], problems: Problems, files: Files) -> Any:
    tree = _tree(path, folder, problems, files)
    typed = validate(model, tree, problems) if tree is not None else None
    if typed is None:
        files.broken.add("machines" if model is Machine else "documents" if model is Document else "plant")
    return typed


def _tree(path: Path, folder: Path, problems: Problems, files: Files) -> Tree | None:
    shown = _known_file(path, folder, problems, files)
    return read_tree(path, shown, problems) if shown else None


def _known_file(path: Path, folder: Path, problems: Problems, files: Files) -> str | None:
    """How the file is shown, its digest kept; None where it leads out of the folder."""
    shown = path.relative_to(folder).as_posix()
    if not inside(folder, path):
        problems.add(Place(shown, 1), say("the file leads out of the plant folder"), say("put the file itself here, not a link"))
        return None
    try:
        fit = path.is_file() and path.stat().st_size <= BIGGEST
        files.digests[shown] = hashlib.sha256(path.read_bytes()).hexdigest() if fit else ""
    except OSError:
        files.digests[shown] = ""
    return shown


def _library(folder: Path, kind: str, model: type[BaseModel], problems: Problems, files: Files) -> None:
    path = folder / "library" / f"{kind}.yml"
    if not path.is_file():
        return
    tree = _tree(path, folder, problems, files)
    if tree is None:
        files.broken.add(kind)
    for name, body in (tree or {}).items():
        if not isinstance(body, Tree):
            files.broken.add(kind)
            problems.add(name.place, say("{name} has no fields", name=name), say("its fields stand under it, further in"), len(name))
            continue
        typed = validate(model, body, problems)
        if typed is None:
            files.broken.add(kind)
        else:
            files.library[kind][str(name)] = Named(str(name), typed, name.place)


def _accepted(folder: Path, problems: Problems, files: Files) -> None:
    path = folder / "accepted.yml"
    if not path.is_file():
        return
    shown = _known_file(path, folder, problems, files)
    for body in (read_listing(path, shown, problems) if shown else None) or Listing():
        if not isinstance(body, Tree):
            problems.add(
                getattr(body, "place", Place("accepted.yml", 1)),
                say("an acceptance is a mapping"),
                say("`- finding: seal misalignment` and its fields under it"),
            )
            continue
        typed = validate(Acceptance, body, problems)
        if typed is not None:
            files.accepted.append(Named(str(typed.finding), typed, body.place))


def _keep(shelf: dict[str, Named[Any]], name: str, typed: Any, place: Place, problems: Problems) -> None:
    if name in shelf:
        problems.add(place, say("{name} is there twice", name=name), say("the other is at {place}", place=shelf[name].place))
        return
    shelf[name] = Named(name, typed, place)


def _yaml_in(folder: Path) -> Iterator[Path]:
    if folder.is_dir():
        yield from sorted(path for path in folder.rglob("*.yml"))


def _place(path: Path, folder: Path, word: Any) -> Place:
    return getattr(word, "place", Place(path.relative_to(folder).as_posix(), 1))


def _strangers(folder: Path, problems: Problems) -> None:
    """A file that would silently not be read is worse than one that is refused."""
    known = {folder / "plant.yml", folder / "accepted.yml", folder / SECOND, *(folder / "library" / f"{kind}.yml" for kind in LIBRARY)}
    for path in sorted(folder.rglob("*")):
        shown = path.relative_to(folder)
        if not path.is_file() or any(part.startswith(".") for part in shown.parts) or path in known:
            continue
        if path.suffix == ".yaml":
            problems.add(
                Place(shown.as_posix(), 1), say("files here end in .yml"), say("rename it to {name}", name=path.with_suffix(".yml").name)
            )
        elif path.suffix == ".yml" and shown.parts[0] != "machines" and shown.parts[:2] != ("library", "documents"):
            names = ", ".join(sorted(p.relative_to(folder).as_posix() for p in known))
            problems.add(
                Place(shown.as_posix(), 1),
                say("no file of this name is read"),
                say("read are: {names}, machines/*.yml, library/documents/*.yml", names=names),
            )


def shared_digest(files: Files, of: Mapping[str, str] | None = None) -> str:
    """A hash of all that every machine's page depends on: the library, `plant.yml` and `accepted.yml`."""
    digests = of or files.digests
    text = "".join(f"{name}:{digest}" for name, digest in sorted(digests.items()) if not name.startswith("machines/"))
    return hashlib.sha256(text.encode()).hexdigest()
