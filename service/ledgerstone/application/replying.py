"""A reply to a customer, as JSON members or as a draft: its content, links and pictures."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator, Mapping, Sequence
from dataclasses import replace
from datetime import date
from typing import Any, Final

from ledgerstone.application.addressee import answered_in
from ledgerstone.application.as_asked import changed_since, order_as_asked
from ledgerstone.application.changed_orders import ChangeLinks, answer_changed, view_of
from ledgerstone.application.context import QuoteContext
from ledgerstone.application.letter_pictures import (
    order_file,
    picture_addresses,
    picture_px,
    pictures_effort,
    pictures_of,
)
from ledgerstone.application.resolving import ResolvedRequest, Wanted, read_ask, resolve
from ledgerstone.checks import first_stops, for_customers, is_said_by
from ledgerstone.codec.changes import say_differences
from ledgerstone.codec.paper_schemas import REPLY
from ledgerstone.codec.request_schemas import ReplyAskSchema
from ledgerstone.drawing import drawing_effort
from ledgerstone.order import Order
from ledgerstone.papers import (
    ChangeView,
    FindingView,
    Letter,
    QuoteView,
    Reply,
    SentBackView,
    Templates,
    message,
    reply,
)
from ledgerstone.papers.asking import chosen_questions, taken_sentences, taken_text
from ledgerstone.papers.message import Answered
from ledgerstone.quote import Quote, SentBack
from ledgerstone.remedies import Fix, Found, Remedy
from ledgerstone.wording import Message, Speech, speech_of
from ledgerstone.workshop.review.advice import links_left_out

LETTER_UNITS: Final = 1.0  # units of work
MAX_SLABS_QUOTED: Final = 12  # slabs quoted for links in one reply; the other links carry an order
MAX_WAYS_LOOKED_AT: Final = 4
SCHEMA: Final = ReplyAskSchema()
_NO_LIGHTER: Final = Message("letter-no-lighter")
_NO_CHEAPER: Final = Message("letter-no-cheaper")


def make_reply(document: object, context: QuoteContext, templates: Templates) -> dict[str, str]:
    """Write a reply as JSON members; its pictures are at the service's own addresses.

    Raises
    ------
    NotUnderstood, TooIntricate, TemplateFault
    """
    context = context.of_one_request()
    ask, resolved = _resolved(document, context, letter_effort)
    pictures = picture_addresses(resolved, context)
    written: dict[str, str] = REPLY.dump(_reply(ask, resolved, pictures, context, templates))
    return written


def make_draft(
    document: object,
    context: QuoteContext,
    templates: Templates,
    answered: Answered | None = None,
) -> bytes:
    """Write a reply as a draft that mail programs open, its pictures inside.

    Parameters
    ----------
    answered
        The message that it answers, if any.

    Raises
    ------
    NotUnderstood, TooIntricate, TemplateFault
    """
    context = context.of_one_request()
    ask, resolved = _resolved(document, context, _with_pictures)
    answered = answered or answered_in(ask)
    pictures = list(pictures_of(resolved, context))
    shown = [f"cid:{picture.cid}" for picture in pictures]
    replaces = answered.replaces if answered is not None else None
    made = _reply(ask, resolved, shown, context, templates, replaces=replaces)
    return message(made, context.workshop, [*pictures, *order_file(resolved)], answered)


def _resolved(
    document: object, context: QuoteContext, effort_of: Callable[[Order], float]
) -> tuple[dict[str, Any], ResolvedRequest]:
    ask = read_ask(SCHEMA, document)
    wanted = Wanted(effort_of, savings=ask.get("ways", False))
    return ask, resolve(ask, context, wanted)


def letter_effort(order: Order) -> float:
    """Return the units of work to write a letter: its text, and the links of its changes."""
    return LETTER_UNITS + sum(drawing_effort([slab]) for slab in order.slabs)


def _with_pictures(order: Order) -> float:
    """Return the units of work to write a letter with enclosed pictures."""
    return letter_effort(order) + pictures_effort(order, picture_px(order))


def _reply(
    ask: Mapping[str, Any],
    resolved: ResolvedRequest,
    pictures: Sequence[str],
    context: QuoteContext,
    templates: Templates,
    *,
    replaces: date | None = None,
) -> Reply:
    is_full = ask.get("tone", "full") == "full"
    speech = speech_of(resolved.answer.order, context.workshop)
    asked = order_as_asked(ask, context)
    letter = Letter(
        workshop=context.workshop,
        speech=speech,
        today=context.today,
        customer=ask.get("customer", ""),
        is_full=is_full,
        taken=taken_text(taken_sentences(ask.get("assumed", ()), ask.get("missing", ())), speech),
        questions=chosen_questions(ask.get("missing", ())),
        replaces=replaces,
        wished=None if asked is None else asked.needed_by,
        is_linked=links_left_out(context.workshop) is None,
    )
    if isinstance(resolved.answer, SentBack):
        view = sent_back_view(resolved.document, resolved.answer, pictures, context)
        return reply(view, letter, templates)
    drawn = quote_view(resolved, resolved.answer, pictures, speech)
    if asked is not None and not drawn.changes:
        changes = changed_since(asked, resolved.answer.order, ask["asked"], context)
        drawn = replace(drawn, changes=tuple(map(speech.say, changes)))
    if not ask.get("ways", False):
        return reply([drawn], letter, templates)
    ways, missing = _ways(resolved.document, resolved.answer, context)
    drawn = replace(drawn, title=speech.say(Message("letter-way", way="drawn")))
    return reply([drawn, *ways], letter, templates, missing)


# --- a quote, and other ways to have it ---------------------------------------------------


def quote_view(
    resolved: ResolvedRequest, quote: Quote, pictures: Sequence[str], speech: Speech
) -> QuoteView:
    """Return a quote with its name, its link and its changes."""
    offer, since = resolved.offer, resolved.since
    changes: tuple[str, ...] = ()
    if since is not None and offer is not None:
        differences = say_differences(since.order, offer.order, since.area, offer.area)
        changes = tuple(map(speech.say, differences))
    return QuoteView(
        quote=quote,
        name=offer.name if offer is not None else "",
        link=resolved.link,
        pictures=tuple(pictures),
        changes=changes,
        whole=resolved.whole,
    )


def _ways(
    document: dict[str, Any], drawn: Quote, context: QuoteContext
) -> tuple[list[QuoteView], list[Message]]:
    """Find the lighter and the cheaper way among the quote's ways to save."""
    speech = speech_of(drawn.order, context.workshop)
    found = [
        (tuple(map(speech.say_all, way.sentences)), quote)
        for way in drawn.ways[:MAX_WAYS_LOOKED_AT]
        if isinstance(quote := answer_changed(document, way.state, context), Quote)
    ]
    lighter = min(found, key=lambda candidate: _slabs_kg(candidate[1]), default=None)
    cheaper = min(found, key=lambda candidate: candidate[1].price.total, default=None)
    if lighter is not None and _slabs_kg(lighter[1]) >= _slabs_kg(drawn):
        lighter = None
    if cheaper is not None and cheaper[1].price.total >= drawn.price.total:
        cheaper = None
    missing = [
        none for way, none in ((lighter, _NO_LIGHTER), (cheaper, _NO_CHEAPER)) if way is None
    ]
    titled = [("lighter", lighter), ("cheaper", cheaper)]
    if lighter is not None and lighter is cheaper:
        titled = [("both", lighter)]
    views = [
        view_of(way[1], context, speech.say(Message("letter-way", way=title)), way[0])
        for title, way in titled
        if way is not None
    ]
    return views, missing


def _slabs_kg(quote: Quote) -> float:
    """Return the mass of all slabs without packing, kg, rounded to 0.1 kg as shown."""
    slabs = zip(quote.order.slabs, quote.weights, strict=True)
    return sum(slab.quantity * round(weight.slab_kg, 1) for slab, weight in slabs)


# --- a send-back ---------------------------------------------------------------------------


def sent_back_view(
    document: dict[str, Any], sent: SentBack, pictures: Sequence[str], context: QuoteContext
) -> SentBackView:
    """Return a send-back with a link to each change that settles something."""
    links = ChangeLinks(document, context, max(2, MAX_SLABS_QUOTED // len(sent.order.slabs)))
    speech = speech_of(sent.order, context.workshop)
    fix = fix_of(sent)
    at_once = None
    if fix is not None:
        at_once = next(_contained_links([fix], speech, links, context), None)
    found = sent.found if sent.found is not None else Found()
    remedies = found.beside_the_fix if at_once is not None else found.remedies_of
    findings = tuple(
        FindingView(
            speech.say(finding.message),
            tuple(_contained_links(remedies(finding.id), speech, links, context)),
            tuple(
                speech.say(other.message)
                for other in for_customers(sent.findings, sent.order.delivery)
                if other.follows_from == finding.id and not is_said_by(finding, other)
            ),
        )
        for finding in first_stops(sent.findings)
    )
    return SentBackView(
        sent=sent,
        findings=findings,
        all_at_once=at_once,
        is_bigger=sent.found is not None and sent.found.fix_all is None,
        why_not=_why_not(sent, speech),
        pictures=tuple(pictures),
    )


def _why_not(sent: SentBack, speech: Speech) -> str | None:
    why = sent.found.why_not if sent.found is not None else None
    return None if why is None else speech.say(why)


def _contained_links(
    changes: Iterable[Remedy | Fix], speech: Speech, links: ChangeLinks, context: QuoteContext
) -> Iterator[ChangeView]:
    """Yield changes with their links; one that an internal fault lost is left out."""
    for change in changes:
        says = " ".join(map(speech.say_all, change.sentences))
        view: ChangeView | None = None
        with context.contain("remedy"):
            view = links.view(says, change)
        if view is not None:
            yield view


def fix_of(sent: SentBack) -> Fix | None:
    """Return the one change that settles everything, or the nearest that can be made."""
    found = sent.found
    return None if found is None else found.fix_all or found.nearest_makeable
