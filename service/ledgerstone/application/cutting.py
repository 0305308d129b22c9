"""An order's moulds as a cut file, DXF or SVG, in the unit that the workshop works in."""

from __future__ import annotations

from ledgerstone.application.context import QuoteContext
from ledgerstone.application.papers import resolved_for_job
from ledgerstone.application.resolving import ResolvedRequest
from ledgerstone.drawing.cut_dxf import cut_dxf
from ledgerstone.drawing.cut_lines import CutPart, cut_layout
from ledgerstone.drawing.cut_svg import cut_svg
from ledgerstone.media_types import DXF
from ledgerstone.message import Message, Ruled
from ledgerstone.papers.job import Job
from ledgerstone.papers.job_stock import board_named
from ledgerstone.quantities import INCH_MM
from ledgerstone.quote import Quote
from ledgerstone.wording import bench_speech


def make_cut_file(document: object, form: str, context: QuoteContext) -> str | ResolvedRequest:
    """Write the cut lines of an order's moulds; return the resolved request if it is sent back.

    Raises
    ------
    NotUnderstood, TooIntricate
    """
    context = context.of_one_request()
    resolved = resolved_for_job(document, context)
    if not isinstance(resolved.answer, Quote):
        return resolved
    workshop = context.workshop
    name = resolved.offer.name if resolved.offer is not None else ""
    speech = bench_speech(workshop.workshop.language, workshop)
    job = Job(name, resolved.answer, workshop, speech, context.contain)
    parts = [
        CutPart(speech.value(called), slab, shape, mould)
        for called, (slab, shape), mould in zip(
            job.names, job.in_mould, job.moulds.moulds, strict=True
        )
    ]
    notes = [speech.say(Message("cut-mirrored", name=name)), speech.say(Message("cut-kerf"))]
    layout = cut_layout(
        parts,
        workshop.boards,
        notes,
        lambda strip: speech.say(board_named(strip)),
        lambda name, mm: f"{name}, {speech.say(Message('job-ruled', length=Ruled(mm)))}",
    )
    in_inches = speech.place.lengths == "in"
    if form == DXF:
        return cut_dxf(layout, INCH_MM if in_inches else 1)
    return cut_svg(layout, notes[0], "in" if in_inches else "mm")
