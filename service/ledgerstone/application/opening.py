"""A quote opened again from its link: as offered, whether it stands, and what it is today."""

from __future__ import annotations

from collections.abc import Iterable
from datetime import timedelta
from typing import Any

from ledgerstone.application.answering import answer_order
from ledgerstone.application.answers import quote_members, sent_back_members
from ledgerstone.application.context import QuoteContext
from ledgerstone.application.drawings import Annotations, drawing_members
from ledgerstone.codec.faults_out import fault_members
from ledgerstone.codec.links import Offer, link_of
from ledgerstone.codec.opened_schemas import OPENED_QUOTE
from ledgerstone.errors import NotUnderstood, TooIntricate
from ledgerstone.quote import Quote, SentBack
from ledgerstone.schedule import KNOWN_FOR, calendar_fingerprint
from ledgerstone.wording import day_text, workshop_speech
from ledgerstone.workshop.records import Workshop

# What takes an offer back; changed rates do not, before its last day.
_ENDS = ("expired", "revoked", "no-longer-offered")


def write_opened(offer: Offer, token: str, context: QuoteContext) -> dict[str, Any]:
    """Write an offer as it was made, whether it still stands, and what it would be today.

    An offer stands until its last day even where rates have changed since.
    """
    still = stands(offer, context)
    written: dict[str, Any] = OPENED_QUOTE.dump(
        {
            "reference": offer.reference,
            "revision": offer.revision or None,
            "token": token,
            "link": link_of(token, context.workshop),
            "order": offer.order,
            "delivery_area": offer.area,
            "issued": offer.issued,
            "valid_until": offer.valid_until,
            "standing": offer.standing,
            "price": offer,
            "lead_time": offer,
            "stands": still,
            "says": _says(offer, stands=still),
            "because": list(_because(offer, context)),
            **_today(offer, token, context),
        }
    )
    return written


def stands(offer: Offer, context: QuoteContext) -> bool:
    """Say whether an offer is still to be had at its price."""
    return not any(reason["reason"] in _ENDS for reason in _because(offer, context))


def _says(offer: Offer, *, stands: bool) -> str:
    made = f"Offered on {day_text(offer.issued)} as {offer.standing} {offer.name}"
    if stands:
        return f"{made}. It stands until {day_text(offer.valid_until)}."
    return f"{made}. It no longer stands; today's answer is below."


def _because(offer: Offer, context: QuoteContext) -> Iterable[dict[str, str]]:
    """Everything that has happened to an offer since it was made, each with its reason."""
    revoked = context.workshop.offer.revoke_before
    if context.today > offer.valid_until:
        days = (context.today - offer.valid_until) // timedelta(days=1)
        ago = "yesterday" if days == 1 else f"{days} days ago"
        yield _reason("expired", f"Its last day was {day_text(offer.valid_until)}, {ago}.")
    if revoked is not None and offer.issued < revoked:
        before = day_text(revoked)
        yield _reason("revoked", f"We have taken back the prices we gave before {before}.")
    for what in withdrawn(offer, context.workshop):
        yield _reason("no-longer-offered", f"We no longer offer {what}.")
    if offer.fingerprint != context.workshop.fingerprint:
        yield _reason("rates-changed", "Our rates or our choices have changed since.")
    if _calendar_changed(offer, context):
        says = "Our calendar has changed since, so the day may be another one."
        yield _reason("calendar-changed", says)


def _calendar_changed(offer: Offer, context: QuoteContext) -> bool:
    """Whether something else is booked up to the day offered, as far back as that is known."""
    if not offer.calendar or context.calendar_fault or context.today - offer.issued > KNOWN_FOR:
        return False
    now = calendar_fingerprint(
        context.workshop, context.bookings or (), offer.issued, offer.ready_on
    )
    return now != offer.calendar


def _reason(reason: str, says: str) -> dict[str, str]:
    return {"reason": reason, "says": says}


def withdrawn(offer: Offer, workshop: Workshop) -> Iterable[str]:
    """Name what an offer is made of that the workshop offers no more."""
    shades = {shade.name for shade in workshop.palette}
    sealers = {sealer.name for sealer in workshop.sealers}
    surfaces = {finish.surface for finish in workshop.finishes}
    slabs = offer.order.get("slabs", ())
    for name in dict.fromkeys(slab["shade"].get("name") for slab in slabs):
        if name is not None and name not in shades:
            yield f"the shade “{name}”"
    for name in dict.fromkeys(slab["finish"]["sealer"] for slab in slabs):
        if name not in sealers:
            yield f"the sealer “{name}”"
    for name in dict.fromkeys(slab["finish"]["surface"] for slab in slabs):
        if name not in surfaces:
            yield f"the surface “{name}”"
    if offer.order.get("heated_curing") and workshop.tent is None:
        yield "heated curing"
    if offer.area is not None and offer.area not in {area.name for area in workshop.areas}:
        yield f"delivery to the area “{offer.area}”"


def _today(offer: Offer, token: str, context: QuoteContext) -> dict[str, Any]:
    """Write what the same order is answered today, as a change to the offer."""
    document = {**offer.order, "since": token}
    own = context.workshop.workshop.language
    speech = workshop_speech(offer.order.get("language", own), context.workshop)
    try:
        answer = answer_order(document, context, search=False)
    except NotUnderstood as fault:
        return {
            "today": {"kind": "not-understood", "body": fault_members(fault, speech)},
            "drawings": {},
        }
    except TooIntricate as fault:
        return {
            "today": {"kind": "too-intricate", "body": {"detail": speech.say(fault.message)}},
            "drawings": {},
        }
    annotations = Annotations(reference=offer.name, issued=offer.issued, findings=answer.findings)
    return {
        "today": todays(answer, document, offer, context),
        "drawings": drawing_members(
            answer.order, answer.shapes, context.workshop, context.tokens, annotations
        ),
    }


def todays(
    answer: Quote | SentBack, document: dict[str, Any], offer: Offer, context: QuoteContext
) -> dict[str, Any]:
    """Write one answer of today with its kind beside it."""
    if isinstance(answer, Quote):
        body = quote_members(answer, context, offer)
        return {"kind": "quote", "body": body}
    return {"kind": "sent-back", "body": sent_back_members(answer, document, context)}
