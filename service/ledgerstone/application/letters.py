"""A letter to a customer: a reply about an order or an offer, or questions only."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from ledgerstone.application.addressee import answered_in
from ledgerstone.application.context import QuoteContext
from ledgerstone.application.replying import SCHEMA, make_draft, make_reply
from ledgerstone.application.resolving import read_members
from ledgerstone.codec.paper_schemas import REPLY
from ledgerstone.papers.asking import chosen_questions
from ledgerstone.papers.letter import Letter
from ledgerstone.papers.message import message
from ledgerstone.papers.reply import Reply, questions_alone
from ledgerstone.papers.templates import Templates
from ledgerstone.wording import known_language, workshop_speech


def write_letter(document: object, context: QuoteContext, templates: Templates) -> dict[str, str]:
    """Write a letter as JSON members.

    Raises
    ------
    NotUnderstood, TooIntricate, TemplateFault
    """
    if not _only_asks(document):
        return make_reply(document, context, templates)
    _, letter = _questions(document, context, templates)
    written: dict[str, str] = REPLY.dump(letter)
    return written


def draft_letter(document: object, context: QuoteContext, templates: Templates) -> bytes:
    """Write a letter as a draft that mail programs open.

    Raises
    ------
    NotUnderstood, TooIntricate, TemplateFault
    """
    if not _only_asks(document):
        return make_draft(document, context, templates)
    ask, letter = _questions(document, context, templates)
    return message(letter, context.workshop, (), answered_in(ask))


def _only_asks(document: object) -> bool:
    """Return whether there is nothing to price yet, and something to ask."""
    return (
        isinstance(document, Mapping)
        and not {"token", "order"} & document.keys()
        and bool(document.get("missing"))
    )


def _questions(
    document: object, context: QuoteContext, templates: Templates
) -> tuple[dict[str, Any], Reply]:
    ask = read_members(SCHEMA, document)
    questions = chosen_questions(ask["missing"])
    language = known_language(ask.get("language"), usual=context.workshop.workshop.language)
    letter = Letter(
        workshop=context.workshop,
        speech=workshop_speech(language, context.workshop),
        today=context.today,
        customer=ask.get("customer", ""),
        questions=questions,
    )
    return ask, questions_alone(letter, templates)
