"""The job sheet: what the workshop works from."""

from __future__ import annotations

from collections.abc import Iterator

from ledgerstone.papers.costs import costs_content
from ledgerstone.papers.job import Job
from ledgerstone.papers.job_batches import batch_page
from ledgerstone.papers.job_blocks import Content
from ledgerstone.papers.job_card import carry_card
from ledgerstone.papers.job_order import boards_page, order_page
from ledgerstone.papers.job_slab import list_pages, slab_pages
from ledgerstone.papers.paper import Paper


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


def job_paper(job: Job) -> Paper:
    """Write a job sheet: its pages, the work step by step, and what it costs."""
    mine = job.workshop.workshop
    head = {"reference": job.name, "workshop": f"{mine.name}, {mine.town}"}
    pages = list(job_pages(job))
    costs = costs_content(job.quote, job.workshop)
    return Paper(
        layout="job_sheet",
        content={**head, "operations": job.steps, "costs": costs, "pages": pages},
        page={**head, "blocks": _in_a_row(pages)},
        printed={**head, "pages": pages},
    )


def _in_a_row(pages: list[Content]) -> list[Content]:
    """Set the blocks of all pages one after another, each page headed: a template loops once."""
    blocks: list[Content] = []
    for number, one in enumerate(pages, start=1):
        head = {"kind": "page", "says": one["title"], "number": number, "of": len(pages)}
        blocks += [head, *one["blocks"]]
    return blocks
