"""What a reply is written from: quotes with their links, or a send-back with the ways out of it."""

from __future__ import annotations

from dataclasses import dataclass

from ledgerstone.message import Money
from ledgerstone.quote import Quote, SentBack


@dataclass(frozen=True, slots=True, kw_only=True)
class QuoteView:
    """One quote, by its name and link.

    Attributes
    ----------
    name
        The reference, with its revision's letter.
    link
        Where the page opens it; None if the order is too long for one.
    pictures
        Where each slab's picture is, in their order; fewer where there are none.
    title, changes
        Which way it is of several, and what differs from the order as drawn.
    whole
        Whether the lines and the days on the road are as they were offered; of an offer made at
        other rates only its total, tax, deposit and day are known.
    """

    quote: Quote
    name: str
    link: str | None
    pictures: tuple[str, ...] = ()
    title: str = ""
    changes: tuple[str, ...] = ()
    whole: bool = True


@dataclass(frozen=True, slots=True)
class ChangeView:
    """One change of a sent-back order: its text, its price if known, its link."""

    says: str
    price: Money | None
    link: str | None


@dataclass(frozen=True, slots=True)
class FindingView:
    """One finding that stops an order, its remedies, and the findings that follow from it."""

    says: str
    ways: tuple[ChangeView, ...]
    following: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True, kw_only=True)
class SentBackView:
    """A send-back: every finding that stops it, and the one change that settles all.

    Attributes
    ----------
    all_at_once
        What makes it makeable, and whether that is more than a small change.
    """

    sent: SentBack
    findings: tuple[FindingView, ...]
    all_at_once: ChangeView | None = None
    is_bigger: bool = False
    why_not: str | None = None
    pictures: tuple[str, ...] = ()
