"""What every paper is written from: one quote, its name, whose it is and whom it is for."""

from __future__ import annotations

from dataclasses import dataclass, field

from ledgerstone.containment import Contain, uncontained
from ledgerstone.quote import Quote
from ledgerstone.wording import Speech, speech_in
from ledgerstone.workshop.records import Workshop


@dataclass(frozen=True, slots=True, kw_only=True)
class PaperRecords:
    """The records of one paper.

    Attributes
    ----------
    name
        The quote's reference with its revision.
    customer
        Whom it is for; empty if not given.
    unanswered
        Questions that the customer has not answered yet, in the words they were asked.
    whole
        Whether the days on the road are as they were offered.
    speech
        Formats the drawings' messages, in the paper's language.
    contain
        Context manager for each drawing: an internal fault loses that drawing only.
    """

    name: str
    quote: Quote
    workshop: Workshop
    customer: str = ""
    unanswered: tuple[str, ...] = ()
    whole: bool = True
    speech: Speech = field(default_factory=lambda: speech_in("en"))
    contain: Contain = uncontained
