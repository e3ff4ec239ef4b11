"""`second_language.yml`: safety messages and key terms in a second language, each approved, each with the text it was made from."""

from typing import Annotated, Any

from generator.plant.model.common import Day, Name, Part, Words, may, needed
from generator.plant.quantities import OneOf


class Phrase(Part):
    of: Words = needed("the text it was made from, as it stood then", "HELD")
    says: Words = needed("the same in the second language", "GESPERRT")
    approved_by: Name = needed("who found it right", "safety lead")
    on: Day = needed("the day", "2026-03-01")


class SecondLanguage(Part):
    language: Name = needed("the language's tag (BCP 47)", "de")
    name: Name = needed("what its speakers call it", "Deutsch")
    writes: Annotated[Any, OneOf("left to right", "right to left")] | None = may("which way it is written", "left to right")
    messages: dict[Name, Phrase] = needed(
        "by the id of the safety message", "{W6: {of: ..., says: ..., approved_by: safety lead, on: 2026-03-01}}"
    )
    terms: dict[Name, Phrase] = needed("by the term", "{HELD: {of: HELD, says: GESPERRT, approved_by: safety lead, on: 2026-03-01}}")
