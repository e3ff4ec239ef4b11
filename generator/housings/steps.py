"""What each style of housing adds to the steps: standing loose, its place, its float, its bolts, and how it opens."""

from __future__ import annotations

from generator.case import CLEARANCE, HEATED, TURN, Case
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
    if case.housing == "split":
        yield Step("joint", "housing", told("Wipe the joint of cap and base; see that both bear the same marks and the drain plug is in."))
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
            told("Clean and oil guides and adjusting screw; see that the unit slides the whole way."),
            takes=("light oil",),
        )
        return
    if case.tapped:
        short = Trouble(say("Bolt bottoms, or too few threads hold"), told("Stop. Another length; never a washer more to make it fit."))
        does = told("Gauge the tapped holes: {least} of thread must hold, and no bolt may bottom.", least=f("engagement_needed"))
        there = told("By the file a bolt takes {there}.", there=f("engagement"))
        yield Step("gauge hole", "housing", does, there, (short,), takes=("depth gauge",))
    does = told("Lay out {count} bolts {thread}, class {class_}; threads: {state}.", count=f("bolt_count"), thread=f("bolt_thread"), class_=f("bolt_class"), state=f("thread_state"))  # fmt: skip
    yield Step("bolts ready", "housing", does, told("Same class on every head; hard washers as listed."), takes=("thread grease",) if case.stainless_bolts else ())  # fmt: skip


def stood_loose(case: Case, f: Figures) -> Items:
    """In its place with nothing tight, so that it can go where the ring takes it."""
    stage = case.early
    if case.second_flange:
        uneven = Trouble(say("Gap differs from bolt to bolt"), told("Shim anew until the blade feels the same at every bolt."))
        yield Step(
            "set gap", stage, told("Stand the flange {gap} off the frame with shim stock at every bolt. Bolts finger loose.", gap=f("flange_gap")),
            None, (uneven,), takes=("shim stock", "feeler"), picture="flange gap",
        )  # fmt: skip
    elif case.housing == "take-up":
        yield Step(
            "bolts in loose", stage, told("Set the unit in its guides. Adjusting screw on, lock nuts slack."), told("It moves by hand.")
        )
    elif case.housing == "cartridge":
        if case.way not in (CLEARANCE, HEATED):
            stuck = Trouble(say("Does not slide"), told("Take it out, look for burrs and rust in the bore. Never drive it in."))
            yield Step("bolts in loose", stage, told("Slide the cartridge into its bore by hand, with a film of oil."), None, (stuck,), takes=("light oil",))  # fmt: skip
    elif case.housing == "split":
        yield Step("bolts in loose", stage, told("Stand the housing base on its shims under the shaft, bolts finger loose."))
    elif case.flange:
        yield Step("bolts in loose", stage, told("Put the flange bolts in, finger loose."), told("The shaft can still move endwise."))
    else:
        yield Step("bolts in loose", stage, told("Put the housing bolts in, finger loose, in the middle of their slots."), told("The housing slides by hand along the shaft."))  # fmt: skip


def set_in_place(case: Case, f: Figures) -> Items:
    """Where it sits along the shaft, from a named face."""
    if case.way == HEATED:
        return
    does = (
        told("Move the shaft endwise until the middle of the unit stands {place}.", place=f("place"))
        if case.flange and case.order == "first"
        else told("Set the unit with its middle {place}.", place=f("place"))
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
    """The ring into its housing, where it was driven up or pressed on in the open, and what holds or frees it there."""
    if case.way not in (CLEARANCE, HEATED):
        return
    if case.housing == "cartridge":
        stuck = Trouble(say("Does not slide"), told("Take it off, look for burrs. Never drive it over the ring."))
        yield Step("into housing", "axial", told("Slide the cartridge over the bearing and into its bore by hand, with a film of oil."), None, (stuck,), takes=("light oil",))  # fmt: skip
        return
    yield Step("outer seal", "axial", told("Put the outer seal on the shaft, in the order drawn."), picture="seals")
    yield Step("into housing", "axial", told("Lower the shaft until the bearing lies in the base."), told("Seals sit in their grooves all round."), takes=("lifting gear",))  # fmt: skip
    if case.holds == "fixed":
        yield Step("locating rings", "axial", told("Put the locating rings in, the same number on both sides of the bearing."), told("No play between rings and bearing."), picture="seals")  # fmt: skip


def floated(case: Case, f: Figures) -> Items:
    """The room a free unit is given, set for the temperature it is set at."""
    if case.holds != "free":
        return
    one, other = ("set_first", "set_second") if f.has("set_first") and f.has("set_second") else ("float_first", "float_second")
    room = {"a": f(one), "b": f(other), "one": case.ends[0], "other": case.ends[1]}
    does = {
        "ring loose in its housing": told("Set the ring in its bore: {a} of room toward the {one}, {b} toward the {other}.", **room),
        "sliding cartridge": told("Set the cartridge: {a} of room toward the {one}, {b} toward the {other}.", **room),
        "guided frame": told("Set the frame in its guide: {a} of room toward the {one}, {b} toward the {other}.", **room),
        "pin in a grooved shaft": told("Set the pin in its groove: {a} of room toward the {one}, {b} toward the {other}.", **room),
        "clearance inside the bearing": told("Push the shaft to both ends of its play: {a} toward the {one}, {b} toward the {other}; leave it in the middle.", **room),
    }.get(case.floats_by, told("Set how this unit floats: {a}.", a=f("floats_by")))  # fmt: skip
    tight = Trouble(say("Less room than that"), told("Stop. Growth would load both bearings; the engineer decides."))
    yield Step("set float", "axial", does, None, (tight,), takes=("caliper",), picture="float")


def bolted(case: Case, f: Figures) -> Items:
    """Cap, alignment, and the bolts: half first, in the order drawn, the final figure last."""
    if case.housing == "take-up":
        yield set_down(f)
        yield Step("align", "bolts", told("Bring both take-ups of the shaft to the same travel: measure both screws."), told("Both screws read the same."), takes=("tape",))  # fmt: skip
        yield Step("bolts final", "bolts", told("Tighten the lock nuts of the adjusting screw against each other."), takes=("spanner",))
        return
    if case.housing == "cartridge":
        yield Step("align", "bolts", told("Turn the cartridge until its grease hole meets the housing's."))
        yield Step("bolts final", "bolts", told("Fit the stop that keeps the cartridge from turning."), told("It still slides by hand pressure.") if case.floats_by == "sliding cartridge" else None)  # fmt: skip
        return
    if case.housing == "split":
        yield Step("cap on", "bolts", told("Set the cap on its own base, the marks on the same side."), takes=("lifting gear",))
        yield Step("cap bolts", "bolts", told("Tighten the cap bolts crosswise to {torque}.", torque=f("cap_torque")), takes=("torque tool for the cap",))  # fmt: skip
    if case.housing != "split" and case.lies != "vertical":
        yield set_down(f)
    if case.flange:
        yield Step("align", "bolts", told("Line the housing up: ring square to the shaft, flange flat on its face."), told("No blade goes between flange and frame."), takes=("feeler",))  # fmt: skip
    else:
        yield Step("align", "bolts", told("Line the housing up: ring square to the shaft, foot flat on its face."), told("No blade goes under the foot."), takes=("feeler",))  # fmt: skip
    yield Step("bolts half", "bolts", told("Tighten the housing bolts in the order drawn, all to about half of {torque}.", torque=f("bolt_torque")), takes=("torque tool for the bolts",), picture="bolts")  # fmt: skip
    swing = Trouble(say("Shaft goes stiff"), told("Slacken. Frame not flat, or housing twisted: shim or machine, not force."))
    yield Step(
        "bolts final", "bolts", told("Then all to {torque}: set the wrench to {setting}.", torque=f("bolt_torque"), setting=f("bolt_setting")),
        None, (swing,), takes=("torque tool for the bolts",), picture="bolts",
    )  # fmt: skip


def set_down(f: Figures) -> Step:
    """What carried the shaft lets go of it, so that nothing is lined up or tightened against it."""
    if f.has("jack_load") and not f.has("jack_mass"):
        return Step("set down", "bolts", told("Ease what holds the shaft down until this unit holds it."), told("It stays near until the end."))
    return Step("set down", "bolts", told("Lower jack or sling until this unit carries the shaft."), told("It carries nothing now, and stays near until the end."))


def let_go(case: Case) -> Items:
    """The housing free of its frame, once the lock is open."""
    if case.housing == "take-up":
        yield Step("out of frame", "lock", told("Slide the unit out of its guides."))
    elif case.housing == "cartridge" and case.way not in (CLEARANCE, HEATED):
        yield Step("out of frame", "lock", told("Slide the cartridge out of its bore."))
    elif case.housing not in ("split", "cartridge"):
        yield Step("out of frame", "lock", told("Take the housing bolts out, the unit held."), takes=("spanner",))


def opens(case: Case) -> bool:
    """Whether the bearing lies open once its housing is off, with the old grease in it."""
    return case.housing == "split" or (case.housing == "cartridge" and case.way in (CLEARANCE, HEATED))


def sampled(does: Told) -> Step:
    """A sample of the old grease."""
    return Step("grease sample", "open", does, takes=("tags",))


def held_below(case: Case) -> Told | None:
    """What is looked at before anything slides off an upright shaft."""
    return told("It is held from below, nobody under it: it drops when it lets go.") if case.lies == "vertical" else None


def _load_taken(case: Case, f: Figures) -> Items:
    """The shaft's weight off the unit that is about to leave it; an upright one hangs already, one that tips is held down."""
    if case.lies != "vertical" and f.has("jack_mass"):
        yield Step("take load", "open", told("Lift until the shaft just floats at this unit."), told("More lift strains the next bearing."), takes=("lifting gear",))  # fmt: skip


def opened(case: Case, f: Figures) -> Items:
    """Off the frame, before the lock is touched."""
    if case.housing == "take-up":
        yield Step("bolts out", "open", told("Slacken the lock nuts and the adjusting screw of this side, and the other the same."), takes=("spanner",))  # fmt: skip
    elif case.housing == "cartridge":
        yield Step("bolts out", "open", told("Take out the stop of the cartridge."), takes=("spanner",))
        if opens(case):
            yield from _load_taken(case, f)
            yield Step("cartridge off", "open", told("Slide the cartridge off the bearing, along the shaft."), held_below(case))
            yield sampled(told("Take a spoon of the old grease into a clean bag, tagged."))
    elif case.housing == "split":
        yield Step("cap off", "open", told("Take the cap bolts out and lift the cap off, two people or a hoist."), takes=("spanner", "lifting gear"))  # fmt: skip
        yield Step("load zone", "open", told("Mark “up” on the outer ring."), told("It shows later where the load came from."), takes=("paint pen",))  # fmt: skip
        yield sampled(told("Take a spoon of the old grease into a clean bag, tagged."))
        yield Step("bolts out", "open", told("Slacken the base bolts. Leave them in."), takes=("spanner",))
        if case.holds == "fixed":
            yield Step("rings out", "open", told("Take the locating rings out, with the shaft in its slings."))
        yield Step("raise", "open", told("Raise the shaft until the bearing hangs free of the base."), takes=("lifting gear",))
        yield Step("seal off", "open", told("Slide the outer seal off the shaft, and the outer locating ring where there is one."))
    else:
        yield Step("bolts out", "open", told("Slacken the housing bolts. Leave them in, finger loose."), takes=("spanner",))
    if not opens(case):
        yield from _load_taken(case, f)
