"""Results of the search of changes: remedies of findings, and one fix of the whole order."""

from __future__ import annotations

from dataclasses import dataclass, field

from ledgerstone.price import Price
from ledgerstone.remedies.state import State
from ledgerstone.remedies.words import Sentences
from ledgerstone.wording import Message


@dataclass(frozen=True, slots=True)
class Remedy:
    """A change that settles findings, proved by every check."""

    sentences: tuple[Sentences, ...]
    state: State
    settles: tuple[str, ...]
    price: Price | None


@dataclass(frozen=True, slots=True)
class Fix:
    """Changes after which the whole order quotes, proved by every check."""

    sentences: tuple[Sentences, ...]
    state: State
    price: Price


@dataclass(frozen=True, slots=True)
class Found:
    """All results of the search.

    Attributes
    ----------
    remedies
        By finding id, up to three each.
    fix_all
        Keeps every opening and, within a twentieth, each size that nothing fixes.
    nearest_makeable
        A bigger change, only if there is no ``fix_all``.
    why_not
        The plain reason why no ``fix_all`` was found: always where nothing was, and beside a
        nearest makeable where something is shown to have no room.
    verified
        How often an order, or one slab alone, went through the checks of strength too.
    """

    remedies: dict[str, tuple[Remedy, ...]] = field(default_factory=dict)
    fix_all: Fix | None = None
    nearest_makeable: Fix | None = None
    why_not: Message | None = None
    verified: int = 0

    def remedies_of(self, finding_id: str) -> tuple[Remedy, ...]:
        """Return a finding's remedies."""
        return self.remedies.get(finding_id, ())

    def beside_the_fix(self, finding_id: str) -> tuple[Remedy, ...]:
        """Return a finding's remedies except the change that is shown for the whole order."""
        fix = self.fix_all or self.nearest_makeable
        above = None if fix is None else fix.state.key
        return tuple(
            remedy for remedy in self.remedies.get(finding_id, ()) if remedy.state.key != above
        )
