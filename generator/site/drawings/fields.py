"""The fields to touch: a bearing's letter, its role, one more line; hatched at the side where it is held."""

from __future__ import annotations

from dataclasses import dataclass

from markupsafe import escape

from generator.site.drawings.pen import Layout, Pen
from generator.site.drawings.strip import Strip, Support, role, second_line
from generator.site.drawings.words import apart, text_width, wrap

_GAP = 12.0  # between two targets for gloved hands
_LEAST = 56.0
_STRIP = 20.0


@dataclass(frozen=True)
class Field:
    """A field, its text broken to lines, its size. On the phone the lines stand under the letter, else beside it."""

    support: Support
    role: str
    rows: tuple[str, ...]
    letter_room: float
    width: float
    height: float


def field(support: Support, strip: Strip, pen: Pen, most: float) -> Field:
    """The field of a bearing, no wider than the most."""
    layout = pen.layout
    letter = text_width(support.letter, layout.letter, bold=True) + 20
    strip_room = _STRIP + 4 if support.held else 0
    start = 10 if layout.narrow else letter
    line = second_line(support, strip)
    rows = tuple(wrap(line, most - start - 10 - strip_room, layout.text, bold=support.held)) if line else ()
    ends = [letter + text_width(role(support), layout.strong, bold=True)] + [
        start + text_width(row, layout.text, bold=support.held) for row in rows
    ]
    return Field(support, role(support), rows, letter, min(most, max(ends) + 12 + strip_room), max(_LEAST, _block(layout, rows) + 10))


def field_rows(pen: Pen, strip: Strip, wanted: list[tuple[float, Support]], top: float) -> float:
    """Draws fields in order above their bearings, in as many rows as they need; gives the y under them."""
    layout = pen.layout
    across = min(len(wanted), 2 if layout.narrow else 4)
    most = (layout.width - 4 - _GAP * (across - 1)) / max(across, 1)
    fields = [(x, field(support, strip, pen, most)) for x, support in wanted]
    total = sum(one.width for _, one in fields) + _GAP * (len(fields) - 1)
    each = len(fields) if total <= layout.width - 4 else across
    for start in range(0, len(fields), each):
        row = fields[start : start + each]
        height = max(one.height for _, one in row)
        sizes = (
            [(x, one.width) for x, one in row]
            if each == len(fields)
            else [(layout.width / each * (i + 0.5), one.width) for i, (_, one) in enumerate(row)]
        )
        for centre, (_, one) in zip(apart(sizes, 2, layout.width - 2, _GAP), row, strict=True):
            draw_field(pen, one, centre - one.width / 2, top, height)
        top += height + _GAP
    return top - _GAP


def draw_field(pen: Pen, one: Field, x: float, y: float, height: float) -> None:
    """One field, a link with nothing but its words in it."""
    layout = pen.layout
    pen.out.append(f'<a href="#{escape(one.support.anchor or one.support.letter)}">')
    pen.rect(x, y, x + one.width, y + height, "field")
    if one.support.held:
        pen.rect(x + one.width - _STRIP - 3, y + 3, x + one.width - 3, y + height - 3, "blank", "held")
    top = y + (height - _block(layout, one.rows)) / 2
    if layout.narrow:
        pen.text(x + 10, top + layout.letter * 0.84, one.support.letter, "letter")
        pen.text(x + one.letter_room, top + layout.letter * 0.84, one.role, "strong")
        foot = top + layout.letter * 0.9
    else:
        pen.text(x + 10, y + height / 2 + layout.letter * 0.36, one.support.letter, "letter")
        foot = top + layout.strong * 0.9
        pen.text(x + one.letter_room, foot, one.role, "strong")
    for row in one.rows:
        foot += layout.text * 1.25
        pen.text(x + (10 if layout.narrow else one.letter_room), foot, row, "bold" if one.support.held else "")
    pen.out.append("</a>")


def _block(layout: Layout, rows: tuple[str, ...]) -> float:
    return (layout.letter if layout.narrow else layout.strong * 1.15) + len(rows) * layout.text * 1.25
