"""What a quote's link carries: the offer as it was made, to be proved later without a store."""

from __future__ import annotations

from dataclasses import dataclass, replace
from datetime import date
from decimal import Decimal, InvalidOperation
from typing import Any

from ledgerstone.codec.canonical import canonical
from ledgerstone.codec.order_out import write_order
from ledgerstone.codec.tokens import LONGEST_LINK, Tokens, reference
from ledgerstone.errors import DatedAhead, Fault, NotUnderstood, TokenError
from ledgerstone.message import Message
from ledgerstone.price import Line
from ledgerstone.quote import Quote
from ledgerstone.terms import Standing
from ledgerstone.wording import speech_of
from ledgerstone.workshop.records import Workshop

TOO_LONG = (
    "This order is too long for a link. Save the order as a file and send that; this quote's token"
    " opens it again."
)


@dataclass(frozen=True, slots=True, kw_only=True)
class LinkedOffer:
    """One offer as its link carries it.

    Attributes
    ----------
    order
        The order as JSON, without the postcode and without what it was a change to.
    area
        The delivery's area, which stands in place of the postcode.
    if_ordered_by
        The day until which ``ready_on`` holds.
    fingerprint
        The profile's, on the day of the offer.
    note, adjustments
        What the maker set for it and the customer reads.
    lines
        Of a price that the maker set; else they follow from the order. A margin is never carried.
    calendar
        The fingerprint of the calendar up to ``ready_on``; old links have none.
    """

    order: dict[str, Any]
    area: str | None
    issued: date
    valid_until: date
    currency: str
    net: Decimal
    tax: Decimal
    total: Decimal
    deposit: Decimal
    if_ordered_by: date
    ready_on: date
    standing: Standing
    fingerprint: str
    calendar: str = ""
    revision: str = ""
    reference: str = ""
    note: str = ""
    adjustments: tuple[Line, ...] = ()
    lines: tuple[Line, ...] = ()

    @property
    def name(self) -> str:
        """The reference with its revision's letter, as it is said on the telephone."""
        return f"{self.reference} {self.revision}".strip()

    @property
    def own_lines(self) -> tuple[Line, ...] | None:
        """What the net is made of, where the workshop set the price itself."""
        return self.lines or None


_LINES = {"own": "adjustments", "lines": "lines"}
# Members of a token and the attributes they carry, in the order in which they are written.
_DAYS = {"issued": "issued", "until": "valid_until", "by": "if_ordered_by", "ready": "ready_on"}
_MONEY = {"net": "net", "tax": "tax", "total": "total", "deposit": "deposit"}
_WORDS = {
    "area": "area", "cur": "currency", "standing": "standing", "cal": "calendar",
    "print": "fingerprint", "rev": "revision", "ref": "reference", "note": "note",
}  # fmt: skip


def offer_of(quote: Quote, workshop: Workshop, since: LinkedOffer | None = None) -> LinkedOffer:
    """Take from a quote what its link carries.

    Parameters
    ----------
    since
        The offer that this one changes: it lends its reference, and the next letter.
    """
    order = write_order(quote.order, compact=True)
    order.get("delivery", {}).pop("postcode", None)
    order.pop("since", None)
    offer = LinkedOffer(
        order=order,
        area=quote.area.name if quote.area is not None else None,
        issued=quote.issued,
        valid_until=quote.valid_until,
        currency=quote.price.currency,
        net=quote.price.net,
        tax=quote.price.tax,
        total=quote.price.total,
        deposit=quote.price.deposit,
        if_ordered_by=quote.lead_time.if_ordered_by,
        ready_on=quote.lead_time.ready_on,
        standing=quote.standing,
        fingerprint=workshop.fingerprint,
        calendar=quote.calendar,
        note=quote.terms.note,
        adjustments=quote.terms.adjustments,
        lines=_said_lines(quote, workshop) if quote.terms.sets_price else (),
    )
    return _named(offer, since)


def _said_lines(quote: Quote, workshop: Workshop) -> tuple[Line, ...]:
    """Lines of a price in the order's language: a link keeps the words that were sent."""
    speech = speech_of(quote.order, workshop)
    return tuple(Line(speech.say(line.label), line.amount) for line in quote.price.lines)


def _named(offer: LinkedOffer, since: LinkedOffer | None) -> LinkedOffer:
    """Give an offer its own reference, or that of the offer it changes with the next letter."""
    if since is None:
        return replace(offer, reference=reference(canonical(write_offer(offer))))
    same = _without_language(since.order) == _without_language(offer.order) and (
        since.total,
        since.ready_on,
    ) == (offer.total, offer.ready_on)
    letter = since.revision if same else next_letter(since.revision)
    return replace(offer, reference=since.reference, revision=letter)


def _without_language(order: dict[str, Any]) -> dict[str, Any]:
    """An order but for the language it is answered in: the same piece in another is no change."""
    return {key: member for key, member in order.items() if key != "language"}


def next_letter(letter: str) -> str:
    """Return the revision's letter after this one: A, B, … Z, AA."""
    number = 0
    for one in letter:
        number = number * 26 + ord(one) - ord("A") + 1
    number, letters = number + 1, ""
    while number:
        number, at = divmod(number - 1, 26)
        letters = chr(ord("A") + at) + letters
    return letters


def write_offer(offer: LinkedOffer) -> dict[str, Any]:
    """Write an offer as a token's content."""
    return {
        "order": offer.order,
        **{key: getattr(offer, name) for key, name in _WORDS.items() if getattr(offer, name)},
        **{key: getattr(offer, name).isoformat() for key, name in _DAYS.items()},
        **{key: f"{getattr(offer, name):.2f}" for key, name in _MONEY.items()},
        **{
            key: [[line.label, f"{line.amount:.2f}"] for line in lines]
            for key, name in _LINES.items()
            if (lines := getattr(offer, name))
        },
    }


def open_offer(token: str, tokens: Tokens, today: date) -> LinkedOffer:
    """Open a quote's token.

    Raises
    ------
    TokenError
        It is none of ours.
    DatedAhead
        It is dated after today.
    """
    offer = _read_offer(tokens.open("quote", token))
    if offer.issued > today:
        raise DatedAhead(offer.issued)
    return offer


def offer_named_at(
    pointer: str, token: str, tokens: Tokens, today: date, *, not_ours: Message
) -> LinkedOffer:
    """Open a quote's token that a request names.

    Parameters
    ----------
    pointer
        Where in the request it stands.
    not_ours
        What to say of a token that is none of ours.

    Raises
    ------
    NotUnderstood
        It is none of ours, or is dated after today.
    """
    try:
        return open_offer(token, tokens, today)
    except DatedAhead as ahead:
        why = ahead.message
    except TokenError:
        why = not_ours
    raise NotUnderstood((Fault(pointer, why),))


def _read_offer(content: dict[str, Any]) -> LinkedOffer:
    try:
        members: dict[str, Any] = {"area": None, "order": dict(content["order"])}
        members |= {name: date.fromisoformat(content[key]) for key, name in _DAYS.items()}
        members |= {name: Decimal(content[key]) for key, name in _MONEY.items()}
        members |= {name: content[key] for key, name in _WORDS.items() if key in content}
        for key, name in _LINES.items():
            told = content.get(key, ())
            members[name] = tuple(Line(str(label), Decimal(amount)) for label, amount in told)
        return LinkedOffer(**members)
    except (KeyError, TypeError, ValueError, InvalidOperation):
        raise TokenError("This link is not one of ours.") from None


def link_of(token: str | None, workshop: Workshop) -> str | None:
    """Return the address at which the page opens a quote, where it is short enough to send."""
    if token is None:
        return None
    link = f"{workshop.web.page_url}#quote={token}"
    return link if len(link) <= LONGEST_LINK else None


def link_members(offer: LinkedOffer, workshop: Workshop, tokens: Tokens) -> dict[str, Any]:
    """Write an offer's token and link, or why there is no link."""
    token = tokens.sign("quote", write_offer(offer))
    link = link_of(token, workshop)
    members: dict[str, Any] = {"token": token, "link": link}
    if link is None:
        members["no_link"] = {"reason": "too-long", "says": TOO_LONG}
    return {key: value for key, value in members.items() if value is not None}
