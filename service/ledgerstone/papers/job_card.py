"""The card that goes on a slab's crate: its mass, which way up, where to grip it."""

from __future__ import annotations

from ledgerstone.drawing.casting import Layer, draw_steel
from ledgerstone.papers.job import Job
from ledgerstone.papers.job_blocks import (
    Block,
    Content,
    big,
    drawing,
    facts,
    kg,
    mm,
    page,
    says,
    ticks,
    to_5_mm,
)
from ledgerstone.papers.words import shade_text
from ledgerstone.strength.handling import best_grips_mm

_LIFTING = (
    "These are masses, and none is a safe limit. Look at the way, the floor and who lifts before"
    " each lift, and do not lift alone what takes two."
)


def _gripped(job: Job, i: int) -> Block:
    """Show the slab as its face is seen, and where hands and clamps go."""
    shape = job.quote.shapes[i]
    grips, along_y = best_grips_mm(shape.outline)
    words = f"{job.names[i]} from its face: arrows say grip here"
    return drawing(
        draw_steel(shape, Layer((), (), grips, along_y), title=words, says=words), words, 68
    )


def carry_card(job: Job, i: int) -> Content:
    """Write the card that goes on the crate."""
    slab, handled = job.slabs[i], job.quote.strength[i].handled
    shape = job.quote.shapes[i]
    x0, y0, x1, y1 = shape.outline.bounds
    grips, along_y = best_grips_mm(shape.outline)
    length = (y1 - y0) if along_y else (x1 - x0)
    start = y0 if along_y else x0
    people = job.quote.weights[i].people_to_lift
    first, last = to_5_mm(grips[0] - start), to_5_mm(start + length - grips[1])
    rail = bool(shape.openings) and handled.way.rail
    lines = [
        "↑  THIS WAY UP  ↑",
        "A long edge down, on edge all the way",
        f"Grip {first} mm and {last} mm from the ends",
    ]
    if rail:
        lines.append("Clamp the rail across the openings before it moves")
    return page(
        f"Carry card: {job.names[i]}",
        big(kg(job.cured_kg(i)), f"{people} people, with clamps", points=40),
        big(*lines),
        _gripped(job, i),
        facts(
            ("Size", f"{mm(shape.length_mm)} × {mm(shape.width_mm)} × {mm(slab.thickness.mm)} mm"),
            ("Look", shade_text(slab)),
            ("With crate", kg(job.cured_kg(i) + job.workshop.lifting.crate_kg_per_slab)),
            ("Weighed", "____________ kg"),
        ),
        ticks(
            "Never flat by its ends",
            "Set down on timber or foam, never on a corner",
            "Two hands each, boots on, the way walked and cleared first",
        ),
        says(_LIFTING),
    )
