"""An enquiry's message, and the draft order that is read from it."""

from __future__ import annotations

from typing import Any, Final

from marshmallow import fields

from ledgerstone.codec.answer_fields import (
    AnswerSchema,
    AnyJson,
    Day,
    Many,
    NestedPart,
    Number,
    OneOf,
    Text,
    Whole,
)
from ledgerstone.codec.answer_fields import YesNo as YesOrNo
from ledgerstone.codec.fields import Strict, field_name, missing, refused
from ledgerstone.message import Message

LARGEST_MESSAGE_BYTES: Final = 512 * 1024
_OBJECT: Final = {"type": "object"}
_OR_NULL: Final = {"type": ["object", "null"]}
_ANY: Final[dict[str, Any]] = {}


class MessageField(fields.Field[str]):
    """A whole message, or its body, as text."""

    longest = LARGEST_MESSAGE_BYTES

    def __init__(self, *, about: str) -> None:
        super().__init__(
            required=True,
            metadata={"description": about},
            error_messages=missing("message", "enter"),
        )

    def _deserialize(self, value: Any, *_: Any, **__: Any) -> str:  # noqa: ANN401  marshmallow
        if not isinstance(value, str):
            raise refused(Message("text-not-text", field=field_name("message")))
        if not value.strip():
            raise refused(Message("message-empty"))
        return value


class EnquiryAskSchema(Strict):
    """A message to read."""

    about = "an-enquiry"
    message = MessageField(about="A whole message with its headers (RFC 5322), or its body only.")


class SpanSchema(AnswerSchema):
    """A span of the text, as offsets in Unicode code points."""

    start = Whole("Offset of its first character.", keywords={"minimum": 0})
    end = Whole("Offset after its last character.", keywords={"minimum": 0})
    text = Text("The words of the span.")


class SpansField(Many):
    """The words that a value was read from, under the key ``from``."""

    def __init__(self) -> None:
        super().__init__("The words that it was read from.", SpanSchema, attribute="from")
        self.data_key = "from"


class IgnoredSchema(AnswerSchema):
    """A part of the text that was left out of the reading."""

    start = Whole("Offset of its first character.", keywords={"minimum": 0})
    end = Whole("Offset after its last character.", keywords={"minimum": 0})
    why = Text(
        "The reason: a signature, a footer, quoted, superseded, repeated, struck out, off topic,"
        " existing work, the header of an earlier message, beyond the longest text, and so on."
    )


class UnreadSchema(SpanSchema):
    """Words about a size, an opening or a slab that were neither read nor ignored for a reason."""

    kind = OneOf("What the words are about.", ("size", "opening", "slab"))


class ReadSchema(AnswerSchema):
    """One value that the message states, or that was computed from such values."""

    at = Text("JSON Pointer to it in `order` (RFC 6901).")
    mm = Number("The value in mm, if it is a length.", absent="Absent for any other value.")
    value = AnyJson(
        "The value; in the writer's own words if they are not in our lists.",
        absent="Absent for a length.",
        keywords=_ANY,
    )
    how = OneOf("Whether it was stated, or computed from stated values.", ("said", "worked-out"))
    spans = SpansField()


class AssumedSchema(AnswerSchema):
    """One value that the message does not state, assumed for `proposal`."""

    at = Text("JSON Pointer to it in `proposal` (RFC 6901).")
    value = AnyJson("The assumed value.", keywords=_ANY)
    says = Text("The assumption, as a sentence to the customer.")


class ReadingSchema(AnswerSchema):
    """One reading of ambiguous words."""

    value = Text("The value; empty if the words name none.")
    spans = SpansField()


class DoubtfulSchema(AnswerSchema):
    """A statement with several readings, or without a definite value."""

    at = Text("JSON Pointer to its place in `order` (RFC 6901).")
    says = Text("The doubt, as a sentence to the maker.")
    asks = Text(
        "The question to the customer.",
        absent="Absent if one reading was assumed: see `assumed`.",
    )
    readings = Many("The possible readings.", ReadingSchema)


class MissingSchema(AnswerSchema):
    """A value that is needed and that the message does not state."""

    at = Text("JSON Pointer to its place in `order` (RFC 6901).")
    asks = Text("The question to the customer.")


class CustomerSchema(AnswerSchema):
    """The sender, as far as the message says; a member is null if it does not."""

    name = Text("The sender's name.", or_null=True)
    reply_to = Text("The email address to answer to.", or_null=True)
    reply_to_differs = YesOrNo("Whether `reply_to` differs from the address it was sent from.")
    phone = Text("The sender's telephone number.", or_null=True)
    address = Text("The sender's postal address.", or_null=True)
    language = OneOf("The language of the message.", ("en", "de"))
    subject = Text("The message's subject.", or_null=True)
    message_id = Text("The message's Message-ID.", or_null=True)
    references = Text("The References header of an answer to it.", or_null=True)
    written = Day("The day of its Date header.", or_null=True)


class EnquirySchema(AnswerSchema):
    """A message, read into a draft order."""

    is_enquiry = YesOrNo("Whether the message asks for a slab.")
    text = Text("The whole text, decoded, without markup. Escape it before it is shown.")
    ignored = Many("Parts of the text that were left out, each with the reason.", IgnoredSchema)
    unread = Many(
        "Words that were neither read nor left out with a reason: check these.", UnreadSchema
    )
    order = AnyJson(
        "The stated values, as members of an order; it may be incomplete.",
        keywords=_OBJECT,
    )
    read = Many("Every value in `order`, with the words that it was read from.", ReadSchema)
    assumed = Many("Every value in `proposal` that is not in `order`.", AssumedSchema)
    doubtful = Many("Statements with several readings.", DoubtfulSchema)
    missing = Many("Questions to the customer.", MissingSchema)
    proposal = AnyJson(
        "The completed order, as `POST /v1/quotes` takes it; null if the sizes of an outline"
        " are missing.",
        or_null=True,
        keywords=_OR_NULL,
    )
    attachments = Many("The attachments' names; attachments are not read.", fields.String())
    rests_on_attachment = YesOrNo("Whether the message refers to an attachment.")
    customer = NestedPart("The sender's details.", CustomerSchema)


ENQUIRY: Final = EnquirySchema()
