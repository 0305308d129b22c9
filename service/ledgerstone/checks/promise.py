"""Checks of what the workshop can promise: where it delivers, and by which day."""

from __future__ import annotations

from collections.abc import Iterable

from ledgerstone.checks.finding import Finding
from ledgerstone.stages import Scheduled
from ledgerstone.transport import delivery_price, tidy_postcode
from ledgerstone.wording import day_text
from ledgerstone.workshop.records import Workshop

_OURS = "the workshop's own rule"
_HOW = {"pallet": "by pallet", "own-van": "by our own van", "fitted": "with fitting"}


def delivery_served(scheduled: Scheduled) -> Iterable[Finding]:
    """The workshop delivers to that postcode, in that way."""
    planned = scheduled.planned
    order, workshop = planned.order, planned.workshop
    delivery = order.delivery
    if delivery.kind == "collect":
        return
    how = _HOW[delivery.kind]
    if delivery.postcode is None and planned.area is None:
        says = f"Enter the postcode, so that delivery {how} can be priced, or collect the order."
        yield _stopped("postcode-needed", says, "/delivery")
    elif _is_no_postcode(delivery.postcode, workshop):
        says = (
            f"“{delivery.postcode}” is not a full postcode. Enter the full postcode, or choose"
            " “I collect it”."
        )
        yield _stopped("postcode-unknown", says, "/delivery/postcode")
    elif planned.area is None:
        says = f"We do not deliver to {delivery.postcode}."
        yield _stopped("area-not-served", says, "/delivery/postcode")
    elif delivery_price(order, planned.area) is None:
        says = f"We do not deliver {how} to {planned.area.name}."
        yield _stopped("way-not-served", says, "/delivery/kind")


def _is_no_postcode(text: str | None, workshop: Workshop) -> bool:
    return text is not None and tidy_postcode(text, workshop.workshop.country) is None


def _stopped(check: str, says: str, pointer: str) -> Finding:
    return Finding(check, "stops", says, _OURS, at=(pointer,))


def has_a_day(scheduled: Scheduled) -> Iterable[Finding]:
    """There is a day by which it can be made."""
    if scheduled.lead_time is not None:
        return
    yield Finding(
        "no-day-free",
        "stops",
        "Our calendar has no day by which this could be made, so we promise no day. Write to us,"
        " and we will look at it together.",
        "the workshop's calendar",
    )


def in_time(scheduled: Scheduled) -> Iterable[Finding]:
    """Whether the order can be there by the day it is needed: yes or no."""
    order = scheduled.planned.order
    if order.needed_by is None or not scheduled.lead_time is not None:
        return
    arrives = scheduled.lead_time.arrives_latest
    late = (arrives - order.needed_by).days
    says = (
        f"You need it by {day_text(order.needed_by)}; ordered today it can be with you by"
        f" {day_text(arrives)}."
    )
    if order.needed_by < scheduled.lead_time.if_ordered_by:
        says = "That date has passed. Enter a later one."
    yield Finding(
        "needed-too-soon" if late > 0 else "in-time",
        "stops" if late > 0 else "note",
        says,
        "the workshop's calendar",
        at=("/needed_by",),
        measured={"arrives_on": arrives.isoformat()},
        limit={"needed_by": order.needed_by.isoformat()},
    )
