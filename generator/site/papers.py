"""What leaves the screen: position sheets, record sheets, labels, the list to take along, and one file a machine for phones."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping
from dataclasses import dataclass
from functools import cached_property
from typing import Any

from generator.findings import held_jobs
from generator.mounting.sheet import MachineSheets, MountingStandard, ShaftSheet, Sheet
from generator.say import say
from generator.site.frame import Page
from generator.site.kept import kept
from generator.site.pages.label.page import label_view
from generator.site.pages.paper.page import paper_view
from generator.site.pages.phone.page import phone_file
from generator.site.pages.record.page import record_view
from generator.site.pages.sheet.page import sheet_view
from generator.site.pages.take.page import take_view
from generator.site.render import rendered
from generator.steps import Procedure
from generator.work.compose import procedures


@dataclass(frozen=True)
class Issued:
    """How a machine's papers are marked: the issue and its day as said, and the check code."""

    issue: str
    code: str
    plant: str
    foot: str


class Papers:
    """All papers of one machine; its procedures are composed once, when the first paper needs them."""

    def __init__(self, standard: MountingStandard, machine: MachineSheets, issued: Issued) -> None:
        self.standard, self.machine, self.issued = standard, machine, issued
        self.tag = machine.machine.tag

    @cached_property
    def jobs(self) -> Mapping[str, Mapping[str, Procedure]]:
        """By position, by job."""
        return procedures(self.standard, self.machine)

    @cached_property
    def held(self) -> Mapping[str, Any]:
        """The jobs held at each position, with the findings that hold them."""
        found = [finding for finding in self.standard.findings if finding.tag == self.tag]  # type: ignore[attr-defined]
        return {sheet.id: held_jobs(found, sheet.id) for sheet in self.machine.sheets}

    def pages(self) -> Iterator[Page]:
        """Every page, each made when it is written."""
        back = self.tag, f"machines/{self.tag}.html"
        paper = say("Paper for {tag}", tag=self.tag), f"paper/{self.tag}.html"
        yield self._page(f"paper/{self.tag}.html", say("Paper for {tag}", tag=self.tag), "paper", lambda: paper_view(self), "kiosk", back)
        yield self._page(f"take/{self.tag}.html", say("Take along for {tag}", tag=self.tag), "take", lambda: take_view(self), "kiosk", back)
        yield self._page(f"labels/{self.tag}.html", say("Labels of {tag}", tag=self.tag), "label", lambda: label_view(self), "sheet", paper)
        for shaft in self.machine.shafts:
            for sheet in shaft.sheets:
                yield from self._of(shaft, sheet, paper)

    def _of(self, shaft: ShaftSheet, sheet: Sheet, back: tuple[str, str]) -> Iterator[Page]:
        letter = sheet.position.letter
        title, url = say("Position sheet {id}", id=f"{self.tag} {letter}"), f"sheets/{self.tag}-{letter}.html"
        yield self._page(url, title, "sheet", lambda: sheet_view(self, shaft, sheet), "sheet", back)
        title, url = say("Record sheet {id}", id=f"{self.tag} {letter}"), f"records/{self.tag}-{letter}.html"
        yield self._page(url, title, "record", lambda: record_view(self, shaft, sheet), "sheet", back)

    def phone(self) -> bytes:
        """The file for phones, whole in itself."""
        return kept(self.standard.plant, self.machine.machine, lambda: phone_file(self), "phone").encode()

    def _page(self, url: str, title: str, template: str, view: Callable[[], Any], kind: str, back: tuple[str, str]) -> Page:
        def body() -> str:
            return kept(self.standard.plant, self.machine.machine, lambda: str(rendered(f"{template}/page.html", **view())), url)

        return Page(url, title, body, kind=kind, back=back, issue=self.issued.issue, foot=self.issued.foot)
