"""Short letters about an offer that is made: a reminder, and the request for the deposit."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date
from decimal import Decimal
from typing import Literal

from ledgerstone.message import Message, Money
from ledgerstone.wording import Speech
from ledgerstone.workshop.records import Workshop


@dataclass(frozen=True, slots=True, kw_only=True)
class NoteFacts:
    """What a short letter is about.

    Attributes
    ----------
    ready_on, order_by
        The day, and the last day on which ordering still holds it; None where none is to be had.
    """

    reference: str
    standing: Literal["estimate", "quotation"]
    currency: str
    total: Decimal
    deposit: Decimal
    valid_until: date
    ready_on: date | None
    order_by: date | None
    link: str
    customer: str


@dataclass(frozen=True, slots=True)
class Note:
    """A short letter as plain text."""

    subject: str
    text: str


def reminder(facts: NoteFacts, workshop: Workshop, speech: Speech) -> Note:
    """Write two lines to whoever has not answered an offer."""
    total = Money(facts.currency, facts.total)
    asks = Message(
        "note-reminder",
        reference=facts.reference,
        standing=facts.standing,
        total=total,
        until=facts.valid_until,
    )
    subject = Message("note-reminder-subject", reference=facts.reference)
    return _note(subject, [asks], facts, workshop, speech)


def deposit_request(facts: NoteFacts, workshop: Workshop, speech: Speech) -> Note:
    """Write what is to be paid now and how, until when the day is held, and what is due later."""
    offer = workshop.offer
    deposit = Money(facts.currency, facts.deposit)
    lines: list[Message | str] = [
        Message("note-thanks", reference=facts.reference),
        Message("note-deposit", deposit=deposit, reference=facts.reference),
    ]
    if offer.payment is not None:
        lines.append(offer.payment)
    if facts.ready_on is not None and facts.order_by is not None:
        lines.append(Message("note-held", ready=facts.ready_on, by=facts.order_by))
    balance = Money(facts.currency, facts.total - facts.deposit)
    if facts.total > facts.deposit:
        due = offer.balance_due or ""
        told = "told" if due else "not-told"
        lines.append(Message("note-balance", balance=balance, told=told, due=due))
    subject = Message("note-deposit-subject", reference=facts.reference)
    return _note(subject, lines, facts, workshop, speech)


def _note(
    subject: Message,
    lines: list[Message | str] | list[Message],
    facts: NoteFacts,
    workshop: Workshop,
    speech: Speech,
) -> Note:
    name = " ".join(facts.customer.split())
    greeting = Message("note-greeting", named="yes" if name else "no", name=name)
    told = "\n".join(speech.say(line) for line in lines)
    mine = workshop.workshop
    parts = [speech.say(greeting), told, facts.link, f"{mine.name}\n{mine.telephone}"]
    return Note(speech.say(subject), "\n\n".join(part for part in parts if part) + "\n")
