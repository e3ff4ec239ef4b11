"""The thin adapter to MkDocs: it hands over pages made elsewhere. Reading, computing, rendering and finding never import mkdocs."""

from __future__ import annotations

import re
from collections.abc import Callable
from dataclasses import replace
from datetime import date
from pathlib import Path
from typing import Any

from markupsafe import Markup
from mkdocs.config import config_options as c
from mkdocs.config.base import Config
from mkdocs.config.defaults import MkDocsConfig
from mkdocs.exceptions import PluginError
from mkdocs.livereload import LiveReloadServer
from mkdocs.plugins import BasePlugin
from mkdocs.structure.files import File, Files, InclusionLevel
from mkdocs.structure.pages import Page as GuidePage

from generator.say import say
from generator.site.build import PlantRefused, Site, prepare
from generator.site.finder.index import entries_of_guide, script
from generator.site.frame import Frames, Page, links, root_from, slots_of
from generator.site.render import environment
from generator.site.words import script_words

INDEX = "assets/finder-index.js"


class SeatbookConfig(Config):  # type: ignore[no-untyped-call]
    """What stands under `seatbook:` in mkdocs.yml."""

    plant = c.Type(str, default="plant_data")
    on = c.Type(str, default="")


class Written(File):
    """A file that makes itself when MkDocs copies it: no source on disk, not in the navigation."""

    def __init__(self, url: str, config: MkDocsConfig, make: Callable[[], bytes]) -> None:
        super().__init__(url, None, config.site_dir, config.use_directory_urls, inclusion=InclusionLevel.NOT_IN_NAV)
        self.generated_by = "seatbook"
        self._make = make

    def copy_file(self, dirty: bool = False) -> None:  # noqa: ARG002 - MkDocs' signature
        path = Path(self.abs_dest_path)
        path.parent.mkdir(parents=True, exist_ok=True)
        path.write_bytes(self._make())


class SeatbookPlugin(BasePlugin[SeatbookConfig]):  # type: ignore[no-untyped-call]
    """MkDocs calls these in the order they stand in."""

    site: Site
    frames: Frames
    # what publishing has read and worked out already
    prepared: Site | None = None

    def on_config(self, config: MkDocsConfig) -> MkDocsConfig:
        """Read the plant here: MkDocs empties the old site right after, so what fails must fail now."""
        try:
            self.site = self.prepared or prepare(self._plant_folder(config), self._day())
        except PlantRefused as refused:
            raise PluginError(str(refused)) from refused
        self.guides: list[tuple[str, str, str]] = []
        # neither a page for a server's errors nor a list for outside search engines belongs to a site that is opened from a folder
        config.theme.static_templates.clear()
        return config

    def on_files(self, files: Files, *, config: MkDocsConfig) -> Files:
        """Our pages in, the theme's own scripts and styles out: the frame needs none of them."""
        pages = tuple(self.site.pages)
        made: dict[str, Callable[[], bytes]] = {page.url: self._writer(page) for page in pages} | dict(self.site.files)
        made[INDEX] = self._index
        for file in tuple(files):
            of_theme = file.src_dir not in (config.docs_dir, config.theme.custom_dir)
            if of_theme or file.dest_uri in made:
                files.remove(file)
        for url, make in made.items():
            files.append(Written(url, config, make))
        known = {file.dest_uri for file in files}
        self.around = replace(self.site.around, links=tuple(link for link in links() if link[1] in known))
        return files

    def on_page_markdown(self, markdown: str, *, page: GuidePage, config: MkDocsConfig, files: Files) -> str:  # noqa: ARG002
        """Guides may quote any value."""
        return environment().from_string(markdown).render(base=root_from(page.file.dest_uri), **self.site.guide_variables)

    def on_page_content(self, html: str, *, page: GuidePage, config: MkDocsConfig, files: Files) -> None:  # noqa: ARG002
        """The finder finds guides too."""
        self.guides.append((str(page.title), page.file.dest_uri, html))

    def on_env(self, env: Any, *, config: MkDocsConfig, files: Files) -> Any:  # noqa: ARG002
        """The theme is at hand now, and our pages are written next."""
        env.globals |= {"_": say, "seatbook": self.around, "script_words": script_words()}
        frame = env.get_template("main.html")
        self.frames = Frames(lambda root, slots: frame.render(base_url=root, slots=slots), self.around)
        return env

    def on_page_context(self, context: Any, *, page: GuidePage, config: MkDocsConfig, nav: Any) -> Any:  # noqa: ARG002
        """A guide in the same frame."""
        url = page.file.dest_uri
        up = (
            (say("Training"), "training/index.html")
            if url.startswith("training/") and not url.endswith("/index.html")
            else (say("Areas"), "index.html")
        )
        body = Markup('<div class="guide-text">{}</div>').format(Markup(_reachable(_without_title(page.content or ""))))
        guide = Page(url, str(page.title), body, kind="guide", back=None if url == "index.html" else up)
        return {**context, "slots": slots_of(guide, self.around), "base_url": root_from(url)}

    def on_serve(self, server: LiveReloadServer, *, config: MkDocsConfig, builder: Any) -> LiveReloadServer:  # noqa: ARG002
        """A change in the plant's files is a change of the site."""
        server.watch(str(self._plant_folder(config)))
        return server

    def _plant_folder(self, config: MkDocsConfig) -> Path:
        return (Path(config.config_file_path or ".").parent / self.config.plant).resolve()

    def _day(self) -> date:
        if not self.config.on:
            return date.today()
        try:
            return date.fromisoformat(self.config.on)
        except ValueError:
            raise PluginError(say("mkdocs.yml: on: {text} is not a day; write it as 2026-03-12", text=self.config.on)) from None

    def _writer(self, page: Page) -> Callable[[], bytes]:
        return lambda: self.frames.filled(page).encode()

    def _index(self) -> bytes:
        guides = (entry for title, url, html in self.guides for entry in entries_of_guide(title, url, html))
        return script((*self.site.finder_entries, *guides)).encode()


def _without_title(html: str) -> str:
    """The frame says the guide's title already."""
    return re.sub(r"<h1[^>]*>.*?</h1>", "", html, count=1, flags=re.DOTALL)


def _reachable(html: str) -> str:
    """A table that is wider than a phone is scrolled: by the keyboard too."""
    return html.replace("<table>", '<table tabindex="0">')
