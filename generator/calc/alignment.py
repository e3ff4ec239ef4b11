"""How seats and feet lie: misalignment between two supports, flatness under a foot, shims."""

from math import atan, ceil, degrees, hypot
from typing import Annotated, NamedTuple

from generator.method import Is, method
from generator.value import Citation


@method(r"\theta = \arctan \frac{\sqrt{h^2 + v^2}}{L}", Citation("plane geometry", "", "", "derived"))
def support_misalignment(
    height: Annotated[float, Is("difference in height", "v", "mm", 0, 1000)],
    sideways: Annotated[float, Is("difference sideways", "h", "mm", 0, 1000)],
    over: Annotated[float, Is("distance of the supports", "L", "mm", 1, 100_000)],
) -> Annotated[float, Is("angle between shaft and seat", r"\theta", "deg")]:
    """Misalignment of two supports
    Held against what the bearing allows and what its seal allows; the seal's is often the smaller."""
    return degrees(atan(hypot(height, sideways) / over))


@method(r"t = \mathrm{IT7}(L)", None)
def seat_flatness(
    it7: Annotated[float, Is("standard tolerance IT7 on the longest side of the foot", r"\mathrm{IT7}", "um", 1, 300)],
) -> Annotated[float, Is("flatness asked of the face", "t", "um")]:
    """Flatness of the face a housing stands on
    A housing drawn down on a face that is not flat is twisted, and its ring can no longer swivel square."""
    return it7


@method(r"a = s \left\lceil \frac{v}{s} \right\rceil", None)
def shim_correction(
    low: Annotated[float, Is("how much the support is low", "v", "mm", 0, 100)],
    stock: Annotated[float, Is("step of the shim stock", "s", "mm", 0.001, 1)],
) -> Annotated[float, Is("shim under every bolt of the housing", "a", "mm")]:
    """Shims under a low support
    Full-foot shims, four leaves at most, under every bolt alike."""
    return round(ceil(round(low / stock, 6)) * stock, 6)


class TakeUp(NamedTuple):
    left: Annotated[float, Is("travel left", "l", "mm")]
    reserve: Annotated[float, Is("reserve to be kept", "r", "mm")]


@method(r"l = L - u, \quad r = c\,L", Citation("arithmetic of a travel", "", "", "derived"))
def take_up_left(
    travel: Annotated[float, Is("travel of the take-up", "L", "mm", 1, 10_000)],
    used: Annotated[float, Is("travel used", "u", "mm", 0, 10_000)],
    reserve: Annotated[float, Is("share kept in reserve", "c", "", 0, 1)],
) -> TakeUp:
    """Travel a take-up has left
    Less than the reserve: shorten the belt or chain before it slips."""
    return TakeUp(travel - used, reserve * travel)
