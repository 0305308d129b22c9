"""The calls of the maker's own page."""

from __future__ import annotations

from typing import Final

from ledgerstone.codec.desk_schemas import DeskSchema, DraftSchema, NoteAskSchema, NoteSchema
from ledgerstone.codec.problem_schemas import NotUnderstoodSchema, ProblemSchema
from ledgerstone.codec.request_schemas import ReplyAskSchema
from ledgerstone.contract.call import Call, Response, problem_answer
from ledgerstone.contract.workshop_call import WORKSHOP_CALLS
from ledgerstone.media_types import JSON_TYPE

_BODY: Final = (406, 408, 413, 415)
_NOT_UNDERSTOOD: Final = "What is asked, or the order in it, was not understood."

_DESK: Final = Call(
    path="/v1/desk",
    name="getDesk",
    tag="maker",
    summary="The defaults of an offer",
    about=(
        "For the maker's own page, at `/desk/`: it asks this first, and so learns whether its key"
        " is right."
    ),
    answers={200: Response("The defaults.", {JSON_TYPE: DeskSchema})},
    refusals=(401, 406),
    maker="must",
)

_NOTES: Final = Call(
    path="/v1/notes/{kind}",
    method="post",
    name="createNote",
    tag="maker",
    summary="Write a short letter about an offer",
    about=(
        "A `reminder` of two lines, or the request for the `deposit`: what to pay and how, until"
        " when the day is held, and what is due later."
    ),
    takes=NoteAskSchema,
    parameters=("NoteKind",),
    answers={
        200: Response("The letter.", {JSON_TYPE: NoteSchema}),
        400: problem_answer("The token is no quote of ours.", NotUnderstoodSchema),
        404: problem_answer("There is no such letter.", ProblemSchema),
    },
    refusals=(401, *_BODY),
    maker="must",
)

_DRAFTS: Final = Call(
    path="/v1/drafts",
    method="post",
    name="createDraft",
    tag="maker",
    summary="Put a reply among the drafts of the maker's own mailbox",
    about=(
        "It takes what `POST /v1/replies` takes. Nothing is sent. Where the profile names no"
        " mailbox, or its password is not set, this is not found."
    ),
    takes=ReplyAskSchema,
    answers={
        200: Response("The draft is stored.", {JSON_TYPE: DraftSchema}),
        400: problem_answer(_NOT_UNDERSTOOD, NotUnderstoodSchema),
        404: problem_answer("This workshop has no mailbox here.", ProblemSchema),
        422: problem_answer(
            "The order is more than one request may have worked out.", ProblemSchema
        ),
    },
    refusals=(401, *_BODY, 409),
    maker="must",
)

DESK_CALLS: Final = (_DESK, _NOTES, _DRAFTS, *WORKSHOP_CALLS)
