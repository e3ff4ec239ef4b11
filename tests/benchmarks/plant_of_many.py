"""A plant of many machines, made of the demo's, published; against plain Markdown pages of the same content. Prints ratios of one run."""

from __future__ import annotations

import re
import resource
import sys
import tempfile
import time
from datetime import date
from html import unescape
from pathlib import Path

from generator.publish.publish import publish
from tests.copies import copy_of_demo

PLANT = Path(__file__).parents[2] / "plant_data"
ON = date(2026, 11, 25)


def many(count: int, folder: Path) -> None:
    """The demo plant with its machines again and again, under new tags; the records of the copies stay out."""
    copy_of_demo(folder)
    originals = sorted((folder / "machines").glob("*.yml"))
    for number in range(len(originals), count):
        source = originals[number % len(originals)]
        tag = f"{source.stem[:3]}-{100 + number}"
        text = source.read_text(encoding="utf-8").replace(source.stem, tag)
        (folder / "machines" / f"{tag}.yml").write_text(text, encoding="utf-8")


def markdown_site(site: Path, docs: Path) -> None:
    """Every page of the site again as a Markdown page with the same text and tables."""
    for page in site.rglob("*.html"):
        html = page.read_text(encoding="utf-8")
        main = re.search(r"<main id=\"main\">(.*?)</main>", html, re.DOTALL)
        body = main.group(1) if main else html
        rows = re.findall(r"<summary>(.*?)</summary>(.*?)</details>", body, re.DOTALL)
        lines = [f"# {page.stem}", ""]
        for name, reason in rows:
            lines += [f"## {plain(name)}", ""]
            cells = re.findall(r"<tr>(.*?)</tr>", reason, re.DOTALL)
            if cells:
                lines += ["| what | value | from | where |", "|---|---|---|---|"]
                lines += [
                    "| " + " | ".join(plain(c).replace("|", "/") for c in re.findall(r"<t[hd][^>]*>(.*?)</t[hd]>", row, re.DOTALL)) + " |"
                    for row in cells
                ]
            else:
                lines.append(plain(reason))
            lines.append("")
        if not rows:
            lines.append(plain(body))
        out = docs / page.relative_to(site).with_suffix(".md")
        out.parent.mkdir(parents=True, exist_ok=True)
        out.write_text("\n".join(lines), encoding="utf-8")


def plain_build(docs: Path, site: Path) -> float:
    """Seconds that the site generator takes for the Markdown pages, with its theme and search."""
    from mkdocs.commands.build import build
    from mkdocs.config import load_config

    config = docs.parent / "plain.yml"
    config.write_text(
        f"site_name: plain\ndocs_dir: {docs}\nsite_dir: {site}\ntheme: {{name: material, font: false, features: [navigation.prune, navigation.indexes]}}\nplugins: [search]\n"
    )
    start = time.perf_counter()
    build(load_config(str(config)))
    return time.perf_counter() - start


def plain(html: str) -> str:
    """Text without its markup."""
    return " ".join(unescape(re.sub(r"<[^>]+>", " ", html)).split())


def main(count: int) -> None:
    """Publish, publish again with one machine edited, build the same as Markdown; print what each took, and the ratios."""
    with tempfile.TemporaryDirectory() as folder:
        home = Path(folder)
        many(count, home / "plant")
        start = time.perf_counter()
        publish(home / "plant", home / "site", ON)
        whole = time.perf_counter() - start
        machine = home / "plant" / "machines" / "WSH-04.yml"
        machine.write_text(machine.read_text().replace("speed: 110 rpm", "speed: 112 rpm"))
        start = time.perf_counter()
        publish(home / "plant", home / "site", ON)
        again = time.perf_counter() - start
        memory = resource.getrusage(resource.RUSAGE_SELF).ru_maxrss / 1024
        markdown_site(home / "site", home / "docs")
        same = plain_build(home / "docs", home / "plain")
        print(
            f"{count} machines: publish {whole:.1f} s, one edited {again:.1f} s, the same as Markdown {same:.1f} s, memory {memory:.0f} MB"
        )
        print(f"publish / Markdown {whole / same:.2f}   one edited / whole {again / whole:.2f}")


if __name__ == "__main__":
    main(int(sys.argv[1]))
