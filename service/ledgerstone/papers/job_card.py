"""The card that goes on a slab's crate: its mass, which way up, where to grip it."""

from __future__ import annotations

from collections.abc import Iterator

from ledgerstone.drawing.casting import Layer, draw_steel
from ledgerstone.papers.job import Job
from ledgerstone.papers.job_blocks import (
    NAME,
    Block,
    Content,
    big,
    drawing,
    facts,
    flag,
    heading,
    kg,
    mm,
    one_sheet,
    says,
    shortened,
    ticks,
    to_5_mm,
)
from ledgerstone.papers.words import shade_text
from ledgerstone.strength.grips import best_grips_mm
from ledgerstone.wording import listed

_LIFTING = (
    "These are masses, and none is a safe limit. Look at the way, the floor and who lifts before"
    " each lift, and do not lift alone what takes two."
)


def _gripped(job: Job, i: int) -> Block:
    """Show the slab as its face is seen, and where hands and clamps go."""
    shape = job.quote.shapes[i]
    grips, along_y = best_grips_mm(shape.outline)
    rail = job.rail_in(i, shape)
    words = f"{job.names[i]} from its face: where to grip it"
    words += ", and where the rail is clamped" if rail else ""
    layer = Layer((), (), grips, along_y, rail, "GRIP HERE")
    return drawing(draw_steel(shape, layer, title=words, says=words), words, 96)


def carry_card(job: Job, i: int) -> Content:
    """Write the card that goes on the crate."""
    slab = job.slabs[i]
    shape = job.quote.shapes[i]
    x0, y0, x1, y1 = shape.outline.bounds
    grips, along_y = best_grips_mm(shape.outline)
    length = (y1 - y0) if along_y else (x1 - x0)
    start = y0 if along_y else x0
    people = job.quote.weights[i].people_to_lift
    first, last = to_5_mm(grips[0] - start), to_5_mm(start + length - grips[1])
    lines = [
        "↑  THIS WAY UP  ↑",
        "A long edge down, on edge all the way",
        f"Grip {first} mm and {last} mm from the ends",
    ]
    bearers = [f"{to_5_mm(at - start)}" for at in job.quote.strength[i].handled.bearers_mm]
    if bearers:
        side = "front" if along_y else "left"
        lines[1] = "Flat, its face up, all the way"
        lines.append(f"On bearers {listed(bearers)} mm from its {side} edge, to their middles")
    if job.rail_in(i, shape) is not None:
        lines.append("Clamp the rail as drawn before it moves")
    return one_sheet(
        f"Carry card: {shortened(job.names[i], NAME)}",
        big(kg(job.cured_kg(i)), f"{people} people, with clamps", points=40),
        big(*lines),
        _gripped(job, i),
        facts(
            ("Size", f"{mm(shape.length_mm)} × {mm(shape.width_mm)} × {mm(slab.thickness.mm)} mm"),
            ("Look", shade_text(slab)),
            ("Wrapped", kg(job.cured_kg(i) + job.wrapping_kg)),
            ("Weighed", "____________ kg"),
        ),
        ticks(
            "Never flat by its ends",
            "Set down on timber or foam, never on a corner",
            "Two hands each, boots on, the way walked and cleared first",
        ),
        says(*_not_yet(job, i), _LIFTING),
        *_pot_label(job, i),
    )


def _not_yet(job: Job, i: int) -> Iterator[str]:
    """Say from which day on people may be on it."""
    for finding in job.quote.findings:
        if finding.check == "young-in-place" and finding.slab == i:
            yield finding.says


def _pot_label(job: Job, i: int) -> Iterator[Block]:
    """Write the label of the repair pot, to cut off and stick on."""
    pot, slab = job.batches.slabs[i].pot, job.slabs[i]
    if pot is None:
        return
    rule = job.workshop.slurry
    water_g = 1000 * rule.water_cement_ratio * pot.kg("cement") / rule.repair_pot_kg
    shade = slab.shade.name or slab.shade.match or ""
    yield heading("Label of the repair pot")
    yield flag(
        f"{job.name} · {shade} · {rule.repair_pot_kg:g} kg of dry slurry, the slab's"
        f" own. Stir {water_g:.0f} g of water into a"
        " kilogram of it, rub it in, keep it damp for a day. It burns skin and eyes: wear gloves"
        " and glasses, and keep it dry and away from children."
    )
