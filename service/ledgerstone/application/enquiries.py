"""An enquiry's message read into a draft order, as JSON members."""

from __future__ import annotations

from collections.abc import Mapping
from contextlib import suppress
from datetime import date
from typing import Any, Final

from marshmallow import ValidationError

from ledgerstone.application.context import QuoteContext
from ledgerstone.application.enquiry_units import take_units
from ledgerstone.application.replying import make_draft
from ledgerstone.codec.enquiry_schemas import ENQUIRY, EnquiryAskSchema
from ledgerstone.codec.order_in import walk
from ledgerstone.errors import NotUnderstood
from ledgerstone.message import Message
from ledgerstone.papers.asking import chosen_questions
from ledgerstone.papers.letter import Letter
from ledgerstone.papers.message import Answered, message
from ledgerstone.papers.reply import questions_alone
from ledgerstone.papers.templates import Templates
from ledgerstone.wording import known_language, workshop_speech
from ledgerstone.workshop.records import Workshop

_SCHEMA: Final = EnquiryAskSchema()


def read_enquiry_document(
    document: object, workshop: Workshop, today: date | None = None
) -> dict[str, Any]:
    """Read the message in a JSON document.

    Raises
    ------
    NotUnderstood
    """
    if not isinstance(document, Mapping):
        raise NotUnderstood.whole(Message("enquiry-not-object"))
    try:
        ask: dict[str, Any] = _SCHEMA.load(document)
    except ValidationError as fault:
        raise NotUnderstood.of(walk("", fault.messages)) from None
    return read_message(ask["message"], workshop, today)


def read_message(
    message: bytes | str, workshop: Workshop, today: date | None = None
) -> dict[str, Any]:
    """Read a whole message, or its body, received today.

    Raises
    ------
    NotUnderstood
        The message is empty.
    """
    if not message.strip():
        raise NotUnderstood.whole(Message("message-empty"))
    # Many tables and patterns, which take a fifth of a service's start: who sends none needs none.
    from ledgerstone.enquiry import read_enquiry  # noqa: PLC0415

    read = read_enquiry(message, workshop, today)
    take_units(read, workshop)
    written: dict[str, Any] = ENQUIRY.dump(read)
    return written


def make_answer(
    read: Mapping[str, Any],
    context: QuoteContext,
    templates: Templates,
    replaces: date | None = None,
) -> bytes:
    """Write the draft that answers a message: a quote, a send-back with its fix, or questions.

    Parameters
    ----------
    read
        The message, as ``read_message`` gives it.
    replaces
        The day of an earlier letter in the thread, which this one replaces.

    Raises
    ------
    TemplateFault
    """
    customer = read["customer"]
    answered = Answered(
        to=customer["reply_to"] or "",
        name=customer["name"] or "",
        subject=customer["subject"] or "",
        message_id=customer["message_id"] or "",
        references=customer["references"] or "",
        replaces=replaces,
    )
    name = " ".join((customer["name"] or "").split())
    if read["proposal"] is not None:
        ask = {
            "order": read["proposal"],
            "customer": name,
            "assumed": _assumptions(read),
            "missing": _questions(read),
        }
        with suppress(NotUnderstood):  # the proposal is no valid order: the letter only asks
            return make_draft(ask, context, templates, answered)
    questions = chosen_questions(_questions(read))
    language = known_language(customer["language"], usual=context.workshop.workshop.language)
    letter = Letter(
        workshop=context.workshop,
        speech=workshop_speech(language, context.workshop),
        today=context.today,
        customer=name,
        questions=questions,
        replaces=replaces,
    )
    return message(questions_alone(letter, templates), context.workshop, (), answered)


def _assumptions(read: Mapping[str, Any]) -> list[dict[str, Any]]:
    """Return what was assumed: where in the order, and in words."""
    return [{"at": entry["at"], "says": entry["says"]} for entry in read["assumed"]]


def _questions(read: Mapping[str, Any]) -> list[dict[str, Any]]:
    """Return the questions to the customer: what is missing, and what is doubtful."""
    doubts = [
        {"at": doubt["at"], "asks": doubt["asks"]}
        for doubt in read["doubtful"]
        if doubt.get("asks")
    ]
    return [*read["missing"], *doubts]
