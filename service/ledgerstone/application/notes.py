"""The short letters about an offer, from its token: a reminder, and the request for the deposit."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from types import MappingProxyType
from typing import Any, Final

from ledgerstone.application.answering import answer_order
from ledgerstone.application.context import QuoteContext
from ledgerstone.application.resolving import read_members
from ledgerstone.codec.desk_schemas import NOTE, NoteAskSchema
from ledgerstone.codec.links import LinkedOffer, link_of, offer_named_at
from ledgerstone.errors import NotUnderstood, TooIntricate
from ledgerstone.message import Message
from ledgerstone.papers.notes import Note, NoteFacts, deposit_request, reminder
from ledgerstone.quote import Quote
from ledgerstone.wording import Speech, workshop_speech
from ledgerstone.workshop.records import Workshop

_SCHEMA: Final = NoteAskSchema()
_NO_QUOTE: Final = Message("no-quote-to-write-of")
KINDS: Final[Mapping[str, Callable[[NoteFacts, Workshop, Speech], Note]]] = MappingProxyType(
    {"reminder": reminder, "deposit": deposit_request}
)


def write_note(kind: str, document: object, context: QuoteContext) -> dict[str, Any]:
    """Write a short letter about an offer, in the language in which it was made.

    Raises
    ------
    NotUnderstood
        The token is no offer of ours.
    """
    ask = read_members(_SCHEMA, document)
    offer = offer_named_at(
        "/token", ask["token"], context.tokens, context.today, not_ours=_NO_QUOTE
    )
    workshop = context.workshop
    language = offer.order.get("language", workshop.workshop.language)
    facts = _facts(offer, ask["token"], ask.get("customer", ""), context)
    note = KINDS[kind](facts, workshop, workshop_speech(language, workshop))
    written: dict[str, Any] = NOTE.dump(note)
    return written


def _facts(offer: LinkedOffer, token: str, customer: str, context: QuoteContext) -> NoteFacts:
    ready_on, order_by = offer.ready_on, offer.if_ordered_by
    held: tuple[Any, Any] = (ready_on, order_by)
    if order_by < context.today:
        held = _held_today(offer, token, context)
    return NoteFacts(
        reference=offer.name,
        standing=offer.standing,
        currency=offer.currency,
        total=offer.total,
        deposit=offer.deposit,
        valid_until=offer.valid_until,
        ready_on=held[0],
        order_by=held[1],
        link=link_of(token, context.workshop) or "",
        customer=customer,
    )


def _held_today(offer: LinkedOffer, token: str, context: QuoteContext) -> tuple[Any, Any]:
    """Return the day that can still be had, and until when; none where the order stops today."""
    try:
        answer = answer_order({**offer.order, "since": token}, context, search=False)
    except (NotUnderstood, TooIntricate):
        return None, None
    if not isinstance(answer, Quote):
        return None, None
    return answer.lead_time.ready_on, answer.lead_time.if_ordered_by
