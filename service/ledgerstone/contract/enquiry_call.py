"""The call that reads an enquiry."""

from __future__ import annotations

from typing import Final

from ledgerstone.codec.enquiry_schemas import EnquiryAskSchema, EnquirySchema
from ledgerstone.codec.problem_schemas import NotUnderstoodSchema
from ledgerstone.contract.call import Call, Response, problem_answer
from ledgerstone.media_types import JSON_TYPE

_ABOUT: Final = (
    "Each value with the words it came from; what was guessed, what is doubtful and what to ask."
    " Nothing is invented and nothing is kept. The message itself may be sent in the place of"
    " JSON, as `message/rfc822` or `text/plain`."
)

ENQUIRY_CALL: Final = Call(
    path="/v1/enquiries",
    method="post",
    name="createEnquiry",
    tag="maker",
    summary="Read an enquiry into a draft order",
    about=_ABOUT,
    takes=EnquiryAskSchema,
    takes_about="A message of at most 512 kB, its attachments taken off.",
    answers={
        200: Response("The draft order.", {JSON_TYPE: EnquirySchema}),
        400: problem_answer("There is no message in the request.", NotUnderstoodSchema),
    },
    refusals=(401, 406, 408, 413, 415),
    maker="must",
)
