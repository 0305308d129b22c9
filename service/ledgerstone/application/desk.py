"""What the desk has to know of its workshop before it writes an offer."""

from __future__ import annotations

from datetime import date
from typing import Any

from ledgerstone.codec.desk_schemas import DESK
from ledgerstone.workshop.records import Workshop


def write_desk(workshop: Workshop, today: date, *, drafts: bool) -> dict[str, Any]:
    """Write the day at the workshop, and what an offer has where the maker sets nothing."""
    offer = workshop.offer
    written: dict[str, Any] = DESK.dump(
        {
            "today": today,
            "margin_percent": workshop.rates.margin_percent,
            "standing": offer.standing,
            "valid_days": offer.valid_days,
            "drafts": drafts,
        }
    )
    return written
