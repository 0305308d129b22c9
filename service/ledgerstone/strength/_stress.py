"""Moments and stresses from the deflected plate: at a place, at nodes, and averaged around them."""

from __future__ import annotations

import numpy as np

from ledgerstone.strength._averaging import Averaging
from ledgerstone.strength._element import rigidity
from ledgerstone.strength._model import Model
from ledgerstone.strength._outline import FloatArray


def corner_moments(model: Model, u: FloatArray) -> FloatArray:
    """Moments ``(mx, my, mxy)`` at each triangle's corners, N·mm/mm, shape (m, 3, 3, k).

    ``u`` is for unit ``D`` (N and mm), shape (3 n, k); sagging moments are positive.
    """
    count = len(model.elements.area)
    operator = np.matmul(rigidity(model.nu), model.elements.curvature)
    operator = operator * (model.depth**3)[:, None, None, None]
    found = np.matmul(operator.reshape(count, 9, 9), u[model.unknowns])
    return np.asarray(found.reshape(count, 3, 3, -1))


def averaged_stress(
    model: Model, averaging: Averaging, u: FloatArray, thickness_mm: float
) -> tuple[FloatArray, FloatArray]:
    """Largest tensile stress at the bottom and at the top around every node, MPa, (p, k) each.

    The stress tensor ``6 m / h²`` is averaged first and its principal value taken then, so that
    thickness may change within the area and the mean does not depend on how the axes lie.
    """
    corner = (
        corner_moments(model, u) * (6.0 / (thickness_mm * model.depth) ** 2)[:, None, None, None]
    )
    count, cases = len(corner), corner.shape[-1]
    mean = averaging.weights @ corner.reshape(3 * count, 3 * cases)
    x, y, xy = mean.reshape(-1, 3, cases).transpose(1, 0, 2)
    middle, reach = 0.5 * (x + y), np.hypot(0.5 * (x - y), xy)
    return middle + reach, reach - middle
