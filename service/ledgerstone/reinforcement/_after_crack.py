"""What carries a slab once it has cracked: bars listed for it, its mesh, or plain concrete.

Each direction is judged by itself. Where the loads need no more than plain concrete is trusted
with, no steel is laid for them. Beyond that, steel must carry the loads and at least the moment at
which the section cracks, or the slab breaks as it cracks.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass
from typing import Literal

from shapely.geometry import LineString, Point
from shapely.geometry.base import BaseGeometry

from ledgerstone import plane
from ledgerstone.order import Slab
from ledgerstone.reinforcement._bars import (
    INSIDE_MM,
    BarStock,
    PlacedBar,
    clipped,
    without_doubles,
)
from ledgerstone.reinforcement._sections import FAR_MM, CrossSection, ReinforcedSection, cuts_of
from ledgerstone.reinforcement._strips import strip_bars
from ledgerstone.shape import Shape
from ledgerstone.strength.cracked import IN_USE_DAYS
from ledgerstone.strength.cracking import Cracking, Demand
from ledgerstone.strength.verdict import Verdict
from ledgerstone.workshop.records import Workshop

CLOSEST_BARS_MM = 50.0
CLOSER = 1.25  # where a spacing does not suffice, as many more bars
WHY = ("lengthwise, after a crack", "across, after a crack")


@dataclass(frozen=True, slots=True)
class CrackCheck:
    """The check of a section across a crack, one way: what carries, and how much.

    Attributes
    ----------
    demand
        1.35 G + 1.5 Q as a stress of the whole section, and where.
    by
        Bars with the mesh, the mesh alone, or plain concrete.
    limit_mpa
        What these carry at the worst section.
    spacing_mm
        Of the bars, where there are some.
    """

    demand: Demand
    by: Literal["bars", "mesh", "plain"]
    limit_mpa: float
    spacing_mm: float | None = None


@dataclass(frozen=True, slots=True)
class AfterCrack:
    """What holds a slab once it has cracked, lengthwise and across, and the bars for it."""

    along: CrackCheck
    across: CrackCheck
    bars: tuple[PlacedBar, ...]

    @property
    def worst(self) -> CrackCheck:
        """The direction with the largest utilisation."""
        return max((self.along, self.across), key=lambda check: check.demand.mpa / check.limit_mpa)

    @property
    def crossing(self) -> bool:
        """Whether bars run both ways."""
        return self.along.by == self.across.by == "bars"

    @property
    def verdict(self) -> Verdict:
        """Its verdict: the worst direction's demand over its limit.

        Source
        ------
        EN 1992-1-1 6.1 and 9.2.1.1 read directly (``M_Rd >= M_cr``); plain, 12.3.1.
        """
        worst = self.worst
        where = worst.demand.where_mm
        return Verdict("after-a-crack", worst.demand.mpa, worst.limit_mpa, where, IN_USE_DAYS)


def room_for_bars(shape: Shape, workshop: Workshop, bar_mm: float) -> BaseGeometry:
    """Return where a bar's axis may lie in plan, with its cover from edges and openings."""
    beside = workshop.steel.cover_mm + 0.5 * bar_mm
    return plane.buffer(shape.net, -beside, join_style="mitre")


def after_a_crack(slab: Slab, shape: Shape, cracking: Cracking, workshop: Workshop) -> AfterCrack:
    """List the bars that carry a slab once it has cracked; none if plain concrete must."""
    section, demands = (
        ReinforcedSection.of(slab, shape, workshop),
        (cracking.along, cracking.across),
    )
    wanted = [max(cracking.cracks_at_mpa, demand.mpa) for demand in demands]
    mesh = section.limit_mpa(0.0, crossing=False)
    needed = [
        demand.mpa > cracking.plain_mpa and mesh < want
        for demand, want in zip(demands, wanted, strict=True)
    ]
    held, bars = [], list[PlacedBar]()
    for axis, demand in enumerate(demands):
        found = None
        if needed[axis]:
            laying = _Laying.of(shape, section, workshop, axis, demand, crossing=all(needed))
            found = None if laying is None else laying.bars(wanted[axis])
        if found is not None:
            bars += found[1]
            held.append(CrackCheck(demand, "bars", *found[0]))
        elif not needed[axis] and demand.mpa > cracking.plain_mpa:
            held.append(CrackCheck(demand, "mesh", mesh))
        else:
            held.append(CrackCheck(demand, "plain", cracking.plain_mpa))
    return AfterCrack(held[0], held[1], tuple(bars))


@dataclass(frozen=True, slots=True)
class _Laying:
    """Bars one way at an even spacing, until every section that they must cross has enough."""

    shape: Shape
    section: ReinforcedSection
    stock: BarStock
    axis: int
    crossing: bool
    room: BaseGeometry
    cuts: tuple[CrossSection, ...]
    beside_mm: float
    narrow: tuple[PlacedBar, ...]

    @classmethod
    def of(
        cls,
        shape: Shape,
        section: ReinforcedSection,
        workshop: Workshop,
        axis: int,
        demand: Demand,
        *,
        crossing: bool,
    ) -> _Laying | None:
        """Return the available bars and mesh; None if no bars are stocked."""
        stock = BarStock.of(workshop)
        if stock is None:
            return None
        room = room_for_bars(shape, workshop, stock.diameter_mm)
        beside = workshop.steel.cover_mm + 0.5 * stock.diameter_mm
        cuts = cuts_of(shape, axis, demand.where_mm, beside, stock.anchorage_mm)
        narrow = tuple(strip_bars(shape, (), workshop, stock, room))
        return cls(shape, section, stock, axis, crossing, room, cuts, beside, narrow)

    def bars(self, wanted_mpa: float) -> tuple[tuple[float, float], list[PlacedBar]] | None:
        """The limit and the spacing, and the bars; None if no spacing suffices."""
        spacing = self.section.widest_spacing_mm(
            wanted_mpa, CLOSEST_BARS_MM, crossing=self.crossing
        )
        if spacing is None or not self.cuts:
            return None
        bounds = self.shape.outline.bounds
        low, high = (bounds[k + 1 - self.axis] for k in (0, 2))
        span = high - low - 2.0 * (self.beside_mm + INSIDE_MM)
        spaces = max(math.ceil(span / spacing), 1)
        while (step := span / spaces) >= CLOSEST_BARS_MM:
            levels = [low + self.beside_mm + INSIDE_MM + k * step for k in range(spaces + 1)]
            laid = self._laid(levels)
            limit = self._limit_mpa(without_doubles([*laid, *self.narrow]))
            if limit >= wanted_mpa:
                return (limit, step), laid
            spaces = math.ceil(CLOSER * spaces)
        return None

    def _laid(self, levels: Sequence[float]) -> list[PlacedBar]:
        found: list[PlacedBar] = []
        for level in levels:
            ends = [(-FAR_MM, level), (FAR_MM, level)]
            line = LineString(ends if self.axis == 0 else [(y, x) for x, y in ends])
            for part in _parts(line, self.room):
                middle = Point(part.centroid)
                found += clipped(part, middle, self.room, self.stock, WHY[self.axis])
        return found

    def _limit_mpa(self, bars: Sequence[PlacedBar]) -> float:
        """What the worst section carries, MPa."""
        return min(
            self.section.limit_mpa(
                cut.bars_mm2(bars, self.stock) / cut.width_mm, crossing=self.crossing
            )
            for cut in self.cuts
        )


def _parts(line: LineString, room: BaseGeometry) -> list[LineString]:
    met = plane.intersection(line, room)
    parts = getattr(met, "geoms", [met])
    return [part for part in parts if isinstance(part, LineString) and not part.is_empty]
