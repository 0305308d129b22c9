"""One slab laid out: ways are tried one by one until the checks of shape stop none of it."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import dataclass, replace
from itertools import islice, takewhile
from typing import Final

from ledgerstone.checks import Finding, check_plan
from ledgerstone.layout.ground import Ground, size_mm
from ledgerstone.layout.openings import (
    layouts,
    layouts_anywhere,
    layouts_centred,
    layouts_evened,
    layouts_of_taps_apart,
    layouts_of_taps_apart_evened,
)
from ledgerstone.layout.reliefs import with_places
from ledgerstone.layout.rests import BY_OPENINGS, RestsKind, usual_rests
from ledgerstone.order import Order, Slab
from ledgerstone.quantities import UnitName
from ledgerstone.shape import shape_of
from ledgerstone.stages import StageContext, plan
from ledgerstone.strip_rules import clear_mm, strips_of
from ledgerstone.workshop.records import Workshop

_MAX_TRIED: Final = 10  # layouts of each kind that are checked for strength
LayoutKind = Callable[[Ground], Iterator[Slab]]
_KINDS_OF_LAYOUT: Final[tuple[LayoutKind, ...]] = (
    layouts,
    layouts_of_taps_apart,
    layouts_evened,
    layouts_of_taps_apart_evened,
    layouts_centred,
    layouts_anywhere,
)


@dataclass(frozen=True, slots=True)
class FreeParts:
    """What of a slab is to be laid out: openings and reliefs by number, and a kind of rests.

    Attributes
    ----------
    unit
        The unit of its lengths.
    """

    cutouts: frozenset[int] = frozenset()
    reliefs: frozenset[int] = frozenset()
    rests: RestsKind | None = None
    unit: UnitName = "mm"

    @property
    def pointers(self) -> tuple[str, ...]:
        """Where in an order of this one slab it stands."""
        cutouts = (f"/slabs/0/cutouts/{k}" for k in sorted(self.cutouts))
        reliefs = (f"/slabs/0/reliefs/{k}" for k in sorted(self.reliefs))
        return (*cutouts, *reliefs)


def _take_it(_slab: Slab) -> bool:
    return True


def laid_out(
    slab: Slab,
    free: FreeParts,
    context: StageContext,
    is_strong_enough: Callable[[Slab], bool] = _take_it,
    may_look_at: Callable[[Slab], bool] = _take_it,
) -> Slab | None:
    """Lay out what of a slab is free; None if no way was found that the checks let pass.

    Parameters
    ----------
    slab
        The slab. The places of what is free are not looked at; what stops it without them may
        stop it still.
    is_strong_enough
        Whether a slab is strong enough, asked of a few of the ways; the first is taken where
        none of them is.
    may_look_at
        Whether one more way may be checked, asked before each.
    """
    if not free.cutouts and not free.reliefs:
        is_strong_enough = _take_it  # there is only one layout
    known = {finding.check for finding in _stops(_without(slab, free), context)}
    seen: list[Slab] = []
    for places in _KINDS_OF_LAYOUT:
        ways = (
            way
            for way in takewhile(may_look_at, _ways(slab, free, context.workshop, places))
            if not any(_is_new(stop, known, free) for stop in _stops(way, context))
        )
        for tried in islice((way for way in ways if way not in seen), _MAX_TRIED):
            if is_strong_enough(tried):
                return tried
            if not seen and not is_strong_enough(_plain(tried, free)):
                return tried  # it is too weak without them too: their positions are not the cause
            seen.append(tried)
    return next(iter(seen), None)


def _ways(slab: Slab, free: FreeParts, workshop: Workshop, places: LayoutKind) -> Iterator[Slab]:
    """Yield the slab in one layout after another; units are placed by its openings."""
    if free.rests is not None:
        bare = replace(slab, cutouts=(), reliefs=())
        rests = usual_rests(free.rests, bare, shape_of(bare, workshop), free.unit)
        slab = replace(slab, rests=rests)
    staying = [relief for k, relief in enumerate(slab.reliefs) if k not in free.reliefs]
    shape = shape_of(replace(slab, reliefs=tuple(staying)), workshop)
    ground = Ground(slab, shape, free.cutouts, free.rests is None, free.unit, workshop)
    for place in places(ground):
        shape = shape_of(place, workshop)
        placed = with_places(place, shape, free.reliefs, free.unit, workshop)
        if placed is None:
            continue
        if free.rests in BY_OPENINGS:
            placed = replace(placed, rests=usual_rests(free.rests, placed, shape, free.unit))
        yield placed


def _without(slab: Slab, free: FreeParts) -> Slab:
    cutouts = tuple(cutout for k, cutout in enumerate(slab.cutouts) if k not in free.cutouts)
    reliefs = tuple(relief for k, relief in enumerate(slab.reliefs) if k not in free.reliefs)
    rests = None if free.rests is not None else slab.rests
    return replace(slab, cutouts=cutouts, reliefs=reliefs, rests=rests)


def _plain(slab: Slab, free: FreeParts) -> Slab:
    """The slab on its rests as they were laid out, without what else was."""
    return replace(_without(slab, free), rests=slab.rests)


def _stops(slab: Slab, context: StageContext) -> list[Finding]:
    found = check_plan(plan(Order((slab,)), context))
    return [finding for finding in found if finding.level == "stops"]


def _is_new(stop: Finding, known: set[str], free: FreeParts) -> bool:
    """Return whether a stop comes of what was laid out."""
    of_it = any(
        at == pointer or at.startswith(f"{pointer}/") for at in stop.at for pointer in free.pointers
    )
    return of_it or stop.check not in known


@dataclass(frozen=True, slots=True)
class Depth:
    """An opening that is too deep for its slab, and how deep the slab would have to be, mm."""

    label: str
    mm: float


def depth_needed_mm(slab: Slab, free: FreeParts, workshop: Workshop) -> Depth | None:
    """Find a free opening that is too deep for its slab wherever it lay, with its strips."""
    box = shape_of(slab, workshop).outline.bounds
    for k in sorted(free.cutouts):
        cutout = slab.cutouts[k]
        deep_mm = size_mm(cutout)[1]
        keep = clear_mm(strips_of(workshop), max(size_mm(cutout)), cutout.rim, least=True)
        if deep_mm + 2 * keep > box[3] - box[1]:
            return Depth(cutout.label, deep_mm + 2 * keep)
    return None
