"""What the maker's own page is told of its workshop."""

from __future__ import annotations

from typing import Final

from ledgerstone.codec.answer_fields import AnswerSchema, Day, Text, Whole, YesNo
from ledgerstone.codec.fields import Strict, TextField
from ledgerstone.codec.tokens import LONGEST_TOKEN


class DeskSchema(AnswerSchema):
    """What an offer has where the maker sets nothing, and the day that it is."""

    today = Day("The day that it is at the workshop.")
    margin_percent = Text("The profile's margin, in percent.")
    standing = Text("What an offer is of which nothing is assumed or missing.")
    valid_days = Whole("For how many days an offer stands.")
    drafts = YesNo("Whether `POST /v1/drafts` puts drafts into the maker's own mailbox.")


class DraftSchema(AnswerSchema):
    """That a draft is in the mailbox."""

    says = Text("That it is there.")


class NoteAskSchema(Strict):
    """Which offer a short letter is about."""

    about = "what-is-asked"
    token = TextField(
        "quote-token", longest=LONGEST_TOKEN, required=True, about="The offer's token."
    )
    customer = TextField("customer-name", about="Whom it is for. Left out, nobody is named.")


class NoteSchema(AnswerSchema):
    """A short letter to a customer."""

    subject = Text("The email's subject.")
    text = Text("The letter as plain text, in the language of the offer.")


DESK: Final = DeskSchema()
DRAFT: Final = DraftSchema()
NOTE: Final = NoteSchema()
