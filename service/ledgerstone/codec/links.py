"""The offer in a quote's link: signed, so that it can be verified without a database."""

from __future__ import annotations

from dataclasses import dataclass, replace
from datetime import date
from decimal import Decimal, InvalidOperation
from typing import Any

from ledgerstone.codec.canonical import canonical
from ledgerstone.codec.left_open import names_left_open
from ledgerstone.codec.order_out import write_order
from ledgerstone.codec.tokens import LONGEST_LINK, Tokens, reference
from ledgerstone.errors import DatedInFuture, Fault, NotUnderstood, TokenError
from ledgerstone.message import Message
from ledgerstone.price import PriceLine
from ledgerstone.quote import Quote
from ledgerstone.terms import OfferStanding
from ledgerstone.wording import speech_of, workshop_speech
from ledgerstone.workshop.records import Workshop


@dataclass(frozen=True, slots=True, kw_only=True)
class LinkedOffer:
    """The data of an offer in its link.

    Attributes
    ----------
    order
        The order as JSON, without its postcode and its ``since``.
    area
        The delivery's area, which replaces the postcode.
    if_ordered_by
        The day until which ``ready_on`` holds.
    fingerprint
        The profile's fingerprint on the day of the offer.
    note, adjustments
        The maker's note and lines, as the customer reads them.
    lines
        The lines of a price that the maker set; else they follow from the order. Never a margin.
    calendar
        The fingerprint of the calendar up to ``ready_on``; old links have none.
    left_open
        What was not given of the order, by name (``left_open.py``).
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
    standing: OfferStanding
    fingerprint: str
    calendar: str = ""
    revision: str = ""
    reference: str = ""
    note: str = ""
    adjustments: tuple[PriceLine, ...] = ()
    lines: tuple[PriceLine, ...] = ()
    left_open: tuple[str, ...] = ()

    @property
    def name(self) -> str:
        """The reference with its revision's letter."""
        return f"{self.reference} {self.revision}".strip()

    @property
    def own_lines(self) -> tuple[PriceLine, ...] | None:
        """The lines of the net, if the workshop set the price itself."""
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
    """Return the data of a quote for its link.

    Parameters
    ----------
    since
        The offer that this one changes, which gives its reference and the next letter.
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
        lines=_lines_as_shown(quote, workshop) if quote.terms.sets_price else (),
        left_open=tuple(names_left_open(quote.order)),
    )
    return _named(offer, since)


def _lines_as_shown(quote: Quote, workshop: Workshop) -> tuple[PriceLine, ...]:
    """Return a price's lines in the order's language: a link keeps the words that were sent."""
    speech = speech_of(quote.order, workshop)
    return tuple(PriceLine(speech.say(line.label), line.amount) for line in quote.price.lines)


def _named(offer: LinkedOffer, since: LinkedOffer | None) -> LinkedOffer:
    """Set an offer's own reference, or that of the offer it changes with the next letter."""
    if since is None:
        return replace(offer, reference=reference(canonical(write_offer(offer))))
    same = _without_language(since.order) == _without_language(offer.order) and (
        since.total,
        since.ready_on,
    ) == (offer.total, offer.ready_on)
    letter = since.revision if same else next_letter(since.revision)
    return replace(offer, reference=since.reference, revision=letter)


def _without_language(order: dict[str, Any]) -> dict[str, Any]:
    """Return an order without its language, which does not count as a change."""
    return {key: member for key, member in order.items() if key != "language"}


def next_letter(letter: str) -> str:
    """Return the revision's letter after this one: A, B, … Z, AA."""
    number = 0
    for character in letter:
        number = number * 26 + ord(character) - ord("A") + 1
    number, letters = number + 1, ""
    while number:
        number, at = divmod(number - 1, 26)
        letters = chr(ord("A") + at) + letters
    return letters


def write_offer(offer: LinkedOffer) -> dict[str, Any]:
    """Return an offer as the content of a token."""
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
        **({"left": ",".join(offer.left_open)} if offer.left_open else {}),
    }


def open_offer(token: str, tokens: Tokens, today: date) -> LinkedOffer:
    """Open a quote's token.

    Raises
    ------
    TokenError
        It was not signed by this workshop.
    DatedInFuture
        It is dated after today.
    """
    offer = _read_offer(tokens.open("quote", token))
    if offer.issued > today:
        raise DatedInFuture(offer.issued)
    return offer


def offer_named_at(
    pointer: str, token: str, tokens: Tokens, today: date, *, not_ours: Message
) -> LinkedOffer:
    """Open a quote's token that a request names.

    Parameters
    ----------
    pointer
        JSON Pointer to it in the request.
    not_ours
        The message for a token that this workshop did not sign.

    Raises
    ------
    NotUnderstood
        It was not signed by this workshop, or is dated after today.
    """
    try:
        return open_offer(token, tokens, today)
    except DatedInFuture as ahead:
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
            written = content.get(key, ())
            members[name] = tuple(
                PriceLine(str(label), Decimal(amount)) for label, amount in written
            )
        members["left_open"] = tuple(filter(None, str(content.get("left", "")).split(",")))
        return LinkedOffer(**members)
    except (KeyError, TypeError, ValueError, InvalidOperation):
        raise TokenError("This link is not one of ours.") from None


def link_of(token: str | None, workshop: Workshop) -> str | None:
    """Return the address at which the page opens a quote; None if it is too long to send."""
    if token is None:
        return None
    link = f"{workshop.web.page_url}#quote={token}"
    return link if len(link) <= LONGEST_LINK else None


def link_members(offer: LinkedOffer, workshop: Workshop, tokens: Tokens) -> dict[str, Any]:
    """Return an offer's token and link, or why there is no link."""
    token = tokens.sign("quote", write_offer(offer))
    link = link_of(token, workshop)
    members: dict[str, Any] = {"token": token, "link": link}
    if link is None:
        own = workshop.workshop.language
        speech = workshop_speech(offer.order.get("language", own), workshop)
        members["no_link"] = {"reason": "too-long", "says": speech.say(Message("link-too-long"))}
    return {key: value for key, value in members.items() if value is not None}
