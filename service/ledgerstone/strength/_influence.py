"""What a load anywhere does to the stress at one place: influence surfaces, by the adjoint.

With the rests that touch held fixed, the plate is linear and its stiffness symmetric. The stress
at a node in one direction is ``s'u``; a unit load at any place changes it by the deflection there
of the same plate, on the same rests, under the "load" ``s``. One solution per stress gives its
influence from every place.

Source
------
Maxwell and Betti's reciprocity; Timoshenko and Woinowsky-Krieger, *Theory of Plates and Shells*,
art. 76 (influence surfaces), from memory.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
from scipy.sparse import csr_array

from ledgerstone.arrays import BoolArray, FloatArray
from ledgerstone.strength._element import deflection_row
from ledgerstone.strength._loads import PlateLoad, unit_of
from ledgerstone.strength._model import Model
from ledgerstone.strength._rested import Footing

HALF_GAUSS = 0.5 / 3.0**0.5  # distance of two Gauss points from the middle of a side of length one


@dataclass(frozen=True, slots=True)
class Peak:
    """A governing stress: its case, its node, and the face that is in tension."""

    case: int
    node: int
    face: str


def stress_columns(
    model: Model, thickness_mm: float, u: FloatArray, peaks: Sequence[Peak]
) -> FloatArray:
    """Columns ``s`` with ``s'u`` the averaged principal stress of each peak, MPa, shape (3 n, k).

    Parameters
    ----------
    u
        Unknowns of the cases for unit ``D``, shape (3 n, cases): they say which way the principal
        stress lies, which is then kept.

    Source
    ------
    Mohr's circle: the principal direction of ``σx``, ``σy``, ``τ``; strength of materials.
    """
    count, at = len(model.mesh.nodes), np.array([peak.node for peak in peaks])
    every = model.averaged(thickness_mm)[np.concatenate([at + k * count for k in range(3)])]
    rows = every.toarray().reshape(3, len(at), -1)
    picked = u[:, [peak.case for peak in peaks]]
    x, y, xy = np.einsum("ikd,dk->ik", rows, picked)
    turn = 0.5 * np.arctan2(2.0 * xy, x - y)
    top = np.array([peak.face == "top" for peak in peaks])
    turn = np.where(top, turn + 0.5 * np.pi, turn)
    sign = np.where(top, -1.0, 1.0)
    sign /= thickness_mm**2
    share = sign * np.array([np.cos(turn) ** 2, np.sin(turn) ** 2, np.sin(2.0 * turn)])
    return np.asarray(np.einsum("ik,ikd->dk", share, rows))


def influence(
    model: Model, footing: Footing, columns: FloatArray, touching: BoolArray, own: PlateLoad
) -> Influence:
    """Influence surfaces of some stresses.

    Parameters
    ----------
    columns
        As ``stress_columns`` gives them, shape (3 n, k).
    own
        The slab's own weight.
    touching
        Which stations touch in each peak's case, shape (stations, k).
    """
    rows = model.factor.forward(columns)
    reactions, motions = footing.contact.on_the_same(footing.rows.T @ rows, touching)
    rows -= footing.rows @ reactions
    u = model.factor.backward(rows) + model.motions.columns @ motions
    unit, size = unit_of(own)
    (weight,), (pull,) = model.carried([unit]), model.pulls([unit])
    return Influence(model, u, size * (weight @ rows + pull @ motions))


@dataclass(frozen=True, slots=True)
class Influence:
    """Influence surfaces of some stresses.

    Parameters
    ----------
    u
        Deflections for unit ``D``, shape (3 n, k).
    own_mpa
        What own weight makes of each stress, shape (k,).
    """

    model: Model
    u: FloatArray
    own_mpa: FloatArray

    def of_squares(self, squares: csr_array) -> FloatArray:
        """What 1 N spread over each square adds to each stress, MPa, shape (p, k).

        ``squares`` are the rows of ``squares_at``, shape (p, 3 n).

        Source
        ------
        Maxwell and Betti's reciprocity: strength of materials.
        """
        return np.asarray(squares @ self.u)


def squares_at(model: Model, places: FloatArray, side_mm: float) -> csr_array:
    """Rows that give the mean deflection of squares from the unknowns, shape (p, 3 n).

    Two by two Gauss points a square; the weight of a point off the slab goes to those on it.

    Parameters
    ----------
    places
        Centres of the squares, mm, shape (p, 2).

    Source
    ------
    Gauss's rule of two by two points: numerical integration.
    """
    step = side_mm * HALF_GAUSS * np.array([[-1.0, -1.0], [1.0, -1.0], [-1.0, 1.0], [1.0, 1.0]])
    points = (places[:, None, :] + step[None]).reshape(-1, 2)
    triangle, share = model.mesh.located(points)
    on = (triangle >= 0).reshape(-1, 4)
    weight = (on / np.maximum(on.sum(axis=1, keepdims=True), 1)).ravel()
    rows = deflection_row(model.mesh.nodes[model.mesh.triangles[triangle]], share)
    rows *= weight[:, None]
    start = np.arange(0, 36 * len(places) + 1, 36)
    shape = (len(places), 3 * len(model.mesh.nodes))
    return csr_array((rows.ravel(), model.unknowns[triangle].ravel(), start), shape=shape)
