"""What can be wrong with a plate, its rests or its loads: leaves of the tree in ``errors``."""

from __future__ import annotations

from ledgerstone.errors import GeometryFault, PlateError, Tips


class OutlineUnusableError(GeometryFault):
    """The outline encloses no single piece of concrete.

    Parameters
    ----------
    says
        What is wrong, in plain words.
    pieces
        How many pieces are left when strips too thin to count are taken away.
    """

    def __init__(self, says: str, *, pieces: int = 1) -> None:
        super().__init__(says)
        self.pieces = pieces


class OffTheSlabError(PlateError):
    """A rest, a load or a place asked about lies where there is no concrete.

    Parameters
    ----------
    what
        ``"load"``, ``"rest"`` or ``"place"``.
    where_mm
        Where, plane slab millimetres.
    """

    def __init__(self, what: str, where_mm: tuple[float, float]) -> None:
        x, y = where_mm
        super().__init__(f"The {what} at ({x:.0f}, {y:.0f}) mm is not on the slab.")
        self.what = what
        self.where_mm = where_mm


class SlabTipsError(Tips):
    """The load's resultant lies outside the hull of the rests, so the slab tips or drops.

    Parameters
    ----------
    where_mm
        Where the resultant of all loads acts; the slab's middle where they sum to nothing.
    outside_mm
        How far it lies outside the hull of the rests; 0 where the rests lie on one line.
    """

    def __init__(self, where_mm: tuple[float, float], outside_mm: float) -> None:
        says = f"The load lies {outside_mm:.0f} mm outside the rests, so the slab tips."
        super().__init__(says, where_mm)
        self.outside_mm = outside_mm


class ContactNotSettledError(PlateError):
    """The contact problem came out of balance: a fault of ours, never of the slab.

    Parameters
    ----------
    broken
        Which assertion failed: ``"equilibrium"``, ``"reactions"``, ``"gaps"`` or ``"iterations"``.
    amount
        By how much, relative to the load or to the largest deflection.
    """

    def __init__(self, broken: str, amount: float) -> None:
        super().__init__(f"Contact not settled: {broken} off by {amount:.3g}.")
        self.broken = broken
        self.amount = amount
