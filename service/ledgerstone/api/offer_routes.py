"""The routes of an offer once made: its link, the reply, the sheets, the request."""

from __future__ import annotations

import math
import time
from email.message import EmailMessage

from flask import Blueprint, Response, json, request

from ledgerstone.api import guard
from ledgerstone.api.app_context import AppContext
from ledgerstone.api.limits import Buckets, waits
from ledgerstone.api.problems import problem, problem_response
from ledgerstone.api.smtp import post_of
from ledgerstone.application.answers import write_sent_back
from ledgerstone.application.context import QuoteContext
from ledgerstone.application.opening import write_opened
from ledgerstone.application.replying import make_draft, make_reply
from ledgerstone.application.requesting import send_request
from ledgerstone.application.resolving import ResolvedRequest
from ledgerstone.application.sheets import SHEETS, make_sheet, write_sheet
from ledgerstone.codec.links import open_offer
from ledgerstone.papers.sheet import sheet_page, sheet_print
from ledgerstone.quote import SentBack

_JSON, _HTML, _PDF, _EML = "application/json", "text/html", "application/pdf", "message/rfc822"
_MOST_OF_ONE, _MOST_OF_ALL = 5, 30  # at once; then one a minute, in each worker for itself
_NO_REQUESTS = "This workshop takes no requests here. Write to {}."
_TOO_OFTEN = "That is a lot of requests at once. Ask again in {} s."
_SHEET_POLICY = "default-src 'none'; img-src data:; style-src 'unsafe-inline'"


class TooOften(Exception):
    """A caller has no letter left for now."""

    def __init__(self, wait_s: float) -> None:
        super().__init__(wait_s)
        self.wait_s = wait_s


def offer_routes(context: AppContext) -> Blueprint:
    """Make the ``/v1`` routes of offers that one workshop has made."""
    v1 = Blueprint("offers", __name__, url_prefix="/v1")

    @v1.get("/quotes/<token>")
    def quote(token: str) -> Response:
        guard.must_accept_json()
        today = context.quote_context()
        body = write_opened(open_offer(token, today.tokens, today.today), token, today)
        response = Response(json.dumps(body), mimetype=_JSON)
        response.headers["X-Robots-Tag"] = "noindex"
        return response

    @v1.post("/replies")
    def replies() -> Response:
        guard.must_be_maker(context.settings)
        kind = guard.accepted(_JSON, _EML)
        asked, templates = context.quote_context(for_maker=True), context.templates
        document = guard.json_body()
        if kind == _EML:
            return _download(make_draft(document, asked, templates), _EML, "reply.eml")
        return Response(json.dumps(make_reply(document, asked, templates)), mimetype=_JSON)

    @v1.post("/sheets/<kind>")
    def sheets(kind: str) -> Response:
        guard.must_be_maker(context.settings)
        form = guard.accepted(_JSON, _HTML, _PDF)
        if kind not in SHEETS:
            return problem(404, f"The sheets are {', '.join(SHEETS)}.")
        return _sheet(kind, form, context)

    _take_requests(v1, context)
    return v1


def _take_requests(v1: Blueprint, context: AppContext) -> None:
    """Carry a customer's request to the workshop, where the profile names a mail server.

    A letter takes from a caller's allowance; what is not understood makes none, and takes nothing.
    """
    post = post_of(context.workshop, context.settings.smtp_password)
    one, all_of_them = Buckets(1 / 60, _MOST_OF_ONE), Buckets(1 / 60, _MOST_OF_ALL)

    @v1.post("/requests")
    def requests() -> Response:
        if post is None:
            return problem(404, _NO_REQUESTS.format(context.workshop.workshop.email))
        guard.must_accept_json()
        client = request.remote_addr or ""

        def allowed(letter: EmailMessage) -> None:
            now_s = time.monotonic()
            wait_s = one.wait_s(client, now_s) or all_of_them.wait_s("", now_s)
            if wait_s:
                raise TooOften(wait_s)
            post(letter)

        try:
            sent = send_request(guard.json_body(), context.quote_context(), allowed)
        except TooOften as often:
            return waits(429, _TOO_OFTEN, math.ceil(often.wait_s))
        return Response(json.dumps(sent), mimetype=_JSON)


def _sheet(kind: str, form: str, context: AppContext) -> Response:
    asked = context.quote_context(for_maker=True)
    sheet = make_sheet(kind, guard.json_body(), asked)
    if isinstance(sheet, ResolvedRequest):
        return _sent_back(sheet, asked)
    if form == _PDF:
        return _download(sheet_print(sheet, asked.workshop), _PDF, f"{kind}.pdf")
    if form == _JSON:
        return Response(json.dumps(write_sheet(sheet, asked)), mimetype=_JSON)
    response = Response(sheet_page(sheet, asked.workshop, context.templates), mimetype=_HTML)
    response.headers["Content-Security-Policy"] = _SHEET_POLICY
    return response


def _sent_back(resolved: ResolvedRequest, context: QuoteContext) -> Response:
    if not isinstance(resolved.answer, SentBack):
        return problem(500)
    return problem_response(write_sent_back(resolved.answer, resolved.document, context))


def _download(content: bytes, mimetype: str, name: str) -> Response:
    response = Response(content, mimetype=mimetype)
    response.headers["Content-Disposition"] = f'attachment; filename="{name}"'
    return response
