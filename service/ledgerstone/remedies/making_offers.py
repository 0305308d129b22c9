"""Options where an edge, a relief or a finish cannot be made as ordered."""

from __future__ import annotations

import math
from collections.abc import Iterable
from dataclasses import replace

from ledgerstone.checks import Finding
from ledgerstone.checks.thickness import GRAINS
from ledgerstone.json_types import KeyPath
from ledgerstone.order import Rectangle, Relief, Slab
from ledgerstone.quantities import Length
from ledgerstone.remedies.change import Change
from ledgerstone.remedies.costs import COST, MM_OF_DEPTH, PER_SHARE
from ledgerstone.remedies.option import ROUND_TO_MM, Option, named
from ledgerstone.remedies.policy import SIZES_WITHIN
from ledgerstone.remedies.promise_offers import other_delivery
from ledgerstone.shape import Shape
from ledgerstone.stages import Planned, StageContext
from ledgerstone.surfaces import SURFACES


def edge_size(
    finding: Finding, planned: Planned, _context: StageContext, _most: float
) -> Iterable[Option]:
    """Make a bevel or a round of the nearest size that is made and leaves enough of the edge."""
    order = planned.order
    i, changes, cost = finding.slab, [], COST["edge-size"]
    if i is None:
        return
    for side in dict.fromkeys(named(finding, "edges")):
        size = order.slabs[i].edges[side].size if side in order.slabs[i].edges else None
        new = _nearest_size(order.slabs[i], side, planned)
        if size is not None and new is not None:
            changes.append(Change(("slabs", i, "edges", side, "size"), new))
            cost += abs(new.mm - size.mm) / MM_OF_DEPTH
    if changes:
        yield Option("edge-size", tuple(changes), cost)


def _nearest_size(slab: Slab, side: str, planned: Planned) -> Length | None:
    edge, size = slab.edges[side], slab.edges[side].size
    made = next((e for e in planned.workshop.edges if e.profile == edge.profile), None)
    if size is None or made is None:
        return None
    most_mm = min(made.largest_mm, slab.thickness.mm - SURFACES[slab.finish.surface].least_face_mm)
    if size.mm > made.smallest_mm:
        return size.like(min(size.mm, most_mm), "down", to_mm=0.5)
    return size.like(made.smallest_mm, "up", to_mm=0.5)


def plainer_finish(
    finding: Finding, planned: Planned, _context: StageContext, _most: float
) -> Iterable[Option]:
    """Yield surfaces that a thinner edge can take, the nearest first."""
    order = planned.order
    if finding.slab is None:
        return
    slab = order.slabs[finding.slab]
    offered = {finish.surface for finish in planned.workshop.finishes}
    needed_mm = SURFACES[slab.finish.surface].least_face_mm
    for surface, kind in SURFACES.items():
        if kind.stands_in and surface in offered and kind.least_face_mm < needed_mm:
            cost = COST["plainer-finish"] + (needed_mm - kind.least_face_mm) / MM_OF_DEPTH
            path = ("slabs", finding.slab, "finish", "surface")
            yield Option("plainer-finish", (Change(path, surface),), cost)


def without_drip(
    finding: Finding, planned: Planned, _context: StageContext, _most: float
) -> Iterable[Option]:
    """Leave the drips out."""
    order = planned.order
    i = finding.slab
    if i is None:
        return
    changes = tuple(
        Change(("slabs", i, "edges", side, "drip"), new=False)
        for side, edge in order.slabs[i].edges.items()
        if edge.drip
    )
    yield Option("without-drip", changes, COST["without-drip"])


def shallower_relief(
    finding: Finding, planned: Planned, _context: StageContext, _m: float
) -> Iterable[Option]:
    """Make reliefs so shallow that enough is left beneath them, for the grains too."""
    order = planned.order
    i, limit = finding.slab, finding.limit.get("left_mm", 0.0)
    if i is None or not isinstance(limit, float):
        return
    slab, changes, cost = order.slabs[i], [], COST["shallower"]
    least = max(limit, GRAINS * planned.workshop.recipe.largest_aggregate_mm)
    for k in map(int, named(finding, "reliefs")) if limit else range(len(slab.reliefs)):
        depth = slab.reliefs[k].depth
        new = depth.like(slab.thickness.mm - least, "down")
        if 0.0 < new.mm < depth.mm:
            changes.append(Change(("slabs", i, "reliefs", k, "depth"), new))
            cost += (depth.mm - new.mm) / MM_OF_DEPTH
    if changes:
        yield Option("shallower", tuple(changes), cost)


def relief_within(
    finding: Finding, planned: Planned, _context: StageContext, most_share: float
) -> Iterable[Option]:
    """Yield a relief moved onto its slab, smaller if necessary; nothing if it is far off."""
    order = planned.order
    i = finding.slab
    if i is None:
        return
    k, shape = next(map(int, named(finding, "reliefs"))), planned.shapes[i]
    relief, base = order.slabs[i].reliefs[k], ("slabs", i, "reliefs", k)
    outline, changes, share = relief.outline, [], 0.0
    area, room = shape.reliefs[k].bounds, shape.outline.bounds
    for axis, (name, size_name) in enumerate((("x", "length"), ("y", "width"))):
        size, whole = area[axis + 2] - area[axis], room[axis + 2] - room[axis]
        if size > whole and isinstance(outline, Rectangle):
            old_size: Length = getattr(outline, size_name)
            new = old_size.like(whole, "down", to_mm=ROUND_TO_MM)
            share, size = max(share, 1.0 - new.mm / old_size.mm), new.mm
            changes.append(Change((*base, "outline", size_name), new))
        by = max(room[axis] - area[axis], 0.0) or min(room[axis + 2] - area[axis] - size, 0.0)
        if by:
            old: Length = getattr(relief.at, name)
            way = math.copysign(1.0, by)
            changes.append(
                Change((*base, "at", name), old.like(old.mm + by, "up" if way > 0 else "down"))
            )
    if changes and share <= most_share:
        effect = "relief-smaller" if share else "relief-in"
        yield Option(effect, tuple(changes), COST["relief-in"] + PER_SHARE * share)
    yield from _relief_centred(relief, base, shape, k)
    if most_share > SIZES_WITHIN:
        yield Option("relief-out", (Change(base, None),), COST["relief-out"])


def _relief_centred(relief: Relief, base: KeyPath, shape: Shape, k: int) -> Iterable[Option]:
    """Move a relief to the slab's middle, where a round or rounded slab has most room for it."""
    middle, (x0, y0, x1, y1) = shape.outline.centroid, shape.reliefs[k].bounds
    by = (middle.x - (x0 + x1) / 2, middle.y - (y0 + y1) / 2)
    changes = tuple(
        Change((*base, "at", name), old.like(old.mm + step))
        for name, step in zip(("x", "y"), by, strict=True)
        for old in [getattr(relief.at, name)]
        if abs(step) >= 1.0
    )
    if changes:
        yield Option("relief-centred", changes, COST["relief-centred"])


def carried_by_others(
    finding: Finding, planned: Planned, context: StageContext, most_share: float
) -> Iterable[Option]:
    """Yield delivery to the door, or collection: the way in is then the customer's.

    Offered after what makes it pass, for it only turns a stop into a caution.
    """
    for option in other_delivery(finding, planned, context, most_share):
        yield replace(option, effect="left-at-door", cost=option.cost + COST["left-at-door"])
