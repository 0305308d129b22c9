"""The routes: read, call one function, write."""

from __future__ import annotations

import time
from dataclasses import dataclass, field
from datetime import date
from typing import Any, Final

from flask import Blueprint, Response, json, jsonify

from ledgerstone.api import guard, metrics, pictures
from ledgerstone.api.booked import Booked
from ledgerstone.api.problems import problem, problem_response
from ledgerstone.api.settings import Settings
from ledgerstone.application.answering import Desk
from ledgerstone.application.answers import write_drawings, write_quote, write_sent_back
from ledgerstone.application.choices import write_choices
from ledgerstone.application.drawings import draw_used
from ledgerstone.codec.tokens import Tokens
from ledgerstone.contract.openapi import document_text
from ledgerstone.papers import Templates
from ledgerstone.quote import Quote, SentBack
from ledgerstone.stages import StageCache
from ledgerstone.workshop.records import Workshop

SHOP: Final = "ledgerstone.shop"  # where an app keeps it


@dataclass(frozen=True, slots=True)
class Shop:
    """What every route works with: the settings, the profile, the links' signer."""

    settings: Settings
    workshop: Workshop
    tokens: Tokens
    templates: Templates
    booked: Booked
    plates: StageCache = field(default_factory=StageCache)

    def today(self) -> date:
        """Return the day it is at the workshop."""
        return self.settings.today(self.workshop.workshop.timezone)

    def desk(self, *, makers: bool = False) -> Desk:
        """Return what answers an order today; the maker's own answers are quotations."""
        today = self.today()
        booked = self.booked.now(today)
        return Desk(
            self.workshop,
            today,
            booked.known,
            plates=self.plates,
            tokens=self.tokens,
            makers=makers,
            not_known=booked.says,
            timed=metrics.stage,
        )

    def stands(self) -> dict[str, Any]:
        """Tell for readiness what it answers from: the profile, and whatever else comes in."""
        told: dict[str, Any] = {"profile": self.workshop.fingerprint}
        if self.booked.path is None:
            return told
        booked = self.booked.now(self.today())
        if booked.says:
            calendar = {"status": "not-read", "says": booked.says}
        else:
            calendar = {"status": "read", "bookings": booked.fingerprint}
        age_hours = self.booked.age_hours(time.time())
        aged = {} if age_hours is None else {"age_hours": round(age_hours, 1)}
        return {**told, "calendar": {**calendar, **aged}}


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
        metrics.count_findings([finding.check for finding in answer.findings])
        with metrics.stage("write"):
            response = _answer(answer, document, shop, desk)
        if minimal:
            response.headers["Preference-Applied"] = "return=minimal"
        return response

    _drawing_routes(v1, shop)

    @v1.get("/openapi.yaml")
    def openapi() -> Response:
        return Response(document_text(), content_type="application/yaml")

    return v1


def _drawing_routes(v1: Blueprint, shop: Shop) -> None:
    """Make the routes of drawings."""

    @v1.post("/drawings")
    def drawings() -> Response:
        guard.must_accept_json()
        desk = shop.desk(makers=guard.claims_maker(shop.settings))
        answer = desk.answer(guard.json_body(), search=False)
        since = desk.since(answer.order)
        return jsonify(write_drawings(answer, shop.workshop, shop.tokens, since))

    @v1.get("/drawings/<token>/<name>.svg")
    def drawing(token: str, name: str) -> Response:
        return _drawing(token, name, pictures.SVG, shop)

    @v1.get("/drawings/<token>/<name>.png")
    def picture(token: str, name: str) -> Response:
        return _drawing(token, name, pictures.PNG, shop)

    @v1.get("/drawings/<token>/true-size.pdf")
    def true_size(token: str) -> Response:
        guard.must_accept(pictures.PDF)
        return pictures.true_size(token, shop.tokens.open("drawing", token), shop.workshop)


def _answer(answer: Quote | SentBack, document: dict[str, Any], shop: Shop, desk: Desk) -> Response:
    if isinstance(answer, Quote):
        since = desk.since(answer.order)
        body = write_quote(
            answer, shop.workshop, shop.tokens, since, document=document, makers=desk.makers
        )
        return Response(json.dumps(body), mimetype="application/json")
    return problem_response(write_sent_back(answer, document, shop.workshop, shop.tokens))


def _drawing(token: str, name: str, kind: str, shop: Shop) -> Response:
    guard.must_accept(kind)
    if name == "stress" and kind == pictures.SVG:
        return _stress(token, shop)
    return pictures.drawing(name, kind, token, shop.tokens.open("drawing", token), shop.workshop)


def _stress(token: str, shop: Shop) -> Response:
    guard.must_be_maker(shop.settings)
    content = shop.tokens.open("drawing", token)
    number = pictures.slab_number(content)
    if number is None:
        return problem(404, pictures.NO_SLAB)

    def draw() -> str:
        return draw_used(content["slabs"], number, shop.workshop, shop.plates)

    made_of = ("stress", number, token)
    return pictures.kept(made_of, shop.workshop, pictures.SVG, draw, how="private")
