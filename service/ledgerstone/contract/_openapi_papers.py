"""The maker's own calls, replies and sheets, as the OpenAPI document tells them."""

from __future__ import annotations

from typing import Any

from ledgerstone.codec.fields import LONGEST_TEXT
from ledgerstone.codec.tokens import LONGEST_TOKEN
from ledgerstone.contract import _openapi_answer_examples as answers
from ledgerstone.contract._openapi_calls import answer, problems
from ledgerstone.contract._openapi_examples import BASIN_NEAR_THE_FRONT, BENCH, THREE_FAULTS
from ledgerstone.contract._openapi_parts import JSONSchema, list_of, object_of, ref, text

_PROBLEM = "application/problem+json"

_ASKED: dict[str, JSONSchema] = {
    "token": text("A quote's token: it is written as it was offered, while it stands.",
                  maxLength=LONGEST_TOKEN),
    "order": ref("Order"),
    "customer": text("Whom to greet.", maxLength=LONGEST_TEXT),
}  # fmt: skip


def _asked(says: str, **more: JSONSchema) -> JSONSchema:
    """Describe what the maker asks: a token or an order, and what else may be said."""
    members = {**_ASKED, **more}
    return {
        **object_of(members, optional=tuple(members), says=says),
        "additionalProperties": False,
        "oneOf": [{"required": ["token"]}, {"required": ["order"]}],
    }


def _asked_body(name: str, **examples: dict[str, Any]) -> dict[str, Any]:
    shown = {key: {"value": value} for key, value in examples.items()}
    return {
        "required": True,
        "content": {"application/json": {"schema": ref(name), "examples": shown}},
    }


_REPLIES = {
    "operationId": "createReply",
    "tags": ["maker"],
    "summary": "Write the reply to a customer",
    "description": (
        "A quote, or what to change first, as an email: subject, plain text and HTML, or a draft"
        " that mail programs open."
    ),
    "security": [{"makersKey": []}],
    "requestBody": _asked_body(
        "ReplyAsked",
        bench={"order": BENCH, "customer": "Odile", "tone": "short"},
        basin_near_the_front={"order": BASIN_NEAR_THE_FRONT, "ways": True},
        three_faults_in_it={"order": THREE_FAULTS},
    ),
    "responses": {
        "200": {
            "description": "The letter, or its draft.",
            "headers": {"X-Request-Id": {"$ref": "#/components/headers/RequestId"}},
            "content": {
                "application/json": {
                    "schema": ref("Reply"),
                    "examples": {
                        name: {"value": answers.REPLY} for name in ("bench", "basin_near_the_front")
                    },
                },
                "message/rfc822": {"schema": text("A draft, its pictures inside.")},
            },
        },
        "400": answer(
            "What is asked, or the order in it, was not understood.",
            ref("NotUnderstood"),
            {"three_faults_in_it": answers.NOT_UNDERSTOOD},
            _PROBLEM,
        ),
        **problems(401, 406, 408, 409, 413, 415),
    },
}

_HEADERS = {"X-Request-Id": {"$ref": "#/components/headers/RequestId"}}

_SHEET_EXAMPLE = {
    "title": "Keeping it well",
    "workshop": "Tarnside Casting, Wethermoor",
    "reach": "hello@tarnside.example.com · 01632 960417",
    "facts": [{"what": "Order", "says": "TPJD-PQWN"}],
    "sections": [
        {
            "heading": "Acids",
            "facts": [],
            "says": ["Wipe them up at once and rinse."],
            "words": "",
        }
    ],
    "signs": "",
}

_SHEETS = {
    "operationId": "createSheet",
    "tags": ["maker"],
    "summary": "Write a sheet: to approve, to fit by, to keep it by",
    "description": "As a page that prints well, as a PDF, or as plain lists, by Accept.",
    "security": [{"makersKey": []}],
    "parameters": [
        {
            "name": "kind",
            "in": "path",
            "required": True,
            "description": "Which sheet.",
            "schema": {"enum": ["approval", "fitting", "care"]},
        }
    ],
    "requestBody": _asked_body("SheetAsked", bench={"order": BENCH, "customer": "Odile"}),
    "responses": {
        "200": {
            "description": "The sheet.",
            "headers": _HEADERS,
            "content": {
                "text/html": {"schema": text()},
                "application/pdf": {"schema": {}},
                "application/json": {
                    "schema": ref("Sheet"),
                    "examples": {"care": {"value": _SHEET_EXAMPLE}},
                },
            },
        },
        "400": answer(
            "What is asked, or the order in it, was not understood.",
            ref("NotUnderstood"),
            {"three_faults_in_it": answers.NOT_UNDERSTOOD},
            _PROBLEM,
        ),
        "422": answer(
            "The order cannot be made as asked.",
            ref("SentBack"),
            {"basin_near_the_front": answers.SENT_BACK_EXAMPLE},
            _PROBLEM,
        ),
        **problems(401, 404, 406, 408, 409, 413, 415),
    },
}

_JOB_EXAMPLE = {
    "reference": "TPJD-PQWN",
    "workshop": "Tarnside Casting, Wethermoor",
    "operations": [
        {
            "name": "Make the mould",
            "stage": "mould",
            "slab": 0,
            "hands_minutes": 200,
            "machine_minutes": 0,
            "wait_hours": 0.0,
        }
    ],
    "costs": {
        "currency": "GBP",
        "margin_percent": "40",
        "lines": [{"label": "Mesh", "group": "Materials", "amount": "6.91"}],
    },
    "pages": [
        {
            "title": "Batch cards",
            "blocks": [{"kind": "heading", "says": "Pour 1: Seed-tray bench"}],
        }
    ],
}

_JOB_SHEETS = {
    "operationId": "createJobSheet",
    "tags": ["maker"],
    "summary": "Write the job sheet that the workshop works from",
    "description": (
        "Mirrored mould, steel, cut lists, batch cards, days, lifts, finish and a card for the"
        " crate: as plain lists with hours and costs, as a page, or as a PDF, by Accept."
    ),
    "security": [{"makersKey": []}],
    "requestBody": _asked_body("SheetAsked", bench={"order": BENCH}),
    "responses": {
        "200": {
            "description": "The job sheet.",
            "headers": _HEADERS,
            "content": {
                "application/json": {
                    "schema": ref("JobSheet"),
                    "examples": {"bench": {"value": _JOB_EXAMPLE}},
                },
                "text/html": {"schema": text()},
                "application/pdf": {"schema": {}},
            },
        },
        "400": answer(
            "What is asked, or the order in it, was not understood.",
            ref("NotUnderstood"),
            {"three_faults_in_it": answers.NOT_UNDERSTOOD},
            _PROBLEM,
        ),
        "422": answer(
            "The order cannot be made as asked.",
            ref("SentBack"),
            {"basin_near_the_front": answers.SENT_BACK_EXAMPLE},
            _PROBLEM,
        ),
        **problems(401, 406, 408, 409, 413, 415),
    },
}

_COUNT: JSONSchema = {"type": "integer", "minimum": 0}
_TABLE: JSONSchema = {"type": "array", "items": {"type": "array", "items": {"type": "string"}}}
_JOB_SHEET = object_of(
    {
        "reference": text("The quote's."),
        "workshop": text(),
        "operations": list_of(
            object_of(
                {
                    "name": text(),
                    "stage": text(),
                    "slab": {"type": ["integer", "null"], "minimum": 0},
                    "hands_minutes": _COUNT,
                    "machine_minutes": _COUNT,
                    "wait_hours": {"type": "number", "minimum": 0},
                }
            )
        ),
        "costs": ref("Costs"),
        "pages": list_of(object_of({"title": text(), "blocks": list_of(ref("JobBlock"))})),
    }
)
_COSTS = object_of(
    {
        "currency": text(),
        "margin_percent": text("On every group but sample tiles."),
        "lines": list_of(object_of({"label": text(), "group": text(), "amount": text()})),
    },
    says="What it costs the workshop, each line to the penny: with the maker's key alone.",
)
_JOB_BLOCK = object_of(
    {
        "kind": {"enum": ["heading", "says", "ticks", "flag", "big", "facts", "table", "drawing"]},
        "says": {"type": ["string", "array"], "items": {"type": "string"}},
        "rows": _TABLE,
        "columns": {"type": "array", "items": {"type": "string"}},
        "words": text("What a drawing shows."),
    },
    optional=("says", "rows", "columns", "words"),
)

PAPER_ANSWERS: dict[str, JSONSchema] = {
    "Reply": object_of({"subject": text(), "text": text(), "html": text()}),
    "Sheet": object_of(
        {
            "title": text(),
            "workshop": text(),
            "reach": text(),
            "facts": list_of(ref("SheetFact")),
            "sections": list_of(
                object_of(
                    {
                        "heading": text(),
                        "facts": list_of(ref("SheetFact")),
                        "says": list_of(text()),
                        "words": text("What the section's drawing shows."),
                    }
                )
            ),
            "signs": text("What is signed at the foot; empty where nothing is."),
        }
    ),
    "Costs": _COSTS,
    "JobSheet": _JOB_SHEET,
    "JobBlock": _JOB_BLOCK,
    "SheetAsked": _asked("A sheet, of a quote's token or of an order."),
    "SheetFact": object_of({"what": text(), "says": text()}),
    "ReplyAsked": _asked(
        "A reply, of a quote's token or of an order.",
        tone={"enum": ["short", "full"], "default": "full"},
        ways={
            "type": "boolean",
            "description": "Whether to offer a lighter and a cheaper way beside it.",
            "default": False,
        },
    ),
}

PAPER_PATHS: dict[str, Any] = {
    "/v1/replies": {"post": _REPLIES},
    "/v1/job-sheets": {"post": _JOB_SHEETS},
    "/v1/sheets/{kind}": {"post": _SHEETS},
}
