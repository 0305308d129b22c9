"""From a document as it was sent to the answer: read, quote, and search for remedies."""

from __future__ import annotations

from collections.abc import Sequence
from contextlib import nullcontext
from dataclasses import dataclass, field, replace
from datetime import date
from typing import Any

from ledgerstone.checks import Facts, Timed, check_order
from ledgerstone.codec.links import Offer, open_offer
from ledgerstone.codec.order_in import read_order
from ledgerstone.codec.patch import trial_of
from ledgerstone.codec.tokens import Tokens
from ledgerstone.errors import Fault, NotUnderstood, TokenError
from ledgerstone.order import Order
from ledgerstone.quote import (
    NOT_LOOKED,
    Quote,
    SentBack,
    quote,
    waits_for_template,
    with_standing,
)
from ledgerstone.remedies import Outcome
from ledgerstone.schedule import Booking
from ledgerstone.stages import StageCache
from ledgerstone.workshop.records import Workshop

_NOT_OURS = "The earlier quote is none of ours. Leave “since” out, or give a quote's own token."


@dataclass(frozen=True, slots=True)
class Desk:
    """What an answer depends on beside the order itself.

    Attributes
    ----------
    bookings
        All that is booked; None where no calendar is read.
    tokens
        Opens what an order calls its ``since``; without it no order has one.
    makers
        Whether the maker asks: what needs no template is then a quotation.
    not_known
        Why it is not known what is booked; no day is then promised, and nothing is a quotation.
    timed
        Is entered for each stage of an answer by its name.
    """

    workshop: Workshop
    today: date
    bookings: Sequence[Booking] | None = None
    plates: StageCache = field(default_factory=StageCache)
    tokens: Tokens | None = None
    makers: bool = False
    not_known: str = ""
    timed: Timed = nullcontext

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
        with self.timed("parse"):
            order = self.read(sent)
        answer = quote(
            order,
            workshop=self.workshop,
            bookings=self.bookings,
            today=self.today,
            plates=self.plates,
            trial=trial_of(sent, self._outcome) if search else None,
            timed=self.timed,
        )
        if self.not_known and isinstance(answer, Quote):
            return self._without_bookings(answer)
        if self.makers and isinstance(answer, Quote) and not waits_for_template(order):
            return with_standing(answer, "quotation")
        return answer

    def _without_bookings(self, answer: Quote) -> Quote:
        """Say that the day is a guess; the maker is told why."""
        why = f" {self.not_known}" if self.makers else ""
        says = f"{NOT_LOOKED}{why}"
        guess = with_standing(answer, "estimate")
        return replace(guess, depends_on=(says, *guess.depends_on))

    def read(self, sent: Any) -> Order:  # noqa: ANN401  JSON
        """Read an order as it was sent; where it changes an offer, that lends its delivery area.

        Raises
        ------
        NotUnderstood
        """
        order = read_order(sent, self.workshop)
        since, delivery = self.since(order), order.delivery
        if since is None or delivery.kind == "collect" or delivery.postcode is not None:
            return order
        return replace(order, delivery=replace(delivery, area=since.area))

    def since(self, order: Order) -> Offer | None:
        """Open the offer that an order changes, if any.

        Raises
        ------
        NotUnderstood
            It is none of ours.
        """
        if order.since is None:
            return None
        try:
            if self.tokens is not None:
                return open_offer(order.since, self.tokens, self.today)
        except TokenError:
            pass
        raise NotUnderstood((Fault("/since", _NOT_OURS),))

    def _outcome(self, document: dict[str, Any]) -> Outcome:
        """Read a patched document anew and check it whole."""
        order = self.read(document)
        facts = Facts(order, self.workshop, self.bookings, self.today, self.plates)
        return Outcome(order, check_order(facts), facts)
