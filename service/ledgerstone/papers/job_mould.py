"""The description of one mould, mirrored as it is cast: plan, knockouts, bead, release."""

from __future__ import annotations

from collections.abc import Iterator

from ledgerstone.cutouts import kind_of
from ledgerstone.drawing import TitleBlock, draw_plan, missing_drawing
from ledgerstone.drawing.frame import leading_length
from ledgerstone.drawing.mirrored import in_unit
from ledgerstone.drawing.saying import side_word
from ledgerstone.drawing.schedule import letter_of
from ledgerstone.message import Listed, Message, Ruled, RunningLength, SmallVolume, Value
from ledgerstone.order import Cutout
from ledgerstone.outline import XY
from ledgerstone.papers.job import Job
from ledgerstone.papers.job_blocks import (
    MAX_SHEET_ROWS,
    SheetBlock,
    drawing,
    facts,
    shortened,
    table,
)
from ledgerstone.workshop.records import Workshop

PLAN_WIDE_MM = 127  # 600 units across: the plan's letters, 15 of them, are 9 points
MOULD_TALLEST = {
    "A4": 220.0,
    "Letter": 170.0,
}  # units that the slab is drawn high; Letter is shorter


def mould_plan(job: Job, i: int) -> SheetBlock:
    """Draw the mould from above, with every figure that it is built from."""
    slab, shape = job.in_mould[i]
    name = job.speech.value(job.names[i])
    label = job.speech.say(Message("job-mirrored-label", name=name))
    plan, has_more = None, any(e.drip or e.drop is not None for e in slab.edges.values())
    unit = job.workshop.place.at_work().lengths
    with job.contain("drawing"):
        plan = draw_plan(
            slab if leading_length(slab).unit == unit else in_unit(slab, unit),
            shape,
            title=TitleBlock(reference=job.name, label=label),
            alone=True,
            speech=job.speech,
            tallest=MOULD_TALLEST[job.workshop.place.paper],
            sections=has_more,
        )
    words = job.speech.say(Message("job-plan-words", name=name))
    return drawing(plan or missing_drawing(job.speech), words, PLAN_WIDE_MM)


def mould_facts(job: Job, i: int) -> SheetBlock:
    """Describe the sides, screws, bead, drips and release agent of one mould."""
    mould = job.moulds.moulds[i]
    height, pilot = Ruled(mould.height_mm), Ruled(mould.pilot_mm)
    release = SmallVolume(1000 * mould.release_l)
    return facts(
        (Message("job-sides"), Message("job-sides-high", height=height)),
        (Message("job-screws"), Message("job-screws-in", count=mould.screws, pilot=pilot)),
        (Message("job-bead"), _beads(job, i)),
        *_drips(job, i),
        (Message("job-release"), Message("job-release-thin", amount=release)),
    )


def _beads(job: Job, i: int) -> Value:
    """Describe the beads: along each seen side, and round all rims that show together."""
    beads, sides = job.moulds.moulds[i].beads, {side.name for side in job.in_mould[i][1].sides}
    along = [b for b in beads if b.along in sides]
    rims = len(beads) - len(along)
    phrases = [
        Message(
            "job-bead-along",
            side=side_word(b.along),
            profile=b.profile,
            size=Ruled(b.size_mm),
        )
        for b in along
    ]
    phrases += [Message("job-bead-rims", count=rims)] if rims else []
    if len(along) > MAX_SHEET_ROWS:
        phrases = [Message("job-bead-many", sides=len(along), rims=rims)]
    if not phrases:
        return Message("job-beads-none")
    in_all = RunningLength(sum(bead.length_mm for bead in beads) / 1000)
    return Message("job-beads", beads=Listed(tuple(phrases), joined="comma"), in_all=in_all)


def _drips(job: Job, i: int) -> Iterator[tuple[Value, Value]]:
    for side, length in job.moulds.moulds[i].drips_mm.items():
        on = Message("job-drip-on", side=side_word(side), length=Ruled(length))
        yield Message("job-drip"), on


# --- knockouts ------------------------------------------------------------------------------


def knockouts(job: Job, i: int) -> SheetBlock:
    """List where each former stands, measured from the mould's own inside edges."""
    rows = [*_openings(job, i), *_reliefs(job, i)]
    if not rows:
        return {}
    columns = (
        Message("job-knockout"),
        Message("job-size"),
        Message("job-left"),
        Message("job-right"),
        Message("job-front"),
        Message("job-back"),
        Message("job-centre"),
        Message("job-checked"),
    )
    return table(columns, rows, (21, 24, 9, 9, 9, 9, 14, 10), right=(2, 3, 4, 5))


def _openings(job: Job, i: int) -> Iterator[list[Value]]:
    slab, shape = job.in_mould[i]
    for opening in shape.openings:
        if opening.polygon.is_empty:
            continue
        a, b, c, d = opening.polygon.bounds
        label = slab.cutouts[opening.index].label
        letter = letter_of(opening.index)
        name = Message("paper-opening-unnamed", letter=letter)
        if label:
            name = Message("job-opening", letter=letter, label=shortened(label, 16))
        size = _former_size(slab.cutouts[opening.index], (c - a, d - b), job.workshop)
        yield [name, size, *_places(job, i, (a, b, c, d))]


def _reliefs(job: Job, i: int) -> Iterator[list[Value]]:
    slab, shape = job.in_mould[i]
    for k, (relief, polygon) in enumerate(zip(slab.reliefs, shape.reliefs, strict=True)):
        a, b, c, d = polygon.bounds
        kind = Message("job-former-kind", kind=relief.kind)
        name = Message(
            "job-relief",
            letter=letter_of(len(slab.cutouts) + k),
            depth=Ruled(relief.depth.mm),
            label=shortened(relief.label, 16) if relief.label else kind,
        )
        yield [name, _two(c - a, d - b), *_places(job, i, (a, b, c, d))]


def _places(job: Job, i: int, box: tuple[float, ...]) -> list[Value]:
    """State what is clear on each side, the centre, and leave a place to tick."""
    x0, y0, x1, y1 = job.in_mould[i][1].outline.bounds
    a, b, c, d = box
    centre = Message("job-pair", one=Ruled((a + c) / 2 - x0), other=Ruled((b + d) / 2 - y0))
    clear = (a - x0, x1 - c, b - y0, y1 - d)
    return [*map(Ruled, clear), centre, ""]


def _former_size(cutout: Cutout, over_all_mm: XY, workshop: Workshop) -> Message:
    """State how large a knockout is made, its corners, and how it is turned, anticlockwise."""
    kind = kind_of(cutout)
    if kind.is_circle:
        return Message("job-across", across=Ruled(kind.size_mm(cutout)[0]))
    size = over_all_mm
    if cutout.length is not None and cutout.width is not None:
        size = cutout.length.mm, cutout.width.mm
    one, other = map(Ruled, size)
    radius = kind.corner_radius_mm(cutout, workshop.shaping.inside_radius_mm)
    former = Message("job-former-round", one=one, other=other)
    if radius is not None:
        former = Message("job-former", one=one, other=other, radius=Ruled(radius))
    if cutout.turn_degrees:
        degrees = float(cutout.turn_degrees)
        return Message("job-former-turned", former=former, degrees=degrees)
    return former


def _two(one_mm: float, other_mm: float) -> Message:
    return Message("job-two", one=Ruled(one_mm), other=Ruled(other_mm))
