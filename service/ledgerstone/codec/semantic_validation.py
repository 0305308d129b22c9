"""Faults of shape and naming that a schema cannot see: an order that has no possible meaning."""

from __future__ import annotations

from collections.abc import Iterable, Sequence

import shapely
from shapely.geometry import Polygon

from ledgerstone.codec.fields import nearest, shown
from ledgerstone.codec.least_sizes import min_size_faults
from ledgerstone.cutouts import cutout_size_mm
from ledgerstone.errors import Fault
from ledgerstone.message import Message
from ledgerstone.order import Cutout, LShape, Outline, Point, Rectangle, Round, Slab
from ledgerstone.order import Polygon as OrderPolygon
from ledgerstone.outline import (
    XY,
    can_round,
    corner_radii_mm,
    finished_size_mm,
    sharp_corners,
    side_names,
)
from ledgerstone.quantities import Length
from ledgerstone.workshop.records import Workshop

_MIN_STEP_MM = 1.0  # least distance between consecutive points


def slab_faults(slab: Slab, workshop: Workshop) -> Iterable[Fault]:
    """Yield the faults of one slab, by pointer from the slab."""
    faults = list(_shape_faults(slab, workshop))
    yield from faults
    wrong = {_part(fault.pointer) for fault in faults}
    size = finished_size_mm(slab, workshop.shaping.fitting_gap_mm)
    plain = isinstance(slab.outline, Rectangle | LShape)
    for fault in min_size_faults(slab, size if plain else None):
        if _part(fault.pointer) not in wrong:
            yield fault


def _part(pointer: str) -> str:
    """Return the part of a slab that a fault is about: its outline, one cut-out, one relief."""
    words = pointer.split("/")[1:]
    return "/".join(words[:1] if words[0] == "outline" else words[:2])


def _shape_faults(slab: Slab, workshop: Workshop) -> Iterable[Fault]:
    """Yield the faults of a slab's shapes and of the names of its sides."""
    faults = list(_size_faults(slab, workshop))
    yield from faults
    if all(fault.pointer != "/outline" for fault in faults):
        size = finished_size_mm(slab, workshop.shaping.fitting_gap_mm)
        yield from outline_faults(slab.outline, "/outline", size)
    for i, cutout in enumerate(slab.cutouts):
        yield from _cutout_faults(cutout, slab, f"/cutouts/{i}")
    for i, relief in enumerate(slab.reliefs):
        yield from outline_faults(relief.outline, f"/reliefs/{i}/outline", None)
    yield from _edge_faults(slab)
    yield from _rest_faults(slab)


def _size_faults(slab: Slab, workshop: Workshop) -> Iterable[Fault]:
    plain = isinstance(slab.outline, Rectangle | LShape)
    if slab.size_from in ("between-walls", "over-units") and not plain:
        yield Fault(
            "/size_from",
            Message("size-from-needs-rectangle"),
        )
    elif plain and min(finished_size_mm(slab, workshop.shaping.fitting_gap_mm)) <= 0:
        yield Fault("/outline", Message("slab-smaller-than-gaps"))


def outline_faults(outline: Outline, pointer: str, size_mm: XY | None) -> Iterable[Fault]:
    """Yield the faults of an outline: self-crossing, a notch too large, a radius too large.

    ``size_mm`` is its length and width as cast, where that differs from what was asked.
    """
    if isinstance(outline, Round):
        return
    if isinstance(outline, OrderPolygon):
        faults = list(ring_faults(outline.points, f"{pointer}/points"))
        yield from faults
        if faults:
            return
        size = (0.0, 0.0)
    else:
        size = size_mm or (outline.length.mm, outline.width.mm)
    if isinstance(outline, LShape):
        notch = outline.notch
        if notch.length.mm >= size[0]:
            yield Fault(f"{pointer}/notch/length", Message("notch-too-large", way="long"))
            return
        if notch.width.mm >= size[1]:
            yield Fault(f"{pointer}/notch/width", Message("notch-too-large", way="wide"))
            return
    if not can_round(sharp_corners(outline, *size), corner_radii_mm(outline, 0.0)):
        named = "corner_radii" if getattr(outline, "corner_radii", None) else "corner_radius"
        yield Fault(f"{pointer}/{named}", Message("corner-radius-too-large"))


def ring_faults(points: Sequence[Point], pointer: str) -> Iterable[Fault]:
    """Yield the faults of a ring: no area, a repeated point, sides that cross or touch."""
    ring = [(point.x.mm, point.y.mm) for point in points]
    if len(ring) > 1 and ring[0] == ring[-1]:
        yield Fault(f"{pointer}/{len(ring) - 1}", Message("point-repeats-first"))
        return
    for i in range(len(ring)):
        if _apart(ring[i - 1], ring[i]) < _MIN_STEP_MM:
            yield Fault(
                f"{pointer}/{i}",
                Message("point-near-the-one-before", least=Length.of_mm(_MIN_STEP_MM)),
            )
            return
    polygon = Polygon(ring)
    if not polygon.is_valid:
        where = shapely.is_valid_reason(polygon).partition("[")[2].rstrip("]").split()
        x, y = (round(float(mm), 1) + 0.0 for mm in where)
        yield Fault(
            pointer, Message("outline-crosses-itself", x=Length.of_mm(x), y=Length.of_mm(y))
        )
    elif polygon.area < 1.0:
        yield Fault(pointer, Message("outline-without-area"))


def _apart(point: XY, other: XY) -> float:
    return max(abs(point[0] - other[0]), abs(point[1] - other[1]))


def _cutout_faults(cutout: Cutout, slab: Slab, pointer: str) -> Iterable[Fault]:
    if cutout.kind == "polygon":
        faults = list(ring_faults(cutout.points, f"{pointer}/points"))
        yield from faults
        radius = cutout.corner_radius
        if not faults and radius is not None:
            points = tuple((point.x.mm, point.y.mm) for point in cutout.points)
            if not can_round(points, (radius.mm,) * len(points)):
                yield _radius_fault(pointer)
    elif (
        cutout.corner_radius is not None
        and 2 * cutout.corner_radius.mm > min(cutout_size_mm(cutout)) + 1e-6
    ):
        yield _radius_fault(pointer)
    sides = side_names(slab.outline)
    if cutout.open_to is not None and cutout.open_to not in sides:
        yield _side_fault(f"{pointer}/open_to", cutout.open_to, sides)


def _radius_fault(pointer: str) -> Fault:
    return Fault(f"{pointer}/corner_radius", Message("cutout-radius-too-large"))


def _side_fault(pointer: str, name: str, sides: Sequence[str]) -> Fault:
    near = nearest(name, sides)
    return Fault(pointer, Message("no-such-side", value=shown(name), **near))


def _edge_faults(slab: Slab) -> Iterable[Fault]:
    sides = side_names(slab.outline)
    for name, edge in slab.edges.items():
        if name not in sides:
            yield _side_fault(f"/edges/{name}", name, sides)
        if edge.profile in ("bevel", "round") and edge.size is None:
            yield Fault(f"/edges/{name}/size", Message("edge-size-missing", profile=edge.profile))


def _rest_faults(slab: Slab) -> Iterable[Fault]:
    rests, sides = slab.rests, side_names(slab.outline)
    if rests is None:
        return
    for name in rests.overhang:
        if name not in sides:
            yield _side_fault(f"/rests/overhang/{name}", name, sides)
    for i, name in enumerate(rests.sides):
        if name not in sides:
            yield _side_fault(f"/rests/sides/{i}", name, sides)
    for i, ledge in enumerate(rests.lines):
        if _apart((ledge.start.x.mm, ledge.start.y.mm), (ledge.end.x.mm, ledge.end.y.mm)) < 1.0:
            yield Fault(f"/rests/lines/{i}", Message("ledge-without-length"))
