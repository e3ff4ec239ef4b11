"""The position sheet: all that is needed to put a unit on, on one side; what is held is said across it and has no steps."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from typing import TYPE_CHECKING, Any

from generator.mounting.sheet import ShaftSheet, Sheet
from generator.safety import SIGNALS, Message, message
from generator.say import say
from generator.show import Shown, shown, text
from generator.site.drawings.style import style
from generator.site.pages.machine.page import cautions, title
from generator.site.pages.machine.pictures import printed_shaft
from generator.site.render import job_name
from generator.steps import Blank, Procedure, Sign, Step
from generator.value import Withheld

if TYPE_CHECKING:
    from generator.site.papers import Papers

MOST_CAUTIONS = 4
GRAVEST = tuple(SIGNALS.values())
# cleaning, unpacking, trying and tidying stand on the kiosk; paper has the steps with a figure, a stop or a point of no return
NOT_ON_PAPER = frozenset({
    "sheet", "prove", "clean seat", "seat temperature", "face", "joint", "guide", "carry parts", "unpack", "stand upright", "clean parts", "clear bore",
    "outer seal", "outer ring", "felt", "covers", "guards off", "part coupling", "join coupling", "count in", "run cool", "gear away", "blocks out", "others open", "shut gas", "float again", "insert in", "last guard", "read before", "take-ups even", "stay off", "clear way", "way back", "tension back", "rotor free", "all on", "pulls off", "turn free before", "screws in line", "witness line", "demagnetise", "fasten ring", "right gun", "wipe fitting", "plug out",
    "plug in", "wipe off", "count", "floor", "power", "released", "air", "start", "bolts again", "lock again", "bolts ready", "align",
})  # fmt: skip
# readings for which the record sheet has the room
ON_RECORD = frozenset({"heated to", "grease given", "grease out", "vibration", "housing temperature"})


@dataclass(frozen=True)
class Row:
    """One line of the sheet: a step with its blanks, and the stop that follows it."""

    count: int
    does: str
    blanks: tuple[Blank, ...]
    stop: str


def sheet_view(papers: Papers, shaft: ShaftSheet, sheet: Sheet) -> dict[str, Any]:
    """Everything on the sheet."""
    plant = papers.standard.plant
    jobs = papers.jobs[sheet.id]
    put_on, run_in = jobs["put on"], jobs["run in"]
    closed = bool(put_on.refused or put_on.held)
    typed = papers.machine.machine.typed
    return {
        "tag": papers.tag,
        "letter": sheet.position.letter,
        "name": str(typed.name),
        "title": title(sheet, shaft),
        "issued": papers.issued,
        "held": (put_on.refused,) if put_on.refused else put_on.held,
        "releases": _releases(papers, sheet) if closed else (),
        "open_jobs": [job_name("take off") for _ in (1,) if not jobs["take off"].held] + [job_name("grease") for _ in (1,) if not jobs["grease"].held],
        "cautions": _gravest(cautions(plant, papers.machine), put_on),
        "style": style(),
        "drawing": printed_shaft(shaft, papers.held),
        "parts": tuple(_parts(sheet)),
        "boxes": tuple(_boxes(sheet, str(plant.typed.units), put_on)),
        "rows": () if closed else tuple(_rows((*put_on.items, *_till_accepted(run_in.items)))),
        "procedure": str(typed.isolation.procedure),
        "ask": str(plant.typed.ask) if plant.typed.ask else say("the engineer"),
        "machine_note": str(typed.note) if typed.note else "",
    }  # fmt: skip


def _gravest(standing: tuple[Message, ...], put_on: Procedure) -> tuple[Message, ...]:
    """At most four: the machine's own first, then the gravest of the work."""
    of_work = [message(step.caution, **dict(step.caution_facts)) for step in put_on.steps if step.caution]
    every = {one.id: one for one in (*standing, *sorted(of_work, key=lambda one: GRAVEST.index(one.signal)))}
    return tuple(sorted(list(every.values())[:MOST_CAUTIONS], key=lambda one: GRAVEST.index(one.signal)))


def _releases(papers: Papers, sheet: Sheet) -> tuple[tuple[str, str], ...]:
    """What holds it, and what would clear each."""
    held = papers.held[sheet.id].get("put on", ())
    return tuple((finding.rule.says(), finding.rule.clears()) for finding in held)


def _parts(sheet: Sheet) -> Iterator[tuple[str, str]]:
    position = sheet.position
    bought = (position.unit,) if position.unit else (position.bearing, position.sleeve, position.housing)
    for part in (*bought, position.grease):
        if part is not None:
            yield part.name, str(getattr(part.typed, "stores", None) or "")
    count, thread, class_ = (sheet.number(key) for key in ("bolt_count", "bolt_thread", "bolt_class"))
    if count is not None and thread is not None:
        stores = str(position.bolt.typed.stores or "") if position.bolt else ""
        yield say("{count} bolts {thread}, {class_}", count=text(count), thread=thread.content, class_=class_.content if class_ else say("class not on file")), stores  # fmt: skip


def _boxes(sheet: Sheet, first: str, put_on: Procedure) -> Iterator[tuple[str, Shown, bool, str]]:
    """The numbers a hand sets: name, value, whether held, and the same in other words."""
    # a unit that comes filled is given nothing when it is put on
    greased = put_on.held or any(step.act == "strokes" for step in put_on.steps)
    for line in sheet.lines.values():
        if line.by_hand and line.key != "bolt_setting" and (greased or line.key != "grease_strokes"):
            value = shown(line.value, first)
            yield line.name, value, isinstance(line.value, Withheld), _other(sheet, line.key) or value.second


def _other(sheet: Sheet, key: str) -> str:
    if key == "nut_turn" and (degrees := sheet.band("nut_degrees")) and (slots := sheet.band("nut_slots")) and sheet.position.sleeve:
        all_slots = f"{sheet.position.sleeve.typed.nut.slots.content:g}"
        return say("{degrees}, {slots} of {all} slots", degrees=shown(degrees).main, slots=shown(slots).main, all=all_slots)
    setting, tool = sheet.number("bolt_setting"), sheet.number("bolt_wrench")
    if key == "bolt_torque" and setting and tool:
        return say("set {tool} to {setting}", tool=tool.content, setting=text(setting))
    grams = sheet.number("grease_dose")
    return text(grams) if key == "grease_strokes" and grams else ""


def _till_accepted(items: tuple[Step | Sign, ...]) -> tuple[Step | Sign, ...]:
    """Running in up to S8: the recheck has its own day, and stands on the kiosk."""
    numbers = [item.number if isinstance(item, Sign) else "" for item in items]
    return items[: numbers.index("S8") + 1] if "S8" in numbers else items


def _rows(items: tuple[Step | Sign, ...]) -> Iterator[Row]:
    """The steps one line each; a stop stands at the end of the step before it."""
    rows: list[Row] = []
    for item in items:
        if isinstance(item, Sign):
            if rows:
                last = rows[-1]
                rows[-1] = Row(last.count, last.does, last.blanks, item.number)
        elif item.act not in NOT_ON_PAPER:
            rows.append(Row(len(rows) + 1, str(item.does), tuple(one for one in item.blanks if one.quantity not in ON_RECORD), ""))
    yield from rows
