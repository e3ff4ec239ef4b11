"""Loads on a bearing made comparable: equivalent load, static safety, least load, mean load."""

from math import cos, radians, tan
from typing import Annotated, Literal, NamedTuple

from generator.method import Is, Refused, method
from generator.say import say
from generator.value import Citation

ISO_281 = Citation("ISO 281", "2007", "7 and table 3", "from memory")
ISO_76 = Citation("ISO 76", "2006", "static safety factor, guidelines", "from memory")
RADIAL = Is("load across the shaft", "F_r", "N", 0, 5_000_000)
AXIAL = Is("load along the shaft", "F_a", "N", 0, 5_000_000)
STATIC = Is("basic static load rating", "C_0", "N", 1, 50_000_000)
DYNAMIC = Is("basic dynamic load rating", "C", "N", 1, 50_000_000)


@method(r"\gamma = \frac{D_w \cos\alpha}{D_{pw}}", Citation("ISO 76", "2006", "symbols", "from memory"))
def ball_ratio(
    ball: Annotated[float, Is("diameter of the ball", "D_w", "mm", 0.1, 500)],
    pitch: Annotated[float, Is("pitch circle of the balls", "D_{pw}", "mm", 1, 2000)],
    angle: Annotated[float, Is("contact angle", r"\alpha", "deg", 0, 89)] = 0.0,
) -> Annotated[float, Is("size of the balls on their circle", r"\gamma", "")]:
    """Size of the balls on their circle, the key to the factor of ISO 76"""
    return ball * cos(radians(angle)) / pitch


@method(r"D_{pw} \approx \frac{d + D}{2}", None, beware={"pitch circle taken as the mean of bore and outside": lambda **_: True})
def pitch_circle(
    bore: Annotated[float, Is("bore", "d", "mm", 1, 2000)],
    outside: Annotated[float, Is("outside diameter", "D", "mm", 1, 3000)],
) -> Annotated[float, Is("pitch circle of the rolling elements", "D_{pw}", "mm")]:
    """Pitch circle of the rolling elements where it is not on file"""
    return (bore + outside) / 2


@method(r"r = \frac{f_0 F_a}{C_0}", ISO_281)
def relative_axial_load(
    axial: Annotated[float, AXIAL],
    static_rating: Annotated[float, STATIC],
    f0: Annotated[float, Is("factor of ISO 76", "f_0", "", 8, 18)],
) -> Annotated[float, Is("relative axial load", "r", "")]:
    """Relative axial load of a ball bearing, the key to its thrust factors"""
    return f0 * axial / static_rating


@method(
    r"P = \begin{cases} F_r & F_a / F_r \le e \\ 0.56\,F_r + Y F_a & F_a / F_r > e \end{cases}",
    ISO_281,
    beware={
        "the push along the shaft is more than half the static rating: more than is usual for such a bearing": (
            lambda axial, static_rating, **_: axial > 0.5 * static_rating
        )
    },
)
def ball_load(
    radial: Annotated[float, RADIAL],
    axial: Annotated[float, AXIAL],
    e: Annotated[float, Is("limit of the ratio", "e", "", 0, 1)],
    y: Annotated[float, Is("thrust factor", "Y", "", 0.5, 4)],
    static_rating: Annotated[float, STATIC],  # noqa: ARG001 judged in the remark
) -> Annotated[float, Is("dynamic equivalent load", "P", "N")]:
    """Dynamic equivalent load of a ball bearing from its thrust factors
    The branch is taken as it is written; at the limit the step is half a percent."""
    return radial if axial <= e * radial else 0.56 * radial + y * axial


@method(
    r"P = \begin{cases} F_r + Y_1 F_a & F_a / F_r \le e \\ 0.67\,F_r + Y_2 F_a & F_a / F_r > e \end{cases}",
    ISO_281,
    beware={"the push along the shaft unloads one row": lambda radial, axial, e, **_: axial > e * radial},
)
def equivalent_load_roller(
    radial: Annotated[float, RADIAL],
    axial: Annotated[float, AXIAL],
    e: Annotated[float, Is("limit of the ratio", "e", "", 0.05, 2)],
    y1: Annotated[float, Is("thrust factor below it", "Y_1", "", 0.2, 10)],
    y2: Annotated[float, Is("thrust factor above it", "Y_2", "", 0.3, 15)],
) -> Annotated[float, Is("dynamic equivalent load", "P", "N")]:
    """Dynamic equivalent load of a spherical roller bearing"""
    return radial + y1 * axial if axial <= e * radial else 0.67 * radial + y2 * axial


@method(r"P = F_r", ISO_281)
def equivalent_load_cylindrical(
    radial: Annotated[float, RADIAL], axial: Annotated[float, AXIAL]
) -> Annotated[float, Is("dynamic equivalent load", "P", "N")]:
    """Dynamic equivalent load of a cylindrical roller bearing
    It carries nothing along the shaft unless its maker says so."""
    if axial > 0:
        raise Refused(say("a cylindrical roller bearing is not rated here for a load along the shaft"))
    return radial


class RollerFactors(NamedTuple):
    e: Annotated[float, Is("limit of the ratio", "e", "")]
    y1: Annotated[float, Is("thrust factor below it", "Y_1", "")]
    y2: Annotated[float, Is("thrust factor above it", "Y_2", "")]
    y0: Annotated[float, Is("static thrust factor", "Y_0", "")]


@method(r"e = 1.5 \tan\alpha, \quad Y_1 = 0.45 \cot\alpha, \quad Y_2 = 0.67 \cot\alpha, \quad Y_0 = 0.44 \cot\alpha", ISO_281)
def roller_factors(
    angle: Annotated[float, Is("contact angle", r"\alpha", "deg", 2, 45)],
) -> RollerFactors:
    """Thrust factors of a double-row roller bearing from its contact angle"""
    t = tan(radians(angle))
    return RollerFactors(1.5 * t, 0.45 / t, 0.67 / t, 0.44 / t)


@method(
    r"\left|\frac{Y_1 e}{0.675} - 1\right|, \; \left|\frac{Y_2 e}{1.005} - 1\right|, \; \left|\frac{Y_0 e}{0.66} - 1\right| \le 0.04",
    ISO_281,
)
def roller_factors_agree(
    e: Annotated[float, Is("limit of the ratio", "e", "", 0.05, 2)],
    y1: Annotated[float, Is("thrust factor below it", "Y_1", "", 0.2, 10)],
    y2: Annotated[float, Is("thrust factor above it", "Y_2", "", 0.3, 15)],
    y0: Annotated[float, Is("static thrust factor", "Y_0", "", 0.2, 10)],
) -> Literal["agree", "do not agree"]:
    """Whether the thrust factors on file fit one contact angle"""
    off = (y1 * e / 0.675, y2 * e / 1.005, y0 * e / 0.66)
    # factors are typed with two figures: what is 4 % apart to the last bit is 4 % apart
    return "agree" if all(abs(one - 1) <= 0.04 + 1e-9 for one in off) else "do not agree"


class Static(NamedTuple):
    load: Annotated[float, Is("static equivalent load", "P_0", "N")]
    safety: Annotated[float, Is("static safety", "s_0", "")]


@method(
    r"P_0 = \begin{cases} \max(0.6\,F_r + 0.5\,F_a,\; F_r) & \mathrm{ball} \\ F_r + Y_0 F_a & \mathrm{roller} \end{cases}, \quad s_0 = \frac{C_0}{P_0}",
    ISO_76,
)
def static_safety(
    kind: Literal["ball", "roller"],
    radial: Annotated[float, RADIAL],
    axial: Annotated[float, AXIAL],
    static_rating: Annotated[float, STATIC],
    y0: Annotated[float, Is("static thrust factor of a roller bearing", "Y_0", "", 0, 10)] = 0.0,
) -> Static:
    """Static equivalent load and static safety
    Under the greatest load: start, shock and jam included."""
    load = max(0.6 * radial + 0.5 * axial, radial) if kind == "ball" else radial + y0 * axial
    if load == 0:
        raise Refused(say("no load is stated"))
    return Static(load, static_rating / load)


class Least(NamedTuple):
    least: Annotated[float, Is("least load it should carry", r"F_{\min}", "N")]
    share: Annotated[float, Is("load over rating", "F_r / C", "")]
    verdict: Literal["enough", "may skid"]


@method(r"F_{\min} = f\,C", None)
def minimum_load(
    radial: Annotated[float, RADIAL],
    rating: Annotated[float, DYNAMIC],
    factor: Annotated[float, Is("least share of the rating: 0.01 ball, 0.02 roller", "f", "", 0, 0.1)],
) -> Least:
    """Whether a bearing carries enough not to skid
    A bearing that runs nearly without load slides instead of rolling, the fast one sooner."""
    return Least(factor * rating, radial / rating, "enough" if radial >= factor * rating else "may skid")


class Duty(NamedTuple):
    load: Annotated[float, Is("load in this state", "P_i", "N", 0, 5_000_000)]
    speed: Annotated[float, Is("speed in this state", "n_i", "rpm", 0, 100_000)]
    share: Annotated[float, Is("share of the time", "q_i", "", 0, 1)]


class Mean(NamedTuple):
    load: Annotated[float, Is("mean load", "P_m", "N")]
    speed: Annotated[float, Is("mean speed", "n_m", "rpm")]


@method(
    r"P_m = \left(\frac{\sum P_i^p\,n_i\,q_i}{\sum n_i\,q_i}\right)^{1/p}, \quad n_m = \frac{\sum n_i\,q_i}{\sum q_i}",
    Citation("Shigley's Mechanical Engineering Design", "", "chapter 11, variable loading", "from memory"),
)
def mean_load(
    states: tuple[Duty, ...],
    exponent: Annotated[float, Is("exponent of life: 3 ball, 10/3 roller", "p", "", 3, 3.34)],
) -> Mean:
    """Mean load and mean speed of several states
    The load that brings the same life, turn by turn."""
    turns = sum(one.speed * one.share for one in states)
    if turns <= 0:
        raise Refused(say("the shaft does not turn in any state"))
    load = sum(one.load**exponent * one.speed * one.share for one in states) / turns
    return Mean(load ** (1 / exponent), turns / sum(one.share for one in states))
