"""The desk's routes: its starting values, short letters, and drafts in the maker's mailbox."""

from __future__ import annotations

from datetime import datetime
from email.utils import make_msgid
from zoneinfo import ZoneInfo

from flask import Blueprint, Response, json

from ledgerstone.api import guard
from ledgerstone.api.app_context import AppContext
from ledgerstone.api.languages import request_speech
from ledgerstone.api.problems import problem
from ledgerstone.application.desk import write_desk
from ledgerstone.application.letters import draft_letter
from ledgerstone.application.notes import NOTE_KINDS, write_note
from ledgerstone.codec.desk_schemas import DRAFT
from ledgerstone.errors import MailboxFault
from ledgerstone.media_types import JSON_TYPE
from ledgerstone.message import Message
from ledgerstone.workshop.records import Mailbox

FILING_TIMEOUT_S = 8.0  # for each response of the mail server; a worker has 20 s for a request


def desk_routes(context: AppContext) -> Blueprint:
    """Make the ``/v1`` routes that only the maker's own page needs."""
    v1 = Blueprint("desk", __name__, url_prefix="/v1")
    mailbox = context.workshop.mailbox if context.settings.mailbox_password else None

    @v1.get("/desk")
    def desk() -> Response:
        guard.must_be_maker(context.settings)
        guard.must_accept_json()
        document = write_desk(
            context.workshop, request_speech(), context.today(), drafts=mailbox is not None
        )
        return Response(json.dumps(document), mimetype=JSON_TYPE)

    @v1.post("/notes/<kind>")
    def notes(kind: str) -> Response:
        guard.must_be_maker(context.settings)
        guard.must_accept_json()
        if kind not in NOTE_KINDS:
            return problem(404, Message("no-such-note", kinds=", ".join(NOTE_KINDS)))
        quote_context = context.quote_context(for_maker=True).of_one_request()
        return Response(
            json.dumps(write_note(kind, guard.json_body(), quote_context)), mimetype=JSON_TYPE
        )

    @v1.post("/drafts")
    def drafts() -> Response:
        guard.must_be_maker(context.settings)
        guard.must_accept_json()
        if mailbox is None:
            return problem(404, Message("no-mailbox"))
        return _draft(mailbox, context)

    return v1


def _draft(mailbox: Mailbox, context: AppContext) -> Response:
    """Store the requested reply as a draft in the maker's mailbox."""
    # Loaded by who has a mailbox: it takes a tenth of a service's start.
    from ledgerstone.mailbox.drafting import filed  # noqa: PLC0415
    from ledgerstone.mailbox.server import connected  # noqa: PLC0415

    quote_context = context.quote_context(for_maker=True)
    letter = draft_letter(guard.json_body(), quote_context, context.templates)
    identity = context.workshop.workshop
    now = datetime.now(ZoneInfo(identity.timezone))
    name = make_msgid(domain=identity.email.rpartition("@")[2])
    try:
        with connected(mailbox, context.settings.mailbox_password, FILING_TIMEOUT_S) as server:
            server.add_draft(filed(letter, name, now))
    except MailboxFault as fault:
        return problem(503, Message("mailbox-fault", reason=fault.message))
    text = request_speech().say(Message("draft-filed"))
    return Response(json.dumps(DRAFT.dump({"says": text})), mimetype=JSON_TYPE)
