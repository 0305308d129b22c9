"""Checks of the units beneath: a bowl that fouls a unit's side, and the load that they carry."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass, replace

from shapely.geometry import Polygon, box

from ledgerstone import plane
from ledgerstone.checks.finding import Finding, geojson, only
from ledgerstone.goes_in import TAP_SIZED_MM, unit_for
from ledgerstone.order import Rests, Slab, UnitFor
from ledgerstone.shape import Opening, Shape
from ledgerstone.stages import Judged, Planned
from ledgerstone.strength.rests import PANEL_MM
from ledgerstone.wording import MassPerLength, Message, cutout_name, slabs_name

_LEVEL_MM = 3.0  # that units stand level within; common practice, no source
_TOUCH_MM = 0.5  # rounding of what was measured
_SOURCE = "a unit's side is 18 mm: common practice, no source"


@dataclass(frozen=True, slots=True)
class StandingUnit:
    """One unit: its index, and its position, in mm from the slab's left and front.

    ``start`` and ``end`` are its outer faces; ``front`` and ``back`` its depth.
    """

    index: int
    use: UnitFor
    start_mm: float
    end_mm: float
    front_mm: float
    back_mm: float

    @property
    def sides(self) -> tuple[Polygon, Polygon]:
        """Its two side panels in plan."""
        left, right = self.inside_mm
        return (
            box(self.start_mm, self.front_mm, left, self.back_mm),
            box(right, self.front_mm, self.end_mm, self.back_mm),
        )

    @property
    def inside_mm(self) -> tuple[float, float]:
        """Where it is clear between its sides."""
        return self.start_mm + PANEL_MM, self.end_mm - PANEL_MM


def standing_units(rests: Rests, shape: Shape) -> tuple[StandingUnit, ...]:
    """Return the position of each unit beneath a slab, without gaps."""
    over = {side: length.mm for side, length in rests.overhang.items()}
    start, units = over.get("left", 0.0), []
    front, back = over.get("front", 0.0), shape.width_mm - over.get("back", 0.0)
    for i, unit in enumerate(rests.units):
        end = start + unit.width.mm
        if unit.use != "gap":
            units.append(StandingUnit(i, unit.use, start, end, front, back))
        start = end
    return tuple(units)


def clear_of_unit_sides(planned: Planned) -> Iterable[Finding]:
    """No opening for a bowl or a hob lies over the side of a unit.

    It stops where the order says which unit the bowl or the hob is for, else it is a caution.
    """
    for i, slab, shape in planned.slabs():
        if slab.rests is None or slab.rests.kind != "units":
            continue
        units = standing_units(slab.rests, shape)
        is_given = not slab.rests.assumed and any(unit.use in ("basin", "hob") for unit in units)
        for opening in shape.openings:
            if opening.longer_mm > TAP_SIZED_MM and _fouled(opening, units):
                found = _over_a_side(i, slab, opening, units)
                yield found if is_given else replace(found, level="caution")


def _fouled(opening: Opening, units: Iterable[StandingUnit]) -> list[StandingUnit]:
    """The units over a side of which an opening lies."""
    hole = opening.polygon
    if hole.is_empty:
        return []
    return [
        unit
        for unit in units
        if any(
            hole.intersects(side) and plane.intersection(hole, side).area > _TOUCH_MM**2
            for side in unit.sides
        )
    ]


def _over_a_side(i: int, slab: Slab, opening: Opening, units: tuple[StandingUnit, ...]) -> Finding:
    fouled = _fouled(opening, units)
    x0, _, x1, _ = opening.polygon.bounds
    use = unit_for(slab.cutouts[opening.index])
    candidates = [unit for unit in units if unit.use == use] or units
    own_unit = max(candidates, key=lambda unit: min(x1, unit.end_mm) - max(x0, unit.start_mm))
    left, right = own_unit.inside_mm
    sides = [side for unit in fouled for side in unit.sides if opening.polygon.intersects(side)]
    name, over = cutout_name(slab, opening.index), unit_name(slab, fouled[0].index)
    message = Message("cutout-over-unit-side", cutout=name, unit=over)
    if x1 - x0 > right - left:
        inside, own = slab.thickness.like(right - left, "down"), unit_name(slab, own_unit.index)
        message = Message("cutout-wider-than-unit", cutout=name, unit=over, home=own, inside=inside)
    return Finding(
        "cutout-over-unit-side",
        "stops",
        message,
        _SOURCE,
        slab=i,
        at=(f"/slabs/{i}/cutouts/{opening.index}", f"/slabs/{i}/rests/units/{own_unit.index}"),
        measured={"left_mm": round(x0, 1), "right_mm": round(x1, 1)},
        limit={"left_mm": round(left, 1), "right_mm": round(right, 1)},
        where_mm=geojson(plane.intersection(opening.polygon, sides[0])),
        key=str(opening.index),
    )


def unit_name(slab: Slab, index: int) -> Message:
    """Name a unit by its width and what goes into the opening that it is for, or by its number."""
    units = slab.rests.units if slab.rests is not None else ()
    use = units[index].use if index < len(units) else "base"
    goes_in = [k for k, cutout in enumerate(slab.cutouts) if unit_for(cutout) == use]
    alike = [unit for unit in units if unit.use == use]
    if use not in ("basin", "hob") or not goes_in or len(alike) > 1:
        return Message("unit-numbered", number=index + 1)
    return Message("unit-for", cutout=cutout_name(slab, goes_in[0]))


def load_on_units(judged: Judged) -> Iterable[Finding]:
    """The largest load on the units, per metre: one note, with what they must be."""
    planned = judged.planned
    order = planned.order
    per_m = {
        i: planned.slab_kg[i] / shape.length_mm * 1000.0
        for i, slab, shape in planned.slabs()
        if slab.rests is not None and slab.rests.kind == "units"
    }
    if not per_m:
        return
    heaviest = max(per_m.values())
    on_units, level = list(per_m), order.slabs[next(iter(per_m))].thickness.like(_LEVEL_MM)
    yield Finding(
        "load-on-units",
        "note",
        Message(
            "load-on-units",
            slabs=slabs_name(order, on_units),
            weight=MassPerLength(heaviest),
            level=level,
        ),
        "mass by volume; solid sides and 3 mm: from memory",
        slab=only(on_units),
        at=tuple(f"/slabs/{i}/rests" for i in on_units),
        measured={"metre_kg": round(heaviest, 1)},
    )
