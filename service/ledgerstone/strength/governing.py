"""The governing stress of each case, rounded before it is compared, so that it is reproducible."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass

import numpy as np

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
    bottom, top = (np.round(face, DIGITS) for face in cases.faces)
    field = np.maximum(bottom, top)
    at = np.argmax(field, axis=0)
    found: list[Governing] = []
    for k, tip in enumerate(cases.tips):
        if tip is not None:
            x, y = tip.where_mm
            found.append(Governing(0.0, (round(x, 3), round(y, 3)), tips=True))
            continue
        x, y = places[at[k]].tolist()
        face = "bottom" if bottom[at[k], k] >= top[at[k], k] else "top"
        found.append(Governing(float(field[at[k], k]), (x, y), node=int(at[k]), face=face))
    return found


def worst_of(found: Iterable[Governing]) -> Governing:
    """Take the worst: one that tips before any stress, the first of equals."""
    return max(found, key=lambda one: (one.tips, one.mpa))
