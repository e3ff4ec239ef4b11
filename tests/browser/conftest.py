"""A browser that may open files and a server on this machine, and nothing else; every request to anywhere else is written down."""

from __future__ import annotations

import os
from collections.abc import Iterator
from datetime import date
from functools import partial
from http.server import SimpleHTTPRequestHandler, ThreadingHTTPServer
from pathlib import Path
from threading import Thread

import pytest
from playwright.sync_api import Browser, BrowserContext, Page, Request, sync_playwright

from generator.publish.publish import publish
from tests.browser.sample import sample_site
from tests.copies import copy_of_demo

CHROMIUM = os.environ.get("SEATBOOK_CHROMIUM", "/usr/bin/chromium")
FLAGS = [
    "--no-sandbox",
    "--disable-gpu",
    "--disable-background-networking",
    "--disable-component-update",
    "--disable-sync",
    "--no-first-run",
]
ALLOWED = ("file://", "http://127.0.0.1:", "data:", "blob:", "about:")
KIOSK = {"width": 1280, "height": 800}
PHONE = {"width": 360, "height": 740}
REFUSED = "Object.defineProperty(window, 'localStorage', { get() { throw new DOMException('refused', 'SecurityError'); } });"


@pytest.fixture(scope="session")
def browser() -> Iterator[Browser]:
    """One Chromium for all tests; they are left out where there is none."""
    if not Path(CHROMIUM).exists():
        pytest.skip(f"no Chromium at {CHROMIUM}; SEATBOOK_CHROMIUM says where it is")
    with sync_playwright() as playwright:
        browser = playwright.chromium.launch(executable_path=CHROMIUM, args=FLAGS)
        yield browser
        browser.close()


@pytest.fixture
def outside() -> list[str]:
    """The requests that left this machine: every test of a page asks that there are none."""
    return []


@pytest.fixture
def kiosk(browser: Browser, outside: list[str]) -> Iterator[Page]:
    """A page as large as the kiosk."""
    with_watcher = watched(browser.new_context(viewport=KIOSK), outside)
    yield with_watcher.new_page()
    with_watcher.close()


@pytest.fixture
def phone(browser: Browser, outside: list[str]) -> Iterator[Page]:
    """A page as large as a phone, touched."""
    with_watcher = watched(browser.new_context(viewport=PHONE, has_touch=True, is_mobile=True), outside)
    yield with_watcher.new_page()
    with_watcher.close()


def watched(context: BrowserContext, outside: list[str]) -> BrowserContext:
    """A context that writes down what leaves the machine."""

    def note(request: Request) -> None:
        if not request.url.startswith(ALLOWED):
            outside.append(request.url)

    context.on("request", note)
    return context


@pytest.fixture(scope="session")
def sample(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """A small site in our frame, without a plant."""
    return sample_site(tmp_path_factory.mktemp("sample"))


@pytest.fixture(scope="session")
def served(sample: Path) -> Iterator[str]:
    """The same site from a server on this machine; gives its address."""
    server = ThreadingHTTPServer(("127.0.0.1", 0), partial(Quiet, directory=str(sample)))
    Thread(target=server.serve_forever, daemon=True).start()
    yield f"http://127.0.0.1:{server.server_address[1]}"
    server.shutdown()


@pytest.fixture(scope="session")
def site(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """The real site of the demo plant."""
    folder = tmp_path_factory.mktemp("real")
    copy_of_demo(folder / "plant")
    publish(folder / "plant", folder / "site", date(2026, 11, 25))
    return folder / "site"


class Quiet(SimpleHTTPRequestHandler):
    """A server that says nothing."""

    def log_message(self, format: str, *args: object) -> None:  # noqa: A002 - the library's name
        """Nothing."""
