"""The public ``/v1`` routes: each parses the request, calls one function, writes the answer."""

from __future__ import annotations

from pathlib import Path
from typing import Any, Final

from flask import Blueprint, Response, json, jsonify

from ledgerstone.api import guard, lane, metrics, pictures
from ledgerstone.api.app_context import AppContext
from ledgerstone.api.containing import contained
from ledgerstone.api.languages import request_speech, vary_by_language, with_language
from ledgerstone.api.problems import problem, problem_response
from ledgerstone.application.answering import answer_order, offer_changed_by
from ledgerstone.application.answers import write_drawings, write_quote, write_sent_back
from ledgerstone.application.choices import write_choices
from ledgerstone.application.context import QuoteContext
from ledgerstone.application.maker_terms import split_maker_terms
from ledgerstone.application.placings import write_placing
from ledgerstone.application.utilisation import draw_utilisation
from ledgerstone.drawing import missing_drawing
from ledgerstone.media_types import JSON_TYPE, PDF, PNG, SVG
from ledgerstone.quote import Quote, SentBack
from ledgerstone.wording import workshop_speech

_CONTRACT: Final = Path(__file__).with_name("openapi.yaml")


def routes(context: AppContext) -> Blueprint:
    """Make the ``/v1`` routes of one workshop."""
    v1 = Blueprint("v1", __name__, url_prefix="/v1")
    contract = _CONTRACT.read_bytes()

    @v1.get("/choices")
    def choices() -> Response:
        guard.must_accept_json()
        response = jsonify(write_choices(context.quote_context(), request_speech()))
        return vary_by_language(response, {})

    @v1.post("/quotes")
    def quotes() -> Response:
        guard.must_accept_json()
        quote_context = context.quote_context(for_maker=guard.claims_maker(context.settings))
        sent = guard.json_body()
        document, quote_context = split_maker_terms(with_language(sent), quote_context)
        minimal = guard.prefers_minimal()
        answer = answer_order(document, quote_context, search=not minimal)
        metrics.count_findings([finding.check for finding in answer.findings])
        with metrics.timed("write"):
            response = _answer(answer, document, quote_context)
        if minimal:
            response.headers["Preference-Applied"] = "return=minimal"
        return vary_by_language(response, sent)

    @v1.post("/placings")
    def placings() -> Response:
        guard.must_accept_json()
        body = write_placing(guard.json_body(), context.quote_context(), request_speech())
        return vary_by_language(jsonify(body), {})

    _drawing_routes(v1, context)

    @v1.get("/openapi.yaml")
    def openapi() -> Response:
        return Response(contract, content_type="application/yaml")

    return v1


def _drawing_routes(v1: Blueprint, context: AppContext) -> None:
    """Make the routes of drawings."""

    @v1.post("/drawings")
    def drawings() -> Response:
        guard.must_accept_json()
        quote_context = context.quote_context(for_maker=guard.claims_maker(context.settings))
        sent = guard.json_body()
        answer = answer_order(with_language(sent), quote_context, search=False)
        since = offer_changed_by(answer.order, quote_context)
        return vary_by_language(jsonify(write_drawings(answer, quote_context, since)), sent)

    @v1.get("/drawings/<token>/<name>.svg")
    def drawing(token: str, name: str) -> Response:
        return _drawing(token, name, SVG, context)

    @v1.get("/drawings/<token>/<name>.png")
    def picture(token: str, name: str) -> Response:
        return _drawing(token, name, PNG, context)

    @v1.get("/drawings/<token>/true-size.pdf")
    def true_size(token: str) -> Response:
        guard.must_accept(PDF)
        return pictures.true_size(token, context.tokens.open("drawing", token), context.workshop)


def _answer(answer: Quote | SentBack, document: dict[str, Any], context: QuoteContext) -> Response:
    if isinstance(answer, Quote):
        since = offer_changed_by(answer.order, context)
        body = write_quote(answer, context, since, document=document)
        return Response(json.dumps(body), mimetype=JSON_TYPE)
    return problem_response(write_sent_back(answer, document, context))


def _drawing(token: str, name: str, kind: str, context: AppContext) -> Response:
    guard.must_accept(kind)
    if name == "stress" and kind == SVG:
        return _stress(token, context)
    return pictures.drawing(
        name, kind, token, context.tokens.open("drawing", token), context.workshop
    )


def _stress(token: str, context: AppContext) -> Response:
    guard.must_be_maker(context.settings)
    content = context.tokens.open("drawing", token)
    number = pictures.slab_number(content)
    if number is None:
        return problem(404, pictures.NO_SLAB)

    def draw() -> str | Response:
        with contained("drawing"):
            return draw_utilisation(
                content["slabs"], number, context.workshop, context.cache, lane.budget()
            )
        speech = workshop_speech(context.workshop.workshop.language, context.workshop)
        return pictures.missing(missing_drawing(speech), SVG)

    made_of = ("stress", number, token)
    return pictures.cached_drawing(made_of, context.workshop, SVG, draw, how="private")
