"""How long a bearing lasts: rating life, and what cleanliness, oil and asked-for reliability make of it. ISO 281."""

from math import log
from typing import Annotated, Literal, NamedTuple

from generator.calc.equivalent import DYNAMIC, STATIC
from generator.method import Is, Refused, method
from generator.say import say
from generator.value import Citation

LOAD = Is("dynamic equivalent load", "P", "N", 0, 5_000_000)
PITCH = Is("pitch circle of the rolling elements", "D_{pw}", "mm", 1, 3000)
KAPPA = Is("viscosity ratio", r"\kappa", "", 0, 1000)


class Rating(NamedTuple):
    turns: Annotated[float, Is("rating life in million turns", "L_{10}", "")]
    hours: Annotated[float, Is("rating life", "L_{10h}", "hour")]


@method(
    r"L_{10} = \left(\frac{C}{P}\right)^p, \quad L_{10h} = \frac{10^6\,L_{10}}{60\,n}",
    Citation("ISO 281", "2007", "rating life", "from memory"),
    holds={
        "the load is no more than half the dynamic rating": lambda rating, load, **_: load <= 0.5 * rating,
        "the load is no more than the static rating": lambda load, static_rating, **_: load <= static_rating,
    },
    beware={"turns so slowly that static safety governs": lambda speed, **_: speed < 10},
)
def rating_life(
    rating: Annotated[float, DYNAMIC],
    load: Annotated[float, Is("dynamic equivalent load", "P", "N", 1e-9, 5_000_000)],
    speed: Annotated[float, Is("speed", "n", "rpm", 1e-9, 100_000)],
    exponent: Annotated[float, Is("exponent: 3 ball, 10/3 roller", "p", "", 3, 3.34)],
    static_rating: Annotated[float, STATIC] = 50_000_000.0,  # noqa: ARG001 judged before
) -> Rating:
    """Basic rating life
    The life nine of ten reach, good steel, good lubrication, clean."""
    turns = (rating / load) ** exponent
    return Rating(turns, turns * 1e6 / (60 * speed))


@method(
    r"a_1 = 0.05 + 0.95 \left(\frac{\ln(100/S)}{\ln(100/90)}\right)^{2/3}",
    Citation("ISO 281", "2007", "Weibull form behind table 12", "from memory"),
)
def reliability_between(
    reliability: Annotated[float, Is("reliability", "S", "%", 90, 99.95)],
) -> Annotated[float, Is("factor of reliability", "a_1", "")]:
    """Factor of reliability between the rows of the table
    Gives every row of the table within 2 %."""
    return float(0.05 + 0.95 * (log(100 / reliability) / log(100 / 90)) ** (2 / 3))


class Oil(NamedTuple):
    needed: Annotated[float, Is("viscosity needed at the speed", r"\nu_1", "mm2/s")]
    ratio: Annotated[float, Is("viscosity ratio", r"\kappa", "")]


@method(
    r"\nu_1 = \begin{cases} 45000\,n^{-0.83} D_{pw}^{-0.5} & n < 1000 \\ 4500\,n^{-0.5} D_{pw}^{-0.5} & n \ge 1000 \end{cases}, \quad \kappa = \frac{\nu}{\nu_1}",
    Citation("ISO 281", "2007", "9.3.3", "from memory"),
    beware={
        "the oil film is thin: additives against wear are wanted": lambda viscosity, speed, pitch, **_: viscosity < _needed(speed, pitch),
    },
)
def viscosity_ratio(
    viscosity: Annotated[float, Is("viscosity of the base oil at the bearing's temperature", r"\nu", "mm2/s", 0.1, 100_000)],
    speed: Annotated[float, Is("speed", "n", "rpm", 0.1, 100_000)],
    pitch: Annotated[float, PITCH],
) -> Oil:
    """Viscosity the speed asks for, and how much of it the oil has
    Made for oil; for grease its base oil at the bearing's temperature is taken, and starvation is not covered."""
    needed = _needed(speed, pitch)
    return Oil(needed, viscosity / needed)


def _needed(speed: float, pitch: float) -> float:
    return float((45_000 * speed**-0.83 if speed < 1000 else 4_500 * speed**-0.5) * pitch**-0.5)


@method(
    r"e_C = \max\left(0,\; a \left(1 - \frac{b}{D_{pw}^{1/3}}\right)\right), \quad a = \min\left(1,\; k\,\kappa^{0.68} D_{pw}^{0.55}\right), \quad \kappa \le 4",
    Citation("ISO 281", "2007", "annex A", "from memory"),
)
def contamination_of_level(
    ratio: Annotated[float, KAPPA],
    pitch: Annotated[float, PITCH],
    gain: Annotated[float, Is("constant of the level", "k", "", 0, 1)],
    loss: Annotated[float, Is("constant of the level", "b", "", 0, 10)],
) -> Annotated[float, Is("contamination factor", "e_C", "")]:
    """Contamination factor from the constants of a level of cleanliness"""
    clean = min(1.0, gain * min(ratio, 4.0) ** 0.68 * pitch**0.55)
    return float(max(0.0, clean * (1 - loss / pitch ** (1 / 3))))


@method(
    r"C_u = \begin{cases} C_0 / 22 & \mathrm{ball}, D_{pw} \le 100 \\ C_0/22 \cdot (100/D_{pw})^{0.5} & \mathrm{ball} \\ C_0 / 8.2 & \mathrm{roller}, D_{pw} \le 100 \\"
    r" C_0/8.2 \cdot (100/D_{pw})^{0.3} & \mathrm{roller} \end{cases}",
    Citation("ISO 281", "2007", "annex B, simplified", "from memory"),
    beware={"fatigue load limit estimated from the static rating": lambda **_: True},
)
def fatigue_load_limit(
    kind: Literal["ball", "roller"], static_rating: Annotated[float, STATIC], pitch: Annotated[float, PITCH]
) -> Annotated[float, Is("fatigue load limit", "C_u", "N")]:
    """Fatigue load limit where the maker gives none"""
    base, power = (22.0, 0.5) if kind == "ball" else (8.2, 0.3)
    return float(static_rating / base * (100 / max(pitch, 100.0)) ** power)


@method(
    r"a_{ISO} = \begin{cases} 0.1 \left(1 - \left(2.5671 - c/\kappa^q\right)^{0.83} x^{1/3}\right)^{-9.3} & \mathrm{ball} \\"
    r" 0.1 \left(1 - \left(1.5859 - c/\kappa^q\right) x^{0.4}\right)^{-9.185} & \mathrm{roller} \end{cases}, \quad x = \frac{e_C C_u}{P}, \quad a_{ISO} \le 50",
    Citation("ISO 281", "2007", "9.3.3, equations 31 to 36", "from memory"),
    holds={"the viscosity ratio is at least 0.1": lambda ratio, **_: ratio >= 0.1},
    beware={"the oil is thicker than counts: the viscosity ratio is taken as 4": lambda ratio, **_: ratio > 4},
)
def life_modification_factor(
    kind: Literal["ball", "roller"],
    ratio: Annotated[float, KAPPA],
    contamination: Annotated[float, Is("contamination factor", "e_C", "", 0, 1)],
    fatigue: Annotated[float, Is("fatigue load limit", "C_u", "N", 1, 5_000_000)],
    load: Annotated[float, Is("dynamic equivalent load", "P", "N", 1e-9, 5_000_000)],
) -> Annotated[float, Is("life modification factor", "a_{ISO}", "")]:
    """What oil and cleanliness make of the life
    Radial bearings. Below a viscosity ratio of 0.1 the formula gives nothing."""
    kappa, x = min(ratio, 4.0), contamination * fatigue / load
    steps = (0.054381, 2.2649, 1.3993) if kappa < 0.4 else (0.19087, 1.9987, 1.2348) if kappa < 1 else (0.071739, 1.9987, 1.2348)
    film = (steps[1] if kind == "ball" else steps[2]) / kappa ** steps[0]
    left = 1 - (2.5671 - film) ** 0.83 * x ** (1 / 3) if kind == "ball" else 1 - (1.5859 - film) * x**0.4
    if left <= 0:
        return 50.0
    return float(min(50.0, 0.1 * left ** (-9.3 if kind == "ball" else -9.185)))


@method(
    r"L_{nmh} = a_1\,a_{ISO}\,L_{10h}",
    Citation("ISO 281", "2007", "9.1", "from memory"),
    beware={
        "so long that fatigue is not what will end this bearing: grease, dirt and handling are": (
            lambda hours, modification, reliability, **_: hours * modification * reliability > 200_000
        )
    },
)
def modified_life(
    hours: Annotated[float, Is("rating life", "L_{10h}", "hour", 0, 1e15)],
    modification: Annotated[float, Is("life modification factor", "a_{ISO}", "", 0, 50)],
    reliability: Annotated[float, Is("factor of reliability", "a_1", "", 0.05, 1)] = 1.0,
) -> Annotated[float, Is("modified life", "L_{nmh}", "hour")]:
    """Life with oil, cleanliness and asked-for reliability counted"""
    return reliability * modification * hours


class One(NamedTuple):
    hours: Annotated[float, Is("life of one bearing", "L_i", "hour", 1e-6, 1e15)]


@method(
    r"L = \left(\sum L_i^{-e}\right)^{-1/e}",
    Citation("ISO/TR 1281-1", "2008", "system life", "from memory"),
)
def system_life(
    lives: tuple[One, ...],
    exponent: Annotated[float, Is("exponent of scatter: 10/9 ball or mixed, 9/8 all roller", "e", "", 1, 2)],
) -> Annotated[float, Is("life until the first of them fails", "L", "hour")]:
    """Life of several bearings together
    Shorter than that of the shortest: the more bearings, the sooner one of them fails."""
    if not lives:
        raise Refused(say("no life is known"))
    return float(sum(one.hours**-exponent for one in lives) ** (-1 / exponent))


LEVELS = ("high", "normal", "slight to typical", "severe", "very severe")
_DUST = {"none": 0, "light": 1, "light and abrasive": 2, "heavy": 2, "heavy and abrasive": 3}
_WATER = {"none": 0, "humid": 1, "condensation": 2, "splashed": 3}
_SEAL = {"lip": -1, "labyrinth": -1, "shield": 0, "felt strip": 0, "open": 1}


@method(
    "",
    None,
    why_no_outside_check="ISO 281 describes its levels in words; how place and seal bring one to a level is common practice",
)
def contamination_level(
    mounting: Literal["high", "normal", "slight to typical", "severe", "very severe"],
    dust: Literal["none", "light", "light and abrasive", "heavy", "heavy and abrasive"],
    water: Literal["none", "humid", "condensation", "splashed"],
    seal: Literal["lip", "labyrinth", "shield", "felt strip", "open"],
) -> Literal["high", "normal", "slight to typical", "severe", "very severe"]:
    """Level of cleanliness inside a bearing, from how it is mounted, where it stands and how it is sealed
    The worse of the mounting and the place. A lip or a labyrinth keeps one step of the place out, an open bearing lets one more in."""
    place = max(_DUST[dust], _WATER[water])
    inside = max(0, place + _SEAL[seal]) if place else 0
    return LEVELS[min(4, max(LEVELS.index(mounting), inside))]  # type: ignore[return-value]


class Choice(NamedTuple):
    choice: Literal["cleaner", "cooler", "thicker oil"]
    hours: Annotated[float, Is("life with it", "L", "hour", 0, 1e15)]


@method("", Citation("ISO 281", "2007", "9.1, the lives held against each other", "derived"))
def what_limits(
    hours: Annotated[float, Is("life as it is", "L", "hour", 0, 1e15)], choices: tuple[Choice, ...]
) -> Literal["cleanliness", "heat", "the oil", "load and size alone"]:
    """What limits the life: the one step that would lengthen it most
    Where no step gives a tenth more, only less load or a larger bearing would."""
    best = max(choices, key=lambda one: one.hours, default=None)
    if best is None or best.hours < 1.1 * hours:
        return "load and size alone"
    return {"cleaner": "cleanliness", "cooler": "heat", "thicker oil": "the oil"}[best.choice]  # type: ignore[return-value]


@method(r"L / L_0", Citation("ISO 281", "2007", "9.1, the lives held against each other", "derived"))
def times_the_life(
    hours: Annotated[float, Is("life with the step", "L", "hour", 0, 1e15)],
    before: Annotated[float, Is("life as it is", "L_0", "hour", 1e-9, 1e15)],
) -> Annotated[float, Is("times the life", "L / L_0", "")]:
    """How much longer a bearing lasts with a step"""
    return hours / before


@method("", None)
def life_verdict(
    hours: Annotated[float, Is("life", "L", "hour", 0, 1e15)], wanted: Annotated[float, Is("life wanted", "L_w", "hour", 0, 1e7)]
) -> Literal["long enough", "too short"]:
    """Whether a bearing lasts as long as is asked of it"""
    return "long enough" if hours >= wanted else "too short"


@method(r"t' = t - \Delta t", None)
def cooler_by(
    temperature: Annotated[float, Is("temperature at the bearing", "t", "degC", -60, 300)],
    less: Annotated[float, Is("cooler by", r"\Delta t", "K", 0, 100)],
) -> Annotated[float, Is("temperature then", "t'", "degC")]:
    """The temperature of a bearing that is kept cooler"""
    return temperature - less
