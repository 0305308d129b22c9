"""The maker's terms for one offer, which override the profile's."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date
from decimal import Decimal
from typing import Final, Literal

from ledgerstone.price.rounding import PriceLine


@dataclass(frozen=True, slots=True)
class MakerTerms:
    """The maker's hand in one offer.

    Attributes
    ----------
    adjustments
        Lines added after all others, before tax; below zero it is taken off. No other line
        changes for them.
    margin_percent
        In place of the profile's margin.
    deposit_round_to
        What the deposit steps by, in place of the profile's.
    note
        A few sentences to the customer.
    standing, valid_until
        In place of what they would be.
    """

    adjustments: tuple[PriceLine, ...] = ()
    margin_percent: Decimal | None = None
    deposit_round_to: Decimal | None = None
    note: str = ""
    standing: Literal["estimate", "quotation"] | None = None
    valid_until: date | None = None

    @property
    def sets_price(self) -> bool:
        """Whether the price is another one than the order's own."""
        return bool(self.adjustments) or self.margin_percent is not None


NO_TERMS: Final = MakerTerms()
