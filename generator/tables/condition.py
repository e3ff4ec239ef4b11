"""Look-ups on the condition of a running machine: zones of vibration, limits of fans, terms of damage."""

from __future__ import annotations

from generator.say import say
from generator.tables import found, not_in, row_in_range, table
from generator.units import convert
from generator.value import Results, Rows, Value, Withheld


def zone_boundaries(power: Value, support: Value, speed: Value, height: Value | None = None) -> Results:
    """Boundaries AB, BC and CD of the zones and the group, for one machine; `height` is the shaft height of an electrical machine."""
    kw, turns = convert(power.content, power.unit, "kW"), convert(speed.content, speed.unit, "rpm")
    if not 120 - 1e-9 <= turns <= 15_000 + 1e-9:
        why = say("the zones hold from 120 to 15 000 r/min, not at {speed}: judge by the machine's own baseline", speed=f"{turns:g}")
        return _each(Withheld(why), "group", "ab", "bc", "cd")
    if not 15 + 1e-9 < kw <= 50_000 + 1e-6:
        why = say("the zones hold over 15 kW to 50 MW, not at {power} kW: judge by the machine's own baseline", power=f"{kw:g}")
        return _each(Withheld(why), "group", "ab", "bc", "cd")
    by_power = row_in_range("vibration-zones", kw, "power_over_kW", "power_to_kW", support=str(support.content))
    row = by_power if height is None else _by_height(convert(height.content, height.unit, "mm"), str(support.content))
    if row is None:
        size = f"{kw:g} kW" if height is None else say("a shaft height of {height} mm", height=f"{height.content:g}")
        return _each(not_in("vibration-zones", f"{size}, {support.content}"), "group", "ab", "bc", "cd")
    keys = {"group": row["group"], "support": row["support"]}
    remarks = [_compare()]
    if turns < 600:
        remarks.append(say("under 600 r/min the velocity is read from 2 to 1000 Hz, else from 10 to 1000 Hz"))
    return Results(
        group=found("vibration-zones", row["group"], **keys),
        ab=found("vibration-zones", float(row["AB_mm_s"]), "mm/s", **keys).remark(*remarks),
        bc=found("vibration-zones", float(row["BC_mm_s"]), "mm/s", **keys).remark(*remarks),
        cd=found("vibration-zones", float(row["CD_mm_s"]), "mm/s", **keys).remark(*remarks),
    )


def fan_limits(power: Value, support: Value) -> Results:
    """Category of an industrial process fan by its power, and its limits in place: starting up, alarm, shutting down."""
    kw = convert(power.content, power.unit, "kW")
    row = row_in_range("fan-vibration-limits", kw, "power_over_kW", "power_to_kW", support=str(support.content))
    if row is None:
        return _each(not_in("fan-vibration-limits", f"{kw:g} kW, {support.content}"), "category", "startup", "alarm", "shutdown")
    keys = {"category": row["category"], "support": row["support"]}
    limits = {
        name: found("fan-vibration-limits", float(row[f"{name}_mm_s"]), "mm/s", **keys).remark(_compare())
        for name in ("startup", "alarm", "shutdown")
    }
    return Results(category=found("fan-vibration-limits", row["category"], **keys), **limits)


def damage_terms() -> Rows:
    """The terms of ISO 15243 for what is seen on a bearing taken off: clause, mode, sub-mode. Terms alone, no cause is claimed."""
    return Rows(
        tuple(
            Results({name: found("damage-modes", row[name], clause=row["clause"]) for name in ("clause", "mode", "sub_mode")})
            for row in table("damage-modes").rows
        )
    )


def _by_height(mm: float, support: str) -> dict[str, str] | None:
    for row in table("vibration-zones").rows:
        under = float(row["height_under_mm"]) if row["height_under_mm"] else None
        if row["support"] == support and float(row["height_from_mm"]) <= mm + 1e-9 and (under is None or mm < under - 1e-9):
            return row
    return None


def _compare() -> str:
    return say("limits of vibration are given from memory: compare them with the current standard before they are relied on")


def _each(held: Withheld, *names: str) -> Results:
    return Results(dict.fromkeys(names, held))
