"""The last resort for the nearest makeable: a plain slab about as large, bedded all over."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import replace
from types import MappingProxyType

from ledgerstone.checks import Finding
from ledgerstone.checks.shade import dose_within_limit, matching_offered
from ledgerstone.order import Finish, Order, Rectangle, Rests, Shade, Slab
from ledgerstone.quantities import Length
from ledgerstone.remedies.change import Change
from ledgerstone.remedies.costs import COST, MM_OF_DEPTH, PER_SHARE_OF_PLAIN
from ledgerstone.remedies.option import ROUND_TO_MM, Option
from ledgerstone.stages import Planned, StageContext, plan
from ledgerstone.workshop.records import Workshop

_SHARES = (1.0, 0.7, 0.45)  # of the size asked for, tried in turn: our own choice
_USUAL_MM = 40.0  # the thickness of most tops: common practice, no source


def plain_slab(finding: Finding, planned: Planned, context: StageContext) -> Iterable[Option]:
    """Plain slabs of about the size that was asked for, the nearest first."""
    order = planned.order
    if finding.slab is None:
        return
    i, slab, workshop = finding.slab, order.slabs[finding.slab], planned.workshop
    x0, y0, x1, y1 = planned.shapes[i].outline.bounds
    whole = replace(
        slab,
        size_from="finished",
        cutouts=(),
        reliefs=(),
        edges=MappingProxyType({}),
        shade=_shade_cast(slab, planned, context),
        finish=Finish(slab.finish.surface, _sealer_that_stands(slab, workshop)),
        rests=Rests("full"),
    )
    table, say = workshop.table, slab.thickness
    for share in _SHARES:
        length = _rounded(say, share * (x1 - x0), workshop, table.length_mm)
        width = _rounded(say, share * (y1 - y0), workshop, table.width_mm)
        for thickness in _thicknesses(slab, workshop):
            plain = replace(whole, outline=Rectangle(length, width), thickness=say.like(thickness))
            smaller = PER_SHARE_OF_PLAIN * (1 - share)
            cost = COST["plain"] + smaller + abs(thickness - say.mm) / MM_OF_DEPTH
            yield Option(f"plain-{share:g}", (Change(("slabs", i), plain),), cost)


def _rounded(say: Length, wanted_mm: float, workshop: Workshop, most_mm: float) -> Length:
    """A size in round numbers of the customer's unit, no less than is cast and no more."""
    least_mm = workshop.shaping.smallest_side_mm
    size = say.like(min(wanted_mm, most_mm), "down", to_mm=ROUND_TO_MM)
    return size if size.mm >= least_mm else say.like(least_mm, "up", to_mm=ROUND_TO_MM)


def _thicknesses(slab: Slab, workshop: Workshop) -> list[float]:
    """The stocked thickness nearest to the one asked for, the usual one, and the thickest."""
    shaping = workshop.shaping
    made = [t for t in shaping.thicknesses_mm if shaping.thinnest_mm <= t <= shaping.thickest_mm]
    nearest = min(made, key=lambda t: abs(t - slab.thickness.mm))
    usual = min(made, key=lambda t: abs(t - _USUAL_MM))
    return list(dict.fromkeys((nearest, usual, max(made))))


def _sealer_that_stands(slab: Slab, workshop: Workshop) -> str:
    fit = [offered.name for offered in workshop.sealers if slab.place in offered.places]
    own = slab.finish.sealer
    return own if own in fit or not fit else fit[0]


def _shade_cast(slab: Slab, planned: Planned, context: StageContext) -> Shade:
    """The slab's own shade where it is cast here, else the first of the palette that is."""
    for shade in (slab.shade, *(Shade(name=shade.name) for shade in planned.workshop.palette)):
        alone = Order(slabs=(replace(slab, shade=shade),))
        checks = (matching_offered, dose_within_limit)
        if not any(list(check(plan(alone, context))) for check in checks):
            return shade
    return slab.shade
