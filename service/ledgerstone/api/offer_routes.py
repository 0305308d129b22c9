"""The routes of an existing offer: its link, and the customer's request."""

from __future__ import annotations

import math
import time
from email.message import EmailMessage

from flask import Blueprint, Response, json, request

from ledgerstone.api import guard
from ledgerstone.api.app_context import AppContext
from ledgerstone.api.languages import request_speech
from ledgerstone.api.limits import Buckets, client_of
from ledgerstone.api.problems import problem, retry_later
from ledgerstone.api.smtp import post_of
from ledgerstone.application.opening import write_opened
from ledgerstone.application.requesting import send_request
from ledgerstone.codec.links import open_offer
from ledgerstone.media_types import JSON_TYPE
from ledgerstone.message import Message

_MAX_OF_ONE, _MAX_OF_ALL = 5, 30  # in a burst, then one a minute, for each worker


class RateLimited(Exception):
    """A client has sent too many letters."""

    def __init__(self, wait_s: float) -> None:
        super().__init__(wait_s)
        self.wait_s = wait_s


def offer_routes(context: AppContext) -> Blueprint:
    """Make the ``/v1`` routes of one workshop's offers."""
    v1 = Blueprint("offers", __name__, url_prefix="/v1")

    @v1.get("/quotes/<token>")
    def quote(token: str) -> Response:
        guard.must_accept_json()
        today = context.quote_context()
        body = write_opened(open_offer(token, today.tokens, today.today), token, today)
        response = Response(json.dumps(body), mimetype=JSON_TYPE)
        response.headers["X-Robots-Tag"] = "noindex"
        return response

    _take_requests(v1, context)
    return v1


def _take_requests(v1: Blueprint, context: AppContext) -> None:
    """Make the route of customers' requests, if the profile names a mail server.

    Each letter counts against a client's limit; a request that is not understood does not.
    """
    post = post_of(context.workshop, context.settings.smtp_password)
    one, all_of_them = Buckets(1 / 60, _MAX_OF_ONE), Buckets(1 / 60, _MAX_OF_ALL)

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
                raise RateLimited(wait_s)
            post(letter)

        try:
            sent = send_request(
                guard.json_body(), context.quote_context(), allowed, request_speech()
            )
        except RateLimited as often:
            seconds = math.ceil(often.wait_s)
            return retry_later(429, Message("requested-too-often", seconds=seconds), seconds)
        return Response(json.dumps(sent), mimetype=JSON_TYPE)
