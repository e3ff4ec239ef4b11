"""What each style of housing adds to putting on: its face, standing loose, its place, its float, its bolts."""

from __future__ import annotations

from generator.case import CLEARANCE, HEATED, TURN, Case
from generator.housings.holding import rises, set_down, set_down_early
from generator.say import say
from generator.steps import Figures, Items, Step, Told, Trouble, told


def frame_checked(case: Case, f: Figures) -> Items:
    """The face it stands on, and what holds it there."""
    if case.housing == "cartridge":
        yield Step("face", "housing", told("Wipe the bore of the housing and feel it for burrs."), told("A gloved finger feels no edge."), takes=("lint-free cloth",))  # fmt: skip
        return
    yield Step("face", "housing", told("Scrape the face of the frame clean of paint, rust and weld spatter, by hand."), takes=("scraper",))
    if case.housing != "take-up":
        rocks = Trouble(say("The blade goes under"), told("Stop. The face is machined or shimmed first; never pulled flat with the bolts."))
        yield Step("flat", "housing", _flat(case, f), None, (rocks,), takes=("feeler", "straightedge"), picture="foot")
    yield from _bolts_ready(case, f)


def _flat(case: Case, f: Figures) -> Told:
    if case.flange:
        return told("Lay the straightedge over the face: a blade of {blade} must go under it nowhere.", blade=f("foot_feeler"))
    return told("Lay the straightedge over the face the foot stands on: a blade of {blade} must go under it nowhere.", blade=f("foot_feeler"))


def _bolts_ready(case: Case, f: Figures) -> Items:
    if case.housing == "take-up":
        yield Step(
            "guide",
            "housing",
            told("Clean and oil guides and adjusting screw."),
            takes=("light oil",),
        )
        return
    does = told("Lay out {count} bolts {thread}, class {class_}; threads: {state}.", count=f("bolt_count"), thread=f("bolt_thread"), class_=f("bolt_class"), state=f("thread_state"))  # fmt: skip
    yield Step("bolts ready", "housing", does, _heads(case), takes=("thread grease",) if case.stainless_bolts else ())  # fmt: skip


def _heads(case: Case) -> Told:
    if case.body == "polymer":
        return told("Same class on every head; wide flat washers on the polymer housing, as its maker lists them.")
    return told("Same class on every head; hard washers as listed.")


def holes_gauged(case: Case, f: Figures) -> Items:
    """A tapped base with its own bolts in hand: long enough to hold, short enough not to bottom."""
    if not case.tapped:
        return
    short = Trouble(say("Bolt bottoms, or too few threads hold"), told("Stop. Another length; where none fits, the engineer decides. Never a washer more to make it fit."))  # fmt: skip
    does = told("Measure hole depth, frame, washer and bolt: {least} or more in the thread, and the bolt ends short of the bottom.", least=f("engagement_needed"))  # fmt: skip
    yield Step("gauge hole", "parts", does, told("By the file a bolt takes {there}.", there=f("engagement")), (short,), takes=("depth gauge",))  # fmt: skip


def stood_loose(case: Case, f: Figures) -> Items:
    """In its place with nothing tight, so that it can go where the ring takes it; a split base comes under the bearing later."""
    stage = case.early
    if case.housing == "split":
        return
    if case.second_flange:
        uneven = Trouble(say("Gap differs from bolt to bolt"), told("Shim anew until the blade feels the same at every bolt."))
        yield Step(
            "set gap", stage, told("Stand the flange {gap} off the frame with shim stock at every bolt.", gap=f("flange_gap")),
            None, (uneven,), takes=("shim stock", "feeler"), picture="flange gap",
        )  # fmt: skip
    elif case.housing == "take-up":
        yield Step(
            "bolts in loose", stage, told("Set the unit in its guides. Adjusting screw on, lock nuts slack."), told("It slides by hand the whole way.")
        )
    elif case.housing == "cartridge":
        if case.way not in (CLEARANCE, HEATED):
            stuck = Trouble(say("Does not slide"), told("Take it out, look for burrs and rust in the bore. Never drive it in."))
            yield Step("bolts in loose", stage, told("Slide the cartridge into its bore by hand, with a film of oil."), None, (stuck,), takes=("light oil",))  # fmt: skip
    elif case.flange:
        yield Step("bolts in loose", stage, told("Put the flange bolts in, finger loose."), told("The shaft can still move endwise."))
    elif case.tapped:
        yield Step("bolts in loose", stage, told("Put the bolts in from below, finger loose."), told("The housing slides by hand along the shaft."))  # fmt: skip
    else:
        yield Step("bolts in loose", stage, told("Put the housing bolts in, finger loose, in the middle of their slots."), told("The housing slides by hand along the shaft."))  # fmt: skip


def set_in_place(case: Case, f: Figures) -> Items:
    """Where it sits along the shaft, from a named face."""
    if case.way == HEATED:
        return
    if case.second_flange:
        off = Trouble(say("It stands elsewhere"), told("Stop. The frame decides its place: ask the engineer before anything is tight."))
        yield Step("set place", case.early, told("Read where the middle of the unit stands: {place}.", place=f("place")), None, (off,), takes=("tape",))  # fmt: skip
        return
    if (case.flange and case.order == "first") or (case.housing == "take-up" and case.holds == "fixed" and case.order == "first"):
        locked = Trouble(say("It does not move"), told("Another unit holds it: slacken that by its sheet, or write the place and ask. Never a bar."))  # fmt: skip
        does = told("Move the shaft endwise until the middle of the unit stands {place}.", place=f("place"))
        yield Step("set place", case.early, does, None, (locked,), takes=("tape",))
        return
    does = (
        told("Set the unit with its middle {place}.", place=f("place"))
        if case.holds == "fixed"
        else told("Set the unit with its middle {place}; its float is set later.", place=f("place"))
    )
    yield Step("set place", case.early, does, takes=("tape",))


def pulled_toward_nut(case: Case, f: Figures) -> Items:
    """The second unit must travel while its nut is turned: all the room it has is laid ahead of it."""
    if case.order != "second" or case.flange or case.way != TURN:
        return
    check = told("All its room is now ahead of it: it will travel {way} toward the {end}.", way=f("housing_shift"), end=f("shift_toward"))
    if case.housing == "cartridge":
        does = told("Pull the cartridge toward the nut as far as it goes.")
    elif case.housing == "take-up":
        does = told("Pull the unit toward the nut until it touches its guides.")
    else:
        does = told("Pull the housing toward the nut until its bolts touch their slots.")
    yield Step("pull toward nut", "lock", does, check, picture="shift")


def housed(case: Case, f: Figures) -> Items:
    """The ring into its housing, where it was driven up or pressed on in the open, and what holds or frees it there. Split, or a cartridge."""
    if case.housing == "cartridge":
        stuck = Trouble(say("Does not slide"), told("Take it off, look for burrs. Never drive it over the ring."))
        yield Step("into housing", "axial", told("Slide the cartridge over the bearing and into its bore by hand, with a film of oil."), told("The shaft is lifted to the middle of the bore."), (stuck,), takes=("light oil", "lifting gear"))  # fmt: skip
        yield Step("covers", "axial", told("Fit the outer cover and its seal, in the order drawn."), told("Seals sit in their grooves all round."))
        return
    if case.holds == "fixed":
        yield Step("outer ring", "axial", told("Put the outer locating ring on the shaft, in the order drawn."), picture="seals")
    if not case.felt:
        yield Step("outer seal", "axial", told("Put the outer seal on the shaft, in the order drawn."), picture="seals")
    yield from _base_under(case)
    yield Step("into housing", "axial", told("Lower the shaft until the bearing lies in the base and the base carries it."), told("Seals sit in their grooves all round."), takes=("lifting gear",))  # fmt: skip
    if case.holds == "fixed":
        yield Step("locating rings", "axial", told("Set the locating rings in, the same number on both sides of the bearing."), told("No play between rings and bearing."), picture="seals")  # fmt: skip


def _base_under(case: Case) -> Items:
    yield Step("joint", "axial", told("Wash the old grease out of base and cap, away from the open bearing, and wipe their joint."), told("Dry, rags away; both bear the same marks; the drain plug is in."), takes=("lint-free cloth",))  # fmt: skip
    if case.felt:
        yield Step("felt", "axial", told("Soak the felt strips in oil and press them into the grooves of base and cap."), told("They stand proud of the groove, whole from joint to joint."), takes=("light oil",))  # fmt: skip
    binds = Trouble(say("The next unit binds"), told("Slacken it by its sheet before you lift on. Nothing is forced."))
    yield Step(
        "bolts in loose", "axial", told("Lift the shaft just enough to bring the base under it on its shims, bolts finger loose."),
        told("The base slides by hand under the bearing."), (binds,), takes=("lifting gear",),
    )  # fmt: skip


def floated(case: Case, f: Figures, stage: str) -> Items:
    """The room a free unit is given, set for the temperature it is set at."""
    if case.holds != "free":
        return
    one, other = ("set_first", "set_second") if f.has("set_first") and f.has("set_second") else ("float_first", "float_second")
    room = {"a": f(one), "b": f(other), "one": case.ends[0], "other": case.ends[1]}
    does = {
        "ring loose in its housing": told("Set the ring in its bore: {a} of room toward the {one}, {b} toward the {other}.", **room),
        "sliding cartridge": told("Set the cartridge: {a} of room toward the {one}, {b} toward the {other}.", **room),
        "guided frame": told("Set the sliding frame under the housing: {a} of room toward the {one}, {b} toward the {other}.", **room),
        "clearance inside the bearing": told("Push the shaft to both ends of its play: {a} toward the {one}, {b} toward the {other}; leave it in the middle.", **room),
    }.get(case.floats_by, told("Set how this unit floats: {a}.", a=f("floats_by")))  # fmt: skip
    tight = Trouble(say("Less room than that"), told("Stop. Growth would load both bearings; the engineer decides."))
    if case.units_between:
        does_first = told("Put on again the units that came off to clear the way, each by its own sheet up to S6: {units}.", units=", ".join(case.units_between))  # fmt: skip
        yield Step("unit back", stage, does_first, told("The gear at this unit stays loaded meanwhile."))
    held = None if case.alone else told("The unit that holds the shaft endwise is on, locked and bolted.")
    if case.housing == "split":
        held = told("The unit that holds the shaft endwise is on. Then the shaft is marked at the housing's end, and the distance written.")
    yield Step("set float", stage, does, held, (tight,), takes=("caliper",), picture="float")


def float_again(case: Case) -> Items:
    """What was set with loose bolts, read with tight ones."""
    if case.holds == "free":
        off = told("Slacken and shift it. Both together short: stop, the engineer decides.")
        if case.second_flange:
            off = told("Stop. Nothing is shifted, the frame decides its place: the engineer.")
        does = told("Read the room on both sides again, now that all is tight.")
        if case.housing == "split":
            does = told("Measure from the housing's end to the mark on the shaft, now that all is tight.")
        yield Step("float again", "bolts", does, told("It is as it was set."), (Trouble(say("It differs"), off),), takes=("caliper",))


def bolted(case: Case, f: Figures, while_open: Items = ()) -> Items:
    """Alignment, the bolts half, what is done while a split housing is open, the cap, and the final figure last; take-up and cartridge have their own."""
    if case.way != TURN and set_down_early(case, f):
        yield from set_down(case, f, "bolts")
    if case.housing == "take-up":
        yield from _take_up_set(case)
    elif case.housing == "cartridge":
        yield from _cartridge_stopped(case)
    else:
        yield from _bolted_down(case, f, while_open)
    if rises(case, f):
        yield from set_down(case, f, "bolts")
    yield from float_again(case)


def _bolted_down(case: Case, f: Figures, while_open: Items) -> Items:
    if case.flange:
        yield Step("align", "bolts", told("Line the housing up: ring square to the shaft, flange flat on its face."), told("No blade goes between flange and frame."), takes=("feeler",))  # fmt: skip
    else:
        yield Step("align", "bolts", told("Line the housing up: ring square to the shaft, foot flat on its face."), told("No blade goes under the foot."), takes=("feeler",))  # fmt: skip
    if case.housing == "split":
        yield from floated(case, f, "bolts")
    yield Step("bolts half", "bolts", _half(case, f), takes=("torque tool for the bolts",), picture="bolts")
    if case.flange and case.lies != "vertical" and not rises(case, f):
        yield from set_down(case, f, "bolts")
    yield from while_open
    swing = Trouble(say("Shaft goes stiff"), told("Slacken. Frame not flat, or housing twisted: shim or machine, not force."))
    final, check = told("Then all to {torque}: set the wrench to {setting}.", torque=f("bolt_torque"), setting=f("bolt_setting")), None
    if case.housing == "split":
        yield Step("cap on", "bolts", told("Set the cap on its own base, the marks on the same side."), takes=("lifting gear",))
        yield Step("cap bolts", "bolts", told("Tighten the cap bolts crosswise, half first, to {torque}.", torque=f("cap_torque")), told("No blade goes into the joint."), takes=("torque tool for the cap", "feeler"))  # fmt: skip
        final = told("Then the base bolts, not the cap's, to {torque}: set the wrench to {setting}.", torque=f("bolt_torque"), setting=f("bolt_setting"))  # fmt: skip
        check = told("The cap bolts stay at their own figure.")
    yield Step("bolts final", "bolts", final, check, (swing,), takes=("torque tool for the bolts",), picture="bolts")


def _half(case: Case, f: Figures) -> Told:
    if not f.has("bolt_half"):
        return told("Tighten the housing bolts in the order drawn, all to about half of {torque} first.", torque=f("bolt_torque"))
    if case.housing == "split":
        return told("Tighten the base bolts in the order drawn, all to about {half} first.", half=f("bolt_half"))
    return told("Tighten the housing bolts in the order drawn, all to about {half} first.", half=f("bolt_half"))


def _take_up_set(case: Case) -> Items:
    """Both sides alike, with belt or chain slack; tension comes when the machine is whole again."""
    alone = Trouble(say("The other unit is not on yet"), told("Set this one to the travel written down; both are evened when the other one is on."))  # fmt: skip
    yield Step(
        "align", "bolts", told("Turn the adjusting screws of both sides by turns until both read the same, belt or chain still slack."),
        told("The shaft stands square."), () if case.alone else (alone,), takes=("tape", "spanner"),
    )  # fmt: skip
    yield Step("bolts final", "bolts", told("Tighten the lock nuts of the adjusting screw against each other."), takes=("spanner",))


def _cartridge_stopped(case: Case) -> Items:
    """What keeps it from turning, and a fixed one from sliding."""
    yield Step("align", "bolts", told("Turn the cartridge until its grease hole meets the housing's."))
    if case.holds == "fixed":
        yield Step("bolts final", "bolts", told("Fit what holds the cartridge endwise and keeps it from turning, by its maker's figure."), told("It moves neither along the shaft nor round it."), takes=("spanner",))  # fmt: skip
    else:
        yield Step("bolts final", "bolts", told("Fit the stop that keeps the cartridge from turning."), told("It still slides by hand pressure.") if case.floats_by == "sliding cartridge" else None, takes=("spanner",))  # fmt: skip


def done(case: Case) -> Told:
    """What is tight once the housing is."""
    return {"take-up": told("Lock nuts tight, shaft free."), "cartridge": told("Stop fitted, shaft free.")}.get(case.housing, told("Bolts at torque, shaft free."))  # fmt: skip
