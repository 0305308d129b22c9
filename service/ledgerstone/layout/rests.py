"""Default rests of each kind for a slab of a given size."""

from __future__ import annotations

import math
from collections.abc import Callable, Iterable, Mapping
from dataclasses import dataclass, replace
from types import MappingProxyType
from typing import Final, Literal

from ledgerstone.goes_in import TAP_SIZED_MM, unit_for
from ledgerstone.layout.rounded_length import rounded_length
from ledgerstone.layout.units import Span, units_along
from ledgerstone.order import Ledge, Point, Rests, Slab
from ledgerstone.outline import side_names, typed_length
from ledgerstone.quantities import Length, UnitName
from ledgerstone.shape import Opening, Shape, openings_of
from ledgerstone.workshop.records import Workshop

RestsKind = Literal["units", "frame", "ends", "legs", "ledges", "pedestal", "full"]
BY_OPENINGS: Final = frozenset({"units", "ledges"})  # kinds that are placed by the openings
REST_KINDS: Final = ("units", "frame", "ends", "legs", "ledges", "pedestal", "full")

# Common practice, no source.
_FRAME_MM, _BEARING_MM, _PAD_MM = 50.0, 100.0, 50.0
_LEG_IN_MM, _LEG_IN = 100.0, 1 / 4  # from the sides; of a narrow top's width
_LEG_TO_MM = 5  # places of legs are whole steps of it
_TRESTLE_MM = 80.0
_TRESTLE_IN = 1 / 5  # of the length: where two supports sag a beam about the least (0.207)
_PLATE = 0.7  # of the narrower side: on it most tops of 40 mm stand with a person at the rim
_MAX_SIDES = 20


@dataclass(frozen=True, slots=True)
class Under:
    """The slab that is to be carried, and the unit of its lengths."""

    slab: Slab
    shape: Shape
    unit: UnitName

    def in_unit(self, mm: float) -> Length:
        """Describe a length."""
        return rounded_length(mm, self.unit)


def usual_rests(kind: RestsKind, slab: Slab, shape: Shape, unit: UnitName) -> Rests:
    """Return the default rests of a kind for a slab.

    Parameters
    ----------
    shape
        The slab in plan, its openings where they lie: units stand clear of them.
    unit
        The unit of its lengths.
    """
    made, before = _KINDS[kind](Under(slab, shape, unit)), slab.rests
    if before is None:
        return made
    return replace(made, fixed=before.fixed, rails=before.rails if kind == "units" else None)


def _units(under: Under) -> Rests:
    return _units_under(under.slab, under.shape.openings, under.shape.length_mm, under.unit)


def _units_under(
    slab: Slab, openings: Iterable[Opening], length_mm: float, unit: UnitName
) -> Rests:
    over = slab.rests.overhang if slab.rests is not None else {}
    left, right = (over[side].mm if side in over else 0.0 for side in ("left", "right"))
    spans = []
    for opening in openings:
        if opening.longer_mm > TAP_SIZED_MM and not opening.polygon.is_empty:
            x0, _, x1, _ = opening.polygon.bounds
            use = unit_for(slab.cutouts[opening.index]) or "base"
            spans.append(Span(x0 - left, x1 - left, use))
    return Rests(
        "units",
        units=units_along(length_mm - left - right, tuple(spans), unit),
        overhang=MappingProxyType(dict(over)),
        assumed=True,
    )


def with_assumed_units(slab: Slab, workshop: Workshop) -> Slab:
    """Lay out the assumed units of a slab, by where its openings now lie."""
    before = slab.rests
    if before is None or before.kind != "units" or (before.units and not before.assumed):
        return slab
    made = _units_under(slab, *openings_of(slab, workshop), typed_length(slab.outline).unit)
    return replace(slab, rests=replace(made, fixed=before.fixed, rails=before.rails))


def _frame(under: Under) -> Rests:
    sides = side_names(under.slab.outline)[:_MAX_SIDES]
    return Rests("frame", sides=sides, width=under.in_unit(_FRAME_MM))


def _ends(under: Under) -> Rests:
    return Rests("ends", depth=under.in_unit(_BEARING_MM))


def _legs(under: Under) -> Rests:
    """Four legs, in from the corners; under a round slab in from its rim."""
    length, width = under.shape.length_mm, under.shape.width_mm
    inset = min(_LEG_IN_MM, _LEG_IN * min(length, width))
    if under.slab.outline.kind == "round":
        inset += (length / 2 - inset) * (1 - math.sqrt(0.5))
    inset = round(inset / _LEG_TO_MM) * _LEG_TO_MM
    at = [(x, y) for x in (inset, length - inset) for y in (inset, width - inset)]
    points = tuple(Point(under.in_unit(x), under.in_unit(y)) for x, y in at)
    return Rests("legs", at=points, pad=under.in_unit(_PAD_MM))


def _ledges(under: Under) -> Rests:
    """Trestles in from the ends of a table; else bearers at the ends and beside each opening."""
    length, width = under.shape.length_mm, under.shape.width_mm
    if under.slab.use == "table":
        inset, depth = round(length * _TRESTLE_IN / 10) * 10, _TRESTLE_MM
        xs = [inset, length - inset]
    else:
        xs, depth = [0.0, *_between(under), length], _FRAME_MM
    return Rests("ledges", lines=tuple(_across(under, x, width, depth) for x in xs))


def _between(under: Under) -> list[float]:
    """Return positions of bearers between openings, and between them and the ends, mm."""
    spans = sorted(
        (x0, x1)
        for opening in under.shape.openings
        if opening.longer_mm > TAP_SIZED_MM and not opening.polygon.is_empty
        for x0, _, x1, _ in (opening.polygon.bounds,)
    )
    clear = _FRAME_MM / 2 + 1.0
    at: list[float] = []
    end = 0.0
    for x0, x1 in spans:
        for x in (x0 - clear, x1 + clear):
            if not any(a - clear < x < b + clear for a, b in spans) and x > end + 2 * clear:
                at.append(round(x))
                end = x
    return [x for x in at if x < under.shape.length_mm - 2 * clear]


def _across(under: Under, x: float, width: float, depth: float) -> Ledge:
    start, end = (Point(under.in_unit(x), under.in_unit(y)) for y in (0.0, width))
    return Ledge(start, end, under.in_unit(depth))


def _pedestal(under: Under) -> Rests:
    narrower = min(under.shape.length_mm, under.shape.width_mm)
    return Rests("pedestal", plate=under.in_unit(round(narrower * _PLATE / 10) * 10))


def _full(_under: Under) -> Rests:
    return Rests("full")


_KINDS: Final[Mapping[RestsKind, Callable[[Under], Rests]]] = MappingProxyType(
    {
        "units": _units,
        "frame": _frame,
        "ends": _ends,
        "legs": _legs,
        "ledges": _ledges,
        "pedestal": _pedestal,
        "full": _full,
    }
)
