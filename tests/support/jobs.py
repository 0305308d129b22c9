"""Job sheets of orders, and what they say."""

from datetime import date
from typing import Any

from ledgerstone.codec.order_in import read_order
from ledgerstone.papers.cards import carry_cards
from ledgerstone.papers.job import Job
from ledgerstone.papers.job_sheet import job_pages
from ledgerstone.papers.paper import formatted
from ledgerstone.papers.records import PaperRecords
from ledgerstone.quote import Quote, quote
from ledgerstone.stages import StageContext
from ledgerstone.wording import speech_in
from ledgerstone.workshop import Workshop


def job_of(document: dict[str, Any], workshop: Workshop, today: date) -> Job:
    """Quote an order and work its job out."""
    order = read_order(document, workshop)
    answer = quote(order, StageContext(workshop, None, today))
    assert isinstance(answer, Quote)
    return Job("ABCD-EFGH", answer, workshop)


def pages_of(job: Job) -> list[dict[str, Any]]:
    """Every page of a job sheet, as it is stated in English."""
    pages: list[dict[str, Any]] = formatted(list(job_pages(job)), speech_in("en"))
    return pages


def cards_of(job: Job) -> list[dict[str, Any]]:
    """Every carry card and label of an order, as they are stated in English."""
    records = PaperRecords(name=job.name, quote=job.quote, workshop=job.workshop)
    sections: list[dict[str, Any]] = formatted(carry_cards(records), speech_in("en"))["sections"]
    return sections
