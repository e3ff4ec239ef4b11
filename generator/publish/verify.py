"""Is the building whole? Links and anchors, a page for every machine, nothing asked of any other computer, a manifest."""

import hashlib
import json
import re
from collections.abc import Iterable, Iterator
from html import unescape
from pathlib import Path
from urllib.parse import unquote, urldefrag

from generator.publish.refusal import NotPublished
from generator.say import say

MANIFEST = "manifest.json"
# one pass over the page; text typed by anyone has its quotes escaped, so it cannot look like an attribute
_ATTRIBUTE = re.compile(r"""\s(href|src|data|poster|action|id)\s*=\s*(?:"([^"]*)"|'([^']*)')""", re.IGNORECASE)
_CSS_URL = re.compile(r"""url\(\s*['"]?([^'")]+)""")
_OUTSIDE = re.compile(r"^(?:[a-z][a-z0-9+.-]*:)?//", re.IGNORECASE)


def verify(building: Path, pages: Iterable[str]) -> int:
    """Check the site in the folder and write its manifest; how many pages were looked at. Raises NotPublished with every fault found."""
    faults = [say("the page {page} is missing", page=page) for page in pages if not (building / page).is_file()]
    htmls = {path.relative_to(building).as_posix(): path.read_text(encoding="utf-8") for path in sorted(building.rglob("*.html"))}
    facts = {page: _facts(html) for page, html in htmls.items()}
    for page, (links, _) in facts.items():
        faults.extend(_bad_links(page, links, facts, building))
    for style in sorted(building.rglob("*.css")):
        faults.extend(_outside_css(style, building))
    if faults:
        shown = "\n".join(f"  {fault}" for fault in faults[:20])
        more = say("and {count} more", count=len(faults) - 20) if len(faults) > 20 else ""
        raise NotPublished(say("the new site is not whole:") + f"\n{shown}\n{more}".rstrip(), say("the site in place is as it was"))
    write_manifest(building)
    return len(htmls)


def write_manifest(building: Path) -> None:
    """The SHA-256 of every file, by its path."""
    hashes = {
        path.relative_to(building).as_posix(): hashlib.sha256(path.read_bytes()).hexdigest()
        for path in sorted(building.rglob("*"))
        if path.is_file() and path.name != MANIFEST
    }
    (building / MANIFEST).write_text(json.dumps(hashes, indent=0, sort_keys=True) + "\n", encoding="utf-8")


def _facts(html: str) -> tuple[tuple[tuple[str, str], ...], frozenset[str]]:
    """The links (attribute, target) and the ids of a page, each once."""
    found = dict.fromkeys((name.lower(), unescape(double or single)) for name, double, single in _ATTRIBUTE.findall(html))
    return tuple(one for one in found if one[0] != "id"), frozenset(target for name, target in found if name == "id")


def _bad_links(
    page: str, links: Iterable[tuple[str, str]], facts: dict[str, tuple[object, frozenset[str]]], building: Path
) -> Iterator[str]:
    folder = Path(page).parent
    for attribute, target in links:
        if target.startswith("data:"):
            continue
        if _OUTSIDE.match(target) or re.match(r"^(?:https?|javascript|ftp):", target, re.IGNORECASE):
            yield say("{page}: {attribute} leads off the machine: {target}", page=page, attribute=attribute, target=target[:80])
            continue
        path, anchor = urldefrag(target)
        wanted = _normal((folder / unquote(path)).as_posix()) if path else page
        if wanted in facts:
            if anchor and unquote(anchor) not in facts[wanted][1]:
                yield say("{page}: no place #{anchor} on {target}", page=page, anchor=anchor, target=wanted)
        elif not (building / wanted).is_file():
            yield say("{page}: there is no {target}", page=page, target=target[:80])


def _outside_css(style: Path, building: Path) -> Iterator[str]:
    for target in _CSS_URL.findall(style.read_text(encoding="utf-8", errors="replace")):
        if _OUTSIDE.match(target) or target.startswith("http"):
            yield say("{page}: leads off the machine: {target}", page=style.relative_to(building).as_posix(), target=target[:80])


def _normal(path: str) -> str:
    parts: list[str] = []
    for part in path.split("/"):
        if part == ".." and parts:
            parts.pop()
        elif part not in ("", "."):
            parts.append(part)
    return "/".join(parts)
