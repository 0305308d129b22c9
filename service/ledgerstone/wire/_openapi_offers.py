"""The calls about an offer once made, and what they answer, as the OpenAPI document tells them."""

from __future__ import annotations

from typing import Any

from ledgerstone.wire import _openapi_answer_examples as answers
from ledgerstone.wire._openapi_calls import answer, problems
from ledgerstone.wire._openapi_examples import BASIN_NEAR_THE_FRONT, BENCH, THREE_FAULTS
from ledgerstone.wire._openapi_parts import JSONSchema, list_of, object_of, ref, text, whole
from ledgerstone.wire.fields import LONGEST_TEXT
from ledgerstone.wire.tokens import LONGEST_TOKEN

_PROBLEM = "application/problem+json"
_DAY = text(format="date")
_AMOUNT = text(pattern="^-?[0-9]+\\.[0-9]{2}$")

_CHANGES = object_of(
    {
        "since": object_of(
            {"reference": text(), "issued": _DAY, "total": _AMOUNT, "ready_on": _DAY}
        ),
        "revision": text("A, B, … under the same reference; empty where nothing has changed."),
        "says": list_of(text(), "What has changed in the order, one thing a sentence."),
        "price_change": ref("Money"),
        "ready_later_days": whole("How many days later it is ready; below nought, sooner."),
    },
    says="Against the quote that the order names as its `since`.",
)

_NO_LINK = object_of(
    {"reason": {"enum": ["too-long"]}, "says": text()},
    says="Why there is no link; the order itself can be kept as a file.",
)

_TODAY: JSONSchema = {
    "description": "What the same order is answered today, as a change to the offer.",
    "oneOf": [
        object_of({"kind": {"const": "quote"}, "body": ref("Quote")}),
        object_of({"kind": {"const": "sent-back"}, "body": {"type": "object"}}),
        object_of({"kind": {"const": "not-understood"}, "body": {"type": "object"}}),
    ],
}

_OPENED = object_of(
    {
        "reference": text(),
        "revision": text("The letter of a changed order."),
        "token": text(),
        "link": text(),
        "order": {"type": "object", "description": "As it was offered; the postcode is not kept."},
        "delivery_area": text("In the postcode's place."),
        "issued": _DAY,
        "valid_until": _DAY,
        "standing": {"enum": ["estimate", "quotation"]},
        "price": object_of(
            {
                "currency": text("ISO 4217."),
                "net": _AMOUNT,
                "tax": _AMOUNT,
                "total": _AMOUNT,
                "deposit": _AMOUNT,
            }
        ),
        "lead_time": object_of({"ready_on": _DAY, "if_ordered_by": _DAY}),
        "stands": {
            "type": "boolean",
            "description": "Until `valid_until`, even where rates have changed since.",
        },
        "says": text(),
        "because": list_of(
            object_of(
                {
                    "reason": {
                        "enum": ["expired", "revoked", "no-longer-offered", "rates-changed"]
                    },
                    "says": text(),
                }
            ),
            "All that has happened to it since.",
        ),
        "today": _TODAY,
        "drawings": ref("Drawings"),
    },
    optional=("revision", "link", "delivery_area"),
    says="A quote as it was offered, whether it stands, and what it would be today.",
)

_OPEN = {
    "operationId": "openQuote",
    "tags": ["quotes"],
    "summary": "Open a quote from its link",
    "description": "An expired link still opens, and says so. The link is the quote: none is kept.",
    "parameters": [{"$ref": "#/components/parameters/QuoteToken"}],
    "responses": {
        "200": answer("The quote.", ref("OpenedQuote"), {"bench": answers.OPENED}),
        **problems(404, 406, 414),
    },
}

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

OFFER_ANSWERS: dict[str, JSONSchema] = {
    "Changes": _CHANGES,
    "NoLink": _NO_LINK,
    "OpenedQuote": _OPENED,
    "Reply": object_of({"subject": text(), "text": text(), "html": text()}),
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

OFFER_PATHS: dict[str, Any] = {
    "/v1/quotes/{token}": {"get": _OPEN},
    "/v1/replies": {"post": _REPLIES},
}
