"""The pages of the whole order: days and finish, cut lists and boards."""

from __future__ import annotations

from collections.abc import Iterator
from typing import Final

from ledgerstone.checks import Finding
from ledgerstone.drawing.casting import draw_sheet
from ledgerstone.message import (
    Figure,
    Listed,
    Message,
    People,
    Ruled,
    Temperature,
    Value,
    Weight,
)
from ledgerstone.papers.descriptions import look_of, size_of
from ledgerstone.papers.job import Job
from ledgerstone.papers.job_blocks import (
    NAME,
    SheetBlock,
    drawing,
    facts,
    heading,
    page,
    says,
    shortened,
    side_by_side,
    ticks,
)
from ledgerstone.papers.job_days import day_plan
from ledgerstone.papers.job_finish import finish_cautions, finish_ticks
from ledgerstone.papers.job_lifts import lift_facts
from ledgerstone.papers.job_stock import boards_table, formers, stock_blocks, uses_table
from ledgerstone.papers.sheet import Content, headed
from ledgerstone.terms import NOT_LOOKED

# Cautions for the workshop while it makes a slab; those about its place are on the fitting sheet.
HEEDED: Final = frozenset(
    {
        "strip-too-narrow",
        "relief-too-deep",
        "cover-too-thin",
        "shade-out-of-reach",
        "young-concrete",
        "cracks-when-moved",
        "too-heavy-to-handle",
        "mix-for-place",
        "drop-not-checked",
        "beyond-hands",
        "beyond-tail-lift",
    }
)


_AGED_AT_C = 20.0  # what ages are adjusted to: EN 1992-1-1 (B.10)
NEST_WIDE_MM = 190  # across the page, so that a strip's number has 9 points


def order_page(job: Job) -> Content:
    """Write days and finish: what it is, what must be in hand, the cautions, and every day."""
    return page(
        headed(Message("job-title", reference=job.name), job.workshop),
        facts(*_head(job)),
        *_order_facts(job),
        heading(Message("job-before")),
        ticks(*_in_hand(job)),
        heading(Message("job-care")),
        says(*_cautions(job)),
        heading(Message("job-days")),
        says(*_how_to_read(job)),
        *day_plan(job),
        *_finish(job),
    )


def _head(job: Job) -> Iterator[tuple[Value, Value]]:
    quote, lead = job.quote, job.quote.lead_time
    for slab, shape, name in zip(job.slabs, quote.shapes, job.names, strict=True):
        named = Message("job-slab", count=slab.quantity, name=shortened(name, NAME))
        yield named, Message("job-slab-is", size=size_of(slab, shape), look=look_of(slab))
    begun = [scheduled.begins_at.date() for scheduled in lead.work if scheduled.people]
    if begun:
        yield Message("job-begin"), min(begun)
    ready = Message("approval-ready", day=lead.ready_on, by=lead.if_ordered_by)
    yield Message("job-ready"), ready


def _order_facts(job: Job) -> Iterator[SheetBlock]:
    if job.quote.terms.note:
        yield says(Message("job-note", note=job.quote.terms.note))


def _in_hand(job: Job) -> Iterator[Value]:
    """Yield what must be here first: nothing is cut until all of it is ticked."""
    if any(step.phase == "sample" for step in job.steps):
        yield Message("job-yes")
    for question in job.unanswered:
        yield Message("job-answered", question=question)
    yield Message("job-signed")
    yield Message("job-templates")


def _cautions(job: Job) -> Iterator[Value]:
    yield Listed((Message("job-masses"), *finish_cautions(job)), joined="sentences")
    if job.quote.order.heated_curing:
        yield Message("job-tent")
    for finding in job.quote.findings:
        if finding.check in HEEDED and finding.level != "stops":
            yield _heeded(finding, job)


def _heeded(finding: Finding, job: Job) -> Value:
    """Describe a caution: of young concrete how strong it is, of a heavy slab what hands carry."""
    if finding.check == "beyond-hands":
        people = People(job.workshop.lifting.most_people)
        most = Message("job-hands-most", people=people, most=Weight(finding.limit["slab_kg"]))
        return Listed((finding.message, most), joined="sentences")
    age = finding.measured.get("age_days")
    if finding.check != "young-concrete" or age is None:
        return finding.message
    strong = Message("job-strong-as", days=Figure(age, 1), warmth=Temperature(_AGED_AT_C))
    return Listed((finding.message, strong), joined="sentences")


def _how_to_read(job: Job) -> Iterator[Value]:
    """Yield what must be known of the day plan to work by it."""
    yield from (depend for depend in job.quote.depends_on if depend.name in NOT_LOOKED)
    sentences: list[Value] = [Message("job-days-read", pairs=job.workshop.calendar.hands)]
    if any(len(pour.slabs) > 1 for pour in job.batches.pours):
        sentences.append(Message("job-days-shared"))
    yield Listed(tuple(sentences), joined="sentences")


def _finish(job: Job) -> Iterator[SheetBlock]:
    """Set each slab's finish; a single one's with its lifts, its stock and what it uses."""
    if job.is_alone:
        yield from side_by_side(
            [heading(Message("job-finish")), finish_ticks(job, 0), *_boards(job), *formers(job)],
            [heading(Message("job-lifts")), lift_facts(job, 0), *_uses(job)],
        )
        yield from stock_blocks(job)
        return
    for i, name in enumerate(job.names):
        yield heading(Message("job-finish-of", name=shortened(name, NAME)))
        yield finish_ticks(job, i)


# --- boards ---------------------------------------------------------------------------------


def boards_page(job: Job) -> Content:
    """Write the cut lists of boards, foam, strip and bars, with the nesting drawn."""
    return page(
        Message("job-boards-title"),
        *_nests(job),
        *side_by_side(_boards(job), [*_uses(job), *formers(job)]),
        *stock_blocks(job),
    )


def _nests(job: Job) -> Iterator[SheetBlock]:
    """Draw each sheet that several pieces are cut from."""
    nest = job.moulds.boards
    marks = [f"{n}" for n in range(1, len(nest.placed) + 1)]
    for sheet in range(nest.sheets):
        if sum(placed.sheet == sheet for placed in nest.placed) < 2:
            continue
        values = {"number": sheet + 1, "sheets": nest.sheets}
        title = job.speech.say(Message("job-sheet-of", **values))
        words = job.speech.say(Message("job-sheet-words", **values))
        svg = draw_sheet(nest, sheet, marks, title=title)
        yield heading(title)
        yield drawing(svg, words, NEST_WIDE_MM)


def _boards(job: Job) -> Iterator[SheetBlock]:
    """List the boards and formers that are cut."""
    nest, boards = job.moulds.boards, job.workshop.boards
    kerf = Message(
        "job-kerf",
        sheets=nest.sheets,
        length=Ruled(boards.length_mm),
        width=Ruled(boards.width_mm),
        kerf=Ruled(boards.kerf_mm),
        waste=Figure(nest.waste_percent, 0),
    )
    yield heading(Message("job-boards-title"))
    yield boards_table(job)
    yield says(Listed((kerf, Message("job-mirrored-boards")), joined="sentences"))


def _uses(job: Job) -> Iterator[SheetBlock]:
    yield heading(Message("job-uses"))
    yield uses_table(job)
