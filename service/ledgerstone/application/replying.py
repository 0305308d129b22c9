"""A reply to a customer: what it tells, the links in it, and the letter itself."""

from __future__ import annotations

import base64
import copy
import json
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass, replace
from typing import Any, Final

from ledgerstone.application.answering import Desk
from ledgerstone.application.asks import Asked, ReplyAskSchema, answer_ask, read_ask
from ledgerstone.application.drawings import Beside, Drawer, drawing_content, drawing_token
from ledgerstone.codec.changes import say_differences
from ledgerstone.codec.links import link_of, offer_of, write_offer
from ledgerstone.codec.order_out import write_order
from ledgerstone.codec.patch import apply, write_patch
from ledgerstone.codec.tokens import LONGEST_LINK, Tokens
from ledgerstone.drawing import rasterise
from ledgerstone.errors import NotUnderstood
from ledgerstone.papers import (
    Enclosed,
    Letter,
    Reply,
    Templates,
    Told,
    ToldBack,
    ToldFinding,
    ToldWay,
    message,
    reply,
)
from ledgerstone.papers.words import money_text
from ledgerstone.quote import Quote, SentBack
from ledgerstone.remedies import Fix, Remedy, State

PICTURE_PX: Final = 1120  # shown 560 wide, sharp on a fine screen
MOST_QUOTED: Final = 12  # slabs quoted anew for links in one reply; the other links carry an order
MOST_WAYS: Final = 4
_SCHEMA = ReplyAskSchema()
_NO_LIGHTER = "We looked for a lighter way to have it, and found none that we can promise."
_NO_CHEAPER = "We looked for a cheaper way to have it, and found none that we can promise."


@dataclass(frozen=True, slots=True)
class Writer:
    """What a reply is written with: the maker's desk, the signer of links, the templates."""

    desk: Desk
    tokens: Tokens
    templates: Templates

    def write(self, document: object) -> dict[str, str]:
        """Write a reply as JSON members; its pictures are at the service's own addresses.

        Raises
        ------
        NotUnderstood, TemplateFault
        """
        ask, asked = self._read(document)
        made = self._reply(ask, asked, self._addresses(asked))
        return {"subject": made.subject, "text": made.text, "html": made.html}

    def draft(self, document: object) -> bytes:
        """Write a reply as a draft that mail programs open, its pictures inside.

        Raises
        ------
        NotUnderstood, TemplateFault
        """
        ask, asked = self._read(document)
        pictures = list(self._pictures(asked))
        made = self._reply(ask, asked, [f"cid:{picture.cid}" for picture in pictures])
        return message(made, self.desk.workshop, [*pictures, *_order_file(asked)])

    def _read(self, document: object) -> tuple[dict[str, Any], Asked]:
        ask = read_ask(_SCHEMA, document)
        ways = ask.get("ways", False)
        asked = answer_ask(ask, self.desk, self.tokens, search=ways)
        if isinstance(asked.answer, SentBack) and not ways:
            asked = answer_ask(ask, self.desk, self.tokens, search=True)
        return ask, asked

    def _reply(self, ask: Mapping[str, Any], asked: Asked, pictures: Sequence[str]) -> Reply:
        workshop = self.desk.workshop
        letter = Letter(workshop, ask.get("customer", ""), ask.get("tone", "full") == "full")
        if isinstance(asked.answer, SentBack):
            told = self._sent_back(asked.document, asked.answer, pictures)
            return reply(told, letter, self.templates)
        drawn = self._told(asked, asked.answer, pictures)
        if not ask.get("ways", False):
            return reply([drawn], letter, self.templates)
        ways, missing = self._ways(asked, asked.answer)
        first = replace(drawn, title="As drawn")
        return reply([first, *ways], letter, self.templates, missing)

    def _told(self, asked: Asked, quote: Quote, pictures: Sequence[str]) -> Told:
        offer = asked.offer
        changes: tuple[str, ...] = ()
        if asked.since is not None and offer is not None:
            since = asked.since
            changes = tuple(say_differences(since.order, offer.order, since.area, offer.area))
        return Told(
            quote=quote,
            name=offer.name if offer is not None else "",
            link=asked.link,
            pictures=tuple(pictures),
            changes=changes,
            whole=asked.whole,
        )

    # --- ways to have it ------------------------------------------------------------------

    def _ways(self, asked: Asked, drawn: Quote) -> tuple[list[Told], list[str]]:
        """Find the lighter and the cheaper way among the quote's ways to save."""
        found = [
            (way.says, quote)
            for way in drawn.ways[:MOST_WAYS]
            if isinstance(quote := self._changed(asked.document, way.state, self.desk), Quote)
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
        if lighter is not None and lighter is cheaper:
            return [self._way("Lighter and cheaper", *lighter)], missing
        titled = (("Lighter", lighter), ("Cheaper", cheaper))
        return [self._way(title, *way) for title, way in titled if way is not None], missing

    def _way(self, title: str, says: str | Sequence[str], quote: Quote) -> Told:
        offer = offer_of(quote, self.desk.workshop)
        link = link_of(self.tokens.sign("quote", write_offer(offer)), self.desk.workshop)
        changes = (says,) if isinstance(says, str) else tuple(says)
        return Told(quote=quote, name=offer.name, link=link, title=title, changes=changes)

    def _changed(
        self, document: dict[str, Any], state: State, desk: Desk
    ) -> Quote | SentBack | None:
        try:
            return desk.answer(_patched(document, state), search=False)
        except NotUnderstood:
            return None

    # --- ways out of a send-back ----------------------------------------------------------

    def _sent_back(
        self, document: dict[str, Any], sent: SentBack, pictures: Sequence[str]
    ) -> ToldBack:
        links = _Links(self, document, max(2, MOST_QUOTED // len(sent.order.slabs)))
        fix = _fix(sent)
        at_once = links.way(" ".join(fix.says), fix) if fix is not None else None
        remedies = sent.found.remedies if sent.found is not None else {}
        findings = tuple(
            ToldFinding(
                finding.says,
                tuple(links.way(one.says, one) for one in remedies.get(finding.id, ())),
            )
            for finding in sent.findings
            if finding.level == "stops"
        )
        return ToldBack(
            sent=sent,
            findings=findings,
            all_at_once=at_once,
            is_bigger=sent.found is not None and sent.found.fix_all is None,
            why_not=sent.found.why_not if sent.found is not None else None,
            pictures=tuple(pictures),
        )

    def quoted_way(self, document: dict[str, Any], says: str, state: State) -> ToldWay | None:
        """Link an order with a change applied as a quote; None where it does not quote."""
        answer = self._changed(document, state, replace(self.desk, makers=False))
        if not isinstance(answer, Quote):
            return None
        told = self._way("", says, answer)
        return ToldWay(says, money_text(answer.price.currency, answer.price.total), told.link)

    # --- pictures -------------------------------------------------------------------------

    def _addresses(self, asked: Asked) -> list[str]:
        token = drawing_token(asked.answer.order, self.tokens, _beside(asked))
        if token is None:
            return []
        base = f"{self.desk.workshop.web.base_url}/v1/drawings/{token}/plan.png"
        slabs = range(len(asked.answer.order.slabs))
        return [f"{base}?width={PICTURE_PX}&slab={i}" for i in slabs]

    def _pictures(self, asked: Asked) -> Iterable[Enclosed]:
        content = drawing_content(asked.answer.order, _beside(asked))
        drawer = Drawer(content, self.desk.workshop)
        for i in range(len(asked.answer.order.slabs)):
            painted = rasterise(drawer.drawn("plan", i), PICTURE_PX)
            name = f"plan-{i + 1}"
            yield Enclosed(f"{name}.png", "image/png", painted, f"{name}@ledgerstone")


def _beside(asked: Asked) -> Beside:
    """Say what a letter's plans stand beside: a letter numbers what stops, and nothing else."""
    stops = tuple(finding for finding in asked.answer.findings if finding.level == "stops")
    if asked.offer is None:
        return Beside(findings=stops)
    return Beside(reference=asked.offer.name, issued=asked.offer.issued)


class _Links:
    """Links of changes: so many of them as quotes, the others as orders."""

    def __init__(self, writer: Writer, document: dict[str, Any], quoted: int) -> None:
        self._writer, self._document, self._left = writer, document, quoted
        self._made: dict[str, ToldWay] = {}

    def way(self, says: str, one: Remedy | Fix) -> ToldWay:
        """Link one change, which has a price only where nothing else stops the order."""
        key = one.state.key
        if key not in self._made:
            self._made[key] = self._quoted(says, one) or self._ordered(says, one)
        return replace(self._made[key], says=says)

    def _quoted(self, says: str, one: Remedy | Fix) -> ToldWay | None:
        if one.price is None or self._left == 0:
            return None
        self._left -= 1
        return self._writer.quoted_way(self._document, says, one.state)

    def _ordered(self, says: str, one: Remedy | Fix) -> ToldWay:
        price = one.price
        said = None if price is None else money_text(price.currency, price.total)
        patched = _patched(self._document, one.state)
        return ToldWay(says, said, order_link(patched, self._writer.desk))


def _slabs_kg(quote: Quote) -> float:
    """All slabs together, to the tenth of a kilogram that is told; packing is no part of them."""
    slabs = zip(quote.order.slabs, quote.weights, strict=True)
    return sum(slab.quantity * round(weight.slab_kg, 1) for slab, weight in slabs)


def _fix(sent: SentBack) -> Fix | None:
    found = sent.found
    return None if found is None else found.fix_all or found.nearest_makeable


def _patched(document: dict[str, Any], state: State) -> dict[str, Any]:
    patched = copy.deepcopy(document)
    apply(patched, write_patch(document, state))
    return patched


def order_link(document: Mapping[str, Any], desk: Desk) -> str | None:
    """Return the address at which the page opens an order that has no quote, if short enough.

    ``#order=`` is the order's JSON in base64url: what it holds is only ever read as an order.
    """
    text = json.dumps(document, separators=(",", ":"), ensure_ascii=False).encode()
    packed = base64.urlsafe_b64encode(text).rstrip(b"=").decode()
    link = f"{desk.workshop.web.page_url}#order={packed}"
    return link if len(link) <= LONGEST_LINK else None


def _order_file(asked: Asked) -> list[Enclosed]:
    """Put the order beside a letter whose link would be too long."""
    if isinstance(asked.answer, SentBack) or asked.link is not None:
        return []
    order = json.dumps(write_order(asked.answer.order), indent=2, ensure_ascii=False)
    return [Enclosed("order.json", "application/json", order.encode())]
