"""An enquiry's message, and the draft order that is read from it."""

from __future__ import annotations

from typing import Any, Final

from marshmallow import fields

from ledgerstone.codec.answer_fields import (
    AnswerSchema,
    Day,
    Free,
    Many,
    Number,
    OneOf,
    Part,
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
    message = MessageField(about="A whole message with its headers (RFC 5322), or its body alone.")


class SpanSchema(AnswerSchema):
    """A place in the text, in Unicode code points."""

    start = Whole("Where it begins.", keywords={"minimum": 0})
    end = Whole("Where it ends.", keywords={"minimum": 0})
    text = Text("The words that stand there.")


class SpansField(Many):
    """The words that something rests on, under the key ``from``."""

    def __init__(self) -> None:
        super().__init__("The words it rests on.", SpanSchema, attribute="from")
        self.data_key = "from"


class IgnoredSchema(AnswerSchema):
    """A part of the text that was not read for sizes."""

    start = Whole("Where it begins.", keywords={"minimum": 0})
    end = Whole("Where it ends.", keywords={"minimum": 0})
    why = Text(
        "Why: a signature, a footer, quoted, superseded, struck out, the header of an earlier"
        " message, or longer than is read."
    )


class ReadSchema(AnswerSchema):
    """One value that the message states, or that follows from it by arithmetic."""

    at = Text("Where in `order` it stands (RFC 6901).")
    mm = Number("The length, mm.", absent="Absent where it is no length.")
    value = Free(
        "The value, in the writer's own words where those are outside our lists.",
        absent="Absent where it is a length.",
        keywords=_ANY,
    )
    how = OneOf("Whether it was said, or worked out from what was.", ("said", "worked-out"))
    spans = SpansField()


class AssumedSchema(AnswerSchema):
    """One value that the message does not state, taken for `proposal`."""

    at = Text("Where in `proposal` it stands (RFC 6901).")
    value = Free("The value that was taken.", keywords=_ANY)
    says = Text("What was taken, as a sentence to the customer.")


class ReadingSchema(AnswerSchema):
    """One way to read what is doubtful."""

    value = Text("The value; empty where none can be named.")
    spans = SpansField()


class DoubtfulSchema(AnswerSchema):
    """What is said in two ways, or in a way that names no value."""

    at = Text("Where in `order` it would stand (RFC 6901).")
    says = Text("What is doubtful.")
    readings = Many("The ways to read it.", ReadingSchema)


class MissingSchema(AnswerSchema):
    """What has to be settled and is not said."""

    at = Text("Where in `order` it would stand (RFC 6901).")
    asks = Text("The question to the customer.")


class CustomerSchema(AnswerSchema):
    """Who asks, as far as the message says; null where it does not."""

    name = Text("The name of whom it is from.", or_null=True)
    reply_to = Text("The address that they want the answer at.", or_null=True)
    reply_to_differs = YesOrNo("Whether that is not the address it was sent from.")
    phone = Text("The telephone number given.", or_null=True)
    address = Text("Their postal address.", or_null=True)
    language = OneOf("The language of the message.", ("en", "de"))
    subject = Text("The message's subject.", or_null=True)
    message_id = Text("The message's own identifier.", or_null=True)
    references = Text("The identifiers that an answer to it refers to.", or_null=True)
    written = Day("The day on which it was written.", or_null=True)


class EnquirySchema(AnswerSchema):
    """A message, read."""

    is_enquiry = YesOrNo("Whether somebody asks for a slab.")
    text = Text("The whole text, decoded, without markup. Escape it before it is shown.")
    ignored = Many("Parts of the text that were left out, each with why.", IgnoredSchema)
    order = Free(
        "What the message states, as members of an order; it may be incomplete.",
        keywords=_OBJECT,
    )
    read = Many("Every value taken into `order`, with the words it rests on.", ReadSchema)
    assumed = Many("Every value taken into `proposal` beside those.", AssumedSchema)
    doubtful = Many("What is said in two ways.", DoubtfulSchema)
    missing = Many("What is to be asked.", MissingSchema)
    proposal = Free(
        "The order completed, as `POST /v1/quotes` takes it; null where the sizes of an outline"
        " are unsaid.",
        or_null=True,
        keywords=_OR_NULL,
    )
    attachments = Many("Names of what is attached; none of it is read.", fields.String())
    rests_on_attachment = YesOrNo("Whether the message speaks of what is attached.")
    customer = Part("Who asks for it.", CustomerSchema)


ENQUIRY: Final = EnquirySchema()
