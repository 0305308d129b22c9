"""What the calls beside an order take: what a paper is of, and what a customer requests."""

from __future__ import annotations

from typing import Final

from marshmallow import Schema, fields

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

MOST_TAKEN: Final = 400
_AT: Final = "Where in the order it stands (RFC 6901). Left out, it is of the whole order."


class AsSentField(fields.Raw):
    """Members that are read later, as what is described by another schema."""

    def __init__(self, label: str, schema: type[Schema], *, about: str) -> None:
        super().__init__(
            metadata={"description": about},
            error_messages=null_refused(
                Message("field-missing", field=field_name(label), verb="say")
            ),
        )
        self.schema_class = schema


class AskSchema(MakerTermsSchema):
    """What a paper is of: a quote's token, or an order."""

    about = "what-is-asked"
    token = TextField(
        "quote-token",
        longest=LONGEST_TOKEN,
        about=(
            "A quote's token: it is written as it was offered, while it stands. Left out, an order"
            " is given."
        ),
    )
    order = AsSentField(
        "order", OrderSchema, about="An order, answered anew. Left out, a token is given."
    )
    customer = TextField("customer-name", about="Whom it is for. Left out, nobody is named.")


class TakenSchema(Strict):
    """One value that was taken without being said: an entry of an enquiry's `assumed`."""

    about = "what-was-assumed"
    at = TextField("its-place", longest=200, about=_AT)
    value = fields.Raw(
        metadata={"description": "The value. It is not read here, and may be left out."}
    )
    says = TextField("what-was-taken", longest=400, required=True, about="What the letter says.")


class QuestionSchema(Strict):
    """One question to the customer: an entry of an enquiry's `missing`."""

    about = "what-is-missing"
    at = TextField("its-place", longest=200, about=_AT)
    asks = TextField("question", longest=400, required=True, about="What the letter asks.")


class AnsweredSchema(Strict):
    """The message that a draft answers: members of an enquiry's `customer`."""

    about = "the-message-answered"
    to = TextField("its-sender", longest=320, about="The address to answer to. Left out, none is.")
    subject = TextField(
        "its-subject", longest=998, about="Its subject. Left out, the reply has its own."
    )
    message_id = TextField(
        "its-identifier", longest=420, about="Its identifier. Left out, the draft starts anew."
    )
    references = TextField(
        "its-references",
        longest=8000,
        about="The identifiers that an answer refers to. Left out, its own alone.",
    )


class ReplyAskSchema(AskSchema):
    """What a reply is of, and how it is written."""

    about = "a-reply"
    tone = ChoiceField(
        "tone",
        ("short", "full"),
        about="`short`: price, day and cautions alone. Left out, `full`.",
    )
    answers = ObjectField(
        AnsweredSchema,
        "the-message-answered",
        about="The message that a draft answers. Left out, the draft is addressed to nobody.",
    )
    ways = YesNoField(
        "ways", about="Whether to offer a lighter and a cheaper way beside it. Left out, neither."
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
        at_most=MOST_TAKEN,
        about=(
            "What was taken that nobody said: the letter tells it, and is an estimate. Left out,"
            " nothing was."
        ),
    )
    missing = ListField(
        ObjectField(QuestionSchema, "what-is-missing", about="One question."),
        "what-is-missing",
        at_most=MOST_TAKEN,
        about=(
            "What is to be asked: the letter asks the three that move price and feasibility most,"
            " and is an estimate. Left out, nothing is asked."
        ),
    )


class RequestSchema(Strict):
    """Which quote a customer would like, who asks, and how to answer."""

    about = "a-request"
    token = TextField(
        "quote-token", longest=LONGEST_TOKEN, required=True, about="The quote's token."
    )
    name = TextField("your-name", required=True, about="The name of whoever asks.")
    reach = TextField(
        "an-email-address-or-a-telephone-number",
        required=True,
        about="An email address or a telephone number to answer to.",
    )
    note = NoteField(about="A few lines to the workshop. Left out, there are none.")
