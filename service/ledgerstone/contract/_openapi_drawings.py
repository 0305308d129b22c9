"""The calls that answer with a drawing, as the OpenAPI document tells them."""

from __future__ import annotations

from typing import Any

from ledgerstone.codec.order_schemas import MOST_CUTOUTS, MOST_SLABS
from ledgerstone.codec.problem_kinds import BY_STATUS, PROBLEMS
from ledgerstone.codec.tokens import LONGEST_TOKEN
from ledgerstone.contract._openapi_answer_examples import INSTANCE
from ledgerstone.contract._openapi_calls import answer, problems
from ledgerstone.contract._openapi_parts import JSONSchema, ref, text, whole
from ledgerstone.drawing import NARROWEST_PX, WIDEST_PX

_PROBLEM = "application/problem+json"
_REQUEST_ID = {"X-Request-Id": {"$ref": "#/components/headers/RequestId"}}
_NAMES = ["plan", "view", "assembled"]
_BYTES: JSONSchema = {"type": "string", "format": "binary"}


_NO_WIDTH = {
    "type": PROBLEMS + BY_STATUS[400].name,
    "title": BY_STATUS[400].title,
    "status": 400,
    "detail": "Give the picture's width as a whole number of pixels, from 320 to 1600.",
    "instance": INSTANCE,
}


def _in_query(name: str, says: str, schema: JSONSchema) -> dict[str, Any]:
    return {"name": name, "in": "query", "description": says, "schema": schema}


def _named(names: list[str], says: str) -> dict[str, Any]:
    return {
        "name": "name",
        "in": "path",
        "required": True,
        "description": says,
        "schema": {"enum": names},
    }


DRAWING_PARAMETERS: dict[str, Any] = {
    "DrawingToken": {
        "name": "token",
        "in": "path",
        "required": True,
        "description": "From a link that the service gave.",
        "schema": text(minLength=1, maxLength=LONGEST_TOKEN),
    },
    "DrawingName": _named(
        [*_NAMES, "stress"],
        "The dimensioned plan; the view; all pieces together from above; or how far the concrete"
        " is used, for the maker alone.",
    ),
    "PictureName": _named(_NAMES, "The dimensioned plan, the view, or all pieces from above."),
    "SlabNumber": _in_query(
        "slab", "Which slab, from 0.", whole(minimum=0, maximum=MOST_SLABS - 1, default=0)
    ),
    "PictureWidth": _in_query(
        "width",
        f"In pixels, brought within {NARROWEST_PX} to {WIDEST_PX}. A very tall sheet comes out"
        " narrower.",
        whole(minimum=1, maximum=999_999_999, default=600),
    ),
    "CutoutNumber": _in_query(
        "cutout", "Which cut-out, from 0.", whole(minimum=0, maximum=MOST_CUTOUTS - 1, default=0)
    ),
    "CornerName": _in_query(
        "corner",
        "A corner in place of a cut-out: `front-left` and so on, where an L's notched corner is"
        " the one inside its notch; or the number of a polygon's point, from 1.",
        text(),
    ),
    "Paper": _in_query("paper", "What it is printed on.", {"enum": ["a4", "a3"], "default": "a4"}),
    "IfNoneMatch": {
        "name": "If-None-Match",
        "in": "header",
        "description": "An ETag that you hold; what it names is not drawn again.",
        "schema": text(),
    },
}


def _drawing(
    operation: str,
    summary: str,
    content: dict[str, Any],
    parameters: tuple[str, ...],
    refusals: tuple[int, ...] = (),
) -> dict[str, Any]:
    return {
        "operationId": operation,
        "tags": ["drawings"],
        "summary": summary,
        "description": "It never changes under its link, so that it may be kept for a year.",
        "parameters": [
            {"$ref": f"#/components/parameters/{name}"}
            for name in ("DrawingToken", *parameters, "IfNoneMatch")
        ],
        "responses": {
            "200": {
                "description": "The drawing.",
                "headers": {**_REQUEST_ID, "ETag": {"$ref": "#/components/headers/ETag"}},
                "content": content,
            },
            "304": {"description": "It is as you hold it.", "headers": _REQUEST_ID},
            "400": answer(
                "The workshop no longer offers what the link names, or it cannot be drawn so.",
                {"anyOf": [ref("NotUnderstood"), ref("Problem")]},
                {"width_that_is_no_number": _NO_WIDTH},
                _PROBLEM,
            ),
            **problems(404, 406, 414, *refusals),
        },
    }


DRAWING_PATHS: dict[str, Any] = {
    "/v1/drawings/{token}/{name}.svg": {
        "get": {
            **_drawing(
                "getDrawing",
                "One drawing",
                {"image/svg+xml": {"schema": text()}},
                ("DrawingName", "SlabNumber"),
                (401,),
            ),
            "security": [{}, {"makersKey": []}],
        }
    },
    "/v1/drawings/{token}/{name}.png": {
        "get": _drawing(
            "getPicture",
            "One drawing as a picture, for emails",
            {"image/png": {"schema": _BYTES}},
            ("PictureName", "SlabNumber", "PictureWidth"),
        )
    },
    "/v1/drawings/{token}/true-size.pdf": {
        "get": _drawing(
            "getTrueSize",
            "A cut-out or a corner on paper, 1 : 1",
            {"application/pdf": {"schema": _BYTES}},
            ("SlabNumber", "CutoutNumber", "CornerName", "Paper"),
        )
    },
}
