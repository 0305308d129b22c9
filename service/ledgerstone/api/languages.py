"""The language of an answer, if the order does not name one."""

from __future__ import annotations

from typing import Final

from flask import Response, current_app, g, request

from ledgerstone.json_types import JSON
from ledgerstone.wording import LANGUAGES, Speech, known_language, workshop_speech
from ledgerstone.workshop.records import Workshop

WORKSHOP_EXTENSION: Final = "ledgerstone.workshop"  # key of the workshop in ``app.extensions``


def with_language(order: JSON) -> JSON:
    """Set an order's language from the request's `Accept-Language`.

    An order that names a language keeps it; if the header names no supported one, the workshop's
    own applies.
    """
    if not isinstance(order, dict):
        return order
    if "language" in order:
        named = order["language"]
        g.language = named if named in LANGUAGES else None
        return order
    language = accepted_language()
    return order if language is None else {**order, "language": language}


def vary_by_language(response: Response, order: JSON) -> Response:
    """Set `Vary: Accept-Language` on an answer whose order does not name its language."""
    if isinstance(order, dict) and "language" not in order:
        response.vary.add("Accept-Language")
    return response


def request_speech() -> Speech:
    """Return the speech of the current request: its order's language, else its header's."""
    workshop: Workshop = current_app.extensions[WORKSHOP_EXTENSION]
    own = workshop.workshop.language
    return workshop_speech(g.get("language") or accepted_language() or own, workshop)


def accepted_language() -> str | None:
    """Return the preferred language of those supported (RFC 9110 §12.5.4)."""
    for tag, quality in request.accept_languages:
        language = known_language(tag, usual="")
        if quality > 0 and language in LANGUAGES:
            return language
    return None
