"""The outcome of a changed order that is read and checked whole."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass

from ledgerstone.checks import Checked
from ledgerstone.order import Order
from ledgerstone.price import Price
from ledgerstone.remedies.state import State


@dataclass(frozen=True, slots=True)
class Outcome:
    """Outcome of a changed order: the order as understood, and its checks."""

    order: Order
    checked: Checked

    @property
    def stops(self) -> frozenset[str]:
        """Ids of the findings that stop it."""
        return frozenset(finding.id for finding in self.checked.stops)

    @property
    def price(self) -> Price | None:
        """The price, if nothing stops the order."""
        whole = self.checked.records
        return None if whole is None else whole.priced.price


# Tries a state as a patch of the order as it was sent: None if that is not understood.
Trial = Callable[[State], Outcome | None]


@dataclass(frozen=True, slots=True)
class Trials:
    """How changes are tried.

    Attributes
    ----------
    whole
        On the order as it was sent, by every check: the proof.
    alone
        An order of one slab, by the checks of shape and strength.
    """

    whole: Trial
    alone: Callable[[Order], Checked]
