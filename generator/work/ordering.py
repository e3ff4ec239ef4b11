"""The fourteen ordering rules of the work: each says what must come before what, and finds where a procedure breaks it.

Common practice of the trade, no source; R1 and R14 after the usual order of isolating and giving back (29 CFR 1910.147, from memory).
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass

from generator.case import HEATED, LOCKED_LAST, TURN, Case
from generator.steps import Item, Sign, Step

# acts that touch nothing of the machine, or touch it as it runs and from outside
NO_TOUCH = {
    "sheet", "as found running", "stand clear", "released", "air", "start", "warm readings", "vibration", "look", "listen", "temperature",
    "take-up", "dust", "report", "look at feeder", "look at oil", "give none", "see it settle", "isolate", "count in", "run cool", "stay off", "read before",
}  # fmt: skip
BEARING_OUT = {"stand upright", "read clearance before", "slide on", "heat", "read designation"}
# isolating itself, and the stops
AROUND_ISOLATING = {"release", "block rotor", "vent", "drain", "shut gas", "let cool", "height", "prove", "S0", "S1", "S8"}
DRIVING = {"hand tight", "mark", "turn nut", "drive up", "stop driving", "shims out", "draw flange up", "lock nut"}


class Acts:
    """A procedure as what is done at which place in it."""

    def __init__(self, items: Sequence[Item]) -> None:
        self.names = [item.act if isinstance(item, Step) else item.number for item in items]

    def has(self, name: str) -> bool:
        """Whether it is done at all."""
        return name in self.names

    def before(self, first: str, then: str) -> bool:
        """Whether the one is done, and before the other; so too where the other is not done."""
        return then not in self.names or (first in self.names and self.names.index(first) < self.names.index(then))

    def in_order(self, *names: str) -> bool:
        """Whether all are done, each after the one before."""
        places = [self.names.index(name) if name in self.names else -1 for name in names]
        return -1 not in places and places == sorted(places)

    def up_to(self, name: str) -> list[str]:
        """What is done before it."""
        return self.names[: self.names.index(name)] if name in self.names else list(self.names)


Broken = Callable[[str, Case, Acts], bool]


@dataclass(frozen=True)
class OrderingRule:
    """One rule: its number, what it says, and whether a procedure of a case breaks it."""

    number: str
    says: str
    broken: Broken


def _r1(job: str, case: Case, acts: Acts) -> bool:
    if job == "inspect" or (job == "grease" and (case.regrease == "running" or not acts.has("strokes"))):
        return acts.has("S1") and not acts.before("isolate", "S1")
    opening = "S1"
    touching = [name for name in acts.names if name not in NO_TOUCH and name not in AROUND_ISOLATING]
    proven = acts.in_order("isolate", "prove", "S1")
    return not proven or any(not acts.before(opening, name) for name in touching if name != opening)


def _r2(job: str, case: Case, acts: Acts) -> bool:
    return job == "put on" and not (
        acts.in_order("measure seat", "S2", "unpack") and all(acts.before("unpack", name) for name in BEARING_OUT)
    )


def _r3(job: str, case: Case, acts: Acts) -> bool:
    return job == "put on" and case.sleeve and not acts.in_order("set place", "hand tight")


def _r4(job: str, case: Case, acts: Acts) -> bool:
    return job == "put on" and case.sleeve and not acts.in_order("support", "load off", "hand tight")


def _r5(job: str, case: Case, acts: Acts) -> bool:
    if job != "put on" or not case.sleeve:
        return False
    driven = "turn nut" if case.way == TURN else "drive up"
    return (
        not acts.in_order("hand tight", "mark", "S4" if case.way == TURN else "mark", driven, "lock nut", "S5")
        or acts.names.count("mark") != 1
    )


def _r6(job: str, case: Case, acts: Acts) -> bool:
    if job != "put on" or not case.sleeve:
        return False
    loose = "set gap" if case.second_flange else "bolts in loose"
    if case.housing in ("split", "cartridge") and case.way != TURN:
        return any(name in ("bolts half", "bolts final") for name in acts.up_to("lock nut"))
    return not acts.before(loose, "hand tight") or any(name in ("bolts half", "bolts final") for name in acts.up_to("lock nut"))


def _r7(job: str, case: Case, acts: Acts) -> bool:
    if job != "put on" or case.way != TURN:
        return False
    if case.order == "second" and not case.flange and not acts.in_order("bolts in loose", "pull toward nut", "hand tight"):
        return True
    return case.holds == "free" and not acts.in_order("lock nut", "set float", "bolts final")


def _r8(job: str, case: Case, acts: Acts) -> bool:
    if job != "put on":
        return False
    if not case.second_flange:
        return acts.has("draw flange up")
    wanted = (
        "set gap",
        "hand tight",
        "mark",
        "S4",
        "shims out",
        "draw flange up",
        "turn nut",
        "lock nut",
        "end checks",
        "S5",
        "bolts final",
    )
    return not acts.in_order(*wanted) or acts.names.count("mark") != 1 or acts.names.count("hand tight") != 1


def _r9(job: str, case: Case, acts: Acts) -> bool:
    if job != "put on" or case.way in LOCKED_LAST:
        return False
    driven = [name for name in acts.names if name in DRIVING or name in ("cap bolts", "bolts half", "align", "set float")]
    return not acts.has("bolts final") or any(not acts.before(name, "bolts final") for name in driven)


def _r10(job: str, case: Case, acts: Acts) -> bool:
    if job != "put on" or not case.feeler:
        return False
    driven = "push to shoulder" if case.way == HEATED else "drive up"
    filled = [name for name in ("fill by hand", "strokes", "fill beside") if acts.has(name)]
    return not acts.in_order("read clearance before", driven, "read clearance after") or any(
        not acts.before("read clearance after", name) for name in filled
    )


def _r11(job: str, case: Case, acts: Acts) -> bool:
    if job != "put on" or case.way != HEATED:
        return False
    later = [
        name
        for name in ("shoulder blade", "fasten ring", "read clearance after", "fill by hand", "strokes", "no grease", "oil level", "feeder")
        if acts.has(name)
    ]
    return not acts.in_order("heat", "push to shoulder", "hold", "cool") or any(not acts.before("cool", name) for name in later)


def _r12(job: str, case: Case, acts: Acts) -> bool:
    if job != "put on" or case.way not in LOCKED_LAST:
        return False
    locks = [name for name in ("screws half", "collar on", "turn collar", "clamp screw") if acts.has(name)]
    earlier = ["align", "bolts final", "turn free before", "S4", *(["set float"] if case.holds == "free" else [])]
    return not locks or any(not acts.in_order(name, lock) for name in earlier for lock in locks)


def _r13(job: str, case: Case, acts: Acts) -> bool:
    # the second unit signs S1 again on locks that are looked at; nothing else is taken over from the first
    return job == "put on" and not acts.in_order("S0", "S1", "S2", "S3", "S4", "S5", "S6", "S7")


def _r14(job: str, case: Case, acts: Acts) -> bool:
    return acts.has("power") and not acts.in_order("guards on", "S7", "power") or (job == "run in" and not acts.before("released", "start"))


RULES = (
    OrderingRule("R1", "isolation before any step that touches the machine", _r1),
    OrderingRule("R2", "shaft accepted before the bearing is unpacked", _r2),
    OrderingRule("R3", "place along the shaft set before the nut is hand tight", _r3),
    OrderingRule("R4", "load off the bearing before the nut is hand tight", _r4),
    OrderingRule("R5", "hand tight, mark, turn, lock, in that order; marked once", _r5),
    OrderingRule("R6", "housing bolts loose during all of it", _r6),
    OrderingRule("R7", "the second unit pulled toward its nut before hand tight; the free unit's float last", _r7),
    OrderingRule("R8", "the second flange: gap, hand tight, mark, draw up, complete the turn from the first mark, bolts last", _r8),
    OrderingRule("R9", "housing bolts to their final torque last", _r9),
    OrderingRule("R10", "clearance read before driving up and after, grease only after the last reading", _r10),
    OrderingRule("R11", "a heated ring pushed to the shoulder until it grips, and cold before anything else", _r11),
    OrderingRule("R12", "screws and collars: bolted, aligned and turning free before the unit is locked", _r12),
    OrderingRule("R13", "every unit signs every stop in order, the second one too", _r13),
    OrderingRule("R14", "guards and S7 before power", _r14),
)


def broken(job: str, case: Case, items: Sequence[Item]) -> Iterator[OrderingRule]:
    """The rules a procedure breaks."""
    acts = Acts([item for item in items if isinstance(item, (Step, Sign))])
    return (rule for rule in RULES if rule.broken(job, case, acts))
