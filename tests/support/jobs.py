"""Job sheets of orders."""

from datetime import date
from typing import Any

from ledgerstone.codec.order_in import read_order
from ledgerstone.papers.job import Job
from ledgerstone.quote import Quote, quote
from ledgerstone.workshop import Workshop


def job_of(document: dict[str, Any], workshop: Workshop, today: date) -> Job:
    """Quote an order and work its job out."""
    order = read_order(document, workshop)
    answer = quote(order, workshop=workshop, bookings=None, today=today)
    assert isinstance(answer, Quote)
    return Job("ABCD-EFGH", answer, workshop)
