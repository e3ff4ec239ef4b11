"""Look-ups for drives: factor of a belt, friction on a conveyor pulley."""

from generator.tables import found, not_in, row_where, table
from generator.value import LookedUp, Value, Withheld


def belt_factor(belt: Value) -> Value | Withheld:
    """Pull of a kind of belt ("flat", "V", "synchronous") over its effective pull."""
    row = row_where("belt-factors", belt=str(belt.content))
    if row is None:
        return not_in("belt-factors", str(belt.content))
    if row["practice"]:
        return Value(float(row["factor"]), "", LookedUp(None, table("belt-factors").title, (("belt", row["belt"]),)))
    return found("belt-factors", float(row["factor"]), belt=row["belt"])


def pulley_friction(runs_in: Value, face: Value) -> Value | Withheld:
    """Friction of a conveyor belt on a pulley, the low end of what it may be."""
    row = row_where("pulley-friction", runs_in=str(runs_in.content), face=str(face.content))
    if row is None:
        return not_in("pulley-friction", f"{runs_in.content}, {face.content}")
    return found("pulley-friction", float(row["friction"]), runs_in=row["runs_in"], face=row["face"])


def service_range(application: Value) -> tuple[Value | Withheld, Value | Withheld]:
    """Least and greatest service factor of an application."""
    row = row_where("service-factors", application=str(application.content))
    if row is None:
        held = not_in("service-factors", str(application.content))
        return held, held
    return tuple(found("service-factors", float(row[end]), application=row["application"]) for end in ("low", "high"))  # type: ignore[return-value]
