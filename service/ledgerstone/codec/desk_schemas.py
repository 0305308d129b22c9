"""What the maker's own page needs to know of its workshop."""

from __future__ import annotations

from typing import Final

from ledgerstone.codec.answer_fields import AnswerSchema, AnyJson, Day, Text, Whole, YesNo
from ledgerstone.codec.choice_schemas import PAGE_TEXTS
from ledgerstone.codec.fields import Strict, TextField
from ledgerstone.codec.tokens import LONGEST_TOKEN


class DeskSchema(AnswerSchema):
    """The day at the workshop, and the defaults of an offer."""

    today = Day("Today in the workshop's time zone.")
    margin_percent = Text("The profile's markup on cost, in percent.")
    standing = Text("The standing of an offer without assumed or missing values.")
    valid_days = Whole("For how many days an offer is valid.")
    drafts = YesNo("Whether `POST /v1/drafts` puts drafts into the maker's own mailbox.")
    no_links = Text(
        "That letters have no link, why, and what to enter, in sentences; null if they have.",
        or_null=True,
    )
    invented = Text(
        "How many values of the profile are still invented, in a few words; null once no answer is"
        " a trial any more.",
        or_null=True,
    )
    words = AnyJson(
        "Texts that replace the desk's own, in the requested language, by message name: the"
        " country's words.",
        keywords=PAGE_TEXTS,
    )


class DraftSchema(AnswerSchema):
    """Confirmation that a draft is in the mailbox."""

    says = Text("A sentence that it is stored.")


class NoteAskSchema(Strict):
    """The offer that a short letter is about."""

    about = "what-is-asked"
    token = TextField(
        "quote-token", longest=LONGEST_TOKEN, required=True, about="The offer's token."
    )
    customer = TextField("customer-name", about="The addressee's name. Left out, nobody is named.")


class NoteSchema(AnswerSchema):
    """A short letter to a customer."""

    subject = Text("The email's subject.")
    text = Text("The letter as plain text, in the language of the offer.")
    lacks = Text(
        "Values of the letter that the profile lacks, for the maker.",
        absent="Absent if it lacks none.",
    )


DESK: Final = DeskSchema()
DRAFT: Final = DraftSchema()
NOTE: Final = NoteSchema()
