"""What every paper is written from: one quote, its name, whose it is and whom it is for."""

from __future__ import annotations

from dataclasses import dataclass, field

from ledgerstone.containment import Contain, let_through
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
        Whom it is for; empty where nobody said.
    whole
        Whether the days on the road are as they were offered.
    speech
        What says its drawings' words; the paper's own language.
    contain
        Is entered for each drawing, whose fault costs that drawing alone.
    """

    name: str
    quote: Quote
    workshop: Workshop
    customer: str = ""
    whole: bool = True
    speech: Speech = field(default_factory=lambda: speech_in("en"))
    contain: Contain = let_through
