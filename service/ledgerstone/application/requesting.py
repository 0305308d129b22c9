"""“I'd like this one”: a customer's request becomes one letter to the workshop."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from email.message import EmailMessage
from typing import Any

from marshmallow import ValidationError

from ledgerstone.application.context import QuoteContext
from ledgerstone.application.opening import stands
from ledgerstone.codec.fields import field_name
from ledgerstone.codec.links import LinkedOffer, link_of, offer_named_at
from ledgerstone.codec.order_in import walk
from ledgerstone.codec.request_schemas import RequestSchema
from ledgerstone.codec.service_schemas import REQUESTED
from ledgerstone.errors import Fault, NotUnderstood
from ledgerstone.message import Message
from ledgerstone.papers.requested import Request, request_letter
from ledgerstone.wording import Listed, Money, Speech, Value

_NO_QUOTE = Message("no-quote-to-ask-for")
Post = Callable[[EmailMessage], None]


_SCHEMA = RequestSchema()


def send_request(
    document: object, context: QuoteContext, post: Post, speech: Speech
) -> dict[str, str]:
    """Send one letter to the workshop's address; nothing of it is stored.

    Raises
    ------
    NotUnderstood, RequestNotSent
    """
    request_body = _read(document)
    offer = offer_named_at(
        "/token", request_body["token"], context.tokens, context.today, not_ours=_NO_QUOTE
    )
    request = Request(
        name=request_body["name"],
        reach=request_body["reach"],
        note=request_body.get("note", ""),
        reference=offer.name,
        total=Money(offer.currency, offer.total),
        quote=tuple(_offer_facts(offer, request_body["token"], context)),
    )
    post(request_letter(request, context.workshop))
    workshop = context.workshop.workshop.name
    written: dict[str, str] = REQUESTED.dump(
        {
            "reference": offer.name,
            "says": speech.say(Message("request-sent", offer=offer.name, workshop=workshop)),
        }
    )
    return written


def _read(document: object) -> dict[str, Any]:
    if not isinstance(document, Mapping):
        raise NotUnderstood.whole(Message("request-not-object"))
    try:
        request_body: dict[str, Any] = _SCHEMA.load(document)
    except ValidationError as fault:
        raise NotUnderstood.of(walk("", fault.messages)) from None
    blank = [
        Fault(f"/{key}", Message("field-missing", field=field_name(field), verb="enter"))
        for key, field in (
            ("name", "your-name"),
            ("reach", "an-email-address-or-a-telephone-number"),
        )
        if not request_body[key]
    ]
    if blank:
        raise NotUnderstood(tuple(blank))
    return request_body


def _offer_facts(offer: LinkedOffer, token: str, context: QuoteContext) -> list[Message]:
    link = link_of(token, context.workshop)
    names: list[Value] = [
        slab.get("label") or Message("slab-numbered", number=i + 1)
        for i, slab in enumerate(offer.order.get("slabs", []))
    ]
    still = "yes" if stands(offer, context) else "no"
    return [
        Message("request-offer", standing=str(offer.standing), offer=offer.name),
        Message("request-of", slabs=Listed(tuple(names), joined="comma")),
        Message("request-total", total=Money(offer.currency, offer.total)),
        Message("request-ready", ready=offer.ready_on, by=offer.if_ordered_by),
        Message("request-offered", issued=offer.issued, stands=still),
        *([Message("request-area", area=offer.area)] if offer.area else []),
        Message("request-link", link=link) if link else Message("request-token", token=token),
    ]
