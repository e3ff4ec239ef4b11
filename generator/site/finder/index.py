"""What the finder searches: a script of entries, loaded by a tag, so that it works from a folder without a server."""

from __future__ import annotations

import json
import re
from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from html import unescape

from generator.say import say

# in the order groups stand in where they fit equally well
KINDS = ("machine", "position", "area", "part", "document", "word", "guide", "finding", "damage", "calculation")
_MOST = 1500  # letters of a guide's text under one heading


@dataclass(frozen=True)
class Entry:
    """One thing to find: its kind (of KINDS), its title, the text shown beside it, its url, and words found but not shown."""

    kind: str
    title: str
    text: str
    url: str
    keys: tuple[str, ...] = ()


def script(entries: Iterable[Entry]) -> str:
    """The index as a script; entries keep their order within a kind."""
    rows = [[KINDS.index(entry.kind), entry.title, entry.text, entry.url, " ".join(entry.keys)] for entry in entries]
    names = _kind_names()
    said = {
        "kinds": [names[kind] for kind in KINDS],
        "found": say("Found: {count}"),
        "more": say("and {count} more; type more to narrow it"),
        "none": say("Nothing found. One slip is forgiven; try fewer letters."),
        "rows": rows,
    }
    body = json.dumps(said, ensure_ascii=False, separators=(",", ":"))
    return f"window.seatbookIndex={body};\n"


def entries_of_guide(title: str, url: str, html: str) -> Iterator[Entry]:
    """A guide's entries: itself, its text heading by heading, and its words where it is a glossary (`<dt id=...>`)."""
    parts = re.split(r'<h[1-3][^>]*\sid="([^"]+)"[^>]*>(.*?)</h[1-3]>', html, flags=re.DOTALL)
    yield Entry("guide", title, "", url, (_plain(parts[0])[:_MOST],))
    for anchor, heading, text in zip(parts[1::3], parts[2::3], parts[3::3], strict=True):
        if _plain(heading) != title:
            yield Entry("guide", _plain(heading), title, f"{url}#{anchor}", (_plain(text)[:_MOST],))
    for anchor, word, meaning in re.findall(r'<dt[^>]*\sid="([^"]+)"[^>]*>(.*?)</dt>\s*<dd[^>]*>(.*?)</dd>', html, flags=re.DOTALL):
        yield Entry("word", _plain(word), _plain(meaning)[:120], f"{url}#{anchor}")


def _kind_names() -> dict[str, str]:
    return {
        "machine": say("Machines"),
        "position": say("Positions"),
        "area": say("Areas"),
        "part": say("Parts"),
        "document": say("Documents"),
        "word": say("Words"),
        "guide": say("Guides"),
        "finding": say("Findings"),
        "damage": say("Damage terms"),
        "calculation": say("Calculations"),
    }


def _plain(html: str) -> str:
    return " ".join(unescape(re.sub(r"<[^>]+>", " ", html)).split())
