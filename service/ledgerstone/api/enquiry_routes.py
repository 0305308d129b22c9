"""The route of enquiries: a message in, the draft order out; nothing is stored."""

from __future__ import annotations

from flask import Blueprint, Response, json, request

from ledgerstone.api import guard
from ledgerstone.api.app_context import AppContext
from ledgerstone.application.enquiries import read_enquiry_document, read_message
from ledgerstone.codec.enquiry_schemas import LARGEST_MESSAGE_BYTES
from ledgerstone.media_types import EML, JSON_TYPE, TEXT


def enquiry_routes(context: AppContext) -> Blueprint:
    """Make the ``/v1`` route of one workshop's enquiries."""
    v1 = Blueprint("enquiries", __name__, url_prefix="/v1")

    @v1.post("/enquiries")
    def enquiries() -> Response:
        guard.must_be_maker(context.settings)
        guard.must_accept_json()
        request.max_content_length = LARGEST_MESSAGE_BYTES + 1
        if request.mimetype in (EML, TEXT):
            body = guard.plain_body(LARGEST_MESSAGE_BYTES)
            answer = read_message(_in_its_charset(body), context.workshop, context.today())
        else:
            document = guard.json_body(LARGEST_MESSAGE_BYTES)
            answer = read_enquiry_document(document, context.workshop, context.today())
        return Response(json.dumps(answer), mimetype=JSON_TYPE)

    return v1


def _in_its_charset(body: bytes) -> bytes | str:
    """Decode plain text by the charset of its content type; a message declares its own."""
    charset = request.mimetype_params.get("charset", "")
    if request.mimetype != TEXT or not charset:
        return body
    try:
        return body.decode(charset)
    except (LookupError, UnicodeError, ValueError):
        return body
