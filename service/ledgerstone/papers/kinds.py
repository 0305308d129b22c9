"""Every kind of paper: the source of its content, its layout, and its language.

A new paper is one entry here: a function from records to content, which is lists and texts with
messages in them, and the layout that sets it, ``texts/LAYOUT.html`` and ``texts/LAYOUT.typ``.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass
from types import MappingProxyType
from typing import Final, Literal

from ledgerstone.papers.approval import approval_sheet
from ledgerstone.papers.cards import carry_cards
from ledgerstone.papers.care import care_sheet
from ledgerstone.papers.fitting import fitting_sheet
from ledgerstone.papers.job_sheet import job_sheet
from ledgerstone.papers.records import PaperRecords
from ledgerstone.papers.sheet import Content

PaperLayout = Literal["sheet", "cards", "job_sheet"]
JOB: Final = "job-sheet"


@dataclass(frozen=True, slots=True)
class PaperKind:
    """One kind of paper.

    Attributes
    ----------
    content
        Makes it of an order's records.
    layout
        How it is set, and which schema writes it as JSON.
    reader
        Whether it is in the customer's language or the workshop's.
    search
        Whether remedies are searched for where the order is sent back.
    """

    content: Callable[[PaperRecords], Content]
    layout: PaperLayout = "sheet"
    reader: Literal["customer", "workshop"] = "customer"
    search: bool = False


PAPER_KINDS: Final[Mapping[str, PaperKind]] = MappingProxyType(
    {
        "approval": PaperKind(approval_sheet),
        "fitting": PaperKind(fitting_sheet),
        "care": PaperKind(care_sheet),
        "carry": PaperKind(carry_cards, "cards"),
        JOB: PaperKind(job_sheet, "job_sheet", "workshop", search=True),
    }
)
SHEETS: Final = tuple(kind for kind in PAPER_KINDS if kind != JOB)
