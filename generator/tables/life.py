"""Look-ups for loads and life: thrust factors, f0, reliability, cleanliness, static safety, slopes; between rows of a table straight lines."""

from math import degrees

from generator.say import say
from generator.tables import found, not_in, row_in_range, row_where, table
from generator.units import convert
from generator.value import LookedUp, Value, Withheld


def thrust_factors(relative: Value) -> tuple[Value | Withheld, Value | Withheld]:
    """e and Y of a radial ball bearing by its relative axial load; below the first row that row, beyond the last none."""
    rows = table("ball-thrust-factors").rows
    first, last = float(rows[0]["relative_axial_load"]), float(rows[-1]["relative_axial_load"])
    if relative.content > last:
        held = Withheld(
            say("the push along the shaft is beyond the table of thrust factors, which ends at f0 Fa/C0 = {last}", last=f"{last:g}")
        )
        return held, held
    at = max(first, relative.content)
    e, y = (
        found("ball-thrust-factors", _between("ball-thrust-factors", "relative_axial_load", part, at), at=f"{at:.3g}")
        for part in ("e", "Y")
    )
    return e, y


def f0_of(ratio: Value) -> Value | Withheld:
    """Factor f0 by the size of the balls on their circle, 0 to 0.30."""
    if ratio.content > float(table("ball-f0").rows[-1]["ratio"]):
        return not_in("ball-f0", f"{ratio.content:g}")
    return found("ball-f0", _between("ball-f0", "ratio", "f0", ratio.content), ratio=f"{ratio.content:.3g}")


def reliability_factor_of(reliability: Value) -> Value | None:
    """Factor of reliability where the table has this very row."""
    percent = convert(reliability.content, reliability.unit, "%")
    row = next((r for r in table("reliability").rows if abs(float(r["reliability_percent"]) - percent) < 1e-6), None)
    return found("reliability", float(row["a1"]), life=row["life_name"]) if row else None


def cleanliness_constants(level: Value, pitch: Value) -> tuple[Value | Withheld, Value | Withheld]:
    """The two constants of a level of cleanliness."""
    row = row_in_range("cleanliness", convert(pitch.content, pitch.unit, "mm"), "pitch_over_mm", "pitch_to_mm", level=str(level.content))
    if row is None:
        held = not_in("cleanliness", str(level.content))
        return held, held
    return (
        found("cleanliness", float(row["k"]), level=str(level.content)),
        found("cleanliness", float(row["b"]), level=str(level.content)),
    )


def least_static_safety(kind: str, running: str) -> Value | Withheld:
    """Least static safety; kind "ball" or "roller", running "quiet", "normal" or "shock"."""
    row = row_where("static-safety", running=running)
    return found("static-safety", float(row[kind]), running=running, bearing=kind) if row else not_in("static-safety", running)


def slope_allowed(kind: str) -> tuple[Value | Withheld, Value | Withheld]:
    """Angle a kind of bearing always carries, and the one never to be passed."""
    row = row_where("slope-limits", bearing=kind)
    if row is None:
        held = not_in("slope-limits", kind)
        return held, held
    ends = tuple(degrees(float(row[end])) for end in ("low_rad", "high_rad"))
    if row["practice"]:
        why = LookedUp(None, table("slope-limits").title, (("bearing", kind),))
        return Value(ends[0], "deg", why), Value(ends[1], "deg", why)
    return found("slope-limits", ends[0], "deg", bearing=kind), found("slope-limits", ends[1], "deg", bearing=kind)


def _between(name: str, key: str, part: str, at: float) -> float:
    rows = table(name).rows
    for one, other in zip(rows[:-1], rows[1:], strict=True):
        low, high = float(one[key]), float(other[key])
        if low <= at <= high:
            return float(one[part]) + (float(other[part]) - float(one[part])) * (at - low) / (high - low)
    return float(rows[-1][part])
