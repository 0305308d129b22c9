"""The steps from the cured concrete to the sealed slab: out of the mould, finish, sealer."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from decimal import Decimal

from ledgerstone.message import Message
from ledgerstone.order import Slab
from ledgerstone.shape import Shape
from ledgerstone.surfaces import SURFACES
from ledgerstone.work.operation import Operation
from ledgerstone.workshop.records import FinishOffered, Way, Workshop


def moving(
    i: int, slab: Slab, shape: Shape, workshop: Workshop, way: Way | None
) -> Iterator[Operation]:
    """Yield the steps out of the mould: sand the back, turn, demould, knockouts out.

    Knockouts come out before the turn only where the way does not count on sides and formers.
    """
    n, hours, area = slab.quantity, workshop.hours.per_piece, shape.net_area_m2
    sand = hours.sand_back_per_m2 * area if workshop.boards.sanding_mm > 0 else 0.0
    trim = n * hours.cutout_trim * len(slab.cutouts)
    knockouts = (
        [Operation(Message("step-knockouts-out"), "finish", i, trim, pieces=n)] if trim else []
    )
    stay = way is None or way.sides_on
    if sand:
        yield Operation(Message("step-sand"), "finish", i, n * sand, pieces=n)
    yield from () if stay else knockouts
    turn = Message("step-turn") if way is None else Message("step-turn-way", way=way.name)
    more, hire = (way.hours, n * way.price) if way is not None else (0.0, Decimal(0))
    yield Operation(turn, "finish", i, n * (hours.turn + more), hire=hire, pieces=n)
    yield Operation(Message("step-demould"), "finish", i, n * hours.demould, pieces=n, frees=True)
    yield from knockouts if stay else ()


def surfacing(i: int, slab: Slab, shape: Shape, workshop: Workshop) -> Iterator[Operation]:
    """Yield the steps of the face: wash, grind and fill in turn, finish, let it dry."""
    n, area = slab.quantity, shape.net_area_m2
    finish, days = finish_of(slab, workshop), workshop.days
    wash, fill = workshop.hours.per_piece.wash, workshop.hours.per_piece.fill_per_m2
    before = grits_before_fills(finish, workshop)
    each = n * area * finish.hours_per_m2 / max(1, len(finish.grits))
    if wash:
        yield Operation(Message("step-wash"), "finish", i, n * wash, pieces=n)
    for at, grit in enumerate(before):
        if grit is not None:
            yield _ground(Message("step-grind", grit=grit), i, n, each)
        yield Operation(
            Message("step-fill" if at == 0 else "step-fill-again"),
            "finish",
            i,
            n * area * fill,
            wait_hours=days.slurry_hours,
            pieces=n,
            pauses=True,
        )
    left = n * area * finish.hours_per_m2 - each * sum(grit is not None for grit in before)
    name = Message("step-finish", surface=finish.surface)
    is_ground = bool(finish.grits) or SURFACES[finish.surface].frees_dust
    yield replace(
        _ground(name, i, n, left) if is_ground else Operation(name, "finish", i, left, pieces=n),
        wait_hours=max(24 * days.drying, days.strip_hours),
        least_days=finish.days,
    )


def grits_before_fills(finish: FinishOffered, workshop: Workshop) -> tuple[int | None, ...]:
    """Return the number of the grit that each filling of voids follows; None without one.

    No filling follows the last grit, which would open the voids again.

    Source
    ------
    The profile's ``finishes.grits``, ``slurry.fills`` and ``slurry.amounts``; the sequence is
    common practice, no source.
    """
    slurry = workshop.slurry
    litres = sum(amount.l_per_m2 for amount in slurry.amounts if amount.surface == finish.surface)
    if not litres or not workshop.hours.per_piece.fill_per_m2:
        return ()
    grits = finish.grits[:-1][: slurry.fills]
    return grits or (None,)


def finish_days(finish: FinishOffered, workshop: Workshop) -> float:
    """Return the days that a finish takes: its own, and those in which slurry hardens.

    Source
    ------
    The profile's ``finishes.days`` and ``days.slurry_hours``.
    """
    fills = len(grits_before_fills(finish, workshop))
    return finish.days + fills * workshop.days.slurry_hours / 24


def finish_of(slab: Slab, workshop: Workshop) -> FinishOffered:
    """Return the finish that a slab has."""
    return next(f for f in workshop.finishes if f.surface == slab.finish.surface)


def _ground(name: Message, i: int, n: int, hours: float) -> Operation:
    """Grind pieces, one person at the polisher."""
    return Operation(
        name, "finish", i, hours, machine_hours=hours, pieces=n, people=1, machine="polisher"
    )


def sealing(i: int, slab: Slab, shape: Shape, workshop: Workshop) -> Iterator[Operation]:
    """Yield the coats of the sealer: in one go, or one by one where each must dry first."""
    n, area = slab.quantity, shape.net_area_m2
    sealer = next(s for s in workshop.sealers if s.name == slab.finish.sealer)
    goes = sealer.coats if sealer.recoat_hours else 1
    seal = n * area * sealer.hours_per_m2_coat * sealer.coats / goes
    for coat in range(1, goes + 1):
        last = coat == goes
        name = Message("step-seal", sealer=sealer.name)
        if goes > 1:
            name = Message("step-seal-coat", sealer=sealer.name, coat=coat)
        yield Operation(
            name,
            "seal",
            i,
            seal,
            wait_hours=24 * workshop.days.after_sealing if last else sealer.recoat_hours,
            age_hours=24 * sealer.youngest_days,
            pieces=n,
        )
