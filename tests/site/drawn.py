"""Reading a drawing back: its named parts, its arrows, its words and the room they take."""

from __future__ import annotations

import re
from math import atan2, degrees
from xml.etree import ElementTree

import pytest
from markupsafe import Markup

from generator.site.drawings.pen import NARROW, WIDE, Drawn, Layout
from generator.site.drawings.words import text_width

SVG = "{http://www.w3.org/2000/svg}"
ENDS = ("drive end", "far end")
LAYOUTS = pytest.mark.parametrize("layout", [WIDE, NARROW], ids=["wide", "narrow"])
LONG = "the end beside the big drying drum gearbox, with a name as long as a name may be on this plant, and then a little more"
UNBROKEN = "averyverylongwordwithoutanyspaceinit" * 3


def mm(size: float) -> Drawn:
    return Drawn(size, f"{size:.2f}\u00a0mm".replace("-", "\u2212"))


def parsed(svg: Markup) -> ElementTree.Element:
    return ElementTree.fromstring(str(svg))


def part(root: ElementTree.Element, name: str) -> list[ElementTree.Element]:
    """The marks of a named part; it must have been drawn."""
    found = [mark for group in root.iter(f"{SVG}g") if group.get("data-part") == name for mark in group]
    assert found, f"{name} is not drawn"
    return found


def points(mark: ElementTree.Element) -> list[tuple[float, float]]:
    return [(float(x), float(y)) for x, y in re.findall(r"(-?[\d.]+),(-?[\d.]+)", mark.get("d", ""))]


def middle(marks: list[ElementTree.Element], axis: int = 0) -> float:
    values = [point[axis] for mark in marks for point in points(mark)]
    return (min(values) + max(values)) / 2


def tip(marks: list[ElementTree.Element]) -> tuple[tuple[float, float], tuple[float, float]]:
    """The point of the first arrow's head, and the middle of the head's back."""
    head = next(mark for mark in marks if "tip" in mark.get("class", ""))
    point, one, other = points(head)
    return point, ((one[0] + other[0]) / 2, (one[1] + other[1]) / 2)


def texts(root: ElementTree.Element) -> list[str]:
    return ["".join(text.itertext()) for text in root.iter(f"{SVG}text")]


def boxes(root: ElementTree.Element, layout: Layout) -> list[tuple[float, float, float, float, str]]:
    """Where each text stands at the most: left, top, right, foot, words."""
    found = []
    for text in root.iter(f"{SVG}text"):
        kind, words = text.get("class", ""), "".join(text.itertext())
        size = {"strong": layout.strong, "letter": layout.letter}.get(kind, layout.text)
        width, x, y = text_width(words, size, bold=bool(kind)), float(text.get("x", "nan")), float(text.get("y", "nan"))
        left = {"start": x, "middle": x - width / 2, "end": x - width}[text.get("text-anchor", "start")]
        found.append((left, y - size * 0.74, left + width, y + size * 0.2, words))
    return found


def assert_words_fit(svg: Markup, layout: Layout) -> None:
    root = parsed(svg)
    width, height = (float(number) for number in root.get("viewBox", "").split()[2:])
    placed = boxes(root, layout)
    for left, top, right, bottom, words in placed:
        assert left >= -0.1 and right <= width + 0.1 and top >= -0.1 and bottom <= height + 0.1, f"{words!r} stands outside"
    for i, (left, top, right, bottom, words) in enumerate(placed):
        for left2, top2, right2, bottom2, words2 in placed[i + 1 :]:
            apart_across = right <= left2 + 0.1 or right2 <= left + 0.1
            assert apart_across or bottom <= top2 + 0.1 or bottom2 <= top + 0.1, f"{words!r} stands on {words2!r}"


def angle_of(marks: list[ElementTree.Element]) -> float:
    """Where a mark of the nut's face stands, in degrees clockwise from 12 o'clock."""
    x, y = points(marks[0])[0]
    return degrees(atan2(x - 175, 176 - y)) % 360


def bearing_of(point: tuple[float, float], centre: tuple[float, float]) -> float:
    """Where a point stands seen from a centre, in degrees clockwise from 12 o'clock."""
    return degrees(atan2(point[0] - centre[0], centre[1] - point[1])) % 360


def circles(marks: list[ElementTree.Element]) -> list[tuple[float, float, float]]:
    """Centre and radius of every circle in the marks and the groups among them."""
    found = [one for mark in marks for one in mark.iter(f"{SVG}circle")]
    return [(float(one.get("cx", "nan")), float(one.get("cy", "nan")), float(one.get("r", "nan"))) for one in found]


def span(marks: list[ElementTree.Element]) -> tuple[float, float, float, float]:
    """Left, top, right, bottom of all marks, words aside."""
    found = []
    for mark in (one for outer in marks for one in outer.iter()):
        if mark.tag == f"{SVG}rect":
            x, y, wide, high = (float(mark.get(key, "nan")) for key in ("x", "y", "width", "height"))
            found += [(x, y), (x + wide, y + high)]
        elif mark.tag == f"{SVG}circle":
            x, y, r = (float(mark.get(key, "nan")) for key in ("cx", "cy", "r"))
            found += [(x - r, y - r), (x + r, y + r)]
        elif mark.tag == f"{SVG}path":
            found += points(mark)
    return min(x for x, _ in found), min(y for _, y in found), max(x for x, _ in found), max(y for _, y in found)


def assert_told(svg: Markup, layout: Layout) -> None:
    """Words inside and apart, marks inside, no text of a size of its own, and a title that is more than a name."""
    assert_words_fit(svg, layout)
    root = parsed(svg)
    width, height = (float(number) for number in root.get("viewBox", "").split()[2:])
    drawn = [mark for mark in root if mark.tag not in (f"{SVG}defs", f"{SVG}title", f"{SVG}desc")]
    left, top, right, bottom = span(drawn)
    assert left >= -0.1 and top >= -0.1 and right <= width + 0.1 and bottom <= height + 0.1
    assert "font-size" not in svg
    assert root.get("role") == "img" and len(str(root[0].text).split()) > 3 and str(root[1].text)
