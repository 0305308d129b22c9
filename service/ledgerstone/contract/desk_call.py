"""The call of the maker's own page."""

from __future__ import annotations

from typing import Final

from ledgerstone.codec.desk_schemas import DeskSchema
from ledgerstone.contract.call import JSON_TYPE, Call, Response

DESK_CALL: Final = Call(
    path="/v1/desk",
    name="getDesk",
    tag="maker",
    summary="What the workshop has set for its offers",
    about=(
        "For the maker's own page, at `/desk/`: it asks this first, and so learns whether its key"
        " is right."
    ),
    answers={200: Response("What is set.", {JSON_TYPE: DeskSchema})},
    refusals=(401, 406),
    maker="must",
)
