"""The governing stress of each case, rounded before it is compared, so that it is reproducible."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass

import numpy as np

from ledgerstone.arrays import FloatArray, IntArray
from ledgerstone.outline import XY
from ledgerstone.strength.plate import Cases

# Decimals of a stress in MPa that are compared. Results differ in the twelfth digit by the loads
# solved before; of two places with equal stress, the first must still be taken.
DIGITS = 6


@dataclass(frozen=True, slots=True)
class Governing:
    """The largest stress of one case, MPa, and where; or that the slab tips, and then no stress.

    ``node`` is the mesh's node there, and ``face`` the one in tension.
    """

    mpa: float
    where_mm: XY
    tips: bool = False
    node: int = -1
    face: str = "bottom"


def governing(cases: Cases) -> list[Governing]:
    """Find the largest averaged tensile stress of each case, on either face."""
    places = cases.rested.plate.model.mesh.nodes
    at = first_largest(np.maximum(*cases.faces), 10.0**-DIGITS, DIGITS)
    bottom, top = (np.round(face[at, np.arange(len(at))], DIGITS) for face in cases.faces)
    largest = np.maximum(bottom, top).tolist()
    is_below = (bottom >= top).tolist()
    found: list[Governing] = []
    for k, tip in enumerate(cases.tips):
        if tip is not None:
            x, y = tip.where_mm
            found.append(Governing(0.0, (round(x, 3), round(y, 3)), tips=True))
            continue
        x, y = places[at[k]].tolist()
        face = "bottom" if is_below[k] else "top"
        found.append(Governing(largest[k], (x, y), node=int(at[k]), face=face))
    return found


def first_largest(fields: FloatArray, alike: float, digits: int) -> IntArray:
    """Row of the largest of each column (n, k), shape (k,): the first of those that round alike.

    Parameters
    ----------
    fields
        Stresses, MPa.
    alike
        Stresses further than this below the largest do not round to it, MPa.
    digits
        Decimals to which they are rounded.

    Source
    ------
    Arithmetic.
    """
    row, column = np.nonzero(fields >= fields.max(axis=0) - alike)
    order = np.lexsort((row, -np.round(fields[row, column], digits), column))
    _, first = np.unique(column[order], return_index=True)
    return np.asarray(row[order][first])


def worst_of(found: Iterable[Governing]) -> Governing:
    """Take the worst: one that tips before any stress, the first of equals."""
    return max(found, key=lambda stress: (stress.tips, stress.mpa))
