"""A reply by email: a quote, several ways to have it, or a send-back, as text and HTML."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from typing import Any, Final, Literal

from ledgerstone.errors import TemplateFault
from ledgerstone.papers.letter import Letter
from ledgerstone.papers.templates import Templates
from ledgerstone.papers.views import QuoteView, SentBackView
from ledgerstone.wording import listed

Tone = Literal["short", "full"]
LARGEST_HTML: Final = 100_000  # bytes; past 102 kB a large mail service cuts a letter off
_LONGEST_SUBJECT = 150
_QUESTIONS = "A few questions about your enquiry"
_MOST_NAMED = 2


@dataclass(frozen=True, slots=True)
class Reply:
    """A letter's subject, its plain text and its HTML."""

    subject: str
    text: str
    html: str


def reply(
    views: Sequence[QuoteView] | SentBackView,
    letter: Letter,
    templates: Templates,
    missing_ways: Sequence[str] = (),
) -> Reply:
    """Write a reply.

    Parameters
    ----------
    views
        The quote, or each way to have it with the order as drawn first; or a send-back.
    missing_ways
        What was asked for and was not found.

    Raises
    ------
    TemplateFault
        The HTML is more than mail programs show whole.
    """
    made = _reply(views, letter, templates, missing_ways)
    if len(made.html.encode()) > LARGEST_HTML and letter.is_full:
        made = _reply(views, replace(letter, is_full=False), templates, missing_ways)
    if len(made.html.encode()) > LARGEST_HTML:
        raise TemplateFault("reply.html", "it is larger than the 100 kB that mail programs show.")
    return made


def questions_alone(letter: Letter, templates: Templates) -> Reply:
    """Write a reply that only asks, where nothing can be priced yet."""
    content: dict[str, Any] = {**letter.content(), "missing_ways": []}
    content |= {"sent_back": None, "options": [], "subject": _QUESTIONS}
    return Reply(
        subject=_QUESTIONS,
        text=templates.fill("reply.txt", content),
        html=templates.fill("reply.html", content),
    )


def _reply(
    views: Sequence[QuoteView] | SentBackView,
    letter: Letter,
    templates: Templates,
    missing_ways: Sequence[str],
) -> Reply:
    content: dict[str, Any] = {**letter.content(), "missing_ways": list(missing_ways)}
    if isinstance(views, SentBackView):
        content |= {"sent_back": letter.sent_back(views), "options": []}
    else:
        options = [letter.option(one) for one in views]
        content |= {"sent_back": None, "options": [options[0], *_apart(options)]}
    content["subject"] = _subject(content)
    return Reply(
        subject=content["subject"],
        text=templates.fill("reply.txt", content),
        html=templates.fill("reply.html", content),
    )


def _apart(options: Sequence[dict[str, Any]]) -> list[dict[str, Any]]:
    """Say of each further way only what is other than as drawn."""
    first = options[0]
    lists = ("cautions", "notes", "depends_on")
    return [
        {
            **one,
            "lines": [],
            "weeks": [],
            **{k: [s for s in one[k] if s not in first[k]] for k in lists},
        }
        for one in options[1:]
    ]


def _subject(content: dict[str, Any]) -> str:
    """Say the answer in a line: what it is, of what, its price and day."""
    if content["sent_back"]:
        names = _names(content["sent_back"]["slabs"])
        return _short(f"What to change before we can make it: {names}")
    first = content["options"][0]
    says = f"{first['standing']} {first['name']}: {_names(first['slabs'])}"
    if len(content["options"]) > 1:
        return _short(f"{says}, {len(content['options'])} ways to have it")
    return _short(f"{says}, {first['total']}, ready {first['ready']}")


def _names(slabs: Sequence[dict[str, Any]]) -> str:
    names = [slab["name"] for slab in slabs]
    if len(names) > _MOST_NAMED:
        return f"{names[0]} and {len(names) - 1} more"
    return listed(names)


def _short(subject: str) -> str:
    return subject if len(subject) <= _LONGEST_SUBJECT else f"{subject[: _LONGEST_SUBJECT - 1]}…"
