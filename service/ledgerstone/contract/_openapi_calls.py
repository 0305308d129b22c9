"""The calls of the service, as the OpenAPI document tells them."""

from __future__ import annotations

from typing import Any

from ledgerstone.codec.problem_kinds import BY_STATUS, PROBLEMS
from ledgerstone.codec.tokens import LONGEST_TOKEN
from ledgerstone.contract import _openapi_answer_examples as answers
from ledgerstone.contract._openapi_examples import ORDERS
from ledgerstone.contract._openapi_parts import JSONSchema, ref, text, whole

_JSON, _PROBLEM = "application/json", "application/problem+json"
_ALWAYS = (429, 500, 503)
_REQUEST_ID = {"X-Request-Id": {"$ref": "#/components/headers/RequestId"}}
_WAIT = {"Retry-After": {"$ref": "#/components/headers/RetryAfter"}}

HEADERS: dict[str, Any] = {
    "RequestId": {
        "description": "Names this request in the workshop's log.",
        "schema": text(format="uuid"),
    },
    "RetryAfter": {"description": "Seconds to wait.", "schema": whole(minimum=1)},
    "ETag": {"description": "Changes with what is drawn.", "schema": text()},
}

PARAMETERS: dict[str, Any] = {
    "QuoteToken": {
        "name": "token",
        "in": "path",
        "required": True,
        "description": "From a quote's link, or its `token`.",
        "schema": text(minLength=1, maxLength=LONGEST_TOKEN),
    },
    "Prefer": {
        "name": "Prefer",
        "in": "header",
        "description": (
            "`return=minimal` leaves the search for remedies out (RFC 7240), for a page that asks"
            " again when the typing stops."
        ),
        "schema": text(examples=["return=minimal"]),
    },
}


def problem_responses() -> dict[str, Any]:
    """Describe one answer for each kind of problem that is no more than a problem."""
    responses: dict[str, Any] = {}
    for status, kind in BY_STATUS.items():
        if status == 400:
            continue
        example = {
            "type": PROBLEMS + kind.name,
            "title": kind.title,
            "status": status,
            "detail": kind.usual,
            "instance": answers.INSTANCE,
        }
        responses[_component(kind.name)] = {
            "description": f"{kind.title}. {kind.usual}",
            "headers": {**_REQUEST_ID, **(_WAIT if status in (429, 503) else {})},
            "content": {
                _PROBLEM: {"schema": ref("Problem"), "examples": {kind.name: {"value": example}}}
            },
        }
    return responses


def _component(name: str) -> str:
    return "".join(word.capitalize() for word in name.split("-"))


def problems(*statuses: int) -> dict[str, Any]:
    """List the plain problems that a call may be answered by, beside those that any call may be."""
    names = {status: _component(BY_STATUS[status].name) for status in (*statuses, *_ALWAYS)}
    return {
        str(status): {"$ref": f"#/components/responses/{name}"}
        for status, name in sorted(names.items())
    }


def answer(
    says: str, schema: JSONSchema, examples: dict[str, Any], mimetype: str = _JSON
) -> dict[str, Any]:
    """Describe one answer with its examples."""
    return {
        "description": says,
        "headers": _REQUEST_ID,
        "content": {
            mimetype: {
                "schema": schema,
                "examples": {name: {"value": value} for name, value in examples.items()},
            }
        },
    }


def _order_body(*names: str) -> dict[str, Any]:
    return {
        "required": True,
        "description": "An order, at most 64 kB. Members it does not know are refused by name.",
        "content": {
            _JSON: {
                "schema": ref("Order"),
                "examples": {
                    name: {"summary": ORDERS[name][0], "value": ORDERS[name][1]} for name in names
                },
            }
        },
    }


_NOT_UNDERSTOOD = answer(
    "No piece of concrete could be meant: the first 50 faults, and how many more.",
    ref("NotUnderstood"),
    {"three_faults": answers.NOT_UNDERSTOOD},
    _PROBLEM,
)

_CHOICES = {
    "operationId": "getChoices",
    "tags": ["workshop"],
    "summary": "What this workshop offers",
    "description": "Shades, finishes, sealers, thicknesses, limits, delivery areas. No costs.",
    "responses": {
        "200": answer("What it offers.", ref("Choices"), {"choices": answers.CHOICES}),
        **problems(406),
    },
}

_QUOTES = {
    "operationId": "createQuote",
    "tags": ["quotes"],
    "summary": "Quote an order, or say what to change",
    "description": (
        "The same order on the same day gives the same bytes: nothing is kept, and asking twice"
        " does no harm. With the maker's key, what waits for no template is a quotation."
    ),
    "security": [{}, {"makersKey": []}],
    "parameters": [{"$ref": "#/components/parameters/Prefer"}],
    "requestBody": _order_body("bench", "shelf", "l_run", "basin_near_the_front", "three_faults"),
    "responses": {
        "200": {
            **answer("The quote.", ref("Quote"), {"bench": answers.QUOTE}),
            "links": {
                "again": {
                    "operationId": "openQuote",
                    "parameters": {"token": "$response.body#/token"},
                    "description": "The same quote from its link.",
                }
            },
        },
        "400": _NOT_UNDERSTOOD,
        "422": answer(
            "The send-back: understood, and not to be made as asked.",
            ref("SentBack"),
            {"basin_near_the_front": answers.SENT_BACK_EXAMPLE},
            _PROBLEM,
        ),
        **problems(401, 406, 408, 413, 415),
    },
}

_DRAWINGS = {
    "operationId": "createDrawings",
    "tags": ["drawings"],
    "summary": "Links to an order's drawings",
    "description": "Whether it quotes or not.",
    "requestBody": _order_body("bench", "basin_near_the_front", "three_faults"),
    "responses": {
        "200": answer("The links.", ref("Drawings"), {"bench": answers.DRAWINGS}),
        "400": _NOT_UNDERSTOOD,
        **problems(406, 408, 413, 415),
    },
}


def _health(name: str, summary: str, example: dict[str, str]) -> dict[str, Any]:
    return {
        "operationId": f"get{name.capitalize()}",
        "tags": ["service"],
        "summary": summary,
        "responses": {
            "200": answer("It is.", ref("Health"), {name: example}),
            **problems(),
        },
    }


def _text_page(
    operation: str,
    summary: str,
    mimetype: str,
    schema: JSONSchema,
    example: object,
    *,
    refusals: tuple[int, ...] = (404,),
    **more: Any,  # noqa: ANN401  OpenAPI's own members
) -> dict[str, Any]:
    return {
        "operationId": operation,
        "tags": ["service"],
        "summary": summary,
        **more,
        "responses": {
            "200": {
                "description": "The text.",
                "headers": _REQUEST_ID,
                "content": {
                    mimetype: {"schema": schema, "examples": {"beginning": {"value": example}}}
                },
            },
            **problems(*refusals),
        },
    }


_COUNTED = (
    "# HELP ledgerstone_stage_seconds_total Seconds spent, by stage.\n"
    "# TYPE ledgerstone_stage_seconds_total counter\n"
    'ledgerstone_stage_seconds_total{stage="strength"} 12.75\n'
)
_KIND_PARAMETER = {
    "name": "kind",
    "in": "path",
    "required": True,
    "schema": text(),
    "description": "The end of a problem's `type`.",
}

PATHS: dict[str, Any] = {
    "/v1/choices": {"get": _CHOICES},
    "/v1/quotes": {"post": _QUOTES},
    "/v1/drawings": {"post": _DRAWINGS},
    "/v1/health/live": {"get": _health("live", "Whether the service runs", {"status": "live"})},
    "/v1/health/ready": {
        "get": _health(
            "ready",
            "Whether the service can answer",
            {"status": "ready", "version": "0.1.0", "profile": "b1946ac92492d234"},
        )
    },
    "/v1/openapi.yaml": {
        "get": _text_page(
            "getDocument",
            "This document",
            "application/yaml",
            {"type": "object"},
            {"openapi": "3.1.0", "info": {"title": "Ledgerstone", "version": "1"}},
        ),
    },
    "/metrics": {
        "get": {
            **_text_page(
                "getMetrics",
                "What was answered and how long it took",
                "text/plain",
                text(),
                _COUNTED,
                refusals=(401,),
                description=(
                    "Prometheus' text format, of all workers together. Answered to the machine"
                    " itself, and elsewhere to the maker's key. No label is of a person."
                ),
                security=[{}, {"makersKey": []}],
            ),
        },
    },
    "/problems/{kind}": {
        "get": _text_page(
            "getProblem",
            "What a problem's type means",
            "text/plain",
            text(),
            "429 Too many at once\nWait a moment and ask again.\n",
            parameters=[_KIND_PARAMETER],
        ),
    },
}
