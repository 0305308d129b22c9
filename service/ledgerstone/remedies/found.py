"""What the search of changes comes to: remedies of findings, and one fix of the whole order."""

from __future__ import annotations

from dataclasses import dataclass, field

from ledgerstone.price import Price
from ledgerstone.remedies.state import State


@dataclass(frozen=True, slots=True)
class Remedy:
    """A change that settles findings, proved by every check."""

    says: str
    state: State
    settles: tuple[str, ...]
    price: Price | None


@dataclass(frozen=True, slots=True)
class Fix:
    """Changes after which the whole order quotes, proved by every check."""

    says: tuple[str, ...]
    state: State
    price: Price


@dataclass(frozen=True, slots=True)
class Found:
    """Everything the search came to.

    Attributes
    ----------
    remedies
        By finding id, up to three each.
    fix_all
        Keeps every opening and, within a twentieth, each size that nothing fixes.
    nearest_makeable
        A bigger change, only where there is no ``fix_all``.
    why_not
        The plain reason why no ``fix_all`` was found: always where nothing was, and beside a
        nearest makeable where something is shown to have no room.
    verified
        How often an order, or one slab alone, went through the checks of strength too.
    """

    remedies: dict[str, tuple[Remedy, ...]] = field(default_factory=dict)
    fix_all: Fix | None = None
    nearest_makeable: Fix | None = None
    why_not: str | None = None
    verified: int = 0
