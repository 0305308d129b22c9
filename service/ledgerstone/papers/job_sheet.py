"""The job sheet: what the workshop works from, as JSON, HTML and PDF."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path
from typing import Final

import typst
from markupsafe import Markup

from ledgerstone.drawing.raster import FONT_FOLDER
from ledgerstone.papers.costs import costs_content
from ledgerstone.papers.job import Job
from ledgerstone.papers.job_blocks import Content
from ledgerstone.papers.job_card import carry_card
from ledgerstone.papers.job_order import batch_page, boards_page, order_page
from ledgerstone.papers.job_slab import list_pages, slab_pages
from ledgerstone.papers.printing import printed_content
from ledgerstone.papers.templates import Templates

_PRINTED: Final = Path(__file__).with_name("texts") / "job_sheet.typ"


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


def job_content(job: Job) -> Content:
    """Gather a job sheet's pages, the work step by step, and what it costs."""
    return {
        **_head(job),
        "operations": job.steps,
        "costs": costs_content(job.quote, job.workshop),
        "pages": list(job_pages(job)),
    }


def _head(job: Job) -> Content:
    mine = job.workshop.workshop
    return {"reference": job.name, "workshop": f"{mine.name}, {mine.town}"}


def job_page(job: Job, templates: Templates) -> str:
    """Write a job sheet as an HTML page that prints well.

    Raises
    ------
    TemplateFault
    """
    pages = list(job_pages(job))
    blocks: list[Content] = []
    for number, one in enumerate(pages, start=1):
        head = {"kind": "page", "says": one["title"], "number": number, "of": len(pages)}
        blocks += [head, *(_safe(block) for block in one["blocks"])]
    return templates.fill("job_sheet.html", {**_head(job), "blocks": blocks})


def _safe(block: Content) -> Content:
    """Let a drawing through as it is."""
    if block["kind"] != "drawing":
        return block
    return {**block, "svg": Markup(block["svg"])}  # noqa: S704  an SVG that we drew ourselves


def job_print(job: Job) -> bytes:
    """Write a job sheet as a PDF; all that is in it goes in as data, never as markup."""
    content = {**_head(job), "pages": list(job_pages(job))}
    return bytes(
        typst.compile(
            str(_PRINTED),
            font_paths=[str(FONT_FOLDER)],
            ignore_system_fonts=True,
            format="pdf",
            sys_inputs={"told": printed_content(content)},
        )
    )
