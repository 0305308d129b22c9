"""The calls of the profile's form."""

from __future__ import annotations

from typing import Final

from ledgerstone.codec.problem_schemas import NotUnderstoodSchema
from ledgerstone.codec.workshop_schemas import WorkshopFormSchema, WorkshopTrialSchema
from ledgerstone.contract.call import Call, Response, problem_answer
from ledgerstone.media_types import JSON_TYPE

_BODY: Final = (406, 408, 413, 415)

_SHOWN: Final = Call(
    path="/v1/workshop",
    name="getWorkshop",
    tag="maker",
    summary="The profile's file as a form",
    about="Every table and value of the file as it lies there: its help, and whose it is.",
    answers={200: Response("The profile.", {JSON_TYPE: WorkshopFormSchema})},
    refusals=(401, 406),
    maker="must",
)

_TRIED: Final = Call(
    path="/v1/workshop",
    method="post",
    name="tryWorkshop",
    tag="maker",
    summary="Try changes of the profile, or save them",
    about=(
        "The changes go into the file's own text, whose comments and order stay. All that is then"
        " wrong in it comes with the answer, else what three typical jobs would come to. It is"
        " written only where that is asked for, the service may, and nothing is wrong."
    ),
    takes=WorkshopTrialSchema,
    answers={
        200: Response("The profile with the changes.", {JSON_TYPE: WorkshopFormSchema}),
        400: problem_answer(
            "A change cannot be applied, or the file has changed since.", NotUnderstoodSchema
        ),
    },
    refusals=(401, *_BODY, 503),
    maker="must",
)

WORKSHOP_CALLS: Final = (_SHOWN, _TRIED)
