"""In place: own weight, an even load and one person anywhere, on rests that only push."""

from __future__ import annotations

from dataclasses import dataclass, replace

from ledgerstone.order import UPRIGHT_USES, Slab
from ledgerstone.outline import XY
from ledgerstone.shape import Shape
from ledgerstone.strength._judging import sag_of, verdicts
from ledgerstone.strength._pedestal import steady_plate_mm
from ledgerstone.strength._placed import PlacedSlab, hold_down
from ledgerstone.strength._rails import settled_on_rails
from ledgerstone.strength.concrete import Concrete
from ledgerstone.strength.cracked import IN_USE_DAYS
from ledgerstone.strength.cracking import Cracking, cracking_of
from ledgerstone.strength.plate import Plate
from ledgerstone.strength.rests import Bearing, RestKind, bearings
from ledgerstone.strength.verdict import Verdict
from ledgerstone.strength.weight import weight_of
from ledgerstone.workshop.records import Workshop


@dataclass(frozen=True, slots=True)
class InPlace:
    """The verdicts of a slab on its rests.

    Attributes
    ----------
    verdicts
        One a case.
    off_the_slab
        Bearings no part of which meets the slab.
    nothing_carries
        Whether rests are given and none of them meets the slab.
    tips_alone
        The place of the weight's resultant, where it lies outside the rests.
    tips_under
        Where a person makes a loose slab tip.
    steady_plate_mm
        Where one does so on a pedestal: the side of the plate on which nobody would.
    sag_mm, span_mm
        Largest sag in the end, creep in it, and the span between rests that it is of.
    rails
        Units, by their place in the list, across which something stronger than the cabinet's own
        rails must carry, where the order does not say what does.
    cracking
        Demand once it has cracked; None if no person is tried on it.
    """

    verdicts: tuple[Verdict, ...] = ()
    off_the_slab: tuple[Bearing, ...] = ()
    nothing_carries: bool = False
    tips_alone: XY | None = None
    tips_under: tuple[XY, ...] = ()
    steady_plate_mm: float | None = None
    sag_mm: float = 0.0
    span_mm: float = 0.0
    rails: tuple[tuple[int, RestKind], ...] = ()
    cracking: Cracking | None = None


def in_place(
    slab: Slab, shape: Shape, plate: Plate, concrete: Concrete, workshop: Workshop
) -> InPlace:
    """Solve every load case of the profile on a slab's rests.

    No case is solved where no rests are given, where the slab is bedded all over, or where it
    stands against a wall.
    """
    if slab.use in UPRIGHT_USES:
        return InPlace()
    given = bearings(slab, shape)
    carrying = under(given, plate)
    off = tuple(bearing for bearing in given if bearing not in carrying)
    if not carrying:
        return InPlace(off_the_slab=off, nothing_carries=bool(given))
    placed = PlacedSlab(slab, shape, plate, concrete, workshop, carrying, weight_of(slab, workshop))
    return replace(_lies(placed), off_the_slab=off)


def under(given: tuple[Bearing, ...], plate: Plate) -> tuple[Bearing, ...]:
    """Return the bearings of which some part meets the slab."""
    return tuple(bearing for bearing in given if bearing.footprint.intersects(plate.outline))


def _lies(placed: PlacedSlab) -> InPlace:
    """Settle every case, then judge it.

    Rests that are fixed clear tipping, whether under the slab's own weight or under a person. A
    loose slab that tips by itself is judged as it would be once fixed, where it can lie at all.
    """
    fixed = placed.slab.rests is not None and placed.slab.rests.fixed
    tips_alone = None if fixed else placed.tips_alone
    if placed.tips_alone_at is not None:
        placed = replace(placed, carrying=hold_down(placed.carrying)) if fixed else placed
        if placed.tips_alone_at is not None:
            return InPlace(tips_alone=placed.tips_alone_at)
    placed, batches, levels = settled_on_rails(placed)
    has_rails = placed.slab.rests is not None and placed.slab.rests.rails is not None
    sag, span = sag_of(placed, batches)
    tips_under = () if fixed or tips_alone is not None else placed.tips_under
    return InPlace(
        verdicts=tuple(verdicts(placed, batches)),
        tips_alone=tips_alone,
        tips_under=tips_under,
        steady_plate_mm=steady_plate_mm(placed) if tips_under else None,
        sag_mm=sag,
        span_mm=span,
        rails=() if has_rails else tuple((k, v) for k, v in levels.items() if v != "cabinet"),
        cracking=cracking_of(placed, batches, IN_USE_DAYS),
    )
