"""Which language an order is answered in, where it does not say so itself."""

from __future__ import annotations

from flask import Response, request

from ledgerstone.json_types import JSON
from ledgerstone.wording import LANGUAGES, known_language


def with_language(order: JSON) -> JSON:
    """Write into an order the language that the request asks for by `Accept-Language`.

    An order that names a language keeps it; where the header names none that is spoken here, the
    workshop's own is left to stand.
    """
    if not isinstance(order, dict) or "language" in order:
        return order
    language = _accepted()
    return order if language is None else {**order, "language": language}


def vary_by_language(response: Response, order: JSON) -> Response:
    """Say that an answer would be another to who reads another language, where that is so."""
    if isinstance(order, dict) and "language" not in order:
        response.vary.add("Accept-Language")
    return response


def _accepted() -> str | None:
    """The most wanted language that is spoken here (RFC 9110 §12.5.4)."""
    for tag, quality in request.accept_languages:
        language = known_language(tag, usual="")
        if quality > 0 and language in LANGUAGES:
            return language
    return None
