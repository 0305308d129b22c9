"""The desk's own route: what the maker's page has to know of the workshop."""

from __future__ import annotations

from flask import Blueprint, Response, json

from ledgerstone.api import guard
from ledgerstone.api.app_context import AppContext
from ledgerstone.application.desk import write_desk


def desk_routes(context: AppContext) -> Blueprint:
    """Make the ``/v1`` route that tells the desk what its workshop has set."""
    v1 = Blueprint("desk", __name__, url_prefix="/v1")

    @v1.get("/desk")
    def desk() -> Response:
        guard.must_be_maker(context.settings)
        guard.must_accept_json()
        today = context.today()
        return Response(
            json.dumps(write_desk(context.workshop, today)), mimetype="application/json"
        )

    return v1
