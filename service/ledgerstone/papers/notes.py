"""Short letters about an offer that is made: a reminder, and the request for the deposit."""

from __future__ import annotations

from dataclasses import dataclass, replace
from datetime import date
from decimal import Decimal
from typing import Literal

from ledgerstone.message import Message, Money, Value
from ledgerstone.papers.sheet import headed
from ledgerstone.terms import trial_message
from ledgerstone.wording import Speech, workshop_speech
from ledgerstone.workshop.records import Workshop


@dataclass(frozen=True, slots=True, kw_only=True)
class NoteFacts:
    """What a short letter is about.

    Attributes
    ----------
    ready_on
        The day that is kept for the order; None if none is to be had.
    pay_by
        By when its deposit is to be here, and until when the day is kept.
    """

    reference: str
    standing: Literal["estimate", "quotation"]
    currency: str
    total: Decimal
    deposit: Decimal
    valid_until: date
    ready_on: date | None
    pay_by: date
    link: str
    customer: str


@dataclass(frozen=True, slots=True)
class Note:
    """A short letter as plain text, and the values that the profile lacks, for the maker."""

    subject: str
    text: str
    lacks: str | None = None


def reminder(facts: NoteFacts, workshop: Workshop, speech: Speech) -> Note:
    """Write a reminder of two lines about an offer without an answer."""
    total = Money(facts.currency, facts.total)
    asks = Message(
        "note-reminder",
        reference=facts.reference,
        standing=facts.standing,
        total=total,
        until=facts.valid_until,
    )
    subject = headed(Message("note-reminder-subject", reference=facts.reference), workshop)
    return _note(subject, [asks], facts, workshop, speech)


def deposit_request(facts: NoteFacts, workshop: Workshop, speech: Speech) -> Note:
    """Write what is to be paid now and how, until when the day is held, and what is due later."""
    offer = workshop.offer
    deposit = Money(facts.currency, facts.deposit)
    lines: list[Message | str] = [
        Message("note-thanks", reference=facts.reference),
        Message("note-deposit", deposit=deposit, by=facts.pay_by, reference=facts.reference),
    ]
    if offer.payment is not None:
        lines.append(offer.payment)
    if facts.ready_on is not None:
        lines.append(Message("note-held", ready=facts.ready_on))
    else:
        lines.append(Message("note-day-open"))
    balance = Money(facts.currency, facts.total - facts.deposit)
    if facts.total > facts.deposit:
        due = offer.balance_due or ""
        due_is = "set" if due else "open"
        lines.append(Message("note-balance", balance=balance, due_is=due_is, due=due))
    subject = Message("note-deposit-subject", reference=facts.reference)
    note = _note(subject, lines, facts, workshop, speech)
    return replace(note, lacks=_lacks(workshop))


def _lacks(workshop: Workshop) -> str | None:
    """State what a request for a deposit needs and the profile lacks, in its language."""
    wanted = {"payment": workshop.offer.payment, "balance_due": workshop.offer.balance_due}
    names = [name for name, value in wanted.items() if value is None]
    if not names:
        return None
    both = "both" if len(names) > 1 else names[0]
    speech = workshop_speech(workshop.workshop.language, workshop)
    return speech.say(Message("note-lacks", what=both))


def _note(
    subject: Value,
    lines: list[Message | str] | list[Message],
    facts: NoteFacts,
    workshop: Workshop,
    speech: Speech,
) -> Note:
    name = " ".join(facts.customer.split())
    greeting = Message("note-greeting", named="yes" if name else "no", name=name)
    body = "\n".join(speech.say(line) for line in lines)
    identity = workshop.workshop
    trial = speech.say(trial_message(workshop)) if workshop.standing.trial else ""
    parts = [trial, speech.say(greeting), body, facts.link, f"{identity.name}\n{identity.ring}"]
    return Note(speech.value(subject), "\n\n".join(part for part in parts if part) + "\n")
