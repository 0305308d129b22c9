"""The steps from the cured concrete to the sealed slab: out of the mould, finish, sealer."""

from __future__ import annotations

from collections.abc import Iterator
from decimal import Decimal

from ledgerstone.order import Slab
from ledgerstone.shape import Shape
from ledgerstone.work.operation import Operation
from ledgerstone.workshop.records import Way, Workshop

MM2_PER_M2 = 1e6


def moving(
    i: int, slab: Slab, shape: Shape, workshop: Workshop, way: Way | None
) -> Iterator[Operation]:
    """Yield the steps out of the mould: sand the back, knockouts out, turn, demould, wash."""
    n, hours, area = slab.quantity, workshop.hours.per_piece, shape.net_area_mm2 / MM2_PER_M2
    sand = hours.sand_back_per_m2 * area if workshop.boards.sanding_mm > 0 else 0.0
    for name, each in (
        ("Sand the back", sand),
        ("Take out the knockouts", hours.cutout_trim * len(slab.cutouts)),
    ):
        if each:
            yield Operation(name, "finish", i, n * each, pieces=n)
    turn = "Turn it" if way is None else f"Turn it: {way.name}"
    more, hire = (way.hours, n * way.price) if way is not None else (0.0, Decimal(0))
    yield Operation(turn, "finish", i, n * (hours.turn + more), hire=hire, pieces=n)
    yield Operation("Demould", "finish", i, n * hours.demould, pieces=n, frees=True)


def surfacing(i: int, slab: Slab, shape: Shape, workshop: Workshop) -> Iterator[Operation]:
    """Yield the steps of the face: wash, fill the voids, work it through its grits, let it dry."""
    n, hours, area = slab.quantity, workshop.hours.per_piece, shape.net_area_mm2 / MM2_PER_M2
    finish = next(f for f in workshop.finishes if f.surface == slab.finish.surface)
    filled = any(one.l_per_m2 for one in workshop.slurry.amounts if one.surface == finish.surface)
    if hours.wash:
        yield Operation("Wash it", "finish", i, n * hours.wash, pieces=n)
    if filled and hours.fill_per_m2:
        yield Operation("Fill the voids", "finish", i, n * area * hours.fill_per_m2, pieces=n)
    polish = n * area * finish.hours_per_m2
    yield Operation(
        f"Finish: {finish.surface}",
        "finish",
        i,
        polish,
        machine_hours=polish,
        wait_hours=24 * workshop.days.drying,
        least_days=finish.days,
        pieces=n,
        people=1,
        machine="polisher",
    )


def sealing(i: int, slab: Slab, shape: Shape, workshop: Workshop) -> Iterator[Operation]:
    """Yield the coats of the sealer: in one go, or one by one where each must dry first."""
    n, area = slab.quantity, shape.net_area_mm2 / MM2_PER_M2
    sealer = next(s for s in workshop.sealers if s.name == slab.finish.sealer)
    goes = sealer.coats if sealer.recoat_hours else 1
    seal = n * area * sealer.hours_per_m2_coat * sealer.coats / goes
    for coat in range(1, goes + 1):
        last = coat == goes
        yield Operation(
            f"Seal: {sealer.name}" + (f", coat {coat}" if goes > 1 else ""),
            "seal",
            i,
            seal,
            wait_hours=24 * workshop.days.after_sealing if last else sealer.recoat_hours,
            age_hours=24 * sealer.youngest_days,
            pieces=n,
        )
