"""What a letter says of the days: ready, there, ordered by, started on; and how long a price is."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import date

from ledgerstone.papers.views import QuoteView
from ledgerstone.quote import Quote
from ledgerstone.schedule import LeadTime
from ledgerstone.wording import DayMonth, Days, Message, Money, Value


def day_sentences(view: QuoteView, today: date, *, is_full: bool) -> Iterator[Message]:
    """Yield when it is ready and there, what the day is for, until when the price, and the weeks.

    Of an offer made at other rates the days of the work and on the road are not known any more.
    """
    quote = view.quote
    if view.whole:
        yield _ready(quote)
    else:
        yield Message("letter-ready", ready=quote.lead_time.ready_on)
    yield _ordered(quote, today) if is_full else _in_short(quote)
    if view.whole and is_full:
        yield from _weeks(quote)


def _ready(quote: Quote) -> Message:
    lead, needed = quote.lead_time, quote.order.needed_by
    return Message(
        "letter-day",
        way=quote.order.delivery.kind,
        ready=lead.ready_on,
        arrives=Days(lead.arrives_earliest, lead.arrives_latest),
        asked="no" if needed is None else "yes",
    )


def _ordered(quote: Quote, today: date) -> Message:
    by, until, standing = quote.lead_time.if_ordered_by, quote.valid_until, quote.standing
    wanted, deposit = _wanted(quote), _deposit(quote)
    if by == today:
        return Message(
            "letter-order-today", wanted=wanted, deposit=deposit, standing=standing, until=until
        )
    return Message(
        "letter-order-by", wanted=wanted, deposit=deposit, by=by, standing=standing, until=until
    )


def _in_short(quote: Quote) -> Message:
    return Message(
        "letter-in-short",
        wanted=_wanted(quote),
        deposit=_deposit(quote),
        standing=quote.standing,
        until=quote.valid_until,
    )


def _wanted(quote: Quote) -> Value:
    """What must be here on the day of the order."""
    told = (one.values["wanted"] for one in quote.depends_on if one.name == "day-is-for")
    return next(told, "nothing")


def _deposit(quote: Quote) -> Money:
    return Money(quote.price.currency, quote.price.deposit)


def _weeks(quote: Quote) -> Iterator[Message]:
    """Say the weeks of the work in one sentence; their days, one by one, are behind the link."""
    casts, starts = _first(quote.lead_time, "cast"), _first(quote.lead_time, "mould")
    if casts is None:
        return
    starts = starts or casts
    yield Message(
        "letter-weeks",
        cast="same" if starts == casts else "later",
        starts=DayMonth(starts),
        casts=DayMonth(casts),
        tests="yes" if any(one.name == "strip-first" for one in quote.depends_on) else "no",
        seals="no" if _first(quote.lead_time, "seal") is None else "yes",
        pieces=sum(slab.quantity for slab in quote.order.slabs),
    )


def _first(lead: LeadTime, stage: str) -> date | None:
    return next((one.starts for one in lead.stages if one.stage == stage), None)
