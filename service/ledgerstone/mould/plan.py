"""The moulds of an order: each slab's parts, all boards nested together, and what to buy."""

from __future__ import annotations

import math
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from decimal import Decimal

from ledgerstone.mould import forms
from ledgerstone.mould.forms import Bead, Curve, Former
from ledgerstone.mould.nesting import (
    CutLength,
    Nest,
    SheetPart,
    Stock,
    cut_lengths,
    equal_parts,
    nest,
)
from ledgerstone.order import Order, Slab
from ledgerstone.quantities import MM2_PER_M2
from ledgerstone.shape import Shape
from ledgerstone.workshop.records import Boards, Workshop


@dataclass(frozen=True, slots=True)
class Mould:
    """One mould of one slab. ``height_mm`` is that of the sides; ``release_l`` is for one pour.

    ``screws`` is also the number of pilot holes, of ``pilot_mm``. A base in more than one part has
    joins that show in the face unless they are filled.
    """

    height_mm: float
    base: tuple[SheetPart, ...]
    sides: tuple[SheetPart, ...]
    curves: tuple[Curve, ...]
    formers: tuple[Former, ...]
    foam: tuple[SheetPart, ...]
    beads: tuple[Bead, ...]
    drips_mm: Mapping[str, float]
    screws: int
    pilot_mm: float
    release_l: float

    @property
    def boards(self) -> tuple[SheetPart, ...]:
        """All parts that are cut from board."""
        return self.base + self.sides

    @property
    def bead_mm(self) -> float:
        """Length of all beads, mm."""
        return sum(bead.length_mm for bead in self.beads)


@dataclass(frozen=True, slots=True)
class Supply:
    """One consumable of the moulds: the amount, the whole packs, and the price by either.

    ``name`` is what the catalogues choose its word by.
    """

    name: str
    used: float
    unit: str
    packs: int
    use_price: Decimal
    packs_price: Decimal


@dataclass(frozen=True, slots=True)
class MouldPlan:
    """The moulds of a whole order, ``counts`` of each, and their boards nested together.

    ``foam`` is for every casting: knockouts seldom survive demoulding.
    """

    moulds: tuple[Mould, ...]
    counts: tuple[int, ...]
    boards: Nest
    foam: Nest
    strips: tuple[Stock, ...]
    supplies: tuple[Supply, ...]


def mould_of(slab: Slab, shape: Shape, workshop: Workshop) -> Mould:
    """Work out one mould of a slab."""
    boards = workshop.boards
    height = shape.thickness_mm + boards.sanding_mm
    sides = tuple(forms.side_pieces(slab, shape, boards))
    curves = tuple(forms.curves(shape, boards))
    formers = tuple(forms.formers(slab, shape, boards))
    edge_mm = sum(side.length_mm for side in shape.sides)
    edge_mm += sum(former.perimeter_mm for former in formers)
    wetted_m2 = (shape.outline_area_mm2 + edge_mm * height) / MM2_PER_M2
    return Mould(
        height_mm=height,
        base=forms.base_pieces(shape, boards),
        sides=sides,
        curves=curves,
        formers=formers,
        foam=tuple(piece for former in formers for piece in forms.foam_pieces(former, boards)),
        beads=tuple(forms.beads(slab, shape, formers, workshop)),
        drips_mm=forms.drips_mm(slab, shape, boards),
        screws=_screws(sides, curves, formers, boards),
        pilot_mm=boards.pilot_mm,
        release_l=wetted_m2 / boards.release_m2_per_l,
    )


def _screws(
    sides: Sequence[SheetPart], curves: Sequence[Curve], formers: Sequence[Former], boards: Boards
) -> int:
    """Screws of one mould: along every strip, and one through each plug. Foam is glued."""
    straight = sum(piece.count * forms.screws_for(piece.length_mm, boards) for piece in sides)
    curved = sum(forms.screws_for(curve.length_mm, boards) for curve in curves)
    return straight + curved + sum(1 for former in formers if former.kind == "plug")


def mould_plan(
    order: Order,
    shapes: Sequence[Shape],
    workshop: Workshop,
    *,
    moulds: Sequence[int] | None = None,
) -> MouldPlan:
    """Plan the moulds of an order, ``moulds`` of each slab: by default one for all pieces."""
    boards = workshop.boards
    counts = tuple(moulds or [1] * len(order.slabs))
    each = tuple(
        mould_of(slab, shape, workshop) for slab, shape in zip(order.slabs, shapes, strict=True)
    )
    names = [slab.label or f"slab {i + 1}" for i, slab in enumerate(order.slabs)]
    parts = list(zip(names, each, counts, strict=True))
    flat = [p for name, mould, n in parts for p in _times(name, mould.boards, n)]
    castings = [slab.quantity for slab in order.slabs]
    foam = [
        piece
        for name, mould, n in zip(names, each, castings, strict=True)
        for piece in _times(name, mould.foam, n)
    ]
    nested = nest(flat, boards.length_mm, boards.width_mm, boards.kerf_mm)
    blanks = nest(foam, boards.foam.length_mm, boards.foam.width_mm, boards.foam.kerf_mm)
    bent = [cut for name, mould, n in parts for cut in _bent(name, mould, n, boards)]
    strips = cut_lengths(bent, boards.flexible_length_mm, boards.kerf_mm)
    supplies = tuple(_supplies(each, counts, castings, (nested, blanks, strips), boards))
    return MouldPlan(each, counts, nested, blanks, strips, supplies)


def _times(name: str, pieces: Sequence[SheetPart], times: int) -> Iterator[SheetPart]:
    for piece in pieces:
        yield SheetPart(
            f"{name}: {piece.name}", piece.length_mm, piece.width_mm, piece.count * times
        )


def _bent(name: str, mould: Mould, moulds: int, boards: Boards) -> Iterator[CutLength]:
    for curve in mould.curves:
        for part in equal_parts(curve.length_mm, boards.flexible_length_mm) * moulds:
            yield CutLength(f"{name}: {curve.name}", part)


def _supplies(
    each: Sequence[Mould],
    counts: Sequence[int],
    castings: Sequence[int],
    stock: tuple[Nest, Nest, tuple[Stock, ...]],
    boards: Boards,
) -> Iterator[Supply]:
    """Yield what is used up; beads, release and foam are new at every casting, boards are not."""
    nested, foam, strips = stock
    for name, packed, price in (
        ("mould-board", nested, boards.price_per_sheet),
        ("foam", foam, boards.foam.price_per_sheet),
    ):
        sheets = packed.used_mm2 / (packed.length_mm * packed.width_mm)
        yield _supply(name, sheets, "sheets", packed.sheets, price)
    lengths = sum(s.length_mm - s.waste_mm for s in strips) / boards.flexible_length_mm
    yield _supply("flexible-strip", lengths, "lengths", len(strips), boards.flexible_price)
    screws = sum(mould.screws * n for mould, n in zip(each, counts, strict=True))
    yield _supply("screws", screws, "screws", screws, boards.screw_price)
    bead_m = sum(mould.bead_mm * n for mould, n in zip(each, castings, strict=True)) / 1000
    yield _supply_in_packs(
        "sealant-bead", bead_m / boards.bead_m_per_tube, "tubes", boards.bead_price_per_tube
    )
    release_l = sum(mould.release_l * n for mould, n in zip(each, castings, strict=True))
    yield _supply_in_packs("release-agent", release_l, "litres", boards.release_price_per_l)


def _supply_in_packs(name: str, used: float, unit: str, price: Decimal) -> Supply:
    return _supply(name, used, unit, math.ceil(used - 1e-9), price)


def _supply(name: str, used: float, unit: str, packs: int, price: Decimal) -> Supply:
    return Supply(
        name, used, unit, packs, price * Decimal(repr(round(used, 9))), price * Decimal(packs)
    )
