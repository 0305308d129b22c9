"""The profile as a form behind the maker's key: described, tried, and written if permitted."""

from __future__ import annotations

import os
from dataclasses import replace
from functools import partial

from flask import Blueprint, Response, json

from ledgerstone.api import guard
from ledgerstone.api.app_context import AppContext
from ledgerstone.api.keeping import replace_file
from ledgerstone.api.languages import request_speech
from ledgerstone.api.problems import problem
from ledgerstone.application.context import QuoteContext
from ledgerstone.application.workshop_form import ProfileFile, try_workshop, write_workshop
from ledgerstone.file_faults import file_fault
from ledgerstone.media_types import JSON_TYPE
from ledgerstone.message import Message
from ledgerstone.settings import Settings
from ledgerstone.workshop import DEMONSTRATION
from ledgerstone.workshop.reading.loader import profile_text


def workshop_routes(context: AppContext) -> Blueprint:
    """Make the ``/v1`` routes of the profile's form."""
    v1 = Blueprint("workshop", __name__, url_prefix="/v1")

    @v1.get("/workshop")
    def workshop() -> Response:
        guard.must_be_maker(context.settings)
        guard.must_accept_json()
        file = _profile_file(context.settings)
        written = write_workshop(file, request_speech())
        return Response(json.dumps(written), mimetype=JSON_TYPE)

    @v1.post("/workshop")
    def trial() -> Response:
        guard.must_be_maker(context.settings)
        guard.must_accept_json()
        sent, file = guard.json_body(), _profile_file(context.settings)
        try:
            written = try_workshop(sent, file, _without_maker_terms(context), request_speech())
        except OSError as fault:
            return problem(503, Message("profile-not-written", reason=file_fault(fault)))
        return Response(json.dumps(written), mimetype=JSON_TYPE)

    return v1


def _without_maker_terms(context: AppContext) -> QuoteContext:
    """Return the context of the typical jobs, with a cache apart from that of customers' orders."""
    return replace(context.quote_context(for_maker=True), cache=context.trials)


def _profile_file(settings: Settings) -> ProfileFile:
    """Return the profile's file; that of the demonstration workshop is never writable.

    Nor is one in a read-only folder, as in a container.
    """
    path = settings.workshop_path
    wanted = settings.is_workshop_writable and path != DEMONSTRATION
    writable = wanted and os.access(path.parent, os.W_OK)
    return ProfileFile(path.name, profile_text(path), writable, partial(replace_file, path))
