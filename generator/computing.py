"""The command `compute`: the list, the description of a method, or its result."""

import json
from pathlib import Path

from generator.compute import BadCase, as_json, as_text, case_from, described, inputs_of
from generator.mounting.chains import ALL
from generator.plant.problems import nearest
from generator.say import say


def computed(name: str | None, inputs: tuple[str, ...], case: Path | None, wants_json: bool) -> tuple[int, str]:
    """Exit code and text. 0: done (a withheld result is an answer too). 2: what was typed can't be taken."""
    if name is None:
        return 0, _list(wants_json)
    method = ALL.get(name)
    if method is None:
        near = nearest(name, ALL)
        hint = say("nearest known: {name}", name=near) if near else say("`seatbook compute` lists them")
        return 2, say("no calculation is called {name}; {hint}", name=name, hint=hint)
    if not inputs and case is None:
        return 0, _description(method, wants_json)
    try:
        typed = case_from(case, method) if case else {}
        for pair in inputs:
            key, sign, given = pair.partition("=")
            if not sign:
                raise BadCase(say("{pair} is no input", pair=repr(pair)), say("write name=value"))
            typed[key.strip()] = given
        given_values = inputs_of(method, typed, str(case) if case else "command line")
    except BadCase as bad:
        return 2, f"{bad.wrong}\n{bad.right}"
    result = method.of(**given_values)
    return 0, json.dumps(as_json(method, result), indent=1, ensure_ascii=False) if wants_json else as_text(result)


def _list(wants_json: bool) -> str:
    if wants_json:
        return json.dumps([{"method": m.name, "title": m.title} for m in ALL.values()], indent=1, ensure_ascii=False)
    wide = max(len(name) for name in ALL)
    return "\n".join(f"{name:<{wide}}  {method.title}" for name, method in sorted(ALL.items()))


def _description(method: "object", wants_json: bool) -> str:
    from generator.method import Method, fields, label_of, row_of, words_of

    assert isinstance(method, Method)
    if not wants_json:
        return described(method)

    def one(name: str, kind: object) -> dict[str, object]:
        label = label_of(kind)
        row = row_of(kind)
        if row is not None:
            return {"name": name, "rows": [one(n, k) for n, k in (fields(row) or {}).items()]}
        if label is not None:
            return {"name": name, "meaning": label.meaning, "symbol": label.symbol, "unit": label.unit}
        return {"name": name, "words": list(words_of(kind) or ())}

    takes = [one(name, kind) for name, kind in method.takes.items()]
    gives = [one(name, kind) for name, kind in (fields(method.gives) or {"result": method.gives}).items()]
    return json.dumps({"method": method.name, "title": method.title, "takes": takes, "gives": gives}, indent=1, ensure_ascii=False)
