"""An order with a change applied: its new answer, and the link that opens it."""

from __future__ import annotations

import base64
import copy
import json
from collections.abc import Mapping
from dataclasses import replace
from typing import Any

from ledgerstone.application.answering import answer_order
from ledgerstone.application.context import QuoteContext
from ledgerstone.codec.links import link_of, offer_of, write_offer
from ledgerstone.codec.patch import apply, write_patch
from ledgerstone.codec.tokens import LONGEST_LINK
from ledgerstone.errors import NotUnderstood, TooIntricate
from ledgerstone.json_types import Members
from ledgerstone.papers import ChangeView, QuoteView
from ledgerstone.quote import Quote, SentBack
from ledgerstone.remedies import Fix, Remedy, State
from ledgerstone.stages.keys import OrderKey
from ledgerstone.wording import Money


def answer_changed(
    document: Members, state: State, context: QuoteContext
) -> Quote | SentBack | None:
    """Answer a changed order; None if it is not worked out."""
    try:
        return answer_order(patched(document, state), context, search=False)
    except (NotUnderstood, TooIntricate):
        return None


def view_of(quote: Quote, context: QuoteContext, title: str, changes: tuple[str, ...]) -> QuoteView:
    """Return the quote of a changed order with its title and its link."""
    offer = offer_of(quote, context.workshop)
    link = link_of(context.tokens.sign("quote", write_offer(offer)), context.workshop)
    return QuoteView(quote=quote, name=offer.name, link=link, title=title, changes=changes)


def order_link(document: Mapping[str, Any], context: QuoteContext) -> str | None:
    """Return the address at which the page opens an order without a quote; None if too long.

    ``#order=`` is the order's JSON in base64url; its content is parsed as an order only.
    """
    text = json.dumps(document, separators=(",", ":"), ensure_ascii=False).encode()
    packed = base64.urlsafe_b64encode(text).rstrip(b"=").decode()
    link = f"{context.workshop.web.page_url}#order={packed}"
    return link if len(link) <= LONGEST_LINK else None


class ChangeLinks:
    """Links of the changes to one order: ``most_quoted`` of them as quotes, the others as orders.

    A change that is linked twice has the same link.
    """

    def __init__(self, document: Members, context: QuoteContext, most_quoted: int) -> None:
        self._document, self._context, self._left = document, context, most_quoted
        self._made: dict[OrderKey, ChangeView] = {}

    def view(self, message: str, change: Remedy | Fix) -> ChangeView:
        """Return one change with its link; it has a price only if nothing else stops the order."""
        key = change.state.key
        if key not in self._made:
            self._made[key] = self._quoted(message, change) or self._ordered(message, change)
        return replace(self._made[key], says=message)

    def _quoted(self, message: str, change: Remedy | Fix) -> ChangeView | None:
        if change.price is None or self._left == 0:
            return None
        self._left -= 1
        context = replace(self._context, for_maker=False)
        answer = answer_changed(self._document, change.state, context)
        if not isinstance(answer, Quote):
            return None
        link = view_of(answer, context, "", (message,)).link
        return ChangeView(message, Money(answer.price.currency, answer.price.total), link)

    def _ordered(self, message: str, change: Remedy | Fix) -> ChangeView:
        price = change.price
        total = None if price is None else Money(price.currency, price.total)
        changed = patched(self._document, change.state)
        return ChangeView(message, total, order_link(changed, self._context))


def patched(document: Members, state: State) -> Members:
    """Return an order's document with a change applied."""
    changed = copy.deepcopy(document)
    apply(changed, write_patch(document, state))
    return changed
