"""What an order takes: concrete, mould and steel by the plans that the workshop works from.

By use, an order pays for what goes into it and for offcuts that are not kept; by whole packs,
for every pack it opens. Slabs of one order share batches, sheets and lengths either way.
"""

from __future__ import annotations

import math
from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass, replace
from decimal import Decimal

from ledgerstone.message import Message
from ledgerstone.mix import BatchPlan, batch_plan, part_name, sealer_l
from ledgerstone.mould import Mould, SheetPart, mould_of, mould_plan
from ledgerstone.order import Order
from ledgerstone.price.rounding import decimal
from ledgerstone.quantities import MM2_PER_M2
from ledgerstone.reinforcement import SteelPlan
from ledgerstone.shade import shade_recipe, tint_of
from ledgerstone.shape import Shape
from ledgerstone.steel import Bar, MeshPiece, cut_list, mesh_nest
from ledgerstone.steel_rules import lap_mm, lapped_parts
from ledgerstone.workshop.records import Workshop

MAX_NESTED = 160  # above this, packs are counted by area and length: nesting takes too long


@dataclass(frozen=True, slots=True)
class Material:
    """One material of an order: the amount that is charged, and its price."""

    name: Message
    used: float
    unit: str
    amount: Decimal


def materials(
    order: Order,
    shapes: Sequence[Shape],
    workshop: Workshop,
    steel: Sequence[SteelPlan] | None = None,
    moulds: Sequence[int] | None = None,
    *,
    loads: Sequence[Sequence[int]] | None = None,
) -> tuple[Material, ...]:
    """List what goes into the slabs and their moulds.

    Parameters
    ----------
    steel
        Of each slab, where it has been advised; left out, mesh over each slab and no bars.
    moulds
        How many moulds of each slab are made: by default one, used for every piece.
    loads
        Which pieces are cast at once, by slab index, where that is known.
    """
    moulds = moulds if moulds is not None else [1] * len(order.slabs)
    return (
        *_concrete(
            order,
            workshop,
            batch_plan(
                order,
                shapes,
                workshop,
                tints=[tint_of(slab, workshop) for slab in order.slabs],
                moulds=moulds,
                loads=loads,
            ),
        ),
        *_moulds(order, shapes, workshop, moulds),
        *_steel(order, shapes, workshop, steel),
    )


def sealers(order: Order, shapes: Sequence[Shape], workshop: Workshop) -> tuple[Material, ...]:
    """List the sealers that an order takes, by whole litres where packs are whole."""
    litres: dict[str, float] = {}
    shelf = {sealer.name: sealer for sealer in workshop.sealers}
    for slab, shape in zip(order.slabs, shapes, strict=True):
        sealer = shelf[slab.finish.sealer]
        area = slab.quantity * shape.net_area_mm2 / MM2_PER_M2
        more = sealer_l(area, sealer.coats, sealer.coverage_m2_per_l)
        litres[sealer.name] = litres.get(sealer.name, 0.0) + more
    whole = workshop.rates.packs == "whole"
    paid = {name: float(math.ceil(used - 1e-9)) if whole else used for name, used in litres.items()}
    return tuple(
        Material(
            Message("cost-sealer", sealer=name), used, "l", shelf[name].price_per_l * decimal(used)
        )
        for name, used in paid.items()
    )


# --- concrete -------------------------------------------------------------------------------


def _concrete(order: Order, workshop: Workshop, plan: BatchPlan) -> Iterator[Material]:
    whole = workshop.rates.packs == "whole"
    for bought in plan.purchases:
        price = bought.packs_price if whole else bought.use_price
        yield Material(Message("cost-part", part=part_name(bought)), bought.kg, "kg", price)
    extra = _dearer_cement(order, plan, workshop)
    if extra.amount:
        yield extra


def _dearer_cement(order: Order, plan: BatchPlan, workshop: Workshop) -> Material:
    """What white cement adds to the price of grey, by the litre mixed."""
    litres, amount = 0.0, Decimal(0)
    for slab, share in zip(order.slabs, plan.slabs, strict=True):
        recipe = shade_recipe(slab.shade, workshop)
        mixed = slab.quantity * share.mixed.total
        if recipe is not None and recipe.extra_per_m3:
            litres += mixed
            amount += recipe.extra_per_m3 * decimal(mixed / 1000)
    return Material(_named("white-cement"), litres, "l", amount)


# --- moulds ---------------------------------------------------------------------------------


def _moulds(
    order: Order, shapes: Sequence[Shape], workshop: Workshop, moulds: Sequence[int]
) -> Iterator[Material]:
    each = [
        mould_of(slab, shape, workshop) for slab, shape in zip(order.slabs, shapes, strict=True)
    ]
    castings = [slab.quantity for slab in order.slabs]
    pieces = sum(n * p.count for mould, n in _both(each, moulds) for p in mould.boards)
    pieces += sum(n * p.count for mould, n in zip(each, castings, strict=True) for p in mould.foam)
    if workshop.rates.packs == "whole" and pieces <= MAX_NESTED:
        for supply in mould_plan(order, shapes, workshop, moulds=moulds).supplies:
            if not supply.packs:
                continue
            yield Material(
                _named(supply.name),
                float(supply.packs),
                supply.unit,
                supply.packs_price,
            )
        return
    yield from _by_area(each, moulds, castings, workshop)


def _by_area(
    each: Sequence[Mould], moulds: Sequence[int], castings: Sequence[int], workshop: Workshop
) -> Iterator[Material]:
    """What moulds take by area and length; beads, foam and release are new at every casting."""
    boards, more = workshop.boards, 1 + workshop.rates.offcuts_percent / 100
    whole = workshop.rates.packs == "whole"
    board = sum(n * _area(mould.boards) for mould, n in _both(each, moulds)) / (
        boards.length_mm * boards.width_mm
    )
    sheet = boards.foam.length_mm * boards.foam.width_mm
    foam = sum(n * _area(mould.foam) for mould, n in _both(each, castings)) / sheet
    bent = sum(n * c.length_mm for mould, n in _both(each, moulds) for c in mould.curves)
    screws = float(sum(n * mould.screws for mould, n in _both(each, moulds)))
    beads = sum(n * mould.bead_mm for mould, n in _both(each, castings)) / 1000
    release = sum(n * mould.release_l for mould, n in _both(each, castings))
    for name, used, unit, price in (
        ("mould-board", more * board, "sheets", boards.price_per_sheet),
        ("foam", more * foam, "sheets", boards.foam.price_per_sheet),
        ("flexible-strip", more * bent / boards.flexible_length_mm, "lengths",
         boards.flexible_price),
        ("screws", screws, "screws", boards.screw_price),
        ("sealant-bead", beads / boards.bead_m_per_tube, "tubes", boards.bead_price_per_tube),
        ("release-agent", release, "litres", boards.release_price_per_l),
    ):  # fmt: skip
        if used:
            yield _paid(name, used, unit, price, whole=whole)


def _both(each: Sequence[Mould], castings: Sequence[int]) -> Iterable[tuple[Mould, int]]:
    return zip(each, castings, strict=True)


def _area(pieces: Iterable[SheetPart]) -> float:
    return sum(piece.count * piece.length_mm * piece.width_mm for piece in pieces)


def _paid(name: str, used: float, unit: str, price: Decimal, *, whole: bool) -> Material:
    paid = float(math.ceil(used - 1e-9)) if whole else used
    return Material(_named(name), paid, unit, price * decimal(paid))


def _named(thing: str) -> Message:
    return Message("cost-material", thing=thing)


# --- steel ----------------------------------------------------------------------------------


def steel_pieces(
    order: Order, plans: Sequence[SteelPlan], workshop: Workshop
) -> tuple[list[Bar], list[MeshPiece]]:
    """Return the bars and the mesh of a whole order, each no larger than its stock.

    A bar or a mesh that is larger than what is bought is cut in equal parts that overlap.
    """
    rack = workshop.steel
    bars, mesh = [], []
    for i, (slab, plan) in enumerate(zip(order.slabs, plans, strict=True), start=1):
        for bar in plan.cut():
            overlap = lap_mm(workshop, bar.diameter_mm)
            parts, length = lapped_parts(bar.length_mm, rack.stock_length_mm, overlap)
            count = bar.count * slab.quantity * parts
            mark = f"{i}-{bar.mark}"
            bars.append(replace(bar, mark=mark, length_mm=length, count=count))
        for piece in plan.mesh:
            long, short = (
                max(piece.length_mm, piece.width_mm),
                min(piece.length_mm, piece.width_mm),
            )
            overlap = lap_mm(workshop, piece.wire_mm)
            columns, along = lapped_parts(long, rack.mesh_sheet_length_mm, overlap)
            rows, across = lapped_parts(short, rack.mesh_sheet_width_mm, overlap)
            count = piece.count * slab.quantity * columns * rows
            part = replace(
                piece,
                mark=f"{i}-{piece.mark}",
                length_mm=along,
                width_mm=across,
                count=count,
                cut_away_mm2=piece.cut_away_mm2 / (columns * rows),
            )
            mesh.append(part)
    return bars, mesh


def _steel(
    order: Order,
    shapes: Sequence[Shape],
    workshop: Workshop,
    plans: Sequence[SteelPlan] | None,
) -> Iterator[Material]:
    rack, more = workshop.steel, 1 + workshop.rates.offcuts_percent / 100
    whole = workshop.rates.packs == "whole"
    sheet = rack.mesh_sheet_length_mm * rack.mesh_sheet_width_mm
    if plans is None:
        boxes = zip(order.slabs, shapes, strict=True)
        area = sum(slab.quantity * box.length_mm * box.width_mm for slab, box in boxes)
        yield _paid("mesh", more * area / sheet, "sheets", rack.mesh_price_per_sheet, whole=whole)
        return
    bars, mesh = steel_pieces(order, plans, workshop)
    few = sum(bar.count for bar in bars) + sum(sheet.count for sheet in mesh) <= MAX_NESTED
    lengths = more * sum(bar.count * bar.length_mm for bar in bars) / rack.stock_length_mm
    sheets = more * sum(sheet.count * sheet.length_mm * sheet.width_mm for sheet in mesh) / sheet
    if whole and few:
        lengths = sum(len(stock.lengths) for stock in cut_list(bars, rack.stock_length_mm).stocks)
        sheets = mesh_nest(mesh, rack.mesh_sheet_length_mm, rack.mesh_sheet_width_mm).sheets
    yield _paid("bars", lengths, "lengths", rack.bar_price, whole=whole)
    yield _paid("mesh", sheets, "sheets", rack.mesh_price_per_sheet, whole=whole)
