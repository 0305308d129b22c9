"""The call that lays a slab out, as the document describes it."""

from __future__ import annotations

from typing import Final

from ledgerstone.codec.placing_schemas import PlacingAskSchema, PlacingSchema
from ledgerstone.codec.problem_schemas import NotUnderstoodSchema, ProblemSchema
from ledgerstone.contract.call import Call, Response, problem_answer
from ledgerstone.media_types import JSON_TYPE

PLACING_CALL: Final = Call(
    path="/v1/placings",
    method="post",
    name="createPlacing",
    tag="quotes",
    summary="Lay out a slab: openings where they can be made, and what carries it",
    about=(
        "For a page's buttons: an opening is added beside what is there, clear of edges and of"
        " the sides of units, a tap behind its basin; or a slab is begun. Whatever is not"
        " free stays."
    ),
    takes=PlacingAskSchema,
    answers={
        200: Response("The slab laid out, or why it fits nowhere.", {JSON_TYPE: PlacingSchema}),
        400: problem_answer("The slab, or what is asked, was not understood.", NotUnderstoodSchema),
        422: problem_answer(
            "The slab is more than one request may have worked out (`too-intricate`).",
            ProblemSchema,
        ),
    },
    refusals=(406, 408, 413, 415),
)
