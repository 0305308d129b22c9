"""The calls about an offer once made, and what they answer, as the OpenAPI document tells them."""

from __future__ import annotations

from typing import Any

from ledgerstone.application.requesting import LONGEST_NOTE
from ledgerstone.codec.fields import LONGEST_TEXT
from ledgerstone.codec.problem_kinds import BY_STATUS, PROBLEMS
from ledgerstone.codec.tokens import LONGEST_TOKEN
from ledgerstone.contract import _openapi_answer_examples as answers
from ledgerstone.contract._openapi_calls import answer, problems
from ledgerstone.contract._openapi_parts import JSONSchema, list_of, object_of, ref, text, whole

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
                        "enum": [
                            "expired",
                            "revoked",
                            "no-longer-offered",
                            "rates-changed",
                            "calendar-changed",
                        ]
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

_NO_QUOTE_EXAMPLE = {
    **answers.NOT_UNDERSTOOD,
    "detail": "This is no quote of ours. Ask for a price again, and send that.",
    "faults": [
        {
            "pointer": "/token",
            "says": "This is no quote of ours. Ask for a price again, and send that.",
        }
    ],
}

_REQUESTS = {
    "operationId": "createRequest",
    "tags": ["quotes"],
    "summary": "“I'd like this one”",
    "description": (
        "Sends one letter to the workshop's own address, over the mail server in its profile, and"
        " keeps nothing. Where the profile names none, `choices.requests` is false and this is not"
        " found."
    ),
    "requestBody": {
        "required": True,
        "content": {
            "application/json": {
                "schema": ref("Request"),
                "examples": {
                    "no_mail_server": {
                        "value": {
                            "token": "as-the-quote-gave-it",
                            "name": "Odile",
                            "reach": "odile@example.com",
                            "note": "Could it be a week later?",
                        }
                    }
                },
            }
        },
    },
    "responses": {
        "200": answer(
            "It is sent.",
            object_of({"reference": text(), "says": text()}),
            {
                "sent": {
                    "reference": "TPJD-PQWN",
                    "says": (
                        "Your request for TPJD-PQWN is with Tarnside Casting. They will answer you."
                    ),
                }
            },
        ),
        "400": answer(
            "A field was not understood, or the token is no quote of ours.",
            ref("NotUnderstood"),
            {"no_quote": _NO_QUOTE_EXAMPLE},
            _PROBLEM,
        ),
        **problems(406, 408, 413, 415),
        "404": answer(
            "This workshop takes no requests here.",
            ref("Problem"),
            {
                "no_mail_server": {
                    "type": f"{PROBLEMS}not-found",
                    "title": BY_STATUS[404].title,
                    "status": 404,
                    "detail": (
                        "This workshop takes no requests here. Write to hello@tarnside.example.com."
                    ),
                    "instance": answers.INSTANCE,
                }
            },
            _PROBLEM,
        ),
    },
}

OFFER_ANSWERS: dict[str, JSONSchema] = {
    "Changes": _CHANGES,
    "NoLink": _NO_LINK,
    "OpenedQuote": _OPENED,
    "Request": {
        **object_of(
            {
                "token": text("The quote's token.", maxLength=LONGEST_TOKEN),
                "name": text("Who asks.", minLength=1, maxLength=LONGEST_TEXT),
                "reach": text(
                    "An email address or a telephone number.", minLength=1, maxLength=LONGEST_TEXT
                ),
                "note": text("A few lines.", maxLength=LONGEST_NOTE),
            },
            optional=("note",),
        ),
        "additionalProperties": False,
    },
}

OFFER_PATHS: dict[str, Any] = {
    "/v1/quotes/{token}": {"get": _OPEN},
    "/v1/requests": {"post": _REQUESTS},
}
