"""Resolve a request for a reply or a sheet: a quote's token, or an order, to its answer."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass, replace
from typing import Any

from marshmallow import ValidationError

from ledgerstone.application.answering import answer_order, offer_changed_by
from ledgerstone.application.context import QuoteContext
from ledgerstone.application.maker_terms import refuse_beside_token, with_terms
from ledgerstone.application.opening import stands
from ledgerstone.codec.fields import Strict
from ledgerstone.codec.links import LinkedOffer, link_of, offer_named_at, offer_of, write_offer
from ledgerstone.codec.order_in import walk
from ledgerstone.errors import Fault, NotUnderstood
from ledgerstone.json_types import JSON
from ledgerstone.message import Listed, Message
from ledgerstone.order import Order
from ledgerstone.price import MakerTerms, Price
from ledgerstone.quote import Quote, SentBack, with_standing
from ledgerstone.terms import OfferStanding

_NO_QUOTE = Message("no-quote-to-write-of")


@dataclass(frozen=True, slots=True)
class Wanted:
    """Options of the answer that a request needs.

    Attributes
    ----------
    search
        Whether remedies are searched for if it is sent back.
    savings
        Whether ways to save are searched for.
    effort_of
        Units of work that the request takes after the answer.
    """

    effort_of: Callable[[Order], float]
    search: bool = True
    savings: bool = False

    def answer(self, document: JSON, context: QuoteContext) -> Quote | SentBack:
        """Answer an order with these options.

        Raises
        ------
        NotUnderstood, TooIntricate
        """
        return answer_order(
            document,
            context,
            search=self.search,
            savings=self.savings,
            effort_of=self.effort_of,
        )


@dataclass(frozen=True, slots=True)
class ResolvedRequest:
    """A resolved request: the order as JSON, its answer, and its offer with its link.

    Attributes
    ----------
    whole
        Whether the whole quote is as it was offered, or only what the link carries.
    since
        The offer that the quote changes, if any.
    """

    document: dict[str, Any]
    answer: Quote | SentBack
    offer: LinkedOffer | None = None
    link: str | None = None
    whole: bool = True
    since: LinkedOffer | None = None


def read_ask(schema: Strict, document: object) -> dict[str, Any]:
    """Read a request about an order or a token, with every fault at its pointer.

    Raises
    ------
    NotUnderstood
    """
    ask = read_members(schema, document)
    if ("token" in ask) == ("order" in ask):
        raise NotUnderstood.whole(Message("token-or-order"))
    return ask


def read_members(schema: Strict, document: object) -> dict[str, Any]:
    """Read a request's members, with every fault at its pointer.

    Raises
    ------
    NotUnderstood
    """
    if not isinstance(document, Mapping):
        raise NotUnderstood.whole(Message("ask-not-object"))
    try:
        ask: dict[str, Any] = schema.load(document)
    except ValidationError as fault:
        raise NotUnderstood.of(walk("", fault.messages)) from None
    return ask


def resolve(ask: Mapping[str, Any], context: QuoteContext, wanted: Wanted) -> ResolvedRequest:
    """Resolve a request: answer its order, or open its offer as it was made while it is valid.

    Raises
    ------
    NotUnderstood, TooIntricate
    """
    if "order" in ask:
        return _of_order(ask["order"], with_terms(ask, context), wanted, _standing(ask))
    refuse_beside_token(ask)
    offer = offer_named_at(
        "/token", ask["token"], context.tokens, context.today, not_ours=_NO_QUOTE
    )
    document = {**offer.order, "since": ask["token"]}
    try:
        return _of_offer(offer, document, context, wanted)
    except NotUnderstood as fault:
        gone = Listed(tuple(detail.message for detail in fault.faults), joined="comma")
        faults = (Fault("/token", Message("quote-not-understood-now", gone=gone)),)
        raise NotUnderstood(faults) from None


def _standing(ask: Mapping[str, Any]) -> OfferStanding | None:
    """Return the standing that is asked for; an estimate while the customer is asked anything.

    With assumed values alone it is an estimate unless the maker chooses.
    """
    if ask.get("missing"):
        return "estimate"
    if "standing" in ask:
        chosen: OfferStanding = ask["standing"]
        return chosen
    return "estimate" if ask.get("assumed") else None


def _of_order(
    sent: JSON,
    context: QuoteContext,
    wanted: Wanted,
    standing: OfferStanding | None,
) -> ResolvedRequest:
    try:
        answer = wanted.answer(sent, context)
        if standing is not None and isinstance(answer, Quote):
            trial = context.workshop.standing.trial
            answer = with_standing(answer, "estimate" if trial else standing)
        since = offer_changed_by(answer.order, context)
    except NotUnderstood as fault:
        faults = (Fault(f"/order{found.pointer}", found.message) for found in fault.faults)
        raise NotUnderstood(tuple(faults)) from None
    return _named(sent, answer, since, context)


def _of_offer(
    offer: LinkedOffer, document: dict[str, Any], context: QuoteContext, wanted: Wanted
) -> ResolvedRequest:
    """Answer an offer as on its own day; if it is no longer valid, today, as a change to it."""
    if stands(offer, context):
        day = replace(context, today=offer.issued, for_maker=False)
        then = wanted.answer(document, day)
        if isinstance(then, Quote):
            token = context.tokens.sign("quote", write_offer(offer))
            quote, whole = as_offered(then, offer)
            return ResolvedRequest(document, quote, offer, link_of(token, context.workshop), whole)
    return _named(document, wanted.answer(document, context), offer, context)


def _named(
    document: dict[str, Any],
    answer: Quote | SentBack,
    since: LinkedOffer | None,
    context: QuoteContext,
) -> ResolvedRequest:
    if isinstance(answer, SentBack):
        return ResolvedRequest(document, answer, since=since)
    offer = offer_of(answer, context.workshop, since)
    token = context.tokens.sign("quote", write_offer(offer))
    return ResolvedRequest(document, answer, offer, link_of(token, context.workshop), since=since)


def as_offered(quote: Quote, offer: LinkedOffer) -> tuple[Quote, bool]:
    """Set an offer's price and days on a quote of its order; return whether they were the same.

    They differ if rates have changed since: then the lines of the price are not known.
    """
    in_time = quote.lead_time.ready_on == offer.ready_on
    same = in_time and (bool(offer.lines) or quote.price.total == offer.total)
    price = Price(
        currency=offer.currency,
        lines=(offer.lines or quote.price.lines) if same else (),
        net=offer.net,
        tax=offer.tax,
        tax_percent=quote.price.tax_percent,
        total=offer.total,
        deposit=offer.deposit,
    )
    lead_time = replace(quote.lead_time, ready_on=offer.ready_on, if_ordered_by=offer.if_ordered_by)
    made = replace(
        with_standing(quote, offer.standing),
        price=price,
        lead_time=lead_time,
        issued=offer.issued,
        valid_until=offer.valid_until,
        terms=MakerTerms(adjustments=offer.adjustments, note=offer.note),
    )
    return made, same
