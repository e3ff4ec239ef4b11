"""A picture with words: beside it where there is width, under it on the phone."""

from __future__ import annotations

from collections.abc import Iterable

from generator.site.drawings.pen import Pen

PICTURE = 350.0  # the picture's width, the same in both layouts


def words_beside(pen: Pen, height: float, said: Iterable[tuple[str, str]], top: float = 0) -> float:
    """Writes (words, kind) one under the other, beside a picture from top to height; gives the y under picture and words."""
    narrow = pen.layout.narrow
    x, y = (4.0, height + 6) if narrow else (PICTURE + 40, top + 14)
    room = pen.layout.width - x - 4
    for words, kind in said:
        if words:
            y = pen.lines(x, y, words, room, kind) + 4
    return max(y, height) + 4
