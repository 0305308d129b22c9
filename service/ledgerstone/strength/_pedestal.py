"""How wide a pedestal's plate has to be for a loose slab to stay on it."""

from __future__ import annotations

from dataclasses import replace

from ledgerstone.order import Rests
from ledgerstone.quantities import Length
from ledgerstone.strength._placed import PlacedSlab
from ledgerstone.strength.rests import pedestal_plate
from ledgerstone.strength.tipping import equilibrium_of


def steady_plate_mm(placed: PlacedSlab) -> float | None:
    """Side of a pedestal's plate, mm, from which nobody tips the loose slab; None if no side.

    Found by bisection, to 1 mm: a wider plate has its edges further out.

    Source
    ------
    As ``Equilibrium.tips_under``.
    """
    rests, shape = placed.slab.rests, placed.shape
    if rests is None or rests.plate is None:
        return None
    low, high = rests.plate.mm, min(shape.length_mm, shape.width_mm)
    if high <= low or not _stands_on(placed, rests, high):
        return None
    while high - low > 1.0:
        middle = (low + high) / 2
        low, high = (low, middle) if _stands_on(placed, rests, middle) else (middle, high)
    return high


def _stands_on(placed: PlacedSlab, rests: Rests, plate_mm: float) -> bool:
    """Return whether nobody tips the slab on a plate of another size."""
    plate = pedestal_plate(replace(rests, plate=Length.of_mm(plate_mm)), placed.shape)
    about = equilibrium_of(placed.slab, placed.shape, plate, placed.weight.n_per_mm3)
    return not about.tips_alone and not placed.tips_about(about).any()
