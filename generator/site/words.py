"""The words that scripts show: said here, brought along by every page, so that no script has a language of its own."""

from __future__ import annotations

from generator.say import say
from generator.site.pages.machine.steps_view import job_names


def script_words() -> dict[str, str]:
    """By key, as the scripts ask for them; `{name}` is filled in there."""
    return {**_steps(), **_one_step(), **_readings(), **_typing(), **_slips()}


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
        "ended before": say("This job was ticked to its end; it was begun {day}. For another one, begin anew."),
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
        "idle": say("Nobody has touched this screen for five minutes. It goes back to the start. Ticks and readings stay, signatures and crew numbers go."),
        "idle count": say("{seconds} seconds left"),
        "keep open": say("Keep this open"),
    }


def _readings() -> dict[str, str]:
    return {
        "no number": say("This is no number."),
        "no time": say("This is no time of the day."),
        "under": say("Under {limit} {unit} by {by}."),
        "over": say("Over {limit} {unit} by {by}."),
        "inside": say("Inside."),
        "not judged": say("Not judged."),
        "other unit": say("Is this in {unit}?"),
        "not believed": say("From {least} to {most} {unit} can be. Is it typed right?"),
        "verdict inside": say("Size inside, form inside."),
        "verdict size only": say("Size inside. No limit for the form on file: form not judged."),
        "verdict below": say("Size outside, under the limit: the shaft is not used as it is. Stop, and tell the engineer."),
        "verdict above": say("Size outside, over the limit: the unit will not go on as it should. Stop, and tell the engineer."),
        "verdict form": say("Size inside, form outside: the grip would be false. Stop, and tell the engineer."),
        "verdict not all": say("Not all nine yet; inside so far."),
        "verdict no limits": say("No limits on file: written, not judged."),
        "verdict warm": say(
            "Shaft more than {most} °C from 20 °C: not judged here, warm steel reads large. Let it come to 20 °C and measure again, or let the"
            " engineer bring the readings to 20 °C."
        ),
        "assumed 20": say("No temperature of the shaft typed: 20 °C assumed."),
    }


def _typing() -> dict[str, str]:
    return {
        "wipe": say("Wipe them"),
        "ask wipe": say("Wipe all readings of {at} typed here?"),
        "nothing typed": say("Nothing is typed yet."),
        "mend first": say("{what}: this is no number. Mend it or delete it first."),
        "say when": say("Say first: were they read as found, or as left?"),
        "say start": say("Type first when the machine was started."),
        "readings kept": say(
            "Kept on this screen only, not yet with the engineer. Paper is the record. Slip, code and file carry the values, the time and the crew"
            " number, to follow the bearing; no names, nobody is counted."
        ),
        "readings not kept": say(
            "This screen keeps no readings: they are gone when the page is left, and are not yet with the engineer. Paper is the record. Slip, code"
            " and file carry the values, the time and the crew number, to follow the bearing; no names, nobody is counted."
        ),
        "readings changed": say(
            "The sheet has changed since these were typed: {was} then, {now} now. They are judged by the sheet as it is now."
        ),
        "readings slip": say("{of}: readings, for the engineer"),
        "record": say("record"),
        "shaft limits": say("shaft, limits"),
        "place": say("place {number}, {unit}: a, b, c"),
        "verdict": say("verdict"),
        "when read": say("shaft and clearance read"),
        "instrument": say("instrument"),
        "by": say("crew number"),
    }


def _slips() -> dict[str, str]:
    return {
        "print": say("Print this slip"),
        "close": say("Back to the page"),
        "download": say("As a file"),
        "not yet": say(
            "Not yet with the engineer. Print it, take the file, or let the engineer's phone read the code. Paper is the record."
        ),
        "not yet told": say("Not yet with the engineer. Print it, or let the engineer's phone read the code. Paper is the record."),
        "code": say("The same as a code for a phone"),
        "too long": say("Too long for a code: print it, or take the file."),
        "initials": say("date ____________  initials ________  second person ________"),
        "this is wrong": say("This is wrong"),
        "wrong with": say("What is wrong?"),
        "wrong number": say("The number looks wrong"),
        "wrong machine": say("The machine is otherwise"),
        "wrong order": say("It cannot be done so"),
        "wrong words": say("The words are not clear"),
        "wrong slip": say("{of}: this is wrong, for the engineer"),
        "what": say("what"),
        "step": say("step"),
        "shown value": say("shown"),
        "identity": say("identity"),
        "words of hand": say("in your words"),
    }
