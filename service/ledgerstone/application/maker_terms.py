"""The maker's terms for one offer: read from a request, refused without the maker's key."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace
from datetime import timedelta
from typing import Any, Final

from marshmallow import ValidationError

from ledgerstone.application.context import QuoteContext
from ledgerstone.codec.maker_terms_schemas import TERMS, MakerTermsSchema, maker_terms
from ledgerstone.codec.order_in import walk
from ledgerstone.errors import Fault, NotUnderstood
from ledgerstone.json_types import JSON
from ledgerstone.message import Message

LONGEST_DAYS: Final = 366
_SCHEMA = MakerTermsSchema()


def split_maker_terms(document: JSON, context: QuoteContext) -> tuple[JSON, QuoteContext]:
    """Split a document into the order and the maker's terms.

    Raises
    ------
    NotUnderstood
        The maker's key is missing, or the terms are not understood.
    """
    if not isinstance(document, dict):
        return document, context  # reported when the order is read
    given = {key: document[key] for key in sorted(TERMS & document.keys())}
    if not given:
        return document, context
    if not context.for_maker:
        alone = Message("for-the-maker-alone")
        raise NotUnderstood(tuple(Fault(f"/{key}", alone) for key in given))
    try:
        read: dict[str, Any] = _SCHEMA.load(given)
    except ValidationError as fault:
        raise NotUnderstood.of(walk("", fault.messages)) from None
    order = {key: value for key, value in document.items() if key not in TERMS}
    return order, with_terms(read, context)


def with_terms(read: Mapping[str, Any], context: QuoteContext) -> QuoteContext:
    """Return the context with the terms that were read.

    Raises
    ------
    NotUnderstood
        The offer's last day is past, or too far off.
    """
    terms = maker_terms(read)
    last = context.today + timedelta(days=LONGEST_DAYS)
    if terms.valid_until is not None and not context.today <= terms.valid_until <= last:
        message = Message("valid-until-out-of-reach", first=context.today, last=last)
        raise NotUnderstood((Fault("/valid_until", message),))
    return replace(context, terms=terms)


def refuse_beside_token(ask: Mapping[str, Any]) -> None:
    """Refuse terms beside a token: an offer that is made has its own terms.

    Raises
    ------
    NotUnderstood
    """
    given = sorted((TERMS - {"standing"}) & ask.keys())
    if given:
        message = Message("token-has-its-terms")
        raise NotUnderstood(tuple(Fault(f"/{key}", message) for key in given))
