"""A message becomes a draft order, as JSON members."""

from __future__ import annotations

from typing import Any, Final

from ledgerstone.application.resolving import read_ask
from ledgerstone.codec.enquiry_schemas import ENQUIRY, EnquiryAskSchema
from ledgerstone.enquiry import read_enquiry
from ledgerstone.errors import Fault, NotUnderstood
from ledgerstone.workshop.records import Workshop

_SCHEMA: Final = EnquiryAskSchema()


def read_asked(document: object, workshop: Workshop) -> dict[str, Any]:
    """Read the message in a JSON document.

    Raises
    ------
    NotUnderstood
    """
    return read_message(read_ask(_SCHEMA, document)["message"], workshop)


def read_message(message: bytes | str, workshop: Workshop) -> dict[str, Any]:
    """Read a whole message, or its body.

    Raises
    ------
    NotUnderstood
        It is empty.
    """
    if not message.strip():
        raise NotUnderstood((Fault("", "The message is empty."),))
    written: dict[str, Any] = ENQUIRY.dump(read_enquiry(message, workshop))
    return written
