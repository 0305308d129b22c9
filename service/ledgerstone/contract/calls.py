"""The calls of the service: what each takes, and what it can answer."""

from __future__ import annotations

from typing import Final, Literal

from ledgerstone.codec.choice_schemas import ChoicesSchema
from ledgerstone.codec.drawing_schemas import DrawingsSchema
from ledgerstone.codec.maker_terms_schemas import QuoteAskSchema
from ledgerstone.codec.opened_schemas import OpenedQuoteSchema
from ledgerstone.codec.order_schemas import OrderSchema
from ledgerstone.codec.paper_schemas import JobSheetSchema, ReplySchema, SheetSchema
from ledgerstone.codec.problem_schemas import NotUnderstoodSchema, ProblemSchema, SentBackSchema
from ledgerstone.codec.quote_schemas import QuoteSchema
from ledgerstone.codec.request_schemas import AskSchema, JobAskSchema, ReplyAskSchema, RequestSchema
from ledgerstone.codec.service_schemas import HealthSchema, RequestedSchema
from ledgerstone.contract.call import BodyForm, Call, Response, problem_answer
from ledgerstone.contract.desk_call import DESK_CALLS
from ledgerstone.contract.enquiry_call import ENQUIRY_CALL
from ledgerstone.contract.placing_call import PLACING_CALL
from ledgerstone.media_types import DXF, EML, HTML, ICS, JSON_TYPE, PDF, PNG, SVG, TEXT

_NO_ORDER = "What is asked, or the order in it, was not understood."
_READ = (406, 408, 413, 415)  # what any body can be refused for
_ORDER_ABOUT = "An order, at most 64 kB. Members it does not know are refused by name."
_NOT_UNDERSTOOD = problem_answer(
    "No piece of concrete could be meant: the first 50 faults, and how many more.",
    NotUnderstoodSchema,
)
_INTRICATE = "more than one request may have worked out (`too-intricate`)"
_TOO_INTRICATE = problem_answer(f"The order is {_INTRICATE}.", ProblemSchema)
_PAPERS_REFUSED = {
    400: problem_answer(_NO_ORDER, NotUnderstoodSchema),
    422: problem_answer(
        f"The order cannot be made as asked, or is {_INTRICATE}.", SentBackSchema, ProblemSchema
    ),
}

_ASKED: Final = (
    Call(
        path="/v1/choices",
        name="getChoices",
        tag="workshop",
        summary="The workshop's public choices",
        about="Shades, finishes, sealers, thicknesses, limits, delivery areas. No costs.",
        answers={200: Response("All that is offered, and its limits.", {JSON_TYPE: ChoicesSchema})},
        refusals=(406,),
    ),
    Call(
        path="/v1/quotes",
        method="post",
        name="createQuote",
        tag="quotes",
        summary="Quote an order, or say what to change",
        about=(
            "The same order on the same day gives the same bytes: nothing is kept, and asking"
            " twice does no harm. With the maker's key, what waits for no template is a quotation."
        ),
        takes=QuoteAskSchema,
        takes_about=_ORDER_ABOUT,
        parameters=("Prefer",),
        answers={
            200: Response("The quote.", {JSON_TYPE: QuoteSchema}),
            400: _NOT_UNDERSTOOD,
            422: problem_answer(
                "The send-back: understood, and not to be made as asked. Or, by its type, an order"
                f" that is {_INTRICATE}.",
                SentBackSchema,
                ProblemSchema,
            ),
        },
        refusals=(401, *_READ),
        maker="may",
    ),
    PLACING_CALL,
    Call(
        path="/v1/drawings",
        method="post",
        name="createDrawings",
        tag="drawings",
        summary="Links to an order's drawings",
        about="For any order that is understood, whether it quotes or not.",
        takes=OrderSchema,
        takes_about=_ORDER_ABOUT,
        answers={
            200: Response("Links to the plan and the view.", {JSON_TYPE: DrawingsSchema}),
            400: _NOT_UNDERSTOOD,
            422: _TOO_INTRICATE,
        },
        refusals=_READ,
    ),
    Call(
        path="/v1/quotes/{token}",
        name="openQuote",
        tag="quotes",
        summary="Open a quote from its link",
        about="An expired link still opens, and says so. The link is the quote: none is kept.",
        parameters=("QuoteToken",),
        answers={200: Response("The quote.", {JSON_TYPE: OpenedQuoteSchema})},
        refusals=(404, 406, 414),
    ),
    Call(
        path="/v1/requests",
        method="post",
        name="createRequest",
        tag="quotes",
        summary="“I'd like this one”",
        about=(
            "Sends one letter to the workshop's own address, over the mail server in its profile,"
            " and keeps nothing. Where the profile names none, `choices.requests` is false and"
            " this is not found."
        ),
        takes=RequestSchema,
        answers={
            200: Response("The request was sent.", {JSON_TYPE: RequestedSchema}),
            400: problem_answer(
                "A field was not understood, or the token is no quote of ours.",
                NotUnderstoodSchema,
            ),
            404: problem_answer("This workshop takes no requests here.", ProblemSchema),
        },
        refusals=_READ,
    ),
)

_PAPERS: Final = (
    *DESK_CALLS,
    ENQUIRY_CALL,
    Call(
        path="/v1/replies",
        method="post",
        name="createReply",
        tag="maker",
        summary="Write the reply to a customer",
        about=(
            "A quote, or what to change first, as an email: subject, plain text and HTML, or a"
            " draft that mail programs open. With `missing` alone it is a letter that only asks."
        ),
        takes=ReplyAskSchema,
        answers={
            200: Response("The letter, or its draft.", {JSON_TYPE: ReplySchema, EML: "text"}),
            400: problem_answer(_NO_ORDER, NotUnderstoodSchema),
            422: _TOO_INTRICATE,
        },
        refusals=(401, *_READ, 409),
        maker="must",
    ),
    Call(
        path="/v1/sheets/{kind}",
        method="post",
        name="createSheet",
        tag="maker",
        summary="Write a sheet: to approve, to fit by, to keep it by, to carry it by",
        about="As a page that prints well, as a PDF, or as plain lists, by Accept.",
        takes=AskSchema,
        parameters=("SheetKind",),
        answers={
            200: Response("The sheet.", {JSON_TYPE: SheetSchema, HTML: "text", PDF: "bytes"}),
            **_PAPERS_REFUSED,
        },
        refusals=(401, 404, *_READ, 409),
        maker="must",
    ),
    Call(
        path="/v1/job-sheets",
        method="post",
        name="createJobSheet",
        tag="maker",
        summary="Write the job sheet that the workshop works from",
        about=(
            "Mirrored mould, steel, cut lists, batch cards, days, lifts, finish and a card for the"
            " crate: as plain lists with hours and costs, as a page, as a PDF, its plan as entries"
            " of a calendar, or the lines to cut its moulds by as DXF or SVG in mm, by Accept."
        ),
        takes=JobAskSchema,
        answers={
            200: Response(
                "The job sheet.",
                {
                    JSON_TYPE: JobSheetSchema,
                    HTML: "text",
                    PDF: "bytes",
                    ICS: "text",
                    DXF: "text",
                    SVG: "text",
                },
            ),
            **_PAPERS_REFUSED,
        },
        refusals=(401, *_READ, 409),
        maker="must",
    ),
)


def _drawing(
    path: str,
    name: str,
    summary: str,
    form: tuple[str, BodyForm],
    parameters: tuple[str, ...],
    *,
    maker: Literal["no", "may"] = "no",
) -> Call:
    return Call(
        path=f"/v1/drawings/{{token}}/{path}",
        name=name,
        tag="drawings",
        summary=summary,
        about="Immutable under its link: it may be cached for a year.",
        parameters=("DrawingToken", *parameters, "IfNoneMatch"),
        answers={
            200: Response("The drawing.", dict([form])),
            304: Response("Not modified: the caller's copy is current.", {}),
            400: problem_answer(
                "The workshop no longer offers what the link names, or that cannot be drawn.",
                NotUnderstoodSchema,
                ProblemSchema,
            ),
        },
        refusals=(404, 406, 414, *((401,) if maker == "may" else ())),
        maker=maker,
        headers=("ETag",),
    )


_DRAWINGS: Final = (
    _drawing(
        "{name}.svg",
        "getDrawing",
        "One drawing",
        (SVG, "text"),
        ("DrawingName", "SlabNumber", "PictureWidth"),
        maker="may",
    ),
    _drawing(
        "{name}.png",
        "getPicture",
        "One drawing as a picture, for emails",
        (PNG, "bytes"),
        ("PictureName", "SlabNumber", "PictureWidth"),
    ),
    _drawing(
        "true-size.pdf",
        "getTrueSize",
        "A cut-out or a corner on paper, 1 : 1",
        (PDF, "bytes"),
        ("SlabNumber", "CutoutNumber", "CornerName", "Paper"),
    ),
)

_SERVICE: Final = (
    Call(
        path="/v1/health/live",
        name="getLive",
        tag="service",
        summary="Whether the service runs",
        answers={200: Response("The service runs.", {JSON_TYPE: HealthSchema})},
    ),
    Call(
        path="/v1/health/ready",
        name="getReady",
        tag="service",
        summary="Whether the service can answer",
        answers={200: Response("Whether it can, and why not.", {JSON_TYPE: HealthSchema})},
    ),
    Call(
        path="/v1/openapi.yaml",
        name="getDocument",
        tag="service",
        summary="This document",
        answers={200: Response("The document, as YAML.", {"application/yaml": "document"})},
        refusals=(404,),
    ),
    Call(
        path="/metrics",
        name="getMetrics",
        tag="service",
        summary="Counters and durations, for Prometheus",
        about=(
            "Prometheus' text format, of all workers together. Answered to the machine itself, and"
            " elsewhere to the maker's key. No label is of a person."
        ),
        answers={200: Response("The counters, as text.", {TEXT: "text"})},
        refusals=(401,),
        maker="may",
    ),
    Call(
        path="/problems/{kind}",
        name="getProblem",
        tag="service",
        summary="What a problem's type means",
        parameters=("ProblemKind",),
        answers={200: Response("Its meaning, in words.", {TEXT: "text"})},
        refusals=(404,),
    ),
)

CALLS: Final = (*_ASKED, *_DRAWINGS, *_PAPERS, *_SERVICE)
