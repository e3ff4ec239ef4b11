"""A shaft as the crew sees it: what holds it and how, where its nuts are, which way it turns and grows; each bearing a field to touch.

Lengths along the shaft, in mm, are from the face of its first end. "first" and "second" are its ends.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from typing import Literal

from generator.say import say
from generator.site.drawings.pen import Drawn

End = Literal["first", "second"]
Turns = Literal["clockwise", "anticlockwise", "both ways", ""]


@dataclass(frozen=True)
class Section:
    """A length of one diameter, up to `to`."""

    to: float
    diameter: float


@dataclass(frozen=True)
class Float:
    """How far a free bearing may move toward each end."""

    first: Drawn
    second: Drawn


@dataclass(frozen=True)
class Support:
    """One bearing. `second_line`: what stands under its role in the field; where it is empty, the float is said there.

    `held`: the field is hatched. `anchor`: where the field leads on the page; its letter unless said.
    """

    letter: str
    at: float
    holds: Literal["fixed", "free"]
    second_line: str = ""
    held: bool = False
    lock: Literal["nut", "collar", "screws", ""] = ""
    lock_toward: End | None = None
    float: Float | None = None
    anchor: str = ""


@dataclass(frozen=True)
class Carried:
    """What the shaft carries. A length or diameter of 0: not known, drawn as a sign of its kind."""

    kind: Literal["pulley", "sprocket", "flights", "fan", "coupling", "part"]
    at: float
    words: str
    length: float = 0
    diameter: float = 0


@dataclass(frozen=True)
class Growth:
    """How a bearing moves as the shaft warms, from one held at `start`; below 0 it comes nearer."""

    start: float
    end: float
    by: Drawn


@dataclass(frozen=True)
class Strip:
    """One shaft. `first_end_left` is not asked of an upright one: its first end is the top."""

    name: str
    ends: tuple[str, str]
    sections: tuple[Section, ...]
    supports: tuple[Support, ...]
    carried: tuple[Carried, ...] = ()
    growths: tuple[Growth, ...] = ()
    turns: Turns = ""
    seen_from: str = ""
    first_end_left: bool = True
    upright: bool = False

    @property
    def length(self) -> float:
        """The whole length."""
        return self.sections[-1].to

    def end(self, which: End) -> str:
        """The name of an end."""
        return self.ends[0] if which == "first" else self.ends[1]


def title(strip: Strip) -> str:
    """What the drawing says, in one line."""
    supports = "; ".join(support_words(one, strip) for one in strip.supports)
    if strip.seen_from:
        return say("{name}, seen from the {place}: {supports}", name=strip.name, place=strip.seen_from, supports=supports)
    return say("{name}: {supports}", name=strip.name, supports=supports)


def support_words(support: Support, strip: Strip) -> str:
    """A bearing and what is said under its role."""
    line = second_line(support, strip)
    if line:
        return say("{letter} {role}, {line}", letter=support.letter, role=role(support), line=line)
    return say("{letter} {role}", letter=support.letter, role=role(support))


def role(support: Support) -> str:
    """Whether it holds the shaft endwise."""
    return say("fixed") if support.holds == "fixed" else say("free")


def second_line(support: Support, strip: Strip) -> str:
    """What stands under the role: what was given, or else the float."""
    if support.second_line or support.holds == "fixed":
        return support.second_line
    if support.float is None:
        return say("float not stated")
    one, other = support.float.first.words, support.float.second.words
    if one == other:
        return say("{float} each way", float=one)
    if strip.upright:
        return say("{one} up, {other} down", one=one, other=other)
    left, right = (one, other) if strip.first_end_left else (other, one)
    return say("{left} left, {right} right", left=left, right=right)


def description(strip: Strip) -> Iterator[str]:
    """The rest of what is drawn, a sentence each."""
    yield from caption(strip)
    for one in strip.supports:
        if one.lock and one.lock_toward:
            yield say("{letter}: {part} toward the {end}.", letter=one.letter, part=lock_word(one.lock), end=strip.end(one.lock_toward))
        if one.float and one.holds == "free":
            first, second = one.float.first.words, one.float.second.words
            yield say(
                "{letter} may move {first} toward the {one} and {second} toward the {other}.",
                letter=one.letter, first=first, one=strip.ends[0], second=second, other=strip.ends[1],
            )  # fmt: skip
    for part in strip.carried:
        yield say("It carries: {part}.", part=part.words)
    for growth in strip.growths:
        yield growth_sentence(growth, strip)


def lock_word(lock: str) -> str:
    """What stands beside the bearing and locks it."""
    return {"nut": say("nut"), "collar": say("collar"), "screws": say("screws")}[lock]


def growth_words(growth: Growth) -> str:
    """What the shaft does there as it warms or cools."""
    words = growth.by.words.lstrip("\u2212-")
    return say("grows {length}", length=words) if growth.by.size >= 0 else say("shrinks {length}", length=words)


def growth_sentence(growth: Growth, strip: Strip) -> str:
    """The same with the end it goes toward."""
    end = strip.end("second" if (growth.end > growth.start) == (growth.by.size >= 0) else "first")
    length = growth.by.words.lstrip("\u2212-")
    if growth.by.size >= 0:
        return say("It grows {length} toward the {end}.", length=length, end=end)
    return say("It shrinks {length} toward the {end}.", length=length, end=end)


def caption(strip: Strip) -> Iterator[str]:
    """The sentences under the drawing."""
    if strip.seen_from:
        yield say("Seen from the {place}.", place=strip.seen_from)
    if strip.turns == "both ways":
        yield say("Turns both ways.")
    elif strip.turns == "clockwise":
        yield say("Turns clockwise, looking along from the {end}.", end=strip.ends[0])
    elif strip.turns == "anticlockwise":
        yield say("Turns anticlockwise, looking along from the {end}.", end=strip.ends[0])
