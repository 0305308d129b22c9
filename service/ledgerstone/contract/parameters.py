"""Parameters and headers of the calls."""

from __future__ import annotations

from typing import Final

from ledgerstone.application.notes import NOTE_KINDS as NOTES
from ledgerstone.codec.order_schemas import MAX_CUTOUTS, MAX_SLABS
from ledgerstone.codec.tokens import LONGEST_TOKEN
from ledgerstone.contract.schemas import JSONSchema
from ledgerstone.drawing import NARROWEST_PX, WIDEST_PX
from ledgerstone.papers.kinds import SHEETS

_NAMES = ["plan", "view", "assembled"]
_TOKEN: JSONSchema = {"type": "string", "minLength": 1, "maxLength": LONGEST_TOKEN}
_TEXT: JSONSchema = {"type": "string"}

HEADERS: Final[dict[str, JSONSchema]] = {
    "RequestId": {
        "description": "The request's id, the same in the service's log.",
        "schema": {"type": "string", "format": "uuid"},
    },
    "RetryAfter": {
        "description": "Seconds to wait.",
        "schema": {"type": "integer", "minimum": 1},
    },
    "ETag": {"description": "Changes with the drawing's content.", "schema": _TEXT},
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
    "SheetKind": _path("kind", "The kind of sheet.", {"enum": list(SHEETS)}),
    "NoteKind": _path("kind", "The kind of letter.", {"enum": list(NOTES)}),
    "ProblemKind": _path("kind", "The last segment of a problem's `type`.", _TEXT),
    "DrawingToken": _path("token", "The token of a drawing's link, from an answer.", _TOKEN),
    "DrawingName": _path(
        "name",
        "The dimensioned plan; the view; all pieces together from above; or how far the concrete"
        " is used, for the maker alone.",
        {"enum": [*_NAMES, "stress"]},
    ),
    "PictureName": _path(
        "name", "The dimensioned plan, the view, or all pieces from above.", {"enum": _NAMES}
    ),
    "SlabNumber": _query(
        "slab",
        "Which slab, from 0. A view without it shows all slabs of the order together.",
        _whole(0, MAX_SLABS - 1, 0),
    ),
    "PictureWidth": _query(
        "width",
        f"How wide it is shown, in pixels, brought within {NARROWEST_PX} to {WIDEST_PX}. A very"
        " tall sheet comes out narrower; a plan shown under 500 has a phone's sheet, its letters"
        " as large.",
        _whole(1, 999_999_999, 600),
    ),
    "CutoutNumber": _query("cutout", "The cut-out's index, from 0.", _whole(0, MAX_CUTOUTS - 1, 0)),
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
        "If-None-Match", "The ETag of the caller's copy; a current one is not drawn again.", _TEXT
    ),
}
