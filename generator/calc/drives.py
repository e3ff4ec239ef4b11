"""What drives bring onto a shaft: torque, pull of belts, chains and gears, unbalance, couplings."""

from math import asin, cos, degrees, exp, pi, sin, sqrt, tan
from math import radians as rad
from typing import Annotated, NamedTuple

from generator.calc.shafts import STATICS
from generator.method import Is, Refused, method
from generator.say import say
from generator.value import Citation

SHIGLEY = "Shigley's Mechanical Engineering Design"
POWER = Is("power", "P", "kW", 0, 20_000)
SPEED = Is("speed", "n", "rpm", 0, 100_000)
PULL = Is("effective pull", "T_e", "N", 0, 5_000_000)


@method(
    r"T = \frac{60000\,P}{2\pi\,n}",
    Citation(SHIGLEY, "", "chapter 3", "from memory"),
    holds={"the shaft turns: at rest the torque is typed": lambda speed, **_: speed > 0},
)
def drive_torque(power: Annotated[float, POWER], speed: Annotated[float, SPEED]) -> Annotated[float, Is("torque", "T", "N.m")]:
    """Torque from power and speed"""
    return 60_000 * power / (2 * pi * speed)


@method(r"T_e = \frac{2000\,T}{d}", STATICS)
def effective_pull(
    torque: Annotated[float, Is("torque", "T", "N.m", 0, 10_000_000)],
    diameter: Annotated[float, Is("pitch diameter", "d", "mm", 1, 10_000)],
) -> Annotated[float, PULL]:
    """Tangential pull that a torque means at a pulley, sprocket or gear"""
    return 2000 * torque / diameter


@method(
    r"F' = f\,F",
    Citation(SHIGLEY, "", "Table 11-5", "from memory"),
    beware={"the service factor is outside 1 to 3": lambda factor, **_: not 1 <= factor <= 3},
)
def service_factor(
    force: Annotated[float, Is("pull of the drive", "F", "N", 0, 5_000_000)],
    factor: Annotated[float, Is("service factor", "f", "", 0, 10)],
) -> Annotated[float, Is("pull with the service factor", "F'", "N")]:
    """A drive's pull with its service factor, applied here and nowhere else
    For drives and process loads, not for dead weight."""
    return factor * force


@method(r"T' = f\,T", Citation(SHIGLEY, "", "Table 11-5", "from memory"))
def service_torque(
    torque: Annotated[float, Is("torque of the drive", "T", "N.m", 0, 10_000_000)],
    factor: Annotated[float, Is("service factor", "f", "", 0, 10)],
) -> Annotated[float, Is("torque with the service factor", "T'", "N.m")]:
    """A drive's torque in the shaft with its service factor
    The blow that pulls harder at a pulley twists the shaft as much harder."""
    return factor * torque


class Wraps(NamedTuple):
    small: Annotated[float, Is("wrap of the small pulley", r"\theta_s", "deg")]
    large: Annotated[float, Is("wrap of the large pulley", r"\theta_L", "deg")]


@method(
    r"\theta_s = \pi - 2 \arcsin\frac{D - d}{2c}, \quad \theta_L = \pi + 2 \arcsin\frac{D - d}{2c}",
    Citation(SHIGLEY, "", "chapter 17", "from memory"),
)
def belt_wrap(
    one: Annotated[float, Is("diameter of one pulley", "d", "mm", 1, 10_000)],
    other: Annotated[float, Is("diameter of the other", "D", "mm", 1, 10_000)],
    centres: Annotated[float, Is("distance of the shafts", "c", "mm", 1, 100_000)],
) -> Wraps:
    """Wrap of an open belt on its two pulleys"""
    if one + other >= 2 * centres:
        raise Refused(say("pulleys of these sizes do not fit at this distance"))
    lean = 2 * asin(abs(other - one) / (2 * centres))
    return Wraps(degrees(pi - lean), degrees(pi + lean))


class Belt(NamedTuple):
    tight: Annotated[float, Is("pull of the tight strand", "T_1", "N")]
    slack: Annotated[float, Is("pull of the slack strand", "T_2", "N")]
    running: Annotated[float, Is("pull on the shaft, running", "F", "N")]
    at_rest: Annotated[float, Is("pull on the shaft, at rest", "F_0", "N")]


@method(
    r"\begin{cases} R = e^{\mu\theta / \sin(\beta/2)}, \quad T_c = m v^2, \quad F_i = t\,\frac{T_e}{2} \cdot \frac{R + 1}{R - 1} \\"
    r" T_1 = F_i + T_c + \frac{T_e}{2}, \quad T_2 = F_i + T_c - \frac{T_e}{2}, \quad a = T_1 - T_c, \quad b = T_2 - T_c \\"
    r" F = \sqrt{a^2 + b^2 - 2ab\cos\theta}, \quad F_0 = 2\,F_i \sin(\theta/2) \end{cases}",
    Citation(f"Euler and Eytelwein; {SHIGLEY}", "", "chapter 17", "from memory"),
    holds={"the wrap is from 90° to 270°": lambda wrap, **_: 90 <= wrap <= 270},
    beware={
        "the belt lies on less than 120° of the small pulley": lambda wrap, **_: wrap < 120,
        "the pull is that of a belt about to slip: a belt is set tighter": lambda tightened, **_: tightened <= 1,
    },
)
def belt_pull_euler(
    pull: Annotated[float, PULL],
    wrap: Annotated[float, Is("wrap of the small pulley", r"\theta", "deg", 0, 360)],
    friction: Annotated[float, Is("friction of belt on pulley", r"\mu", "", 0.05, 1.2)],
    groove: Annotated[float, Is("angle of the groove, 180° for a flat belt", r"\beta", "deg", 20, 180)] = 180.0,
    mass: Annotated[float, Is("mass of the belt", "m", "kg/m", 0, 1000)] = 0.0,
    belt_speed: Annotated[float, Is("speed of the belt", "v", "m/s", 0, 100)] = 0.0,
    tightened: Annotated[float, Is("how much tighter than the slip limit it is set", "t", "", 1, 3)] = 1.0,
) -> Belt:
    """Pull of a belt from its slip limit
    A belt set tighter is tighter running too: both strands carry the tightening. What its own mass throws outward loads the strands alone,
    not the shaft. Running is never less than at rest."""
    ratio = exp(friction * rad(wrap) / sin(rad(groove) / 2))
    thrown = mass * belt_speed**2
    strand = tightened * pull / 2 * (ratio + 1) / (ratio - 1)
    a, b = strand + pull / 2, strand - pull / 2
    running = sqrt(max(0.0, a**2 + b**2 - 2 * a * b * cos(rad(wrap))))
    return Belt(a + thrown, b + thrown, running, 2 * strand * sin(rad(wrap) / 2))


@method(
    r"F = k\,T_e",
    None,
    beware={
        "a multiple of the effective pull, for want of the belt's own data": lambda **_: True,
        "the small pulley is wrapped by less than 150°: the slip limit says more": lambda wrap, **_: wrap < 150,
    },
)
def belt_pull_multiple(
    pull: Annotated[float, PULL],
    factor: Annotated[float, Is("factor of the kind of belt", "k", "", 0.5, 4)],
    wrap: Annotated[float, Is("wrap of the small pulley", r"\theta", "deg", 0, 360)] = 180.0,  # noqa: ARG001 judged in the remark
) -> Annotated[float, Is("pull on the shaft", "F", "N")]:
    """Pull of a belt on its shaft from its effective pull"""
    return factor * pull


@method(r"k = \frac{R + 1}{R - 1}", STATICS)
def belt_factor_of_ratio(
    ratio: Annotated[float, Is("tight over slack strand", "R", "", 1.01, 100)],
) -> Annotated[float, Is("factor of the belt", "k", "")]:
    """Where the factor of a belt comes from: the ratio of its strands, wrap near 180°"""
    return (ratio + 1) / (ratio - 1)


@method(r"F = \max(F_1, F_2)", None)
def greater_pull(
    one: Annotated[float, Is("pull by the slip limit", "F_1", "N", 0, 5_000_000)],
    other: Annotated[float, Is("pull by the factor of the belt", "F_2", "N", 0, 5_000_000)],
) -> Annotated[float, Is("pull on the shaft", "F", "N")]:
    """The greater of two estimates of a belt's pull"""
    return max(one, other)


@method(r"v = \frac{\pi\,d\,n}{60000}", Citation("mechanics", "", "", "derived"))
def peripheral_speed(
    diameter: Annotated[float, Is("pitch diameter", "d", "mm", 1, 10_000)], speed: Annotated[float, SPEED]
) -> Annotated[float, Is("speed of the belt", "v", "m/s")]:
    """Speed of a belt on its pulley"""
    return pi * diameter * speed / 60_000


class ChainPull(NamedTuple):
    speed: Annotated[float, Is("speed of the chain", "v", "m/s")]
    pull: Annotated[float, Is("pull of the chain", "F", "N")]
    diameter: Annotated[float, Is("pitch diameter of the sprocket", "d", "mm")]


@method(
    r"v = \frac{z\,p\,n}{60000}, \quad F = \frac{1000\,P}{v}, \quad d = \frac{p}{\sin(\pi/z)}",
    Citation(SHIGLEY, "", "chapter 17, roller chain", "from memory"),
    holds={"the shaft turns": lambda speed, **_: speed > 0},
    beware={"fewer than 11 teeth: the chain runs in jerks": lambda teeth, **_: teeth < 11},
)
def chain_pull(
    power: Annotated[float, POWER],
    teeth: Annotated[float, Is("teeth of the sprocket", "z", "", 5, 500)],
    pitch: Annotated[float, Is("pitch of the chain", "p", "mm", 1, 500)],
    speed: Annotated[float, SPEED],
) -> ChainPull:
    """Pull of a chain on its sprocket
    The slack strand is left out."""
    moves = teeth * pitch * speed / 60_000
    return ChainPull(moves, 1000 * power / moves, pitch / sin(pi / teeth))


class Tooth(NamedTuple):
    tangential: Annotated[float, Is("force around", "W_t", "N")]
    radial: Annotated[float, Is("force that parts the gears", "W_r", "N")]
    axial: Annotated[float, Is("force along the shaft", "W_a", "N")]


@method(
    r"W_t = \frac{2000\,T}{d}, \quad W_r = W_t \frac{\tan\varphi_n}{\cos\psi}, \quad W_a = W_t \tan\psi",
    Citation(SHIGLEY, "", "chapter 13", "from memory"),
)
def gear_forces(
    torque: Annotated[float, Is("torque", "T", "N.m", 0, 10_000_000)],
    diameter: Annotated[float, Is("pitch diameter", "d", "mm", 1, 10_000)],
    pressure_angle: Annotated[float, Is("normal pressure angle", r"\varphi_n", "deg", 10, 35)],
    helix: Annotated[float, Is("helix angle", r"\psi", "deg", 0, 60)] = 0.0,
) -> Tooth:
    """Forces on a spur or helical gear"""
    around = 2000 * torque / diameter
    return Tooth(around, around * tan(rad(pressure_angle)) / cos(rad(helix)), around * tan(rad(helix)))


@method(
    r"W_t = \frac{2000\,T}{d_m}, \quad W_r = W_t \tan\varphi \cos\gamma, \quad W_a = W_t \tan\varphi \sin\gamma",
    Citation(SHIGLEY, "", "chapter 13", "from memory"),
)
def bevel_gear_forces(
    torque: Annotated[float, Is("torque", "T", "N.m", 0, 10_000_000)],
    mean_diameter: Annotated[float, Is("mean diameter", "d_m", "mm", 1, 10_000)],
    pressure_angle: Annotated[float, Is("pressure angle", r"\varphi", "deg", 10, 35)],
    pitch_angle: Annotated[float, Is("pitch cone angle", r"\gamma", "deg", 1, 89)],
) -> Tooth:
    """Forces on a straight bevel gear"""
    around = 2000 * torque / mean_diameter
    parting = around * tan(rad(pressure_angle))
    return Tooth(around, parting * cos(rad(pitch_angle)), parting * sin(rad(pitch_angle)))


class Unbalanced(NamedTuple):
    offset: Annotated[float, Is("permitted offset of the mass", r"e_{\mathrm{per}}", "um")]
    force: Annotated[float, Is("force that turns with the shaft", "F", "N")]


@method(
    r"e_{\mathrm{per}} = \frac{1000\,G}{\omega}, \quad F = m\,G\,\omega / 1000, \quad \omega = \frac{2\pi n}{60}",
    Citation("ISO 21940-11", "2016", "permissible residual unbalance", "from memory"),
    holds={"the shaft turns": lambda speed, **_: speed > 0},
)
def residual_unbalance(
    mass: Annotated[float, Is("mass of the rotor", "m", "kg", 0, 200_000)],
    grade: Annotated[float, Is("balance quality", "G", "mm/s", 0, 4000)],
    speed: Annotated[float, SPEED],
) -> Unbalanced:
    """Force of what unbalance a balance quality allows
    In service one grade coarser than delivered is planned for. It turns with the shaft: the inner ring feels it at one spot, the outer all round."""
    turning = 2 * pi * speed / 60
    return Unbalanced(1000 * grade / turning, mass * grade * turning / 1000)


@method(r"F = m_b\,r\,\omega^2 / 1000", Citation("mechanics", "", "centrifugal force", "derived"))
def build_up_force(
    mass: Annotated[float, Is("mass of the build-up", "m_b", "kg", 0, 10_000)],
    radius: Annotated[float, Is("how far out it sits", "r", "mm", 0, 10_000)],
    speed: Annotated[float, SPEED],
) -> Annotated[float, Is("force that turns with the shaft", "F", "N")]:
    """Force of what builds up on one side of a rotor"""
    return mass * radius / 1000 * (2 * pi * speed / 60) ** 2


@method(r"F_r = k_r\,\delta", STATICS)
def coupling_reaction(
    stiffness: Annotated[float, Is("stiffness of the coupling across the shaft", "k_r", "N/mm", 0, 1e7)],
    offset: Annotated[float, Is("how far the shafts are out of line", r"\delta", "mm", 0, 50)],
) -> Annotated[float, Is("pull across the shaft", "F_r", "N")]:
    """Pull of an elastic coupling that is out of line"""
    return stiffness * offset


@method(
    r"F_r = c\,T_e",
    None,
    beware={"pull of the coupling is an allowance, its stiffness is not on file": lambda **_: True},
)
def coupling_allowance(
    pull: Annotated[float, Is("tangential pull at its elements", "T_e", "N", 0, 5_000_000)],
    share: Annotated[float, Is("part that comes across the shaft", "c", "", 0, 1)],
) -> Annotated[float, Is("pull across the shaft", "F_r", "N")]:
    """Allowance for the pull of a coupling of which nothing else is known"""
    return share * pull
