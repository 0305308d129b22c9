"""The sheets of one slab: its mould, and its steel, lifts and finish, as it lies face down.

Each is one sheet of paper. A list that would not leave its drawing legible goes on a page of its
own at the end, with those of the order's other slabs.
"""

from __future__ import annotations

from collections.abc import Iterator

from ledgerstone.drawing.casting import DrawnBar, Layer, draw_section, draw_steel
from ledgerstone.outline import XY
from ledgerstone.papers.job import Job
from ledgerstone.papers.job_blocks import (
    NAME,
    Block,
    Content,
    drawing,
    facts,
    flag,
    heading,
    here_or_later,
    is_long,
    kept_mm,
    kg,
    mm,
    one_sheet,
    page,
    says,
    shortened,
    table,
    to_5_mm,
)
from ledgerstone.papers.job_finish import finish_blocks
from ledgerstone.papers.job_mould import MIRRORED, knockouts, mould_page, times_text
from ledgerstone.papers.job_strength import strength_facts
from ledgerstone.strength.grips import best_grips_mm


def slab_pages(job: Job, i: int) -> Iterator[Content]:
    """Write the two sheets of one slab."""
    yield mould_page(job, i)
    yield _steel_page(job, i)


def list_pages(job: Job) -> Iterator[Content]:
    """Write the lists that are too long for their slab's sheet, all slabs' together."""
    blocks: list[Block] = []
    for i, name in enumerate(job.names):
        for says_what, long in (("knockouts", knockouts(job, i)), ("steel", _bars(job, i))):
            if is_long(long):
                blocks += [
                    heading(f"{shortened(name, NAME)}: {says_what}, from the mould's edges, mm")
                ]
                blocks.append(long)
    if blocks:
        yield page("Long lists, mirrored as the moulds are", flag(MIRRORED), *blocks)


# --- steel, lifts, finish -------------------------------------------------------------------


def _steel_page(job: Job, i: int) -> Content:
    steel = job.steel[i]
    return one_sheet(
        f"{shortened(job.names[i], NAME)}: steel, lifts, finish{times_text(job, i)}",
        flag(f"{MIRRORED} Arrows: the best places to lift."),
        _steel_drawing(job, i),
        _section(job, i),
        *here_or_later(_bars(job, i), "bars and mesh"),
        says(*steel.notes),
        heading("Lifts"),
        _lifts(job, i),
        heading("Finish"),
        *finish_blocks(job, i),
    )


def _steel_drawing(job: Job, i: int) -> Block:
    _, shape = job.in_mould[i]
    steel = job.steel[i]
    before = job.quote.shapes[i].outline.bounds
    over = before[0] + before[2]

    def turned(xy: XY) -> XY:
        return over - xy[0], xy[1]

    meshes = zip(steel.mesh, steel.mesh_at_mm, strict=True)
    grips, along_y = best_grips_mm(shape.outline)
    layer = Layer(
        tuple(DrawnBar(b.mark, turned(b.start_mm), turned(b.end_mm)) for b in steel.bars),
        tuple((over - x - m.length_mm, y, over - x, y + m.width_mm) for m, (x, y) in meshes),
        grips,
        along_y,
        job.rail_in(i, shape),
        mesh_off_mm=steel.beside_mm,
    )
    words = f"Steel of {job.names[i]} in its mould: {len(steel.bars)} bars"
    return drawing(draw_steel(shape, layer, title="Steel in the mould", says=words), words, 62)


def _section(job: Job, i: int) -> Block:
    slab, steel = job.slabs[i], job.steel[i]
    coat = job.workshop.recipe.face_coat
    kept = f"{kept_mm(steel.cover.kept_mm)} mm"
    face = f": {mm(coat.thickness_mm)} mm of face coat first" if coat is not None else ""
    words = f"Section: {mm(slab.thickness.mm)} mm thick, steel in mid-depth, cover {kept}"
    svg = draw_section(
        thickness=f"{mm(slab.thickness.mm)} mm",
        height=f"at {mm(job.moulds.moulds[i].height_mm)} mm",
        cover=kept,
        face=face,
        bars=bool(steel.bars),
        bar=_section_words(job, i),
        says=words,
    )
    return drawing(svg, words, 44)


def _section_words(job: Job, i: int) -> str:
    rack, bars = job.workshop.steel, job.steel[i].bars
    mesh = f"mesh {rack.mesh_wire_mm:g} at {rack.mesh_pitch_mm:g}"
    return f"{bars[0].diameter_mm:g} mm bars on {mesh}" if bars else mesh.capitalize()


def _bars(job: Job, i: int) -> Block:
    steel = job.steel[i]
    over = sum(job.quote.shapes[i].outline.bounds[::2])
    rows = []
    for bar in steel.bars:
        xs = sorted((over - bar.start_mm[0], over - bar.end_mm[0]))
        ys = sorted((bar.start_mm[1], bar.end_mm[1]))
        where = f"left {_from_to(*xs)}, front {_from_to(*ys)}"
        size = f"{bar.diameter_mm:g} mm bar"
        rows.append([bar.mark, size, mm(bar.length_mm), where, ""])
    for piece, (x, y) in zip(steel.mesh, steel.mesh_at_mm, strict=True):
        where = f"left {mm(over - x - piece.length_mm)}, front {mm(y)}"
        size = f"mesh {piece.wire_mm:g} at {piece.pitch_mm:g}"
        rows.append([piece.mark, size, f"{mm(piece.length_mm)} × {mm(piece.width_mm)}", where, ""])
    columns = ("Mark", "What", "Cut, mm", "Where it lies, from the mould's edges, mm", "Cut")
    return table(columns, rows, (8, 18, 19, 47, 8))


def _from_to(first_mm: float, last_mm: float) -> str:
    """Say a stretch, or a place where it has no length."""
    first, last = mm(first_mm), mm(last_mm)
    return first if first == last else f"{first} to {last}"


def _lifts(job: Job, i: int) -> Block:
    handled = job.quote.strength[i].handled
    _, shape = job.in_mould[i]
    x0, y0, _, _ = shape.outline.bounds
    grips, along_y = best_grips_mm(shape.outline)
    start, side = (y0, "front") if along_y else (x0, "left")
    people = job.quote.weights[i].people_to_lift
    first, second = to_5_mm(grips[0] - start), to_5_mm(grips[1] - start)
    where = f"{first} and {second} mm from the mould's {side} edge"
    carried = "Flat, level, on two lines" if handled.way.held == "flat" else "On edge, upright"
    rail = " Clamp a stiff rail across the openings first." if handled.way.rail else ""
    if handled.way.rail and not shape.openings:
        rail = " It has no opening, so it wants no rail."
    sides = " Sides and formers stay in until it stands." if handled.way.sides_on else ""
    turned = (
        "Turned, with its mould" if handled.way.sides_on else "Turned, its sides and formers out"
    )
    over = f", over the slab's {handled.turned_over}" if handled.turned_over else ""
    return facts(
        ("Poured, wet", kg(job.wet_kg(i))),
        (turned, f"{kg(job.turned_kg(i))}, by {handled.way.people} people{over}"),
        ("Cured, bare", f"{kg(job.cured_kg(i))}: {people} people with clamps, by our own share"),
        ("How", f"{handled.way.name[:1].upper()}{handled.way.name[1:]}.{rail}{sides}"),
        ("When", f"{handled.cover_days:g} days after the pour, not before"),
        *strength_facts(job, i),
        ("Grip at", where),
        ("Carry", f"{carried}; never flat by its ends. No mass here is a safe limit."),
    )  # fmt: skip
