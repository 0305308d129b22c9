"""Every problem body (RFC 9457), from every layer."""

from __future__ import annotations

import logging
import uuid
from typing import Any, Final

from flask import Flask, Response, g, json
from werkzeug.exceptions import HTTPException, NotAcceptable

from ledgerstone.api.languages import request_speech
from ledgerstone.codec.faults_out import fault_members
from ledgerstone.codec.problem_kinds import BY_STATUS, PROBLEMS, TOO_INTRICATE, ProblemKind
from ledgerstone.codec.problem_schemas import NOT_UNDERSTOOD, PROBLEM
from ledgerstone.errors import (
    CallerGone,
    ChildFailed,
    DatedInFuture,
    LaneTaken,
    LedgerstoneError,
    MailFault,
    NotJSON,
    NotUnderstood,
    PlateError,
    ProfileError,
    QuantityError,
    RequestNotSent,
    SettingsFault,
    TemplateFault,
    TokenError,
    TooIntricate,
    WordingError,
)
from ledgerstone.media_types import PROBLEM_TYPE
from ledgerstone.message import Message

log = logging.getLogger("ledgerstone")

USUAL_WAIT_S: Final = 2  # what a client is asked to wait where no other time is known
LANE_S: Final = 4  # the lane for heavy work is free again by then

# Every error of ours and its HTTP status; the design tests hold this complete.
STATUS_OF: dict[type[LedgerstoneError], int] = {
    NotUnderstood: 400,
    NotJSON: 400,
    QuantityError: 400,
    TooIntricate: 422,
    LaneTaken: 503,
    CallerGone: 503,
    TokenError: 404,
    DatedInFuture: 404,
    TemplateFault: 409,
    MailFault: 503,
    RequestNotSent: 503,
    ProfileError: 500,
    ChildFailed: 500,
    SettingsFault: 500,
    PlateError: 500,
    WordingError: 500,
}


def problem(
    status: int, detail: Message | None = None, not_understood: NotUnderstood | None = None
) -> Response:
    """Return a problem response of one status, with the faults if it was not understood."""
    kind = BY_STATUS.get(status, BY_STATUS[400 if status < 500 else 500])
    body = {**_members(kind, detail), "status": status}
    if not_understood is not None:
        members = {**body, **fault_members(not_understood, request_speech())}
        return _varied(problem_response(NOT_UNDERSTOOD.dump(members)))
    return _varied(problem_response(PROBLEM.dump(body)))


def _varied(response: Response) -> Response:
    """Set `Vary: Accept-Language` on a problem response."""
    if not g.get("language"):
        response.vary.add("Accept-Language")
    return response


def _members(kind: ProblemKind, detail: Message | None) -> dict[str, Any]:
    speech = request_speech()
    return {
        "type": PROBLEMS + kind.name,
        "title": speech.say(kind.title),
        "status": kind.status,
        "detail": speech.say(detail or kind.usual),
    }


def problem_response(body: dict[str, Any]) -> Response:
    """Return a response with a problem body; its instance is this request."""
    g.problem = body["type"].rpartition("/")[2]
    whole = {**body, "instance": f"urn:uuid:{request_id()}"}
    response = Response(json.dumps(whole), status=body["status"], mimetype=PROBLEM_TYPE)
    if body["status"] in (429, 503):
        _retry_after(response, USUAL_WAIT_S)
    return response


def retry_later(status: int, why: Message, wait_s: int) -> Response:
    """Answer that a client should retry later, with Retry-After in seconds."""
    return _retry_after(problem(status, why), wait_s)


def _retry_after(response: Response, wait_s: int) -> Response:
    response.headers["Retry-After"] = str(wait_s)
    return response


def request_id() -> str:
    """Return this request's id, the same in its answer and in the log."""
    if "request_id" not in g:
        g.request_id = str(uuid.uuid4())
    return str(g.request_id)


def register(app: Flask) -> None:
    """Answer every error of a request as a problem document."""
    app.register_error_handler(NotUnderstood, _not_understood)
    app.register_error_handler(TooIntricate, _too_intricate)
    for busy in (LaneTaken, CallerGone):
        app.register_error_handler(busy, _lane_taken)
    for kind in (TokenError, TemplateFault, RequestNotSent):
        app.register_error_handler(kind, _own_error)
    app.register_error_handler(HTTPException, _http)
    app.register_error_handler(Exception, _our_fault)


def _not_understood(fault: NotUnderstood) -> Response:
    count = len(fault.faults)
    several = Message("things-not-understood", count=count)
    detail = fault.faults[0].message if count == 1 else several
    return problem(STATUS_OF[NotUnderstood], detail, fault)


def _lane_taken(fault: LaneTaken | CallerGone) -> Response:
    return retry_later(STATUS_OF[type(fault)], Message("lane-taken", seconds=LANE_S), LANE_S)


def _too_intricate(fault: TooIntricate) -> Response:
    return problem_response(PROBLEM.dump(_members(TOO_INTRICATE, fault.message)))


def _own_error(fault: TokenError | TemplateFault | RequestNotSent) -> Response:
    return problem(STATUS_OF[type(fault)], fault.message)


def _http(fault: HTTPException) -> Response:
    wanted = fault.description if isinstance(fault, NotAcceptable) else None
    answer = problem(fault.code or 500, Message("not-that-type", type=wanted) if wanted else None)
    if fault.code == 405 and (allowed := getattr(fault, "valid_methods", None)):
        answer.headers["Allow"] = ", ".join(sorted(allowed))
    return answer


def _our_fault(fault: Exception) -> Response:
    log.error("request %s failed", request_id(), exc_info=fault)
    return problem(500)
