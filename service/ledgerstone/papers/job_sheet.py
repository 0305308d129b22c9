"""The job sheet: what the workshop works from."""

from __future__ import annotations

from collections.abc import Iterator

from ledgerstone.papers.costs import costs_content
from ledgerstone.papers.job import Job
from ledgerstone.papers.job_batches import batch_page
from ledgerstone.papers.job_blocks import Content
from ledgerstone.papers.job_card import carry_card
from ledgerstone.papers.job_needs import job_days, job_materials
from ledgerstone.papers.job_order import boards_page, order_page
from ledgerstone.papers.job_slab import list_pages, slab_pages
from ledgerstone.papers.records import PaperRecords
from ledgerstone.papers.sheet import workshop_named
from ledgerstone.work import Operation


def job_pages(job: Job) -> Iterator[Content]:
    """Write every page, in the order in which the workshop needs them."""
    yield order_page(job)
    yield boards_page(job)
    for i in range(len(job.slabs)):
        yield from slab_pages(job, i)
    yield from list_pages(job)
    yield batch_page(job)
    for i in range(len(job.slabs)):
        yield carry_card(job, i)


def job_sheet(records: PaperRecords) -> Content:
    """Write a job sheet: its pages, the work step by step, and what it costs."""
    return job_content(Job(records.name, records.quote, records.workshop, records.contain))


def job_content(job: Job) -> Content:
    """Write the job sheet of a job that is worked out."""
    mine = job.workshop.workshop
    return {
        "reference": job.name,
        "workshop": workshop_named(mine),
        "operations": [_operation(step) for step in job.steps],
        "costs": costs_content(job.quote, job.workshop),
        "days": list(job_days(job)),
        "materials": list(job_materials(job)),
        "pages": list(job_pages(job)),
    }


def _operation(step: Operation) -> Content:
    return {
        "name": step.name,
        "stage": step.stage,
        "slab": step.slab,
        "hands_minutes": step.hands_minutes,
        "machine_minutes": step.machine_minutes,
        "wait_hours": step.wait_hours,
    }
