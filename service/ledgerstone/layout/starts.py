"""Slabs to start from: each of its usual size, with its openings placed and what carries it."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, replace
from types import MappingProxyType
from typing import Final

from ledgerstone.layout.laid_out import FreeParts, laid_out
from ledgerstone.layout.pieces import new_cutout
from ledgerstone.layout.rests import RestsKind
from ledgerstone.layout.rounded_length import rounded_length
from ledgerstone.order import (
    Edge,
    Finish,
    Join,
    JoinEnd,
    Outline,
    Place,
    Rectangle,
    Round,
    Slab,
    Use,
)
from ledgerstone.quantities import Length, UnitName
from ledgerstone.stages import StageContext
from ledgerstone.workshop.records import Workshop

_JOIN_MM: Final = 2.0


@dataclass(frozen=True, slots=True)
class Arm:
    """The second arm of an L: its length along the wall from the corner, and its depth, mm."""

    side: str
    length_mm: float
    width_mm: float


@dataclass(frozen=True, slots=True)
class Sheet:
    """What a start has: sizes in mm, common practice, no source."""

    length_mm: float
    width_mm: float
    openings: tuple[str, ...] = ()
    rests: RestsKind | None = None
    walls: tuple[str, ...] = ()
    use: Use = "worktop"
    place: Place = "indoors"
    is_round: bool = False
    thickness_mm: float | None = None
    arm: Arm | None = None


@dataclass(frozen=True, slots=True)
class Started:
    """The slabs of a start, their joins, and the free parts of each."""

    slabs: tuple[Slab, ...]
    free: tuple[FreeParts, ...]
    joins: tuple[Join, ...] = ()


_SHEETS: Final[Mapping[str, Sheet]] = MappingProxyType(
    {
        "blank": Sheet(1500, 600),
        "basin": Sheet(1200, 600, ("basin", "tap"), "units", ("back",), place="wet-room"),
        "sink": Sheet(1800, 620, ("sink", "tap"), "units", ("back",)),
        "hob": Sheet(1800, 620, ("hob",), "units", ("back",)),
        "table": Sheet(900, 900, rests="legs", use="table", is_round=True),
        "l-left": Sheet(2400, 600, (), "units", ("back", "left"), arm=Arm("left", 1500, 600)),
        "l-right": Sheet(2400, 600, (), "units", ("back", "right"), arm=Arm("right", 1500, 600)),
        "shelf": Sheet(900, 250, rests="ends", walls=("back",), use="shelf"),
        "hearth": Sheet(1000, 500, rests="full", walls=("back",), use="hearth"),
        "outdoor": Sheet(1800, 700, ("appliance",), "ledges", place="outdoors", thickness_mm=50),
    }
)
START_NAMES: Final = tuple(_SHEETS)


def started(
    name: str, like: Slab, names: Mapping[str, str], unit: UnitName, context: StageContext
) -> Started:
    """Make the slabs of a start.

    Parameters
    ----------
    name
        One of ``START_NAMES``.
    like
        The slab whose thickness, shade and surface they have.
    names
        What an opening of each kind is called.
    unit
        The unit of their lengths.
    """
    sheet = _SHEETS[name]
    outline = _outline(sheet, unit)
    main = _slab(sheet, like, outline, sheet.walls, context.workshop)
    cutouts = tuple(new_cutout(piece, names[piece], unit) for piece in sheet.openings)
    main = replace(main, cutouts=cutouts)
    slabs: tuple[Slab, ...] = (main,)
    joins: tuple[Join, ...] = ()
    if sheet.arm is not None:
        arm = _slab(sheet, like, _arm_outline(sheet, sheet.arm, unit), ("back",), context.workshop)
        slabs, joins = (main, arm), (_join(sheet.arm),)
    free = tuple(
        FreeParts(frozenset(range(len(s.cutouts))), rests=sheet.rests, unit=unit) for s in slabs
    )
    made = (laid_out(slab, of_it, context) or slab for slab, of_it in zip(slabs, free, strict=True))
    return Started(tuple(made), free, joins)


def _outline(sheet: Sheet, unit: UnitName) -> Outline:
    length, width = rounded_length(sheet.length_mm, unit), rounded_length(sheet.width_mm, unit)
    return Round(length) if sheet.is_round else Rectangle(length, width)


def _arm_outline(sheet: Sheet, arm: Arm, unit: UnitName) -> Rectangle:
    """The second arm is as long as it is along the wall, less the first one's depth and the gap."""
    left = arm.length_mm - sheet.width_mm - _JOIN_MM
    return Rectangle(rounded_length(left, unit), rounded_length(arm.width_mm, unit))


def _join(arm: Arm) -> Join:
    """An arm meets the front of the first slab: one on the left by its right end."""
    end = "right" if arm.side == "left" else "left"
    return Join(JoinEnd(0, "front"), JoinEnd(1, end), Length.of_mm(_JOIN_MM, "mm"))


def _slab(
    sheet: Sheet, like: Slab, outline: Outline, walls: tuple[str, ...], workshop: Workshop
) -> Slab:
    return Slab(
        outline=outline,
        thickness=_thickness(sheet, like, workshop),
        shade=like.shade,
        finish=Finish(like.finish.surface, _sealer(like.finish.sealer, sheet.place, workshop)),
        use=sheet.use,
        edges=MappingProxyType({side: Edge("wall") for side in walls}),
        place=sheet.place,
    )


def _thickness(sheet: Sheet, like: Slab, workshop: Workshop) -> Length:
    """As thick as the slab it takes the place of, or as is wanted: the next that is stocked."""
    if sheet.thickness_mm is None or like.thickness.mm >= sheet.thickness_mm:
        return like.thickness
    stocked = [mm for mm in workshop.shaping.thicknesses_mm if mm >= sheet.thickness_mm]
    return like.thickness.like(min(stocked, default=like.thickness.mm))


def _sealer(wanted: str, place: Place, workshop: Workshop) -> str:
    """Return the preferred sealer if it suits the place, else the first that does."""
    suit = [sealer.name for sealer in workshop.sealers if place in sealer.places]
    return wanted if wanted in suit or not suit else suit[0]
