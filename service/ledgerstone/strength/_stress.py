"""Moments and stresses from the deflected plate: at a place, at nodes, and averaged around them."""

from __future__ import annotations

import numpy as np

from ledgerstone.arrays import FloatArray
from ledgerstone.strength._element import rigidity
from ledgerstone.strength._model import Model


def corner_moments(model: Model, u: FloatArray) -> FloatArray:
    """Moments ``(mx, my, mxy)`` at each triangle's corners, N·mm/mm, shape (m, 3, 3, k).

    ``u`` is for unit ``D`` (N and mm), shape (3 n, k); sagging moments are positive.

    Source
    ------
    As ``rigidity``: moments are it times the curvatures, by the cube of the depth.
    """
    count = len(model.elements.area)
    operator = np.matmul(rigidity(model.nu), model.elements.curvature)
    operator = operator * (model.depth**3)[:, None, None, None]
    found = np.matmul(operator.reshape(count, 9, 9), u[model.unknowns])
    return np.asarray(found.reshape(count, 3, 3, -1))


def averaged_components(model: Model, u: FloatArray, thickness_mm: float) -> FloatArray:
    """Averaged stresses ``(x, y, xy)`` of the bottom face around every node, MPa, shape (3, n, k).

    Tension is positive; ``u`` is for unit ``D``, shape (3 n, k).

    Source
    ------
    ``σ = 6 m / h²`` at a face: strength of materials; the average by methods §1.4.
    """
    mean = model.averaged(thickness_mm) @ u
    mean /= thickness_mm**2
    return np.asarray(mean.reshape(3, -1, u.shape[1]))


def principal_stress(components: FloatArray) -> tuple[FloatArray, FloatArray]:
    """Largest tensile stress at the bottom and at the top around every node, MPa, (n, k) each.

    It is the principal value of the averaged stress components ``(x, y, xy)``, shape (3, n, k):
    ``(σx + σy) / 2 ± sqrt(((σx - σy) / 2)² + τ²)``, on the top with the signs changed.

    Source
    ------
    Mohr's circle: strength of materials.
    """
    x, y, xy = components
    middle, half = 0.5 * (x + y), 0.5 * (x - y)
    half *= half
    reach = np.sqrt(half + xy * xy)
    return middle + reach, reach - middle
