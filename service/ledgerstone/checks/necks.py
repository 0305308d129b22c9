"""Check of an outline's own narrow places: necks thinner than the slab, and points."""

from __future__ import annotations

from collections.abc import Iterable

import shapely
from shapely.geometry import Polygon

from ledgerstone import plane
from ledgerstone.checks.finding import Finding, geojson
from ledgerstone.order import Rectangle, Round, Slab
from ledgerstone.stages import Planned
from ledgerstone.wording import Message, slab_name

_TOUCH_MM = 0.05  # what rounding and the arcs' chords may leave


def necks_wide_enough(planned: Planned) -> Iterable[Finding]:
    """Nowhere is the outline itself narrower than the slab is thick."""
    order = planned.order
    for i, slab, shape in planned.slabs():
        limit = slab.thickness.mm
        necks = [] if _is_plain(slab) else thin_parts(shape.outline, limit)
        if necks:
            name = slab_name(slab, i, len(order.slabs))
            yield Finding(
                "neck-too-narrow",
                "stops",
                Message("neck-too-narrow", slab=name, thickness=slab.thickness),
                "common practice, no source",
                slab=i,
                at=(f"/slabs/{i}/outline",),
                limit={"width_mm": limit},
                where_mm=geojson(max(necks, key=lambda part: part.area)),
            )


def _is_plain(slab: Slab) -> bool:
    """Return whether an outline has no neck but its whole width, which another check looks at."""
    return isinstance(slab.outline, Rectangle | Round)


def thin_parts(outline: Polygon, narrowest_mm: float) -> list[Polygon]:
    """Return the parts of an outline that are narrower than a width, without slivers at corners.

    What is lost when it is drawn in by half and let out again with mitred corners.
    """
    half = narrowest_mm / 2 - _TOUCH_MM
    opened = plane.buffer(
        plane.buffer(outline, -half, join_style="mitre"), half, join_style="mitre"
    )
    lost = shapely.get_parts(
        plane.difference(outline, plane.buffer(opened, _TOUCH_MM, join_style="mitre"))
    )
    return [part for part in lost if isinstance(part, Polygon) and part.area > half**2]
