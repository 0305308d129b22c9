"""The sheet of one mould, mirrored as it is cast: plan, knockouts, bead, release."""

from __future__ import annotations

from collections.abc import Iterator

from ledgerstone.cutouts import kind_of
from ledgerstone.drawing import MISSING, TitleBlock, draw_plan
from ledgerstone.drawing.schedule import letter_of
from ledgerstone.order import Cutout
from ledgerstone.outline import XY
from ledgerstone.papers.job import Job
from ledgerstone.papers.job_blocks import (
    MOST_ROWS,
    NAME,
    Block,
    Content,
    drawing,
    facts,
    flag,
    here_or_later,
    mm,
    one_sheet,
    shortened,
    table,
)
from ledgerstone.workshop.records import Workshop

MIRRORED = (
    "MIRRORED: this is the mould as you look down into it. The face lies underneath, against the"
    " board; left and right are changed over."
)


def times_text(job: Job, i: int) -> str:
    """Say how many pieces there are, and of how many moulds."""
    pieces, moulds = job.slabs[i].quantity, job.counts[i]
    if pieces == 1:
        return ""
    return f" · {pieces} off, {moulds} mould{'' if moulds == 1 else 's'}"


def mould_page(job: Job, i: int) -> Content:
    """Write the sheet of one slab's mould."""
    slab, shape = job.in_mould[i]
    mould = job.moulds.moulds[i]
    title = TitleBlock(
        reference=job.name,
        label=f"{job.names[i]}, mirrored, face down",
        shade=slab.shade.name or slab.shade.match or "",
        workshop=job.workshop.workshop.name,
    )
    plan = MISSING
    with job.contain("drawing"):
        plan = draw_plan(slab, shape, title=title, alone=True)
    return one_sheet(
        f"{shortened(job.names[i], NAME)}: the mould{times_text(job, i)}",
        flag(MIRRORED),
        drawing(plan, f"Mirrored plan of {job.names[i]}, with dimensions", 190),
        *here_or_later(
            knockouts(job, i), "knockouts", "Knockouts, from the mould's own inside edges, mm"
        ),
        facts(
            ("Sides", f"{mm(mould.height_mm)} mm high on the base board"),
            ("Screws", f"{mould.screws}, in {mm(mould.pilot_mm)} mm pilot holes"),
            ("Bead", _beads(job, i)),
            *_drips(job, i),
            ("Release", f"{1000 * mould.release_l:.0f} ml, thin and wiped"),
        ),
    )


def _beads(job: Job, i: int) -> str:
    """Say the beads: along each seen side, and round all rims that show together."""
    beads, sides = job.moulds.moulds[i].beads, {side.name for side in job.in_mould[i][1].sides}
    along = [b for b in beads if b.along in sides]
    told = [f"{b.along} {b.profile} {mm(b.size_mm)}" for b in along]
    rims = len(beads) - len(along)
    told += [f"{rims} rim{'' if rims == 1 else 's'}, as small as an arris"] if rims else []
    total = sum(bead.length_mm for bead in beads) / 1000
    if len(along) > MOST_ROWS:
        told = [f"{len(along)} sides and {rims} rims, as the plan has them"]
    return f"{', '.join(told)}; {total:.1f} m in all" if told else "none"


def _drips(job: Job, i: int) -> Iterator[tuple[str, str]]:
    for side, length in job.moulds.moulds[i].drips_mm.items():
        yield "Drip former", f"{side}, {mm(length)} mm long, on the open back"


def knockouts(job: Job, i: int) -> Block:
    """List where each former stands, measured from the mould's own inside edges."""
    slab, shape = job.in_mould[i]
    x0, y0, x1, y1 = shape.outline.bounds

    def row(name: str, size: str, box: tuple[float, ...]) -> list[str]:
        a, b, c, d = box
        centre = f"{mm((a + c) / 2 - x0)}, {mm((b + d) / 2 - y0)}"
        return [shortened(name, 18), size, mm(a - x0), mm(x1 - c), mm(b - y0), mm(y1 - d),
                centre, ""]  # fmt: skip

    rows = []
    for opening in shape.openings:
        if opening.polygon.is_empty:
            continue
        a, b, c, d = opening.polygon.bounds
        name = slab.cutouts[opening.index].label or "opening"
        name = f"{letter_of(opening.index)} {name}"
        size = _former_size(slab.cutouts[opening.index], (c - a, d - b), job.workshop)
        rows.append(row(name, size, (a, b, c, d)))
    for k, (relief, polygon) in enumerate(zip(slab.reliefs, shape.reliefs, strict=True)):
        a, b, c, d = polygon.bounds
        letter = letter_of(len(slab.cutouts) + k)
        name = f"{letter} {mm(relief.depth.mm)} high: {relief.label or relief.kind}"
        rows.append(row(name, f"{mm(c - a)} × {mm(d - b)}", (a, b, c, d)))
    if not rows:
        return {}
    columns = ("Knockout", "Size", "Left", "Right", "Front", "Back", "Centre x, y", "Checked")
    return table(columns, rows, (21, 22, 9, 9, 9, 9, 13, 10), right=(2, 3, 4, 5))


def _former_size(cutout: Cutout, over_all_mm: XY, workshop: Workshop) -> str:
    """Say how large a knockout is made, its corners, and how it is turned, anticlockwise."""
    kind = kind_of(cutout)
    if kind.is_circle:
        return f"Ø {mm(kind.size_mm(cutout)[0])}"
    size = over_all_mm
    if cutout.length is not None and cutout.width is not None:
        size = cutout.length.mm, cutout.width.mm
    radius = kind.corner_radius_mm(cutout, workshop.shaping.inside_radius_mm)
    corners = "round ends" if radius is None else f"R {mm(radius)}"
    turned = f", turned {cutout.turn_degrees:g}°" if cutout.turn_degrees else ""
    return f"{mm(size[0])} × {mm(size[1])}, {corners}{turned}"
