"""What is left of a bearing's clearance when it is mounted and warm, and how warm a ring must be to slide on."""

from typing import Annotated, Literal, NamedTuple

from generator.calc.taper import BORE, HOLE, LAME, RACEWAY
from generator.method import Is, Refused, method
from generator.say import say
from generator.value import Citation

EXPANSION = Is("expansion of the rings", r"\alpha", "1e-6/K", 1, 40)


@method(
    r"E \approx \begin{cases} (d + 4D)/5 & \mathrm{ball} \\ (d + 3D)/4 & \mathrm{roller} \end{cases}",
    None,
    beware={"diameter of the outer raceway estimated from bore and outside": lambda **_: True},
)
def outer_raceway(
    kind: Literal["ball", "roller"],
    bore: Annotated[float, Is("bore", "d", "mm", 1, 2000)],
    outside: Annotated[float, Is("outside diameter", "D", "mm", 1, 3000)],
) -> Annotated[float, Is("diameter of the outer raceway", "E", "mm")]:
    """Outer raceway where it is not on file"""
    return (bore + 4 * outside) / 5 if kind == "ball" else (bore + 3 * outside) / 4


@method(r"I_e = \max(0,\; I - Z)", Citation("DIN 7190-1", "2017", "effective interference", "from memory"))
def effective_interference(
    interference: Annotated[float, Is("interference by the limits", "I", "mm", -2, 2)],
    smoothing: Annotated[float, Is("lost by smoothing", "Z", "mm", 0, 0.1)],
) -> Annotated[float, Is("interference that presses", "I_e", "mm")]:
    """Interference left once the surfaces have smoothed out
    A clearance presses nothing."""
    return max(0.0, interference - smoothing)


@method(r"\Delta G = I \cdot \frac{d}{F} \cdot \frac{1 - (d_0/d)^2}{1 - (d_0/F)^2}", LAME)
def fit_clearance_loss(
    interference: Annotated[float, Is("interference that presses", "I", "mm", 0, 2)],
    bore: Annotated[float, BORE],
    raceway: Annotated[float, RACEWAY],
    hole: Annotated[float, HOLE] = 0.0,
) -> Annotated[float, Is("clearance lost to the fit on the shaft", r"\Delta G_{\mathrm{fit}}", "mm")]:
    """Clearance lost to a pressed fit on the shaft"""
    if not hole < bore < raceway:
        raise Refused(say("hole, bore and raceway must grow in this order"))
    return interference * bore / raceway * (1 - (hole / bore) ** 2) / (1 - (hole / raceway) ** 2)


@method(r"\Delta G = I \cdot \frac{E}{D} \cdot \frac{1 - (D/D_h)^2}{1 - (E/D_h)^2}", LAME)
def housing_squeeze(
    interference: Annotated[float, Is("interference of the outer ring that presses", "I", "mm", 0, 2)],
    raceway: Annotated[float, Is("diameter of the outer raceway", "E", "mm", 5, 3000)],
    outside: Annotated[float, Is("outside diameter of the ring", "D", "mm", 5, 3000)],
    housing: Annotated[float, Is("outside diameter of the housing", "D_h", "mm", 5, 5000)],
) -> Annotated[float, Is("clearance lost to the fit in the housing", r"\Delta G_h", "mm")]:
    """Clearance lost to a pressed fit in the housing
    Ring and housing of one material."""
    if not raceway < outside < housing:
        raise Refused(say("raceway, ring and housing must grow in this order"))
    return interference * raceway / outside * (1 - (outside / housing) ** 2) / (1 - (raceway / housing) ** 2)


@method(r"\Delta G_{th} = \alpha\,E\,(T_i - T_o) \cdot 10^{-6}", Citation("linear thermal expansion", "", "", "derived"))
def ring_temperature_difference(
    raceway: Annotated[float, Is("diameter of the outer raceway", "E", "mm", 1, 3000)],
    difference: Annotated[float, Is("inner ring hotter than outer by", "T_i - T_o", "K", -200, 200)],
    expansion: Annotated[float, EXPANSION],
) -> Annotated[float, Is("clearance lost to heat", r"\Delta G_{th}", "mm")]:
    """Clearance lost where the inner ring runs hotter than the outer
    Rolling elements as hot as the inner ring: the safe side."""
    return expansion * raceway * difference * 1e-6


@method(
    r"G_{\mathrm{op}} = G_0 - \Delta G_{\mathrm{fit}} - \Delta G_{\mathrm{taper}} - \Delta G_{th} - \Delta G_h",
    Citation("geometry; ISO 5753-1 for the clearance before", "2009", "", "derived"),
)
def operating_clearance(
    before: Annotated[float, Is("clearance before mounting", "G_0", "mm", -1, 5)],
    fit: Annotated[float, Is("lost to the fit on the shaft", r"\Delta G_{\mathrm{fit}}", "mm", 0, 2)] = 0.0,
    taper: Annotated[float, Is("taken by driving up", r"\Delta G_{\mathrm{taper}}", "mm", 0, 2)] = 0.0,
    heat: Annotated[float, Is("lost to heat", r"\Delta G_{th}", "mm", -2, 2)] = 0.0,
    housing: Annotated[float, Is("lost to the fit in the housing", r"\Delta G_h", "mm", 0, 2)] = 0.0,
) -> Annotated[float, Is("clearance left, running", r"G_{\mathrm{op}}", "mm")]:
    """Clearance left in a mounted, warm bearing
    Asked twice: least clearance with the most of each loss, and the other way round."""
    return before - fit - taper - heat - housing


class Heating(NamedTuple):
    needed: Annotated[float, Is("temperature that gives the room to slip", "t", "degC")]
    set_to: Annotated[float, Is("temperature to heat to, never over the ceiling", "t_s", "degC")]
    room: Annotated[float, Is("room to slip at that temperature", "g_s", "mm")]
    verdict: Literal["within the ceiling", "at the ceiling, with less room to slip", "will not slide on below the ceiling"]


@method(
    r"t = t_0 + \frac{I + g}{\alpha\,d} \cdot 10^{6}, \quad t_s = \min(t, t_{\max}), \quad g_s = \alpha\,d\,(t_s - t_0) \cdot 10^{-6} - I",
    Citation("linear thermal expansion", "", "", "derived"),
)
def mounting_temperature(
    interference: Annotated[float, Is("greatest interference", "I", "mm", 0, 2)],
    slip: Annotated[float, Is("room to slip on", "g", "mm", 0, 1)],
    bore: Annotated[float, BORE],
    expansion: Annotated[float, EXPANSION],
    shaft: Annotated[float, Is("temperature of the shaft", "t_0", "degC", -60, 100)],
    ceiling: Annotated[float, Is("ceiling when heated", r"t_{\max}", "degC", 0, 200)],
) -> Heating:
    """Temperature at which a ring slides on its seat
    Where the ceiling is below it: less room to slip, a colder shaft, or another way the engineer agrees. Never hotter."""
    growth = expansion * 1e-6 * bore
    needed = shaft + (interference + slip) / growth
    set_to = min(needed, ceiling)
    room = growth * (set_to - shaft) - interference
    if needed <= ceiling + 1e-9:
        return Heating(needed, set_to, room, "within the ceiling")
    enough = room >= slip / 3 - 1e-12
    return Heating(needed, set_to, room, "at the ceiling, with less room to slip" if enough else "will not slide on below the ceiling")
