"""The routes of an offer once made: its link, the reply, the sheets, the request."""

from __future__ import annotations

from flask import Blueprint, Response, json

from ledgerstone.api import guard
from ledgerstone.api.routes import Shop
from ledgerstone.wire.links import open_offer
from ledgerstone.wire.opening import write_opened
from ledgerstone.wire.replying import Writer

_JSON, _EML = "application/json", "message/rfc822"


def offer_routes(shop: Shop) -> Blueprint:
    """Make the ``/v1`` routes of offers that one workshop has made."""
    v1 = Blueprint("offers", __name__, url_prefix="/v1")

    @v1.get("/quotes/<token>")
    def quote(token: str) -> Response:
        guard.must_accept_json()
        desk = shop.desk()
        offer = open_offer(token, shop.tokens, desk.today)
        body = write_opened(offer, token, desk, shop.tokens)
        response = Response(json.dumps(body), mimetype=_JSON)
        response.headers["X-Robots-Tag"] = "noindex"
        return response

    @v1.post("/replies")
    def replies() -> Response:
        guard.must_be_maker(shop.settings)
        kind = guard.accepted(_JSON, _EML)
        writer = Writer(shop.desk(makers=True), shop.tokens, shop.templates)
        document = guard.json_body()
        if kind == _EML:
            return _download(writer.draft(document), _EML, "reply.eml")
        return Response(json.dumps(writer.write(document)), mimetype=_JSON)

    return v1


def _download(content: bytes, mimetype: str, name: str) -> Response:
    response = Response(content, mimetype=mimetype)
    response.headers["Content-Disposition"] = f'attachment; filename="{name}"'
    return response
