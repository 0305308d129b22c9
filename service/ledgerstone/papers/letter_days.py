"""A letter's days: wanted, ready, arriving, to order by; and the price's last day."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import date
from typing import Final

from ledgerstone.papers.views import QuoteView, SentBackView
from ledgerstone.quote import Quote
from ledgerstone.schedule import LeadTime
from ledgerstone.wording import DateRange, DayMonth, Message, Money, Value

_ABOUT_THE_DAY: Final = frozenset({"needed-too-soon", "no-day-free"})


def day_sentences(
    view: QuoteView, today: date, *, is_full: bool, wished: date | None = None
) -> Iterator[Message]:
    """Yield when it is ready and there, what the day is for, until when the price, and the weeks.

    Where the customer wished for another day than the order now has, says if it cannot be met.

    Of an offer made at other rates the days of the work and on the road are not known any more.
    """
    quote = view.quote
    is_met = wished is None or quote.lead_time.arrives_latest <= wished
    if wished is not None and not is_met:
        yield Message("letter-day-not-met", wished=wished)
    if view.whole:
        yield _ready(quote, in_time=is_met and (wished or quote.order.needed_by) is not None)
    else:
        yield Message("letter-ready", ready=quote.lead_time.ready_on)
    yield _ordered(quote, today) if is_full else _in_short(quote)
    if view.whole and is_full:
        yield from _weeks(quote)


def sent_back_day(view: SentBackView, today: date, wished: date | None) -> Message | None:
    """State what is known of the day asked for: kept with the change, missed, or not known yet.

    None if no day was asked for, or what stops the order is the day itself.
    """
    order, checks = view.sent.order, {finding.check for finding in view.sent.findings}
    asked = wished or order.needed_by
    if asked is None or checks & _ABOUT_THE_DAY:
        return None
    found = view.sent.found
    fix = found.fix_all or found.nearest_makeable if found is not None else None
    if asked < today:
        return Message("letter-day-not-met", wished=asked)
    if fix is None or view.all_at_once is None or order.needed_by != asked:
        return Message("letter-day-open", wished=asked)
    is_kept = fix.state.order.needed_by == asked
    return Message("letter-day-kept" if is_kept else "letter-day-not-met", wished=asked)


def _ready(quote: Quote, *, in_time: bool) -> Message:
    lead = quote.lead_time
    return Message(
        "letter-day",
        way=quote.order.delivery.kind,
        ready=lead.ready_on,
        arrives=DateRange(lead.arrives_earliest, lead.arrives_latest),
        asked="yes" if in_time else "no",
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
    conditions = (
        depend.values["wanted"] for depend in quote.depends_on if depend.name == "day-is-for"
    )
    return next(conditions, "nothing")


def _deposit(quote: Quote) -> Money:
    return Money(quote.price.currency, quote.price.deposit)


def _weeks(quote: Quote) -> Iterator[Message]:
    """State the weeks of the work in one sentence; their days, one by one, are behind the link."""
    casts, starts = _first(quote.lead_time, "cast"), _first(quote.lead_time, "mould")
    if casts is None:
        return
    starts = starts or casts
    yield Message(
        "letter-weeks",
        cast="same" if starts == casts else "later",
        starts=DayMonth(starts),
        casts=DayMonth(casts),
        seals="no" if _first(quote.lead_time, "seal") is None else "yes",
        pieces=sum(slab.quantity for slab in quote.order.slabs),
    )


def _first(lead: LeadTime, phase: str) -> date | None:
    return next((stretch.starts for stretch in lead.phases if stretch.phase == phase), None)
