"""Look-ups for driving a spherical roller bearing up on a taper 1:12: the usual bands of the trade, common practice."""

from generator.say import say
from generator.tables import not_in, row_in_range, table
from generator.units import convert
from generator.value import Band, LookedUp, Value, Withheld


def usual_reduction(bore: Value) -> Band | Withheld:
    """Clearance usually taken, least and most."""
    return _band(bore, "reduction")


def usual_travel(bore: Value) -> Band | Withheld:
    """Travel that usually goes with it."""
    return _band(bore, "travel")


def usual_least_left(bore: Value, clearance: str) -> Value | Withheld:
    """Least clearance usually left, by clearance class ("CN", "C3", "C4")."""
    row = _row(bore)
    if row is None or f"residual_{clearance}_mm" not in row:
        return not_in("taper-practice", say("{bore} mm, {class_}", bore=f"{_mm(bore):g}", class_=clearance))
    return _value(row, f"residual_{clearance}_mm", clearance)


def _band(bore: Value, what: str) -> Band | Withheld:
    row = _row(bore)
    if row is None:
        return not_in("taper-practice", say("a bore of {bore} mm", bore=f"{_mm(bore):g}"))
    return Band(_value(row, f"{what}_least_mm", ""), _value(row, f"{what}_most_mm", ""))


def _row(bore: Value) -> dict[str, str] | None:
    return row_in_range("taper-practice", _mm(bore), "over_mm", "to_mm")


def _value(row: dict[str, str], column: str, clearance: str) -> Value:
    keys = (("bore", say("over {a} to {b} mm", a=row["over_mm"], b=row["to_mm"])),) + ((("class", clearance),) if clearance else ())
    return Value(float(row[column]), "mm", LookedUp(None, table("taper-practice").title, keys))


def _mm(bore: Value) -> float:
    return convert(bore.content, bore.unit, "mm")
