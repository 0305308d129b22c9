"""Parameters and headers of the calls."""

from __future__ import annotations

from typing import Any, Final

from ledgerstone.application.notes import KINDS as NOTES
from ledgerstone.codec.order_schemas import MOST_CUTOUTS, MOST_SLABS
from ledgerstone.codec.tokens import LONGEST_TOKEN
from ledgerstone.drawing import NARROWEST_PX, WIDEST_PX
from ledgerstone.papers.kinds import SHEETS

JSONSchema = dict[str, Any]

_NAMES = ["plan", "view", "assembled"]
_TOKEN: JSONSchema = {"type": "string", "minLength": 1, "maxLength": LONGEST_TOKEN}
_TEXT: JSONSchema = {"type": "string"}

HEADERS: Final[dict[str, JSONSchema]] = {
    "RequestId": {
        "description": "Names this request in the workshop's log.",
        "schema": {"type": "string", "format": "uuid"},
    },
    "RetryAfter": {
        "description": "Seconds to wait.",
        "schema": {"type": "integer", "minimum": 1},
    },
    "ETag": {"description": "Changes with what is drawn.", "schema": _TEXT},
}


def _whole(least: int, most: int, usual: int) -> JSONSchema:
    return {"type": "integer", "minimum": least, "maximum": most, "default": usual}


def _path(name: str, about: str, schema: JSONSchema) -> JSONSchema:
    return {"name": name, "in": "path", "required": True, "description": about, "schema": schema}


def _query(name: str, about: str, schema: JSONSchema) -> JSONSchema:
    return {"name": name, "in": "query", "description": about, "schema": schema}


def _header(name: str, about: str, schema: JSONSchema) -> JSONSchema:
    return {"name": name, "in": "header", "description": about, "schema": schema}


PARAMETERS: Final[dict[str, JSONSchema]] = {
    "QuoteToken": _path("token", "From a quote's link, or its `token`.", _TOKEN),
    "Prefer": _header(
        "Prefer",
        "`return=minimal` leaves the search for remedies out (RFC 7240), for a page that asks"
        " again when the typing stops.",
        {**_TEXT, "examples": ["return=minimal"]},
    ),
    "SheetKind": _path("kind", "Which sheet.", {"enum": list(SHEETS)}),
    "NoteKind": _path("kind", "Which letter.", {"enum": list(NOTES)}),
    "ProblemKind": _path("kind", "The end of a problem's `type`.", _TEXT),
    "DrawingToken": _path("token", "From a link that the service gave.", _TOKEN),
    "DrawingName": _path(
        "name",
        "The dimensioned plan; the view; all pieces together from above; or how far the concrete"
        " is used, for the maker alone.",
        {"enum": [*_NAMES, "stress"]},
    ),
    "PictureName": _path(
        "name", "The dimensioned plan, the view, or all pieces from above.", {"enum": _NAMES}
    ),
    "SlabNumber": _query("slab", "Which slab, from 0.", _whole(0, MOST_SLABS - 1, 0)),
    "PictureWidth": _query(
        "width",
        f"In pixels, brought within {NARROWEST_PX} to {WIDEST_PX}. A very tall sheet comes out"
        " narrower.",
        _whole(1, 999_999_999, 600),
    ),
    "CutoutNumber": _query("cutout", "Which cut-out, from 0.", _whole(0, MOST_CUTOUTS - 1, 0)),
    "CornerName": _query(
        "corner",
        "A corner in place of a cut-out: `front-left` and so on, where an L's notched corner is"
        " the one inside its notch; or the number of a polygon's point, from 1.",
        _TEXT,
    ),
    "Paper": _query(
        "paper",
        "What it is printed on; left out, what the workshop uses.",
        {"enum": ["a4", "a3", "letter", "tabloid"]},
    ),
    "IfNoneMatch": _header(
        "If-None-Match", "An ETag that you hold; what it names is not drawn again.", _TEXT
    ),
}
