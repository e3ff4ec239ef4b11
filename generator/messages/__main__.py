"""Makes the catalogue anew: every text of the program that a reader may see."""

from io import BytesIO
from pathlib import Path

from babel.messages.catalog import Catalog
from babel.messages.extract import extract_from_dir
from babel.messages.pofile import write_po

from generator.messages.described import described

HOUSE = Path(__file__).parents[1]
METHODS = [("**.py", "python"), ("**.html", "jinja2.ext:babel_extract")]
KEYWORDS = {"say": None, "told": None, "mark": None, "_": None, "gettext": None}


def main() -> None:
    """Write `seatbook.pot` beside this file; the same program gives the same bytes."""
    catalogue = Catalog(project="Seatbook", charset="utf-8")
    for file, _, message, comments, _ in extract_from_dir(HOUSE, METHODS, {"**.html": {"silent": "false", "trimmed": "true"}}, KEYWORDS):
        if message:
            catalogue.add(message, None, [(file, None)], auto_comments=comments)
    for text in sorted(described()):
        catalogue.add(text)
    out = BytesIO()
    write_po(out, catalogue, omit_header=True, sort_output=True, include_lineno=False, width=0)
    (Path(__file__).parent / "seatbook.pot").write_bytes(out.getvalue())


if __name__ == "__main__":
    main()
