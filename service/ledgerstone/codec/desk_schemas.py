"""What the maker's own page is told of its workshop."""

from __future__ import annotations

from typing import Final

from ledgerstone.codec.answer_fields import AnswerSchema, Day, Text, Whole


class DeskSchema(AnswerSchema):
    """What an offer has where the maker sets nothing, and the day that it is."""

    today = Day("The day that it is at the workshop.")
    margin_percent = Text("The profile's margin, in percent.")
    standing = Text("What an offer is of which nothing is assumed or missing.")
    valid_days = Whole("For how many days an offer stands.")


DESK: Final = DeskSchema()
