"""The batch plan of an order: what is poured together, in which batches, and what to buy for it."""

from __future__ import annotations

import math
from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass
from decimal import Decimal
from itertools import groupby

from ledgerstone.mix.batches import Batches, Weighing, batches, open_minutes, pour_minutes
from ledgerstone.mix.mixes import Tint, palette_tint
from ledgerstone.mix.pouring import CoatLitres, PourGroup, coat_litres, placed_l, pour_groups
from ledgerstone.mix.slurry import Slurry, repair_pot, slurry_of
from ledgerstone.order import Order
from ledgerstone.shape import Shape
from ledgerstone.surfaces import Surface
from ledgerstone.workshop.records import Workshop
from ledgerstone.workshop.records.proportions import CementColour, Role


@dataclass(frozen=True, slots=True)
class SlabConcrete:
    """What one piece of a slab takes: litres placed, and with waste as they are mixed.

    ``pot`` is the repair pot that is packed with it, where the profile has one.
    """

    placed_l: float
    mixed: CoatLitres
    slurry: Slurry
    pot: Slurry | None = None


@dataclass(frozen=True, slots=True)
class Pour:
    """Pieces that are poured together, by slab index, and how many times.

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
        """Volume mixed for one repetition of the pour, litres.

        Source
        ------
        Arithmetic.
        """
        return sum(batch.litres for batch in self.batches)


@dataclass(frozen=True, slots=True)
class Purchase:
    """One material of the order: the exact amount, the whole packs, and the price by either.

    ``packs`` is None if it is bought loose; ``packs_price`` is then the price by use.
    ``pack_kg`` is what one pack holds.
    """

    name: str
    role: Role
    kg: float
    packs: int | None
    use_price: Decimal
    packs_price: Decimal
    pack_kg: float | None = None
    cement: CementColour | None = None


@dataclass(frozen=True, slots=True)
class BatchPlan:
    """The concrete of a whole order; ``slabs`` are of one piece each, in the order's order."""

    slabs: tuple[SlabConcrete, ...]
    pours: tuple[Pour, ...]
    purchases: tuple[Purchase, ...]

    @property
    def batch_count(self) -> int:
        """Batches in all."""
        return sum(p.times * sum(batch.count for batch in p.batches) for p in self.pours)


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
    litres = [share.mixed for share in each]
    areas = [shape.net_area_mm2 for shape in shapes] if loads is None else None
    rounds = _rounds(order, moulds) if loads is None else _runs(loads)
    pours = tuple(
        _pour(group, times, workshop)
        for pieces, times in rounds
        for group in pour_groups(pieces, litres, tints, workshop, areas)
    )
    slurries = [
        (slurry, slab.quantity)
        for share, slab in zip(each, order.slabs, strict=True)
        for slurry in (share.slurry, share.pot)
        if slurry is not None
    ]
    return BatchPlan(each, pours, tuple(_purchases(pours, slurries, workshop)))


def late_pours(plan: BatchPlan, workshop: Workshop) -> tuple[Pour, ...]:
    """Return the pours whose last batch comes after the first has stiffened."""
    return tuple(pour for pour in plan.pours if pour.open_minutes > workshop.mixer.open_minutes)


def _concrete(shape: Shape, surface: Surface, tint: Tint, workshop: Workshop) -> SlabConcrete:
    mixed = coat_litres(shape, workshop)
    slurry = slurry_of(surface, shape.net_area_m2, tint, workshop)
    pot = repair_pot(tint, workshop)
    return SlabConcrete(placed_l(shape, workshop), mixed, slurry, pot)


def _runs(loads: Sequence[Sequence[int]]) -> Iterator[tuple[tuple[int, ...], int]]:
    """Yield each load's pieces, and how many loads like it follow one another."""
    for load, same in groupby(map(tuple, loads)):
        yield load, len(list(same))


def _rounds(order: Order, made: Sequence[int] | None) -> Iterator[tuple[tuple[int, ...], int]]:
    """Yield which pieces are cast in a round, by slab index, and how many rounds are like it."""
    left = [slab.quantity for slab in order.slabs]
    moulds = made or [1] * len(left)
    while any(left):
        now = [min(m, n) for m, n in zip(moulds, left, strict=True)]
        times = min(n // k for n, k in zip(left, now, strict=True) if k)
        left = [n - times * k for n, k in zip(left, now, strict=True)]
        yield tuple(i for i, k in enumerate(now) for _ in range(k)), times


def _pour(group: PourGroup, times: int, workshop: Workshop) -> Pour:
    """Weigh out a pour's batches and time it."""
    recipe, mixer, litres = workshop.recipe, workshop.mixer, group.litres
    face = batches(group.mixes[0], litres.face, recipe, mixer) if group.face_batches else None
    return Pour(
        slabs=group.slabs,
        times=times,
        tint=group.tint,
        face=face,
        backing=batches(group.mixes[-1], litres.backing, recipe, mixer),
        minutes=pour_minutes(group.face_batches, group.backing_batches, mixer),
        open_minutes=open_minutes(group.face_batches, group.backing_batches, mixer),
    )


# --- what to buy ----------------------------------------------------------------------------


def _purchases(
    pours: Iterable[Pour], slurries: Iterable[tuple[Slurry, int]], workshop: Workshop
) -> Iterator[Purchase]:
    """Yield what the order uses up, in the order of mixing; mains water is not bought in packs."""
    used: dict[tuple[str, CementColour | None], tuple[Role, float]] = {}
    water = next((c.name for c in workshop.recipe.constituents if c.role == "water"), "water")
    for weighing, times in (*_mixed(pours), *_filled(slurries)):
        name = water if weighing.role == "water" else weighing.name
        key = (name, weighing.cement)
        kg = used.get(key, (weighing.role, 0.0))[1] + times * weighing.kg
        used[key] = (weighing.role, kg)
    bought = _prices(workshop)
    for (name, cement), (role, kg) in used.items():
        price, pack_kg = bought.get(name, (Decimal(0), None))
        packs = math.ceil(kg / pack_kg - 1e-9) if pack_kg else None
        use = price * _decimal(kg)
        whole = price * _decimal(pack_kg) * packs if pack_kg and packs is not None else use
        yield Purchase(name, role, kg, packs, use, whole, pack_kg, cement)


def _mixed(pours: Iterable[Pour]) -> Iterator[tuple[Weighing, int]]:
    for pour in pours:
        for batch in pour.batches:
            for weighing in batch.batch.weighings:
                yield weighing, pour.times * batch.count


def _filled(slurries: Iterable[tuple[Slurry, int]]) -> Iterator[tuple[Weighing, int]]:
    for slurry, pieces in slurries:
        if slurry.litres:
            for weighing in slurry.weighings:
                yield weighing, pieces


def _prices(workshop: Workshop) -> dict[str, tuple[Decimal, float | None]]:
    """Price of a kilogram and the pack of everything that is bought, by name.

    White cement has grey's price here: what it adds is the shade's ``extra_per_m3``. Cement for
    slurry alone has no name.
    """
    recipe, slurry = workshop.recipe, workshop.slurry
    bought = {c.name: (c.price_per_kg, c.pack_kg) for c in recipe.constituents}
    neat = {"": (slurry.cement_price_per_kg, slurry.cement_pack_kg)}
    if recipe.bag is not None:
        per_kg = recipe.bag.price_per_bag / _decimal(recipe.bag.bag_kg)
        bought |= {a.name: (a.price_per_kg, a.pack_kg) for a in recipe.bag.added}
        bought[recipe.bag.name] = (per_kg, recipe.bag.bag_kg)
    pigments = {p.name: (p.price_per_kg, None) for p in workshop.pigments}
    return {**neat, **bought, **pigments}


def _decimal(value: float) -> Decimal:
    return Decimal(repr(round(value, 9)))
