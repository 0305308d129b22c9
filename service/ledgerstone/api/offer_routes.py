"""The routes of an offer once made: its link, the reply, the sheets, the request."""

from __future__ import annotations

from flask import Blueprint, Response, json

from ledgerstone.api import guard
from ledgerstone.api.routes import Shop
from ledgerstone.wire.links import open_offer
from ledgerstone.wire.opening import write_opened


def offer_routes(shop: Shop) -> Blueprint:
    """Make the ``/v1`` routes of offers that one workshop has made."""
    v1 = Blueprint("offers", __name__, url_prefix="/v1")

    @v1.get("/quotes/<token>")
    def quote(token: str) -> Response:
        guard.must_accept_json()
        desk = shop.desk()
        offer = open_offer(token, shop.tokens, desk.today)
        body = write_opened(offer, token, desk, shop.tokens)
        response = Response(json.dumps(body), mimetype="application/json")
        response.headers["X-Robots-Tag"] = "noindex"
        return response

    return v1
