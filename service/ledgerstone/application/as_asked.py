"""What the workshop changed of what a customer asked for, and why."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import replace
from typing import Any

from ledgerstone.application.answering import answer_order
from ledgerstone.application.context import QuoteContext
from ledgerstone.checks import first_stops
from ledgerstone.codec.changes import say_differences
from ledgerstone.codec.order_in import read_order
from ledgerstone.codec.order_out import write_order
from ledgerstone.errors import Fault, NotUnderstood, TooIntricate
from ledgerstone.json_types import Members
from ledgerstone.order import Order
from ledgerstone.quote import SentBack
from ledgerstone.wording import Message


def order_as_asked(ask: Mapping[str, Any], context: QuoteContext) -> Order | None:
    """Read the order as the customer asked for it, where it is another.

    Raises
    ------
    NotUnderstood
    """
    if "asked" not in ask:
        return None
    try:
        return read_order(ask["asked"], context.workshop)
    except NotUnderstood as fault:
        faults = (Fault(f"/asked{found.pointer}", found.message) for found in fault.faults)
        raise NotUnderstood(tuple(faults)) from None


def changed_since(
    asked: Order, now: Order, document: Members, context: QuoteContext
) -> tuple[Message, ...]:
    """State what was changed of what was asked for, and what stopped that; its day is in the days.

    Parameters
    ----------
    document
        What was asked for, as JSON.
    """
    was, made = (
        write_order(replace(order, needed_by=None), compact=True) for order in (asked, now)
    )
    changes = tuple(say_differences(was, made))
    return (Message("letter-changed"), *changes, *_why(document, context)) if changes else ()


def _why(document: Members, context: QuoteContext) -> Iterator[Message]:
    """State what stops an order whenever it is needed; nothing where that is too much work."""
    undated = {key: value for key, value in document.items() if key != "needed_by"}
    try:
        answer = answer_order(undated, context, search=False, savings=False)
    except TooIntricate:
        return
    if isinstance(answer, SentBack):
        yield Message("letter-changed-why")
        yield from (finding.message for finding in first_stops(answer.findings))
