"""Look-ups for what a shaft is made of."""

from generator.tables import found, not_in, row_where
from generator.value import Value, Withheld


def elasticity(material: Value) -> tuple[Value | Withheld, Value | Withheld]:
    """Modulus of elasticity and density of a shaft material."""
    row = row_where("elasticity", material=str(material.content))
    if row is None:
        held = not_in("elasticity", str(material.content))
        return held, held
    return (
        found("elasticity", float(row["modulus_MPa"]), "MPa", material=row["material"]),
        found("elasticity", float(row["density_g_cm3"]), "g/cm3", material=row["material"]),
    )
