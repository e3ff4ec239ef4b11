"""A straight stepped shaft in bending in one plane: Euler-Bernoulli elements between all its steps, loads and supports.

Lengths mm, forces N, couples N.mm, slopes rad. Everything is counted positive one way across the shaft; a couple is positive
where it moves the second end that way. Source: the finite element of a prismatic beam, in any text of structural mechanics.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from math import pi
from typing import NamedTuple

import numpy as np
from numpy.typing import NDArray

GRAVITY = 9.80665
NEAREST = 1.0  # mm between two nodes
Numbers = NDArray[np.float64]


class Piece(NamedTuple):
    """A length of one diameter, up to a place."""

    to: float
    diameter: float
    hole: float


class Rest(NamedTuple):
    """A support: where, how much it is set off its line, and its stiffness (0 for rigid)."""

    at: float
    settlement: float
    spring: float


class Push(NamedTuple):
    """A force and a couple at a place."""

    at: float
    force: float
    couple: float


@dataclass(frozen=True)
class Bent:
    """The bent shaft at its nodes, and what each support carries."""

    at: Numbers
    deflection: Numbers
    slope: Numbers
    moment: Numbers  # the greater of both sides of each node, with its sign
    carried: tuple[float, ...]

    def index(self, place: float) -> int:
        """The node at a place."""
        return int(np.argmin(np.abs(self.at - place)))


def bend(
    pieces: Sequence[Piece],
    rests: Sequence[Rest],
    pushes: Sequence[Push],
    modulus: float,
    weight: float = 0.0,
    also_at: Sequence[float] = (),
) -> Bent:
    """The shaft under its loads; `weight` in N/mm3, with its sign. Supports must be two at least, apart, and on the shaft."""
    at = _nodes(pieces, [r.at for r in rests], [p.at for p in pushes] + list(also_at))
    stiffness, forces, parts = _assembled(at, pieces, modulus, weight)
    node = {rest.at: int(np.argmin(np.abs(at - rest.at))) for rest in rests}
    for push in pushes:
        nearest = int(np.argmin(np.abs(at - push.at)))
        forces[2 * nearest] += push.force
        # what acts beside its node acts there with the couple of its arm: equilibrium stays exact
        forces[2 * nearest + 1] += push.couple + push.force * (push.at - float(at[nearest]))
    loads = forces.copy()
    fixed, moved = [], []
    whole = stiffness.copy()
    for rest in rests:
        place = 2 * node[rest.at]
        if rest.spring > 0:
            whole[place, place] += rest.spring
            forces[place] += rest.spring * rest.settlement
        else:
            fixed.append(place)
            moved.append(rest.settlement)
    displaced = _solved(whole, forces, fixed, moved)
    carried = loads - stiffness @ displaced
    return Bent(
        at,
        displaced[0::2],
        displaced[1::2],
        _moments(displaced, parts),
        tuple(float(carried[2 * node[rest.at]]) for rest in rests),
    )


def _nodes(pieces: Sequence[Piece], supports: Sequence[float], places: Sequence[float]) -> Numbers:
    """Supports first, then what stands no nearer than a millimetre to a node there is: tiny elements would cost the figures their digits."""
    found = sorted(set(supports))
    for place in (0.0, pieces[-1].to, *(piece.to for piece in pieces), *places):
        if all(abs(place - one) >= NEAREST for one in found):
            found.append(place)
    return np.array(sorted(found))


def _assembled(
    at: Numbers, pieces: Sequence[Piece], modulus: float, weight: float
) -> tuple[Numbers, Numbers, list[tuple[Numbers, Numbers]]]:
    """Stiffness, forces of the weight, and each element's own stiffness and forces."""
    size = 2 * len(at)
    whole, forces, parts = np.zeros((size, size)), np.zeros(size), []
    for i, (start, end) in enumerate(zip(at[:-1], at[1:], strict=True)):
        length = float(end - start)
        middle = float(start + end) / 2
        piece = next(p for p in pieces if p.to >= middle)
        inertia = pi * (piece.diameter**4 - piece.hole**4) / 64
        spread = weight * pi * (piece.diameter**2 - piece.hole**2) / 4
        one = modulus * inertia / length**3 * _element(length)
        own = spread * np.array([length / 2, length**2 / 12, length / 2, -(length**2) / 12])
        whole[2 * i : 2 * i + 4, 2 * i : 2 * i + 4] += one
        forces[2 * i : 2 * i + 4] += own
        parts.append((one, own))
    return whole, forces, parts


def _element(length: float) -> Numbers:
    a, b, c = 6 * length, 4 * length**2, 2 * length**2
    return np.array([[12, a, -12, a], [a, b, -a, c], [-12, -a, 12, -a], [a, c, -a, b]], dtype=np.float64)


def _solved(whole: Numbers, forces: Numbers, fixed: list[int], moved: list[float]) -> Numbers:
    displaced = np.zeros(len(forces))
    displaced[fixed] = moved
    free = np.setdiff1d(np.arange(len(forces)), fixed)
    given = forces[free] - whole[np.ix_(free, np.array(fixed, dtype=int))] @ displaced[fixed]
    displaced[free] = np.linalg.solve(whole[np.ix_(free, free)], given)
    return displaced


def _moments(displaced: Numbers, parts: list[tuple[Numbers, Numbers]]) -> Numbers:
    """The bending moment at each node, sagging the positive way counted as negative curvature is: of both sides the greater."""
    ends = [one @ displaced[2 * i : 2 * i + 4] - own for i, (one, own) in enumerate(parts)]
    left = np.array([-end[1] for end in ends] + [0.0])
    right = np.array([0.0] + [end[3] for end in ends])
    return np.where(np.abs(left) >= np.abs(right), left, right)
