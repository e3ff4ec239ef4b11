"""The frame of every page: rendered once by the site generator for each depth, then filled. Never imports mkdocs."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass, field

from markupsafe import Markup, escape

from generator.say import say

SLOTS = ("title", "heading", "back", "issue", "foot", "body", "kind")
_MARK = "\u2402{}\u2402"


class FrameChanged(RuntimeError):
    """The frame did not come back with each of its slots once."""

    def __init__(self, slot: str, times: int) -> None:
        self.slot, self.times = slot, times
        super().__init__(f"the frame holds the slot {slot!r} {times} times, not once: site_overrides/main.html was changed")


@dataclass(frozen=True)
class Page:
    """A page of ours.

    `url` is from the site's root. `body` is its HTML, or what makes it when the page is written. `kind` is "home", "machine" (read at
    the kiosk), "desk" (smaller type), "paper" (a sheet) or "guide". `heading` where it is more than the title. `back`: words and url
    (from the root) of the way up. `issue` and `foot` where they differ from the site's.
    """

    url: str
    title: str
    body: str | Callable[[], str] = field(repr=False)
    kind: str = "desk"
    heading: Markup | str = ""
    back: tuple[str, str] | None = None
    issue: str = ""
    foot: str = ""

    @property
    def depth(self) -> int:
        """How many folders it lies under the root."""
        return self.url.count("/")


@dataclass(frozen=True)
class Around:
    """What the frame of every page says: the plant, its issue, the day it was judged on, and what its numbers give way to."""

    plant: str
    issue: str = ""
    on: str = ""
    banner: str = ""
    language: str = "en"
    links: tuple[tuple[str, str], ...] = ()

    def foot(self, code: str = "") -> str:
        """The foot of a page; with a check code where the page is a sheet of its own."""
        facts = {"plant": self.plant, "issue": self.issue or say("not issued yet"), "on": self.on}
        if code:
            return say("{plant}, mounting standard, {issue}, judged on {on}. Check code {code}.", code=code, **facts)
        return say("{plant}, mounting standard, {issue}, judged on {on}.", **facts)


def links() -> tuple[tuple[str, str], ...]:
    """Where every page's foot leads, in order."""
    return (
        (say("Areas"), "index.html"),
        (say("Findings"), "findings.html"),
        (say("What would release most"), "release.html"),
        (say("The year's plan"), "year.html"),
        (say("Documents"), "documents.html"),
        (say("Issues"), "revisions.html"),
        (say("Training"), "training/index.html"),
        (say("Calculation basis"), "basis.html"),
        (say("Glossary"), "glossary.html"),
        (say("Damage terms"), "damage.html"),
        (say("What this standard does not cover"), "not-covered.html"),
        (say("How to describe a machine"), "describe.html"),
    )


def root_from(url: str) -> str:
    """The way from a page to the site's root."""
    return "/".join([".."] * url.count("/")) or "."


def slots_of(page: Page, around: Around) -> dict[str, Markup]:
    """What a page puts in the frame, ready to stand in HTML."""
    body = page.body if isinstance(page.body, str) else page.body()
    back = Markup("")
    if page.back:
        back = Markup('<a class="button" href="{}/{}">\u2039 {}</a>').format(root_from(page.url), page.back[1], page.back[0])
    return {
        "title": escape(page.title),
        "heading": escape(page.heading or page.title),
        "back": back,
        "issue": escape(page.issue or around.issue),
        "foot": escape(page.foot or around.foot()),
        "body": Markup(body),
        "kind": escape(page.kind),
    }


class Frame:
    """A rendered frame, split at its slots."""

    def __init__(self, html: str) -> None:
        places = []
        for slot in SLOTS:
            mark = _MARK.format(slot)
            if html.count(mark) != 1:
                raise FrameChanged(slot, html.count(mark))
            places.append((html.index(mark), slot, len(mark)))
        self._parts: list[tuple[str, str]] = []
        at = 0
        for start, slot, length in sorted(places):
            self._parts.append((html[at:start], slot))
            at = start + length
        self._tail = html[at:]

    def filled(self, slots: Mapping[str, str]) -> str:
        """The page whole."""
        return "".join(f"{text}{slots[slot]}" for text, slot in self._parts) + self._tail


class Frames:
    """The frames by depth, each rendered when it is first needed. `render(root, slots)` is the site generator's part."""

    def __init__(self, render: Callable[[str, Mapping[str, str]], str], around: Around) -> None:
        self._render, self._around = render, around
        self._by_depth: dict[int, Frame] = {}

    def filled(self, page: Page) -> str:
        """A page in the frame of its depth."""
        if page.depth not in self._by_depth:
            self._by_depth[page.depth] = Frame(self._render(root_from(page.url), {slot: _MARK.format(slot) for slot in SLOTS}))
        return self._by_depth[page.depth].filled(slots_of(page, self._around))
