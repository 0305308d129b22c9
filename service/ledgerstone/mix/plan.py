"""The batch plan of an order: what is poured together, in which batches, and what to buy for it."""

from __future__ import annotations

import math
from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass
from decimal import Decimal
from itertools import groupby

from ledgerstone.mix.batches import Batches, Weighing, batches, open_minutes, pour_minutes
from ledgerstone.mix.mixes import Mix, Tint, mixes_of, palette_tint
from ledgerstone.mix.slurry import Slurry, repair_pot, slurry_of
from ledgerstone.order import Order
from ledgerstone.shape import Shape
from ledgerstone.surfaces import Surface
from ledgerstone.workshop.proportions import Role
from ledgerstone.workshop.records import Workshop

MM2_PER_M2, MM3_PER_L = 1e6, 1e6


@dataclass(frozen=True, slots=True)
class SlabConcrete:
    """What one piece of a slab takes: litres placed, and with waste as face coat and backing.

    ``pot`` is the repair pot that is packed with it, where the profile has one.
    """

    placed_l: float
    face_l: float
    backing_l: float
    slurry: Slurry
    pot: Slurry | None = None


@dataclass(frozen=True, slots=True)
class Pour:
    """Pieces that are poured together, by slab index, and so many times over.

    ``face`` is absent where the recipe has no face coat. ``minutes`` runs from the first thing
    weighed; ``open_minutes`` is how long the first concrete placed waits for the last.
    """

    slabs: tuple[int, ...]
    times: int
    tint: Tint
    face: Batches | None
    backing: Batches
    minutes: float
    open_minutes: float

    @property
    def batches(self) -> tuple[Batches, ...]:
        """Face coat, where there is one, and backing."""
        return (self.backing,) if self.face is None else (self.face, self.backing)

    @property
    def litres(self) -> float:
        """Litres mixed for the pour once."""
        return sum(one.litres for one in self.batches)


@dataclass(frozen=True, slots=True)
class Purchase:
    """One thing that the order uses: exactly, in whole packs, and at either price.

    ``packs`` is None where it is bought loose; ``packs_price`` is then the price by use.
    """

    name: str
    role: Role
    kg: float
    packs: int | None
    use_price: Decimal
    packs_price: Decimal


@dataclass(frozen=True, slots=True)
class BatchPlan:
    """The concrete of a whole order; ``slabs`` are of one piece each, in the order's order."""

    slabs: tuple[SlabConcrete, ...]
    pours: tuple[Pour, ...]
    purchases: tuple[Purchase, ...]

    @property
    def batch_count(self) -> int:
        """Batches in all."""
        return sum(p.times * sum(one.count for one in p.batches) for p in self.pours)


def batch_plan(
    order: Order,
    shapes: Sequence[Shape],
    workshop: Workshop,
    *,
    tints: Sequence[Tint] | None = None,
    moulds: Sequence[int] | None = None,
    loads: Sequence[Sequence[int]] | None = None,
) -> BatchPlan:
    """Plan the batches of an order.

    Parameters
    ----------
    tints
        Of each slab; left out, those of the palette.
    moulds
        How many moulds each slab has; left out, one, cast as often as the slab is wanted.
    loads
        Which pieces, by slab index, lie on the tables at once, as the schedule laid them; left
        out, those that stand ready in the same round, as far as the tables' area goes.

    Notes
    -----
    What has the same mix and is cast at once is poured together, in the order's order, as long as
    the last batch is placed within the open time. A single piece is one pour however long it
    takes: see ``late_pours``.
    """
    if tints is None:
        tints = [palette_tint(slab, workshop) for slab in order.slabs]
    each = tuple(
        _concrete(shape, slab.finish.surface, tint, workshop)
        for slab, shape, tint in zip(order.slabs, shapes, tints, strict=True)
    )
    areas = tuple(0.0 if loads is not None else s.net_area_mm2 for s in shapes)
    pouring = _Pouring(workshop, each, tuple(tints), areas)
    rounds: Iterable[tuple[tuple[int, ...], int]]
    if loads is None:
        rounds = _rounds([slab.quantity for slab in order.slabs], moulds or [1] * len(order.slabs))
    else:
        rounds = ((tuple(load), len(list(same))) for load, same in groupby(map(tuple, loads)))
    pours = tuple(pour for pieces, times in rounds for pour in pouring.pours(pieces, times))
    slurries = [
        (slurry, slab.quantity)
        for one, slab in zip(each, order.slabs, strict=True)
        for slurry in (one.slurry, one.pot)
        if slurry is not None
    ]
    return BatchPlan(each, pours, tuple(_purchases(pours, slurries, workshop)))


def late_pours(plan: BatchPlan, workshop: Workshop) -> tuple[Pour, ...]:
    """Return the pours whose last batch comes after the first has stiffened."""
    return tuple(pour for pour in plan.pours if pour.open_minutes > workshop.mixer.open_minutes)


def placed_l(shape: Shape, workshop: Workshop) -> float:
    """Litres in the mould of one piece: the slab, and what is sanded off its back."""
    proud_mm3 = shape.net_area_mm2 * workshop.boards.sanding_mm
    return (shape.volume_mm3 + proud_mm3) / MM3_PER_L


def _concrete(shape: Shape, surface: Surface, tint: Tint, workshop: Workshop) -> SlabConcrete:
    litres = placed_l(shape, workshop)
    coat = workshop.recipe.face_coat
    face = min(litres, shape.net_area_mm2 * coat.thickness_mm / MM3_PER_L) if coat else 0.0
    more = 1 + workshop.recipe.waste_percent / 100
    slurry = slurry_of(surface, shape.net_area_mm2 / MM2_PER_M2, tint, workshop)
    pot = repair_pot(tint, workshop)
    return SlabConcrete(litres, face * more, (litres - face) * more, slurry, pot)


def _rounds(
    quantities: Sequence[int], moulds: Sequence[int]
) -> Iterator[tuple[tuple[int, ...], int]]:
    """Yield which pieces are cast in a round, by slab index, and how many rounds are like it."""
    left = list(quantities)
    while any(left):
        now = [min(m, n) for m, n in zip(moulds, left, strict=True)]
        times = min(n // k for n, k in zip(left, now, strict=True) if k)
        left = [n - times * k for n, k in zip(left, now, strict=True)]
        yield tuple(i for i, k in enumerate(now) for _ in range(k)), times


@dataclass(frozen=True, slots=True)
class _Pouring:
    """Puts pieces together into pours."""

    workshop: Workshop
    each: tuple[SlabConcrete, ...]
    tints: tuple[Tint, ...]
    areas_mm2: tuple[float, ...]

    def pours(self, pieces: Sequence[int], times: int) -> Iterator[Pour]:
        by_tint: dict[Tint, list[int]] = {}
        for i in pieces:
            by_tint.setdefault(self.tints[i], []).append(i)
        for tint, same in by_tint.items():
            yield from self._grouped(tint, same, times)

    def _grouped(self, tint: Tint, pieces: Sequence[int], times: int) -> Iterator[Pour]:
        mixes = mixes_of(tint, self.workshop)
        here = self._pour(tint, mixes, pieces[:1], times)
        for i in pieces[1:]:
            more = self._pour(tint, mixes, (*here.slabs, i), times)
            if self._too_much(more):
                yield here
                more = self._pour(tint, mixes, (i,), times)
            here = more
        yield here

    def _too_much(self, pour: Pour) -> bool:
        table = self.workshop.table
        room_mm2 = table.length_mm * table.width_mm * table.count
        return (
            pour.open_minutes > self.workshop.mixer.open_minutes
            or sum(self.areas_mm2[i] for i in pour.slabs) > room_mm2
        )

    def _pour(self, tint: Tint, mixes: Sequence[Mix], pieces: Sequence[int], times: int) -> Pour:
        recipe, mixer = self.workshop.recipe, self.workshop.mixer
        face_l = sum(self.each[i].face_l for i in pieces)
        backing_l = sum(self.each[i].backing_l for i in pieces)
        face = batches(mixes[0], face_l, recipe, mixer) if len(mixes) > 1 else None
        backing = batches(mixes[-1], backing_l, recipe, mixer)
        counts = (face.count if face else 0, backing.count)
        return Pour(
            slabs=tuple(pieces),
            times=times,
            tint=tint,
            face=face,
            backing=backing,
            minutes=pour_minutes(*counts, mixer),
            open_minutes=open_minutes(*counts, mixer),
        )


# --- what to buy ----------------------------------------------------------------------------


def _purchases(
    pours: Iterable[Pour], slurries: Iterable[tuple[Slurry, int]], workshop: Workshop
) -> Iterator[Purchase]:
    """Yield what the order uses up, in the order of mixing; mains water is not bought in packs."""
    used: dict[str, tuple[Role, float]] = {}
    for weighing, times in (*_mixed(pours), *_filled(slurries)):
        kg = used.get(weighing.name, (weighing.role, 0.0))[1] + times * weighing.kg
        used[weighing.name] = (weighing.role, kg)
    bought = _prices(workshop)
    for name, (role, kg) in used.items():
        price, pack_kg = bought.get(name, (Decimal(0), None))
        packs = math.ceil(kg / pack_kg - 1e-9) if pack_kg else None
        use = price * _decimal(kg)
        whole = price * _decimal(pack_kg) * packs if pack_kg and packs is not None else use
        yield Purchase(name, role, kg, packs, use, whole)


def _mixed(pours: Iterable[Pour]) -> Iterator[tuple[Weighing, int]]:
    for pour in pours:
        for one in pour.batches:
            for weighing in one.batch.weighings:
                yield weighing, pour.times * one.count


def _filled(slurries: Iterable[tuple[Slurry, int]]) -> Iterator[tuple[Weighing, int]]:
    for slurry, pieces in slurries:
        if slurry.litres:
            for weighing in slurry.weighings:
                yield weighing, pieces


def _prices(workshop: Workshop) -> dict[str, tuple[Decimal, float | None]]:
    """Price of a kilogram and the pack of everything that is bought, by name.

    White cement has grey's price here: what it adds is the shade's ``extra_per_m3``.
    """
    recipe, slurry = workshop.recipe, workshop.slurry
    bought = {c.name: (c.price_per_kg, c.pack_kg) for c in recipe.constituents}
    neat = {}
    if recipe.bag is not None:
        per_kg = recipe.bag.price_per_bag / _decimal(recipe.bag.bag_kg)
        bought |= {a.name: (a.price_per_kg, a.pack_kg) for a in recipe.bag.added}
        bought[recipe.bag.name] = (per_kg, recipe.bag.bag_kg)
    for cement in ("grey", "white"):
        neat[f"{cement} cement"] = (slurry.cement_price_per_kg, slurry.cement_pack_kg)
    other = {f"{_OTHER[recipe.cement]} {name}": price for name, price in bought.items()}
    pigments = {p.name: (p.price_per_kg, None) for p in workshop.pigments}
    return {**neat, **other, **bought, **pigments}


_OTHER = {"grey": "white", "white": "grey"}


def _decimal(value: float) -> Decimal:
    return Decimal(repr(round(value, 9)))
