"""Where steel belongs in a slab: bars along strips, across corners and for a crack; mesh."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator
from dataclasses import dataclass

from shapely.geometry.base import BaseGeometry

from ledgerstone.message import Message
from ledgerstone.order import Slab
from ledgerstone.outline import XY
from ledgerstone.reinforcement._after_crack import (
    AfterCrack,
    CrackCheck,
    after_a_crack,
    room_for_bars,
)
from ledgerstone.reinforcement._bars import BarStock, PlacedBar, without_doubles
from ledgerstone.reinforcement._corners import corner_bars
from ledgerstone.reinforcement._mesh import mesh_of
from ledgerstone.reinforcement._notes import notes
from ledgerstone.reinforcement._schedule import BarRow, even_runs, rows_of, scheduled
from ledgerstone.reinforcement._strips import strip_bars
from ledgerstone.shape import Shape
from ledgerstone.steel import Bar, MeshPiece, density_of
from ledgerstone.steel_rules import Cover, cover_of
from ledgerstone.strength.slabs import SlabStrength
from ledgerstone.workshop.records import Workshop

__all__ = [
    "AfterCrack",
    "BarRow",
    "CrackCheck",
    "PlacedBar",
    "SteelPlan",
    "advise",
    "after_a_crack",
    "even_runs",
]


@dataclass(frozen=True, slots=True)
class SteelPlan:
    """The steel of one slab.

    Attributes
    ----------
    bars
        Where each lies; those cut alike have one mark.
    mesh
        Rectangles of mesh over the whole slab, openings to be cut out, of an L two that lap;
        ``mesh_at_mm`` are their lower left corners.
    beside_mm
        Cover of bars and mesh in plan, from edges and openings.
    cover
        What lies over the steel, wanted and kept.
    after
        What carries the slab once it has cracked; None if no person is tried on it.
    notes
        What the workshop should know, in sentences.
    kg_per_m3
        Mass of a cubic metre of bars and mesh.
    """

    bars: tuple[PlacedBar, ...]
    mesh: tuple[MeshPiece, ...]
    mesh_at_mm: tuple[XY, ...]
    beside_mm: float
    cover: Cover
    after: AfterCrack | None
    notes: tuple[Message, ...]
    kg_per_m3: float

    @property
    def rows(self) -> tuple[BarRow, ...]:
        """The bars, equal ones side by side as one row."""
        return rows_of(self.bars)

    def cut(self) -> tuple[Bar, ...]:
        """The bars to cut, mark by mark."""
        counts = Counter((bar.mark, bar.diameter_mm, bar.length_mm) for bar in self.bars)
        return tuple(Bar(*bar, count, self.kg_per_m3) for bar, count in counts.items())

    @property
    def kg(self) -> float:
        """Mass of bars and mesh as cut, kg.

        Source
        ------
        Arithmetic.
        """
        return sum(bar.kg for bar in self.cut()) + sum(piece.kg for piece in self.mesh)


def advise(
    slab: Slab,
    shape: Shape,
    strength: SlabStrength,
    after: AfterCrack | None,
    workshop: Workshop,
) -> SteelPlan:
    """State where bars and mesh belong in a slab that can be made, given what holds it cracked."""
    single = without_doubles(_every_bar(shape, strength, workshop, after))
    bars = scheduled(single)
    mesh, places = mesh_of(slab, shape, workshop, workshop.steel.cover_mm)
    cover = cover_of(slab, workshop.steel, crossing=after is not None and after.crossing)
    found_notes = tuple(notes(slab, cover, bars, after, workshop))
    density = density_of(workshop.steel.material)
    return SteelPlan(
        bars, mesh, places, workshop.steel.cover_mm, cover, after, found_notes, density
    )


def _every_bar(
    shape: Shape, strength: SlabStrength, workshop: Workshop, after: AfterCrack | None
) -> Iterator[PlacedBar]:
    """Bars for a crack first: one of them in a strip replaces the strip's own."""
    stock = BarStock.of(workshop)
    if stock is None:
        return
    room: BaseGeometry = room_for_bars(shape, workshop, stock.diameter_mm)
    if after is not None:
        yield from after.bars
    verdicts = (*strength.handled.verdicts, *strength.in_place.verdicts)
    yield from strip_bars(shape, verdicts, workshop, stock, room)
    yield from corner_bars(shape, workshop, stock, room)
