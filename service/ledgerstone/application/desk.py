"""The desk's starting values: today, and the defaults of an offer."""

from __future__ import annotations

from datetime import date
from typing import Any

from ledgerstone.codec.desk_schemas import DESK
from ledgerstone.workshop.records import Workshop


def write_desk(workshop: Workshop, today: date, *, drafts: bool) -> dict[str, Any]:
    """Return the workshop's day, and the defaults of an offer."""
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
