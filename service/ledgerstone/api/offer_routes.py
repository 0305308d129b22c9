"""The routes of an offer once made: its link, and the request."""

from __future__ import annotations

import math
import time
from email.message import EmailMessage

from flask import Blueprint, Response, json, request

from ledgerstone.api import guard
from ledgerstone.api.app_context import AppContext
from ledgerstone.api.languages import asked_speech
from ledgerstone.api.limits import Buckets, client_of, waits
from ledgerstone.api.problems import problem
from ledgerstone.api.smtp import post_of
from ledgerstone.application.opening import write_opened
from ledgerstone.application.requesting import send_request
from ledgerstone.codec.links import open_offer
from ledgerstone.message import Message

_JSON = "application/json"
_MOST_OF_ONE, _MOST_OF_ALL = 5, 30  # at once; then one a minute, in each worker for itself


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
            return problem(
                404, Message("requests-not-taken", email=context.workshop.workshop.email)
            )
        guard.must_accept_json()
        client = client_of(request.remote_addr) or "this machine"

        def allowed(letter: EmailMessage) -> None:
            now_s = time.monotonic()
            wait_s = one.wait_s(client, now_s) or all_of_them.wait_s("", now_s)
            if wait_s:
                raise TooOften(wait_s)
            post(letter)

        try:
            sent = send_request(guard.json_body(), context.quote_context(), allowed, asked_speech())
        except TooOften as often:
            seconds = math.ceil(often.wait_s)
            return waits(429, Message("requested-too-often", seconds=seconds), seconds)
        return Response(json.dumps(sent), mimetype=_JSON)
