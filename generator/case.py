"""A case of work: everything of a position that decides which steps are done and in which order, as words. Knows no plant and no page."""

from __future__ import annotations

from dataclasses import dataclass

# the ways of locking, and of housings the words of `housings/`
TURN, CLEARANCE, SCREWS, ECCENTRIC, CLAMP, HEATED = (
    "sleeve by turn", "sleeve by clearance", "set screws", "eccentric collar", "clamp collar", "heated seat",
)  # fmt: skip
WAYS = (TURN, CLEARANCE, SCREWS, ECCENTRIC, CLAMP, HEATED)
SLEEVES = (TURN, CLEARANCE)
# locked to the shaft with the housing already bolted down
LOCKED_LAST = (SCREWS, ECCENTRIC, CLAMP)

FLANGES = ("two-bolt flange", "three-bolt flange", "four-bolt flange")


@dataclass(frozen=True)
class Case:
    """What the composing of steps is given. Every field is a word of plant data, or whether something is so.

    `frame`: for a flange, whether the frame stands "opposite the nut", on the "nut side", or "" where the file does not say.
    `maker_order`: the maker's order for the second flange as a tuple of known words, () where none is on file.
    """

    way: str
    housing: str
    bearing: str = "ball insert"
    works: str = ""  # how the nut works
    nut_lock: str = ""
    hand: str = ""
    body: str = "grey iron"
    lies: str = "horizontal"
    holds: str = "fixed"
    floats_by: str = ""
    order: str = "first"
    frame: str = ""
    maker_order: tuple[str, ...] = ()
    turns: str = "clockwise"
    # what stands around it
    zone: str = "none"
    water: str = "none"
    hot: bool = False
    hazards: frozenset[str] = frozenset()
    moving: str = ""  # what moves in the machine
    procedure: str = ""  # of isolation
    energies: tuple[str, ...] = ()
    stored: tuple[str, ...] = ()  # those that stay when the drive is off
    heavy: str = "not known"  # a part against what the plant lets hands lift: "under", "over", "not known"
    # lubrication
    feed: str = "gun"
    purge: str = ""
    regrease: str = "stopped"
    fitting: str = ""
    fast: bool = False
    sealed: bool = False
    # what else decides
    stainless_bolts: bool = False
    tapped: bool = False
    carrier: str = ""  # the other unit that the weight of an upright shaft hangs on, "" where it is this one
    alone: bool = False  # the only unit of its shaft
    only: bool = False  # the only unit of its machine
    felt: bool = False  # felt strips seal the housing
    coupled: bool = False  # a coupling joins its shaft to another
    warmed: bool = False  # the process heats it, and goes on while it runs
    drained: tuple[str, ...] = ()  # of its energies what is drained
    gases: tuple[str, ...] = ()  # and what is vented
    apart: bool = False  # an insert that comes without its housing
    ends: tuple[str, str] = ("first end", "second end")
    lock_toward: str = ""  # the end the lock is toward
    unit: str = ""  # what is bought, by its designation
    others: str = ""  # the other units of its shaft, by letter
    pulls: tuple[str, ...] = ()  # what pulls or rests on the shaft by its loads as typed
    unweighed: tuple[str, ...] = ()  # of what sits on the shaft what no mass is typed of
    units_between: tuple[str, ...] = ()  # the units among it, by letter
    between: tuple[str, ...] = ()  # what sits on the shaft toward the end that has less of it

    @property
    def sleeve(self) -> bool:
        """Whether it sits on an adapter sleeve."""
        return self.way in SLEEVES

    @property
    def windy(self) -> bool:
        """Whether the wind may turn it while it is isolated."""
        return "may turn in the wind" in self.hazards

    @property
    def flange(self) -> bool:
        """Whether the housing is a flange."""
        return self.housing in FLANGES

    @property
    def early(self) -> str:
        """The stage in which the unit comes onto the shaft: what is locked last is set along the shaft and bolted down first."""
        return "axial" if self.way in LOCKED_LAST else "lock"

    @property
    def second_flange(self) -> bool:
        """Whether it is a flange driven up after another unit has the shaft."""
        return self.flange and self.way == TURN and self.order == "second"

    @property
    def feeler(self) -> bool:
        """Whether its clearance is read with a blade."""
        return self.way in (CLEARANCE, HEATED) and self.bearing in ("spherical roller", "cylindrical roller")

    @property
    def food(self) -> bool:
        """Whether it works beside food."""
        return "food" in self.zone

    @property
    def dusty(self) -> bool:
        """Whether dust can burn here."""
        return "dust" in self.zone


FLANGE_ORDER = ("gap", "hand tight", "mark", "draw up crosswise", "complete the turn", "final torque")


def refusal(case: Case) -> str:
    """Why a case makes no sense, as a key of `REFUSALS`, "" where it does."""
    if case.way in (TURN, *LOCKED_LAST) and case.housing == "split":
        return "insert in a split housing"
    if case.way == CLEARANCE and case.housing not in ("split", "cartridge"):
        return "clearance behind a closed housing"
    if case.way == HEATED and case.housing not in ("split", "cartridge"):
        return "heated into a closed housing"
    if case.lies == "vertical" and case.housing == "take-up":
        return "take-up under an upright shaft"
    if case.way == ECCENTRIC and case.turns == "both ways":
        return "eccentric on a shaft that turns both ways"
    if case.holds == "free" and case.housing == "cartridge" and case.floats_by == "guided frame":
        return "cartridge in a guided frame"
    if case.floats_by == "sliding cartridge" and case.housing != "cartridge":
        return "sliding cartridge that is none"
    if case.floats_by == "ring loose in its housing" and case.way in (TURN, *LOCKED_LAST):
        return "insert loose in its housing"
    if case.floats_by == "pin in a grooved shaft":
        return "pin under a lock that clamps"
    if case.second_flange:
        return _second_flange(case)
    return ""


def _second_flange(case: Case) -> str:
    if not case.maker_order:
        return "second flange without the maker's order"
    if case.maker_order != FLANGE_ORDER:
        return "second flange in an order not known here"
    if case.frame == "":
        return "second flange, frame side not said"
    if case.frame == "nut side" or case.works == "draws the sleeve":
        return "second flange that does not close its gap"
    return ""
