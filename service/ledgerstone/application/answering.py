"""From a JSON document to its answer: read the order, quote it, and search for remedies."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from functools import partial
from typing import Any

from ledgerstone.application.context import QuoteContext
from ledgerstone.codec.left_open import left_open_as_in
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
    run_stages,
    run_stages_as_left,
    with_standing,
)
from ledgerstone.remedies import Outcome, State, Trial
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
    effort_of: Callable[[Order], float] = _nothing,
) -> Quote | SentBack:
    """Answer an order given as a JSON document.

    Parameters
    ----------
    search
        Whether to search for remedies if it is sent back.
    savings
        Whether to search for ways to save if it quotes.
    effort_of
        Units of work that the rest of the request will take, such as drawings of the answer.

    Raises
    ------
    NotUnderstood, TooIntricate
    """
    with context.timed("parse"):
        order = read_sent_order(document, context)
    context.set_aside(effort_of(order), len(order.slabs))
    answer = quote(
        order,
        context.of_stages,
        trial=_contained_trial(document, context) if search else None,
        savings=savings,
        timed=context.timed,
        contain=context.contain,
        budget=context.budget,
    )
    if isinstance(answer, SentBack):
        return answer
    return _with_what_the_maker_sets(answer, context)


def _with_what_the_maker_sets(answer: Quote, context: QuoteContext) -> Quote:
    """Set a quote's standing, and note if its ready day is a guess."""
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
    """Read an order.

    One that changes an earlier offer takes its delivery area from it, and what was left open in it.

    Raises
    ------
    NotUnderstood
    """
    order = read_order(document, context.workshop)
    since, delivery = offer_changed_by(order, context), order.delivery
    if since is None:
        return order
    order = _left_open_as_in(order, since, context)
    if delivery.kind == "collect" or delivery.postcode is not None:
        return order
    return replace(order, delivery=replace(delivery, area=since.area))


def _left_open_as_in(order: Order, offer: LinkedOffer, context: QuoteContext) -> Order:
    """Take over what a changed offer left open; where that is no longer read, as it was sent."""
    try:
        offered = read_order(offer.order, context.workshop)
    except NotUnderstood:
        return order
    return left_open_as_in(order, offered, offer.left_open)


def offer_changed_by(order: Order, context: QuoteContext) -> LinkedOffer | None:
    """Open the offer that an order changes, if any.

    Raises
    ------
    NotUnderstood
        Its token was not signed by this workshop.
    """
    if order.since is None:
        return None
    return offer_named_at("/since", order.since, context.tokens, context.today, not_ours=_NOT_OURS)


def _without_bookings(answer: Quote, context: QuoteContext) -> Quote:
    """State in a quote that its ready day is a guess, and to the maker why."""
    message = Message("calendar-not-read")
    if context.for_maker and context.calendar_fault is not None:
        message = Message("calendar-not-read-because", why=context.calendar_fault)
    guess = with_standing(answer, "estimate")
    return replace(guess, depends_on=(message, *guess.depends_on))


def _contained_trial(document: dict[str, Any], context: QuoteContext) -> Trial:
    """Return the function that tries a change; an internal fault loses that change only."""

    def contained(state: State) -> Outcome | None:
        sought = any("other-thickness" in slab.taken for slab in state.sent.slabs)
        check = partial(outcome_of, context=context, sought=sought)
        with context.contain("remedy"):
            return trial_of(document, check)(state)
        return None

    return contained


def outcome_of(document: dict[str, Any], context: QuoteContext, *, sought: bool) -> Outcome:
    """Parse a patched document and run every check on it.

    Parameters
    ----------
    sought
        Whether the order as sent needed another thickness than the usual; else the search for one
        would be repeated for every change.
    """
    order = read_sent_order(document, context)
    if sought:
        return Outcome(*run_stages_as_left(order, context.of_stages, lambda _: True))
    return Outcome(order, run_stages(order, context.of_stages))
