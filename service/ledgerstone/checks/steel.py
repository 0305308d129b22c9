"""Checks of steel and aggregate against the thickness and the place."""

from __future__ import annotations

import math
from collections.abc import Iterable
from dataclasses import replace

from ledgerstone.checks.finding import Finding, line_mm
from ledgerstone.order import Slab
from ledgerstone.quantities import Length
from ledgerstone.shape import Shape, Strip
from ledgerstone.stages import Planned
from ledgerstone.steel_rules import Cover, cover_of, largest_aggregate_mm
from ledgerstone.wording import Message, cutout_name, slab_name
from ledgerstone.workshop.records import Steel


def grains_pass(planned: Planned) -> Iterable[Finding]:
    """The recipe's largest grains pass between forms, faces and wires."""
    workshop = planned.workshop
    largest = workshop.recipe.largest_aggregate_mm
    for i, slab, shape in planned.slabs():
        limit = math.floor(10.0 * largest_aggregate_mm(slab, shape, workshop.steel)) / 10.0
        if largest <= limit or limit <= 0.0:
            continue  # if nothing is left, the shape checks report it
        yield _grains_stick(planned, i, largest, limit)


def _grains_stick(planned: Planned, i: int, largest_mm: float, limit_mm: float) -> Finding:
    """Return the finding where the concrete does not flow: in a strip, or the whole slab."""
    slab, shape = planned.order.slabs[i], planned.shapes[i]
    strip = _tightest(slab, shape, planned.workshop.steel)
    at: tuple[str, ...] = (f"/slabs/{i}/thickness",)
    message = Message(
        "grains-stick",
        slab=slab_name(slab, i, len(planned.order.slabs)),
        limit=Length.of_mm(limit_mm),
        largest=Length.of_mm(largest_mm),
    )
    if strip is not None:
        message = Message(
            "grains-stick-in-strip",
            width=slab.thickness.like(strip.width_mm, "down"),
            cutout=cutout_name(slab, strip.opening),
        )
        faced = [strip.faces] if isinstance(strip.faces, int) else []
        at = tuple(f"/slabs/{i}/cutouts/{k}" for k in (strip.opening, *faced))
    return Finding(
        "aggregate-too-large",
        "stops",
        message,
        "ACI 318-19 26.4.2.1(a)(5)",
        slab=i,
        at=at,
        measured={"aggregate_mm": largest_mm},
        limit={"aggregate_mm": limit_mm},
        where_mm=line_mm(strip.line_mm) if strip is not None else None,
    )


def _tightest(slab: Slab, shape: Shape, steel: Steel) -> Strip | None:
    """The strip beside an opening that lets the least grain in; none if all is as tight."""
    strips = [strip for strip in shape.strips if strip.width_mm > 0.0]
    tightest = min(strips, key=lambda strip: strip.width_mm, default=None)
    alone = largest_aggregate_mm(slab, replace(shape, strips=()), steel)
    if tightest is None or alone <= largest_aggregate_mm(slab, shape, steel):
        return None
    return tightest


def steel_covered(planned: Planned) -> Iterable[Finding]:
    """Steel has its cover in this thickness; where it would rust without it, it stops."""
    order, workshop = planned.order, planned.workshop
    for i, slab in enumerate(order.slabs):
        cover = cover_of(slab, workshop.steel)
        if cover.is_kept:
            continue
        rusts = workshop.steel.rusts and slab.place != "indoors"
        name = slab_name(slab, i, len(order.slabs))
        kept = slab.thickness.like(max(cover.kept_mm, 0.0), "down")
        wanted = slab.thickness.like(cover.wanted_mm, "up")
        if rusts:
            thickest = replace(slab, thickness=slab.thickness.like(workshop.shaping.thickest_mm))
            enough = cover_of(replace(thickest, reliefs=()), workshop.steel).is_kept
            message = Message(
                "steel-rusts",
                place=slab.place,
                slab=name,
                kept=kept,
                wanted=wanted,
                thicker="helps" if enough else "never-helps",
            )
        else:
            message = Message("cover-too-thin", slab=name, kept=kept, wanted=wanted)
        yield _finding(i, cover, message, rusts=rusts)


def _finding(i: int, cover: Cover, message: Message, *, rusts: bool) -> Finding:
    return Finding(
        "steel-rusts" if rusts else "cover-too-thin",
        "stops" if rusts else "caution",
        message,
        "EN 1992-1-1 table 4.4N and (4.2)",
        slab=i,
        at=(f"/slabs/{i}/thickness",),
        measured={"cover_mm": round(max(cover.kept_mm, 0.0), 1)},
        limit={"cover_mm": round(cover.wanted_mm, 1)},
    )
