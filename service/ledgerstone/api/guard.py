"""Checks before any work: body, content type, Accept, headers, authorisation."""

from __future__ import annotations

from flask import Flask, Response, request
from werkzeug.exceptions import (
    BadRequest,
    ClientDisconnected,
    HTTPException,
    NotAcceptable,
    RequestEntityTooLarge,
    RequestTimeout,
    Unauthorized,
    UnsupportedMediaType,
)

from ledgerstone.api.metrics import timed
from ledgerstone.api.problems import request_id
from ledgerstone.codec.strict_json import LARGEST_BYTES, read_json
from ledgerstone.json_types import JSON
from ledgerstone.media_types import JSON_TYPE, PROBLEM_TYPE
from ledgerstone.settings import Settings
from ledgerstone.workshop.records import Workshop

_JSON_TYPES = (JSON_TYPE, PROBLEM_TYPE)
_RULED_BY_THEIR_PAGE = ("text/javascript", "text/css")  # a policy of their own would say nothing


def json_body(largest: int = LARGEST_BYTES) -> JSON:
    """Read the request's body: strict JSON, at most 64 kB by default, without content encoding.

    Raises
    ------
    UnsupportedMediaType, RequestEntityTooLarge, NotJSON
    """
    content_type = request.mimetype_params
    charset = content_type.get("charset", "utf-8").lower()
    if request.mimetype != JSON_TYPE or charset not in ("utf-8", "utf8"):
        raise UnsupportedMediaType
    with timed("parse"):
        return read_json(plain_body(largest))


def plain_body(largest: int) -> bytes:
    """Read the request's body as bytes, up to a limit, without content encoding.

    Raises
    ------
    UnsupportedMediaType, RequestEntityTooLarge
    """
    if request.headers.get("Content-Encoding", "identity").lower() != "identity":
        raise UnsupportedMediaType
    body = _body()
    if len(body) > largest:
        raise RequestEntityTooLarge
    return body


def _body() -> bytes:
    """Read the whole body.

    Raises
    ------
    RequestTimeout, BadRequest
        It was not complete in time, or does not match its headers.
    """
    try:
        return request.stream.read()
    except ClientDisconnected as gone:
        if isinstance(gone.__context__, TimeoutError):
            raise RequestTimeout from gone
        raise
    except HTTPException:
        raise
    except Exception as unreadable:  # raised by the server, such as for a chunk without a size
        raise BadRequest from unreadable


def must_accept(*mimetypes: str) -> None:
    """Refuse a request that accepts none of these media types.

    Raises
    ------
    NotAcceptable
    """
    accepted = request.accept_mimetypes
    if request.headers.get("Accept") and not any(accepted[m] > 0 for m in mimetypes):
        raise NotAcceptable(mimetypes[0])


def accepted(*mimetypes: str) -> str:
    """Return the media type that a request prefers; the first if it has no preference.

    Raises
    ------
    NotAcceptable
    """
    must_accept(*mimetypes)
    if not request.headers.get("Accept"):
        return mimetypes[0]
    return request.accept_mimetypes.best_match(mimetypes, mimetypes[0]) or mimetypes[0]


def must_accept_json() -> None:
    """Refuse a request that accepts no JSON."""
    must_accept(*_JSON_TYPES)


def must_be_maker(settings: Settings) -> None:
    """Refuse a request without the maker's key.

    Raises
    ------
    Unauthorized
    """
    if not is_maker(settings):
        raise Unauthorized


def is_maker(settings: Settings) -> bool:
    """Return whether the request carries the maker's key."""
    given = request.authorization
    return (
        given is not None
        and given.type == "bearer"
        and given.token is not None
        and settings.is_makers(given.token)
    )


def claims_maker(settings: Settings) -> bool:
    """Return whether the request is the maker's; a bearer token that is not the key is refused.

    Raises
    ------
    Unauthorized
    """
    given = request.authorization
    if given is None or given.type != "bearer":
        return False
    must_be_maker(settings)
    return True


def prefers_minimal() -> bool:
    """Return whether the search for remedies may be left out (RFC 7240)."""
    preferences = request.headers.get("Prefer", "").replace(" ", "").lower().split(",")
    return "return=minimal" in preferences


def register(app: Flask, workshop: Workshop) -> None:
    """Set the security headers on every answer, and CORS headers for the profile's sites."""
    origins = frozenset(workshop.web.origins)
    ancestors = " ".join(["'self'", *sorted(origins)])
    policy = (
        "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data:;"
        " connect-src 'self'; font-src 'self'; frame-src 'self'; base-uri 'none';"
        f" form-action 'self'; frame-ancestors {ancestors}"
    )

    @app.after_request
    def _headers(response: Response) -> Response:
        if response.mimetype not in _RULED_BY_THEIR_PAGE:
            response.headers.setdefault("Content-Security-Policy", policy)
        response.headers["X-Content-Type-Options"] = "nosniff"
        response.headers["Referrer-Policy"] = "no-referrer"
        response.headers["X-Request-Id"] = request_id()
        response.headers.setdefault("Cache-Control", "no-store")
        response.vary.add("Origin")
        origin = request.headers.get("Origin")
        if origin in origins:
            response.headers["Access-Control-Allow-Origin"] = origin
            response.headers["Access-Control-Expose-Headers"] = "ETag, Retry-After, X-Request-Id"
            if request.method == "OPTIONS":
                response.headers["Access-Control-Allow-Methods"] = "GET, POST, OPTIONS"
                response.headers["Access-Control-Allow-Headers"] = "Content-Type, Prefer"
                response.headers["Access-Control-Max-Age"] = "600"
        return response
