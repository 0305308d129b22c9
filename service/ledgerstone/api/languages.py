"""Which language an order is answered in, where it does not say so itself."""

from __future__ import annotations

from typing import Final

from flask import Response, current_app, g, request

from ledgerstone.json_types import JSON
from ledgerstone.wording import LANGUAGES, Speech, known_language, workshop_speech
from ledgerstone.workshop.records import Workshop

WORKSHOP: Final = "ledgerstone.workshop"  # where an app keeps whose words it speaks


def with_language(order: JSON) -> JSON:
    """Write into an order the language that the request asks for by `Accept-Language`.

    An order that names a language keeps it; where the header names none that is spoken here, the
    workshop's own is left to stand.
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
    """Say that an answer would be another to who reads another language, where that is so."""
    if isinstance(order, dict) and "language" not in order:
        response.vary.add("Accept-Language")
    return response


def asked_speech() -> Speech:
    """Return what says the messages of the request at hand: its order's language, else its own."""
    workshop: Workshop = current_app.extensions[WORKSHOP]
    own = workshop.workshop.language
    return workshop_speech(g.get("language") or accepted_language() or own, workshop)


def accepted_language() -> str | None:
    """The most wanted language that is spoken here (RFC 9110 §12.5.4)."""
    for tag, quality in request.accept_languages:
        language = known_language(tag, usual="")
        if quality > 0 and language in LANGUAGES:
            return language
    return None
