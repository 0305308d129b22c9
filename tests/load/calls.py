"""Every call that costs work, as a request to the service: what the search for the dearest asks."""

from __future__ import annotations

import json
from collections.abc import Callable, Mapping
from dataclasses import dataclass
from datetime import date
from functools import cache
from pathlib import Path
from typing import Any, Final

from flask import Flask

from ledgerstone.api import Settings, create_app
from ledgerstone.application.answering import answer_order
from ledgerstone.application.context import QuoteContext
from ledgerstone.application.drawings import drawing_token
from ledgerstone.codec.links import link_members, offer_of
from ledgerstone.codec.order_in import read_order
from ledgerstone.codec.tokens import Tokens
from ledgerstone.drawing import WIDEST_PX
from ledgerstone.json_types import JSON
from ledgerstone.quote import Quote
from ledgerstone.workshop import DEMONSTRATION, load_profile
from support.demonstration import MAKER_KEY, SIGNING_KEYS
from support.documents import Json

TODAY: Final = date(2026, 11, 25)
TOKENS: Final = Tokens(SIGNING_KEYS)
WORKSHOP: Final = load_profile(DEMONSTRATION)
WEB: Final = Path(__file__).resolve().parents[2] / "web"
_MAKER: Final = {"Authorization": f"Bearer {MAKER_KEY}"}
_PDF: Final = "application/pdf"


@dataclass(frozen=True, slots=True)
class Sent:
    """One request: what the test client's ``open`` takes."""

    method: str
    path: str
    more: Mapping[str, Any]


Asks = Callable[[Json], Sent | None]


@cache
def app() -> Flask:
    """The demonstration workshop's service on one day, its page too."""
    return create_app(
        Settings(
            maker_key=MAKER_KEY,
            signing_keys=SIGNING_KEYS,
            web_folder=WEB,
            today=lambda _zone: TODAY,
        )
    )


def prepared(request: Json) -> Sent | None:
    """Return what is sent for ``{"call", "order"}``, or ``"text"`` in the order's place.

    The links it needs are made first and are no part of its cost; None where there is none.
    """
    return CALLS[request["call"]](request)


def _post(path: str, accept: str = "", **more: Any) -> Asks:
    headers = {**_MAKER, **({"Accept": accept} if accept else {})}

    def sent(request: Json) -> Sent:
        return Sent("POST", path, {"json": {"order": request["order"], **more}, "headers": headers})

    return sent


def _order(path: str) -> Asks:
    return lambda request: Sent("POST", path, {"json": request["order"]})


def _drawing(name: str) -> Asks:
    """A drawing of the order, by its link."""

    def sent(request: Json) -> Sent | None:
        token = drawing_token(read_order(request["order"], WORKSHOP), TOKENS)
        path = f"/v1/drawings/{token}/{name}"
        return None if token is None else Sent("GET", path, {"headers": _MAKER})

    return sent


def _offer_token(order: Json) -> str | None:
    """Quote an order apart from the service, which then knows nothing of it yet."""
    context = QuoteContext(WORKSHOP, TODAY, TOKENS)
    answer = answer_order(order, context, search=False)
    if not isinstance(answer, Quote):
        return None
    token: str | None = link_members(offer_of(answer, WORKSHOP), WORKSHOP, TOKENS)["token"]
    return token


def _link(request: Json) -> Sent | None:
    token = _offer_token(request["order"])
    return None if token is None else Sent("GET", f"/v1/quotes/{token}", {})


def _note(request: Json) -> Sent | None:
    body = {"token": _offer_token(request["order"])}
    more = {"json": body, "headers": _MAKER}
    return None if body["token"] is None else Sent("POST", "/v1/notes/deposit", more)


def _placing(request: Json) -> Sent:
    """The first slab, with as much of it free as may be, and a basin more."""
    slab = request["order"]["slabs"][0]
    free = {name: list(range(min(8, len(slab.get(name, ()))))) for name in ("cutouts", "reliefs")}
    body = {"slab": slab, "free": {**free, "rests": "rests" in slab}, "add": "basin"}
    return Sent("POST", "/v1/placings", {"json": body})


def _form(request: Json) -> Sent:
    """The page's form without a script: one slab, each member under its pointer."""
    pairs = dict(_members("slabs/0", request["order"]["slabs"][0]))
    return Sent("POST", "/", {"data": {**pairs, "unit": "mm", "delivery/kind": "collect"}})


def _members(pointer: str, value: JSON) -> list[tuple[str, str]]:
    if not isinstance(value, dict | list):
        return [(pointer, str(value))]
    rows = value.items() if isinstance(value, dict) else enumerate(value)
    return [row for key, member in rows for row in _members(f"{pointer}/{key}", member)]


def _enquiry(request: Json) -> Sent:
    text = request["text"].encode("utf-8", "replace")
    kind = request.get("kind", "text/plain")
    return Sent("POST", "/v1/enquiries", {"data": text, "content_type": kind, "headers": _MAKER})


CUSTOMERS: Final[Mapping[str, Asks]] = {
    "quote": _order("/v1/quotes"),
    "drawings": _order("/v1/drawings"),
    "placing": _placing,
    "form": _form,
    "link": _link,
    **{f"{name}.svg": _drawing(f"{name}.svg") for name in ("plan", "view", "assembled")},
    **{
        f"{name}.png": _drawing(f"{name}.png?width={WIDEST_PX}")
        for name in ("plan", "view", "assembled")
    },
    "true-size": _drawing("true-size.pdf?paper=a4"),
}
MAKERS: Final[Mapping[str, Asks]] = {
    "draft": _post("/v1/replies", "message/rfc822", ways=True),
    "reply": _post("/v1/replies", ways=True),
    **{f"{kind} sheet": _post(f"/v1/sheets/{kind}", _PDF) for kind in ("approval", "fitting")},
    **{f"{kind} sheet": _post(f"/v1/sheets/{kind}", _PDF) for kind in ("care", "carry")},
    "job sheet": _post("/v1/job-sheets", _PDF),
    "job page": _post("/v1/job-sheets", "text/html"),
    "plan of days": _post("/v1/job-sheets", "text/calendar"),
    "cut file, DXF": _post("/v1/job-sheets", "image/vnd.dxf"),
    "cut file, SVG": _post("/v1/job-sheets", "image/svg+xml"),
    "stress": _drawing("stress.svg"),
    "note": _note,
}
MESSAGES: Final[Mapping[str, Asks]] = {"enquiry": _enquiry}
CALLS: Final[Mapping[str, Asks]] = {**CUSTOMERS, **MAKERS, **MESSAGES}


def size_bytes(request: Json) -> int:
    """Size of what was made worse, as it is sent."""
    if "text" in request:
        return len(request["text"].encode("utf-8", "replace"))
    return len(json.dumps(request["order"], separators=(",", ":")))
