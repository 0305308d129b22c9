"""Short letters about an offer, from its token: a reminder, and the request for the deposit."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from datetime import date
from types import MappingProxyType
from typing import Any, Final

from ledgerstone.application.answering import answer_order
from ledgerstone.application.context import QuoteContext
from ledgerstone.application.resolving import read_members
from ledgerstone.codec.desk_schemas import NOTE, NoteAskSchema
from ledgerstone.codec.links import LinkedOffer, link_of, offer_named_at
from ledgerstone.errors import Fault, NotUnderstood, TooIntricate
from ledgerstone.message import Message
from ledgerstone.papers.notes import Note, NoteFacts, deposit_request, reminder
from ledgerstone.quote import Quote
from ledgerstone.schedule import LeadTime, calendar_of
from ledgerstone.schedule.booking import day_at
from ledgerstone.wording import Speech, workshop_speech
from ledgerstone.workshop.records import Workshop
from ledgerstone.workshop.review.advice import links_left_out

_SCHEMA: Final = NoteAskSchema()
_NO_QUOTE: Final = Message("no-quote-to-write-of")
_NO_DEPOSIT: Final = Message("no-deposit-of-trial")
NOTE_KINDS: Final[Mapping[str, Callable[[NoteFacts, Workshop, Speech], Note]]] = MappingProxyType(
    {"reminder": reminder, "deposit": deposit_request}
)


def write_note(kind: str, document: object, context: QuoteContext) -> dict[str, Any]:
    """Write a short letter about an offer, in the language in which it was made.

    Raises
    ------
    NotUnderstood
        The token is not of an offer of this workshop, or a trial would ask for its deposit.
    """
    ask = read_members(_SCHEMA, document)
    offer = offer_named_at(
        "/token", ask["token"], context.tokens, context.today, not_ours=_NO_QUOTE
    )
    workshop = context.workshop
    if kind == "deposit" and workshop.standing.trial:
        raise NotUnderstood((Fault("/token", _NO_DEPOSIT),))
    language = offer.order.get("language", workshop.workshop.language)
    facts = _facts(offer, ask["token"], ask.get("customer", ""), context)
    note = NOTE_KINDS[kind](facts, workshop, workshop_speech(language, workshop))
    written: dict[str, Any] = NOTE.dump(note)
    return written


def _facts(offer: LinkedOffer, token: str, customer: str, context: QuoteContext) -> NoteFacts:
    lead = _lead_time_today(offer, token, context)
    ready_on = lead.ready_on if lead is not None else None
    if offer.if_ordered_by >= context.today:
        ready_on = offer.ready_on
    return NoteFacts(
        reference=offer.name,
        standing=offer.standing,
        currency=offer.currency,
        total=offer.total,
        deposit=offer.deposit,
        valid_until=offer.valid_until,
        ready_on=ready_on,
        pay_by=_pay_by(offer, lead, context),
        link="" if links_left_out(context.workshop) else link_of(token, context.workshop) or "",
        customer=customer,
    )


def _pay_by(offer: LinkedOffer, lead: LeadTime | None, context: QuoteContext) -> date:
    """Return the day by which the deposit is due: in some working days, before the work begins.

    It is never the day of the letter: the customer has one working day at least.
    """
    workshop, today = context.workshop, context.today
    calendar = calendar_of(workshop, ())
    days = [calendar.add_working_days(today, workshop.offer.deposit_days)]
    if lead is not None and lead.work:
        days.append(day_at(min(scheduled.starts for scheduled in lead.work)))
    return max(min(days), calendar.add_working_days(today, 1), offer.if_ordered_by)


def _lead_time_today(offer: LinkedOffer, token: str, context: QuoteContext) -> LeadTime | None:
    """Return the lead time if the order is placed today; None if the order is sent back."""
    try:
        answer = answer_order({**offer.order, "since": token}, context, search=False)
    except (NotUnderstood, TooIntricate):
        return None
    return answer.lead_time if isinstance(answer, Quote) else None
