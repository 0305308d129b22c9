"""Cases that are tried on a slab in place, and what the plate says of them together."""

from __future__ import annotations

from dataclasses import dataclass

from ledgerstone.strength.governing import Governing
from ledgerstone.strength.places import Place
from ledgerstone.strength.plate import Cases, Load
from ledgerstone.strength.verdict import Case


@dataclass(frozen=True, slots=True)
class Tried:
    """One case: its loads, the group of rests that lies low in it, and where a person is."""

    case: Case
    loads: tuple[Load, ...]
    low: int | None = None
    place: Place | None = None


@dataclass(frozen=True, slots=True)
class Batch:
    """Cases settled together.

    Attributes
    ----------
    loose, held
        The cases on rests that only push; those of them that tip on rests that hold on.
    tipped
        Which those are.
    found
        The stress of every case.
    """

    tried: tuple[Tried, ...]
    loose: Cases
    tipped: tuple[int, ...]
    held: Cases | None
    found: tuple[Governing, ...]

    def solved(self, k: int) -> tuple[Cases, int]:
        """Where the stress of case ``k`` comes from, and its number there."""
        if self.held is not None and k in self.tipped:
            return self.held, self.tipped.index(k)
        return self.loose, k
