"""A slab too long to cast or to carry, made of two with a join."""

from __future__ import annotations

from collections.abc import Iterable

from ledgerstone.checks import Facts, Finding
from ledgerstone.checks.shape import strip_rule
from ledgerstone.order import MOST_SLABS, Order, Rectangle, Slab
from ledgerstone.remedies.cutting import GAP_MM, Cut
from ledgerstone.remedies.option import ROUND_TO_MM, Option

IN_TWO = "two-pieces"
_COSTS = 3.0  # as much as a tenth shorter: all of what was asked for is there
_SHARES = (0.5, 0.45, 0.55, 0.4, 0.6, 0.35, 0.65)


def two_pieces(finding: Finding, order: Order, facts: Facts, _most: float) -> Iterable[Option]:
    """Cast a rectangular slab in two: the join clear of every opening, over a side panel if it can.

    The join itself is a suggestion until it has been checked.
    """
    if finding.slab is None or len(order.slabs) >= MOST_SLABS:
        return
    i, slab = finding.slab, order.slabs[finding.slab]
    plain = isinstance(slab.outline, Rectangle) and slab.size_from == "finished"
    if not plain or slab.reliefs or slab.quantity > 1:
        return
    for at_mm in _places(slab, facts, i):
        yield Option(IN_TWO, (), _COSTS, Cut(i, "x", at_mm))
        return


def _places(slab: Slab, facts: Facts, i: int) -> Iterable[float]:
    """Where the join may lie: between units first, then near the middle; clear of openings."""
    length = facts.shapes[i].length_mm
    panels: list[float] = []
    x = 0.0
    for unit in slab.rests.units if slab.rests is not None else ():
        x += unit.width.mm
        panels.append(x)
    inner = [p for p in panels if 0.3 * length < p < 0.7 * length]
    wished = [*sorted(inner, key=lambda p: abs(p - length / 2)), *(s * length for s in _SHARES)]
    for place in wished:
        at = slab.thickness.like(place, to_mm=ROUND_TO_MM).mm
        if isinstance(slab.outline, Rectangle):
            at = slab.outline.length.like(place, to_mm=ROUND_TO_MM).mm
        if all(_clear_of(slab, facts, i, k, at) for k in range(len(slab.cutouts))):
            yield at


def _clear_of(slab: Slab, facts: Facts, i: int, k: int, at_mm: float) -> bool:
    opening = facts.shapes[i].openings[k]
    rule = strip_rule(slab.cutouts[k], opening.longer_mm, facts.workshop)
    clear = rule.stops_mm if rule is not None else 0.0
    x0, _, x1, _ = opening.polygon.bounds
    return not x0 - clear - GAP_MM < at_mm < x1 + clear
