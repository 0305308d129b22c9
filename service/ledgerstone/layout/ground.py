"""A slab whose openings are to be placed: what of it stays, and what they keep off."""

from __future__ import annotations

import math
from dataclasses import dataclass

from shapely.geometry import Polygon

from ledgerstone.checks.units import standing_units
from ledgerstone.cutouts import cutout_size_mm
from ledgerstone.goes_in import TAP_SIZED_MM, unit_for
from ledgerstone.layout.runs import Run
from ledgerstone.order import Cutout, Slab
from ledgerstone.outline import XY
from ledgerstone.quantities import UnitName
from ledgerstone.shape import Shape
from ledgerstone.strength.rests import bearings
from ledgerstone.workshop.records import Workshop


@dataclass(frozen=True, slots=True)
class Ground:
    """A slab whose openings are to be placed, and what of it stays.

    Attributes
    ----------
    free
        The openings to be placed, by number.
    has_units
        Whether its units are kept.
    """

    slab: Slab
    shape: Shape
    free: frozenset[int]
    has_units: bool
    unit: UnitName
    workshop: Workshop

    @property
    def run(self) -> Run:
        """The run along which its openings are placed."""
        return Run.of(self.slab.outline, self.shape)

    def keep_off(self, k: int) -> list[Polygon]:
        """Obstacles for openings: legs, a plate, reliefs, the sides of units."""
        rests = self.slab.rests
        kept = [area for area in self.shape.reliefs if not area.is_empty]
        if rests is None:
            return kept
        if rests.kind in ("legs", "pedestal"):
            feet = (bearing.footprint for bearing in bearings(self.slab, self.shape))
            return kept + [foot for foot in feet if isinstance(foot, Polygon)]
        is_wide = max(size_mm(self.slab.cutouts[k])) > TAP_SIZED_MM
        if self.has_units and is_wide:
            kept += [side for unit in standing_units(rests, self.shape) for side in unit.sides]
        return kept

    def unit_spans(self, k: int) -> list[tuple[float, float]]:
        """Insides, mm along the slab, of the units whose use is an opening's."""
        rests, use = self.slab.rests, unit_for(self.slab.cutouts[k])
        if rests is None or not self.has_units or use is None:
            return []
        return [unit.inside_mm for unit in standing_units(rests, self.shape) if unit.use == use]


def size_mm(cutout: Cutout) -> XY:
    """Return an opening's box as it lies, mm."""
    length, width = cutout_size_mm(cutout)
    turn = math.radians(cutout.turn_degrees)
    c, s = abs(math.cos(turn)), abs(math.sin(turn))
    return length * c + width * s, length * s + width * c
