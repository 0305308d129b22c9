"""What can be wrong with a plate, its rests or its loads."""

from __future__ import annotations


class StrengthError(ValueError):
    """The strength calculation was asked for something it cannot answer."""


class OutlineUnusableError(StrengthError):
    """The outline encloses no single piece of concrete.

    Parameters
    ----------
    reason
        What is wrong, in plain words.
    pieces
        How many pieces are left when strips too thin to count are taken away.
    """

    def __init__(self, reason: str, *, pieces: int = 1) -> None:
        self.reason = reason
        self.pieces = pieces
        super().__init__(reason)


class OffTheSlabError(StrengthError):
    """A rest or a load lies where there is no concrete.

    Parameters
    ----------
    what
        ``"load"`` or ``"rest"``.
    at_mm
        The place, plane slab millimetres.
    """

    def __init__(self, what: str, at_mm: tuple[float, float]) -> None:
        self.what = what
        self.at_mm = at_mm
        super().__init__(f"the {what} at ({at_mm[0]:.1f}, {at_mm[1]:.1f}) mm is not on the slab")


class SlabTipsError(StrengthError):
    """The load's resultant falls outside the hull of the rests, so the slab tips or drops.

    Parameters
    ----------
    resultant_mm
        Where the resultant of all loads acts, or None where the loads sum to nothing.
    outside_mm
        How far it lies outside the hull of the rests.
    """

    def __init__(self, resultant_mm: tuple[float, float] | None, outside_mm: float) -> None:
        self.resultant_mm = resultant_mm
        self.outside_mm = outside_mm
        super().__init__(f"the load lies {outside_mm:.1f} mm outside the rests, so the slab tips")


class ContactNotSettledError(StrengthError):
    """The contact problem came out of balance: a fault of ours, never of the slab.

    Parameters
    ----------
    broken
        Which assertion failed: ``"equilibrium"``, ``"reactions"``, ``"gaps"`` or ``"iterations"``.
    amount
        By how much, relative to the load or to the largest deflection.
    """

    def __init__(self, broken: str, amount: float) -> None:
        self.broken = broken
        self.amount = amount
        super().__init__(f"contact not settled: {broken} off by {amount:.3g}")
