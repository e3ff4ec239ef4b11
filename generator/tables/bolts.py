"""Look-ups on bolts: each takes Values, gives a Value that names its table and row, or Withheld that says which row is missing."""

from __future__ import annotations

from generator.plant.quantities import BadQuantity, thread_of
from generator.say import say
from generator.tables import found, not_in, row_in_range, row_where
from generator.units import convert
from generator.value import Citation, LookedUp, Value, Withheld

Strengths = tuple[Value | Withheld, Value | Withheld, Value | Withheld]

_UNDER_HEAD = {
    "S235": "steel-S235", "E295": "steel-E295", "GJL-150": "grey-iron-GJL-150", "GJL-200": "grey-iron-GJL-150",
    "GJL-250": "grey-iron-GJL-250", "GJS-400": "ductile-GJS-400", "1.4401": "stainless-1.4401",
    "aluminium wrought": "aluminium-6082-wrought",
    "aluminium cast": "aluminium-cast-AlSi9Cu3-sand",
}  # fmt: skip


def bolt_class(class_: Value, diameter: Value) -> Strengths:
    """Proof, yield and tensile strength of a bolt in MPa; ISO 898-1, ISO 3506-1 or SAE J429. An unmarked head counts as the lowest."""
    name, size = str(class_.content), convert(diameter.content, diameter.unit, "mm")
    if name.startswith("A"):
        return _stainless(name, size)
    if name.startswith("grade"):
        row = row_in_range("bolt-grade-j429", size / 25.4, "d_over_in", "d_incl_in", grade=name.split()[1])
        columns, unit, which = ("proof_ksi", "yield_ksi", "tensile_ksi"), "ksi", "bolt-grade-j429"
    else:
        row = row_in_range("bolt-class-iso898", size, "d_over", "d_incl", **{"class": "4.6" if name == "unmarked" else name})
        columns, unit, which = ("proof_MPa", "yield_min_MPa", "tensile_min_MPa"), "MPa", "bolt-class-iso898"
    if row is None:
        held = not_in(which, f"{name}, {size:g} mm")
        return held, held, held
    proof, yield_, tensile = (found(which, float(row[column]), unit, None, **{"class": name, "size": f"{size:g} mm"}) for column in columns)
    return proof, yield_, tensile


def friction(surface: Value, state: Value) -> dict[str, Value | Withheld]:
    """Low and high friction, and low and high nut factor. Dry or oiled stainless galls: no torque is given for it."""
    names = ("mu_low", "mu_high", "k_low", "k_high")
    row = row_where("bolt-friction", surface=str(surface.content), state=str(state.content))
    if row is None:
        why = say(
            "{surface} {state}: it galls, and no torque can be stood behind; use paste or wax made for stainless",
            surface=surface.content, state=state.content,
        )  # fmt: skip
        return dict.fromkeys(names, Withheld(why))
    keys = {"surface": str(surface.content), "state": str(state.content)}
    return {name: found("bolt-friction", float(row[name]), "", None, **keys) for name in names}


def head_and_hole(diameter: Value) -> tuple[Value | Withheld, Value | Withheld]:
    """Bearing diameter of a hexagon head and medium hole of a metric bolt, in mm; ISO 4014 and ISO 273, M5 to M24."""
    size = f"{convert(diameter.content, diameter.unit, 'mm'):g}"
    row = row_where("thread-metric-coarse", d_mm=size)
    if row is None or not row["dw_min_mm"]:
        held = not_in("thread-metric-coarse", say("the head of a bolt of {size} mm", size=size))
        return held, held
    head, hole = float(row["dw_min_mm"]), float(row["hole_medium_mm"])
    return (
        found("thread-metric-coarse", head, "mm", Citation("ISO 4014", "", "dw, grade A"), bolt=f"M{size}"),
        found("thread-metric-coarse", hole, "mm", Citation("ISO 273", "", "medium"), bolt=f"M{size}"),
    )


def published_area(thread: Value) -> Value | Withheld:
    """Stress area of a coarse thread as its standard prints it: mm² for metric, in² for unified."""
    try:
        size, pitch, family = thread_of(str(thread.content))
    except BadQuantity as bad:
        return Withheld(bad.wrong)
    if family == "metric":
        row = row_where("thread-metric-coarse", d_mm=f"{size:g}", pitch_mm=f"{pitch:g}")
        return found("thread-metric-coarse", float(row["As_mm2"]), "mm2", thread=str(thread.content)) if row else _fine(thread)
    row = row_where("thread-unc", d_in=f"{size / 25.4:g}", tpi=f"{25.4 / pitch:g}")
    return found("thread-unc", float(row["At_in2"]), "in2", thread=str(thread.content)) if row else _fine(thread)


def pressure_limit(material: Value) -> Value | Withheld:
    """Pressure a material may carry under a bolt head, in MPa; VDI 2230, edition 1986, by which alone it is accepted."""
    word = str(material.content)
    name = _UNDER_HEAD.get(word, "")
    row = row_where("bearing-pressure-limit", material=name)
    if row is None:
        return Withheld(say("no published pressure limit for {material}: a washer or sleeve, and the maker's word", material=word))
    if not row["pG_1986_MPa"]:
        newer = row["pG_2003_MPa"]
        return Withheld(
            say(
                "the pressure limit for {material} is published in the later edition alone ({newer} MPa), by which nothing is accepted:"
                " a washer or sleeve, and the maker's word",
                material=word,
                newer=newer,
            )  # fmt: skip
        )
    limit = found("bearing-pressure-limit", float(row["pG_1986_MPa"]), "MPa", material=name)
    return limit.remark(say("GJL-200 is not in the table: the limit of GJL-150 is taken")) if word == "GJL-200" else limit


def shear_strength(grade: Value) -> Value | Withheld:
    """Shear strength of a tapped base, in MPa: grey iron by grade (EN 1561), steel 0.6 of its tensile strength."""
    iron = {"GJL-150": 170.0, "GJL-200": 230.0, "GJL-250": 290.0}
    steel = {"S235": 216.0, "E295": 282.0, "C45": 336.0}
    name = str(grade.content)
    if name in iron:
        annex = Citation("EN 1561", "", "annex, shear strength", "from memory")
        return Value(iron[name], "MPa", LookedUp(annex, say("shear strength of grey iron"), (("grade", name),)))
    if name in steel:
        share = Citation("EN 10025-2, 0.6 of the tensile strength", "", "", "from memory")
        return Value(steel[name], "MPa", LookedUp(share, say("shear strength of steel"), (("grade", name),)))
    return Withheld(say("no shear strength on file for {grade}", grade=name))


def strip_factor(diameter: Value) -> Value:
    """Factor of the worst thread limits (bolt 6g in hole 6H) on the basic strip areas, derived from ISO 965 limits."""
    size = convert(diameter.content, diameter.unit, "mm")
    factor = {8: 0.76, 10: 0.78, 12: 0.79, 16: 0.80, 20: 0.81, 24: 0.82}.get(round(size), 0.76)
    limits = Citation("ISO 965-2 limits of 6g and 6H", "", "", "derived")
    return Value(factor, "", LookedUp(limits, say("worst thread limits"), (("bolt", f"{size:g} mm"),)))


def _stainless(name: str, size: float) -> Strengths:
    """Classes 70 and 80 are standardised up to M24, 50 up to M39; a larger bolt is by agreement with its maker."""
    row = row_where("bolt-class-iso3506", **{"class": name.rpartition("-")[2]})
    if row is None or size > float(row["d_incl_mm"]):
        held = not_in("bolt-class-iso3506", f"{name}, {size:g} mm")
        return held, held, held
    rp = found("bolt-class-iso3506", float(row["rp02_MPa"]), "MPa", None, **{"class": name})
    return rp, rp, found("bolt-class-iso3506", float(row["rm_MPa"]), "MPa", None, **{"class": name})


def _fine(thread: Value) -> Withheld:
    return not_in("thread-metric-coarse", say("{thread}: a coarse thread is asked", thread=thread.content))


def plain_washer(diameter: Value) -> tuple[Value | Withheld, Value | Withheld]:
    """Thickness and outside of a plain washer for a bolt, in mm; ISO 7089, M5 to M24."""
    row = row_where("plain-washer", bolt_mm=f"{convert(diameter.content, diameter.unit, 'mm'):g}")
    if row is None:
        held = not_in("plain-washer", f"{diameter.content:g} {diameter.unit}")
        return held, held
    keys = {"bolt": f"{row['bolt_mm']} mm"}
    return found("plain-washer", float(row["thickness_mm"]), "mm", **keys), found("plain-washer", float(row["outside_mm"]), "mm", **keys)
