"""A reply by email: a quote, several ways to have it, or a send-back, as text and HTML."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from typing import Any, Final, Literal

from ledgerstone.errors import TemplateFault
from ledgerstone.papers.letter import Letter, names_of
from ledgerstone.papers.sheet import Content, headed
from ledgerstone.papers.templates import Templates
from ledgerstone.papers.views import QuoteView, SentBackView
from ledgerstone.wording import Message, Money

Tone = Literal["short", "full"]
LARGEST_HTML: Final = 100_000  # bytes; past 102 kB a large mail service cuts a letter off
_LONGEST_SUBJECT = 150


@dataclass(frozen=True, slots=True)
class Reply:
    """A letter's subject, its plain text and its HTML."""

    subject: str
    text: str
    html: str


@dataclass(frozen=True, slots=True)
class PageAnswer:
    """An answer as a part of the page, and the title of a page that holds it."""

    title: str
    html: str


def reply(
    views: Sequence[QuoteView] | SentBackView,
    letter: Letter,
    templates: Templates,
    missing_ways: Sequence[Message] = (),
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
    thanks, subject = Message("letter-only-asks"), Message("letter-subject-questions")
    return _filled(_whole({"sent_back": None, "options": []}, (thanks, subject), letter), templates)


def answer_in_page(
    views: Sequence[QuoteView] | SentBackView,
    letter: Letter,
    templates: Templates,
    *,
    may_fix: bool = False,
) -> PageAnswer:
    """Write a reply as a part of the page, for a browser without scripts.

    Parameters
    ----------
    may_fix
        Whether the page's form can make the one change that settles everything.

    Raises
    ------
    TemplateFault
    """
    make_change = letter.speech.say(Message("letter-make-change")) if may_fix else ""
    content = {**_content(views, letter), "make_change": make_change}
    return PageAnswer(content["subject"], templates.fill("answer.html", content))


def _reply(
    views: Sequence[QuoteView] | SentBackView,
    letter: Letter,
    templates: Templates,
    missing_ways: Sequence[Message],
) -> Reply:
    return _filled(_content(views, letter, missing_ways), templates)


def _content(
    views: Sequence[QuoteView] | SentBackView,
    letter: Letter,
    missing_ways: Sequence[Message] = (),
) -> Content:
    """Describe all of an answer: of a send-back, or of the ways to have it."""
    if isinstance(views, SentBackView):
        content: Content = {"sent_back": letter.sent_back(views), "options": []}
        heads = (
            Message("letter-stands-in-the-way"),
            Message("letter-subject-sent-back", slabs=names_of(views.sent.order)),
        )
        return _whole(content, heads, letter)
    options = [letter.option(view) for view in views]
    content = {"sent_back": None, "options": [options[0], *_apart(options)]}
    return _whole(content, (_thanks(views, letter), _subject(views, letter)), letter, missing_ways)


def _thanks(views: Sequence[QuoteView], letter: Letter) -> Message:
    """State that it can be made, but in a trial; what carries it is unchecked where untold."""
    supports = "checked"
    if any(finding.check == "rests-not-told" for finding in views[0].quote.findings):
        supports = "open"
    if len(views) > 1:
        linked = "yes" if letter.is_linked else "no"
        return Message("letter-options", supports=supports, linked=linked)
    trial = letter.workshop.standing.trial
    return Message("letter-would-make" if trial else "letter-can-make", supports=supports)


def _whole(
    content: Content,
    heads: tuple[Message, Message],
    letter: Letter,
    missing_ways: Sequence[Message] = (),
) -> Content:
    thanks, subject = heads[0], headed(heads[1], letter.workshop)
    if letter.workshop.workshop.demonstration:
        subject = Message("letter-subject-invented", subject=subject)
    return {
        **letter.content(),
        **content,
        "thanks": letter.speech.say(thanks),
        "subject": _short(letter.speech.value(subject)),
        "missing_ways": [letter.speech.say(way) for way in missing_ways],
    }


def _filled(content: Content, templates: Templates) -> Reply:
    return Reply(
        subject=content["subject"],
        text=templates.fill("reply.txt", content),
        html=templates.fill("reply.html", content),
    )


def _apart(options: Sequence[dict[str, Any]]) -> list[dict[str, Any]]:
    """Return for each further way only its differences from the drawn one."""
    first = options[0]
    lists = ("conditions", "advice")
    return [
        {
            **option,
            "lines": [],
            **{key: [line for line in option[key] if line not in first[key]] for key in lists},
        }
        for option in options[1:]
    ]


def _subject(views: Sequence[QuoteView], letter: Letter) -> Message:
    """Describe the answer in a line: what it is, of what, its price and day."""
    quote = views[0].quote
    offer, slabs = letter.offer(views[0]), names_of(quote.order)
    if len(views) > 1:
        return Message("letter-subject-options", offer=offer, slabs=slabs, count=len(views))
    return Message(
        "letter-subject",
        offer=offer,
        slabs=slabs,
        total=Money(quote.price.currency, quote.price.total),
        ready=quote.lead_time.ready_on,
    )


def _short(subject: str) -> str:
    return subject if len(subject) <= _LONGEST_SUBJECT else f"{subject[: _LONGEST_SUBJECT - 1]}…"
