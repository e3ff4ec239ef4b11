"""The command `seatbook`: one short function a command."""

from __future__ import annotations

import json
import sys
from datetime import date
from pathlib import Path
from typing import Any

import click

from generator import __version__

DAY = click.DateTime(formats=["%Y-%m-%d"])
PLANT = click.option(
    "--plant", "folder", default="plant_data", show_default=True, type=click.Path(path_type=Path), help="The folder with plant.yml in it."
)
ON = click.option(
    "--on",
    type=DAY,
    default=None,
    help="Judge as on this day (YYYY-MM-DD); today unless said. Acceptances, reviews and calibrations run out on it.",
)
JSON = click.option("--json", "as_json", is_flag=True, help="Give JSON, for other programs.")


@click.group(context_settings={"help_option_names": ["-h", "--help"], "max_content_width": 110})
@click.version_option(__version__, prog_name="seatbook")
def main() -> None:
    """A plant's own mounting standard for housed bearings, from its equipment YAML.

    \b
    seatbook start my-plant            a small plant to begin from
    seatbook check --plant my-plant    what is wrong in the files, and what the engineering objects to
    seatbook publish --plant my-plant  the site: my-plant is read, computed, verified, put in place
    seatbook show INT-02/A             a position written out, with the line each fact came from
    seatbook compute nut-travel        what a calculation takes; add name=value to work it out
    """


@main.command()
@PLANT
@ON
@JSON
def check(folder: Path, on: Any, as_json: bool) -> None:
    """Check the plant: problems in its files, then findings.

    Exit code 0: nothing, or advice and accepted findings only. 1: findings that hold a job or must be put right. 2: problems; nothing can be
    published until they are mended.
    """
    from generator.checking import check_report

    report = check_report(folder, _day(on))
    click.echo(json.dumps(report.as_json(), indent=1, ensure_ascii=False) if as_json else report.as_text())
    sys.exit(report.exit_code)


@main.command()
@PLANT
@ON
@click.option(
    "--site",
    default="site",
    show_default=True,
    type=click.Path(path_type=Path),
    help="Where the site shall stand. It is replaced in one step, and kept as it is if anything fails.",
)
def publish(folder: Path, on: Any, site: Path) -> None:
    """Publish the mounting standard: read, compute, build aside, verify, put in place.

    Findings do not stop a publication: what they hold is shown as HELD. Problems do, and the site in place stays as it was.
    """
    from generator.publish.publish import publish as do_publish
    from generator.publish.refusal import NotPublished

    try:
        done = do_publish(folder, site.absolute(), _day(on), say_progress=lambda line: click.echo(line, err=True))
    except NotPublished as refused:
        click.echo(refused.wrong, err=True)
        if refused.right:
            click.echo(refused.right, err=True)
        sys.exit(2)
    click.echo(done.as_text())


@main.command()
@click.argument("position", metavar="TAG/LETTER")
@PLANT
@ON
def show(position: str, folder: Path, on: Any) -> None:
    """Write a position out whole: every fact as it is meant here, and the line it came from."""
    from generator.showing import shown_position

    found, text = shown_position(folder, _day(on), position)
    click.echo(text, err=not found)
    sys.exit(0 if found else 2)


@main.command()
@click.argument("method", required=False)
@click.argument("inputs", nargs=-1, metavar="[NAME=VALUE]...")
@click.option(
    "--from",
    "case",
    type=click.Path(path_type=Path),
    help="A case file: `inputs:` with names and values, rows as lists, as a check has them.",
)
@JSON
def compute(method: str | None, inputs: tuple[str, ...], case: Path | None, as_json: bool) -> None:
    """Work one calculation out by hand.

    Without METHOD: all calculations. With METHOD alone: what it takes (name, symbol, unit) and gives. With NAME=VALUE: the result.
    A value is a number with its unit ("60 mm", "2 15/16 in", "3/4 turn") or a bare number in the unit listed.
    """
    from generator.computing import computed

    code, text = computed(method, inputs, case, as_json)
    click.echo(text, err=code != 0)
    sys.exit(code)


@main.command()
@click.argument("folder", type=click.Path(path_type=Path))
def start(folder: Path) -> None:
    """Make a small commented plant in FOLDER that passes `check`, to begin from."""
    from generator.starting import StartRefused, start_plant

    try:
        click.echo(start_plant(folder))
    except StartRefused as refused:
        click.echo(str(refused), err=True)
        sys.exit(2)


@main.command()
@PLANT
def schema(folder: Path) -> None:
    """Write the JSON Schema of each kind of file to FOLDER/schema, for an editor that completes and checks while typing."""
    from generator.plant.schema import write_schemas

    for path in write_schemas(folder):
        click.echo(path)


@main.command()
@PLANT
@click.option("--write", is_flag=True, help="Write the file; else it is shown.")
def words(folder: Path, write: bool) -> None:
    """Safety messages and key terms for a second language: FOLDER/second_language.yml with what is wanting; what is done stays.

    Exit code 0: nothing is wanting. 1: texts or approvals are wanting. 2: the file there is can't be read; it stays as it is.
    """
    from generator.words_to_translate import FILE, WordsRefused, words_to_translate

    try:
        wanting, text = words_to_translate(folder)
    except WordsRefused as refused:
        click.echo(str(refused), err=True)
        sys.exit(2)
    if write:
        (folder / FILE).write_text(text, encoding="utf-8")
    click.echo(f"{wanting} wanting in {folder / FILE}" if write else text)
    sys.exit(1 if wanting else 0)


def _day(on: Any) -> date:
    return on.date() if on else date.today()


if __name__ == "__main__":
    main()
