"""The routes: read, call one function, write."""

from __future__ import annotations

import hashlib
from dataclasses import dataclass, field
from datetime import date
from typing import Any

from flask import Blueprint, Response, json, jsonify, request

from ledgerstone import __version__
from ledgerstone.api import guard
from ledgerstone.api.problems import problem, problem_response
from ledgerstone.api.settings import Settings
from ledgerstone.order import Order
from ledgerstone.quote import Quote, SentBack
from ledgerstone.strength.slabs import Plates
from ledgerstone.wire.answering import Desk
from ledgerstone.wire.answers import drawing_links, write_quote, write_sent_back
from ledgerstone.wire.choices import write_choices
from ledgerstone.wire.drawings import draw, draw_used
from ledgerstone.wire.openapi import document_text
from ledgerstone.wire.order_in import read_order
from ledgerstone.wire.order_out import write_order
from ledgerstone.wire.tokens import Tokens
from ledgerstone.workshop.records import Workshop

_A_YEAR = 31_536_000
_SVG_POLICY = "default-src 'none'; img-src data:; style-src 'unsafe-inline'; sandbox"


@dataclass(frozen=True, slots=True)
class Shop:
    """What every route works with: the settings, the profile, the links' signer."""

    settings: Settings
    workshop: Workshop
    tokens: Tokens
    plates: Plates = field(default_factory=Plates)

    def today(self) -> date:
        """Return the day it is at the workshop."""
        return self.settings.today(self.workshop.workshop.timezone)

    def desk(self, *, makers: bool = False) -> Desk:
        """Return what answers an order today; the maker's own answers are quotations."""
        today = self.today()
        return Desk(self.workshop, today, plates=self.plates, tokens=self.tokens, makers=makers)

    def read(self) -> Order:
        """Read the order in the request's body."""
        return read_order(guard.json_body(), self.workshop)


def routes(shop: Shop) -> Blueprint:
    """Make the ``/v1`` routes of one workshop."""
    v1 = Blueprint("v1", __name__, url_prefix="/v1")

    @v1.get("/choices")
    def choices() -> Response:
        guard.must_accept_json()
        return jsonify(write_choices(shop.workshop))

    @v1.post("/quotes")
    def quotes() -> Response:
        guard.must_accept_json()
        desk = shop.desk(makers=guard.claims_maker(shop.settings))
        document = guard.json_body()
        minimal = guard.prefers_minimal()
        answer = desk.answer(document, search=not minimal)
        response = _answer(answer, document, shop, desk)
        if minimal:
            response.headers["Preference-Applied"] = "return=minimal"
        return response

    @v1.post("/drawings")
    def drawings() -> Response:
        guard.must_accept_json()
        order = shop.read()
        return jsonify(drawing_links(write_order(order)["slabs"], shop.workshop, shop.tokens))

    @v1.get("/drawings/<token>/<name>.svg")
    def drawing(token: str, name: str) -> Response:
        guard.must_accept("image/svg+xml")
        if name == "stress":
            guard.must_be_maker(shop.settings)
        return _drawing(token, name, shop)

    @v1.get("/health/live")
    def live() -> Response:
        return jsonify({"status": "live"})

    @v1.get("/health/ready")
    def ready() -> Response:
        return jsonify(
            {"status": "ready", "version": __version__, "profile": shop.workshop.fingerprint}
        )

    @v1.get("/openapi.yaml")
    def openapi() -> Response:
        return Response(document_text(), content_type="application/yaml")

    return v1


def _answer(answer: Quote | SentBack, document: dict[str, Any], shop: Shop, desk: Desk) -> Response:
    if isinstance(answer, Quote):
        body = write_quote(answer, shop.workshop, shop.tokens, desk.since(answer.order))
        return Response(json.dumps(body), mimetype="application/json")
    return problem_response(write_sent_back(answer, document, shop.workshop, shop.tokens))


def _drawing(token: str, name: str, shop: Shop) -> Response:
    """Answer one drawing; the ETag comes from the inputs, before anything is drawn."""
    number = request.args.get("slab", "0")
    content = shop.tokens.open("drawing", token)
    slabs = content.get("slabs", [])
    if not (number.isascii() and number.isdigit() and len(number) < 3 and int(number) < len(slabs)):
        return problem(404, "This order has no such slab.")
    made_of = f"{__version__}|{shop.workshop.fingerprint}|{name}|{int(number)}|{token}"
    etag = hashlib.sha256(made_of.encode()).hexdigest()[:32]
    response = Response(mimetype="image/svg+xml")
    response.set_etag(etag)
    if etag not in request.if_none_match.as_set(include_weak=True):
        drawn = _drawn(name, slabs, int(number), shop)
        if drawn is None:
            return problem(404, "There is no drawing of that name.")
        response.set_data(drawn)
    kept = "private" if name == "stress" else "public"
    response.headers["Cache-Control"] = f"{kept}, max-age={_A_YEAR}, immutable"
    response.headers["Content-Security-Policy"] = _SVG_POLICY
    response.make_conditional(request)
    return response


def _drawn(name: str, slabs: list[Any], number: int, shop: Shop) -> str | None:
    if name == "stress":
        return draw_used(slabs, number, shop.workshop, shop.plates)
    return draw(name, slabs, number, shop.workshop)
