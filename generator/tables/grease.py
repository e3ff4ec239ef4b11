"""Look-ups on grease: each takes Values, gives a Value that names its table and row, or Withheld that says which row is missing."""

from __future__ import annotations

from generator.say import say
from generator.tables import found, not_in, row_where, table
from generator.units import convert
from generator.value import Value, Withheld


def grease_factor(kind: str, condition: str) -> Value | Withheld:
    """A factor on the grease interval by a condition in words."""
    row = row_where("grease-factors", factor=kind, condition=condition)
    return (
        found("grease-factors", float(row["value"]), "", factor=kind, condition=condition)
        if row
        else not_in("grease-factors", f"{kind}: {condition}")
    )


def grease_factor_at(kind: str, number: Value, unit: str) -> Value | Withheld:
    """A factor on the grease interval by a figure; the lower end of a row belongs to it, the upper does not."""
    size = convert(number.content, number.unit, unit)
    for row in table("grease-factors").rows:
        if row["factor"] == kind and row["from"] and float(row["from"]) <= size < float(row["to"]):
            span = say("from {a} to under {b} {unit}", a=row["from"], b=row["to"], unit=unit)
            return found("grease-factors", float(row["value"]), "", factor=kind, row=span)
    return not_in("grease-factors", f"{kind}: {size:g} {unit}")


def thickener_limit(thickener: Value) -> Value | Withheld:
    """Continuous temperature planned with for a thickener, in °C; common practice."""
    name = _thickener(thickener)
    row = row_where("thickener-temperature", thickener=name)
    if row is None:
        return not_in("thickener-temperature", name)
    return found("thickener-temperature", float(row["continuous_limit_C_planning"]), "degC", thickener=name)


def thickener_greatest(thickener: Value) -> Value | Withheld:
    """Temperature a thickener may not pass at all, in °C; the continuous limit where the table has none."""
    name = _thickener(thickener)
    row = row_where("thickener-temperature", thickener=name)
    if row is None or not row["max_usable_C"]:
        return thickener_limit(thickener)
    return found("thickener-temperature", float(row["max_usable_C"]), "degC", thickener=name)


def thickeners_together(one: Value, other: Value) -> Value | Withheld:
    """Whether two thickeners may meet by the charts: compatible, borderline, incompatible, unknown. Advice: a test on file decides."""
    a, b = sorted((_thickener(one), _thickener(other)))
    row = row_where("thickener-compatibility", thickener_a=a, thickener_b=b)
    if row is None:
        return not_in("thickener-compatibility", f"{a} / {b}")
    return found("thickener-compatibility", row["rating"], "", pair=f"{a} / {b}", confidence=row["confidence"])


def viscosity_grade(grade: Value) -> Value | Withheld:
    """Middle viscosity at 40 °C of an ISO VG grade, in mm²/s; ISO 3448."""
    name = f"{grade.content:g}"
    row = row_where("iso-vg", grade=name)
    return found("iso-vg", float(row["nu40_mid"]), "mm2/s", grade=f"VG {name}") if row else not_in("iso-vg", f"VG {name}")


def next_grade(viscosity: Value) -> Value | None:
    """The ISO VG grade next above a viscosity at 40 °C, None beyond the last."""
    nu = convert(viscosity.content, viscosity.unit, "mm2/s")
    for row in table("iso-vg").rows:
        if float(row["nu40_min"]) > nu:
            return found("iso-vg", float(row["grade"]), "VG", grade=f"VG {row['grade']}")
    return None


def consistency(penetration: Value) -> Value | Withheld:
    """NLGI grade of a worked penetration in tenths of a millimetre; "between grades" in a gap."""
    tenths = float(penetration.content)
    rows = table("nlgi-grades").rows
    for row in rows:
        if float(row["worked_penetration_min_0.1mm"]) <= tenths <= float(row["worked_penetration_max_0.1mm"]):
            return found("nlgi-grades", row["grade"], "", penetration=f"{tenths:g}")
    softest, hardest = float(rows[0]["worked_penetration_max_0.1mm"]), float(rows[-1]["worked_penetration_min_0.1mm"])
    if not hardest < tenths < softest:
        return not_in("nlgi-grades", say("a worked penetration of {tenths}", tenths=f"{tenths:g}"))
    return found("nlgi-grades", "between grades", "", penetration=f"{tenths:g}")


def _thickener(word: Value) -> str:
    """As the tables write it: the plain sulfonate of a data sheet is its complex."""
    name = str(word.content).replace(" ", "-")
    return "calcium-sulfonate-complex" if name == "calcium-sulfonate" else name
