"""Cases of a slab in place, and their results."""

from __future__ import annotations

from dataclasses import dataclass

from ledgerstone.strength.governing import Governing
from ledgerstone.strength.places import LoadPlace
from ledgerstone.strength.plate import Cases, PatchLoad, PlateLoad
from ledgerstone.strength.verdict import Case


@dataclass(frozen=True, slots=True)
class TriedCase:
    """One case: its loads, the group of rests that is low in it, and the person's place."""

    case: Case
    loads: tuple[PlateLoad, ...]
    low: int | None = None
    place: LoadPlace | None = None

    @property
    def person_n(self) -> float:
        """A person's load, N; 0 where there is none.

        Source
        ------
        Arithmetic.
        """
        return sum(load.newtons for load in self.loads if isinstance(load, PatchLoad))


@dataclass(frozen=True, slots=True)
class CaseBatch:
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

    tried: tuple[TriedCase, ...]
    loose: Cases
    tipped: tuple[int, ...]
    held: Cases | None
    found: tuple[Governing, ...]

    def solved(self, k: int) -> tuple[Cases, int]:
        """Where the stress of case ``k`` comes from, and its number there."""
        if self.held is not None and k in self.tipped:
            return self.held, self.tipped.index(k)
        return self.loose, k
