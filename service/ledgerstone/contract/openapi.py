"""The OpenAPI 3.1 document: limits from the schemas that read orders, prose and answers by hand.

Write it again with ``python -m ledgerstone.contract.openapi > openapi/openapi.yaml``.
"""

from __future__ import annotations

import sys
from functools import cache
from typing import Any

from ledgerstone.contract._openapi_answer_examples import REMEDY
from ledgerstone.contract._openapi_answers import ANSWERS
from ledgerstone.contract._openapi_calls import HEADERS, PARAMETERS, PATHS, problem_responses
from ledgerstone.contract._openapi_drawings import DRAWING_PARAMETERS, DRAWING_PATHS
from ledgerstone.contract._openapi_offers import OFFER_ANSWERS, OFFER_PATHS
from ledgerstone.contract._openapi_order import order_components
from ledgerstone.contract._openapi_papers import PAPER_ANSWERS, PAPER_PATHS
from ledgerstone.contract.yaml_out import write_yaml

__all__ = ["document", "document_text"]

_ABOUT = """\
Ask a workshop that casts concrete slabs to order: can you make this, what will it cost, when will \
it be ready, and what will it weigh?

Lengths are millimetres as a number, or text with its unit; answers speak the unit that you used. \
In answers every quantity's key ends in its unit, money is a decimal text beside its currency, and \
days are ISO 8601 in the workshop's time zone. Every error is a problem document (RFC 9457).

Version 1 only ever gains calls and members, so ignore any member of an answer that you do not \
know; a change that could break a caller gets a new path beside this one. A call that is to go \
says so in `Deprecation` (RFC 9745) and `Sunset` (RFC 8594) headers for at least six months first.
"""

_TAGS = [
    {"name": "quotes", "description": "A price, a day, a weight; or what to change first."},
    {"name": "drawings", "description": "Drawings, by signed link."},
    {"name": "maker", "description": "What the maker writes with: the maker's key opens these."},
    {"name": "workshop", "description": "What the workshop offers."},
    {"name": "service", "description": "The service itself."},
]

_MAKERS_KEY = {
    "type": "http",
    "scheme": "bearer",
    "description": (
        "The maker's key. Only the maker's own calls need it; no other call leads to costs, hours"
        " or margins."
    ),
}


def document() -> dict[str, Any]:
    """Make the document as plain data."""
    schemas = {**order_components(), **ANSWERS, **OFFER_ANSWERS, **PAPER_ANSWERS}
    schemas["Remedy"] = {**schemas["Remedy"], "examples": [REMEDY]}
    return {
        "openapi": "3.1.0",
        "info": {
            "title": "Ledgerstone",
            "version": "1",
            "summary": "Quotes for concrete slabs cast to order",
            "description": _ABOUT,
            "license": {"name": "Apache-2.0", "identifier": "Apache-2.0"},
        },
        "servers": [{"url": "/", "description": "Where this document is served."}],
        "security": [],
        "tags": _TAGS,
        "paths": {**PATHS, **DRAWING_PATHS, **OFFER_PATHS, **PAPER_PATHS},
        "components": {
            "schemas": {name: schemas[name] for name in sorted(schemas)},
            "responses": problem_responses(),
            "parameters": {**PARAMETERS, **DRAWING_PARAMETERS},
            "headers": HEADERS,
            "securitySchemes": {"makersKey": _MAKERS_KEY},
        },
    }


@cache
def document_text() -> str:
    """Write the document as YAML; it follows from the code alone, so it is made once."""
    return write_yaml(document())


if __name__ == "__main__":
    sys.stdout.write(document_text())
