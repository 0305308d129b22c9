"""What a changed order comes to when it is read anew and checked whole."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass

from ledgerstone.checks import Checked
from ledgerstone.order import Order
from ledgerstone.price import Price
from ledgerstone.remedies.state import State


@dataclass(frozen=True, slots=True)
class Outcome:
    """What a changed order came to: the order as understood, and its checks."""

    order: Order
    checked: Checked

    @property
    def stops(self) -> frozenset[str]:
        """Ids of the findings that stop it."""
        return frozenset(finding.id for finding in self.checked.stops)

    @property
    def price(self) -> Price | None:
        """What the customer would be asked, where nothing stops it."""
        whole = self.checked.worked_out
        return None if whole is None else whole.priced.price


# Tries a state as a patch of the order as it was sent: None where that is not understood.
Trial = Callable[[State], Outcome | None]


@dataclass(frozen=True, slots=True)
class Trials:
    """How changes are tried.

    Attributes
    ----------
    whole
        On the order as it was sent, by every check: the proof.
    alone
        Works an order of one slab out, as far as its shape and strength.
    """

    whole: Trial
    alone: Callable[[Order], Checked]
