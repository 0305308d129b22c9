"""A reply to a customer, as JSON members or as a draft: what it tells, its links and pictures."""

from __future__ import annotations

import json
from collections.abc import Callable, Iterable, Iterator, Mapping, Sequence
from dataclasses import replace
from datetime import date
from typing import Any, Final

from ledgerstone.application.addressee import answered_in
from ledgerstone.application.changed_orders import ChangeLinks, answer_changed, view_of
from ledgerstone.application.context import QuoteContext
from ledgerstone.application.drawings import Annotations, Drawer, drawing_content, drawing_token
from ledgerstone.application.resolving import ResolvedRequest, Wanted, read_ask, resolve
from ledgerstone.codec.changes import say_differences
from ledgerstone.codec.order_out import write_order
from ledgerstone.codec.paper_schemas import REPLY
from ledgerstone.codec.request_schemas import ReplyAskSchema
from ledgerstone.drawing import MISSING, drawing_effort, plan_picture_effort, rasterise
from ledgerstone.order import Order
from ledgerstone.papers import (
    ChangeView,
    Enclosed,
    FindingView,
    Letter,
    QuoteView,
    Reply,
    SentBackView,
    Templates,
    message,
    reply,
)
from ledgerstone.papers.asking import chosen_questions, taken_text
from ledgerstone.papers.message import Answered
from ledgerstone.quote import Quote, SentBack
from ledgerstone.remedies import Fix, Found, Remedy
from ledgerstone.wording import english

PICTURE_PX: Final = 1120  # shown 560 wide, sharp on a fine screen
A_LETTER: Final = 1.0  # units of work
FOR_PICTURES: Final = 40.0  # so many for all pictures in a draft
MOST_QUOTED: Final = 12  # slabs quoted anew for links in one reply; the other links carry an order
MOST_WAYS: Final = 4
SCHEMA: Final = ReplyAskSchema()
_NO_LIGHTER = "We looked for a lighter way to have it, and found none that we can promise."
_NO_CHEAPER = "We looked for a cheaper way to have it, and found none that we can promise."


def make_reply(document: object, context: QuoteContext, templates: Templates) -> dict[str, str]:
    """Write a reply as JSON members; its pictures are at the service's own addresses.

    Raises
    ------
    NotUnderstood, TooIntricate, TemplateFault
    """
    context = context.of_one_request()
    ask, resolved = _resolved(document, context, _a_letter)
    pictures = _picture_addresses(resolved, context)
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
        The message that it answers, where there is one.

    Raises
    ------
    NotUnderstood, TooIntricate, TemplateFault
    """
    context = context.of_one_request()
    ask, resolved = _resolved(document, context, _with_pictures)
    answered = answered or answered_in(ask)
    pictures = list(_pictures(resolved, context))
    shown = [f"cid:{picture.cid}" for picture in pictures]
    replaces = answered.replaces if answered is not None else None
    made = _reply(ask, resolved, shown, context, templates, replaces=replaces)
    return message(made, context.workshop, [*pictures, *_order_file(resolved)], answered)


def _resolved(
    document: object, context: QuoteContext, made_of_it: Callable[[Order], float]
) -> tuple[dict[str, Any], ResolvedRequest]:
    ask = read_ask(SCHEMA, document)
    wanted = Wanted(made_of_it, savings=ask.get("ways", False))
    return ask, resolve(ask, context, wanted)


def _a_letter(order: Order) -> float:
    """Units of work to write a letter: its words, and the links of what might be changed."""
    return A_LETTER + sum(drawing_effort([slab]) for slab in order.slabs)


def _with_pictures(order: Order) -> float:
    """Units of work to write a letter with its pictures inside."""
    return _a_letter(order) + _pictures_effort(order, _picture_px(order))


def _picture_px(order: Order) -> int:
    """How wide the plans in a draft are: less sharp where there are many; 0 where too many."""
    widths = (PICTURE_PX, PICTURE_PX // 2)
    return next((px for px in widths if _pictures_effort(order, px) <= FOR_PICTURES), 0)


def _pictures_effort(order: Order, width_px: int) -> float:
    return sum(plan_picture_effort(slab, width_px) for slab in order.slabs) if width_px else 0.0


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
    letter = Letter(
        context.workshop,
        ask.get("customer", ""),
        is_full,
        taken_text([one["says"] for one in ask.get("assumed", ())]),
        chosen_questions(ask.get("missing", ())),
        replaces,
    )
    if isinstance(resolved.answer, SentBack):
        view = _sent_back_view(resolved.document, resolved.answer, pictures, context)
        return reply(view, letter, templates)
    drawn = _quote_view(resolved, resolved.answer, pictures)
    if not ask.get("ways", False):
        return reply([drawn], letter, templates)
    ways, missing = _ways(resolved.document, resolved.answer, context)
    return reply([replace(drawn, title="As drawn"), *ways], letter, templates, missing)


def _quote_view(resolved: ResolvedRequest, quote: Quote, pictures: Sequence[str]) -> QuoteView:
    offer, since = resolved.offer, resolved.since
    changes: tuple[str, ...] = ()
    if since is not None and offer is not None:
        differences = say_differences(since.order, offer.order, since.area, offer.area)
        changes = tuple(map(english, differences))
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
) -> tuple[list[QuoteView], list[str]]:
    """Find the lighter and the cheaper way among the quote's ways to save."""
    found = [
        (way.says, quote)
        for way in drawn.ways[:MOST_WAYS]
        if isinstance(quote := answer_changed(document, way.state, context), Quote)
    ]
    lighter = min(found, key=lambda one: _slabs_kg(one[1]), default=None)
    cheaper = min(found, key=lambda one: one[1].price.total, default=None)
    if lighter is not None and _slabs_kg(lighter[1]) >= _slabs_kg(drawn):
        lighter = None
    if cheaper is not None and cheaper[1].price.total >= drawn.price.total:
        cheaper = None
    missing = [
        says for way, says in ((lighter, _NO_LIGHTER), (cheaper, _NO_CHEAPER)) if way is None
    ]
    titled = [("Lighter", lighter), ("Cheaper", cheaper)]
    if lighter is not None and lighter is cheaper:
        titled = [("Lighter and cheaper", lighter)]
    views = [
        view_of(way[1], context, title, _changes(way[0]))
        for title, way in titled
        if way is not None
    ]
    return views, missing


def _changes(says: str | Sequence[str]) -> tuple[str, ...]:
    return (says,) if isinstance(says, str) else tuple(says)


def _slabs_kg(quote: Quote) -> float:
    """All slabs together, to the tenth of a kilogram that is told; packing is no part of them."""
    slabs = zip(quote.order.slabs, quote.weights, strict=True)
    return sum(slab.quantity * round(weight.slab_kg, 1) for slab, weight in slabs)


# --- a send-back ---------------------------------------------------------------------------


def _sent_back_view(
    document: dict[str, Any], sent: SentBack, pictures: Sequence[str], context: QuoteContext
) -> SentBackView:
    links = ChangeLinks(document, context, max(2, MOST_QUOTED // len(sent.order.slabs)))
    fix = _fix(sent)
    at_once = None
    if fix is not None:
        at_once = next(_contained_links([(" ".join(fix.says), fix)], links, context), None)
    found = sent.found if sent.found is not None else Found()
    remedies = found.beside_the_fix if at_once is not None else found.remedies_of
    findings = tuple(
        FindingView(
            finding.says,
            tuple(
                _contained_links(((one.says, one) for one in remedies(finding.id)), links, context)
            ),
            tuple(one.says for one in sent.findings if one.follows_from == finding.id),
        )
        for finding in sent.findings
        if finding.level == "stops" and finding.follows_from is None
    )
    return SentBackView(
        sent=sent,
        findings=findings,
        all_at_once=at_once,
        is_bigger=sent.found is not None and sent.found.fix_all is None,
        why_not=_why_not(sent),
        pictures=tuple(pictures),
    )


def _why_not(sent: SentBack) -> str | None:
    why = sent.found.why_not if sent.found is not None else None
    return None if why is None else english(why)


def _contained_links(
    changes: Iterable[tuple[str, Remedy | Fix]], links: ChangeLinks, context: QuoteContext
) -> Iterator[ChangeView]:
    """Link changes; one that a fault of ours lost is left out."""
    for says, one in changes:
        view: ChangeView | None = None
        with context.contain("remedy"):
            view = links.view(says, one)
        if view is not None:
            yield view


def _fix(sent: SentBack) -> Fix | None:
    found = sent.found
    return None if found is None else found.fix_all or found.nearest_makeable


# --- pictures and files --------------------------------------------------------------------


def _picture_addresses(resolved: ResolvedRequest, context: QuoteContext) -> list[str]:
    order = resolved.answer.order
    token = drawing_token(order, context.tokens, _annotations(resolved))
    if token is None:
        return []
    base = f"{context.workshop.web.base_url}/v1/drawings/{token}/plan.png"
    return [f"{base}?width={PICTURE_PX}&slab={i}" for i in range(len(order.slabs))]


def _pictures(resolved: ResolvedRequest, context: QuoteContext) -> Iterator[Enclosed]:
    order = resolved.answer.order
    width_px = _picture_px(order)
    content = drawing_content(order, _annotations(resolved))
    drawer = Drawer(content, context.workshop, context.contain)
    for i in range(len(order.slabs) if width_px else 0):
        picture = drawer.painted("plan", i, width_px) or rasterise(MISSING, width_px)
        name = f"plan-{i + 1}"
        yield Enclosed(f"{name}.png", "image/png", picture, f"{name}@ledgerstone")


def _annotations(resolved: ResolvedRequest) -> Annotations:
    """Annotate a letter's plans: a letter numbers what stops, and nothing else."""
    stops = tuple(
        finding
        for finding in resolved.answer.findings
        if finding.level == "stops" and finding.follows_from is None
    )
    if resolved.offer is None:
        return Annotations(findings=stops)
    return Annotations(reference=resolved.offer.name, issued=resolved.offer.issued)


def _order_file(resolved: ResolvedRequest) -> list[Enclosed]:
    """Put the order beside a letter whose link would be too long."""
    if isinstance(resolved.answer, SentBack) or resolved.link is not None:
        return []
    order = json.dumps(write_order(resolved.answer.order), indent=2, ensure_ascii=False)
    return [Enclosed("order.json", "application/json", order.encode())]
