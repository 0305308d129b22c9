"""Options where a place is not served, or a choice is not available."""

from __future__ import annotations

from collections.abc import Iterable

from ledgerstone.checks import Finding
from ledgerstone.order import Shade
from ledgerstone.remedies.change import Change
from ledgerstone.remedies.costs import COST, DELTA_E, NEXT_OF_SEVERAL
from ledgerstone.remedies.option import Option
from ledgerstone.shade import Lab, delta_e_2000, palette_shade_seen, shade_seen, srgb_to_lab
from ledgerstone.stages import Planned, StageContext
from ledgerstone.workshop.records import Workshop


def other_delivery(
    _f: Finding, planned: Planned, _context: StageContext, _most: float
) -> Iterable[Option]:
    """Another way that the area is served by, or collection."""
    order = planned.order
    area = planned.area
    ways = (("pallet", "pallet"), ("own-van", "own_van"), ("fitted", "fitted"))
    for kind, name in ways:
        if area is not None and getattr(area, name) is not None and kind != order.delivery.kind:
            yield Option(f"deliver-{kind}", (Change(("delivery", "kind"), kind),), COST["deliver"])
    if order.delivery.kind != "collect":
        yield Option("collect", (Change(("delivery", "kind"), "collect"),), COST["collect"])


def other_shade(
    finding: Finding, planned: Planned, _context: StageContext, _most: float
) -> Iterable[Option]:
    """A shade of the palette in place of an unavailable one, the nearest in colour first."""
    order = planned.order
    if finding.slab is None:
        return
    ordered, workshop = order.slabs[finding.slab].shade, planned.workshop
    goal = _colour_of(ordered, workshop)
    path = ("slabs", finding.slab, "shade")
    for shade in workshop.palette:
        if shade.name != ordered.name:
            seen = palette_shade_seen(shade, workshop).lab
            away = delta_e_2000(seen, goal) if goal is not None else 0.0
            cost = COST["shade"] + away / DELTA_E
            yield Option("shade", (Change(path, Shade(name=shade.name)),), cost)


def _colour_of(shade: Shade, workshop: Workshop) -> Lab | None:
    """The colour that a shade was chosen for."""
    if shade.match is not None:
        return srgb_to_lab(shade.match)
    seen = shade_seen(shade, workshop)
    return seen.lab if seen is not None else None


def other_sealer(
    finding: Finding, planned: Planned, _context: StageContext, _most: float
) -> Iterable[Option]:
    """A sealer that this place allows."""
    order = planned.order
    if finding.slab is None:
        return
    slab = order.slabs[finding.slab]
    for k, sealer in enumerate(planned.workshop.sealers):
        if slab.place in sealer.places and sealer.name != slab.finish.sealer:
            path = ("slabs", finding.slab, "finish", "sealer")
            yield Option(
                "sealer", (Change(path, sealer.name),), COST["sealer"] + NEXT_OF_SEVERAL * k
            )
