"""`mkdocs serve` follows an edit of the plant's files."""

from __future__ import annotations

import shutil
import socket
import subprocess
import sys
import time
from pathlib import Path
from urllib.request import urlopen

from tests.copies import copy_of_demo

HOUSE = Path(__file__).parents[2]


def test_an_edit_of_a_machine_is_served(tmp_path: Path) -> None:
    copy_of_demo(tmp_path / "plant_data")
    shutil.copytree(HOUSE / "docs_src", tmp_path / "docs_src")
    shutil.copytree(HOUSE / "site_overrides", tmp_path / "site_overrides")
    shutil.copy(HOUSE / "mkdocs.yml", tmp_path / "mkdocs.yml")
    with socket.socket() as free:
        free.bind(("127.0.0.1", 0))
        port = free.getsockname()[1]
    command = [sys.executable, "-m", "mkdocs", "serve", "-q", "-a", f"127.0.0.1:{port}"]
    server = subprocess.Popen(command, cwd=tmp_path, stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL)
    try:
        address = f"http://127.0.0.1:{port}/machines/WSH-04.html"
        assert served(address, "Destoner flume roll")
        machine = tmp_path / "plant_data" / "machines" / "WSH-04.yml"
        machine.write_text(
            machine.read_text(encoding="utf-8").replace("name: Destoner flume roll", "name: Stone catcher roll"), encoding="utf-8"
        )
        assert served(address, "Stone catcher roll")
    finally:
        server.terminate()
        server.wait(timeout=20)


def served(address: str, words: str) -> bool:
    """Whether the words come, within a time that is long enough for a busy machine."""
    end = time.monotonic() + 90
    while time.monotonic() < end:
        try:
            with urlopen(address, timeout=30) as answer:
                if words in answer.read().decode():
                    return True
        except OSError:
            pass
        time.sleep(0.5)
    return False
