"""The document's examples: what the demonstration workshop answers on one day."""

from __future__ import annotations

import json
import re
from collections.abc import Iterator
from dataclasses import dataclass, replace
from datetime import date
from functools import cache
from typing import Any, Final

from flask import Flask
from flask.testing import FlaskClient
from werkzeug.test import TestResponse

from ledgerstone.api import create_app
from ledgerstone.api.app_context import APP_CONTEXT
from ledgerstone.application.requesting import send_request
from ledgerstone.application.workshop_form import version_of
from ledgerstone.codec.desk_schemas import DRAFT
from ledgerstone.codec.tokens import Tokens
from ledgerstone.contract.calls import CALLS
from ledgerstone.contract.example_orders import (
    BASIN_NEAR_THE_FRONT,
    BENCH,
    ENQUIRY,
    ORDERS,
    THREE_FAULTS,
)
from ledgerstone.errors import NotUnderstood, TooIntricate
from ledgerstone.json_types import JSON
from ledgerstone.media_types import JSON_TYPE, PROBLEM_TYPE
from ledgerstone.message import Message
from ledgerstone.order import MAX_SLABS
from ledgerstone.settings import Settings
from ledgerstone.wording import speech_in
from ledgerstone.workshop import DEMONSTRATION
from ledgerstone.workshop.reading.loader import profile_text

DAY: Final = date(2026, 11, 25)
INSTANCE: Final = "urn:uuid:6f1c3a52-6f0e-4f7e-9d63-0c8a5b1d2e34"
MAKER_KEY: Final = "the maker's key of the examples"
SIGNING_KEYS: Final = ("the signing key of the examples, of no use elsewhere",)
_SIGNED: Final = re.compile(r"[A-Za-z0-9_-]{24,}\.[A-Za-z0-9_-]{43}")
_SIGN_SHOWN, _LONGEST_TEXT, _MAX_PAGES, _MAX_LINES = 16, 400, 2, 3


@dataclass(frozen=True, slots=True)
class Example:
    """One request that the document shows, and what was answered.

    Attributes
    ----------
    call
        The call's name in the document.
    is_posted
        Whether the body is shown too, and not the answer alone.
    """

    call: str
    name: str
    path: str
    body: dict[str, Any] | None = None
    summary: str = ""
    is_posted: bool = True
    status: int = 0
    mimetype: str = ""
    answer: Any = None


def _posted(call: str, path: str, *names: str) -> Iterator[Example]:
    for name in names:
        summary, order = ORDERS[name]
        yield Example(call, name, path, order, summary)


def _asked(token: str, drawing: str, tokens: Tokens) -> Iterator[Example]:
    """Every request that the document shows, in its order."""
    yield Example("getChoices", "choices", "/v1/choices")
    yield from _posted("createQuote", "/v1/quotes", *ORDERS)
    yield from _posted(
        "createDrawings", "/v1/drawings", "bench", "basin_near_the_front", "three_faults"
    )
    yield from _placed()
    yield Example("openQuote", "bench", f"/v1/quotes/{token}")
    asked = {"token": token, "name": "Odile", "reach": "odile@example.com"}
    note = "Could it be a week later?"
    yield Example("createRequest", "no_mail_server", "/v1/requests", {**asked, "note": note})
    yield Example("getDesk", "desk", "/v1/desk")
    yield Example("getWorkshop", "workshop", "/v1/workshop")
    changes = [{"op": "set", "pointer": "/rates/hour", "value": "42.00"}]
    tried = {"version": version_of(profile_text(DEMONSTRATION)), "changes": changes}
    yield Example("tryWorkshop", "an_hour_costs_more", "/v1/workshop", tried)
    stale = {**tried, "version": "0123456789abcdef"}
    yield Example("tryWorkshop", "another_version", "/v1/workshop", stale)
    yield Example("createNote", "deposit", "/v1/notes/deposit", {"token": token}, is_posted=False)
    yield Example("createNote", "no_quote", "/v1/notes/reminder", {"token": "none-of-ours"})
    thanks = {"token": token}
    yield Example("createNote", "no_such_letter", "/v1/notes/thanks", thanks, is_posted=False)
    yield Example("createDraft", "no_mailbox", "/v1/drafts", {"order": BENCH})
    yield Example("createEnquiry", "worktop", "/v1/enquiries", {"message": ENQUIRY})
    yield Example("createEnquiry", "empty", "/v1/enquiries", {"message": " "})
    customer = {"customer": "Odile"}
    full: dict[str, Any] = {"order": BENCH, **customer, "tone": "short"}
    yield Example("createReply", "bench", "/v1/replies", full)
    ways: dict[str, Any] = {"order": BASIN_NEAR_THE_FRONT, "ways": True}
    yield Example("createReply", "basin_near_the_front", "/v1/replies", ways)
    yield Example("createReply", "three_faults_in_it", "/v1/replies", {"order": THREE_FAULTS})
    for call, path in (("createSheet", "/v1/sheets/care"), ("createJobSheet", "/v1/job-sheets")):
        yield Example(call, "bench", path, {"order": BENCH, **customer})
        yield Example(call, "basin_near_the_front", path, {"order": BASIN_NEAR_THE_FRONT})
        faulty = {"order": THREE_FAULTS}
        yield Example(call, "three_faults_in_it", path, faulty, is_posted=False)
    yield Example("getDrawing", "shade_no_longer_offered", f"{_withdrawn(drawing, tokens)}plan.svg")
    yield Example("getPicture", "width_that_is_no_number", f"{drawing}plan.png?width=wide")
    yield Example("getTrueSize", "no_such_paper", f"{drawing}true-size.pdf?paper=a5")
    yield Example("getLive", "live", "/v1/health/live")
    yield Example("getReady", "ready", "/v1/health/ready")
    yield Example("getMetrics", "beginning", "/metrics")
    yield Example("getProblem", "too_many", "/problems/too-many")


def _placed() -> Iterator[Example]:
    """A basin added, one that fits nowhere, a start, and a slab that is not understood."""
    path, slab = "/v1/placings", {**BENCH["slabs"][0], "cutouts": []}
    yield Example("createPlacing", "basin", path, {"slab": slab, "add": "basin"})
    small = {"outline": {"kind": "rectangle", "length": 800, "width": 400}, "thickness": 40}
    yield Example("createPlacing", "no_room", path, {"slab": small, "add": "hob"})
    yield Example("createPlacing", "start", path, {"slab": small, "start": "basin"})
    unsaid = {"slab": {**small, "thickness": ""}}
    yield Example("createPlacing", "no_thickness", path, unsaid, is_posted=False)


@cache
def examples() -> tuple[Example, ...]:
    """Ask the demonstration workshop everything that the document shows."""
    settings = Settings(
        maker_key=MAKER_KEY, signing_keys=SIGNING_KEYS, base_url="", today=lambda _: DAY
    )
    app = create_app(settings)
    client = app.test_client()
    quote = client.post("/v1/quotes", json=BENCH).get_json()
    drawing = quote["drawings"]["plan"].removesuffix("plan.svg")
    tokens = app.extensions[APP_CONTEXT].tokens
    answered = [_answered(request, client) for request in _asked(quote["token"], drawing, tokens)]
    intricate = Example("createQuote", "too_intricate", "/v1/quotes", is_posted=False)
    document = _problem_of(TooIntricate(MAX_SLABS), app)
    refused = replace(intricate, status=422, mimetype=PROBLEM_TYPE, answer=document)
    others = (
        ("createDrawings", "/v1/drawings"),
        ("createPlacing", "/v1/placings"),
        ("createReply", "/v1/replies"),
        ("createDraft", "/v1/drafts"),
    )
    alike = (replace(refused, call=call, path=path) for call, path in others)
    return (*answered, refused, *alike, *_requested(quote["token"], app), *_filed(app))


def _filed(app: Flask) -> Iterator[Example]:
    """Put a draft into a mailbox that is there, and one whose order is not understood."""
    filed = Example("createDraft", "filed", "/v1/drafts", is_posted=False)
    answer = DRAFT.dump({"says": speech_in("en").say(Message("draft-filed"))})
    yield replace(filed, status=200, mimetype=JSON_TYPE, answer=answer)
    problem = _problem_of(NotUnderstood.whole(Message("token-or-order")), app)
    yield replace(filed, name="nothing_asked", status=400, mimetype=PROBLEM_TYPE, answer=problem)


def _problem_of(fault: Exception, app: Flask) -> dict[str, Any]:
    """What a fault is answered by."""
    with app.test_request_context():
        answer = app.make_response(app.handle_user_exception(fault))
    document: dict[str, Any] = json.loads(answer.get_data()) | {"instance": INSTANCE}
    return document


def _requested(token: str, app: Flask) -> Iterator[Example]:
    """Request a quote of a workshop with a mail server, and one that is none of its own."""
    context = app.extensions[APP_CONTEXT].quote_context()
    asked = {"name": "Odile", "reach": "odile@example.com"}
    sent = send_request({**asked, "token": token}, context, lambda _mail: None, speech_in("en"))
    request = Example("createRequest", "sent", "/v1/requests", asked, is_posted=False)
    yield replace(request, status=200, mimetype=JSON_TYPE, answer=sent)
    try:
        send_request(
            {**asked, "token": "none-of-ours"}, context, lambda _mail: None, speech_in("en")
        )
    except NotUnderstood as fault:
        problem = _problem_of(fault, app)
        yield replace(request, name="no_quote", status=400, mimetype=PROBLEM_TYPE, answer=problem)


def _withdrawn(drawing: str, tokens: Tokens) -> str:
    """Link the same drawing of a slab whose shade is in no palette."""
    content = tokens.open("drawing", drawing.split("/")[-2])
    content["slabs"][0]["shade"] = {"name": "moor green"}
    return f"/v1/drawings/{tokens.sign('drawing', content)}/"


def _answered(example: Example, client: FlaskClient) -> Example:
    """Ask one, as the maker where the call is the maker's, and note the answer."""
    answer = client.open(
        example.path,
        method="GET" if example.body is None else "POST",
        json=example.body,
        headers={"Authorization": f"Bearer {MAKER_KEY}"} if _is_makers(example.call) else {},
    )
    body = None if example.body is None else _shown(example.body)
    return replace(
        example,
        body=body,
        status=answer.status_code,
        mimetype=answer.mimetype or "",
        answer=_shown(_read(answer)),
    )


def _is_makers(call: str) -> bool:
    return any(known.name == call and known.maker == "must" for known in CALLS)


def _read(answer: TestResponse) -> JSON:
    if not (answer.mimetype or "").endswith("json"):
        return "".join(answer.get_data(as_text=True).splitlines(keepends=True)[:_MAX_LINES])
    members = answer.get_json()
    if "instance" in members:
        members["instance"] = INSTANCE
    for name in ("pages", "tables", "values", "invented"):
        if isinstance(members.get(name), list):
            members[name] = members[name][:_MAX_PAGES]
    return members


def _shown(value: JSON) -> JSON:
    """Shorten what is signed, long texts, and numbers past what a reader compares."""
    if isinstance(value, dict):
        return {key: _shown(part) for key, part in value.items()}
    if isinstance(value, list):
        return [_shown(part) for part in value]
    if isinstance(value, float):
        return round(value, 3)
    if not isinstance(value, str):
        return value
    text = _SIGNED.sub(lambda signed: f"{signed[0][:_SIGN_SHOWN]}…", value)
    return text if len(text) <= _LONGEST_TEXT else f"{text[:_LONGEST_TEXT]}…"
