"""Checks of what one piece may measure: casting table, thickness, smallest side."""

from __future__ import annotations

from collections.abc import Iterable

from shapely.geometry import Polygon as ShapelyPolygon

from ledgerstone.checks.finding import Finding, only
from ledgerstone.outline import typed_length
from ledgerstone.stages import Planned
from ledgerstone.wording import Listed, Message, slab_name

_OURS = "the workshop's own rule"
_CAST_WITHIN_MM = 2.0  # so near it is cast with the same mould sides: common practice, no source


def fits_the_table(planned: Planned) -> Iterable[Finding]:
    """Each slab fits the casting table, either way round."""
    order, workshop = planned.order, planned.workshop
    table = workshop.table
    for i, slab, shape in planned.slabs():
        longer, shorter = _box_mm(shape.outline)
        if longer <= table.length_mm and shorter <= table.width_mm:
            continue
        typed = typed_length(slab.outline)
        yield Finding(
            "too-big-for-table",
            "stops",
            Message(
                "too-big-for-table",
                slab=slab_name(slab, i, len(order.slabs)),
                length=typed.like(longer, "up"),
                width=typed.like(shorter, "up"),
                most_length=typed.like(table.length_mm, "down"),
                most_width=typed.like(table.width_mm, "down"),
            ),
            _OURS,
            slab=i,
            at=(f"/slabs/{i}/outline",),
            measured={"length_mm": round(longer, 1), "width_mm": round(shorter, 1)},
            limit={"length_mm": table.length_mm, "width_mm": table.width_mm},
        )


def thick_enough(planned: Planned) -> Iterable[Finding]:
    """Each slab is between the thinnest and the thickest that the workshop casts.

    So is one that is a whole millimetre beside such a bound: 38 mm where 1 1/2 in is the thinnest.
    """
    order, workshop = planned.order, planned.workshop
    shaping = workshop.shaping
    bounds = (shaping.thinnest_mm, shaping.thickest_mm)
    for i, slab in enumerate(order.slabs):
        thickness = slab.thickness
        is_bound = any(thickness.exact_mm == round(mm) for mm in bounds)
        if is_bound or bounds[0] <= thickness.mm <= bounds[1]:
            continue
        thin = thickness.mm < shaping.thinnest_mm
        limit_mm = shaping.thinnest_mm if thin else shaping.thickest_mm
        limit = thickness.like(limit_mm, "up" if thin else "down")
        name = slab_name(slab, i, len(order.slabs))
        yield Finding(
            "too-thin" if thin else "too-thick",
            "stops",
            Message(
                "too-thin" if thin else "too-thick", slab=name, thickness=thickness, limit=limit
            ),
            _OURS,
            slab=i,
            at=(f"/slabs/{i}/thickness",),
            measured={"thickness_mm": thickness.mm},
            limit={"thickness_mm": limit_mm},
        )


def thickness_stocked(planned: Planned) -> Iterable[Finding]:
    """A thickness that no mould side is stocked in costs an odd strip: a note for each."""
    order, workshop = planned.order, planned.workshop
    shaping, odd = workshop.shaping, dict[float, list[int]]()
    for i, slab in enumerate(order.slabs):
        mm = slab.thickness.mm
        # Within the cast tolerance of a stocked one, as an inch size often is, it is no odd one.
        stocked = any(abs(mm - usual) <= _CAST_WITHIN_MM for usual in shaping.thicknesses_mm)
        if shaping.thinnest_mm <= mm <= shaping.thickest_mm and not stocked:
            odd.setdefault(mm, []).append(i)
    for mm, slabs in odd.items():
        typed = order.slabs[slabs[0]].thickness
        usual = tuple(typed.like(usual) for usual in shaping.thicknesses_mm)
        yield Finding(
            "odd-thickness",
            "note",
            Message("odd-thickness", thickness=typed, usual=Listed(usual, joined="comma")),
            _OURS,
            slab=only(slabs),
            at=tuple(f"/slabs/{i}/thickness" for i in slabs),
            measured={"thickness_mm": mm},
            key=f"{mm:g}" if len(slabs) > 1 else "",
        )


def wide_enough(planned: Planned) -> Iterable[Finding]:
    """No slab is a sliver."""
    order, workshop = planned.order, planned.workshop
    limit_mm = workshop.shaping.smallest_side_mm
    for i, slab, shape in planned.slabs():
        _, shorter = _box_mm(shape.outline)
        if shorter >= limit_mm:
            continue
        typed = typed_length(slab.outline)
        limit = typed.like(limit_mm, "up")
        name = slab_name(slab, i, len(order.slabs))
        yield Finding(
            "sliver",
            "stops",
            Message("sliver", slab=name, width=typed.like(shorter, "down"), limit=limit),
            _OURS,
            slab=i,
            at=(f"/slabs/{i}/outline",),
            measured={"width_mm": round(shorter, 1)},
            limit={"width_mm": limit_mm},
        )


def _box_mm(outline: ShapelyPolygon) -> tuple[float, float]:
    """Longer and shorter side of the smallest upright box around an outline, to 0.01 mm."""
    x0, y0, x1, y1 = outline.bounds
    return round(max(x1 - x0, y1 - y0), 2), round(min(x1 - x0, y1 - y0), 2)
