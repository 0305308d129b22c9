"""Every problem body (RFC 9457), from every layer."""

from __future__ import annotations

import logging
import uuid
from typing import Any

from flask import Flask, Response, g, json
from werkzeug.exceptions import HTTPException, RequestEntityTooLarge

from ledgerstone.errors import (
    LedgerstoneError,
    NotJSON,
    NotUnderstood,
    PlateError,
    ProfileError,
    QuantityError,
    TokenError,
)
from ledgerstone.wire.answers import PROBLEMS

log = logging.getLogger("ledgerstone")

# Every error of ours and the status it leaves by; the design tests hold this complete.
STATUS_OF: dict[type[LedgerstoneError], int] = {
    NotUnderstood: 400,
    NotJSON: 400,
    QuantityError: 400,
    TokenError: 404,
    ProfileError: 500,
    PlateError: 500,
}

_KINDS: dict[int, tuple[str, str, str]] = {
    400: ("not-understood", "We could not understand that", "The request could not be read."),
    401: ("key-needed", "The maker's key is needed", "Send the maker's key as a bearer token."),
    404: ("not-found", "Nothing is here", "Nothing is at this address."),
    405: ("method-not-offered", "Not offered here", "This address does not take that method."),
    406: ("not-acceptable", "Not in that form", "Ask for application/json."),
    408: ("too-slow", "That took too long", "The request did not arrive whole in time."),
    411: ("length-needed", "Say how long it is", "Send the body's length."),
    413: ("too-large", "Too large", "An order is at most 64 kB."),
    414: ("address-too-long", "The address is too long", "Use a shorter link."),
    415: ("not-json-type", "Send JSON", "Send the body as application/json, in UTF-8, not packed."),
    429: ("too-many", "Too many at once", "Wait a moment and ask again."),
    431: ("headers-too-large", "Too many headers", "Send fewer or shorter headers."),
    500: ("our-fault", "Something of ours failed", "It is noted; ask again, or write to us."),
    503: ("busy", "Busy", "Wait a moment and ask again."),
}


def problem(status: int, detail: str | None = None, **members: Any) -> Response:  # noqa: ANN401  extension members
    """Make a problem answer of one status; extension members are added as they are."""
    kind, title, usual = _KINDS.get(status, _KINDS[400 if status < 500 else 500])
    body = {
        "type": PROBLEMS + kind,
        "title": title,
        "status": status,
        "detail": detail or usual,
        "instance": f"urn:uuid:{request_id()}",
        **members,
    }
    return problem_response(body)


def problem_response(body: dict[str, Any]) -> Response:
    """Answer with a problem body as it is."""
    response = Response(
        json.dumps(body), status=body["status"], mimetype="application/problem+json"
    )
    if body["status"] in (429, 503):
        response.headers["Retry-After"] = "2"
    return response


def request_id() -> str:
    """Name this request, the same in its answer and in the log."""
    if "request_id" not in g:
        g.request_id = str(uuid.uuid4())
    return str(g.request_id)


def kinds() -> list[tuple[str, int, str, str]]:
    """List every kind of problem: its name, status, title and usual words."""
    return [(kind, status, title, usual) for status, (kind, title, usual) in _KINDS.items()]


def register(app: Flask) -> None:
    """Make every error of a request leave as a problem."""
    app.register_error_handler(NotUnderstood, _not_understood)
    app.register_error_handler(TokenError, _not_ours)
    app.register_error_handler(HTTPException, _http)
    app.register_error_handler(Exception, _our_fault)


def _not_understood(fault: NotUnderstood) -> Response:
    faults = [{"pointer": f.pointer, "says": f.says} for f in fault.faults]
    count = len(faults)
    detail = faults[0]["says"] if count == 1 else f"{count} things could not be understood."
    return problem(400, detail, faults=faults)


def _not_ours(fault: TokenError) -> Response:
    return problem(404, str(fault))


def _http(fault: HTTPException) -> Response:
    if isinstance(fault, RequestEntityTooLarge):
        return problem(413)
    answer = problem(fault.code or 500)
    if fault.code == 405 and (allowed := getattr(fault, "valid_methods", None)):
        answer.headers["Allow"] = ", ".join(sorted(allowed))
    return answer


def _our_fault(fault: Exception) -> Response:
    log.error("request %s failed", request_id(), exc_info=fault)
    return problem(500)
