"""The look-ups: each takes Values, gives a Value that names its table and row, or Withheld that says which row is missing."""

from __future__ import annotations

from generator.plant.quantities import BadQuantity, thread_of
from generator.say import say
from generator.tables import found, not_in, row_in_range, row_where, table
from generator.units import convert
from generator.value import LookedUp, Value, Withheld


def _mm(value: Value) -> float:
    return convert(value.content, value.unit, "mm")


def _g(number: float) -> str:
    return f"{number:g}"


def standard_tolerance(diameter: Value, grade: str) -> Value | Withheld:
    """IT of a grade ("IT5") at a size, in um; ISO 286-1, sizes to 500 mm."""
    row = row_in_range("iso286-it", _mm(diameter), "over_mm", "incl_mm")
    if row is None or f"{grade}_um" not in row:
        return not_in("iso286-it", f"{grade}, {_g(_mm(diameter))} mm")
    return found(
        "iso286-it", float(row[f"{grade}_um"]), "um", grade=grade, size=say("over {a} to {b} mm", a=row["over_mm"], b=row["incl_mm"])
    )


def deviations(diameter: Value, class_: Value) -> tuple[Value | Withheld, Value | Withheld]:
    """Lower and upper deviation of a shaft or hole class at a size, in um; ISO 286-2, over 3 to 500 mm."""
    word = str(class_.content)
    kind = "hole" if word[:1].isupper() else "shaft"
    row = row_in_range("iso286-limits", _mm(diameter), "over_mm", "incl_mm", kind=kind, **{"class": word})
    if row is None:
        held = not_in("iso286-limits", say("{class_} at {size} mm", class_=word, size=_g(_mm(diameter))))
        return held, held
    keys = {"class": word, "size": say("over {a} to {b} mm", a=row["over_mm"], b=row["incl_mm"])}
    return found("iso286-limits", float(row["lower_um"]), "um", **keys), found("iso286-limits", float(row["upper_um"]), "um", **keys)


def bore_tolerance(bore: Value) -> tuple[Value | Withheld, Value | Withheld]:
    """Lower and upper deviation of a Normal-class cylindrical bore, in um; ISO 492, bores over 2.5 to 500 mm. Not for housed inserts."""
    row = row_in_range("iso492-normal", _mm(bore), "over_mm", "incl_mm", ring="inner-bore")
    if row is None:
        held = not_in("iso492-normal", say("a bore of {size} mm", size=_g(_mm(bore))))
        return held, held
    keys = {"bore": say("over {a} to {b} mm", a=row["over_mm"], b=row["incl_mm"])}
    return found("iso492-normal", float(row["lower_um"]), "um", **keys), found("iso492-normal", float(row["upper_um"]), "um", **keys)


def load_class(bearing: Value, load: Value, bore: Value, ring: Value) -> Value | Withheld:
    """Shaft class by load for a steel shaft and a Normal-class metric bearing; ANSI/ABMA 7."""
    type_ = {"deep groove ball": "ball", "spherical roller": "spherical-roller", "cylindrical roller": "cylindrical-roller"}.get(
        str(bearing.content)
    )
    if str(ring.content) != "turns against the load":
        condition = "inner-ring-stationary-slides" if str(ring.content) == "stands, must slide" else "inner-ring-stationary-fixed"
        row = row_where("shaft-class-by-load", condition=condition)
    else:
        row = row_in_range(
            "shaft-class-by-load",
            _mm(bore),
            "bore_over_mm",
            "bore_incl_mm",
            condition="inner-ring-rotating",
            load=str(load.content),
            bearing_type=type_ or "",
        )
    if row is None:
        return not_in("shaft-class-by-load", f"{bearing.content}, {load.content}, {_g(_mm(bore))} mm")
    return found(
        "shaft-class-by-load",
        row["shaft_class"],
        "",
        load=str(load.content),
        bearing=str(bearing.content),
        bore=say("over {a} to {b} mm", a=row["bore_over_mm"], b=row["bore_incl_mm"]),
    )


def bar_tolerance(nominal: Value, carbon: Value) -> Value | Withheld:
    """How much under size cold-finished bar may be, in inches; ASTM A108, carbon at the top of its grade's range, to 0.55 %, to 9 in."""
    inches, share = convert(nominal.content, nominal.unit, "in"), convert(carbon.content, carbon.unit, "%")
    if share > 0.55:
        return Withheld(say("no size tolerance is on file for bar with more than 0.55 % carbon; ask for the mill's"))
    row = row_in_range("cold-finished-bar", inches, "over_in", "incl_in")
    if row is None:
        return not_in("cold-finished-bar", say("{size} in", size=_g(inches)))
    column = "minus_in_C_le_0.28" if share <= 0.28 + 1e-9 else "minus_in_C_0.28_to_0.55"
    return found(
        "cold-finished-bar",
        float(row[column]),
        "in",
        size=say("over {a} to {b} in", a=row["over_in"], b=row["incl_in"]),
        carbon=say("to 0.28 %") if share <= 0.28 + 1e-9 else say("over 0.28 to 0.55 %"),
    )


def clearance_class(kind: Value, bore: Value, class_: Value) -> tuple[Value | Withheld, Value | Withheld]:
    """Least and greatest radial internal clearance of a class, in um; ISO 5753-1. No table for housed inserts."""
    key = {
        "deep groove ball": "deep-groove-ball",
        "spherical roller, cylinder": "spherical-roller-cylindrical-bore",
        "spherical roller, taper": "spherical-roller-tapered-bore",
    }.get(str(kind.content))
    row = row_in_range("iso5753-clearance", _mm(bore), "bore_over_mm", "bore_incl_mm", kind=key) if key else None
    name = str(class_.content)
    if row is None or f"{name}_min" not in row:
        held = not_in("iso5753-clearance", f"{kind.content}, {_g(_mm(bore))} mm, {name}")
        return held, held
    keys = {"kind": str(kind.content), "class": name, "bore": say("over {a} to {b} mm", a=row["bore_over_mm"], b=row["bore_incl_mm"])}
    return found("iso5753-clearance", float(row[f"{name}_min"]), "um", **keys), found(
        "iso5753-clearance", float(row[f"{name}_max"]), "um", **keys
    )


def thread_figures(thread: Value) -> tuple[Value | Withheld, Value | Withheld]:
    """Major diameter and pitch of a thread, in mm, read from its designation; the reason stays where it was typed."""
    try:
        size, pitch, _ = thread_of(str(thread.content))
    except BadQuantity as bad:
        return Withheld(bad.wrong), Withheld(bad.wrong)
    return Value(size, "mm", thread.reason, thread.remarks), Value(round(pitch, 9), "mm", thread.reason, thread.remarks)


def thread_profile(thread: Value) -> Value | Withheld:
    """Whether a thread is metric or unified, read from its designation."""
    try:
        _, _, family = thread_of(str(thread.content))
    except BadQuantity as bad:
        return Withheld(bad.wrong)
    return Value("metric" if family == "metric" else "unified", "", thread.reason, thread.remarks)


def nut_thread(nut: Value) -> tuple[Value | Withheld, Value | Withheld]:
    """Major diameter and pitch of a standard lock nut by its number, in mm; ISO 2982-2 (KM..) or ANSI/ABMA 8.2 (N-.., AN-..)."""
    name = str(nut.content).strip().upper()
    metric, inch = row_where("lock-nut-metric", nut=name), row_where("lock-nut-inch", nut=name)
    if metric:
        return found("lock-nut-metric", float(metric["thread_mm"]), "mm", nut=name), found(
            "lock-nut-metric", float(metric["pitch_mm"]), "mm", nut=name
        )
    if inch:
        return found("lock-nut-inch", float(inch["thread_major_in"]), "in", nut=name), found(
            "lock-nut-inch", round(25.4 / float(inch["threads_per_inch"]), 9), "mm", nut=name
        )
    held = not_in("lock-nut-metric", name)
    return held, held


def hex_key(size: Value) -> Value | Withheld:
    """Hex key of a set screw by its thread; ISO 4026 to 4029, ASME B18.3."""
    name = str(size.content).split("x")[0] if str(size.content).upper().startswith("M") else str(size.content).rsplit("-", 1)[0]
    row = row_where("hex-key", size=name)
    return found("hex-key", float(row["key"]), row["unit"], screw=name) if row else not_in("hex-key", name)


def screw_seating(size: Value) -> tuple[Value | Withheld, Value | Withheld, Value | Withheld]:
    """Seating torque, torque never passed, and holding force of one set screw. A metric screw has no published holding force."""
    text = str(size.content)
    name = text.split("x")[0] if text.upper().startswith("M") else text.rsplit("-", 1)[0]
    inch, metric = row_where("set-screw-inch", size=name), row_where("set-screw-metric", size=name)
    if inch:
        torque = found("set-screw-inch", float(inch["seating_lbf_in"]), "lbf.in", screw=name)
        return torque, torque, found("set-screw-inch", float(inch["holding_lbf"]), "lbf", screw=name)
    none = Withheld(say("no published holding force for metric set screws"))
    if metric:
        seat = (
            Value(float(metric["seating_Nm_trade"]), "N.m", LookedUp(None, say("seating torques of the trade"), (("screw", name),)))
            if metric["seating_Nm_trade"]
            else not_in("set-screw-metric", name)
        )
        return seat, found("set-screw-metric", float(metric["iso898_5_test_torque_Nm"]), "N.m", screw=name), none
    held = not_in("set-screw-inch", name)
    return held, held, held


def expansion(material: Value, part: str = "shaft") -> Value | Withheld:
    """Thermal expansion of a material in 1e-6/K; 1.4301 by the worse end for a shaft or a frame."""
    name = str(material.content)
    row = next((r for r in table("expansion").rows if r["material"].startswith(name)), None)
    if row is None:
        return not_in("expansion", name)
    number = 16.0 if name == "stainless 1.4301" and part == "frame" else float(row["alpha_1e-6_per_K"])
    return found("expansion", number, "1e-6/K", material=row["material"])
