"""The discrete Kirchhoff triangle, all elements of a mesh at once.

Unknowns at a node are ``(w, w_x, w_y)``: the deflection (down positive) and its slopes. Sagging
moments are positive: ``mx = -D (w_xx + nu w_yy)``. Everything here is for unit ``D``.

Source
------
Batoz, Bathe and Ho, "A study of three-node triangular plate bending elements", IJNME 15 (1980):
slopes quadratic over the triangle, cubic deflection along its sides, slope across a side linear.
Written out from that statement; the deflection inside is the cubic of Bazeley, Cheung, Irons and
Zienkiewicz (1965).
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from ledgerstone.arrays import FloatArray, IntArray

NEXT = np.array([1, 2, 0])  # the corner after each, anticlockwise
# Rate of each quadratic shape function (three corners, three mid-sides 01, 12, 20) with the area
# coordinates, at each corner of the triangle: shape (corner, function, coordinate).
RATES = np.zeros((3, 6, 3))
for _corner in range(3):
    for _k in range(3):
        RATES[_corner, _k, _k] = 3.0 if _corner == _k else -1.0
    for _side in range(3):
        _i, _j = _side, (_side + 1) % 3
        RATES[_corner, 3 + _side, _i] = 4.0 if _corner == _j else 0.0
        RATES[_corner, 3 + _side, _j] = 4.0 if _corner == _i else 0.0


@dataclass(frozen=True, slots=True)
class Elements:
    """Geometry and curvature operators of every triangle.

    Parameters
    ----------
    corners
        Node places, shape (m, 3, 2), mm.
    area
        Areas, shape (m,), mm².
    gradient
        Rates of the area coordinates with x and y, shape (m, 3, 2), 1/mm.
    curvature
        From the nine unknowns to ``-(w_xx, w_yy, 2 w_xy)`` at each corner, shape (m, 3, 3, 9).
    """

    corners: FloatArray
    area: FloatArray
    gradient: FloatArray
    curvature: FloatArray


def elements_of(nodes: FloatArray, triangles: IntArray) -> Elements:
    """Geometry and curvature operators of a mesh.

    Parameters
    ----------
    nodes, triangles
        Places, shape (n, 2), mm, and node numbers, anticlockwise, shape (m, 3).
    """
    corners = nodes[triangles]
    side = corners[:, NEXT] - corners
    twice = side[:, 0, 0] * -side[:, 2, 1] + side[:, 2, 0] * side[:, 0, 1]
    opposite = side[:, NEXT]  # side facing each corner
    gradient = np.stack([-opposite[..., 1], opposite[..., 0]], axis=-1) / twice[:, None, None]
    return Elements(corners, 0.5 * twice, gradient, _curvature(side, gradient))


def _slopes_at_mid_sides(side: FloatArray) -> FloatArray:
    """From the nine unknowns to the slopes at the mid-sides, shape (m, 3, 2, 9)."""
    count = len(side)
    length = np.sqrt(np.einsum("mki,mki->mk", side, side))
    s = side / length[..., None]
    along = s[..., :, None] * s[..., None, :]  # projection on the side, (m, 3, 2, 2)
    mixed = 0.5 * np.eye(2) - 0.75 * along  # half the mean across, minus a quarter along
    rise = 1.5 * s / length[..., None]  # slope in the middle of a cubic that rises by 1
    slopes = np.zeros((count, 3, 2, 9))
    for k in range(3):
        i, j = 3 * k, 3 * ((k + 1) % 3)
        slopes[:, k, :, i] = -rise[:, k]
        slopes[:, k, :, j] = rise[:, k]
        slopes[:, k, :, i + 1 : i + 3] = mixed[:, k]
        slopes[:, k, :, j + 1 : j + 3] = mixed[:, k]
    return slopes


def _curvature(side: FloatArray, gradient: FloatArray) -> FloatArray:
    count = len(side)
    mid = _slopes_at_mid_sides(side)
    rates = np.einsum("cfl,mli->mcfi", RATES, gradient)  # of the six functions with x and y
    inner = np.matmul(
        rates[:, :, 3:].transpose(0, 1, 3, 2).reshape(count, 9 // 3 * 2, 3),
        mid.reshape(count, 3, 18),
    ).reshape(count, 3, 2, 2, 9)  # corner, rate with, slope of
    for k in range(3):
        inner[:, :, :, 0, 3 * k + 1] += rates[:, :, k]
        inner[:, :, :, 1, 3 * k + 2] += rates[:, :, k]
    return -np.stack(
        [inner[:, :, 0, 0], inner[:, :, 1, 1], inner[:, :, 0, 1] + inner[:, :, 1, 0]], axis=2
    )


def stiffness(elements: Elements, nu: float, ratio: FloatArray) -> FloatArray:
    """Element matrices for unit reference ``D``, shape (m, 9, 9).

    Parameters
    ----------
    nu
        Poisson's ratio.
    ratio
        Each element's own ``D`` over the reference ``D``, shape (m,).

    Source
    ------
    The head of this module; three mid-sides integrate a quadratic exactly (Zienkiewicz and Taylor,
    *The Finite Element Method*, from memory).
    """
    B = elements.curvature
    middle = 0.5 * (B + B[:, NEXT])  # the curvature is linear: three mid-sides integrate exactly
    stacked = middle.reshape(len(B), 9, 9)
    weighted = np.matmul(rigidity(nu), middle).reshape(len(B), 9, 9)
    K: FloatArray = np.matmul(stacked.transpose(0, 2, 1), weighted)
    return K * (ratio * elements.area / 3.0)[:, None, None]


def rigidity(nu: float) -> FloatArray:
    """Moments per curvature for unit ``D``, shape (3, 3).

    Source
    ------
    Hooke's law in plane stress, integrated over the thickness; Timoshenko and Woinowsky-Krieger,
    *Theory of Plates and Shells*, art. 10, from memory.
    """
    return np.array([[1.0, nu, 0.0], [nu, 1.0, 0.0], [0.0, 0.0, 0.5 * (1.0 - nu)]])


def deflection_row(corners: FloatArray, share: FloatArray) -> FloatArray:
    """Deflection from the nine unknowns at places inside triangles, shape (k, 9).

    Parameters
    ----------
    corners
        Corner places of each place's triangle, shape (k, 3, 2), mm.
    share
        Area coordinates of each place, shape (k, 3).

    Source
    ------
    Bazeley, Cheung, Irons and Zienkiewicz, "Triangular elements in plate bending" (1965), from
    memory: the cubic with its slopes along the sides.
    """
    L = np.ascontiguousarray(share.T)
    x = np.ascontiguousarray(corners.transpose(2, 1, 0))  # an axis, a corner
    bubble = 0.5 * L[0] * L[1] * L[2]
    rows = np.empty((9, len(share)))
    for i in range(3):
        j, k = (i + 1) % 3, (i + 2) % 3
        square = L[i] * L[i]
        to_j, to_k = square * L[j] + bubble, square * L[k] + bubble
        rows[3 * i] = L[i] * (1.0 + L[i] * (L[j] + L[k]) - L[j] * L[j] - L[k] * L[k])
        for axis in range(2):
            rows[3 * i + 1 + axis] = to_j * (x[axis, j] - x[axis, i]) + to_k * (
                x[axis, k] - x[axis, i]
            )
    return rows.T


def pressure_rows(elements: Elements) -> FloatArray:
    """Nodal forces of 1 N/mm² on every triangle, N and N·mm, shape (m, 9): exact for the cubic.

    Source
    ------
    The cubic of ``deflection_row`` by ``∫ L1^a L2^b L3^c dA = 2 A a! b! c! / (a + b + c + 2)!``;
    Zienkiewicz and Taylor, *The Finite Element Method*, from memory.
    """
    corners, area = elements.corners, elements.area
    rows = np.empty((len(area), 9))
    for i in range(3):
        j, k = (i + 1) % 3, (i + 2) % 3
        rows[:, 3 * i] = area / 3.0
        reach = corners[:, j] + corners[:, k] - 2.0 * corners[:, i]
        rows[:, 3 * i + 1 : 3 * i + 3] = area[:, None] / 24.0 * reach
    return rows
