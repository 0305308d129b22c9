"""The steps up to the concrete under its cover: the mould, the steel, the pour."""

from __future__ import annotations

from collections.abc import Iterator
from decimal import Decimal

from ledgerstone.order import Slab
from ledgerstone.shape import Shape, edge_lengths_mm
from ledgerstone.work.operation import Machine, Operation
from ledgerstone.workshop.records import Workshop

MM2_PER_M2 = 1e6


def moulding(
    i: int, slab: Slab, shape: Shape, workshop: Workshop, moulds: int
) -> Iterator[Operation]:
    """Yield the steps of so many moulds: board and sides, knockouts, bead, release, level."""
    hours = workshop.hours
    around_m = sum(side.length_mm for side in shape.sides) / 1000
    board = (
        hours.mould_per_slab
        + hours.mould_per_m * around_m
        + hours.drop_per_m * _drops_m(slab, shape)
    )
    formers = hours.cutout * len(slab.cutouts) + hours.relief * len(slab.reliefs)
    steps = (
        ("Make the mould", board),
        ("Make and fix the knockouts", formers),
        ("Run the bead", hours.bead_per_m * around_m + _edge_hours(slab, shape, workshop)),
        ("Wipe on the release agent", hours.release_per_slab),
        ("Level it on the table", hours.level_per_slab),
    )
    for name, each in steps:
        if each or name == "Make the mould":
            yield Operation(name, "mould", i, moulds * each, pieces=moulds)


def _edge_hours(slab: Slab, shape: Shape, workshop: Workshop) -> float:
    offered = {str(edge.profile): edge.hours_per_m for edge in workshop.edges}
    return sum(
        length / 1000 * offered.get(profile, 0.0)
        for profile, length in edge_lengths_mm(slab, shape).items()
    )


def _drops_m(slab: Slab, shape: Shape) -> float:
    return sum(
        side.length_mm / 1000
        for side in shape.sides
        if side.name in slab.edges and slab.edges[side.name].drop is not None
    )


def casting(
    i: int,
    slab: Slab,
    shape: Shape,
    workshop: Workshop,
    *,
    moulds: int,
    bars: int,
    cover: tuple[float, float | None],
    heated: bool,
) -> Iterator[Operation]:
    """Yield the steps of every pour: steel, batch, face coat, back-fill, strike off, cover.

    From the batch on they are one unbroken run: concrete does not wait for tomorrow. ``bars`` are
    those of one piece, ``cover`` is the days under cover and the adjusted age that is reached
    there; ``heated`` is in the tent.
    """
    n, hours, area = slab.quantity, workshop.hours, shape.net_area_mm2 / MM2_PER_M2
    again = (n - moulds) * workshop.bench.mould_again_hours
    box = _on_table_mm(shape, workshop)
    if again:
        yield Operation("Clean and oil the mould again", "cast", i, again, pieces=n, table_mm=box)
    steel = hours.steel_per_m2 * area + hours.bar * bars
    yield Operation("Cut and tie the steel", "cast", i, n * steel, pieces=n, table_mm=box)
    run: list[tuple[str, float, Machine | None]] = [
        ("Weigh and mix the batches", hours.pour_per_slab, "mixer"),
        ("Lay the steel, back-fill", hours.pour_per_m2 * area, "mixer"),
        ("Strike off and vibrate", hours.strike_off_per_m2 * area, None),
    ]
    if workshop.recipe.face_coat is not None:
        run.insert(1, ("Face coat", hours.face_coat_per_m2 * area, "mixer"))
    for at, (name, each, machine) in enumerate(run):
        yield Operation(
            name, "cast", i, n * each, pieces=n, machine=machine, table_mm=box, unbroken=at > 0
        )
    yield _covered(i, n, workshop, cover, heated=heated, box=box)


def _covered(
    i: int,
    n: int,
    workshop: Workshop,
    cover: tuple[float, float | None],
    *,
    heated: bool,
    box: tuple[float, float],
) -> Operation:
    """Return the step of covering a slab, and the wait under the cover."""
    days, ripe = cover
    tent = workshop.tent if heated else None
    return Operation(
        "Cover it, damp",
        "cast",
        i,
        n * workshop.hours.cover_per_slab,
        wait_hours=24 * days,
        hire=n * tent.price_per_day * Decimal(repr(days)) if tent else Decimal(0),
        pieces=n,
        min_age_days=ripe,
        warm_c=tent.warmth_c if tent else None,
        warm_hours=24 * tent.under_cover_days if tent else 0.0,
        table_mm=box,
        unbroken=True,
    )


def _on_table_mm(shape: Shape, workshop: Workshop) -> tuple[float, float]:
    x0, y0, x1, y1 = shape.outline.bounds
    margin = 2 * workshop.boards.margin_mm
    return max(x1 - x0, y1 - y0) + margin, min(x1 - x0, y1 - y0) + margin
