"""The words that scripts show: said here, brought along by every page, so that no script has a language of its own."""

from __future__ import annotations

from generator.say import say


def script_words() -> dict[str, str]:
    """By key, as the scripts ask for them; `{name}` is filled in there."""
    return {**_steps(), **_readings(), **_slips()}


def _steps() -> dict[str, str]:
    return {
        "one at a time": say("One step at a time"),
        "begin anew": say("Begin anew"),
        "ask anew": say("Wipe every tick of this job on this screen?"),
        "leave it": say("Leave it as it is"),
        "counted": say("{done} of {of} steps ticked."),
        "kept here": say("Ticks are kept on this screen only. Paper is the record."),
        "not kept": say("This screen keeps no ticks: they are gone when the page is left. Paper is the record."),
        "changed": say("The sheet has changed since this job was begun. Then: {was}. Now: {now}. Stop, and read it again from the start."),
        "where": say("{at}, {job}: {n} of {of}."),
        "next stop": say("Next stop: {stop}."),
        "back": say("Back"),
        "next": say("Next"),
        "done": say("Done"),
        "all steps": say("All steps"),
        "unsigned": say("{stop} is not signed by both. Nobody goes on before it is."),
        "go on unsigned": say("Go on unsigned, and say so on paper"),
        "unfinished": say("{job}: {done} of {of} steps, begun {day}"),
        "drop": say("Drop it"),
        "ask drop": say("Drop {at}, {job}? Its ticks on this screen are wiped."),
        "idle": say("Nobody has touched this screen for a while. In {seconds} seconds it goes back to the start. Ticks and readings stay."),
        "keep open": say("Keep this open"),
    }  # fmt: skip


def _readings() -> dict[str, str]:
    return {
        "no number": say("no number"),
        "under": say("under the limit by {by} {unit}"),
        "over": say("over the limit by {by} {unit}"),
        "inside": say("inside"),
        "other unit": say("is this in {unit}?"),
        "verdict inside": say("Inside: size and form."),
        "verdict below": say("Under the limit: the shaft is not used as it is. Stop, and tell the engineer."),
        "verdict above": say("Over the limit: the unit will not go on as it should. Stop, and tell the engineer."),
        "verdict form": say("Size inside, form outside: the grip would be false. Stop, and tell the engineer."),
        "verdict not all": say("Inside so far; not all nine are there."),
        "verdict no limits": say("No limits on file: written, not judged."),
        "warm": say("The shaft is too warm or too cold to be judged here: write its temperature, the engineer corrects it."),
        "wipe": say("Wipe them"),
        "ask wipe": say("Wipe all readings typed here?"),
        "readings slip": say("Readings, for the engineer"),
        "position": say("position"),
        "record": say("record"),
        "verdict": say("verdict"),
    }


def _slips() -> dict[str, str]:
    return {
        "print": say("Print this slip"),
        "close": say("Back to the page"),
        "download": say("As a file"),
        "not yet": say(
            "Not yet with the engineer. Print it, take the file, or let the engineer's phone read the code: paper is the record."
        ),
        "code": say("The same as a code for a phone"),
        "too long": say("Too long for a code: print it, or take the file."),
        "initials": say("date ____________  initials ________  second person ________"),
        "wrong with": say("What is wrong?"),
        "wrong number": say("The number looks wrong"),
        "wrong machine": say("The machine is otherwise"),
        "wrong order": say("It cannot be done so"),
        "wrong words": say("The words are not clear"),
        "wrong slip": say("This is wrong, for the engineer"),
        "what": say("what"),
        "identity": say("identity"),
    }
