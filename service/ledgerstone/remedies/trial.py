"""What a changed order comes to when it is read anew and checked whole."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass

from ledgerstone.checks import Checked, Facts
from ledgerstone.order import Order
from ledgerstone.price import Price
from ledgerstone.remedies.state import State


@dataclass(frozen=True, slots=True)
class Outcome:
    """What a changed order came to: the order as understood, its checks and its facts."""

    order: Order
    checked: Checked
    facts: Facts

    @property
    def stops(self) -> frozenset[str]:
        """Ids of the findings that stop it."""
        return frozenset(finding.id for finding in self.checked.stops)

    @property
    def price(self) -> Price | None:
        """What the customer would be asked, where nothing stops it."""
        return None if self.checked.stops else self.facts.price


# Tries a state as a patch of the order as it was sent: None where that is not understood.
Trial = Callable[[State], Outcome | None]
