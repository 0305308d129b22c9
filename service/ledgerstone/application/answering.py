"""From a document as it was sent to the answer: read, quote, and search for remedies."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from functools import partial
from typing import Any

from ledgerstone.application.context import QuoteContext
from ledgerstone.codec.links import LinkedOffer, offer_named_at
from ledgerstone.codec.order_in import read_order
from ledgerstone.codec.patch import trial_of
from ledgerstone.errors import Fault, NotUnderstood
from ledgerstone.json_types import JSON
from ledgerstone.message import Message
from ledgerstone.order import Order
from ledgerstone.quote import (
    Quote,
    SentBack,
    quote,
    with_standing,
    work_out,
)
from ledgerstone.remedies import Outcome, State, Trial
from ledgerstone.stages import StageContext
from ledgerstone.terms import waits_for_template

_NOT_OURS = Message("no-quote-to-change")


def _nothing(_order: Order) -> float:
    return 0.0


def answer_order(
    document: JSON,
    context: QuoteContext,
    *,
    search: bool = True,
    savings: bool = True,
    made_of_it: Callable[[Order], float] = _nothing,
) -> Quote | SentBack:
    """Answer an order as it was sent.

    Parameters
    ----------
    search
        Whether to search for remedies where it is sent back.
    savings
        Whether to search for ways to save too, where it is not.
    made_of_it
        How many units of work all takes that the request makes of the answer.

    Raises
    ------
    NotUnderstood, TooIntricate
    """
    with context.timed("parse"):
        order = read_sent_order(document, context)
    context.set_aside(made_of_it(order), len(order.slabs))
    answer = quote(
        order,
        workshop=context.workshop,
        bookings=context.bookings,
        today=context.today,
        plates=context.plates,
        trial=_contained_trial(document, context) if search else None,
        savings=savings,
        timed=context.timed,
        contain=context.contain,
        budget=context.budget,
        terms=context.terms,
    )
    if isinstance(answer, SentBack):
        return answer
    return _with_what_the_maker_sets(answer, context)


def _with_what_the_maker_sets(answer: Quote, context: QuoteContext) -> Quote:
    """Give a quote its standing, and say where its day is a guess."""
    if answer.price.total < 0:
        raise NotUnderstood((Fault("/adjustments", Message("adjustments-below-nought")),))
    if context.calendar_fault:
        return _without_bookings(answer, context)
    if context.workshop.standing.trial:
        return answer
    if context.terms.standing is not None:
        return with_standing(answer, context.terms.standing)
    if context.for_maker and not waits_for_template(answer.order):
        return with_standing(answer, "quotation")
    return answer


def read_sent_order(document: JSON, context: QuoteContext) -> Order:
    """Read an order as it was sent; where it changes an offer, that lends its delivery area.

    Raises
    ------
    NotUnderstood
    """
    order = read_order(document, context.workshop)
    since, delivery = offer_changed_by(order, context), order.delivery
    if since is None or delivery.kind == "collect" or delivery.postcode is not None:
        return order
    return replace(order, delivery=replace(delivery, area=since.area))


def offer_changed_by(order: Order, context: QuoteContext) -> LinkedOffer | None:
    """Open the offer that an order changes, if any.

    Raises
    ------
    NotUnderstood
        It is none of ours.
    """
    if order.since is None:
        return None
    return offer_named_at("/since", order.since, context.tokens, context.today, not_ours=_NOT_OURS)


def _without_bookings(answer: Quote, context: QuoteContext) -> Quote:
    """Say that the day is a guess; the maker is told why."""
    message = Message("calendar-not-read")
    if context.for_maker:
        message = Message("calendar-not-read-because", why=context.calendar_fault)
    guess = with_standing(answer, "estimate")
    return replace(guess, depends_on=(message, *guess.depends_on))


def _contained_trial(document: dict[str, Any], context: QuoteContext) -> Trial:
    """Make what tries changes on an order; a fault of ours costs that one change."""
    trial = trial_of(document, partial(outcome_of, context=context))

    def contained(state: State) -> Outcome | None:
        with context.contain("remedy"):
            return trial(state)
        return None

    return contained


def outcome_of(document: dict[str, Any], context: QuoteContext) -> Outcome:
    """Read a patched document anew and check it whole."""
    order = read_sent_order(document, context)
    stages = StageContext(
        context.workshop, context.bookings, context.today, context.plates, terms=context.terms
    )
    return Outcome(order, work_out(order, stages))
