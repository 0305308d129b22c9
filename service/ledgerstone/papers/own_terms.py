"""The maker's own terms, as letters and sheets have them."""

from __future__ import annotations

from ledgerstone.message import Message
from ledgerstone.wording import workshop_speech
from ledgerstone.workshop.records import Workshop


def own_terms(workshop: Workshop) -> list[str]:
    """Return the maker's terms in the workshop's language: when the rest is due, then their own."""
    due = workshop.offer.balance_due
    if due is None:
        return list(workshop.reply.terms)
    speech = workshop_speech(workshop.workshop.language, workshop)
    return [speech.say(Message("letter-balance", due=due)), *workshop.reply.terms]
