"""Look-ups on oil and on the letters of a grease: coefficients of the viscosity index, designations of DIN 51825 and ISO 6743-9."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from generator.say import say
from generator.tables import found, not_in, table
from generator.units import convert
from generator.value import Results, Rows, Value, Withheld

LETTERS = ("a", "b", "c", "d", "e", "f")
Row = dict[str, str]
# what a place in a designation may hold (the text and its row), and how often
Part = tuple[str, Sequence[tuple[str, Row]], int, int]
FOUND = ("standard", "use", "additives", "base_oil", "water", "consistency", "highest", "lowest")


def index_coefficients(nu100: Value) -> Results:
    """The coefficients a to f at a viscosity at 100 °C; a range runs from its lower end to under its upper."""
    size = convert(nu100.content, nu100.unit, "mm2/s")
    for row in table("d2270-coefficients").rows:
        if float(row["from_mm2_s"]) <= size and (not row["to_mm2_s"] or size < float(row["to_mm2_s"])):
            return _coefficients(row)
    return Results(dict.fromkeys(LETTERS, not_in("d2270-coefficients", f"{size:g} mm²/s")))


def all_index_coefficients() -> Rows:
    """Every range with its coefficients; the last has no upper end."""
    rows = []
    for row in table("d2270-coefficients").rows:
        ends = {"low": row["from_mm2_s"]} | ({"high": row["to_mm2_s"]} if row["to_mm2_s"] else {})
        keys = {"from": row["from_mm2_s"]}
        rows.append(Results({n: found("d2270-coefficients", float(t), "mm2/s", **keys) for n, t in ends.items()} | _coefficients(row)))
    return Rows(tuple(rows))


def _coefficients(row: Row) -> Results:
    return Results({n: found("d2270-coefficients", float(row[n]), **{"from": row["from_mm2_s"]}) for n in LETTERS})


def decoded(designation: Value) -> Results:
    """What the letters of a grease say, by name; every one withheld where a letter is not known or the word has two readings."""
    word = "".join(str(designation.content).upper().split()).replace("\u2212", "-").replace("\u2013", "-")
    for prefix in ("DIN51825", "DIN51502", "ISO6743-9", "ISO-L-", "L-X"):
        rest = word.removeprefix(prefix)
        word = ("X" + rest if prefix == "L-X" else rest.lstrip("-:")) if rest != word else word
    iso = word.startswith("X")
    readings = list(_readings(word.removeprefix("X") if iso else word, _iso_parts() if iso else _din_parts()))
    if len(readings) != 1:
        why = say("{word} has more than one reading", word=designation.content) if readings else _unread(designation)
        return Results(dict.fromkeys(FOUND, Withheld(why)))
    return _iso(readings[0]) if iso else _din(readings[0])


def _unread(designation: Value) -> str:
    return say("{word} is no designation of a grease by DIN 51825 or ISO 6743-9; it stays as it is written", word=designation.content)


def _readings(text: str, parts: Sequence[Part]) -> Iterator[dict[str, list[tuple[str, Row]]]]:
    """Every way to read the whole text: a letter taken too greedily is given back, since PHC is P and HC, never PH and C."""
    if not parts:
        if not text:
            yield {}
        return
    (name, options, least, most), later = parts[0], parts[1:]
    if least <= 0:
        for rest in _readings(text, later):
            yield {name: [], **rest}
    if most > 0:
        for code, row in options:
            if text.startswith(code):
                fewer = [one for one in options if one[0] != code]
                for rest in _readings(text.removeprefix(code), [(name, fewer, max(least - 1, 0), most - 1), *later] if most > 1 else later):
                    yield {**rest, name: [(code, row), *rest.get(name, [])]}


def _din_parts() -> list[Part]:
    def of(part: str) -> list[tuple[str, Row]]:
        return [(row["code"], row) for row in table("din51825-codes").rows if row["part"] == part]

    return [
        ("use", of("use"), 1, 1),
        ("additives", of("additive"), 0, 3),
        ("base oil", of("base oil"), 0, 1),
        ("consistency", _grades(), 1, 1),
        ("upper", of("upper temperature"), 1, 1),
        ("lower", of("lower temperature"), 0, 1),
    ]


def _iso_parts() -> list[Part]:
    def of(symbol: str) -> list[tuple[str, Row]]:
        return [(row["code"], row) for row in table("iso6743-9-codes").rows if row["symbol"] == symbol]

    return [
        ("lower", of("1"), 1, 1),
        ("upper", of("2"), 1, 1),
        ("water", of("3"), 1, 1),
        ("load", of("4"), 1, 1),
        ("consistency", _grades(), 0, 1),
    ]


def _grades() -> list[tuple[str, Row]]:
    grades = [(row["grade"], row) for row in table("nlgi-grades").rows]
    neighbours = list(zip(grades[:-1], grades[1:], strict=True))
    return grades + [(f"{a}/{b}", row) for (a, row), (b, _) in neighbours] + [(f"{b}/{a}", row) for (a, row), (b, _) in neighbours]


def _din(read: dict[str, list[tuple[str, Row]]]) -> Results:
    name = "din51825-codes"
    (use, upper), lower, oil = (read["use"][0], read["upper"][0]), read["lower"], read["base oil"]
    additives = [row["meaning"] for _, row in read["additives"]]
    return Results(
        standard=found(name, "DIN 51825"),
        use=found(name, use[1]["meaning"], letters=use[0]),
        additives=found(name, ", ".join(additives) or say("none stated"), letters="".join(code for code, _ in read["additives"]) or "-"),
        base_oil=found(name, oil[0][1]["meaning"], letters=oil[0][0]) if oil else found(name, "mineral oil", letters="-"),
        water=found(name, upper[1]["water_DIN_51807_1"], letters=upper[0]),
        consistency=_consistency(read["consistency"]),
        highest=_temperature(name, *upper),
        lowest=_temperature(name, *lower[0]) if lower else _silent(),
    )


def _iso(read: dict[str, list[tuple[str, Row]]]) -> Results:
    name = "iso6743-9-codes"
    lower, upper, water, load = (read[part][0] for part in ("lower", "upper", "water", "load"))
    return Results(
        standard=found(name, "ISO 6743-9"),
        use=_silent(),
        additives=found(name, load[1]["meaning"], symbol="4", letter=load[0]),
        base_oil=_silent(),
        water=found(name, water[1]["meaning"], symbol="3", letter=water[0]),
        consistency=_consistency(read["consistency"]),
        highest=_temperature(name, *upper),
        lowest=_temperature(name, *lower),
    )


def _silent() -> Withheld:
    return Withheld(say("the designation does not say it"))


def _consistency(read: list[tuple[str, Row]]) -> Value | Withheld:
    return found("nlgi-grades", read[0][0], grade=read[0][0]) if read else _silent()


def _temperature(name: str, code: str, row: Row) -> Value:
    value = found(name, float(row["degC"]), "degC", letter=code)
    # a letter that says "beyond" names no figure: the nearer one is counted
    return value.remark(say("the letter {code} says beyond this temperature", code=code)) if row["bound"] == "over" else value
