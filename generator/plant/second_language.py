"""Whether a second language says all that it must: every safety message and every key term, none of them older than its source."""

from __future__ import annotations

import re
from collections.abc import Mapping
from datetime import date
from string import Formatter
from typing import Any

from generator.plant.model.second_language import Phrase, SecondLanguage
from generator.plant.problems import Problems
from generator.safety import source_of, sources
from generator.say import say
from generator.terms import TERMS
from generator.value import Place

FILE = "second_language.yml"


def check_second_language(typed: SecondLanguage, today: date, problems: Problems) -> None:
    """A missing, stale or damaged text is a problem: a caution never falls back silently."""
    if not re.fullmatch(r"[A-Za-z]{2,8}(-[A-Za-z0-9]{1,8})*", str(typed.language)):
        problems.add(
            _place(typed.language), say("{text} is no language tag", text=typed.language), say("two or three letters: de, pl, es; or es-MX")
        )
    _all(typed.messages, {identity: source_of(identity) for identity in sources()}, say("safety message"), problems)
    _all(typed.terms, {term: term for term in TERMS}, say("key term"), problems)
    for name, phrase in (*typed.messages.items(), *typed.terms.items()):
        _approved(str(name), phrase, today, problems)
    for identity, phrase in typed.messages.items():
        if str(phrase.says) == str(phrase.of):
            problems.add(_place(phrase.says), say("{name} says the same as its source", name=identity), say("the text in {language}", language=typed.name))


def _all(given: Mapping[Any, Phrase], wanted: Mapping[str, str], kind: str, problems: Problems) -> None:
    by_name = {str(name): (name, phrase) for name, phrase in given.items()}
    missing = [name for name in wanted if name not in by_name]
    if missing:
        problems.add(
            Place(FILE, 1),
            say("{kind} without a text in the second language: {names}", kind=kind, names=", ".join(missing)),
            say("`seatbook words` writes them into the file, to be filled in and approved"),
        )
    for name, (word, phrase) in by_name.items():
        if name not in wanted:
            problems.add(_place(word), say("no {kind} {name}", kind=kind, name=name), say("take it out, or see `seatbook words`"))
        else:
            _one(name, phrase, wanted[name], problems)


def _one(name: str, phrase: Phrase, source: str, problems: Problems) -> None:
    if str(phrase.of) != source:
        problems.add(
            _place(phrase.of),
            say("the text of {name} has changed since its second language was approved", name=name),
            say("it now says: {source}; have the second language approved anew", source=source),
        )
    wanted, given = facts_of(source), facts_of(str(phrase.says))
    if given is None:
        problems.add(
            _place(phrase.says), say("{name} has a brace that opens or closes nothing", name=name), say("braces stand round a fact alone: {facts}", facts=_listed(wanted))
        )  # fmt: skip
    elif given != wanted:
        problems.add(
            _place(phrase.says), say("{name} has not the same facts as its source", name=name), say("they are: {facts}", facts=_listed(wanted))
        )  # fmt: skip


def _approved(name: str, phrase: Phrase, today: date, problems: Problems) -> None:
    """Places held open that were left as they stood, and approvals of a day that has not come."""
    for key in ("says", "approved_by"):
        if not any(letter.isalpha() for letter in str(getattr(phrase, key))):
            problems.add(_place(getattr(phrase, key)), say("`{key}` of {name} has no words", key=key, name=name), say("fill it in; an entry that is wanting stops publishing"))  # fmt: skip
    if str(phrase.on.content) > today.isoformat():
        problems.add(
            _place(phrase.on.reason), say("{name} is approved on a day that has not come", name=name), say("the day it was found right, not after {day}", day=today.isoformat())
        )  # fmt: skip


def facts_of(text: str) -> frozenset[str] | None:
    """What is filled into a text, None where its braces are not in pairs."""
    try:
        found = list(Formatter().parse(text))
    except ValueError:
        return None
    return frozenset(name + (f"!{conversion}" if conversion else "") + (f":{spec}" if spec else "") for _, name, spec, conversion in found if name is not None)  # fmt: skip


def _listed(facts: frozenset[str] | None) -> str:
    return ", ".join(sorted("{" + fact + "}" for fact in facts or ())) or say("none")


def _place(word: Any) -> Place:
    return getattr(word, "place", Place(FILE, 1))
