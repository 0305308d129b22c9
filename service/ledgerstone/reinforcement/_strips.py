"""Bars along the narrow strips of concrete beside openings."""

from __future__ import annotations

from collections.abc import Iterable, Iterator

from shapely.geometry import LineString, Point
from shapely.geometry.base import BaseGeometry

from ledgerstone.outline import unit_vector
from ledgerstone.reinforcement._bars import (
    BETWEEN_BARS_MM,
    INSIDE_MM,
    OPENING_MM,
    BarStock,
    PlacedBar,
    clipped,
)
from ledgerstone.shape import Shape, Strip
from ledgerstone.strength.verdict import Verdict
from ledgerstone.workshop.records import Workshop

# Common practice, no source: a strip as narrow as this always gets its bars, a wider one where
# the plate says that it works hard.
BARS_UNDER_MM = 150.0
WIDEST_STRIP_MM = 400.0
WORKS_HARD = 0.6


def strip_bars(
    shape: Shape,
    verdicts: Iterable[Verdict],
    workshop: Workshop,
    stock: BarStock,
    room: BaseGeometry,
) -> Iterator[PlacedBar]:
    """One bar, or a pair where there is room, along each strip that needs it."""
    for strip in shape.strips:
        opening = shape.openings[strip.opening]
        if opening.longer_mm <= OPENING_MM or strip.width_mm < 1.0:
            continue
        if strip.width_mm >= BARS_UNDER_MM and not _works_hard(strip, verdicts):
            continue
        for place in _across(strip, workshop, stock):
            yield from _along(shape, strip, place, stock, room)


def _works_hard(strip: Strip, verdicts: Iterable[Verdict]) -> bool:
    line = LineString(strip.line_mm)
    return strip.width_mm < WIDEST_STRIP_MM and any(
        verdict.utilisation > WORKS_HARD
        and line.distance(Point(verdict.where_mm)) < strip.width_mm / 2
        for verdict in verdicts
    )


def _across(strip: Strip, workshop: Workshop, stock: BarStock) -> list[float]:
    """How far from the rim each bar's middle lies: a pair, or one in the middle."""
    edge = workshop.steel.cover_mm + stock.diameter_mm / 2 + INSIDE_MM
    if strip.width_mm >= 2 * edge + stock.diameter_mm + BETWEEN_BARS_MM:
        return [edge, strip.width_mm - edge]
    return [strip.width_mm / 2]


def _along(
    shape: Shape, strip: Strip, place: float, stock: BarStock, room: BaseGeometry
) -> Iterator[PlacedBar]:
    """A bar along a strip, past the opening on both sides by its anchorage where there is room."""
    (x0, y0), (x1, y1) = strip.line_mm
    nx, ny = unit_vector((x0, y0), (x1, y1))
    tx, ty = -ny, nx
    beside = [shape.openings[strip.opening]]
    if isinstance(strip.faces, int):
        beside.append(shape.openings[strip.faces])
    reach = [x * tx + y * ty for o in beside for x, y in o.polygon.exterior.coords]
    at = x0 * tx + y0 * ty
    px, py = x0 + nx * place, y0 + ny * place
    needed, line = (
        LineString(
            [
                (px + tx * (end - at), py + ty * (end - at))
                for end in (min(reach) - beyond, max(reach) + beyond)
            ]
        )
        for beyond in (0.0, stock.anchorage_mm)
    )
    yield from clipped(line, needed, room, stock, "along a narrow strip")
