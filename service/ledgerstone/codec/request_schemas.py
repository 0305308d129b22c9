"""Schemas of requests other than an order: for papers, and a customer's request."""

from __future__ import annotations

from typing import Final

from marshmallow import Schema, fields

from ledgerstone.codec._strict import field_metadata
from ledgerstone.codec.fields import (
    ChoiceField,
    ListField,
    ObjectField,
    Strict,
    TextField,
    YesNoField,
    field_name,
    null_refused,
)
from ledgerstone.codec.maker_terms_schemas import MakerTermsSchema
from ledgerstone.codec.note_field import NoteField
from ledgerstone.codec.order_schemas import LONGEST_LANGUAGE_TAG, OrderSchema
from ledgerstone.codec.tokens import LONGEST_TOKEN
from ledgerstone.message import Message

MAX_TAKEN: Final = 400
_AT: Final = (
    "JSON Pointer to its place in the order (RFC 6901). Left out, it is about the whole order."
)


class UnparsedField(fields.Raw):
    """Members that are parsed later, described by another schema."""

    def __init__(self, label: str, schema: type[Schema], *, about: str) -> None:
        super().__init__(
            metadata=field_metadata(label, about),
            error_messages=null_refused(
                Message("field-missing", field=field_name(label), verb="say")
            ),
        )
        self.schema_class = schema


class AskSchema(MakerTermsSchema):
    """The subject of a paper: a quote's token, or an order."""

    about = "what-is-asked"
    token = TextField(
        "quote-token",
        longest=LONGEST_TOKEN,
        about=(
            "A quote's token: the paper is as it was offered while it is valid. Left out if `order`"
            " is given."
        ),
    )
    order = UnparsedField(
        "order", OrderSchema, about="An order, which is quoted today. Left out if `token` is given."
    )
    customer = TextField("customer-name", about="The addressee's name. Left out, nobody is named.")


class TakenSchema(Strict):
    """One assumed value: an entry of an enquiry's `assumed`."""

    about = "what-was-assumed"
    at = TextField("its-place", longest=200, about=_AT)
    value = fields.Raw(
        metadata={"description": "The value. It is not used here, and may be left out."}
    )
    says = TextField(
        "what-was-taken", longest=400, required=True, about="The sentence in the letter."
    )


class QuestionSchema(Strict):
    """One question to the customer: an entry of an enquiry's `missing`."""

    about = "what-is-missing"
    at = TextField("its-place", longest=200, about=_AT)
    asks = TextField("question", longest=400, required=True, about="The question in the letter.")


class AnsweredSchema(Strict):
    """The message that a draft answers: members of an enquiry's `customer`."""

    about = "the-message-answered"
    to = TextField(
        "its-sender",
        longest=320,
        about="The address to answer to. Left out, the draft has no addressee.",
    )
    subject = TextField(
        "its-subject",
        longest=998,
        about="Its subject. Left out, the reply has a subject of its own.",
    )
    message_id = TextField(
        "its-identifier", longest=420, about="Its Message-ID. Left out, the draft starts a thread."
    )
    references = TextField(
        "its-references",
        longest=8000,
        about="Its References header. Left out, only its Message-ID is referred to.",
    )


def _open_questions(about: str) -> ListField:
    question = ObjectField(
        QuestionSchema, "what-is-missing", about="One question: where in the order, and its words."
    )
    return ListField(question, "what-is-missing", at_most=MAX_TAKEN, about=about)


class JobAskSchema(AskSchema):
    """The subject of a job sheet, and the questions that are still open."""

    about = "what-is-asked"
    missing = _open_questions(
        "Open questions, each to be ticked off before anything is cut. Left out, none."
    )


class ReplyAskSchema(AskSchema):
    """The subject of a reply, and how it is written."""

    about = "a-reply"
    tone = ChoiceField(
        "tone",
        ("short", "full"),
        about="`short`: price, day and cautions only. Left out, `full`.",
    )
    answers = ObjectField(
        AnsweredSchema,
        "the-message-answered",
        about="The message that a draft answers. Left out, the draft has no addressee.",
    )
    asked = UnparsedField(
        "order-asked-for",
        OrderSchema,
        about=(
            "The order as the customer asked for it, where the workshop has changed it since: the"
            " letter says what was changed, and where the day asked for cannot be met. Left out,"
            " nothing was changed."
        ),
    )
    ways = YesNoField(
        "ways", about="Whether to offer a lighter and a cheaper alternative. Left out, no."
    )
    language = TextField(
        "language",
        longest=LONGEST_LANGUAGE_TAG,
        about=(
            "The language of a letter that only asks, as RFC 5646 writes it: `de`. Left out, or not"
            " spoken here, the workshop's own. An order's letter is in the order's."
        ),
    )
    assumed = ListField(
        ObjectField(TakenSchema, "what-was-assumed", about="One value."),
        "what-was-assumed",
        at_most=MAX_TAKEN,
        about=(
            "Values that were assumed: the letter states them, and is an estimate. Left out, none."
        ),
    )
    missing = _open_questions(
        "Open questions: the letter asks the three that matter most for price and feasibility,"
        " and is an estimate. Left out, none."
    )


class RequestSchema(Strict):
    """A customer's request: the quote, the name, and how to answer."""

    about = "a-request"
    token = TextField(
        "quote-token", longest=LONGEST_TOKEN, required=True, about="The quote's token."
    )
    name = TextField("your-name", required=True, about="The customer's name.")
    reach = TextField(
        "an-email-address-or-a-telephone-number",
        required=True,
        about="An email address or a telephone number to answer to.",
    )
    note = NoteField(about="A few lines to the workshop. Left out, there are none.")
