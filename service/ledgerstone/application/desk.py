"""The desk's starting values: today, and the defaults of an offer."""

from __future__ import annotations

from datetime import date
from typing import Any

from ledgerstone.codec.desk_schemas import DESK
from ledgerstone.message import Message
from ledgerstone.wording import Speech
from ledgerstone.wording.page import DESK_TEXTS as WORDS
from ledgerstone.wording.page import page_differences
from ledgerstone.workshop.records import Workshop
from ledgerstone.workshop.review.advice import links_left_out
from ledgerstone.workshop.standing import ProfileStanding


def write_desk(workshop: Workshop, speech: Speech, today: date, *, drafts: bool) -> dict[str, Any]:
    """Return the workshop's day, the defaults of an offer, and the country's own words."""
    offer, no_links = workshop.offer, links_left_out(workshop)
    written: dict[str, Any] = DESK.dump(
        {
            "today": today,
            "margin_percent": workshop.rates.margin_percent,
            "standing": offer.standing,
            "valid_days": offer.valid_days,
            "drafts": drafts,
            "no_links": None if no_links is None else speech.say(no_links),
            "invented": _invented(workshop.standing, speech),
            "words": page_differences(speech.language, workshop.place, speech.own, WORDS),
        }
    )
    return written


def _invented(found: ProfileStanding, speech: Speech) -> str | None:
    """How many values are still invented, while answers are trials; the form has them by table."""
    every = found.yours + found.usual + found.invented
    told = Message("desk-invented", invented=found.invented, every=every)
    return speech.say(told) if found.trial else None
