"""The frame is rendered once for each depth and filled; a frame that lost a slot is refused, never filled wrongly."""

from __future__ import annotations

from collections.abc import Mapping

import pytest
from markupsafe import Markup

from generator.site.frame import Around, Frame, FrameChanged, Frames, Page

AROUND = Around("Harrow & Sons", issue="issue 2, 2026-03-12", on="2026-11-25", banner="Stricter rules rule.")


def html(root: str, slots: Mapping[str, str]) -> str:
    return root + "|" + "|".join(slots[name] for name in ("title", "kind", "back", "heading", "issue", "body", "foot"))


def test_a_page_is_filled_and_what_is_text_is_escaped() -> None:
    page = Page(
        "machines/INT-02.html", "INT-02 < 3", "<p>body</p>", heading=Markup("<b>INT-02</b>"), back=("Intake & more", "areas/int.html")
    )
    assert Frames(html, AROUND).filled(page) == (
        "..|INT-02 &lt; 3|desk|"
        '<a class="button" href="../areas/int.html">\u2039 Intake &amp; more</a>|'
        "<b>INT-02</b>|issue 2, 2026-03-12|<p>body</p>|"
        "Harrow &amp; Sons, mounting standard, issue 2, 2026-03-12, judged on 2026-11-25."
    )


def test_a_sheet_names_its_check_code() -> None:
    assert AROUND.foot("B2-K7Q4").endswith("judged on 2026-11-25. Check code B2-K7Q4.")


def test_the_theme_is_asked_once_for_each_depth() -> None:
    asked: list[str] = []

    def render(root: str, slots: Mapping[str, str]) -> str:
        asked.append(root)
        return html(root, slots)

    frames = Frames(render, AROUND)
    for url in ("index.html", "findings.html", "machines/A.html", "machines/B.html", "a/b/c.html"):
        frames.filled(Page(url, "x", "y"))
    assert asked == [".", "..", "../.."]


def test_a_body_is_made_when_the_page_is_written_and_not_before() -> None:
    made: list[str] = []
    page = Page("x.html", "x", lambda: made.append("now") or "late body")
    assert made == []
    assert "late body" in Frames(html, AROUND).filled(page)
    assert made == ["now"]


@pytest.mark.parametrize("text", ["", "\u2402title\u2402 \u2402title\u2402"])
def test_a_frame_that_lost_or_doubled_a_slot_is_refused(text: str) -> None:
    with pytest.raises(FrameChanged):
        Frame(text)
