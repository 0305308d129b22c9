"""Checks of what the workshop can promise: where it delivers, and by which day."""

from __future__ import annotations

from collections.abc import Iterable

from ledgerstone.checks.finding import Finding
from ledgerstone.stages import Judged
from ledgerstone.transport import delivery_price, tidy_postcode
from ledgerstone.wording import Message
from ledgerstone.workshop.records import Workshop

_OURS = "the workshop's own rule"


def delivery_served(judged: Judged) -> Iterable[Finding]:
    """The workshop delivers to that postcode, in that way."""
    planned = judged.planned
    order, workshop = planned.order, planned.workshop
    delivery = order.delivery
    if delivery.kind == "collect":
        return
    if planned.area is None and delivery.postcode is None:
        message = Message("postcode-needed", way=delivery.kind)
        yield _stopped("postcode-needed", message, "/delivery")
    elif delivery.postcode is not None and _is_no_postcode(delivery.postcode, workshop):
        message = Message("postcode-unknown", postcode=delivery.postcode)
        yield _stopped("postcode-unknown", message, "/delivery/postcode")
    elif planned.area is None:
        message = Message("area-not-served", postcode=delivery.postcode or "")
        yield _stopped("area-not-served", message, "/delivery/postcode")
    elif delivery_price(order, planned.area) is None:
        message = Message("way-not-served", way=delivery.kind, area=planned.area.name)
        yield _stopped("way-not-served", message, "/delivery/kind")


def _is_no_postcode(text: str, workshop: Workshop) -> bool:
    return tidy_postcode(text, workshop.place) is None


def _stopped(check: str, message: Message, pointer: str) -> Finding:
    return Finding(check, "stops", message, _OURS, at=(pointer,))


def day_available(judged: Judged) -> Iterable[Finding]:
    """There is a day by which it can be made."""
    if judged.scheduled.lead_time is not None:
        return
    yield Finding(
        "no-day-free",
        "stops",
        Message("no-day-free"),
        "the workshop's calendar",
    )


def in_time(judged: Judged) -> Iterable[Finding]:
    """Whether the order can be there by the day it is needed: yes or no."""
    order = judged.planned.order
    if order.needed_by is None or judged.scheduled.lead_time is None:
        return
    arrives = judged.scheduled.lead_time.arrives_latest
    late = (arrives - order.needed_by).days
    message = Message(
        "needed-by", way=order.delivery.kind, needed_by=order.needed_by, arrives=arrives
    )
    if order.needed_by < judged.scheduled.lead_time.if_ordered_by:
        message = Message("needed-by-past")
    yield Finding(
        "needed-too-soon" if late > 0 else "in-time",
        "stops" if late > 0 else "note",
        message,
        "the workshop's calendar",
        at=("/needed_by",),
        measured={"arrives_on": arrives.isoformat()},
        limit={"needed_by": order.needed_by.isoformat()},
    )
