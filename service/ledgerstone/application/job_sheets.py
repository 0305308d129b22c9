"""Job sheets for a quote's token or an order: as JSON, HTML or PDF."""

from __future__ import annotations

from dataclasses import dataclass

from ledgerstone.application.answering import Desk
from ledgerstone.application.asks import Asked, AskSchema, answer_ask, read_ask
from ledgerstone.codec.tokens import Tokens
from ledgerstone.papers.job import Job
from ledgerstone.quote import SentBack

_SCHEMA = AskSchema()


@dataclass(frozen=True, slots=True)
class Foreman:
    """What a job is worked out with: the maker's desk, and the signer of links."""

    desk: Desk
    tokens: Tokens

    def job(self, document: object) -> Job | Asked:
        """Work out a job; what was asked, with its send-back, where the order cannot be made.

        Raises
        ------
        NotUnderstood
        """
        asked = answer_ask(read_ask(_SCHEMA, document), self.desk, self.tokens, search=True)
        quote, desk = asked.answer, self.desk
        if isinstance(quote, SentBack):
            return asked
        name = asked.offer.name if asked.offer is not None else ""
        return Job(name, quote, desk.workshop)
