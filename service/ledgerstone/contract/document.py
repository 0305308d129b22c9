"""The OpenAPI 3.1 document: shapes from the schemas, calls from a table, examples from a run."""

from __future__ import annotations

import json
from collections.abc import Mapping
from typing import Any, Final

import yaml

from ledgerstone.codec.problem_kinds import BY_STATUS, PROBLEMS
from ledgerstone.codec.problem_schemas import PROBLEM as PROBLEM_ANSWER
from ledgerstone.codec.problem_schemas import ProblemSchema
from ledgerstone.contract.call import BodyForm, Call, Response
from ledgerstone.contract.calls import CALLS
from ledgerstone.contract.examples import INSTANCE, Example, examples
from ledgerstone.contract.parameters import HEADERS, PARAMETERS
from ledgerstone.contract.schemas import Components, JSONSchema
from ledgerstone.media_types import JSON_TYPE, PROBLEM_TYPE
from ledgerstone.wording import english

_ABOUT = """\
Ask a workshop that casts concrete slabs to order: can you make this, what will it cost, when will \
it be ready, and what will it weigh?

Lengths are millimetres as a number, or text with its unit; answers speak the unit that you used. \
In answers every quantity's key ends in its unit, money is a decimal text beside its currency, and \
days are ISO 8601 in the workshop's time zone. Every error is a problem document (RFC 9457).

Version 1 only ever gains calls and members, so ignore any member of an answer that you do not \
know; a change that could break a caller gets a new path beside this one. A call that is to go \
says so in `Deprecation` (RFC 9745) and `Sunset` (RFC 8594) headers for at least six months first.

Every example is what the demonstration workshop answers; what is signed is cut short in it.
"""
_INFO: Final = {
    "title": "Ledgerstone",
    "version": "1",
    "summary": "Quotes for concrete slabs cast to order",
    "description": _ABOUT,
    "license": {"name": "Apache-2.0", "identifier": "Apache-2.0"},
}
_TAGS: Final = [
    {"name": "quotes", "description": "A price, a day, a weight; or what to change first."},
    {"name": "drawings", "description": "Drawings, by signed link."},
    {"name": "maker", "description": "What the maker writes with: the maker's key opens these."},
    {"name": "workshop", "description": "What the workshop offers."},
    {"name": "service", "description": "The service itself."},
]
_MAKERS_KEY: Final = {
    "type": "http",
    "scheme": "bearer",
    "description": (
        "The maker's key. Only the maker's own calls need it; no other call leads to costs, hours"
        " or margins."
    ),
}
_SECURITY: Final[Mapping[str, list[dict[str, list[str]]]]] = {
    "may": [{}, {"makersKey": []}],
    "must": [{"makersKey": []}],
}
_ALWAYS: Final = (429, 500, 503)
_REQUEST_ID: Final = {"X-Request-Id": {"$ref": "#/components/headers/RequestId"}}
_WAIT: Final = {"Retry-After": {"$ref": "#/components/headers/RetryAfter"}}
_FORMS: Final[Mapping[str, JSONSchema]] = {
    "text": {"type": "string"},
    "bytes": {"type": "string", "format": "binary"},
    "document": {"type": "object"},
}


def document() -> dict[str, Any]:
    """Make the document as plain data; the demonstration workshop answers its examples."""
    components = Components()
    paths: dict[str, Any] = {}
    for call in CALLS:
        paths.setdefault(call.path, {})[call.method] = _operation(call, components)
    problems = _problems(components)
    return {
        "openapi": "3.1.0",
        "info": _INFO,
        "servers": [{"url": "/", "description": "Where this document is served."}],
        "security": [],
        "tags": _TAGS,
        "paths": paths,
        "components": {
            "schemas": components.schemas(),
            "responses": problems,
            "parameters": PARAMETERS,
            "headers": HEADERS,
            "securitySchemes": {"makersKey": _MAKERS_KEY},
        },
    }


def document_text() -> str:
    """Write the document as YAML, what occurs twice written twice."""
    plain = json.loads(json.dumps(document()))
    text: str = yaml.safe_dump(plain, sort_keys=False, allow_unicode=True, width=100)
    return text


def _operation(call: Call, components: Components) -> dict[str, Any]:
    shown = [example for example in examples() if example.call == call.name]
    about = {"description": call.about} if call.about else {}
    security = {"security": _SECURITY[call.maker]} if call.maker != "no" else {}
    refusals = {
        str(status): {"$ref": f"#/components/responses/{_component(status)}"}
        for status in (*call.refusals, *_ALWAYS)
    }
    answers = {
        str(status): _response(status, answer, call, shown, components)
        for status, answer in call.answers.items()
    }
    parameters = [{"$ref": f"#/components/parameters/{name}"} for name in call.parameters]
    return {
        "operationId": call.name,
        "tags": [call.tag],
        "summary": call.summary,
        **about,
        **security,
        **({"parameters": parameters} if parameters else {}),
        **_body(call, shown, components),
        "responses": dict(sorted({**refusals, **answers}.items())),
    }


def _body(call: Call, shown: list[Example], components: Components) -> dict[str, Any]:
    if call.takes is None:
        return {}
    bodies = {
        example.name: {
            **({"summary": example.summary} if example.summary else {}),
            "value": example.body,
        }
        for example in shown
        if example.is_posted
    }
    about = {"description": call.takes_about} if call.takes_about else {}
    content = {JSON_TYPE: {"schema": components.ref(call.takes), "examples": bodies}}
    return {"requestBody": {"required": True, **about, "content": content}}


def _response(
    status: int, answer: Response, call: Call, shown: list[Example], components: Components
) -> dict[str, Any]:
    headers = {name: {"$ref": f"#/components/headers/{name}"} for name in call.headers}
    response = {
        "description": answer.about,
        "headers": {**_REQUEST_ID, **(headers if status == 200 else {})},
    }
    content = {
        mimetype: {
            "schema": _schema(form, components),
            **_shown_as(mimetype, [example for example in shown if example.status == status]),
        }
        for mimetype, form in answer.forms.items()
    }
    if call.name == "createQuote" and status == 200:
        response["links"] = _AGAIN
    return {**response, **({"content": content} if content else {})}


_AGAIN: Final = {
    "again": {
        "operationId": "openQuote",
        "parameters": {"token": "$response.body#/token"},
        "description": "The same quote, from its link.",
    }
}


def _schema(form: BodyForm | tuple[BodyForm, ...], components: Components) -> JSONSchema:
    if isinstance(form, tuple):
        return {"anyOf": [_schema(field, components) for field in form]}
    return _FORMS[form] if isinstance(form, str) else components.ref(form)


def _shown_as(mimetype: str, shown: list[Example]) -> dict[str, Any]:
    if mimetype == "application/yaml":
        beginning = {"openapi": "3.1.0", "info": {k: _INFO[k] for k in ("title", "version")}}
        return {"examples": {"beginning": {"value": beginning}}}
    found = {
        example.name: {"value": example.answer} for example in shown if example.mimetype == mimetype
    }
    return {"examples": found} if found else {}


def _problems(components: Components) -> dict[str, Any]:
    """Describe one answer for each kind of problem that is no more than a problem."""
    return {
        _component(status): {
            "description": f"{english(kind.title)}. {english(kind.usual)}",
            "headers": {**_REQUEST_ID, **(_WAIT if status in (429, 503) else {})},
            "content": {
                PROBLEM_TYPE: {
                    "schema": components.ref(ProblemSchema),
                    "examples": {kind.name: {"value": _problem(status)}},
                }
            },
        }
        for status, kind in BY_STATUS.items()
        if status != 400
    }


def _problem(status: int) -> dict[str, Any]:
    kind = BY_STATUS[status]
    members = {"type": PROBLEMS + kind.name, "title": english(kind.title), "status": status}
    written: dict[str, Any] = PROBLEM_ANSWER.dump(
        {**members, "detail": english(kind.usual), "instance": INSTANCE}
    )
    return written


def _component(status: int) -> str:
    return "".join(word.capitalize() for word in BY_STATUS[status].name.split("-"))
