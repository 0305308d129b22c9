"""Checks of edges: profiles as the workshop makes them, and what finish the thinnest can take."""

from __future__ import annotations

from collections.abc import Iterable

from ledgerstone.checks.finding import Finding
from ledgerstone.order import Edge, Order, Slab
from ledgerstone.stages import Planned
from ledgerstone.surfaces import MIN_FACE_MM, SURFACES
from ledgerstone.wording import Message, side_name, slab_name

_OURS = "the workshop's own rule"


def profiles_made(planned: Planned) -> Iterable[Finding]:
    """Bevels and rounds are of a size that the workshop makes."""
    order, workshop = planned.order, planned.workshop
    made = {offered.profile: offered for offered in workshop.edges}
    for i, slab in enumerate(order.slabs):
        for side, edge in slab.edges.items():
            offered = made.get(edge.profile)
            size = edge.size
            if edge.profile not in ("bevel", "round") or size is None or offered is None:
                continue
            small = size.mm < offered.smallest_mm
            if not small and size.mm <= offered.largest_mm:
                continue
            limit_mm = offered.smallest_mm if small else offered.largest_mm
            limit = size.like(limit_mm, "up" if small else "down")
            yield Finding(
                "edge-not-made",
                "stops",
                Message(
                    "edge-too-small" if small else "edge-too-large",
                    profile=edge.profile,
                    side=side_name(side),
                    size=size,
                    limit=limit,
                ),
                _OURS,
                slab=i,
                at=(f"/slabs/{i}/edges/{side}/size",),
                measured={"size_mm": size.mm},
                limit={"size_mm": limit_mm},
                key=side,
            )


def edges_thick_enough(planned: Planned) -> Iterable[Finding]:
    """Below a bevel or a round, enough of the edge is left to be seen whole, and to be finished."""
    order = planned.order
    for i, slab in enumerate(order.slabs):
        faces = [(face_mm(slab, edge), side) for side, edge in slab.edges.items()]
        thinned = [(left, side) for left, side in faces if left < slab.thickness.mm]
        for left, side in thinned:
            if left < MIN_FACE_MM:
                yield _too_deep(i, slab, side, left)
        least, side = min(thinned, default=(slab.thickness.mm, ""))
        needs = SURFACES[slab.finish.surface].least_face_mm
        if MIN_FACE_MM <= least < needs:
            yield _too_thin(order, i, side, least)


def face_mm(slab: Slab, edge: Edge) -> float:
    """Height of an edge's upright face: the thickness less what a bevel or a round takes."""
    if edge.profile == "wall" or edge.size is None:
        return slab.thickness.mm
    return slab.thickness.mm - edge.size.mm


def _too_deep(i: int, slab: Slab, side: str, left: float) -> Finding:
    edge = slab.edges[side]
    size = edge.size if edge.size is not None else slab.thickness
    least = slab.thickness.like(MIN_FACE_MM, "up")
    return Finding(
        "edge-too-deep",
        "stops",
        Message(
            "edge-too-deep",
            profile=edge.profile,
            side=side_name(side),
            size=size,
            thickness=slab.thickness,
            is_left="some" if left > 0.0 else "nothing",
            left=slab.thickness.like(max(left, 0.0), "down"),
            limit=least,
        ),
        "common practice, no source",
        slab=i,
        at=(f"/slabs/{i}/edges/{side}/size",),
        measured={"left_mm": round(left, 1)},
        limit={"left_mm": MIN_FACE_MM},
        key=side,
    )


def _too_thin(order: Order, i: int, side: str, left: float) -> Finding:
    slab = order.slabs[i]
    surface = slab.finish.surface
    needs = SURFACES[surface].least_face_mm
    at = f"/slabs/{i}/edges/{side}/size" if side else f"/slabs/{i}/thickness"
    return Finding(
        "edge-too-thin-for-finish",
        "stops",
        Message(
            "edge-too-thin-for-finish",
            surface=surface,
            slab=slab_name(slab, i, len(order.slabs)),
            limit=slab.thickness.like(needs, "up"),
            profile=slab.edges[side].profile if side else "none",
            side=side_name(side) if side else "",
            left=slab.thickness.like(left, "down"),
        ),
        "common practice, no source",
        slab=i,
        at=(f"/slabs/{i}/finish/surface", at),
        measured={"left_mm": round(left, 1)},
        limit={"left_mm": needs},
        key=side,
    )
