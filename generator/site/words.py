"""The words that scripts show: said here, brought along by every page, so that no script has a language of its own."""

from __future__ import annotations

from generator.say import say
from generator.site.pages.machine.steps_view import job_names


def script_words() -> dict[str, str]:
    """By key, as the scripts ask for them; `{name}` is filled in there."""
    return {**_steps(), **_one_step(), **_readings(), **_slips()}


def _steps() -> dict[str, str]:
    return {
        "one at a time": say("One step at a time"),
        "begin anew": say("Begin anew"),
        "ask anew": say("Wipe every tick of {at}, {job} on this screen, and begin anew?"),
        "leave it": say("Leave it as it is"),
        "counted": say("{done} of {of} steps ticked, begun {day}. Kept on this screen only. Paper is the record, and holds the signatures."),
        "kept here": say("Ticks are kept on this screen only. Paper is the record, and holds the signatures."),
        "not kept": say("This screen keeps no ticks: they are gone when the page is left. Paper is the record."),
        "changed issue": say(
            "The sheet has changed since this job was begun: issue {was} then, {now} now. Steps ticked then: {steps}. Read it again from the start;"
            " ticks are kept once you begin anew."
        ),
        "changed code": say(
            "The sheet has changed since this job was begun: check code {was} then, {now} now. Steps ticked then: {steps}. Read it again from the"
            " start; ticks are kept once you begin anew."
        ),
        "changed words": say(
            "The steps have changed since this job was begun. Steps ticked then: {steps}. Read them again from the start; ticks are kept once you"
            " begin anew."
        ),
        "over": say("This job was ticked to its end; it was begun {day}. For another one, begin anew."),
        "gone unsigned": say("Gone on unsigned."),
        **{f"job {key}": name for key, name in job_names().items()},
        "job readings": say("Readings"),
        "unfinished": say("{done} of {of} steps, begun {day}, kept on this screen only"),
        "unfinished readings": say("{done} typed, begun {day}, kept on this screen only"),
        "drop": say("Drop it"),
        "ask drop": say("Drop {at}, {job}? What was ticked and typed for it on this screen is wiped."),
    }


def _one_step() -> dict[str, str]:
    return {
        "where": say("{at}, {job}"),
        "step n": say("Step {n} of {of}"),
        "stop n": say("{stop}, after step {n} of {of}"),
        "next stop": say("Next stop: {stop}, after step {n}."),
        "no stop": say("No more stops."),
        "last step": say("The last of this job."),
        "unsigned before": say("Not signed on this screen: {stops}."),
        "unticked before": say("Not ticked: {steps}."),
        "unsigned": say("{stop} is not signed by all it asks for. Nobody goes on before it is."),
        "go on unsigned": say("Go on unsigned, and say so on paper"),
        "back": say("Back"),
        "next": say("Next"),
        "all steps": say("All steps"),
        "idle": say("Nobody has touched this screen for five minutes. It goes back to the start. Ticks and readings stay, signatures and initials go."),
        "idle count": say("{seconds} seconds left"),
        "keep open": say("Keep this open"),
    }


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
