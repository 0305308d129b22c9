"""The job sheet: what the workshop works from.

Of one slab it is two sheets of paper: days and finish, and the slab's own to tape up by its mould.
"""

from __future__ import annotations

from collections.abc import Iterator

from ledgerstone.message import Message
from ledgerstone.papers.costs import costs_content
from ledgerstone.papers.job import Job
from ledgerstone.papers.job_batches import batch_page
from ledgerstone.papers.job_needs import job_days, job_materials
from ledgerstone.papers.job_order import boards_page, order_page
from ledgerstone.papers.job_slab import list_pages, slab_page
from ledgerstone.papers.records import PaperRecords
from ledgerstone.papers.sheet import Content, headed, workshop_named
from ledgerstone.work import Operation


def job_pages(job: Job) -> Iterator[Content]:
    """Write every page, in the order in which the workshop needs them."""
    yield order_page(job)
    if not job.is_alone:
        yield boards_page(job)
    for i in range(len(job.slabs)):
        yield slab_page(job, i)
    yield from list_pages(job)
    if not job.is_alone:
        yield batch_page(job)


def job_sheet(records: PaperRecords) -> Content:
    """Write a job sheet: its pages, the work step by step, and what it costs."""
    job = Job(
        records.name,
        records.quote,
        records.workshop,
        records.speech,
        records.contain,
        records.unanswered,
    )
    return job_content(job)


def job_content(job: Job) -> Content:
    """Write the job sheet of a job that is worked out."""
    return {
        "title": headed(Message("job-title", reference=job.name), job.workshop),
        "reference": job.name,
        "workshop": workshop_named(job.workshop),
        "operations": [_operation(step) for step in job.steps],
        "costs": costs_content(job.quote, job.workshop),
        "days": list(job_days(job)),
        "materials": list(job_materials(job)),
        "pages": list(job_pages(job)),
    }


def _operation(step: Operation) -> Content:
    return {
        "name": step.name,
        "stage": step.phase,
        "slab": step.slab,
        "hands_minutes": step.hands_minutes,
        "machine_minutes": step.machine_minutes,
        "wait_hours": step.wait_hours,
    }
