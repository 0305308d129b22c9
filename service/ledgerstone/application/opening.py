"""A quote opened from its link: as offered, whether it is still valid, and today's answer."""

from __future__ import annotations

from collections.abc import Iterable
from datetime import timedelta
from typing import Any

from ledgerstone.application.answering import answer_order
from ledgerstone.application.answers import quote_members, sent_back_members
from ledgerstone.application.context import QuoteContext
from ledgerstone.application.drawings import Annotations, drawing_members
from ledgerstone.application.told import told
from ledgerstone.codec.faults_out import fault_members
from ledgerstone.codec.links import LinkedOffer, link_of
from ledgerstone.codec.opened_schemas import OPENED_QUOTE
from ledgerstone.errors import NotUnderstood, TooIntricate
from ledgerstone.message import Message
from ledgerstone.quote import Quote, SentBack
from ledgerstone.schedule import KNOWN_FOR, calendar_fingerprint
from ledgerstone.wording import Speech, workshop_speech
from ledgerstone.workshop.records import Workshop

# Reasons that withdraw an offer; changed rates do not, before its last day.
_ENDS = ("expired", "revoked", "no-longer-offered")


def write_opened(offer: LinkedOffer, token: str, context: QuoteContext) -> dict[str, Any]:
    """Write an offer as it was made, whether it is still valid, and what it would be today.

    An offer is valid until its last day even if rates have changed since.
    """
    still = stands(offer, context)
    own = context.workshop.workshop.language
    speech = workshop_speech(offer.order.get("language", own), context.workshop)
    written: dict[str, Any] = OPENED_QUOTE.dump(
        {
            "reference": offer.reference,
            "revision": offer.revision or None,
            "token": token,
            "link": link_of(token, context.workshop),
            "note": offer.note or None,
            "order": offer.order,
            "delivery_area": offer.area,
            "issued": offer.issued,
            "valid_until": offer.valid_until,
            "standing": offer.standing,
            "price": offer,
            "lead_time": offer,
            "stands": still,
            "says": speech.say(_opened(offer, stands=still)),
            "because": [
                {"reason": reason, "says": speech.say(message)}
                for reason, message in _because(offer, context)
            ],
            **_today(offer, token, context, speech),
        }
    )
    return written


def stands(offer: LinkedOffer, context: QuoteContext) -> bool:
    """Return whether an offer is still valid at its price."""
    return not any(reason in _ENDS for reason, _ in _because(offer, context))


def _opened(offer: LinkedOffer, *, stands: bool) -> Message:
    issued, standing, name = offer.issued, str(offer.standing), offer.name
    if not stands:
        return Message("offer-stands-no-more", issued=issued, standing=standing, offer=name)
    until = offer.valid_until
    return Message("offer-stands", issued=issued, standing=standing, offer=name, valid_until=until)


def _because(offer: LinkedOffer, context: QuoteContext) -> Iterable[tuple[str, Message]]:
    """Yield what has changed since an offer was made, by reason."""
    revoked = context.workshop.offer.revoke_before
    if context.today > offer.valid_until:
        days = (context.today - offer.valid_until) // timedelta(days=1)
        yield "expired", Message("offer-expired", valid_until=offer.valid_until, days=days)
    if revoked is not None and offer.issued < revoked:
        yield "revoked", Message("offer-revoked", before=revoked)
    for what, name in withdrawn(offer, context.workshop):
        yield "no-longer-offered", Message("offer-withdrawn", what=what, name=name)
    if offer.fingerprint != context.workshop.fingerprint:
        yield "rates-changed", Message("offer-rates-changed")
    if _calendar_changed(offer, context):
        yield "calendar-changed", Message("offer-calendar-changed")


def _calendar_changed(offer: LinkedOffer, context: QuoteContext) -> bool:
    """Return whether the bookings up to the offered day have changed, as far as they are known."""
    if not offer.calendar or context.calendar_fault or context.today - offer.issued > KNOWN_FOR:
        return False
    now = calendar_fingerprint(
        context.workshop, context.bookings or (), offer.issued, offer.ready_on
    )
    return now != offer.calendar


def withdrawn(offer: LinkedOffer, workshop: Workshop) -> Iterable[tuple[str, str]]:
    """Yield the kind and name of everything in an offer that the workshop no longer offers."""
    shades = {shade.name for shade in workshop.palette}
    sealers = {sealer.name for sealer in workshop.sealers}
    surfaces = {finish.surface for finish in workshop.finishes}
    slabs = offer.order.get("slabs", ())
    for name in dict.fromkeys(slab["shade"].get("name") for slab in slabs):
        if name is not None and name not in shades:
            yield "shade", name
    for name in dict.fromkeys(slab["finish"]["sealer"] for slab in slabs):
        if name not in sealers:
            yield "sealer", name
    for name in dict.fromkeys(slab["finish"]["surface"] for slab in slabs):
        if name not in surfaces:
            yield "surface", name
    if offer.order.get("heated_curing") and workshop.tent is None:
        yield "heated-curing", ""
    if offer.area is not None and offer.area not in {area.name for area in workshop.areas}:
        yield "area", offer.area


def _today(offer: LinkedOffer, token: str, context: QuoteContext, speech: Speech) -> dict[str, Any]:
    """Write today's answer to the same order, as a change to the offer."""
    document = {**offer.order, "since": token}
    try:
        answer = told(answer_order(document, context, search=False), context)
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
    answer: Quote | SentBack, document: dict[str, Any], offer: LinkedOffer, context: QuoteContext
) -> dict[str, Any]:
    """Write today's answer with its kind."""
    if isinstance(answer, Quote):
        body = quote_members(answer, context, offer)
        return {"kind": "quote", "body": body}
    return {"kind": "sent-back", "body": sent_back_members(answer, document, context)}
