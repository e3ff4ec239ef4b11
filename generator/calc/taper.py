"""A tapered bore driven up: travel, what it takes of the clearance, and the forces that do it."""

from math import cos, log, pi
from math import radians as rad
from typing import Annotated, Literal, NamedTuple

from generator.calc.shafts import STATICS
from generator.method import Is, Refused, method
from generator.say import say
from generator.value import Citation

LAME = Citation("Lamé; Timoshenko, Strength of Materials II", "", "thick rings", "derived")
BORE = Is("bore of the ring at its seat", "d", "mm", 5, 1000)
RACEWAY = Is("effective diameter of the inner raceway", "F", "mm", 5, 2000)
HOLE = Is("hole in the shaft", "d_i", "mm", 0, 1000)
STEEL = Is("modulus of elasticity", "E", "MPa", 10_000, 400_000)


@method(
    r"F \approx \begin{cases} (4 d + D)/5 & \mathrm{ball} \\ (3 d + D)/4 & \mathrm{roller} \end{cases}",
    None,
    beware={"diameter of the inner raceway estimated from bore and outside": lambda **_: True},
)
def inner_raceway(
    bore: Annotated[float, Is("bore", "d", "mm", 1, 2000)],
    outside: Annotated[float, Is("outside diameter", "D", "mm", 1, 3000)],
    kind: Literal["ball", "roller"] = "roller",
) -> Annotated[float, RACEWAY]:
    """Inner raceway where it is not on file
    With the outer raceway so estimated, its middle is the pitch circle."""
    return (4 * bore + outside) / 5 if kind == "ball" else (3 * bore + outside) / 4


class Surface(NamedTuple):
    rz: Annotated[float, Is("height of the roughness", "R_z", "um", 0, 200)]


@method(r"Z = 0.8 \sum R_z / 1000", Citation("DIN 7190-1", "2017", "loss by smoothing", "from memory"))
def smoothing_loss(surfaces: tuple[Surface, ...]) -> Annotated[float, Is("interference lost as the surfaces smooth out", "Z", "mm")]:
    """Interference lost as surfaces smooth out under load
    Both surfaces of each loaded interface: two on a direct seat, four on a sleeve."""
    return 0.8 * sum(one.rz for one in surfaces) / 1000


@method(r"f = \frac{d}{F} \cdot \frac{1 - (d_i/d)^2}{1 - (d_i/F)^2}", LAME)
def growth_ratio(
    bore: Annotated[float, BORE], raceway: Annotated[float, RACEWAY], hole: Annotated[float, HOLE] = 0.0
) -> Annotated[float, Is("growth of the raceway over interference", "f", "")]:
    """Growth of the inner raceway for a unit of interference, ring straight on the shaft
    Ring and shaft of one material."""
    _in_order(hole, bore, raceway)
    return bore / raceway * (1 - (hole / bore) ** 2) / (1 - (hole / raceway) ** 2)


@method(
    r"f = \frac{d}{F} \cdot \frac{A}{A + \ln(d/d_s) + B}, \quad A = \frac{2F^2}{F^2 - d^2}, \quad B = \frac{2 d_i^2}{d_s^2 - d_i^2}",
    Citation("Lamé, with a slit sleeve that carries no hoop stress", "", "", "derived"),
)
def growth_ratio_on_sleeve(
    bore: Annotated[float, BORE],
    raceway: Annotated[float, RACEWAY],
    shaft: Annotated[float, Is("shaft in the sleeve", "d_s", "mm", 5, 1000)],
    hole: Annotated[float, HOLE] = 0.0,
) -> Annotated[float, Is("growth of the raceway over interference", "f", "")]:
    """Growth of the inner raceway for a unit of interference, ring on a slit sleeve
    A hollow shaft gives way, and the raceway grows less."""
    _in_order(hole, shaft, bore, raceway)
    a = 2 * raceway**2 / (raceway**2 - bore**2)
    b = 2 * hole**2 / (shaft**2 - hole**2)
    return bore / raceway * a / (a + log(bore / shaft) + b)


class Travel(NamedTuple):
    interference: Annotated[float, Is("effective interference on diameter", r"\delta", "mm")]
    travel: Annotated[float, Is("travel of the ring on its taper", "s", "mm")]
    turn: Annotated[float, Is("turn of the nut from the counting point", r"\theta", "turn")]


@method(
    r"\delta = \frac{R}{f}, \quad s = k \left(\delta + Z\right), \quad \theta = \frac{s}{P}",
    Citation("wedge geometry and Lamé", "", "", "derived"),
    beware={"travel and turn are a guide: the clearance read with the blade decides": lambda **_: True},
)
def taper_travel(
    reduction: Annotated[float, Is("clearance to be taken", "R", "mm", 1e-6, 1)],
    ratio: Annotated[float, Is("growth of the raceway over interference", "f", "", 0.1, 1)],
    smoothing: Annotated[float, Is("interference lost by smoothing", "Z", "mm", 0, 0.1)],
    taper: Annotated[float, Is("taper, 1 in", "k", "", 12, 30)],
    pitch: Annotated[float, Is("pitch of the nut", "P", "mm", 0.5, 10)],
) -> Travel:
    """How far a tapered bore is driven up for a clearance to be taken
    From metal contact all round, the nut tight by hand and the sleeve closed on the shaft: what comes before is not counted."""
    interference = reduction / ratio
    travel = taper * (interference + smoothing)
    return Travel(interference, travel, travel / pitch)


@method(r"R = f \left(\frac{s}{k} - Z\right)", Citation("wedge geometry and Lamé", "", "", "derived"))
def taper_reduction(
    travel: Annotated[float, Is("travel of the ring on its taper", "s", "mm", 0, 20)],
    ratio: Annotated[float, Is("growth of the raceway over interference", "f", "", 0.1, 1)],
    smoothing: Annotated[float, Is("interference lost by smoothing", "Z", "mm", 0, 0.1)],
    taper: Annotated[float, Is("taper, 1 in", "k", "", 12, 30)],
) -> Annotated[float, Is("clearance taken", "R", "mm")]:
    """What a travel on the taper takes of the clearance
    Nothing, as long as the surfaces only smooth out."""
    return max(0.0, ratio * (travel / taper - smoothing))


class Target(NamedTuple):
    reduction: Annotated[float, Is("clearance to be taken at most", "R", "mm")]
    left: Annotated[float, Is("clearance then left", "G", "mm")]
    verdict: Literal["accept", "accept, at the least", "too little clearance for it"]


@method(r"R = \min\left(R_{\max},\; G_0 - G_{\min}\right), \quad G = G_0 - R", None)
def taper_target(
    before: Annotated[float, Is("clearance before", "G_0", "mm", 0, 2)],
    least_left: Annotated[float, Is("least clearance that may be left", r"G_{\min}", "mm", 0, 2)],
    least: Annotated[float, Is("least to be taken", r"R_{\min}", "mm", 0, 1)],
    most: Annotated[float, Is("most to be taken", r"R_{\max}", "mm", 0, 1)],
) -> Target:
    """How much clearance to take from a bearing with this much
    Where the least that holds takes more than the bearing can give, no figure: another clearance class, or another bearing."""
    reach = round(min(most, before - least_left), 6)
    if reach < least - 1e-9:
        return Target(max(0.0, reach), before - max(0.0, reach), "too little clearance for it")
    return Target(reach, before - reach, "accept, at the least" if reach <= least + 1e-9 else "accept")


class OnSleeve(NamedTuple):
    pressure: Annotated[float, Is("pressure between ring and sleeve", "p", "MPa")]
    on_shaft: Annotated[float, Is("pressure on the shaft", "p_s", "MPa")]
    hoop: Annotated[float, Is("hoop stress at the bore of the ring", r"\sigma_t", "MPa")]


@method(
    r"p = \frac{E \delta / d}{\frac{F^2+d^2}{F^2-d^2} + \frac{d_s^2+d_i^2}{d_s^2-d_i^2} + \ln(d/d_s)}, \quad p_s = p\,\frac{d}{d_s}, \quad \sigma_t = p\,\frac{F^2+d^2}{F^2-d^2}",
    Citation("Lamé, with a slit sleeve that carries no hoop stress", "", "", "derived"),
)
def sleeve_pressure(
    interference: Annotated[float, Is("effective interference on diameter", r"\delta", "mm", 0, 2)],
    bore: Annotated[float, BORE],
    raceway: Annotated[float, RACEWAY],
    shaft: Annotated[float, Is("shaft in the sleeve", "d_s", "mm", 5, 1000)],
    modulus: Annotated[float, STEEL],
    hole: Annotated[float, HOLE] = 0.0,
) -> OnSleeve:
    """Pressure and hoop stress of a ring driven up on a sleeve
    Elastic, ring, sleeve and shaft of one material."""
    _in_order(hole, shaft, bore, raceway)
    ring = (raceway**2 + bore**2) / (raceway**2 - bore**2)
    core = (shaft**2 + hole**2) / (shaft**2 - hole**2)
    pressure = modulus * interference / bore / (ring + core + log(bore / shaft))
    return OnSleeve(pressure, pressure * bore / shaft, pressure * ring)


@method(r"\Delta F = \frac{2\,p\,d^2 F}{E\,(F^2 - d^2)}", LAME)
def raceway_growth(
    pressure: Annotated[float, Is("pressure at the bore", "p", "MPa", 0, 500)],
    bore: Annotated[float, BORE],
    raceway: Annotated[float, RACEWAY],
    modulus: Annotated[float, STEEL],
) -> Annotated[float, Is("growth of the raceway on diameter", r"\Delta F", "mm")]:
    """Growth of the inner raceway from the pressure at its bore
    The other way to what the growth ratio gives, to hold one against the other."""
    _in_order(bore, raceway)
    return 2 * pressure * bore**2 * raceway / (modulus * (raceway**2 - bore**2))


class Drive(NamedTuple):
    on: Annotated[float, Is("force that drives it up", r"F_{\mathrm{on}}", "N")]
    off: Annotated[float, Is("force that draws it off", r"F_{\mathrm{off}}", "N")]
    verdict: Literal["holds by itself", "slides off by itself"]


@method(r"F = \pi d B p \left(\mu \pm \frac{1}{2k}\right)", STATICS)
def taper_axial_force(
    pressure: Annotated[float, Is("pressure on the taper", "p", "MPa", 0, 500)],
    bore: Annotated[float, BORE],
    width: Annotated[float, Is("width of the joint", "B", "mm", 1, 1000)],
    friction: Annotated[float, Is("friction on the taper", r"\mu", "", 0, 0.5)],
    taper: Annotated[float, Is("taper, 1 in", "k", "", 12, 30)],
) -> Drive:
    """Force that drives a tapered bore up, and that draws it off"""
    grip, slope = pi * bore * width * pressure, 1 / (2 * taper)
    return Drive(grip * (friction + slope), grip * (friction - slope), "holds by itself" if friction > slope else "slides off by itself")


@method(
    r"T = F \left(\frac{P}{2\pi} + \frac{d_2}{2} \cdot \frac{\mu_t}{\cos 30^\circ} + \frac{\mu_n D_m}{2}\right) / 1000, \quad d_2 = D - 0.6495\,P",
    Citation("ISO 16047", "2005", "torque of a thread", "from memory"),
    beware={"order of magnitude, a third more or less: never a measure of acceptance": lambda **_: True},
)
def lock_nut_torque(
    force: Annotated[float, Is("force that drives the ring up", "F", "N", 0, 5_000_000)],
    pitch: Annotated[float, Is("pitch of the nut", "P", "mm", 0.5, 10)],
    thread: Annotated[float, Is("diameter of the thread", "D", "mm", 5, 1000)],
    face: Annotated[float, Is("mean diameter of the nut's face", "D_m", "mm", 5, 1200)],
    thread_friction: Annotated[float, Is("friction in the thread", r"\mu_t", "", 0, 0.5)],
    face_friction: Annotated[float, Is("friction under the nut", r"\mu_n", "", 0, 0.5)],
) -> Annotated[float, Is("torque on the nut", "T", "N.m")]:
    """Torque a lock nut will want, an estimate"""
    middle = thread - 0.6495 * pitch
    return force * (pitch / (2 * pi) + middle / 2 * thread_friction / cos(rad(30)) + face_friction * face / 2) / 1000


@method(r"D_m = 1.15\,D", None, beware={"face of the nut estimated from its thread": lambda **_: True})
def nut_face(
    thread: Annotated[float, Is("diameter of the thread", "D", "mm", 5, 1000)],
) -> Annotated[float, Is("mean diameter of the nut's face", "D_m", "mm")]:
    """Mean diameter of a lock nut's face where it is not on file"""
    return 1.15 * thread


def _in_order(*sizes: float) -> None:
    if any(b <= a for a, b in zip(sizes[:-1], sizes[1:], strict=True)):
        raise Refused(say("hole, shaft, bore and raceway must grow in this order"))
