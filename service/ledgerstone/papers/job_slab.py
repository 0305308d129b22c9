"""The sheet of one slab, to tape up: its mould and its steel as it lies face down, and its pour.

It is one sheet of paper. A list that would not leave its drawing legible goes on a page of its
own at the end, with those of the order's other slabs.
"""

from __future__ import annotations

from collections.abc import Iterator

from ledgerstone.drawing.casting import MouldSection, draw_section
from ledgerstone.drawing.steel_layer import DrawnBars, DrawnMesh, Layer, draw_steel
from ledgerstone.message import Gauge, Listed, Message, Ruled, Value
from ledgerstone.outline import XY
from ledgerstone.papers.job import Job
from ledgerstone.papers.job_bars import bars_table
from ledgerstone.papers.job_batches import pour_blocks
from ledgerstone.papers.job_blocks import (
    NAME,
    SheetBlock,
    drawing,
    flag,
    heading,
    in_two,
    is_long,
    page,
    says,
    shortened,
    side_by_side,
)
from ledgerstone.papers.job_lifts import lift_facts
from ledgerstone.papers.job_mould import PLAN_WIDE_MM, knockouts, mould_facts, mould_plan
from ledgerstone.papers.job_stock import mesh_named
from ledgerstone.papers.sheet import Content
from ledgerstone.strength.grips import best_grips_mm

SECTION_WIDE_MM = 55  # beside the plan
MAX_ACROSS = 10  # rows of bars that are listed across the page, each on a line
STEEL_TALLEST = 115.0  # units that a slab is drawn high with its steel, 600 across


def slab_page(job: Job, i: int) -> Content:
    """Write the sheet of one slab: with its pour where it is the only one, else with its lifts."""
    bars = bars_table(job, i)
    return page(
        _title(job, i),
        flag(Message("job-mirrored")),
        *side_by_side(
            [mould_plan(job, i), _steel_drawing(job, i)],
            [_section(job, i), mould_facts(job, i)],
            (PLAN_WIDE_MM, SECTION_WIDE_MM),
        ),
        *_knockouts(job, i),
        *_listed(bars),
        says(Listed((*_legend(job, i), *job.steel[i].notes), joined="sentences")),
        *(
            pour_blocks(job)
            if job.is_alone
            else (heading(Message("job-lifts")), lift_facts(job, i))
        ),
    )


def _title(job: Job, i: int) -> Message:
    name = shortened(job.names[i], NAME)
    title = Message("job-slab-title" if job.is_alone else "job-slab-title-shared", name=name)
    pieces, moulds = job.slabs[i].quantity, job.counts[i]
    if pieces == 1:
        return title
    return Message("job-slab-title-many", title=title, pieces=pieces, moulds=moulds)


def list_pages(job: Job) -> Iterator[Content]:
    """Write the lists that are too long for their slab's sheet, all slabs' together."""
    blocks: list[SheetBlock] = []
    for i, name in enumerate(job.names):
        for kind, long in (("knockouts", knockouts(job, i)), ("steel", bars_table(job, i))):
            if is_long(long):
                named = Message("job-list-of", list=kind, name=shortened(name, NAME))
                blocks += [heading(named), long]
    if blocks:
        yield page(Message("job-lists-title"), flag(Message("job-mirrored")), *blocks)


def _knockouts(job: Job, i: int) -> Iterator[SheetBlock]:
    listed = knockouts(job, i)
    if is_long(listed):
        yield _later("knockouts", listed)
    elif listed:
        yield heading(Message("job-knockouts"))
        yield listed


def _listed(bars: SheetBlock) -> Iterator[SheetBlock]:
    """List bars and mesh across the page while they are few, then in two columns, then apart."""
    if is_long(bars):
        yield _later("steel", bars)
    elif len(bars["rows"]) > MAX_ACROSS:
        yield from in_two(bars)
    else:
        yield bars


def _later(kind: str, listed: SheetBlock) -> SheetBlock:
    """State where a list stands that is too long for the slab's own sheet."""
    return says(Message("job-list-later", list=kind, rows=len(listed["rows"])))


# --- steel ----------------------------------------------------------------------------------


def _steel_drawing(job: Job, i: int) -> SheetBlock:
    _, shape = job.in_mould[i]
    steel = job.steel[i]
    before = job.quote.shapes[i].outline.bounds
    over = before[0] + before[2]

    def turned(xy: XY) -> XY:
        return over - xy[0], xy[1]

    meshes = zip(steel.mesh, steel.mesh_at_mm, strict=True)
    grips, along_y = best_grips_mm(shape.outline)
    layer = Layer(
        tuple(
            DrawnBars(row.mark, tuple((turned(b.start_mm), turned(b.end_mm)) for b in run))
            for row in steel.rows
            for run in row.runs
        ),
        tuple(
            DrawnMesh(m.mark, (over - x - m.length_mm, y, over - x, y + m.width_mm))
            for m, (x, y) in meshes
        ),
        grips,
        along_y,
        job.rail_in(i, shape),
        mesh_off_mm=steel.beside_mm,
    )
    words = job.speech.say(Message("job-steel-words", name=job.names[i], bars=len(steel.bars)))
    title = job.speech.say(Message("job-steel-title"))
    svg = draw_steel(shape, layer, title=title, says=words, tallest=STEEL_TALLEST)
    return drawing(svg, words, PLAN_WIDE_MM)


def _section(job: Job, i: int) -> SheetBlock:
    slab, steel, say = job.slabs[i], job.steel[i], job.speech.say
    coat = job.workshop.recipe.face_coat
    thickness = _long(slab.thickness.mm)
    kept = _long(steel.cover.kept_mm, down=True)
    face = Message("job-section-face")
    if coat is not None:
        face = Message("job-section-face-coat", coat=_long(coat.thickness_mm))
    named = _steel_named(job, i)
    words = say(Message("job-section-words", thickness=thickness, cover=kept, steel=_yes(named)))
    height = _long(job.moulds.moulds[i].height_mm)
    section = MouldSection(
        thickness=job.speech.value(thickness),
        back=say(Message("job-section-back", height=height)),
        cover=say(Message("job-section-cover", cover=kept)),
        face=say(face),
        steel="" if named is None else say(named),
        mesh=bool(steel.mesh),
        bars=bool(steel.bars),
    )
    title = say(Message("job-section-title"))
    return drawing(draw_section(section, title=title, says=words), words, SECTION_WIDE_MM)


def _yes(message: Message | None) -> str:
    return "no" if message is None else "yes"


def _long(length_mm: float, *, down: bool = False) -> Message:
    return Message("job-ruled", length=Ruled(length_mm, down))


def _steel_named(job: Job, i: int) -> Message | None:
    rack, plan = job.workshop.steel, job.steel[i]
    mesh = mesh_named(rack.mesh_wire_mm, rack.mesh_pitch_mm)
    if not plan.bars:
        return Message("job-section-mesh", mesh=mesh) if plan.mesh else None
    bar = Gauge(plan.bars[0].diameter_mm)
    if not plan.mesh:
        return Message("job-section-bars-alone", bar=bar)
    return Message("job-section-bars", bar=bar, mesh=mesh)


def _legend(job: Job, i: int) -> Iterator[Value]:
    """State what the marks stand for, where there are any."""
    rack, plan = job.workshop.steel, job.steel[i]
    if plan.bars:
        yield Message("job-legend-bars", bar=Gauge(plan.bars[0].diameter_mm))
    if plan.mesh:
        mesh = mesh_named(rack.mesh_wire_mm, rack.mesh_pitch_mm)
        yield Message("job-legend-mesh", mesh=mesh)
