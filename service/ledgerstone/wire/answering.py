"""From a document as it was sent to the answer: read, quote, and search for remedies."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, field
from datetime import date
from typing import Any

from ledgerstone.checks import Facts, check_order
from ledgerstone.quote import Quote, SentBack, quote
from ledgerstone.remedies import Outcome
from ledgerstone.schedule import Booking
from ledgerstone.strength.slabs import Plates
from ledgerstone.wire.order_in import read_order
from ledgerstone.wire.patch import trial_of
from ledgerstone.workshop.records import Workshop


@dataclass(frozen=True, slots=True)
class Desk:
    """What an answer depends on beside the order itself."""

    workshop: Workshop
    today: date
    bookings: Sequence[Booking] = ()
    plates: Plates = field(default_factory=Plates)

    def answer(self, sent: Any, *, search: bool = True) -> Quote | SentBack:  # noqa: ANN401  JSON
        """Answer an order as it was sent.

        Parameters
        ----------
        search
            Whether to search for remedies where it is sent back, and ways to save where not.

        Raises
        ------
        NotUnderstood
        """
        order = read_order(sent, self.workshop)
        return quote(
            order,
            workshop=self.workshop,
            bookings=self.bookings,
            today=self.today,
            plates=self.plates,
            trial=trial_of(sent, self._outcome) if search else None,
        )

    def _outcome(self, document: dict[str, Any]) -> Outcome:
        """Read a patched document anew and check it whole."""
        order = read_order(document, self.workshop)
        facts = Facts(order, self.workshop, self.bookings, self.today, self.plates)
        return Outcome(order, check_order(facts), facts)
